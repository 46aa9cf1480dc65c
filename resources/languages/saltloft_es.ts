<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>ActionWords</name>
    <message>
        <source>new person %1</source>
        <translation>nueva persona %1</translation>
    </message>
    <message>
        <source>person %1 changed</source>
        <translation>persona %1 modificada</translation>
    </message>
    <message>
        <source>new chamber %1</source>
        <translation>nueva cámara %1</translation>
    </message>
    <message>
        <source>chamber %1 changed</source>
        <translation>cámara %1 modificada</translation>
    </message>
    <message>
        <source>new sensor %1</source>
        <translation>nuevo sensor %1</translation>
    </message>
    <message>
        <source>sensor %1 changed</source>
        <translation>sensor %1 modificado</translation>
    </message>
    <message>
        <source>new instrument %1</source>
        <translation>nuevo instrumento %1</translation>
    </message>
    <message>
        <source>instrument %1 changed</source>
        <translation>instrumento %1 modificado</translation>
    </message>
    <message>
        <source>calibration check of %1</source>
        <translation>comprobación de %1</translation>
    </message>
    <message>
        <source>new recipe %1</source>
        <translation>nueva receta %1</translation>
    </message>
    <message>
        <source>new version of recipe %1</source>
        <translation>nueva versión de la receta %1</translation>
    </message>
    <message>
        <source>recipe renamed to %1</source>
        <translation>receta renombrada como %1</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>importación de %1</translation>
    </message>
    <message>
        <source>recipe %1 put away</source>
        <translation>receta %1 archivada</translation>
    </message>
    <message>
        <source>new ingredient %1</source>
        <translation>nuevo ingrediente %1</translation>
    </message>
    <message>
        <source>ingredient %1 changed</source>
        <translation>ingrediente %1 modificado</translation>
    </message>
    <message>
        <source>new lot %1</source>
        <translation>nueva partida %1</translation>
    </message>
    <message>
        <source>lot %1 changed</source>
        <translation>partida %1 modificada</translation>
    </message>
    <message>
        <source>new batch %1</source>
        <translation>nuevo lote %1</translation>
    </message>
    <message>
        <source>batch %1 changed</source>
        <translation>lote %1 modificado</translation>
    </message>
    <message>
        <source>new piece %1</source>
        <translation>nueva pieza %1</translation>
    </message>
    <message>
        <source>piece %1 changed</source>
        <translation>pieza %1 modificada</translation>
    </message>
    <message>
        <source>ingredient lot noted for %1</source>
        <translation>partida de ingrediente anotada para %1</translation>
    </message>
    <message>
        <source>ingredient lot changed for %1</source>
        <translation>partida de ingrediente cambiada para %1</translation>
    </message>
    <message>
        <source>weighing of %1</source>
        <translation>pesada de %1</translation>
    </message>
    <message>
        <source>weighings of %1</source>
        <translation>pesadas de %1</translation>
    </message>
    <message>
        <source>correction of a weighing of %1</source>
        <translation>corrección de una pesada de %1</translation>
    </message>
    <message>
        <source>a weighing of %1 taken back</source>
        <translation>una pesada de %1 anulada</translation>
    </message>
    <message>
        <source>event of %1</source>
        <translation>suceso de %1</translation>
    </message>
    <message>
        <source>an event of %1 taken back</source>
        <translation>un suceso de %1 anulado</translation>
    </message>
    <message>
        <source>%1 cut into pieces</source>
        <translation>%1 cortada en piezas</translation>
    </message>
    <message>
        <source>pieces weighed as one: %1</source>
        <translation>piezas pesadas juntas: %1</translation>
    </message>
    <message>
        <source>%1 discarded</source>
        <translation>%1 descartada</translation>
    </message>
    <message>
        <source>plan of %1</source>
        <translation>plan de %1</translation>
    </message>
    <message>
        <source>stage of %1 started</source>
        <translation>fase de %1 iniciada</translation>
    </message>
    <message>
        <source>stage of %1 ended</source>
        <translation>fase de %1 terminada</translation>
    </message>
    <message>
        <source>task ticked for %1</source>
        <translation>tarea marcada para %1</translation>
    </message>
    <message>
        <source>task unticked for %1</source>
        <translation>tarea desmarcada para %1</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>nota sobre %1</translation>
    </message>
    <message>
        <source>caution accepted for %1</source>
        <translation>advertencia asumida para %1</translation>
    </message>
    <message>
        <source>decision on %1</source>
        <translation>decisión sobre %1</translation>
    </message>
    <message>
        <source>outcome of %1</source>
        <translation>resultado de %1</translation>
    </message>
    <message>
        <source>new pack %1</source>
        <translation>nuevo envase %1</translation>
    </message>
    <message>
        <source>pack %1 changed</source>
        <translation>envase %1 modificado</translation>
    </message>
    <message>
        <source>taken from pack %1</source>
        <translation>salida del envase %1</translation>
    </message>
    <message>
        <source>setting %1</source>
        <translation>ajuste %1</translation>
    </message>
    <message>
        <source>a change of %1</source>
        <translation>un cambio de %1</translation>
    </message>
    <message>
        <source>(no code)</source>
        <translation>(sin código)</translation>
    </message>
</context>
<context>
    <name>AirStrips</name>
    <message>
        <source>a week at %1 (%2 to %3)</source>
        <translation>una semana a %1 (%2 a %3)</translation>
    </message>
    <message>
        <source>% RH</source>
        <translation>% HR</translation>
    </message>
</context>
<context>
    <name>CalendarPage</name>
    <message>
        <source>Calendar</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>&amp;Save as calendar file…</source>
        <translation>&amp;Guardar como archivo de calendario…</translation>
    </message>
    <message>
        <source>No plan yet</source>
        <translation>Aún no hay plan</translation>
    </message>
    <message>
        <source>Stages and work of every open batch stand here day by day. Save them as a calendar file to see them on a phone; saving again brings moved days up to date.</source>
        <translation>Aquí figuran, día a día, las fases y los trabajos de todos los lotes abiertos. Guárdelos como archivo de calendario para verlos en un teléfono; al guardar de nuevo se actualizan los días cambiados.</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>Planificar un lote</translation>
    </message>
    <message>
        <source>&amp;Earlier</source>
        <translation>&amp;Antes</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>&amp;Hoy</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>&amp;Después</translation>
    </message>
    <message>
        <source>Days of the month</source>
        <translation>Días del mes</translation>
    </message>
    <message>
        <source>On this day</source>
        <translation>En este día</translation>
    </message>
    <message>
        <source>Nothing on this day.</source>
        <translation>Nada en este día.</translation>
    </message>
    <message>
        <source>Stages and work by day, and as a calendar file</source>
        <translation>Fases y trabajos por día, y como archivo de calendario</translation>
    </message>
</context>
<context>
    <name>CalibrationText</name>
    <message>
        <source>A test weight near what is weighed; within 0.1 % of it. Monthly.</source>
        <translation>Una pesa patrón cercana a lo que se pesa; con un margen del 0,1 %. Cada mes.</translation>
    </message>
    <message>
        <source>Crushed ice in water, stirred: %1; within %2. Monthly.</source>
        <translation>Hielo picado en agua, removido: %1; con un margen de %2. Cada mes.</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag for 12 hours: 75 % RH; within 3 to 5 points. Every six months.</source>
        <translation>Pasta de sal en una bolsa cerrada durante 12 horas: 75 % HR; con un margen de 3 a 5 puntos. Cada seis meses.</translation>
    </message>
    <message>
        <source>Two fresh buffers that bracket what is measured. Before use.</source>
        <translation>Dos soluciones tampón frescas, una por encima y otra por debajo de lo que se mide. Antes de usarlo.</translation>
    </message>
    <message>
        <source>A salt standard near what is measured. Before use.</source>
        <translation>Una sal patrón cercana a lo que se mide. Antes de usarlo.</translation>
    </message>
    <message>
        <source>As its maker says.</source>
        <translation>Según indique el fabricante.</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Fecha y hora</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Respecto a</translation>
    </message>
    <message>
        <source>Expected, %1</source>
        <translation>Esperado, %1</translation>
    </message>
    <message>
        <source>Found, %1</source>
        <translation>Hallado, %1</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Desviación</translation>
    </message>
    <message>
        <source>Action taken</source>
        <translation>Medida tomada</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniciales</translation>
    </message>
    <message>
        <source>Last checked before: %1.</source>
        <translation>Última comprobación anterior: %1.</translation>
    </message>
    <message>
        <source>Never checked before.</source>
        <translation>Nunca comprobado hasta ahora.</translation>
    </message>
    <message>
        <source>Calibration sheet</source>
        <translation>Hoja de calibración</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>No hay instrumentos registrados.</translation>
    </message>
    <message>
        <source>How to check and how far off an instrument may be is common practice without a source: what your plan says goes before.</source>
        <translation>Cómo se comprueba un instrumento y cuánto puede desviarse es práctica común sin fuente: lo que diga su plan va por delante.</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Comprobado por</translation>
    </message>
    <message>
        <source>Responsible person</source>
        <translation>Persona responsable</translation>
    </message>
    <message numerus="yes">
        <source>Set to every %n day(s) here.</source>
        <translation>
            <numerusform>Fijado aquí a cada día.</numerusform>
            <numerusform>Fijado aquí a cada %n días.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CautionsPage</name>
    <message>
        <source>A number is not a verdict</source>
        <translation>Un número no es un veredicto</translation>
    </message>
    <message>
        <source>Weight loss says how much water has gone, not whether a food may be eaten. Pieces at their target can be raw inside; pieces short of it can be finished. Look, touch, smell and cut before you decide. When in doubt, throw it out.</source>
        <translation>La merma dice cuánta agua se ha ido, no si un alimento se puede comer. Una pieza en su objetivo puede estar cruda por dentro; una que no ha llegado puede estar hecha. Mire, palpe, huela y corte antes de decidir. En caso de duda, tírela.</translation>
    </message>
    <message>
        <source>Curing salt is weighed, never guessed</source>
        <translation>La sal de cura se pesa, nunca a ojo</translation>
    </message>
    <message>
        <source>Nitrite and nitrate are poisons in the wrong amount, and curing salts differ tenfold in strength. Enter the strength from the label of the packet in your hand. Use a scale that can weigh the dose. Keep curing salt marked and away from kitchen salt.</source>
        <translation>El nitrito y el nitrato son venenos en la cantidad equivocada, y la concentración de las sales de cura varía hasta diez veces. Introduzca la concentración que pone la etiqueta del paquete que tiene en la mano. Use una balanza capaz de pesar la dosis. Guarde la sal de cura marcada y lejos de la sal de cocina.</translation>
    </message>
    <message>
        <source>Cold first, then time</source>
        <translation>Primero frío, después tiempo</translation>
    </message>
    <message>
        <source>Cure in the cold, and keep the time the plan gives. A date on the calendar is no reason for a stronger dose or a shorter cure. After a failure of the fridge, what counts is how warm, how long and how far along each piece was.</source>
        <translation>Haga la salazón en frío y respete el tiempo que da el plan. Una fecha en el calendario no justifica una dosis más fuerte ni una salazón más corta. Tras un fallo del frigorífico, lo que cuenta es a qué temperatura, cuánto tiempo y en qué punto estaba cada pieza.</translation>
    </message>
    <message>
        <source>Instruments are often wrong</source>
        <translation>Los instrumentos se equivocan a menudo</translation>
    </message>
    <message>
        <source>Check the scale with a known weight, the thermometer in ice water, the hygrometer over a salt slurry. A reading nobody has checked is a guess with digits.</source>
        <translation>Compruebe la balanza con un peso conocido, el termómetro en agua con hielo, el higrómetro sobre pasta de sal. Una lectura que nadie ha comprobado es una suposición con cifras.</translation>
    </message>
    <message>
        <source>Limits belong to your law</source>
        <translation>Los límites son los de su ley</translation>
    </message>
    <message>
        <source>The limit sets here are quoted with their source and date. Those marked unverified were not read in the issuer&apos;s own words. If you sell or give food away, the code where you live, your licence and your laboratory come before anything this program shows.</source>
        <translation>Los conjuntos de límites se citan aquí con su fuente y fecha. Los marcados como sin verificar no se leyeron en el texto del propio emisor. Si vende o regala alimentos, la norma de donde vive, su licencia y su laboratorio van antes que todo lo que muestra este programa.</translation>
    </message>
    <message>
        <source>Estimates carry a range</source>
        <translation>Las estimaciones llevan un margen</translation>
    </message>
    <message>
        <source>Forecasts, water activity and salt in the finished piece are estimates from your entries and published formulas. The range is part of the answer. Only a laboratory measures water activity and pH in your piece.</source>
        <translation>Los pronósticos, la actividad de agua y la sal de la pieza terminada son estimaciones a partir de sus datos y de fórmulas publicadas. El margen forma parte de la respuesta. Solo un laboratorio mide la actividad de agua y el pH de su pieza.</translation>
    </message>
    <message>
        <source>Some people need more care</source>
        <translation>Hay personas que necesitan más cuidado</translation>
    </message>
    <message>
        <source>Dry-cured meat that is not cooked is a risk for the pregnant, the very young, the old and the ill. Pork and game can carry parasites that curing alone may not kill; follow the official freezing or cooking times for your country.</source>
        <translation>La carne curada en seco sin cocinar es un riesgo para embarazadas, niños pequeños, personas mayores y enfermos. El cerdo y la caza pueden llevar parásitos que la salazón por sí sola quizá no mate; siga los tiempos oficiales de congelación o cocción de su país.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>What to keep in mind before trusting a number</source>
        <translation>Lo que conviene tener presente antes de fiarse de un número</translation>
    </message>
</context>
<context>
    <name>ClimateChart</name>
    <message>
        <source>temperature, %1</source>
        <translation>temperatura, %1</translation>
    </message>
    <message>
        <source>humidity, % RH</source>
        <translation>humedad, % HR</translation>
    </message>
    <message>
        <source>drying force, Pa</source>
        <translation>fuerza de secado, Pa</translation>
    </message>
    <message>
        <source> · dew point %1</source>
        <translation> · punto de rocío %1</translation>
    </message>
    <message>
        <source> · drying force %1 Pa</source>
        <translation> · fuerza de secado %1 Pa</translation>
    </message>
    <message>
        <source>%1: least to greatest</source>
        <translation>%1: de mínimo a máximo</translation>
    </message>
    <message>
        <source>%1: dew point</source>
        <translation>%1: punto de rocío</translation>
    </message>
    <message>
        <source>no readings</source>
        <translation>sin lecturas</translation>
    </message>
    <message>
        <source>lower bound</source>
        <translation>límite inferior</translation>
    </message>
    <message>
        <source>upper bound</source>
        <translation>límite superior</translation>
    </message>
    <message>
        <source>%1 has no readings in this time.</source>
        <translation>%1 no tiene lecturas en este tiempo.</translation>
    </message>
    <message>
        <source>%1: %2 to %3, pauses without readings: %4.</source>
        <translation>%1: %2 a %3, pausas sin lecturas: %4.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 a %3)</translation>
    </message>
    <message>
        <source>%1 Pa</source>
        <translation>%1 Pa</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Punto de rocío</translation>
    </message>
    <message>
        <source>Drying force</source>
        <translation>Fuerza de secado</translation>
    </message>
</context>
<context>
    <name>ClimateWords</name>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barra vertical</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>año, mes, día</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>día, mes, año</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mes, día, año</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>segundos desde 1970</translation>
    </message>
    <message>
        <source>milliseconds since 1970</source>
        <translation>milisegundos desde 1970</translation>
    </message>
    <message>
        <source>day numbers of a spreadsheet</source>
        <translation>números de día de una hoja de cálculo</translation>
    </message>
    <message>
        <source>each time says its own</source>
        <translation>cada hora indica la suya</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>hora local de %1</translation>
    </message>
    <message>
        <source>%1%2:%3 all year</source>
        <translation>%1%2:%3 todo el año</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>por ciento</translation>
    </message>
    <message>
        <source>a share of 1</source>
        <translation>fracción de 1</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Letras</translation>
    </message>
    <message>
        <source>Columns parted by</source>
        <translation>Separador de columnas</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Fechas</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Reloj</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>Temperatura en</translation>
    </message>
    <message>
        <source>Humidity in</source>
        <translation>Humedad en</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>you said so</source>
        <translation>lo indicó usted</translation>
    </message>
    <message>
        <source>as confirmed for this sensor before</source>
        <translation>como se confirmó antes para este sensor</translation>
    </message>
    <message>
        <source>the file&apos;s own mark</source>
        <translation>la marca propia del archivo</translation>
    </message>
    <message>
        <source>the heading names it</source>
        <translation>lo nombra el encabezado</translation>
    </message>
    <message>
        <source>nothing else fits the lines</source>
        <translation>nada más encaja con las líneas</translation>
    </message>
    <message>
        <source>otherwise time would jump</source>
        <translation>si no, el tiempo daría saltos</translation>
    </message>
    <message>
        <source>the values look like it</source>
        <translation>los valores lo parecen</translation>
    </message>
    <message>
        <source>the rest of the file makes it likely</source>
        <translation>el resto del archivo lo hace probable</translation>
    </message>
    <message>
        <source>nothing in the file says so</source>
        <translation>nada en el archivo lo indica</translation>
    </message>
    <message>
        <source>sure, %1</source>
        <translation>cierto, %1</translation>
    </message>
    <message>
        <source>fairly sure, %1</source>
        <translation>bastante cierto, %1</translation>
    </message>
    <message>
        <source>▲ a guess, %1</source>
        <translation>▲ una suposición, %1</translation>
    </message>
    <message>
        <source>no date and time</source>
        <translation>sin fecha y hora</translation>
    </message>
    <message>
        <source>an hour the clock skipped in spring</source>
        <translation>una hora que el reloj saltó en primavera</translation>
    </message>
    <message>
        <source>the line is cut off</source>
        <translation>la línea está cortada</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>no es un número</translation>
    </message>
    <message>
        <source>a value no air has</source>
        <translation>un valor que ningún aire tiene</translation>
    </message>
    <message>
        <source>neither temperature nor humidity</source>
        <translation>ni temperatura ni humedad</translation>
    </message>
    <message>
        <source>the heading again</source>
        <translation>el encabezado otra vez</translation>
    </message>
    <message>
        <source>an endless line</source>
        <translation>una línea interminable</translation>
    </message>
    <message>
        <source>a quote that never closes</source>
        <translation>unas comillas que no se cierran</translation>
    </message>
    <message>
        <source>not text</source>
        <translation>no es texto</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>demasiado frío</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>demasiado calor</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>demasiado seco</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>demasiado húmedo</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>estimate below its bound</source>
        <translation>estimación por debajo de su límite</translation>
    </message>
    <message>
        <source>estimate straddles its bound</source>
        <translation>estimación a ambos lados de su límite</translation>
    </message>
    <message>
        <source>estimate above its bound</source>
        <translation>estimación por encima de su límite</translation>
    </message>
</context>
<context>
    <name>Data</name>
    <message>
        <source>A second salting two days after the first.</source>
        <translation>Un segundo salado dos días después del primero.</translation>
    </message>
    <message>
        <source>About two minutes for each day in cure, water at most 70 °F.</source>
        <translation>Unos dos minutos por cada día en sal, con agua a 70 °F como máximo.</translation>
    </message>
    <message>
        <source>After salting</source>
        <translation>Postsalado</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Maduración</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Oreo</translation>
    </message>
    <message>
        <source>American country</source>
        <translation>De campo (EE. UU.)</translation>
    </message>
    <message>
        <source>Another spice or herb</source>
        <translation>Otra especia o hierba</translation>
    </message>
    <message>
        <source>Ascorbic acid (vitamin C)</source>
        <translation>Ácido ascórbico (vitamina C)</translation>
    </message>
    <message>
        <source>Australia and New Zealand: cured meat</source>
        <translation>Australia y Nueva Zelanda: carne curada</translation>
    </message>
    <message>
        <source>Bacon, dry cured and smoked</source>
        <translation>Bacon curado en seco y ahumado</translation>
    </message>
    <message>
        <source>Bay leaf</source>
        <translation>Hoja de laurel</translation>
    </message>
    <message>
        <source>Biltong</source>
        <translation>Biltong</translation>
    </message>
    <message>
        <source>Black pepper, ground</source>
        <translation>Pimienta negra, molida</translation>
    </message>
    <message>
        <source>Black pepper, whole</source>
        <translation>Pimienta negra, en grano</translation>
    </message>
    <message>
        <source>Bresaola</source>
        <translation>Bresaola</translation>
    </message>
    <message>
        <source>Brine</source>
        <translation>Salmuera</translation>
    </message>
    <message>
        <source>Brown sugar, packed</source>
        <translation>Azúcar moreno, compactado</translation>
    </message>
    <message>
        <source>Burn through</source>
        <translation>Reposo de penetración</translation>
    </message>
    <message>
        <source>Cabinet drying</source>
        <translation>Secado en armario</translation>
    </message>
    <message>
        <source>Canada: cured meat</source>
        <translation>Canadá: carne curada</translation>
    </message>
    <message>
        <source>Canada: side bacon</source>
        <translation>Canadá: bacon de panceta</translation>
    </message>
    <message>
        <source>Case and tie</source>
        <translation>Embuchado y atado</translation>
    </message>
    <message>
        <source>Cellar</source>
        <translation>Bodega</translation>
    </message>
    <message>
        <source>Central European smoked</source>
        <translation>Ahumado centroeuropeo</translation>
    </message>
    <message>
        <source>Chilli, ground or flakes</source>
        <translation>Guindilla (chile), molida o en copos</translation>
    </message>
    <message>
        <source>Chinese wind-dried</source>
        <translation>Chino secado al viento</translation>
    </message>
    <message>
        <source>Coarse sea salt</source>
        <translation>Sal marina gruesa</translation>
    </message>
    <message>
        <source>Codex: heat-treated whole cuts</source>
        <translation>Codex: piezas enteras con tratamiento térmico</translation>
    </message>
    <message>
        <source>Cold smoke</source>
        <translation>Ahumado en frío</translation>
    </message>
    <message>
        <source>Cool dry</source>
        <translation>Secado fresco</translation>
    </message>
    <message>
        <source>Cool</source>
        <translation>Enfriado</translation>
    </message>
    <message>
        <source>Coppa</source>
        <translation>Coppa</translation>
    </message>
    <message>
        <source>Coriander seed</source>
        <translation>Semilla de cilantro</translation>
    </message>
    <message>
        <source>Country and dry-cured ham: water activity</source>
        <translation>Jamón de campo y curado en seco: actividad de agua</translation>
    </message>
    <message>
        <source>Country ham</source>
        <translation>Jamón de campo</translation>
    </message>
    <message>
        <source>Country ham: internal salt</source>
        <translation>Jamón de campo: sal interna</translation>
    </message>
    <message>
        <source>Country ham: loss of fresh weight</source>
        <translation>Jamón de campo: merma sobre el peso en fresco</translation>
    </message>
    <message>
        <source>Country shoulder</source>
        <translation>Paleta de campo</translation>
    </message>
    <message>
        <source>Cure</source>
        <translation>Salazón</translation>
    </message>
    <message>
        <source>Curing salt No. 1 (6.25 % nitrite)</source>
        <translation>Sal de cura n.º 1 (6,25 % de nitrito)</translation>
    </message>
    <message>
        <source>Curing salt No. 2 (6.25 % nitrite, nitrate by label)</source>
        <translation>Sal de cura n.º 2 (6,25 % de nitrito, nitrato según etiqueta)</translation>
    </message>
    <message>
        <source>Curing salt, UK (5.88 % nitrite)</source>
        <translation>Sal de cura, Reino Unido (5,88 % de nitrito)</translation>
    </message>
    <message>
        <source>Curing salt, strength from its label</source>
        <translation>Sal de cura, concentración según etiqueta</translation>
    </message>
    <message>
        <source>Damp rests let the inside follow the surface.</source>
        <translation>Los reposos húmedos dejan que el interior siga a la superficie.</translation>
    </message>
    <message>
        <source>Dextrose (monohydrate)</source>
        <translation>Dextrosa (monohidrato)</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Escurrido</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Secado</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: Rohschinken</source>
        <translation>UE antes del 9 de octubre de 2025: Rohschinken</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured bacon</source>
        <translation>UE antes del 9 de octubre de 2025: bacon curado en seco</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured ham, jamon, lomo, cecina</source>
        <translation>UE antes del 9 de octubre de 2025: jamón curado en seco, jamón, lomo, cecina</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: jambon sec</source>
        <translation>UE antes del 9 de octubre de 2025: jambon sec</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: not heat treated</source>
        <translation>UE antes del 9 de octubre de 2025: sin tratamiento térmico</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: not heat treated</source>
        <translation>UE desde el 9 de octubre de 2025: sin tratamiento térmico</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: sterilised</source>
        <translation>UE desde el 9 de octubre de 2025: esterilizado</translation>
    </message>
    <message>
        <source>Equalise and dry the surface</source>
        <translation>Asentamiento y oreo</translation>
    </message>
    <message>
        <source>Equalise</source>
        <translation>Asentamiento</translation>
    </message>
    <message>
        <source>Erythorbic acid</source>
        <translation>Ácido eritórbico</translation>
    </message>
    <message>
        <source>Fennel seed</source>
        <translation>Semilla de hinojo</translation>
    </message>
    <message>
        <source>Fenugreek, ground</source>
        <translation>Alholva (fenogreco), molida</translation>
    </message>
    <message>
        <source>Fine sea salt</source>
        <translation>Sal marina fina</translation>
    </message>
    <message>
        <source>First drying</source>
        <translation>Primer secado</translation>
    </message>
    <message>
        <source>First press</source>
        <translation>Primer prensado</translation>
    </message>
    <message>
        <source>First rest</source>
        <translation>Primer reposo</translation>
    </message>
    <message>
        <source>First salt</source>
        <translation>Primer salado</translation>
    </message>
    <message>
        <source>Fish sauce</source>
        <translation>Salsa de pescado</translation>
    </message>
    <message>
        <source>Flake salt</source>
        <translation>Sal en escamas</translation>
    </message>
    <message>
        <source>Follows the seasons where there is no thermostat.</source>
        <translation>Sigue las estaciones donde no hay termostato.</translation>
    </message>
    <message>
        <source>French</source>
        <translation>Francés</translation>
    </message>
    <message>
        <source>Fresh air</source>
        <translation>Oreo</translation>
    </message>
    <message>
        <source>Garlic powder</source>
        <translation>Ajo en polvo</translation>
    </message>
    <message>
        <source>Garlic, fresh</source>
        <translation>Ajo fresco</translation>
    </message>
    <message>
        <source>Great Britain: not heat treated</source>
        <translation>Gran Bretaña: sin tratamiento térmico</translation>
    </message>
    <message>
        <source>Guanciale</source>
        <translation>Guanciale</translation>
    </message>
    <message>
        <source>Hang to even out the salt and dry the skin.</source>
        <translation>Colgar para que la sal se reparta y la piel se seque.</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>Colgado</translation>
    </message>
    <message>
        <source>Honey</source>
        <translation>Miel</translation>
    </message>
    <message>
        <source>Italian and Spanish leg</source>
        <translation>Pernil italiano y español</translation>
    </message>
    <message>
        <source>Italian whole muscle</source>
        <translation>Músculo entero italiano</translation>
    </message>
    <message>
        <source>Jambon sec</source>
        <translation>Jambon sec</translation>
    </message>
    <message>
        <source>Juniper berries</source>
        <translation>Bayas de enebro</translation>
    </message>
    <message>
        <source>Kosher salt, dense grain</source>
        <translation>Sal kosher, grano denso</translation>
    </message>
    <message>
        <source>Kosher salt, light grain</source>
        <translation>Sal kosher, grano ligero</translation>
    </message>
    <message>
        <source>Lard</source>
        <translation>Enmantecado</translation>
    </message>
    <message>
        <source>Last drying</source>
        <translation>Último secado</translation>
    </message>
    <message>
        <source>Leg, air-dried on the bone</source>
        <translation>Pernil secado al aire, con hueso</translation>
    </message>
    <message>
        <source>Leg, mountain air</source>
        <translation>Pernil, aire de montaña</translation>
    </message>
    <message>
        <source>Listeria cannot grow: water activity</source>
        <translation>La listeria no puede crecer: actividad de agua</translation>
    </message>
    <message>
        <source>Lomo, loin in adobo</source>
        <translation>Lomo adobado</translation>
    </message>
    <message>
        <source>Long rest</source>
        <translation>Reposo largo</translation>
    </message>
    <message>
        <source>Lonzino, the cured loin</source>
        <translation>Lonzino, el lomo curado</translation>
    </message>
    <message>
        <source>Magret, dried duck breast</source>
        <translation>Magret, pechuga de pato seca</translation>
    </message>
    <message>
        <source>Maple syrup</source>
        <translation>Jarabe de arce</translation>
    </message>
    <message>
        <source>Marinate</source>
        <translation>Adobado</translation>
    </message>
    <message>
        <source>Nitrite curing salt (0.6 %)</source>
        <translation>Sal nitrificada (0,6 %)</translation>
    </message>
    <message>
        <source>Nitrite curing salt, German (0.4 to 0.5 %)</source>
        <translation>Sal nitrificada, alemana (0,4 a 0,5 %)</translation>
    </message>
    <message>
        <source>No Codex entry for cured whole cuts that are not heat treated (08.2.1) was found: do not take this one for them.</source>
        <translation>No se halló entrada del Codex para piezas enteras curadas sin tratamiento térmico (08.2.1): no tome esta para ellas.</translation>
    </message>
    <message>
        <source>No cold stage: a warm dry room with moving air.</source>
        <translation>Sin fase fría: un cuarto cálido y seco con aire en movimiento.</translation>
    </message>
    <message>
        <source>Only the ingoing row could be read, at second hand. Residual and nitrate rows of the new Annex are not here: read them before you rely on this set.</source>
        <translation>Solo se pudo leer la fila de lo añadido, y de segunda mano. Las filas de residuo y de nitrato del nuevo anexo no están aquí: léalas antes de apoyarse en este conjunto.</translation>
    </message>
    <message>
        <source>Out by day, in by night; 4 to 15 °C and 45 to 70 % are what cooks name. Warm spring weather stops it.</source>
        <translation>Fuera de día, dentro de noche; los cocineros hablan de 4 a 15 °C y del 45 al 70 %. El calor de la primavera le pone fin.</translation>
    </message>
    <message>
        <source>Pancetta, flat</source>
        <translation>Panceta plana</translation>
    </message>
    <message>
        <source>Pancetta, rolled</source>
        <translation>Panceta enrollada</translation>
    </message>
    <message>
        <source>Paprika, ground</source>
        <translation>Pimentón, molido</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Pasta de especias</translation>
    </message>
    <message>
        <source>Pastirma</source>
        <translation>Pastirma</translation>
    </message>
    <message>
        <source>Pickle</source>
        <translation>Salmuera</translation>
    </message>
    <message>
        <source>Pickling salt</source>
        <translation>Sal para encurtir</translation>
    </message>
    <message>
        <source>Poitrine séchée, dried belly</source>
        <translation>Poitrine séchée, panceta seca</translation>
    </message>
    <message>
        <source>Potassium nitrite, undiluted</source>
        <translation>Nitrito de potasio, sin diluir</translation>
    </message>
    <message>
        <source>Pulsed dry</source>
        <translation>Secado a intervalos</translation>
    </message>
    <message>
        <source>Raw ham, from the brine</source>
        <translation>Jamón crudo, de salmuera</translation>
    </message>
    <message>
        <source>Raw ham, smoked</source>
        <translation>Jamón crudo, ahumado</translation>
    </message>
    <message>
        <source>Rest in a bag</source>
        <translation>Reposo en bolsa</translation>
    </message>
    <message>
        <source>Rest in the cold</source>
        <translation>Reposo en frío</translation>
    </message>
    <message>
        <source>Restack and turn every day.</source>
        <translation>Reapilar y voltear cada día.</translation>
    </message>
    <message>
        <source>Rice wine, strength from its label</source>
        <translation>Vino de arroz, graduación según etiqueta</translation>
    </message>
    <message>
        <source>Rinse and pepper</source>
        <translation>Enjuagado y pimienta</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Enjuagado</translation>
    </message>
    <message>
        <source>Ripen</source>
        <translation>Maduración</translation>
    </message>
    <message>
        <source>Rock salt</source>
        <translation>Sal gema</translation>
    </message>
    <message>
        <source>Roll, case and tie</source>
        <translation>Enrollado, embuchado, atado</translation>
    </message>
    <message>
        <source>Rub</source>
        <translation>Frotado</translation>
    </message>
    <message>
        <source>Salt and adobo</source>
        <translation>Sal y adobo</translation>
    </message>
    <message>
        <source>Salt and vinegar</source>
        <translation>Sal y vinagre</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>Sal en la fase acuosa</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salado</translation>
    </message>
    <message>
        <source>Salted and smoked belly</source>
        <translation>Panceta salada y ahumada</translation>
    </message>
    <message>
        <source>Salted by eye and weight class: write down what was used.</source>
        <translation>Salado a ojo y por clases de peso: anote cuánto se usó.</translation>
    </message>
    <message>
        <source>Saltpetre (potassium nitrate)</source>
        <translation>Salitre (nitrato de potasio)</translation>
    </message>
    <message>
        <source>Second drying</source>
        <translation>Segundo secado</translation>
    </message>
    <message>
        <source>Second press</source>
        <translation>Segundo prensado</translation>
    </message>
    <message>
        <source>Second salt</source>
        <translation>Segundo salado</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Asentamiento</translation>
    </message>
    <message>
        <source>Shelf stable: water activity</source>
        <translation>Estable sin frío: actividad de agua</translation>
    </message>
    <message>
        <source>Shoulder or ham in sweet pickle</source>
        <translation>Paleta o jamón en salmuera dulce</translation>
    </message>
    <message>
        <source>Six hours warm, then down two degrees every twelve hours.</source>
        <translation>Seis horas en caliente, luego dos grados menos cada doce horas.</translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation>Ahumado</translation>
    </message>
    <message>
        <source>Soak</source>
        <translation>Desalado</translation>
    </message>
    <message>
        <source>Sodium ascorbate</source>
        <translation>Ascorbato de sodio</translation>
    </message>
    <message>
        <source>Sodium erythorbate</source>
        <translation>Eritorbato de sodio</translation>
    </message>
    <message>
        <source>Sodium nitrate, undiluted</source>
        <translation>Nitrato de sodio, sin diluir</translation>
    </message>
    <message>
        <source>Sodium nitrite, undiluted</source>
        <translation>Nitrito de sodio, sin diluir</translation>
    </message>
    <message>
        <source>Sodium tripolyphosphate</source>
        <translation>Tripolifosfato de sodio</translation>
    </message>
    <message>
        <source>South African</source>
        <translation>Sudafricano</translation>
    </message>
    <message>
        <source>Soy and spirit by volume: weigh them.</source>
        <translation>Soja y destilado por volumen: péselos.</translation>
    </message>
    <message>
        <source>Soy sauce</source>
        <translation>Salsa de soja</translation>
    </message>
    <message>
        <source>Spanish loin</source>
        <translation>Lomo español</translation>
    </message>
    <message>
        <source>Speck</source>
        <translation>Speck</translation>
    </message>
    <message>
        <source>Spirit, strength from its label</source>
        <translation>Destilado, graduación según etiqueta</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Apilado</translation>
    </message>
    <message>
        <source>Summer sweat is wanted. Internal temperature at most 95 °F (9 CFR 319.106).</source>
        <translation>Se busca el sudado de verano. Temperatura interna de 95 °F como máximo (9 CFR 319.106).</translation>
    </message>
    <message>
        <source>Table salt</source>
        <translation>Sal de mesa</translation>
    </message>
    <message>
        <source>The casing day is the birthday of the piece: weigh it bare and dressed.</source>
        <translation>El día de embuchar es el cumpleaños de la pieza: pésela sin nada y ya embuchada.</translation>
    </message>
    <message>
        <source>The next weighing may be wet.</source>
        <translation>La próxima pesada puede ser en húmedo.</translation>
    </message>
    <message>
        <source>The rule counts the thickness before rolling: enter the flat thickness for the cure.</source>
        <translation>La regla cuenta el grosor antes de enrollar: introduzca el grosor en plano para la salazón.</translation>
    </message>
    <message>
        <source>Third drying</source>
        <translation>Tercer secado</translation>
    </message>
    <message>
        <source>Thread and hang</source>
        <translation>Ensartado y colgado</translation>
    </message>
    <message>
        <source>Three and a half to four days per pound, about 36 °F.</source>
        <translation>De tres y medio a cuatro días por libra, a unos 36 °F.</translation>
    </message>
    <message>
        <source>Three to five millimetres of paste: weigh before and after.</source>
        <translation>De tres a cinco milímetros de pasta: pese antes y después.</translation>
    </message>
    <message>
        <source>Turkish and Armenian pressed</source>
        <translation>Prensado turco y armenio</translation>
    </message>
    <message>
        <source>Two days per pound.</source>
        <translation>Dos días por libra.</translation>
    </message>
    <message>
        <source>US FSIS: bacon, dry cured</source>
        <translation>FSIS de EE. UU.: bacon, curado en seco</translation>
    </message>
    <message>
        <source>US FSIS: bacon, immersion cured</source>
        <translation>FSIS de EE. UU.: bacon, curado por inmersión</translation>
    </message>
    <message>
        <source>US FSIS: bacon, pumped</source>
        <translation>FSIS de EE. UU.: bacon, inyectado</translation>
    </message>
    <message>
        <source>US FSIS: chopped</source>
        <translation>FSIS de EE. UU.: picado</translation>
    </message>
    <message>
        <source>US FSIS: cured, labelled to keep refrigerated</source>
        <translation>FSIS de EE. UU.: curado, etiquetado para conservar en frío</translation>
    </message>
    <message>
        <source>US FSIS: dry cured</source>
        <translation>FSIS de EE. UU.: curado en seco</translation>
    </message>
    <message>
        <source>US FSIS: immersed, pumped or massaged</source>
        <translation>FSIS de EE. UU.: por inmersión, inyección o masaje</translation>
    </message>
    <message>
        <source>US home curing</source>
        <translation>EE. UU., curado casero</translation>
    </message>
    <message>
        <source>Vinegar (5 % acid)</source>
        <translation>Vinagre (5 % de ácido)</translation>
    </message>
    <message>
        <source>Warm rest</source>
        <translation>Reposo templado</translation>
    </message>
    <message>
        <source>Warm start</source>
        <translation>Inicio templado</translation>
    </message>
    <message>
        <source>Wash and pepper</source>
        <translation>Lavado y pimienta</translation>
    </message>
    <message>
        <source>Wash and soak</source>
        <translation>Lavado y desalado</translation>
    </message>
    <message>
        <source>Wash</source>
        <translation>Lavado</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Weigh before and after.</source>
        <translation>Pese antes y después.</translation>
    </message>
    <message>
        <source>White pepper, ground</source>
        <translation>Pimienta blanca, molida</translation>
    </message>
    <message>
        <source>White sugar</source>
        <translation>Azúcar blanco</translation>
    </message>
    <message>
        <source>Whole muscle in a cabinet, pulsed air</source>
        <translation>Músculo entero en armario, aire a intervalos</translation>
    </message>
    <message>
        <source>Wind dry</source>
        <translation>Secado al viento</translation>
    </message>
    <message>
        <source>Wind-dried belly</source>
        <translation>Panceta secada al viento</translation>
    </message>
    <message>
        <source>Wine, strength from its label</source>
        <translation>Vino, graduación según etiqueta</translation>
    </message>
    <message>
        <source>Wipe and dip</source>
        <translation>Limpieza y baño</translation>
    </message>
    <message>
        <source>beef</source>
        <translation>vacuno</translation>
    </message>
    <message>
        <source>cup (US)</source>
        <translation>taza (EE. UU.)</translation>
    </message>
    <message>
        <source>cup (metric)</source>
        <translation>taza (métrica)</translation>
    </message>
    <message>
        <source>duck</source>
        <translation>pato</translation>
    </message>
    <message>
        <source>pork</source>
        <translation>cerdo</translation>
    </message>
    <message>
        <source>tablespoon (Australia)</source>
        <translation>cucharada (Australia)</translation>
    </message>
    <message>
        <source>tablespoon (US food label)</source>
        <translation>cucharada (etiquetado EE. UU.)</translation>
    </message>
    <message>
        <source>tablespoon (US)</source>
        <translation>cucharada (EE. UU.)</translation>
    </message>
    <message>
        <source>tablespoon (imperial)</source>
        <translation>cucharada (imperial)</translation>
    </message>
    <message>
        <source>tablespoon (metric)</source>
        <translation>cucharada (métrica)</translation>
    </message>
    <message>
        <source>tablespoon (traditional British)</source>
        <translation>cucharada (británica tradicional)</translation>
    </message>
    <message>
        <source>teaspoon (US)</source>
        <translation>cucharadita (EE. UU.)</translation>
    </message>
    <message>
        <source>teaspoon (metric)</source>
        <translation>cucharadita (métrica)</translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation>nitrito</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>nitrato</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>Dry-cured ham, cut, in the cold</source>
        <translation>Jamón curado, cortado, en frío</translation>
    </message>
    <message>
        <source>Dry-cured ham, frozen</source>
        <translation>Jamón curado, congelado</translation>
    </message>
    <message>
        <source>Dry-cured ham, whole and uncut, in a cool room</source>
        <translation>Jamón curado, entero y sin cortar, en un lugar fresco</translation>
    </message>
    <message>
        <source>Opened, wrapped again, in the cold</source>
        <translation>Abierto, envuelto de nuevo, en frío</translation>
    </message>
    <message>
        <source>Thawed and opened, in the cold</source>
        <translation>Descongelado y abierto, en frío</translation>
    </message>
    <message>
        <source>Whole muscle under vacuum, in the cold</source>
        <translation>Músculo entero al vacío, en frío</translation>
    </message>
    <message>
        <source>Whole muscle, frozen under vacuum</source>
        <translation>Músculo entero, congelado al vacío</translation>
    </message>
    <message>
        <source>Whole muscle, uncut, wrapped, in the cold</source>
        <translation>Músculo entero, sin cortar, envuelto, en frío</translation>
    </message>
    <message>
        <source>for quality</source>
        <translation>por la calidad</translation>
    </message>
    <message>
        <source>for quality: fat turns rancid</source>
        <translation>por la calidad: la grasa se enrancia</translation>
    </message>
    <message>
        <source>for quality; of whole hams on the bone</source>
        <translation>por la calidad; de jamones enteros con hueso</translation>
    </message>
    <message>
        <source>it goes on drying in the fridge</source>
        <translation>en el frigorífico sigue secándose</translation>
    </message>
    <message>
        <source>the chart gives three weeks after opening</source>
        <translation>la tabla da tres semanas desde la apertura</translation>
    </message>
    <message>
        <source>the chart gives two to three months</source>
        <translation>la tabla da de dos a tres meses</translation>
    </message>
    <message>
        <source>without air some dangerous microbes grow better: only for pieces that are dry and salted through</source>
        <translation>sin aire algunos microbios peligrosos crecen mejor: solo para piezas secas y saladas hasta el centro</translation>
    </message>
</context>
<context>
    <name>DateWords</name>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>A calendar day with its year, in Qt&apos;s date format; keep the parts, change their order.</extracomment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>A calendar day without its year, in Qt&apos;s date format.</extracomment>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>A calendar day of few letters, in Qt&apos;s date format.</extracomment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day, %2 a clock time</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation>
            <numerusform>dentro de %n día</numerusform>
            <numerusform>dentro de %n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>hace %n día</numerusform>
            <numerusform>hace %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>d</source>
        <extracomment>The day of the month before &quot;to 20 Mar 2026&quot;, in Qt&apos;s date format.</extracomment>
        <translation>d</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a span of days, e.g. &quot;14 to 20 Mar 2026&quot;</extracomment>
        <translation>%1 al %2</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <extracomment>A month, in Qt&apos;s date format.</extracomment>
        <translation>MMMM &apos;de&apos; yyyy</translation>
    </message>
</context>
<context>
    <name>ErrorWords</name>
    <message>
        <source>Nothing is entered here yet. Type a value.</source>
        <translation>Aquí no hay nada introducido todavía. Escriba un valor.</translation>
    </message>
    <message>
        <source>“%1” is not a number. Type digits, such as 740 or 2.5.</source>
        <translation>«%1» no es un número. Escriba cifras, como 740 o 2,5.</translation>
    </message>
    <message>
        <source>The unit “%1” is not known. Use g, kg, oz, lb, mm, in, °C, °F, mL or fl oz.</source>
        <translation>No se conoce la unidad «%1». Use g, kg, oz, lb, mm, in, °C, °F, mL o fl oz.</translation>
    </message>
    <message>
        <source>Say which unit is meant, such as g or oz.</source>
        <translation>Indique la unidad, como g u oz.</translation>
    </message>
    <message>
        <source>“%1” is another kind of quantity than is asked for here. Enter one in the unit shown beside the field.</source>
        <translation>«%1» es otro tipo de magnitud que el que se pide aquí. Introduzca un valor en la unidad indicada junto al campo.</translation>
    </message>
    <message>
        <source>“%1” is outside what is possible here. Check the digits and the unit.</source>
        <translation>«%1» está fuera de lo posible aquí. Revise las cifras y la unidad.</translation>
    </message>
    <message>
        <source>“%1” is left over after the value. Take it away or write it in a note.</source>
        <translation>«%1» sobra después del valor. Quítelo o escríbalo en una nota.</translation>
    </message>
    <message>
        <source>“%1” can be read as a thousand or as a decimal. Write it without a thousands mark.</source>
        <translation>«%1» puede leerse como millar o como decimal. Escríbalo sin separador de miles.</translation>
    </message>
    <message>
        <source>This is not in the expected form: %1. Check that it is the file you meant.</source>
        <translation>Esto no tiene la forma esperada: %1. Compruebe que es el archivo que quería.</translation>
    </message>
    <message>
        <source>The column “%1” is missing. Add it to the file&apos;s first line.</source>
        <translation>Falta la columna «%1». Añádala a la primera línea del archivo.</translation>
    </message>
    <message>
        <source>A line could not be read: %1. Mend it and read the file again.</source>
        <translation>No se pudo leer una línea: %1. Corríjala y lea el archivo de nuevo.</translation>
    </message>
    <message>
        <source>The time zone “%1” is not known on this computer. Choose another in Preferences.</source>
        <translation>No se conoce la zona horaria «%1» en este equipo. Elija otra en Preferencias.</translation>
    </message>
    <message>
        <source>%1 was not found. Check the name and whether the disk is there.</source>
        <translation>No se encontró %1. Revise el nombre y que el disco esté conectado.</translation>
    </message>
    <message>
        <source>%1 may not be read or written by you. Change its permissions or choose another place.</source>
        <translation>No tiene permiso para leer o escribir %1. Cambie los permisos o elija otro lugar.</translation>
    </message>
    <message>
        <source>%1 is a folder. Choose a file in it.</source>
        <translation>%1 es una carpeta. Elija un archivo de ella.</translation>
    </message>
    <message>
        <source>%1 is not a Saltloft book. Choose another file, or make a new book.</source>
        <translation>%1 no es un libro de Saltloft. Elija otro archivo o cree un libro nuevo.</translation>
    </message>
    <message>
        <source>This book was written by a newer Saltloft (%1). Install that version to open it; nothing was changed.</source>
        <translation>Este libro lo escribió un Saltloft más nuevo (%1). Instale esa versión para abrirlo; no se ha cambiado nada.</translation>
    </message>
    <message>
        <source>The book is damaged: %1. Open a backup, or salvage what can be read into a new book.</source>
        <translation>El libro está dañado: %1. Abra una copia de respaldo o rescate lo legible en un libro nuevo.</translation>
    </message>
    <message>
        <source>The book is busy in another program. Close it there and try again.</source>
        <translation>El libro está ocupado por otro programa. Ciérrelo allí e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The disk is full. Free some space and try again; nothing was lost.</source>
        <translation>El disco está lleno. Libere espacio e inténtelo de nuevo; no se ha perdido nada.</translation>
    </message>
    <message>
        <source>The disk did not answer as it should: %1. Check the disk, then try again.</source>
        <translation>El disco no respondió como debía: %1. Revise el disco e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The book is open for reading only, so nothing was changed. Close it elsewhere or free the file, then open it again.</source>
        <translation>El libro está abierto solo para lectura, así que no se ha cambiado nada. Ciérrelo en el otro lugar o libere el archivo y ábralo de nuevo.</translation>
    </message>
    <message>
        <source>This entry is no longer in the book: %1. Go back and choose again.</source>
        <translation>Esta entrada ya no está en el libro: %1. Vuelva atrás y elija de nuevo.</translation>
    </message>
    <message>
        <source>This clashes with what is in the book: %1. Choose another code, or look at the entry again and repeat.</source>
        <translation>Esto choca con lo que hay en el libro: %1. Elija otro código, o mire de nuevo la entrada y repita.</translation>
    </message>
    <message>
        <source>The book does not allow this: %1. Mend what is named and try again.</source>
        <translation>El libro no lo permite: %1. Corrija lo que se nombra e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>No hay nada que deshacer.</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <translation>No hay nada que rehacer.</translation>
    </message>
    <message>
        <source>There is no answer that meets everything asked: %1. Loosen one of the wishes.</source>
        <translation>No hay respuesta que cumpla todo lo pedido: %1. Rebaje alguna de las condiciones.</translation>
    </message>
    <message>
        <source>The computation did not settle: %1. More weighings usually help.</source>
        <translation>El cálculo no se estabilizó: %1. Más pesadas suelen ayudar.</translation>
    </message>
    <message>
        <source>Stopped, as you asked. Nothing was changed.</source>
        <translation>Detenido, como pidió. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>Something went wrong: %1. Try again.</source>
        <translation>Algo salió mal: %1. Inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>no detail</source>
        <translation>sin detalles</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a place such as &quot;line 14&quot; or a file, %2 a sentence</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>FindingWords</name>
    <message>
        <source>this entry</source>
        <translation>esta entrada</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Please look at this: %1.</source>
        <translation>Por favor, mire esto: %1.</translation>
    </message>
    <message>
        <source>Please look at %1: %2.</source>
        <translation>Por favor, mire %1: %2.</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Advertencia</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, by arithmetic from it</source>
        <translation>%1, por cálculo a partir de ello</translation>
    </message>
    <message>
        <source>%1 – unverified: read as quoted by others</source>
        <translation>%1 – sin verificar: leído en citas de otros</translation>
    </message>
    <message>
        <source>%1 – unverified: from memory</source>
        <translation>%1 – sin verificar: de memoria</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>This book is open elsewhere ({by}), so it can only be read here. Close it there and open it again.</source>
        <translation>Este libro está abierto en otro lugar ({by}), así que aquí solo se puede leer. Ciérrelo allí y ábralo de nuevo.</translation>
    </message>
    <message>
        <source>This book is open for reading only. To write in it, free the file&apos;s permissions and open it again.</source>
        <translation>Este libro está abierto solo para lectura. Para escribir en él, libere los permisos del archivo y ábralo de nuevo.</translation>
    </message>
    <message>
        <source>This book is damaged ({problem}) and is open for reading only. Back it up, then salvage what can be read into a new book.</source>
        <translation>Este libro está dañado ({problem}) y está abierto solo para lectura. Haga una copia de respaldo y rescate después lo legible en un libro nuevo.</translation>
    </message>
    <message>
        <source>This book lies on a network drive, where a break can lose the last entry. Keep it on this computer.</source>
        <translation>Este libro está en una unidad de red, donde un corte puede perder la última entrada. Guárdelo en este equipo.</translation>
    </message>
    <message>
        <source>This book was brought up to date from version {from} to {to}. The copy from before is {backup}.</source>
        <translation>Este libro se actualizó de la versión {from} a la {to}. La copia anterior es {backup}.</translation>
    </message>
    <message>
        <source>The program or the computer stopped without closing this book. All finished entries are here.</source>
        <translation>El programa o el equipo se detuvo sin cerrar este libro. Todas las entradas terminadas están aquí.</translation>
    </message>
    <message>
        <source>{place}: the {quantity} stood at {value} for {lasted}. A room is never that still: check the sensor&apos;s battery and contact.</source>
        <translation>{place}: la {quantity} se mantuvo en {value} durante {lasted}. Ningún recinto está tan quieto: revise la pila y el contacto del sensor.</translation>
    </message>
    <message>
        <source>{place}: the humidity jumped by {by} on {at} and stayed there, while the temperature did not. Was a battery changed, the sensor moved, or the room set to another humidity? A salt-bag check will tell.</source>
        <translation>{place}: la humedad saltó {by} el {at} y ahí se quedó, pero la temperatura no. ¿Se cambió una pila, se movió el sensor o se ajustó el recinto a otra humedad? Una prueba con bolsa de sal lo dirá.</translation>
    </message>
    <message>
        <source>{first} and {second} disagree over {hours} hours: {humidity_apart} of humidity apart. Check both over a salt slurry before you believe either.</source>
        <translation>{first} y {second} discrepan durante {hours} horas: {humidity_apart} de diferencia de humedad. Compruebe ambos sobre pasta de sal antes de creer a ninguno.</translation>
    </message>
    <message>
        <source>{place} says {stated}, but the weight losses of {pieces} pieces speak for {implied} ({implied_low} to {implied_high}). Check the sensor.</source>
        <translation>{place} dice {stated}, pero las mermas de {pieces} piezas indican {implied} ({implied_low} a {implied_high}). Revise el sensor.</translation>
    </message>
    <message>
        <source>{place}: the pieces give off {water_per_day} of water a day, more than the {capacity_per_day} it can carry out. Expect damp air and slow drying.</source>
        <translation>{place}: las piezas sueltan {water_per_day} de agua al día, más de los {capacity_per_day} que puede evacuar. Cuente con aire húmedo y secado lento.</translation>
    </message>
    <message>
        <source>{place}: the pieces give off only {water_per_day} of water a day. With so little in it the air may dry their surface too fast: watch the humidity.</source>
        <translation>{place}: las piezas sueltan solo {water_per_day} de agua al día. Con tan poca dentro, el aire puede secar la superficie demasiado deprisa: vigile la humedad.</translation>
    </message>
    <message>
        <source>{place}: {pieces} pieces for {places} places.</source>
        <translation>{place}: {pieces} piezas para {places} sitios.</translation>
    </message>
    <message>
        <source>{joining} wet pieces would hang with {nearly_dry} nearly dry ones: the water to carry out rises from {water_now} to {water_then} a day, and the dry ones would take some of it up. Hang them elsewhere, or a week apart.</source>
        <translation>{joining} piezas húmedas colgarían con {nearly_dry} casi secas: el agua que evacuar sube de {water_now} a {water_then} al día, y las secas absorberían parte de ella. Cuélguelas en otro lugar o con una semana de diferencia.</translation>
    </message>
    <message>
        <source>The day rules for this way of curing disagree: {shortest} to {longest}. Choose one and keep it with the batch.</source>
        <translation>Las reglas de días para esta forma de salazón no coinciden: {shortest} a {longest}. Elija una y guárdela con el lote.</translation>
    </message>
    <message>
        <source>This day rule belongs to another way of curing. Rules by weight come from burying in salt, rules by thickness mostly from weighed cures.</source>
        <translation>Esta regla de días es de otra forma de salazón. Las reglas por peso vienen de enterrar en sal; las reglas por grosor, sobre todo de salazones pesadas.</translation>
    </message>
    <message>
        <source>The day rules ({shortest} to {longest}) lie outside what salt diffusion suggests ({p10} to {p90}, half-way {p50}).</source>
        <translation>Las reglas de días ({shortest} a {longest}) quedan fuera de lo que sugiere la difusión de la sal ({p10} a {p90}, mitad {p50}).</translation>
    </message>
    <message>
        <source>{planned} is planned; diffusion suggests {p50} ({p10} to {p90}). The centre may get too little: give it longer or rest it cold afterwards.</source>
        <translation>Hay {planned} previstos; la difusión sugiere {p50} ({p10} a {p90}). El centro puede recibir poca sal: dele más tiempo o un reposo en frío después.</translation>
    </message>
    <message>
        <source>{planned} in more salt than it needs is longer than {p90}, when the piece passes {wanted}. Buried in salt, time is the dose.</source>
        <translation>{planned} en más sal de la que necesita supera {p90}, cuando la pieza pasa de {wanted}. Enterrada en sal, el tiempo es la dosis.</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, warmer than {limit}. Move it to a colder place.</source>
        <translation>La salazón está a {temperature}, más caliente que {limit}. Pásela a un lugar más frío.</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, colder than {limit}: salt moves slowly there, give it longer.</source>
        <translation>La salazón está a {temperature}, más fría que {limit}: ahí la sal se mueve despacio, dele más tiempo.</translation>
    </message>
    <message>
        <source>Frozen for {paused}: the cure stood still and that time is added.</source>
        <translation>Congelada durante {paused}: la salazón estuvo parada y ese tiempo se añade.</translation>
    </message>
    <message>
        <source>At {temperature} the piece is frozen and the cure stands still. No end can be given until it is thawed.</source>
        <translation>A {temperature} la pieza está congelada y la salazón está parada. No se puede dar un final hasta que se descongele.</translation>
    </message>
    <message>
        <source>Only the thickness is known; salt coming in at the ends is not counted. Enter width and length for a better figure.</source>
        <translation>Solo se conoce el grosor; no se cuenta la sal que entra por los extremos. Introduzca ancho y largo para una cifra mejor.</translation>
    </message>
    <message>
        <source>With {fat} fat most salt goes into the lean, and more slowly than the figures say.</source>
        <translation>Con {fat} de grasa, la mayor parte de la sal va al magro, y más despacio de lo que dicen las cifras.</translation>
    </message>
    <message>
        <source>With skin all round no salt can get in. Take the skin off one side.</source>
        <translation>Con piel por todos lados no puede entrar sal. Quite la piel de un lado.</translation>
    </message>
    <message>
        <source>{salt} is more than the water of the meat can hold ({most}). Ask for less.</source>
        <translation>{salt} es más de lo que puede retener el agua de la carne ({most}). Pida menos.</translation>
    </message>
    <message>
        <source>The thickness must be between 1 mm and 500 mm.</source>
        <translation>El grosor debe estar entre 1 mm y 500 mm.</translation>
    </message>
    <message>
        <source>Width and length must be at least the thickness, which is the shortest side, and at most 2 m.</source>
        <translation>El ancho y el largo deben ser al menos el grosor, que es el lado más corto, y como máximo 2 m.</translation>
    </message>
    <message>
        <source>The salt must be above 0 and at most 20 % of the meat.</source>
        <translation>La sal debe ser mayor que 0 y como máximo el 20 % de la carne.</translation>
    </message>
    <message>
        <source>The temperature of a cure must be between -40 and 45 °C.</source>
        <translation>La temperatura de una salazón debe estar entre -40 y 45 °C.</translation>
    </message>
    <message>
        <source>The liquid around the meat must be between none and 20 times the meat.</source>
        <translation>El líquido alrededor de la carne debe estar entre nada y 20 veces la carne.</translation>
    </message>
    <message>
        <source>The fat must be between 0 and 95 %.</source>
        <translation>La grasa debe estar entre el 0 y el 95 %.</translation>
    </message>
    <message>
        <source>&quot;Even&quot; must mean between 50 and 99 % of the mean at the centre.</source>
        <translation>«Uniforme» debe significar entre el 50 y el 99 % de la media en el centro.</translation>
    </message>
    <message>
        <source>The planned time must be between none and ten years.</source>
        <translation>El tiempo previsto debe estar entre nada y diez años.</translation>
    </message>
    <message>
        <source>The day rule &quot;{place}&quot; is not known. Choose one from the list.</source>
        <translation>No se conoce la regla de días «{place}». Elija una de la lista.</translation>
    </message>
    <message>
        <source>{loss} in {took}, {per_day} a day, is fast (up to {usual_most} a day is usual). The inside may be behind the outside: cut one or rest it and weigh again.</source>
        <translation>{loss} en {took}, {per_day} al día, es rápido (lo habitual es hasta {usual_most} al día). El interior puede ir por detrás del exterior: corte una pieza o déjela reposar y pese de nuevo.</translation>
    </message>
    <message>
        <source>The target is reached ({loss}), but the centre feels soft. Rest it so that it evens out, and look again.</source>
        <translation>El objetivo está alcanzado ({loss}), pero el centro se nota blando. Déjela reposar para que se iguale y mire de nuevo.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day). With {fat} fat there is little water left to lose: a fatty piece can be as dry as it gets below its target.</source>
        <translation>Casi plana en {loss} ({per_day} al día). Con {fat} de grasa queda poca agua que perder: una pieza grasa puede estar todo lo seca posible por debajo de su objetivo.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day), though the piece is lean. Ask the air first: humidity {humidity}. In wet air it stops before it is dry.</source>
        <translation>Casi plana en {loss} ({per_day} al día), aunque la pieza es magra. Mire primero el aire: humedad {humidity}. En aire húmedo se para antes de estar seca.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day) with a soft centre: a dry rim may hold the water in. Rest it in a bag, then dry on in wetter air.</source>
        <translation>Casi plana en {loss} ({per_day} al día) con el centro blando: una costra seca (acortezado) puede retener el agua. Déjela reposar en una bolsa y siga secando en aire más húmedo.</translation>
    </message>
    <message>
        <source>The loss levels off near {levels_off}; the target of {target} is not in sight in this air. Change the air or the target.</source>
        <translation>La merma se estabiliza cerca de {levels_off}; el objetivo de {target} no está a la vista con este aire. Cambie el aire o el objetivo.</translation>
    </message>
    <message>
        <source>It weighs {net}, more than at its start ({start}). Was it washed, coated or dressed? Enter that, or correct the weighing.</source>
        <translation>Pesa {net}, más que al principio ({start}). ¿Se lavó, se recubrió o se embuchó? Anótelo, o corrija la pesada.</translation>
    </message>
    <message>
        <source>{net} is less than the dry matter of {start} at the start. Look for a wrong weight, a tare or a cut that was not entered.</source>
        <translation>{net} es menos que la materia seca de {start} al principio. Busque un peso erróneo, una tara o un corte que no se anotó.</translation>
    </message>
    <message>
        <source>The raw weight is not known; {start} is reckoned from a later weight and a usual loss in the cure.</source>
        <translation>No se conoce el peso en fresco; {start} se calcula a partir de un peso posterior y de una merma habitual en la salazón.</translation>
    </message>
    <message>
        <source>Buried in salt, the amount put on says little about what went in. Salt and water activity are guesses here: have them measured.</source>
        <translation>Enterrada en sal, la cantidad aplicada dice poco de lo que entró. La sal y la actividad de agua son aquí suposiciones: hágalas medir.</translation>
    </message>
    <message>
        <source>The water activity is an estimate from weights and salt. A rule that asks for it asks for a measurement.</source>
        <translation>La actividad de agua es una estimación a partir de pesos y sal. Una norma que la exige pide una medición.</translation>
    </message>
    <message>
        <source>Measured {measured}, estimated {low} to {high}. Look at the sample&apos;s place, the instrument&apos;s check, the salt and the fat entered.</source>
        <translation>Medido {measured}, estimado {low} a {high}. Revise el lugar de la muestra, la comprobación del instrumento, y la sal y la grasa introducidas.</translation>
    </message>
    <message>
        <source>The weighings were not in order of time; they were sorted.</source>
        <translation>Las pesadas no estaban en orden de tiempo; se han ordenado.</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to see the evidence.</source>
        <translation>El valor de {place} no es posible. Corríjalo para ver los indicios.</translation>
    </message>
    <message>
        <source>At {temperature} the piece spends about {time} between {low} and {high}, where microbes grow.</source>
        <translation>A {temperature} la pieza pasa unos {time} entre {low} y {high}, donde crecen los microbios.</translation>
    </message>
    <message>
        <source>About {time} in this warmth is longer than the {guide} that a guide (for fish) allows ready-to-eat food.</source>
        <translation>Unos {time} con este calor es más que {guide}, lo que una guía (de pescado) admite para alimentos listos para comer.</translation>
    </message>
    <message>
        <source>The piece may still be wetter than a water activity of {limit}. Dry it further in the cold before warming it.</source>
        <translation>La pieza puede estar todavía más húmeda que una actividad de agua de {limit}. Siga secándola en frío antes de calentarla.</translation>
    </message>
    <message>
        <source>In warm air of {humidity} a thick piece can dry hard outside and stay wet inside.</source>
        <translation>En aire cálido con {humidity}, una pieza gruesa puede secarse dura por fuera y quedar húmeda por dentro.</translation>
    </message>
    <message>
        <source>Warming at the end does not undo a toxin that Staphylococcus aureus has left.</source>
        <translation>Calentar al final no elimina una toxina que haya dejado Staphylococcus aureus.</translation>
    </message>
    <message>
        <source>At {temperature} the piece begins to cook rather than dry.</source>
        <translation>A {temperature} la pieza empieza a cocerse en lugar de secarse.</translation>
    </message>
    <message>
        <source>{target} is more than the water left can give; it levels off near {levels_off}.</source>
        <translation>{target} es más de lo que puede dar el agua que queda; se estabiliza cerca de {levels_off}.</translation>
    </message>
    <message>
        <source>The loss wanted is already reached ({loss}).</source>
        <translation>La merma deseada ya está alcanzada ({loss}).</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to get an answer.</source>
        <translation>El valor de {place} no es posible. Corríjalo para obtener una respuesta.</translation>
    </message>
    <message>
        <source>This is more salt than the water can dissolve ({most} of the water phase).</source>
        <translation>Esto es más sal de la que el agua puede disolver ({most} de la fase acuosa).</translation>
    </message>
    <message>
        <source>The wet end of the estimate is above {limit}, the lowest water activity at which {name} grows.</source>
        <translation>El extremo húmedo de la estimación está por encima de {limit}, la actividad de agua más baja a la que crece {name}.</translation>
    </message>
    <message>
        <source>The weighing of {at} lies off the curve by {off_by}. Was the tare right, the hook on the scale, the scale level? Weigh again or correct the entry.</source>
        <translation>La pesada del {at} se aparta de la curva en {off_by}. ¿Era correcta la tara, estaba el gancho en la balanza, estaba nivelada la balanza? Pese de nuevo o corrija la entrada.</translation>
    </message>
    <message>
        <source>{pieces} pieces weighed on {at} stepped by {shift} the same way. That points to the scale or its zero, not to the meat: check it with a known weight.</source>
        <translation>{pieces} piezas pesadas el {at} saltaron {shift} en el mismo sentido. Eso apunta a la balanza o a su cero, no a la carne: compruébela con un peso conocido.</translation>
    </message>
    <message>
        <source>The loss has nearly stopped ({rate_per_day} a day). A firm piece may be finished or fat; a soft one may have dried hard outside; a wet chamber slows all.</source>
        <translation>La merma casi se ha parado ({rate_per_day} al día). Una pieza firme puede estar hecha o ser grasa; una blanda puede estar acortezada; una cámara húmeda lo frena todo.</translation>
    </message>
    <message>
        <source>It lost {loss} in {over}: the outside is drying faster than the inside can follow. Look for a hard rim; more humidity or a rest in a bag evens it out.</source>
        <translation>Ha perdido {loss} en {over}: el exterior se seca más deprisa de lo que el interior puede seguir. Busque una costra dura; más humedad o un reposo en bolsa lo iguala.</translation>
    </message>
    <message>
        <source>It weighs {gain} more than before ({at}). Was it washed, coated or dressed? Enter that as an event, or correct the weighing.</source>
        <translation>Pesa {gain} más que antes ({at}). ¿Se lavó, se recubrió o se embuchó? Anótelo como suceso, o corrija la pesada.</translation>
    </message>
    <message>
        <source>The losses speak for about {implied} in the air, the log says {logged}. Check the hygrometer over a salt slurry.</source>
        <translation>Las mermas indican unos {implied} en el aire; el registro dice {logged}. Compruebe el higrómetro sobre pasta de sal.</translation>
    </message>
    <message>
        <source>The target of {target} lies beyond where this piece levels off ({levels_off}). Drier air or a lower target would change that.</source>
        <translation>El objetivo de {target} está más allá de donde se estabiliza esta pieza ({levels_off}). Un aire más seco o un objetivo más bajo lo cambiaría.</translation>
    </message>
    <message>
        <source>The weight that the target counts from ({reference}) was never taken. Enter it, or count from another weight.</source>
        <translation>El peso desde el que cuenta el objetivo ({reference}) nunca se tomó. Introdúzcalo o cuente desde otro peso.</translation>
    </message>
    <message>
        <source>An event ({event}, {at}) has no weights, so the start could not be shared out. Enter the net weight before and after.</source>
        <translation>Un suceso ({event}, {at}) no tiene pesos, así que no se pudo repartir el peso inicial. Introduzca el peso neto antes y después.</translation>
    </message>
    <message>
        <source>The weighing of {at} has no tare; the last known one was taken. Correct it if the casing or net changed.</source>
        <translation>La pesada del {at} no tiene tara; se tomó la última conocida. Corríjala si cambió la tripa o la malla.</translation>
    </message>
    <message>
        <source>{place} has no code. Give it two or three letters or digits.</source>
        <translation>{place} no tiene código. Dele dos o tres letras o cifras.</translation>
    </message>
    <message>
        <source>The code {place} is taken already. Choose another.</source>
        <translation>El código {place} ya está ocupado. Elija otro.</translation>
    </message>
    <message>
        <source>The code {place} stands twice. Give each its own.</source>
        <translation>El código {place} aparece dos veces. Dé a cada uno el suyo.</translation>
    </message>
    <message>
        <source>{place} has no name. Enter one.</source>
        <translation>{place} no tiene nombre. Introduzca uno.</translation>
    </message>
    <message>
        <source>The name of {place} is taken already. Choose another.</source>
        <translation>El nombre de {place} ya está ocupado. Elija otro.</translation>
    </message>
    <message>
        <source>Say in a few words why; the reason is kept with the change.</source>
        <translation>Diga en pocas palabras por qué; el motivo se guarda con el cambio.</translation>
    </message>
    <message>
        <source>Nothing is entered yet.</source>
        <translation>Aún no hay nada introducido.</translation>
    </message>
    <message>
        <source>{place} is not a number. Type digits.</source>
        <translation>{place} no es un número. Escriba cifras.</translation>
    </message>
    <message>
        <source>{place} lies in the future. Check the day and time.</source>
        <translation>{place} está en el futuro. Revise el día y la hora.</translation>
    </message>
    <message>
        <source>The weight of {place} must be more than nothing.</source>
        <translation>El peso de {place} debe ser mayor que cero.</translation>
    </message>
    <message>
        <source>The weight of {place} is below nothing. Check it.</source>
        <translation>El peso de {place} es menor que cero. Revíselo.</translation>
    </message>
    <message>
        <source>The weight of {place} is far outside what a piece weighs. Check the unit.</source>
        <translation>El peso de {place} está muy lejos de lo que pesa una pieza. Revise la unidad.</translation>
    </message>
    <message>
        <source>The tare of {place} is as heavy as what is on the scale. Check both.</source>
        <translation>La tara de {place} pesa tanto como lo que hay en la balanza. Revise ambas.</translation>
    </message>
    <message>
        <source>The thickness of {place} must be more than nothing.</source>
        <translation>El grosor de {place} debe ser mayor que cero.</translation>
    </message>
    <message>
        <source>The share of {place} must lie between 0 and 100 %.</source>
        <translation>La proporción de {place} debe estar entre el 0 y el 100 %.</translation>
    </message>
    <message>
        <source>The loss aimed for of {place} must lie between 0 and 100 %.</source>
        <translation>La merma buscada de {place} debe estar entre el 0 y el 100 %.</translation>
    </message>
    <message>
        <source>A score goes from 2 too little to 2 too much.</source>
        <translation>Una puntuación va de 2 de menos a 2 de más.</translation>
    </message>
    <message>
        <source>The count of {place} is below nothing.</source>
        <translation>El recuento de {place} es menor que cero.</translation>
    </message>
    <message>
        <source>The count of {place} must be at least one.</source>
        <translation>El recuento de {place} debe ser al menos uno.</translation>
    </message>
    <message>
        <source>The price of {place} is below nothing.</source>
        <translation>El precio de {place} es menor que cero.</translation>
    </message>
    <message>
        <source>The lower end of {place} lies above its upper end. Swap them.</source>
        <translation>El extremo inferior de {place} está por encima del superior. Intercámbielos.</translation>
    </message>
    <message>
        <source>{place} ends before it starts. Check the days.</source>
        <translation>{place} termina antes de empezar. Revise los días.</translation>
    </message>
    <message>
        <source>The text of {place} is too long. Shorten it.</source>
        <translation>El texto de {place} es demasiado largo. Acórtelo.</translation>
    </message>
    <message>
        <source>The photo of {place} is too large. Take a smaller copy.</source>
        <translation>La foto de {place} es demasiado grande. Use una copia más pequeña.</translation>
    </message>
    <message>
        <source>The recipe of {place} is empty.</source>
        <translation>La receta de {place} está vacía.</translation>
    </message>
    <message>
        <source>The weight that {place} counts from cannot be known at this point.</source>
        <translation>El peso desde el que cuenta {place} no se puede conocer en este momento.</translation>
    </message>
    <message>
        <source>Name at least two pieces.</source>
        <translation>Nombre al menos dos piezas.</translation>
    </message>
    <message>
        <source>The pieces belong to different batches. Weigh only pieces of one batch as one.</source>
        <translation>Las piezas son de lotes distintos. Pese juntas solo piezas de un mismo lote.</translation>
    </message>
    <message>
        <source>{place} was discarded already.</source>
        <translation>{place} ya se descartó.</translation>
    </message>
    <message>
        <source>{place} was cut or weighed with others and carries on under another code. Open that piece.</source>
        <translation>{place} se cortó o se pesó con otras y sigue con otro código. Abra esa pieza.</translation>
    </message>
    <message>
        <source>Cutting and weighing as one have forms of their own.</source>
        <translation>Cortar y pesar juntas tienen sus propios formularios.</translation>
    </message>
    <message>
        <source>{place} is in the book already. Correct it instead.</source>
        <translation>{place} ya está en el libro. Corríjalo en su lugar.</translation>
    </message>
    <message>
        <source>The stage {place} has started, so it stays as it is.</source>
        <translation>La fase {place} ya ha empezado, así que se queda como está.</translation>
    </message>
    <message>
        <source>The stage {place} has ended already.</source>
        <translation>La fase {place} ya ha terminado.</translation>
    </message>
    <message>
        <source>The stage {place} belongs to another batch.</source>
        <translation>La fase {place} es de otro lote.</translation>
    </message>
    <message>
        <source>That is more than is left in {place}. Check the amount, or count the pack again.</source>
        <translation>Eso es más de lo que queda en {place}. Revise la cantidad o cuente el envase de nuevo.</translation>
    </message>
    <message>
        <source>{place} refers to itself.</source>
        <translation>{place} se refiere a sí mismo.</translation>
    </message>
    <message>
        <source>This is not a recipe file: it is no JSON text.</source>
        <translation>Esto no es un archivo de receta: no es texto JSON.</translation>
    </message>
    <message>
        <source>The recipe says version &quot;{found}&quot;; this program reads {wanted}. Was it written by a newer Saltloft?</source>
        <translation>La receta indica la versión «{found}»; este programa lee {wanted}. ¿La escribió un Saltloft más nuevo?</translation>
    </message>
    <message>
        <source>{place} is missing: {wanted}.</source>
        <translation>Falta {place}: {wanted}.</translation>
    </message>
    <message>
        <source>{place} means nothing here. Known are: {wanted}. Mend the spelling, so that nothing is left out.</source>
        <translation>{place} no significa nada aquí. Se conocen: {wanted}. Corrija la grafía, para que nada se quede fuera.</translation>
    </message>
    <message>
        <source>{place} is {found}; needed is: {wanted}.</source>
        <translation>{place} es {found}; se necesita: {wanted}.</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;; known are: {wanted}.</source>
        <translation>{place} dice «{found}»; se conocen: {wanted}.</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;, which cannot be read as a quantity ({reason}). Write it like this: {wanted}.</source>
        <translation>{place} dice «{found}», que no se puede leer como cantidad ({reason}). Escríbalo así: {wanted}.</translation>
    </message>
    <message>
        <source>The recipe has no ingredients yet. Add the first.</source>
        <translation>La receta aún no tiene ingredientes. Añada el primero.</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is not in the catalogue. Choose another, or describe your own from its label.</source>
        <translation>«{found}» no está en el catálogo. Elija otro o describa el suyo según su etiqueta.</translation>
    </message>
    <message>
        <source>{ingredient} stands in the recipe twice. Both count: is that meant?</source>
        <translation>{ingredient} figura dos veces en la receta. Cuentan las dos: ¿es lo que quería?</translation>
    </message>
    <message>
        <source>Two ingredients of your own share the id {found}. Rename one.</source>
        <translation>Dos ingredientes propios comparten el identificador {found}. Cambie el nombre de uno.</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the nitrite and nitrate from its label. Curing salts differ tenfold.</source>
        <translation>{ingredient}: ¿qué concentración tiene? Introduzca el nitrito y el nitrato de su etiqueta. Las sales de cura varían hasta diez veces.</translation>
    </message>
    <message>
        <source>{ingredient}: a strength of {found} looks like a proportion typed as percent. 0.0625 on a sheet is 6.25 %. Enter what the label says.</source>
        <translation>{ingredient}: una concentración de {found} parece una proporción escrita como porcentaje. 0,0625 en una hoja es el 6,25 %. Introduzca lo que dice la etiqueta.</translation>
    </message>
    <message>
        <source>{ingredient}: no curing salt is sold at {found}; labels run from {low} to {high}. Read the label again.</source>
        <translation>{ingredient}: no se vende sal de cura con {found}; las etiquetas van de {low} a {high}. Lea la etiqueta de nuevo.</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {strength} nitrite, from its name only. Enter the strength from the label in your hand.</source>
        <translation>{ingredient}: calculado con {strength} de nitrito, solo por su nombre. Introduzca la concentración de la etiqueta que tiene en la mano.</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the percent by volume from the label.</source>
        <translation>{ingredient}: ¿qué graduación tiene? Introduzca el porcentaje en volumen de la etiqueta.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is stronger than distilling goes. Is it proof?</source>
        <translation>{ingredient}: {found} % en volumen es más de lo que alcanza la destilación. ¿Son grados proof?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is rare. If the label says proof, enter it as proof with its country.</source>
        <translation>{ingredient}: {found} % en volumen es raro. Si la etiqueta dice proof, introdúzcalo como proof con su país.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is a spirit&apos;s strength, not a wine&apos;s.</source>
        <translation>{ingredient}: {found} % en volumen es la graduación de un destilado, no la de un vino.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} is more than pure salt holds. Milligrams taken for grams?</source>
        <translation>{ingredient}: {found} es más de lo que contiene la sal pura. ¿Miligramos tomados por gramos?</translation>
    </message>
    <message>
        <source>{ingredient}: how salty is it? Enter salt or sodium from its label.</source>
        <translation>{ingredient}: ¿cuánta sal tiene? Introduzca la sal o el sodio de su etiqueta.</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {low} to {high} salt. Enter the sodium from the label to narrow that.</source>
        <translation>{ingredient}: calculado con {low} a {high} de sal. Introduzca el sodio de la etiqueta para afinarlo.</translation>
    </message>
    <message>
        <source>{ingredient}: the parts add up to {found}. Check the label&apos;s figures.</source>
        <translation>{ingredient}: las partes suman {found}. Revise las cifras de la etiqueta.</translation>
    </message>
    <message>
        <source>{ingredient}: nothing in a kitchen weighs {found} g to the millilitre.</source>
        <translation>{ingredient}: nada en una cocina pesa {found} g por mililitro.</translation>
    </message>
    <message>
        <source>{ingredient}: no density is known, so a volume cannot be turned into weight. Please weigh it.</source>
        <translation>{ingredient}: no se conoce la densidad, así que un volumen no se puede convertir en peso. Péselo, por favor.</translation>
    </message>
    <message>
        <source>{ingredient}: its label counts by volume. Enter its density, or weigh 100 mL of it.</source>
        <translation>{ingredient}: su etiqueta cuenta por volumen. Introduzca su densidad o pese 100 mL.</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is no measure with a known size. Spoons differ by country: choose one from the list, or weigh.</source>
        <translation>«{found}» no es una medida de tamaño conocido. Las cucharas varían según el país: elija una de la lista o pese.</translation>
    </message>
    <message>
        <source>{ingredient}: the amount is nothing. Enter it or take the line out.</source>
        <translation>{ingredient}: la cantidad es cero. Introdúzcala o quite la línea.</translation>
    </message>
    <message>
        <source>There is no water to count from. Add the water of the brine.</source>
        <translation>No hay agua desde la que contar. Añada el agua de la salmuera.</translation>
    </message>
    <message>
        <source>Water cannot be a share of itself. Enter it by weight, by volume or as a share of the meat.</source>
        <translation>El agua no puede ser una proporción de sí misma. Introdúzcala por peso, por volumen o como proporción de la carne.</translation>
    </message>
    <message>
        <source>Some amounts are fixed and stay the same for any weight of meat. Say for how much meat they were written, and they follow.</source>
        <translation>Algunas cantidades son fijas y no cambian con el peso de la carne. Diga para cuánta carne se escribieron y la seguirán.</translation>
    </message>
    <message>
        <source>How much pickle is pumped in? Enter it as a share of the meat.</source>
        <translation>¿Cuánta salmuera se inyecta? Introdúzcala como proporción de la carne.</translation>
    </message>
    <message>
        <source>How much pickle does the meat take up? Weigh a piece before and after, or use the method at equilibrium.</source>
        <translation>¿Cuánta salmuera absorbe la carne? Pese una pieza antes y después, o use el método en equilibrio.</translation>
    </message>
    <message>
        <source>{found} looks like a proportion typed as percent: 0.1 on a sheet is 10 %.</source>
        <translation>{found} parece una proporción escrita como porcentaje: 0,1 en una hoja es el 10 %.</translation>
    </message>
    <message>
        <source>Meat does not take up {found} of its weight.</source>
        <translation>La carne no absorbe {found} de su peso.</translation>
    </message>
    <message>
        <source>{found} of the meat&apos;s weight is a lot of pickle.</source>
        <translation>{found} del peso de la carne es mucha salmuera.</translation>
    </message>
    <message>
        <source>Buried in salt, what goes on is known and what goes in is not: the doses here are what you put on.</source>
        <translation>Enterrada en sal, se sabe lo que se pone y no lo que entra: las dosis son aquí lo que usted pone.</translation>
    </message>
    <message>
        <source>The rubs add up to {found}, not to the whole.</source>
        <translation>Los frotados suman {found}, no el total.</translation>
    </message>
    <message>
        <source>The rubs must follow each other in time.</source>
        <translation>Los frotados deben seguirse en el tiempo.</translation>
    </message>
    <message>
        <source>{place}: there is no such rub in the recipe.</source>
        <translation>{place}: no hay tal frotado en la receta.</translation>
    </message>
    <message>
        <source>Raw meat seldom holds {found} of water.</source>
        <translation>La carne cruda rara vez contiene {found} de agua.</translation>
    </message>
    <message>
        <source>Skin is seldom {found} of a piece.</source>
        <translation>La piel rara vez es {found} de una pieza.</translation>
    </message>
    <message>
        <source>No meat loses {found} of its weight by drying.</source>
        <translation>Ninguna carne pierde {found} de su peso al secarse.</translation>
    </message>
    <message>
        <source>Enter the weight of the meat.</source>
        <translation>Introduzca el peso de la carne.</translation>
    </message>
    <message>
        <source>A piece without a weight cannot be dosed.</source>
        <translation>Una pieza sin peso no se puede dosificar.</translation>
    </message>
    <message>
        <source>A piece of {found}: grams, or kilograms?</source>
        <translation>Una pieza de {found}: ¿gramos o kilogramos?</translation>
    </message>
    <message>
        <source>A piece of {found}: kilograms, or grams?</source>
        <translation>Una pieza de {found}: ¿kilogramos o gramos?</translation>
    </message>
    <message>
        <source>{amount} of {ingredient} on a {step} scale is wrong by up to {error}. Use a finer scale, or blend a larger batch first.</source>
        <translation>{amount} de {ingredient} en una balanza de {step} pueden errar hasta en {error}. Use una balanza más fina o haga antes una mezcla más grande.</translation>
    </message>
    <message>
        <source>On a {step} scale a piece&apos;s cure would show as nothing. Use a finer scale, or blend a larger batch first.</source>
        <translation>En una balanza de {step} la dosis de una pieza marcaría cero. Use una balanza más fina o haga antes una mezcla más grande.</translation>
    </message>
    <message>
        <source>Your wish for {what} ({asked}) cannot be met with what you hold: it comes to {found}, short by {by}.</source>
        <translation>Lo que desea para {what} ({asked}) no se puede cumplir con lo que mantiene fijo: resulta {found}, faltan {by}.</translation>
    </message>
    <message>
        <source>What you hold brings more {what} than the limit of {asked}: {found}.</source>
        <translation>Lo que mantiene fijo aporta más {what} que el límite de {asked}: {found}.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about ten times what is usual. A slipped decimal?</source>
        <translation>{ingredient}: {found} de la carne es unas diez veces lo habitual. ¿Un decimal corrido?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about a tenth of what is usual. A slipped decimal?</source>
        <translation>{ingredient}: {found} de la carne es cerca de una décima parte de lo habitual. ¿Un decimal corrido?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} looks like a proportion typed as percent. 0.025 on a sheet is 2.5 %.</source>
        <translation>{ingredient}: {found} parece una proporción escrita como porcentaje. 0,025 en una hoja es el 2,5 %.</translation>
    </message>
    <message>
        <source>{ingredient} at {found} of the meat: that is an amount for salt, not for a strong curing salt. It would be {nitrite} nitrite.</source>
        <translation>{ingredient} a {found} de la carne: es una cantidad para sal, no para una sal de cura fuerte. Serían {nitrite} de nitrito.</translation>
    </message>
    <message>
        <source>{ingredient}: with tablespoons the dose is {found}. Teaspoons would be usual. Please weigh it.</source>
        <translation>{ingredient}: con cucharadas la dosis es {found}. Lo habitual serían cucharaditas. Péselo, por favor.</translation>
    </message>
    <message>
        <source>{ingredient} is measured by the spoon. Spoons differ by a quarter: weigh it.</source>
        <translation>{ingredient} se mide a cucharadas. Las cucharas varían en una cuarta parte: péselo.</translation>
    </message>
    <message>
        <source>{ingredient} is undiluted. A gram too much is a poisonous dose: a ready-mixed curing salt forgives more.</source>
        <translation>{ingredient} está sin diluir. Un gramo de más es una dosis venenosa: una sal de cura ya mezclada perdona más.</translation>
    </message>
    <message>
        <source>{ingredient} holds {strength} nitrite, so this gives {found} only. Is the amount meant for a strong curing salt?</source>
        <translation>{ingredient} contiene {strength} de nitrito, así que esto da solo {found}. ¿Es la cantidad para una sal de cura fuerte?</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>El nitrito llega a {found}. Ningún límite registrado para ningún producto permite más de {limit}.</translation>
    </message>
    <message>
        <source>Nitrate comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>El nitrato llega a {found}. Ningún límite registrado para ningún producto permite más de {limit}.</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}; above {limit} is allowed for few products. Choose the limits that apply to you.</source>
        <translation>El nitrito llega a {found}; más de {limit} se permite en pocos productos. Elija los límites que le afectan.</translation>
    </message>
    <message>
        <source>There is no nitrite or nitrate in this recipe.</source>
        <translation>No hay nitrito ni nitrato en esta receta.</translation>
    </message>
    <message>
        <source>No limits are chosen, so the dose is checked against none. Choose the ones that apply to you.</source>
        <translation>No hay límites elegidos, así que la dosis no se compara con ninguno. Elija los que le afectan.</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; whole muscle is seldom cured with less than {limit} (common practice).</source>
        <translation>La sal llega a {found} de la carne; el músculo entero rara vez se cura con menos de {limit} (práctica común).</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; above {limit} few people eat it (common practice).</source>
        <translation>La sal llega a {found} de la carne; por encima de {limit} poca gente la come (práctica común).</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat. With weighed salt that is a slip; for burying in salt choose that method.</source>
        <translation>La sal llega a {found} de la carne. Con sal pesada es un desliz; para enterrar en sal elija ese método.</translation>
    </message>
    <message>
        <source>Sugar comes to {found} of the meat; more than {limit} is unusual.</source>
        <translation>El azúcar llega a {found} de la carne; más de {limit} no es habitual.</translation>
    </message>
    <message>
        <source>Accelerator comes to {found}; usual is about half a gram to the kilogram.</source>
        <translation>El acelerador llega a {found}; lo habitual es cerca de medio gramo por kilogramo.</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, above the limit of {limit}.</source>
        <translation>{set}: {substance} llega a {found}, por encima del límite de {limit}.</translation>
    </message>
    <message>
        <source>{set}: {substance} is not permitted; the recipe brings {found}.</source>
        <translation>{set}: {substance} no se permite; la receta aporta {found}.</translation>
    </message>
    <message>
        <source>{set}: {substance} keeps the limit of {limit}, but with the spread of what you measure it may come to {found}.</source>
        <translation>{set}: {substance} respeta el límite de {limit}, pero con la dispersión de lo que usted mide puede llegar a {found}.</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, below the minimum of {limit}.</source>
        <translation>{set}: {substance} llega a {found}, por debajo del mínimo de {limit}.</translation>
    </message>
    <message>
        <source>{set}: the limit of {limit} for {substance} is on what a laboratory finds in the product. No sum can show it; {found} goes in.</source>
        <translation>{set}: el límite de {limit} para {substance} se refiere a lo que un laboratorio halla en el producto. Ningún cálculo puede mostrarlo; se añaden {found}.</translation>
    </message>
    <message>
        <source>{set}: the limit for {substance} is on the finished product. Enter the expected loss, or the dose is judged too low.</source>
        <translation>{set}: el límite para {substance} se refiere al producto terminado. Introduzca la merma esperada, o la dosis se juzga demasiado baja.</translation>
    </message>
    <message>
        <source>{set}: unverified. The issuer&apos;s own text was not read for all of it.</source>
        <translation>{set}: sin verificar. No se leyó todo en el texto del propio emisor.</translation>
    </message>
    <message>
        <source>{set}: not in force today.</source>
        <translation>{set}: no está en vigor hoy.</translation>
    </message>
    <message>
        <source>{set}: made for another way of curing than this recipe&apos;s.</source>
        <translation>{set}: hecho para otra forma de salazón que la de esta receta.</translation>
    </message>
    <message>
        <source>There are no limits called &quot;{found}&quot;. Choose from the list.</source>
        <translation>No hay límites llamados «{found}». Elija de la lista.</translation>
    </message>
    <message>
        <source>Skin on: {share} of the weight is taken off before the sum.</source>
        <translation>Con piel: {share} del peso se descuenta antes del cálculo.</translation>
    </message>
    <message>
        <source>No piece is entered: the days are for the usual one.</source>
        <translation>No hay ninguna pieza introducida: los días son para la habitual.</translation>
    </message>
    <message>
        <source>The weight is not entered: {weight} is assumed.</source>
        <translation>No se introdujo el peso: se suponen {weight}.</translation>
    </message>
    <message>
        <source>The thickness is not entered: {thickness_mm} mm is assumed.</source>
        <translation>No se introdujo el grosor: se suponen {thickness_mm} mm.</translation>
    </message>
    <message>
        <source>Nothing says how long “{place}” takes: it is planned as no time at all. Enter a time for it.</source>
        <translation>Nada dice cuánto dura «{place}»: se planifica sin tiempo alguno. Introduzca un tiempo.</translation>
    </message>
    <message>
        <source>“{place}” is made longer: the rule asks for {needed} in all, and the stages came to {days}.</source>
        <translation>«{place}» se alarga: la regla pide {needed} en total y las fases sumaban {days}.</translation>
    </message>
    <message>
        <source>The day rule of “{place}” belongs to another way of salting: days per kilogram are for burying in salt or for brine, days per centimetre for a weighed cure.</source>
        <translation>La regla de días de «{place}» es de otra forma de salado: los días por kilogramo son para enterrar en sal o para salmuera; los días por centímetro, para una salazón pesada.</translation>
    </message>
    <message>
        <source>“{place}” has {days}, and its rule asks for {needed}. Give it the time.</source>
        <translation>«{place}» tiene {days} y su regla pide {needed}. Dele el tiempo.</translation>
    </message>
    <message>
        <source>The day lies in the past.</source>
        <translation>El día está en el pasado.</translation>
    </message>
    <message>
        <source>It needs {days_needed} days and there are {days_available}: {shortfall} too few.</source>
        <translation>Necesita {days_needed} días y hay {days_available}: faltan {shortfall}.</translation>
    </message>
    <message>
        <source>“{place}” takes {days} days, and cannot take less.</source>
        <translation>«{place}» dura {days} días y no puede durar menos.</translation>
    </message>
    <message>
        <source>Nothing says when “{place}” ends or how long it usually takes.</source>
        <translation>Nada dice cuándo termina «{place}» ni cuánto suele durar.</translation>
    </message>
    <message>
        <source>“{place}” repeats with more stages than follow it.</source>
        <translation>«{place}» se repite con más fases de las que le siguen.</translation>
    </message>
    <message>
        <source>The number of rounds of “{place}” lies outside its own bounds.</source>
        <translation>El número de rondas de «{place}» está fuera de sus propios límites.</translation>
    </message>
    <message>
        <source>“{place}” repeats inside another repeat, which cannot be planned.</source>
        <translation>«{place}» se repite dentro de otra repetición, y eso no se puede planificar.</translation>
    </message>
    <message>
        <source>“{place}” shares a room with a stage that is not in the plan.</source>
        <translation>«{place}» comparte recinto con una fase que no está en el plan.</translation>
    </message>
    <message>
        <source>A minimum names the stage “{place}”, which is not in the plan.</source>
        <translation>Un mínimo nombra la fase «{place}», que no está en el plan.</translation>
    </message>
    <message>
        <source>Two stages are called “{place}”.</source>
        <translation>Dos fases se llaman «{place}».</translation>
    </message>
    <message>
        <source>The plan has no stage that salts.</source>
        <translation>El plan no tiene ninguna fase de salado.</translation>
    </message>
    <message>
        <source>{on_scale} is not more than the tare of {tare}. Weigh again.</source>
        <translation>{on_scale} no supera la tara de {tare}. Pese de nuevo.</translation>
    </message>
    <message>
        <source>Last time it was {last}: is {on_scale} a slip of the decimal sign?</source>
        <translation>La última vez fueron {last}: ¿es {on_scale} un desliz del signo decimal?</translation>
    </message>
    <message>
        <source>{on_scale} was not expected: between {low} and {high} would be. Right piece, right tare, hook on?</source>
        <translation>No se esperaban {on_scale}: lo esperado está entre {low} y {high}. ¿Pieza correcta, tara correcta, gancho puesto?</translation>
    </message>
    <message>
        <source>The same number as last time. That can mean done, a coarse scale or a damp chamber.</source>
        <translation>El mismo número que la última vez. Puede significar que está hecha, que la balanza es poco fina o que la cámara está húmeda.</translation>
    </message>
    <message>
        <source>{place} is not finished, so it cannot hang again. Record what happens to it instead.</source>
        <translation>{place} no está terminada, así que no puede volver a colgarse. Anote en su lugar lo que pasa con ella.</translation>
    </message>
    <message>
        <source>{place} is packed. Take it out of its pack in Stock: hung again.</source>
        <translation>{place} está envasada. Sáquela de su envase en Existencias: colgada de nuevo.</translation>
    </message>
    <message>
        <source>A caution is taken on by a person: say who it is.</source>
        <translation>Una advertencia la asume una persona: indique quién es.</translation>
    </message>
</context>
<context>
    <name>KeepWords</name>
    <message numerus="yes">
        <source>%1: %n day(s) from opening</source>
        <translation>
            <numerusform>%1: un día desde la apertura</numerusform>
            <numerusform>%1: %n días desde la apertura</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n day(s) from packing</source>
        <translation>
            <numerusform>%1: un día desde el envasado</numerusform>
            <numerusform>%1: %n días desde el envasado</numerusform>
        </translation>
    </message>
    <message>
        <source>%1. Note: %2</source>
        <translation>%1. Nota: %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>KeepingWords</name>
    <message>
        <source>Batches</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesadas</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Sucesos</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Fases</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>Decisiones</translation>
    </message>
    <message>
        <source>Outcomes</source>
        <translation>Resultados</translation>
    </message>
    <message>
        <source>Acceptances of cautions</source>
        <translation>Advertencias asumidas</translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation>Recetas</translation>
    </message>
    <message>
        <source>Recipe versions</source>
        <translation>Versiones de recetas</translation>
    </message>
    <message>
        <source>Ingredients</source>
        <translation>Ingredientes</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Partidas</translation>
    </message>
    <message>
        <source>Uses of ingredients</source>
        <translation>Usos de ingredientes</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Envases</translation>
    </message>
    <message>
        <source>Moves of stock</source>
        <translation>Movimientos de existencias</translation>
    </message>
    <message>
        <source>Ticks of the day&apos;s work</source>
        <translation>Marcas del trabajo diario</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Chambers</source>
        <translation>Cámaras</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Sensores</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Calibration checks</source>
        <translation>Comprobaciones de instrumentos</translation>
    </message>
    <message>
        <source>Climate readings</source>
        <translation>Lecturas de clima</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day with its year, %2 a clock time</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Batches: %1, pieces: %2, weighings: %3</source>
        <translation>Lotes: %1, piezas: %2, pesadas: %3</translation>
    </message>
    <message>
        <source>This backup is damaged itself, so it is not put in the place of the book. Choose another one.</source>
        <translation>Esta copia de respaldo está dañada, así que no se pone en el lugar del libro. Elija otra.</translation>
    </message>
    <message>
        <source>This backup was read from end to end and is whole.</source>
        <translation>Esta copia de respaldo se ha leído de principio a fin y está íntegra.</translation>
    </message>
    <message>
        <source>It brings back: %1. Last entry: %2.</source>
        <translation>Devuelve: %1. Última entrada: %2.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>There is no book now, so nothing is replaced.</source>
        <translation>Ahora no hay ningún libro, así que no se reemplaza nada.</translation>
    </message>
    <message>
        <source>The book as it is now cannot be read, so what would be lost is not known.</source>
        <translation>El libro tal como está ahora no se puede leer, así que no se sabe qué se perdería.</translation>
    </message>
    <message>
        <source>The book has now: %1.</source>
        <translation>El libro tiene ahora: %1.</translation>
    </message>
    <message>
        <source>No change was made since this backup.</source>
        <translation>No se ha hecho ningún cambio desde esta copia de respaldo.</translation>
    </message>
    <message>
        <source>Changes made since this backup, which would be gone from the book: %1.</source>
        <translation>Cambios hechos desde esta copia de respaldo, que desaparecerían del libro: %1.</translation>
    </message>
    <message>
        <source>The book as it is now is not deleted: it stays in the same folder, with “replaced” and the moment added to its name.</source>
        <translation>El libro tal como está ahora no se borra: queda en la misma carpeta, con «replaced» y el momento añadidos a su nombre.</translation>
    </message>
    <message>
        <source>The book is sound: its pages, indexes, links and climate roll-ups agree.</source>
        <translation>El libro está íntegro: sus páginas, índices, enlaces y resúmenes de clima concuerdan.</translation>
    </message>
    <message>
        <source>Your entries and readings are whole. Sums made from climate readings do not agree with them (places: %1), so charts and hours of air may be wrong. They can be made anew from the readings.</source>
        <translation>Sus entradas y lecturas están íntegras. Las sumas hechas con las lecturas de clima no concuerdan con ellas (lugares: %1), así que los gráficos y las horas de aire pueden ser erróneos. Se pueden rehacer a partir de las lecturas.</translation>
    </message>
    <message>
        <source>The book is damaged (places found: %1; they are listed below). Write nothing more into it. Restore a backup, or salvage what can be read into a new book.</source>
        <translation>El libro está dañado (lugares hallados: %1; se enumeran abajo). No escriba nada más en él. Restaure una copia de respaldo o rescate lo legible en un libro nuevo.</translation>
    </message>
    <message>
        <source>The book&apos;s own records (log, preferences, sums)</source>
        <translation>Los registros propios del libro (historial, preferencias, sumas)</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. No entry was found that could not be read; whole pages that are gone leave no trace, so look it through. The damaged book was not changed.</source>
        <translation>El libro nuevo está hecho y ha pasado su comprobación. No se halló ninguna entrada que no se pudiera leer; las páginas enteras que faltan no dejan rastro, así que repáselo. El libro dañado no se ha modificado.</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. Entries that are known to be lost: %1. Look it through. The damaged book was not changed.</source>
        <translation>El libro nuevo está hecho y ha pasado su comprobación. Entradas que se sabe que se han perdido: %1. Repáselo. El libro dañado no se ha modificado.</translation>
    </message>
</context>
<context>
    <name>LimitWords</name>
    <message>
        <source>%1 (partly unverified)</source>
        <translation>%1 (en parte sin verificar)</translation>
    </message>
</context>
<context>
    <name>LossChart</name>
    <message>
        <source>days since hung</source>
        <translation>días desde que se colgó</translation>
    </message>
    <message>
        <source>net weight, %1</source>
        <translation>peso neto, %1</translation>
    </message>
    <message>
        <source>weight lost, %</source>
        <translation>merma, %</translation>
    </message>
    <message>
        <source>%1 · %2 net · %3 lost</source>
        <translation>%1 · %2 neto · %3 de merma</translation>
    </message>
    <message>
        <source>%1: forecast, 8 in 10 fall inside</source>
        <translation>%1: pronóstico, 8 de cada 10 caen dentro</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>objetivo %1</translation>
    </message>
    <message>
        <source>%1: %2 lost on %3</source>
        <translation>%1: %2 de merma el %3</translation>
    </message>
    <message>
        <source>, target %1</source>
        <translation>, objetivo %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Days since hung</source>
        <translation>Días desde que se colgó</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Neto</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>lost of the %1, %</source>
        <translation>merma sobre el %1, %</translation>
    </message>
    <message>
        <source>day %1 · %2 net · %3 lost</source>
        <translation>día %1 · %2 neto · %3 de merma</translation>
    </message>
    <message>
        <source>%1, done earlier</source>
        <translation>%1, hecha antes</translation>
    </message>
    <message>
        <source>done earlier</source>
        <translation>hecha antes</translation>
    </message>
    <message>
        <source>forecast, 8 in 10 fall inside</source>
        <translation>pronóstico, 8 de cada 10 caen dentro</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>fase</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier piece(s) for comparison</source>
        <translation>
            <numerusform>una pieza anterior para comparar</numerusform>
            <numerusform>%n piezas anteriores para comparar</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ManualText</name>
    <message>
        <source>Saltloft: the manual</source>
        <translation>Saltloft: el manual</translation>
    </message>
    <message>
        <source>Plan, weigh and follow cured and air-dried meat.</source>
        <translation>Planificar, pesar y seguir carne curada y secada al aire.</translation>
    </message>
    <message>
        <source>The pictures show an invented demonstration book; no producer, batch or person in it exists.</source>
        <translation>Las imágenes muestran un libro de demostración inventado; no existe ningún productor, lote ni persona que aparezca en él.</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Contenido</translation>
    </message>
</context>
<context>
    <name>MixBench</name>
    <message>
        <source>nitrite 6.25 %; nitrate 4 %</source>
        <translation>nitrite 6,25 %; nitrate 4 %</translation>
    </message>
    <message>
        <source>40 % or 80 proof US</source>
        <translation>40 % u 80 proof US</translation>
    </message>
    <message>
        <source>salt 16 % or sodium 6.3 g/100 g</source>
        <translation>salt 16 % o sodium 6,3 g/100 g</translation>
    </message>
    <message>
        <source>acid 5 %</source>
        <translation>acid 5 %</translation>
    </message>
</context>
<context>
    <name>MixSheetText</name>
    <message>
        <source>Weigh out</source>
        <translation>Pesar</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Scale error</source>
        <translation>Error de balanza</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesado</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Partida</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>   of it for rub %1</source>
        <translation>   de ello para el frotado %1</translation>
    </message>
    <message>
        <source>Nothing to weigh.</source>
        <translation>Nada que pesar.</translation>
    </message>
    <message>
        <source>Meat</source>
        <translation>Carne</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sal</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>Nitrito, como nitrito de sodio</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>Nitrato, como nitrato de sodio</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>Fuente y edición</translation>
    </message>
    <message>
        <source>No limit set was chosen: the dose was not compared with any.</source>
        <translation>No se eligió ningún conjunto de límites: la dosis no se comparó con ninguno.</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>Hoja de mezcla</translation>
    </message>
    <message>
        <source>Piece %1: %2 of meat</source>
        <translation>Pieza %1: %2 de carne</translation>
    </message>
    <message>
        <source>All pieces together</source>
        <translation>Todas las piezas juntas</translation>
    </message>
    <message>
        <source>Weigh the curing salt on the finest scale, and read its strength off the bag in your hand. Follow local codes and licensed practice.</source>
        <translation>Pese la sal de cura en la balanza más fina y lea su concentración en la bolsa que tiene en la mano. Siga las normas locales y la práctica autorizada.</translation>
    </message>
    <message>
        <source>Weighed by</source>
        <translation>Pesado por</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Comprobado por</translation>
    </message>
    <message>
        <source>No piece of this batch has a green weight: weigh the meat first.</source>
        <translation>Ninguna pieza de este lote tiene peso en fresco: pese primero la carne.</translation>
    </message>
    <message>
        <source>This batch keeps no recipe that can be read: choose one first.</source>
        <translation>Este lote no guarda ninguna receta legible: elija una primero.</translation>
    </message>
</context>
<context>
    <name>MixTables</name>
    <message>
        <source>nitrite</source>
        <translation>nitrito</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>nitrato</translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation>nitrito y nitrato juntos</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>ascorbato o eritorbato</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>ácido ascórbico o eritórbico</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>fosfato</translation>
    </message>
    <message>
        <source>going in, on the raw weight</source>
        <translation>añadido, sobre el peso en fresco</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>en el producto terminado</translation>
    </message>
    <message>
        <source>left over, by laboratory</source>
        <translation>residual, por laboratorio</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation>tal como se pesa</translation>
    </message>
    <message>
        <source>as sodium salt</source>
        <translation>como sal de sodio</translation>
    </message>
    <message>
        <source>as ion</source>
        <translation>como ion</translation>
    </message>
    <message>
        <source>not permitted</source>
        <translation>no permitido</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>above</source>
        <translation>por encima</translation>
    </message>
    <message>
        <source>below</source>
        <translation>por debajo</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usado</translation>
    </message>
    <message>
        <source>not computable</source>
        <translation>no calculable</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 a %3)</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>Ingrediente</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Todo junto</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>Pesar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Jug</source>
        <translation>Jarra</translation>
    </message>
    <message>
        <source>Scale, ±</source>
        <translation>Balanza, ±</translation>
    </message>
    <message>
        <source>Of the meat</source>
        <translation>De la carne</translation>
    </message>
    <message>
        <source>Liquids fully taken up</source>
        <translation>Líquidos absorbidos del todo</translation>
    </message>
    <message>
        <source>This recipe</source>
        <translation>Esta receta</translation>
    </message>
    <message>
        <source>Half taken up</source>
        <translation>Absorbidos a medias</translation>
    </message>
    <message>
        <source>Salt, all of it</source>
        <translation>Sal, toda</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>Sal en la fase acuosa</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Azúcar</translation>
    </message>
    <message>
        <source>Nitrite, as NaNO2</source>
        <translation>Nitrito, como NaNO2</translation>
    </message>
    <message>
        <source>Nitrite, as the ion NO2</source>
        <translation>Nitrito, como ion NO2</translation>
    </message>
    <message>
        <source>Nitrate, as NaNO3</source>
        <translation>Nitrato, como NaNO3</translation>
    </message>
    <message>
        <source>Nitrate, as the ion NO3</source>
        <translation>Nitrato, como ion NO3</translation>
    </message>
    <message>
        <source>Ascorbate or erythorbate</source>
        <translation>Ascorbato o eritorbato</translation>
    </message>
    <message>
        <source>Ascorbic or erythorbic acid</source>
        <translation>Ácido ascórbico o eritórbico</translation>
    </message>
    <message>
        <source>Added water</source>
        <translation>Agua añadida</translation>
    </message>
    <message>
        <source>Alcohol, of the whole</source>
        <translation>Alcohol, del total</translation>
    </message>
    <message>
        <source>Strength of the liquids</source>
        <translation>Graduación de los líquidos</translation>
    </message>
    <message>
        <source>%1 vol (%2 US proof, %3 UK)</source>
        <translation>%1 vol (%2 proof US, %3 UK)</translation>
    </message>
    <message>
        <source>Limit and its source</source>
        <translation>Límite y su fuente</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Aquí</translation>
    </message>
    <message>
        <source>%1, %2, %3: %4</source>
        <translation>%1, %2, %3: %4</translation>
    </message>
    <message>
        <source>%1: a scale that shows %2 would do.</source>
        <translation>%1: bastaría una balanza que muestre %2.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Or blend a larger lot first: %1. Mix it evenly, then weigh %2 of it for the smallest piece: ± %3.</source>
        <translation>O prepare antes una mezcla más grande: %1. Mézclela bien y pese %2 de ella para la pieza más pequeña: ± %3.</translation>
    </message>
    <message>
        <source>Dry, weighed, all taken up</source>
        <translation>En seco, pesada, todo absorbido</translation>
    </message>
    <message>
        <source>Buried in salt</source>
        <translation>Enterrada en sal</translation>
    </message>
    <message>
        <source>Immersed, by pick-up</source>
        <translation>Inmersión, por absorción</translation>
    </message>
    <message>
        <source>Immersed, at equilibrium</source>
        <translation>Inmersión, en equilibrio</translation>
    </message>
    <message>
        <source>Brine of meat and water</source>
        <translation>Salmuera de carne y agua</translation>
    </message>
    <message>
        <source>Pumped in</source>
        <translation>Inyectada</translation>
    </message>
    <message>
        <source>Marinade</source>
        <translation>Adobo</translation>
    </message>
    <message>
        <source>Wash of vinegar or spirit</source>
        <translation>Lavado con vinagre o destilado</translation>
    </message>
    <message>
        <source>of the meat</source>
        <translation>de la carne</translation>
    </message>
    <message>
        <source>of the added water</source>
        <translation>del agua añadida</translation>
    </message>
    <message>
        <source>of meat and water</source>
        <translation>de carne y agua</translation>
    </message>
    <message>
        <source>of all water</source>
        <translation>de toda el agua</translation>
    </message>
</context>
<context>
    <name>ModelWords</name>
    <message>
        <source>slab (flat)</source>
        <translation>placa (plana)</translation>
    </message>
    <message>
        <source>cylinder (long and round)</source>
        <translation>cilindro (largo y redondo)</translation>
    </message>
    <message>
        <source>round</source>
        <translation>redonda</translation>
    </message>
    <message>
        <source>block (brick)</source>
        <translation>bloque (ladrillo)</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>en fresco</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>recortada</translation>
    </message>
    <message>
        <source>cured, not rinsed</source>
        <translation>salada, sin enjuagar</translation>
    </message>
    <message>
        <source>rinsed and wiped</source>
        <translation>enjuagada y secada</translation>
    </message>
    <message>
        <source>in casing</source>
        <translation>en tripa</translation>
    </message>
    <message>
        <source>in net or string</source>
        <translation>en malla o atada</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>recubierta</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>peso en fresco</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>peso recortado</translation>
    </message>
    <message>
        <source>weight after the cure</source>
        <translation>peso tras la salazón</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>peso al colgar</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>sin piel</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>piel por un lado</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>piel por todos lados</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>en salazón</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>en reposo</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>en secado</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>descartada</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>pesada con otras</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>cortada en piezas</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>given up</source>
        <translation>abandonado</translation>
    </message>
    <message>
        <source>dressed</source>
        <translation>embuchada</translation>
    </message>
    <message>
        <source>dressed again</source>
        <translation>embuchada de nuevo</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>muestra tomada</translation>
    </message>
    <message>
        <source>cut in pieces</source>
        <translation>cortada en piezas</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>pesadas juntas</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>prensada</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelada</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>descongelada</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>lavada</translation>
    </message>
    <message>
        <source>hung to dry</source>
        <translation>colgada a secar</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>movida</translation>
    </message>
    <message>
        <source>look</source>
        <translation>aspecto</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>tacto</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>olor</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>sabor</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>moho</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>lo que se hizo</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otra</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecha</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>todavía no</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>descartar</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>entera</translation>
    </message>
    <message>
        <source>cut open</source>
        <translation>cortada</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>al vacío</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>consumido</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>regalado</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendido</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>tirado</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>colgado de nuevo</translation>
    </message>
    <message>
        <source>counted again</source>
        <translation>contado de nuevo</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>salado</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>lavado</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>desalado</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>adobado</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>prensado</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>ahumado</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>maduración</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>asentamiento</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>recubrimiento</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>congelación</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>almacenamiento</translation>
    </message>
    <message>
        <source>too few weighings</source>
        <translation>muy pocas pesadas</translation>
    </message>
    <message>
        <source>at its target</source>
        <translation>en su objetivo</translation>
    </message>
    <message>
        <source>target out of reach</source>
        <translation>objetivo fuera de alcance</translation>
    </message>
    <message>
        <source>not drying</source>
        <translation>no seca</translation>
    </message>
    <message>
        <source>fridge</source>
        <translation>frigorífico</translation>
    </message>
    <message>
        <source>drying cabinet</source>
        <translation>armario de secado</translation>
    </message>
    <message>
        <source>room</source>
        <translation>recinto</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>exterior</translation>
    </message>
    <message>
        <source>freezer</source>
        <translation>congelador</translation>
    </message>
    <message>
        <source>face to face, at the thickest point</source>
        <translation>de cara a cara, en el punto más grueso</translation>
    </message>
    <message>
        <source>diameter, at the thickest point</source>
        <translation>diámetro, en el punto más grueso</translation>
    </message>
    <message>
        <source>the shortest side</source>
        <translation>el lado más corto</translation>
    </message>
</context>
<context>
    <name>PieceWords</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>%1 the loss now, %2 the loss aimed for</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 or later, perhaps never</source>
        <translation>%1 o más tarde, quizá nunca</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>Turn</source>
        <translation>Voltear</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Volteadas</translation>
    </message>
    <message>
        <source>Rub again</source>
        <translation>Frotar de nuevo</translation>
    </message>
    <message>
        <source>Rubbed again</source>
        <translation>Frotadas de nuevo</translation>
    </message>
    <message>
        <source>Massage</source>
        <translation>Masajear</translation>
    </message>
    <message>
        <source>Massaged</source>
        <translation>Masajeadas</translation>
    </message>
    <message>
        <source>Weigh</source>
        <translation>Pesar</translation>
    </message>
    <message>
        <source>Weighing left out</source>
        <translation>Pesada omitida</translation>
    </message>
    <message>
        <source>Weigh again, as decided</source>
        <translation>Pesar de nuevo, según lo decidido</translation>
    </message>
    <message>
        <source>Wipe</source>
        <translation>Limpiar</translation>
    </message>
    <message>
        <source>Wiped</source>
        <translation>Limpiadas</translation>
    </message>
    <message>
        <source>Change places</source>
        <translation>Cambiar de sitio</translation>
    </message>
    <message>
        <source>Places changed</source>
        <translation>Cambiadas de sitio</translation>
    </message>
    <message>
        <source>Look at the chamber</source>
        <translation>Revisar la cámara</translation>
    </message>
    <message>
        <source>Chamber looked at</source>
        <translation>Cámara revisada</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Empezada</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Terminar</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminada</translation>
    </message>
    <message>
        <source>Judge whether it is done</source>
        <translation>Juzgar si está hecha</translation>
    </message>
    <message>
        <source>Judging left out</source>
        <translation>Juicio omitido</translation>
    </message>
    <message>
        <source>Check the instrument</source>
        <translation>Comprobar el instrumento</translation>
    </message>
    <message>
        <source>Instrument check left out</source>
        <translation>Comprobación del instrumento omitida</translation>
    </message>
    <message>
        <source>Check the sensor</source>
        <translation>Comprobar el sensor</translation>
    </message>
    <message>
        <source>Sensor checked</source>
        <translation>Sensor comprobado</translation>
    </message>
    <message>
        <source>Eat or sell first</source>
        <translation>Comer o vender primero</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Orear</translation>
    </message>
    <message>
        <source>Aired</source>
        <translation>Oreadas</translation>
    </message>
    <message>
        <source>%1: done</source>
        <translation>%1: hecho</translation>
    </message>
    <message>
        <source>within the time above</source>
        <translation>dentro del tiempo de arriba</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fijo</translation>
    </message>
    <message>
        <source>by weight</source>
        <translation>por peso</translation>
    </message>
    <message>
        <source>by thickness</source>
        <translation>por grosor</translation>
    </message>
    <message>
        <source>until the date</source>
        <translation>hasta la fecha</translation>
    </message>
    <message>
        <source>your own pieces</source>
        <translation>sus propias piezas</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>habitual</translation>
    </message>
    <message>
        <source>drying model</source>
        <translation>modelo de secado</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>They hung at this time of year.</source>
        <translation>Se colgaron en esta época del año.</translation>
    </message>
    <message>
        <source>They lost %1 a week on the whole.</source>
        <translation>Perdieron %1 a la semana en conjunto.</translation>
    </message>
    <message numerus="yes">
        <source>%n week(s)</source>
        <translation>
            <numerusform>%n semana</numerusform>
            <numerusform>%n semanas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n week(s)</source>
        <extracomment>%1 a smaller number</extracomment>
        <translation>
            <numerusform>%1 a %n semana</numerusform>
            <numerusform>%1 a %n semanas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n day(s)</source>
        <translation>
            <numerusform>%1 a %n día</numerusform>
            <numerusform>%1 a %n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done in this chamber.</source>
        <translation>
            <numerusform>Su última pieza tardó %1 desde colgarla hasta estar hecha en esta cámara.</numerusform>
            <numerusform>Sus últimas %n tardaron %1 desde colgarlas hasta estar hechas en esta cámara.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done.</source>
        <translation>
            <numerusform>Su última pieza tardó %1 desde colgarla hasta estar hecha.</numerusform>
            <numerusform>Sus últimas %n tardaron %1 desde colgarlas hasta estar hechas.</numerusform>
        </translation>
    </message>
    <message>
        <source>It was too soft: a loss of %1 is worth a try.</source>
        <translation>Quedó demasiado blanda: vale la pena probar una merma de %1.</translation>
    </message>
    <message>
        <source>It was too dry: a loss of %1 is worth a try.</source>
        <translation>Quedó demasiado seca: vale la pena probar una merma de %1.</translation>
    </message>
    <message>
        <source>It was too salty at %1 in the finished piece.</source>
        <translation>Quedó demasiado salada, con %1 en la pieza terminada.</translation>
    </message>
    <message>
        <source>It lacked salt at %1 in the finished piece.</source>
        <translation>Le faltó sal, con %1 en la pieza terminada.</translation>
    </message>
    <message>
        <source>%1 of the raw weight instead of %2 is worth a try.</source>
        <translation>Vale la pena probar %1 del peso en fresco en vez de %2.</translation>
    </message>
    <message>
        <source>You wrote about %1: “%2”.</source>
        <extracomment>%1 the code of a batch, %2 what the person wrote about it</extracomment>
        <translation>Usted escribió sobre %1: «%2».</translation>
    </message>
    <message>
        <source>%1 was too salty: salt %2 to %3.</source>
        <translation>%1 quedó demasiado salado: sal de %2 a %3.</translation>
    </message>
    <message>
        <source>%1 lacked salt: salt %2 to %3.</source>
        <translation>A %1 le faltó sal: sal de %2 a %3.</translation>
    </message>
    <message>
        <source>%1 was too soft: loss aimed for is now %2.</source>
        <translation>%1 quedó demasiado blando: la merma buscada es ahora %2.</translation>
    </message>
    <message>
        <source>%1 was too dry: loss aimed for is now %2.</source>
        <translation>%1 quedó demasiado seco: la merma buscada es ahora %2.</translation>
    </message>
    <message>
        <source>much too little salt</source>
        <translation>muy falto de sal</translation>
    </message>
    <message>
        <source>a little short of salt</source>
        <translation>un poco falto de sal</translation>
    </message>
    <message>
        <source>a little too salty</source>
        <translation>un poco salado de más</translation>
    </message>
    <message>
        <source>much too salty</source>
        <translation>excesivamente salado</translation>
    </message>
    <message>
        <source>the salt was right</source>
        <translation>la sal era la justa</translation>
    </message>
    <message>
        <source>much too soft</source>
        <translation>excesivamente blando</translation>
    </message>
    <message>
        <source>a little too soft</source>
        <translation>un poco blando de más</translation>
    </message>
    <message>
        <source>a little too dry</source>
        <translation>un poco seco de más</translation>
    </message>
    <message>
        <source>much too dry</source>
        <translation>excesivamente seco</translation>
    </message>
    <message>
        <source>the texture was right</source>
        <translation>la textura era la justa</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«%1»</translation>
    </message>
</context>
<context>
    <name>PrintText</name>
    <message>
        <source>Record of batch %1</source>
        <translation>Registro del lote %1</translation>
    </message>
    <message>
        <source>Mix sheet of batch %1</source>
        <translation>Hoja de mezcla del lote %1</translation>
    </message>
    <message>
        <source>Tags of batch %1</source>
        <translation>Etiquetas del lote %1</translation>
    </message>
    <message>
        <source>Small tags of batch %1</source>
        <translation>Etiquetas pequeñas del lote %1</translation>
    </message>
    <message>
        <source>Trace of batch %1</source>
        <translation>Trazabilidad del lote %1</translation>
    </message>
    <message>
        <source>Mass balance of batch %1</source>
        <translation>Balance de masas del lote %1</translation>
    </message>
    <message>
        <source>Calibration sheet, %1</source>
        <translation>Hoja de calibración, %1</translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>Batch record</source>
        <translation>Registro del lote</translation>
    </message>
    <message>
        <source>Trace: one step back, one step forward</source>
        <translation>Trazabilidad: un paso atrás, un paso adelante</translation>
    </message>
    <message>
        <source>Mass balance</source>
        <translation>Balance de masas</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, luego %2</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Previsto</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Empezada</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminada</translation>
    </message>
    <message>
        <source>Why it ended</source>
        <translation>Por qué terminó</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>Temperature band</source>
        <translation>Banda de temperatura</translation>
    </message>
    <message>
        <source>Humidity band</source>
        <translation>Banda de humedad</translation>
    </message>
    <message>
        <source>No stages were planned.</source>
        <translation>No se planificó ninguna fase.</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Fases</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Mínima</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Media</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Driest</source>
        <translation>Más seco</translation>
    </message>
    <message>
        <source>Mean RH</source>
        <translation>HR media</translation>
    </message>
    <message>
        <source>Dampest</source>
        <translation>Más húmedo</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>Fuera de banda</translation>
    </message>
    <message>
        <source>no readings %1</source>
        <translation>sin lecturas %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>No readings were recorded while this batch was in a chamber.</source>
        <translation>No se registraron lecturas mientras este lote estuvo en una cámara.</translation>
    </message>
    <message>
        <source>Temperature and humidity</source>
        <translation>Temperatura y humedad</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Tomada</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>En la balanza</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Neto</translation>
    </message>
    <message>
        <source>What is weighed</source>
        <translation>Qué se pesa</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>Anotado</translation>
    </message>
    <message>
        <source>Note, correction and why</source>
        <translation>Nota, corrección y motivo</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>superficie mojada</translation>
    </message>
    <message>
        <source>corrects %1: %2</source>
        <translation>corrige %1: %2</translation>
    </message>
    <message>
        <source>corrected by a later entry</source>
        <translation>corregida por una entrada posterior</translation>
    </message>
    <message>
        <source>taken back by %1: %2</source>
        <translation>anulada por %1: %2</translation>
    </message>
    <message>
        <source>Never weighed.</source>
        <translation>Nunca pesada.</translation>
    </message>
    <message>
        <source>Weighings with corrections</source>
        <translation>Pesadas con correcciones</translation>
    </message>
    <message>
        <source>Piece %1</source>
        <translation>Pieza %1</translation>
    </message>
    <message>
        <source>Struck figures were corrected or taken back and no longer count; they stay readable.</source>
        <translation>Las cifras tachadas se corrigieron o anularon y ya no cuentan; siguen siendo legibles.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>Neto antes</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>Neto después</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>No events were recorded.</source>
        <translation>No se registraron sucesos.</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Sucesos</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Desviación</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Peor valor</translation>
    </message>
    <message>
        <source>Action taken, initials</source>
        <translation>Medida tomada, iniciales</translation>
    </message>
    <message>
        <source>No excursion of an hour or longer is in the readings.</source>
        <translation>No hay en las lecturas ninguna desviación de una hora o más.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Advertencia</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>Asumida por</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>No caution was accepted.</source>
        <translation>No se asumió ninguna advertencia.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>What was seen or done</source>
        <translation>Qué se vio o se hizo</translation>
    </message>
    <message>
        <source> (photo: %1)</source>
        <translation> (foto: %1)</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>No notes were recorded.</source>
        <translation>No se registraron notas.</translation>
    </message>
    <message>
        <source>Deviations and corrective action</source>
        <translation>Desviaciones y medidas correctoras</translation>
    </message>
    <message>
        <source>Air out of its band</source>
        <translation>Aire fuera de su banda</translation>
    </message>
    <message>
        <source>Cautions accepted</source>
        <translation>Advertencias asumidas</translation>
    </message>
    <message>
        <source>Notes and actions</source>
        <translation>Notas y medidas</translation>
    </message>
    <message>
        <source>Further deviation · limit · action taken · date and time · initials</source>
        <translation>Otra desviación · límite · medida tomada · fecha y hora · iniciales</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Comprobado</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Respecto a</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Esperado</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Hallado</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>nunca comprobado</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>No hay instrumentos registrados.</translation>
    </message>
    <message>
        <source>Instruments and calibration</source>
        <translation>Instrumentos y calibración</translation>
    </message>
    <message>
        <source>Laboratory measurements</source>
        <translation>Mediciones de laboratorio</translation>
    </message>
    <message>
        <source>Water activity and pH are measured, not computed. Enter what a laboratory or an instrument found, with the instrument, its calibration and the date.</source>
        <translation>La actividad de agua y el pH se miden, no se calculan. Introduzca lo que halló un laboratorio o un instrumento, con el instrumento, su calibración y la fecha.</translation>
    </message>
    <message>
        <source>Sample of piece · water activity · pH · instrument · date · initials</source>
        <translation>Muestra de la pieza · actividad de agua · pH · instrumento · fecha · iniciales</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Decisión</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmada por</translation>
    </message>
    <message>
        <source>No decision has been signed.</source>
        <translation>No se ha firmado ninguna decisión.</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>Decisiones</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 a %3)</translation>
    </message>
    <message>
        <source>Batch %1 · %2 · started %3</source>
        <translation>Lote %1 · %2 · iniciado %3</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>Código del lote</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Especie</translation>
    </message>
    <message>
        <source>Supplier of the meat</source>
        <translation>Proveedor de la carne</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Lote del proveedor</translation>
    </message>
    <message>
        <source>Frozen before curing</source>
        <translation>Congelada antes de curar</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>Peso comprado</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>Recortes</translation>
    </message>
    <message>
        <source>Green weight of all pieces</source>
        <translation>Peso en fresco de todas las piezas</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Iniciado</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Identification</source>
        <translation>Identificación</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Piel</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Grosor</translation>
    </message>
    <message>
        <source>Green weight</source>
        <translation>Peso en fresco</translation>
    </message>
    <message>
        <source>Hung weight</source>
        <translation>Peso al colgar</translation>
    </message>
    <message>
        <source>Last weight</source>
        <translation>Último peso</translation>
    </message>
    <message>
        <source>Loss of green</source>
        <translation>Merma sobre fresco</translation>
    </message>
    <message>
        <source>Loss of hung</source>
        <translation>Merma sobre colgado</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source> (from %1)</source>
        <translation> (de %1)</translation>
    </message>
    <message>
        <source>No pieces.</source>
        <translation>No hay piezas.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Weights are net. A loss is left out where something was cut off or put on in between: see the events.</source>
        <translation>Los pesos son netos. Se omite una merma cuando entretanto se cortó o se puso algo: véanse los sucesos.</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>Ingrediente</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Partida</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Comprado</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesado</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todas</translation>
    </message>
    <message>
        <source>No ingredient lots were recorded.</source>
        <translation>No se registraron partidas de ingredientes.</translation>
    </message>
    <message>
        <source>Inputs with lots</source>
        <translation>Entradas con sus partidas</translation>
    </message>
    <message>
        <source>Computed doses</source>
        <translation>Dosis calculadas</translation>
    </message>
    <message>
        <source>Not computed: no piece has a green weight.</source>
        <translation>No calculado: ninguna pieza tiene peso en fresco.</translation>
    </message>
    <message>
        <source>Not computed: the batch keeps no recipe that can be read.</source>
        <translation>No calculado: el lote no guarda ninguna receta legible.</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>On green meat</source>
        <translation>Sobre carne fresca</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sal</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Azúcar</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>Nitrito, como nitrito de sodio</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>Nitrato, como nitrato de sodio</translation>
    </message>
    <message>
        <source>Line of the recipe</source>
        <translation>Línea de la receta</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Nitrite strength</source>
        <translation>Concentración de nitrito</translation>
    </message>
    <message>
        <source>Nitrate strength</source>
        <translation>Concentración de nitrato</translation>
    </message>
    <message>
        <source>Strength from</source>
        <translation>Concentración según</translation>
    </message>
    <message>
        <source>the label</source>
        <translation>la etiqueta</translation>
    </message>
    <message>
        <source>the catalogue</source>
        <translation>el catálogo</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Permitido</translation>
    </message>
    <message>
        <source>Computed</source>
        <translation>Calculado</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>Fuente y edición</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>No limit set was chosen for this recipe: the doses were not compared.</source>
        <translation>No se eligió ningún conjunto de límites para esta receta: las dosis no se compararon.</translation>
    </message>
    <message>
        <source>Compared with the limit set: %1</source>
        <translation>Comparado con el conjunto de límites: %1</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Firmas</translation>
    </message>
    <message>
        <source>Record made by</source>
        <translation>Registro hecho por</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Comprobado por</translation>
    </message>
    <message>
        <source>Released by</source>
        <translation>Liberado por</translation>
    </message>
    <message>
        <source>Officer, seen</source>
        <translation>Inspector, visto</translation>
    </message>
    <message>
        <source>Figures are records and computations. Whether a product may be sold or eaten is for local codes, licensed practice and laboratory measurement.</source>
        <translation>Las cifras son registros y cálculos. Si un producto se puede vender o comer lo deciden las normas locales, la práctica autorizada y la medición de laboratorio.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Their lot</source>
        <translation>Su lote</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>Carne: %1</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>Un paso atrás</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Envase</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>A quién</translation>
    </message>
    <message>
        <source>packed</source>
        <translation>envasado</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>no queda nada</translation>
    </message>
    <message>
        <source>still here</source>
        <translation>todavía aquí</translation>
    </message>
    <message>
        <source>Nothing of this batch has been packed.</source>
        <translation>De este lote no se ha envasado nada.</translation>
    </message>
    <message>
        <source>One step forward</source>
        <translation>Un paso adelante</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Of the green weight</source>
        <translation>Del peso en fresco</translation>
    </message>
    <message>
        <source>Green weight of the pieces</source>
        <translation>Peso en fresco de las piezas</translation>
    </message>
    <message>
        <source>Net weight now, of pieces not discarded</source>
        <translation>Peso neto actual, de las piezas no descartadas</translation>
    </message>
    <message>
        <source>Green weight less net weight now: water, discarded pieces, ends and samples</source>
        <translation>Peso en fresco menos peso neto actual: agua, piezas descartadas, puntas y muestras</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Envasado</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Consumido</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Regalado</translation>
    </message>
    <message>
        <source>Sold</source>
        <translation>Vendido</translation>
    </message>
    <message>
        <source>Hung again</source>
        <translation>Colgado de nuevo</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Desecho</translation>
    </message>
    <message>
        <source>Still in stock</source>
        <translation>Aún en existencias</translation>
    </message>
    <message>
        <source>Packed, but not accounted for</source>
        <translation>Envasado, pero sin justificar</translation>
    </message>
    <message>
        <source>The packs do not balance: %1 cannot be accounted for.</source>
        <translation>Los envases no cuadran: no se pueden justificar %1.</translation>
    </message>
    <message>
        <source>Bought less trimmed off less green weight: %1.</source>
        <translation>Comprado menos recortes menos peso en fresco: %1.</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abandonado</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>en salazón</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>en reposo</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>en secado</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>descartada</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>pesada con otras</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>cortada en piezas</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>en fresco</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>recortada</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>salada</translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation>enjuagada</translation>
    </message>
    <message>
        <source>cased</source>
        <translation>en tripa</translation>
    </message>
    <message>
        <source>netted</source>
        <translation>en malla</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>recubierta</translation>
    </message>
    <message>
        <source>casing or net put on</source>
        <translation>tripa o malla puesta</translation>
    </message>
    <message>
        <source>casing or net changed</source>
        <translation>tripa o malla cambiada</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>muestra tomada</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>pesadas juntas</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>prensada</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelada</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>descongelada</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>lavada</translation>
    </message>
    <message>
        <source>hung</source>
        <translation>colgada</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>movida</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>salado</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>lavado</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>desalado</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>adobado</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>prensado</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>ahumado</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>maduración</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>asentamiento</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>recubrimiento</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>congelación</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>almacenamiento</translation>
    </message>
    <message>
        <source>look</source>
        <translation>aspecto</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>tacto</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>olor</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>sabor</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>moho</translation>
    </message>
    <message>
        <source>action</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecha</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>todavía no</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>descartar</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>entera</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>cortada</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>al vacío</translation>
    </message>
    <message>
        <source>used</source>
        <translation>consumido</translation>
    </message>
    <message>
        <source>given</source>
        <translation>regalado</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendido</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation>desechado</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>colgado de nuevo</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>contado</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>balanza</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>termómetro</translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation>higrómetro</translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation>pH-metro</translation>
    </message>
    <message>
        <source>water activity meter</source>
        <translation>medidor de actividad de agua</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>peso en fresco</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>peso recortado</translation>
    </message>
    <message>
        <source>cured weight</source>
        <translation>peso tras la salazón</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>peso al colgar</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>sin piel</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>piel por un lado</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>piel por todos lados</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>demasiado frío</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>demasiado calor</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>demasiado seco</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>demasiado húmedo</translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation>nitrito</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>nitrato</translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation>nitrito y nitrato juntos</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>ascorbato o eritorbato</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>ácido ascórbico o eritórbico</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>fosfato</translation>
    </message>
    <message>
        <source>ingoing</source>
        <translation>añadido</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>en el producto terminado</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>residual</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>ABOVE</source>
        <translation>POR ENCIMA</translation>
    </message>
    <message>
        <source>below the minimum</source>
        <translation>por debajo del mínimo</translation>
    </message>
    <message>
        <source>NOT PERMITTED, used</source>
        <translation>NO PERMITIDO, usado</translation>
    </message>
    <message>
        <source>laboratory only</source>
        <translation>solo laboratorio</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Caution, as it was shown</source>
        <translation>Advertencia, tal como se mostró</translation>
    </message>
</context>
<context>
    <name>ReviewWords</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 a %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>lies below it</source>
        <translation>está por debajo</translation>
    </message>
    <message>
        <source>lies above it</source>
        <translation>está por encima</translation>
    </message>
    <message>
        <source>lies on both sides of it</source>
        <translation>está a ambos lados</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>start weight</source>
        <translation>peso inicial</translation>
    </message>
    <message>
        <source>salt put on</source>
        <translation>sal aplicada</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>grosor</translation>
    </message>
    <message>
        <source>fat share</source>
        <translation>proporción de grasa</translation>
    </message>
    <message>
        <source>humidity log</source>
        <translation>registro de humedad</translation>
    </message>
    <message>
        <source>temperature log</source>
        <translation>registro de temperatura</translation>
    </message>
    <message>
        <source>weighings while drying</source>
        <translation>pesadas durante el secado</translation>
    </message>
    <message>
        <source>measured water activity</source>
        <translation>actividad de agua medida</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>lost of the %1</source>
        <translation>merma sobre el %1</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>objetivo %1</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 al día</translation>
    </message>
    <message>
        <source>pace in the first week</source>
        <translation>ritmo en la primera semana</translation>
    </message>
    <message>
        <source>pace in the last two weeks</source>
        <translation>ritmo en las dos últimas semanas</translation>
    </message>
    <message>
        <source>time since hung</source>
        <translation>tiempo desde que se colgó</translation>
    </message>
    <message>
        <source>Estimated, 8 in 10 fall in the range</source>
        <translation>Estimado, 8 de cada 10 caen en el margen</translation>
    </message>
    <message>
        <source>water of the piece</source>
        <translation>agua de la pieza</translation>
    </message>
    <message>
        <source>salt of the piece</source>
        <translation>sal de la pieza</translation>
    </message>
    <message>
        <source>salt in its water</source>
        <translation>sal en su agua</translation>
    </message>
    <message>
        <source>water activity</source>
        <translation>actividad de agua</translation>
    </message>
    <message>
        <source>an estimate; only a laboratory measures it</source>
        <translation>una estimación; solo un laboratorio la mide</translation>
    </message>
    <message>
        <source>Beside cited figures</source>
        <translation>Junto a cifras citadas</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Seen, felt, smelt</source>
        <translation>Visto, palpado, olido</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>would add to the picture</source>
        <translation>completaría el cuadro</translation>
    </message>
    <message>
        <source>mean %1, %2 to %3</source>
        <translation>media %1, %2 a %3</translation>
    </message>
    <message>
        <source>no band to hold it against</source>
        <translation>sin banda con que compararlo</translation>
    </message>
    <message>
        <source>never out of its band in the log</source>
        <translation>nunca fuera de su banda en el registro</translation>
    </message>
    <message>
        <source>%1: air</source>
        <translation>%1: aire</translation>
    </message>
    <message>
        <source>no log</source>
        <translation>sin registro</translation>
    </message>
    <message>
        <source>no climate log covers this piece&apos;s time there</source>
        <translation>ningún registro de clima cubre el tiempo que esta pieza pasó ahí</translation>
    </message>
    <message>
        <source>%1: temperature</source>
        <translation>%1: temperatura</translation>
    </message>
    <message>
        <source>%1 too cold</source>
        <translation>%1 demasiado frío</translation>
    </message>
    <message>
        <source>%1 too warm</source>
        <translation>%1 demasiado calor</translation>
    </message>
    <message>
        <source>%1: humidity</source>
        <translation>%1: humedad</translation>
    </message>
    <message>
        <source>%1 too dry</source>
        <translation>%1 demasiado seco</translation>
    </message>
    <message>
        <source>%1 too damp</source>
        <translation>%1 demasiado húmedo</translation>
    </message>
    <message>
        <source>%1: not logged</source>
        <translation>%1: sin registrar</translation>
    </message>
    <message>
        <source>of this time nothing is known</source>
        <translation>de este tiempo no se sabe nada</translation>
    </message>
    <message>
        <source>Stages and their air</source>
        <translation>Las fases y su aire</translation>
    </message>
</context>
<context>
    <name>SaveCalendar</name>
    <message>
        <source>Save the calendar</source>
        <translation>Guardar el calendario</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Calendario (*.ics)</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another place.</source>
        <translation>No se pudo escribir %1: %2. Elija otro lugar.</translation>
    </message>
    <message>
        <source>Calendar kept in %1.</source>
        <translation>Calendario guardado en %1.</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>Impreso %1</translation>
    </message>
    <message>
        <source>As</source>
        <translation>En calidad de</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Fecha y hora</translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>&amp;Pack a finished piece…</source>
        <translation>&amp;Envasar una pieza terminada…</translation>
    </message>
    <message>
        <source>Nothing is packed yet</source>
        <translation>Aún no hay nada envasado</translation>
    </message>
    <message>
        <source>When a piece is signed as done, pack it here: whole, cut, under vacuum or frozen. The list then shows what to eat first, what is left, and where everything went.</source>
        <translation>Cuando una pieza se firme como hecha, envásela aquí: entera, cortada, al vacío o congelada. La lista muestra entonces qué comer primero, qué queda y adónde fue todo.</translation>
    </message>
    <message>
        <source>Pack a finished piece</source>
        <translation>Envasar una pieza terminada</translation>
    </message>
    <message>
        <source>In eating order: open packs first, then the nearest day.</source>
        <translation>En orden de consumo: primero los envases abiertos, luego el día más próximo.</translation>
    </message>
    <message>
        <source>Show packs that are &amp;gone</source>
        <translation>Mostrar envases a&amp;gotados</translation>
    </message>
    <message>
        <source>Show packs that are gone</source>
        <translation>Mostrar envases agotados</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Envases</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Modificar…</translation>
    </message>
    <message>
        <source>&amp;Take from it…</source>
        <translation>&amp;Sacar de él…</translation>
    </message>
    <message>
        <source>What was taken from the pack</source>
        <translation>Qué se sacó del envase</translation>
    </message>
    <message>
        <source>Eat</source>
        <translation>Comer</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Envase</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>%1, open since %2</source>
        <translation>%1, abierto desde el %2</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>Conservar hasta</translation>
    </message>
    <message>
        <source>▲ %1, past</source>
        <translation>▲ %1, pasado</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Qué fue de ello</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>A quién</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>From piece %1 of batch %2.</source>
        <translation>De la pieza %1 del lote %2.</translation>
    </message>
    <message>
        <source>Finished packs: what to eat first and where it went</source>
        <translation>Producto envasado: qué comer primero y adónde fue</translation>
    </message>
    <message>
        <source>Its yield is not known: the raw or the finished weight was not taken.</source>
        <translation>No se conoce su rendimiento: no se tomó el peso en fresco o el de la pieza terminada.</translation>
    </message>
    <message>
        <source>Yield: %1 of %2 raw, %3 (lost %4); packed %5.</source>
        <translation>Rendimiento: %1 de %2 en fresco, %3 (merma %4); envasado %5.</translation>
    </message>
    <message>
        <source>At that loss the meat cost %1 a finished kilogram.</source>
        <translation>Con esa merma, la carne costó %1 por kilogramo terminado.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No day is set to keep it until.</source>
        <translation>No hay fecha fijada hasta la que conservarlo.</translation>
    </message>
    <message>
        <source>Keep until %1 by a rule: %2.</source>
        <translation>Conservar hasta el %1 según una regla: %2.</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day.</source>
        <translation>Conservar hasta el %1: fecha fijada por una persona.</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day, because: %2</source>
        <translation>Conservar hasta el %1: fecha fijada por una persona, porque: %2</translation>
    </message>
</context>
<context>
    <name>TagText</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>Colgada</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Etiquetas</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>&amp;Weigh-in round</source>
        <translation>&amp;Ronda de pesaje</translation>
    </message>
    <message>
        <source>&amp;Calendar</source>
        <translation>&amp;Calendario</translation>
    </message>
    <message>
        <source>No work yet</source>
        <translation>Aún no hay trabajo</translation>
    </message>
    <message>
        <source>Once a batch is planned, this page lists each day&apos;s work across all batches: turning, rubbing, weighing, looking at the chambers, judging what is ready. One key ticks a line off; what was missed stays at the top.</source>
        <translation>Cuando hay un lote planificado, esta página enumera el trabajo de cada día de todos los lotes: voltear, frotar, pesar, revisar las cámaras, juzgar lo que está listo. Una tecla marca una línea; lo que no se hizo queda arriba.</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>Planificar un lote</translation>
    </message>
    <message>
        <source>&amp;Leave out this time</source>
        <translation>&amp;Omitir esta vez</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation>&amp;Hecho</translation>
    </message>
    <message>
        <source>Nothing is left for today.</source>
        <translation>No queda nada para hoy.</translation>
    </message>
    <message>
        <source>&amp;Do it now</source>
        <translation>Hacer &amp;ahora</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>A&amp;brir</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>An&amp;ular</translation>
    </message>
    <message>
        <source>Space or Enter: %1 Delete: leave it out this time.</source>
        <extracomment>%1 what the key does</extracomment>
        <translation>Espacio o Intro: %1 Supr: la omite esta vez.</translation>
    </message>
    <message>
        <source>Space: %1</source>
        <translation>Espacio: %1</translation>
    </message>
    <message>
        <source>The day&apos;s work across all batches</source>
        <translation>El trabajo del día de todos los lotes</translation>
    </message>
    <message>
        <source>Work of the day</source>
        <translation>Trabajo del día</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
</context>
<context>
    <name>UnitWords</name>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation>fl oz</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>mL</translation>
    </message>
    <message>
        <source>% RH</source>
        <translation>% HR</translation>
    </message>
    <message>
        <source>% vol</source>
        <translation>% vol</translation>
    </message>
    <message>
        <source>ppm</source>
        <translation>ppm</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>d</source>
        <translation>d</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semanas</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>week</source>
        <translation>semana</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>hora</translation>
    </message>
</context>
<context>
    <name>Upset</name>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Upset in %1: %2 to %3, highest air temperature %4.</source>
        <translation>Incidencia en %1: %2 a %3, temperatura máxima del aire %4.</translation>
    </message>
    <message>
        <source>Without a reading: %1.</source>
        <translation>Sin lectura: %1.</translation>
    </message>
    <message>
        <source>%1 %2: stage %3, hung %4, lost %5, salt at most %6, nitrite put on %7.</source>
        <translation>%1 %2: fase %3, colgada %4, merma %5, sal como máximo %6, nitrito aplicado %7.</translation>
    </message>
    <message>
        <source>%1 %2 (water activity %3)</source>
        <translation>%1 %2 (actividad de agua %3)</translation>
    </message>
    <message>
        <source>  Air in growth range: %1.</source>
        <translation>  Aire en rango de crecimiento: %1.</translation>
    </message>
    <message>
        <source>A record of the air, not of the meat&apos;s core, and no judgement.</source>
        <translation>Un registro del aire, no del interior de la carne, y no es un juicio.</translation>
    </message>
</context>
<context>
    <name>WarmWords</name>
    <message>
        <source>No time can be given: see below.</source>
        <translation>No se puede dar un tiempo: vea abajo.</translation>
    </message>
    <message>
        <source>It is there already.</source>
        <translation>Ya ha llegado.</translation>
    </message>
    <message>
        <source>About %1 in the warm air; 8 in 10 pieces take %2 to %3.</source>
        <translation>Cerca de %1 en el aire caliente; 8 de cada 10 piezas tardan de %2 a %3.</translation>
    </message>
    <message>
        <source>at most %1 tenfold steps in a laboratory medium, without lag</source>
        <translation>como máximo %1 multiplicaciones por diez en un medio de laboratorio, sin fase de latencia</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Warm finish, %1: air at %2 and %3, from %4 to %5 lost.</source>
        <translation>Final en aire caliente, %1: aire a %2 y %3, de %4 a %5 de merma.</translation>
    </message>
    <message>
        <source>In the growth range of %1: %2 (%3)</source>
        <translation>En el rango de crecimiento de %1: %2 (%3)</translation>
    </message>
</context>
<context>
    <name>WhatIfWords</name>
    <message>
        <source>reached</source>
        <translation>alcanzado</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>no alcanzado</translation>
    </message>
    <message>
        <source>by today</source>
        <translation>hoy como tarde</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 a %3)</translation>
    </message>
    <message>
        <source>not reachable: more likely never than ever</source>
        <translation>no alcanzable: más probable nunca que alguna vez</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a temperature, %2 a humidity: air</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Air ahead</source>
        <translation>Aire en adelante</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>1 chance in 10 by</source>
        <translation>1 probabilidad de 10, para el</translation>
    </message>
    <message>
        <source>Even odds by</source>
        <translation>Mitad y mitad, para el</translation>
    </message>
    <message>
        <source>9 chances in 10 by</source>
        <translation>9 probabilidades de 10, para el</translation>
    </message>
    <message>
        <source>Levels off at</source>
        <translation>Se estabiliza en</translation>
    </message>
    <message>
        <source>No humidity at %1 draws water as strongly as %2 does.</source>
        <translation>Ninguna humedad a %1 extrae agua con tanta fuerza como %2.</translation>
    </message>
    <message>
        <source>Equal drying power: %1 at %2 draws water as strongly as %3 at %4. How far the piece can dry follows from humidity almost alone.</source>
        <translation>Igual poder de secado: %1 a %2 extrae agua con tanta fuerza como %3 a %4. Hasta dónde puede secarse la pieza depende casi solo de la humedad.</translation>
    </message>
    <message>
        <source>%1 lies in the cited growth range of %2 (%3 to %4), which %5 does not. %6</source>
        <translation>%1 cae en el rango de crecimiento citado de %2 (%3 a %4), en el que %5 no cae. %6</translation>
    </message>
</context>
<context>
    <name>WorkList</name>
    <message>
        <source>Work of the day</source>
        <translation>Trabajo del día</translation>
    </message>
</context>
<context>
    <name>app::window::Session</name>
    <message>
        <source>Open a book</source>
        <translation>Abrir un libro</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Libros de Saltloft (*.saltloft);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Nuevo libro</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Libros de Saltloft (*.saltloft)</translation>
    </message>
    <message>
        <source>Back up a copy</source>
        <translation>Hacer una copia de respaldo</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>The copy was written and read back: %1, %2, %3.</source>
        <translation>La copia se escribió y se releyó: %1, %2, %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n lote</numerusform>
            <numerusform>%n lotes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n pieza</numerusform>
            <numerusform>%n piezas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weighing(s)</source>
        <translation>
            <numerusform>%n pesada</numerusform>
            <numerusform>%n pesadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurar una copia de respaldo</translation>
    </message>
    <message>
        <source>The backup is in its place and open.</source>
        <translation>La copia de respaldo está en su lugar y abierta.</translation>
    </message>
    <message>
        <source>The backup is in its place and open. The book as it was before is kept as %1.</source>
        <translation>La copia de respaldo está en su lugar y abierta. El libro tal como era antes se guarda como %1.</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartPainter</name>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartTable</name>
    <message>
        <source>The chart as a table</source>
        <translation>El gráfico como tabla</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, como tabla</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartView</name>
    <message>
        <source>Move over a point, or use Left and Right, to read it.</source>
        <translation>Pase sobre un punto, o use Izquierda y Derecha, para leerlo.</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Gráfico</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Copy the table</source>
        <translation>Copiar la tabla</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Como tabla</translation>
    </message>
    <message>
        <source>Copied: paste it into a spreadsheet or a text.</source>
        <translation>Copiado: péguelo en una hoja de cálculo o en un texto.</translation>
    </message>
    <message>
        <source>Enter chooses a row that was weighed; Ctrl+C copies.</source>
        <translation>Intro elige una fila pesada; Ctrl+C copia.</translation>
    </message>
    <message>
        <source>As a drawing</source>
        <translation>Como dibujo</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, como tabla</translation>
    </message>
    <message>
        <source>Copy the table: %1</source>
        <translation>Copiar la tabla: %1</translation>
    </message>
</context>
<context>
    <name>ui::edits::DayField</name>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <source>day, e.g. %1</source>
        <translation>día, p. ej. %1</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>Pick from a calendar (Alt+Down)</source>
        <translation>Elegir en un calendario (Alt+Abajo)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Pick a day</source>
        <translation>Elegir un día</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendario</translation>
    </message>
</context>
<context>
    <name>ui::models::WorkModel</name>
    <message>
        <source>Overdue</source>
        <translation>Atrasado</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Coming</source>
        <translation>Próximamente</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation>Hecho hoy</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <extracomment>a heading of the day sheet and how many lines it has</extracomment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Batch and pieces</source>
        <translation>Lote y piezas</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchDialog</name>
    <message>
        <source>Change batch %1</source>
        <translation>Modificar el lote %1</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Lote del proveedor</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Iniciado</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>Peso comprado</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>Recortes</translation>
    </message>
    <message>
        <source>Price per kilogram</source>
        <translation>Precio por kilogramo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>The meat was frozen before</source>
        <translation>La carne estuvo congelada antes</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>&amp;Code</source>
        <translation>&amp;Código</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Producto</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animal</translation>
    </message>
    <message>
        <source>&amp;Supplier</source>
        <translation>P&amp;roveedor</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>&amp;Lote del proveedor</translation>
    </message>
    <message>
        <source>S&amp;tarted</source>
        <translation>&amp;Iniciado</translation>
    </message>
    <message>
        <source>&amp;Bought weight</source>
        <translation>Peso co&amp;mprado</translation>
    </message>
    <message>
        <source>Trimmed &amp;off</source>
        <translation>Recor&amp;tes</translation>
    </message>
    <message>
        <source>P&amp;rice per kilogram</source>
        <translation>Precio por &amp;kilogramo</translation>
    </message>
    <message>
        <source>Stat&amp;e</source>
        <translation>&amp;Estado</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchesPage</name>
    <message>
        <source>Batches and pieces</source>
        <translation>Lotes y piezas</translation>
    </message>
    <message>
        <source>&amp;New batch…</source>
        <translation>&amp;Nuevo lote…</translation>
    </message>
    <message>
        <source>No batch yet</source>
        <translation>Aún no hay lotes</translation>
    </message>
    <message>
        <source>A batch is meat cured together from one recipe. Weigh it, let the mix sheet compute the cure, and give each piece a code. From then on every weighing finds its place by itself.</source>
        <translation>Un lote es carne curada junta con una misma receta. Pésela, deje que la hoja de mezcla calcule la salazón y dé un código a cada pieza. Desde entonces, cada pesada encuentra su sitio por sí sola.</translation>
    </message>
    <message>
        <source>Start the first batch</source>
        <translation>Empezar el primer lote</translation>
    </message>
    <message>
        <source>Find a batch</source>
        <translation>Buscar un lote</translation>
    </message>
    <message>
        <source>Find by code, name, product or supplier</source>
        <translation>Buscar por código, nombre, producto o proveedor</translation>
    </message>
    <message>
        <source>Show &amp;finished batches too</source>
        <translation>Mostrar también los lotes &amp;terminados</translation>
    </message>
    <message>
        <source>Show finished batches too</source>
        <translation>Mostrar también los lotes terminados</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Pieces of the batch</source>
        <translation>Piezas del lote</translation>
    </message>
    <message>
        <source>&amp;Add a piece…</source>
        <translation>&amp;Añadir una pieza…</translation>
    </message>
    <message>
        <source>&amp;Change the batch…</source>
        <translation>&amp;Modificar el lote…</translation>
    </message>
    <message>
        <source>Batches above pieces</source>
        <translation>Lotes encima de piezas</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Iniciado</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>En secado</translation>
    </message>
    <message>
        <source>Last weighed</source>
        <translation>Última pesada</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Net now</source>
        <translation>Neto ahora</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>At target</source>
        <translation>En objetivo</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>started %1</source>
        <translation>iniciado %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>bought %1</source>
        <translation>comprado %1</translation>
    </message>
    <message>
        <source>All batches and their pieces</source>
        <translation>Todos los lotes y sus piezas</translation>
    </message>
    <message>
        <source>&amp;More</source>
        <translation>Má&amp;s</translation>
    </message>
    <message>
        <source>More about the batch</source>
        <translation>Más sobre el lote</translation>
    </message>
    <message>
        <source>&amp;Curves on one chart</source>
        <translation>&amp;Curvas en un solo gráfico</translation>
    </message>
    <message>
        <source>&amp;How it came out…</source>
        <translation>Cómo sal&amp;ió…</translation>
    </message>
    <message>
        <source>How it came out: %1</source>
        <translation>Cómo salió: %1</translation>
    </message>
    <message>
        <source>Salt, texture, and what to change next time</source>
        <translation>Sal, textura y qué cambiar la próxima vez</translation>
    </message>
    <message>
        <source>Once a piece of it is signed as done.</source>
        <translation>Cuando una de sus piezas esté firmada como hecha.</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberDialog</name>
    <message>
        <source>Change a chamber</source>
        <translation>Modificar una cámara</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>Añadir una cámara</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Lowest temperature wanted</source>
        <translation>Temperatura mínima deseada</translation>
    </message>
    <message>
        <source>Highest temperature wanted</source>
        <translation>Temperatura máxima deseada</translation>
    </message>
    <message>
        <source>Lowest humidity wanted</source>
        <translation>Humedad mínima deseada</translation>
    </message>
    <message>
        <source>Highest humidity wanted</source>
        <translation>Humedad máxima deseada</translation>
    </message>
    <message>
        <source>Water it can carry out a day</source>
        <translation>Agua que puede evacuar al día</translation>
    </message>
    <message>
        <source>Places to hang</source>
        <translation>Sitios para colgar</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;What it is</source>
        <translation>&amp;Qué es</translation>
    </message>
    <message>
        <source>&amp;Temperature from</source>
        <translation>&amp;Temperatura desde</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>&amp;Humidity from</source>
        <translation>&amp;Humedad desde</translation>
    </message>
    <message>
        <source>Water it can carry &amp;out a day</source>
        <translation>&amp;Agua que puede evacuar al día</translation>
    </message>
    <message>
        <source>&amp;Places to hang</source>
        <translation>&amp;Sitios para colgar</translation>
    </message>
    <message>
        <source>N&amp;otes</source>
        <translation>N&amp;otas</translation>
    </message>
    <message>
        <source>Give the chamber a name, such as &quot;Cellar&quot;.</source>
        <translation>Dé un nombre a la cámara, como «Bodega».</translation>
    </message>
    <message>
        <source>This is below the lowest temperature.</source>
        <translation>Está por debajo de la temperatura mínima.</translation>
    </message>
    <message>
        <source>This is below the lowest humidity.</source>
        <translation>Está por debajo de la humedad mínima.</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberPage</name>
    <message>
        <source>Chambers</source>
        <translation>Cámaras</translation>
    </message>
    <message>
        <source>No chamber yet</source>
        <translation>Aún no hay cámaras</translation>
    </message>
    <message>
        <source>A chamber is where pieces cure or hang: a fridge, a cabinet, a cellar. Add one with the air you want in it; then import your logger&apos;s file to see how the air really was.</source>
        <translation>Una cámara es donde las piezas están en salazón o colgadas: un frigorífico, un armario, una bodega. Añada una con el aire que desea en ella; importe después el archivo de su registrador para ver cómo fue el aire de verdad.</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>Añadir una cámara</translation>
    </message>
    <message>
        <source>About the chamber</source>
        <translation>Sobre la cámara</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>&amp;Air</source>
        <translation>&amp;Aire</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Sensores</translation>
    </message>
    <message>
        <source>&amp;Sensors</source>
        <translation>&amp;Sensores</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>Car&amp;ga</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Registros</translation>
    </message>
    <message>
        <source>L&amp;ogs</source>
        <translation>&amp;Registros</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Nueva…</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Modificar…</translation>
    </message>
    <message>
        <source>Record an &amp;upset…</source>
        <translation>Anotar una inci&amp;dencia…</translation>
    </message>
    <message>
        <source>&amp;Import a log…</source>
        <translation>&amp;Importar un registro…</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Qué se muestra</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>drying force</source>
        <translation>fuerza de secado</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Cuánto tiempo</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>un día</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>una semana</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 días</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 días</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>un año</translation>
    </message>
    <message>
        <source>ten years</source>
        <translation>diez años</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Second sensor laid over it</source>
        <translation>Segundo sensor superpuesto</translation>
    </message>
    <message>
        <source>◀ &amp;Earlier</source>
        <translation>◀ An&amp;tes</translation>
    </message>
    <message>
        <source>La&amp;ter ▶</source>
        <translation>Des&amp;pués ▶</translation>
    </message>
    <message>
        <source>Ne&amp;west</source>
        <translation>Lo ú&amp;ltimo</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>Fuera de banda</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Durante</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Peor valor</translation>
    </message>
    <message>
        <source>Times out of band, half an hour or longer</source>
        <translation>Tiempos fuera de banda, de media hora o más</translation>
    </message>
    <message>
        <source>no second sensor</source>
        <translation>sin segundo sensor</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Of %1 watched, no time out of the band.</source>
        <translation>Vigilado durante %1: ningún tiempo fuera de la banda.</translation>
    </message>
    <message>
        <source>Of %1 watched: %2.</source>
        <translation>Vigilado durante %1: %2.</translation>
    </message>
    <message>
        <source>For %1 nothing is known.</source>
        <translation>De %1 no se sabe nada.</translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation>Aire en %1</translation>
    </message>
    <message>
        <source>No sensor here yet: import a log, or add a sensor on the Sensors tab.</source>
        <translation>Aún no hay sensor aquí: importe un registro o añada un sensor en la pestaña Sensores.</translation>
    </message>
    <message>
        <source>This sensor has no readings yet: import a log.</source>
        <translation>Este sensor aún no tiene lecturas: importe un registro.</translation>
    </message>
    <message>
        <source>Batch about to be hung here</source>
        <translation>Lote que se va a colgar aquí</translation>
    </message>
    <message>
        <source>&amp;What if this batch is hung here</source>
        <translation>&amp;Y si se cuelga aquí este lote</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Pesa</translation>
    </message>
    <message>
        <source>Hung for</source>
        <translation>Tiempo colgada</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation>Agua al día</translation>
    </message>
    <message>
        <source>Known from</source>
        <translation>Se sabe por</translation>
    </message>
    <message>
        <source>its weighings</source>
        <translation>sus pesadas</translation>
    </message>
    <message>
        <source>the usual pace of its age</source>
        <translation>el ritmo habitual a su edad</translation>
    </message>
    <message>
        <source>Pieces by the water they give off</source>
        <translation>Piezas según el agua que sueltan</translation>
    </message>
    <message>
        <source>Air, sensors and load of the rooms where pieces hang</source>
        <translation>Aire, sensores y carga de los recintos donde cuelgan piezas</translation>
    </message>
    <message>
        <source>▲ never checked</source>
        <translation>▲ nunca comprobado</translation>
    </message>
    <message>
        <source>▲ due %1</source>
        <translation>▲ vence %1</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation>Última lectura</translation>
    </message>
    <message>
        <source>Added to it</source>
        <translation>Se le suma</translation>
    </message>
    <message>
        <source>Salt-bag check</source>
        <translation>Prueba con bolsa de sal</translation>
    </message>
    <message>
        <source>Ice check</source>
        <translation>Prueba con hielo</translation>
    </message>
    <message>
        <source>Sensors in this chamber</source>
        <translation>Sensores de esta cámara</translation>
    </message>
    <message>
        <source>Instruments are often wrong, and believed. Check each over a salt slurry every six months and after a battery change; the dates are common practice.</source>
        <translation>Los instrumentos se equivocan a menudo, y se les cree. Compruebe cada uno sobre pasta de sal cada seis meses y tras cambiar la pila; los plazos son práctica común.</translation>
    </message>
    <message>
        <source>Add a senso&amp;r…</source>
        <translation>Añadir un s&amp;ensor…</translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>M&amp;odificar…</translation>
    </message>
    <message>
        <source>Record a chec&amp;k…</source>
        <translation>Anotar una &amp;comprobación…</translation>
    </message>
    <message>
        <source>%1 of water a day, %2 % of what %3 can carry out.</source>
        <translation>%1 de agua al día, %2 % de lo que puede evacuar %3.</translation>
    </message>
    <message>
        <source>%1 of water a day. What the chamber can carry out is not known: weigh the water it sheds in a day, and enter it under Change.</source>
        <translation>%1 de agua al día. No se sabe cuánta puede evacuar la cámara: pese el agua que suelta en un día e introdúzcala en Modificar.</translation>
    </message>
    <message>
        <source>Nothing hangs here.</source>
        <translation>Aquí no cuelga nada.</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 con %2</translation>
    </message>
    <message>
        <source>Worth swapping, the fast with the slow of the same age: %1.</source>
        <translation>Vale la pena intercambiar la rápida con la lenta de la misma edad: %1.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Recogido</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>New readings</source>
        <translation>Lecturas nuevas</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Omitidas</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>anulado</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>completo</translation>
    </message>
    <message>
        <source>▲ stopped half-way</source>
        <translation>▲ detenido a medias</translation>
    </message>
    <message>
        <source>Logs taken in</source>
        <translation>Registros recogidos</translation>
    </message>
    <message>
        <source>A watched folder&apos;s new files are taken in by themselves, once a first file of the sensor has been imported by hand.</source>
        <translation>Los archivos nuevos de una carpeta vigilada se recogen solos, una vez importado a mano un primer archivo del sensor.</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>&amp;Vigilar una carpeta…</translation>
    </message>
    <message>
        <source>Take the newest log &amp;back</source>
        <translation>An&amp;ular el último registro</translation>
    </message>
    <message>
        <source>Stop watching the &amp;folder</source>
        <translation>De&amp;jar de vigilar la carpeta</translation>
    </message>
    <message>
        <source>Add a sensor first, so that the files have somewhere to go.</source>
        <translation>Añada primero un sensor, para que los archivos tengan adónde ir.</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>Carpeta que vigilar</translation>
    </message>
    <message>
        <source>logger</source>
        <translation>registrador</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n place(s) are free.</source>
        <translation>
            <numerusform>%1 de %n sitio libre.</numerusform>
            <numerusform>%1 de %n sitios libres.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::CheckDialog</name>
    <message>
        <source>Check the book</source>
        <translation>Comprobar el libro</translation>
    </message>
    <message>
        <source>Reads %1 from end to end: pages, indexes, links between entries and the sums of climate readings. It changes nothing.</source>
        <translation>Lee %1 de principio a fin: páginas, índices, enlaces entre entradas y sumas de las lecturas de clima. No cambia nada.</translation>
    </message>
    <message>
        <source>The book is being read</source>
        <translation>Se está leyendo el libro</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Qué se halló</translation>
    </message>
    <message>
        <source>Make the climate roll-ups a&amp;new</source>
        <translation>Re&amp;hacer los resúmenes de clima</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>Re&amp;scatar en un libro nuevo…</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>&amp;Restaurar una copia de respaldo…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>Ca&amp;ncelar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>The check is under way. A book with years of climate readings takes a while.</source>
        <translation>La comprobación está en marcha. Un libro con años de lecturas de clima tarda un rato.</translation>
    </message>
    <message>
        <source>The climate roll-ups are being made anew from the readings.</source>
        <translation>Se están rehaciendo los resúmenes de clima a partir de las lecturas.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>This book is open for reading only: open it for writing to do that.</source>
        <translation>Este libro está abierto solo para lectura: ábralo para escritura si quiere hacerlo.</translation>
    </message>
</context>
<context>
    <name>ui::pages::CompareDialog</name>
    <message>
        <source>Pieces for one chart</source>
        <translation>Piezas para un solo gráfico</translation>
    </message>
    <message>
        <source>Find a piece</source>
        <translation>Buscar una pieza</translation>
    </message>
    <message>
        <source>Find by code, piece, batch or product</source>
        <translation>Buscar por código, pieza, lote o producto</translation>
    </message>
    <message>
        <source>Pieces, ticked ones are drawn</source>
        <translation>Piezas; se dibujan las marcadas</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>&amp;Draw them</source>
        <translation>&amp;Dibujarlas</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 · %4</source>
        <extracomment>a piece: %1 its code, %2 its name, %3 its batch and product, %4 its state</extracomment>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message>
        <source>No other piece was hung yet.</source>
        <translation>Aún no se ha colgado ninguna otra pieza.</translation>
    </message>
    <message>
        <source>%1 is the most a chart can tell apart; the newest are drawn.</source>
        <translation>%1 es lo máximo que un gráfico permite distinguir; se dibujan las más recientes.</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>Marcadas: %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::EntryDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>%1
If this is right, press Keep again.</source>
        <translation>%1
Si es correcto, pulse Guardar otra vez.</translation>
    </message>
</context>
<context>
    <name>ui::pages::EventDialog</name>
    <message>
        <source>Drying starts. The net weight now is the hung weight that losses count from.</source>
        <translation>Empieza el secado. El peso neto de ahora es el peso al colgar, desde el que cuentan las mermas.</translation>
    </message>
    <message>
        <source>A casing or net was put on. Its weight is tare from now on.</source>
        <translation>Se puso una tripa o malla. Su peso es tara desde ahora.</translation>
    </message>
    <message>
        <source>Casing or net was changed. The net weight stays; only the tare changes.</source>
        <translation>Se cambió la tripa o la malla. El peso neto no cambia; solo cambia la tara.</translation>
    </message>
    <message>
        <source>Lard, paste or pepper was put on. The added weight is not meat.</source>
        <translation>Se puso manteca, pasta o pimienta. El peso añadido no es carne.</translation>
    </message>
    <message>
        <source>Something was cut off. Start and target shrink in proportion.</source>
        <translation>Se cortó algo. El peso inicial y el objetivo se reducen en proporción.</translation>
    </message>
    <message>
        <source>A wedge was taken to taste. Start and target shrink in proportion.</source>
        <translation>Se tomó una cuña para probar. El peso inicial y el objetivo se reducen en proporción.</translation>
    </message>
    <message>
        <source>The piece was pressed. Water pressed out counts as loss.</source>
        <translation>La pieza se prensó. El agua exprimida cuenta como merma.</translation>
    </message>
    <message>
        <source>The piece was washed or soaked. The next weighing may be wet.</source>
        <translation>La pieza se lavó o se desaló. La próxima pesada puede ser en húmedo.</translation>
    </message>
    <message>
        <source>The piece hangs elsewhere now.</source>
        <translation>La pieza cuelga ahora en otro lugar.</translation>
    </message>
    <message>
        <source>The piece was frozen. The cure clock stops.</source>
        <translation>La pieza se congeló. El reloj de la salazón se para.</translation>
    </message>
    <message>
        <source>The piece is thawed. The cure clock runs again.</source>
        <translation>La pieza está descongelada. El reloj de la salazón vuelve a correr.</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>target net: %1</source>
        <translation>objetivo neto: %1</translation>
    </message>
    <message>
        <source>target on the scale: %1</source>
        <translation>objetivo en la balanza: %1</translation>
    </message>
    <message>
        <source>tare: %1</source>
        <translation>tara: %1</translation>
    </message>
    <message>
        <source>No number changes.</source>
        <translation>No cambia ningún número.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Día</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>&amp;Hora</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>Peso neto antes</translation>
    </message>
    <message>
        <source>Net weight after</source>
        <translation>Peso neto después</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>Peso neto &amp;antes</translation>
    </message>
    <message>
        <source>Net weight &amp;after</source>
        <translation>Peso neto des&amp;pués</translation>
    </message>
    <message>
        <source>Net weight as hung</source>
        <translation>Peso neto al colgar</translation>
    </message>
    <message>
        <source>&amp;Net weight as hung</source>
        <translation>Peso neto al co&amp;lgar</translation>
    </message>
    <message>
        <source>Tare from now on</source>
        <translation>Tara desde ahora</translation>
    </message>
    <message>
        <source>&amp;Tare from now on</source>
        <translation>&amp;Tara desde ahora</translation>
    </message>
    <message>
        <source>New start weight</source>
        <translation>Nuevo peso inicial</translation>
    </message>
    <message>
        <source>in proportion</source>
        <translation>en proporción</translation>
    </message>
    <message>
        <source>New &amp;start, if not in proportion</source>
        <translation>Nuevo &amp;inicio, si no es en proporción</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Cámara</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Qué cambia</translation>
    </message>
</context>
<context>
    <name>ui::pages::GuidePage</name>
    <message>
        <source>Guide</source>
        <translation>Guía</translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation>Capítulo</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>Capítulos</translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation>Texto del capítulo</translation>
    </message>
    <message>
        <source>Search the guide</source>
        <translation>Buscar en la guía</translation>
    </message>
    <message>
        <source>Pre&amp;vious</source>
        <translation>&amp;Anterior</translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>The guide is in English.</source>
        <translation>La guía está en inglés.</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>un lugar</numerusform>
            <numerusform>%n lugares</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n chapter(s)</source>
        <translation>
            <numerusform>%1 en un capítulo</numerusform>
            <numerusform>%1 en %n capítulos</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” is not in the guide.</source>
        <translation>«%1» no está en la guía.</translation>
    </message>
    <message>
        <source>How the work goes, what to do when, and the mathematics</source>
        <translation>Cómo se desarrolla el trabajo, qué hacer si pasa algo, y las matemáticas</translation>
    </message>
</context>
<context>
    <name>ui::pages::HangingPage</name>
    <message>
        <source>What hangs</source>
        <translation>Qué cuelga</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Cámara</translation>
    </message>
    <message>
        <source>Nothing hangs yet</source>
        <translation>Aún no cuelga nada</translation>
    </message>
    <message>
        <source>When a piece comes out of the cure, open it and choose &quot;What happened: hung to dry&quot;. From its second weighing on it stands here on a time axis with the interval in which it is expected to reach its target.</source>
        <translation>Cuando una pieza salga de la salazón, ábrala y elija «Qué ha pasado: colgada a secar». Desde su segunda pesada figura aquí en un eje de tiempo, con el intervalo en que se espera que alcance su objetivo.</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation>Listo para el</translation>
    </message>
    <message>
        <source>What is &amp;ready by</source>
        <translation>Qué estará &amp;listo para el</translation>
    </message>
    <message>
        <source>Drying pieces</source>
        <translation>Piezas en secado</translation>
    </message>
    <message>
        <source>Columns and dates</source>
        <translation>Columnas y fechas</translation>
    </message>
    <message>
        <source>Bar: how far the loss has come towards the target, from hanging to now. Box: 8 chances in 10 that the target is reached inside; the line in it is even odds. An arrow: it may never be. At target is not done: look, touch and cut before you decide.</source>
        <translation>Barra: cuánto ha avanzado la merma hacia el objetivo, desde que se colgó hasta ahora. Recuadro: 8 probabilidades de 10 de que el objetivo se alcance dentro de él; su línea interior, mitad y mitad. Una flecha: quizá no llegue nunca. En objetivo no significa hecha: mire, palpe y corte antes de decidir.</translation>
    </message>
    <message>
        <source>It dries much faster or slower than the others of its batch.</source>
        <translation>Se seca mucho más deprisa o más despacio que las otras de su lote.</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Cuelga en</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>fast ▲ </source>
        <translation>rápida ▲ </translation>
    </message>
    <message>
        <source>slow ▼ </source>
        <translation>lenta ▼ </translation>
    </message>
    <message>
        <source>At target</source>
        <translation>En objetivo</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todas</translation>
    </message>
    <message>
        <source>Type a day, such as a market or a feast, to see which pieces are expected to be at their target.</source>
        <translation>Escriba un día, como un mercado o una fiesta, para ver qué piezas se esperan en su objetivo.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Nine chances in ten or better: %1. More likely than not: %2. Possible: %3.</source>
        <translation>Nueve probabilidades de diez o más: %1. Más probable que no: %2. Posible: %3.</translation>
    </message>
    <message>
        <source>Drying pieces on a time axis, and what is ready by a day</source>
        <translation>Piezas en secado en un eje de tiempo, y qué estará listo para un día</translation>
    </message>
    <message>
        <source>Nothing hangs.</source>
        <translation>No cuelga nada.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a product, %2 sentences about earlier pieces of it</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::ImportLogDialog</name>
    <message>
        <source>as found in the file</source>
        <translation>como se halló en el archivo</translation>
    </message>
    <message>
        <source>Import a climate log</source>
        <translation>Importar un registro de clima</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation>Progreso de la importación</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importar</translation>
    </message>
    <message>
        <source>Choose the file your logger wrote. Nothing is stored before you press Import, and one Undo takes the whole log back.</source>
        <translation>Elija el archivo que escribió su registrador. No se guarda nada hasta que pulse Importar, y un solo Deshacer retira todo el registro.</translation>
    </message>
    <message>
        <source>Log file</source>
        <translation>Archivo de registro</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>E&amp;legir…</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>&amp;Sensor</source>
        <translation>&amp;Sensor</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Fechas</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>año, mes, día</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>día, mes, año</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mes, día, año</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>Temperatura en</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Reloj</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>hora local de %1</translation>
    </message>
    <message>
        <source>winter time all year</source>
        <translation>horario de invierno todo el año</translation>
    </message>
    <message>
        <source>&amp;Dates</source>
        <translation>&amp;Fechas</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>&amp;Temperatura en</translation>
    </message>
    <message>
        <source>D&amp;ecimal sign</source>
        <translation>Signo &amp;decimal</translation>
    </message>
    <message>
        <source>Cloc&amp;k</source>
        <translation>&amp;Reloj</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Reads as</source>
        <translation>Se lee como</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Certeza</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Or else</source>
        <translation>O bien</translation>
    </message>
    <message>
        <source>How the file reads</source>
        <translation>Cómo se lee el archivo</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>First readings</source>
        <translation>Primeras lecturas</translation>
    </message>
    <message>
        <source>Logs (*.csv *.txt *.tsv *.log);;All files (*)</source>
        <translation>Registros (*.csv *.txt *.tsv *.log);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Part of this is a guess. Say above how the file is to be read; it is remembered for this sensor.</source>
        <translation>Una parte es una suposición. Indique arriba cómo se debe leer el archivo; se recuerda para este sensor.</translation>
    </message>
    <message>
        <source>The file reads well.</source>
        <translation>El archivo se lee bien.</translation>
    </message>
    <message>
        <source>&amp;Cancel the import</source>
        <translation>Ca&amp;ncelar la importación</translation>
    </message>
    <message>
        <source>The first is line %1: %2.</source>
        <translation>La primera es la línea %1: %2.</translation>
    </message>
    <message>
        <source>%1 say something else than the book, which was left as it is.</source>
        <translation>Contradicen al libro, que se dejó como está: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n lectura</numerusform>
            <numerusform>%n lecturas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the first %1 lines %n are no readings; they will be left out.</source>
        <translation>
            <numerusform>De las primeras %1 líneas, %n no es una lectura; se omitirá.</numerusform>
            <numerusform>De las primeras %1 líneas, %n no son lecturas; se omitirán.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n reading(s) are new.</source>
        <translation>
            <numerusform>%1 de %n lectura es nueva.</numerusform>
            <numerusform>%1 de %n lecturas son nuevas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopped. %n reading(s) were taken in before; Undo takes them back.</source>
        <translation>
            <numerusform>Detenido. Antes se recogió %n lectura; Deshacer la retira.</numerusform>
            <numerusform>Detenido. Antes se recogieron %n lecturas; Deshacer las retira.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) are no readings.</source>
        <translation>
            <numerusform>%n línea no es una lectura.</numerusform>
            <numerusform>%n líneas no son lecturas.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::KeepByFields</name>
    <message>
        <source>Rule for keeping it</source>
        <translation>Regla de conservación</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>Conservar hasta</translation>
    </message>
    <message>
        <source>Why this day</source>
        <translation>Por qué esta fecha</translation>
    </message>
    <message>
        <source>needed for a day of your own</source>
        <translation>necesario para una fecha propia</translation>
    </message>
    <message>
        <source>none: your own day, or no day</source>
        <translation>ninguna: fecha propia o sin fecha</translation>
    </message>
    <message>
        <source>Without a rule the day is yours. How long a pack keeps depends on the product, its dryness and the cold; follow your own code.</source>
        <translation>Sin una regla, la fecha es suya. Cuánto se conserva un envase depende del producto, de lo seco que esté y del frío; siga su propia norma.</translation>
    </message>
</context>
<context>
    <name>ui::pages::LostWeightDialog</name>
    <message>
        <source>%1: a weight is lost</source>
        <translation>%1: falta un peso</translation>
    </message>
    <message>
        <source>Enter as an &amp;estimate</source>
        <translation>Introducir como &amp;estimación</translation>
    </message>
    <message>
        <source>No start weight can be found missing</source>
        <translation>No falta ningún peso inicial</translation>
    </message>
    <message>
        <source>Raw and hung weight are both in the book, or the piece was never weighed. A weighing that was missed later needs nothing: the curve has no fixed rhythm.</source>
        <translation>El peso en fresco y el peso al colgar ya están en el libro, o la pieza nunca se pesó. Una pesada que se saltó después no exige nada: la curva no tiene un ritmo fijo.</translation>
    </message>
    <message>
        <source>Which weight is lost</source>
        <translation>Qué peso falta</translation>
    </message>
    <message>
        <source>Day it should have been taken</source>
        <translation>Día en que debió tomarse</translation>
    </message>
    <message>
        <source>Net weight, estimated</source>
        <translation>Peso neto, estimado</translation>
    </message>
    <message>
        <source>Which weight is &amp;lost</source>
        <translation>Qué &amp;peso falta</translation>
    </message>
    <message>
        <source>&amp;Day it should have been taken</source>
        <translation>&amp;Día en que debió tomarse</translation>
    </message>
    <message>
        <source>&amp;Net weight, estimated</source>
        <translation>Peso &amp;neto, estimado</translation>
    </message>
    <message>
        <source>What can be said of it</source>
        <translation>Qué se puede decir de él</translation>
    </message>
    <message>
        <source>Entered as an estimate it stands in the list with its range. Losses count from it and are as uncertain as it is; the curve does not lean on it. It can be undone.</source>
        <translation>Introducido como estimación, figura en la lista con su margen. Las mermas se cuentan desde él y son tan inciertas como él; la curva no se apoya en él. Se puede deshacer.</translation>
    </message>
    <message>
        <source>Or leave it unknown</source>
        <translation>O dejarlo sin conocer</translation>
    </message>
    <message>
        <source>Cancel, and nothing is made up: the days since hanging, the rate from weighing to weighing and the loss from every weight that is known are still counted. The target can be bound to one of those under Change.</source>
        <translation>Cancele y no se inventa nada: los días desde que se colgó, el ritmo de pesada a pesada y la merma desde cada peso conocido se siguen contando. El objetivo puede ligarse a uno de ellos en Modificar.</translation>
    </message>
    <message>
        <source>Enter the day, and the estimate stands here.</source>
        <translation>Indique el día, y aquí aparece la estimación.</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>Calculando…</translation>
    </message>
    <message numerus="yes">
        <source>About %1; 8 in 10 such pieces lie between %2 and %3. From %n piece(s) of its batch and the air they hung in.</source>
        <translation>
            <numerusform>Alrededor de %1; 8 de cada 10 piezas así están entre %2 y %3. Según %n pieza de su lote y el aire en que colgaron.</numerusform>
            <numerusform>Alrededor de %1; 8 de cada 10 piezas así están entre %2 y %3. Según %n piezas de su lote y el aire en que colgaron.</numerusform>
        </translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a raw and a hung weight are needed.</source>
        <translation>Ninguna pieza hermana puede decirlo: hacen falta dos piezas del lote con peso en fresco y peso al colgar.</translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a hung weight, five weighings and half their target lost are needed.</source>
        <translation>Ninguna pieza hermana puede decirlo: hacen falta dos piezas del lote con peso al colgar, cinco pesadas y la mitad de su merma objetivo.</translation>
    </message>
    <message>
        <source>By its form and the air alone it lay between %1 and %2: too wide to count from.</source>
        <translation>Solo por su forma y el aire, pesaba entre %1 y %2: demasiado amplio para contar desde ahí.</translation>
    </message>
    <message>
        <source>There is no estimate to enter yet.</source>
        <translation>Todavía no hay estimación que introducir.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MainWindow</name>
    <message>
        <source>Daily round</source>
        <translation>Ronda diaria</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>El libro</translation>
    </message>
    <message>
        <source>The house</source>
        <translation>El taller</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>What was done last</source>
        <translation>Lo último que se hizo</translation>
    </message>
    <message>
        <source>The open book</source>
        <translation>El libro abierto</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Secciones</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Página</translation>
    </message>
    <message>
        <source>Invented data: this book shows a producer that does not exist. Nothing you do here touches your own book.</source>
        <translation>Datos inventados: este libro muestra un productor que no existe. Nada de lo que haga aquí toca su propio libro.</translation>
    </message>
    <message>
        <source>This book is open for reading only.</source>
        <translation>Este libro está abierto solo para lectura.</translation>
    </message>
    <message>
        <source>Demonstration book</source>
        <translation>Libro de demostración</translation>
    </message>
    <message>
        <source>%1 – Saltloft</source>
        <translation>%1 – Saltloft</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>Menús</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Libro</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Libro</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>&amp;Nuevo libro…</translation>
    </message>
    <message>
        <source>&amp;Open book…</source>
        <translation>&amp;Abrir libro…</translation>
    </message>
    <message>
        <source>Open the &amp;demonstration book</source>
        <translation>Abrir el libro de &amp;demostración</translation>
    </message>
    <message>
        <source>&amp;Back up a copy…</source>
        <translation>Hacer una &amp;copia de respaldo…</translation>
    </message>
    <message>
        <source>&amp;Print this page…</source>
        <translation>&amp;Imprimir esta página…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Edición</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Edición</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Ir</translation>
    </message>
    <message>
        <source>Go</source>
        <translation>Ir</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Atrás</translation>
    </message>
    <message>
        <source>To the &amp;places</source>
        <translation>A las &amp;secciones</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Advertencias</translation>
    </message>
    <message>
        <source>&amp;About Saltloft</source>
        <translation>Acerca &amp;de Saltloft</translation>
    </message>
    <message>
        <source>About Saltloft</source>
        <translation>Acerca de Saltloft</translation>
    </message>
    <message>
        <source>Saltloft %1

Plan, weigh and follow cured and air-dried meat.

Free software under the GNU General Public License, version 3 or later.
It keeps records and computes; it does not decide whether food may be eaten.</source>
        <translation>Saltloft %1

Planificar, pesar y seguir carne curada y secada al aire.

Software libre bajo la Licencia Pública General de GNU, versión 3 o posterior.
Lleva registros y calcula; no decide si un alimento se puede comer.</translation>
    </message>
    <message>
        <source>The demonstration book is made anew each time; there is nothing to restore.</source>
        <translation>El libro de demostración se hace de nuevo cada vez; no hay nada que restaurar.</translation>
    </message>
    <message>
        <source>This book is open elsewhere. Close it there and open it again to restore a backup.</source>
        <translation>Este libro está abierto en otro lugar. Ciérrelo allí y ábralo de nuevo para restaurar una copia de respaldo.</translation>
    </message>
    <message>
        <source>This book may only be read by you. Free the permissions of the file and its folder to restore a backup.</source>
        <translation>Usted solo puede leer este libro. Libere los permisos del archivo y de su carpeta para restaurar una copia de respaldo.</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>&amp;Restaurar una copia de respaldo…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of this book</source>
        <translation>Pone una copia anterior en el lugar de este libro</translation>
    </message>
    <message>
        <source>&amp;Check the book…</source>
        <translation>Com&amp;probar el libro…</translation>
    </message>
    <message>
        <source>Reads the book from end to end and says whether it is whole</source>
        <translation>Lee el libro de principio a fin y dice si está íntegro</translation>
    </message>
    <message>
        <source>This page has nothing to print.</source>
        <translation>Esta página no tiene nada que imprimir.</translation>
    </message>
    <message>
        <source>&amp;Guide to this page</source>
        <translation>&amp;Guía de esta página</translation>
    </message>
</context>
<context>
    <name>ui::pages::MergeDialog</name>
    <message>
        <source>Weigh %1 with others as one</source>
        <translation>Pesar %1 junto con otras</translation>
    </message>
    <message>
        <source>Weighed together with</source>
        <translation>Pesada junto con</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code of the bundle</source>
        <translation>Código del conjunto</translation>
    </message>
    <message>
        <source>All together on the scale</source>
        <translation>Todas juntas en la balanza</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>&amp;Weighed together with</source>
        <translation>&amp;Pesada junto con</translation>
    </message>
    <message>
        <source>&amp;Code of the bundle</source>
        <translation>&amp;Código del conjunto</translation>
    </message>
    <message>
        <source>&amp;All together on the scale</source>
        <translation>T&amp;odas juntas en la balanza</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tara</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>Mark at least one other piece.</source>
        <translation>Marque al menos otra pieza.</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Qué cambia</translation>
    </message>
    <message>
        <source>Mark the pieces and weigh them together; the new start and target then stand here.</source>
        <translation>Marque las piezas y péselas juntas; el nuevo inicio y el objetivo aparecen entonces aquí.</translation>
    </message>
    <message>
        <source>Weighed apart: %1 net; together: %2 net</source>
        <translation>Pesadas por separado: %1 neto; juntas: %2 neto</translation>
    </message>
    <message>
        <source>No other piece of this batch is at the same stage: there is none to weigh it with.</source>
        <translation>Ninguna otra pieza de este lote está en la misma fase: no hay con cuál pesarla.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixLines</name>
    <message>
        <source>Ingredient</source>
        <translation>Ingrediente</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contado</translation>
    </message>
    <message>
        <source>On the label</source>
        <translation>En la etiqueta</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Fijo</translation>
    </message>
    <message>
        <source>Ingredient of line %1</source>
        <translation>Ingrediente de la línea %1</translation>
    </message>
    <message>
        <source>Amount of line %1</source>
        <translation>Cantidad de la línea %1</translation>
    </message>
    <message>
        <source>2.5 %, 40 g, 100 mL</source>
        <translation>2,5 %, 40 g, 100 mL</translation>
    </message>
    <message>
        <source>What line %1 is a share of</source>
        <translation>De qué es proporción la línea %1</translation>
    </message>
    <message>
        <source>What the label of line %1 says</source>
        <translation>Qué dice la etiqueta de la línea %1</translation>
    </message>
    <message>
        <source>Hold line %1 as it is</source>
        <translation>Mantener fija la línea %1</translation>
    </message>
    <message>
        <source>Take line %1 out</source>
        <translation>Quitar la línea %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixOwnDialog</name>
    <message>
        <source>An ingredient of my own</source>
        <translation>Un ingrediente propio</translation>
    </message>
    <message>
        <source>Enter what the label says; divide the figures with semicolons. Words: nitrite, nitrate, salt, sodium, sugar, alcohol, acid, water, density (g to the mL).</source>
        <translation>Introduzca lo que dice la etiqueta; separe las cifras con punto y coma. Palabras, en inglés: nitrite (nitrito), nitrate (nitrato), salt (sal), sodium (sodio), sugar (azúcar), alcohol, acid (ácido), water (agua), density (densidad, g por mL).</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Sauce</source>
        <translation>Salsa</translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation>Sal de cura</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sal</translation>
    </message>
    <message>
        <source>Sugar or syrup</source>
        <translation>Azúcar o jarabe</translation>
    </message>
    <message>
        <source>Spirit</source>
        <translation>Destilado</translation>
    </message>
    <message>
        <source>Wine</source>
        <translation>Vino</translation>
    </message>
    <message>
        <source>Vinegar</source>
        <translation>Vinagre</translation>
    </message>
    <message>
        <source>Spice or herb</source>
        <translation>Especia o hierba</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>What its label says</source>
        <translation>Qué dice su etiqueta</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>On the &amp;label</source>
        <translation>En la &amp;etiqueta</translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation>&amp;Añadir</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>Dele un nombre.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixPage</name>
    <message>
        <source>Mix bench</source>
        <translation>Mezcla</translation>
    </message>
    <message>
        <source>The meat and the recipe</source>
        <translation>La carne y la receta</translation>
    </message>
    <message>
        <source>Weight of the meat</source>
        <translation>Peso de la carne</translation>
    </message>
    <message>
        <source>1500 g; several pieces: 820 g; 1180 g</source>
        <translation>1500 g; varias piezas: 820 g; 1180 g</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Versión</translation>
    </message>
    <message>
        <source>Name of the recipe</source>
        <translation>Nombre de la receta</translation>
    </message>
    <message>
        <source>&amp;Weight of the meat</source>
        <translation>&amp;Peso de la carne</translation>
    </message>
    <message>
        <source>&amp;Recipe</source>
        <translation>&amp;Receta</translation>
    </message>
    <message>
        <source>&amp;Version</source>
        <translation>&amp;Versión</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Add a line</source>
        <translation>&amp;Añadir una línea</translation>
    </message>
    <message>
        <source>&amp;Ingredient of my own...</source>
        <translation>&amp;Ingrediente propio...</translation>
    </message>
    <message>
        <source>How, and against which limits</source>
        <translation>Cómo y frente a qué límites</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>ninguno elegido</translation>
    </message>
    <message>
        <source>The scale shows steps of</source>
        <translation>La balanza muestra divisiones de</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>Pickle taken up</source>
        <translation>Salmuera absorbida</translation>
    </message>
    <message>
        <source>10 % of the meat</source>
        <translation>10 % de la carne</translation>
    </message>
    <message>
        <source>Pickle taken &amp;up</source>
        <translation>Salmuera abs&amp;orbida</translation>
    </message>
    <message>
        <source>Expected loss of weight</source>
        <translation>Merma esperada</translation>
    </message>
    <message>
        <source>35 %, for limits on finished meat</source>
        <translation>35 %, para límites sobre carne terminada</translation>
    </message>
    <message>
        <source>S&amp;kin on</source>
        <translation>Con pi&amp;el</translation>
    </message>
    <message>
        <source>Skin on</source>
        <translation>Con piel</translation>
    </message>
    <message>
        <source>&amp;Fatty cut (belly, jowl)</source>
        <translation>Corte &amp;graso (panceta, papada)</translation>
    </message>
    <message>
        <source>Fatty cut (belly, jowl)</source>
        <translation>Corte graso (panceta, papada)</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>&amp;Método</translation>
    </message>
    <message>
        <source>&amp;Limits</source>
        <translation>&amp;Límites</translation>
    </message>
    <message>
        <source>&amp;Scale step</source>
        <translation>División de la &amp;balanza</translation>
    </message>
    <message>
        <source>Expected l&amp;oss</source>
        <translation>Merma e&amp;sperada</translation>
    </message>
    <message>
        <source>Find the amounts</source>
        <translation>Hallar las cantidades</translation>
    </message>
    <message>
        <source>Tick Hold on the lines that must stay, say what you want, and the other lines are found. What cannot be met is named.</source>
        <translation>Marque Fijo en las líneas que deben quedarse, diga qué desea y se hallan las demás. Lo que no se puede cumplir se nombra.</translation>
    </message>
    <message>
        <source>Salt wanted, of the meat</source>
        <translation>Sal deseada, de la carne</translation>
    </message>
    <message>
        <source>2.75 %</source>
        <translation>2,75 %</translation>
    </message>
    <message>
        <source>Nitrite wanted, of the meat</source>
        <translation>Nitrito deseado, de la carne</translation>
    </message>
    <message>
        <source>120 ppm</source>
        <translation>120 ppm</translation>
    </message>
    <message>
        <source>Salt wan&amp;ted</source>
        <translation>Sal &amp;deseada</translation>
    </message>
    <message>
        <source>Nitrite wante&amp;d</source>
        <translation>Nitri&amp;to deseado</translation>
    </message>
    <message>
        <source>&amp;Find the rest</source>
        <translation>&amp;Hallar el resto</translation>
    </message>
    <message>
        <source>Put on the scale</source>
        <translation>Poner en la balanza</translation>
    </message>
    <message>
        <source>What to put on the scale</source>
        <translation>Qué poner en la balanza</translation>
    </message>
    <message>
        <source>What that is</source>
        <translation>Qué supone eso</translation>
    </message>
    <message>
        <source>Compare with another recipe</source>
        <translation>Comparar con otra receta</translation>
    </message>
    <message>
        <source>&amp;Compare with</source>
        <translation>&amp;Comparar con</translation>
    </message>
    <message>
        <source>What the meat gets</source>
        <translation>Qué recibe la carne</translation>
    </message>
    <message>
        <source>Against the limits</source>
        <translation>Frente a los límites</translation>
    </message>
    <message>
        <source>The dose against the limits</source>
        <translation>La dosis frente a los límites</translation>
    </message>
    <message>
        <source>Look at this first</source>
        <translation>Mire esto primero</translation>
    </message>
    <message>
        <source>Why this version</source>
        <translation>Por qué esta versión</translation>
    </message>
    <message>
        <source>what changed, for your later self</source>
        <translation>qué cambió, para recordarlo después</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>Por &amp;qué</translation>
    </message>
    <message>
        <source>&amp;Keep this recipe</source>
        <translation>G&amp;uardar esta receta</translation>
    </message>
    <message>
        <source>These sums are no verdict on the food. Local codes, licensed practice and laboratory measurement come first.</source>
        <translation>Estos cálculos no son un veredicto sobre el alimento. Las normas locales, la práctica autorizada y la medición de laboratorio van primero.</translation>
    </message>
    <message>
        <source>What to weigh for this meat, and what dose that really is</source>
        <translation>Qué pesar para esta carne y qué dosis es de verdad</translation>
    </message>
    <message>
        <source>a new one</source>
        <translation>una nueva</translation>
    </message>
    <message>
        <source>no other</source>
        <translation>ninguna otra</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1, versión %2</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>versión %1</translation>
    </message>
    <message>
        <source>version %1: %2</source>
        <translation>versión %1: %2</translation>
    </message>
    <message>
        <source>Enter the weight of the meat, and here stands what to weigh for it.</source>
        <translation>Introduzca el peso de la carne y aquí figurará lo que hay que pesar para ella.</translation>
    </message>
    <message>
        <source>Read, and taken on</source>
        <translation>Leída y asumida</translation>
    </message>
    <message>
        <source>Caution read and taken on: %1</source>
        <translation>Advertencia leída y asumida: %1</translation>
    </message>
    <message>
        <source>Stopped. To mend before this can be used: %1.</source>
        <translation>Detenido. Por corregir antes de poder usarlo: %1.</translation>
    </message>
    <message>
        <source>Cautions to read and take on by name: %1.</source>
        <translation>Advertencias que leer y asumir con su nombre: %1.</translation>
    </message>
    <message>
        <source>Nothing stands open.</source>
        <translation>No queda nada pendiente.</translation>
    </message>
    <message>
        <source>Enter the weight of the meat first.</source>
        <translation>Introduzca primero el peso de la carne.</translation>
    </message>
    <message>
        <source>Say how much salt or nitrite you want.</source>
        <translation>Diga cuánta sal o cuánto nitrito desea.</translation>
    </message>
    <message>
        <source>Mend the stops first: something is not known yet.</source>
        <translation>Corrija primero los avisos de alto: aún hay algo que no se sabe.</translation>
    </message>
    <message>
        <source>Found: the lines not held were changed.</source>
        <translation>Hallado: se cambiaron las líneas no fijas.</translation>
    </message>
    <message>
        <source>Give the recipe a name first.</source>
        <translation>Dé primero un nombre a la receta.</translation>
    </message>
    <message>
        <source>Nothing has changed since the last version.</source>
        <translation>No ha cambiado nada desde la última versión.</translation>
    </message>
    <message>
        <source>Use it for a &amp;batch…</source>
        <translation>Usarla para un &amp;lote…</translation>
    </message>
    <message>
        <source>The salt of this recipe cannot be changed by itself: it is held, or comes with the curing salt or a pickle. Say it as a wish and find the rest.</source>
        <translation>La sal de esta receta no se puede cambiar por sí sola: está fija, o viene con la sal de cura o con una salmuera. Indíquela como valor deseado y halle el resto.</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>Hoja de mezcla</translation>
    </message>
    <message>
        <source>Read the cautions and take each of them on first.</source>
        <translation>Lea primero las advertencias y asuma cada una de ellas.</translation>
    </message>
    <message>
        <source>The batch&apos;s record names this recipe and the cautions now.</source>
        <translation>El registro del lote nombra ahora esta receta y las advertencias.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixUseDialog</name>
    <message>
        <source>Use %1 for a batch</source>
        <translation>Usar %1 para un lote</translation>
    </message>
    <message>
        <source>The batch&apos;s record then names this version as the recipe it was salted with, and prints each caution with who took it on and when.</source>
        <translation>El registro del lote nombra entonces esta versión como la receta con que se saló, e imprime cada advertencia con quién la asumió y cuándo.</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Taken on by</source>
        <translation>Asumidas por</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>&amp;Batch</source>
        <translation>&amp;Lote</translation>
    </message>
    <message>
        <source>&amp;Taken on by</source>
        <translation>&amp;Asumidas por</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Por qué</translation>
    </message>
    <message numerus="yes">
        <source>%n caution(s) taken on</source>
        <translation>
            <numerusform>una advertencia asumida</numerusform>
            <numerusform>%n advertencias asumidas</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Put it in the book</source>
        <translation>Pa&amp;sar al libro</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first; this recipe is kept meanwhile.</source>
        <translation>Aún no hay ningún lote abierto. Empiece uno primero; mientras tanto, esta receta se guarda.</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first.</source>
        <translation>Aún no hay ningún lote abierto. Empiece uno primero.</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>Indique quién asume las advertencias: elija o escriba el nombre.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MonthView</name>
    <message>
        <source>%1 more</source>
        <translation>%1 más</translation>
    </message>
</context>
<context>
    <name>ui::pages::NewBatchPage</name>
    <message>
        <source>New batch</source>
        <translation>Nuevo lote</translation>
    </message>
    <message>
        <source>The meat</source>
        <translation>La carne</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>Código del lote</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Lote del proveedor</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Iniciado</translation>
    </message>
    <message>
        <source>Batch &amp;code</source>
        <translation>Códi&amp;go del lote</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>Nom&amp;bre</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Producto</translation>
    </message>
    <message>
        <source>&amp;Started</source>
        <translation>&amp;Iniciado</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animal</translation>
    </message>
    <message>
        <source>S&amp;upplier</source>
        <translation>Pro&amp;veedor</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>&amp;Lote del proveedor</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>Las piezas</translation>
    </message>
    <message>
        <source>Raw weight as it goes into the cure, without wrapping. Measure the thickness at the thickest point.</source>
        <translation>Peso en fresco tal como entra en la salazón, sin envoltorio. Mida el grosor en el punto más grueso.</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>Una pieza &amp;más</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>Una pieza m&amp;enos</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Merma buscada</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Contada desde</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>no plan</source>
        <translation>sin plan</translation>
    </message>
    <message>
        <source>Loss aimed f&amp;or</source>
        <translation>Merma b&amp;uscada</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>&amp;Contada desde</translation>
    </message>
    <message>
        <source>Pl&amp;an</source>
        <translation>Pla&amp;n</translation>
    </message>
    <message>
        <source>The cure: dry, weighed, all of it taken up</source>
        <translation>La salazón: en seco, pesada, toda absorbida</translation>
    </message>
    <message>
        <source>Shares are of the raw weight. Curing salt counts by the strength on its packet, not by its name or colour.</source>
        <translation>Las proporciones son sobre el peso en fresco. La sal de cura cuenta por la concentración de su paquete, no por su nombre ni su color.</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sal</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Azúcar</translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation>Sal de cura</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Curing salt, dose</source>
        <translation>Sal de cura, dosis</translation>
    </message>
    <message>
        <source>Nitrite on the label</source>
        <translation>Nitrito en la etiqueta</translation>
    </message>
    <message>
        <source>as listed</source>
        <translation>como figura</translation>
    </message>
    <message>
        <source>Nitrate on the label</source>
        <translation>Nitrato en la etiqueta</translation>
    </message>
    <message>
        <source>Sal&amp;t</source>
        <translation>&amp;Sal</translation>
    </message>
    <message>
        <source>Su&amp;gar</source>
        <translation>A&amp;zúcar</translation>
    </message>
    <message>
        <source>Weighed &amp;on</source>
        <translation>Pesad&amp;o en</translation>
    </message>
    <message>
        <source>&amp;Dose of it</source>
        <translation>&amp;Dosis de ella</translation>
    </message>
    <message>
        <source>N&amp;itrite on the label</source>
        <translation>Nit&amp;rito en la etiqueta</translation>
    </message>
    <message>
        <source>Nitrat&amp;e on the label</source>
        <translation>Nitrato en la eti&amp;queta</translation>
    </message>
    <message>
        <source>Mix sheet: what to weigh for each piece</source>
        <translation>Hoja de mezcla: qué pesar para cada pieza</translation>
    </message>
    <message>
        <source>Start the &amp;batch</source>
        <translation>Empezar el lo&amp;te</translation>
    </message>
    <message>
        <source>Code of piece %1</source>
        <translation>Código de la pieza %1</translation>
    </message>
    <message>
        <source>Cut of piece %1</source>
        <translation>Corte de la pieza %1</translation>
    </message>
    <message>
        <source>Raw weight of piece %1</source>
        <translation>Peso en fresco de la pieza %1</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>Grosor de la pieza %1</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>Forma de la pieza %1</translation>
    </message>
    <message>
        <source>code</source>
        <translation>código</translation>
    </message>
    <message>
        <source>cut or description</source>
        <translation>corte o descripción</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>peso en fresco</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>grosor</translation>
    </message>
    <message>
        <source>Meat, pieces, cure and plan of a new batch</source>
        <translation>Carne, piezas, salazón y plan de un lote nuevo</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Without a plan there are no dated tasks; weighings and forecasts work all the same.</source>
        <translation>Sin plan no hay tareas con fecha; las pesadas y los pronósticos funcionan igual.</translation>
    </message>
    <message>
        <source>Enter a raw weight to see what to put on the scale.</source>
        <translation>Introduzca un peso en fresco para ver qué poner en la balanza.</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>Pesar</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Todo junto</translation>
    </message>
    <message>
        <source>Off by the scale&apos;s step</source>
        <translation>Error por la división de la balanza</translation>
    </message>
    <message>
        <source>up to ± %1</source>
        <translation>hasta ± %1</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>Carne: %1</translation>
    </message>
    <message>
        <source>salt in all: %1 of the meat</source>
        <translation>sal en total: %1 de la carne</translation>
    </message>
    <message>
        <source>nitrite going in: %1 (as sodium nitrite)</source>
        <translation>nitrito añadido: %1 (como nitrito de sodio)</translation>
    </message>
    <message>
        <source>nitrate going in: %1 (as sodium nitrate)</source>
        <translation>nitrato añadido: %1 (como nitrato de sodio)</translation>
    </message>
    <message>
        <source>Within %1, by %2.</source>
        <translation>Dentro de %1, por %2.</translation>
    </message>
    <message>
        <source>Not to be computed from the recipe: %1.</source>
        <translation>No se puede calcular a partir de la receta: %1.</translation>
    </message>
    <message>
        <source>No limits are chosen; choose those of your country in Preferences.</source>
        <translation>No hay límites elegidos; elija los de su país en Preferencias.</translation>
    </message>
    <message>
        <source>A field needs mending; it says how.</source>
        <translation>Hay un campo por corregir; él mismo dice cómo.</translation>
    </message>
    <message>
        <source>The cure has a stop above. Mend it first.</source>
        <translation>La salazón tiene arriba un aviso de alto. Corríjalo primero.</translation>
    </message>
    <message numerus="yes">
        <source>%n stage(s), from %1 to about %2.</source>
        <translation>
            <numerusform>%n fase, desde el %1 hasta cerca del %2.</numerusform>
            <numerusform>%n fases, desde el %1 hasta cerca del %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::NoteDialog</name>
    <message>
        <source>Add a note</source>
        <translation>Añadir una nota</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Sobre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation>&amp;Sobre</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>Add a &amp;photo…</source>
        <translation>Añadir una &amp;foto…</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Añadir una foto</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>This photo cannot be read or is larger than 12 MB. Choose a smaller copy.</source>
        <translation>Esta foto no se puede leer o supera los 12 MB. Elija una copia más pequeña.</translation>
    </message>
    <message>
        <source>Write a few words or add a photo.</source>
        <translation>Escriba unas palabras o añada una foto.</translation>
    </message>
    <message>
        <source>%1 is not a picture that can be shown. Choose a JPEG or PNG file.</source>
        <translation>%1 no es una imagen que se pueda mostrar. Elija un archivo JPEG o PNG.</translation>
    </message>
</context>
<context>
    <name>ui::pages::OpenTroubleDialog</name>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>&amp;Restaurar una copia de respaldo…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in its place; the file as it is now is kept under another name.</source>
        <translation>Pone una copia anterior en su lugar; el archivo tal como está ahora se guarda con otro nombre.</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>Re&amp;scatar en un libro nuevo…</translation>
    </message>
    <message>
        <source>Carries every entry that can still be read into a new book; this one is not changed.</source>
        <translation>Pasa cada entrada que aún se pueda leer a un libro nuevo; este no se modifica.</translation>
    </message>
    <message>
        <source>&amp;Open another book…</source>
        <translation>&amp;Abrir otro libro…</translation>
    </message>
    <message>
        <source>Leaves this file as it is.</source>
        <translation>Deja este archivo como está.</translation>
    </message>
    <message>
        <source>Make a &amp;new book…</source>
        <translation>Crear un libro &amp;nuevo…</translation>
    </message>
    <message>
        <source>Starts an empty book in another file.</source>
        <translation>Empieza un libro vacío en otro archivo.</translation>
    </message>
    <message>
        <source>The book did not open</source>
        <translation>El libro no se abrió</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
</context>
<context>
    <name>ui::pages::OutcomeDialog</name>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>How %1 came out</source>
        <translation>Cómo salió %1</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sal</translation>
    </message>
    <message>
        <source>Texture</source>
        <translation>Textura</translation>
    </message>
    <message>
        <source>What to change next time</source>
        <translation>Qué cambiar la próxima vez</translation>
    </message>
    <message>
        <source>&amp;Salt</source>
        <translation>&amp;Sal</translation>
    </message>
    <message>
        <source>&amp;Texture</source>
        <translation>&amp;Textura</translation>
    </message>
    <message>
        <source>&amp;What to change next time</source>
        <translation>&amp;Qué cambiar la próxima vez</translation>
    </message>
    <message>
        <source>The next plan, mix and batch of this product show what this suggests. Nothing is changed unless you say so.</source>
        <translation>El siguiente plan, la siguiente mezcla y el siguiente lote de este producto muestran lo que esto sugiere. No se cambia nada si usted no lo indica.</translation>
    </message>
    <message>
        <source>Say how it came out, or write a few words.</source>
        <translation>Diga cómo salió o escriba unas palabras.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackChangeDialog</name>
    <message>
        <source>Change pack %1</source>
        <translation>Modificar el envase %1</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>Código en el envase</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Dónde está</translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation>Abierto el</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>&amp;Código en el envase</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>&amp;Dónde está</translation>
    </message>
    <message>
        <source>&amp;Opened on</source>
        <translation>&amp;Abierto el</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>Conservar &amp;hasta</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>Có&amp;mo</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>&amp;Regla de conservación</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>Por &amp;qué esta fecha</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackDialog</name>
    <message>
        <source>Pack a finished piece</source>
        <translation>Envasar una pieza terminada</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>Código en el envase</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Packed on</source>
        <translation>Envasado el</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Dónde está</translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation>P&amp;ieza</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>&amp;Código en el envase</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>Có&amp;mo</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>&amp;Peso</translation>
    </message>
    <message>
        <source>Packed &amp;on</source>
        <translation>&amp;Envasado el</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>&amp;Dónde está</translation>
    </message>
    <message>
        <source>No piece is finished yet. Sign a piece as done in its review first.</source>
        <translation>Aún no hay ninguna pieza terminada. Firme primero una pieza como hecha en su revisión.</translation>
    </message>
    <message>
        <source>This day is your own. Say why in a few words, or choose a rule.</source>
        <translation>Esta fecha es suya. Diga por qué en pocas palabras o elija una regla.</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>&amp;Regla de conservación</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>Conservar &amp;hasta</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>Por &amp;qué esta fecha</translation>
    </message>
    <message>
        <source>Such a day says when to look, not what to think of it. Look, smell and decide at each opening.</source>
        <translation>Una fecha así dice cuándo mirar, no qué pensar de ello. Mire, huela y decida cada vez que abra.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PastBox</name>
    <message>
        <source>Take it back</source>
        <translation>Retirarlo</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Usarlo</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Retirar: %1</translation>
    </message>
    <message>
        <source>Use it: %1</source>
        <translation>Usar: %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::PersonBox</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>choose or type a name</source>
        <translation>elija o escriba un nombre</translation>
    </message>
</context>
<context>
    <name>ui::pages::PersonDialog</name>
    <message>
        <source>Change a person</source>
        <translation>Modificar una persona</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Añadir una persona</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniciales</translation>
    </message>
    <message>
        <source>&amp;Works here now</source>
        <translation>&amp;Trabaja aquí ahora</translation>
    </message>
    <message>
        <source>Works here now</source>
        <translation>Trabaja aquí ahora</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Initials, as signed</source>
        <translation>&amp;Iniciales con que firma</translation>
    </message>
    <message>
        <source>Enter a name and the initials to sign with.</source>
        <translation>Introduzca un nombre y las iniciales con que firma.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoDialog</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>&amp;Previous</source>
        <translation>&amp;Anterior</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>&amp;Guardar una copia…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>%1 of %2 · %3 · %4 · %5</source>
        <translation>%1 de %2 · %3 · %4 · %5</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>Save a copy of the photo</source>
        <translation>Guardar una copia de la foto</translation>
    </message>
    <message>
        <source>The copy is in %1.</source>
        <translation>La copia está en %1.</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>No se pudo escribir %1. Elija otro lugar.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoStrip</name>
    <message>
        <source>The photo %1 cannot be shown: it is damaged, or of a kind that cannot be read here. Save a copy to try it elsewhere.</source>
        <translation>La foto %1 no se puede mostrar: está dañada o es de un tipo que no se puede leer aquí. Guarde una copia para probarla en otro lugar.</translation>
    </message>
    <message>
        <source>The photo %1 is no longer in the book. The note itself is kept.</source>
        <translation>La foto %1 ya no está en el libro. La nota en sí se conserva.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>%1: not readable</source>
        <translation>%1: ilegible</translation>
    </message>
    <message>
        <source>Photo of %1, %2</source>
        <translation>Foto de %1, %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::PieceDialog</name>
    <message>
        <source>Chamber</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>not in a chamber</source>
        <translation>en ninguna cámara</translation>
    </message>
    <message>
        <source>Add a piece</source>
        <translation>Añadir una pieza</translation>
    </message>
    <message>
        <source>Change piece %1</source>
        <translation>Modificar la pieza %1</translation>
    </message>
    <message>
        <source>Code on the tag</source>
        <translation>Código en la etiqueta</translation>
    </message>
    <message>
        <source>&amp;Code on the tag</source>
        <translation>&amp;Código en la etiqueta</translation>
    </message>
    <message>
        <source>Cut or description</source>
        <translation>Corte o descripción</translation>
    </message>
    <message>
        <source>C&amp;ut or description</source>
        <translation>C&amp;orte o descripción</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>&amp;Forma</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Grosor</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>Gro&amp;sor</translation>
    </message>
    <message>
        <source>Raw weight</source>
        <translation>Peso en fresco</translation>
    </message>
    <message>
        <source>&amp;Raw weight</source>
        <translation>&amp;Peso en fresco</translation>
    </message>
    <message>
        <source>Fat, as a share of the raw piece</source>
        <translation>Grasa, como proporción de la pieza en fresco</translation>
    </message>
    <message>
        <source>&amp;Fat share, if known</source>
        <translation>Gr&amp;asa, si se sabe</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Piel</translation>
    </message>
    <message>
        <source>S&amp;kin</source>
        <translation>P&amp;iel</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Merma buscada</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>&amp;Merma buscada</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Contada desde</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>Contada &amp;desde</translation>
    </message>
    <message>
        <source>Cha&amp;mber</source>
        <translation>Cáma&amp;ra</translation>
    </message>
    <message>
        <source>Hook, rail or shelf</source>
        <translation>Gancho, barra o estante</translation>
    </message>
    <message>
        <source>&amp;Hook, rail or shelf</source>
        <translation>Ga&amp;ncho, barra o estante</translation>
    </message>
    <message>
        <source>Order in the weigh-in round</source>
        <translation>Orden en la ronda de pesaje</translation>
    </message>
    <message>
        <source>&amp;Order in the round</source>
        <translation>Orden &amp;en la ronda</translation>
    </message>
    <message>
        <source>Give the piece a code: two or three letters or digits.</source>
        <translation>Dé un código a la pieza: dos o tres letras o cifras.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PiecePage</name>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Modificar…</translation>
    </message>
    <message>
        <source>What &amp;happened</source>
        <translation>&amp;Qué ha pasado</translation>
    </message>
    <message>
        <source>What happened to it</source>
        <translation>Qué le ha pasado</translation>
    </message>
    <message>
        <source>Is it &amp;done?</source>
        <translation>¿Está &amp;hecha?</translation>
    </message>
    <message>
        <source>&amp;Weigh…</source>
        <translation>&amp;Pesar…</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Qué muestra el gráfico</translation>
    </message>
    <message>
        <source>net weight</source>
        <translation>peso neto</translation>
    </message>
    <message>
        <source>Time axis</source>
        <translation>Eje de tiempo</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>por fecha</translation>
    </message>
    <message>
        <source>by days since hung</source>
        <translation>por días desde que se colgó</translation>
    </message>
    <message>
        <source>Show a&amp;ll</source>
        <translation>Mostrar &amp;todo</translation>
    </message>
    <message>
        <source>Save the c&amp;hart…</source>
        <translation>&amp;Guardar el gráfico…</translation>
    </message>
    <message>
        <source>Records of the piece</source>
        <translation>Registros de la pieza</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesadas</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Sucesos</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Pieces cut from one another</source>
        <translation>Piezas cortadas unas de otras</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familia</translation>
    </message>
    <message>
        <source>One piece in full</source>
        <translation>Una pieza al completo</translation>
    </message>
    <message>
        <source>Enter corrects the marked weighing; the old entry stays.</source>
        <translation>Intro corrige la pesada marcada; la entrada antigua permanece.</translation>
    </message>
    <message>
        <source>C&amp;orrect…</source>
        <translation>&amp;Corregir…</translation>
    </message>
    <message>
        <source>Take &amp;back…</source>
        <translation>&amp;Anular…</translation>
    </message>
    <message>
        <source>Add a &amp;note…</source>
        <translation>Añadir una &amp;nota…</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Qué lleva puesto</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>En la balanza</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Neto</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>superficie mojada</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>Neto antes</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>Neto después</translation>
    </message>
    <message>
        <source>Tare after</source>
        <translation>Tara después</translation>
    </message>
    <message>
        <source>taken back. %1</source>
        <translation>anulada. %1</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Sobre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>batch %1, %2</source>
        <translation>lote %1, %2</translation>
    </message>
    <message>
        <source>Loss curve of %1</source>
        <translation>Curva de merma de %1</translation>
    </message>
    <message>
        <source>lost of the %1 (%2)</source>
        <translation>merma sobre el %1 (%2)</translation>
    </message>
    <message>
        <source>No weight to count a loss from yet.</source>
        <translation>Aún no hay un peso desde el que contar la merma.</translation>
    </message>
    <message>
        <source>Target %1: %2 net, %3 on the scale</source>
        <translation>Objetivo %1: %2 neto, %3 en la balanza</translation>
    </message>
    <message>
        <source>No target set.</source>
        <translation>Sin objetivo fijado.</translation>
    </message>
    <message>
        <source>At target: %1</source>
        <translation>En objetivo: %1</translation>
    </message>
    <message>
        <source>Levels off at %1 to %2</source>
        <translation>Se estabiliza entre %1 y %2</translation>
    </message>
    <message>
        <source>Signed as done.</source>
        <translation>Firmada como hecha.</translation>
    </message>
    <message>
        <source>%1 of the %2</source>
        <translation>%1 del %2</translation>
    </message>
    <message>
        <source>Lost: %1</source>
        <translation>Merma: %1</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>anulada</translation>
    </message>
    <message>
        <source>corrected later</source>
        <translation>corregida después</translation>
    </message>
    <message>
        <source>a correction</source>
        <translation>una corrección</translation>
    </message>
    <message>
        <source>Weighings (%1)</source>
        <translation>Pesadas (%1)</translation>
    </message>
    <message>
        <source>Events (%1)</source>
        <translation>Sucesos (%1)</translation>
    </message>
    <message>
        <source>Notes (%1)</source>
        <translation>Notas (%1)</translation>
    </message>
    <message>
        <source>Family (%1)</source>
        <translation>Familia (%1)</translation>
    </message>
    <message>
        <source>This entry was corrected or taken back already; correct the newer one.</source>
        <translation>Esta entrada ya se corrigió o se anuló; corrija la más nueva.</translation>
    </message>
    <message>
        <source>%1: %2 on the scale</source>
        <translation>%1: %2 en la balanza</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Guardar el gráfico</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
        <translation>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</translation>
    </message>
    <message>
        <source>The chart is in %1.</source>
        <translation>El gráfico está en %1.</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>No se pudo escribir %1. Elija otro lugar.</translation>
    </message>
    <message>
        <source>What &amp;if…</source>
        <translation>Qué pasaría s&amp;i…</translation>
    </message>
    <message>
        <source>finish it in warm air…</source>
        <translation>terminarla en aire caliente…</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven: how long, and how long where microbes grow.</source>
        <translation>Un deshidratador o un horno a baja temperatura: cuánto tiempo, y cuánto de él donde crecen los microbios.</translation>
    </message>
    <message>
        <source>a weight is lost…</source>
        <translation>falta un peso…</translation>
    </message>
    <message>
        <source>A start weight was never written down: what its siblings say it was.</source>
        <translation>Nunca se anotó un peso inicial: cuál fue según sus piezas hermanas.</translation>
    </message>
    <message>
        <source>the fridge or chamber failed…</source>
        <translation>falló el frigorífico o la cámara…</translation>
    </message>
    <message>
        <source>Power cut, door left open: what each piece there was like, and how warm it became.</source>
        <translation>Corte de luz, puerta abierta: cómo estaba cada pieza y cuánto se calentó.</translation>
    </message>
    <message>
        <source>Pieces on the chart</source>
        <translation>Piezas en el gráfico</translation>
    </message>
    <message>
        <source>&amp;Earlier pieces</source>
        <translation>Piezas ant&amp;eriores</translation>
    </message>
    <message>
        <source>Own earlier pieces for comparison</source>
        <translation>Piezas propias anteriores para comparar</translation>
    </message>
    <message>
        <source>this piece alone</source>
        <translation>solo esta pieza</translation>
    </message>
    <message>
        <source>with its batch</source>
        <translation>con su lote</translation>
    </message>
    <message>
        <source>with its chamber</source>
        <translation>con su cámara</translation>
    </message>
    <message>
        <source>with its product</source>
        <translation>con su producto</translation>
    </message>
    <message>
        <source>with chosen pieces…</source>
        <translation>con piezas elegidas…</translation>
    </message>
    <message>
        <source>Your own finished pieces of the same product and shape, as if hung on the same day</source>
        <translation>Sus propias piezas terminadas del mismo producto y forma, como si se hubieran colgado el mismo día</translation>
    </message>
    <message>
        <source>No piece of the same product and shape was finished yet.</source>
        <translation>Aún no se ha terminado ninguna pieza del mismo producto y forma.</translation>
    </message>
    <message>
        <source>loss from the %1</source>
        <translation>merma desde el %1</translation>
    </message>
    <message>
        <source>Loss curves of %1 and others</source>
        <translation>Curvas de merma de %1 y otras</translation>
    </message>
    <message>
        <source>No other such piece was hung and weighed since.</source>
        <translation>Desde entonces no se ha colgado y pesado ninguna otra pieza así.</translation>
    </message>
    <message>
        <source>Not drawn, as one chart cannot tell more apart: %1 that hung before.</source>
        <translation>Sin dibujar, porque un gráfico no permite distinguir más: %1 que colgaron antes.</translation>
    </message>
    <message>
        <source>Not drawn, as this weight of theirs is not known: %1.</source>
        <translation>Sin dibujar, porque no se conoce este peso de ellas: %1.</translation>
    </message>
    <message>
        <source>Enter on a note with a photo shows it large.</source>
        <translation>Intro sobre una nota con foto la muestra en grande.</translation>
    </message>
    <message>
        <source>%1 is in no chamber of the book. Choose its chamber under Change first.</source>
        <translation>%1 no está en ninguna cámara del libro. Elija primero su cámara en Modificar.</translation>
    </message>
    <message>
        <source>This note has no photo.</source>
        <translation>Esta nota no tiene foto.</translation>
    </message>
    <message numerus="yes">
        <source>Leans on %n of your own finished piece(s) of this product.</source>
        <translation>
            <numerusform>Se apoya en una de sus propias piezas terminadas de este producto.</numerusform>
            <numerusform>Se apoya en %n de sus propias piezas terminadas de este producto.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Sa&amp;ve as calendar file…</source>
        <translation>&amp;Guardar como archivo de calendario…</translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation>&amp;Usar</translation>
    </message>
    <message>
        <source>The stages</source>
        <translation>Las fases</translation>
    </message>
    <message>
        <source>Stages of the plan</source>
        <translation>Fases del plan</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Duración</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Se basa en</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Into the book</source>
        <translation>Al libro</translation>
    </message>
    <message>
        <source>Name of the batch</source>
        <translation>Nombre del lote</translation>
    </message>
    <message>
        <source>optional, e.g. Winter coppa</source>
        <translation>opcional, p. ej. Coppa de invierno</translation>
    </message>
    <message>
        <source>Name of the &amp;batch</source>
        <translation>Nombre del &amp;lote</translation>
    </message>
    <message>
        <source>These weights are &amp;just off the scale</source>
        <translation>Estos pesos están &amp;recién tomados</translation>
    </message>
    <message>
        <source>These weights are just off the scale</source>
        <translation>Estos pesos están recién tomados</translation>
    </message>
    <message>
        <source>&amp;Put the batch in the book</source>
        <translation>&amp;Pasar el lote al libro</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>sin decidir</translation>
    </message>
    <message>
        <source>Template: %1.</source>
        <translation>Plantilla: %1.</translation>
    </message>
    <message>
        <source>Cure rules for the thickest piece, side by side: %1</source>
        <translation>Reglas de salazón para la pieza más gruesa, una junto a otra: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>With “%1”</source>
        <translation>Con «%1»</translation>
    </message>
    <message>
        <source>Rounds of “%1”</source>
        <translation>Rondas de «%1»</translation>
    </message>
    <message>
        <source>There is no plan to save: the day cannot be met.</source>
        <translation>No hay plan que guardar: no se puede llegar a ese día.</translation>
    </message>
    <message>
        <source>When to begin, and what to do when</source>
        <translation>Cuándo empezar y qué hacer en cada momento</translation>
    </message>
    <message>
        <source>What it will be</source>
        <translation>Qué va a ser</translation>
    </message>
    <message>
        <source>Kind of product</source>
        <translation>Tipo de producto</translation>
    </message>
    <message>
        <source>Your name for the product</source>
        <translation>Su nombre para el producto</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Merma buscada</translation>
    </message>
    <message>
        <source>Where it will hang</source>
        <translation>Dónde colgará</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>Your &amp;name for it</source>
        <translation>Su &amp;nombre para él</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>M&amp;erma buscada</translation>
    </message>
    <message>
        <source>&amp;Hangs in</source>
        <translation>&amp;Cuelga en</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>Las piezas</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Grosor</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>Una pieza &amp;más</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>Una pieza men&amp;os</translation>
    </message>
    <message>
        <source>Weight of piece %1</source>
        <translation>Peso de la pieza %1</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>Grosor de la pieza %1</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>Forma de la pieza %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>&amp;Start on</source>
        <translation>Empe&amp;zar el</translation>
    </message>
    <message>
        <source>Start on</source>
        <translation>Empezar el</translation>
    </message>
    <message>
        <source>Be &amp;ready by</source>
        <translation>Est&amp;ar lista para el</translation>
    </message>
    <message>
        <source>Be ready by</source>
        <translation>Estar lista para el</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Keep slac&amp;k for slow pieces</source>
        <translation>&amp;Holgura para piezas lentas</translation>
    </message>
    <message>
        <source>Keep slack for slow pieces</source>
        <translation>Holgura para piezas lentas</translation>
    </message>
    <message>
        <source>Use the proposal: aim for %1</source>
        <translation>Usar la propuesta: buscar %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanStrip</name>
    <message>
        <source>The plan along time</source>
        <translation>El plan a lo largo del tiempo</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::PreferencesPage</name>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>This desk</source>
        <translation>Este puesto</translation>
    </message>
    <message>
        <source>Kept on this computer, not in the book. Every field still accepts any unit.</source>
        <translation>Se guarda en este equipo, no en el libro. Cada campo sigue aceptando cualquier unidad.</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Pesos</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>gramos</translation>
    </message>
    <message>
        <source>grams and kilograms</source>
        <translation>gramos y kilogramos</translation>
    </message>
    <message>
        <source>ounces</source>
        <translation>onzas</translation>
    </message>
    <message>
        <source>pounds and ounces</source>
        <translation>libras y onzas</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturas</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>grados Celsius</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation>grados Fahrenheit</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Grosor</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>milímetros</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>Liquids</source>
        <translation>Líquidos</translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation>mililitros</translation>
    </message>
    <message>
        <source>US fluid ounces</source>
        <translation>onzas líquidas (EE. UU.)</translation>
    </message>
    <message>
        <source>as the computer</source>
        <translation>como el equipo</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zona horaria</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>ninguno elegido</translation>
    </message>
    <message>
        <source>Limits to check against</source>
        <translation>Límites con que comparar</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>como el escritorio</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claros</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuros</translation>
    </message>
    <message>
        <source>&amp;Weights</source>
        <translation>&amp;Pesos</translation>
    </message>
    <message>
        <source>&amp;Temperatures</source>
        <translation>&amp;Temperaturas</translation>
    </message>
    <message>
        <source>T&amp;hickness</source>
        <translation>&amp;Grosor</translation>
    </message>
    <message>
        <source>Li&amp;quids</source>
        <translation>Lí&amp;quidos</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>I&amp;dioma</translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation>&amp;Zona horaria</translation>
    </message>
    <message>
        <source>&amp;Limits to check against</source>
        <translation>&amp;Límites con que comparar</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Colores</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Add a &amp;person…</source>
        <translation>Añadir una perso&amp;na…</translation>
    </message>
    <message>
        <source>Who signs decisions and corrections.</source>
        <translation>Quien firma decisiones y correcciones.</translation>
    </message>
    <message>
        <source>Who works at this desk</source>
        <translation>Quién trabaja en este puesto</translation>
    </message>
    <message>
        <source>Who works at this &amp;desk</source>
        <translation>Quién tra&amp;baja en este puesto</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniciales</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Works here</source>
        <translation>Trabaja aquí</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Scales</source>
        <translation>Balanzas</translation>
    </message>
    <message>
        <source>Add a &amp;scale…</source>
        <translation>&amp;Añadir una balanza…</translation>
    </message>
    <message>
        <source>The step is the smallest change the display shows. It decides which doses the scale can weigh and how sure a curve is.</source>
        <translation>La división es el menor cambio que muestra la pantalla. Decide qué dosis puede pesar la balanza y cuánta certeza tiene una curva.</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Balanza</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>División</translation>
    </message>
    <message>
        <source>Check every</source>
        <translation>Comprobar cada</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>En uso</translation>
    </message>
    <message>
        <source>nobody chosen</source>
        <translation>nadie elegido</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>So things read: %1, %2, %3, %4.</source>
        <translation>Así se muestran los valores: %1, %2, %3, %4.</translation>
    </message>
    <message>
        <source>Units, language, limits, people and scales</source>
        <translation>Unidades, idioma, límites, personas y balanzas</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PrintDialog</name>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Preview of the paper</source>
        <translation>Vista previa del papel</translation>
    </message>
    <message>
        <source>What to print</source>
        <translation>Qué imprimir</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>No printer is set up on this computer; a PDF can be printed elsewhere.</source>
        <translation>No hay ninguna impresora configurada en este equipo; un PDF se puede imprimir en otro lugar.</translation>
    </message>
    <message>
        <source>There is nothing to print.</source>
        <translation>No hay nada que imprimir.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) in %1.</source>
        <translation>
            <numerusform>Una página en %1.</numerusform>
            <numerusform>%n páginas en %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) sent to the printer.</source>
        <translation>
            <numerusform>Una página enviada a la impresora.</numerusform>
            <numerusform>%n páginas enviadas a la impresora.</numerusform>
        </translation>
    </message>
    <message>
        <source>The printer took nothing. Try a PDF instead.</source>
        <translation>La impresora no aceptó nada. Pruebe con un PDF.</translation>
    </message>
</context>
<context>
    <name>ui::pages::RestoreDialog</name>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurar una copia de respaldo</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of the book %1. Choose a copy to see what would be lost and what would come back; nothing is changed before you confirm.</source>
        <translation>Pone una copia anterior en el lugar del libro %1. Elija una copia para ver qué se perdería y qué volvería; no se cambia nada antes de que usted lo confirme.</translation>
    </message>
    <message>
        <source>The backup is being read</source>
        <translation>Se está leyendo la copia de respaldo</translation>
    </message>
    <message>
        <source>Another &amp;file…</source>
        <translation>Otro arc&amp;hivo…</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>&amp;Restore this backup…</source>
        <translation>&amp;Restaurar esta copia…</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hecha</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Última entrada</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesadas</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Backups of this book</source>
        <translation>Copias de respaldo de este libro</translation>
    </message>
    <message>
        <source>There is no backup in the folder “backups” beside the book. Choose a copy you keep elsewhere with Another file.</source>
        <translation>No hay ninguna copia de respaldo en la carpeta «backups» junto al libro. Elija con Otro archivo una copia que guarde en otro lugar.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copia de respaldo</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Libros de Saltloft (*.saltloft);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Put this backup in the place of the book?</source>
        <translation>¿Poner esta copia de respaldo en el lugar del libro?</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurar</translation>
    </message>
</context>
<context>
    <name>ui::pages::ReviewPage</name>
    <message>
        <source>Is it done?</source>
        <translation>¿Está hecha?</translation>
    </message>
    <message>
        <source>To the &amp;piece</source>
        <translation>A la &amp;pieza</translation>
    </message>
    <message>
        <source>Evidence, not a verdict. A number says how much water has gone; your hand, nose and eye say the rest. Follow the code where you live and your laboratory.</source>
        <translation>Indicios, no un veredicto. Un número dice cuánta agua se ha ido; su mano, su nariz y su ojo dicen el resto. Siga la norma de donde vive y a su laboratorio.</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Indicios</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Aquí</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>Al lado</translation>
    </message>
    <message>
        <source>Look, then decide</source>
        <translation>Mirar, luego decidir</translation>
    </message>
    <message>
        <source>The centre feels</source>
        <translation>El centro se nota</translation>
    </message>
    <message>
        <source>not felt yet</source>
        <translation>aún sin palpar</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>blando</translation>
    </message>
    <message>
        <source>springy</source>
        <translation>elástico</translation>
    </message>
    <message>
        <source>firm</source>
        <translation>firme</translation>
    </message>
    <message>
        <source>The &amp;centre feels</source>
        <translation>El &amp;centro se nota</translation>
    </message>
    <message>
        <source>Add a &amp;note or photo…</source>
        <translation>Añadir una &amp;nota o foto…</translation>
    </message>
    <message>
        <source>&amp;Done: it comes down</source>
        <translation>&amp;Hecha: se descuelga</translation>
    </message>
    <message>
        <source>Not &amp;yet: weigh and look again</source>
        <translation>Toda&amp;vía no: pesar y mirar de nuevo</translation>
    </message>
    <message>
        <source>Disc&amp;ard: it is thrown out</source>
        <translation>&amp;Descartar: se tira</translation>
    </message>
    <message>
        <source>Look again on</source>
        <translation>Mirar de nuevo el</translation>
    </message>
    <message>
        <source>&amp;Look again on</source>
        <translation>&amp;Mirar de nuevo el</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>Por &amp;qué</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
    <message>
        <source>Signed &amp;by</source>
        <translation>Firmado p&amp;or</translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation>&amp;Firmar</translation>
    </message>
    <message>
        <source>Is %1 done?</source>
        <translation>¿Está hecha %1?</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>Signed before:
%1</source>
        <translation>Firmado antes:
%1</translation>
    </message>
    <message>
        <source>Evidence beside each other, and a signed decision</source>
        <translation>Los indicios lado a lado y una decisión firmada</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Add a p&amp;hoto…</source>
        <translation>Añadir una fo&amp;to…</translation>
    </message>
    <message>
        <source>No photo of this piece yet. The cut face says more than a number does: take one, and the next batch can be held beside it.</source>
        <translation>Aún no hay ninguna foto de esta pieza. El corte dice más que un número: haga una, y el próximo lote se podrá comparar con ella.</translation>
    </message>
    <message>
        <source>Finish it in warm a&amp;ir…</source>
        <translation>Terminarla en &amp;aire caliente…</translation>
    </message>
    <message>
        <source>H&amp;ung again: it was down, and dries on</source>
        <translation>Colgada de n&amp;uevo, sigue secándose</translation>
    </message>
    <message>
        <source>Hung again: it was down, and dries on</source>
        <translation>Colgada de nuevo, sigue secándose</translation>
    </message>
    <message>
        <source>It goes back to the hanging pieces, and the day sheet asks for its weight again.</source>
        <translation>Vuelve a las piezas colgadas, y la hoja del día pide de nuevo su peso.</translation>
    </message>
    <message>
        <source>For a piece that is finished. This one hangs still: sign &quot;not yet&quot;.</source>
        <translation>Para una pieza terminada. Esta aún cuelga: firme «todavía no».</translation>
    </message>
    <message>
        <source>Choose what becomes of it first.</source>
        <translation>Elija primero qué se hace con ella.</translation>
    </message>
    <message>
        <source>Hung again. %1</source>
        <translation>Colgada de nuevo. %1</translation>
    </message>
    <message>
        <source>Say who signs: choose or type the name.</source>
        <translation>Indique quién firma: elija o escriba el nombre.</translation>
    </message>
</context>
<context>
    <name>ui::pages::SalvageDialog</name>
    <message>
        <source>Salvage into a new book</source>
        <translation>Rescatar en un libro nuevo</translation>
    </message>
    <message>
        <source>Carries every entry of %1 that can still be read into a new book. The damaged book is not changed; keep it until you have looked through the new one.</source>
        <translation>Pasa cada entrada de %1 que aún se pueda leer a un libro nuevo. El libro dañado no se modifica; consérvelo hasta que haya repasado el nuevo.</translation>
    </message>
    <message>
        <source>The book is being carried over</source>
        <translation>Se están pasando las entradas del libro</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;Salvage</source>
        <translation>&amp;Rescatar</translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation>&amp;Abrir el libro nuevo</translation>
    </message>
    <message>
        <source>The new book</source>
        <translation>El libro nuevo</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>E&amp;legir…</translation>
    </message>
    <message>
        <source>&amp;New book</source>
        <translation>&amp;Nuevo libro</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Tipo de entrada</translation>
    </message>
    <message>
        <source>Carried over</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Known to be lost</source>
        <translation>Perdidas, que se sepa</translation>
    </message>
    <message>
        <source>What was carried over</source>
        <translation>Qué se ha pasado</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Nuevo libro</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Libros de Saltloft (*.saltloft)</translation>
    </message>
    <message>
        <source>Name the file of the new book.</source>
        <translation>Dé un nombre al archivo del libro nuevo.</translation>
    </message>
    <message>
        <source>%1 is there already and is not replaced. Choose another name.</source>
        <translation>%1 ya existe y no se reemplaza. Elija otro nombre.</translation>
    </message>
    <message>
        <source>Nothing could be carried over. %1</source>
        <translation>No se pudo pasar nada. %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::ScaleDialog</name>
    <message>
        <source>Change a scale</source>
        <translation>Modificar una balanza</translation>
    </message>
    <message>
        <source>Add a scale</source>
        <translation>Añadir una balanza</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Smallest step it shows</source>
        <translation>Menor división que muestra</translation>
    </message>
    <message>
        <source>Check it every so many days</source>
        <translation>Comprobar cada tantos días</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>En &amp;uso</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>En uso</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>Smallest &amp;step it shows</source>
        <translation>Menor &amp;división que muestra</translation>
    </message>
    <message>
        <source>&amp;Check it every so many days</source>
        <translation>&amp;Comprobar cada tantos días</translation>
    </message>
    <message>
        <source>Give the scale a name, such as &quot;bench scale&quot;.</source>
        <translation>Dé un nombre a la balanza, como «balanza de mesa».</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorCheckDialog</name>
    <message>
        <source>Check %1</source>
        <translation>Comprobar %1</translation>
    </message>
    <message>
        <source>Checked against</source>
        <translation>Comprobado con</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag, 75 % humidity</source>
        <translation>Pasta de sal en bolsa cerrada, 75 % de humedad</translation>
    </message>
    <message>
        <source>Day of the check</source>
        <translation>Día de la comprobación</translation>
    </message>
    <message>
        <source>What the sensor said</source>
        <translation>Qué indicó el sensor</translation>
    </message>
    <message>
        <source>What you did about it</source>
        <translation>Qué hizo usted al respecto</translation>
    </message>
    <message>
        <source>Checked &amp;against</source>
        <translation>&amp;Comprobado con</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Día</translation>
    </message>
    <message>
        <source>What the sensor &amp;said</source>
        <translation>Qué indicó el &amp;sensor</translation>
    </message>
    <message>
        <source>What you did about &amp;it</source>
        <translation>Qué hizo &amp;usted al respecto</translation>
    </message>
    <message>
        <source>Salt slurry: table salt just wet, in a closed bag with the sensor for twelve hours or more. Common practice: every six months; ice at least once a year.</source>
        <translation>Pasta de sal: sal de mesa apenas mojada, en una bolsa cerrada con el sensor durante doce horas o más. Práctica común: cada seis meses; con hielo, al menos una vez al año.</translation>
    </message>
    <message>
        <source>It is right.</source>
        <translation>Es correcto.</translation>
    </message>
    <message>
        <source>It is off: add %1 K to its temperature.</source>
        <translation>Se desvía: sume %1 K a su temperatura.</translation>
    </message>
    <message>
        <source>It is off: add %1 points to its humidity.</source>
        <translation>Se desvía: sume %1 puntos a su humedad.</translation>
    </message>
    <message>
        <source>Ice water, 0 °C</source>
        <translation>Agua con hielo, 0 °C</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorDialog</name>
    <message>
        <source>Change a sensor</source>
        <translation>Modificar un sensor</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Añadir un sensor</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Where it hangs</source>
        <translation>Dónde cuelga</translation>
    </message>
    <message>
        <source>Added to its temperature, kelvin</source>
        <translation>Se suma a su temperatura, kelvin</translation>
    </message>
    <message>
        <source>Added to its humidity, points</source>
        <translation>Se suma a su humedad, puntos</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>En &amp;uso</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>En uso</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Where it hangs</source>
        <translation>&amp;Dónde cuelga</translation>
    </message>
    <message>
        <source>Added to its &amp;temperature</source>
        <translation>Se suma a su &amp;temperatura</translation>
    </message>
    <message>
        <source>Added to its &amp;humidity</source>
        <translation>Se suma a su &amp;humedad</translation>
    </message>
    <message>
        <source>Readings are kept as the sensor gave them; what is added here only changes what is shown and judged.</source>
        <translation>Las lecturas se guardan como las dio el sensor; lo que se suma aquí solo cambia lo que se muestra y se juzga.</translation>
    </message>
    <message>
        <source>Give the sensor a name, such as &quot;by the door&quot;.</source>
        <translation>Dé un nombre al sensor, como «junto a la puerta».</translation>
    </message>
</context>
<context>
    <name>ui::pages::SplitDialog</name>
    <message>
        <source>Cut %1 into pieces</source>
        <translation>Cortar %1 en piezas</translation>
    </message>
    <message>
        <source>Weigh each part without casing or net. Start weight and target are shared out in proportion; the family stays.</source>
        <translation>Pese cada parte sin tripa ni malla. El peso inicial y el objetivo se reparten en proporción; la familia permanece.</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>Peso neto antes</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>Peso neto &amp;antes</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>&amp;One part more</source>
        <translation>&amp;Una parte más</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Qué cambia</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>&amp;Cortar</translation>
    </message>
    <message>
        <source>Code of part %1</source>
        <translation>Código de la parte %1</translation>
    </message>
    <message>
        <source>Net weight of part %1</source>
        <translation>Peso neto de la parte %1</translation>
    </message>
    <message>
        <source>Part &amp;%1: code, net weight</source>
        <translation>Parte &amp;%1: código, peso neto</translation>
    </message>
    <message>
        <source>%1: %2 net</source>
        <translation>%1: %2 neto</translation>
    </message>
    <message>
        <source>, start %1</source>
        <translation>, inicio %1</translation>
    </message>
    <message>
        <source>, target %1 net</source>
        <translation>, objetivo %1 neto</translation>
    </message>
    <message>
        <source>Not accounted for: %1</source>
        <translation>Sin justificar: %1</translation>
    </message>
    <message>
        <source>The parts weigh %1 more than the whole.</source>
        <translation>Las partes pesan %1 más que el total.</translation>
    </message>
    <message>
        <source>The parts weigh more than the whole. Check the weights, or the net weight before the cut.</source>
        <translation>Las partes pesan más que el total. Revise los pesos o el peso neto antes del corte.</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeDialog</name>
    <message>
        <source>Take from pack %1</source>
        <translation>Sacar del envase %1</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>Qué se hace con ello</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>&amp;All that is left (%1)</source>
        <translation>&amp;Todo lo que queda (%1)</translation>
    </message>
    <message>
        <source>All that is left</source>
        <translation>Todo lo que queda</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>A quién</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>&amp;What becomes of it</source>
        <translation>&amp;Qué se hace con ello</translation>
    </message>
    <message>
        <source>&amp;How much</source>
        <translation>&amp;Cuánto</translation>
    </message>
    <message>
        <source>&amp;To whom</source>
        <translation>&amp;A quién</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>Code of the new piece</source>
        <translation>Código de la pieza nueva</translation>
    </message>
    <message>
        <source>&amp;Code of the new piece</source>
        <translation>Có&amp;digo de la pieza nueva</translation>
    </message>
    <message>
        <source>Piece %1 itself hangs again, at %2 lost. It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>La propia pieza %1 cuelga de nuevo, con %2 de merma. Desde ahora está en la página de piezas colgadas y en la hoja del día; Deshacer lo retira.</translation>
    </message>
    <message>
        <source>%1 of piece %2 becomes a piece of its own, which starts at the loss the whole had (%3). It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>%1 de la pieza %2 pasa a ser una pieza propia, que empieza con la merma que tenía la entera (%3). Desde ahora está en la página de piezas colgadas y en la hoja del día; Deshacer lo retira.</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeOnBox</name>
    <message>
        <source>I have read the &amp;cautions and take them on myself</source>
        <translation>&amp;He leído las advertencias y las asumo</translation>
    </message>
    <message>
        <source>I have read the cautions and take them on myself</source>
        <translation>He leído las advertencias y las asumo</translation>
    </message>
    <message>
        <source>Cautions taken on by</source>
        <translation>Advertencias asumidas por</translation>
    </message>
    <message>
        <source>Taken on b&amp;y</source>
        <translation>As&amp;umidas por</translation>
    </message>
    <message>
        <source>There are cautions above. Read them, then tick that you take them on.</source>
        <translation>Hay advertencias arriba. Léalas y marque después que las asume.</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>Indique quién asume las advertencias: elija o escriba el nombre.</translation>
    </message>
</context>
<context>
    <name>ui::pages::UpsetDialog</name>
    <message>
        <source>Upset in %1</source>
        <translation>Incidencia en %1</translation>
    </message>
    <message>
        <source>This is a record to weigh up with your own code, your adviser or a laboratory. It is of the air, not of the meat&apos;s core, and judges nothing.</source>
        <translation>Esto es un registro para valorar con su norma, su asesor o un laboratorio. Es del aire, no del interior de la carne, y no juzga nada.</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;Keep as a note on each batch</source>
        <translation>&amp;Guardar como nota en cada lote</translation>
    </message>
    <message>
        <source>Where the temperatures come from</source>
        <translation>De dónde vienen las temperaturas</translation>
    </message>
    <message>
        <source>what I saw</source>
        <translation>lo que vi</translation>
    </message>
    <message>
        <source>the log of %1</source>
        <translation>el registro de %1</translation>
    </message>
    <message>
        <source>Day it began</source>
        <translation>Día en que empezó</translation>
    </message>
    <message>
        <source>Time it began</source>
        <translation>Hora en que empezó</translation>
    </message>
    <message>
        <source>How long it lasted</source>
        <translation>Cuánto duró</translation>
    </message>
    <message>
        <source>Usual temperature</source>
        <translation>Temperatura habitual</translation>
    </message>
    <message>
        <source>Temperature it reached</source>
        <translation>Temperatura que alcanzó</translation>
    </message>
    <message>
        <source>&amp;Temperatures from</source>
        <translation>&amp;Temperaturas de</translation>
    </message>
    <message>
        <source>It &amp;began</source>
        <translation>&amp;Empezó</translation>
    </message>
    <message>
        <source>It &amp;lasted</source>
        <translation>&amp;Duró</translation>
    </message>
    <message>
        <source>&amp;Usual temperature</source>
        <translation>Temperatura &amp;habitual</translation>
    </message>
    <message>
        <source>It &amp;reached</source>
        <translation>&amp;Alcanzó</translation>
    </message>
    <message>
        <source>&amp;Show the record</source>
        <translation>&amp;Mostrar el registro</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation>%1, durante %2</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>Colgada</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>Salt, at most</source>
        <translation>Sal, como máximo</translation>
    </message>
    <message>
        <source>Nitrite put on</source>
        <translation>Nitrito aplicado</translation>
    </message>
    <message>
        <source>Water activity, estimated</source>
        <translation>Actividad de agua, estimada</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Pieces, to be looked at in this order</source>
        <translation>Piezas, por mirar en este orden</translation>
    </message>
    <message>
        <source>Can grow</source>
        <translation>Puede crecer</translation>
    </message>
    <message>
        <source>Hours of air in its range</source>
        <translation>Horas de aire en su rango</translation>
    </message>
    <message>
        <source>Its temperatures</source>
        <translation>Sus temperaturas</translation>
    </message>
    <message>
        <source>Water activity</source>
        <translation>Actividad de agua</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Hours in growth ranges</source>
        <translation>Horas en rangos de crecimiento</translation>
    </message>
    <message>
        <source>To be looked at in this order</source>
        <translation>Por mirar en este orden</translation>
    </message>
    <message>
        <source>Hours of air in growth ranges</source>
        <translation>Horas de aire en rangos de crecimiento</translation>
    </message>
    <message>
        <source>For %1 there is no reading.</source>
        <translation>De %1 no hay ninguna lectura.</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) were there. Highest air temperature: %1.</source>
        <translation>
            <numerusform>Había %n pieza. Temperatura máxima del aire: %1.</numerusform>
            <numerusform>Había %n piezas. Temperatura máxima del aire: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The record is kept as a note on %n batch(es).</source>
        <translation>
            <numerusform>El registro se guarda como nota en %n lote.</numerusform>
            <numerusform>El registro se guarda como nota en %n lotes.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::WarmDialog</name>
    <message>
        <source>%1: finish in warm air</source>
        <translation>%1: terminar en aire caliente</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven takes the last water out in hours. It also spends those hours where microbes grow. What stands here is reckoned from the piece&apos;s own pace and published figures; it judges nothing. Follow your own code.</source>
        <translation>Un deshidratador o un horno a baja temperatura saca en horas la última agua. Esas horas las pasa la pieza donde crecen los microbios. Lo que figura aquí se calcula con el ritmo propio de la pieza y con cifras publicadas; no juzga nada. Siga su propia norma.</translation>
    </message>
    <message>
        <source>&amp;Record in the book</source>
        <translation>Anota&amp;r en el libro</translation>
    </message>
    <message>
        <source>Air of the device</source>
        <translation>Aire del aparato</translation>
    </message>
    <message>
        <source>Its humidity</source>
        <translation>Su humedad</translation>
    </message>
    <message>
        <source>Loss wanted</source>
        <translation>Merma deseada</translation>
    </message>
    <message>
        <source>Water of the piece now</source>
        <translation>Agua de la pieza ahora</translation>
    </message>
    <message>
        <source>Thickness now</source>
        <translation>Grosor ahora</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>En qué punto está</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>begun now</source>
        <translation>empezado ahora</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>&amp;Air of the device</source>
        <translation>&amp;Aire del aparato</translation>
    </message>
    <message>
        <source>Its &amp;humidity, a guess if not measured</source>
        <translation>Su &amp;humedad, una suposición si no se mide</translation>
    </message>
    <message>
        <source>&amp;Loss wanted</source>
        <translation>&amp;Merma deseada</translation>
    </message>
    <message>
        <source>&amp;Water of the piece now</source>
        <translation>A&amp;gua de la pieza ahora</translation>
    </message>
    <message>
        <source>&amp;Thickness now</source>
        <translation>Gr&amp;osor ahora</translation>
    </message>
    <message>
        <source>How &amp;far it is</source>
        <translation>En &amp;qué punto está</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Cuánto tiempo</translation>
    </message>
    <message>
        <source>Hours inside growth ranges</source>
        <translation>Horas dentro de rangos de crecimiento</translation>
    </message>
    <message>
        <source>Organism</source>
        <translation>Organismo</translation>
    </message>
    <message>
        <source>In its range</source>
        <translation>En su rango</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>Al lado</translation>
    </message>
    <message>
        <source>No loss is known yet: weigh the piece first, so that there is a start to count from.</source>
        <translation>Aún no se conoce ninguna merma: pese primero la pieza, para que haya un inicio desde el que contar.</translation>
    </message>
    <message>
        <source>Fill in what is empty above, and the hours stand here.</source>
        <translation>Rellene lo que está vacío arriba y las horas aparecerán aquí.</translation>
    </message>
    <message>
        <source>Reckoned from the pace it dries at where it hangs.</source>
        <translation>Calculado con el ritmo al que se seca donde cuelga.</translation>
    </message>
    <message>
        <source>Reckoned from published figures: its own pace is not known well enough.</source>
        <translation>Calculado con cifras publicadas: no se conoce bastante bien su propio ritmo.</translation>
    </message>
    <message>
        <source>There is no answer to record yet.</source>
        <translation>Aún no hay ninguna respuesta que anotar.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighInPage</name>
    <message>
        <source>Weigh-in round</source>
        <translation>Ronda de pesaje</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Cámara</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>&amp;Balanza</translation>
    </message>
    <message>
        <source>Nothing to weigh</source>
        <translation>Nada que pesar</translation>
    </message>
    <message>
        <source>The round lists every piece that is curing, resting or drying, in the order in which it hangs. Start a batch, then come back once a week: a number and Enter for each piece is all it takes.</source>
        <translation>La ronda enumera todas las piezas en salazón, en reposo o en secado, en el orden en que cuelgan. Empiece un lote y vuelva después una vez por semana: un número e Intro por pieza es todo lo que hace falta.</translation>
    </message>
    <message>
        <source>Pieces in hanging order</source>
        <translation>Piezas en el orden en que cuelgan</translation>
    </message>
    <message>
        <source>The piece whose turn it is</source>
        <translation>La pieza a la que le toca</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>En la balanza</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>&amp;Wet</source>
        <translation>&amp;Mojada</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>La superficie está mojada</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>note, if any</source>
        <translation>nota, si la hay</translation>
    </message>
    <message>
        <source>&amp;Keep and go on  ⏎</source>
        <translation>&amp;Guardar y seguir  ⏎</translation>
    </message>
    <message>
        <source>Pass over  ⇟</source>
        <translation>Saltar  ⇟</translation>
    </message>
    <message>
        <source>&amp;On the scale</source>
        <translation>&amp;En la balanza</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tara</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Cuelga en</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Última</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>saltada</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todas</translation>
    </message>
    <message>
        <source>%1 of %2 weighed. Enter keeps and goes on; Page Down passes over.</source>
        <translation>%1 de %2 pesadas. Intro guarda y sigue; Av Pág salta.</translation>
    </message>
    <message>
        <source>Last time: %1 on the scale, %2</source>
        <translation>La última vez: %1 en la balanza, %2</translation>
    </message>
    <message>
        <source>Not weighed before.</source>
        <translation>Sin pesar hasta ahora.</translation>
    </message>
    <message>
        <source>Expected now: %1 to %2 (%3)</source>
        <translation>Se espera ahora: %1 a %2 (%3)</translation>
    </message>
    <message>
        <source>from its forecast</source>
        <translation>por su pronóstico</translation>
    </message>
    <message>
        <source>from its last weight</source>
        <translation>por su último peso</translation>
    </message>
    <message>
        <source>Expected now: %1</source>
        <translation>Se espera ahora: %1</translation>
    </message>
    <message>
        <source>%1
If it is right, press Enter again.</source>
        <translation>%1
Si es correcto, pulse Intro otra vez.</translation>
    </message>
    <message>
        <source>%1: %2 kept. Ctrl+Z takes it back.</source>
        <translation>%1: %2 guardado. Ctrl+Z lo retira.</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesaje</translation>
    </message>
    <message>
        <source>Weigh every hanging piece in hanging order</source>
        <translation>Pesar cada pieza colgada, en el orden en que cuelgan</translation>
    </message>
    <message numerus="yes">
        <source>All %n piece(s) are weighed.</source>
        <translation>
            <numerusform>Está pesada la única pieza.</numerusform>
            <numerusform>Están pesadas las %n piezas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Nothing hangs to be weighed.</source>
        <translation>No cuelga nada que pesar.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighingDialog</name>
    <message>
        <source>Scale</source>
        <translation>Balanza</translation>
    </message>
    <message>
        <source>scale not named</source>
        <translation>balanza sin nombrar</translation>
    </message>
    <message>
        <source>%1 (step %2)</source>
        <translation>%1 (división %2)</translation>
    </message>
    <message>
        <source>Weigh %1</source>
        <translation>Pesar %1</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>En la balanza</translation>
    </message>
    <message>
        <source>What hangs there</source>
        <translation>Qué cuelga ahí</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>The surface is &amp;wet (just washed or wiped)</source>
        <translation>La superficie está &amp;mojada (recién lavada o limpiada)</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>La superficie está mojada</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation>&amp;En la balanza</translation>
    </message>
    <message>
        <source>W&amp;hat is on it</source>
        <translation>&amp;Qué lleva puesto</translation>
    </message>
    <message>
        <source>&amp;Tare (casing, net, hook)</source>
        <translation>&amp;Tara (tripa, malla, gancho)</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Día</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>&amp;Hora</translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation>&amp;Balanza</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>Why it is corrected</source>
        <translation>Por qué se corrige</translation>
    </message>
    <message>
        <source>e.g. misread, wrong tare</source>
        <translation>p. ej. mal leído, tara errónea</translation>
    </message>
    <message>
        <source>Wh&amp;y it is corrected</source>
        <translation>&amp;Por qué se corrige</translation>
    </message>
    <message>
        <source>Net weight: %1</source>
        <translation>Peso neto: %1</translation>
    </message>
    <message>
        <source>%1 lost of the %2</source>
        <translation>%1 de merma sobre el %2</translation>
    </message>
    <message>
        <source>Say in a few words why the entry is corrected; the old one stays readable beside it.</source>
        <translation>Diga en pocas palabras por qué se corrige la entrada; la antigua queda legible a su lado.</translation>
    </message>
    <message>
        <source>Correct %1: weighing of %2</source>
        <extracomment>%1 a piece&apos;s code, %2 a moment</extracomment>
        <translation>Corregir %1: pesada del %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::WhatIfDialog</name>
    <message>
        <source>%1: what if…</source>
        <translation>%1: qué pasaría si…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation>Aún no hay nada que comparar</translation>
    </message>
    <message>
        <source>A forecast needs the weight its loss is counted from, and weighings since it was hung. Weigh the piece, or choose another weight to count from under Change.</source>
        <translation>Un pronóstico necesita el peso desde el que se cuenta la merma y pesadas desde que se colgó. Pese la pieza o elija en Modificar otro peso desde el que contar.</translation>
    </message>
    <message>
        <source>The change holds from the last weighing on, and exactly as entered. Nothing of this is kept.</source>
        <translation>El cambio vale desde la última pesada, y exactamente como se introduce. Nada de esto se guarda.</translation>
    </message>
    <message>
        <source>The piece has no target; 35 % of the hung weight is taken to begin with.</source>
        <translation>La pieza no tiene objetivo; para empezar se toma el 35 % del peso al colgar.</translation>
    </message>
    <message>
        <source>Humidity ahead</source>
        <translation>Humedad en adelante</translation>
    </message>
    <message>
        <source>Temperature ahead</source>
        <translation>Temperatura en adelante</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>&amp;Humidity of the chamber</source>
        <translation>&amp;Humedad de la cámara</translation>
    </message>
    <message>
        <source>Te&amp;mperature of the chamber</source>
        <translation>&amp;Temperatura de la cámara</translation>
    </message>
    <message>
        <source>&amp;Target, loss</source>
        <translation>&amp;Objetivo, merma</translation>
    </message>
    <message>
        <source>Filled in: the last steady stretch of the chamber&apos;s log.</source>
        <translation>Rellenado: el último tramo constante del registro de la cámara.</translation>
    </message>
    <message>
        <source>Filled in: a usual air, as no log says what it is (common practice, no source).</source>
        <translation>Rellenado: un aire habitual, ya que ningún registro dice cuál es (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>&amp;Use that humidity</source>
        <translation>&amp;Usar esa humedad</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Como está</translation>
    </message>
    <message>
        <source>With the change</source>
        <translation>Con el cambio</translation>
    </message>
    <message>
        <source>As it is and with the change</source>
        <translation>Como está y con el cambio</translation>
    </message>
    <message>
        <source>Fill in what is empty above.</source>
        <translation>Rellene lo que está vacío arriba.</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>Calculando…</translation>
    </message>
    <message>
        <source>As it is; nothing is changed yet</source>
        <translation>Como está; aún no se ha cambiado nada</translation>
    </message>
    <message>
        <source>As it is, and with the change</source>
        <translation>Como está, y con el cambio</translation>
    </message>
    <message>
        <source>Change the temperature to see which humidity there has the drying power of the air as it is.</source>
        <translation>Cambie la temperatura para ver qué humedad tiene entonces el poder de secado del aire tal como está.</translation>
    </message>
    <message>
        <source>In the cited growth ranges as it is, by temperature alone: %1. Water, salt and acid count too; the program judges none of it.</source>
        <translation>En los rangos de crecimiento citados tal como está, solo por temperatura: %1. El agua, la sal y el ácido también cuentan; el programa no juzga nada de ello.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WithdrawDialog</name>
    <message>
        <source>Take back</source>
        <translation>Anular</translation>
    </message>
    <message>
        <source>%1
The entry no longer counts, but stays readable in the history.</source>
        <translation>%1
La entrada ya no cuenta, pero sigue legible en el historial.</translation>
    </message>
    <message>
        <source>Why it is taken back</source>
        <translation>Por qué se anula</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Por qué</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Anular</translation>
    </message>
    <message>
        <source>Say in a few words why.</source>
        <translation>Diga en pocas palabras por qué.</translation>
    </message>
</context>
<context>
    <name>ui::presenters::DayWork</name>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>Opens the weigh-in. The line goes when the weight is in the book.</source>
        <translation>Abre el pesaje. La línea desaparece cuando el peso está en el libro.</translation>
    </message>
    <message>
        <source>Opens the evidence for this piece.</source>
        <translation>Abre los indicios de esta pieza.</translation>
    </message>
    <message>
        <source>Opens the stock. The line goes when the packs are gone.</source>
        <translation>Abre las existencias. La línea desaparece cuando los envases se agotan.</translation>
    </message>
    <message>
        <source>Opens the instruments. The line goes when a check is entered.</source>
        <translation>Abre los instrumentos. La línea desaparece cuando se anota una comprobación.</translation>
    </message>
    <message>
        <source>Begins the stage now.</source>
        <translation>Empieza la fase ahora.</translation>
    </message>
    <message>
        <source>Ends the stage now.</source>
        <translation>Termina la fase ahora.</translation>
    </message>
    <message>
        <source>Takes the tick back.</source>
        <translation>La desmarca.</translation>
    </message>
    <message>
        <source>Ticks it off as done.</source>
        <translation>La marca como hecha.</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 atrasadas</translation>
    </message>
    <message>
        <source>%1 for today</source>
        <translation>%1 para hoy</translation>
    </message>
    <message>
        <source>%1 done</source>
        <translation>%1 hechas</translation>
    </message>
    <message numerus="yes">
        <source>%n pack(s)</source>
        <translation>
            <numerusform>%n envase</numerusform>
            <numerusform>%n envases</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n pieza</numerusform>
            <numerusform>%n piezas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation>
            <numerusform>%n día de retraso</numerusform>
            <numerusform>%n días de retraso</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n time(s) missed</source>
        <extracomment>%1 how late, %n how often it was not done</extracomment>
        <translation>
            <numerusform>%1, %n vez sin hacer</numerusform>
            <numerusform>%1, %n veces sin hacer</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::LostWeight</name>
    <message>
        <source>estimated, %1 to %2</source>
        <translation>estimado, de %1 a %2</translation>
    </message>
</context>
<context>
    <name>ui::presenters::PlanCalendar</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
</context>
<context>
    <name>ui::presenters::PlanDraft</name>
    <message>
        <source>Ready about %1</source>
        <translation>Lista hacia el %1</translation>
    </message>
    <message>
        <source>Start today</source>
        <translation>Empezar hoy</translation>
    </message>
    <message>
        <source>Start by %1</source>
        <translation>Empezar como tarde el %1</translation>
    </message>
    <message>
        <source>Likely ready %1; the rest until %2 is slack.</source>
        <translation>Probablemente lista el %1; lo que resta hasta el %2 es holgura.</translation>
    </message>
    <message>
        <source>No slack: half of such plans end later than %1.</source>
        <translation>Sin holgura: la mitad de estos planes acaba después del %1.</translation>
    </message>
    <message>
        <source>Not by %1</source>
        <translation>No para el %1</translation>
    </message>
    <message>
        <source>Plan it smaller</source>
        <translation>Planificar más pequeño</translation>
    </message>
    <message>
        <source>A piece of at most %1 and %2 would be ready by %3.</source>
        <translation>Una pieza de %1 y %2 como máximo estaría lista para el %3.</translation>
    </message>
    <message>
        <source>Plan this instead</source>
        <translation>Planificar esto</translation>
    </message>
    <message>
        <source>Plan for that day</source>
        <translation>Planificar para ese día</translation>
    </message>
    <message>
        <source>Begun today, it would be ready by %1.</source>
        <translation>Empezando hoy, estaría lista para el %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 % RH</source>
        <translation>%1 % HR</translation>
    </message>
    <message>
        <source>%1, in the end %2</source>
        <extracomment>a band that changes over the stage: from %1, in the end %2</extracomment>
        <translation>%1, al final %2</translation>
    </message>
    <message>
        <source>%1 for %2 in every %3</source>
        <translation>%1 durante %2 en cada %3</translation>
    </message>
    <message>
        <source>%1 every day</source>
        <translation>%1 cada día</translation>
    </message>
    <message>
        <source>%1 every %2</source>
        <translation>%1 cada %2</translation>
    </message>
    <message>
        <source>%1 on day %2</source>
        <translation>%1 el día %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>inch</source>
        <translation>pulgada</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1 days per %2</source>
        <translation>%1 días por %2</translation>
    </message>
    <message>
        <source>%1 plus %2: %3</source>
        <translation>%1 más %2: %3</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitida</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>By diffusion the centre has come close to the rest after %1.</source>
        <translation>Por difusión, el centro se acerca al resto al cabo de %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start.</source>
        <translation>
            <numerusform>%n día desde el inicio.</numerusform>
            <numerusform>%n días desde el inicio.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start; it may be %1.</source>
        <translation>
            <numerusform>%n día desde el inicio; pueden ser %1.</numerusform>
            <numerusform>%n días desde el inicio; pueden ser %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It would be %n day(s) late. A stronger dose or a shorter cure does not help: salt needs its time.</source>
        <translation>
            <numerusform>Llegaría un día tarde. Una dosis más fuerte o una salazón más corta no ayuda: la sal necesita su tiempo.</numerusform>
            <numerusform>Llegaría %n días tarde. Una dosis más fuerte o una salazón más corta no ayuda: la sal necesita su tiempo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 needs %n day(s) for its usual piece, %2 to spare.</source>
        <translation>
            <numerusform>%1 necesita %n día para su pieza habitual, sobran %2.</numerusform>
            <numerusform>%1 necesita %n días para su pieza habitual, sobran %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 every %n day(s)</source>
        <translation>
            <numerusform>%1 cada día</numerusform>
            <numerusform>%1 cada %n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) of %1</source>
        <translation>
            <numerusform>%n ronda de %1</numerusform>
            <numerusform>%n rondas de %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::WatchedFolder</name>
    <message>
        <source>The watched folder %1 is not there.</source>
        <translation>La carpeta vigilada %1 no está.</translation>
    </message>
    <message>
        <source>%1 is in the watched folder, but part of how it reads is a guess: import it once by hand.</source>
        <translation>%1 está en la carpeta vigilada, pero parte de cómo se lee es una suposición: impórtelo una vez a mano.</translation>
    </message>
    <message numerus="yes">
        <source>%1 from the watched folder: %n new reading(s).</source>
        <translation>
            <numerusform>%1 de la carpeta vigilada: %n lectura nueva.</numerusform>
            <numerusform>%1 de la carpeta vigilada: %n lecturas nuevas.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::Workspace</name>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>Kept: %1.</source>
        <translation>Guardado: %1.</translation>
    </message>
    <message>
        <source>Undone: %1.</source>
        <translation>Deshecho: %1.</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>Rehecho: %1.</translation>
    </message>
</context>
</TS>
