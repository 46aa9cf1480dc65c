<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="it" sourcelanguage="en">
<context>
    <name>ActionWords</name>
    <message>
        <source>new person %1</source>
        <translation>nuova persona %1</translation>
    </message>
    <message>
        <source>person %1 changed</source>
        <translation>persona %1 modificata</translation>
    </message>
    <message>
        <source>new chamber %1</source>
        <translation>nuova cella %1</translation>
    </message>
    <message>
        <source>chamber %1 changed</source>
        <translation>cella %1 modificata</translation>
    </message>
    <message>
        <source>new sensor %1</source>
        <translation>nuovo sensore %1</translation>
    </message>
    <message>
        <source>sensor %1 changed</source>
        <translation>sensore %1 modificato</translation>
    </message>
    <message>
        <source>new instrument %1</source>
        <translation>nuovo strumento %1</translation>
    </message>
    <message>
        <source>instrument %1 changed</source>
        <translation>strumento %1 modificato</translation>
    </message>
    <message>
        <source>calibration check of %1</source>
        <translation>controllo di taratura di %1</translation>
    </message>
    <message>
        <source>new recipe %1</source>
        <translation>nuova ricetta %1</translation>
    </message>
    <message>
        <source>new version of recipe %1</source>
        <translation>nuova versione della ricetta %1</translation>
    </message>
    <message>
        <source>recipe renamed to %1</source>
        <translation>ricetta rinominata in %1</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>importazione di %1</translation>
    </message>
    <message>
        <source>recipe %1 put away</source>
        <translation>ricetta %1 messa da parte</translation>
    </message>
    <message>
        <source>new ingredient %1</source>
        <translation>nuovo ingrediente %1</translation>
    </message>
    <message>
        <source>ingredient %1 changed</source>
        <translation>ingrediente %1 modificato</translation>
    </message>
    <message>
        <source>new lot %1</source>
        <translation>nuovo lotto %1</translation>
    </message>
    <message>
        <source>lot %1 changed</source>
        <translation>lotto %1 modificato</translation>
    </message>
    <message>
        <source>new batch %1</source>
        <translation>nuova partita %1</translation>
    </message>
    <message>
        <source>batch %1 changed</source>
        <translation>partita %1 modificata</translation>
    </message>
    <message>
        <source>new piece %1</source>
        <translation>nuovo pezzo %1</translation>
    </message>
    <message>
        <source>piece %1 changed</source>
        <translation>pezzo %1 modificato</translation>
    </message>
    <message>
        <source>ingredient lot noted for %1</source>
        <translation>lotto di ingrediente annotato per %1</translation>
    </message>
    <message>
        <source>ingredient lot changed for %1</source>
        <translation>lotto di ingrediente modificato per %1</translation>
    </message>
    <message>
        <source>weighing of %1</source>
        <translation>pesata di %1</translation>
    </message>
    <message>
        <source>weighings of %1</source>
        <translation>pesate di %1</translation>
    </message>
    <message>
        <source>correction of a weighing of %1</source>
        <translation>correzione di una pesata di %1</translation>
    </message>
    <message>
        <source>a weighing of %1 taken back</source>
        <translation>una pesata di %1 ritirata</translation>
    </message>
    <message>
        <source>event of %1</source>
        <translation>evento di %1</translation>
    </message>
    <message>
        <source>an event of %1 taken back</source>
        <translation>un evento di %1 ritirato</translation>
    </message>
    <message>
        <source>%1 cut into pieces</source>
        <translation>%1 tagliato in pezzi</translation>
    </message>
    <message>
        <source>pieces weighed as one: %1</source>
        <translation>pezzi pesati insieme: %1</translation>
    </message>
    <message>
        <source>%1 discarded</source>
        <translation>%1 scartato</translation>
    </message>
    <message>
        <source>plan of %1</source>
        <translation>piano di %1</translation>
    </message>
    <message>
        <source>stage of %1 started</source>
        <translation>fase di %1 iniziata</translation>
    </message>
    <message>
        <source>stage of %1 ended</source>
        <translation>fase di %1 terminata</translation>
    </message>
    <message>
        <source>task ticked for %1</source>
        <translation>lavoro spuntato per %1</translation>
    </message>
    <message>
        <source>task unticked for %1</source>
        <translation>spunta tolta per %1</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>nota su %1</translation>
    </message>
    <message>
        <source>caution accepted for %1</source>
        <translation>avvertenza accettata per %1</translation>
    </message>
    <message>
        <source>decision on %1</source>
        <translation>decisione su %1</translation>
    </message>
    <message>
        <source>outcome of %1</source>
        <translation>esito di %1</translation>
    </message>
    <message>
        <source>new pack %1</source>
        <translation>nuova confezione %1</translation>
    </message>
    <message>
        <source>pack %1 changed</source>
        <translation>confezione %1 modificata</translation>
    </message>
    <message>
        <source>taken from pack %1</source>
        <translation>prelievo dalla confezione %1</translation>
    </message>
    <message>
        <source>setting %1</source>
        <translation>impostazione %1</translation>
    </message>
    <message>
        <source>a change of %1</source>
        <translation>una modifica di %1</translation>
    </message>
    <message>
        <source>(no code)</source>
        <translation>(senza sigla)</translation>
    </message>
</context>
<context>
    <name>AirStrips</name>
    <message>
        <source>a week at %1 (%2 to %3)</source>
        <translation>una settimana a %1 (da %2 a %3)</translation>
    </message>
    <message>
        <source>% RH</source>
        <translation>% UR</translation>
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
        <translation>&amp;Salva come file di calendario…</translation>
    </message>
    <message>
        <source>No plan yet</source>
        <translation>Ancora nessun piano</translation>
    </message>
    <message>
        <source>Stages and work of every open batch stand here day by day. Save them as a calendar file to see them on a phone; saving again brings moved days up to date.</source>
        <translation>Qui stanno, giorno per giorno, le fasi e i lavori di ogni partita aperta. Salvati come file di calendario si vedono anche sul telefono; salvando di nuovo si aggiornano i giorni spostati.</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>Pianifica una partita</translation>
    </message>
    <message>
        <source>&amp;Earlier</source>
        <translation>&amp;Prima</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>&amp;Oggi</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>&amp;Dopo</translation>
    </message>
    <message>
        <source>Days of the month</source>
        <translation>Giorni del mese</translation>
    </message>
    <message>
        <source>On this day</source>
        <translation>In questo giorno</translation>
    </message>
    <message>
        <source>Nothing on this day.</source>
        <translation>Niente in questo giorno.</translation>
    </message>
    <message>
        <source>Stages and work by day, and as a calendar file</source>
        <translation>Fasi e lavori per giorno, e come file di calendario</translation>
    </message>
</context>
<context>
    <name>CalibrationText</name>
    <message>
        <source>A test weight near what is weighed; within 0.1 % of it. Monthly.</source>
        <translation>Un peso campione vicino a ciò che si pesa; entro lo 0,1 %. Ogni mese.</translation>
    </message>
    <message>
        <source>Crushed ice in water, stirred: %1; within %2. Monthly.</source>
        <translation>Ghiaccio tritato in acqua, mescolato: %1; entro %2. Ogni mese.</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag for 12 hours: 75 % RH; within 3 to 5 points. Every six months.</source>
        <translation>Poltiglia di sale in sacchetto chiuso per 12 ore: 75 % UR; entro 3-5 punti. Ogni sei mesi.</translation>
    </message>
    <message>
        <source>Two fresh buffers that bracket what is measured. Before use.</source>
        <translation>Due tamponi freschi che racchiudono ciò che si misura. Prima dell&apos;uso.</translation>
    </message>
    <message>
        <source>A salt standard near what is measured. Before use.</source>
        <translation>Un campione salino vicino a ciò che si misura. Prima dell&apos;uso.</translation>
    </message>
    <message>
        <source>As its maker says.</source>
        <translation>Come dice il costruttore.</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Data e ora</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Rispetto a</translation>
    </message>
    <message>
        <source>Expected, %1</source>
        <translation>Atteso, %1</translation>
    </message>
    <message>
        <source>Found, %1</source>
        <translation>Trovato, %1</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Scarto</translation>
    </message>
    <message>
        <source>Action taken</source>
        <translation>Provvedimento</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniziali</translation>
    </message>
    <message>
        <source>Last checked before: %1.</source>
        <translation>Ultimo controllo precedente: %1.</translation>
    </message>
    <message>
        <source>Never checked before.</source>
        <translation>Mai controllato prima.</translation>
    </message>
    <message>
        <source>Calibration sheet</source>
        <translation>Foglio di taratura</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>Nessuno strumento registrato.</translation>
    </message>
    <message>
        <source>How to check and how far off an instrument may be is common practice without a source: what your plan says goes before.</source>
        <translation>Come controllare e quanto uno strumento possa scostarsi è pratica comune senza fonte: vale prima ciò che dice il proprio piano.</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Controllato da</translation>
    </message>
    <message>
        <source>Responsible person</source>
        <translation>Responsabile</translation>
    </message>
    <message numerus="yes">
        <source>Set to every %n day(s) here.</source>
        <translation>
            <numerusform>Qui fissato ogni giorno.</numerusform>
            <numerusform>Qui fissato ogni %n giorni.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CautionsPage</name>
    <message>
        <source>A number is not a verdict</source>
        <translation>Un numero non è un verdetto</translation>
    </message>
    <message>
        <source>Weight loss says how much water has gone, not whether a food may be eaten. Pieces at their target can be raw inside; pieces short of it can be finished. Look, touch, smell and cut before you decide. When in doubt, throw it out.</source>
        <translation>Il calo peso dice quanta acqua se n&apos;è andata, non se un alimento si può mangiare. Pezzi all&apos;obiettivo possono essere crudi dentro; pezzi che non ci arrivano possono essere finiti. Guardare, toccare, annusare e tagliare prima di decidere. Nel dubbio, buttare.</translation>
    </message>
    <message>
        <source>Curing salt is weighed, never guessed</source>
        <translation>Il sale nitritato si pesa, non si va mai a occhio</translation>
    </message>
    <message>
        <source>Nitrite and nitrate are poisons in the wrong amount, and curing salts differ tenfold in strength. Enter the strength from the label of the packet in your hand. Use a scale that can weigh the dose. Keep curing salt marked and away from kitchen salt.</source>
        <translation>Nitriti e nitrati in dose sbagliata sono veleni, e il titolo dei sali nitritati differisce di dieci volte. Inserire il titolo letto sull&apos;etichetta della confezione che si ha in mano. Usare una bilancia capace di pesare la dose. Tenere il sale nitritato contrassegnato e lontano dal sale da cucina.</translation>
    </message>
    <message>
        <source>Cold first, then time</source>
        <translation>Prima il freddo, poi il tempo</translation>
    </message>
    <message>
        <source>Cure in the cold, and keep the time the plan gives. A date on the calendar is no reason for a stronger dose or a shorter cure. After a failure of the fridge, what counts is how warm, how long and how far along each piece was.</source>
        <translation>Salare al freddo e rispettare il tempo del piano. Una data sul calendario non è una ragione per una dose più forte o una salagione più breve. Dopo un guasto del frigorifero conta quanto caldo, per quanto tempo e a che punto era ogni pezzo.</translation>
    </message>
    <message>
        <source>Instruments are often wrong</source>
        <translation>Gli strumenti sbagliano spesso</translation>
    </message>
    <message>
        <source>Check the scale with a known weight, the thermometer in ice water, the hygrometer over a salt slurry. A reading nobody has checked is a guess with digits.</source>
        <translation>Controllare la bilancia con un peso noto, il termometro nell&apos;acqua con ghiaccio, l&apos;igrometro sulla poltiglia di sale. Una lettura che nessuno ha controllato è un&apos;ipotesi con le cifre.</translation>
    </message>
    <message>
        <source>Limits belong to your law</source>
        <translation>I limiti appartengono alla propria legge</translation>
    </message>
    <message>
        <source>The limit sets here are quoted with their source and date. Those marked unverified were not read in the issuer&apos;s own words. If you sell or give food away, the code where you live, your licence and your laboratory come before anything this program shows.</source>
        <translation>I limiti sono citati qui con fonte e data. Quelli segnati come non verificati non sono stati letti nelle parole dell&apos;ente. Chi vende o cede alimenti segue le norme del luogo, la propria autorizzazione e il laboratorio prima di qualsiasi cosa mostri questo programma.</translation>
    </message>
    <message>
        <source>Estimates carry a range</source>
        <translation>Le stime hanno un intervallo</translation>
    </message>
    <message>
        <source>Forecasts, water activity and salt in the finished piece are estimates from your entries and published formulas. The range is part of the answer. Only a laboratory measures water activity and pH in your piece.</source>
        <translation>Previsioni, attività dell&apos;acqua e sale nel pezzo finito sono stime dai propri dati e da formule pubblicate. L&apos;intervallo fa parte della risposta. Solo un laboratorio misura attività dell&apos;acqua e pH del pezzo.</translation>
    </message>
    <message>
        <source>Some people need more care</source>
        <translation>Ad alcune persone serve più cautela</translation>
    </message>
    <message>
        <source>Dry-cured meat that is not cooked is a risk for the pregnant, the very young, the old and the ill. Pork and game can carry parasites that curing alone may not kill; follow the official freezing or cooking times for your country.</source>
        <translation>La carne salata a secco e non cotta è un rischio per donne in gravidanza, bambini piccoli, anziani e malati. Carne suina e selvaggina possono portare parassiti che la sola salagione può non uccidere; seguire i tempi ufficiali di congelamento o cottura del proprio paese.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Avvertenze</translation>
    </message>
    <message>
        <source>What to keep in mind before trusting a number</source>
        <translation>Che cosa tenere presente prima di fidarsi di un numero</translation>
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
        <translation>umidità, % UR</translation>
    </message>
    <message>
        <source>drying force, Pa</source>
        <translation>forza essiccante, Pa</translation>
    </message>
    <message>
        <source> · dew point %1</source>
        <translation> · punto di rugiada %1</translation>
    </message>
    <message>
        <source> · drying force %1 Pa</source>
        <translation> · forza essiccante %1 Pa</translation>
    </message>
    <message>
        <source>%1: least to greatest</source>
        <translation>%1: dal minimo al massimo</translation>
    </message>
    <message>
        <source>%1: dew point</source>
        <translation>%1: punto di rugiada</translation>
    </message>
    <message>
        <source>no readings</source>
        <translation>nessuna lettura</translation>
    </message>
    <message>
        <source>lower bound</source>
        <translation>limite inferiore</translation>
    </message>
    <message>
        <source>upper bound</source>
        <translation>limite superiore</translation>
    </message>
    <message>
        <source>%1 has no readings in this time.</source>
        <translation>%1 non ha letture in questo tempo.</translation>
    </message>
    <message>
        <source>%1: %2 to %3, pauses without readings: %4.</source>
        <translation>%1: da %2 a %3, pause senza letture: %4.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (da %2 a %3)</translation>
    </message>
    <message>
        <source>%1 Pa</source>
        <translation>%1 Pa</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Da</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Umidità</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Punto di rugiada</translation>
    </message>
    <message>
        <source>Drying force</source>
        <translation>Forza essiccante</translation>
    </message>
</context>
<context>
    <name>ClimateWords</name>
    <message>
        <source>comma</source>
        <translation>virgola</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto e virgola</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulazione</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barra verticale</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>anno, mese, giorno</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>giorno, mese, anno</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mese, giorno, anno</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>secondi dal 1970</translation>
    </message>
    <message>
        <source>milliseconds since 1970</source>
        <translation>millisecondi dal 1970</translation>
    </message>
    <message>
        <source>day numbers of a spreadsheet</source>
        <translation>numeri di giorno di un foglio di calcolo</translation>
    </message>
    <message>
        <source>each time says its own</source>
        <translation>ogni ora dice la propria</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>ora locale di %1</translation>
    </message>
    <message>
        <source>%1%2:%3 all year</source>
        <translation>%1%2:%3 tutto l&apos;anno</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>percento</translation>
    </message>
    <message>
        <source>a share of 1</source>
        <translation>frazione di 1</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Caratteri</translation>
    </message>
    <message>
        <source>Columns parted by</source>
        <translation>Colonne separate da</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Segno decimale</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Orologio</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Ora</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Umidità</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>Temperatura in</translation>
    </message>
    <message>
        <source>Humidity in</source>
        <translation>Umidità in</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonna %1</translation>
    </message>
    <message>
        <source>you said so</source>
        <translation>detto qui</translation>
    </message>
    <message>
        <source>as confirmed for this sensor before</source>
        <translation>come già confermato per questo sensore</translation>
    </message>
    <message>
        <source>the file&apos;s own mark</source>
        <translation>il segno del file stesso</translation>
    </message>
    <message>
        <source>the heading names it</source>
        <translation>lo dice l&apos;intestazione</translation>
    </message>
    <message>
        <source>nothing else fits the lines</source>
        <translation>nient&apos;altro si adatta alle righe</translation>
    </message>
    <message>
        <source>otherwise time would jump</source>
        <translation>altrimenti il tempo salterebbe</translation>
    </message>
    <message>
        <source>the values look like it</source>
        <translation>i valori ne hanno l&apos;aspetto</translation>
    </message>
    <message>
        <source>the rest of the file makes it likely</source>
        <translation>il resto del file lo rende probabile</translation>
    </message>
    <message>
        <source>nothing in the file says so</source>
        <translation>niente nel file lo dice</translation>
    </message>
    <message>
        <source>sure, %1</source>
        <translation>certo, %1</translation>
    </message>
    <message>
        <source>fairly sure, %1</source>
        <translation>abbastanza certo, %1</translation>
    </message>
    <message>
        <source>▲ a guess, %1</source>
        <translation>▲ un&apos;ipotesi, %1</translation>
    </message>
    <message>
        <source>no date and time</source>
        <translation>né data né ora</translation>
    </message>
    <message>
        <source>an hour the clock skipped in spring</source>
        <translation>un&apos;ora che l&apos;orologio ha saltato in primavera</translation>
    </message>
    <message>
        <source>the line is cut off</source>
        <translation>la riga è troncata</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>nessun numero</translation>
    </message>
    <message>
        <source>a value no air has</source>
        <translation>un valore che nessuna aria ha</translation>
    </message>
    <message>
        <source>neither temperature nor humidity</source>
        <translation>né temperatura né umidità</translation>
    </message>
    <message>
        <source>the heading again</source>
        <translation>di nuovo l&apos;intestazione</translation>
    </message>
    <message>
        <source>an endless line</source>
        <translation>una riga senza fine</translation>
    </message>
    <message>
        <source>a quote that never closes</source>
        <translation>virgolette mai chiuse</translation>
    </message>
    <message>
        <source>not text</source>
        <translation>non è testo</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>troppo freddo</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>troppo caldo</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>troppo secco</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>troppo umido</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>non noto</translation>
    </message>
    <message>
        <source>estimate below its bound</source>
        <translation>stima sotto il suo limite</translation>
    </message>
    <message>
        <source>estimate straddles its bound</source>
        <translation>stima a cavallo del suo limite</translation>
    </message>
    <message>
        <source>estimate above its bound</source>
        <translation>stima sopra il suo limite</translation>
    </message>
</context>
<context>
    <name>Data</name>
    <message>
        <source>A second salting two days after the first.</source>
        <translation>Una seconda salatura due giorni dopo la prima.</translation>
    </message>
    <message>
        <source>About two minutes for each day in cure, water at most 70 °F.</source>
        <translation>Circa due minuti per ogni giorno di salagione, acqua al massimo a 70 °F.</translation>
    </message>
    <message>
        <source>After salting</source>
        <translation>Dopo la salatura</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Stagionatura</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aerazione</translation>
    </message>
    <message>
        <source>American country</source>
        <translation>Americana di campagna</translation>
    </message>
    <message>
        <source>Another spice or herb</source>
        <translation>Altra spezia o erba</translation>
    </message>
    <message>
        <source>Ascorbic acid (vitamin C)</source>
        <translation>Acido ascorbico (vitamina C)</translation>
    </message>
    <message>
        <source>Australia and New Zealand: cured meat</source>
        <translation>Australia e Nuova Zelanda: carne salata</translation>
    </message>
    <message>
        <source>Bacon, dry cured and smoked</source>
        <translation>Bacon salato a secco e affumicato</translation>
    </message>
    <message>
        <source>Bay leaf</source>
        <translation>Alloro</translation>
    </message>
    <message>
        <source>Biltong</source>
        <translation>Biltong</translation>
    </message>
    <message>
        <source>Black pepper, ground</source>
        <translation>Pepe nero macinato</translation>
    </message>
    <message>
        <source>Black pepper, whole</source>
        <translation>Pepe nero in grani</translation>
    </message>
    <message>
        <source>Bresaola</source>
        <translation>Bresaola</translation>
    </message>
    <message>
        <source>Brine</source>
        <translation>Salamoia</translation>
    </message>
    <message>
        <source>Brown sugar, packed</source>
        <translation>Zucchero di canna, pressato</translation>
    </message>
    <message>
        <source>Burn through</source>
        <translation>Riposo di penetrazione</translation>
    </message>
    <message>
        <source>Cabinet drying</source>
        <translation>Asciugatura in armadio</translation>
    </message>
    <message>
        <source>Canada: cured meat</source>
        <translation>Canada: carne salata</translation>
    </message>
    <message>
        <source>Canada: side bacon</source>
        <translation>Canada: side bacon</translation>
    </message>
    <message>
        <source>Case and tie</source>
        <translation>Insaccatura e legatura</translation>
    </message>
    <message>
        <source>Cellar</source>
        <translation>Cantina</translation>
    </message>
    <message>
        <source>Central European smoked</source>
        <translation>Affumicati mitteleuropei</translation>
    </message>
    <message>
        <source>Chilli, ground or flakes</source>
        <translation>Peperoncino, macinato o in fiocchi</translation>
    </message>
    <message>
        <source>Chinese wind-dried</source>
        <translation>Cinesi essiccati al vento</translation>
    </message>
    <message>
        <source>Coarse sea salt</source>
        <translation>Sale marino grosso</translation>
    </message>
    <message>
        <source>Codex: heat-treated whole cuts</source>
        <translation>Codex: tagli interi trattati termicamente</translation>
    </message>
    <message>
        <source>Cold smoke</source>
        <translation>Affumicatura a freddo</translation>
    </message>
    <message>
        <source>Cool dry</source>
        <translation>Asciugatura fresca</translation>
    </message>
    <message>
        <source>Cool</source>
        <translation>Raffreddamento</translation>
    </message>
    <message>
        <source>Coppa</source>
        <translation>Coppa</translation>
    </message>
    <message>
        <source>Coriander seed</source>
        <translation>Semi di coriandolo</translation>
    </message>
    <message>
        <source>Country and dry-cured ham: water activity</source>
        <translation>Country ham e prosciutto crudo: attività dell&apos;acqua</translation>
    </message>
    <message>
        <source>Country ham</source>
        <translation>Country ham</translation>
    </message>
    <message>
        <source>Country ham: internal salt</source>
        <translation>Country ham: sale all&apos;interno</translation>
    </message>
    <message>
        <source>Country ham: loss of fresh weight</source>
        <translation>Country ham: calo sul peso fresco</translation>
    </message>
    <message>
        <source>Country shoulder</source>
        <translation>Spalla country</translation>
    </message>
    <message>
        <source>Cure</source>
        <translation>Salagione</translation>
    </message>
    <message>
        <source>Curing salt No. 1 (6.25 % nitrite)</source>
        <translation>Sale nitritato n. 1 (6,25 % di nitrito)</translation>
    </message>
    <message>
        <source>Curing salt No. 2 (6.25 % nitrite, nitrate by label)</source>
        <translation>Sale nitritato n. 2 (6,25 % di nitrito, nitrato da etichetta)</translation>
    </message>
    <message>
        <source>Curing salt, UK (5.88 % nitrite)</source>
        <translation>Sale nitritato, UK (5,88 % di nitrito)</translation>
    </message>
    <message>
        <source>Curing salt, strength from its label</source>
        <translation>Sale nitritato, titolo da etichetta</translation>
    </message>
    <message>
        <source>Damp rests let the inside follow the surface.</source>
        <translation>I riposi umidi lasciano che l&apos;interno segua la superficie.</translation>
    </message>
    <message>
        <source>Dextrose (monohydrate)</source>
        <translation>Destrosio (monoidrato)</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Sgocciolamento</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Asciugatura</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: Rohschinken</source>
        <translation>UE prima del 9 ottobre 2025: Rohschinken</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured bacon</source>
        <translation>UE prima del 9 ottobre 2025: bacon salato a secco</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured ham, jamon, lomo, cecina</source>
        <translation>UE prima del 9 ottobre 2025: prosciutto salato a secco, jamón, lomo, cecina</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: jambon sec</source>
        <translation>UE prima del 9 ottobre 2025: jambon sec</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: not heat treated</source>
        <translation>UE prima del 9 ottobre 2025: non trattati termicamente</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: not heat treated</source>
        <translation>UE dal 9 ottobre 2025: non trattati termicamente</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: sterilised</source>
        <translation>UE dal 9 ottobre 2025: sterilizzati</translation>
    </message>
    <message>
        <source>Equalise and dry the surface</source>
        <translation>Equalizzazione e asciugatura della superficie</translation>
    </message>
    <message>
        <source>Equalise</source>
        <translation>Equalizzazione del sale</translation>
    </message>
    <message>
        <source>Erythorbic acid</source>
        <translation>Acido eritorbico</translation>
    </message>
    <message>
        <source>Fennel seed</source>
        <translation>Semi di finocchio</translation>
    </message>
    <message>
        <source>Fenugreek, ground</source>
        <translation>Fieno greco macinato</translation>
    </message>
    <message>
        <source>Fine sea salt</source>
        <translation>Sale marino fino</translation>
    </message>
    <message>
        <source>First drying</source>
        <translation>Prima asciugatura</translation>
    </message>
    <message>
        <source>First press</source>
        <translation>Prima pressatura</translation>
    </message>
    <message>
        <source>First rest</source>
        <translation>Primo riposo</translation>
    </message>
    <message>
        <source>First salt</source>
        <translation>Primo sale</translation>
    </message>
    <message>
        <source>Fish sauce</source>
        <translation>Salsa di pesce</translation>
    </message>
    <message>
        <source>Flake salt</source>
        <translation>Sale in fiocchi</translation>
    </message>
    <message>
        <source>Follows the seasons where there is no thermostat.</source>
        <translation>Segue le stagioni dove non c&apos;è termostato.</translation>
    </message>
    <message>
        <source>French</source>
        <translation>Francesi</translation>
    </message>
    <message>
        <source>Fresh air</source>
        <translation>Aria fresca</translation>
    </message>
    <message>
        <source>Garlic powder</source>
        <translation>Aglio in polvere</translation>
    </message>
    <message>
        <source>Garlic, fresh</source>
        <translation>Aglio fresco</translation>
    </message>
    <message>
        <source>Great Britain: not heat treated</source>
        <translation>Gran Bretagna: non trattati termicamente</translation>
    </message>
    <message>
        <source>Guanciale</source>
        <translation>Guanciale</translation>
    </message>
    <message>
        <source>Hang to even out the salt and dry the skin.</source>
        <translation>Appendere perché il sale si distribuisca e la cotenna asciughi.</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>Appendere</translation>
    </message>
    <message>
        <source>Honey</source>
        <translation>Miele</translation>
    </message>
    <message>
        <source>Italian and Spanish leg</source>
        <translation>Cosce italiane e spagnole</translation>
    </message>
    <message>
        <source>Italian whole muscle</source>
        <translation>Salumi italiani di pezzo intero</translation>
    </message>
    <message>
        <source>Jambon sec</source>
        <translation>Jambon sec</translation>
    </message>
    <message>
        <source>Juniper berries</source>
        <translation>Bacche di ginepro</translation>
    </message>
    <message>
        <source>Kosher salt, dense grain</source>
        <translation>Sale kosher, grana densa</translation>
    </message>
    <message>
        <source>Kosher salt, light grain</source>
        <translation>Sale kosher, grana leggera</translation>
    </message>
    <message>
        <source>Lard</source>
        <translation>Sugnatura</translation>
    </message>
    <message>
        <source>Last drying</source>
        <translation>Ultima asciugatura</translation>
    </message>
    <message>
        <source>Leg, air-dried on the bone</source>
        <translation>Coscia, asciugata all&apos;aria con l&apos;osso</translation>
    </message>
    <message>
        <source>Leg, mountain air</source>
        <translation>Coscia, aria di montagna</translation>
    </message>
    <message>
        <source>Listeria cannot grow: water activity</source>
        <translation>La Listeria non può crescere: attività dell&apos;acqua</translation>
    </message>
    <message>
        <source>Lomo, loin in adobo</source>
        <translation>Lomo, lonza in adobo</translation>
    </message>
    <message>
        <source>Long rest</source>
        <translation>Riposo lungo</translation>
    </message>
    <message>
        <source>Lonzino, the cured loin</source>
        <translation>Lonzino, la lonza salata</translation>
    </message>
    <message>
        <source>Magret, dried duck breast</source>
        <translation>Magret, petto d&apos;anatra essiccato</translation>
    </message>
    <message>
        <source>Maple syrup</source>
        <translation>Sciroppo d&apos;acero</translation>
    </message>
    <message>
        <source>Marinate</source>
        <translation>Marinatura</translation>
    </message>
    <message>
        <source>Nitrite curing salt (0.6 %)</source>
        <translation>Sale nitritato (0,6 %)</translation>
    </message>
    <message>
        <source>Nitrite curing salt, German (0.4 to 0.5 %)</source>
        <translation>Sale nitritato, tedesco (da 0,4 a 0,5 %)</translation>
    </message>
    <message>
        <source>No Codex entry for cured whole cuts that are not heat treated (08.2.1) was found: do not take this one for them.</source>
        <translation>Non è stata trovata una voce del Codex per tagli interi salati non trattati termicamente (08.2.1): non prendere questa al suo posto.</translation>
    </message>
    <message>
        <source>No cold stage: a warm dry room with moving air.</source>
        <translation>Nessuna fase fredda: un locale caldo e secco con aria in movimento.</translation>
    </message>
    <message>
        <source>Only the ingoing row could be read, at second hand. Residual and nitrate rows of the new Annex are not here: read them before you rely on this set.</source>
        <translation>Si è potuta leggere solo la riga della quantità aggiunta, di seconda mano. Le righe dei residui e dei nitrati del nuovo Allegato non sono qui: leggerle prima di affidarsi a questi limiti.</translation>
    </message>
    <message>
        <source>Out by day, in by night; 4 to 15 °C and 45 to 70 % are what cooks name. Warm spring weather stops it.</source>
        <translation>Fuori di giorno, dentro di notte; i cuochi indicano 4-15 °C e 45-70 %. Il caldo di primavera la ferma.</translation>
    </message>
    <message>
        <source>Pancetta, flat</source>
        <translation>Pancetta tesa</translation>
    </message>
    <message>
        <source>Pancetta, rolled</source>
        <translation>Pancetta arrotolata</translation>
    </message>
    <message>
        <source>Paprika, ground</source>
        <translation>Paprica macinata</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Pasta di spezie</translation>
    </message>
    <message>
        <source>Pastirma</source>
        <translation>Pastirma</translation>
    </message>
    <message>
        <source>Pickle</source>
        <translation>In salamoia</translation>
    </message>
    <message>
        <source>Pickling salt</source>
        <translation>Sale per conserve</translation>
    </message>
    <message>
        <source>Poitrine séchée, dried belly</source>
        <translation>Poitrine séchée, pancetta essiccata</translation>
    </message>
    <message>
        <source>Potassium nitrite, undiluted</source>
        <translation>Nitrito di potassio, non diluito</translation>
    </message>
    <message>
        <source>Pulsed dry</source>
        <translation>Asciugatura a intervalli</translation>
    </message>
    <message>
        <source>Raw ham, from the brine</source>
        <translation>Prosciutto crudo dalla salamoia</translation>
    </message>
    <message>
        <source>Raw ham, smoked</source>
        <translation>Prosciutto crudo affumicato</translation>
    </message>
    <message>
        <source>Rest in a bag</source>
        <translation>Riposo in sacchetto</translation>
    </message>
    <message>
        <source>Rest in the cold</source>
        <translation>Riposo al freddo</translation>
    </message>
    <message>
        <source>Restack and turn every day.</source>
        <translation>Reimpilare e girare ogni giorno.</translation>
    </message>
    <message>
        <source>Rice wine, strength from its label</source>
        <translation>Vino di riso, grado da etichetta</translation>
    </message>
    <message>
        <source>Rinse and pepper</source>
        <translation>Risciacquo e pepatura</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Risciacquo</translation>
    </message>
    <message>
        <source>Ripen</source>
        <translation>Maturazione</translation>
    </message>
    <message>
        <source>Rock salt</source>
        <translation>Salgemma</translation>
    </message>
    <message>
        <source>Roll, case and tie</source>
        <translation>Arrotolare, insaccare e legare</translation>
    </message>
    <message>
        <source>Rub</source>
        <translation>Massaggio con sale</translation>
    </message>
    <message>
        <source>Salt and adobo</source>
        <translation>Sale e adobo</translation>
    </message>
    <message>
        <source>Salt and vinegar</source>
        <translation>Sale e aceto</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>Sale nella fase acquosa</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salatura</translation>
    </message>
    <message>
        <source>Salted and smoked belly</source>
        <translation>Pancetta salata e affumicata</translation>
    </message>
    <message>
        <source>Salted by eye and weight class: write down what was used.</source>
        <translation>Salato a occhio e per classe di peso: annotare quanto si è usato.</translation>
    </message>
    <message>
        <source>Saltpetre (potassium nitrate)</source>
        <translation>Salnitro (nitrato di potassio)</translation>
    </message>
    <message>
        <source>Second drying</source>
        <translation>Seconda asciugatura</translation>
    </message>
    <message>
        <source>Second press</source>
        <translation>Seconda pressatura</translation>
    </message>
    <message>
        <source>Second salt</source>
        <translation>Secondo sale</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Assestamento</translation>
    </message>
    <message>
        <source>Shelf stable: water activity</source>
        <translation>Stabile a temperatura ambiente: attività dell&apos;acqua</translation>
    </message>
    <message>
        <source>Shoulder or ham in sweet pickle</source>
        <translation>Spalla o prosciutto in salamoia dolce</translation>
    </message>
    <message>
        <source>Six hours warm, then down two degrees every twelve hours.</source>
        <translation>Sei ore al caldo, poi due gradi in meno ogni dodici ore.</translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation>Affumicatura</translation>
    </message>
    <message>
        <source>Soak</source>
        <translation>Ammollo</translation>
    </message>
    <message>
        <source>Sodium ascorbate</source>
        <translation>Ascorbato di sodio</translation>
    </message>
    <message>
        <source>Sodium erythorbate</source>
        <translation>Eritorbato di sodio</translation>
    </message>
    <message>
        <source>Sodium nitrate, undiluted</source>
        <translation>Nitrato di sodio, non diluito</translation>
    </message>
    <message>
        <source>Sodium nitrite, undiluted</source>
        <translation>Nitrito di sodio, non diluito</translation>
    </message>
    <message>
        <source>Sodium tripolyphosphate</source>
        <translation>Tripolifosfato di sodio</translation>
    </message>
    <message>
        <source>South African</source>
        <translation>Sudafricani</translation>
    </message>
    <message>
        <source>Soy and spirit by volume: weigh them.</source>
        <translation>Salsa di soia e distillato a volume: pesarli.</translation>
    </message>
    <message>
        <source>Soy sauce</source>
        <translation>Salsa di soia</translation>
    </message>
    <message>
        <source>Spanish loin</source>
        <translation>Lonza spagnola</translation>
    </message>
    <message>
        <source>Speck</source>
        <translation>Speck</translation>
    </message>
    <message>
        <source>Spirit, strength from its label</source>
        <translation>Distillato, grado da etichetta</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Impilatura</translation>
    </message>
    <message>
        <source>Summer sweat is wanted. Internal temperature at most 95 °F (9 CFR 319.106).</source>
        <translation>La sudatura estiva è voluta. Temperatura interna al massimo 95 °F (9 CFR 319.106).</translation>
    </message>
    <message>
        <source>Table salt</source>
        <translation>Sale da tavola</translation>
    </message>
    <message>
        <source>The casing day is the birthday of the piece: weigh it bare and dressed.</source>
        <translation>Il giorno dell&apos;insaccatura è il compleanno del pezzo: pesarlo nudo e insaccato.</translation>
    </message>
    <message>
        <source>The next weighing may be wet.</source>
        <translation>La prossima pesata può essere bagnata.</translation>
    </message>
    <message>
        <source>The rule counts the thickness before rolling: enter the flat thickness for the cure.</source>
        <translation>La regola conta lo spessore prima di arrotolare: per la salagione inserire lo spessore da piatto.</translation>
    </message>
    <message>
        <source>Third drying</source>
        <translation>Terza asciugatura</translation>
    </message>
    <message>
        <source>Thread and hang</source>
        <translation>Infilare e appendere</translation>
    </message>
    <message>
        <source>Three and a half to four days per pound, about 36 °F.</source>
        <translation>Da tre e mezzo a quattro giorni per libbra, a circa 36 °F.</translation>
    </message>
    <message>
        <source>Three to five millimetres of paste: weigh before and after.</source>
        <translation>Da tre a cinque millimetri di pasta: pesare prima e dopo.</translation>
    </message>
    <message>
        <source>Turkish and Armenian pressed</source>
        <translation>Pressati turchi e armeni</translation>
    </message>
    <message>
        <source>Two days per pound.</source>
        <translation>Due giorni per libbra.</translation>
    </message>
    <message>
        <source>US FSIS: bacon, dry cured</source>
        <translation>US FSIS: bacon, salato a secco</translation>
    </message>
    <message>
        <source>US FSIS: bacon, immersion cured</source>
        <translation>US FSIS: bacon, salato in salamoia</translation>
    </message>
    <message>
        <source>US FSIS: bacon, pumped</source>
        <translation>US FSIS: bacon, siringato</translation>
    </message>
    <message>
        <source>US FSIS: chopped</source>
        <translation>US FSIS: tritato</translation>
    </message>
    <message>
        <source>US FSIS: cured, labelled to keep refrigerated</source>
        <translation>US FSIS: salato, etichetta «tenere in frigorifero»</translation>
    </message>
    <message>
        <source>US FSIS: dry cured</source>
        <translation>US FSIS: salato a secco</translation>
    </message>
    <message>
        <source>US FSIS: immersed, pumped or massaged</source>
        <translation>US FSIS: immerso, siringato o massaggiato</translation>
    </message>
    <message>
        <source>US home curing</source>
        <translation>US: salagione casalinga</translation>
    </message>
    <message>
        <source>Vinegar (5 % acid)</source>
        <translation>Aceto (5 % di acido)</translation>
    </message>
    <message>
        <source>Warm rest</source>
        <translation>Riposo caldo</translation>
    </message>
    <message>
        <source>Warm start</source>
        <translation>Avvio caldo</translation>
    </message>
    <message>
        <source>Wash and pepper</source>
        <translation>Lavaggio e pepatura</translation>
    </message>
    <message>
        <source>Wash and soak</source>
        <translation>Lavaggio e ammollo</translation>
    </message>
    <message>
        <source>Wash</source>
        <translation>Lavaggio</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Acqua</translation>
    </message>
    <message>
        <source>Weigh before and after.</source>
        <translation>Pesare prima e dopo.</translation>
    </message>
    <message>
        <source>White pepper, ground</source>
        <translation>Pepe bianco macinato</translation>
    </message>
    <message>
        <source>White sugar</source>
        <translation>Zucchero bianco</translation>
    </message>
    <message>
        <source>Whole muscle in a cabinet, pulsed air</source>
        <translation>Pezzi interi in armadio, aria a intervalli</translation>
    </message>
    <message>
        <source>Wind dry</source>
        <translation>Essiccazione al vento</translation>
    </message>
    <message>
        <source>Wind-dried belly</source>
        <translation>Pancetta essiccata al vento</translation>
    </message>
    <message>
        <source>Wine, strength from its label</source>
        <translation>Vino, grado da etichetta</translation>
    </message>
    <message>
        <source>Wipe and dip</source>
        <translation>Tamponare e immergere</translation>
    </message>
    <message>
        <source>beef</source>
        <translation>manzo</translation>
    </message>
    <message>
        <source>cup (US)</source>
        <translation>tazza (US)</translation>
    </message>
    <message>
        <source>cup (metric)</source>
        <translation>tazza (metrica)</translation>
    </message>
    <message>
        <source>duck</source>
        <translation>anatra</translation>
    </message>
    <message>
        <source>pork</source>
        <translation>maiale</translation>
    </message>
    <message>
        <source>tablespoon (Australia)</source>
        <translation>cucchiaio (Australia)</translation>
    </message>
    <message>
        <source>tablespoon (US food label)</source>
        <translation>cucchiaio (etichetta alimentare US)</translation>
    </message>
    <message>
        <source>tablespoon (US)</source>
        <translation>cucchiaio (US)</translation>
    </message>
    <message>
        <source>tablespoon (imperial)</source>
        <translation>cucchiaio (imperiale)</translation>
    </message>
    <message>
        <source>tablespoon (metric)</source>
        <translation>cucchiaio (metrico)</translation>
    </message>
    <message>
        <source>tablespoon (traditional British)</source>
        <translation>cucchiaio (britannico tradizionale)</translation>
    </message>
    <message>
        <source>teaspoon (US)</source>
        <translation>cucchiaino (US)</translation>
    </message>
    <message>
        <source>teaspoon (metric)</source>
        <translation>cucchiaino (metrico)</translation>
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
        <translation>umidità</translation>
    </message>
    <message>
        <source>Dry-cured ham, cut, in the cold</source>
        <translation>Prosciutto crudo, tagliato, al freddo</translation>
    </message>
    <message>
        <source>Dry-cured ham, frozen</source>
        <translation>Prosciutto crudo, congelato</translation>
    </message>
    <message>
        <source>Dry-cured ham, whole and uncut, in a cool room</source>
        <translation>Prosciutto crudo, intero e non tagliato, in un locale fresco</translation>
    </message>
    <message>
        <source>Opened, wrapped again, in the cold</source>
        <translation>Aperto, riavvolto, al freddo</translation>
    </message>
    <message>
        <source>Thawed and opened, in the cold</source>
        <translation>Scongelato e aperto, al freddo</translation>
    </message>
    <message>
        <source>Whole muscle under vacuum, in the cold</source>
        <translation>Pezzo intero sottovuoto, al freddo</translation>
    </message>
    <message>
        <source>Whole muscle, frozen under vacuum</source>
        <translation>Pezzo intero, congelato sottovuoto</translation>
    </message>
    <message>
        <source>Whole muscle, uncut, wrapped, in the cold</source>
        <translation>Muscolo intero, non tagliato, avvolto, al freddo</translation>
    </message>
    <message>
        <source>for quality</source>
        <translation>per la qualità</translation>
    </message>
    <message>
        <source>for quality: fat turns rancid</source>
        <translation>per la qualità: il grasso irrancidisce</translation>
    </message>
    <message>
        <source>for quality; of whole hams on the bone</source>
        <translation>per la qualità; di prosciutti interi con l&apos;osso</translation>
    </message>
    <message>
        <source>it goes on drying in the fridge</source>
        <translation>in frigorifero continua ad asciugare</translation>
    </message>
    <message>
        <source>the chart gives three weeks after opening</source>
        <translation>la tabella dà tre settimane dopo l&apos;apertura</translation>
    </message>
    <message>
        <source>the chart gives two to three months</source>
        <translation>la tabella dà da due a tre mesi</translation>
    </message>
    <message>
        <source>without air some dangerous microbes grow better: only for pieces that are dry and salted through</source>
        <translation>senz&apos;aria alcuni microbi pericolosi crescono meglio: solo per pezzi asciutti e salati fino al centro</translation>
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
        <translation>oggi</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>domani</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ieri</translation>
    </message>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation>
            <numerusform>fra %n giorno</numerusform>
            <numerusform>fra %n giorni</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>%n giorno fa</numerusform>
            <numerusform>%n giorni fa</numerusform>
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
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <extracomment>A month, in Qt&apos;s date format.</extracomment>
        <translation>MMMM yyyy</translation>
    </message>
</context>
<context>
    <name>ErrorWords</name>
    <message>
        <source>Nothing is entered here yet. Type a value.</source>
        <translation>Qui non c&apos;è ancora niente. Digitare un valore.</translation>
    </message>
    <message>
        <source>“%1” is not a number. Type digits, such as 740 or 2.5.</source>
        <translation>«%1» non è un numero. Digitare cifre, come 740 o 2,5.</translation>
    </message>
    <message>
        <source>The unit “%1” is not known. Use g, kg, oz, lb, mm, in, °C, °F, mL or fl oz.</source>
        <translation>L&apos;unità «%1» non è nota. Usare g, kg, oz, lb, mm, in, °C, °F, mL o fl oz.</translation>
    </message>
    <message>
        <source>Say which unit is meant, such as g or oz.</source>
        <translation>Dire quale unità si intende, per esempio g oppure oz.</translation>
    </message>
    <message>
        <source>“%1” is another kind of quantity than is asked for here. Enter one in the unit shown beside the field.</source>
        <translation>«%1» è una grandezza diversa da quella chiesta qui. Inserirne una nell&apos;unità accanto al campo.</translation>
    </message>
    <message>
        <source>“%1” is outside what is possible here. Check the digits and the unit.</source>
        <translation>«%1» è fuori da ciò che qui è possibile. Controllare cifre e unità.</translation>
    </message>
    <message>
        <source>“%1” is left over after the value. Take it away or write it in a note.</source>
        <translation>«%1» avanza dopo il valore. Toglierlo o scriverlo in una nota.</translation>
    </message>
    <message>
        <source>“%1” can be read as a thousand or as a decimal. Write it without a thousands mark.</source>
        <translation>«%1» si può leggere come migliaia o come decimale. Scriverlo senza segno delle migliaia.</translation>
    </message>
    <message>
        <source>This is not in the expected form: %1. Check that it is the file you meant.</source>
        <translation>Non ha la forma attesa: %1. Controllare che sia il file voluto.</translation>
    </message>
    <message>
        <source>The column “%1” is missing. Add it to the file&apos;s first line.</source>
        <translation>Manca la colonna «%1». Aggiungerla nella prima riga del file.</translation>
    </message>
    <message>
        <source>A line could not be read: %1. Mend it and read the file again.</source>
        <translation>Una riga non si è potuta leggere: %1. Correggerla e rileggere il file.</translation>
    </message>
    <message>
        <source>The time zone “%1” is not known on this computer. Choose another in Preferences.</source>
        <translation>Il fuso orario «%1» non è noto su questo computer. Sceglierne un altro nelle Preferenze.</translation>
    </message>
    <message>
        <source>%1 was not found. Check the name and whether the disk is there.</source>
        <translation>%1 non è stato trovato. Controllare il nome e che il disco ci sia.</translation>
    </message>
    <message>
        <source>%1 may not be read or written by you. Change its permissions or choose another place.</source>
        <translation>%1 non si può leggere o scrivere con i propri permessi. Cambiarli o scegliere un altro posto.</translation>
    </message>
    <message>
        <source>%1 is a folder. Choose a file in it.</source>
        <translation>%1 è una cartella. Scegliere un file al suo interno.</translation>
    </message>
    <message>
        <source>%1 is not a Saltloft book. Choose another file, or make a new book.</source>
        <translation>%1 non è un libro di Saltloft. Scegliere un altro file o creare un libro nuovo.</translation>
    </message>
    <message>
        <source>This book was written by a newer Saltloft (%1). Install that version to open it; nothing was changed.</source>
        <translation>Questo libro è stato scritto da un Saltloft più recente (%1). Installare quella versione per aprirlo; niente è stato modificato.</translation>
    </message>
    <message>
        <source>The book is damaged: %1. Open a backup, or salvage what can be read into a new book.</source>
        <translation>Il libro è danneggiato: %1. Aprire una copia, oppure recuperare in un libro nuovo ciò che si legge.</translation>
    </message>
    <message>
        <source>The book is busy in another program. Close it there and try again.</source>
        <translation>Il libro è in uso in un altro programma. Chiuderlo là e riprovare.</translation>
    </message>
    <message>
        <source>The disk is full. Free some space and try again; nothing was lost.</source>
        <translation>Il disco è pieno. Liberare spazio e riprovare; niente è andato perso.</translation>
    </message>
    <message>
        <source>The disk did not answer as it should: %1. Check the disk, then try again.</source>
        <translation>Il disco non ha risposto come dovrebbe: %1. Controllare il disco e riprovare.</translation>
    </message>
    <message>
        <source>The book is open for reading only, so nothing was changed. Close it elsewhere or free the file, then open it again.</source>
        <translation>Il libro è aperto in sola lettura, perciò niente è stato modificato. Chiuderlo altrove o liberare il file, poi riaprirlo.</translation>
    </message>
    <message>
        <source>This entry is no longer in the book: %1. Go back and choose again.</source>
        <translation>Questa voce non è più nel libro: %1. Tornare indietro e scegliere di nuovo.</translation>
    </message>
    <message>
        <source>This clashes with what is in the book: %1. Choose another code, or look at the entry again and repeat.</source>
        <translation>Questo contrasta con ciò che è nel libro: %1. Scegliere un&apos;altra sigla, o riguardare la voce e ripetere.</translation>
    </message>
    <message>
        <source>The book does not allow this: %1. Mend what is named and try again.</source>
        <translation>Il libro non lo permette: %1. Rimediare a quanto detto e riprovare.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Non c&apos;è niente da annullare.</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <translation>Non c&apos;è niente da ripetere.</translation>
    </message>
    <message>
        <source>There is no answer that meets everything asked: %1. Loosen one of the wishes.</source>
        <translation>Nessuna risposta soddisfa tutto ciò che è chiesto: %1. Allentare uno dei desideri.</translation>
    </message>
    <message>
        <source>The computation did not settle: %1. More weighings usually help.</source>
        <translation>Il calcolo non si è stabilizzato: %1. Di solito aiutano altre pesate.</translation>
    </message>
    <message>
        <source>Stopped, as you asked. Nothing was changed.</source>
        <translation>Fermato, come chiesto. Niente è stato modificato.</translation>
    </message>
    <message>
        <source>Something went wrong: %1. Try again.</source>
        <translation>Qualcosa è andato storto: %1. Riprovare.</translation>
    </message>
    <message>
        <source>no detail</source>
        <translation>nessun dettaglio</translation>
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
        <translation>questa voce</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Please look at this: %1.</source>
        <translation>Guardare qui: %1.</translation>
    </message>
    <message>
        <source>Please look at %1: %2.</source>
        <translation>Guardare %1: %2.</translation>
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
        <translation>Avvertenza</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, by arithmetic from it</source>
        <translation>%1, calcolato da lì</translation>
    </message>
    <message>
        <source>%1 – unverified: read as quoted by others</source>
        <translation>%1 – non verificato: letto come citato da altri</translation>
    </message>
    <message>
        <source>%1 – unverified: from memory</source>
        <translation>%1 – non verificato: a memoria</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>pratica comune, nessuna fonte</translation>
    </message>
    <message>
        <source>This book is open elsewhere ({by}), so it can only be read here. Close it there and open it again.</source>
        <translation>Questo libro è aperto altrove ({by}), perciò qui si può solo leggere. Chiuderlo là e riaprirlo.</translation>
    </message>
    <message>
        <source>This book is open for reading only. To write in it, free the file&apos;s permissions and open it again.</source>
        <translation>Questo libro è aperto in sola lettura. Per scriverci, liberare i permessi del file e riaprirlo.</translation>
    </message>
    <message>
        <source>This book is damaged ({problem}) and is open for reading only. Back it up, then salvage what can be read into a new book.</source>
        <translation>Questo libro è danneggiato ({problem}) ed è aperto in sola lettura. Farne una copia, poi recuperare in un libro nuovo ciò che si legge.</translation>
    </message>
    <message>
        <source>This book lies on a network drive, where a break can lose the last entry. Keep it on this computer.</source>
        <translation>Questo libro sta su un disco di rete, dove un&apos;interruzione può perdere l&apos;ultima voce. Tenerlo su questo computer.</translation>
    </message>
    <message>
        <source>This book was brought up to date from version {from} to {to}. The copy from before is {backup}.</source>
        <translation>Questo libro è stato portato dalla versione {from} alla {to}. La copia di prima è {backup}.</translation>
    </message>
    <message>
        <source>The program or the computer stopped without closing this book. All finished entries are here.</source>
        <translation>Il programma o il computer si è fermato senza chiudere il libro. Tutte le voci finite sono qui.</translation>
    </message>
    <message>
        <source>{place}: the {quantity} stood at {value} for {lasted}. A room is never that still: check the sensor&apos;s battery and contact.</source>
        <translation>{place}: la lettura di {quantity} è rimasta ferma su {value} per {lasted}. Nessun locale è così fermo: controllare batteria e contatto del sensore.</translation>
    </message>
    <message>
        <source>{place}: the humidity jumped by {by} on {at} and stayed there, while the temperature did not. Was a battery changed, the sensor moved, or the room set to another humidity? A salt-bag check will tell.</source>
        <translation>{place}: l&apos;umidità è saltata di {by} il {at} e lì è rimasta, la temperatura no. È stata cambiata una batteria, spostato il sensore o regolato il locale su un&apos;altra umidità? Lo dirà una prova del sale in sacchetto.</translation>
    </message>
    <message>
        <source>{first} and {second} disagree over {hours} hours: {humidity_apart} of humidity apart. Check both over a salt slurry before you believe either.</source>
        <translation>{first} e {second} non concordano per {hours} ore: {humidity_apart} di umidità di differenza. Controllarli entrambi sulla poltiglia di sale prima di credere all&apos;uno o all&apos;altro.</translation>
    </message>
    <message>
        <source>{place} says {stated}, but the weight losses of {pieces} pieces speak for {implied} ({implied_low} to {implied_high}). Check the sensor.</source>
        <translation>{place} dice {stated}, ma i cali peso di {pieces} pezzi fanno pensare a {implied} (da {implied_low} a {implied_high}). Controllare il sensore.</translation>
    </message>
    <message>
        <source>{place}: the pieces give off {water_per_day} of water a day, more than the {capacity_per_day} it can carry out. Expect damp air and slow drying.</source>
        <translation>{place}: i pezzi cedono {water_per_day} di acqua al giorno, più dei {capacity_per_day} che può portare via. Aspettarsi aria umida e asciugatura lenta.</translation>
    </message>
    <message>
        <source>{place}: the pieces give off only {water_per_day} of water a day. With so little in it the air may dry their surface too fast: watch the humidity.</source>
        <translation>{place}: i pezzi cedono solo {water_per_day} di acqua al giorno. Con così poco dentro, l&apos;aria può asciugare troppo in fretta la superficie: sorvegliare l&apos;umidità.</translation>
    </message>
    <message>
        <source>{place}: {pieces} pieces for {places} places.</source>
        <translation>{place}: {pieces} pezzi per {places} posti.</translation>
    </message>
    <message>
        <source>{joining} wet pieces would hang with {nearly_dry} nearly dry ones: the water to carry out rises from {water_now} to {water_then} a day, and the dry ones would take some of it up. Hang them elsewhere, or a week apart.</source>
        <translation>{joining} pezzi bagnati starebbero con {nearly_dry} quasi asciutti: l&apos;acqua da portare via sale da {water_now} a {water_then} al giorno, e gli asciutti ne riprenderebbero una parte. Appenderli altrove, o a distanza di una settimana.</translation>
    </message>
    <message>
        <source>The day rules for this way of curing disagree: {shortest} to {longest}. Choose one and keep it with the batch.</source>
        <translation>Le regole a giorni per questo modo di salare non concordano: da {shortest} a {longest}. Sceglierne una e tenerla con la partita.</translation>
    </message>
    <message>
        <source>This day rule belongs to another way of curing. Rules by weight come from burying in salt, rules by thickness mostly from weighed cures.</source>
        <translation>Questa regola a giorni appartiene a un altro modo di salare. Le regole secondo il peso vengono dalla salagione sotto sale, quelle secondo lo spessore per lo più dalla salagione pesata.</translation>
    </message>
    <message>
        <source>The day rules ({shortest} to {longest}) lie outside what salt diffusion suggests ({p10} to {p90}, half-way {p50}).</source>
        <translation>Le regole a giorni (da {shortest} a {longest}) stanno fuori da ciò che suggerisce la diffusione del sale (da {p10} a {p90}, a metà {p50}).</translation>
    </message>
    <message>
        <source>{planned} is planned; diffusion suggests {p50} ({p10} to {p90}). The centre may get too little: give it longer or rest it cold afterwards.</source>
        <translation>In piano {planned}; la diffusione suggerisce {p50} (da {p10} a {p90}). Il centro può riceverne troppo poco: dare più tempo o far riposare al freddo dopo.</translation>
    </message>
    <message>
        <source>{planned} in more salt than it needs is longer than {p90}, when the piece passes {wanted}. Buried in salt, time is the dose.</source>
        <translation>{planned} in più sale del necessario supera {p90}, quando il pezzo oltrepassa {wanted}. Sotto sale la dose la fa il tempo.</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, warmer than {limit}. Move it to a colder place.</source>
        <translation>La salagione è a {temperature}, sopra {limit}. Spostarla in un posto più freddo.</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, colder than {limit}: salt moves slowly there, give it longer.</source>
        <translation>La salagione è a {temperature}, sotto {limit}: lì il sale si muove piano, dare più tempo.</translation>
    </message>
    <message>
        <source>Frozen for {paused}: the cure stood still and that time is added.</source>
        <translation>Congelato per {paused}: la salagione si è fermata e quel tempo si aggiunge.</translation>
    </message>
    <message>
        <source>At {temperature} the piece is frozen and the cure stands still. No end can be given until it is thawed.</source>
        <translation>A {temperature} il pezzo è congelato e la salagione è ferma. Non si può dare una fine finché non è scongelato.</translation>
    </message>
    <message>
        <source>Only the thickness is known; salt coming in at the ends is not counted. Enter width and length for a better figure.</source>
        <translation>È noto solo lo spessore; il sale che entra dalle estremità non è contato. Inserire larghezza e lunghezza per una cifra migliore.</translation>
    </message>
    <message>
        <source>With {fat} fat most salt goes into the lean, and more slowly than the figures say.</source>
        <translation>Con {fat} di grasso la maggior parte del sale va nel magro, e più piano di quanto dicano le cifre.</translation>
    </message>
    <message>
        <source>With skin all round no salt can get in. Take the skin off one side.</source>
        <translation>Con la cotenna tutto intorno il sale non entra. Togliere la cotenna da un lato.</translation>
    </message>
    <message>
        <source>{salt} is more than the water of the meat can hold ({most}). Ask for less.</source>
        <translation>{salt} è più di quanto l&apos;acqua della carne possa tenere ({most}). Chiederne meno.</translation>
    </message>
    <message>
        <source>The thickness must be between 1 mm and 500 mm.</source>
        <translation>Lo spessore deve stare fra 1 mm e 500 mm.</translation>
    </message>
    <message>
        <source>Width and length must be at least the thickness, which is the shortest side, and at most 2 m.</source>
        <translation>Larghezza e lunghezza devono essere almeno lo spessore, che è il lato più corto, e al massimo 2 m.</translation>
    </message>
    <message>
        <source>The salt must be above 0 and at most 20 % of the meat.</source>
        <translation>Il sale deve essere sopra 0 e al massimo il 20 % della carne.</translation>
    </message>
    <message>
        <source>The temperature of a cure must be between -40 and 45 °C.</source>
        <translation>La temperatura di una salagione deve stare fra -40 e 45 °C.</translation>
    </message>
    <message>
        <source>The liquid around the meat must be between none and 20 times the meat.</source>
        <translation>Il liquido intorno alla carne deve stare fra zero e 20 volte la carne.</translation>
    </message>
    <message>
        <source>The fat must be between 0 and 95 %.</source>
        <translation>Il grasso deve stare fra 0 e 95 %.</translation>
    </message>
    <message>
        <source>&quot;Even&quot; must mean between 50 and 99 % of the mean at the centre.</source>
        <translation>«Uniforme» deve voler dire fra 50 e 99 % della media al centro.</translation>
    </message>
    <message>
        <source>The planned time must be between none and ten years.</source>
        <translation>Il tempo pianificato deve stare fra zero e dieci anni.</translation>
    </message>
    <message>
        <source>The day rule &quot;{place}&quot; is not known. Choose one from the list.</source>
        <translation>La regola a giorni «{place}» non è nota. Sceglierne una dall&apos;elenco.</translation>
    </message>
    <message>
        <source>{loss} in {took}, {per_day} a day, is fast (up to {usual_most} a day is usual). The inside may be behind the outside: cut one or rest it and weigh again.</source>
        <translation>{loss} in {took}, {per_day} al giorno, è veloce (di solito fino a {usual_most} al giorno). L&apos;interno può essere in ritardo sull&apos;esterno: tagliarne uno, o far riposare e pesare di nuovo.</translation>
    </message>
    <message>
        <source>The target is reached ({loss}), but the centre feels soft. Rest it so that it evens out, and look again.</source>
        <translation>L&apos;obiettivo è raggiunto ({loss}), ma il centro è morbido al tatto. Farlo riposare perché si uniformi, e riguardare.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day). With {fat} fat there is little water left to lose: a fatty piece can be as dry as it gets below its target.</source>
        <translation>Quasi fermo a {loss} ({per_day} al giorno). Con {fat} di grasso resta poca acqua da perdere: un pezzo grasso può fermarsi sotto l&apos;obiettivo, già asciutto quanto può.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day), though the piece is lean. Ask the air first: humidity {humidity}. In wet air it stops before it is dry.</source>
        <translation>Quasi fermo a {loss} ({per_day} al giorno), benché il pezzo sia magro. Guardare prima l&apos;aria: umidità {humidity}. In aria umida si ferma prima di essere asciutto.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day) with a soft centre: a dry rim may hold the water in. Rest it in a bag, then dry on in wetter air.</source>
        <translation>Quasi fermo a {loss} ({per_day} al giorno) con il centro morbido: una crosta secca può trattenere l&apos;acqua. Far riposare in sacchetto, poi asciugare ancora in aria più umida.</translation>
    </message>
    <message>
        <source>The loss levels off near {levels_off}; the target of {target} is not in sight in this air. Change the air or the target.</source>
        <translation>Il calo si ferma verso {levels_off}; l&apos;obiettivo di {target} non è in vista in quest&apos;aria. Cambiare l&apos;aria o l&apos;obiettivo.</translation>
    </message>
    <message>
        <source>It weighs {net}, more than at its start ({start}). Was it washed, coated or dressed? Enter that, or correct the weighing.</source>
        <translation>Pesa {net}, più che all&apos;inizio ({start}). È stato lavato, rivestito o insaccato? Inserirlo, o correggere la pesata.</translation>
    </message>
    <message>
        <source>{net} is less than the dry matter of {start} at the start. Look for a wrong weight, a tare or a cut that was not entered.</source>
        <translation>{net} è meno della sostanza secca di {start} all&apos;inizio. Cercare un peso sbagliato, una tara o un taglio non inserito.</translation>
    </message>
    <message>
        <source>The raw weight is not known; {start} is reckoned from a later weight and a usual loss in the cure.</source>
        <translation>Il peso fresco non è noto; {start} è calcolato da un peso successivo e da un calo abituale in salagione.</translation>
    </message>
    <message>
        <source>Buried in salt, the amount put on says little about what went in. Salt and water activity are guesses here: have them measured.</source>
        <translation>Sotto sale la quantità messa dice poco di quanto è entrato. Sale e attività dell&apos;acqua qui sono solo ipotesi: farli misurare.</translation>
    </message>
    <message>
        <source>The water activity is an estimate from weights and salt. A rule that asks for it asks for a measurement.</source>
        <translation>L&apos;attività dell&apos;acqua è una stima da pesi e sale. Una norma che la chiede vuole una misura.</translation>
    </message>
    <message>
        <source>Measured {measured}, estimated {low} to {high}. Look at the sample&apos;s place, the instrument&apos;s check, the salt and the fat entered.</source>
        <translation>Misurato {measured}, stimato da {low} a {high}. Guardare il punto del campione, il controllo dello strumento, il sale e il grasso inseriti.</translation>
    </message>
    <message>
        <source>The weighings were not in order of time; they were sorted.</source>
        <translation>Le pesate non erano in ordine di tempo; sono state ordinate.</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to see the evidence.</source>
        <translation>Il valore di {place} non è possibile. Correggerlo per vedere i riscontri.</translation>
    </message>
    <message>
        <source>At {temperature} the piece spends about {time} between {low} and {high}, where microbes grow.</source>
        <translation>A {temperature} il pezzo passa circa {time} fra {low} e {high}, dove i microbi crescono.</translation>
    </message>
    <message>
        <source>About {time} in this warmth is longer than the {guide} that a guide (for fish) allows ready-to-eat food.</source>
        <translation>Circa {time} a questo calore è più dei {guide} che una guida (per il pesce) concede ad alimenti pronti al consumo.</translation>
    </message>
    <message>
        <source>The piece may still be wetter than a water activity of {limit}. Dry it further in the cold before warming it.</source>
        <translation>Il pezzo può essere ancora più umido di un&apos;attività dell&apos;acqua di {limit}. Asciugarlo ancora al freddo prima di scaldarlo.</translation>
    </message>
    <message>
        <source>In warm air of {humidity} a thick piece can dry hard outside and stay wet inside.</source>
        <translation>In aria calda a {humidity} un pezzo spesso può fare la crosta fuori e restare bagnato dentro.</translation>
    </message>
    <message>
        <source>Warming at the end does not undo a toxin that Staphylococcus aureus has left.</source>
        <translation>Scaldare alla fine non annulla una tossina lasciata da Staphylococcus aureus.</translation>
    </message>
    <message>
        <source>At {temperature} the piece begins to cook rather than dry.</source>
        <translation>A {temperature} il pezzo comincia a cuocere più che ad asciugare.</translation>
    </message>
    <message>
        <source>{target} is more than the water left can give; it levels off near {levels_off}.</source>
        <translation>{target} è più di quanto può dare l&apos;acqua rimasta; si ferma verso {levels_off}.</translation>
    </message>
    <message>
        <source>The loss wanted is already reached ({loss}).</source>
        <translation>Il calo voluto è già raggiunto ({loss}).</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to get an answer.</source>
        <translation>Il valore di {place} non è possibile. Correggerlo per avere una risposta.</translation>
    </message>
    <message>
        <source>This is more salt than the water can dissolve ({most} of the water phase).</source>
        <translation>È più sale di quanto l&apos;acqua possa sciogliere ({most} della fase acquosa).</translation>
    </message>
    <message>
        <source>The wet end of the estimate is above {limit}, the lowest water activity at which {name} grows.</source>
        <translation>L&apos;estremo umido della stima è sopra {limit}, la più bassa attività dell&apos;acqua a cui {name} cresce.</translation>
    </message>
    <message>
        <source>The weighing of {at} lies off the curve by {off_by}. Was the tare right, the hook on the scale, the scale level? Weigh again or correct the entry.</source>
        <translation>La pesata del {at} sta fuori dalla curva di {off_by}. La tara era giusta, il gancio sulla bilancia, la bilancia in piano? Pesare di nuovo o correggere la voce.</translation>
    </message>
    <message>
        <source>{pieces} pieces weighed on {at} stepped by {shift} the same way. That points to the scale or its zero, not to the meat: check it with a known weight.</source>
        <translation>{pieces} pezzi pesati il {at} hanno fatto un salto di {shift} nello stesso verso. Questo fa pensare alla bilancia o al suo zero, non alla carne: controllarla con un peso noto.</translation>
    </message>
    <message>
        <source>The loss has nearly stopped ({rate_per_day} a day). A firm piece may be finished or fat; a soft one may have dried hard outside; a wet chamber slows all.</source>
        <translation>Il calo si è quasi fermato ({rate_per_day} al giorno). Un pezzo sodo può essere finito o grasso; uno morbido può aver fatto la crosta; una cella umida rallenta tutti.</translation>
    </message>
    <message>
        <source>It lost {loss} in {over}: the outside is drying faster than the inside can follow. Look for a hard rim; more humidity or a rest in a bag evens it out.</source>
        <translation>Ha perso {loss} in {over}: l&apos;esterno asciuga più in fretta di quanto l&apos;interno possa seguire. Cercare una crosta dura; più umidità o un riposo in sacchetto riportano l&apos;equilibrio.</translation>
    </message>
    <message>
        <source>It weighs {gain} more than before ({at}). Was it washed, coated or dressed? Enter that as an event, or correct the weighing.</source>
        <translation>Pesa {gain} più di prima ({at}). È stato lavato, rivestito o insaccato? Inserirlo come evento, o correggere la pesata.</translation>
    </message>
    <message>
        <source>The losses speak for about {implied} in the air, the log says {logged}. Check the hygrometer over a salt slurry.</source>
        <translation>I cali fanno pensare a circa {implied} nell&apos;aria, il registro dice {logged}. Controllare l&apos;igrometro sulla poltiglia di sale.</translation>
    </message>
    <message>
        <source>The target of {target} lies beyond where this piece levels off ({levels_off}). Drier air or a lower target would change that.</source>
        <translation>L&apos;obiettivo di {target} sta oltre il punto in cui questo pezzo si ferma ({levels_off}). Aria più secca o un obiettivo più basso cambierebbero le cose.</translation>
    </message>
    <message>
        <source>The weight that the target counts from ({reference}) was never taken. Enter it, or count from another weight.</source>
        <translation>Il peso da cui l&apos;obiettivo conta ({reference}) non è mai stato preso. Inserirlo, o contare da un altro peso.</translation>
    </message>
    <message>
        <source>An event ({event}, {at}) has no weights, so the start could not be shared out. Enter the net weight before and after.</source>
        <translation>Un evento ({event}, {at}) non ha pesi, perciò l&apos;inizio non si è potuto ripartire. Inserire il peso netto prima e dopo.</translation>
    </message>
    <message>
        <source>The weighing of {at} has no tare; the last known one was taken. Correct it if the casing or net changed.</source>
        <translation>La pesata del {at} non ha tara; è stata presa l&apos;ultima nota. Correggerla se budello o rete sono cambiati.</translation>
    </message>
    <message>
        <source>{place} has no code. Give it two or three letters or digits.</source>
        <translation>{place} non ha sigla. Assegnarne una di due o tre lettere o cifre.</translation>
    </message>
    <message>
        <source>The code {place} is taken already. Choose another.</source>
        <translation>La sigla {place} è già presa. Sceglierne un&apos;altra.</translation>
    </message>
    <message>
        <source>The code {place} stands twice. Give each its own.</source>
        <translation>La sigla {place} compare due volte. Dare a ciascuno la propria.</translation>
    </message>
    <message>
        <source>{place} has no name. Enter one.</source>
        <translation>{place} non ha nome. Inserirne uno.</translation>
    </message>
    <message>
        <source>The name of {place} is taken already. Choose another.</source>
        <translation>Il nome di {place} è già preso. Sceglierne un altro.</translation>
    </message>
    <message>
        <source>Say in a few words why; the reason is kept with the change.</source>
        <translation>Dire in poche parole perché; il motivo resta con la modifica.</translation>
    </message>
    <message>
        <source>Nothing is entered yet.</source>
        <translation>Non è ancora inserito niente.</translation>
    </message>
    <message>
        <source>{place} is not a number. Type digits.</source>
        <translation>{place} non è un numero. Digitare cifre.</translation>
    </message>
    <message>
        <source>{place} lies in the future. Check the day and time.</source>
        <translation>{place} è nel futuro. Controllare giorno e ora.</translation>
    </message>
    <message>
        <source>The weight of {place} must be more than nothing.</source>
        <translation>Il peso di {place} deve essere maggiore di zero.</translation>
    </message>
    <message>
        <source>The weight of {place} is below nothing. Check it.</source>
        <translation>Il peso di {place} è sotto zero. Controllarlo.</translation>
    </message>
    <message>
        <source>The weight of {place} is far outside what a piece weighs. Check the unit.</source>
        <translation>Il peso di {place} è molto fuori da quanto pesa un pezzo. Controllare l&apos;unità.</translation>
    </message>
    <message>
        <source>The tare of {place} is as heavy as what is on the scale. Check both.</source>
        <translation>La tara di {place} pesa quanto ciò che è sulla bilancia. Controllare entrambe.</translation>
    </message>
    <message>
        <source>The thickness of {place} must be more than nothing.</source>
        <translation>Lo spessore di {place} deve essere maggiore di zero.</translation>
    </message>
    <message>
        <source>The share of {place} must lie between 0 and 100 %.</source>
        <translation>La parte di {place} deve stare fra 0 e 100 %.</translation>
    </message>
    <message>
        <source>The loss aimed for of {place} must lie between 0 and 100 %.</source>
        <translation>Il calo voluto di {place} deve stare fra 0 e 100 %.</translation>
    </message>
    <message>
        <source>A score goes from 2 too little to 2 too much.</source>
        <translation>Il voto va da 2 in meno (troppo poco) a 2 in più (troppo).</translation>
    </message>
    <message>
        <source>The count of {place} is below nothing.</source>
        <translation>Il numero di {place} è sotto zero.</translation>
    </message>
    <message>
        <source>The count of {place} must be at least one.</source>
        <translation>Il numero di {place} deve essere almeno uno.</translation>
    </message>
    <message>
        <source>The price of {place} is below nothing.</source>
        <translation>Il prezzo di {place} è sotto zero.</translation>
    </message>
    <message>
        <source>The lower end of {place} lies above its upper end. Swap them.</source>
        <translation>L&apos;estremo basso di {place} sta sopra quello alto. Scambiarli.</translation>
    </message>
    <message>
        <source>{place} ends before it starts. Check the days.</source>
        <translation>{place} finisce prima di cominciare. Controllare i giorni.</translation>
    </message>
    <message>
        <source>The text of {place} is too long. Shorten it.</source>
        <translation>Il testo di {place} è troppo lungo. Accorciarlo.</translation>
    </message>
    <message>
        <source>The photo of {place} is too large. Take a smaller copy.</source>
        <translation>La foto di {place} è troppo grande. Prendere una copia più piccola.</translation>
    </message>
    <message>
        <source>The recipe of {place} is empty.</source>
        <translation>La ricetta di {place} è vuota.</translation>
    </message>
    <message>
        <source>The weight that {place} counts from cannot be known at this point.</source>
        <translation>Il peso da cui {place} conta non può essere noto a questo punto.</translation>
    </message>
    <message>
        <source>Name at least two pieces.</source>
        <translation>Indicare almeno due pezzi.</translation>
    </message>
    <message>
        <source>The pieces belong to different batches. Weigh only pieces of one batch as one.</source>
        <translation>I pezzi appartengono a partite diverse. Pesare insieme solo pezzi di una partita.</translation>
    </message>
    <message>
        <source>{place} was discarded already.</source>
        <translation>{place} è già stato scartato.</translation>
    </message>
    <message>
        <source>{place} was cut or weighed with others and carries on under another code. Open that piece.</source>
        <translation>{place} è stato tagliato o pesato con altri e continua sotto un&apos;altra sigla. Aprire quel pezzo.</translation>
    </message>
    <message>
        <source>Cutting and weighing as one have forms of their own.</source>
        <translation>Tagliare e pesare insieme hanno moduli propri.</translation>
    </message>
    <message>
        <source>{place} is in the book already. Correct it instead.</source>
        <translation>{place} è già nel libro. Correggerlo invece.</translation>
    </message>
    <message>
        <source>The stage {place} has started, so it stays as it is.</source>
        <translation>La fase {place} è iniziata, perciò resta com&apos;è.</translation>
    </message>
    <message>
        <source>The stage {place} has ended already.</source>
        <translation>La fase {place} è già terminata.</translation>
    </message>
    <message>
        <source>The stage {place} belongs to another batch.</source>
        <translation>La fase {place} appartiene a un&apos;altra partita.</translation>
    </message>
    <message>
        <source>That is more than is left in {place}. Check the amount, or count the pack again.</source>
        <translation>È più di quanto resta in {place}. Controllare la quantità, o ricontare la confezione.</translation>
    </message>
    <message>
        <source>{place} refers to itself.</source>
        <translation>{place} rimanda a sé stesso.</translation>
    </message>
    <message>
        <source>This is not a recipe file: it is no JSON text.</source>
        <translation>Questo non è un file di ricetta: non è testo JSON.</translation>
    </message>
    <message>
        <source>The recipe says version &quot;{found}&quot;; this program reads {wanted}. Was it written by a newer Saltloft?</source>
        <translation>La ricetta dice versione «{found}»; questo programma legge {wanted}. L&apos;ha scritta un Saltloft più recente?</translation>
    </message>
    <message>
        <source>{place} is missing: {wanted}.</source>
        <translation>{place} manca: {wanted}.</translation>
    </message>
    <message>
        <source>{place} means nothing here. Known are: {wanted}. Mend the spelling, so that nothing is left out.</source>
        <translation>{place} qui non significa niente. Si conoscono: {wanted}. Correggere la grafia, perché niente resti fuori.</translation>
    </message>
    <message>
        <source>{place} is {found}; needed is: {wanted}.</source>
        <translation>{place} è {found}; serve: {wanted}.</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;; known are: {wanted}.</source>
        <translation>{place} dice «{found}»; si conoscono: {wanted}.</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;, which cannot be read as a quantity ({reason}). Write it like this: {wanted}.</source>
        <translation>{place} dice «{found}», che non si legge come quantità ({reason}). Scriverlo così: {wanted}.</translation>
    </message>
    <message>
        <source>The recipe has no ingredients yet. Add the first.</source>
        <translation>La ricetta non ha ancora ingredienti. Aggiungere il primo.</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is not in the catalogue. Choose another, or describe your own from its label.</source>
        <translation>«{found}» non è nel catalogo. Sceglierne un altro, o descrivere il proprio dall&apos;etichetta.</translation>
    </message>
    <message>
        <source>{ingredient} stands in the recipe twice. Both count: is that meant?</source>
        <translation>{ingredient} compare due volte nella ricetta. Contano entrambe: è voluto?</translation>
    </message>
    <message>
        <source>Two ingredients of your own share the id {found}. Rename one.</source>
        <translation>Due ingredienti propri hanno lo stesso codice {found}. Rinominarne uno.</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the nitrite and nitrate from its label. Curing salts differ tenfold.</source>
        <translation>{ingredient}: che titolo ha? Inserire nitrito e nitrato dall&apos;etichetta. I sali nitritati differiscono di dieci volte.</translation>
    </message>
    <message>
        <source>{ingredient}: a strength of {found} looks like a proportion typed as percent. 0.0625 on a sheet is 6.25 %. Enter what the label says.</source>
        <translation>{ingredient}: un titolo di {found} sembra una proporzione scritta come percento. 0,0625 su un foglio è 6,25 %. Inserire ciò che dice l&apos;etichetta.</translation>
    </message>
    <message>
        <source>{ingredient}: no curing salt is sold at {found}; labels run from {low} to {high}. Read the label again.</source>
        <translation>{ingredient}: nessun sale nitritato si vende a {found}; le etichette vanno da {low} a {high}. Rileggere l&apos;etichetta.</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {strength} nitrite, from its name only. Enter the strength from the label in your hand.</source>
        <translation>{ingredient}: calcolato con {strength} di nitrito, solo dal nome. Inserire il titolo dall&apos;etichetta che si ha in mano.</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the percent by volume from the label.</source>
        <translation>{ingredient}: che gradazione ha? Inserire il percento in volume dall&apos;etichetta.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is stronger than distilling goes. Is it proof?</source>
        <translation>{ingredient}: {found} % in volume è più forte di quanto arrivi la distillazione. È «proof»?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is rare. If the label says proof, enter it as proof with its country.</source>
        <translation>{ingredient}: {found} % in volume è raro. Se l&apos;etichetta dice «proof», inserirlo come proof con il suo paese.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is a spirit&apos;s strength, not a wine&apos;s.</source>
        <translation>{ingredient}: {found} % in volume è la gradazione di un distillato, non di un vino.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} is more than pure salt holds. Milligrams taken for grams?</source>
        <translation>{ingredient}: {found} è più di quanto contiene il sale puro. Milligrammi presi per grammi?</translation>
    </message>
    <message>
        <source>{ingredient}: how salty is it? Enter salt or sodium from its label.</source>
        <translation>{ingredient}: quanto è salato? Inserire sale o sodio dall&apos;etichetta.</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {low} to {high} salt. Enter the sodium from the label to narrow that.</source>
        <translation>{ingredient}: calcolato con sale da {low} a {high}. Inserire il sodio dall&apos;etichetta per restringere.</translation>
    </message>
    <message>
        <source>{ingredient}: the parts add up to {found}. Check the label&apos;s figures.</source>
        <translation>{ingredient}: le parti danno insieme {found}. Controllare le cifre dell&apos;etichetta.</translation>
    </message>
    <message>
        <source>{ingredient}: nothing in a kitchen weighs {found} g to the millilitre.</source>
        <translation>{ingredient}: niente in una cucina pesa {found} g al millilitro.</translation>
    </message>
    <message>
        <source>{ingredient}: no density is known, so a volume cannot be turned into weight. Please weigh it.</source>
        <translation>{ingredient}: la densità non è nota, perciò un volume non si può convertire in peso. Pesarlo.</translation>
    </message>
    <message>
        <source>{ingredient}: its label counts by volume. Enter its density, or weigh 100 mL of it.</source>
        <translation>{ingredient}: l&apos;etichetta conta a volume. Inserire la densità, o pesarne 100 mL.</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is no measure with a known size. Spoons differ by country: choose one from the list, or weigh.</source>
        <translation>«{found}» non è una misura di grandezza nota. I cucchiai differiscono da paese a paese: sceglierne uno dall&apos;elenco, o pesare.</translation>
    </message>
    <message>
        <source>{ingredient}: the amount is nothing. Enter it or take the line out.</source>
        <translation>{ingredient}: la quantità è zero. Inserirla o togliere la riga.</translation>
    </message>
    <message>
        <source>There is no water to count from. Add the water of the brine.</source>
        <translation>Non c&apos;è acqua da cui contare. Aggiungere l&apos;acqua della salamoia.</translation>
    </message>
    <message>
        <source>Water cannot be a share of itself. Enter it by weight, by volume or as a share of the meat.</source>
        <translation>L&apos;acqua non può essere una parte di sé stessa. Inserirla a peso, a volume o come parte della carne.</translation>
    </message>
    <message>
        <source>Some amounts are fixed and stay the same for any weight of meat. Say for how much meat they were written, and they follow.</source>
        <translation>Alcune quantità sono fisse e restano uguali per qualsiasi peso di carne. Dire per quanta carne sono state scritte, e seguiranno.</translation>
    </message>
    <message>
        <source>How much pickle is pumped in? Enter it as a share of the meat.</source>
        <translation>Quanta salamoia si inietta? Inserirla come parte della carne.</translation>
    </message>
    <message>
        <source>How much pickle does the meat take up? Weigh a piece before and after, or use the method at equilibrium.</source>
        <translation>Quanta salamoia assorbe la carne? Pesare un pezzo prima e dopo, o usare il metodo all&apos;equilibrio.</translation>
    </message>
    <message>
        <source>{found} looks like a proportion typed as percent: 0.1 on a sheet is 10 %.</source>
        <translation>{found} sembra una proporzione scritta come percento: 0,1 su un foglio è 10 %.</translation>
    </message>
    <message>
        <source>Meat does not take up {found} of its weight.</source>
        <translation>La carne non assorbe {found} del suo peso.</translation>
    </message>
    <message>
        <source>{found} of the meat&apos;s weight is a lot of pickle.</source>
        <translation>{found} del peso della carne è molta salamoia.</translation>
    </message>
    <message>
        <source>Buried in salt, what goes on is known and what goes in is not: the doses here are what you put on.</source>
        <translation>Sotto sale, ciò che si mette è noto e ciò che entra no: le dosi qui sono quelle messe.</translation>
    </message>
    <message>
        <source>The rubs add up to {found}, not to the whole.</source>
        <translation>Le riprese di sale danno insieme {found}, non il totale.</translation>
    </message>
    <message>
        <source>The rubs must follow each other in time.</source>
        <translation>Le riprese di sale devono seguirsi nel tempo.</translation>
    </message>
    <message>
        <source>{place}: there is no such rub in the recipe.</source>
        <translation>{place}: questa ripresa di sale nella ricetta non c&apos;è.</translation>
    </message>
    <message>
        <source>Raw meat seldom holds {found} of water.</source>
        <translation>La carne fresca di rado contiene {found} di acqua.</translation>
    </message>
    <message>
        <source>Skin is seldom {found} of a piece.</source>
        <translation>La cotenna di rado è {found} di un pezzo.</translation>
    </message>
    <message>
        <source>No meat loses {found} of its weight by drying.</source>
        <translation>Nessuna carne perde asciugando {found} del suo peso.</translation>
    </message>
    <message>
        <source>Enter the weight of the meat.</source>
        <translation>Inserire il peso della carne.</translation>
    </message>
    <message>
        <source>A piece without a weight cannot be dosed.</source>
        <translation>Un pezzo senza peso non si può dosare.</translation>
    </message>
    <message>
        <source>A piece of {found}: grams, or kilograms?</source>
        <translation>Un pezzo di {found}: grammi o chilogrammi?</translation>
    </message>
    <message>
        <source>A piece of {found}: kilograms, or grams?</source>
        <translation>Un pezzo di {found}: chilogrammi o grammi?</translation>
    </message>
    <message>
        <source>{amount} of {ingredient} on a {step} scale is wrong by up to {error}. Use a finer scale, or blend a larger batch first.</source>
        <translation>{amount} di {ingredient} su una bilancia da {step} sbaglia fino a {error}. Usare una bilancia più fine, o miscelare prima una quantità maggiore.</translation>
    </message>
    <message>
        <source>On a {step} scale a piece&apos;s cure would show as nothing. Use a finer scale, or blend a larger batch first.</source>
        <translation>Su una bilancia da {step} il sale nitritato di un pezzo non si vedrebbe. Usare una bilancia più fine, o miscelare prima una quantità maggiore.</translation>
    </message>
    <message>
        <source>Your wish for {what} ({asked}) cannot be met with what you hold: it comes to {found}, short by {by}.</source>
        <translation>Il desiderio per {what} ({asked}) non si può soddisfare con le righe bloccate: si arriva a {found}, mancano {by}.</translation>
    </message>
    <message>
        <source>What you hold brings more {what} than the limit of {asked}: {found}.</source>
        <translation>Le righe bloccate portano più {what} del limite di {asked}: {found}.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about ten times what is usual. A slipped decimal?</source>
        <translation>{ingredient}: {found} della carne è circa dieci volte il solito. Una virgola spostata?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about a tenth of what is usual. A slipped decimal?</source>
        <translation>{ingredient}: {found} della carne è circa un decimo del solito. Una virgola spostata?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} looks like a proportion typed as percent. 0.025 on a sheet is 2.5 %.</source>
        <translation>{ingredient}: {found} sembra una proporzione scritta come percento. 0,025 su un foglio è 2,5 %.</translation>
    </message>
    <message>
        <source>{ingredient} at {found} of the meat: that is an amount for salt, not for a strong curing salt. It would be {nitrite} nitrite.</source>
        <translation>{ingredient} a {found} della carne: è una quantità da sale, non da sale nitritato forte. Sarebbero {nitrite} di nitrito.</translation>
    </message>
    <message>
        <source>{ingredient}: with tablespoons the dose is {found}. Teaspoons would be usual. Please weigh it.</source>
        <translation>{ingredient}: a cucchiai la dose è {found}. Di solito si usano cucchiaini. Pesarlo.</translation>
    </message>
    <message>
        <source>{ingredient} is measured by the spoon. Spoons differ by a quarter: weigh it.</source>
        <translation>{ingredient} è misurato a cucchiai. I cucchiai differiscono di un quarto: pesarlo.</translation>
    </message>
    <message>
        <source>{ingredient} is undiluted. A gram too much is a poisonous dose: a ready-mixed curing salt forgives more.</source>
        <translation>{ingredient} non è diluito. Un grammo di troppo è una dose velenosa: un sale nitritato già miscelato perdona di più.</translation>
    </message>
    <message>
        <source>{ingredient} holds {strength} nitrite, so this gives {found} only. Is the amount meant for a strong curing salt?</source>
        <translation>{ingredient} contiene {strength} di nitrito, perciò dà solo {found}. La quantità era pensata per un sale nitritato forte?</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>Il nitrito arriva a {found}. Nessun limite qui raccolto per alcun prodotto ammette più di {limit}.</translation>
    </message>
    <message>
        <source>Nitrate comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>Il nitrato arriva a {found}. Nessun limite qui raccolto per alcun prodotto ammette più di {limit}.</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}; above {limit} is allowed for few products. Choose the limits that apply to you.</source>
        <translation>Il nitrito arriva a {found}; sopra {limit} è ammesso per pochi prodotti. Scegliere i limiti che valgono per sé.</translation>
    </message>
    <message>
        <source>There is no nitrite or nitrate in this recipe.</source>
        <translation>In questa ricetta non c&apos;è né nitrito né nitrato.</translation>
    </message>
    <message>
        <source>No limits are chosen, so the dose is checked against none. Choose the ones that apply to you.</source>
        <translation>Nessun limite è scelto, perciò la dose non si confronta con niente. Scegliere quelli che valgono per sé.</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; whole muscle is seldom cured with less than {limit} (common practice).</source>
        <translation>Il sale arriva a {found} della carne; i pezzi interi di rado si salano con meno di {limit} (pratica comune).</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; above {limit} few people eat it (common practice).</source>
        <translation>Il sale arriva a {found} della carne; sopra {limit} pochi lo mangiano (pratica comune).</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat. With weighed salt that is a slip; for burying in salt choose that method.</source>
        <translation>Il sale arriva a {found} della carne. Con il sale pesato è una svista; per la salagione sotto sale scegliere quel metodo.</translation>
    </message>
    <message>
        <source>Sugar comes to {found} of the meat; more than {limit} is unusual.</source>
        <translation>Lo zucchero arriva a {found} della carne; più di {limit} è insolito.</translation>
    </message>
    <message>
        <source>Accelerator comes to {found}; usual is about half a gram to the kilogram.</source>
        <translation>Il coadiuvante del colore arriva a {found}; di solito è circa mezzo grammo al chilogrammo.</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, above the limit of {limit}.</source>
        <translation>{set}: {substance} arriva a {found}, sopra il limite di {limit}.</translation>
    </message>
    <message>
        <source>{set}: {substance} is not permitted; the recipe brings {found}.</source>
        <translation>{set}: {substance} non è ammesso; la ricetta ne porta {found}.</translation>
    </message>
    <message>
        <source>{set}: {substance} keeps the limit of {limit}, but with the spread of what you measure it may come to {found}.</source>
        <translation>{set}: {substance} rispetta il limite di {limit}, ma con lo scarto di ciò che si misura può arrivare a {found}.</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, below the minimum of {limit}.</source>
        <translation>{set}: {substance} arriva a {found}, sotto il minimo di {limit}.</translation>
    </message>
    <message>
        <source>{set}: the limit of {limit} for {substance} is on what a laboratory finds in the product. No sum can show it; {found} goes in.</source>
        <translation>{set}: il limite di {limit} per {substance} vale per ciò che un laboratorio trova nel prodotto. Nessun calcolo può mostrarlo; ne entrano {found}.</translation>
    </message>
    <message>
        <source>{set}: the limit for {substance} is on the finished product. Enter the expected loss, or the dose is judged too low.</source>
        <translation>{set}: il limite per {substance} vale sul prodotto finito. Inserire il calo atteso, o la dose è giudicata troppo bassa.</translation>
    </message>
    <message>
        <source>{set}: unverified. The issuer&apos;s own text was not read for all of it.</source>
        <translation>{set}: non verificato. Il testo dell&apos;ente non è stato letto per intero.</translation>
    </message>
    <message>
        <source>{set}: not in force today.</source>
        <translation>{set}: oggi non in vigore.</translation>
    </message>
    <message>
        <source>{set}: made for another way of curing than this recipe&apos;s.</source>
        <translation>{set}: fatto per un modo di salare diverso da quello di questa ricetta.</translation>
    </message>
    <message>
        <source>There are no limits called &quot;{found}&quot;. Choose from the list.</source>
        <translation>Limiti di nome «{found}» non ce ne sono. Scegliere dall&apos;elenco.</translation>
    </message>
    <message>
        <source>Skin on: {share} of the weight is taken off before the sum.</source>
        <translation>Con cotenna: {share} del peso si toglie prima del calcolo.</translation>
    </message>
    <message>
        <source>No piece is entered: the days are for the usual one.</source>
        <translation>Nessun pezzo è inserito: i giorni valgono per quello abituale.</translation>
    </message>
    <message>
        <source>The weight is not entered: {weight} is assumed.</source>
        <translation>Il peso non è inserito: si presume {weight}.</translation>
    </message>
    <message>
        <source>The thickness is not entered: {thickness_mm} mm is assumed.</source>
        <translation>Lo spessore non è inserito: si presumono {thickness_mm} mm.</translation>
    </message>
    <message>
        <source>Nothing says how long “{place}” takes: it is planned as no time at all. Enter a time for it.</source>
        <translation>Niente dice quanto dura «{place}»: è pianificata senza tempo. Inserire un tempo.</translation>
    </message>
    <message>
        <source>“{place}” is made longer: the rule asks for {needed} in all, and the stages came to {days}.</source>
        <translation>«{place}» è allungata: la regola chiede in tutto {needed}, e le fasi arrivavano a {days}.</translation>
    </message>
    <message>
        <source>The day rule of “{place}” belongs to another way of salting: days per kilogram are for burying in salt or for brine, days per centimetre for a weighed cure.</source>
        <translation>La regola a giorni di «{place}» appartiene a un altro modo di salare: i giorni al chilogrammo valgono per la salagione sotto sale o per la salamoia, i giorni al centimetro per la salagione pesata.</translation>
    </message>
    <message>
        <source>“{place}” has {days}, and its rule asks for {needed}. Give it the time.</source>
        <translation>«{place}» ha {days}, e la sua regola chiede {needed}. Darle il tempo.</translation>
    </message>
    <message>
        <source>The day lies in the past.</source>
        <translation>Il giorno è già passato.</translation>
    </message>
    <message>
        <source>It needs {days_needed} days and there are {days_available}: {shortfall} too few.</source>
        <translation>Servono {days_needed} giorni e ce ne sono {days_available}: {shortfall} di meno.</translation>
    </message>
    <message>
        <source>“{place}” takes {days} days, and cannot take less.</source>
        <translation>«{place}» dura {days} giorni, e meno non può.</translation>
    </message>
    <message>
        <source>Nothing says when “{place}” ends or how long it usually takes.</source>
        <translation>Niente dice quando «{place}» finisce o quanto dura di solito.</translation>
    </message>
    <message>
        <source>“{place}” repeats with more stages than follow it.</source>
        <translation>«{place}» si ripete con più fasi di quante la seguono.</translation>
    </message>
    <message>
        <source>The number of rounds of “{place}” lies outside its own bounds.</source>
        <translation>Il numero di giri di «{place}» sta fuori dai suoi limiti.</translation>
    </message>
    <message>
        <source>“{place}” repeats inside another repeat, which cannot be planned.</source>
        <translation>«{place}» si ripete dentro un&apos;altra ripetizione, e non si può pianificare.</translation>
    </message>
    <message>
        <source>“{place}” shares a room with a stage that is not in the plan.</source>
        <translation>«{place}» divide il locale con una fase che non è nel piano.</translation>
    </message>
    <message>
        <source>A minimum names the stage “{place}”, which is not in the plan.</source>
        <translation>Un minimo nomina la fase «{place}», che non è nel piano.</translation>
    </message>
    <message>
        <source>Two stages are called “{place}”.</source>
        <translation>Due fasi si chiamano «{place}».</translation>
    </message>
    <message>
        <source>The plan has no stage that salts.</source>
        <translation>Il piano non ha una fase che sala.</translation>
    </message>
    <message>
        <source>{on_scale} is not more than the tare of {tare}. Weigh again.</source>
        <translation>{on_scale} non è più della tara di {tare}. Pesare di nuovo.</translation>
    </message>
    <message>
        <source>Last time it was {last}: is {on_scale} a slip of the decimal sign?</source>
        <translation>L&apos;ultima volta era {last}: {on_scale} è una virgola spostata?</translation>
    </message>
    <message>
        <source>{on_scale} was not expected: between {low} and {high} would be. Right piece, right tare, hook on?</source>
        <translation>{on_scale} è fuori dall&apos;intervallo atteso, da {low} a {high}. Pezzo giusto, tara giusta, gancio attaccato?</translation>
    </message>
    <message>
        <source>The same number as last time. That can mean done, a coarse scale or a damp chamber.</source>
        <translation>Lo stesso numero dell&apos;ultima volta. Può voler dire finito, una bilancia grossolana o una cella umida.</translation>
    </message>
    <message>
        <source>{place} is not finished, so it cannot hang again. Record what happens to it instead.</source>
        <translation>{place} non è finito, quindi non può essere riappeso. Registrare invece che cosa gli succede.</translation>
    </message>
    <message>
        <source>{place} is packed. Take it out of its pack in Stock: hung again.</source>
        <translation>{place} è confezionato. Toglierlo dalla confezione in Dispensa: riappeso.</translation>
    </message>
    <message>
        <source>A caution is taken on by a person: say who it is.</source>
        <translation>Un&apos;avvertenza viene accettata da una persona: indicare chi è.</translation>
    </message>
</context>
<context>
    <name>KeepWords</name>
    <message numerus="yes">
        <source>%1: %n day(s) from opening</source>
        <translation>
            <numerusform>%1: %n giorno dall&apos;apertura</numerusform>
            <numerusform>%1: %n giorni dall&apos;apertura</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n day(s) from packing</source>
        <translation>
            <numerusform>%1: %n giorno dal confezionamento</numerusform>
            <numerusform>%1: %n giorni dal confezionamento</numerusform>
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
        <translation>Partite</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pezzi</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesate</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Eventi</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Fasi</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>Decisioni</translation>
    </message>
    <message>
        <source>Outcomes</source>
        <translation>Esiti</translation>
    </message>
    <message>
        <source>Acceptances of cautions</source>
        <translation>Avvertenze accettate</translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation>Ricette</translation>
    </message>
    <message>
        <source>Recipe versions</source>
        <translation>Versioni di ricette</translation>
    </message>
    <message>
        <source>Ingredients</source>
        <translation>Ingredienti</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotti</translation>
    </message>
    <message>
        <source>Uses of ingredients</source>
        <translation>Ingredienti usati</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Confezioni</translation>
    </message>
    <message>
        <source>Moves of stock</source>
        <translation>Movimenti di dispensa</translation>
    </message>
    <message>
        <source>Ticks of the day&apos;s work</source>
        <translation>Spunte del lavoro del giorno</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Persone</translation>
    </message>
    <message>
        <source>Chambers</source>
        <translation>Celle</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Sensori</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Strumenti</translation>
    </message>
    <message>
        <source>Calibration checks</source>
        <translation>Controlli di taratura</translation>
    </message>
    <message>
        <source>Climate readings</source>
        <translation>Letture del clima</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day with its year, %2 a clock time</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Batches: %1, pieces: %2, weighings: %3</source>
        <translation>Partite: %1, pezzi: %2, pesate: %3</translation>
    </message>
    <message>
        <source>This backup is damaged itself, so it is not put in the place of the book. Choose another one.</source>
        <translation>Questa copia è danneggiata anch&apos;essa, perciò non si mette al posto del libro. Sceglierne un&apos;altra.</translation>
    </message>
    <message>
        <source>This backup was read from end to end and is whole.</source>
        <translation>Questa copia è stata letta da cima a fondo ed è integra.</translation>
    </message>
    <message>
        <source>It brings back: %1. Last entry: %2.</source>
        <translation>Riporta: %1. Ultima voce: %2.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nessuna</translation>
    </message>
    <message>
        <source>There is no book now, so nothing is replaced.</source>
        <translation>Ora non c&apos;è nessun libro, perciò non si sostituisce nulla.</translation>
    </message>
    <message>
        <source>The book as it is now cannot be read, so what would be lost is not known.</source>
        <translation>Il libro com&apos;è ora non si legge, perciò non si sa che cosa andrebbe perso.</translation>
    </message>
    <message>
        <source>The book has now: %1.</source>
        <translation>Il libro ora ha: %1.</translation>
    </message>
    <message>
        <source>No change was made since this backup.</source>
        <translation>Da questa copia in poi non è stato modificato nulla.</translation>
    </message>
    <message>
        <source>Changes made since this backup, which would be gone from the book: %1.</source>
        <translation>Modifiche fatte dopo questa copia, che nel libro non ci sarebbero più: %1.</translation>
    </message>
    <message>
        <source>The book as it is now is not deleted: it stays in the same folder, with “replaced” and the moment added to its name.</source>
        <translation>Il libro com&apos;è ora non si cancella: resta nella stessa cartella, con «replaced» e il momento aggiunti al nome.</translation>
    </message>
    <message>
        <source>The book is sound: its pages, indexes, links and climate roll-ups agree.</source>
        <translation>Il libro è integro: pagine, indici, collegamenti e riepiloghi del clima concordano.</translation>
    </message>
    <message>
        <source>Your entries and readings are whole. Sums made from climate readings do not agree with them (places: %1), so charts and hours of air may be wrong. They can be made anew from the readings.</source>
        <translation>Le voci e le letture sono integre. Alcuni riepiloghi fatti con le letture del clima non concordano con esse (punti: %1), perciò grafici e ore d&apos;aria possono essere sbagliati. Si possono rifare dalle letture.</translation>
    </message>
    <message>
        <source>The book is damaged (places found: %1; they are listed below). Write nothing more into it. Restore a backup, or salvage what can be read into a new book.</source>
        <translation>Il libro è danneggiato (punti trovati: %1; sono elencati sotto). Non scriverci più nulla. Ripristinare una copia, oppure recuperare in un libro nuovo ciò che si legge.</translation>
    </message>
    <message>
        <source>The book&apos;s own records (log, preferences, sums)</source>
        <translation>Registrazioni proprie del libro (registro, preferenze, riepiloghi)</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. No entry was found that could not be read; whole pages that are gone leave no trace, so look it through. The damaged book was not changed.</source>
        <translation>Il nuovo libro è fatto e ha superato il controllo. Non si è trovata nessuna voce illeggibile; ma le pagine intere che mancano non lasciano traccia, perciò riguardarlo. Il libro danneggiato non è stato modificato.</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. Entries that are known to be lost: %1. Look it through. The damaged book was not changed.</source>
        <translation>Il nuovo libro è fatto e ha superato il controllo. Voci che risultano perse: %1. Riguardarlo. Il libro danneggiato non è stato modificato.</translation>
    </message>
</context>
<context>
    <name>LimitWords</name>
    <message>
        <source>%1 (partly unverified)</source>
        <translation>%1 (in parte non verificato)</translation>
    </message>
</context>
<context>
    <name>LossChart</name>
    <message>
        <source>days since hung</source>
        <translation>giorni da quando è appeso</translation>
    </message>
    <message>
        <source>net weight, %1</source>
        <translation>peso netto, %1</translation>
    </message>
    <message>
        <source>weight lost, %</source>
        <translation>calo peso, %</translation>
    </message>
    <message>
        <source>%1 · %2 net · %3 lost</source>
        <translation>%1 · %2 netto · %3 di calo</translation>
    </message>
    <message>
        <source>%1: forecast, 8 in 10 fall inside</source>
        <translation>%1: previsione, 8 su 10 cadono dentro</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>obiettivo %1</translation>
    </message>
    <message>
        <source>%1: %2 lost on %3</source>
        <translation>%1: %2 di calo il %3</translation>
    </message>
    <message>
        <source>, target %1</source>
        <translation>, obiettivo %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>Days since hung</source>
        <translation>Giorni da quando è appeso</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Netto</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Calo</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Osservazioni</translation>
    </message>
    <message>
        <source>lost of the %1, %</source>
        <translation>calo da: %1, %</translation>
    </message>
    <message>
        <source>day %1 · %2 net · %3 lost</source>
        <translation>giorno %1 · %2 netto · %3 di calo</translation>
    </message>
    <message>
        <source>%1, done earlier</source>
        <translation>%1, finito prima</translation>
    </message>
    <message>
        <source>done earlier</source>
        <translation>finito prima</translation>
    </message>
    <message>
        <source>forecast, 8 in 10 fall inside</source>
        <translation>previsione, 8 su 10 cadono dentro</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>fase</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier piece(s) for comparison</source>
        <translation>
            <numerusform>un pezzo precedente per confronto</numerusform>
            <numerusform>%n pezzi precedenti per confronto</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ManualText</name>
    <message>
        <source>Saltloft: the manual</source>
        <translation>Saltloft: il manuale</translation>
    </message>
    <message>
        <source>Plan, weigh and follow cured and air-dried meat.</source>
        <translation>Pianificare, pesare e seguire carni salate e asciugate all&apos;aria.</translation>
    </message>
    <message>
        <source>The pictures show an invented demonstration book; no producer, batch or person in it exists.</source>
        <translation>Le immagini mostrano un libro dimostrativo inventato; nessun produttore, partita o persona al suo interno esiste.</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Indice</translation>
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
        <translation>40 % oppure 80 proof US</translation>
    </message>
    <message>
        <source>salt 16 % or sodium 6.3 g/100 g</source>
        <translation>salt 16 % oppure sodium 6,3 g/100 g</translation>
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
        <translation>Da pesare</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Di</translation>
    </message>
    <message>
        <source>Scale error</source>
        <translation>Errore bilancia</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesato</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lotto</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>   of it for rub %1</source>
        <translation>   di cui per la ripresa di sale %1</translation>
    </message>
    <message>
        <source>Nothing to weigh.</source>
        <translation>Niente da pesare.</translation>
    </message>
    <message>
        <source>Meat</source>
        <translation>Carne</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sale</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>Nitrito, come nitrito di sodio</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>Nitrato, come nitrato di sodio</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Esito</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>Fonte ed edizione</translation>
    </message>
    <message>
        <source>No limit set was chosen: the dose was not compared with any.</source>
        <translation>Nessun limite è stato scelto: la dose non è stata confrontata con nessuno.</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>Foglio di miscela</translation>
    </message>
    <message>
        <source>Piece %1: %2 of meat</source>
        <translation>Pezzo %1: %2 di carne</translation>
    </message>
    <message>
        <source>All pieces together</source>
        <translation>Tutti i pezzi insieme</translation>
    </message>
    <message>
        <source>Weigh the curing salt on the finest scale, and read its strength off the bag in your hand. Follow local codes and licensed practice.</source>
        <translation>Pesare il sale nitritato sulla bilancia più fine e leggerne il titolo sulla confezione che si ha in mano. Seguire le norme locali e la pratica autorizzata.</translation>
    </message>
    <message>
        <source>Weighed by</source>
        <translation>Pesato da</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Controllato da</translation>
    </message>
    <message>
        <source>No piece of this batch has a green weight: weigh the meat first.</source>
        <translation>Nessun pezzo di questa partita ha un peso fresco: pesare prima la carne.</translation>
    </message>
    <message>
        <source>This batch keeps no recipe that can be read: choose one first.</source>
        <translation>Questa partita non ha una ricetta leggibile: sceglierne prima una.</translation>
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
        <translation>nitrito e nitrato insieme</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>ascorbato o eritorbato</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>acido ascorbico o eritorbico</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>fosfato</translation>
    </message>
    <message>
        <source>going in, on the raw weight</source>
        <translation>aggiunto, sul peso fresco</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>nel prodotto finito</translation>
    </message>
    <message>
        <source>left over, by laboratory</source>
        <translation>residuo, da laboratorio</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation>come pesato</translation>
    </message>
    <message>
        <source>as sodium salt</source>
        <translation>come sale di sodio</translation>
    </message>
    <message>
        <source>as ion</source>
        <translation>come ione</translation>
    </message>
    <message>
        <source>not permitted</source>
        <translation>non ammesso</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>almeno %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>al massimo %1</translation>
    </message>
    <message>
        <source>within</source>
        <translation>entro il limite</translation>
    </message>
    <message>
        <source>above</source>
        <translation>sopra</translation>
    </message>
    <message>
        <source>below</source>
        <translation>sotto</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usato</translation>
    </message>
    <message>
        <source>not computable</source>
        <translation>non calcolabile</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (da %2 a %3)</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>Ingrediente</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Tutto insieme</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>Da pesare</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Jug</source>
        <translation>Caraffa</translation>
    </message>
    <message>
        <source>Scale, ±</source>
        <translation>Bilancia, ±</translation>
    </message>
    <message>
        <source>Of the meat</source>
        <translation>Della carne</translation>
    </message>
    <message>
        <source>Liquids fully taken up</source>
        <translation>Liquidi assorbiti del tutto</translation>
    </message>
    <message>
        <source>This recipe</source>
        <translation>Questa ricetta</translation>
    </message>
    <message>
        <source>Half taken up</source>
        <translation>Assorbiti a metà</translation>
    </message>
    <message>
        <source>Salt, all of it</source>
        <translation>Sale, in tutto</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>Sale nella fase acquosa</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucchero</translation>
    </message>
    <message>
        <source>Nitrite, as NaNO2</source>
        <translation>Nitrito, come NaNO2</translation>
    </message>
    <message>
        <source>Nitrite, as the ion NO2</source>
        <translation>Nitrito, come ione NO2</translation>
    </message>
    <message>
        <source>Nitrate, as NaNO3</source>
        <translation>Nitrato, come NaNO3</translation>
    </message>
    <message>
        <source>Nitrate, as the ion NO3</source>
        <translation>Nitrato, come ione NO3</translation>
    </message>
    <message>
        <source>Ascorbate or erythorbate</source>
        <translation>Ascorbato o eritorbato</translation>
    </message>
    <message>
        <source>Ascorbic or erythorbic acid</source>
        <translation>Acido ascorbico o eritorbico</translation>
    </message>
    <message>
        <source>Added water</source>
        <translation>Acqua aggiunta</translation>
    </message>
    <message>
        <source>Alcohol, of the whole</source>
        <translation>Alcol, del totale</translation>
    </message>
    <message>
        <source>Strength of the liquids</source>
        <translation>Gradazione dei liquidi</translation>
    </message>
    <message>
        <source>%1 vol (%2 US proof, %3 UK)</source>
        <translation>%1 vol (%2 proof US, %3 UK)</translation>
    </message>
    <message>
        <source>Limit and its source</source>
        <translation>Limite e sua fonte</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>%1, %2, %3: %4</source>
        <translation>%1, %2, %3: %4</translation>
    </message>
    <message>
        <source>%1: a scale that shows %2 would do.</source>
        <translation>%1: basterebbe una bilancia che mostra %2.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Or blend a larger lot first: %1. Mix it evenly, then weigh %2 of it for the smallest piece: ± %3.</source>
        <translation>Oppure miscelare prima una quantità maggiore: %1. Mescolare bene, poi pesarne %2 per il pezzo più piccolo: ± %3.</translation>
    </message>
    <message>
        <source>Dry, weighed, all taken up</source>
        <translation>A secco, pesato, assorbito del tutto</translation>
    </message>
    <message>
        <source>Buried in salt</source>
        <translation>Sotto sale</translation>
    </message>
    <message>
        <source>Immersed, by pick-up</source>
        <translation>Immerso, secondo assorbimento</translation>
    </message>
    <message>
        <source>Immersed, at equilibrium</source>
        <translation>Immerso, all&apos;equilibrio</translation>
    </message>
    <message>
        <source>Brine of meat and water</source>
        <translation>Salamoia su carne e acqua</translation>
    </message>
    <message>
        <source>Pumped in</source>
        <translation>Siringato</translation>
    </message>
    <message>
        <source>Marinade</source>
        <translation>Marinata</translation>
    </message>
    <message>
        <source>Wash of vinegar or spirit</source>
        <translation>Lavaggio con aceto o distillato</translation>
    </message>
    <message>
        <source>of the meat</source>
        <translation>della carne</translation>
    </message>
    <message>
        <source>of the added water</source>
        <translation>dell&apos;acqua aggiunta</translation>
    </message>
    <message>
        <source>of meat and water</source>
        <translation>di carne e acqua</translation>
    </message>
    <message>
        <source>of all water</source>
        <translation>di tutta l&apos;acqua</translation>
    </message>
</context>
<context>
    <name>ModelWords</name>
    <message>
        <source>slab (flat)</source>
        <translation>lastra (piatta)</translation>
    </message>
    <message>
        <source>cylinder (long and round)</source>
        <translation>cilindro (lungo e tondo)</translation>
    </message>
    <message>
        <source>round</source>
        <translation>tondo</translation>
    </message>
    <message>
        <source>block (brick)</source>
        <translation>blocco (mattone)</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>rifilato</translation>
    </message>
    <message>
        <source>cured, not rinsed</source>
        <translation>salato, non sciacquato</translation>
    </message>
    <message>
        <source>rinsed and wiped</source>
        <translation>sciacquato e tamponato</translation>
    </message>
    <message>
        <source>in casing</source>
        <translation>in budello</translation>
    </message>
    <message>
        <source>in net or string</source>
        <translation>in rete o spago</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>rivestito</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>peso fresco</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>peso rifilato</translation>
    </message>
    <message>
        <source>weight after the cure</source>
        <translation>peso dopo la salagione</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>peso da appeso</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>senza cotenna</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>cotenna su un lato</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>cotenna tutto intorno</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>pianificato</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>in salagione</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>a riposo</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>in asciugatura</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>finito</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>scartato</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>pesato con altri</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>tagliato in pezzi</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>in corso</translation>
    </message>
    <message>
        <source>given up</source>
        <translation>abbandonato</translation>
    </message>
    <message>
        <source>dressed</source>
        <translation>insaccato o legato</translation>
    </message>
    <message>
        <source>dressed again</source>
        <translation>cambiati budello o rete</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>campione prelevato</translation>
    </message>
    <message>
        <source>cut in pieces</source>
        <translation>tagliato in pezzi</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>pesati insieme</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>pressato</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelato</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>scongelato</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>lavato</translation>
    </message>
    <message>
        <source>hung to dry</source>
        <translation>appeso ad asciugare</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>spostato</translation>
    </message>
    <message>
        <source>look</source>
        <translation>aspetto</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>tatto</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>odore</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>gusto</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>muffa</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>che cosa si è fatto</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>esito</translation>
    </message>
    <message>
        <source>other</source>
        <translation>altro</translation>
    </message>
    <message>
        <source>done</source>
        <translation>finito</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>non ancora</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>scartare</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>intero</translation>
    </message>
    <message>
        <source>cut open</source>
        <translation>aperto</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>sottovuoto</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>consumato</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>regalato</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>venduto</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>buttato</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>riappeso</translation>
    </message>
    <message>
        <source>counted again</source>
        <translation>ricontato</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>salatura</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>lavaggio</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>ammollo</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>marinatura</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>pressatura</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>affumicatura</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>stagionatura</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>equalizzazione</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>rivestimento</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>congelamento</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>conservazione</translation>
    </message>
    <message>
        <source>too few weighings</source>
        <translation>troppo poche pesate</translation>
    </message>
    <message>
        <source>at its target</source>
        <translation>all&apos;obiettivo</translation>
    </message>
    <message>
        <source>target out of reach</source>
        <translation>obiettivo irraggiungibile</translation>
    </message>
    <message>
        <source>not drying</source>
        <translation>non asciuga</translation>
    </message>
    <message>
        <source>fridge</source>
        <translation>frigorifero</translation>
    </message>
    <message>
        <source>drying cabinet</source>
        <translation>armadio di stagionatura</translation>
    </message>
    <message>
        <source>room</source>
        <translation>locale</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>all&apos;aperto</translation>
    </message>
    <message>
        <source>freezer</source>
        <translation>congelatore</translation>
    </message>
    <message>
        <source>face to face, at the thickest point</source>
        <translation>da faccia a faccia, nel punto più spesso</translation>
    </message>
    <message>
        <source>diameter, at the thickest point</source>
        <translation>diametro, nel punto più spesso</translation>
    </message>
    <message>
        <source>the shortest side</source>
        <translation>il lato più corto</translation>
    </message>
</context>
<context>
    <name>PieceWords</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>%1 the loss now, %2 the loss aimed for</extracomment>
        <translation>%1 di %2</translation>
    </message>
    <message>
        <source>%1 or later, perhaps never</source>
        <translation>%1 o dopo, forse mai</translation>
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
        <translation>Girare</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Girato</translation>
    </message>
    <message>
        <source>Rub again</source>
        <translation>Massaggiare ancora col sale</translation>
    </message>
    <message>
        <source>Rubbed again</source>
        <translation>Massaggiato ancora</translation>
    </message>
    <message>
        <source>Massage</source>
        <translation>Massaggiare</translation>
    </message>
    <message>
        <source>Massaged</source>
        <translation>Massaggiato</translation>
    </message>
    <message>
        <source>Weigh</source>
        <translation>Pesare</translation>
    </message>
    <message>
        <source>Weighing left out</source>
        <translation>Pesata tralasciata</translation>
    </message>
    <message>
        <source>Weigh again, as decided</source>
        <translation>Pesare di nuovo, come deciso</translation>
    </message>
    <message>
        <source>Wipe</source>
        <translation>Pulire</translation>
    </message>
    <message>
        <source>Wiped</source>
        <translation>Pulito</translation>
    </message>
    <message>
        <source>Change places</source>
        <translation>Scambiare i posti</translation>
    </message>
    <message>
        <source>Places changed</source>
        <translation>Posti scambiati</translation>
    </message>
    <message>
        <source>Look at the chamber</source>
        <translation>Guardare la cella</translation>
    </message>
    <message>
        <source>Chamber looked at</source>
        <translation>Cella guardata</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Iniziare</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Iniziata</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Terminare</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminata</translation>
    </message>
    <message>
        <source>Judge whether it is done</source>
        <translation>Giudicare se è finito</translation>
    </message>
    <message>
        <source>Judging left out</source>
        <translation>Giudizio tralasciato</translation>
    </message>
    <message>
        <source>Check the instrument</source>
        <translation>Controllare lo strumento</translation>
    </message>
    <message>
        <source>Instrument check left out</source>
        <translation>Controllo dello strumento tralasciato</translation>
    </message>
    <message>
        <source>Check the sensor</source>
        <translation>Controllare il sensore</translation>
    </message>
    <message>
        <source>Sensor checked</source>
        <translation>Sensore controllato</translation>
    </message>
    <message>
        <source>Eat or sell first</source>
        <translation>Da mangiare o vendere per primo</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Arieggiare</translation>
    </message>
    <message>
        <source>Aired</source>
        <translation>Arieggiato</translation>
    </message>
    <message>
        <source>%1: done</source>
        <translation>%1: fatto</translation>
    </message>
    <message>
        <source>within the time above</source>
        <translation>entro il tempo qui sopra</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fisso</translation>
    </message>
    <message>
        <source>by weight</source>
        <translation>secondo il peso</translation>
    </message>
    <message>
        <source>by thickness</source>
        <translation>secondo lo spessore</translation>
    </message>
    <message>
        <source>until the date</source>
        <translation>fino alla data</translation>
    </message>
    <message>
        <source>your own pieces</source>
        <translation>i propri pezzi</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>abituale</translation>
    </message>
    <message>
        <source>drying model</source>
        <translation>modello di asciugatura</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>non noto</translation>
    </message>
    <message>
        <source>They hung at this time of year.</source>
        <translation>Erano appesi in questa stagione.</translation>
    </message>
    <message>
        <source>They lost %1 a week on the whole.</source>
        <translation>Nel complesso hanno perso %1 la settimana.</translation>
    </message>
    <message numerus="yes">
        <source>%n week(s)</source>
        <translation>
            <numerusform>%n settimana</numerusform>
            <numerusform>%n settimane</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n giorno</numerusform>
            <numerusform>%n giorni</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n week(s)</source>
        <extracomment>%1 a smaller number</extracomment>
        <translation>
            <numerusform>da %1 a %n settimana</numerusform>
            <numerusform>da %1 a %n settimane</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n day(s)</source>
        <translation>
            <numerusform>da %1 a %n giorno</numerusform>
            <numerusform>da %1 a %n giorni</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done in this chamber.</source>
        <translation>
            <numerusform>L&apos;ultimo ha impiegato %1 da appeso a finito in questa cella.</numerusform>
            <numerusform>Gli ultimi %n hanno impiegato %1 da appesi a finiti in questa cella.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done.</source>
        <translation>
            <numerusform>L&apos;ultimo ha impiegato %1 da appeso a finito.</numerusform>
            <numerusform>Gli ultimi %n hanno impiegato %1 da appesi a finiti.</numerusform>
        </translation>
    </message>
    <message>
        <source>It was too soft: a loss of %1 is worth a try.</source>
        <translation>Era troppo morbido: un calo del %1 merita una prova.</translation>
    </message>
    <message>
        <source>It was too dry: a loss of %1 is worth a try.</source>
        <translation>Era troppo asciutto: un calo del %1 merita una prova.</translation>
    </message>
    <message>
        <source>It was too salty at %1 in the finished piece.</source>
        <translation>Era troppo salato, con %1 nel pezzo finito.</translation>
    </message>
    <message>
        <source>It lacked salt at %1 in the finished piece.</source>
        <translation>Mancava sale, con %1 nel pezzo finito.</translation>
    </message>
    <message>
        <source>%1 of the raw weight instead of %2 is worth a try.</source>
        <translation>%1 del peso fresco invece di %2 merita una prova.</translation>
    </message>
    <message>
        <source>You wrote about %1: “%2”.</source>
        <extracomment>%1 the code of a batch, %2 what the person wrote about it</extracomment>
        <translation>Annotato su %1: «%2».</translation>
    </message>
    <message>
        <source>%1 was too salty: salt %2 to %3.</source>
        <translation>%1 era troppo salato: sale da %2 a %3.</translation>
    </message>
    <message>
        <source>%1 lacked salt: salt %2 to %3.</source>
        <translation>A %1 mancava sale: sale da %2 a %3.</translation>
    </message>
    <message>
        <source>%1 was too soft: loss aimed for is now %2.</source>
        <translation>%1 era troppo morbido: il calo voluto ora è %2.</translation>
    </message>
    <message>
        <source>%1 was too dry: loss aimed for is now %2.</source>
        <translation>%1 era troppo asciutto: il calo voluto ora è %2.</translation>
    </message>
    <message>
        <source>much too little salt</source>
        <translation>decisamente troppo poco sale</translation>
    </message>
    <message>
        <source>a little short of salt</source>
        <translation>un po&apos; poco sale</translation>
    </message>
    <message>
        <source>a little too salty</source>
        <translation>un po&apos; troppo salato</translation>
    </message>
    <message>
        <source>much too salty</source>
        <translation>decisamente troppo salato</translation>
    </message>
    <message>
        <source>the salt was right</source>
        <translation>il sale era giusto</translation>
    </message>
    <message>
        <source>much too soft</source>
        <translation>decisamente troppo morbido</translation>
    </message>
    <message>
        <source>a little too soft</source>
        <translation>un po&apos; troppo morbido</translation>
    </message>
    <message>
        <source>a little too dry</source>
        <translation>un po&apos; troppo asciutto</translation>
    </message>
    <message>
        <source>much too dry</source>
        <translation>decisamente troppo asciutto</translation>
    </message>
    <message>
        <source>the texture was right</source>
        <translation>la consistenza era giusta</translation>
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
        <translation>Scheda della partita %1</translation>
    </message>
    <message>
        <source>Mix sheet of batch %1</source>
        <translation>Foglio di miscela della partita %1</translation>
    </message>
    <message>
        <source>Tags of batch %1</source>
        <translation>Cartellini della partita %1</translation>
    </message>
    <message>
        <source>Small tags of batch %1</source>
        <translation>Cartellini piccoli della partita %1</translation>
    </message>
    <message>
        <source>Trace of batch %1</source>
        <translation>Tracciabilità della partita %1</translation>
    </message>
    <message>
        <source>Mass balance of batch %1</source>
        <translation>Bilancio di massa della partita %1</translation>
    </message>
    <message>
        <source>Calibration sheet, %1</source>
        <translation>Foglio di taratura, %1</translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>Batch record</source>
        <translation>Scheda della partita</translation>
    </message>
    <message>
        <source>Trace: one step back, one step forward</source>
        <translation>Tracciabilità: un passo indietro, un passo avanti</translation>
    </message>
    <message>
        <source>Mass balance</source>
        <translation>Bilancio di massa</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, poi %2</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Pianificata</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Iniziata</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminata</translation>
    </message>
    <message>
        <source>Why it ended</source>
        <translation>Perché è finita</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Cella</translation>
    </message>
    <message>
        <source>Temperature band</source>
        <translation>Fascia di temperatura</translation>
    </message>
    <message>
        <source>Humidity band</source>
        <translation>Fascia di umidità</translation>
    </message>
    <message>
        <source>No stages were planned.</source>
        <translation>Nessuna fase pianificata.</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Fasi</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensore</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Minimo</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Media</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Massimo</translation>
    </message>
    <message>
        <source>Driest</source>
        <translation>Più secco</translation>
    </message>
    <message>
        <source>Mean RH</source>
        <translation>UR media</translation>
    </message>
    <message>
        <source>Dampest</source>
        <translation>Più umido</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>Fuori fascia</translation>
    </message>
    <message>
        <source>no readings %1</source>
        <translation>senza letture %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>mai</translation>
    </message>
    <message>
        <source>No readings were recorded while this batch was in a chamber.</source>
        <translation>Nessuna lettura registrata mentre questa partita era in una cella.</translation>
    </message>
    <message>
        <source>Temperature and humidity</source>
        <translation>Temperatura e umidità</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Presa</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Sulla bilancia</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Netto</translation>
    </message>
    <message>
        <source>What is weighed</source>
        <translation>Che cosa si pesa</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>Inserita</translation>
    </message>
    <message>
        <source>Note, correction and why</source>
        <translation>Nota, correzione e motivo</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>superficie bagnata</translation>
    </message>
    <message>
        <source>corrects %1: %2</source>
        <translation>corregge %1: %2</translation>
    </message>
    <message>
        <source>corrected by a later entry</source>
        <translation>corretta da una voce successiva</translation>
    </message>
    <message>
        <source>taken back by %1: %2</source>
        <translation>ritirata da %1: %2</translation>
    </message>
    <message>
        <source>Never weighed.</source>
        <translation>Mai pesato.</translation>
    </message>
    <message>
        <source>Weighings with corrections</source>
        <translation>Pesate con correzioni</translation>
    </message>
    <message>
        <source>Piece %1</source>
        <translation>Pezzo %1</translation>
    </message>
    <message>
        <source>Struck figures were corrected or taken back and no longer count; they stay readable.</source>
        <translation>Le cifre barrate sono state corrette o ritirate e non contano più; restano leggibili.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pezzo</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Che cosa è successo</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>Netto prima</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>Netto dopo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>No events were recorded.</source>
        <translation>Nessun evento registrato.</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Eventi</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Da</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Scostamento</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Peggiore</translation>
    </message>
    <message>
        <source>Action taken, initials</source>
        <translation>Provvedimento, iniziali</translation>
    </message>
    <message>
        <source>No excursion of an hour or longer is in the readings.</source>
        <translation>Nelle letture non c&apos;è uno scostamento di un&apos;ora o più.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Avvertenza</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>Accettata da</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Perché</translation>
    </message>
    <message>
        <source>No caution was accepted.</source>
        <translation>Nessuna avvertenza accettata.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>What was seen or done</source>
        <translation>Che cosa si è visto o fatto</translation>
    </message>
    <message>
        <source> (photo: %1)</source>
        <translation> (foto: %1)</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>partita</translation>
    </message>
    <message>
        <source>No notes were recorded.</source>
        <translation>Nessuna nota registrata.</translation>
    </message>
    <message>
        <source>Deviations and corrective action</source>
        <translation>Scostamenti e azioni correttive</translation>
    </message>
    <message>
        <source>Air out of its band</source>
        <translation>Aria fuori dalla fascia</translation>
    </message>
    <message>
        <source>Cautions accepted</source>
        <translation>Avvertenze accettate</translation>
    </message>
    <message>
        <source>Notes and actions</source>
        <translation>Note e azioni</translation>
    </message>
    <message>
        <source>Further deviation · limit · action taken · date and time · initials</source>
        <translation>Altro scostamento · limite · provvedimento · data e ora · iniziali</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Strumento</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Controllato</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Rispetto a</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Atteso</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trovato</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Azione</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Da</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>mai controllato</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>Nessuno strumento registrato.</translation>
    </message>
    <message>
        <source>Instruments and calibration</source>
        <translation>Strumenti e tarature</translation>
    </message>
    <message>
        <source>Laboratory measurements</source>
        <translation>Misure di laboratorio</translation>
    </message>
    <message>
        <source>Water activity and pH are measured, not computed. Enter what a laboratory or an instrument found, with the instrument, its calibration and the date.</source>
        <translation>Attività dell&apos;acqua e pH si misurano, non si calcolano. Scrivere ciò che ha trovato un laboratorio o uno strumento, con lo strumento, la sua taratura e la data.</translation>
    </message>
    <message>
        <source>Sample of piece · water activity · pH · instrument · date · initials</source>
        <translation>Campione del pezzo · attività dell&apos;acqua · pH · strumento · data · iniziali</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Decisione</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmato da</translation>
    </message>
    <message>
        <source>No decision has been signed.</source>
        <translation>Nessuna decisione firmata.</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>Decisioni</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (da %2 a %3)</translation>
    </message>
    <message>
        <source>Batch %1 · %2 · started %3</source>
        <translation>Partita %1 · %2 · iniziata %3</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>Sigla della partita</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Prodotto</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Specie</translation>
    </message>
    <message>
        <source>Supplier of the meat</source>
        <translation>Fornitore della carne</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Lotto del fornitore</translation>
    </message>
    <message>
        <source>Frozen before curing</source>
        <translation>Congelata prima della salagione</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>Peso acquistato</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>Rifilato</translation>
    </message>
    <message>
        <source>Green weight of all pieces</source>
        <translation>Peso fresco di tutti i pezzi</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Iniziata</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stato</translation>
    </message>
    <message>
        <source>Identification</source>
        <translation>Identificazione</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Taglio</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Cotenna</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Spessore</translation>
    </message>
    <message>
        <source>Green weight</source>
        <translation>Peso fresco</translation>
    </message>
    <message>
        <source>Hung weight</source>
        <translation>Peso da appeso</translation>
    </message>
    <message>
        <source>Last weight</source>
        <translation>Ultimo peso</translation>
    </message>
    <message>
        <source>Loss of green</source>
        <translation>Calo dal fresco</translation>
    </message>
    <message>
        <source>Loss of hung</source>
        <translation>Calo da appeso</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Obiettivo</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message>
        <source> (from %1)</source>
        <translation> (da %1)</translation>
    </message>
    <message>
        <source>No pieces.</source>
        <translation>Nessun pezzo.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pezzi</translation>
    </message>
    <message>
        <source>Weights are net. A loss is left out where something was cut off or put on in between: see the events.</source>
        <translation>I pesi sono netti. Un calo è tralasciato dove nel frattempo qualcosa è stato tagliato o aggiunto: vedere gli eventi.</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>Ingrediente</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lotto</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fornitore</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Acquistato</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesato</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Per</translation>
    </message>
    <message>
        <source>all</source>
        <translation>tutti</translation>
    </message>
    <message>
        <source>No ingredient lots were recorded.</source>
        <translation>Nessun lotto di ingrediente registrato.</translation>
    </message>
    <message>
        <source>Inputs with lots</source>
        <translation>Ingredienti con i lotti</translation>
    </message>
    <message>
        <source>Computed doses</source>
        <translation>Dosi calcolate</translation>
    </message>
    <message>
        <source>Not computed: no piece has a green weight.</source>
        <translation>Non calcolato: nessun pezzo ha un peso fresco.</translation>
    </message>
    <message>
        <source>Not computed: the batch keeps no recipe that can be read.</source>
        <translation>Non calcolato: la partita non ha una ricetta leggibile.</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Ricetta</translation>
    </message>
    <message>
        <source>On green meat</source>
        <translation>Sulla carne fresca</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sale</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucchero</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>Nitrito, come nitrito di sodio</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>Nitrato, come nitrato di sodio</translation>
    </message>
    <message>
        <source>Line of the recipe</source>
        <translation>Riga della ricetta</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Quantità</translation>
    </message>
    <message>
        <source>Nitrite strength</source>
        <translation>Titolo in nitrito</translation>
    </message>
    <message>
        <source>Nitrate strength</source>
        <translation>Titolo in nitrato</translation>
    </message>
    <message>
        <source>Strength from</source>
        <translation>Titolo da</translation>
    </message>
    <message>
        <source>the label</source>
        <translation>l&apos;etichetta</translation>
    </message>
    <message>
        <source>the catalogue</source>
        <translation>il catalogo</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Ammesso</translation>
    </message>
    <message>
        <source>Computed</source>
        <translation>Calcolato</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Esito</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>Fonte ed edizione</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nessuno</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>al massimo %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>almeno %1</translation>
    </message>
    <message>
        <source>No limit set was chosen for this recipe: the doses were not compared.</source>
        <translation>Per questa ricetta non è stato scelto alcun limite: le dosi non sono state confrontate.</translation>
    </message>
    <message>
        <source>Compared with the limit set: %1</source>
        <translation>Confronto con i limiti: %1</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Firme</translation>
    </message>
    <message>
        <source>Record made by</source>
        <translation>Scheda fatta da</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Controllato da</translation>
    </message>
    <message>
        <source>Released by</source>
        <translation>Rilasciata da</translation>
    </message>
    <message>
        <source>Officer, seen</source>
        <translation>Funzionario, visto</translation>
    </message>
    <message>
        <source>Figures are records and computations. Whether a product may be sold or eaten is for local codes, licensed practice and laboratory measurement.</source>
        <translation>Le cifre sono registrazioni e calcoli. Se un prodotto si possa vendere o mangiare lo decidono le norme locali, la pratica autorizzata e la misura di laboratorio.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Che cosa</translation>
    </message>
    <message>
        <source>Their lot</source>
        <translation>Il loro lotto</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Quanto</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>Carne: %1</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>Un passo indietro</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Confezione</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>A chi</translation>
    </message>
    <message>
        <source>packed</source>
        <translation>confezionato</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>niente rimasto</translation>
    </message>
    <message>
        <source>still here</source>
        <translation>ancora qui</translation>
    </message>
    <message>
        <source>Nothing of this batch has been packed.</source>
        <translation>Di questa partita non è stato confezionato niente.</translation>
    </message>
    <message>
        <source>One step forward</source>
        <translation>Un passo avanti</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Passo</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Massa</translation>
    </message>
    <message>
        <source>Of the green weight</source>
        <translation>Del peso fresco</translation>
    </message>
    <message>
        <source>Green weight of the pieces</source>
        <translation>Peso fresco dei pezzi</translation>
    </message>
    <message>
        <source>Net weight now, of pieces not discarded</source>
        <translation>Peso netto ora, dei pezzi non scartati</translation>
    </message>
    <message>
        <source>Green weight less net weight now: water, discarded pieces, ends and samples</source>
        <translation>Peso fresco meno peso netto ora: acqua, pezzi scartati, estremità e campioni</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Confezionato</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Usato</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Regalato</translation>
    </message>
    <message>
        <source>Sold</source>
        <translation>Venduto</translation>
    </message>
    <message>
        <source>Hung again</source>
        <translation>Riappeso</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Scarto</translation>
    </message>
    <message>
        <source>Still in stock</source>
        <translation>Ancora in dispensa</translation>
    </message>
    <message>
        <source>Packed, but not accounted for</source>
        <translation>Confezionato, ma non giustificato</translation>
    </message>
    <message>
        <source>The packs do not balance: %1 cannot be accounted for.</source>
        <translation>Le confezioni non tornano: %1 non è giustificato.</translation>
    </message>
    <message>
        <source>Bought less trimmed off less green weight: %1.</source>
        <translation>Acquistato meno rifilato meno peso fresco: %1.</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>pianificato</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>in corso</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>finito</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abbandonata</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>in salagione</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>a riposo</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>in asciugatura</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>scartato</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>pesato con altri</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>tagliato in pezzi</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>rifilato</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>salato</translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation>sciacquato</translation>
    </message>
    <message>
        <source>cased</source>
        <translation>in budello</translation>
    </message>
    <message>
        <source>netted</source>
        <translation>in rete</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>rivestito</translation>
    </message>
    <message>
        <source>casing or net put on</source>
        <translation>messi budello o rete</translation>
    </message>
    <message>
        <source>casing or net changed</source>
        <translation>cambiati budello o rete</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>campione prelevato</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>pesati insieme</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>pressato</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelato</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>scongelato</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>lavato</translation>
    </message>
    <message>
        <source>hung</source>
        <translation>appeso</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>spostato</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>salatura</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>lavaggio</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>ammollo</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>marinatura</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>pressatura</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>affumicatura</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>stagionatura</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>equalizzazione</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>rivestimento</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>congelamento</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>conservazione</translation>
    </message>
    <message>
        <source>look</source>
        <translation>aspetto</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>tatto</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>odore</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>gusto</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>muffa</translation>
    </message>
    <message>
        <source>action</source>
        <translation>azione</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>esito</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>done</source>
        <translation>finito</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>non ancora</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>scartare</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>intero</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>tagliato</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>sottovuoto</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usato</translation>
    </message>
    <message>
        <source>given</source>
        <translation>regalato</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>venduto</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation>buttato</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>riappeso</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>contato</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>bilancia</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>termometro</translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation>igrometro</translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation>pHmetro</translation>
    </message>
    <message>
        <source>water activity meter</source>
        <translation>misuratore di attività dell&apos;acqua</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>strumento</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>peso fresco</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>peso rifilato</translation>
    </message>
    <message>
        <source>cured weight</source>
        <translation>peso dopo la salagione</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>peso da appeso</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>senza cotenna</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>cotenna su un lato</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>cotenna tutto intorno</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>troppo freddo</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>troppo caldo</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>troppo secco</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>troppo umido</translation>
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
        <translation>nitrito e nitrato insieme</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>ascorbato o eritorbato</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>acido ascorbico o eritorbico</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>fosfato</translation>
    </message>
    <message>
        <source>ingoing</source>
        <translation>aggiunto</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>nel prodotto finito</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>residuo</translation>
    </message>
    <message>
        <source>within</source>
        <translation>entro il limite</translation>
    </message>
    <message>
        <source>ABOVE</source>
        <translation>SOPRA</translation>
    </message>
    <message>
        <source>below the minimum</source>
        <translation>sotto il minimo</translation>
    </message>
    <message>
        <source>NOT PERMITTED, used</source>
        <translation>NON AMMESSO, usato</translation>
    </message>
    <message>
        <source>laboratory only</source>
        <translation>solo laboratorio</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sì</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Caution, as it was shown</source>
        <translation>Avvertenza, come era mostrata</translation>
    </message>
</context>
<context>
    <name>ReviewWords</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (da %2 a %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>al massimo %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>almeno %1</translation>
    </message>
    <message>
        <source>lies below it</source>
        <translation>sta sotto</translation>
    </message>
    <message>
        <source>lies above it</source>
        <translation>sta sopra</translation>
    </message>
    <message>
        <source>lies on both sides of it</source>
        <translation>sta da entrambe le parti</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>non noto</translation>
    </message>
    <message>
        <source>start weight</source>
        <translation>peso iniziale</translation>
    </message>
    <message>
        <source>salt put on</source>
        <translation>sale messo</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>spessore</translation>
    </message>
    <message>
        <source>fat share</source>
        <translation>parte di grasso</translation>
    </message>
    <message>
        <source>humidity log</source>
        <translation>registro dell&apos;umidità</translation>
    </message>
    <message>
        <source>temperature log</source>
        <translation>registro della temperatura</translation>
    </message>
    <message>
        <source>weighings while drying</source>
        <translation>pesate durante l&apos;asciugatura</translation>
    </message>
    <message>
        <source>measured water activity</source>
        <translation>attività dell&apos;acqua misurata</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>lost of the %1</source>
        <translation>calo da: %1</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>obiettivo %1</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 al giorno</translation>
    </message>
    <message>
        <source>pace in the first week</source>
        <translation>ritmo nella prima settimana</translation>
    </message>
    <message>
        <source>pace in the last two weeks</source>
        <translation>ritmo nelle ultime due settimane</translation>
    </message>
    <message>
        <source>time since hung</source>
        <translation>tempo da quando è appeso</translation>
    </message>
    <message>
        <source>Estimated, 8 in 10 fall in the range</source>
        <translation>Stimato, 8 su 10 cadono nell&apos;intervallo</translation>
    </message>
    <message>
        <source>water of the piece</source>
        <translation>acqua del pezzo</translation>
    </message>
    <message>
        <source>salt of the piece</source>
        <translation>sale del pezzo</translation>
    </message>
    <message>
        <source>salt in its water</source>
        <translation>sale nella sua acqua</translation>
    </message>
    <message>
        <source>water activity</source>
        <translation>attività dell&apos;acqua</translation>
    </message>
    <message>
        <source>an estimate; only a laboratory measures it</source>
        <translation>una stima; solo un laboratorio la misura</translation>
    </message>
    <message>
        <source>Beside cited figures</source>
        <translation>Accanto a cifre citate</translation>
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
        <translation>Visto, toccato, annusato</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Non noto</translation>
    </message>
    <message>
        <source>would add to the picture</source>
        <translation>completerebbe il quadro</translation>
    </message>
    <message>
        <source>mean %1, %2 to %3</source>
        <translation>media %1, da %2 a %3</translation>
    </message>
    <message>
        <source>no band to hold it against</source>
        <translation>nessuna fascia di confronto</translation>
    </message>
    <message>
        <source>never out of its band in the log</source>
        <translation>nel registro mai fuori fascia</translation>
    </message>
    <message>
        <source>%1: air</source>
        <translation>%1: aria</translation>
    </message>
    <message>
        <source>no log</source>
        <translation>nessun registro</translation>
    </message>
    <message>
        <source>no climate log covers this piece&apos;s time there</source>
        <translation>nessun registro del clima copre il tempo di questo pezzo lì</translation>
    </message>
    <message>
        <source>%1: temperature</source>
        <translation>%1: temperatura</translation>
    </message>
    <message>
        <source>%1 too cold</source>
        <translation>%1 troppo freddo</translation>
    </message>
    <message>
        <source>%1 too warm</source>
        <translation>%1 troppo caldo</translation>
    </message>
    <message>
        <source>%1: humidity</source>
        <translation>%1: umidità</translation>
    </message>
    <message>
        <source>%1 too dry</source>
        <translation>%1 troppo secco</translation>
    </message>
    <message>
        <source>%1 too damp</source>
        <translation>%1 troppo umido</translation>
    </message>
    <message>
        <source>%1: not logged</source>
        <translation>%1: non registrato</translation>
    </message>
    <message>
        <source>of this time nothing is known</source>
        <translation>di questo tempo non si sa niente</translation>
    </message>
    <message>
        <source>Stages and their air</source>
        <translation>Fasi e la loro aria</translation>
    </message>
</context>
<context>
    <name>SaveCalendar</name>
    <message>
        <source>Save the calendar</source>
        <translation>Salva il calendario</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Calendario (*.ics)</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another place.</source>
        <translation>%1 non si è potuto scrivere: %2. Scegliere un altro posto.</translation>
    </message>
    <message>
        <source>Calendar kept in %1.</source>
        <translation>Calendario salvato in %1.</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Pagina %1 di %2</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>Stampato %1</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Come</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Data e ora</translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation>Dispensa</translation>
    </message>
    <message>
        <source>&amp;Pack a finished piece…</source>
        <translation>&amp;Confeziona un pezzo finito…</translation>
    </message>
    <message>
        <source>Nothing is packed yet</source>
        <translation>Ancora niente confezionato</translation>
    </message>
    <message>
        <source>When a piece is signed as done, pack it here: whole, cut, under vacuum or frozen. The list then shows what to eat first, what is left, and where everything went.</source>
        <translation>Quando un pezzo è firmato come finito, confezionarlo qui: intero, tagliato, sottovuoto o congelato. L&apos;elenco mostra poi che cosa mangiare prima, che cosa resta e dove è andato tutto.</translation>
    </message>
    <message>
        <source>Pack a finished piece</source>
        <translation>Confeziona un pezzo finito</translation>
    </message>
    <message>
        <source>In eating order: open packs first, then the nearest day.</source>
        <translation>In ordine di consumo: prima le confezioni aperte, poi il giorno più vicino.</translation>
    </message>
    <message>
        <source>Show packs that are &amp;gone</source>
        <translation>Mostra le confezioni &amp;esaurite</translation>
    </message>
    <message>
        <source>Show packs that are gone</source>
        <translation>Mostra le confezioni esaurite</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Confezioni</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Modifica…</translation>
    </message>
    <message>
        <source>&amp;Take from it…</source>
        <translation>&amp;Preleva…</translation>
    </message>
    <message>
        <source>What was taken from the pack</source>
        <translation>Che cosa è stato prelevato dalla confezione</translation>
    </message>
    <message>
        <source>Eat</source>
        <translation>Consumo</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Confezione</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Prodotto</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Come</translation>
    </message>
    <message>
        <source>%1, open since %2</source>
        <translation>%1, aperta da %2</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Resta</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>Conservare fino al</translation>
    </message>
    <message>
        <source>▲ %1, past</source>
        <translation>▲ %1, passato</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Posto</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Che ne è stato</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Quanto</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>A chi</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>From piece %1 of batch %2.</source>
        <translation>Dal pezzo %1 della partita %2.</translation>
    </message>
    <message>
        <source>Finished packs: what to eat first and where it went</source>
        <translation>Confezioni finite: che cosa mangiare prima e dove è andata</translation>
    </message>
    <message>
        <source>Its yield is not known: the raw or the finished weight was not taken.</source>
        <translation>La resa non è nota: il peso fresco o quello finito non è stato preso.</translation>
    </message>
    <message>
        <source>Yield: %1 of %2 raw, %3 (lost %4); packed %5.</source>
        <translation>Resa: %1 di %2 fresco, %3 (calo %4); confezionato %5.</translation>
    </message>
    <message>
        <source>At that loss the meat cost %1 a finished kilogram.</source>
        <translation>Con questo calo la carne è costata %1 al chilogrammo finito.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No day is set to keep it until.</source>
        <translation>Non è fissato alcun giorno fino al quale conservarlo.</translation>
    </message>
    <message>
        <source>Keep until %1 by a rule: %2.</source>
        <translation>Conservare fino al %1 per una regola: %2.</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day.</source>
        <translation>Conservare fino al %1: un giorno scelto da qualcuno.</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day, because: %2</source>
        <translation>Conservare fino al %1: un giorno scelto da qualcuno, perché: %2</translation>
    </message>
</context>
<context>
    <name>TagText</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Partita %1</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inizio</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Obiettivo</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>Appeso</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Calo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Cartellini</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation>Oggi</translation>
    </message>
    <message>
        <source>&amp;Weigh-in round</source>
        <translation>Giro di &amp;pesate</translation>
    </message>
    <message>
        <source>&amp;Calendar</source>
        <translation>&amp;Calendario</translation>
    </message>
    <message>
        <source>No work yet</source>
        <translation>Ancora nessun lavoro</translation>
    </message>
    <message>
        <source>Once a batch is planned, this page lists each day&apos;s work across all batches: turning, rubbing, weighing, looking at the chambers, judging what is ready. One key ticks a line off; what was missed stays at the top.</source>
        <translation>Quando una partita è pianificata, questa pagina elenca il lavoro di ogni giorno per tutte le partite: girare, massaggiare, pesare, guardare le celle, giudicare che cosa è pronto. Un tasto spunta una riga; ciò che è stato saltato resta in alto.</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>Pianifica una partita</translation>
    </message>
    <message>
        <source>&amp;Leave out this time</source>
        <translation>&amp;Tralascia questa volta</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation>Fatt&amp;o</translation>
    </message>
    <message>
        <source>Nothing is left for today.</source>
        <translation>Per oggi non resta niente.</translation>
    </message>
    <message>
        <source>&amp;Do it now</source>
        <translation>&amp;Fai ora</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Apri</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Ritira</translation>
    </message>
    <message>
        <source>Space or Enter: %1 Delete: leave it out this time.</source>
        <extracomment>%1 what the key does</extracomment>
        <translation>Spazio o Invio: %1 Canc: tralascia questa volta.</translation>
    </message>
    <message>
        <source>Space: %1</source>
        <translation>Spazio: %1</translation>
    </message>
    <message>
        <source>The day&apos;s work across all batches</source>
        <translation>Il lavoro del giorno per tutte le partite</translation>
    </message>
    <message>
        <source>Work of the day</source>
        <translation>Lavoro del giorno</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Osservazioni</translation>
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
        <translation>% UR</translation>
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
        <translation>giorni</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>settimane</translation>
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
        <translation>settimana</translation>
    </message>
    <message>
        <source>day</source>
        <translation>giorno</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>ore</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>ora</translation>
    </message>
</context>
<context>
    <name>Upset</name>
    <message>
        <source>none</source>
        <translation>nessuno</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>Upset in %1: %2 to %3, highest air temperature %4.</source>
        <translation>Guasto in %1: da %2 a %3, temperatura massima dell&apos;aria %4.</translation>
    </message>
    <message>
        <source>Without a reading: %1.</source>
        <translation>Senza letture: %1.</translation>
    </message>
    <message>
        <source>%1 %2: stage %3, hung %4, lost %5, salt at most %6, nitrite put on %7.</source>
        <translation>%1 %2: fase %3, appeso %4, calo %5, sale al massimo %6, nitrito messo %7.</translation>
    </message>
    <message>
        <source>%1 %2 (water activity %3)</source>
        <translation>%1 %2 (attività dell&apos;acqua %3)</translation>
    </message>
    <message>
        <source>  Air in growth range: %1.</source>
        <translation>  Aria nell&apos;intervallo di crescita: %1.</translation>
    </message>
    <message>
        <source>A record of the air, not of the meat&apos;s core, and no judgement.</source>
        <translation>Una registrazione dell&apos;aria, non del cuore della carne, e nessun giudizio.</translation>
    </message>
</context>
<context>
    <name>WarmWords</name>
    <message>
        <source>No time can be given: see below.</source>
        <translation>Non si può dare un tempo: vedere sotto.</translation>
    </message>
    <message>
        <source>It is there already.</source>
        <translation>Ci è già arrivato.</translation>
    </message>
    <message>
        <source>About %1 in the warm air; 8 in 10 pieces take %2 to %3.</source>
        <translation>Circa %1 nell&apos;aria calda; 8 pezzi su 10 impiegano da %2 a %3.</translation>
    </message>
    <message>
        <source>at most %1 tenfold steps in a laboratory medium, without lag</source>
        <translation>al massimo %1 decuplicazioni in un terreno di laboratorio, senza latenza</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nessuna</translation>
    </message>
    <message>
        <source>Warm finish, %1: air at %2 and %3, from %4 to %5 lost.</source>
        <translation>Finitura calda, %1: aria a %2 e %3, calo da %4 a %5.</translation>
    </message>
    <message>
        <source>In the growth range of %1: %2 (%3)</source>
        <translation>Nell&apos;intervallo di crescita di %1: %2 (%3)</translation>
    </message>
</context>
<context>
    <name>WhatIfWords</name>
    <message>
        <source>reached</source>
        <translation>raggiunto</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>non raggiunto</translation>
    </message>
    <message>
        <source>by today</source>
        <translation>entro oggi</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (da %2 a %3)</translation>
    </message>
    <message>
        <source>not reachable: more likely never than ever</source>
        <translation>non raggiungibile: più probabile mai che prima o poi</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a temperature, %2 a humidity: air</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Air ahead</source>
        <translation>Aria d&apos;ora in poi</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Obiettivo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stato</translation>
    </message>
    <message>
        <source>1 chance in 10 by</source>
        <translation>1 probabilità su 10 entro</translation>
    </message>
    <message>
        <source>Even odds by</source>
        <translation>1 probabilità su 2 entro</translation>
    </message>
    <message>
        <source>9 chances in 10 by</source>
        <translation>9 probabilità su 10 entro</translation>
    </message>
    <message>
        <source>Levels off at</source>
        <translation>Si ferma al</translation>
    </message>
    <message>
        <source>No humidity at %1 draws water as strongly as %2 does.</source>
        <translation>Nessuna umidità a %1 toglie acqua con la forza di %2.</translation>
    </message>
    <message>
        <source>Equal drying power: %1 at %2 draws water as strongly as %3 at %4. How far the piece can dry follows from humidity almost alone.</source>
        <translation>Pari potere essiccante: %1 a %2 toglie acqua quanto %3 a %4. Fin dove il pezzo può asciugare dipende quasi solo dall&apos;umidità.</translation>
    </message>
    <message>
        <source>%1 lies in the cited growth range of %2 (%3 to %4), which %5 does not. %6</source>
        <translation>%1 sta nell&apos;intervallo di crescita citato di %2 (da %3 a %4), %5 no. %6</translation>
    </message>
</context>
<context>
    <name>WorkList</name>
    <message>
        <source>Work of the day</source>
        <translation>Lavoro del giorno</translation>
    </message>
</context>
<context>
    <name>app::window::Session</name>
    <message>
        <source>Open a book</source>
        <translation>Apri un libro</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Libri di Saltloft (*.saltloft);;Tutti i file (*)</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Nuovo libro</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Libri di Saltloft (*.saltloft)</translation>
    </message>
    <message>
        <source>Back up a copy</source>
        <translation>Salva una copia</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>The copy was written and read back: %1, %2, %3.</source>
        <translation>La copia è stata scritta e riletta: %1, %2, %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n partita</numerusform>
            <numerusform>%n partite</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n pezzo</numerusform>
            <numerusform>%n pezzi</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weighing(s)</source>
        <translation>
            <numerusform>%n pesata</numerusform>
            <numerusform>%n pesate</numerusform>
        </translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Ripristina una copia</translation>
    </message>
    <message>
        <source>The backup is in its place and open.</source>
        <translation>La copia è al suo posto e aperta.</translation>
    </message>
    <message>
        <source>The backup is in its place and open. The book as it was before is kept as %1.</source>
        <translation>La copia è al suo posto e aperta. Il libro com&apos;era prima si trova in %1.</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartPainter</name>
    <message>
        <source>now</source>
        <translation>ora</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartTable</name>
    <message>
        <source>The chart as a table</source>
        <translation>Il grafico come tabella</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, come tabella</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lettura</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartView</name>
    <message>
        <source>Move over a point, or use Left and Right, to read it.</source>
        <translation>Passare sopra un punto, o usare Sinistra e Destra, per leggerlo.</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Grafico</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Copy the table</source>
        <translation>Copia la tabella</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Come tabella</translation>
    </message>
    <message>
        <source>Copied: paste it into a spreadsheet or a text.</source>
        <translation>Copiato: incollarlo in un foglio di calcolo o in un testo.</translation>
    </message>
    <message>
        <source>Enter chooses a row that was weighed; Ctrl+C copies.</source>
        <translation>Invio sceglie una riga pesata; Ctrl+C copia.</translation>
    </message>
    <message>
        <source>As a drawing</source>
        <translation>Come disegno</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, come tabella</translation>
    </message>
    <message>
        <source>Copy the table: %1</source>
        <translation>Copia la tabella: %1</translation>
    </message>
</context>
<context>
    <name>ui::edits::DayField</name>
    <message>
        <source>today</source>
        <translation>oggi</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>domani</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ieri</translation>
    </message>
    <message>
        <source>day, e.g. %1</source>
        <translation>giorno, p. es. %1</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>Pick from a calendar (Alt+Down)</source>
        <translation>Scegli da un calendario (Alt+Giù)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Pick a day</source>
        <translation>Scegli un giorno</translation>
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
        <translation>In ritardo</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Oggi</translation>
    </message>
    <message>
        <source>Coming</source>
        <translation>In arrivo</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation>Fatto oggi</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <extracomment>a heading of the day sheet and how many lines it has</extracomment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Lavoro</translation>
    </message>
    <message>
        <source>Batch and pieces</source>
        <translation>Partita e pezzi</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dove</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchDialog</name>
    <message>
        <source>Change batch %1</source>
        <translation>Modifica la partita %1</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Sigla</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Prodotto</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animale</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fornitore</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Lotto del fornitore</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Iniziata</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>Peso acquistato</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>Rifilato</translation>
    </message>
    <message>
        <source>Price per kilogram</source>
        <translation>Prezzo al chilogrammo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stato</translation>
    </message>
    <message>
        <source>The meat was frozen before</source>
        <translation>La carne era stata congelata</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>&amp;Code</source>
        <translation>&amp;Sigla</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nome</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Prodotto</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animale</translation>
    </message>
    <message>
        <source>&amp;Supplier</source>
        <translation>&amp;Fornitore</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>&amp;Lotto del fornitore</translation>
    </message>
    <message>
        <source>S&amp;tarted</source>
        <translation>&amp;Iniziata</translation>
    </message>
    <message>
        <source>&amp;Bought weight</source>
        <translation>Peso a&amp;cquistato</translation>
    </message>
    <message>
        <source>Trimmed &amp;off</source>
        <translation>&amp;Rifilato</translation>
    </message>
    <message>
        <source>P&amp;rice per kilogram</source>
        <translation>Pr&amp;ezzo al chilogrammo</translation>
    </message>
    <message>
        <source>Stat&amp;e</source>
        <translation>Sta&amp;to</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchesPage</name>
    <message>
        <source>Batches and pieces</source>
        <translation>Partite e pezzi</translation>
    </message>
    <message>
        <source>&amp;New batch…</source>
        <translation>&amp;Nuova partita…</translation>
    </message>
    <message>
        <source>No batch yet</source>
        <translation>Ancora nessuna partita</translation>
    </message>
    <message>
        <source>A batch is meat cured together from one recipe. Weigh it, let the mix sheet compute the cure, and give each piece a code. From then on every weighing finds its place by itself.</source>
        <translation>Una partita è carne salata insieme con una ricetta. Pesarla, lasciare che il foglio di miscela calcoli la salagione e dare a ogni pezzo una sigla. Da lì in poi ogni pesata trova il suo posto da sola.</translation>
    </message>
    <message>
        <source>Start the first batch</source>
        <translation>Inizia la prima partita</translation>
    </message>
    <message>
        <source>Find a batch</source>
        <translation>Trova una partita</translation>
    </message>
    <message>
        <source>Find by code, name, product or supplier</source>
        <translation>Cerca per sigla, nome, prodotto o fornitore</translation>
    </message>
    <message>
        <source>Show &amp;finished batches too</source>
        <translation>Mostra anche le partite &amp;finite</translation>
    </message>
    <message>
        <source>Show finished batches too</source>
        <translation>Mostra anche le partite finite</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Partite</translation>
    </message>
    <message>
        <source>Pieces of the batch</source>
        <translation>Pezzi della partita</translation>
    </message>
    <message>
        <source>&amp;Add a piece…</source>
        <translation>&amp;Aggiungi un pezzo…</translation>
    </message>
    <message>
        <source>&amp;Change the batch…</source>
        <translation>&amp;Modifica la partita…</translation>
    </message>
    <message>
        <source>Batches above pieces</source>
        <translation>Partite sopra i pezzi</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Sigla</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Partita</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Prodotto</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Iniziata</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stato</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pezzi</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>In asciugatura</translation>
    </message>
    <message>
        <source>Last weighed</source>
        <translation>Ultima pesata</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pezzo</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Posto</translation>
    </message>
    <message>
        <source>Net now</source>
        <translation>Netto ora</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Calo</translation>
    </message>
    <message>
        <source>At target</source>
        <translation>All&apos;obiettivo</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>started %1</source>
        <translation>iniziata %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>da %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lotto %1</translation>
    </message>
    <message>
        <source>bought %1</source>
        <translation>acquistati %1</translation>
    </message>
    <message>
        <source>All batches and their pieces</source>
        <translation>Tutte le partite e i loro pezzi</translation>
    </message>
    <message>
        <source>&amp;More</source>
        <translation>&amp;Altro</translation>
    </message>
    <message>
        <source>More about the batch</source>
        <translation>Altro sulla partita</translation>
    </message>
    <message>
        <source>&amp;Curves on one chart</source>
        <translation>&amp;Curve in un grafico</translation>
    </message>
    <message>
        <source>&amp;How it came out…</source>
        <translation>Come è &amp;riuscita…</translation>
    </message>
    <message>
        <source>How it came out: %1</source>
        <translation>Come è riuscita: %1</translation>
    </message>
    <message>
        <source>Salt, texture, and what to change next time</source>
        <translation>Sale, consistenza, e che cosa cambiare la prossima volta</translation>
    </message>
    <message>
        <source>Once a piece of it is signed as done.</source>
        <translation>Quando un suo pezzo è firmato come finito.</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberDialog</name>
    <message>
        <source>Change a chamber</source>
        <translation>Modifica una cella</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>Aggiungi una cella</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Che cos&apos;è</translation>
    </message>
    <message>
        <source>Lowest temperature wanted</source>
        <translation>Temperatura minima voluta</translation>
    </message>
    <message>
        <source>Highest temperature wanted</source>
        <translation>Temperatura massima voluta</translation>
    </message>
    <message>
        <source>Lowest humidity wanted</source>
        <translation>Umidità minima voluta</translation>
    </message>
    <message>
        <source>Highest humidity wanted</source>
        <translation>Umidità massima voluta</translation>
    </message>
    <message>
        <source>Water it can carry out a day</source>
        <translation>Acqua che può portare via al giorno</translation>
    </message>
    <message>
        <source>Places to hang</source>
        <translation>Posti per appendere</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nome</translation>
    </message>
    <message>
        <source>&amp;What it is</source>
        <translation>&amp;Che cos&apos;è</translation>
    </message>
    <message>
        <source>&amp;Temperature from</source>
        <translation>&amp;Temperatura da</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>&amp;Humidity from</source>
        <translation>&amp;Umidità da</translation>
    </message>
    <message>
        <source>Water it can carry &amp;out a day</source>
        <translation>Acqua che può portare &amp;via al giorno</translation>
    </message>
    <message>
        <source>&amp;Places to hang</source>
        <translation>&amp;Posti per appendere</translation>
    </message>
    <message>
        <source>N&amp;otes</source>
        <translation>N&amp;ote</translation>
    </message>
    <message>
        <source>Give the chamber a name, such as &quot;Cellar&quot;.</source>
        <translation>Dare alla cella un nome, per esempio «Cantina».</translation>
    </message>
    <message>
        <source>This is below the lowest temperature.</source>
        <translation>È sotto la temperatura minima.</translation>
    </message>
    <message>
        <source>This is below the lowest humidity.</source>
        <translation>È sotto l&apos;umidità minima.</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberPage</name>
    <message>
        <source>Chambers</source>
        <translation>Celle</translation>
    </message>
    <message>
        <source>No chamber yet</source>
        <translation>Ancora nessuna cella</translation>
    </message>
    <message>
        <source>A chamber is where pieces cure or hang: a fridge, a cabinet, a cellar. Add one with the air you want in it; then import your logger&apos;s file to see how the air really was.</source>
        <translation>Una cella è dove i pezzi si salano o stanno appesi: un frigorifero, un armadio, una cantina. Aggiungerne una con l&apos;aria voluta; poi importare il file del registratore per vedere com&apos;era davvero l&apos;aria.</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>Aggiungi una cella</translation>
    </message>
    <message>
        <source>About the chamber</source>
        <translation>Sulla cella</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aria</translation>
    </message>
    <message>
        <source>&amp;Air</source>
        <translation>&amp;Aria</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Sensori</translation>
    </message>
    <message>
        <source>&amp;Sensors</source>
        <translation>&amp;Sensori</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carico</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>&amp;Carico</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Registri</translation>
    </message>
    <message>
        <source>L&amp;ogs</source>
        <translation>&amp;Registri</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Cella</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Nuova…</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>Modi&amp;fica…</translation>
    </message>
    <message>
        <source>Record an &amp;upset…</source>
        <translation>Registra un &amp;guasto…</translation>
    </message>
    <message>
        <source>&amp;Import a log…</source>
        <translation>&amp;Importa un registro…</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Che cosa si mostra</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>umidità</translation>
    </message>
    <message>
        <source>drying force</source>
        <translation>forza essiccante</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Periodo</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>un giorno</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>una settimana</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 giorni</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 giorni</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>un anno</translation>
    </message>
    <message>
        <source>ten years</source>
        <translation>dieci anni</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensore</translation>
    </message>
    <message>
        <source>Second sensor laid over it</source>
        <translation>Secondo sensore sovrapposto</translation>
    </message>
    <message>
        <source>◀ &amp;Earlier</source>
        <translation>◀ &amp;Prima</translation>
    </message>
    <message>
        <source>La&amp;ter ▶</source>
        <translation>&amp;Dopo ▶</translation>
    </message>
    <message>
        <source>Ne&amp;west</source>
        <translation>Più r&amp;ecenti</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>Fuori fascia</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Da</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Per</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Peggiore</translation>
    </message>
    <message>
        <source>Times out of band, half an hour or longer</source>
        <translation>Tempi fuori fascia, mezz&apos;ora o più</translation>
    </message>
    <message>
        <source>no second sensor</source>
        <translation>nessun secondo sensore</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Of %1 watched, no time out of the band.</source>
        <translation>Su %1 osservati, mai fuori fascia.</translation>
    </message>
    <message>
        <source>Of %1 watched: %2.</source>
        <translation>Su %1 osservati: %2.</translation>
    </message>
    <message>
        <source>For %1 nothing is known.</source>
        <translation>Per %1 non si sa niente.</translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation>Aria in %1</translation>
    </message>
    <message>
        <source>No sensor here yet: import a log, or add a sensor on the Sensors tab.</source>
        <translation>Qui non c&apos;è ancora un sensore: importare un registro, o aggiungere un sensore nella scheda Sensori.</translation>
    </message>
    <message>
        <source>This sensor has no readings yet: import a log.</source>
        <translation>Questo sensore non ha ancora letture: importare un registro.</translation>
    </message>
    <message>
        <source>Batch about to be hung here</source>
        <translation>Partita che sta per essere appesa qui</translation>
    </message>
    <message>
        <source>&amp;What if this batch is hung here</source>
        <translation>&amp;E se questa partita si appende qui</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pezzo</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Posto</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Pesa</translation>
    </message>
    <message>
        <source>Hung for</source>
        <translation>Appeso da</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Calo</translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation>Acqua al giorno</translation>
    </message>
    <message>
        <source>Known from</source>
        <translation>Noto da</translation>
    </message>
    <message>
        <source>its weighings</source>
        <translation>le sue pesate</translation>
    </message>
    <message>
        <source>the usual pace of its age</source>
        <translation>il ritmo solito della sua età</translation>
    </message>
    <message>
        <source>Pieces by the water they give off</source>
        <translation>Pezzi secondo l&apos;acqua che cedono</translation>
    </message>
    <message>
        <source>Air, sensors and load of the rooms where pieces hang</source>
        <translation>Aria, sensori e carico dei locali dove i pezzi sono appesi</translation>
    </message>
    <message>
        <source>▲ never checked</source>
        <translation>▲ mai controllato</translation>
    </message>
    <message>
        <source>▲ due %1</source>
        <translation>▲ da fare %1</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dove</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Letture</translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation>Ultima lettura</translation>
    </message>
    <message>
        <source>Added to it</source>
        <translation>Correzione</translation>
    </message>
    <message>
        <source>Salt-bag check</source>
        <translation>Prova del sale</translation>
    </message>
    <message>
        <source>Ice check</source>
        <translation>Prova del ghiaccio</translation>
    </message>
    <message>
        <source>Sensors in this chamber</source>
        <translation>Sensori in questa cella</translation>
    </message>
    <message>
        <source>Instruments are often wrong, and believed. Check each over a salt slurry every six months and after a battery change; the dates are common practice.</source>
        <translation>Gli strumenti sbagliano spesso, e ci si crede. Controllarli ciascuno sulla poltiglia di sale ogni sei mesi e dopo un cambio di batteria; le scadenze sono pratica comune.</translation>
    </message>
    <message>
        <source>Add a senso&amp;r…</source>
        <translation>Aggi&amp;ungi un sensore…</translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>Mo&amp;difica…</translation>
    </message>
    <message>
        <source>Record a chec&amp;k…</source>
        <translation>Registra un contro&amp;llo…</translation>
    </message>
    <message>
        <source>%1 of water a day, %2 % of what %3 can carry out.</source>
        <translation>%1 di acqua al giorno, %2 % di quanto %3 può portare via.</translation>
    </message>
    <message>
        <source>%1 of water a day. What the chamber can carry out is not known: weigh the water it sheds in a day, and enter it under Change.</source>
        <translation>%1 di acqua al giorno. Quanto la cella può portare via non è noto: pesare l&apos;acqua che scarica in un giorno e inserirla in Modifica.</translation>
    </message>
    <message>
        <source>Nothing hangs here.</source>
        <translation>Qui non è appeso niente.</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 con %2</translation>
    </message>
    <message>
        <source>Worth swapping, the fast with the slow of the same age: %1.</source>
        <translation>Conviene scambiare, il veloce con il lento della stessa età: %1.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nessuno</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Letti</translation>
    </message>
    <message>
        <source>File</source>
        <translation>File</translation>
    </message>
    <message>
        <source>New readings</source>
        <translation>Letture nuove</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Tralasciate</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stato</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>ritirato</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>intero</translation>
    </message>
    <message>
        <source>▲ stopped half-way</source>
        <translation>▲ fermato a metà</translation>
    </message>
    <message>
        <source>Logs taken in</source>
        <translation>Registri letti</translation>
    </message>
    <message>
        <source>A watched folder&apos;s new files are taken in by themselves, once a first file of the sensor has been imported by hand.</source>
        <translation>I file nuovi di una cartella osservata si leggono da soli, dopo che un primo file del sensore è stato importato a mano.</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>Osser&amp;va una cartella…</translation>
    </message>
    <message>
        <source>Take the newest log &amp;back</source>
        <translation>Ritira il reg&amp;istro più recente</translation>
    </message>
    <message>
        <source>Stop watching the &amp;folder</source>
        <translation>Sme&amp;tti di osservare la cartella</translation>
    </message>
    <message>
        <source>Add a sensor first, so that the files have somewhere to go.</source>
        <translation>Aggiungere prima un sensore, perché i file abbiano dove andare.</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>Cartella da osservare</translation>
    </message>
    <message>
        <source>logger</source>
        <translation>registratore</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n place(s) are free.</source>
        <translation>
            <numerusform>%1 di %n posto è libero.</numerusform>
            <numerusform>%1 di %n posti sono liberi.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::CheckDialog</name>
    <message>
        <source>Check the book</source>
        <translation>Controlla il libro</translation>
    </message>
    <message>
        <source>Reads %1 from end to end: pages, indexes, links between entries and the sums of climate readings. It changes nothing.</source>
        <translation>Legge %1 da cima a fondo: pagine, indici, collegamenti tra le voci e riepiloghi delle letture del clima. Non modifica nulla.</translation>
    </message>
    <message>
        <source>The book is being read</source>
        <translation>Il libro viene letto</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Che cosa si è trovato</translation>
    </message>
    <message>
        <source>Make the climate roll-ups a&amp;new</source>
        <translation>Rifai i riepiloghi del &amp;clima</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>&amp;Recupera in un libro nuovo…</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>R&amp;ipristina una copia…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Chiudi</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Annulla</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annulla</translation>
    </message>
    <message>
        <source>The check is under way. A book with years of climate readings takes a while.</source>
        <translation>Il controllo è in corso. Un libro con anni di letture del clima richiede un po&apos; di tempo.</translation>
    </message>
    <message>
        <source>The climate roll-ups are being made anew from the readings.</source>
        <translation>I riepiloghi del clima vengono rifatti dalle letture.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Chiudi</translation>
    </message>
    <message>
        <source>This book is open for reading only: open it for writing to do that.</source>
        <translation>Questo libro è aperto in sola lettura: per farlo, aprirlo in scrittura.</translation>
    </message>
</context>
<context>
    <name>ui::pages::CompareDialog</name>
    <message>
        <source>Pieces for one chart</source>
        <translation>Pezzi per un grafico</translation>
    </message>
    <message>
        <source>Find a piece</source>
        <translation>Cerca un pezzo</translation>
    </message>
    <message>
        <source>Find by code, piece, batch or product</source>
        <translation>Cerca per sigla, pezzo, partita o prodotto</translation>
    </message>
    <message>
        <source>Pieces, ticked ones are drawn</source>
        <translation>Pezzi, quelli spuntati vengono disegnati</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annulla</translation>
    </message>
    <message>
        <source>&amp;Draw them</source>
        <translation>&amp;Disegna</translation>
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
        <translation>Nessun altro pezzo è stato ancora appeso.</translation>
    </message>
    <message>
        <source>%1 is the most a chart can tell apart; the newest are drawn.</source>
        <translation>Un grafico ne distingue al massimo %1; si disegnano i più recenti.</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>Spuntati: %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::EntryDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Annulla</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Registra</translation>
    </message>
    <message>
        <source>%1
If this is right, press Keep again.</source>
        <translation>%1
Se è giusto, premere di nuovo Registra.</translation>
    </message>
</context>
<context>
    <name>ui::pages::EventDialog</name>
    <message>
        <source>Drying starts. The net weight now is the hung weight that losses count from.</source>
        <translation>L&apos;asciugatura comincia. Il peso netto di ora è il peso da appeso da cui contano i cali.</translation>
    </message>
    <message>
        <source>A casing or net was put on. Its weight is tare from now on.</source>
        <translation>Si è messo un budello o una rete. Da ora il suo peso è tara.</translation>
    </message>
    <message>
        <source>Casing or net was changed. The net weight stays; only the tare changes.</source>
        <translation>Budello o rete sono stati cambiati. Il peso netto resta; cambia solo la tara.</translation>
    </message>
    <message>
        <source>Lard, paste or pepper was put on. The added weight is not meat.</source>
        <translation>Si è messa sugna, pasta o pepe. Il peso aggiunto non è carne.</translation>
    </message>
    <message>
        <source>Something was cut off. Start and target shrink in proportion.</source>
        <translation>Qualcosa è stato tagliato via. Inizio e obiettivo calano in proporzione.</translation>
    </message>
    <message>
        <source>A wedge was taken to taste. Start and target shrink in proportion.</source>
        <translation>Si è preso un cuneo da assaggiare. Inizio e obiettivo calano in proporzione.</translation>
    </message>
    <message>
        <source>The piece was pressed. Water pressed out counts as loss.</source>
        <translation>Il pezzo è stato pressato. L&apos;acqua spremuta conta come calo.</translation>
    </message>
    <message>
        <source>The piece was washed or soaked. The next weighing may be wet.</source>
        <translation>Il pezzo è stato lavato o messo in ammollo. La prossima pesata può essere bagnata.</translation>
    </message>
    <message>
        <source>The piece hangs elsewhere now.</source>
        <translation>Il pezzo ora è appeso altrove.</translation>
    </message>
    <message>
        <source>The piece was frozen. The cure clock stops.</source>
        <translation>Il pezzo è stato congelato. L&apos;orologio della salagione si ferma.</translation>
    </message>
    <message>
        <source>The piece is thawed. The cure clock runs again.</source>
        <translation>Il pezzo è scongelato. L&apos;orologio della salagione riparte.</translation>
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
        <translation>obiettivo netto: %1</translation>
    </message>
    <message>
        <source>target on the scale: %1</source>
        <translation>obiettivo sulla bilancia: %1</translation>
    </message>
    <message>
        <source>tare: %1</source>
        <translation>tara: %1</translation>
    </message>
    <message>
        <source>No number changes.</source>
        <translation>Nessun numero cambia.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Giorno</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Ora</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Giorno</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>&amp;Ora</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>Peso netto prima</translation>
    </message>
    <message>
        <source>Net weight after</source>
        <translation>Peso netto dopo</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>Peso netto &amp;prima</translation>
    </message>
    <message>
        <source>Net weight &amp;after</source>
        <translation>Peso netto &amp;dopo</translation>
    </message>
    <message>
        <source>Net weight as hung</source>
        <translation>Peso netto da appeso</translation>
    </message>
    <message>
        <source>&amp;Net weight as hung</source>
        <translation>Peso netto da &amp;appeso</translation>
    </message>
    <message>
        <source>Tare from now on</source>
        <translation>Tara da ora in poi</translation>
    </message>
    <message>
        <source>&amp;Tare from now on</source>
        <translation>&amp;Tara da ora in poi</translation>
    </message>
    <message>
        <source>New start weight</source>
        <translation>Nuovo peso iniziale</translation>
    </message>
    <message>
        <source>in proportion</source>
        <translation>in proporzione</translation>
    </message>
    <message>
        <source>New &amp;start, if not in proportion</source>
        <translation>Nuovo &amp;inizio, se non in proporzione</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Cella</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Che cosa cambia</translation>
    </message>
</context>
<context>
    <name>ui::pages::GuidePage</name>
    <message>
        <source>Guide</source>
        <translation>Guida</translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation>Capitolo</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>Capitoli</translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation>Testo del capitolo</translation>
    </message>
    <message>
        <source>Search the guide</source>
        <translation>Cerca nella guida</translation>
    </message>
    <message>
        <source>Pre&amp;vious</source>
        <translation>Pre&amp;cedente</translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <translation>S&amp;uccessivo</translation>
    </message>
    <message>
        <source>The guide is in English.</source>
        <translation>La guida è in inglese.</translation>
    </message>
    <message>
        <source>“%1” is not in the guide.</source>
        <translation>«%1» non è nella guida.</translation>
    </message>
    <message>
        <source>How the work goes, what to do when, and the mathematics</source>
        <translation>Come si lavora, che cosa fare quando, e la matematica</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n punto</numerusform>
            <numerusform>%n punti</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n chapter(s)</source>
        <translation>
            <numerusform>%1 in %n capitolo</numerusform>
            <numerusform>%1 in %n capitoli</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::HangingPage</name>
    <message>
        <source>What hangs</source>
        <translation>Che cosa è appeso</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Cella</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Cella</translation>
    </message>
    <message>
        <source>Nothing hangs yet</source>
        <translation>Ancora niente appeso</translation>
    </message>
    <message>
        <source>When a piece comes out of the cure, open it and choose &quot;What happened: hung to dry&quot;. From its second weighing on it stands here on a time axis with the interval in which it is expected to reach its target.</source>
        <translation>Quando un pezzo esce dalla salagione, aprirlo e scegliere «Che cosa è successo: appeso ad asciugare». Dalla seconda pesata compare qui su un asse del tempo con l&apos;intervallo in cui ci si aspetta che arrivi all&apos;obiettivo.</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation>Pronto entro</translation>
    </message>
    <message>
        <source>What is &amp;ready by</source>
        <translation>Che cosa è &amp;pronto entro</translation>
    </message>
    <message>
        <source>Drying pieces</source>
        <translation>Pezzi in asciugatura</translation>
    </message>
    <message>
        <source>Columns and dates</source>
        <translation>Colonne e date</translation>
    </message>
    <message>
        <source>Bar: how far the loss has come towards the target, from hanging to now. Box: 8 chances in 10 that the target is reached inside; the line in it is even odds. An arrow: it may never be. At target is not done: look, touch and cut before you decide.</source>
        <translation>Barra: quanto il calo è avanzato verso l&apos;obiettivo, da appeso a ora. Riquadro: 8 probabilità su 10 che l&apos;obiettivo si raggiunga lì dentro; sulla linea è una su due. Una freccia: forse mai. All&apos;obiettivo non vuol dire finito: guardare, toccare e tagliare prima di decidere.</translation>
    </message>
    <message>
        <source>It dries much faster or slower than the others of its batch.</source>
        <translation>Asciuga molto più in fretta o più piano degli altri della sua partita.</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Sigla</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pezzo</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Appeso</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Calo</translation>
    </message>
    <message>
        <source>fast ▲ </source>
        <translation>veloce ▲ </translation>
    </message>
    <message>
        <source>slow ▼ </source>
        <translation>lento ▼ </translation>
    </message>
    <message>
        <source>At target</source>
        <translation>All&apos;obiettivo</translation>
    </message>
    <message>
        <source>all</source>
        <translation>tutti</translation>
    </message>
    <message>
        <source>Type a day, such as a market or a feast, to see which pieces are expected to be at their target.</source>
        <translation>Digitare un giorno, come un mercato o una festa, per vedere quali pezzi ci si aspetta all&apos;obiettivo.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nessuno</translation>
    </message>
    <message>
        <source>Nine chances in ten or better: %1. More likely than not: %2. Possible: %3.</source>
        <translation>Nove probabilità su dieci o meglio: %1. Più sì che no: %2. Possibile: %3.</translation>
    </message>
    <message>
        <source>Drying pieces on a time axis, and what is ready by a day</source>
        <translation>Pezzi in asciugatura su un asse del tempo, e che cosa è pronto entro un giorno</translation>
    </message>
    <message>
        <source>Nothing hangs.</source>
        <translation>Niente è appeso.</translation>
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
        <translation>come trovato nel file</translation>
    </message>
    <message>
        <source>Import a climate log</source>
        <translation>Importa un registro del clima</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation>Avanzamento dell&apos;importazione</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Chiudi</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importa</translation>
    </message>
    <message>
        <source>Choose the file your logger wrote. Nothing is stored before you press Import, and one Undo takes the whole log back.</source>
        <translation>Scegliere il file scritto dal registratore. Prima di premere Importa non si salva niente, e un solo Annulla ritira tutto il registro.</translation>
    </message>
    <message>
        <source>Log file</source>
        <translation>File del registro</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>&amp;Scegli…</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;File</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensore</translation>
    </message>
    <message>
        <source>&amp;Sensor</source>
        <translation>Se&amp;nsore</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>anno, mese, giorno</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>giorno, mese, anno</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mese, giorno, anno</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>Temperatura in</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Segno decimale</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgola</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Orologio</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>ora locale di %1</translation>
    </message>
    <message>
        <source>winter time all year</source>
        <translation>ora solare tutto l&apos;anno</translation>
    </message>
    <message>
        <source>&amp;Dates</source>
        <translation>&amp;Date</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>&amp;Temperatura in</translation>
    </message>
    <message>
        <source>D&amp;ecimal sign</source>
        <translation>Segno d&amp;ecimale</translation>
    </message>
    <message>
        <source>Cloc&amp;k</source>
        <translation>&amp;Orologio</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Che cosa</translation>
    </message>
    <message>
        <source>Reads as</source>
        <translation>Si legge come</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Quanto è certo</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Perché</translation>
    </message>
    <message>
        <source>Or else</source>
        <translation>Oppure</translation>
    </message>
    <message>
        <source>How the file reads</source>
        <translation>Come si legge il file</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Umidità</translation>
    </message>
    <message>
        <source>First readings</source>
        <translation>Prime letture</translation>
    </message>
    <message>
        <source>Logs (*.csv *.txt *.tsv *.log);;All files (*)</source>
        <translation>Registri (*.csv *.txt *.tsv *.log);;Tutti i file (*)</translation>
    </message>
    <message>
        <source>Part of this is a guess. Say above how the file is to be read; it is remembered for this sensor.</source>
        <translation>Una parte è solo un&apos;ipotesi. Dire qui sopra come va letto il file; resta memorizzato per questo sensore.</translation>
    </message>
    <message>
        <source>The file reads well.</source>
        <translation>Il file si legge bene.</translation>
    </message>
    <message>
        <source>&amp;Cancel the import</source>
        <translation>&amp;Annulla l&apos;importazione</translation>
    </message>
    <message>
        <source>The first is line %1: %2.</source>
        <translation>La prima è la riga %1: %2.</translation>
    </message>
    <message>
        <source>%1 say something else than the book, which was left as it is.</source>
        <translation>%1 dicono altro dal libro, che è rimasto com&apos;era.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n lettura</numerusform>
            <numerusform>%n letture</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the first %1 lines %n are no readings; they will be left out.</source>
        <translation>
            <numerusform>Delle prime %1 righe %n non è una lettura; sarà tralasciata.</numerusform>
            <numerusform>Delle prime %1 righe %n non sono letture; saranno tralasciate.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n reading(s) are new.</source>
        <translation>
            <numerusform>%1 di %n lettura è nuova.</numerusform>
            <numerusform>%1 di %n letture sono nuove.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopped. %n reading(s) were taken in before; Undo takes them back.</source>
        <translation>
            <numerusform>Fermato. %n lettura è stata presa prima; Annulla la ritira.</numerusform>
            <numerusform>Fermato. %n letture sono state prese prima; Annulla le ritira.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) are no readings.</source>
        <translation>
            <numerusform>%n riga non è una lettura.</numerusform>
            <numerusform>%n righe non sono letture.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::KeepByFields</name>
    <message>
        <source>Rule for keeping it</source>
        <translation>Regola di conservazione</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>Conservare fino al</translation>
    </message>
    <message>
        <source>Why this day</source>
        <translation>Perché questo giorno</translation>
    </message>
    <message>
        <source>needed for a day of your own</source>
        <translation>necessario per un giorno proprio</translation>
    </message>
    <message>
        <source>none: your own day, or no day</source>
        <translation>nessuna: un giorno proprio, o nessuno</translation>
    </message>
    <message>
        <source>Without a rule the day is yours. How long a pack keeps depends on the product, its dryness and the cold; follow your own code.</source>
        <translation>Senza regola il giorno lo sceglie chi confeziona. Quanto dura una confezione dipende dal prodotto, da quanto è asciutto e dal freddo; seguire le norme del proprio paese.</translation>
    </message>
</context>
<context>
    <name>ui::pages::LostWeightDialog</name>
    <message>
        <source>%1: a weight is lost</source>
        <translation>%1: manca un peso</translation>
    </message>
    <message>
        <source>Enter as an &amp;estimate</source>
        <translation>Inserisci come &amp;stima</translation>
    </message>
    <message>
        <source>No start weight can be found missing</source>
        <translation>Non manca nessun peso iniziale</translation>
    </message>
    <message>
        <source>Raw and hung weight are both in the book, or the piece was never weighed. A weighing that was missed later needs nothing: the curve has no fixed rhythm.</source>
        <translation>Il peso fresco e quello da appeso sono entrambi nel libro, oppure il pezzo non è mai stato pesato. Una pesata saltata più tardi non richiede nulla: la curva non ha un ritmo fisso.</translation>
    </message>
    <message>
        <source>Which weight is lost</source>
        <translation>Quale peso manca</translation>
    </message>
    <message>
        <source>Day it should have been taken</source>
        <translation>Giorno in cui andava preso</translation>
    </message>
    <message>
        <source>Net weight, estimated</source>
        <translation>Peso netto, stimato</translation>
    </message>
    <message>
        <source>Which weight is &amp;lost</source>
        <translation>Quale peso &amp;manca</translation>
    </message>
    <message>
        <source>&amp;Day it should have been taken</source>
        <translation>&amp;Giorno in cui andava preso</translation>
    </message>
    <message>
        <source>&amp;Net weight, estimated</source>
        <translation>Peso &amp;netto, stimato</translation>
    </message>
    <message>
        <source>What can be said of it</source>
        <translation>Che cosa se ne può dire</translation>
    </message>
    <message>
        <source>Entered as an estimate it stands in the list with its range. Losses count from it and are as uncertain as it is; the curve does not lean on it. It can be undone.</source>
        <translation>Come stima resta nell&apos;elenco con il suo intervallo. I cali si contano da lì e sono incerti quanto la stima; la curva non vi si appoggia. Si può annullare.</translation>
    </message>
    <message>
        <source>Or leave it unknown</source>
        <translation>Oppure lasciarlo ignoto</translation>
    </message>
    <message>
        <source>Cancel, and nothing is made up: the days since hanging, the rate from weighing to weighing and the loss from every weight that is known are still counted. The target can be bound to one of those under Change.</source>
        <translation>Annulla, e nulla viene inventato: i giorni da quando è appeso, il ritmo da una pesata all&apos;altra e il calo da ogni peso noto si contano comunque. Con Modifica l&apos;obiettivo si può legare a uno di questi.</translation>
    </message>
    <message>
        <source>Enter the day, and the estimate stands here.</source>
        <translation>Inserire il giorno: la stima compare qui.</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>Calcolo in corso…</translation>
    </message>
    <message numerus="yes">
        <source>About %1; 8 in 10 such pieces lie between %2 and %3. From %n piece(s) of its batch and the air they hung in.</source>
        <translation>
            <numerusform>Circa %1; 8 pezzi così su 10 stanno tra %2 e %3. Da %n pezzo della sua partita e dall&apos;aria in cui era appeso.</numerusform>
            <numerusform>Circa %1; 8 pezzi così su 10 stanno tra %2 e %3. Da %n pezzi della sua partita e dall&apos;aria in cui erano appesi.</numerusform>
        </translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a raw and a hung weight are needed.</source>
        <translation>Nessun altro pezzo può dirlo: servono due pezzi della partita con peso fresco e peso da appeso.</translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a hung weight, five weighings and half their target lost are needed.</source>
        <translation>Nessun altro pezzo può dirlo: servono due pezzi della partita con peso da appeso, cinque pesate e metà del calo voluto.</translation>
    </message>
    <message>
        <source>By its form and the air alone it lay between %1 and %2: too wide to count from.</source>
        <translation>Dalla sola forma e dall&apos;aria stava tra %1 e %2: troppo largo per contare da lì.</translation>
    </message>
    <message>
        <source>There is no estimate to enter yet.</source>
        <translation>Non c&apos;è ancora una stima da inserire.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MainWindow</name>
    <message>
        <source>Daily round</source>
        <translation>Giro quotidiano</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>Il libro</translation>
    </message>
    <message>
        <source>The house</source>
        <translation>La casa</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>What was done last</source>
        <translation>Che cosa si è fatto per ultimo</translation>
    </message>
    <message>
        <source>The open book</source>
        <translation>Il libro aperto</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Pagine</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Pagina</translation>
    </message>
    <message>
        <source>Invented data: this book shows a producer that does not exist. Nothing you do here touches your own book.</source>
        <translation>Dati inventati: questo libro mostra un produttore che non esiste. Niente di ciò che si fa qui tocca il proprio libro.</translation>
    </message>
    <message>
        <source>This book is open for reading only.</source>
        <translation>Questo libro è aperto in sola lettura.</translation>
    </message>
    <message>
        <source>Demonstration book</source>
        <translation>Libro dimostrativo</translation>
    </message>
    <message>
        <source>%1 – Saltloft</source>
        <translation>%1 – Saltloft</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annulla</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Ripeti</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>Menu</translation>
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
        <translation>&amp;Nuovo libro…</translation>
    </message>
    <message>
        <source>&amp;Open book…</source>
        <translation>&amp;Apri un libro…</translation>
    </message>
    <message>
        <source>Open the &amp;demonstration book</source>
        <translation>Apri il libro &amp;dimostrativo</translation>
    </message>
    <message>
        <source>&amp;Back up a copy…</source>
        <translation>&amp;Salva una copia…</translation>
    </message>
    <message>
        <source>&amp;Print this page…</source>
        <translation>Stam&amp;pa questa pagina…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Esci</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Modifica</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Modifica</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Vai</translation>
    </message>
    <message>
        <source>Go</source>
        <translation>Vai</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Indietro</translation>
    </message>
    <message>
        <source>To the &amp;places</source>
        <translation>All&apos;&amp;elenco delle pagine</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Aiuto</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Aiuto</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Avvertenze</translation>
    </message>
    <message>
        <source>&amp;About Saltloft</source>
        <translation>&amp;Informazioni su Saltloft</translation>
    </message>
    <message>
        <source>About Saltloft</source>
        <translation>Informazioni su Saltloft</translation>
    </message>
    <message>
        <source>Saltloft %1

Plan, weigh and follow cured and air-dried meat.

Free software under the GNU General Public License, version 3 or later.
It keeps records and computes; it does not decide whether food may be eaten.</source>
        <translation>Saltloft %1

Pianificare, pesare e seguire carni salate e asciugate all&apos;aria.

Software libero con licenza GNU General Public License, versione 3 o successiva.
Tiene registrazioni e calcola; non decide se un alimento si può mangiare.</translation>
    </message>
    <message>
        <source>&amp;Guide to this page</source>
        <translation>&amp;Guida a questa pagina</translation>
    </message>
    <message>
        <source>The demonstration book is made anew each time; there is nothing to restore.</source>
        <translation>Il libro dimostrativo si rifà ogni volta; non c&apos;è nulla da ripristinare.</translation>
    </message>
    <message>
        <source>This book is open elsewhere. Close it there and open it again to restore a backup.</source>
        <translation>Questo libro è aperto altrove. Chiuderlo là e riaprirlo per ripristinare una copia.</translation>
    </message>
    <message>
        <source>This book may only be read by you. Free the permissions of the file and its folder to restore a backup.</source>
        <translation>Questo libro si può solo leggere. Liberare i permessi del file e della sua cartella per ripristinare una copia.</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>R&amp;ipristina una copia…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of this book</source>
        <translation>Mette una copia precedente al posto di questo libro</translation>
    </message>
    <message>
        <source>&amp;Check the book…</source>
        <translation>C&amp;ontrolla il libro…</translation>
    </message>
    <message>
        <source>Reads the book from end to end and says whether it is whole</source>
        <translation>Legge il libro da cima a fondo e dice se è integro</translation>
    </message>
    <message>
        <source>This page has nothing to print.</source>
        <translation>Questa pagina non ha niente da stampare.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MergeDialog</name>
    <message>
        <source>Weigh %1 with others as one</source>
        <translation>Pesa %1 insieme ad altri</translation>
    </message>
    <message>
        <source>Weighed together with</source>
        <translation>Pesato insieme a</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code of the bundle</source>
        <translation>Sigla del gruppo</translation>
    </message>
    <message>
        <source>All together on the scale</source>
        <translation>Tutti insieme sulla bilancia</translation>
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
        <translation>Pesato &amp;insieme a</translation>
    </message>
    <message>
        <source>&amp;Code of the bundle</source>
        <translation>&amp;Sigla del gruppo</translation>
    </message>
    <message>
        <source>&amp;All together on the scale</source>
        <translation>Tutti insieme sulla &amp;bilancia</translation>
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
        <translation>Segnare almeno un altro pezzo.</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Che cosa cambia</translation>
    </message>
    <message>
        <source>Mark the pieces and weigh them together; the new start and target then stand here.</source>
        <translation>Segnare i pezzi e pesarli insieme; qui compaiono allora il nuovo peso iniziale e l&apos;obiettivo.</translation>
    </message>
    <message>
        <source>Weighed apart: %1 net; together: %2 net</source>
        <translation>Pesati separati: %1 netti; insieme: %2 netti</translation>
    </message>
    <message>
        <source>No other piece of this batch is at the same stage: there is none to weigh it with.</source>
        <translation>Nessun altro pezzo di questa partita è alla stessa fase: non c’è nulla da pesare insieme.</translation>
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
        <translation>Quantità</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contato su</translation>
    </message>
    <message>
        <source>On the label</source>
        <translation>In etichetta</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Fissa</translation>
    </message>
    <message>
        <source>Ingredient of line %1</source>
        <translation>Ingrediente della riga %1</translation>
    </message>
    <message>
        <source>Amount of line %1</source>
        <translation>Quantità della riga %1</translation>
    </message>
    <message>
        <source>2.5 %, 40 g, 100 mL</source>
        <translation>2,5 %, 40 g, 100 mL</translation>
    </message>
    <message>
        <source>What line %1 is a share of</source>
        <translation>Di che cosa la riga %1 è una parte</translation>
    </message>
    <message>
        <source>What the label of line %1 says</source>
        <translation>Che cosa dice l&apos;etichetta della riga %1</translation>
    </message>
    <message>
        <source>Hold line %1 as it is</source>
        <translation>Fissa la riga %1</translation>
    </message>
    <message>
        <source>Take line %1 out</source>
        <translation>Togli la riga %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixOwnDialog</name>
    <message>
        <source>An ingredient of my own</source>
        <translation>Un ingrediente proprio</translation>
    </message>
    <message>
        <source>Enter what the label says; divide the figures with semicolons. Words: nitrite, nitrate, salt, sodium, sugar, alcohol, acid, water, density (g to the mL).</source>
        <translation>Inserire ciò che dice l&apos;etichetta; separare i dati con punti e virgola. Parole: nitrite, nitrate, salt, sodium, sugar, alcohol, acid, water, density (g al mL).</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
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
        <translation>Sale nitritato</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sale</translation>
    </message>
    <message>
        <source>Sugar or syrup</source>
        <translation>Zucchero o sciroppo</translation>
    </message>
    <message>
        <source>Spirit</source>
        <translation>Distillato</translation>
    </message>
    <message>
        <source>Wine</source>
        <translation>Vino</translation>
    </message>
    <message>
        <source>Vinegar</source>
        <translation>Aceto</translation>
    </message>
    <message>
        <source>Spice or herb</source>
        <translation>Spezia o erba</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Altro</translation>
    </message>
    <message>
        <source>What its label says</source>
        <translation>Che cosa dice l&apos;etichetta</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nome</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>On the &amp;label</source>
        <translation>In &amp;etichetta</translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation>&amp;Aggiungi</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>Dargli un nome.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixPage</name>
    <message>
        <source>Mix bench</source>
        <translation>Banco di miscela</translation>
    </message>
    <message>
        <source>The meat and the recipe</source>
        <translation>La carne e la ricetta</translation>
    </message>
    <message>
        <source>Weight of the meat</source>
        <translation>Peso della carne</translation>
    </message>
    <message>
        <source>1500 g; several pieces: 820 g; 1180 g</source>
        <translation>1500 g; più pezzi: 820 g; 1180 g</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Ricetta</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Versione</translation>
    </message>
    <message>
        <source>Name of the recipe</source>
        <translation>Nome della ricetta</translation>
    </message>
    <message>
        <source>&amp;Weight of the meat</source>
        <translation>&amp;Peso della carne</translation>
    </message>
    <message>
        <source>&amp;Recipe</source>
        <translation>&amp;Ricetta</translation>
    </message>
    <message>
        <source>&amp;Version</source>
        <translation>&amp;Versione</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nome</translation>
    </message>
    <message>
        <source>&amp;Add a line</source>
        <translation>&amp;Aggiungi una riga</translation>
    </message>
    <message>
        <source>&amp;Ingredient of my own...</source>
        <translation>&amp;Ingrediente proprio...</translation>
    </message>
    <message>
        <source>How, and against which limits</source>
        <translation>Come, e rispetto a quali limiti</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Metodo</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limiti</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>nessuno scelto</translation>
    </message>
    <message>
        <source>The scale shows steps of</source>
        <translation>Passo che la bilancia mostra</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non detto</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>Pickle taken up</source>
        <translation>Salamoia assorbita</translation>
    </message>
    <message>
        <source>10 % of the meat</source>
        <translation>10 % della carne</translation>
    </message>
    <message>
        <source>Pickle taken &amp;up</source>
        <translation>Salamoia assor&amp;bita</translation>
    </message>
    <message>
        <source>Expected loss of weight</source>
        <translation>Calo peso atteso</translation>
    </message>
    <message>
        <source>35 %, for limits on finished meat</source>
        <translation>35 %, per i limiti sulla carne finita</translation>
    </message>
    <message>
        <source>S&amp;kin on</source>
        <translation>Con cot&amp;enna</translation>
    </message>
    <message>
        <source>Skin on</source>
        <translation>Con cotenna</translation>
    </message>
    <message>
        <source>&amp;Fatty cut (belly, jowl)</source>
        <translation>Taglio &amp;grasso (pancetta, guanciale)</translation>
    </message>
    <message>
        <source>Fatty cut (belly, jowl)</source>
        <translation>Taglio grasso (pancetta, guanciale)</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>&amp;Metodo</translation>
    </message>
    <message>
        <source>&amp;Limits</source>
        <translation>&amp;Limiti</translation>
    </message>
    <message>
        <source>&amp;Scale step</source>
        <translation>Pa&amp;sso della bilancia</translation>
    </message>
    <message>
        <source>Expected l&amp;oss</source>
        <translation>&amp;Calo peso atteso</translation>
    </message>
    <message>
        <source>Find the amounts</source>
        <translation>Trova le quantità</translation>
    </message>
    <message>
        <source>Tick Hold on the lines that must stay, say what you want, and the other lines are found. What cannot be met is named.</source>
        <translation>Spuntare Fissa sulle righe che devono restare, dire che cosa si vuole, e le altre righe si trovano. Ciò che non si può soddisfare viene detto.</translation>
    </message>
    <message>
        <source>Salt wanted, of the meat</source>
        <translation>Sale voluto, sulla carne</translation>
    </message>
    <message>
        <source>2.75 %</source>
        <translation>2,75 %</translation>
    </message>
    <message>
        <source>Nitrite wanted, of the meat</source>
        <translation>Nitrito voluto, sulla carne</translation>
    </message>
    <message>
        <source>120 ppm</source>
        <translation>120 ppm</translation>
    </message>
    <message>
        <source>Salt wan&amp;ted</source>
        <translation>Sale vol&amp;uto</translation>
    </message>
    <message>
        <source>Nitrite wante&amp;d</source>
        <translation>Nitrito v&amp;oluto</translation>
    </message>
    <message>
        <source>&amp;Find the rest</source>
        <translation>&amp;Trova il resto</translation>
    </message>
    <message>
        <source>Put on the scale</source>
        <translation>Sulla bilancia</translation>
    </message>
    <message>
        <source>What to put on the scale</source>
        <translation>Che cosa mettere sulla bilancia</translation>
    </message>
    <message>
        <source>What that is</source>
        <translation>Che cosa è</translation>
    </message>
    <message>
        <source>Compare with another recipe</source>
        <translation>Confronta con un&apos;altra ricetta</translation>
    </message>
    <message>
        <source>&amp;Compare with</source>
        <translation>Con&amp;fronta con</translation>
    </message>
    <message>
        <source>What the meat gets</source>
        <translation>Che cosa riceve la carne</translation>
    </message>
    <message>
        <source>Against the limits</source>
        <translation>Rispetto ai limiti</translation>
    </message>
    <message>
        <source>The dose against the limits</source>
        <translation>La dose rispetto ai limiti</translation>
    </message>
    <message>
        <source>Look at this first</source>
        <translation>Da guardare per primo</translation>
    </message>
    <message>
        <source>Why this version</source>
        <translation>Perché questa versione</translation>
    </message>
    <message>
        <source>what changed, for your later self</source>
        <translation>che cosa è cambiato, per sé stessi più avanti</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>Perc&amp;hé</translation>
    </message>
    <message>
        <source>&amp;Keep this recipe</source>
        <translation>Conser&amp;va questa ricetta</translation>
    </message>
    <message>
        <source>These sums are no verdict on the food. Local codes, licensed practice and laboratory measurement come first.</source>
        <translation>Questi calcoli non sono un verdetto sull&apos;alimento. Norme locali, pratica autorizzata e misura di laboratorio vengono prima.</translation>
    </message>
    <message>
        <source>What to weigh for this meat, and what dose that really is</source>
        <translation>Che cosa pesare per questa carne, e quale dose è davvero</translation>
    </message>
    <message>
        <source>a new one</source>
        <translation>una nuova</translation>
    </message>
    <message>
        <source>no other</source>
        <translation>nessun&apos;altra</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1, versione %2</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>versione %1</translation>
    </message>
    <message>
        <source>version %1: %2</source>
        <translation>versione %1: %2</translation>
    </message>
    <message>
        <source>Enter the weight of the meat, and here stands what to weigh for it.</source>
        <translation>Inserire il peso della carne: qui compare che cosa pesare.</translation>
    </message>
    <message>
        <source>Read, and taken on</source>
        <translation>Letta e accettata</translation>
    </message>
    <message>
        <source>Caution read and taken on: %1</source>
        <translation>Avvertenza letta e accettata: %1</translation>
    </message>
    <message>
        <source>Stopped. To mend before this can be used: %1.</source>
        <translation>Fermato. Da correggere prima di usarla: %1.</translation>
    </message>
    <message>
        <source>Cautions to read and take on by name: %1.</source>
        <translation>Avvertenze da leggere e accettare per nome: %1.</translation>
    </message>
    <message>
        <source>Nothing stands open.</source>
        <translation>Niente resta aperto.</translation>
    </message>
    <message>
        <source>Enter the weight of the meat first.</source>
        <translation>Inserire prima il peso della carne.</translation>
    </message>
    <message>
        <source>Say how much salt or nitrite you want.</source>
        <translation>Dire quanto sale o nitrito si vuole.</translation>
    </message>
    <message>
        <source>Mend the stops first: something is not known yet.</source>
        <translation>Rimediare prima agli stop: qualcosa non è ancora noto.</translation>
    </message>
    <message>
        <source>Found: the lines not held were changed.</source>
        <translation>Trovato: le righe non bloccate sono state cambiate.</translation>
    </message>
    <message>
        <source>Give the recipe a name first.</source>
        <translation>Dare prima un nome alla ricetta.</translation>
    </message>
    <message>
        <source>Nothing has changed since the last version.</source>
        <translation>Dall&apos;ultima versione niente è cambiato.</translation>
    </message>
    <message>
        <source>Use it for a &amp;batch…</source>
        <translation>Usa per una &amp;partita…</translation>
    </message>
    <message>
        <source>The salt of this recipe cannot be changed by itself: it is held, or comes with the curing salt or a pickle. Say it as a wish and find the rest.</source>
        <translation>Il sale di questa ricetta non si può cambiare da solo: è bloccato, o viene con il sale nitritato o con una salamoia. Indicarlo come desiderio e far trovare il resto.</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>Foglio di miscela</translation>
    </message>
    <message>
        <source>Read the cautions and take each of them on first.</source>
        <translation>Prima leggere le avvertenze e accettarle una per una.</translation>
    </message>
    <message>
        <source>The batch&apos;s record names this recipe and the cautions now.</source>
        <translation>La scheda della partita ora riporta questa ricetta e le avvertenze.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixUseDialog</name>
    <message>
        <source>Use %1 for a batch</source>
        <translation>Usa %1 per una partita</translation>
    </message>
    <message>
        <source>The batch&apos;s record then names this version as the recipe it was salted with, and prints each caution with who took it on and when.</source>
        <translation>La scheda della partita riporta allora questa versione come la ricetta con cui è stata salata, e stampa ogni avvertenza con chi l&apos;ha accettata e quando.</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Partita</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Taken on by</source>
        <translation>Accettate da</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Perché</translation>
    </message>
    <message>
        <source>&amp;Batch</source>
        <translation>&amp;Partita</translation>
    </message>
    <message>
        <source>&amp;Taken on by</source>
        <translation>&amp;Accettate da</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>P&amp;erché</translation>
    </message>
    <message numerus="yes">
        <source>%n caution(s) taken on</source>
        <translation>
            <numerusform>%n avvertenza accettata</numerusform>
            <numerusform>%n avvertenze accettate</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Put it in the book</source>
        <translation>&amp;Metti nel libro</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first; this recipe is kept meanwhile.</source>
        <translation>Non c&apos;è ancora una partita aperta. Prima iniziarne una; intanto questa ricetta è conservata.</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first.</source>
        <translation>Non c&apos;è ancora una partita aperta. Prima iniziarne una.</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>Indicare chi accetta le avvertenze: scegliere o scrivere il nome.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MonthView</name>
    <message>
        <source>%1 more</source>
        <translation>altri %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::NewBatchPage</name>
    <message>
        <source>New batch</source>
        <translation>Nuova partita</translation>
    </message>
    <message>
        <source>The meat</source>
        <translation>La carne</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>Sigla della partita</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Prodotto</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animale</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fornitore</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Lotto del fornitore</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Iniziata</translation>
    </message>
    <message>
        <source>Batch &amp;code</source>
        <translation>Sigla della par&amp;tita</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nome</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Prodotto</translation>
    </message>
    <message>
        <source>&amp;Started</source>
        <translation>&amp;Iniziata</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animale</translation>
    </message>
    <message>
        <source>S&amp;upplier</source>
        <translation>&amp;Fornitore</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>&amp;Lotto del fornitore</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>I pezzi</translation>
    </message>
    <message>
        <source>Raw weight as it goes into the cure, without wrapping. Measure the thickness at the thickest point.</source>
        <translation>Peso fresco così come va in salagione, senza involucro. Misurare lo spessore nel punto più spesso.</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>Un pezz&amp;o in più</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>Un pezzo in &amp;meno</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Calo voluto</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Contato da</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Piano</translation>
    </message>
    <message>
        <source>no plan</source>
        <translation>nessun piano</translation>
    </message>
    <message>
        <source>Loss aimed f&amp;or</source>
        <translation>Calo &amp;voluto</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>&amp;Contato da</translation>
    </message>
    <message>
        <source>Pl&amp;an</source>
        <translation>Pian&amp;o</translation>
    </message>
    <message>
        <source>The cure: dry, weighed, all of it taken up</source>
        <translation>La salagione: a secco, pesata, assorbita del tutto</translation>
    </message>
    <message>
        <source>Shares are of the raw weight. Curing salt counts by the strength on its packet, not by its name or colour.</source>
        <translation>Le parti sono sul peso fresco. Il sale nitritato conta per il titolo sulla confezione, non per nome o colore.</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sale</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucchero</translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation>Sale nitritato</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nessuno</translation>
    </message>
    <message>
        <source>Curing salt, dose</source>
        <translation>Sale nitritato, dose</translation>
    </message>
    <message>
        <source>Nitrite on the label</source>
        <translation>Nitrito in etichetta</translation>
    </message>
    <message>
        <source>as listed</source>
        <translation>come in catalogo</translation>
    </message>
    <message>
        <source>Nitrate on the label</source>
        <translation>Nitrato in etichetta</translation>
    </message>
    <message>
        <source>Sal&amp;t</source>
        <translation>&amp;Sale</translation>
    </message>
    <message>
        <source>Su&amp;gar</source>
        <translation>&amp;Zucchero</translation>
    </message>
    <message>
        <source>Weighed &amp;on</source>
        <translation>Pesato s&amp;u</translation>
    </message>
    <message>
        <source>&amp;Dose of it</source>
        <translation>&amp;Dose</translation>
    </message>
    <message>
        <source>N&amp;itrite on the label</source>
        <translation>Nit&amp;rito in etichetta</translation>
    </message>
    <message>
        <source>Nitrat&amp;e on the label</source>
        <translation>Nitrato in &amp;etichetta</translation>
    </message>
    <message>
        <source>Mix sheet: what to weigh for each piece</source>
        <translation>Foglio di miscela: che cosa pesare per ogni pezzo</translation>
    </message>
    <message>
        <source>Start the &amp;batch</source>
        <translation>Inizi&amp;a la partita</translation>
    </message>
    <message>
        <source>Code of piece %1</source>
        <translation>Sigla del pezzo %1</translation>
    </message>
    <message>
        <source>Cut of piece %1</source>
        <translation>Taglio del pezzo %1</translation>
    </message>
    <message>
        <source>Raw weight of piece %1</source>
        <translation>Peso fresco del pezzo %1</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>Spessore del pezzo %1</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>Forma del pezzo %1</translation>
    </message>
    <message>
        <source>code</source>
        <translation>sigla</translation>
    </message>
    <message>
        <source>cut or description</source>
        <translation>taglio o descrizione</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>peso fresco</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>spessore</translation>
    </message>
    <message>
        <source>Meat, pieces, cure and plan of a new batch</source>
        <translation>Carne, pezzi, salagione e piano di una nuova partita</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>Without a plan there are no dated tasks; weighings and forecasts work all the same.</source>
        <translation>Senza piano non ci sono lavori con data; pesate e previsioni funzionano lo stesso.</translation>
    </message>
    <message>
        <source>Enter a raw weight to see what to put on the scale.</source>
        <translation>Inserire un peso fresco per vedere che cosa mettere sulla bilancia.</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>Da pesare</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Tutto insieme</translation>
    </message>
    <message>
        <source>Off by the scale&apos;s step</source>
        <translation>Scarto per il passo della bilancia</translation>
    </message>
    <message>
        <source>up to ± %1</source>
        <translation>fino a ± %1</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>Carne: %1</translation>
    </message>
    <message>
        <source>salt in all: %1 of the meat</source>
        <translation>sale in tutto: %1 della carne</translation>
    </message>
    <message>
        <source>nitrite going in: %1 (as sodium nitrite)</source>
        <translation>nitrito aggiunto: %1 (come nitrito di sodio)</translation>
    </message>
    <message>
        <source>nitrate going in: %1 (as sodium nitrate)</source>
        <translation>nitrato aggiunto: %1 (come nitrato di sodio)</translation>
    </message>
    <message>
        <source>Within %1, by %2.</source>
        <translation>Entro %1, secondo %2.</translation>
    </message>
    <message>
        <source>Not to be computed from the recipe: %1.</source>
        <translation>Non calcolabile dalla ricetta: %1.</translation>
    </message>
    <message>
        <source>No limits are chosen; choose those of your country in Preferences.</source>
        <translation>Nessun limite è scelto; scegliere quelli del proprio paese nelle Preferenze.</translation>
    </message>
    <message>
        <source>A field needs mending; it says how.</source>
        <translation>Un campo è da correggere; dice come.</translation>
    </message>
    <message>
        <source>The cure has a stop above. Mend it first.</source>
        <translation>Qui sopra uno stop ferma la salagione. Rimediare prima.</translation>
    </message>
    <message numerus="yes">
        <source>%n stage(s), from %1 to about %2.</source>
        <translation>
            <numerusform>%n fase, da %1 a circa %2.</numerusform>
            <numerusform>%n fasi, da %1 a circa %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::NoteDialog</name>
    <message>
        <source>Add a note</source>
        <translation>Aggiungi una nota</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Argomento</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation>&amp;Argomento</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>Add a &amp;photo…</source>
        <translation>Aggiungi una &amp;foto…</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Aggiungi una foto</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Immagini (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>This photo cannot be read or is larger than 12 MB. Choose a smaller copy.</source>
        <translation>Questa foto non si legge o supera 12 MB. Scegliere una copia più piccola.</translation>
    </message>
    <message>
        <source>Write a few words or add a photo.</source>
        <translation>Scrivere qualche parola o aggiungere una foto.</translation>
    </message>
    <message>
        <source>%1 is not a picture that can be shown. Choose a JPEG or PNG file.</source>
        <translation>%1 non è un&apos;immagine che si possa mostrare. Scegliere un file JPEG o PNG.</translation>
    </message>
</context>
<context>
    <name>ui::pages::OpenTroubleDialog</name>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>R&amp;ipristina una copia…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in its place; the file as it is now is kept under another name.</source>
        <translation>Mette al suo posto una copia precedente; il file com&apos;è ora si conserva con un altro nome.</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>&amp;Recupera in un libro nuovo…</translation>
    </message>
    <message>
        <source>Carries every entry that can still be read into a new book; this one is not changed.</source>
        <translation>Porta in un libro nuovo ogni voce che si legge ancora; questo non si modifica.</translation>
    </message>
    <message>
        <source>&amp;Open another book…</source>
        <translation>&amp;Apri un altro libro…</translation>
    </message>
    <message>
        <source>Leaves this file as it is.</source>
        <translation>Lascia questo file com&apos;è.</translation>
    </message>
    <message>
        <source>Make a &amp;new book…</source>
        <translation>Crea un &amp;nuovo libro…</translation>
    </message>
    <message>
        <source>Starts an empty book in another file.</source>
        <translation>Inizia un libro vuoto in un altro file.</translation>
    </message>
    <message>
        <source>The book did not open</source>
        <translation>Il libro non si è aperto</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Chiudi</translation>
    </message>
</context>
<context>
    <name>ui::pages::OutcomeDialog</name>
    <message>
        <source>not said</source>
        <translation>non detto</translation>
    </message>
    <message>
        <source>How %1 came out</source>
        <translation>Come è riuscita %1</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sale</translation>
    </message>
    <message>
        <source>Texture</source>
        <translation>Consistenza</translation>
    </message>
    <message>
        <source>What to change next time</source>
        <translation>Che cosa cambiare la prossima volta</translation>
    </message>
    <message>
        <source>&amp;Salt</source>
        <translation>&amp;Sale</translation>
    </message>
    <message>
        <source>&amp;Texture</source>
        <translation>&amp;Consistenza</translation>
    </message>
    <message>
        <source>&amp;What to change next time</source>
        <translation>C&amp;he cosa cambiare la prossima volta</translation>
    </message>
    <message>
        <source>The next plan, mix and batch of this product show what this suggests. Nothing is changed unless you say so.</source>
        <translation>Il prossimo piano, la prossima miscela e la prossima partita di questo prodotto mostrano che cosa ne segue. Nulla cambia se non lo si chiede.</translation>
    </message>
    <message>
        <source>Say how it came out, or write a few words.</source>
        <translation>Dire come è riuscita, o scrivere qualche parola.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackChangeDialog</name>
    <message>
        <source>Change pack %1</source>
        <translation>Modifica la confezione %1</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>Sigla sulla confezione</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Dove sta</translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation>Aperta il</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>&amp;Sigla sulla confezione</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>&amp;Dove sta</translation>
    </message>
    <message>
        <source>&amp;Opened on</source>
        <translation>&amp;Aperta il</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>Conservare &amp;fino al</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Come</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>C&amp;ome</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>&amp;Regola di conservazione</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>Perché &amp;questo giorno</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackDialog</name>
    <message>
        <source>Pack a finished piece</source>
        <translation>Confeziona un pezzo finito</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pezzo</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>Sigla sulla confezione</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Come</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Packed on</source>
        <translation>Confezionato il</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Dove sta</translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation>&amp;Pezzo</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>&amp;Sigla sulla confezione</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>&amp;Come</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>P&amp;eso</translation>
    </message>
    <message>
        <source>Packed &amp;on</source>
        <translation>Confezionato &amp;il</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>&amp;Dove sta</translation>
    </message>
    <message>
        <source>No piece is finished yet. Sign a piece as done in its review first.</source>
        <translation>Nessun pezzo è ancora finito. Firmarne prima uno come finito nella pagina «È finito?».</translation>
    </message>
    <message>
        <source>This day is your own. Say why in a few words, or choose a rule.</source>
        <translation>Questo giorno è una scelta propria. Dire perché in poche parole, o scegliere una regola.</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>&amp;Regola di conservazione</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>Conservare &amp;fino al</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>Perché &amp;questo giorno</translation>
    </message>
    <message>
        <source>Such a day says when to look, not what to think of it. Look, smell and decide at each opening.</source>
        <translation>Un giorno così dice quando guardare, non che cosa pensarne. Guardare, annusare e decidere a ogni apertura.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PastBox</name>
    <message>
        <source>Take it back</source>
        <translation>Ritira</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Usa</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Ritira: %1</translation>
    </message>
    <message>
        <source>Use it: %1</source>
        <translation>Usa: %1</translation>
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
        <translation>scegliere o scrivere un nome</translation>
    </message>
</context>
<context>
    <name>ui::pages::PersonDialog</name>
    <message>
        <source>Change a person</source>
        <translation>Modifica una persona</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Aggiungi una persona</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniziali</translation>
    </message>
    <message>
        <source>&amp;Works here now</source>
        <translation>&amp;Lavora qui ora</translation>
    </message>
    <message>
        <source>Works here now</source>
        <translation>Lavora qui ora</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nome</translation>
    </message>
    <message>
        <source>&amp;Initials, as signed</source>
        <translation>&amp;Iniziali, come si firma</translation>
    </message>
    <message>
        <source>Enter a name and the initials to sign with.</source>
        <translation>Inserire un nome e le iniziali con cui firma.</translation>
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
        <translation>&amp;Precedente</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Successiva</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>Salva una &amp;copia…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>C&amp;hiudi</translation>
    </message>
    <message>
        <source>%1 of %2 · %3 · %4 · %5</source>
        <translation>%1 di %2 · %3 · %4 · %5</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>Save a copy of the photo</source>
        <translation>Salva una copia della foto</translation>
    </message>
    <message>
        <source>The copy is in %1.</source>
        <translation>La copia è in %1.</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>%1 non si è potuto scrivere. Scegliere un altro posto.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoStrip</name>
    <message>
        <source>The photo %1 cannot be shown: it is damaged, or of a kind that cannot be read here. Save a copy to try it elsewhere.</source>
        <translation>La foto %1 non si può mostrare: è danneggiata, o di un tipo che qui non si legge. Salvarne una copia per provarla altrove.</translation>
    </message>
    <message>
        <source>The photo %1 is no longer in the book. The note itself is kept.</source>
        <translation>La foto %1 non è più nel libro. La nota stessa resta.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>%1: not readable</source>
        <translation>%1: non leggibile</translation>
    </message>
    <message>
        <source>Photo of %1, %2</source>
        <translation>Foto di %1, %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::PieceDialog</name>
    <message>
        <source>Chamber</source>
        <translation>Cella</translation>
    </message>
    <message>
        <source>not in a chamber</source>
        <translation>in nessuna cella</translation>
    </message>
    <message>
        <source>Add a piece</source>
        <translation>Aggiungi un pezzo</translation>
    </message>
    <message>
        <source>Change piece %1</source>
        <translation>Modifica il pezzo %1</translation>
    </message>
    <message>
        <source>Code on the tag</source>
        <translation>Sigla sul cartellino</translation>
    </message>
    <message>
        <source>&amp;Code on the tag</source>
        <translation>&amp;Sigla sul cartellino</translation>
    </message>
    <message>
        <source>Cut or description</source>
        <translation>Taglio o descrizione</translation>
    </message>
    <message>
        <source>C&amp;ut or description</source>
        <translation>Taglio o &amp;descrizione</translation>
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
        <translation>Spessore</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>Sp&amp;essore</translation>
    </message>
    <message>
        <source>Raw weight</source>
        <translation>Peso fresco</translation>
    </message>
    <message>
        <source>&amp;Raw weight</source>
        <translation>Peso f&amp;resco</translation>
    </message>
    <message>
        <source>Fat, as a share of the raw piece</source>
        <translation>Grasso, come parte del pezzo fresco</translation>
    </message>
    <message>
        <source>&amp;Fat share, if known</source>
        <translation>Parte di &amp;grasso, se nota</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Cotenna</translation>
    </message>
    <message>
        <source>S&amp;kin</source>
        <translation>C&amp;otenna</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Calo voluto</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>Calo &amp;voluto</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Contato da</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>&amp;Contato da</translation>
    </message>
    <message>
        <source>Cha&amp;mber</source>
        <translation>Ce&amp;lla</translation>
    </message>
    <message>
        <source>Hook, rail or shelf</source>
        <translation>Gancio, barra o ripiano</translation>
    </message>
    <message>
        <source>&amp;Hook, rail or shelf</source>
        <translation>Ganc&amp;io, barra o ripiano</translation>
    </message>
    <message>
        <source>Order in the weigh-in round</source>
        <translation>Ordine nel giro di pesate</translation>
    </message>
    <message>
        <source>&amp;Order in the round</source>
        <translation>Ordine nel giro di &amp;pesate</translation>
    </message>
    <message>
        <source>Give the piece a code: two or three letters or digits.</source>
        <translation>Dare al pezzo una sigla: due o tre lettere o cifre.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PiecePage</name>
    <message>
        <source>Piece</source>
        <translation>Pezzo</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Modifica…</translation>
    </message>
    <message>
        <source>What &amp;happened</source>
        <translation>Che cosa è &amp;successo</translation>
    </message>
    <message>
        <source>What happened to it</source>
        <translation>Che cosa gli è successo</translation>
    </message>
    <message>
        <source>Is it &amp;done?</source>
        <translation>È &amp;finito?</translation>
    </message>
    <message>
        <source>&amp;Weigh…</source>
        <translation>&amp;Pesa…</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Che cosa mostra il grafico</translation>
    </message>
    <message>
        <source>net weight</source>
        <translation>peso netto</translation>
    </message>
    <message>
        <source>Time axis</source>
        <translation>Asse del tempo</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>per data</translation>
    </message>
    <message>
        <source>by days since hung</source>
        <translation>per giorni da quando è appeso</translation>
    </message>
    <message>
        <source>Show a&amp;ll</source>
        <translation>Mostra &amp;tutto</translation>
    </message>
    <message>
        <source>Save the c&amp;hart…</source>
        <translation>Salva il &amp;grafico…</translation>
    </message>
    <message>
        <source>Records of the piece</source>
        <translation>Registrazioni del pezzo</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesate</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Eventi</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Sigla</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stato</translation>
    </message>
    <message>
        <source>Pieces cut from one another</source>
        <translation>Pezzi tagliati l&apos;uno dall&apos;altro</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Famiglia</translation>
    </message>
    <message>
        <source>One piece in full</source>
        <translation>Un pezzo per intero</translation>
    </message>
    <message>
        <source>Enter corrects the marked weighing; the old entry stays.</source>
        <translation>Invio corregge la pesata segnata; la voce vecchia resta.</translation>
    </message>
    <message>
        <source>C&amp;orrect…</source>
        <translation>C&amp;orreggi…</translation>
    </message>
    <message>
        <source>Take &amp;back…</source>
        <translation>&amp;Ritira…</translation>
    </message>
    <message>
        <source>Add a &amp;note…</source>
        <translation>Aggiungi una &amp;nota…</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Che cosa c&apos;è sopra</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Sulla bilancia</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Netto</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Calo</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Osservazioni</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>superficie bagnata</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Che cosa</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>Netto prima</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>Netto dopo</translation>
    </message>
    <message>
        <source>Tare after</source>
        <translation>Tara dopo</translation>
    </message>
    <message>
        <source>taken back. %1</source>
        <translation>ritirata. %1</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Argomento</translation>
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
        <translation>partita %1, %2</translation>
    </message>
    <message>
        <source>Loss curve of %1</source>
        <translation>Curva del calo di %1</translation>
    </message>
    <message>
        <source>lost of the %1 (%2)</source>
        <translation>calo da: %1 (%2)</translation>
    </message>
    <message>
        <source>No weight to count a loss from yet.</source>
        <translation>Ancora nessun peso da cui contare un calo.</translation>
    </message>
    <message>
        <source>Target %1: %2 net, %3 on the scale</source>
        <translation>Obiettivo %1: %2 netto, %3 sulla bilancia</translation>
    </message>
    <message>
        <source>No target set.</source>
        <translation>Nessun obiettivo fissato.</translation>
    </message>
    <message>
        <source>At target: %1</source>
        <translation>All&apos;obiettivo: %1</translation>
    </message>
    <message>
        <source>Levels off at %1 to %2</source>
        <translation>Si ferma fra %1 e %2</translation>
    </message>
    <message>
        <source>Signed as done.</source>
        <translation>Firmato come finito.</translation>
    </message>
    <message>
        <source>%1 of the %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Lost: %1</source>
        <translation>Calo: %1</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>ritirato</translation>
    </message>
    <message>
        <source>corrected later</source>
        <translation>corretta in seguito</translation>
    </message>
    <message>
        <source>a correction</source>
        <translation>una correzione</translation>
    </message>
    <message>
        <source>Weighings (%1)</source>
        <translation>Pesate (%1)</translation>
    </message>
    <message>
        <source>Events (%1)</source>
        <translation>Eventi (%1)</translation>
    </message>
    <message>
        <source>Notes (%1)</source>
        <translation>Note (%1)</translation>
    </message>
    <message>
        <source>Family (%1)</source>
        <translation>Famiglia (%1)</translation>
    </message>
    <message>
        <source>This entry was corrected or taken back already; correct the newer one.</source>
        <translation>Questa voce è già stata corretta o ritirata; correggere la più nuova.</translation>
    </message>
    <message>
        <source>%1: %2 on the scale</source>
        <translation>%1: %2 sulla bilancia</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Salva il grafico</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
        <translation>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</translation>
    </message>
    <message>
        <source>The chart is in %1.</source>
        <translation>Il grafico è in %1.</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>%1 non si è potuto scrivere. Scegliere un altro posto.</translation>
    </message>
    <message>
        <source>finish it in warm air…</source>
        <translation>finirlo in aria calda…</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven: how long, and how long where microbes grow.</source>
        <translation>Un essiccatore o un forno a bassa temperatura: quanto tempo, e quanto dove i microbi crescono.</translation>
    </message>
    <message>
        <source>the fridge or chamber failed…</source>
        <translation>guasto del frigorifero o della cella…</translation>
    </message>
    <message>
        <source>Power cut, door left open: what each piece there was like, and how warm it became.</source>
        <translation>Corrente mancata, porta aperta: com&apos;era ogni pezzo e quanto caldo ha fatto.</translation>
    </message>
    <message>
        <source>Enter on a note with a photo shows it large.</source>
        <translation>Invio su una nota con foto la mostra in grande.</translation>
    </message>
    <message>
        <source>%1 is in no chamber of the book. Choose its chamber under Change first.</source>
        <translation>%1 non è in nessuna cella del libro. Scegliere prima la sua cella in Modifica.</translation>
    </message>
    <message>
        <source>This note has no photo.</source>
        <translation>Questa nota non ha foto.</translation>
    </message>
    <message>
        <source>What &amp;if…</source>
        <translation>E &amp;se…</translation>
    </message>
    <message>
        <source>a weight is lost…</source>
        <translation>manca un peso…</translation>
    </message>
    <message>
        <source>A start weight was never written down: what its siblings say it was.</source>
        <translation>Un peso iniziale mai annotato: che cosa ne dicono gli altri pezzi della partita.</translation>
    </message>
    <message>
        <source>Pieces on the chart</source>
        <translation>Pezzi nel grafico</translation>
    </message>
    <message>
        <source>&amp;Earlier pieces</source>
        <translation>Pezzi pr&amp;ecedenti</translation>
    </message>
    <message>
        <source>Own earlier pieces for comparison</source>
        <translation>Propri pezzi precedenti per confronto</translation>
    </message>
    <message>
        <source>this piece alone</source>
        <translation>solo questo pezzo</translation>
    </message>
    <message>
        <source>with its batch</source>
        <translation>con la sua partita</translation>
    </message>
    <message>
        <source>with its chamber</source>
        <translation>con la sua cella</translation>
    </message>
    <message>
        <source>with its product</source>
        <translation>con il suo prodotto</translation>
    </message>
    <message>
        <source>with chosen pieces…</source>
        <translation>con pezzi scelti…</translation>
    </message>
    <message>
        <source>Your own finished pieces of the same product and shape, as if hung on the same day</source>
        <translation>I propri pezzi finiti dello stesso prodotto e della stessa forma, come se appesi lo stesso giorno</translation>
    </message>
    <message>
        <source>No piece of the same product and shape was finished yet.</source>
        <translation>Nessun pezzo dello stesso prodotto e della stessa forma è ancora finito.</translation>
    </message>
    <message>
        <source>loss from the %1</source>
        <translation>calo da: %1</translation>
    </message>
    <message>
        <source>Loss curves of %1 and others</source>
        <translation>Curve del calo di %1 e altri</translation>
    </message>
    <message>
        <source>No other such piece was hung and weighed since.</source>
        <translation>Nessun altro pezzo simile è stato appeso e poi pesato.</translation>
    </message>
    <message>
        <source>Not drawn, as one chart cannot tell more apart: %1 that hung before.</source>
        <translation>Non disegnati, perché un grafico non ne distingue di più: %1 appesi prima.</translation>
    </message>
    <message>
        <source>Not drawn, as this weight of theirs is not known: %1.</source>
        <translation>Non disegnati, perché questo loro peso non è noto: %1.</translation>
    </message>
    <message numerus="yes">
        <source>Leans on %n of your own finished piece(s) of this product.</source>
        <translation>
            <numerusform>Si appoggia a un pezzo finito proprio di questo prodotto.</numerusform>
            <numerusform>Si appoggia a %n pezzi finiti propri di questo prodotto.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>Piano</translation>
    </message>
    <message>
        <source>Sa&amp;ve as calendar file…</source>
        <translation>Sal&amp;va come file di calendario…</translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation>&amp;Usala</translation>
    </message>
    <message>
        <source>The stages</source>
        <translation>Le fasi</translation>
    </message>
    <message>
        <source>Stages of the plan</source>
        <translation>Fasi del piano</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Giorni</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Quanto dura</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Si basa su</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aria</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Lavoro</translation>
    </message>
    <message>
        <source>Into the book</source>
        <translation>Nel libro</translation>
    </message>
    <message>
        <source>Name of the batch</source>
        <translation>Nome della partita</translation>
    </message>
    <message>
        <source>optional, e.g. Winter coppa</source>
        <translation>facoltativo, p. es. Coppa d&apos;inverno</translation>
    </message>
    <message>
        <source>Name of the &amp;batch</source>
        <translation>Nome &amp;della partita</translation>
    </message>
    <message>
        <source>These weights are &amp;just off the scale</source>
        <translation>Questi pesi sono appena &amp;letti dalla bilancia</translation>
    </message>
    <message>
        <source>These weights are just off the scale</source>
        <translation>Questi pesi sono appena letti dalla bilancia</translation>
    </message>
    <message>
        <source>&amp;Put the batch in the book</source>
        <translation>Metti la partita nel li&amp;bro</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>non deciso</translation>
    </message>
    <message>
        <source>Template: %1.</source>
        <translation>Modello: %1.</translation>
    </message>
    <message>
        <source>Cure rules for the thickest piece, side by side: %1</source>
        <translation>Regole di salagione per il pezzo più spesso, una accanto all&apos;altra: %1</translation>
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
        <translation>Giri di «%1»</translation>
    </message>
    <message>
        <source>There is no plan to save: the day cannot be met.</source>
        <translation>Non c&apos;è un piano da salvare: il giorno non si può rispettare.</translation>
    </message>
    <message>
        <source>When to begin, and what to do when</source>
        <translation>Quando iniziare, e che cosa fare quando</translation>
    </message>
    <message>
        <source>What it will be</source>
        <translation>Che cosa sarà</translation>
    </message>
    <message>
        <source>Kind of product</source>
        <translation>Tipo di prodotto</translation>
    </message>
    <message>
        <source>Your name for the product</source>
        <translation>Il proprio nome per il prodotto</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Calo voluto</translation>
    </message>
    <message>
        <source>Where it will hang</source>
        <translation>Dove starà appeso</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>Your &amp;name for it</source>
        <translation>Il proprio &amp;nome</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>Cal&amp;o voluto</translation>
    </message>
    <message>
        <source>&amp;Hangs in</source>
        <translation>&amp;Appeso in</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>I pezzi</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Spessore</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>Un pezzo in &amp;più</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>Un pezzo in &amp;meno</translation>
    </message>
    <message>
        <source>Weight of piece %1</source>
        <translation>Peso del pezzo %1</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>Spessore del pezzo %1</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>Forma del pezzo %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>&amp;Start on</source>
        <translation>&amp;Inizia il</translation>
    </message>
    <message>
        <source>Start on</source>
        <translation>Inizia il</translation>
    </message>
    <message>
        <source>Be &amp;ready by</source>
        <translation>P&amp;ronto entro</translation>
    </message>
    <message>
        <source>Be ready by</source>
        <translation>Pronto entro</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Giorno</translation>
    </message>
    <message>
        <source>Keep slac&amp;k for slow pieces</source>
        <translation>Tieni un mar&amp;gine per i pezzi lenti</translation>
    </message>
    <message>
        <source>Keep slack for slow pieces</source>
        <translation>Tieni un margine per i pezzi lenti</translation>
    </message>
    <message>
        <source>Use the proposal: aim for %1</source>
        <translation>Usa la proposta: punta a %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanStrip</name>
    <message>
        <source>The plan along time</source>
        <translation>Il piano lungo il tempo</translation>
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
        <translation>Preferenze</translation>
    </message>
    <message>
        <source>This desk</source>
        <translation>Questa postazione</translation>
    </message>
    <message>
        <source>Kept on this computer, not in the book. Every field still accepts any unit.</source>
        <translation>Tenute su questo computer, non nel libro. Ogni campo accetta comunque qualsiasi unità.</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Pesi</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>grammi</translation>
    </message>
    <message>
        <source>grams and kilograms</source>
        <translation>grammi e chilogrammi</translation>
    </message>
    <message>
        <source>ounces</source>
        <translation>once</translation>
    </message>
    <message>
        <source>pounds and ounces</source>
        <translation>libbre e once</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Temperature</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>gradi Celsius</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation>gradi Fahrenheit</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Spessore</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>millimetri</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pollici</translation>
    </message>
    <message>
        <source>Liquids</source>
        <translation>Liquidi</translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation>millilitri</translation>
    </message>
    <message>
        <source>US fluid ounces</source>
        <translation>once fluide US</translation>
    </message>
    <message>
        <source>as the computer</source>
        <translation>come il computer</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Lingua</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Fuso orario</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>nessuno scelto</translation>
    </message>
    <message>
        <source>Limits to check against</source>
        <translation>Limiti di confronto</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colori</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>come il desktop</translation>
    </message>
    <message>
        <source>light</source>
        <translation>chiari</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>scuri</translation>
    </message>
    <message>
        <source>&amp;Weights</source>
        <translation>&amp;Pesi</translation>
    </message>
    <message>
        <source>&amp;Temperatures</source>
        <translation>&amp;Temperature</translation>
    </message>
    <message>
        <source>T&amp;hickness</source>
        <translation>Sp&amp;essore</translation>
    </message>
    <message>
        <source>Li&amp;quids</source>
        <translation>Li&amp;quidi</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Lin&amp;gua</translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation>Fuso o&amp;rario</translation>
    </message>
    <message>
        <source>&amp;Limits to check against</source>
        <translation>&amp;Limiti di confronto</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Colori</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Persone</translation>
    </message>
    <message>
        <source>Add a &amp;person…</source>
        <translation>Aggiungi una perso&amp;na…</translation>
    </message>
    <message>
        <source>Who signs decisions and corrections.</source>
        <translation>Chi firma decisioni e correzioni.</translation>
    </message>
    <message>
        <source>Who works at this desk</source>
        <translation>Chi lavora a questa postazione</translation>
    </message>
    <message>
        <source>Who works at this &amp;desk</source>
        <translation>C&amp;hi lavora a questa postazione</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniziali</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Works here</source>
        <translation>Lavora qui</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sì</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Scales</source>
        <translation>Bilance</translation>
    </message>
    <message>
        <source>Add a &amp;scale…</source>
        <translation>Aggiungi una &amp;bilancia…</translation>
    </message>
    <message>
        <source>The step is the smallest change the display shows. It decides which doses the scale can weigh and how sure a curve is.</source>
        <translation>Il passo è il minimo cambiamento che il display mostra. Decide quali dosi la bilancia può pesare e quanto è precisa una curva.</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Bilancia</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Passo</translation>
    </message>
    <message>
        <source>Check every</source>
        <translation>Controllo ogni</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In uso</translation>
    </message>
    <message>
        <source>nobody chosen</source>
        <translation>nessuno scelto</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>So things read: %1, %2, %3, %4.</source>
        <translation>Così si legge: %1, %2, %3, %4.</translation>
    </message>
    <message>
        <source>Units, language, limits, people and scales</source>
        <translation>Unità, lingua, limiti, persone e bilance</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n giorno</numerusform>
            <numerusform>%n giorni</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PrintDialog</name>
    <message>
        <source>Print</source>
        <translation>Stampa</translation>
    </message>
    <message>
        <source>Preview of the paper</source>
        <translation>Anteprima di stampa</translation>
    </message>
    <message>
        <source>What to print</source>
        <translation>Che cosa stampare</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Salva come PDF…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>S&amp;tampa…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Chiudi</translation>
    </message>
    <message>
        <source>No printer is set up on this computer; a PDF can be printed elsewhere.</source>
        <translation>Su questo computer non c&apos;è una stampante; un PDF si può stampare altrove.</translation>
    </message>
    <message>
        <source>There is nothing to print.</source>
        <translation>Non c&apos;è niente da stampare.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) in %1.</source>
        <translation>
            <numerusform>%n pagina in %1.</numerusform>
            <numerusform>%n pagine in %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Salva come PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) sent to the printer.</source>
        <translation>
            <numerusform>%n pagina inviata alla stampante.</numerusform>
            <numerusform>%n pagine inviate alla stampante.</numerusform>
        </translation>
    </message>
    <message>
        <source>The printer took nothing. Try a PDF instead.</source>
        <translation>La stampante non ha preso niente. Provare con un PDF.</translation>
    </message>
</context>
<context>
    <name>ui::pages::RestoreDialog</name>
    <message>
        <source>Restore a backup</source>
        <translation>Ripristina una copia</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of the book %1. Choose a copy to see what would be lost and what would come back; nothing is changed before you confirm.</source>
        <translation>Mette una copia precedente al posto del libro %1. Scegliere una copia per vedere che cosa andrebbe perso e che cosa tornerebbe; nulla cambia prima della conferma.</translation>
    </message>
    <message>
        <source>The backup is being read</source>
        <translation>La copia viene letta</translation>
    </message>
    <message>
        <source>Another &amp;file…</source>
        <translation>Un altro &amp;file…</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annulla</translation>
    </message>
    <message>
        <source>&amp;Restore this backup…</source>
        <translation>&amp;Ripristina questa copia…</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Fatta il</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Ultima voce</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Partite</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pezzi</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesate</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Dimensione</translation>
    </message>
    <message>
        <source>File</source>
        <translation>File</translation>
    </message>
    <message>
        <source>Backups of this book</source>
        <translation>Copie di questo libro</translation>
    </message>
    <message>
        <source>There is no backup in the folder “backups” beside the book. Choose a copy you keep elsewhere with Another file.</source>
        <translation>Nella cartella «backups» accanto al libro non c&apos;è nessuna copia. Scegliere con «Un altro file» una copia tenuta altrove.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copia</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Libri di Saltloft (*.saltloft);;Tutti i file (*)</translation>
    </message>
    <message>
        <source>Put this backup in the place of the book?</source>
        <translation>Mettere questa copia al posto del libro?</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Ripristina</translation>
    </message>
</context>
<context>
    <name>ui::pages::ReviewPage</name>
    <message>
        <source>Is it done?</source>
        <translation>È finito?</translation>
    </message>
    <message>
        <source>To the &amp;piece</source>
        <translation>Al &amp;pezzo</translation>
    </message>
    <message>
        <source>Evidence, not a verdict. A number says how much water has gone; your hand, nose and eye say the rest. Follow the code where you live and your laboratory.</source>
        <translation>Riscontri, non un verdetto. Un numero dice quanta acqua se n&apos;è andata; mano, naso e occhio dicono il resto. Seguire le norme del luogo e il proprio laboratorio.</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Riscontri</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Che cosa</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>Accanto</translation>
    </message>
    <message>
        <source>Look, then decide</source>
        <translation>Guardare, poi decidere</translation>
    </message>
    <message>
        <source>The centre feels</source>
        <translation>Al tatto il centro è</translation>
    </message>
    <message>
        <source>not felt yet</source>
        <translation>non ancora toccato</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>morbido</translation>
    </message>
    <message>
        <source>springy</source>
        <translation>elastico</translation>
    </message>
    <message>
        <source>firm</source>
        <translation>sodo</translation>
    </message>
    <message>
        <source>The &amp;centre feels</source>
        <translation>Al &amp;tatto il centro è</translation>
    </message>
    <message>
        <source>Add a &amp;note or photo…</source>
        <translation>Aggiungi una &amp;nota o una foto…</translation>
    </message>
    <message>
        <source>&amp;Done: it comes down</source>
        <translation>&amp;Finito: si stacca</translation>
    </message>
    <message>
        <source>Not &amp;yet: weigh and look again</source>
        <translation>Non ancora: pesare e &amp;riguardare</translation>
    </message>
    <message>
        <source>Disc&amp;ard: it is thrown out</source>
        <translation>&amp;Scartare: si butta</translation>
    </message>
    <message>
        <source>Look again on</source>
        <translation>Riguardare il</translation>
    </message>
    <message>
        <source>&amp;Look again on</source>
        <translation>Ri&amp;guardare il</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Perché</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>P&amp;erché</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmato da</translation>
    </message>
    <message>
        <source>Signed &amp;by</source>
        <translation>Firmato &amp;da</translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation>F&amp;irma</translation>
    </message>
    <message>
        <source>Is %1 done?</source>
        <translation>%1 è finito?</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>Signed before:
%1</source>
        <translation>Firmato prima:
%1</translation>
    </message>
    <message>
        <source>Evidence beside each other, and a signed decision</source>
        <translation>Riscontri uno accanto all&apos;altro, e una decisione firmata</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Add a p&amp;hoto…</source>
        <translation>Aggiungi una f&amp;oto…</translation>
    </message>
    <message>
        <source>No photo of this piece yet. The cut face says more than a number does: take one, and the next batch can be held beside it.</source>
        <translation>Ancora nessuna foto di questo pezzo. La faccia di taglio dice più di un numero: farne una, così la prossima partita le si potrà mettere accanto.</translation>
    </message>
    <message>
        <source>Finish it in warm a&amp;ir…</source>
        <translation>Finir&amp;lo in aria calda…</translation>
    </message>
    <message>
        <source>H&amp;ung again: it was down, and dries on</source>
        <translation>R&amp;iappeso, continua ad asciugare</translation>
    </message>
    <message>
        <source>Hung again: it was down, and dries on</source>
        <translation>Riappeso, continua ad asciugare</translation>
    </message>
    <message>
        <source>It goes back to the hanging pieces, and the day sheet asks for its weight again.</source>
        <translation>Torna tra i pezzi appesi, e il foglio del giorno ne chiede di nuovo il peso.</translation>
    </message>
    <message>
        <source>For a piece that is finished. This one hangs still: sign &quot;not yet&quot;.</source>
        <translation>Per un pezzo finito. Questo è ancora appeso: firmare «non ancora».</translation>
    </message>
    <message>
        <source>Choose what becomes of it first.</source>
        <translation>Prima scegliere che cosa ne sarà.</translation>
    </message>
    <message>
        <source>Hung again. %1</source>
        <translation>Riappeso. %1</translation>
    </message>
    <message>
        <source>Say who signs: choose or type the name.</source>
        <translation>Indicare chi firma: scegliere o scrivere il nome.</translation>
    </message>
</context>
<context>
    <name>ui::pages::SalvageDialog</name>
    <message>
        <source>Salvage into a new book</source>
        <translation>Recupera in un libro nuovo</translation>
    </message>
    <message>
        <source>Carries every entry of %1 that can still be read into a new book. The damaged book is not changed; keep it until you have looked through the new one.</source>
        <translation>Porta in un libro nuovo ogni voce di %1 che si legge ancora. Il libro danneggiato non si modifica; tenerlo finché non si è riguardato quello nuovo.</translation>
    </message>
    <message>
        <source>The book is being carried over</source>
        <translation>Il libro viene trasferito</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Chiudi</translation>
    </message>
    <message>
        <source>&amp;Salvage</source>
        <translation>&amp;Recupera</translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation>&amp;Apri il nuovo libro</translation>
    </message>
    <message>
        <source>The new book</source>
        <translation>Il nuovo libro</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>&amp;Scegli…</translation>
    </message>
    <message>
        <source>&amp;New book</source>
        <translation>&amp;Nuovo libro</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Tipo di voce</translation>
    </message>
    <message>
        <source>Carried over</source>
        <translation>Trasferite</translation>
    </message>
    <message>
        <source>Known to be lost</source>
        <translation>Risultano perse</translation>
    </message>
    <message>
        <source>What was carried over</source>
        <translation>Che cosa è stato trasferito</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Nuovo libro</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Libri di Saltloft (*.saltloft)</translation>
    </message>
    <message>
        <source>Name the file of the new book.</source>
        <translation>Indicare il file del nuovo libro.</translation>
    </message>
    <message>
        <source>%1 is there already and is not replaced. Choose another name.</source>
        <translation>%1 c&apos;è già e non si sostituisce. Scegliere un altro nome.</translation>
    </message>
    <message>
        <source>Nothing could be carried over. %1</source>
        <translation>Non si è potuto trasferire nulla. %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::ScaleDialog</name>
    <message>
        <source>Change a scale</source>
        <translation>Modifica una bilancia</translation>
    </message>
    <message>
        <source>Add a scale</source>
        <translation>Aggiungi una bilancia</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Smallest step it shows</source>
        <translation>Passo minimo che mostra</translation>
    </message>
    <message>
        <source>Check it every so many days</source>
        <translation>Controllarla ogni tanti giorni</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>In &amp;uso</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In uso</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nome</translation>
    </message>
    <message>
        <source>Smallest &amp;step it shows</source>
        <translation>&amp;Passo minimo che mostra</translation>
    </message>
    <message>
        <source>&amp;Check it every so many days</source>
        <translation>&amp;Controllarla ogni tanti giorni</translation>
    </message>
    <message>
        <source>Give the scale a name, such as &quot;bench scale&quot;.</source>
        <translation>Dare alla bilancia un nome, per esempio «bilancia da banco».</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorCheckDialog</name>
    <message>
        <source>Check %1</source>
        <translation>Controlla %1</translation>
    </message>
    <message>
        <source>Checked against</source>
        <translation>Controllato con</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag, 75 % humidity</source>
        <translation>Poltiglia di sale in sacchetto chiuso, umidità 75 %</translation>
    </message>
    <message>
        <source>Day of the check</source>
        <translation>Giorno del controllo</translation>
    </message>
    <message>
        <source>What the sensor said</source>
        <translation>Che cosa diceva il sensore</translation>
    </message>
    <message>
        <source>What you did about it</source>
        <translation>Che cosa si è fatto</translation>
    </message>
    <message>
        <source>Checked &amp;against</source>
        <translation>Controllato &amp;con</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Giorno</translation>
    </message>
    <message>
        <source>What the sensor &amp;said</source>
        <translation>Che cosa diceva il &amp;sensore</translation>
    </message>
    <message>
        <source>What you did about &amp;it</source>
        <translation>Che cosa si è &amp;fatto</translation>
    </message>
    <message>
        <source>Salt slurry: table salt just wet, in a closed bag with the sensor for twelve hours or more. Common practice: every six months; ice at least once a year.</source>
        <translation>Poltiglia di sale: sale da tavola appena bagnato, in un sacchetto chiuso con il sensore per dodici ore o più. Pratica comune: ogni sei mesi; ghiaccio almeno una volta l&apos;anno.</translation>
    </message>
    <message>
        <source>It is right.</source>
        <translation>È giusto.</translation>
    </message>
    <message>
        <source>It is off: add %1 K to its temperature.</source>
        <translation>È fuori: aggiungere %1 K alla temperatura.</translation>
    </message>
    <message>
        <source>It is off: add %1 points to its humidity.</source>
        <translation>È fuori: aggiungere %1 punti all&apos;umidità.</translation>
    </message>
    <message>
        <source>Ice water, 0 °C</source>
        <translation>Acqua e ghiaccio, 0 °C</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorDialog</name>
    <message>
        <source>Change a sensor</source>
        <translation>Modifica un sensore</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Aggiungi un sensore</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Where it hangs</source>
        <translation>Dove è appeso</translation>
    </message>
    <message>
        <source>Added to its temperature, kelvin</source>
        <translation>Aggiunto alla temperatura, kelvin</translation>
    </message>
    <message>
        <source>Added to its humidity, points</source>
        <translation>Aggiunto all&apos;umidità, punti</translation>
    </message>
    <message>
        <source>points</source>
        <translation>punti</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>In us&amp;o</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In uso</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nome</translation>
    </message>
    <message>
        <source>&amp;Where it hangs</source>
        <translation>&amp;Dove è appeso</translation>
    </message>
    <message>
        <source>Added to its &amp;temperature</source>
        <translation>Aggiunto alla &amp;temperatura</translation>
    </message>
    <message>
        <source>Added to its &amp;humidity</source>
        <translation>Aggiunto all&apos;&amp;umidità</translation>
    </message>
    <message>
        <source>Readings are kept as the sensor gave them; what is added here only changes what is shown and judged.</source>
        <translation>Le letture restano come il sensore le ha date; ciò che si aggiunge qui cambia solo ciò che si mostra e si giudica.</translation>
    </message>
    <message>
        <source>Give the sensor a name, such as &quot;by the door&quot;.</source>
        <translation>Dare al sensore un nome, per esempio «vicino alla porta».</translation>
    </message>
</context>
<context>
    <name>ui::pages::SplitDialog</name>
    <message>
        <source>Cut %1 into pieces</source>
        <translation>Taglia %1 in pezzi</translation>
    </message>
    <message>
        <source>Weigh each part without casing or net. Start weight and target are shared out in proportion; the family stays.</source>
        <translation>Pesare ogni parte senza budello né rete. Peso iniziale e obiettivo si ripartiscono in proporzione; la famiglia resta.</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>Peso netto prima</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>Peso netto &amp;prima</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>&amp;One part more</source>
        <translation>&amp;Una parte in più</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Che cosa cambia</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>&amp;Taglia</translation>
    </message>
    <message>
        <source>Code of part %1</source>
        <translation>Sigla della parte %1</translation>
    </message>
    <message>
        <source>Net weight of part %1</source>
        <translation>Peso netto della parte %1</translation>
    </message>
    <message>
        <source>Part &amp;%1: code, net weight</source>
        <translation>Parte &amp;%1: sigla, peso netto</translation>
    </message>
    <message>
        <source>%1: %2 net</source>
        <translation>%1: %2 netto</translation>
    </message>
    <message>
        <source>, start %1</source>
        <translation>, inizio %1</translation>
    </message>
    <message>
        <source>, target %1 net</source>
        <translation>, obiettivo %1 netto</translation>
    </message>
    <message>
        <source>Not accounted for: %1</source>
        <translation>Non giustificato: %1</translation>
    </message>
    <message>
        <source>The parts weigh %1 more than the whole.</source>
        <translation>Le parti pesano %1 più dell&apos;intero.</translation>
    </message>
    <message>
        <source>The parts weigh more than the whole. Check the weights, or the net weight before the cut.</source>
        <translation>Le parti pesano più dell&apos;intero. Controllare i pesi, o il peso netto prima del taglio.</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeDialog</name>
    <message>
        <source>Take from pack %1</source>
        <translation>Preleva dalla confezione %1</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>Che ne sarà</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Quanto</translation>
    </message>
    <message>
        <source>&amp;All that is left (%1)</source>
        <translation>&amp;Tutto ciò che resta (%1)</translation>
    </message>
    <message>
        <source>All that is left</source>
        <translation>Tutto ciò che resta</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>A chi</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>&amp;What becomes of it</source>
        <translation>&amp;Che ne sarà</translation>
    </message>
    <message>
        <source>&amp;How much</source>
        <translation>&amp;Quanto</translation>
    </message>
    <message>
        <source>&amp;To whom</source>
        <translation>&amp;A chi</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>Code of the new piece</source>
        <translation>Sigla del nuovo pezzo</translation>
    </message>
    <message>
        <source>&amp;Code of the new piece</source>
        <translation>&amp;Sigla del nuovo pezzo</translation>
    </message>
    <message>
        <source>Piece %1 itself hangs again, at %2 lost. It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>Il pezzo %1 stesso è di nuovo appeso, con un calo di %2. Da ora è nella pagina dei pezzi appesi e nel foglio del giorno; Annulla lo riporta indietro.</translation>
    </message>
    <message>
        <source>%1 of piece %2 becomes a piece of its own, which starts at the loss the whole had (%3). It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>%1 del pezzo %2 diventa un pezzo a sé, che parte dal calo dell&apos;intero (%3). Da ora è nella pagina dei pezzi appesi e nel foglio del giorno; Annulla lo riporta indietro.</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeOnBox</name>
    <message>
        <source>I have read the &amp;cautions and take them on myself</source>
        <translation>Ho letto le avvertenze e le accetto in &amp;prima persona</translation>
    </message>
    <message>
        <source>I have read the cautions and take them on myself</source>
        <translation>Ho letto le avvertenze e le accetto in prima persona</translation>
    </message>
    <message>
        <source>Cautions taken on by</source>
        <translation>Avvertenze accettate da</translation>
    </message>
    <message>
        <source>Taken on b&amp;y</source>
        <translation>Acce&amp;ttate da</translation>
    </message>
    <message>
        <source>There are cautions above. Read them, then tick that you take them on.</source>
        <translation>Qui sopra ci sono avvertenze. Leggerle, poi spuntare che si accettano.</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>Indicare chi accetta le avvertenze: scegliere o scrivere il nome.</translation>
    </message>
</context>
<context>
    <name>ui::pages::UpsetDialog</name>
    <message>
        <source>Upset in %1</source>
        <translation>Guasto in %1</translation>
    </message>
    <message>
        <source>This is a record to weigh up with your own code, your adviser or a laboratory. It is of the air, not of the meat&apos;s core, and judges nothing.</source>
        <translation>È una registrazione da valutare con le proprie norme, il consulente o un laboratorio. Riguarda l&apos;aria, non il cuore della carne, e non giudica niente.</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Chiudi</translation>
    </message>
    <message>
        <source>&amp;Keep as a note on each batch</source>
        <translation>Conserva come &amp;nota su ogni partita</translation>
    </message>
    <message>
        <source>Where the temperatures come from</source>
        <translation>Da dove vengono le temperature</translation>
    </message>
    <message>
        <source>what I saw</source>
        <translation>ciò che ho visto</translation>
    </message>
    <message>
        <source>the log of %1</source>
        <translation>il registro di %1</translation>
    </message>
    <message>
        <source>Day it began</source>
        <translation>Giorno d&apos;inizio</translation>
    </message>
    <message>
        <source>Time it began</source>
        <translation>Ora d&apos;inizio</translation>
    </message>
    <message>
        <source>How long it lasted</source>
        <translation>Quanto è durato</translation>
    </message>
    <message>
        <source>Usual temperature</source>
        <translation>Temperatura abituale</translation>
    </message>
    <message>
        <source>Temperature it reached</source>
        <translation>Temperatura raggiunta</translation>
    </message>
    <message>
        <source>&amp;Temperatures from</source>
        <translation>&amp;Temperature da</translation>
    </message>
    <message>
        <source>It &amp;began</source>
        <translation>È &amp;iniziato</translation>
    </message>
    <message>
        <source>It &amp;lasted</source>
        <translation>È &amp;durato</translation>
    </message>
    <message>
        <source>&amp;Usual temperature</source>
        <translation>Temperatura &amp;abituale</translation>
    </message>
    <message>
        <source>It &amp;reached</source>
        <translation>Ha &amp;raggiunto</translation>
    </message>
    <message>
        <source>&amp;Show the record</source>
        <translation>&amp;Mostra la registrazione</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pezzo</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Che cosa</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation>%1, per %2</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>Appeso</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Calo</translation>
    </message>
    <message>
        <source>Salt, at most</source>
        <translation>Sale, al massimo</translation>
    </message>
    <message>
        <source>Nitrite put on</source>
        <translation>Nitrito messo</translation>
    </message>
    <message>
        <source>Water activity, estimated</source>
        <translation>Attività dell&apos;acqua, stimata</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>Pieces, to be looked at in this order</source>
        <translation>Pezzi, da guardare in quest&apos;ordine</translation>
    </message>
    <message>
        <source>Can grow</source>
        <translation>Può crescere</translation>
    </message>
    <message>
        <source>Hours of air in its range</source>
        <translation>Ore di aria nel suo intervallo</translation>
    </message>
    <message>
        <source>Its temperatures</source>
        <translation>Le sue temperature</translation>
    </message>
    <message>
        <source>Water activity</source>
        <translation>Attività dell&apos;acqua</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fonte</translation>
    </message>
    <message>
        <source>Hours in growth ranges</source>
        <translation>Ore negli intervalli di crescita</translation>
    </message>
    <message>
        <source>To be looked at in this order</source>
        <translation>Da guardare in quest&apos;ordine</translation>
    </message>
    <message>
        <source>Hours of air in growth ranges</source>
        <translation>Ore di aria negli intervalli di crescita</translation>
    </message>
    <message>
        <source>For %1 there is no reading.</source>
        <translation>Per %1 non ci sono letture.</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) were there. Highest air temperature: %1.</source>
        <translation>
            <numerusform>C&apos;era %n pezzo. Temperatura massima dell&apos;aria: %1.</numerusform>
            <numerusform>C&apos;erano %n pezzi. Temperatura massima dell&apos;aria: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The record is kept as a note on %n batch(es).</source>
        <translation>
            <numerusform>La registrazione è tenuta come nota su %n partita.</numerusform>
            <numerusform>La registrazione è tenuta come nota su %n partite.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::WarmDialog</name>
    <message>
        <source>%1: finish in warm air</source>
        <translation>%1: finire in aria calda</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven takes the last water out in hours. It also spends those hours where microbes grow. What stands here is reckoned from the piece&apos;s own pace and published figures; it judges nothing. Follow your own code.</source>
        <translation>Un essiccatore o un forno a bassa temperatura toglie l&apos;ultima acqua in poche ore. Quelle ore le passa anche dove i microbi crescono. Ciò che sta qui è calcolato dal ritmo del pezzo e da cifre pubblicate; non giudica niente. Seguire le proprie norme.</translation>
    </message>
    <message>
        <source>&amp;Record in the book</source>
        <translation>&amp;Registra nel libro</translation>
    </message>
    <message>
        <source>Air of the device</source>
        <translation>Aria dell&apos;apparecchio</translation>
    </message>
    <message>
        <source>Its humidity</source>
        <translation>La sua umidità</translation>
    </message>
    <message>
        <source>Loss wanted</source>
        <translation>Calo voluto</translation>
    </message>
    <message>
        <source>Water of the piece now</source>
        <translation>Acqua del pezzo ora</translation>
    </message>
    <message>
        <source>Thickness now</source>
        <translation>Spessore ora</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>A che punto è</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>pianificato</translation>
    </message>
    <message>
        <source>begun now</source>
        <translation>iniziato ora</translation>
    </message>
    <message>
        <source>done</source>
        <translation>finito</translation>
    </message>
    <message>
        <source>&amp;Air of the device</source>
        <translation>&amp;Aria dell&apos;apparecchio</translation>
    </message>
    <message>
        <source>Its &amp;humidity, a guess if not measured</source>
        <translation>La sua &amp;umidità, stimata se non misurata</translation>
    </message>
    <message>
        <source>&amp;Loss wanted</source>
        <translation>&amp;Calo voluto</translation>
    </message>
    <message>
        <source>&amp;Water of the piece now</source>
        <translation>Ac&amp;qua del pezzo ora</translation>
    </message>
    <message>
        <source>&amp;Thickness now</source>
        <translation>&amp;Spessore ora</translation>
    </message>
    <message>
        <source>How &amp;far it is</source>
        <translation>A che &amp;punto è</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Quanto dura</translation>
    </message>
    <message>
        <source>Hours inside growth ranges</source>
        <translation>Ore negli intervalli di crescita</translation>
    </message>
    <message>
        <source>Organism</source>
        <translation>Organismo</translation>
    </message>
    <message>
        <source>In its range</source>
        <translation>Nel suo intervallo</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>Accanto</translation>
    </message>
    <message>
        <source>No loss is known yet: weigh the piece first, so that there is a start to count from.</source>
        <translation>Non è ancora noto un calo: pesare prima il pezzo, perché ci sia un inizio da cui contare.</translation>
    </message>
    <message>
        <source>Fill in what is empty above, and the hours stand here.</source>
        <translation>Completare i campi vuoti qui sopra: le ore compaiono qui.</translation>
    </message>
    <message>
        <source>Reckoned from the pace it dries at where it hangs.</source>
        <translation>Calcolato dal ritmo con cui asciuga dove è appeso.</translation>
    </message>
    <message>
        <source>Reckoned from published figures: its own pace is not known well enough.</source>
        <translation>Calcolato da cifre pubblicate: il suo ritmo non è noto abbastanza bene.</translation>
    </message>
    <message>
        <source>There is no answer to record yet.</source>
        <translation>Non c&apos;è ancora una risposta da registrare.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighInPage</name>
    <message>
        <source>Weigh-in round</source>
        <translation>Giro di pesate</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Cella</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Cella</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>&amp;Bilancia</translation>
    </message>
    <message>
        <source>Nothing to weigh</source>
        <translation>Niente da pesare</translation>
    </message>
    <message>
        <source>The round lists every piece that is curing, resting or drying, in the order in which it hangs. Start a batch, then come back once a week: a number and Enter for each piece is all it takes.</source>
        <translation>Il giro elenca ogni pezzo in salagione, a riposo o in asciugatura, nell&apos;ordine in cui è appeso. Iniziare una partita, poi tornare una volta la settimana: un numero e Invio per ogni pezzo, non serve altro.</translation>
    </message>
    <message>
        <source>Pieces in hanging order</source>
        <translation>Pezzi nell&apos;ordine in cui sono appesi</translation>
    </message>
    <message>
        <source>The piece whose turn it is</source>
        <translation>Il pezzo di turno</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Sulla bilancia</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>&amp;Wet</source>
        <translation>Ba&amp;gnato</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>La superficie è bagnata</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>note, if any</source>
        <translation>nota, se serve</translation>
    </message>
    <message>
        <source>&amp;Keep and go on  ⏎</source>
        <translation>&amp;Registra e avanti  ⏎</translation>
    </message>
    <message>
        <source>Pass over  ⇟</source>
        <translation>Salta  ⇟</translation>
    </message>
    <message>
        <source>&amp;On the scale</source>
        <translation>&amp;Sulla bilancia</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tara</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Appeso</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Sigla</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pezzo</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Ultimo</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ora</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>saltato</translation>
    </message>
    <message>
        <source>all</source>
        <translation>tutti</translation>
    </message>
    <message>
        <source>%1 of %2 weighed. Enter keeps and goes on; Page Down passes over.</source>
        <translation>%1 di %2 pesati. Invio registra e va avanti; Pag giù salta.</translation>
    </message>
    <message>
        <source>Last time: %1 on the scale, %2</source>
        <translation>L&apos;ultima volta: %1 sulla bilancia, %2</translation>
    </message>
    <message>
        <source>Not weighed before.</source>
        <translation>Mai pesato prima.</translation>
    </message>
    <message>
        <source>Expected now: %1 to %2 (%3)</source>
        <translation>Atteso ora: da %1 a %2 (%3)</translation>
    </message>
    <message>
        <source>from its forecast</source>
        <translation>dalla sua previsione</translation>
    </message>
    <message>
        <source>from its last weight</source>
        <translation>dal suo ultimo peso</translation>
    </message>
    <message>
        <source>Expected now: %1</source>
        <translation>Atteso ora: %1</translation>
    </message>
    <message>
        <source>%1
If it is right, press Enter again.</source>
        <translation>%1
Se è giusto, premere di nuovo Invio.</translation>
    </message>
    <message>
        <source>%1: %2 kept. Ctrl+Z takes it back.</source>
        <translation>%1: %2 registrato. Ctrl+Z lo ritira.</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesate</translation>
    </message>
    <message>
        <source>Weigh every hanging piece in hanging order</source>
        <translation>Pesare ogni pezzo appeso, in ordine</translation>
    </message>
    <message numerus="yes">
        <source>All %n piece(s) are weighed.</source>
        <translation>
            <numerusform>%n pezzo è pesato.</numerusform>
            <numerusform>Tutti i %n pezzi sono pesati.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Osservazioni</translation>
    </message>
    <message>
        <source>Nothing hangs to be weighed.</source>
        <translation>Niente di appeso da pesare.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighingDialog</name>
    <message>
        <source>Scale</source>
        <translation>Bilancia</translation>
    </message>
    <message>
        <source>scale not named</source>
        <translation>bilancia non indicata</translation>
    </message>
    <message>
        <source>%1 (step %2)</source>
        <translation>%1 (passo %2)</translation>
    </message>
    <message>
        <source>Weigh %1</source>
        <translation>Pesa %1</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Sulla bilancia</translation>
    </message>
    <message>
        <source>What hangs there</source>
        <translation>Che cosa è appeso</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Giorno</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Ora</translation>
    </message>
    <message>
        <source>The surface is &amp;wet (just washed or wiped)</source>
        <translation>La superficie è &amp;bagnata (appena lavata o pulita)</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>La superficie è bagnata</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation>&amp;Sulla bilancia</translation>
    </message>
    <message>
        <source>W&amp;hat is on it</source>
        <translation>C&amp;he cosa c&apos;è sopra</translation>
    </message>
    <message>
        <source>&amp;Tare (casing, net, hook)</source>
        <translation>&amp;Tara (budello, rete, gancio)</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Giorno</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>&amp;Ora</translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation>Bi&amp;lancia</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>Why it is corrected</source>
        <translation>Perché si corregge</translation>
    </message>
    <message>
        <source>e.g. misread, wrong tare</source>
        <translation>p. es. letto male, tara sbagliata</translation>
    </message>
    <message>
        <source>Wh&amp;y it is corrected</source>
        <translation>P&amp;erché si corregge</translation>
    </message>
    <message>
        <source>Net weight: %1</source>
        <translation>Peso netto: %1</translation>
    </message>
    <message>
        <source>%1 lost of the %2</source>
        <translation>calo %1 (%2)</translation>
    </message>
    <message>
        <source>Say in a few words why the entry is corrected; the old one stays readable beside it.</source>
        <translation>Dire in poche parole perché la voce si corregge; la vecchia resta leggibile accanto.</translation>
    </message>
    <message>
        <source>Correct %1: weighing of %2</source>
        <extracomment>%1 a piece&apos;s code, %2 a moment</extracomment>
        <translation>Correggi %1: pesata di %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::WhatIfDialog</name>
    <message>
        <source>%1: what if…</source>
        <translation>%1: e se…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Chiudi</translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation>Ancora niente da confrontare</translation>
    </message>
    <message>
        <source>A forecast needs the weight its loss is counted from, and weighings since it was hung. Weigh the piece, or choose another weight to count from under Change.</source>
        <translation>Una previsione richiede il peso da cui si conta il calo e pesate da quando è appeso. Pesare il pezzo, o scegliere con Modifica un altro peso da cui contare.</translation>
    </message>
    <message>
        <source>The change holds from the last weighing on, and exactly as entered. Nothing of this is kept.</source>
        <translation>La modifica vale dall&apos;ultima pesata in poi, esattamente come inserita. Nulla di questo viene salvato.</translation>
    </message>
    <message>
        <source>The piece has no target; 35 % of the hung weight is taken to begin with.</source>
        <translation>Il pezzo non ha obiettivo; per cominciare si prende il 35 % del peso da appeso.</translation>
    </message>
    <message>
        <source>Humidity ahead</source>
        <translation>Umidità d&apos;ora in poi</translation>
    </message>
    <message>
        <source>Temperature ahead</source>
        <translation>Temperatura d&apos;ora in poi</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Obiettivo</translation>
    </message>
    <message>
        <source>&amp;Humidity of the chamber</source>
        <translation>&amp;Umidità della cella</translation>
    </message>
    <message>
        <source>Te&amp;mperature of the chamber</source>
        <translation>Te&amp;mperatura della cella</translation>
    </message>
    <message>
        <source>&amp;Target, loss</source>
        <translation>&amp;Obiettivo, calo</translation>
    </message>
    <message>
        <source>Filled in: the last steady stretch of the chamber&apos;s log.</source>
        <translation>Già inserito: l&apos;ultimo tratto stabile del registro della cella.</translation>
    </message>
    <message>
        <source>Filled in: a usual air, as no log says what it is (common practice, no source).</source>
        <translation>Già inserito: un&apos;aria abituale, perché nessun registro la indica (pratica comune, nessuna fonte).</translation>
    </message>
    <message>
        <source>&amp;Use that humidity</source>
        <translation>Usa &amp;questa umidità</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Com&apos;è</translation>
    </message>
    <message>
        <source>With the change</source>
        <translation>Con la modifica</translation>
    </message>
    <message>
        <source>As it is and with the change</source>
        <translation>Com&apos;è e con la modifica</translation>
    </message>
    <message>
        <source>Fill in what is empty above.</source>
        <translation>Completare i campi vuoti qui sopra.</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>Calcolo in corso…</translation>
    </message>
    <message>
        <source>As it is; nothing is changed yet</source>
        <translation>Com&apos;è; nulla è ancora cambiato</translation>
    </message>
    <message>
        <source>As it is, and with the change</source>
        <translation>Com&apos;è, e con la modifica</translation>
    </message>
    <message>
        <source>Change the temperature to see which humidity there has the drying power of the air as it is.</source>
        <translation>Cambiare la temperatura per vedere quale umidità ha lì il potere essiccante dell&apos;aria attuale.</translation>
    </message>
    <message>
        <source>In the cited growth ranges as it is, by temperature alone: %1. Water, salt and acid count too; the program judges none of it.</source>
        <translation>Già ora negli intervalli di crescita citati, per la sola temperatura: %1. Contano anche acqua, sale e acidità; il programma non giudica nulla di tutto ciò.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WithdrawDialog</name>
    <message>
        <source>Take back</source>
        <translation>Ritira</translation>
    </message>
    <message>
        <source>%1
The entry no longer counts, but stays readable in the history.</source>
        <translation>%1
La voce non conta più, ma resta leggibile nella cronologia.</translation>
    </message>
    <message>
        <source>Why it is taken back</source>
        <translation>Perché si ritira</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Perché</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Ritira</translation>
    </message>
    <message>
        <source>Say in a few words why.</source>
        <translation>Dire in poche parole perché.</translation>
    </message>
</context>
<context>
    <name>ui::presenters::DayWork</name>
    <message>
        <source>today</source>
        <translation>oggi</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fatto</translation>
    </message>
    <message>
        <source>Opens the weigh-in. The line goes when the weight is in the book.</source>
        <translation>Apre il giro di pesate. La riga sparisce quando il peso è nel libro.</translation>
    </message>
    <message>
        <source>Opens the evidence for this piece.</source>
        <translation>Apre i riscontri per questo pezzo.</translation>
    </message>
    <message>
        <source>Opens the stock. The line goes when the packs are gone.</source>
        <translation>Apre la dispensa. La riga sparisce quando le confezioni sono finite.</translation>
    </message>
    <message>
        <source>Opens the instruments. The line goes when a check is entered.</source>
        <translation>Apre gli strumenti. La riga sparisce quando è inserito un controllo.</translation>
    </message>
    <message>
        <source>Begins the stage now.</source>
        <translation>Inizia ora la fase.</translation>
    </message>
    <message>
        <source>Ends the stage now.</source>
        <translation>Termina ora la fase.</translation>
    </message>
    <message>
        <source>Takes the tick back.</source>
        <translation>Toglie la spunta.</translation>
    </message>
    <message>
        <source>Ticks it off as done.</source>
        <translation>Lo spunta come fatto.</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 in ritardo</translation>
    </message>
    <message>
        <source>%1 for today</source>
        <translation>%1 per oggi</translation>
    </message>
    <message>
        <source>%1 done</source>
        <translation>%1 fatti</translation>
    </message>
    <message numerus="yes">
        <source>%n pack(s)</source>
        <translation>
            <numerusform>%n confezione</numerusform>
            <numerusform>%n confezioni</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n pezzo</numerusform>
            <numerusform>%n pezzi</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation>
            <numerusform>%n giorno di ritardo</numerusform>
            <numerusform>%n giorni di ritardo</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n time(s) missed</source>
        <extracomment>%1 how late, %n how often it was not done</extracomment>
        <translation>
            <numerusform>%1, saltato %n volta</numerusform>
            <numerusform>%1, saltato %n volte</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::LostWeight</name>
    <message>
        <source>estimated, %1 to %2</source>
        <translation>stimato, da %1 a %2</translation>
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
        <translation>Pronto verso il %1</translation>
    </message>
    <message>
        <source>Start today</source>
        <translation>Inizia oggi</translation>
    </message>
    <message>
        <source>Start by %1</source>
        <translation>Inizia entro il %1</translation>
    </message>
    <message>
        <source>Likely ready %1; the rest until %2 is slack.</source>
        <translation>Probabilmente pronto il %1; il resto fino al %2 è margine.</translation>
    </message>
    <message>
        <source>No slack: half of such plans end later than %1.</source>
        <translation>Nessun margine: metà di questi piani finisce dopo il %1.</translation>
    </message>
    <message>
        <source>Not by %1</source>
        <translation>Non entro il %1</translation>
    </message>
    <message>
        <source>Plan it smaller</source>
        <translation>Pianificalo più piccolo</translation>
    </message>
    <message>
        <source>A piece of at most %1 and %2 would be ready by %3.</source>
        <translation>Un pezzo di al massimo %1 e %2 sarebbe pronto entro il %3.</translation>
    </message>
    <message>
        <source>Plan this instead</source>
        <translation>Pianifica questo invece</translation>
    </message>
    <message>
        <source>Plan for that day</source>
        <translation>Pianifica per quel giorno</translation>
    </message>
    <message>
        <source>Begun today, it would be ready by %1.</source>
        <translation>Iniziato oggi, sarebbe pronto entro il %1.</translation>
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
        <translation>%1 % UR</translation>
    </message>
    <message>
        <source>%1, in the end %2</source>
        <extracomment>a band that changes over the stage: from %1, in the end %2</extracomment>
        <translation>%1, alla fine %2</translation>
    </message>
    <message>
        <source>%1 for %2 in every %3</source>
        <translation>%1 per %2 ogni %3</translation>
    </message>
    <message>
        <source>%1 every day</source>
        <translation>%1 ogni giorno</translation>
    </message>
    <message>
        <source>%1 every %2</source>
        <translation>%1 ogni %2</translation>
    </message>
    <message>
        <source>%1 on day %2</source>
        <translation>%1 il giorno %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> e </translation>
    </message>
    <message>
        <source>inch</source>
        <translation>pollice</translation>
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
        <translation>%1 giorni</translation>
    </message>
    <message>
        <source>%1 days per %2</source>
        <translation>%1 giorni per %2</translation>
    </message>
    <message>
        <source>%1 plus %2: %3</source>
        <translation>%1 più %2: %3</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>tralasciata</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>By diffusion the centre has come close to the rest after %1.</source>
        <translation>Per diffusione il centro si è avvicinato al resto dopo %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start.</source>
        <translation>
            <numerusform>%n giorno dall&apos;inizio.</numerusform>
            <numerusform>%n giorni dall&apos;inizio.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start; it may be %1.</source>
        <translation>
            <numerusform>%n giorno dall&apos;inizio; può diventare %1.</numerusform>
            <numerusform>%n giorni dall&apos;inizio; può diventare %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It would be %n day(s) late. A stronger dose or a shorter cure does not help: salt needs its time.</source>
        <translation>
            <numerusform>Sarebbe un giorno di ritardo. Una dose più forte o una salagione più breve non aiutano: il sale vuole il suo tempo.</numerusform>
            <numerusform>Sarebbero %n giorni di ritardo. Una dose più forte o una salagione più breve non aiutano: il sale vuole il suo tempo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 needs %n day(s) for its usual piece, %2 to spare.</source>
        <translation>
            <numerusform>%1 richiede %n giorno per il suo pezzo abituale, ne avanzano %2.</numerusform>
            <numerusform>%1 richiede %n giorni per il suo pezzo abituale, ne avanzano %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 every %n day(s)</source>
        <translation>
            <numerusform>%1 ogni giorno</numerusform>
            <numerusform>%1 ogni %n giorni</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) of %1</source>
        <translation>
            <numerusform>%n giro di %1</numerusform>
            <numerusform>%n giri di %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::WatchedFolder</name>
    <message>
        <source>The watched folder %1 is not there.</source>
        <translation>La cartella osservata %1 non c&apos;è.</translation>
    </message>
    <message>
        <source>%1 is in the watched folder, but part of how it reads is a guess: import it once by hand.</source>
        <translation>%1 è nella cartella osservata, ma parte di come si legge è solo un&apos;ipotesi: importarlo una volta a mano.</translation>
    </message>
    <message numerus="yes">
        <source>%1 from the watched folder: %n new reading(s).</source>
        <translation>
            <numerusform>%1 dalla cartella osservata: %n lettura nuova.</numerusform>
            <numerusform>%1 dalla cartella osservata: %n letture nuove.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::Workspace</name>
    <message>
        <source>Undo: %1</source>
        <translation>Annulla: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Ripeti: %1</translation>
    </message>
    <message>
        <source>Kept: %1.</source>
        <translation>Registrato: %1.</translation>
    </message>
    <message>
        <source>Undone: %1.</source>
        <translation>Annullato: %1.</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>Ripetuto: %1.</translation>
    </message>
</context>
</TS>
