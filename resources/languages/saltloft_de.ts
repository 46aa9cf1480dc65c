<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>ActionWords</name>
    <message>
        <source>new person %1</source>
        <translation>neue Person %1</translation>
    </message>
    <message>
        <source>person %1 changed</source>
        <translation>Person %1 geändert</translation>
    </message>
    <message>
        <source>new chamber %1</source>
        <translation>neue Kammer %1</translation>
    </message>
    <message>
        <source>chamber %1 changed</source>
        <translation>Kammer %1 geändert</translation>
    </message>
    <message>
        <source>new sensor %1</source>
        <translation>neuer Sensor %1</translation>
    </message>
    <message>
        <source>sensor %1 changed</source>
        <translation>Sensor %1 geändert</translation>
    </message>
    <message>
        <source>new instrument %1</source>
        <translation>neues Messgerät %1</translation>
    </message>
    <message>
        <source>instrument %1 changed</source>
        <translation>Messgerät %1 geändert</translation>
    </message>
    <message>
        <source>calibration check of %1</source>
        <translation>Prüfung von %1</translation>
    </message>
    <message>
        <source>new recipe %1</source>
        <translation>neue Rezeptur %1</translation>
    </message>
    <message>
        <source>new version of recipe %1</source>
        <translation>neue Fassung der Rezeptur %1</translation>
    </message>
    <message>
        <source>recipe renamed to %1</source>
        <translation>Rezeptur umbenannt in %1</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>Import von %1</translation>
    </message>
    <message>
        <source>recipe %1 put away</source>
        <translation>Rezeptur %1 weggelegt</translation>
    </message>
    <message>
        <source>new ingredient %1</source>
        <translation>neue Zutat %1</translation>
    </message>
    <message>
        <source>ingredient %1 changed</source>
        <translation>Zutat %1 geändert</translation>
    </message>
    <message>
        <source>new lot %1</source>
        <translation>neues Los %1</translation>
    </message>
    <message>
        <source>lot %1 changed</source>
        <translation>Los %1 geändert</translation>
    </message>
    <message>
        <source>new batch %1</source>
        <translation>neue Charge %1</translation>
    </message>
    <message>
        <source>batch %1 changed</source>
        <translation>Charge %1 geändert</translation>
    </message>
    <message>
        <source>new piece %1</source>
        <translation>neues Stück %1</translation>
    </message>
    <message>
        <source>piece %1 changed</source>
        <translation>Stück %1 geändert</translation>
    </message>
    <message>
        <source>ingredient lot noted for %1</source>
        <translation>Zutaten-Los für %1 notiert</translation>
    </message>
    <message>
        <source>ingredient lot changed for %1</source>
        <translation>Zutaten-Los für %1 geändert</translation>
    </message>
    <message>
        <source>weighing of %1</source>
        <translation>Wägung von %1</translation>
    </message>
    <message>
        <source>weighings of %1</source>
        <translation>Wägungen von %1</translation>
    </message>
    <message>
        <source>correction of a weighing of %1</source>
        <translation>Berichtigung einer Wägung von %1</translation>
    </message>
    <message>
        <source>a weighing of %1 taken back</source>
        <translation>eine Wägung von %1 zurückgenommen</translation>
    </message>
    <message>
        <source>event of %1</source>
        <translation>Ereignis von %1</translation>
    </message>
    <message>
        <source>an event of %1 taken back</source>
        <translation>ein Ereignis von %1 zurückgenommen</translation>
    </message>
    <message>
        <source>%1 cut into pieces</source>
        <translation>%1 in Stücke geschnitten</translation>
    </message>
    <message>
        <source>pieces weighed as one: %1</source>
        <translation>Stücke gemeinsam gewogen: %1</translation>
    </message>
    <message>
        <source>%1 discarded</source>
        <translation>%1 verworfen</translation>
    </message>
    <message>
        <source>plan of %1</source>
        <translation>Plan von %1</translation>
    </message>
    <message>
        <source>stage of %1 started</source>
        <translation>Phase von %1 begonnen</translation>
    </message>
    <message>
        <source>stage of %1 ended</source>
        <translation>Phase von %1 beendet</translation>
    </message>
    <message>
        <source>task ticked for %1</source>
        <translation>Aufgabe für %1 abgehakt</translation>
    </message>
    <message>
        <source>task unticked for %1</source>
        <translation>Häkchen für %1 zurückgenommen</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>caution accepted for %1</source>
        <translation>Warnung für %1 quittiert</translation>
    </message>
    <message>
        <source>decision on %1</source>
        <translation>Entscheidung über %1</translation>
    </message>
    <message>
        <source>outcome of %1</source>
        <translation>Ergebnis von %1</translation>
    </message>
    <message>
        <source>new pack %1</source>
        <translation>neue Packung %1</translation>
    </message>
    <message>
        <source>pack %1 changed</source>
        <translation>Packung %1 geändert</translation>
    </message>
    <message>
        <source>taken from pack %1</source>
        <translation>aus Packung %1 entnommen</translation>
    </message>
    <message>
        <source>setting %1</source>
        <translation>Einstellung %1</translation>
    </message>
    <message>
        <source>a change of %1</source>
        <translation>eine Änderung von %1</translation>
    </message>
    <message>
        <source>(no code)</source>
        <translation>(ohne Kürzel)</translation>
    </message>
</context>
<context>
    <name>AirStrips</name>
    <message>
        <source>a week at %1 (%2 to %3)</source>
        <translation>eine Woche bei %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>% RH</source>
        <translation>% rF</translation>
    </message>
</context>
<context>
    <name>CalendarPage</name>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>&amp;Save as calendar file…</source>
        <translation>Als &amp;Kalenderdatei speichern…</translation>
    </message>
    <message>
        <source>No plan yet</source>
        <translation>Noch kein Plan</translation>
    </message>
    <message>
        <source>Stages and work of every open batch stand here day by day. Save them as a calendar file to see them on a phone; saving again brings moved days up to date.</source>
        <translation>Phasen und Arbeiten aller offenen Chargen stehen hier Tag für Tag. Als Kalenderdatei gespeichert sind sie auch auf dem Telefon zu sehen; erneutes Speichern bringt verschobene Tage auf den neuesten Stand.</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>Charge planen</translation>
    </message>
    <message>
        <source>&amp;Earlier</source>
        <translation>&amp;Früher</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>&amp;Heute</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>&amp;Später</translation>
    </message>
    <message>
        <source>Days of the month</source>
        <translation>Tage des Monats</translation>
    </message>
    <message>
        <source>On this day</source>
        <translation>An diesem Tag</translation>
    </message>
    <message>
        <source>Nothing on this day.</source>
        <translation>Nichts an diesem Tag.</translation>
    </message>
    <message>
        <source>Stages and work by day, and as a calendar file</source>
        <translation>Phasen und Arbeiten nach Tagen und als Kalenderdatei</translation>
    </message>
</context>
<context>
    <name>CalibrationText</name>
    <message>
        <source>A test weight near what is weighed; within 0.1 % of it. Monthly.</source>
        <translation>Ein Prüfgewicht nahe dem, was gewogen wird; auf 0,1 % genau. Monatlich.</translation>
    </message>
    <message>
        <source>Crushed ice in water, stirred: %1; within %2. Monthly.</source>
        <translation>Zerstoßenes Eis in Wasser, gerührt: %1; auf %2 genau. Monatlich.</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag for 12 hours: 75 % RH; within 3 to 5 points. Every six months.</source>
        <translation>Salzbrei im geschlossenen Beutel, 12 Stunden lang: 75 % rF; auf 3 bis 5 Punkte genau. Alle sechs Monate.</translation>
    </message>
    <message>
        <source>Two fresh buffers that bracket what is measured. Before use.</source>
        <translation>Zwei frische Puffer, die das Gemessene einschließen. Vor Gebrauch.</translation>
    </message>
    <message>
        <source>A salt standard near what is measured. Before use.</source>
        <translation>Ein Salzstandard nahe dem, was gemessen wird. Vor Gebrauch.</translation>
    </message>
    <message>
        <source>As its maker says.</source>
        <translation>Wie der Hersteller es angibt.</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Datum und Uhrzeit</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Vergleich mit</translation>
    </message>
    <message>
        <source>Expected, %1</source>
        <translation>Erwartet, %1</translation>
    </message>
    <message>
        <source>Found, %1</source>
        <translation>Gefunden, %1</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Action taken</source>
        <translation>Maßnahme</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Namenszeichen</translation>
    </message>
    <message>
        <source>Last checked before: %1.</source>
        <translation>Zuletzt davor geprüft: %1.</translation>
    </message>
    <message>
        <source>Never checked before.</source>
        <translation>Davor nie geprüft.</translation>
    </message>
    <message>
        <source>Calibration sheet</source>
        <translation>Prüfblatt der Messgeräte</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>Es sind keine Messgeräte eingetragen.</translation>
    </message>
    <message>
        <source>How to check and how far off an instrument may be is common practice without a source: what your plan says goes before.</source>
        <translation>Wie geprüft wird und wie weit ein Gerät abweichen darf, ist übliche Praxis ohne Quelle: Was Ihr eigener Plan sagt, geht vor.</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Geprüft von</translation>
    </message>
    <message>
        <source>Responsible person</source>
        <translation>Verantwortliche Person</translation>
    </message>
    <message numerus="yes">
        <source>Set to every %n day(s) here.</source>
        <translation>
            <numerusform>Hier auf jeden Tag eingestellt.</numerusform>
            <numerusform>Hier auf alle %n Tage eingestellt.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CautionsPage</name>
    <message>
        <source>A number is not a verdict</source>
        <translation>Eine Zahl ist kein Urteil</translation>
    </message>
    <message>
        <source>Weight loss says how much water has gone, not whether a food may be eaten. Pieces at their target can be raw inside; pieces short of it can be finished. Look, touch, smell and cut before you decide. When in doubt, throw it out.</source>
        <translation>Der Gewichtsverlust sagt, wie viel Wasser fort ist, nicht ob etwas gegessen werden darf. Stücke am Ziel können innen roh sein, Stücke davor können fertig sein. Schauen, tasten, riechen und anschneiden, dann entscheiden. Im Zweifel wegwerfen.</translation>
    </message>
    <message>
        <source>Curing salt is weighed, never guessed</source>
        <translation>Pökelsalz wird gewogen, nie geschätzt</translation>
    </message>
    <message>
        <source>Nitrite and nitrate are poisons in the wrong amount, and curing salts differ tenfold in strength. Enter the strength from the label of the packet in your hand. Use a scale that can weigh the dose. Keep curing salt marked and away from kitchen salt.</source>
        <translation>Nitrit und Nitrat sind in falscher Menge Gift, und Pökelsalze unterscheiden sich in der Stärke um das Zehnfache. Geben Sie die Stärke vom Etikett der Packung ein, die Sie in der Hand halten. Nehmen Sie eine Waage, die diese Menge wiegen kann. Bewahren Sie Pökelsalz beschriftet und fern vom Speisesalz auf.</translation>
    </message>
    <message>
        <source>Cold first, then time</source>
        <translation>Erst Kälte, dann Zeit</translation>
    </message>
    <message>
        <source>Cure in the cold, and keep the time the plan gives. A date on the calendar is no reason for a stronger dose or a shorter cure. After a failure of the fridge, what counts is how warm, how long and how far along each piece was.</source>
        <translation>Pökeln Sie in der Kälte und halten Sie die Zeit des Plans ein. Ein Termin im Kalender ist kein Grund für eine stärkere Dosis oder kürzeres Pökeln. Nach einem Ausfall der Kühlung zählt, wie warm, wie lange und wie weit jedes Stück war.</translation>
    </message>
    <message>
        <source>Instruments are often wrong</source>
        <translation>Messgeräte irren oft</translation>
    </message>
    <message>
        <source>Check the scale with a known weight, the thermometer in ice water, the hygrometer over a salt slurry. A reading nobody has checked is a guess with digits.</source>
        <translation>Die Waage mit einem bekannten Gewicht prüfen, das Thermometer in Eiswasser, das Hygrometer über Salzbrei. Eine ungeprüfte Anzeige ist eine Schätzung mit Ziffern.</translation>
    </message>
    <message>
        <source>Limits belong to your law</source>
        <translation>Grenzwerte richten sich nach Ihrem Recht</translation>
    </message>
    <message>
        <source>The limit sets here are quoted with their source and date. Those marked unverified were not read in the issuer&apos;s own words. If you sell or give food away, the code where you live, your licence and your laboratory come before anything this program shows.</source>
        <translation>Die Grenzwerte hier sind mit Quelle und Datum zitiert. Was als ungeprüft gekennzeichnet ist, wurde nicht im Wortlaut der Behörde gelesen. Wer Lebensmittel verkauft oder abgibt, hält sich zuerst an das Recht am Ort, die eigene Zulassung und das Labor; dann erst an das, was dieses Programm zeigt.</translation>
    </message>
    <message>
        <source>Estimates carry a range</source>
        <translation>Schätzungen haben eine Spanne</translation>
    </message>
    <message>
        <source>Forecasts, water activity and salt in the finished piece are estimates from your entries and published formulas. The range is part of the answer. Only a laboratory measures water activity and pH in your piece.</source>
        <translation>Prognosen, Wasseraktivität und Salz im fertigen Stück sind Schätzungen aus Ihren Einträgen und veröffentlichten Formeln. Die Spanne gehört zur Antwort. Wasseraktivität und pH Ihres Stücks misst nur ein Labor.</translation>
    </message>
    <message>
        <source>Some people need more care</source>
        <translation>Manche Menschen brauchen mehr Vorsicht</translation>
    </message>
    <message>
        <source>Dry-cured meat that is not cooked is a risk for the pregnant, the very young, the old and the ill. Pork and game can carry parasites that curing alone may not kill; follow the official freezing or cooking times for your country.</source>
        <translation>Trocken gepökeltes, nicht erhitztes Fleisch ist ein Risiko für Schwangere, kleine Kinder, Alte und Kranke. Schweinefleisch und Wild können Parasiten tragen, die das Pökeln allein nicht unbedingt abtötet; halten Sie die amtlichen Gefrier- oder Garzeiten Ihres Landes ein.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>What to keep in mind before trusting a number</source>
        <translation>Was zu bedenken ist, bevor man einer Zahl traut</translation>
    </message>
</context>
<context>
    <name>ClimateChart</name>
    <message>
        <source>temperature, %1</source>
        <translation>Temperatur, %1</translation>
    </message>
    <message>
        <source>humidity, % RH</source>
        <translation>Luftfeuchte, % rF</translation>
    </message>
    <message>
        <source>drying force, Pa</source>
        <translation>Trocknungskraft, Pa</translation>
    </message>
    <message>
        <source> · dew point %1</source>
        <translation> · Taupunkt %1</translation>
    </message>
    <message>
        <source> · drying force %1 Pa</source>
        <translation> · Trocknungskraft %1 Pa</translation>
    </message>
    <message>
        <source>%1: least to greatest</source>
        <translation>%1: kleinster bis größter Wert</translation>
    </message>
    <message>
        <source>%1: dew point</source>
        <translation>%1: Taupunkt</translation>
    </message>
    <message>
        <source>no readings</source>
        <translation>keine Messwerte</translation>
    </message>
    <message>
        <source>lower bound</source>
        <translation>untere Grenze</translation>
    </message>
    <message>
        <source>upper bound</source>
        <translation>obere Grenze</translation>
    </message>
    <message>
        <source>%1 has no readings in this time.</source>
        <translation>%1 hat in dieser Zeit keine Messwerte.</translation>
    </message>
    <message>
        <source>%1: %2 to %3, pauses without readings: %4.</source>
        <translation>%1: %2 bis %3, Lücken ohne Messwerte: %4.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 Pa</source>
        <translation>%1 Pa</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>Drying force</source>
        <translation>Trocknungskraft</translation>
    </message>
</context>
<context>
    <name>ClimateWords</name>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>senkrechter Strich</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>Sekunden seit 1970</translation>
    </message>
    <message>
        <source>milliseconds since 1970</source>
        <translation>Millisekunden seit 1970</translation>
    </message>
    <message>
        <source>day numbers of a spreadsheet</source>
        <translation>Tageszahlen einer Tabelle</translation>
    </message>
    <message>
        <source>each time says its own</source>
        <translation>jede Zeit nennt ihre Zone</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>Ortszeit von %1</translation>
    </message>
    <message>
        <source>%1%2:%3 all year</source>
        <translation>%1%2:%3 das ganze Jahr</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>a share of 1</source>
        <translation>Anteil von 1</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Zeichensatz</translation>
    </message>
    <message>
        <source>Columns parted by</source>
        <translation>Spalten getrennt durch</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Datumsform</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>Temperatur in</translation>
    </message>
    <message>
        <source>Humidity in</source>
        <translation>Luftfeuchte in</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>you said so</source>
        <translation>Sie haben es so gesagt</translation>
    </message>
    <message>
        <source>as confirmed for this sensor before</source>
        <translation>wie früher für diesen Sensor bestätigt</translation>
    </message>
    <message>
        <source>the file&apos;s own mark</source>
        <translation>das Kennzeichen der Datei selbst</translation>
    </message>
    <message>
        <source>the heading names it</source>
        <translation>die Kopfzeile nennt es</translation>
    </message>
    <message>
        <source>nothing else fits the lines</source>
        <translation>nichts anderes passt zu den Zeilen</translation>
    </message>
    <message>
        <source>otherwise time would jump</source>
        <translation>sonst würde die Zeit springen</translation>
    </message>
    <message>
        <source>the values look like it</source>
        <translation>die Werte sehen danach aus</translation>
    </message>
    <message>
        <source>the rest of the file makes it likely</source>
        <translation>der Rest der Datei macht es wahrscheinlich</translation>
    </message>
    <message>
        <source>nothing in the file says so</source>
        <translation>nichts in der Datei sagt es</translation>
    </message>
    <message>
        <source>sure, %1</source>
        <translation>gewiss, %1</translation>
    </message>
    <message>
        <source>fairly sure, %1</source>
        <translation>ziemlich gewiss, %1</translation>
    </message>
    <message>
        <source>▲ a guess, %1</source>
        <translation>▲ geraten, %1</translation>
    </message>
    <message>
        <source>no date and time</source>
        <translation>kein Datum mit Uhrzeit</translation>
    </message>
    <message>
        <source>an hour the clock skipped in spring</source>
        <translation>eine Stunde, die die Uhr im Frühjahr übersprang</translation>
    </message>
    <message>
        <source>the line is cut off</source>
        <translation>die Zeile bricht ab</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>a value no air has</source>
        <translation>ein Wert, den keine Luft hat</translation>
    </message>
    <message>
        <source>neither temperature nor humidity</source>
        <translation>weder Temperatur noch Luftfeuchte</translation>
    </message>
    <message>
        <source>the heading again</source>
        <translation>noch einmal die Kopfzeile</translation>
    </message>
    <message>
        <source>an endless line</source>
        <translation>eine endlose Zeile</translation>
    </message>
    <message>
        <source>a quote that never closes</source>
        <translation>ein Anführungszeichen, das nie schließt</translation>
    </message>
    <message>
        <source>not text</source>
        <translation>kein Text</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>zu kalt</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>zu warm</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>zu trocken</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>zu feucht</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>estimate below its bound</source>
        <translation>Schätzung unter der Grenze</translation>
    </message>
    <message>
        <source>estimate straddles its bound</source>
        <translation>Schätzung beiderseits der Grenze</translation>
    </message>
    <message>
        <source>estimate above its bound</source>
        <translation>Schätzung über der Grenze</translation>
    </message>
</context>
<context>
    <name>Data</name>
    <message>
        <source>A second salting two days after the first.</source>
        <translation>Zwei Tage nach dem ersten ein zweites Salzen.</translation>
    </message>
    <message>
        <source>About two minutes for each day in cure, water at most 70 °F.</source>
        <translation>Etwa zwei Minuten für jeden Tag im Salz, Wasser höchstens 70 °F.</translation>
    </message>
    <message>
        <source>After salting</source>
        <translation>Nach dem Salzen</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Lüften</translation>
    </message>
    <message>
        <source>American country</source>
        <translation>Amerikanische Landart</translation>
    </message>
    <message>
        <source>Another spice or herb</source>
        <translation>Anderes Gewürz oder Kraut</translation>
    </message>
    <message>
        <source>Ascorbic acid (vitamin C)</source>
        <translation>Ascorbinsäure (Vitamin C)</translation>
    </message>
    <message>
        <source>Australia and New Zealand: cured meat</source>
        <translation>Australien und Neuseeland: gepökeltes Fleisch</translation>
    </message>
    <message>
        <source>Bacon, dry cured and smoked</source>
        <translation>Speck, trocken gepökelt und geräuchert</translation>
    </message>
    <message>
        <source>Bay leaf</source>
        <translation>Lorbeerblatt</translation>
    </message>
    <message>
        <source>Biltong</source>
        <translation>Biltong</translation>
    </message>
    <message>
        <source>Black pepper, ground</source>
        <translation>Schwarzer Pfeffer, gemahlen</translation>
    </message>
    <message>
        <source>Black pepper, whole</source>
        <translation>Schwarzer Pfeffer, ganz</translation>
    </message>
    <message>
        <source>Bresaola</source>
        <translation>Bresaola</translation>
    </message>
    <message>
        <source>Brine</source>
        <translation>Lake</translation>
    </message>
    <message>
        <source>Brown sugar, packed</source>
        <translation>Brauner Zucker, festgedrückt</translation>
    </message>
    <message>
        <source>Burn through</source>
        <translation>Durchbrennen</translation>
    </message>
    <message>
        <source>Cabinet drying</source>
        <translation>Trocknen im Schrank</translation>
    </message>
    <message>
        <source>Canada: cured meat</source>
        <translation>Kanada: gepökeltes Fleisch</translation>
    </message>
    <message>
        <source>Canada: side bacon</source>
        <translation>Kanada: Bauchspeck (side bacon)</translation>
    </message>
    <message>
        <source>Case and tie</source>
        <translation>Einhüllen und binden</translation>
    </message>
    <message>
        <source>Cellar</source>
        <translation>Keller</translation>
    </message>
    <message>
        <source>Central European smoked</source>
        <translation>Mitteleuropäisch geräuchert</translation>
    </message>
    <message>
        <source>Chilli, ground or flakes</source>
        <translation>Chili, gemahlen oder Flocken</translation>
    </message>
    <message>
        <source>Chinese wind-dried</source>
        <translation>Chinesisch windgetrocknet</translation>
    </message>
    <message>
        <source>Coarse sea salt</source>
        <translation>Grobes Meersalz</translation>
    </message>
    <message>
        <source>Codex: heat-treated whole cuts</source>
        <translation>Codex: erhitzte ganze Stücke</translation>
    </message>
    <message>
        <source>Cold smoke</source>
        <translation>Kaltrauch</translation>
    </message>
    <message>
        <source>Cool dry</source>
        <translation>Kühl trocknen</translation>
    </message>
    <message>
        <source>Cool</source>
        <translation>Kühlen</translation>
    </message>
    <message>
        <source>Coppa</source>
        <translation>Coppa</translation>
    </message>
    <message>
        <source>Coriander seed</source>
        <translation>Koriandersamen</translation>
    </message>
    <message>
        <source>Country and dry-cured ham: water activity</source>
        <translation>Country Ham und trocken gepökelter Schinken: Wasseraktivität</translation>
    </message>
    <message>
        <source>Country ham</source>
        <translation>Country Ham</translation>
    </message>
    <message>
        <source>Country ham: internal salt</source>
        <translation>Country Ham: Salz im Inneren</translation>
    </message>
    <message>
        <source>Country ham: loss of fresh weight</source>
        <translation>Country Ham: Verlust vom Frischgewicht</translation>
    </message>
    <message>
        <source>Country shoulder</source>
        <translation>Country-Schulter</translation>
    </message>
    <message>
        <source>Cure</source>
        <translation>Pökeln</translation>
    </message>
    <message>
        <source>Curing salt No. 1 (6.25 % nitrite)</source>
        <translation>Pökelsalz Nr. 1 (6,25 % Nitrit)</translation>
    </message>
    <message>
        <source>Curing salt No. 2 (6.25 % nitrite, nitrate by label)</source>
        <translation>Pökelsalz Nr. 2 (6,25 % Nitrit, Nitrat laut Etikett)</translation>
    </message>
    <message>
        <source>Curing salt, UK (5.88 % nitrite)</source>
        <translation>Pökelsalz, UK (5,88 % Nitrit)</translation>
    </message>
    <message>
        <source>Curing salt, strength from its label</source>
        <translation>Pökelsalz, Stärke laut Etikett</translation>
    </message>
    <message>
        <source>Damp rests let the inside follow the surface.</source>
        <translation>Feuchte Ruhezeiten lassen das Innere der Oberfläche folgen.</translation>
    </message>
    <message>
        <source>Dextrose (monohydrate)</source>
        <translation>Dextrose (Monohydrat)</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Abtropfen</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocknen</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: Rohschinken</source>
        <translation>EU vor dem 9. Oktober 2025: Rohschinken</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured bacon</source>
        <translation>EU vor dem 9. Oktober 2025: trocken gepökelter Bacon</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured ham, jamon, lomo, cecina</source>
        <translation>EU vor dem 9. Oktober 2025: trocken gepökelter Schinken, Jamón, Lomo, Cecina</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: jambon sec</source>
        <translation>EU vor dem 9. Oktober 2025: Jambon sec</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: not heat treated</source>
        <translation>EU vor dem 9. Oktober 2025: nicht wärmebehandelt</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: not heat treated</source>
        <translation>EU ab dem 9. Oktober 2025: nicht wärmebehandelt</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: sterilised</source>
        <translation>EU ab dem 9. Oktober 2025: sterilisiert</translation>
    </message>
    <message>
        <source>Equalise and dry the surface</source>
        <translation>Ausgleichen und Oberfläche trocknen</translation>
    </message>
    <message>
        <source>Equalise</source>
        <translation>Salzausgleich</translation>
    </message>
    <message>
        <source>Erythorbic acid</source>
        <translation>Erythorbinsäure</translation>
    </message>
    <message>
        <source>Fennel seed</source>
        <translation>Fenchelsamen</translation>
    </message>
    <message>
        <source>Fenugreek, ground</source>
        <translation>Bockshornklee, gemahlen</translation>
    </message>
    <message>
        <source>Fine sea salt</source>
        <translation>Feines Meersalz</translation>
    </message>
    <message>
        <source>First drying</source>
        <translation>Erstes Trocknen</translation>
    </message>
    <message>
        <source>First press</source>
        <translation>Erstes Pressen</translation>
    </message>
    <message>
        <source>First rest</source>
        <translation>Erste Ruhe</translation>
    </message>
    <message>
        <source>First salt</source>
        <translation>Erstes Salzen</translation>
    </message>
    <message>
        <source>Fish sauce</source>
        <translation>Fischsauce</translation>
    </message>
    <message>
        <source>Flake salt</source>
        <translation>Flockensalz</translation>
    </message>
    <message>
        <source>Follows the seasons where there is no thermostat.</source>
        <translation>Folgt den Jahreszeiten, wo es keinen Thermostat gibt.</translation>
    </message>
    <message>
        <source>French</source>
        <translation>Französisch</translation>
    </message>
    <message>
        <source>Fresh air</source>
        <translation>Frische Luft</translation>
    </message>
    <message>
        <source>Garlic powder</source>
        <translation>Knoblauchpulver</translation>
    </message>
    <message>
        <source>Garlic, fresh</source>
        <translation>Knoblauch, frisch</translation>
    </message>
    <message>
        <source>Great Britain: not heat treated</source>
        <translation>Großbritannien: nicht wärmebehandelt</translation>
    </message>
    <message>
        <source>Guanciale</source>
        <translation>Guanciale</translation>
    </message>
    <message>
        <source>Hang to even out the salt and dry the skin.</source>
        <translation>Aufhängen, damit sich das Salz ausgleicht und die Oberfläche trocknet.</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>Hängen</translation>
    </message>
    <message>
        <source>Honey</source>
        <translation>Honig</translation>
    </message>
    <message>
        <source>Italian and Spanish leg</source>
        <translation>Italienische und spanische Keule</translation>
    </message>
    <message>
        <source>Italian whole muscle</source>
        <translation>Italienische ganze Stücke</translation>
    </message>
    <message>
        <source>Jambon sec</source>
        <translation>Jambon sec</translation>
    </message>
    <message>
        <source>Juniper berries</source>
        <translation>Wacholderbeeren</translation>
    </message>
    <message>
        <source>Kosher salt, dense grain</source>
        <translation>Koscheres Salz, dichtes Korn</translation>
    </message>
    <message>
        <source>Kosher salt, light grain</source>
        <translation>Koscheres Salz, leichtes Korn</translation>
    </message>
    <message>
        <source>Lard</source>
        <translation>Schmalz auftragen</translation>
    </message>
    <message>
        <source>Last drying</source>
        <translation>Letztes Trocknen</translation>
    </message>
    <message>
        <source>Leg, air-dried on the bone</source>
        <translation>Keule, luftgetrocknet am Knochen</translation>
    </message>
    <message>
        <source>Leg, mountain air</source>
        <translation>Keule, Bergluft</translation>
    </message>
    <message>
        <source>Listeria cannot grow: water activity</source>
        <translation>Listerien können nicht wachsen: Wasseraktivität</translation>
    </message>
    <message>
        <source>Lomo, loin in adobo</source>
        <translation>Lomo, Schweinerücken in Adobo</translation>
    </message>
    <message>
        <source>Long rest</source>
        <translation>Lange Ruhe</translation>
    </message>
    <message>
        <source>Lonzino, the cured loin</source>
        <translation>Lonzino, gepökelter Schweinerücken</translation>
    </message>
    <message>
        <source>Magret, dried duck breast</source>
        <translation>Magret, getrocknete Entenbrust</translation>
    </message>
    <message>
        <source>Maple syrup</source>
        <translation>Ahornsirup</translation>
    </message>
    <message>
        <source>Marinate</source>
        <translation>Marinieren</translation>
    </message>
    <message>
        <source>Nitrite curing salt (0.6 %)</source>
        <translation>Nitritpökelsalz (0,6 %)</translation>
    </message>
    <message>
        <source>Nitrite curing salt, German (0.4 to 0.5 %)</source>
        <translation>Nitritpökelsalz, deutsch (0,4 bis 0,5 %)</translation>
    </message>
    <message>
        <source>No Codex entry for cured whole cuts that are not heat treated (08.2.1) was found: do not take this one for them.</source>
        <translation>Ein Codex-Eintrag für gepökelte ganze Stücke ohne Wärmebehandlung (08.2.1) wurde nicht gefunden: Nehmen Sie diesen nicht dafür.</translation>
    </message>
    <message>
        <source>No cold stage: a warm dry room with moving air.</source>
        <translation>Keine kalte Phase: ein warmer, trockener Raum mit bewegter Luft.</translation>
    </message>
    <message>
        <source>Only the ingoing row could be read, at second hand. Residual and nitrate rows of the new Annex are not here: read them before you rely on this set.</source>
        <translation>Nur die Zeile der zugesetzten Menge konnte gelesen werden, aus zweiter Hand. Restmengen und Nitrat des neuen Anhangs fehlen hier: Lesen Sie sie, bevor Sie sich darauf verlassen.</translation>
    </message>
    <message>
        <source>Out by day, in by night; 4 to 15 °C and 45 to 70 % are what cooks name. Warm spring weather stops it.</source>
        <translation>Am Tag hinaus, nachts herein; Köche nennen 4 bis 15 °C und 45 bis 70 %. Warmes Frühlingswetter beendet es.</translation>
    </message>
    <message>
        <source>Pancetta, flat</source>
        <translation>Pancetta, flach</translation>
    </message>
    <message>
        <source>Pancetta, rolled</source>
        <translation>Pancetta, gerollt</translation>
    </message>
    <message>
        <source>Paprika, ground</source>
        <translation>Paprika, gemahlen</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Gewürzpaste auftragen</translation>
    </message>
    <message>
        <source>Pastirma</source>
        <translation>Pastirma</translation>
    </message>
    <message>
        <source>Pickle</source>
        <translation>In Lake pökeln</translation>
    </message>
    <message>
        <source>Pickling salt</source>
        <translation>Einmachsalz</translation>
    </message>
    <message>
        <source>Poitrine séchée, dried belly</source>
        <translation>Poitrine séchée, getrockneter Bauch</translation>
    </message>
    <message>
        <source>Potassium nitrite, undiluted</source>
        <translation>Kaliumnitrit, unverdünnt</translation>
    </message>
    <message>
        <source>Pulsed dry</source>
        <translation>Trocknen in Schüben</translation>
    </message>
    <message>
        <source>Raw ham, from the brine</source>
        <translation>Rohschinken aus der Lake</translation>
    </message>
    <message>
        <source>Raw ham, smoked</source>
        <translation>Rohschinken, geräuchert</translation>
    </message>
    <message>
        <source>Rest in a bag</source>
        <translation>Ruhe im Beutel</translation>
    </message>
    <message>
        <source>Rest in the cold</source>
        <translation>Ruhe in der Kälte</translation>
    </message>
    <message>
        <source>Restack and turn every day.</source>
        <translation>Jeden Tag umschichten und wenden.</translation>
    </message>
    <message>
        <source>Rice wine, strength from its label</source>
        <translation>Reiswein, Stärke laut Etikett</translation>
    </message>
    <message>
        <source>Rinse and pepper</source>
        <translation>Abspülen und pfeffern</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Abspülen</translation>
    </message>
    <message>
        <source>Ripen</source>
        <translation>Nachreifen</translation>
    </message>
    <message>
        <source>Rock salt</source>
        <translation>Steinsalz</translation>
    </message>
    <message>
        <source>Roll, case and tie</source>
        <translation>Rollen, einhüllen und binden</translation>
    </message>
    <message>
        <source>Rub</source>
        <translation>Einreiben</translation>
    </message>
    <message>
        <source>Salt and adobo</source>
        <translation>Salz und Adobo</translation>
    </message>
    <message>
        <source>Salt and vinegar</source>
        <translation>Salz und Essig</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>Salz in der Wasserphase</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salzen</translation>
    </message>
    <message>
        <source>Salted and smoked belly</source>
        <translation>Gesalzener und geräucherter Bauch</translation>
    </message>
    <message>
        <source>Salted by eye and weight class: write down what was used.</source>
        <translation>Nach Augenmaß und Gewichtsklasse gesalzen: Schreiben Sie auf, wie viel es war.</translation>
    </message>
    <message>
        <source>Saltpetre (potassium nitrate)</source>
        <translation>Salpeter (Kaliumnitrat)</translation>
    </message>
    <message>
        <source>Second drying</source>
        <translation>Zweites Trocknen</translation>
    </message>
    <message>
        <source>Second press</source>
        <translation>Zweites Pressen</translation>
    </message>
    <message>
        <source>Second salt</source>
        <translation>Zweites Salzen</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Setzen lassen</translation>
    </message>
    <message>
        <source>Shelf stable: water activity</source>
        <translation>Ohne Kühlung haltbar: Wasseraktivität</translation>
    </message>
    <message>
        <source>Shoulder or ham in sweet pickle</source>
        <translation>Schulter oder Schinken in süßer Lake</translation>
    </message>
    <message>
        <source>Six hours warm, then down two degrees every twelve hours.</source>
        <translation>Sechs Stunden warm, dann alle zwölf Stunden zwei Grad weniger.</translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation>Räuchern</translation>
    </message>
    <message>
        <source>Soak</source>
        <translation>Wässern</translation>
    </message>
    <message>
        <source>Sodium ascorbate</source>
        <translation>Natriumascorbat</translation>
    </message>
    <message>
        <source>Sodium erythorbate</source>
        <translation>Natriumerythorbat</translation>
    </message>
    <message>
        <source>Sodium nitrate, undiluted</source>
        <translation>Natriumnitrat, unverdünnt</translation>
    </message>
    <message>
        <source>Sodium nitrite, undiluted</source>
        <translation>Natriumnitrit, unverdünnt</translation>
    </message>
    <message>
        <source>Sodium tripolyphosphate</source>
        <translation>Natriumtripolyphosphat</translation>
    </message>
    <message>
        <source>South African</source>
        <translation>Südafrikanisch</translation>
    </message>
    <message>
        <source>Soy and spirit by volume: weigh them.</source>
        <translation>Sojasauce und Spirituose nach Volumen: Wiegen Sie sie.</translation>
    </message>
    <message>
        <source>Soy sauce</source>
        <translation>Sojasauce</translation>
    </message>
    <message>
        <source>Spanish loin</source>
        <translation>Spanischer Schweinerücken</translation>
    </message>
    <message>
        <source>Speck</source>
        <translation>Speck</translation>
    </message>
    <message>
        <source>Spirit, strength from its label</source>
        <translation>Spirituose, Stärke laut Etikett</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapeln</translation>
    </message>
    <message>
        <source>Summer sweat is wanted. Internal temperature at most 95 °F (9 CFR 319.106).</source>
        <translation>Das Schwitzen im Sommer ist gewollt. Kerntemperatur höchstens 95 °F (9 CFR 319.106).</translation>
    </message>
    <message>
        <source>Table salt</source>
        <translation>Speisesalz</translation>
    </message>
    <message>
        <source>The casing day is the birthday of the piece: weigh it bare and dressed.</source>
        <translation>Der Tag des Einhüllens ist der Geburtstag des Stücks: nackt und eingehüllt wiegen.</translation>
    </message>
    <message>
        <source>The next weighing may be wet.</source>
        <translation>Die nächste Wägung kann nass sein.</translation>
    </message>
    <message>
        <source>The rule counts the thickness before rolling: enter the flat thickness for the cure.</source>
        <translation>Die Regel zählt die Dicke vor dem Rollen: Geben Sie für das Pökeln die flache Dicke ein.</translation>
    </message>
    <message>
        <source>Third drying</source>
        <translation>Drittes Trocknen</translation>
    </message>
    <message>
        <source>Thread and hang</source>
        <translation>Auffädeln und hängen</translation>
    </message>
    <message>
        <source>Three and a half to four days per pound, about 36 °F.</source>
        <translation>Dreieinhalb bis vier Tage je Pfund (lb), bei etwa 36 °F.</translation>
    </message>
    <message>
        <source>Three to five millimetres of paste: weigh before and after.</source>
        <translation>Drei bis fünf Millimeter Paste: davor und danach wiegen.</translation>
    </message>
    <message>
        <source>Turkish and Armenian pressed</source>
        <translation>Türkisch und armenisch, gepresst</translation>
    </message>
    <message>
        <source>Two days per pound.</source>
        <translation>Zwei Tage je Pfund (lb).</translation>
    </message>
    <message>
        <source>US FSIS: bacon, dry cured</source>
        <translation>US FSIS: Bacon, trocken gepökelt</translation>
    </message>
    <message>
        <source>US FSIS: bacon, immersion cured</source>
        <translation>US FSIS: Bacon, in Lake gepökelt</translation>
    </message>
    <message>
        <source>US FSIS: bacon, pumped</source>
        <translation>US FSIS: Bacon, gespritzt</translation>
    </message>
    <message>
        <source>US FSIS: chopped</source>
        <translation>US FSIS: zerkleinert</translation>
    </message>
    <message>
        <source>US FSIS: cured, labelled to keep refrigerated</source>
        <translation>US FSIS: gepökelt, mit Aufdruck „gekühlt halten“</translation>
    </message>
    <message>
        <source>US FSIS: dry cured</source>
        <translation>US FSIS: trocken gepökelt</translation>
    </message>
    <message>
        <source>US FSIS: immersed, pumped or massaged</source>
        <translation>US FSIS: eingelegt, gespritzt oder massiert</translation>
    </message>
    <message>
        <source>US home curing</source>
        <translation>US: Pökeln zu Hause</translation>
    </message>
    <message>
        <source>Vinegar (5 % acid)</source>
        <translation>Essig (5 % Säure)</translation>
    </message>
    <message>
        <source>Warm rest</source>
        <translation>Warme Ruhe</translation>
    </message>
    <message>
        <source>Warm start</source>
        <translation>Warmer Beginn</translation>
    </message>
    <message>
        <source>Wash and pepper</source>
        <translation>Waschen und pfeffern</translation>
    </message>
    <message>
        <source>Wash and soak</source>
        <translation>Waschen und wässern</translation>
    </message>
    <message>
        <source>Wash</source>
        <translation>Waschen</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Weigh before and after.</source>
        <translation>Davor und danach wiegen.</translation>
    </message>
    <message>
        <source>White pepper, ground</source>
        <translation>Weißer Pfeffer, gemahlen</translation>
    </message>
    <message>
        <source>White sugar</source>
        <translation>Weißer Zucker</translation>
    </message>
    <message>
        <source>Whole muscle in a cabinet, pulsed air</source>
        <translation>Ganze Stücke im Schrank, Luft in Schüben</translation>
    </message>
    <message>
        <source>Wind dry</source>
        <translation>Windtrocknen</translation>
    </message>
    <message>
        <source>Wind-dried belly</source>
        <translation>Windgetrockneter Bauch</translation>
    </message>
    <message>
        <source>Wine, strength from its label</source>
        <translation>Wein, Stärke laut Etikett</translation>
    </message>
    <message>
        <source>Wipe and dip</source>
        <translation>Abwischen und tauchen</translation>
    </message>
    <message>
        <source>beef</source>
        <translation>Rind</translation>
    </message>
    <message>
        <source>cup (US)</source>
        <translation>Tasse (US)</translation>
    </message>
    <message>
        <source>cup (metric)</source>
        <translation>Tasse (metrisch)</translation>
    </message>
    <message>
        <source>duck</source>
        <translation>Ente</translation>
    </message>
    <message>
        <source>pork</source>
        <translation>Schwein</translation>
    </message>
    <message>
        <source>tablespoon (Australia)</source>
        <translation>Esslöffel (Australien)</translation>
    </message>
    <message>
        <source>tablespoon (US food label)</source>
        <translation>Esslöffel (US-Lebensmitteletikett)</translation>
    </message>
    <message>
        <source>tablespoon (US)</source>
        <translation>Esslöffel (US)</translation>
    </message>
    <message>
        <source>tablespoon (imperial)</source>
        <translation>Esslöffel (imperial)</translation>
    </message>
    <message>
        <source>tablespoon (metric)</source>
        <translation>Esslöffel (metrisch)</translation>
    </message>
    <message>
        <source>tablespoon (traditional British)</source>
        <translation>Esslöffel (britisch, alt)</translation>
    </message>
    <message>
        <source>teaspoon (US)</source>
        <translation>Teelöffel (US)</translation>
    </message>
    <message>
        <source>teaspoon (metric)</source>
        <translation>Teelöffel (metrisch)</translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation>Nitrit</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>Nitrat</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Dry-cured ham, cut, in the cold</source>
        <translation>Rohschinken, angeschnitten, gekühlt</translation>
    </message>
    <message>
        <source>Dry-cured ham, frozen</source>
        <translation>Rohschinken, gefroren</translation>
    </message>
    <message>
        <source>Dry-cured ham, whole and uncut, in a cool room</source>
        <translation>Rohschinken, ganz und nicht angeschnitten, in einem kühlen Raum</translation>
    </message>
    <message>
        <source>Opened, wrapped again, in the cold</source>
        <translation>Geöffnet, wieder eingewickelt, gekühlt</translation>
    </message>
    <message>
        <source>Thawed and opened, in the cold</source>
        <translation>Aufgetaut und geöffnet, gekühlt</translation>
    </message>
    <message>
        <source>Whole muscle under vacuum, in the cold</source>
        <translation>Ganzes Stück unter Vakuum, gekühlt</translation>
    </message>
    <message>
        <source>Whole muscle, frozen under vacuum</source>
        <translation>Ganzes Stück, unter Vakuum gefroren</translation>
    </message>
    <message>
        <source>Whole muscle, uncut, wrapped, in the cold</source>
        <translation>Ganzes Stück, nicht angeschnitten, eingewickelt, gekühlt</translation>
    </message>
    <message>
        <source>for quality</source>
        <translation>wegen der Qualität</translation>
    </message>
    <message>
        <source>for quality: fat turns rancid</source>
        <translation>wegen der Qualität: Fett wird ranzig</translation>
    </message>
    <message>
        <source>for quality; of whole hams on the bone</source>
        <translation>wegen der Qualität; von ganzen Schinken am Knochen</translation>
    </message>
    <message>
        <source>it goes on drying in the fridge</source>
        <translation>im Kühlschrank trocknet es weiter</translation>
    </message>
    <message>
        <source>the chart gives three weeks after opening</source>
        <translation>die Tabelle nennt drei Wochen nach dem Öffnen</translation>
    </message>
    <message>
        <source>the chart gives two to three months</source>
        <translation>die Tabelle nennt zwei bis drei Monate</translation>
    </message>
    <message>
        <source>without air some dangerous microbes grow better: only for pieces that are dry and salted through</source>
        <translation>ohne Luft wachsen manche gefährlichen Keime besser: nur für Stücke, die trocken und durchgesalzen sind</translation>
    </message>
</context>
<context>
    <name>DateWords</name>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>A calendar day with its year, in Qt&apos;s date format; keep the parts, change their order.</extracomment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>A calendar day without its year, in Qt&apos;s date format.</extracomment>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>A calendar day of few letters, in Qt&apos;s date format.</extracomment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day, %2 a clock time</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation>
            <numerusform>in %n Tag</numerusform>
            <numerusform>in %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>d</source>
        <extracomment>The day of the month before &quot;to 20 Mar 2026&quot;, in Qt&apos;s date format.</extracomment>
        <translation>d.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a span of days, e.g. &quot;14 to 20 Mar 2026&quot;</extracomment>
        <translation>%1 bis %2</translation>
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
        <translation>Hier ist noch nichts eingegeben. Tippen Sie einen Wert ein.</translation>
    </message>
    <message>
        <source>“%1” is not a number. Type digits, such as 740 or 2.5.</source>
        <translation>„%1“ ist keine Zahl. Tippen Sie Ziffern wie 740 oder 2,5.</translation>
    </message>
    <message>
        <source>The unit “%1” is not known. Use g, kg, oz, lb, mm, in, °C, °F, mL or fl oz.</source>
        <translation>Die Einheit „%1“ ist nicht bekannt. Möglich sind g, kg, oz, lb, mm, in, °C, °F, mL oder fl oz.</translation>
    </message>
    <message>
        <source>Say which unit is meant, such as g or oz.</source>
        <translation>Sagen Sie, welche Einheit gemeint ist, etwa g oder oz.</translation>
    </message>
    <message>
        <source>“%1” is another kind of quantity than is asked for here. Enter one in the unit shown beside the field.</source>
        <translation>„%1“ ist eine andere Größe als hier gefragt. Geben Sie eine in der Einheit ein, die neben dem Feld steht.</translation>
    </message>
    <message>
        <source>“%1” is outside what is possible here. Check the digits and the unit.</source>
        <translation>„%1“ liegt außerhalb dessen, was hier möglich ist. Prüfen Sie Ziffern und Einheit.</translation>
    </message>
    <message>
        <source>“%1” is left over after the value. Take it away or write it in a note.</source>
        <translation>„%1“ bleibt nach dem Wert übrig. Nehmen Sie es weg oder schreiben Sie es in eine Notiz.</translation>
    </message>
    <message>
        <source>“%1” can be read as a thousand or as a decimal. Write it without a thousands mark.</source>
        <translation>„%1“ kann als Tausend oder als Dezimalzahl gelesen werden. Schreiben Sie es ohne Tausenderzeichen.</translation>
    </message>
    <message>
        <source>This is not in the expected form: %1. Check that it is the file you meant.</source>
        <translation>Das hat nicht die erwartete Form: %1. Prüfen Sie, ob es die gemeinte Datei ist.</translation>
    </message>
    <message>
        <source>The column “%1” is missing. Add it to the file&apos;s first line.</source>
        <translation>Die Spalte „%1“ fehlt. Fügen Sie sie in der ersten Zeile der Datei hinzu.</translation>
    </message>
    <message>
        <source>A line could not be read: %1. Mend it and read the file again.</source>
        <translation>Eine Zeile ist nicht lesbar: %1. Berichtigen Sie sie und lesen Sie die Datei noch einmal ein.</translation>
    </message>
    <message>
        <source>The time zone “%1” is not known on this computer. Choose another in Preferences.</source>
        <translation>Die Zeitzone „%1“ ist auf diesem Rechner nicht bekannt. Wählen Sie in den Einstellungen eine andere.</translation>
    </message>
    <message>
        <source>%1 was not found. Check the name and whether the disk is there.</source>
        <translation>%1 wurde nicht gefunden. Prüfen Sie den Namen und ob der Datenträger da ist.</translation>
    </message>
    <message>
        <source>%1 may not be read or written by you. Change its permissions or choose another place.</source>
        <translation>%1 dürfen Sie nicht lesen oder schreiben. Ändern Sie die Rechte oder wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
        <source>%1 is a folder. Choose a file in it.</source>
        <translation>%1 ist ein Ordner. Wählen Sie eine Datei darin.</translation>
    </message>
    <message>
        <source>%1 is not a Saltloft book. Choose another file, or make a new book.</source>
        <translation>%1 ist kein Saltloft-Buch. Wählen Sie eine andere Datei oder legen Sie ein neues Buch an.</translation>
    </message>
    <message>
        <source>This book was written by a newer Saltloft (%1). Install that version to open it; nothing was changed.</source>
        <translation>Dieses Buch hat ein neueres Saltloft (%1) geschrieben. Installieren Sie jene Version, um es zu öffnen; geändert wurde nichts.</translation>
    </message>
    <message>
        <source>The book is damaged: %1. Open a backup, or salvage what can be read into a new book.</source>
        <translation>Das Buch ist beschädigt: %1. Öffnen Sie eine Sicherungskopie oder retten Sie, was lesbar ist, in ein neues Buch.</translation>
    </message>
    <message>
        <source>The book is busy in another program. Close it there and try again.</source>
        <translation>Das Buch ist in einem anderen Programm in Gebrauch. Schließen Sie es dort und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The disk is full. Free some space and try again; nothing was lost.</source>
        <translation>Der Datenträger ist voll. Schaffen Sie Platz und versuchen Sie es noch einmal; verloren ist nichts.</translation>
    </message>
    <message>
        <source>The disk did not answer as it should: %1. Check the disk, then try again.</source>
        <translation>Der Datenträger antwortete nicht, wie er sollte: %1. Prüfen Sie ihn und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The book is open for reading only, so nothing was changed. Close it elsewhere or free the file, then open it again.</source>
        <translation>Das Buch ist nur zum Lesen geöffnet, also wurde nichts geändert. Schließen Sie es anderswo oder geben Sie die Datei frei und öffnen Sie es dann wieder.</translation>
    </message>
    <message>
        <source>This entry is no longer in the book: %1. Go back and choose again.</source>
        <translation>Diesen Eintrag gibt es im Buch nicht mehr: %1. Gehen Sie zurück und wählen Sie neu.</translation>
    </message>
    <message>
        <source>This clashes with what is in the book: %1. Choose another code, or look at the entry again and repeat.</source>
        <translation>Das verträgt sich nicht mit dem, was im Buch steht: %1. Wählen Sie ein anderes Kürzel oder sehen Sie sich den Eintrag noch einmal an und wiederholen Sie.</translation>
    </message>
    <message>
        <source>The book does not allow this: %1. Mend what is named and try again.</source>
        <translation>Das Buch lässt dies nicht zu: %1. Beheben Sie das Genannte und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Es gibt nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <translation>Es gibt nichts zu wiederholen.</translation>
    </message>
    <message>
        <source>There is no answer that meets everything asked: %1. Loosen one of the wishes.</source>
        <translation>Es gibt keine Lösung, die alles Verlangte erfüllt: %1. Lockern Sie einen der Wünsche.</translation>
    </message>
    <message>
        <source>The computation did not settle: %1. More weighings usually help.</source>
        <translation>Die Berechnung kam nicht zur Ruhe: %1. Mehr Wägungen helfen meist.</translation>
    </message>
    <message>
        <source>Stopped, as you asked. Nothing was changed.</source>
        <translation>Angehalten, wie gewünscht. Geändert wurde nichts.</translation>
    </message>
    <message>
        <source>Something went wrong: %1. Try again.</source>
        <translation>Etwas ging schief: %1. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>no detail</source>
        <translation>ohne Näheres</translation>
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
        <translation>dieser Eintrag</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Please look at this: %1.</source>
        <translation>Bitte ansehen: %1.</translation>
    </message>
    <message>
        <source>Please look at %1: %2.</source>
        <translation>Bitte %1 ansehen: %2.</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, by arithmetic from it</source>
        <translation>%1, daraus errechnet</translation>
    </message>
    <message>
        <source>%1 – unverified: read as quoted by others</source>
        <translation>%1 – ungeprüft: gelesen, wie andere es zitieren</translation>
    </message>
    <message>
        <source>%1 – unverified: from memory</source>
        <translation>%1 – ungeprüft: aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>This book is open elsewhere ({by}), so it can only be read here. Close it there and open it again.</source>
        <translation>Dieses Buch ist anderswo geöffnet ({by}) und kann hier nur gelesen werden. Schließen Sie es dort und öffnen Sie es wieder.</translation>
    </message>
    <message>
        <source>This book is open for reading only. To write in it, free the file&apos;s permissions and open it again.</source>
        <translation>Dieses Buch ist nur zum Lesen geöffnet. Um darin zu schreiben, geben Sie die Rechte der Datei frei und öffnen Sie es wieder.</translation>
    </message>
    <message>
        <source>This book is damaged ({problem}) and is open for reading only. Back it up, then salvage what can be read into a new book.</source>
        <translation>Dieses Buch ist beschädigt ({problem}) und nur zum Lesen geöffnet. Machen Sie eine Kopie davon und retten Sie dann, was lesbar ist, in ein neues Buch.</translation>
    </message>
    <message>
        <source>This book lies on a network drive, where a break can lose the last entry. Keep it on this computer.</source>
        <translation>Dieses Buch liegt auf einem Netzlaufwerk, wo eine Unterbrechung den letzten Eintrag kosten kann. Bewahren Sie es auf diesem Rechner auf.</translation>
    </message>
    <message>
        <source>This book was brought up to date from version {from} to {to}. The copy from before is {backup}.</source>
        <translation>Dieses Buch wurde von Version {from} auf {to} gebracht. Die Kopie von vorher ist {backup}.</translation>
    </message>
    <message>
        <source>The program or the computer stopped without closing this book. All finished entries are here.</source>
        <translation>Das Programm oder der Rechner hielt an, ohne das Buch zu schließen. Alle fertigen Einträge sind da.</translation>
    </message>
    <message>
        <source>{place}: the {quantity} stood at {value} for {lasted}. A room is never that still: check the sensor&apos;s battery and contact.</source>
        <translation>{place}: {quantity} stand {lasted} lang auf {value}. So ruhig ist kein Raum: Prüfen Sie Batterie und Kontakt des Sensors.</translation>
    </message>
    <message>
        <source>{place}: the humidity jumped by {by} on {at} and stayed there, while the temperature did not. Was a battery changed, the sensor moved, or the room set to another humidity? A salt-bag check will tell.</source>
        <translation>{place}: Die Luftfeuchte sprang am {at} um {by} und blieb dort, die Temperatur aber nicht. Wurde eine Batterie gewechselt, der Sensor versetzt oder der Raum auf eine andere Feuchte gestellt? Eine Prüfung im Salzbeutel zeigt es.</translation>
    </message>
    <message>
        <source>{first} and {second} disagree over {hours} hours: {humidity_apart} of humidity apart. Check both over a salt slurry before you believe either.</source>
        <translation>{first} und {second} sind über {hours} Stunden uneins: {humidity_apart} Feuchte auseinander. Prüfen Sie beide über Salzbrei, bevor Sie einem glauben.</translation>
    </message>
    <message>
        <source>{place} says {stated}, but the weight losses of {pieces} pieces speak for {implied} ({implied_low} to {implied_high}). Check the sensor.</source>
        <translation>{place} sagt {stated}, aber die Gewichtsverluste von {pieces} Stücken sprechen für {implied} ({implied_low} bis {implied_high}). Prüfen Sie den Sensor.</translation>
    </message>
    <message>
        <source>{place}: the pieces give off {water_per_day} of water a day, more than the {capacity_per_day} it can carry out. Expect damp air and slow drying.</source>
        <translation>{place}: Die Stücke geben am Tag {water_per_day} Wasser ab, mehr als die {capacity_per_day}, die sich dort abführen lassen. Feuchte Luft und langsames Trocknen sind zu erwarten.</translation>
    </message>
    <message>
        <source>{place}: the pieces give off only {water_per_day} of water a day. With so little in it the air may dry their surface too fast: watch the humidity.</source>
        <translation>{place}: Die Stücke geben am Tag nur {water_per_day} Wasser ab. Bei so wenig darin kann die Luft ihre Oberfläche zu schnell trocknen: Achten Sie auf die Feuchte.</translation>
    </message>
    <message>
        <source>{place}: {pieces} pieces for {places} places.</source>
        <translation>{place}: {pieces} Stücke für {places} Plätze.</translation>
    </message>
    <message>
        <source>{joining} wet pieces would hang with {nearly_dry} nearly dry ones: the water to carry out rises from {water_now} to {water_then} a day, and the dry ones would take some of it up. Hang them elsewhere, or a week apart.</source>
        <translation>{joining} nasse Stücke hingen bei {nearly_dry} fast trockenen: Das abzuführende Wasser steigt von {water_now} auf {water_then} am Tag, und die trockenen nähmen etwas davon auf. Hängen Sie sie anderswo auf oder eine Woche versetzt.</translation>
    </message>
    <message>
        <source>The day rules for this way of curing disagree: {shortest} to {longest}. Choose one and keep it with the batch.</source>
        <translation>Die Tagesregeln für diese Art des Pökelns sind uneins: {shortest} bis {longest}. Wählen Sie eine und halten Sie sie bei der Charge fest.</translation>
    </message>
    <message>
        <source>This day rule belongs to another way of curing. Rules by weight come from burying in salt, rules by thickness mostly from weighed cures.</source>
        <translation>Diese Tagesregel gehört zu einer anderen Art des Pökelns. Regeln nach Gewicht stammen vom Salzbett, Regeln nach Dicke meist vom Pökeln mit abgewogenem Salz.</translation>
    </message>
    <message>
        <source>The day rules ({shortest} to {longest}) lie outside what salt diffusion suggests ({p10} to {p90}, half-way {p50}).</source>
        <translation>Die Tagesregeln ({shortest} bis {longest}) liegen außerhalb dessen, was die Salzdiffusion nahelegt ({p10} bis {p90}, Mitte {p50}).</translation>
    </message>
    <message>
        <source>{planned} is planned; diffusion suggests {p50} ({p10} to {p90}). The centre may get too little: give it longer or rest it cold afterwards.</source>
        <translation>Geplant sind {planned}; die Diffusion legt {p50} nahe ({p10} bis {p90}). Die Mitte bekommt womöglich zu wenig: mehr Zeit geben oder danach kalt ruhen lassen.</translation>
    </message>
    <message>
        <source>{planned} in more salt than it needs is longer than {p90}, when the piece passes {wanted}. Buried in salt, time is the dose.</source>
        <translation>{planned} in mehr Salz als nötig ist länger als {p90}, wenn das Stück {wanted} überschreitet. Im Salzbett ist die Zeit die Dosis.</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, warmer than {limit}. Move it to a colder place.</source>
        <translation>Gepökelt wird bei {temperature}, wärmer als {limit}. Bringen Sie es an einen kälteren Ort.</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, colder than {limit}: salt moves slowly there, give it longer.</source>
        <translation>Gepökelt wird bei {temperature}, kälter als {limit}: Dort wandert Salz langsam, geben Sie mehr Zeit.</translation>
    </message>
    <message>
        <source>Frozen for {paused}: the cure stood still and that time is added.</source>
        <translation>{paused} lang gefroren: Das Pökeln stand still, und diese Zeit kommt hinzu.</translation>
    </message>
    <message>
        <source>At {temperature} the piece is frozen and the cure stands still. No end can be given until it is thawed.</source>
        <translation>Bei {temperature} ist das Stück gefroren und das Pökeln steht still. Ein Ende lässt sich erst nennen, wenn es aufgetaut ist.</translation>
    </message>
    <message>
        <source>Only the thickness is known; salt coming in at the ends is not counted. Enter width and length for a better figure.</source>
        <translation>Nur die Dicke ist bekannt; Salz, das an den Enden eindringt, ist nicht gezählt. Geben Sie für eine bessere Zahl Breite und Länge ein.</translation>
    </message>
    <message>
        <source>With {fat} fat most salt goes into the lean, and more slowly than the figures say.</source>
        <translation>Bei {fat} Fett geht das meiste Salz ins Magere, und langsamer, als die Zahlen sagen.</translation>
    </message>
    <message>
        <source>With skin all round no salt can get in. Take the skin off one side.</source>
        <translation>Mit Schwarte ringsum kann kein Salz hinein. Nehmen Sie die Schwarte an einer Seite ab.</translation>
    </message>
    <message>
        <source>{salt} is more than the water of the meat can hold ({most}). Ask for less.</source>
        <translation>{salt} ist mehr, als das Wasser des Fleisches halten kann ({most}). Verlangen Sie weniger.</translation>
    </message>
    <message>
        <source>The thickness must be between 1 mm and 500 mm.</source>
        <translation>Die Dicke muss zwischen 1 mm und 500 mm liegen.</translation>
    </message>
    <message>
        <source>Width and length must be at least the thickness, which is the shortest side, and at most 2 m.</source>
        <translation>Breite und Länge müssen mindestens die Dicke betragen, die die kürzeste Seite ist, und höchstens 2 m.</translation>
    </message>
    <message>
        <source>The salt must be above 0 and at most 20 % of the meat.</source>
        <translation>Das Salz muss über 0 liegen und höchstens 20 % des Fleisches betragen.</translation>
    </message>
    <message>
        <source>The temperature of a cure must be between -40 and 45 °C.</source>
        <translation>Die Temperatur beim Pökeln muss zwischen -40 und 45 °C liegen.</translation>
    </message>
    <message>
        <source>The liquid around the meat must be between none and 20 times the meat.</source>
        <translation>Die Flüssigkeit um das Fleisch muss zwischen nichts und dem Zwanzigfachen des Fleisches liegen.</translation>
    </message>
    <message>
        <source>The fat must be between 0 and 95 %.</source>
        <translation>Das Fett muss zwischen 0 und 95 % liegen.</translation>
    </message>
    <message>
        <source>&quot;Even&quot; must mean between 50 and 99 % of the mean at the centre.</source>
        <translation>„Gleichmäßig“ muss zwischen 50 und 99 % des Mittels in der Mitte bedeuten.</translation>
    </message>
    <message>
        <source>The planned time must be between none and ten years.</source>
        <translation>Die geplante Zeit muss zwischen nichts und zehn Jahren liegen.</translation>
    </message>
    <message>
        <source>The day rule &quot;{place}&quot; is not known. Choose one from the list.</source>
        <translation>Die Tagesregel „{place}“ ist nicht bekannt. Wählen Sie eine aus der Liste.</translation>
    </message>
    <message>
        <source>{loss} in {took}, {per_day} a day, is fast (up to {usual_most} a day is usual). The inside may be behind the outside: cut one or rest it and weigh again.</source>
        <translation>{loss} in {took}, {per_day} am Tag, ist schnell (üblich sind bis zu {usual_most} am Tag). Das Innere kann hinter dem Äußeren zurück sein: eines anschneiden oder ruhen lassen und wieder wiegen.</translation>
    </message>
    <message>
        <source>The target is reached ({loss}), but the centre feels soft. Rest it so that it evens out, and look again.</source>
        <translation>Das Ziel ist erreicht ({loss}), aber die Mitte fühlt sich weich an. Ruhen lassen, damit es sich ausgleicht, und wieder ansehen.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day). With {fat} fat there is little water left to lose: a fatty piece can be as dry as it gets below its target.</source>
        <translation>Die Kurve ist bei {loss} fast flach ({per_day} am Tag). Bei {fat} Fett ist wenig Wasser zu verlieren: Ein fettes Stück kann unter seinem Ziel so trocken sein, wie es wird.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day), though the piece is lean. Ask the air first: humidity {humidity}. In wet air it stops before it is dry.</source>
        <translation>Die Kurve ist bei {loss} fast flach ({per_day} am Tag), obwohl das Stück mager ist. Fragen Sie erst die Luft: Feuchte {humidity}. In feuchter Luft bleibt es stehen, bevor es trocken ist.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day) with a soft centre: a dry rim may hold the water in. Rest it in a bag, then dry on in wetter air.</source>
        <translation>Die Kurve ist bei {loss} fast flach ({per_day} am Tag), bei weicher Mitte: Ein Trockenrand hält womöglich das Wasser. Im Beutel ruhen lassen, dann in feuchterer Luft weitertrocknen.</translation>
    </message>
    <message>
        <source>The loss levels off near {levels_off}; the target of {target} is not in sight in this air. Change the air or the target.</source>
        <translation>Der Verlust flacht bei {levels_off} ab; das Ziel von {target} ist in dieser Luft nicht in Sicht. Ändern Sie die Luft oder das Ziel.</translation>
    </message>
    <message>
        <source>It weighs {net}, more than at its start ({start}). Was it washed, coated or dressed? Enter that, or correct the weighing.</source>
        <translation>Es wiegt {net}, mehr als am Anfang ({start}). Wurde es gewaschen, überzogen oder eingehüllt? Tragen Sie das ein oder berichtigen Sie die Wägung.</translation>
    </message>
    <message>
        <source>{net} is less than the dry matter of {start} at the start. Look for a wrong weight, a tare or a cut that was not entered.</source>
        <translation>{net} ist weniger als die Trockenmasse von {start} am Anfang. Suchen Sie ein falsches Gewicht, eine Tara oder einen Schnitt, der nicht eingetragen ist.</translation>
    </message>
    <message>
        <source>The raw weight is not known; {start} is reckoned from a later weight and a usual loss in the cure.</source>
        <translation>Das Rohgewicht ist nicht bekannt; {start} ist aus einem späteren Gewicht und einem üblichen Verlust beim Pökeln gerechnet.</translation>
    </message>
    <message>
        <source>Buried in salt, the amount put on says little about what went in. Salt and water activity are guesses here: have them measured.</source>
        <translation>Im Salzbett sagt die aufgetragene Menge wenig darüber, was eingedrungen ist. Salz und Wasseraktivität sind hier geraten: Lassen Sie sie messen.</translation>
    </message>
    <message>
        <source>The water activity is an estimate from weights and salt. A rule that asks for it asks for a measurement.</source>
        <translation>Die Wasseraktivität ist aus Gewichten und Salz geschätzt. Eine Vorschrift, die nach ihr fragt, fragt nach einer Messung.</translation>
    </message>
    <message>
        <source>Measured {measured}, estimated {low} to {high}. Look at the sample&apos;s place, the instrument&apos;s check, the salt and the fat entered.</source>
        <translation>Gemessen {measured}, geschätzt {low} bis {high}. Sehen Sie nach der Stelle der Probe, der Prüfung des Geräts und den Einträgen für Salz und Fett.</translation>
    </message>
    <message>
        <source>The weighings were not in order of time; they were sorted.</source>
        <translation>Die Wägungen waren nicht nach der Zeit geordnet; sie wurden sortiert.</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to see the evidence.</source>
        <translation>Der Wert von {place} kann nicht sein. Berichtigen Sie ihn, um die Belege zu sehen.</translation>
    </message>
    <message>
        <source>At {temperature} the piece spends about {time} between {low} and {high}, where microbes grow.</source>
        <translation>Bei {temperature} ist das Stück etwa {time} zwischen {low} und {high}, wo Mikroben wachsen.</translation>
    </message>
    <message>
        <source>About {time} in this warmth is longer than the {guide} that a guide (for fish) allows ready-to-eat food.</source>
        <translation>Etwa {time} in dieser Wärme ist länger als die {guide}, die ein Leitfaden (für Fisch) verzehrfertigen Lebensmitteln zugesteht.</translation>
    </message>
    <message>
        <source>The piece may still be wetter than a water activity of {limit}. Dry it further in the cold before warming it.</source>
        <translation>Das Stück kann noch feuchter sein als eine Wasseraktivität von {limit}. Trocknen Sie es in der Kälte weiter, bevor Sie es erwärmen.</translation>
    </message>
    <message>
        <source>In warm air of {humidity} a thick piece can dry hard outside and stay wet inside.</source>
        <translation>In warmer Luft von {humidity} kann ein dickes Stück außen hart trocknen und innen nass bleiben.</translation>
    </message>
    <message>
        <source>Warming at the end does not undo a toxin that Staphylococcus aureus has left.</source>
        <translation>Erwärmen am Ende beseitigt kein Toxin, das Staphylococcus aureus hinterlassen hat.</translation>
    </message>
    <message>
        <source>At {temperature} the piece begins to cook rather than dry.</source>
        <translation>Bei {temperature} beginnt das Stück eher zu garen als zu trocknen.</translation>
    </message>
    <message>
        <source>{target} is more than the water left can give; it levels off near {levels_off}.</source>
        <translation>{target} ist mehr, als das restliche Wasser hergibt; der Verlust flacht bei {levels_off} ab.</translation>
    </message>
    <message>
        <source>The loss wanted is already reached ({loss}).</source>
        <translation>Der gewünschte Verlust ist schon erreicht ({loss}).</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to get an answer.</source>
        <translation>Der Wert von {place} kann nicht sein. Berichtigen Sie ihn, um eine Antwort zu bekommen.</translation>
    </message>
    <message>
        <source>This is more salt than the water can dissolve ({most} of the water phase).</source>
        <translation>Das ist mehr Salz, als das Wasser lösen kann ({most} der Wasserphase).</translation>
    </message>
    <message>
        <source>The wet end of the estimate is above {limit}, the lowest water activity at which {name} grows.</source>
        <translation>Das feuchte Ende der Schätzung liegt über {limit}, der niedrigsten Wasseraktivität, bei der {name} wächst.</translation>
    </message>
    <message>
        <source>The weighing of {at} lies off the curve by {off_by}. Was the tare right, the hook on the scale, the scale level? Weigh again or correct the entry.</source>
        <translation>Die Wägung vom {at} liegt um {off_by} neben der Kurve. Stimmte die Tara, hing der Haken mit, stand die Waage eben? Wiegen Sie noch einmal oder berichtigen Sie den Eintrag.</translation>
    </message>
    <message>
        <source>{pieces} pieces weighed on {at} stepped by {shift} the same way. That points to the scale or its zero, not to the meat: check it with a known weight.</source>
        <translation>{pieces} am {at} gewogene Stücke sprangen um {shift} in dieselbe Richtung. Das deutet auf die Waage oder ihren Nullpunkt, nicht auf das Fleisch: Prüfen Sie sie mit einem bekannten Gewicht.</translation>
    </message>
    <message>
        <source>The loss has nearly stopped ({rate_per_day} a day). A firm piece may be finished or fat; a soft one may have dried hard outside; a wet chamber slows all.</source>
        <translation>Der Verlust ist fast zum Stehen gekommen ({rate_per_day} am Tag). Ein festes Stück kann fertig oder fett sein; ein weiches kann außen hart getrocknet sein; eine feuchte Kammer bremst alle.</translation>
    </message>
    <message>
        <source>It lost {loss} in {over}: the outside is drying faster than the inside can follow. Look for a hard rim; more humidity or a rest in a bag evens it out.</source>
        <translation>Es verlor {loss} in {over}: Das Äußere trocknet schneller, als das Innere folgen kann. Achten Sie auf einen harten Rand; mehr Feuchte oder Ruhe im Beutel gleicht es aus.</translation>
    </message>
    <message>
        <source>It weighs {gain} more than before ({at}). Was it washed, coated or dressed? Enter that as an event, or correct the weighing.</source>
        <translation>Es wiegt {gain} mehr als zuvor ({at}). Wurde es gewaschen, überzogen oder eingehüllt? Tragen Sie das als Ereignis ein oder berichtigen Sie die Wägung.</translation>
    </message>
    <message>
        <source>The losses speak for about {implied} in the air, the log says {logged}. Check the hygrometer over a salt slurry.</source>
        <translation>Die Verluste sprechen für etwa {implied} in der Luft, das Protokoll sagt {logged}. Prüfen Sie das Hygrometer über Salzbrei.</translation>
    </message>
    <message>
        <source>The target of {target} lies beyond where this piece levels off ({levels_off}). Drier air or a lower target would change that.</source>
        <translation>Das Ziel von {target} liegt jenseits dessen, wo der Verlust dieses Stücks abflacht ({levels_off}). Trockenere Luft oder ein niedrigeres Ziel würde das ändern.</translation>
    </message>
    <message>
        <source>The weight that the target counts from ({reference}) was never taken. Enter it, or count from another weight.</source>
        <translation>Das Gewicht, von dem das Ziel zählt ({reference}), wurde nie genommen. Tragen Sie es ein oder zählen Sie von einem anderen Gewicht.</translation>
    </message>
    <message>
        <source>An event ({event}, {at}) has no weights, so the start could not be shared out. Enter the net weight before and after.</source>
        <translation>Ein Ereignis ({event}, {at}) hat keine Gewichte, also ließ sich der Anfang nicht aufteilen. Geben Sie das Nettogewicht davor und danach ein.</translation>
    </message>
    <message>
        <source>The weighing of {at} has no tare; the last known one was taken. Correct it if the casing or net changed.</source>
        <translation>Die Wägung vom {at} hat keine Tara; die letzte bekannte wurde genommen. Berichtigen Sie sie, wenn Hülle oder Netz gewechselt wurde.</translation>
    </message>
    <message>
        <source>{place} has no code. Give it two or three letters or digits.</source>
        <translation>{place} hat kein Kürzel. Geben Sie zwei oder drei Buchstaben oder Ziffern.</translation>
    </message>
    <message>
        <source>The code {place} is taken already. Choose another.</source>
        <translation>Das Kürzel {place} ist schon vergeben. Wählen Sie ein anderes.</translation>
    </message>
    <message>
        <source>The code {place} stands twice. Give each its own.</source>
        <translation>Das Kürzel {place} steht zweimal da. Geben Sie jedem ein eigenes.</translation>
    </message>
    <message>
        <source>{place} has no name. Enter one.</source>
        <translation>{place} hat keinen Namen. Geben Sie einen ein.</translation>
    </message>
    <message>
        <source>The name of {place} is taken already. Choose another.</source>
        <translation>Der Name von {place} ist schon vergeben. Wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>Say in a few words why; the reason is kept with the change.</source>
        <translation>Sagen Sie in wenigen Worten, warum; der Grund bleibt bei der Änderung.</translation>
    </message>
    <message>
        <source>Nothing is entered yet.</source>
        <translation>Noch ist nichts eingegeben.</translation>
    </message>
    <message>
        <source>{place} is not a number. Type digits.</source>
        <translation>{place} ist keine Zahl. Tippen Sie Ziffern.</translation>
    </message>
    <message>
        <source>{place} lies in the future. Check the day and time.</source>
        <translation>{place} liegt in der Zukunft. Prüfen Sie Tag und Uhrzeit.</translation>
    </message>
    <message>
        <source>The weight of {place} must be more than nothing.</source>
        <translation>Das Gewicht von {place} muss mehr als nichts sein.</translation>
    </message>
    <message>
        <source>The weight of {place} is below nothing. Check it.</source>
        <translation>Das Gewicht von {place} liegt unter null. Prüfen Sie es.</translation>
    </message>
    <message>
        <source>The weight of {place} is far outside what a piece weighs. Check the unit.</source>
        <translation>Das Gewicht von {place} liegt weit außerhalb dessen, was ein Stück wiegt. Prüfen Sie die Einheit.</translation>
    </message>
    <message>
        <source>The tare of {place} is as heavy as what is on the scale. Check both.</source>
        <translation>Die Tara von {place} ist so schwer wie das, was auf der Waage liegt. Prüfen Sie beide.</translation>
    </message>
    <message>
        <source>The thickness of {place} must be more than nothing.</source>
        <translation>Die Dicke von {place} muss mehr als nichts sein.</translation>
    </message>
    <message>
        <source>The share of {place} must lie between 0 and 100 %.</source>
        <translation>Der Anteil von {place} muss zwischen 0 und 100 % liegen.</translation>
    </message>
    <message>
        <source>The loss aimed for of {place} must lie between 0 and 100 %.</source>
        <translation>Der angestrebte Verlust von {place} muss zwischen 0 und 100 % liegen.</translation>
    </message>
    <message>
        <source>A score goes from 2 too little to 2 too much.</source>
        <translation>Eine Bewertung reicht von 2 zu wenig bis 2 zu viel.</translation>
    </message>
    <message>
        <source>The count of {place} is below nothing.</source>
        <translation>Die Anzahl von {place} liegt unter null.</translation>
    </message>
    <message>
        <source>The count of {place} must be at least one.</source>
        <translation>Die Anzahl von {place} muss mindestens eins sein.</translation>
    </message>
    <message>
        <source>The price of {place} is below nothing.</source>
        <translation>Der Preis von {place} liegt unter null.</translation>
    </message>
    <message>
        <source>The lower end of {place} lies above its upper end. Swap them.</source>
        <translation>Das untere Ende von {place} liegt über dem oberen. Vertauschen Sie sie.</translation>
    </message>
    <message>
        <source>{place} ends before it starts. Check the days.</source>
        <translation>{place} endet, bevor es beginnt. Prüfen Sie die Tage.</translation>
    </message>
    <message>
        <source>The text of {place} is too long. Shorten it.</source>
        <translation>Der Text von {place} ist zu lang. Kürzen Sie ihn.</translation>
    </message>
    <message>
        <source>The photo of {place} is too large. Take a smaller copy.</source>
        <translation>Das Foto von {place} ist zu groß. Nehmen Sie eine kleinere Kopie.</translation>
    </message>
    <message>
        <source>The recipe of {place} is empty.</source>
        <translation>Die Rezeptur von {place} ist leer.</translation>
    </message>
    <message>
        <source>The weight that {place} counts from cannot be known at this point.</source>
        <translation>Das Gewicht, von dem {place} zählt, kann zu diesem Zeitpunkt nicht bekannt sein.</translation>
    </message>
    <message>
        <source>Name at least two pieces.</source>
        <translation>Nennen Sie mindestens zwei Stücke.</translation>
    </message>
    <message>
        <source>The pieces belong to different batches. Weigh only pieces of one batch as one.</source>
        <translation>Die Stücke gehören zu verschiedenen Chargen. Wiegen Sie nur Stücke einer Charge gemeinsam.</translation>
    </message>
    <message>
        <source>{place} was discarded already.</source>
        <translation>{place} wurde schon verworfen.</translation>
    </message>
    <message>
        <source>{place} was cut or weighed with others and carries on under another code. Open that piece.</source>
        <translation>{place} wurde geschnitten oder mit anderen gewogen und läuft unter einem anderen Kürzel weiter. Öffnen Sie jenes Stück.</translation>
    </message>
    <message>
        <source>Cutting and weighing as one have forms of their own.</source>
        <translation>Schneiden und gemeinsames Wiegen haben eigene Formulare.</translation>
    </message>
    <message>
        <source>{place} is in the book already. Correct it instead.</source>
        <translation>{place} steht schon im Buch. Berichtigen Sie es stattdessen.</translation>
    </message>
    <message>
        <source>The stage {place} has started, so it stays as it is.</source>
        <translation>Die Phase {place} hat begonnen, also bleibt sie, wie sie ist.</translation>
    </message>
    <message>
        <source>The stage {place} has ended already.</source>
        <translation>Die Phase {place} ist schon beendet.</translation>
    </message>
    <message>
        <source>The stage {place} belongs to another batch.</source>
        <translation>Die Phase {place} gehört zu einer anderen Charge.</translation>
    </message>
    <message>
        <source>That is more than is left in {place}. Check the amount, or count the pack again.</source>
        <translation>Das ist mehr, als in {place} übrig ist. Prüfen Sie die Menge oder zählen Sie die Packung neu.</translation>
    </message>
    <message>
        <source>{place} refers to itself.</source>
        <translation>{place} verweist auf sich selbst.</translation>
    </message>
    <message>
        <source>This is not a recipe file: it is no JSON text.</source>
        <translation>Das ist keine Rezepturdatei: Es ist kein JSON-Text.</translation>
    </message>
    <message>
        <source>The recipe says version &quot;{found}&quot;; this program reads {wanted}. Was it written by a newer Saltloft?</source>
        <translation>Die Rezeptur nennt Version „{found}“; dieses Programm liest {wanted}. Hat sie ein neueres Saltloft geschrieben?</translation>
    </message>
    <message>
        <source>{place} is missing: {wanted}.</source>
        <translation>{place} fehlt: {wanted}.</translation>
    </message>
    <message>
        <source>{place} means nothing here. Known are: {wanted}. Mend the spelling, so that nothing is left out.</source>
        <translation>{place} bedeutet hier nichts. Bekannt sind: {wanted}. Berichtigen Sie die Schreibweise, damit nichts ausgelassen wird.</translation>
    </message>
    <message>
        <source>{place} is {found}; needed is: {wanted}.</source>
        <translation>{place} ist {found}; gebraucht wird: {wanted}.</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;; known are: {wanted}.</source>
        <translation>{place} sagt „{found}“; bekannt sind: {wanted}.</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;, which cannot be read as a quantity ({reason}). Write it like this: {wanted}.</source>
        <translation>{place} sagt „{found}“, was sich nicht als Menge lesen lässt ({reason}). Schreiben Sie es so: {wanted}.</translation>
    </message>
    <message>
        <source>The recipe has no ingredients yet. Add the first.</source>
        <translation>Die Rezeptur hat noch keine Zutaten. Fügen Sie die erste hinzu.</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is not in the catalogue. Choose another, or describe your own from its label.</source>
        <translation>„{found}“ steht nicht im Verzeichnis. Wählen Sie etwas anderes oder beschreiben Sie Ihre eigene Zutat nach dem Etikett.</translation>
    </message>
    <message>
        <source>{ingredient} stands in the recipe twice. Both count: is that meant?</source>
        <translation>{ingredient} steht zweimal in der Rezeptur. Beides zählt: Ist das gemeint?</translation>
    </message>
    <message>
        <source>Two ingredients of your own share the id {found}. Rename one.</source>
        <translation>Zwei eigene Zutaten haben dieselbe Kennung {found}. Benennen Sie eine um.</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the nitrite and nitrate from its label. Curing salts differ tenfold.</source>
        <translation>{ingredient}: Wie stark ist es? Geben Sie Nitrit und Nitrat vom Etikett ein. Pökelsalze unterscheiden sich um das Zehnfache.</translation>
    </message>
    <message>
        <source>{ingredient}: a strength of {found} looks like a proportion typed as percent. 0.0625 on a sheet is 6.25 %. Enter what the label says.</source>
        <translation>{ingredient}: Eine Stärke von {found} sieht nach einem Anteil aus, der als Prozent eingegeben wurde. 0,0625 auf einem Blatt sind 6,25 %. Geben Sie ein, was das Etikett sagt.</translation>
    </message>
    <message>
        <source>{ingredient}: no curing salt is sold at {found}; labels run from {low} to {high}. Read the label again.</source>
        <translation>{ingredient}: Mit {found} wird kein Pökelsalz verkauft; Etiketten reichen von {low} bis {high}. Lesen Sie das Etikett noch einmal.</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {strength} nitrite, from its name only. Enter the strength from the label in your hand.</source>
        <translation>{ingredient}: mit {strength} Nitrit gerechnet, nur nach dem Namen. Geben Sie die Stärke vom Etikett in Ihrer Hand ein.</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the percent by volume from the label.</source>
        <translation>{ingredient}: Wie stark ist es? Geben Sie die Volumenprozente vom Etikett ein.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is stronger than distilling goes. Is it proof?</source>
        <translation>{ingredient}: {found} Volumenprozent ist stärker, als Destillieren reicht. Ist es „proof“?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is rare. If the label says proof, enter it as proof with its country.</source>
        <translation>{ingredient}: {found} Volumenprozent ist selten. Sagt das Etikett „proof“, geben Sie es als proof mit seinem Land ein.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is a spirit&apos;s strength, not a wine&apos;s.</source>
        <translation>{ingredient}: {found} Volumenprozent ist die Stärke einer Spirituose, nicht eines Weins.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} is more than pure salt holds. Milligrams taken for grams?</source>
        <translation>{ingredient}: {found} ist mehr, als reines Salz enthält. Milligramm für Gramm gehalten?</translation>
    </message>
    <message>
        <source>{ingredient}: how salty is it? Enter salt or sodium from its label.</source>
        <translation>{ingredient}: Wie salzig ist es? Geben Sie Salz oder Natrium vom Etikett ein.</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {low} to {high} salt. Enter the sodium from the label to narrow that.</source>
        <translation>{ingredient}: mit {low} bis {high} Salz gerechnet. Geben Sie das Natrium vom Etikett ein, um das einzugrenzen.</translation>
    </message>
    <message>
        <source>{ingredient}: the parts add up to {found}. Check the label&apos;s figures.</source>
        <translation>{ingredient}: Die Teile ergeben zusammen {found}. Prüfen Sie die Zahlen des Etiketts.</translation>
    </message>
    <message>
        <source>{ingredient}: nothing in a kitchen weighs {found} g to the millilitre.</source>
        <translation>{ingredient}: Nichts in einer Küche wiegt {found} g je Milliliter.</translation>
    </message>
    <message>
        <source>{ingredient}: no density is known, so a volume cannot be turned into weight. Please weigh it.</source>
        <translation>{ingredient}: Eine Dichte ist nicht bekannt, also lässt sich ein Volumen nicht in Gewicht umrechnen. Bitte wiegen.</translation>
    </message>
    <message>
        <source>{ingredient}: its label counts by volume. Enter its density, or weigh 100 mL of it.</source>
        <translation>{ingredient}: Das Etikett zählt nach Volumen. Geben Sie die Dichte ein oder wiegen Sie 100 mL davon.</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is no measure with a known size. Spoons differ by country: choose one from the list, or weigh.</source>
        <translation>„{found}“ ist kein Maß bekannter Größe. Löffel unterscheiden sich nach Ländern: Wählen Sie einen aus der Liste oder wiegen Sie.</translation>
    </message>
    <message>
        <source>{ingredient}: the amount is nothing. Enter it or take the line out.</source>
        <translation>{ingredient}: Die Menge ist nichts. Geben Sie sie ein oder nehmen Sie die Zeile heraus.</translation>
    </message>
    <message>
        <source>There is no water to count from. Add the water of the brine.</source>
        <translation>Es gibt kein Wasser, von dem gezählt wird. Fügen Sie das Wasser der Lake hinzu.</translation>
    </message>
    <message>
        <source>Water cannot be a share of itself. Enter it by weight, by volume or as a share of the meat.</source>
        <translation>Wasser kann kein Anteil von sich selbst sein. Geben Sie es nach Gewicht, nach Volumen oder als Anteil des Fleisches ein.</translation>
    </message>
    <message>
        <source>Some amounts are fixed and stay the same for any weight of meat. Say for how much meat they were written, and they follow.</source>
        <translation>Manche Mengen sind fest und bleiben bei jedem Fleischgewicht gleich. Sagen Sie, für wie viel Fleisch sie geschrieben wurden, dann folgen sie.</translation>
    </message>
    <message>
        <source>How much pickle is pumped in? Enter it as a share of the meat.</source>
        <translation>Wie viel Lake wird eingespritzt? Geben Sie es als Anteil des Fleisches ein.</translation>
    </message>
    <message>
        <source>How much pickle does the meat take up? Weigh a piece before and after, or use the method at equilibrium.</source>
        <translation>Wie viel Lake nimmt das Fleisch auf? Wiegen Sie ein Stück davor und danach oder nehmen Sie die Methode im Gleichgewicht.</translation>
    </message>
    <message>
        <source>{found} looks like a proportion typed as percent: 0.1 on a sheet is 10 %.</source>
        <translation>{found} sieht nach einem Anteil aus, der als Prozent eingegeben wurde: 0,1 auf einem Blatt sind 10 %.</translation>
    </message>
    <message>
        <source>Meat does not take up {found} of its weight.</source>
        <translation>{found} seines Gewichts nimmt Fleisch nicht auf.</translation>
    </message>
    <message>
        <source>{found} of the meat&apos;s weight is a lot of pickle.</source>
        <translation>{found} des Fleischgewichts ist viel Lake.</translation>
    </message>
    <message>
        <source>Buried in salt, what goes on is known and what goes in is not: the doses here are what you put on.</source>
        <translation>Im Salzbett ist bekannt, was aufgetragen wird, nicht aber, was eindringt: Die Dosen hier sind das, was Sie auftragen.</translation>
    </message>
    <message>
        <source>The rubs add up to {found}, not to the whole.</source>
        <translation>Die Salzgaben ergeben zusammen {found}, nicht das Ganze.</translation>
    </message>
    <message>
        <source>The rubs must follow each other in time.</source>
        <translation>Die Salzgaben müssen zeitlich aufeinander folgen.</translation>
    </message>
    <message>
        <source>{place}: there is no such rub in the recipe.</source>
        <translation>{place}: Eine solche Salzgabe gibt es in der Rezeptur nicht.</translation>
    </message>
    <message>
        <source>Raw meat seldom holds {found} of water.</source>
        <translation>Rohes Fleisch hat selten {found} Wasser.</translation>
    </message>
    <message>
        <source>Skin is seldom {found} of a piece.</source>
        <translation>Die Schwarte macht selten {found} eines Stücks aus.</translation>
    </message>
    <message>
        <source>No meat loses {found} of its weight by drying.</source>
        <translation>Kein Fleisch verliert durch Trocknen {found} seines Gewichts.</translation>
    </message>
    <message>
        <source>Enter the weight of the meat.</source>
        <translation>Geben Sie das Gewicht des Fleisches ein.</translation>
    </message>
    <message>
        <source>A piece without a weight cannot be dosed.</source>
        <translation>Ein Stück ohne Gewicht lässt sich nicht dosieren.</translation>
    </message>
    <message>
        <source>A piece of {found}: grams, or kilograms?</source>
        <translation>Ein Stück von {found}: Gramm oder Kilogramm?</translation>
    </message>
    <message>
        <source>A piece of {found}: kilograms, or grams?</source>
        <translation>Ein Stück von {found}: Kilogramm oder Gramm?</translation>
    </message>
    <message>
        <source>{amount} of {ingredient} on a {step} scale is wrong by up to {error}. Use a finer scale, or blend a larger batch first.</source>
        <translation>{amount} {ingredient} auf einer Waage mit {step} Teilung liegen um bis zu {error} daneben. Nehmen Sie eine feinere Waage oder mischen Sie erst eine größere Menge.</translation>
    </message>
    <message>
        <source>On a {step} scale a piece&apos;s cure would show as nothing. Use a finer scale, or blend a larger batch first.</source>
        <translation>Auf einer Waage mit {step} Teilung zeigt sich das Pökelsalz eines Stücks gar nicht. Nehmen Sie eine feinere Waage oder mischen Sie erst eine größere Menge.</translation>
    </message>
    <message>
        <source>Your wish for {what} ({asked}) cannot be met with what you hold: it comes to {found}, short by {by}.</source>
        <translation>Ihr Wunsch für {what} ({asked}) lässt sich mit dem, was Sie festhalten, nicht erfüllen: Es werden {found}, um {by} zu wenig.</translation>
    </message>
    <message>
        <source>What you hold brings more {what} than the limit of {asked}: {found}.</source>
        <translation>Was Sie festhalten, bringt mehr {what} als den Grenzwert von {asked}: {found}.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about ten times what is usual. A slipped decimal?</source>
        <translation>{ingredient}: {found} des Fleisches ist etwa das Zehnfache des Üblichen. Ein verrutschtes Komma?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about a tenth of what is usual. A slipped decimal?</source>
        <translation>{ingredient}: {found} des Fleisches ist etwa ein Zehntel des Üblichen. Ein verrutschtes Komma?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} looks like a proportion typed as percent. 0.025 on a sheet is 2.5 %.</source>
        <translation>{ingredient}: {found} sieht nach einem Anteil aus, der als Prozent eingegeben wurde. 0,025 auf einem Blatt sind 2,5 %.</translation>
    </message>
    <message>
        <source>{ingredient} at {found} of the meat: that is an amount for salt, not for a strong curing salt. It would be {nitrite} nitrite.</source>
        <translation>{ingredient} mit {found} des Fleisches: Das ist eine Menge für Salz, nicht für ein starkes Pökelsalz. Es wären {nitrite} Nitrit.</translation>
    </message>
    <message>
        <source>{ingredient}: with tablespoons the dose is {found}. Teaspoons would be usual. Please weigh it.</source>
        <translation>{ingredient}: Mit Esslöffeln ist die Dosis {found}. Üblich wären Teelöffel. Bitte wiegen.</translation>
    </message>
    <message>
        <source>{ingredient} is measured by the spoon. Spoons differ by a quarter: weigh it.</source>
        <translation>{ingredient} wird mit dem Löffel gemessen. Löffel unterscheiden sich um ein Viertel: Wiegen Sie es.</translation>
    </message>
    <message>
        <source>{ingredient} is undiluted. A gram too much is a poisonous dose: a ready-mixed curing salt forgives more.</source>
        <translation>{ingredient} ist unverdünnt. Ein Gramm zu viel ist eine giftige Dosis: Ein fertig gemischtes Pökelsalz verzeiht mehr.</translation>
    </message>
    <message>
        <source>{ingredient} holds {strength} nitrite, so this gives {found} only. Is the amount meant for a strong curing salt?</source>
        <translation>{ingredient} enthält {strength} Nitrit, das ergibt nur {found}. Ist die Menge für ein starkes Pökelsalz gedacht?</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>Nitrit kommt auf {found}. Kein hinterlegter Grenzwert irgendeines Produkts lässt mehr als {limit} zu.</translation>
    </message>
    <message>
        <source>Nitrate comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>Nitrat kommt auf {found}. Kein hinterlegter Grenzwert irgendeines Produkts lässt mehr als {limit} zu.</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}; above {limit} is allowed for few products. Choose the limits that apply to you.</source>
        <translation>Nitrit kommt auf {found}; über {limit} ist nur für wenige Produkte erlaubt. Wählen Sie die Grenzwerte, die für Sie gelten.</translation>
    </message>
    <message>
        <source>There is no nitrite or nitrate in this recipe.</source>
        <translation>In dieser Rezeptur ist weder Nitrit noch Nitrat.</translation>
    </message>
    <message>
        <source>No limits are chosen, so the dose is checked against none. Choose the ones that apply to you.</source>
        <translation>Es sind keine Grenzwerte gewählt, also wird die Dosis an keinem geprüft. Wählen Sie die, die für Sie gelten.</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; whole muscle is seldom cured with less than {limit} (common practice).</source>
        <translation>Salz kommt auf {found} des Fleisches; ganze Stücke werden selten mit weniger als {limit} gepökelt (übliche Praxis).</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; above {limit} few people eat it (common practice).</source>
        <translation>Salz kommt auf {found} des Fleisches; über {limit} essen es wenige (übliche Praxis).</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat. With weighed salt that is a slip; for burying in salt choose that method.</source>
        <translation>Salz kommt auf {found} des Fleisches. Bei abgewogenem Salz ist das ein Versehen; für das Salzbett wählen Sie jene Methode.</translation>
    </message>
    <message>
        <source>Sugar comes to {found} of the meat; more than {limit} is unusual.</source>
        <translation>Zucker kommt auf {found} des Fleisches; mehr als {limit} ist ungewöhnlich.</translation>
    </message>
    <message>
        <source>Accelerator comes to {found}; usual is about half a gram to the kilogram.</source>
        <translation>Umrötehilfsmittel kommt auf {found}; üblich ist etwa ein halbes Gramm je Kilogramm.</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, above the limit of {limit}.</source>
        <translation>{set}: {substance} kommt auf {found}, über den Grenzwert von {limit}.</translation>
    </message>
    <message>
        <source>{set}: {substance} is not permitted; the recipe brings {found}.</source>
        <translation>{set}: {substance} ist nicht zugelassen; die Rezeptur bringt {found}.</translation>
    </message>
    <message>
        <source>{set}: {substance} keeps the limit of {limit}, but with the spread of what you measure it may come to {found}.</source>
        <translation>{set}: {substance} hält den Grenzwert von {limit} ein, kann aber bei der Streuung dessen, was Sie messen, auf {found} kommen.</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, below the minimum of {limit}.</source>
        <translation>{set}: {substance} kommt auf {found}, unter den Mindestwert von {limit}.</translation>
    </message>
    <message>
        <source>{set}: the limit of {limit} for {substance} is on what a laboratory finds in the product. No sum can show it; {found} goes in.</source>
        <translation>{set}: Der Grenzwert von {limit} für {substance} gilt für das, was ein Labor im Erzeugnis findet. Keine Rechnung kann es zeigen; hinein gehen {found}.</translation>
    </message>
    <message>
        <source>{set}: the limit for {substance} is on the finished product. Enter the expected loss, or the dose is judged too low.</source>
        <translation>{set}: Der Grenzwert für {substance} gilt für das fertige Erzeugnis. Geben Sie den erwarteten Verlust ein, sonst wird die Dosis zu niedrig beurteilt.</translation>
    </message>
    <message>
        <source>{set}: unverified. The issuer&apos;s own text was not read for all of it.</source>
        <translation>{set}: ungeprüft. Der Wortlaut der Behörde wurde nicht für alles gelesen.</translation>
    </message>
    <message>
        <source>{set}: not in force today.</source>
        <translation>{set}: heute nicht in Kraft.</translation>
    </message>
    <message>
        <source>{set}: made for another way of curing than this recipe&apos;s.</source>
        <translation>{set}: für eine andere Art des Pökelns als die dieser Rezeptur gemacht.</translation>
    </message>
    <message>
        <source>There are no limits called &quot;{found}&quot;. Choose from the list.</source>
        <translation>Grenzwerte namens „{found}“ gibt es nicht. Wählen Sie aus der Liste.</translation>
    </message>
    <message>
        <source>Skin on: {share} of the weight is taken off before the sum.</source>
        <translation>Mit Schwarte: {share} des Gewichts werden vor der Rechnung abgezogen.</translation>
    </message>
    <message>
        <source>No piece is entered: the days are for the usual one.</source>
        <translation>Es ist kein Stück eingegeben: Die Tage gelten für das übliche.</translation>
    </message>
    <message>
        <source>The weight is not entered: {weight} is assumed.</source>
        <translation>Das Gewicht ist nicht eingegeben: {weight} wird angenommen.</translation>
    </message>
    <message>
        <source>The thickness is not entered: {thickness_mm} mm is assumed.</source>
        <translation>Die Dicke ist nicht eingegeben: {thickness_mm} mm wird angenommen.</translation>
    </message>
    <message>
        <source>Nothing says how long “{place}” takes: it is planned as no time at all. Enter a time for it.</source>
        <translation>Nichts sagt, wie lange „{place}“ dauert: Es ist ohne Zeit geplant. Geben Sie eine Zeit dafür ein.</translation>
    </message>
    <message>
        <source>“{place}” is made longer: the rule asks for {needed} in all, and the stages came to {days}.</source>
        <translation>„{place}“ wird verlängert: Die Regel verlangt zusammen {needed}, die Phasen kamen auf {days}.</translation>
    </message>
    <message>
        <source>The day rule of “{place}” belongs to another way of salting: days per kilogram are for burying in salt or for brine, days per centimetre for a weighed cure.</source>
        <translation>Die Tagesregel von „{place}“ gehört zu einer anderen Art des Salzens: Tage je Kilogramm gelten für das Salzbett oder für Lake, Tage je Zentimeter für das Pökeln mit abgewogenem Salz.</translation>
    </message>
    <message>
        <source>“{place}” has {days}, and its rule asks for {needed}. Give it the time.</source>
        <translation>„{place}“ hat {days}, und die Regel verlangt {needed}. Geben Sie die Zeit.</translation>
    </message>
    <message>
        <source>The day lies in the past.</source>
        <translation>Der Tag liegt in der Vergangenheit.</translation>
    </message>
    <message>
        <source>It needs {days_needed} days and there are {days_available}: {shortfall} too few.</source>
        <translation>Es braucht {days_needed} Tage, und es sind {days_available}: {shortfall} zu wenig.</translation>
    </message>
    <message>
        <source>“{place}” takes {days} days, and cannot take less.</source>
        <translation>„{place}“ dauert {days} Tage und geht nicht kürzer.</translation>
    </message>
    <message>
        <source>Nothing says when “{place}” ends or how long it usually takes.</source>
        <translation>Nichts sagt, wann „{place}“ endet oder wie lange es gewöhnlich dauert.</translation>
    </message>
    <message>
        <source>“{place}” repeats with more stages than follow it.</source>
        <translation>„{place}“ wiederholt sich mit mehr Phasen, als darauf folgen.</translation>
    </message>
    <message>
        <source>The number of rounds of “{place}” lies outside its own bounds.</source>
        <translation>Die Zahl der Runden von „{place}“ liegt außerhalb ihrer Grenzen.</translation>
    </message>
    <message>
        <source>“{place}” repeats inside another repeat, which cannot be planned.</source>
        <translation>„{place}“ wiederholt sich innerhalb einer anderen Wiederholung, was sich nicht planen lässt.</translation>
    </message>
    <message>
        <source>“{place}” shares a room with a stage that is not in the plan.</source>
        <translation>„{place}“ teilt einen Raum mit einer Phase, die nicht im Plan steht.</translation>
    </message>
    <message>
        <source>A minimum names the stage “{place}”, which is not in the plan.</source>
        <translation>Ein Mindestwert nennt die Phase „{place}“, die nicht im Plan steht.</translation>
    </message>
    <message>
        <source>Two stages are called “{place}”.</source>
        <translation>Zwei Phasen heißen „{place}“.</translation>
    </message>
    <message>
        <source>The plan has no stage that salts.</source>
        <translation>Der Plan hat keine Phase, die salzt.</translation>
    </message>
    <message>
        <source>{on_scale} is not more than the tare of {tare}. Weigh again.</source>
        <translation>{on_scale} ist nicht mehr als die Tara von {tare}. Wiegen Sie noch einmal.</translation>
    </message>
    <message>
        <source>Last time it was {last}: is {on_scale} a slip of the decimal sign?</source>
        <translation>Letztes Mal waren es {last}: Ist {on_scale} ein verrutschtes Komma?</translation>
    </message>
    <message>
        <source>{on_scale} was not expected: between {low} and {high} would be. Right piece, right tare, hook on?</source>
        <translation>{on_scale} war nicht erwartet: zwischen {low} und {high} schon. Richtiges Stück, richtige Tara, Haken dran?</translation>
    </message>
    <message>
        <source>The same number as last time. That can mean done, a coarse scale or a damp chamber.</source>
        <translation>Dieselbe Zahl wie letztes Mal. Das kann fertig heißen, eine grobe Waage oder eine feuchte Kammer.</translation>
    </message>
    <message>
        <source>{place} is not finished, so it cannot hang again. Record what happens to it instead.</source>
        <translation>{place} ist nicht fertig und kann deshalb nicht wieder aufgehängt werden. Tragen Sie stattdessen ein, was damit geschieht.</translation>
    </message>
    <message>
        <source>{place} is packed. Take it out of its pack in Stock: hung again.</source>
        <translation>{place} ist verpackt. Nehmen Sie es unter „Vorrat“ aus seiner Packung: wieder aufgehängt.</translation>
    </message>
    <message>
        <source>A caution is taken on by a person: say who it is.</source>
        <translation>Eine Warnung wird von einer Person quittiert: Sagen Sie, von wem.</translation>
    </message>
</context>
<context>
    <name>KeepWords</name>
    <message numerus="yes">
        <source>%1: %n day(s) from opening</source>
        <translation>
            <numerusform>%1: %n Tag ab dem Öffnen</numerusform>
            <numerusform>%1: %n Tage ab dem Öffnen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n day(s) from packing</source>
        <translation>
            <numerusform>%1: %n Tag ab dem Verpacken</numerusform>
            <numerusform>%1: %n Tage ab dem Verpacken</numerusform>
        </translation>
    </message>
    <message>
        <source>%1. Note: %2</source>
        <translation>%1. Bemerkung: %2</translation>
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
        <translation>Chargen</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Wägungen</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Phasen</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>Entscheidungen</translation>
    </message>
    <message>
        <source>Outcomes</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Acceptances of cautions</source>
        <translation>Quittierte Warnungen</translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation>Rezepturen</translation>
    </message>
    <message>
        <source>Recipe versions</source>
        <translation>Fassungen von Rezepturen</translation>
    </message>
    <message>
        <source>Ingredients</source>
        <translation>Zutaten</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lose</translation>
    </message>
    <message>
        <source>Uses of ingredients</source>
        <translation>Verwendete Zutaten</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>Moves of stock</source>
        <translation>Bewegungen des Vorrats</translation>
    </message>
    <message>
        <source>Ticks of the day&apos;s work</source>
        <translation>Häkchen der Tagesarbeit</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Chambers</source>
        <translation>Kammern</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Sensoren</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>Calibration checks</source>
        <translation>Prüfungen der Messgeräte</translation>
    </message>
    <message>
        <source>Climate readings</source>
        <translation>Klimamesswerte</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day with its year, %2 a clock time</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Batches: %1, pieces: %2, weighings: %3</source>
        <translation>Chargen: %1, Stücke: %2, Wägungen: %3</translation>
    </message>
    <message>
        <source>This backup is damaged itself, so it is not put in the place of the book. Choose another one.</source>
        <translation>Diese Sicherungskopie ist selbst beschädigt und wird darum nicht an die Stelle des Buchs gesetzt. Wählen Sie eine andere.</translation>
    </message>
    <message>
        <source>This backup was read from end to end and is whole.</source>
        <translation>Diese Sicherungskopie wurde von Anfang bis Ende gelesen und ist unversehrt.</translation>
    </message>
    <message>
        <source>It brings back: %1. Last entry: %2.</source>
        <translation>Sie bringt zurück: %1. Letzter Eintrag: %2.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>There is no book now, so nothing is replaced.</source>
        <translation>Jetzt ist kein Buch da, also wird nichts ersetzt.</translation>
    </message>
    <message>
        <source>The book as it is now cannot be read, so what would be lost is not known.</source>
        <translation>Das Buch, wie es jetzt ist, lässt sich nicht lesen; was verloren ginge, ist darum nicht bekannt.</translation>
    </message>
    <message>
        <source>The book has now: %1.</source>
        <translation>Das Buch hat jetzt: %1.</translation>
    </message>
    <message>
        <source>No change was made since this backup.</source>
        <translation>Seit dieser Sicherungskopie wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Changes made since this backup, which would be gone from the book: %1.</source>
        <translation>Änderungen seit dieser Sicherungskopie, die im Buch dann fehlen: %1.</translation>
    </message>
    <message>
        <source>The book as it is now is not deleted: it stays in the same folder, with “replaced” and the moment added to its name.</source>
        <translation>Das Buch, wie es jetzt ist, wird nicht gelöscht: Es bleibt im selben Ordner, mit „replaced“ und dem Zeitpunkt im Namen.</translation>
    </message>
    <message>
        <source>The book is sound: its pages, indexes, links and climate roll-ups agree.</source>
        <translation>Das Buch ist unversehrt: Seiten, Indizes, Verknüpfungen und Klimasummen stimmen überein.</translation>
    </message>
    <message>
        <source>Your entries and readings are whole. Sums made from climate readings do not agree with them (places: %1), so charts and hours of air may be wrong. They can be made anew from the readings.</source>
        <translation>Ihre Einträge und Messwerte sind vollständig. Summen aus Klimamesswerten stimmen nicht mit ihnen überein (Stellen: %1), darum können Diagramme und Stunden der Luft falsch sein. Sie lassen sich aus den Messwerten neu bilden.</translation>
    </message>
    <message>
        <source>The book is damaged (places found: %1; they are listed below). Write nothing more into it. Restore a backup, or salvage what can be read into a new book.</source>
        <translation>Das Buch ist beschädigt (gefundene Stellen: %1; sie stehen unten). Schreiben Sie nichts mehr hinein. Stellen Sie eine Sicherungskopie wieder her oder retten Sie, was lesbar ist, in ein neues Buch.</translation>
    </message>
    <message>
        <source>The book&apos;s own records (log, preferences, sums)</source>
        <translation>Eigene Aufzeichnungen des Buchs (Protokoll, Einstellungen, Summen)</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. No entry was found that could not be read; whole pages that are gone leave no trace, so look it through. The damaged book was not changed.</source>
        <translation>Das neue Buch ist angelegt und hat seine Prüfung bestanden. Kein Eintrag wurde gefunden, der nicht lesbar war; ganze Seiten, die fehlen, hinterlassen aber keine Spur. Sehen Sie es durch. Das beschädigte Buch wurde nicht verändert.</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. Entries that are known to be lost: %1. Look it through. The damaged book was not changed.</source>
        <translation>Das neue Buch ist angelegt und hat seine Prüfung bestanden. Einträge, die nachweislich verloren sind: %1. Sehen Sie es durch. Das beschädigte Buch wurde nicht verändert.</translation>
    </message>
</context>
<context>
    <name>LimitWords</name>
    <message>
        <source>%1 (partly unverified)</source>
        <translation>%1 (teilweise ungeprüft)</translation>
    </message>
</context>
<context>
    <name>LossChart</name>
    <message>
        <source>days since hung</source>
        <translation>Tage seit dem Aufhängen</translation>
    </message>
    <message>
        <source>net weight, %1</source>
        <translation>Nettogewicht, %1</translation>
    </message>
    <message>
        <source>weight lost, %</source>
        <translation>Gewichtsverlust, %</translation>
    </message>
    <message>
        <source>%1 · %2 net · %3 lost</source>
        <translation>%1 · %2 netto · %3 verloren</translation>
    </message>
    <message>
        <source>%1: forecast, 8 in 10 fall inside</source>
        <translation>%1: Prognose, 8 von 10 liegen darin</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>%1: %2 lost on %3</source>
        <translation>%1: %2 verloren am %3</translation>
    </message>
    <message>
        <source>, target %1</source>
        <translation>, Ziel %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Days since hung</source>
        <translation>Tage seit dem Aufhängen</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Netto</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verloren</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>lost of the %1, %</source>
        <translation>verloren ab: %1, %</translation>
    </message>
    <message>
        <source>day %1 · %2 net · %3 lost</source>
        <translation>Tag %1 · %2 netto · %3 verloren</translation>
    </message>
    <message>
        <source>%1, done earlier</source>
        <translation>%1, früher fertig</translation>
    </message>
    <message>
        <source>done earlier</source>
        <translation>früher fertig</translation>
    </message>
    <message>
        <source>forecast, 8 in 10 fall inside</source>
        <translation>Prognose, 8 von 10 liegen darin</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Phase</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier piece(s) for comparison</source>
        <translation>
            <numerusform>ein früheres Stück zum Vergleich</numerusform>
            <numerusform>%n frühere Stücke zum Vergleich</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ManualText</name>
    <message>
        <source>Saltloft: the manual</source>
        <translation>Saltloft: das Handbuch</translation>
    </message>
    <message>
        <source>Plan, weigh and follow cured and air-dried meat.</source>
        <translation>Gepökeltes und luftgetrocknetes Fleisch planen, wiegen und verfolgen.</translation>
    </message>
    <message>
        <source>The pictures show an invented demonstration book; no producer, batch or person in it exists.</source>
        <translation>Die Bilder zeigen ein erfundenes Vorführbuch; keinen Betrieb, keine Charge und keine Person darin gibt es.</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
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
        <translation>40 % oder 80 proof US</translation>
    </message>
    <message>
        <source>salt 16 % or sodium 6.3 g/100 g</source>
        <translation>salt 16 % oder sodium 6,3 g/100 g</translation>
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
        <translation>Abwiegen</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Scale error</source>
        <translation>Waagenfehler</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Los</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>   of it for rub %1</source>
        <translation>   davon für Salzgabe %1</translation>
    </message>
    <message>
        <source>Nothing to weigh.</source>
        <translation>Nichts abzuwiegen.</translation>
    </message>
    <message>
        <source>Meat</source>
        <translation>Fleisch</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>Nitrit, als Natriumnitrit</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>Nitrat, als Natriumnitrat</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>Quelle und Ausgabe</translation>
    </message>
    <message>
        <source>No limit set was chosen: the dose was not compared with any.</source>
        <translation>Es wurden keine Grenzwerte gewählt: Die Dosis wurde mit keinen verglichen.</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>Mischblatt</translation>
    </message>
    <message>
        <source>Piece %1: %2 of meat</source>
        <translation>Stück %1: %2 Fleisch</translation>
    </message>
    <message>
        <source>All pieces together</source>
        <translation>Alle Stücke zusammen</translation>
    </message>
    <message>
        <source>Weigh the curing salt on the finest scale, and read its strength off the bag in your hand. Follow local codes and licensed practice.</source>
        <translation>Wiegen Sie das Pökelsalz auf der feinsten Waage und lesen Sie seine Stärke von der Packung in Ihrer Hand ab. Halten Sie sich an örtliche Vorschriften und die Praxis zugelassener Betriebe.</translation>
    </message>
    <message>
        <source>Weighed by</source>
        <translation>Gewogen von</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Geprüft von</translation>
    </message>
    <message>
        <source>No piece of this batch has a green weight: weigh the meat first.</source>
        <translation>Kein Stück dieser Charge hat ein Rohgewicht: Wiegen Sie erst das Fleisch.</translation>
    </message>
    <message>
        <source>This batch keeps no recipe that can be read: choose one first.</source>
        <translation>Diese Charge hat keine lesbare Rezeptur: Wählen Sie erst eine.</translation>
    </message>
</context>
<context>
    <name>MixTables</name>
    <message>
        <source>nitrite</source>
        <translation>Nitrit</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>Nitrat</translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation>Nitrit und Nitrat zusammen</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>Ascorbat oder Erythorbat</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>Ascorbin- oder Erythorbinsäure</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>Phosphat</translation>
    </message>
    <message>
        <source>going in, on the raw weight</source>
        <translation>zugesetzt, auf das Rohgewicht</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>im fertigen Erzeugnis</translation>
    </message>
    <message>
        <source>left over, by laboratory</source>
        <translation>Rest, nach Labor</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation>wie gewogen</translation>
    </message>
    <message>
        <source>as sodium salt</source>
        <translation>als Natriumsalz</translation>
    </message>
    <message>
        <source>as ion</source>
        <translation>als Ion</translation>
    </message>
    <message>
        <source>not permitted</source>
        <translation>nicht zugelassen</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>within</source>
        <translation>eingehalten</translation>
    </message>
    <message>
        <source>above</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>below</source>
        <translation>darunter</translation>
    </message>
    <message>
        <source>used</source>
        <translation>verwendet</translation>
    </message>
    <message>
        <source>not computable</source>
        <translation>nicht berechenbar</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>Zutat</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Alles zusammen</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>Abwiegen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Jug</source>
        <translation>Messbecher</translation>
    </message>
    <message>
        <source>Scale, ±</source>
        <translation>Waage, ±</translation>
    </message>
    <message>
        <source>Of the meat</source>
        <translation>Vom Fleisch</translation>
    </message>
    <message>
        <source>Liquids fully taken up</source>
        <translation>Flüssigkeit ganz aufgenommen</translation>
    </message>
    <message>
        <source>This recipe</source>
        <translation>Diese Rezeptur</translation>
    </message>
    <message>
        <source>Half taken up</source>
        <translation>Halb aufgenommen</translation>
    </message>
    <message>
        <source>Salt, all of it</source>
        <translation>Salz, insgesamt</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>Salz in der Wasserphase</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>Nitrite, as NaNO2</source>
        <translation>Nitrit, als NaNO2</translation>
    </message>
    <message>
        <source>Nitrite, as the ion NO2</source>
        <translation>Nitrit, als Ion NO2</translation>
    </message>
    <message>
        <source>Nitrate, as NaNO3</source>
        <translation>Nitrat, als NaNO3</translation>
    </message>
    <message>
        <source>Nitrate, as the ion NO3</source>
        <translation>Nitrat, als Ion NO3</translation>
    </message>
    <message>
        <source>Ascorbate or erythorbate</source>
        <translation>Ascorbat oder Erythorbat</translation>
    </message>
    <message>
        <source>Ascorbic or erythorbic acid</source>
        <translation>Ascorbin- oder Erythorbinsäure</translation>
    </message>
    <message>
        <source>Added water</source>
        <translation>Zugesetztes Wasser</translation>
    </message>
    <message>
        <source>Alcohol, of the whole</source>
        <translation>Alkohol, vom Ganzen</translation>
    </message>
    <message>
        <source>Strength of the liquids</source>
        <translation>Stärke der Flüssigkeiten</translation>
    </message>
    <message>
        <source>%1 vol (%2 US proof, %3 UK)</source>
        <translation>%1 vol (%2 US-proof, %3 UK)</translation>
    </message>
    <message>
        <source>Limit and its source</source>
        <translation>Grenzwert und seine Quelle</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Hier</translation>
    </message>
    <message>
        <source>%1, %2, %3: %4</source>
        <translation>%1, %2, %3: %4</translation>
    </message>
    <message>
        <source>%1: a scale that shows %2 would do.</source>
        <translation>%1: Eine Waage, die %2 zeigt, genügt.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Or blend a larger lot first: %1. Mix it evenly, then weigh %2 of it for the smallest piece: ± %3.</source>
        <translation>Oder mischen Sie erst eine größere Menge: %1. Gleichmäßig mischen, dann davon %2 für das kleinste Stück abwiegen: ± %3.</translation>
    </message>
    <message>
        <source>Dry, weighed, all taken up</source>
        <translation>Trocken, abgewogen, ganz aufgenommen</translation>
    </message>
    <message>
        <source>Buried in salt</source>
        <translation>Im Salzbett</translation>
    </message>
    <message>
        <source>Immersed, by pick-up</source>
        <translation>Eingelegt, nach Aufnahme</translation>
    </message>
    <message>
        <source>Immersed, at equilibrium</source>
        <translation>Eingelegt, im Gleichgewicht</translation>
    </message>
    <message>
        <source>Brine of meat and water</source>
        <translation>Lake aus Fleisch und Wasser</translation>
    </message>
    <message>
        <source>Pumped in</source>
        <translation>Gespritzt</translation>
    </message>
    <message>
        <source>Marinade</source>
        <translation>Marinade</translation>
    </message>
    <message>
        <source>Wash of vinegar or spirit</source>
        <translation>Abreiben mit Essig oder Spirituose</translation>
    </message>
    <message>
        <source>of the meat</source>
        <translation>vom Fleisch</translation>
    </message>
    <message>
        <source>of the added water</source>
        <translation>vom zugesetzten Wasser</translation>
    </message>
    <message>
        <source>of meat and water</source>
        <translation>von Fleisch und Wasser</translation>
    </message>
    <message>
        <source>of all water</source>
        <translation>von allem Wasser</translation>
    </message>
</context>
<context>
    <name>ModelWords</name>
    <message>
        <source>slab (flat)</source>
        <translation>Platte (flach)</translation>
    </message>
    <message>
        <source>cylinder (long and round)</source>
        <translation>Zylinder (lang und rund)</translation>
    </message>
    <message>
        <source>round</source>
        <translation>kugelig</translation>
    </message>
    <message>
        <source>block (brick)</source>
        <translation>Block (ziegelförmig)</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>roh</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>zugeschnitten</translation>
    </message>
    <message>
        <source>cured, not rinsed</source>
        <translation>gepökelt, nicht abgespült</translation>
    </message>
    <message>
        <source>rinsed and wiped</source>
        <translation>abgespült und abgetrocknet</translation>
    </message>
    <message>
        <source>in casing</source>
        <translation>in Hülle</translation>
    </message>
    <message>
        <source>in net or string</source>
        <translation>in Netz oder Schnur</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>überzogen</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>Rohgewicht</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>Zuschnittgewicht</translation>
    </message>
    <message>
        <source>weight after the cure</source>
        <translation>Gewicht nach dem Pökeln</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>Gewicht beim Aufhängen</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>ohne Schwarte</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>Schwarte an einer Seite</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>Schwarte ringsum</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>Pökeln</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>Ruhen</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>Trocknen</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>mit anderen gewogen</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>in Stücke geschnitten</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>in Arbeit</translation>
    </message>
    <message>
        <source>given up</source>
        <translation>aufgegeben</translation>
    </message>
    <message>
        <source>dressed</source>
        <translation>eingehüllt</translation>
    </message>
    <message>
        <source>dressed again</source>
        <translation>neu eingehüllt</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>Probe genommen</translation>
    </message>
    <message>
        <source>cut in pieces</source>
        <translation>in Stücke geschnitten</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>gemeinsam gewogen</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>gepresst</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>eingefroren</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>aufgetaut</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>gewaschen</translation>
    </message>
    <message>
        <source>hung to dry</source>
        <translation>zum Trocknen aufgehängt</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>umgehängt</translation>
    </message>
    <message>
        <source>look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>Geruch</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>Geschmack</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>Schimmel</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>was getan wurde</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>verwerfen</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>ganz</translation>
    </message>
    <message>
        <source>cut open</source>
        <translation>angeschnitten</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>vakuumverpackt</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>aufgebraucht</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>verschenkt</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>verkauft</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>weggeworfen</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>wieder aufgehängt</translation>
    </message>
    <message>
        <source>counted again</source>
        <translation>neu gezählt</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>Salzen</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>Waschen</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>Wässern</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>Marinieren</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>Pressen</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>Räuchern</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>Salzausgleich</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>Überziehen</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>Einfrieren</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>Lagern</translation>
    </message>
    <message>
        <source>too few weighings</source>
        <translation>zu wenige Wägungen</translation>
    </message>
    <message>
        <source>at its target</source>
        <translation>am Ziel</translation>
    </message>
    <message>
        <source>target out of reach</source>
        <translation>Ziel nicht erreichbar</translation>
    </message>
    <message>
        <source>not drying</source>
        <translation>trocknet nicht</translation>
    </message>
    <message>
        <source>fridge</source>
        <translation>Kühlschrank</translation>
    </message>
    <message>
        <source>drying cabinet</source>
        <translation>Trockenschrank</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>im Freien</translation>
    </message>
    <message>
        <source>freezer</source>
        <translation>Gefrierschrank</translation>
    </message>
    <message>
        <source>face to face, at the thickest point</source>
        <translation>von Fläche zu Fläche, an der dicksten Stelle</translation>
    </message>
    <message>
        <source>diameter, at the thickest point</source>
        <translation>Durchmesser, an der dicksten Stelle</translation>
    </message>
    <message>
        <source>the shortest side</source>
        <translation>die kürzeste Seite</translation>
    </message>
</context>
<context>
    <name>PieceWords</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>%1 the loss now, %2 the loss aimed for</extracomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 or later, perhaps never</source>
        <translation>%1 oder später, vielleicht nie</translation>
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
        <translation>Wenden</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Gewendet</translation>
    </message>
    <message>
        <source>Rub again</source>
        <translation>Nachreiben</translation>
    </message>
    <message>
        <source>Rubbed again</source>
        <translation>Nachgerieben</translation>
    </message>
    <message>
        <source>Massage</source>
        <translation>Massieren</translation>
    </message>
    <message>
        <source>Massaged</source>
        <translation>Massiert</translation>
    </message>
    <message>
        <source>Weigh</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>Weighing left out</source>
        <translation>Wiegen ausgelassen</translation>
    </message>
    <message>
        <source>Weigh again, as decided</source>
        <translation>Wieder wiegen, wie entschieden</translation>
    </message>
    <message>
        <source>Wipe</source>
        <translation>Abwischen</translation>
    </message>
    <message>
        <source>Wiped</source>
        <translation>Abgewischt</translation>
    </message>
    <message>
        <source>Change places</source>
        <translation>Plätze tauschen</translation>
    </message>
    <message>
        <source>Places changed</source>
        <translation>Plätze getauscht</translation>
    </message>
    <message>
        <source>Look at the chamber</source>
        <translation>Nach der Kammer sehen</translation>
    </message>
    <message>
        <source>Chamber looked at</source>
        <translation>Kammer angesehen</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>Judge whether it is done</source>
        <translation>Beurteilen, ob es fertig ist</translation>
    </message>
    <message>
        <source>Judging left out</source>
        <translation>Beurteilung ausgelassen</translation>
    </message>
    <message>
        <source>Check the instrument</source>
        <translation>Messgerät prüfen</translation>
    </message>
    <message>
        <source>Instrument check left out</source>
        <translation>Gerätprüfung ausgelassen</translation>
    </message>
    <message>
        <source>Check the sensor</source>
        <translation>Sensor prüfen</translation>
    </message>
    <message>
        <source>Sensor checked</source>
        <translation>Sensor geprüft</translation>
    </message>
    <message>
        <source>Eat or sell first</source>
        <translation>Zuerst essen oder verkaufen</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Lüften</translation>
    </message>
    <message>
        <source>Aired</source>
        <translation>Gelüftet</translation>
    </message>
    <message>
        <source>%1: done</source>
        <translation>%1: erledigt</translation>
    </message>
    <message>
        <source>within the time above</source>
        <translation>innerhalb der Zeit darüber</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>by weight</source>
        <translation>nach Gewicht</translation>
    </message>
    <message>
        <source>by thickness</source>
        <translation>nach Dicke</translation>
    </message>
    <message>
        <source>until the date</source>
        <translation>bis zum Datum</translation>
    </message>
    <message>
        <source>your own pieces</source>
        <translation>Ihre eigenen Stücke</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>drying model</source>
        <translation>Trocknungsmodell</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>They hung at this time of year.</source>
        <translation>Sie hingen zu dieser Jahreszeit.</translation>
    </message>
    <message>
        <source>They lost %1 a week on the whole.</source>
        <translation>Sie verloren im Ganzen %1 in der Woche.</translation>
    </message>
    <message numerus="yes">
        <source>%n week(s)</source>
        <translation>
            <numerusform>%n Woche</numerusform>
            <numerusform>%n Wochen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n week(s)</source>
        <extracomment>%1 a smaller number</extracomment>
        <translation>
            <numerusform>%1 bis %n Woche</numerusform>
            <numerusform>%1 bis %n Wochen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n day(s)</source>
        <translation>
            <numerusform>%1 bis %n Tag</numerusform>
            <numerusform>%1 bis %n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done in this chamber.</source>
        <translation>
            <numerusform>Ihr letztes brauchte %1 vom Aufhängen bis fertig in dieser Kammer.</numerusform>
            <numerusform>Ihre letzten %n brauchten %1 vom Aufhängen bis fertig in dieser Kammer.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done.</source>
        <translation>
            <numerusform>Ihr letztes brauchte %1 vom Aufhängen bis fertig.</numerusform>
            <numerusform>Ihre letzten %n brauchten %1 vom Aufhängen bis fertig.</numerusform>
        </translation>
    </message>
    <message>
        <source>It was too soft: a loss of %1 is worth a try.</source>
        <translation>Es war zu weich: ein Verlust von %1 ist einen Versuch wert.</translation>
    </message>
    <message>
        <source>It was too dry: a loss of %1 is worth a try.</source>
        <translation>Es war zu trocken: ein Verlust von %1 ist einen Versuch wert.</translation>
    </message>
    <message>
        <source>It was too salty at %1 in the finished piece.</source>
        <translation>Es war zu salzig, mit %1 im fertigen Stück.</translation>
    </message>
    <message>
        <source>It lacked salt at %1 in the finished piece.</source>
        <translation>Es fehlte Salz, mit %1 im fertigen Stück.</translation>
    </message>
    <message>
        <source>%1 of the raw weight instead of %2 is worth a try.</source>
        <translation>%1 vom Rohgewicht statt %2 ist einen Versuch wert.</translation>
    </message>
    <message>
        <source>You wrote about %1: “%2”.</source>
        <extracomment>%1 the code of a batch, %2 what the person wrote about it</extracomment>
        <translation>Sie schrieben über %1: „%2“.</translation>
    </message>
    <message>
        <source>%1 was too salty: salt %2 to %3.</source>
        <translation>%1 war zu salzig: Salz von %2 auf %3.</translation>
    </message>
    <message>
        <source>%1 lacked salt: salt %2 to %3.</source>
        <translation>%1 fehlte Salz: Salz von %2 auf %3.</translation>
    </message>
    <message>
        <source>%1 was too soft: loss aimed for is now %2.</source>
        <translation>%1 war zu weich: angestrebter Verlust jetzt %2.</translation>
    </message>
    <message>
        <source>%1 was too dry: loss aimed for is now %2.</source>
        <translation>%1 war zu trocken: angestrebter Verlust jetzt %2.</translation>
    </message>
    <message>
        <source>much too little salt</source>
        <translation>viel zu wenig Salz</translation>
    </message>
    <message>
        <source>a little short of salt</source>
        <translation>etwas zu wenig Salz</translation>
    </message>
    <message>
        <source>a little too salty</source>
        <translation>etwas zu salzig</translation>
    </message>
    <message>
        <source>much too salty</source>
        <translation>viel zu salzig</translation>
    </message>
    <message>
        <source>the salt was right</source>
        <translation>das Salz stimmte</translation>
    </message>
    <message>
        <source>much too soft</source>
        <translation>viel zu weich</translation>
    </message>
    <message>
        <source>a little too soft</source>
        <translation>etwas zu weich</translation>
    </message>
    <message>
        <source>a little too dry</source>
        <translation>etwas zu trocken</translation>
    </message>
    <message>
        <source>much too dry</source>
        <translation>viel zu trocken</translation>
    </message>
    <message>
        <source>the texture was right</source>
        <translation>die Konsistenz stimmte</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
</context>
<context>
    <name>PrintText</name>
    <message>
        <source>Record of batch %1</source>
        <translation>Protokoll der Charge %1</translation>
    </message>
    <message>
        <source>Mix sheet of batch %1</source>
        <translation>Mischblatt der Charge %1</translation>
    </message>
    <message>
        <source>Tags of batch %1</source>
        <translation>Anhänger der Charge %1</translation>
    </message>
    <message>
        <source>Small tags of batch %1</source>
        <translation>Kleine Anhänger der Charge %1</translation>
    </message>
    <message>
        <source>Trace of batch %1</source>
        <translation>Rückverfolgung der Charge %1</translation>
    </message>
    <message>
        <source>Mass balance of batch %1</source>
        <translation>Mengenbilanz der Charge %1</translation>
    </message>
    <message>
        <source>Calibration sheet, %1</source>
        <translation>Prüfblatt der Messgeräte, %1</translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>Batch record</source>
        <translation>Chargenprotokoll</translation>
    </message>
    <message>
        <source>Trace: one step back, one step forward</source>
        <translation>Rückverfolgung: ein Schritt zurück, ein Schritt voraus</translation>
    </message>
    <message>
        <source>Mass balance</source>
        <translation>Mengenbilanz</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, dann %2</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>Why it ended</source>
        <translation>Warum sie endete</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Kammer</translation>
    </message>
    <message>
        <source>Temperature band</source>
        <translation>Temperaturband</translation>
    </message>
    <message>
        <source>Humidity band</source>
        <translation>Feuchteband</translation>
    </message>
    <message>
        <source>No stages were planned.</source>
        <translation>Es wurden keine Phasen geplant.</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Phasen</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Tiefster</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Höchster</translation>
    </message>
    <message>
        <source>Driest</source>
        <translation>Trockenster</translation>
    </message>
    <message>
        <source>Mean RH</source>
        <translation>Mittel rF</translation>
    </message>
    <message>
        <source>Dampest</source>
        <translation>Feuchtester</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>Außerhalb</translation>
    </message>
    <message>
        <source>no readings %1</source>
        <translation>ohne Messwerte %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>No readings were recorded while this batch was in a chamber.</source>
        <translation>Solange diese Charge in einer Kammer war, wurden keine Messwerte aufgezeichnet.</translation>
    </message>
    <message>
        <source>Temperature and humidity</source>
        <translation>Temperatur und Luftfeuchte</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Auf der Waage</translation>
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
        <translation>Was gewogen wird</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>Eingetragen</translation>
    </message>
    <message>
        <source>Note, correction and why</source>
        <translation>Notiz, Berichtigung und Grund</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>Oberfläche nass</translation>
    </message>
    <message>
        <source>corrects %1: %2</source>
        <translation>berichtigt %1: %2</translation>
    </message>
    <message>
        <source>corrected by a later entry</source>
        <translation>durch einen späteren Eintrag berichtigt</translation>
    </message>
    <message>
        <source>taken back by %1: %2</source>
        <translation>zurückgenommen von %1: %2</translation>
    </message>
    <message>
        <source>Never weighed.</source>
        <translation>Nie gewogen.</translation>
    </message>
    <message>
        <source>Weighings with corrections</source>
        <translation>Wägungen mit Berichtigungen</translation>
    </message>
    <message>
        <source>Piece %1</source>
        <translation>Stück %1</translation>
    </message>
    <message>
        <source>Struck figures were corrected or taken back and no longer count; they stay readable.</source>
        <translation>Durchgestrichene Zahlen wurden berichtigt oder zurückgenommen und zählen nicht mehr; sie bleiben lesbar.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>Netto davor</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>Netto danach</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>No events were recorded.</source>
        <translation>Es wurden keine Ereignisse eingetragen.</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Extremwert</translation>
    </message>
    <message>
        <source>Action taken, initials</source>
        <translation>Maßnahme, Namenszeichen</translation>
    </message>
    <message>
        <source>No excursion of an hour or longer is in the readings.</source>
        <translation>Die Messwerte enthalten keine Abweichung von einer Stunde oder länger.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>Quittiert von</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>No caution was accepted.</source>
        <translation>Es wurde keine Warnung quittiert.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>What was seen or done</source>
        <translation>Was gesehen oder getan wurde</translation>
    </message>
    <message>
        <source> (photo: %1)</source>
        <translation> (Foto: %1)</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>No notes were recorded.</source>
        <translation>Es wurden keine Notizen eingetragen.</translation>
    </message>
    <message>
        <source>Deviations and corrective action</source>
        <translation>Abweichungen und Abhilfe</translation>
    </message>
    <message>
        <source>Air out of its band</source>
        <translation>Luft außerhalb ihres Bandes</translation>
    </message>
    <message>
        <source>Cautions accepted</source>
        <translation>Quittierte Warnungen</translation>
    </message>
    <message>
        <source>Notes and actions</source>
        <translation>Notizen und Maßnahmen</translation>
    </message>
    <message>
        <source>Further deviation · limit · action taken · date and time · initials</source>
        <translation>Weitere Abweichung · Grenzwert · Maßnahme · Datum und Uhrzeit · Namenszeichen</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Vergleich mit</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Maßnahme</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>nie geprüft</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>Es sind keine Messgeräte eingetragen.</translation>
    </message>
    <message>
        <source>Instruments and calibration</source>
        <translation>Messgeräte und Prüfungen</translation>
    </message>
    <message>
        <source>Laboratory measurements</source>
        <translation>Laborwerte</translation>
    </message>
    <message>
        <source>Water activity and pH are measured, not computed. Enter what a laboratory or an instrument found, with the instrument, its calibration and the date.</source>
        <translation>Wasseraktivität und pH werden gemessen, nicht berechnet. Tragen Sie ein, was ein Labor oder ein Gerät fand, mit Gerät, Prüfung und Datum.</translation>
    </message>
    <message>
        <source>Sample of piece · water activity · pH · instrument · date · initials</source>
        <translation>Probe von Stück · Wasseraktivität · pH · Gerät · Datum · Namenszeichen</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Unterzeichnet von</translation>
    </message>
    <message>
        <source>No decision has been signed.</source>
        <translation>Es wurde keine Entscheidung unterzeichnet.</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>Entscheidungen</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>Batch %1 · %2 · started %3</source>
        <translation>Charge %1 · %2 · begonnen %3</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>Chargenkürzel</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Tierart</translation>
    </message>
    <message>
        <source>Supplier of the meat</source>
        <translation>Lieferant des Fleisches</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Los des Lieferanten</translation>
    </message>
    <message>
        <source>Frozen before curing</source>
        <translation>Vor dem Pökeln gefroren</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>Einkaufsgewicht</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>Abgeschnitten</translation>
    </message>
    <message>
        <source>Green weight of all pieces</source>
        <translation>Rohgewicht aller Stücke</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Identification</source>
        <translation>Kennzeichnung</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Teilstück</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Schwarte</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Green weight</source>
        <translation>Rohgewicht</translation>
    </message>
    <message>
        <source>Hung weight</source>
        <translation>Gewicht beim Aufhängen</translation>
    </message>
    <message>
        <source>Last weight</source>
        <translation>Letztes Gewicht</translation>
    </message>
    <message>
        <source>Loss of green</source>
        <translation>Verlust vom Rohgewicht</translation>
    </message>
    <message>
        <source>Loss of hung</source>
        <translation>Verlust seit dem Aufhängen</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source> (from %1)</source>
        <translation> (von %1)</translation>
    </message>
    <message>
        <source>No pieces.</source>
        <translation>Keine Stücke.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Weights are net. A loss is left out where something was cut off or put on in between: see the events.</source>
        <translation>Gewichte sind netto. Ein Verlust fehlt, wo dazwischen etwas abgeschnitten oder aufgetragen wurde: siehe Ereignisse.</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>Zutat</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Eingekauft</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>No ingredient lots were recorded.</source>
        <translation>Es wurden keine Zutaten-Lose eingetragen.</translation>
    </message>
    <message>
        <source>Inputs with lots</source>
        <translation>Zutaten mit Losen</translation>
    </message>
    <message>
        <source>Computed doses</source>
        <translation>Berechnete Dosen</translation>
    </message>
    <message>
        <source>Not computed: no piece has a green weight.</source>
        <translation>Nicht berechnet: Kein Stück hat ein Rohgewicht.</translation>
    </message>
    <message>
        <source>Not computed: the batch keeps no recipe that can be read.</source>
        <translation>Nicht berechnet: Die Charge hat keine lesbare Rezeptur.</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Rezeptur</translation>
    </message>
    <message>
        <source>On green meat</source>
        <translation>Auf Rohgewicht</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>Nitrit, als Natriumnitrit</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>Nitrat, als Natriumnitrat</translation>
    </message>
    <message>
        <source>Line of the recipe</source>
        <translation>Zeile der Rezeptur</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Nitrite strength</source>
        <translation>Nitritstärke</translation>
    </message>
    <message>
        <source>Nitrate strength</source>
        <translation>Nitratstärke</translation>
    </message>
    <message>
        <source>Strength from</source>
        <translation>Stärke aus</translation>
    </message>
    <message>
        <source>the label</source>
        <translation>dem Etikett</translation>
    </message>
    <message>
        <source>the catalogue</source>
        <translation>dem Verzeichnis</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Erlaubt</translation>
    </message>
    <message>
        <source>Computed</source>
        <translation>Berechnet</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>Quelle und Ausgabe</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>No limit set was chosen for this recipe: the doses were not compared.</source>
        <translation>Für diese Rezeptur wurden keine Grenzwerte gewählt: Die Dosen wurden nicht verglichen.</translation>
    </message>
    <message>
        <source>Compared with the limit set: %1</source>
        <translation>Verglichen mit den Grenzwerten: %1</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Unterschriften</translation>
    </message>
    <message>
        <source>Record made by</source>
        <translation>Protokoll erstellt von</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Geprüft von</translation>
    </message>
    <message>
        <source>Released by</source>
        <translation>Freigegeben von</translation>
    </message>
    <message>
        <source>Officer, seen</source>
        <translation>Amtsperson, gesehen</translation>
    </message>
    <message>
        <source>Figures are records and computations. Whether a product may be sold or eaten is for local codes, licensed practice and laboratory measurement.</source>
        <translation>Zahlen sind Aufzeichnungen und Berechnungen. Ob ein Erzeugnis verkauft oder gegessen werden darf, entscheiden örtliche Vorschriften, die Praxis zugelassener Betriebe und Labormessung.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Their lot</source>
        <translation>Deren Los</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>Fleisch: %1</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>Ein Schritt zurück</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Packung</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>An wen</translation>
    </message>
    <message>
        <source>packed</source>
        <translation>verpackt</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>nichts übrig</translation>
    </message>
    <message>
        <source>still here</source>
        <translation>noch da</translation>
    </message>
    <message>
        <source>Nothing of this batch has been packed.</source>
        <translation>Von dieser Charge wurde nichts verpackt.</translation>
    </message>
    <message>
        <source>One step forward</source>
        <translation>Ein Schritt voraus</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Of the green weight</source>
        <translation>Vom Rohgewicht</translation>
    </message>
    <message>
        <source>Green weight of the pieces</source>
        <translation>Rohgewicht der Stücke</translation>
    </message>
    <message>
        <source>Net weight now, of pieces not discarded</source>
        <translation>Nettogewicht jetzt, der nicht verworfenen Stücke</translation>
    </message>
    <message>
        <source>Green weight less net weight now: water, discarded pieces, ends and samples</source>
        <translation>Rohgewicht minus Nettogewicht jetzt: Wasser, verworfene Stücke, Enden und Proben</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Verpackt</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Aufgebraucht</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Verschenkt</translation>
    </message>
    <message>
        <source>Sold</source>
        <translation>Verkauft</translation>
    </message>
    <message>
        <source>Hung again</source>
        <translation>Wieder aufgehängt</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Abfall</translation>
    </message>
    <message>
        <source>Still in stock</source>
        <translation>Noch im Vorrat</translation>
    </message>
    <message>
        <source>Packed, but not accounted for</source>
        <translation>Verpackt, aber nicht nachgewiesen</translation>
    </message>
    <message>
        <source>The packs do not balance: %1 cannot be accounted for.</source>
        <translation>Die Packungen gehen nicht auf: %1 sind nicht nachgewiesen.</translation>
    </message>
    <message>
        <source>Bought less trimmed off less green weight: %1.</source>
        <translation>Eingekauft minus Abgeschnittenes minus Rohgewicht: %1.</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>in Arbeit</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>aufgegeben</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>Pökeln</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>Ruhen</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>Trocknen</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>mit anderen gewogen</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>in Stücke geschnitten</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>roh</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>zugeschnitten</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>gepökelt</translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation>abgespült</translation>
    </message>
    <message>
        <source>cased</source>
        <translation>in Hülle</translation>
    </message>
    <message>
        <source>netted</source>
        <translation>im Netz</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>überzogen</translation>
    </message>
    <message>
        <source>casing or net put on</source>
        <translation>Hülle oder Netz angelegt</translation>
    </message>
    <message>
        <source>casing or net changed</source>
        <translation>Hülle oder Netz gewechselt</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>Probe genommen</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>gemeinsam gewogen</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>gepresst</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>eingefroren</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>aufgetaut</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>gewaschen</translation>
    </message>
    <message>
        <source>hung</source>
        <translation>aufgehängt</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>umgehängt</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>Salzen</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>Waschen</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>Wässern</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>Marinieren</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>Pressen</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>Räuchern</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>Salzausgleich</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>Überziehen</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>Einfrieren</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>Lagern</translation>
    </message>
    <message>
        <source>look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>Geruch</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>Geschmack</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>Schimmel</translation>
    </message>
    <message>
        <source>action</source>
        <translation>Maßnahme</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>verwerfen</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>ganz</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>angeschnitten</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>vakuumverpackt</translation>
    </message>
    <message>
        <source>used</source>
        <translation>aufgebraucht</translation>
    </message>
    <message>
        <source>given</source>
        <translation>verschenkt</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>verkauft</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation>weggeworfen</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>wieder aufgehängt</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation>Hygrometer</translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation>pH-Messgerät</translation>
    </message>
    <message>
        <source>water activity meter</source>
        <translation>Messgerät für Wasseraktivität</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>Rohgewicht</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>Zuschnittgewicht</translation>
    </message>
    <message>
        <source>cured weight</source>
        <translation>Gewicht nach dem Pökeln</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>Gewicht beim Aufhängen</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>ohne Schwarte</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>Schwarte an einer Seite</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>Schwarte ringsum</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>zu kalt</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>zu warm</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>zu trocken</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>zu feucht</translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation>Nitrit</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>Nitrat</translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation>Nitrit und Nitrat zusammen</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>Ascorbat oder Erythorbat</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>Ascorbin- oder Erythorbinsäure</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>Phosphat</translation>
    </message>
    <message>
        <source>ingoing</source>
        <translation>zugesetzt</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>im fertigen Erzeugnis</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>Restmenge</translation>
    </message>
    <message>
        <source>within</source>
        <translation>eingehalten</translation>
    </message>
    <message>
        <source>ABOVE</source>
        <translation>DARÜBER</translation>
    </message>
    <message>
        <source>below the minimum</source>
        <translation>unter dem Mindestwert</translation>
    </message>
    <message>
        <source>NOT PERMITTED, used</source>
        <translation>NICHT ZUGELASSEN, verwendet</translation>
    </message>
    <message>
        <source>laboratory only</source>
        <translation>nur im Labor</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Caution, as it was shown</source>
        <translation>Warnung, wie sie dastand</translation>
    </message>
</context>
<context>
    <name>ReviewWords</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>lies below it</source>
        <translation>liegt darunter</translation>
    </message>
    <message>
        <source>lies above it</source>
        <translation>liegt darüber</translation>
    </message>
    <message>
        <source>lies on both sides of it</source>
        <translation>liegt beiderseits</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>start weight</source>
        <translation>Anfangsgewicht</translation>
    </message>
    <message>
        <source>salt put on</source>
        <translation>aufgetragenes Salz</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>fat share</source>
        <translation>Fettanteil</translation>
    </message>
    <message>
        <source>humidity log</source>
        <translation>Feuchteprotokoll</translation>
    </message>
    <message>
        <source>temperature log</source>
        <translation>Temperaturprotokoll</translation>
    </message>
    <message>
        <source>weighings while drying</source>
        <translation>Wägungen beim Trocknen</translation>
    </message>
    <message>
        <source>measured water activity</source>
        <translation>gemessene Wasseraktivität</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>lost of the %1</source>
        <translation>verloren: %1</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 am Tag</translation>
    </message>
    <message>
        <source>pace in the first week</source>
        <translation>Tempo in der ersten Woche</translation>
    </message>
    <message>
        <source>pace in the last two weeks</source>
        <translation>Tempo in den letzten zwei Wochen</translation>
    </message>
    <message>
        <source>time since hung</source>
        <translation>Zeit seit dem Aufhängen</translation>
    </message>
    <message>
        <source>Estimated, 8 in 10 fall in the range</source>
        <translation>Geschätzt, 8 von 10 liegen in der Spanne</translation>
    </message>
    <message>
        <source>water of the piece</source>
        <translation>Wasser des Stücks</translation>
    </message>
    <message>
        <source>salt of the piece</source>
        <translation>Salz des Stücks</translation>
    </message>
    <message>
        <source>salt in its water</source>
        <translation>Salz in seinem Wasser</translation>
    </message>
    <message>
        <source>water activity</source>
        <translation>Wasseraktivität</translation>
    </message>
    <message>
        <source>an estimate; only a laboratory measures it</source>
        <translation>eine Schätzung; nur ein Labor misst sie</translation>
    </message>
    <message>
        <source>Beside cited figures</source>
        <translation>Neben zitierten Zahlen</translation>
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
        <translation>Gesehen, getastet, gerochen</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>would add to the picture</source>
        <translation>würde das Bild ergänzen</translation>
    </message>
    <message>
        <source>mean %1, %2 to %3</source>
        <translation>Mittel %1, %2 bis %3</translation>
    </message>
    <message>
        <source>no band to hold it against</source>
        <translation>kein Band zum Vergleich</translation>
    </message>
    <message>
        <source>never out of its band in the log</source>
        <translation>laut Protokoll nie außerhalb des Bandes</translation>
    </message>
    <message>
        <source>%1: air</source>
        <translation>%1: Luft</translation>
    </message>
    <message>
        <source>no log</source>
        <translation>kein Protokoll</translation>
    </message>
    <message>
        <source>no climate log covers this piece&apos;s time there</source>
        <translation>kein Klimaprotokoll deckt die Zeit dieses Stücks dort ab</translation>
    </message>
    <message>
        <source>%1: temperature</source>
        <translation>%1: Temperatur</translation>
    </message>
    <message>
        <source>%1 too cold</source>
        <translation>%1 zu kalt</translation>
    </message>
    <message>
        <source>%1 too warm</source>
        <translation>%1 zu warm</translation>
    </message>
    <message>
        <source>%1: humidity</source>
        <translation>%1: Luftfeuchte</translation>
    </message>
    <message>
        <source>%1 too dry</source>
        <translation>%1 zu trocken</translation>
    </message>
    <message>
        <source>%1 too damp</source>
        <translation>%1 zu feucht</translation>
    </message>
    <message>
        <source>%1: not logged</source>
        <translation>%1: nicht protokolliert</translation>
    </message>
    <message>
        <source>of this time nothing is known</source>
        <translation>über diese Zeit ist nichts bekannt</translation>
    </message>
    <message>
        <source>Stages and their air</source>
        <translation>Phasen und ihre Luft</translation>
    </message>
</context>
<context>
    <name>SaveCalendar</name>
    <message>
        <source>Save the calendar</source>
        <translation>Kalender speichern</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another place.</source>
        <translation>%1 ließ sich nicht schreiben: %2. Wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
        <source>Calendar kept in %1.</source>
        <translation>Kalender in %1 abgelegt.</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>Gedruckt %1</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Als</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Datum und Uhrzeit</translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation>Vorrat</translation>
    </message>
    <message>
        <source>&amp;Pack a finished piece…</source>
        <translation>Fertiges Stück ver&amp;packen…</translation>
    </message>
    <message>
        <source>Nothing is packed yet</source>
        <translation>Noch ist nichts verpackt</translation>
    </message>
    <message>
        <source>When a piece is signed as done, pack it here: whole, cut, under vacuum or frozen. The list then shows what to eat first, what is left, and where everything went.</source>
        <translation>Ist ein Stück als fertig unterzeichnet, verpacken Sie es hier: ganz, angeschnitten, vakuumverpackt oder eingefroren. Die Liste zeigt dann, was zuerst gegessen wird, was übrig ist und wohin alles ging.</translation>
    </message>
    <message>
        <source>Pack a finished piece</source>
        <translation>Fertiges Stück verpacken</translation>
    </message>
    <message>
        <source>In eating order: open packs first, then the nearest day.</source>
        <translation>In der Reihenfolge des Essens: angebrochene Packungen zuerst, dann der nächste Tag.</translation>
    </message>
    <message>
        <source>Show packs that are &amp;gone</source>
        <translation>Auch aufgebrauchte Packungen &amp;zeigen</translation>
    </message>
    <message>
        <source>Show packs that are gone</source>
        <translation>Auch aufgebrauchte Packungen zeigen</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>&amp;Take from it…</source>
        <translation>&amp;Entnehmen…</translation>
    </message>
    <message>
        <source>What was taken from the pack</source>
        <translation>Was aus der Packung entnommen wurde</translation>
    </message>
    <message>
        <source>Eat</source>
        <translation>Essen</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Packung</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>%1, open since %2</source>
        <translation>%1, angebrochen seit %2</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>Lagern bis</translation>
    </message>
    <message>
        <source>▲ %1, past</source>
        <translation>▲ %1, vorbei</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Was daraus wurde</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>An wen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>From piece %1 of batch %2.</source>
        <translation>Aus Stück %1 der Charge %2.</translation>
    </message>
    <message>
        <source>Finished packs: what to eat first and where it went</source>
        <translation>Fertige Packungen: was zuerst zu essen ist und wohin es ging</translation>
    </message>
    <message>
        <source>Its yield is not known: the raw or the finished weight was not taken.</source>
        <translation>Die Ausbeute ist nicht bekannt: das rohe oder das fertige Gewicht wurde nicht gewogen.</translation>
    </message>
    <message>
        <source>Yield: %1 of %2 raw, %3 (lost %4); packed %5.</source>
        <translation>Ausbeute: %1 von %2 roh, %3 (verloren %4); verpackt %5.</translation>
    </message>
    <message>
        <source>At that loss the meat cost %1 a finished kilogram.</source>
        <translation>Bei diesem Verlust kostete das Fleisch %1 je fertiges Kilogramm.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No day is set to keep it until.</source>
        <translation>Es ist kein Tag gesetzt, bis zu dem es gelagert wird.</translation>
    </message>
    <message>
        <source>Keep until %1 by a rule: %2.</source>
        <translation>Lagern bis %1 nach einer Regel: %2.</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day.</source>
        <translation>Lagern bis %1: ein selbst gesetzter Tag.</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day, because: %2</source>
        <translation>Lagern bis %1: ein selbst gesetzter Tag, weil: %2</translation>
    </message>
</context>
<context>
    <name>TagText</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>Aufgehängt</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Anhänger</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>&amp;Weigh-in round</source>
        <translation>&amp;Wiegerunde</translation>
    </message>
    <message>
        <source>&amp;Calendar</source>
        <translation>&amp;Kalender</translation>
    </message>
    <message>
        <source>No work yet</source>
        <translation>Noch keine Arbeit</translation>
    </message>
    <message>
        <source>Once a batch is planned, this page lists each day&apos;s work across all batches: turning, rubbing, weighing, looking at the chambers, judging what is ready. One key ticks a line off; what was missed stays at the top.</source>
        <translation>Ist eine Charge geplant, führt diese Seite die Arbeit jedes Tages über alle Chargen auf: wenden, nachreiben, wiegen, nach den Kammern sehen, beurteilen, was so weit ist. Eine Taste hakt eine Zeile ab; Versäumtes bleibt oben stehen.</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>Charge planen</translation>
    </message>
    <message>
        <source>&amp;Leave out this time</source>
        <translation>Diesmal aus&amp;lassen</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation>&amp;Erledigt</translation>
    </message>
    <message>
        <source>Nothing is left for today.</source>
        <translation>Für heute ist nichts übrig.</translation>
    </message>
    <message>
        <source>&amp;Do it now</source>
        <translation>Jetzt &amp;tun</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Öff&amp;nen</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>Space or Enter: %1 Delete: leave it out this time.</source>
        <extracomment>%1 what the key does</extracomment>
        <translation>Leertaste oder Enter: %1 Entf: diesmal auslassen.</translation>
    </message>
    <message>
        <source>Space: %1</source>
        <translation>Leertaste: %1</translation>
    </message>
    <message>
        <source>The day&apos;s work across all batches</source>
        <translation>Die Arbeit des Tages über alle Chargen</translation>
    </message>
    <message>
        <source>Work of the day</source>
        <translation>Arbeit des Tages</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
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
        <translation>% rF</translation>
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
        <translation>Tage</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>Wochen</translation>
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
        <translation>Woche</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>Stunde</translation>
    </message>
</context>
<context>
    <name>Upset</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Upset in %1: %2 to %3, highest air temperature %4.</source>
        <translation>Störung in %1: %2 bis %3, höchste Lufttemperatur %4.</translation>
    </message>
    <message>
        <source>Without a reading: %1.</source>
        <translation>Ohne Messwert: %1.</translation>
    </message>
    <message>
        <source>%1 %2: stage %3, hung %4, lost %5, salt at most %6, nitrite put on %7.</source>
        <translation>%1 %2: Phase „%3“, aufgehängt %4, verloren %5, Salz höchstens %6, aufgetragenes Nitrit %7.</translation>
    </message>
    <message>
        <source>%1 %2 (water activity %3)</source>
        <translation>%1 %2 (Wasseraktivität %3)</translation>
    </message>
    <message>
        <source>  Air in growth range: %1.</source>
        <translation>  Luft im Wachstumsbereich: %1.</translation>
    </message>
    <message>
        <source>A record of the air, not of the meat&apos;s core, and no judgement.</source>
        <translation>Eine Aufzeichnung der Luft, nicht des Fleischkerns, und kein Urteil.</translation>
    </message>
</context>
<context>
    <name>WarmWords</name>
    <message>
        <source>No time can be given: see below.</source>
        <translation>Eine Zeit lässt sich nicht nennen: siehe unten.</translation>
    </message>
    <message>
        <source>It is there already.</source>
        <translation>Es ist schon so weit.</translation>
    </message>
    <message>
        <source>About %1 in the warm air; 8 in 10 pieces take %2 to %3.</source>
        <translation>Etwa %1 in der warmen Luft; 8 von 10 Stücken brauchen %2 bis %3.</translation>
    </message>
    <message>
        <source>at most %1 tenfold steps in a laboratory medium, without lag</source>
        <translation>höchstens %1 Zehnerschritte im Labormedium, ohne Anlaufzeit</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Warm finish, %1: air at %2 and %3, from %4 to %5 lost.</source>
        <translation>Nachtrocknen in warmer Luft, %1: Luft bei %2 und %3, Verlust von %4 auf %5.</translation>
    </message>
    <message>
        <source>In the growth range of %1: %2 (%3)</source>
        <translation>Im Wachstumsbereich von %1: %2 (%3)</translation>
    </message>
</context>
<context>
    <name>WhatIfWords</name>
    <message>
        <source>reached</source>
        <translation>erreicht</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>nicht erreicht</translation>
    </message>
    <message>
        <source>by today</source>
        <translation>bis heute</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>not reachable: more likely never than ever</source>
        <translation>nicht erreichbar: eher nie als irgendwann</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a temperature, %2 a humidity: air</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Air ahead</source>
        <translation>Luft ab jetzt</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>1 chance in 10 by</source>
        <translation>Chance 1 von 10 bis</translation>
    </message>
    <message>
        <source>Even odds by</source>
        <translation>Chance 1 von 2 bis</translation>
    </message>
    <message>
        <source>9 chances in 10 by</source>
        <translation>Chance 9 von 10 bis</translation>
    </message>
    <message>
        <source>Levels off at</source>
        <translation>Flacht ab bei</translation>
    </message>
    <message>
        <source>No humidity at %1 draws water as strongly as %2 does.</source>
        <translation>Keine Feuchte bei %1 zieht das Wasser so stark wie %2.</translation>
    </message>
    <message>
        <source>Equal drying power: %1 at %2 draws water as strongly as %3 at %4. How far the piece can dry follows from humidity almost alone.</source>
        <translation>Gleiche Trocknungskraft: %1 bei %2 zieht das Wasser so stark wie %3 bei %4. Wie weit das Stück trocknen kann, folgt fast nur aus der Feuchte.</translation>
    </message>
    <message>
        <source>%1 lies in the cited growth range of %2 (%3 to %4), which %5 does not. %6</source>
        <translation>%1 liegt im zitierten Wachstumsbereich von %2 (%3 bis %4), %5 nicht. %6</translation>
    </message>
</context>
<context>
    <name>WorkList</name>
    <message>
        <source>Work of the day</source>
        <translation>Arbeit des Tages</translation>
    </message>
</context>
<context>
    <name>app::window::Session</name>
    <message>
        <source>Open a book</source>
        <translation>Buch öffnen</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Saltloft-Bücher (*.saltloft);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Neues Buch</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Saltloft-Bücher (*.saltloft)</translation>
    </message>
    <message>
        <source>Back up a copy</source>
        <translation>Kopie sichern</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>The copy was written and read back: %1, %2, %3.</source>
        <translation>Die Kopie wurde geschrieben und zurückgelesen: %1, %2, %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n Charge</numerusform>
            <numerusform>%n Chargen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n Stück</numerusform>
            <numerusform>%n Stücke</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weighing(s)</source>
        <translation>
            <numerusform>%n Wägung</numerusform>
            <numerusform>%n Wägungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Kopie wiederherstellen</translation>
    </message>
    <message>
        <source>The backup is in its place and open.</source>
        <translation>Die Sicherungskopie ist an ihrer Stelle und geöffnet.</translation>
    </message>
    <message>
        <source>The backup is in its place and open. The book as it was before is kept as %1.</source>
        <translation>Die Sicherungskopie ist an ihrer Stelle und geöffnet. Das Buch, wie es vorher war, liegt unter %1.</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartPainter</name>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartTable</name>
    <message>
        <source>The chart as a table</source>
        <translation>Das Diagramm als Tabelle</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, als Tabelle</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartView</name>
    <message>
        <source>Move over a point, or use Left and Right, to read it.</source>
        <translation>Auf einen Punkt zeigen oder mit Links und Rechts gehen, um ihn abzulesen.</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Diagramm</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Copy the table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>Copied: paste it into a spreadsheet or a text.</source>
        <translation>Kopiert: in eine Tabellenkalkulation oder einen Text einfügen.</translation>
    </message>
    <message>
        <source>Enter chooses a row that was weighed; Ctrl+C copies.</source>
        <translation>Enter wählt eine gewogene Zeile; Strg+C kopiert.</translation>
    </message>
    <message>
        <source>As a drawing</source>
        <translation>Als Zeichnung</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, als Tabelle</translation>
    </message>
    <message>
        <source>Copy the table: %1</source>
        <translation>Tabelle kopieren: %1</translation>
    </message>
</context>
<context>
    <name>ui::edits::DayField</name>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message>
        <source>day, e.g. %1</source>
        <translation>Tag, z. B. %1</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>Pick from a calendar (Alt+Down)</source>
        <translation>Aus einem Kalender wählen (Alt+Unten)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Pick a day</source>
        <translation>Tag wählen</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
</context>
<context>
    <name>ui::models::WorkModel</name>
    <message>
        <source>Overdue</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Coming</source>
        <translation>Demnächst</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation>Heute erledigt</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <extracomment>a heading of the day sheet and how many lines it has</extracomment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Batch and pieces</source>
        <translation>Charge und Stücke</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchDialog</name>
    <message>
        <source>Change batch %1</source>
        <translation>Charge %1 ändern</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Tier</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Los des Lieferanten</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>Einkaufsgewicht</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>Abgeschnitten</translation>
    </message>
    <message>
        <source>Price per kilogram</source>
        <translation>Preis je Kilogramm</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>The meat was frozen before</source>
        <translation>Das Fleisch war vorher gefroren</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>&amp;Code</source>
        <translation>&amp;Kürzel</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Produkt</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Tier</translation>
    </message>
    <message>
        <source>&amp;Supplier</source>
        <translation>&amp;Lieferant</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>L&amp;os des Lieferanten</translation>
    </message>
    <message>
        <source>S&amp;tarted</source>
        <translation>&amp;Begonnen</translation>
    </message>
    <message>
        <source>&amp;Bought weight</source>
        <translation>&amp;Einkaufsgewicht</translation>
    </message>
    <message>
        <source>Trimmed &amp;off</source>
        <translation>Ab&amp;geschnitten</translation>
    </message>
    <message>
        <source>P&amp;rice per kilogram</source>
        <translation>P&amp;reis je Kilogramm</translation>
    </message>
    <message>
        <source>Stat&amp;e</source>
        <translation>&amp;Stand</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchesPage</name>
    <message>
        <source>Batches and pieces</source>
        <translation>Chargen und Stücke</translation>
    </message>
    <message>
        <source>&amp;New batch…</source>
        <translation>&amp;Neue Charge…</translation>
    </message>
    <message>
        <source>No batch yet</source>
        <translation>Noch keine Charge</translation>
    </message>
    <message>
        <source>A batch is meat cured together from one recipe. Weigh it, let the mix sheet compute the cure, and give each piece a code. From then on every weighing finds its place by itself.</source>
        <translation>Eine Charge ist Fleisch, das nach einer Rezeptur gemeinsam gepökelt wird. Wiegen Sie es, lassen Sie das Mischblatt das Pökelsalz berechnen und geben Sie jedem Stück ein Kürzel. Von da an findet jede Wägung von selbst ihren Platz.</translation>
    </message>
    <message>
        <source>Start the first batch</source>
        <translation>Erste Charge beginnen</translation>
    </message>
    <message>
        <source>Find a batch</source>
        <translation>Charge finden</translation>
    </message>
    <message>
        <source>Find by code, name, product or supplier</source>
        <translation>Suche nach Kürzel, Name, Produkt oder Lieferant</translation>
    </message>
    <message>
        <source>Show &amp;finished batches too</source>
        <translation>Auch &amp;fertige Chargen zeigen</translation>
    </message>
    <message>
        <source>Show finished batches too</source>
        <translation>Auch fertige Chargen zeigen</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Chargen</translation>
    </message>
    <message>
        <source>Pieces of the batch</source>
        <translation>Stücke der Charge</translation>
    </message>
    <message>
        <source>&amp;Add a piece…</source>
        <translation>&amp;Stück hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Change the batch…</source>
        <translation>&amp;Charge ändern…</translation>
    </message>
    <message>
        <source>Batches above pieces</source>
        <translation>Chargen über Stücken</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Trocknen</translation>
    </message>
    <message>
        <source>Last weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Net now</source>
        <translation>Netto jetzt</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verloren</translation>
    </message>
    <message>
        <source>At target</source>
        <translation>Am Ziel</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>started %1</source>
        <translation>begonnen %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>Los %1</translation>
    </message>
    <message>
        <source>bought %1</source>
        <translation>eingekauft %1</translation>
    </message>
    <message>
        <source>All batches and their pieces</source>
        <translation>Alle Chargen und ihre Stücke</translation>
    </message>
    <message>
        <source>&amp;More</source>
        <translation>&amp;Mehr</translation>
    </message>
    <message>
        <source>More about the batch</source>
        <translation>Mehr zur Charge</translation>
    </message>
    <message>
        <source>&amp;Curves on one chart</source>
        <translation>&amp;Kurven in einem Diagramm</translation>
    </message>
    <message>
        <source>&amp;How it came out…</source>
        <translation>&amp;Wie sie geworden ist…</translation>
    </message>
    <message>
        <source>How it came out: %1</source>
        <translation>Wie sie geworden ist: %1</translation>
    </message>
    <message>
        <source>Salt, texture, and what to change next time</source>
        <translation>Salz, Konsistenz und was nächstes Mal zu ändern ist</translation>
    </message>
    <message>
        <source>Once a piece of it is signed as done.</source>
        <translation>Sobald ein Stück davon als fertig unterzeichnet ist.</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberDialog</name>
    <message>
        <source>Change a chamber</source>
        <translation>Kammer ändern</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>Kammer hinzufügen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was sie ist</translation>
    </message>
    <message>
        <source>Lowest temperature wanted</source>
        <translation>Niedrigste gewünschte Temperatur</translation>
    </message>
    <message>
        <source>Highest temperature wanted</source>
        <translation>Höchste gewünschte Temperatur</translation>
    </message>
    <message>
        <source>Lowest humidity wanted</source>
        <translation>Niedrigste gewünschte Feuchte</translation>
    </message>
    <message>
        <source>Highest humidity wanted</source>
        <translation>Höchste gewünschte Feuchte</translation>
    </message>
    <message>
        <source>Water it can carry out a day</source>
        <translation>Wasser, das sie am Tag abführen kann</translation>
    </message>
    <message>
        <source>Places to hang</source>
        <translation>Hängeplätze</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;What it is</source>
        <translation>&amp;Was sie ist</translation>
    </message>
    <message>
        <source>&amp;Temperature from</source>
        <translation>&amp;Temperatur von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>&amp;Humidity from</source>
        <translation>&amp;Feuchte von</translation>
    </message>
    <message>
        <source>Water it can carry &amp;out a day</source>
        <translation>Wasser, das sie am Tag &amp;abführen kann</translation>
    </message>
    <message>
        <source>&amp;Places to hang</source>
        <translation>&amp;Hängeplätze</translation>
    </message>
    <message>
        <source>N&amp;otes</source>
        <translation>N&amp;otizen</translation>
    </message>
    <message>
        <source>Give the chamber a name, such as &quot;Cellar&quot;.</source>
        <translation>Geben Sie der Kammer einen Namen, etwa „Keller“.</translation>
    </message>
    <message>
        <source>This is below the lowest temperature.</source>
        <translation>Das liegt unter der niedrigsten Temperatur.</translation>
    </message>
    <message>
        <source>This is below the lowest humidity.</source>
        <translation>Das liegt unter der niedrigsten Feuchte.</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberPage</name>
    <message>
        <source>Chambers</source>
        <translation>Kammern</translation>
    </message>
    <message>
        <source>No chamber yet</source>
        <translation>Noch keine Kammer</translation>
    </message>
    <message>
        <source>A chamber is where pieces cure or hang: a fridge, a cabinet, a cellar. Add one with the air you want in it; then import your logger&apos;s file to see how the air really was.</source>
        <translation>Eine Kammer ist, wo Stücke pökeln oder hängen: Kühlschrank, Schrank, Keller. Fügen Sie eine mit der gewünschten Luft hinzu und importieren Sie dann die Datei Ihres Datenloggers, um zu sehen, wie die Luft wirklich war.</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>Kammer hinzufügen</translation>
    </message>
    <message>
        <source>About the chamber</source>
        <translation>Über die Kammer</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>&amp;Air</source>
        <translation>&amp;Luft</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Sensoren</translation>
    </message>
    <message>
        <source>&amp;Sensors</source>
        <translation>&amp;Sensoren</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Belegung</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>&amp;Belegung</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Protokolle</translation>
    </message>
    <message>
        <source>L&amp;ogs</source>
        <translation>Pr&amp;otokolle</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Kammer</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Neu…</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>Record an &amp;upset…</source>
        <translation>Störung auf&amp;zeichnen…</translation>
    </message>
    <message>
        <source>&amp;Import a log…</source>
        <translation>Protokoll &amp;importieren…</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>drying force</source>
        <translation>Trocknungskraft</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Wie lange</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>ein Tag</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>eine Woche</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 Tage</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 Tage</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>ein Jahr</translation>
    </message>
    <message>
        <source>ten years</source>
        <translation>zehn Jahre</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Second sensor laid over it</source>
        <translation>Zweiter Sensor darübergelegt</translation>
    </message>
    <message>
        <source>◀ &amp;Earlier</source>
        <translation>◀ Früh&amp;er</translation>
    </message>
    <message>
        <source>La&amp;ter ▶</source>
        <translation>Spä&amp;ter ▶</translation>
    </message>
    <message>
        <source>Ne&amp;west</source>
        <translation>Ne&amp;ueste</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>Außerhalb</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Extremwert</translation>
    </message>
    <message>
        <source>Times out of band, half an hour or longer</source>
        <translation>Zeiten außerhalb des Bandes, eine halbe Stunde oder länger</translation>
    </message>
    <message>
        <source>no second sensor</source>
        <translation>kein zweiter Sensor</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Of %1 watched, no time out of the band.</source>
        <translation>%1 beobachtet, keine Zeit außerhalb des Bandes.</translation>
    </message>
    <message>
        <source>Of %1 watched: %2.</source>
        <translation>%1 beobachtet: %2.</translation>
    </message>
    <message>
        <source>For %1 nothing is known.</source>
        <translation>Für %1 ist nichts bekannt.</translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation>Luft in %1</translation>
    </message>
    <message>
        <source>No sensor here yet: import a log, or add a sensor on the Sensors tab.</source>
        <translation>Noch kein Sensor hier: Importieren Sie ein Protokoll oder fügen Sie unter Sensoren einen hinzu.</translation>
    </message>
    <message>
        <source>This sensor has no readings yet: import a log.</source>
        <translation>Dieser Sensor hat noch keine Messwerte: Importieren Sie ein Protokoll.</translation>
    </message>
    <message>
        <source>Batch about to be hung here</source>
        <translation>Charge, die hier aufgehängt werden soll</translation>
    </message>
    <message>
        <source>&amp;What if this batch is hung here</source>
        <translation>&amp;Wenn diese Charge hier hinge</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Wiegt</translation>
    </message>
    <message>
        <source>Hung for</source>
        <translation>Hängt seit</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verloren</translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation>Wasser am Tag</translation>
    </message>
    <message>
        <source>Known from</source>
        <translation>Bekannt aus</translation>
    </message>
    <message>
        <source>its weighings</source>
        <translation>den Wägungen</translation>
    </message>
    <message>
        <source>the usual pace of its age</source>
        <translation>dem üblichen Tempo des Alters</translation>
    </message>
    <message>
        <source>Pieces by the water they give off</source>
        <translation>Stücke nach dem Wasser, das sie abgeben</translation>
    </message>
    <message>
        <source>Air, sensors and load of the rooms where pieces hang</source>
        <translation>Luft, Sensoren und Belegung der Räume, in denen Stücke hängen</translation>
    </message>
    <message>
        <source>▲ never checked</source>
        <translation>▲ nie geprüft</translation>
    </message>
    <message>
        <source>▲ due %1</source>
        <translation>▲ fällig %1</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation>Letzter Messwert</translation>
    </message>
    <message>
        <source>Added to it</source>
        <translation>Zugerechnet</translation>
    </message>
    <message>
        <source>Salt-bag check</source>
        <translation>Salzbeutelprüfung</translation>
    </message>
    <message>
        <source>Ice check</source>
        <translation>Eisprüfung</translation>
    </message>
    <message>
        <source>Sensors in this chamber</source>
        <translation>Sensoren in dieser Kammer</translation>
    </message>
    <message>
        <source>Instruments are often wrong, and believed. Check each over a salt slurry every six months and after a battery change; the dates are common practice.</source>
        <translation>Messgeräte irren oft, und man glaubt ihnen. Prüfen Sie jedes alle sechs Monate und nach einem Batteriewechsel über Salzbrei; die Fristen sind übliche Praxis.</translation>
    </message>
    <message>
        <source>Add a senso&amp;r…</source>
        <translation>Senso&amp;r hinzufügen…</translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>Ä&amp;ndern…</translation>
    </message>
    <message>
        <source>Record a chec&amp;k…</source>
        <translation>Prü&amp;fung eintragen…</translation>
    </message>
    <message>
        <source>%1 of water a day, %2 % of what %3 can carry out.</source>
        <translation>%1 Wasser am Tag, %2 % dessen, was %3 abführen kann.</translation>
    </message>
    <message>
        <source>%1 of water a day. What the chamber can carry out is not known: weigh the water it sheds in a day, and enter it under Change.</source>
        <translation>%1 Wasser am Tag. Was die Kammer abführen kann, ist nicht bekannt: Wiegen Sie das Wasser, das sie am Tag abgibt, und tragen Sie es unter „Ändern“ ein.</translation>
    </message>
    <message>
        <source>Nothing hangs here.</source>
        <translation>Hier hängt nichts.</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 mit %2</translation>
    </message>
    <message>
        <source>Worth swapping, the fast with the slow of the same age: %1.</source>
        <translation>Tauschen lohnt, das schnelle mit dem langsamen gleichen Alters: %1.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Eingelesen</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>New readings</source>
        <translation>Neue Messwerte</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Ausgelassen</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>ganz</translation>
    </message>
    <message>
        <source>▲ stopped half-way</source>
        <translation>▲ auf halbem Weg angehalten</translation>
    </message>
    <message>
        <source>Logs taken in</source>
        <translation>Eingelesene Protokolle</translation>
    </message>
    <message>
        <source>A watched folder&apos;s new files are taken in by themselves, once a first file of the sensor has been imported by hand.</source>
        <translation>Neue Dateien eines beobachteten Ordners werden von selbst eingelesen, sobald eine erste Datei des Sensors von Hand importiert wurde.</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>&amp;Ordner beobachten…</translation>
    </message>
    <message>
        <source>Take the newest log &amp;back</source>
        <translation>Neuestes Protokoll &amp;zurücknehmen</translation>
    </message>
    <message>
        <source>Stop watching the &amp;folder</source>
        <translation>Ordner nicht me&amp;hr beobachten</translation>
    </message>
    <message>
        <source>Add a sensor first, so that the files have somewhere to go.</source>
        <translation>Fügen Sie erst einen Sensor hinzu, damit die Dateien einen Platz haben.</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>Ordner zum Beobachten</translation>
    </message>
    <message>
        <source>logger</source>
        <translation>Datenlogger</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n place(s) are free.</source>
        <translation>
            <numerusform>%1 von %n Platz ist frei.</numerusform>
            <numerusform>%1 von %n Plätzen sind frei.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::CheckDialog</name>
    <message>
        <source>Check the book</source>
        <translation>Buch prüfen</translation>
    </message>
    <message>
        <source>Reads %1 from end to end: pages, indexes, links between entries and the sums of climate readings. It changes nothing.</source>
        <translation>Liest %1 von Anfang bis Ende: Seiten, Indizes, Verknüpfungen zwischen Einträgen und die Summen der Klimamesswerte. Geändert wird nichts.</translation>
    </message>
    <message>
        <source>The book is being read</source>
        <translation>Das Buch wird gelesen</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Make the climate roll-ups a&amp;new</source>
        <translation>Klimasummen &amp;neu bilden</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>In ein neues Buch &amp;retten…</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>Kopie &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Abbrechen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>The check is under way. A book with years of climate readings takes a while.</source>
        <translation>Die Prüfung läuft. Ein Buch mit Klimamesswerten vieler Jahre braucht eine Weile.</translation>
    </message>
    <message>
        <source>The climate roll-ups are being made anew from the readings.</source>
        <translation>Die Klimasummen werden aus den Messwerten neu gebildet.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>This book is open for reading only: open it for writing to do that.</source>
        <translation>Dieses Buch ist nur zum Lesen geöffnet; öffnen Sie es dafür zum Schreiben.</translation>
    </message>
</context>
<context>
    <name>ui::pages::CompareDialog</name>
    <message>
        <source>Pieces for one chart</source>
        <translation>Stücke für ein Diagramm</translation>
    </message>
    <message>
        <source>Find a piece</source>
        <translation>Stück suchen</translation>
    </message>
    <message>
        <source>Find by code, piece, batch or product</source>
        <translation>Suche nach Kürzel, Stück, Charge oder Produkt</translation>
    </message>
    <message>
        <source>Pieces, ticked ones are drawn</source>
        <translation>Stücke, angehakte werden gezeichnet</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>&amp;Draw them</source>
        <translation>&amp;Zeichnen</translation>
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
        <translation>Noch kein anderes Stück wurde aufgehängt.</translation>
    </message>
    <message>
        <source>%1 is the most a chart can tell apart; the newest are drawn.</source>
        <translation>Mehr als %1 kann ein Diagramm nicht unterscheidbar zeigen; die neuesten werden gezeichnet.</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>Angehakt: %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::EntryDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>Über&amp;nehmen</translation>
    </message>
    <message>
        <source>%1
If this is right, press Keep again.</source>
        <translation>%1
Wenn das richtig ist, drücken Sie noch einmal „Übernehmen“.</translation>
    </message>
</context>
<context>
    <name>ui::pages::EventDialog</name>
    <message>
        <source>Drying starts. The net weight now is the hung weight that losses count from.</source>
        <translation>Das Trocknen beginnt. Das Nettogewicht jetzt ist das Gewicht beim Aufhängen, von dem Verluste zählen.</translation>
    </message>
    <message>
        <source>A casing or net was put on. Its weight is tare from now on.</source>
        <translation>Hülle oder Netz wurde angelegt. Ihr Gewicht ist von nun an Tara.</translation>
    </message>
    <message>
        <source>Casing or net was changed. The net weight stays; only the tare changes.</source>
        <translation>Hülle oder Netz wurde gewechselt. Das Nettogewicht bleibt; nur die Tara ändert sich.</translation>
    </message>
    <message>
        <source>Lard, paste or pepper was put on. The added weight is not meat.</source>
        <translation>Schmalz, Paste oder Pfeffer wurde aufgetragen. Das zusätzliche Gewicht ist kein Fleisch.</translation>
    </message>
    <message>
        <source>Something was cut off. Start and target shrink in proportion.</source>
        <translation>Etwas wurde abgeschnitten. Anfang und Ziel schrumpfen anteilig.</translation>
    </message>
    <message>
        <source>A wedge was taken to taste. Start and target shrink in proportion.</source>
        <translation>Ein Keil wurde zum Kosten genommen. Anfang und Ziel schrumpfen anteilig.</translation>
    </message>
    <message>
        <source>The piece was pressed. Water pressed out counts as loss.</source>
        <translation>Das Stück wurde gepresst. Ausgepresstes Wasser zählt als Verlust.</translation>
    </message>
    <message>
        <source>The piece was washed or soaked. The next weighing may be wet.</source>
        <translation>Das Stück wurde gewaschen oder gewässert. Die nächste Wägung kann nass sein.</translation>
    </message>
    <message>
        <source>The piece hangs elsewhere now.</source>
        <translation>Das Stück hängt jetzt anderswo.</translation>
    </message>
    <message>
        <source>The piece was frozen. The cure clock stops.</source>
        <translation>Das Stück wurde eingefroren. Die Pökelzeit steht still.</translation>
    </message>
    <message>
        <source>The piece is thawed. The cure clock runs again.</source>
        <translation>Das Stück ist aufgetaut. Die Pökelzeit läuft wieder.</translation>
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
        <translation>Ziel netto: %1</translation>
    </message>
    <message>
        <source>target on the scale: %1</source>
        <translation>Ziel auf der Waage: %1</translation>
    </message>
    <message>
        <source>tare: %1</source>
        <translation>Tara: %1</translation>
    </message>
    <message>
        <source>No number changes.</source>
        <translation>Keine Zahl ändert sich.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>&amp;Zeit</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>Nettogewicht davor</translation>
    </message>
    <message>
        <source>Net weight after</source>
        <translation>Nettogewicht danach</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>Nettogewicht &amp;davor</translation>
    </message>
    <message>
        <source>Net weight &amp;after</source>
        <translation>Nettogewicht d&amp;anach</translation>
    </message>
    <message>
        <source>Net weight as hung</source>
        <translation>Nettogewicht beim Aufhängen</translation>
    </message>
    <message>
        <source>&amp;Net weight as hung</source>
        <translation>&amp;Nettogewicht beim Aufhängen</translation>
    </message>
    <message>
        <source>Tare from now on</source>
        <translation>Tara von nun an</translation>
    </message>
    <message>
        <source>&amp;Tare from now on</source>
        <translation>Ta&amp;ra von nun an</translation>
    </message>
    <message>
        <source>New start weight</source>
        <translation>Neues Anfangsgewicht</translation>
    </message>
    <message>
        <source>in proportion</source>
        <translation>anteilig</translation>
    </message>
    <message>
        <source>New &amp;start, if not in proportion</source>
        <translation>Neuer An&amp;fang, wenn nicht anteilig</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Kammer</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
</context>
<context>
    <name>ui::pages::GuidePage</name>
    <message>
        <source>Guide</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation>Kapitel</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>Kapitel</translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation>Text des Kapitels</translation>
    </message>
    <message>
        <source>Search the guide</source>
        <translation>Im Handbuch suchen</translation>
    </message>
    <message>
        <source>Pre&amp;vious</source>
        <translation>&amp;Vorherige</translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <translation>Nä&amp;chste</translation>
    </message>
    <message>
        <source>The guide is in English.</source>
        <translation>Das Handbuch ist auf Englisch.</translation>
    </message>
    <message>
        <source>“%1” is not in the guide.</source>
        <translation>„%1“ steht nicht im Handbuch.</translation>
    </message>
    <message>
        <source>How the work goes, what to do when, and the mathematics</source>
        <translation>Wie die Arbeit geht, was wann zu tun ist, und die Mathematik</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n Stelle</numerusform>
            <numerusform>%n Stellen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n chapter(s)</source>
        <translation>
            <numerusform>%1 in %n Kapitel</numerusform>
            <numerusform>%1 in %n Kapiteln</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::HangingPage</name>
    <message>
        <source>What hangs</source>
        <translation>Was hängt</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Kammer</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Kammer</translation>
    </message>
    <message>
        <source>Nothing hangs yet</source>
        <translation>Noch hängt nichts</translation>
    </message>
    <message>
        <source>When a piece comes out of the cure, open it and choose &quot;What happened: hung to dry&quot;. From its second weighing on it stands here on a time axis with the interval in which it is expected to reach its target.</source>
        <translation>Kommt ein Stück aus dem Pökeln, öffnen Sie es und wählen Sie „Was geschah: zum Trocknen aufgehängt“. Von der zweiten Wägung an steht es hier auf einer Zeitachse mit der Spanne, in der sein Ziel zu erwarten ist.</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation>Bereit bis</translation>
    </message>
    <message>
        <source>What is &amp;ready by</source>
        <translation>Was ist &amp;bereit bis</translation>
    </message>
    <message>
        <source>Drying pieces</source>
        <translation>Trocknende Stücke</translation>
    </message>
    <message>
        <source>Columns and dates</source>
        <translation>Spalten und Daten</translation>
    </message>
    <message>
        <source>Bar: how far the loss has come towards the target, from hanging to now. Box: 8 chances in 10 that the target is reached inside; the line in it is even odds. An arrow: it may never be. At target is not done: look, touch and cut before you decide.</source>
        <translation>Balken: wie weit der Verlust auf dem Weg zum Ziel ist, vom Aufhängen bis jetzt. Kasten: Chance 8 von 10, dass das Ziel darin erreicht wird; beim Strich darin 1 von 2. Pfeil: womöglich nie. Am Ziel ist nicht fertig: schauen, tasten und anschneiden, dann entscheiden.</translation>
    </message>
    <message>
        <source>It dries much faster or slower than the others of its batch.</source>
        <translation>Es trocknet viel schneller oder langsamer als die anderen seiner Charge.</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Hängt</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verloren</translation>
    </message>
    <message>
        <source>fast ▲ </source>
        <translation>schnell ▲ </translation>
    </message>
    <message>
        <source>slow ▼ </source>
        <translation>langsam ▼ </translation>
    </message>
    <message>
        <source>At target</source>
        <translation>Am Ziel</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>Type a day, such as a market or a feast, to see which pieces are expected to be at their target.</source>
        <translation>Geben Sie einen Tag ein, etwa einen Markt oder ein Fest, um zu sehen, welche Stücke dann am Ziel zu erwarten sind.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Nine chances in ten or better: %1. More likely than not: %2. Possible: %3.</source>
        <translation>Neun von zehn oder besser: %1. Eher ja als nein: %2. Möglich: %3.</translation>
    </message>
    <message>
        <source>Drying pieces on a time axis, and what is ready by a day</source>
        <translation>Trocknende Stücke auf einer Zeitachse, und was bis zu einem Tag bereit ist</translation>
    </message>
    <message>
        <source>Nothing hangs.</source>
        <translation>Nichts hängt.</translation>
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
        <translation>wie in der Datei gefunden</translation>
    </message>
    <message>
        <source>Import a climate log</source>
        <translation>Klimaprotokoll importieren</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation>Fortschritt des Imports</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>Choose the file your logger wrote. Nothing is stored before you press Import, and one Undo takes the whole log back.</source>
        <translation>Wählen Sie die Datei Ihres Datenloggers. Bis Sie „Importieren“ drücken, wird nichts gespeichert, und ein Rückgängig nimmt das ganze Protokoll zurück.</translation>
    </message>
    <message>
        <source>Log file</source>
        <translation>Protokolldatei</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>Wä&amp;hlen…</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>&amp;Sensor</source>
        <translation>Se&amp;nsor</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Datumsform</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>Temperatur in</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>Ortszeit von %1</translation>
    </message>
    <message>
        <source>winter time all year</source>
        <translation>Winterzeit das ganze Jahr</translation>
    </message>
    <message>
        <source>&amp;Dates</source>
        <translation>Datums&amp;form</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>&amp;Temperatur in</translation>
    </message>
    <message>
        <source>D&amp;ecimal sign</source>
        <translation>D&amp;ezimalzeichen</translation>
    </message>
    <message>
        <source>Cloc&amp;k</source>
        <translation>&amp;Uhr</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Reads as</source>
        <translation>Liest sich als</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie gewiss</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Or else</source>
        <translation>Oder sonst</translation>
    </message>
    <message>
        <source>How the file reads</source>
        <translation>Wie die Datei sich liest</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>First readings</source>
        <translation>Erste Messwerte</translation>
    </message>
    <message>
        <source>Logs (*.csv *.txt *.tsv *.log);;All files (*)</source>
        <translation>Protokolle (*.csv *.txt *.tsv *.log);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Part of this is a guess. Say above how the file is to be read; it is remembered for this sensor.</source>
        <translation>Ein Teil ist geraten. Sagen Sie oben, wie die Datei zu lesen ist; das Programm merkt es sich für diesen Sensor.</translation>
    </message>
    <message>
        <source>The file reads well.</source>
        <translation>Die Datei liest sich gut.</translation>
    </message>
    <message>
        <source>&amp;Cancel the import</source>
        <translation>Import &amp;abbrechen</translation>
    </message>
    <message>
        <source>The first is line %1: %2.</source>
        <translation>Die erste ist Zeile %1: %2.</translation>
    </message>
    <message>
        <source>%1 say something else than the book, which was left as it is.</source>
        <translation>%1 sagen anderes als das Buch, das so blieb, wie es war.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n Messwert</numerusform>
            <numerusform>%n Messwerte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the first %1 lines %n are no readings; they will be left out.</source>
        <translation>
            <numerusform>Von den ersten %1 Zeilen ist %n kein Messwert; sie wird ausgelassen.</numerusform>
            <numerusform>Von den ersten %1 Zeilen sind %n keine Messwerte; sie werden ausgelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n reading(s) are new.</source>
        <translation>
            <numerusform>%1 von %n Messwert ist neu.</numerusform>
            <numerusform>%1 von %n Messwerten sind neu.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopped. %n reading(s) were taken in before; Undo takes them back.</source>
        <translation>
            <numerusform>Angehalten. %n Messwert wurde vorher eingelesen; Rückgängig nimmt ihn zurück.</numerusform>
            <numerusform>Angehalten. %n Messwerte wurden vorher eingelesen; Rückgängig nimmt sie zurück.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) are no readings.</source>
        <translation>
            <numerusform>%n Zeile ist kein Messwert.</numerusform>
            <numerusform>%n Zeilen sind keine Messwerte.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::KeepByFields</name>
    <message>
        <source>Rule for keeping it</source>
        <translation>Lagerregel</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>Lagern bis</translation>
    </message>
    <message>
        <source>Why this day</source>
        <translation>Warum dieser Tag</translation>
    </message>
    <message>
        <source>needed for a day of your own</source>
        <translation>nötig für einen eigenen Tag</translation>
    </message>
    <message>
        <source>none: your own day, or no day</source>
        <translation>keine: Ihr eigener Tag oder keiner</translation>
    </message>
    <message>
        <source>Without a rule the day is yours. How long a pack keeps depends on the product, its dryness and the cold; follow your own code.</source>
        <translation>Ohne Regel bestimmen Sie den Tag. Wie lange eine Packung hält, hängt vom Produkt, seiner Trockenheit und der Kälte ab; halten Sie sich an Ihre Vorschriften.</translation>
    </message>
</context>
<context>
    <name>ui::pages::LostWeightDialog</name>
    <message>
        <source>%1: a weight is lost</source>
        <translation>%1: ein Gewicht fehlt</translation>
    </message>
    <message>
        <source>Enter as an &amp;estimate</source>
        <translation>Als &amp;Schätzung eintragen</translation>
    </message>
    <message>
        <source>No start weight can be found missing</source>
        <translation>Es fehlt kein Anfangsgewicht</translation>
    </message>
    <message>
        <source>Raw and hung weight are both in the book, or the piece was never weighed. A weighing that was missed later needs nothing: the curve has no fixed rhythm.</source>
        <translation>Rohgewicht und Gewicht beim Aufhängen stehen beide im Buch, oder das Stück wurde nie gewogen. Eine später versäumte Wägung braucht nichts: Die Kurve hat keinen festen Takt.</translation>
    </message>
    <message>
        <source>Which weight is lost</source>
        <translation>Welches Gewicht fehlt</translation>
    </message>
    <message>
        <source>Day it should have been taken</source>
        <translation>Tag, an dem es zu nehmen war</translation>
    </message>
    <message>
        <source>Net weight, estimated</source>
        <translation>Nettogewicht, geschätzt</translation>
    </message>
    <message>
        <source>Which weight is &amp;lost</source>
        <translation>Welches Gewicht &amp;fehlt</translation>
    </message>
    <message>
        <source>&amp;Day it should have been taken</source>
        <translation>&amp;Tag, an dem es zu nehmen war</translation>
    </message>
    <message>
        <source>&amp;Net weight, estimated</source>
        <translation>&amp;Nettogewicht, geschätzt</translation>
    </message>
    <message>
        <source>What can be said of it</source>
        <translation>Was sich darüber sagen lässt</translation>
    </message>
    <message>
        <source>Entered as an estimate it stands in the list with its range. Losses count from it and are as uncertain as it is; the curve does not lean on it. It can be undone.</source>
        <translation>Als Schätzung steht es mit seiner Spanne in der Liste. Verluste zählen von ihm an und sind so ungewiss wie es selbst; die Kurve stützt sich nicht darauf. Es lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>Or leave it unknown</source>
        <translation>Oder unbekannt lassen</translation>
    </message>
    <message>
        <source>Cancel, and nothing is made up: the days since hanging, the rate from weighing to weighing and the loss from every weight that is known are still counted. The target can be bound to one of those under Change.</source>
        <translation>„Abbrechen“, und nichts wird erfunden: Die Tage seit dem Aufhängen, das Tempo von Wägung zu Wägung und der Verlust von jedem bekannten Gewicht werden weiter gezählt. Unter „Ändern“ lässt sich das Ziel an eines davon binden.</translation>
    </message>
    <message>
        <source>Enter the day, and the estimate stands here.</source>
        <translation>Geben Sie den Tag ein, dann steht hier die Schätzung.</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>Wird gerechnet…</translation>
    </message>
    <message numerus="yes">
        <source>About %1; 8 in 10 such pieces lie between %2 and %3. From %n piece(s) of its batch and the air they hung in.</source>
        <translation>
            <numerusform>Etwa %1; 8 von 10 solchen Stücken liegen zwischen %2 und %3. Aus %n Stück seiner Charge und der Luft, in der es hing.</numerusform>
            <numerusform>Etwa %1; 8 von 10 solchen Stücken liegen zwischen %2 und %3. Aus %n Stücken seiner Charge und der Luft, in der sie hingen.</numerusform>
        </translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a raw and a hung weight are needed.</source>
        <translation>Kein Geschwisterstück kann es sagen: Es braucht zwei Stücke der Charge mit Rohgewicht und Gewicht beim Aufhängen.</translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a hung weight, five weighings and half their target lost are needed.</source>
        <translation>Kein Geschwisterstück kann es sagen: Es braucht zwei Stücke der Charge mit Gewicht beim Aufhängen, fünf Wägungen und dem halben Ziel als Verlust.</translation>
    </message>
    <message>
        <source>By its form and the air alone it lay between %1 and %2: too wide to count from.</source>
        <translation>Nach Form und Luft allein lag es zwischen %1 und %2: zu weit, um davon zu zählen.</translation>
    </message>
    <message>
        <source>There is no estimate to enter yet.</source>
        <translation>Es gibt noch keine Schätzung zum Eintragen.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MainWindow</name>
    <message>
        <source>Daily round</source>
        <translation>Tägliche Runde</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>Das Buch</translation>
    </message>
    <message>
        <source>The house</source>
        <translation>Der Betrieb</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>What was done last</source>
        <translation>Was zuletzt getan wurde</translation>
    </message>
    <message>
        <source>The open book</source>
        <translation>Das offene Buch</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Invented data: this book shows a producer that does not exist. Nothing you do here touches your own book.</source>
        <translation>Erfundene Daten: Dieses Buch zeigt einen Betrieb, den es nicht gibt. Nichts, was Sie hier tun, berührt Ihr eigenes Buch.</translation>
    </message>
    <message>
        <source>This book is open for reading only.</source>
        <translation>Dieses Buch ist nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>Demonstration book</source>
        <translation>Vorführbuch</translation>
    </message>
    <message>
        <source>%1 – Saltloft</source>
        <translation>%1 – Saltloft</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>Menüs</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Buch</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>&amp;Neues Buch…</translation>
    </message>
    <message>
        <source>&amp;Open book…</source>
        <translation>Buch ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open the &amp;demonstration book</source>
        <translation>&amp;Vorführbuch öffnen</translation>
    </message>
    <message>
        <source>&amp;Back up a copy…</source>
        <translation>&amp;Kopie sichern…</translation>
    </message>
    <message>
        <source>&amp;Print this page…</source>
        <translation>Diese Seite &amp;drucken…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>Bea&amp;rbeiten</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Bearbeiten</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <source>Go</source>
        <translation>Gehe zu</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>To the &amp;places</source>
        <translation>Zu den &amp;Orten</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Vorsicht</translation>
    </message>
    <message>
        <source>&amp;About Saltloft</source>
        <translation>Ü&amp;ber Saltloft</translation>
    </message>
    <message>
        <source>About Saltloft</source>
        <translation>Über Saltloft</translation>
    </message>
    <message>
        <source>Saltloft %1

Plan, weigh and follow cured and air-dried meat.

Free software under the GNU General Public License, version 3 or later.
It keeps records and computes; it does not decide whether food may be eaten.</source>
        <translation>Saltloft %1

Gepökeltes und luftgetrocknetes Fleisch planen, wiegen und verfolgen.

Freie Software unter der GNU General Public License, Version 3 oder später.
Sie führt Aufzeichnungen und rechnet; ob etwas gegessen werden darf, entscheidet sie nicht.</translation>
    </message>
    <message>
        <source>&amp;Guide to this page</source>
        <translation>&amp;Handbuch zu dieser Seite</translation>
    </message>
    <message>
        <source>The demonstration book is made anew each time; there is nothing to restore.</source>
        <translation>Das Vorführbuch entsteht jedes Mal neu; da gibt es nichts wiederherzustellen.</translation>
    </message>
    <message>
        <source>This book is open elsewhere. Close it there and open it again to restore a backup.</source>
        <translation>Dieses Buch ist anderswo geöffnet. Schließen Sie es dort und öffnen Sie es neu, um eine Kopie wiederherzustellen.</translation>
    </message>
    <message>
        <source>This book may only be read by you. Free the permissions of the file and its folder to restore a backup.</source>
        <translation>Dieses Buch dürfen Sie nur lesen. Geben Sie die Rechte der Datei und ihres Ordners frei, um eine Kopie wiederherzustellen.</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>Kopie &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of this book</source>
        <translation>Setzt eine frühere Kopie an die Stelle dieses Buchs</translation>
    </message>
    <message>
        <source>&amp;Check the book…</source>
        <translation>Buch &amp;prüfen…</translation>
    </message>
    <message>
        <source>Reads the book from end to end and says whether it is whole</source>
        <translation>Liest das Buch von Anfang bis Ende und sagt, ob es unversehrt ist</translation>
    </message>
    <message>
        <source>This page has nothing to print.</source>
        <translation>Diese Seite hat nichts zu drucken.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MergeDialog</name>
    <message>
        <source>Weigh %1 with others as one</source>
        <translation>%1 mit anderen gemeinsam wiegen</translation>
    </message>
    <message>
        <source>Weighed together with</source>
        <translation>Gemeinsam gewogen mit</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code of the bundle</source>
        <translation>Kürzel des Bündels</translation>
    </message>
    <message>
        <source>All together on the scale</source>
        <translation>Alle zusammen auf der Waage</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>&amp;Weighed together with</source>
        <translation>&amp;Gemeinsam gewogen mit</translation>
    </message>
    <message>
        <source>&amp;Code of the bundle</source>
        <translation>&amp;Kürzel des Bündels</translation>
    </message>
    <message>
        <source>&amp;All together on the scale</source>
        <translation>&amp;Alle zusammen auf der Waage</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tara</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Mark at least one other piece.</source>
        <translation>Markieren Sie mindestens ein weiteres Stück.</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>Mark the pieces and weigh them together; the new start and target then stand here.</source>
        <translation>Markieren Sie die Stücke und wiegen Sie sie zusammen; dann stehen hier der neue Anfang und das neue Ziel.</translation>
    </message>
    <message>
        <source>Weighed apart: %1 net; together: %2 net</source>
        <translation>Einzeln gewogen: %1 netto; zusammen: %2 netto</translation>
    </message>
    <message>
        <source>No other piece of this batch is at the same stage: there is none to weigh it with.</source>
        <translation>Kein anderes Stück dieser Charge ist im gleichen Zustand: Es gibt keines, das mitgewogen werden könnte.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixLines</name>
    <message>
        <source>Ingredient</source>
        <translation>Zutat</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>On the label</source>
        <translation>Auf dem Etikett</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Fest</translation>
    </message>
    <message>
        <source>Ingredient of line %1</source>
        <translation>Zutat der Zeile %1</translation>
    </message>
    <message>
        <source>Amount of line %1</source>
        <translation>Menge der Zeile %1</translation>
    </message>
    <message>
        <source>2.5 %, 40 g, 100 mL</source>
        <translation>2,5 %, 40 g, 100 mL</translation>
    </message>
    <message>
        <source>What line %1 is a share of</source>
        <translation>Wovon Zeile %1 ein Anteil ist</translation>
    </message>
    <message>
        <source>What the label of line %1 says</source>
        <translation>Was das Etikett der Zeile %1 sagt</translation>
    </message>
    <message>
        <source>Hold line %1 as it is</source>
        <translation>Zeile %1 festhalten</translation>
    </message>
    <message>
        <source>Take line %1 out</source>
        <translation>Zeile %1 herausnehmen</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixOwnDialog</name>
    <message>
        <source>An ingredient of my own</source>
        <translation>Eigene Zutat</translation>
    </message>
    <message>
        <source>Enter what the label says; divide the figures with semicolons. Words: nitrite, nitrate, salt, sodium, sugar, alcohol, acid, water, density (g to the mL).</source>
        <translation>Geben Sie ein, was das Etikett sagt; trennen Sie die Angaben mit Semikolons. Wörter: nitrite, nitrate, salt, sodium, sugar, alcohol, acid, water, density (g je mL).</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Sauce</source>
        <translation>Sauce</translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation>Pökelsalz</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>Sugar or syrup</source>
        <translation>Zucker oder Sirup</translation>
    </message>
    <message>
        <source>Spirit</source>
        <translation>Spirituose</translation>
    </message>
    <message>
        <source>Wine</source>
        <translation>Wein</translation>
    </message>
    <message>
        <source>Vinegar</source>
        <translation>Essig</translation>
    </message>
    <message>
        <source>Spice or herb</source>
        <translation>Gewürz oder Kraut</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>What its label says</source>
        <translation>Was das Etikett sagt</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>On the &amp;label</source>
        <translation>Auf dem &amp;Etikett</translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>Geben Sie ihr einen Namen.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixPage</name>
    <message>
        <source>Mix bench</source>
        <translation>Mischtisch</translation>
    </message>
    <message>
        <source>The meat and the recipe</source>
        <translation>Fleisch und Rezeptur</translation>
    </message>
    <message>
        <source>Weight of the meat</source>
        <translation>Gewicht des Fleisches</translation>
    </message>
    <message>
        <source>1500 g; several pieces: 820 g; 1180 g</source>
        <translation>1500 g; mehrere Stücke: 820 g; 1180 g</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Rezeptur</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Fassung</translation>
    </message>
    <message>
        <source>Name of the recipe</source>
        <translation>Name der Rezeptur</translation>
    </message>
    <message>
        <source>&amp;Weight of the meat</source>
        <translation>&amp;Gewicht des Fleisches</translation>
    </message>
    <message>
        <source>&amp;Recipe</source>
        <translation>&amp;Rezeptur</translation>
    </message>
    <message>
        <source>&amp;Version</source>
        <translation>&amp;Fassung</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Add a line</source>
        <translation>Zei&amp;le hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Ingredient of my own...</source>
        <translation>Eigene Zu&amp;tat...</translation>
    </message>
    <message>
        <source>How, and against which limits</source>
        <translation>Wie, und an welchen Grenzwerten geprüft</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>keine gewählt</translation>
    </message>
    <message>
        <source>The scale shows steps of</source>
        <translation>Teilung der Waage</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>Pickle taken up</source>
        <translation>Aufgenommene Lake</translation>
    </message>
    <message>
        <source>10 % of the meat</source>
        <translation>10 % des Fleisches</translation>
    </message>
    <message>
        <source>Pickle taken &amp;up</source>
        <translation>A&amp;ufgenommene Lake</translation>
    </message>
    <message>
        <source>Expected loss of weight</source>
        <translation>Erwarteter Gewichtsverlust</translation>
    </message>
    <message>
        <source>35 %, for limits on finished meat</source>
        <translation>35 %, für Grenzwerte am fertigen Fleisch</translation>
    </message>
    <message>
        <source>S&amp;kin on</source>
        <translation>Mit S&amp;chwarte</translation>
    </message>
    <message>
        <source>Skin on</source>
        <translation>Mit Schwarte</translation>
    </message>
    <message>
        <source>&amp;Fatty cut (belly, jowl)</source>
        <translation>Fettes Teil&amp;stück (Bauch, Backe)</translation>
    </message>
    <message>
        <source>Fatty cut (belly, jowl)</source>
        <translation>Fettes Teilstück (Bauch, Backe)</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>&amp;Methode</translation>
    </message>
    <message>
        <source>&amp;Limits</source>
        <translation>Grenz&amp;werte</translation>
    </message>
    <message>
        <source>&amp;Scale step</source>
        <translation>Te&amp;ilung der Waage</translation>
    </message>
    <message>
        <source>Expected l&amp;oss</source>
        <translation>&amp;Erwarteter Verlust</translation>
    </message>
    <message>
        <source>Find the amounts</source>
        <translation>Mengen finden</translation>
    </message>
    <message>
        <source>Tick Hold on the lines that must stay, say what you want, and the other lines are found. What cannot be met is named.</source>
        <translation>Haken Sie „Fest“ bei den Zeilen an, die bleiben müssen, und sagen Sie, was Sie wollen; die anderen Zeilen werden gefunden. Was nicht zu erfüllen ist, wird genannt.</translation>
    </message>
    <message>
        <source>Salt wanted, of the meat</source>
        <translation>Gewünschtes Salz, vom Fleisch</translation>
    </message>
    <message>
        <source>2.75 %</source>
        <translation>2,75 %</translation>
    </message>
    <message>
        <source>Nitrite wanted, of the meat</source>
        <translation>Gewünschtes Nitrit, vom Fleisch</translation>
    </message>
    <message>
        <source>120 ppm</source>
        <translation>120 ppm</translation>
    </message>
    <message>
        <source>Salt wan&amp;ted</source>
        <translation>Gewünschtes Sal&amp;z</translation>
    </message>
    <message>
        <source>Nitrite wante&amp;d</source>
        <translation>Gewünschtes Nitri&amp;t</translation>
    </message>
    <message>
        <source>&amp;Find the rest</source>
        <translation>Den Rest fin&amp;den</translation>
    </message>
    <message>
        <source>Put on the scale</source>
        <translation>Auf die Waage</translation>
    </message>
    <message>
        <source>What to put on the scale</source>
        <translation>Was auf die Waage kommt</translation>
    </message>
    <message>
        <source>What that is</source>
        <translation>Was das ist</translation>
    </message>
    <message>
        <source>Compare with another recipe</source>
        <translation>Mit einer anderen Rezeptur vergleichen</translation>
    </message>
    <message>
        <source>&amp;Compare with</source>
        <translation>&amp;Vergleichen mit</translation>
    </message>
    <message>
        <source>What the meat gets</source>
        <translation>Was das Fleisch bekommt</translation>
    </message>
    <message>
        <source>Against the limits</source>
        <translation>An den Grenzwerten</translation>
    </message>
    <message>
        <source>The dose against the limits</source>
        <translation>Die Dosis an den Grenzwerten</translation>
    </message>
    <message>
        <source>Look at this first</source>
        <translation>Zuerst hierauf sehen</translation>
    </message>
    <message>
        <source>Why this version</source>
        <translation>Warum diese Fassung</translation>
    </message>
    <message>
        <source>what changed, for your later self</source>
        <translation>was anders ist, für Sie selbst später</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>War&amp;um</translation>
    </message>
    <message>
        <source>&amp;Keep this recipe</source>
        <translation>Rezeptur &amp;ablegen</translation>
    </message>
    <message>
        <source>These sums are no verdict on the food. Local codes, licensed practice and laboratory measurement come first.</source>
        <translation>Diese Rechnungen sind kein Urteil über das Lebensmittel. Örtliche Vorschriften, die Praxis zugelassener Betriebe und Labormessung gehen vor.</translation>
    </message>
    <message>
        <source>What to weigh for this meat, and what dose that really is</source>
        <translation>Was für dieses Fleisch abzuwiegen ist, und welche Dosis das wirklich ist</translation>
    </message>
    <message>
        <source>a new one</source>
        <translation>eine neue</translation>
    </message>
    <message>
        <source>no other</source>
        <translation>keine andere</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1, Fassung %2</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>Fassung %1</translation>
    </message>
    <message>
        <source>version %1: %2</source>
        <translation>Fassung %1: %2</translation>
    </message>
    <message>
        <source>Enter the weight of the meat, and here stands what to weigh for it.</source>
        <translation>Geben Sie das Gewicht des Fleisches ein, dann steht hier, was dafür abzuwiegen ist.</translation>
    </message>
    <message>
        <source>Read, and taken on</source>
        <translation>Gelesen und quittiert</translation>
    </message>
    <message>
        <source>Caution read and taken on: %1</source>
        <translation>Warnung gelesen und quittiert: %1</translation>
    </message>
    <message>
        <source>Stopped. To mend before this can be used: %1.</source>
        <translation>Angehalten. Zu beheben, bevor es gebraucht werden kann: %1.</translation>
    </message>
    <message>
        <source>Cautions to read and take on by name: %1.</source>
        <translation>Warnungen, die zu lesen und namentlich zu quittieren sind: %1.</translation>
    </message>
    <message>
        <source>Nothing stands open.</source>
        <translation>Nichts ist offen.</translation>
    </message>
    <message>
        <source>Enter the weight of the meat first.</source>
        <translation>Geben Sie erst das Gewicht des Fleisches ein.</translation>
    </message>
    <message>
        <source>Say how much salt or nitrite you want.</source>
        <translation>Sagen Sie, wie viel Salz oder Nitrit Sie wollen.</translation>
    </message>
    <message>
        <source>Mend the stops first: something is not known yet.</source>
        <translation>Beheben Sie erst, was angehalten hat: Etwas ist noch nicht bekannt.</translation>
    </message>
    <message>
        <source>Found: the lines not held were changed.</source>
        <translation>Gefunden: Die nicht festgehaltenen Zeilen wurden geändert.</translation>
    </message>
    <message>
        <source>Give the recipe a name first.</source>
        <translation>Geben Sie der Rezeptur erst einen Namen.</translation>
    </message>
    <message>
        <source>Nothing has changed since the last version.</source>
        <translation>Seit der letzten Fassung hat sich nichts geändert.</translation>
    </message>
    <message>
        <source>Use it for a &amp;batch…</source>
        <translation>Für eine &amp;Charge verwenden…</translation>
    </message>
    <message>
        <source>The salt of this recipe cannot be changed by itself: it is held, or comes with the curing salt or a pickle. Say it as a wish and find the rest.</source>
        <translation>Das Salz dieser Rezeptur lässt sich nicht für sich ändern: Es ist festgehalten oder kommt mit dem Pökelsalz oder einer Lake. Nennen Sie es als Wunsch und lassen Sie den Rest finden.</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>Mischblatt</translation>
    </message>
    <message>
        <source>Read the cautions and take each of them on first.</source>
        <translation>Lesen Sie zuerst die Warnungen und quittieren Sie jede.</translation>
    </message>
    <message>
        <source>The batch&apos;s record names this recipe and the cautions now.</source>
        <translation>Das Chargenprotokoll nennt jetzt diese Rezeptur und die Warnungen.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixUseDialog</name>
    <message>
        <source>Use %1 for a batch</source>
        <translation>%1 für eine Charge verwenden</translation>
    </message>
    <message>
        <source>The batch&apos;s record then names this version as the recipe it was salted with, and prints each caution with who took it on and when.</source>
        <translation>Das Chargenprotokoll nennt dann diese Fassung als die Rezeptur, mit der gesalzen wurde, und druckt zu jeder Warnung, wer sie quittiert hat und wann.</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Taken on by</source>
        <translation>Quittiert von</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>&amp;Batch</source>
        <translation>&amp;Charge</translation>
    </message>
    <message>
        <source>&amp;Taken on by</source>
        <translation>&amp;Quittiert von</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Warum</translation>
    </message>
    <message numerus="yes">
        <source>%n caution(s) taken on</source>
        <translation>
            <numerusform>%n Warnung quittiert</numerusform>
            <numerusform>%n Warnungen quittiert</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Put it in the book</source>
        <translation>&amp;Ins Buch eintragen</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first; this recipe is kept meanwhile.</source>
        <translation>Es gibt noch keine offene Charge. Beginnen Sie zuerst eine; diese Rezeptur bleibt inzwischen erhalten.</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first.</source>
        <translation>Es gibt noch keine offene Charge. Beginnen Sie zuerst eine.</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>Sagen Sie, wer die Warnungen quittiert: den Namen wählen oder eintippen.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MonthView</name>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
</context>
<context>
    <name>ui::pages::NewBatchPage</name>
    <message>
        <source>New batch</source>
        <translation>Neue Charge</translation>
    </message>
    <message>
        <source>The meat</source>
        <translation>Das Fleisch</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>Chargenkürzel</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Tier</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Los des Lieferanten</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>Batch &amp;code</source>
        <translation>Chargen&amp;kürzel</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Produkt</translation>
    </message>
    <message>
        <source>&amp;Started</source>
        <translation>&amp;Begonnen</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Tier</translation>
    </message>
    <message>
        <source>S&amp;upplier</source>
        <translation>Lieferan&amp;t</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>L&amp;os des Lieferanten</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>Die Stücke</translation>
    </message>
    <message>
        <source>Raw weight as it goes into the cure, without wrapping. Measure the thickness at the thickest point.</source>
        <translation>Rohgewicht, wie es ins Pökeln geht, ohne Verpackung. Messen Sie die Dicke an der dicksten Stelle.</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>Ein Stück &amp;mehr</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>Ein Stück &amp;weniger</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Angestrebter Verlust</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Gezählt ab</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>no plan</source>
        <translation>kein Plan</translation>
    </message>
    <message>
        <source>Loss aimed f&amp;or</source>
        <translation>Angestrebter &amp;Verlust</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>Ge&amp;zählt ab</translation>
    </message>
    <message>
        <source>Pl&amp;an</source>
        <translation>Pl&amp;an</translation>
    </message>
    <message>
        <source>The cure: dry, weighed, all of it taken up</source>
        <translation>Das Pökeln: trocken, abgewogen, alles aufgenommen</translation>
    </message>
    <message>
        <source>Shares are of the raw weight. Curing salt counts by the strength on its packet, not by its name or colour.</source>
        <translation>Anteile gelten für das Rohgewicht. Pökelsalz zählt nach der Stärke auf seiner Packung, nicht nach Name oder Farbe.</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation>Pökelsalz</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Curing salt, dose</source>
        <translation>Pökelsalz, Dosis</translation>
    </message>
    <message>
        <source>Nitrite on the label</source>
        <translation>Nitrit auf dem Etikett</translation>
    </message>
    <message>
        <source>as listed</source>
        <translation>wie verzeichnet</translation>
    </message>
    <message>
        <source>Nitrate on the label</source>
        <translation>Nitrat auf dem Etikett</translation>
    </message>
    <message>
        <source>Sal&amp;t</source>
        <translation>&amp;Salz</translation>
    </message>
    <message>
        <source>Su&amp;gar</source>
        <translation>Z&amp;ucker</translation>
    </message>
    <message>
        <source>Weighed &amp;on</source>
        <translation>&amp;Gewogen auf</translation>
    </message>
    <message>
        <source>&amp;Dose of it</source>
        <translation>&amp;Dosis davon</translation>
    </message>
    <message>
        <source>N&amp;itrite on the label</source>
        <translation>N&amp;itrit auf dem Etikett</translation>
    </message>
    <message>
        <source>Nitrat&amp;e on the label</source>
        <translation>Nit&amp;rat auf dem Etikett</translation>
    </message>
    <message>
        <source>Mix sheet: what to weigh for each piece</source>
        <translation>Mischblatt: was für jedes Stück abzuwiegen ist</translation>
    </message>
    <message>
        <source>Start the &amp;batch</source>
        <translation>&amp;Charge beginnen</translation>
    </message>
    <message>
        <source>Code of piece %1</source>
        <translation>Kürzel von Stück %1</translation>
    </message>
    <message>
        <source>Cut of piece %1</source>
        <translation>Teilstück von Stück %1</translation>
    </message>
    <message>
        <source>Raw weight of piece %1</source>
        <translation>Rohgewicht von Stück %1</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>Dicke von Stück %1</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>Form von Stück %1</translation>
    </message>
    <message>
        <source>code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>cut or description</source>
        <translation>Teilstück oder Beschreibung</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>Rohgewicht</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Meat, pieces, cure and plan of a new batch</source>
        <translation>Fleisch, Stücke, Pökeln und Plan einer neuen Charge</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Without a plan there are no dated tasks; weighings and forecasts work all the same.</source>
        <translation>Ohne Plan gibt es keine datierten Aufgaben; Wägungen und Prognosen gehen trotzdem.</translation>
    </message>
    <message>
        <source>Enter a raw weight to see what to put on the scale.</source>
        <translation>Geben Sie ein Rohgewicht ein, um zu sehen, was auf die Waage kommt.</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>Abwiegen</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Alles zusammen</translation>
    </message>
    <message>
        <source>Off by the scale&apos;s step</source>
        <translation>Fehler durch die Teilung der Waage</translation>
    </message>
    <message>
        <source>up to ± %1</source>
        <translation>bis zu ± %1</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>Fleisch: %1</translation>
    </message>
    <message>
        <source>salt in all: %1 of the meat</source>
        <translation>Salz insgesamt: %1 des Fleisches</translation>
    </message>
    <message>
        <source>nitrite going in: %1 (as sodium nitrite)</source>
        <translation>zugesetztes Nitrit: %1 (als Natriumnitrit)</translation>
    </message>
    <message>
        <source>nitrate going in: %1 (as sodium nitrate)</source>
        <translation>zugesetztes Nitrat: %1 (als Natriumnitrat)</translation>
    </message>
    <message>
        <source>Within %1, by %2.</source>
        <translation>Innerhalb von %1, nach %2.</translation>
    </message>
    <message>
        <source>Not to be computed from the recipe: %1.</source>
        <translation>Aus der Rezeptur nicht berechenbar: %1.</translation>
    </message>
    <message>
        <source>No limits are chosen; choose those of your country in Preferences.</source>
        <translation>Es sind keine Grenzwerte gewählt; wählen Sie die Ihres Landes in den Einstellungen.</translation>
    </message>
    <message>
        <source>A field needs mending; it says how.</source>
        <translation>Ein Feld ist zu berichtigen; dort steht, wie.</translation>
    </message>
    <message>
        <source>The cure has a stop above. Mend it first.</source>
        <translation>Oben steht beim Pökeln ein Halt. Beheben Sie ihn zuerst.</translation>
    </message>
    <message numerus="yes">
        <source>%n stage(s), from %1 to about %2.</source>
        <translation>
            <numerusform>%n Phase, von %1 bis etwa %2.</numerusform>
            <numerusform>%n Phasen, von %1 bis etwa %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::NoteDialog</name>
    <message>
        <source>Add a note</source>
        <translation>Notiz hinzufügen</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Worüber</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation>&amp;Worüber</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Add a &amp;photo…</source>
        <translation>&amp;Foto hinzufügen…</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Foto hinzufügen</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Bilder (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>This photo cannot be read or is larger than 12 MB. Choose a smaller copy.</source>
        <translation>Dieses Foto ist nicht lesbar oder größer als 12 MB. Wählen Sie eine kleinere Kopie.</translation>
    </message>
    <message>
        <source>Write a few words or add a photo.</source>
        <translation>Schreiben Sie ein paar Worte oder fügen Sie ein Foto hinzu.</translation>
    </message>
    <message>
        <source>%1 is not a picture that can be shown. Choose a JPEG or PNG file.</source>
        <translation>%1 ist kein Bild, das sich zeigen lässt. Wählen Sie eine JPEG- oder PNG-Datei.</translation>
    </message>
</context>
<context>
    <name>ui::pages::OpenTroubleDialog</name>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>Kopie &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in its place; the file as it is now is kept under another name.</source>
        <translation>Setzt eine frühere Kopie an seine Stelle; die jetzige Datei bleibt unter anderem Namen erhalten.</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>In ein neues Buch &amp;retten…</translation>
    </message>
    <message>
        <source>Carries every entry that can still be read into a new book; this one is not changed.</source>
        <translation>Trägt jeden noch lesbaren Eintrag in ein neues Buch; dieses wird nicht verändert.</translation>
    </message>
    <message>
        <source>&amp;Open another book…</source>
        <translation>Anderes Buch ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Leaves this file as it is.</source>
        <translation>Lässt diese Datei, wie sie ist.</translation>
    </message>
    <message>
        <source>Make a &amp;new book…</source>
        <translation>&amp;Neues Buch anlegen…</translation>
    </message>
    <message>
        <source>Starts an empty book in another file.</source>
        <translation>Beginnt ein leeres Buch in einer anderen Datei.</translation>
    </message>
    <message>
        <source>The book did not open</source>
        <translation>Das Buch ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
</context>
<context>
    <name>ui::pages::OutcomeDialog</name>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>How %1 came out</source>
        <translation>Wie %1 geworden ist</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>Texture</source>
        <translation>Konsistenz</translation>
    </message>
    <message>
        <source>What to change next time</source>
        <translation>Was nächstes Mal zu ändern ist</translation>
    </message>
    <message>
        <source>&amp;Salt</source>
        <translation>&amp;Salz</translation>
    </message>
    <message>
        <source>&amp;Texture</source>
        <translation>&amp;Konsistenz</translation>
    </message>
    <message>
        <source>&amp;What to change next time</source>
        <translation>&amp;Was nächstes Mal zu ändern ist</translation>
    </message>
    <message>
        <source>The next plan, mix and batch of this product show what this suggests. Nothing is changed unless you say so.</source>
        <translation>Der nächste Plan, die nächste Mischung und die nächste Charge dieses Produkts zeigen, was daraus folgt. Nichts wird geändert, ohne dass Sie es sagen.</translation>
    </message>
    <message>
        <source>Say how it came out, or write a few words.</source>
        <translation>Sagen Sie, wie sie geworden ist, oder schreiben Sie ein paar Worte.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackChangeDialog</name>
    <message>
        <source>Change pack %1</source>
        <translation>Packung %1 ändern</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>Kürzel auf der Packung</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Wo sie liegt</translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation>Angebrochen am</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>&amp;Kürzel auf der Packung</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>Wo sie &amp;liegt</translation>
    </message>
    <message>
        <source>&amp;Opened on</source>
        <translation>&amp;Angebrochen am</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>Lagern &amp;bis</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>Wi&amp;e</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>Lager&amp;regel</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>Waru&amp;m dieser Tag</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackDialog</name>
    <message>
        <source>Pack a finished piece</source>
        <translation>Fertiges Stück verpacken</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>Kürzel auf der Packung</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Packed on</source>
        <translation>Verpackt am</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Wo sie liegt</translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation>&amp;Stück</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>&amp;Kürzel auf der Packung</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>W&amp;ie</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>&amp;Gewicht</translation>
    </message>
    <message>
        <source>Packed &amp;on</source>
        <translation>Verpackt a&amp;m</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>Wo sie &amp;liegt</translation>
    </message>
    <message>
        <source>No piece is finished yet. Sign a piece as done in its review first.</source>
        <translation>Noch ist kein Stück fertig. Unterzeichnen Sie erst in seiner Beurteilung, dass es fertig ist.</translation>
    </message>
    <message>
        <source>This day is your own. Say why in a few words, or choose a rule.</source>
        <translation>Dieser Tag ist Ihr eigener. Sagen Sie in wenigen Worten, warum, oder wählen Sie eine Regel.</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>Lager&amp;regel</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>Lagern &amp;bis</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>W&amp;arum dieser Tag</translation>
    </message>
    <message>
        <source>Such a day says when to look, not what to think of it. Look, smell and decide at each opening.</source>
        <translation>Ein solcher Tag sagt, wann man hinsieht, nicht, was davon zu halten ist. Sehen Sie hin, riechen Sie und entscheiden Sie bei jedem Öffnen.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PastBox</name>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message>
        <source>Use it: %1</source>
        <translation>Übernehmen: %1</translation>
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
        <translation>Namen wählen oder eintippen</translation>
    </message>
</context>
<context>
    <name>ui::pages::PersonDialog</name>
    <message>
        <source>Change a person</source>
        <translation>Person ändern</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Person hinzufügen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Namenszeichen</translation>
    </message>
    <message>
        <source>&amp;Works here now</source>
        <translation>&amp;Arbeitet jetzt hier</translation>
    </message>
    <message>
        <source>Works here now</source>
        <translation>Arbeitet jetzt hier</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Initials, as signed</source>
        <translation>Namens&amp;zeichen, wie unterzeichnet</translation>
    </message>
    <message>
        <source>Enter a name and the initials to sign with.</source>
        <translation>Geben Sie einen Namen und das Namenszeichen zum Unterzeichnen ein.</translation>
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
        <translation>&amp;Vorheriges</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Nächstes</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>Kopie &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>%1 of %2 · %3 · %4 · %5</source>
        <translation>%1 von %2 · %3 · %4 · %5</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>Save a copy of the photo</source>
        <translation>Kopie des Fotos speichern</translation>
    </message>
    <message>
        <source>The copy is in %1.</source>
        <translation>Die Kopie liegt in %1.</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>%1 ließ sich nicht schreiben. Wählen Sie einen anderen Ort.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoStrip</name>
    <message>
        <source>The photo %1 cannot be shown: it is damaged, or of a kind that cannot be read here. Save a copy to try it elsewhere.</source>
        <translation>Das Foto %1 lässt sich nicht zeigen: Es ist beschädigt oder von einer Art, die hier nicht lesbar ist. Speichern Sie eine Kopie, um es anderswo zu versuchen.</translation>
    </message>
    <message>
        <source>The photo %1 is no longer in the book. The note itself is kept.</source>
        <translation>Das Foto %1 ist nicht mehr im Buch. Die Notiz selbst bleibt.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>%1: not readable</source>
        <translation>%1: nicht lesbar</translation>
    </message>
    <message>
        <source>Photo of %1, %2</source>
        <translation>Foto von %1, %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::PieceDialog</name>
    <message>
        <source>Chamber</source>
        <translation>Kammer</translation>
    </message>
    <message>
        <source>not in a chamber</source>
        <translation>in keiner Kammer</translation>
    </message>
    <message>
        <source>Add a piece</source>
        <translation>Stück hinzufügen</translation>
    </message>
    <message>
        <source>Change piece %1</source>
        <translation>Stück %1 ändern</translation>
    </message>
    <message>
        <source>Code on the tag</source>
        <translation>Kürzel auf dem Anhänger</translation>
    </message>
    <message>
        <source>&amp;Code on the tag</source>
        <translation>&amp;Kürzel auf dem Anhänger</translation>
    </message>
    <message>
        <source>Cut or description</source>
        <translation>Teilstück oder Beschreibung</translation>
    </message>
    <message>
        <source>C&amp;ut or description</source>
        <translation>&amp;Teilstück oder Beschreibung</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>&amp;Form</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>&amp;Dicke</translation>
    </message>
    <message>
        <source>Raw weight</source>
        <translation>Rohgewicht</translation>
    </message>
    <message>
        <source>&amp;Raw weight</source>
        <translation>&amp;Rohgewicht</translation>
    </message>
    <message>
        <source>Fat, as a share of the raw piece</source>
        <translation>Fett, als Anteil des rohen Stücks</translation>
    </message>
    <message>
        <source>&amp;Fat share, if known</source>
        <translation>F&amp;ettanteil, wenn bekannt</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Schwarte</translation>
    </message>
    <message>
        <source>S&amp;kin</source>
        <translation>&amp;Schwarte</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Angestrebter Verlust</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>Angestrebter &amp;Verlust</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Gezählt ab</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>Ge&amp;zählt ab</translation>
    </message>
    <message>
        <source>Cha&amp;mber</source>
        <translation>Ka&amp;mmer</translation>
    </message>
    <message>
        <source>Hook, rail or shelf</source>
        <translation>Haken, Schiene oder Brett</translation>
    </message>
    <message>
        <source>&amp;Hook, rail or shelf</source>
        <translation>&amp;Haken, Schiene oder Brett</translation>
    </message>
    <message>
        <source>Order in the weigh-in round</source>
        <translation>Platz in der Wiegerunde</translation>
    </message>
    <message>
        <source>&amp;Order in the round</source>
        <translation>&amp;Platz in der Runde</translation>
    </message>
    <message>
        <source>Give the piece a code: two or three letters or digits.</source>
        <translation>Geben Sie dem Stück ein Kürzel: zwei oder drei Buchstaben oder Ziffern.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PiecePage</name>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>What &amp;happened</source>
        <translation>Was &amp;geschah</translation>
    </message>
    <message>
        <source>What happened to it</source>
        <translation>Was mit ihm geschah</translation>
    </message>
    <message>
        <source>Is it &amp;done?</source>
        <translation>Ist es &amp;fertig?</translation>
    </message>
    <message>
        <source>&amp;Weigh…</source>
        <translation>&amp;Wiegen…</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Was das Diagramm zeigt</translation>
    </message>
    <message>
        <source>net weight</source>
        <translation>Nettogewicht</translation>
    </message>
    <message>
        <source>Time axis</source>
        <translation>Zeitachse</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>nach Datum</translation>
    </message>
    <message>
        <source>by days since hung</source>
        <translation>nach Tagen seit dem Aufhängen</translation>
    </message>
    <message>
        <source>Show a&amp;ll</source>
        <translation>A&amp;lles zeigen</translation>
    </message>
    <message>
        <source>Save the c&amp;hart…</source>
        <translation>Diagramm speic&amp;hern…</translation>
    </message>
    <message>
        <source>Records of the piece</source>
        <translation>Aufzeichnungen des Stücks</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Wägungen</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Pieces cut from one another</source>
        <translation>Auseinander geschnittene Stücke</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>One piece in full</source>
        <translation>Ein Stück im Ganzen</translation>
    </message>
    <message>
        <source>Enter corrects the marked weighing; the old entry stays.</source>
        <translation>Enter berichtigt die markierte Wägung; der alte Eintrag bleibt.</translation>
    </message>
    <message>
        <source>C&amp;orrect…</source>
        <translation>Be&amp;richtigen…</translation>
    </message>
    <message>
        <source>Take &amp;back…</source>
        <translation>&amp;Zurücknehmen…</translation>
    </message>
    <message>
        <source>Add a &amp;note…</source>
        <translation>&amp;Notiz hinzufügen…</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Was daran ist</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Auf der Waage</translation>
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
        <translation>Verloren</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>Oberfläche nass</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>Netto davor</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>Netto danach</translation>
    </message>
    <message>
        <source>Tare after</source>
        <translation>Tara danach</translation>
    </message>
    <message>
        <source>taken back. %1</source>
        <translation>zurückgenommen. %1</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Worüber</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
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
        <translation>Charge %1, %2</translation>
    </message>
    <message>
        <source>Loss curve of %1</source>
        <translation>Verlustkurve von %1</translation>
    </message>
    <message>
        <source>lost of the %1 (%2)</source>
        <translation>verloren: %1 (%2)</translation>
    </message>
    <message>
        <source>No weight to count a loss from yet.</source>
        <translation>Noch kein Gewicht, von dem ein Verlust zählt.</translation>
    </message>
    <message>
        <source>Target %1: %2 net, %3 on the scale</source>
        <translation>Ziel %1: %2 netto, %3 auf der Waage</translation>
    </message>
    <message>
        <source>No target set.</source>
        <translation>Kein Ziel gesetzt.</translation>
    </message>
    <message>
        <source>At target: %1</source>
        <translation>Am Ziel: %1</translation>
    </message>
    <message>
        <source>Levels off at %1 to %2</source>
        <translation>Flacht ab bei %1 bis %2</translation>
    </message>
    <message>
        <source>Signed as done.</source>
        <translation>Als fertig unterzeichnet.</translation>
    </message>
    <message>
        <source>%1 of the %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Lost: %1</source>
        <translation>Verloren: %1</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>corrected later</source>
        <translation>später berichtigt</translation>
    </message>
    <message>
        <source>a correction</source>
        <translation>eine Berichtigung</translation>
    </message>
    <message>
        <source>Weighings (%1)</source>
        <translation>Wägungen (%1)</translation>
    </message>
    <message>
        <source>Events (%1)</source>
        <translation>Ereignisse (%1)</translation>
    </message>
    <message>
        <source>Notes (%1)</source>
        <translation>Notizen (%1)</translation>
    </message>
    <message>
        <source>Family (%1)</source>
        <translation>Familie (%1)</translation>
    </message>
    <message>
        <source>This entry was corrected or taken back already; correct the newer one.</source>
        <translation>Dieser Eintrag wurde schon berichtigt oder zurückgenommen; berichtigen Sie den neueren.</translation>
    </message>
    <message>
        <source>%1: %2 on the scale</source>
        <translation>%1: %2 auf der Waage</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Diagramm speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
        <translation>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</translation>
    </message>
    <message>
        <source>The chart is in %1.</source>
        <translation>Das Diagramm liegt in %1.</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>%1 ließ sich nicht schreiben. Wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
        <source>finish it in warm air…</source>
        <translation>in warmer Luft nachtrocknen…</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven: how long, and how long where microbes grow.</source>
        <translation>Ein Dörrgerät oder ein Backofen auf kleiner Stufe: wie lange, und wie lange dort, wo Mikroben wachsen.</translation>
    </message>
    <message>
        <source>the fridge or chamber failed…</source>
        <translation>Kühlschrank oder Kammer fiel aus…</translation>
    </message>
    <message>
        <source>Power cut, door left open: what each piece there was like, and how warm it became.</source>
        <translation>Stromausfall, Tür offen: wie weit jedes Stück dort war und wie warm es wurde.</translation>
    </message>
    <message>
        <source>Enter on a note with a photo shows it large.</source>
        <translation>Enter auf einer Notiz mit Foto zeigt es groß.</translation>
    </message>
    <message>
        <source>%1 is in no chamber of the book. Choose its chamber under Change first.</source>
        <translation>%1 ist in keiner Kammer des Buchs. Wählen Sie erst unter „Ändern“ seine Kammer.</translation>
    </message>
    <message>
        <source>This note has no photo.</source>
        <translation>Diese Notiz hat kein Foto.</translation>
    </message>
    <message>
        <source>What &amp;if…</source>
        <translation>Was &amp;wäre, wenn…</translation>
    </message>
    <message>
        <source>a weight is lost…</source>
        <translation>ein Gewicht fehlt…</translation>
    </message>
    <message>
        <source>A start weight was never written down: what its siblings say it was.</source>
        <translation>Ein Anfangsgewicht wurde nie notiert: was die Geschwisterstücke darüber sagen.</translation>
    </message>
    <message>
        <source>Pieces on the chart</source>
        <translation>Stücke im Diagramm</translation>
    </message>
    <message>
        <source>&amp;Earlier pieces</source>
        <translation>&amp;Frühere Stücke</translation>
    </message>
    <message>
        <source>Own earlier pieces for comparison</source>
        <translation>Eigene frühere Stücke zum Vergleich</translation>
    </message>
    <message>
        <source>this piece alone</source>
        <translation>nur dieses Stück</translation>
    </message>
    <message>
        <source>with its batch</source>
        <translation>mit seiner Charge</translation>
    </message>
    <message>
        <source>with its chamber</source>
        <translation>mit seiner Kammer</translation>
    </message>
    <message>
        <source>with its product</source>
        <translation>mit seinem Produkt</translation>
    </message>
    <message>
        <source>with chosen pieces…</source>
        <translation>mit gewählten Stücken…</translation>
    </message>
    <message>
        <source>Your own finished pieces of the same product and shape, as if hung on the same day</source>
        <translation>Ihre eigenen fertigen Stücke desselben Produkts und derselben Form, als wären sie am selben Tag aufgehängt</translation>
    </message>
    <message>
        <source>No piece of the same product and shape was finished yet.</source>
        <translation>Noch kein Stück desselben Produkts und derselben Form wurde fertig.</translation>
    </message>
    <message>
        <source>loss from the %1</source>
        <translation>Verlust ab: %1</translation>
    </message>
    <message>
        <source>Loss curves of %1 and others</source>
        <translation>Verlustkurven von %1 und anderen</translation>
    </message>
    <message>
        <source>No other such piece was hung and weighed since.</source>
        <translation>Kein anderes solches Stück wurde aufgehängt und seither gewogen.</translation>
    </message>
    <message>
        <source>Not drawn, as one chart cannot tell more apart: %1 that hung before.</source>
        <translation>Nicht gezeichnet, weil ein Diagramm nicht mehr unterscheidbar zeigt: %1 von früher.</translation>
    </message>
    <message>
        <source>Not drawn, as this weight of theirs is not known: %1.</source>
        <translation>Nicht gezeichnet, weil dieses Gewicht von ihnen nicht bekannt ist: %1.</translation>
    </message>
    <message numerus="yes">
        <source>Leans on %n of your own finished piece(s) of this product.</source>
        <translation>
            <numerusform>Stützt sich auf eines Ihrer eigenen fertigen Stücke dieses Produkts.</numerusform>
            <numerusform>Stützt sich auf %n Ihrer eigenen fertigen Stücke dieses Produkts.</numerusform>
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
        <translation>Als Kalen&amp;derdatei speichern…</translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation>Überneh&amp;men</translation>
    </message>
    <message>
        <source>The stages</source>
        <translation>Die Phasen</translation>
    </message>
    <message>
        <source>Stages of the plan</source>
        <translation>Phasen des Plans</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Wie lange</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Beruht auf</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Into the book</source>
        <translation>Ins Buch</translation>
    </message>
    <message>
        <source>Name of the batch</source>
        <translation>Name der Charge</translation>
    </message>
    <message>
        <source>optional, e.g. Winter coppa</source>
        <translation>freiwillig, z. B. Wintercoppa</translation>
    </message>
    <message>
        <source>Name of the &amp;batch</source>
        <translation>Name der &amp;Charge</translation>
    </message>
    <message>
        <source>These weights are &amp;just off the scale</source>
        <translation>Gewichte &amp;gerade gewogen</translation>
    </message>
    <message>
        <source>These weights are just off the scale</source>
        <translation>Gewichte gerade gewogen</translation>
    </message>
    <message>
        <source>&amp;Put the batch in the book</source>
        <translation>Charge ins Buch &amp;eintragen</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>nicht entschieden</translation>
    </message>
    <message>
        <source>Template: %1.</source>
        <translation>Vorlage: %1.</translation>
    </message>
    <message>
        <source>Cure rules for the thickest piece, side by side: %1</source>
        <translation>Pökelregeln für das dickste Stück, nebeneinander: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>With “%1”</source>
        <translation>Mit „%1“</translation>
    </message>
    <message>
        <source>Rounds of “%1”</source>
        <translation>Runden von „%1“</translation>
    </message>
    <message>
        <source>There is no plan to save: the day cannot be met.</source>
        <translation>Es gibt keinen Plan zu speichern: Der Tag ist nicht einzuhalten.</translation>
    </message>
    <message>
        <source>When to begin, and what to do when</source>
        <translation>Wann zu beginnen ist und was wann zu tun ist</translation>
    </message>
    <message>
        <source>What it will be</source>
        <translation>Was es werden soll</translation>
    </message>
    <message>
        <source>Kind of product</source>
        <translation>Art des Produkts</translation>
    </message>
    <message>
        <source>Your name for the product</source>
        <translation>Ihr Name für das Produkt</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Angestrebter Verlust</translation>
    </message>
    <message>
        <source>Where it will hang</source>
        <translation>Wo es hängen wird</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>Your &amp;name for it</source>
        <translation>&amp;Ihr Name dafür</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>Angestrebter &amp;Verlust</translation>
    </message>
    <message>
        <source>&amp;Hangs in</source>
        <translation>&amp;Hängt in</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>Die Stücke</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>Ein Stück &amp;mehr</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>Ein Stück &amp;weniger</translation>
    </message>
    <message>
        <source>Weight of piece %1</source>
        <translation>Gewicht von Stück %1</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>Dicke von Stück %1</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>Form von Stück %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>&amp;Start on</source>
        <translation>&amp;Beginnen am</translation>
    </message>
    <message>
        <source>Start on</source>
        <translation>Beginnen am</translation>
    </message>
    <message>
        <source>Be &amp;ready by</source>
        <translation>Be&amp;reit bis</translation>
    </message>
    <message>
        <source>Be ready by</source>
        <translation>Bereit bis</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Keep slac&amp;k for slow pieces</source>
        <translation>&amp;Spielraum für langsame Stücke lassen</translation>
    </message>
    <message>
        <source>Keep slack for slow pieces</source>
        <translation>Spielraum für langsame Stücke lassen</translation>
    </message>
    <message>
        <source>Use the proposal: aim for %1</source>
        <translation>Den Vorschlag übernehmen: %1 anstreben</translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanStrip</name>
    <message>
        <source>The plan along time</source>
        <translation>Der Plan im Lauf der Zeit</translation>
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
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>This desk</source>
        <translation>Dieser Arbeitsplatz</translation>
    </message>
    <message>
        <source>Kept on this computer, not in the book. Every field still accepts any unit.</source>
        <translation>Auf diesem Rechner gespeichert, nicht im Buch. Jedes Feld nimmt weiterhin jede Einheit an.</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Gewichte</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>Gramm</translation>
    </message>
    <message>
        <source>grams and kilograms</source>
        <translation>Gramm und Kilogramm</translation>
    </message>
    <message>
        <source>ounces</source>
        <translation>Unzen</translation>
    </message>
    <message>
        <source>pounds and ounces</source>
        <translation>Pfund (lb) und Unzen</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturen</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>Grad Celsius</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation>Grad Fahrenheit</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Liquids</source>
        <translation>Flüssigkeiten</translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation>Milliliter</translation>
    </message>
    <message>
        <source>US fluid ounces</source>
        <translation>US-Flüssigunzen</translation>
    </message>
    <message>
        <source>as the computer</source>
        <translation>wie der Rechner</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>keine gewählt</translation>
    </message>
    <message>
        <source>Limits to check against</source>
        <translation>Grenzwerte zum Vergleich</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>wie der Desktop</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>&amp;Weights</source>
        <translation>&amp;Gewichte</translation>
    </message>
    <message>
        <source>&amp;Temperatures</source>
        <translation>&amp;Temperaturen</translation>
    </message>
    <message>
        <source>T&amp;hickness</source>
        <translation>&amp;Dicke</translation>
    </message>
    <message>
        <source>Li&amp;quids</source>
        <translation>F&amp;lüssigkeiten</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Sp&amp;rache</translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation>Ze&amp;itzone</translation>
    </message>
    <message>
        <source>&amp;Limits to check against</source>
        <translation>Grenzwerte zum &amp;Vergleich</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>F&amp;arben</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Add a &amp;person…</source>
        <translation>&amp;Person hinzufügen…</translation>
    </message>
    <message>
        <source>Who signs decisions and corrections.</source>
        <translation>Wer Entscheidungen und Berichtigungen unterzeichnet.</translation>
    </message>
    <message>
        <source>Who works at this desk</source>
        <translation>Wer an diesem Platz arbeitet</translation>
    </message>
    <message>
        <source>Who works at this &amp;desk</source>
        <translation>Wer an diesem Plat&amp;z arbeitet</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Namenszeichen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Works here</source>
        <translation>Arbeitet hier</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Scales</source>
        <translation>Waagen</translation>
    </message>
    <message>
        <source>Add a &amp;scale…</source>
        <translation>&amp;Waage hinzufügen…</translation>
    </message>
    <message>
        <source>The step is the smallest change the display shows. It decides which doses the scale can weigh and how sure a curve is.</source>
        <translation>Die Teilung ist die kleinste Änderung, die die Anzeige zeigt. Sie entscheidet, welche Dosen die Waage wiegen kann und wie genau eine Kurve ist.</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <source>Check every</source>
        <translation>Prüfen alle</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>nobody chosen</source>
        <translation>niemand gewählt</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>So things read: %1, %2, %3, %4.</source>
        <translation>So liest es sich: %1, %2, %3, %4.</translation>
    </message>
    <message>
        <source>Units, language, limits, people and scales</source>
        <translation>Einheiten, Sprache, Grenzwerte, Personen und Waagen</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PrintDialog</name>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Preview of the paper</source>
        <translation>Vorschau des Papiers</translation>
    </message>
    <message>
        <source>What to print</source>
        <translation>Was gedruckt wird</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als PDF &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>No printer is set up on this computer; a PDF can be printed elsewhere.</source>
        <translation>Auf diesem Rechner ist kein Drucker eingerichtet; ein PDF lässt sich anderswo drucken.</translation>
    </message>
    <message>
        <source>There is nothing to print.</source>
        <translation>Es gibt nichts zu drucken.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) in %1.</source>
        <translation>
            <numerusform>%n Seite in %1.</numerusform>
            <numerusform>%n Seiten in %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) sent to the printer.</source>
        <translation>
            <numerusform>%n Seite an den Drucker gesandt.</numerusform>
            <numerusform>%n Seiten an den Drucker gesandt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The printer took nothing. Try a PDF instead.</source>
        <translation>Der Drucker nahm nichts an. Versuchen Sie es mit einem PDF.</translation>
    </message>
</context>
<context>
    <name>ui::pages::RestoreDialog</name>
    <message>
        <source>Restore a backup</source>
        <translation>Kopie wiederherstellen</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of the book %1. Choose a copy to see what would be lost and what would come back; nothing is changed before you confirm.</source>
        <translation>Setzt eine frühere Kopie an die Stelle des Buchs %1. Wählen Sie eine Kopie, um zu sehen, was verloren ginge und was zurückkäme; geändert wird nichts, bevor Sie es bestätigen.</translation>
    </message>
    <message>
        <source>The backup is being read</source>
        <translation>Die Sicherungskopie wird gelesen</translation>
    </message>
    <message>
        <source>Another &amp;file…</source>
        <translation>Andere &amp;Datei…</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>&amp;Restore this backup…</source>
        <translation>Diese Kopie &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Angelegt</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Letzter Eintrag</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Chargen</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Wägungen</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Backups of this book</source>
        <translation>Sicherungskopien dieses Buchs</translation>
    </message>
    <message>
        <source>There is no backup in the folder “backups” beside the book. Choose a copy you keep elsewhere with Another file.</source>
        <translation>Im Ordner „backups“ neben dem Buch liegt keine Sicherungskopie. Wählen Sie mit „Andere Datei“ eine Kopie, die Sie anderswo aufbewahren.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sicherungskopie</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Saltloft-Bücher (*.saltloft);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Put this backup in the place of the book?</source>
        <translation>Diese Sicherungskopie an die Stelle des Buchs setzen?</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wiederherstellen</translation>
    </message>
</context>
<context>
    <name>ui::pages::ReviewPage</name>
    <message>
        <source>Is it done?</source>
        <translation>Ist es fertig?</translation>
    </message>
    <message>
        <source>To the &amp;piece</source>
        <translation>Zum &amp;Stück</translation>
    </message>
    <message>
        <source>Evidence, not a verdict. A number says how much water has gone; your hand, nose and eye say the rest. Follow the code where you live and your laboratory.</source>
        <translation>Belege, kein Urteil. Eine Zahl sagt, wie viel Wasser fort ist; Hand, Nase und Auge sagen den Rest. Halten Sie sich an das Recht am Ort und an Ihr Labor.</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Belege</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Hier</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>Daneben</translation>
    </message>
    <message>
        <source>Look, then decide</source>
        <translation>Ansehen, dann entscheiden</translation>
    </message>
    <message>
        <source>The centre feels</source>
        <translation>Die Mitte fühlt sich an</translation>
    </message>
    <message>
        <source>not felt yet</source>
        <translation>noch nicht getastet</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>weich</translation>
    </message>
    <message>
        <source>springy</source>
        <translation>federnd</translation>
    </message>
    <message>
        <source>firm</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>The &amp;centre feels</source>
        <translation>Die &amp;Mitte fühlt sich an</translation>
    </message>
    <message>
        <source>Add a &amp;note or photo…</source>
        <translation>&amp;Notiz oder Foto hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Done: it comes down</source>
        <translation>&amp;Fertig: wird abgenommen</translation>
    </message>
    <message>
        <source>Not &amp;yet: weigh and look again</source>
        <translation>N&amp;och nicht: wiegen und wieder ansehen</translation>
    </message>
    <message>
        <source>Disc&amp;ard: it is thrown out</source>
        <translation>&amp;Verwerfen: wird weggeworfen</translation>
    </message>
    <message>
        <source>Look again on</source>
        <translation>Wieder ansehen am</translation>
    </message>
    <message>
        <source>&amp;Look again on</source>
        <translation>&amp;Wieder ansehen am</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>Wa&amp;rum</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Unterzeichnet von</translation>
    </message>
    <message>
        <source>Signed &amp;by</source>
        <translation>Unter&amp;zeichnet von</translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation>&amp;Unterzeichnen</translation>
    </message>
    <message>
        <source>Is %1 done?</source>
        <translation>Ist %1 fertig?</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>Signed before:
%1</source>
        <translation>Bisher unterzeichnet:
%1</translation>
    </message>
    <message>
        <source>Evidence beside each other, and a signed decision</source>
        <translation>Belege nebeneinander und eine unterzeichnete Entscheidung</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Add a p&amp;hoto…</source>
        <translation>Fo&amp;to hinzufügen…</translation>
    </message>
    <message>
        <source>No photo of this piece yet. The cut face says more than a number does: take one, and the next batch can be held beside it.</source>
        <translation>Noch kein Foto dieses Stücks. Der Anschnitt sagt mehr als eine Zahl: Nehmen Sie eines auf, und die nächste Charge lässt sich daneben halten.</translation>
    </message>
    <message>
        <source>Finish it in warm a&amp;ir…</source>
        <translation>In warmer &amp;Luft nachtrocknen…</translation>
    </message>
    <message>
        <source>H&amp;ung again: it was down, and dries on</source>
        <translation>Wieder auf&amp;gehängt, trocknet weiter</translation>
    </message>
    <message>
        <source>Hung again: it was down, and dries on</source>
        <translation>Wieder aufgehängt, trocknet weiter</translation>
    </message>
    <message>
        <source>It goes back to the hanging pieces, and the day sheet asks for its weight again.</source>
        <translation>Es kehrt zu den hängenden Stücken zurück, und das Tagesblatt fragt wieder nach seinem Gewicht.</translation>
    </message>
    <message>
        <source>For a piece that is finished. This one hangs still: sign &quot;not yet&quot;.</source>
        <translation>Für ein fertiges Stück. Dieses hängt noch: unterzeichnen Sie „noch nicht“.</translation>
    </message>
    <message>
        <source>Choose what becomes of it first.</source>
        <translation>Wählen Sie zuerst, was daraus wird.</translation>
    </message>
    <message>
        <source>Hung again. %1</source>
        <translation>Wieder aufgehängt. %1</translation>
    </message>
    <message>
        <source>Say who signs: choose or type the name.</source>
        <translation>Sagen Sie, wer unterzeichnet: den Namen wählen oder eintippen.</translation>
    </message>
</context>
<context>
    <name>ui::pages::SalvageDialog</name>
    <message>
        <source>Salvage into a new book</source>
        <translation>In ein neues Buch retten</translation>
    </message>
    <message>
        <source>Carries every entry of %1 that can still be read into a new book. The damaged book is not changed; keep it until you have looked through the new one.</source>
        <translation>Trägt jeden noch lesbaren Eintrag von %1 in ein neues Buch. Das beschädigte Buch wird nicht verändert; behalten Sie es, bis Sie das neue durchgesehen haben.</translation>
    </message>
    <message>
        <source>The book is being carried over</source>
        <translation>Das Buch wird übertragen</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>&amp;Salvage</source>
        <translation>&amp;Retten</translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation>Das neue Buch ö&amp;ffnen</translation>
    </message>
    <message>
        <source>The new book</source>
        <translation>Das neue Buch</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>Wä&amp;hlen…</translation>
    </message>
    <message>
        <source>&amp;New book</source>
        <translation>&amp;Neues Buch</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Art des Eintrags</translation>
    </message>
    <message>
        <source>Carried over</source>
        <translation>Übertragen</translation>
    </message>
    <message>
        <source>Known to be lost</source>
        <translation>Nachweislich verloren</translation>
    </message>
    <message>
        <source>What was carried over</source>
        <translation>Was übertragen wurde</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Neues Buch</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Saltloft-Bücher (*.saltloft)</translation>
    </message>
    <message>
        <source>Name the file of the new book.</source>
        <translation>Nennen Sie die Datei des neuen Buchs.</translation>
    </message>
    <message>
        <source>%1 is there already and is not replaced. Choose another name.</source>
        <translation>%1 ist schon da und wird nicht ersetzt. Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>Nothing could be carried over. %1</source>
        <translation>Nichts ließ sich übertragen. %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::ScaleDialog</name>
    <message>
        <source>Change a scale</source>
        <translation>Waage ändern</translation>
    </message>
    <message>
        <source>Add a scale</source>
        <translation>Waage hinzufügen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Smallest step it shows</source>
        <translation>Kleinste Teilung der Anzeige</translation>
    </message>
    <message>
        <source>Check it every so many days</source>
        <translation>Prüfabstand in Tagen</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>In &amp;Gebrauch</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>Smallest &amp;step it shows</source>
        <translation>Kleinste &amp;Teilung der Anzeige</translation>
    </message>
    <message>
        <source>&amp;Check it every so many days</source>
        <translation>&amp;Prüfabstand in Tagen</translation>
    </message>
    <message>
        <source>Give the scale a name, such as &quot;bench scale&quot;.</source>
        <translation>Geben Sie der Waage einen Namen, etwa „Tischwaage“.</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorCheckDialog</name>
    <message>
        <source>Check %1</source>
        <translation>%1 prüfen</translation>
    </message>
    <message>
        <source>Checked against</source>
        <translation>Geprüft an</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag, 75 % humidity</source>
        <translation>Salzbrei im geschlossenen Beutel, 75 % Feuchte</translation>
    </message>
    <message>
        <source>Day of the check</source>
        <translation>Tag der Prüfung</translation>
    </message>
    <message>
        <source>What the sensor said</source>
        <translation>Was der Sensor sagte</translation>
    </message>
    <message>
        <source>What you did about it</source>
        <translation>Was Sie deshalb taten</translation>
    </message>
    <message>
        <source>Checked &amp;against</source>
        <translation>&amp;Geprüft an</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>What the sensor &amp;said</source>
        <translation>Was der &amp;Sensor sagte</translation>
    </message>
    <message>
        <source>What you did about &amp;it</source>
        <translation>Was Sie &amp;deshalb taten</translation>
    </message>
    <message>
        <source>Salt slurry: table salt just wet, in a closed bag with the sensor for twelve hours or more. Common practice: every six months; ice at least once a year.</source>
        <translation>Salzbrei: Speisesalz, eben angefeuchtet, mit dem Sensor zwölf Stunden oder länger in einem geschlossenen Beutel. Übliche Praxis: alle sechs Monate; Eis mindestens einmal im Jahr.</translation>
    </message>
    <message>
        <source>It is right.</source>
        <translation>Er stimmt.</translation>
    </message>
    <message>
        <source>It is off: add %1 K to its temperature.</source>
        <translation>Er weicht ab: %1 K zur Temperatur hinzuzählen.</translation>
    </message>
    <message>
        <source>It is off: add %1 points to its humidity.</source>
        <translation>Er weicht ab: %1 Punkte zur Feuchte hinzuzählen.</translation>
    </message>
    <message>
        <source>Ice water, 0 °C</source>
        <translation>Eiswasser, 0 °C</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorDialog</name>
    <message>
        <source>Change a sensor</source>
        <translation>Sensor ändern</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Sensor hinzufügen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Where it hangs</source>
        <translation>Wo er hängt</translation>
    </message>
    <message>
        <source>Added to its temperature, kelvin</source>
        <translation>Zur Temperatur hinzugezählt, Kelvin</translation>
    </message>
    <message>
        <source>Added to its humidity, points</source>
        <translation>Zur Feuchte hinzugezählt, Punkte</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>In &amp;Gebrauch</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Where it hangs</source>
        <translation>&amp;Wo er hängt</translation>
    </message>
    <message>
        <source>Added to its &amp;temperature</source>
        <translation>Zur &amp;Temperatur hinzugezählt</translation>
    </message>
    <message>
        <source>Added to its &amp;humidity</source>
        <translation>Zur &amp;Feuchte hinzugezählt</translation>
    </message>
    <message>
        <source>Readings are kept as the sensor gave them; what is added here only changes what is shown and judged.</source>
        <translation>Messwerte bleiben, wie der Sensor sie gab; was hier hinzugezählt wird, ändert nur, was gezeigt und beurteilt wird.</translation>
    </message>
    <message>
        <source>Give the sensor a name, such as &quot;by the door&quot;.</source>
        <translation>Geben Sie dem Sensor einen Namen, etwa „bei der Tür“.</translation>
    </message>
</context>
<context>
    <name>ui::pages::SplitDialog</name>
    <message>
        <source>Cut %1 into pieces</source>
        <translation>%1 in Stücke schneiden</translation>
    </message>
    <message>
        <source>Weigh each part without casing or net. Start weight and target are shared out in proportion; the family stays.</source>
        <translation>Wiegen Sie jeden Teil ohne Hülle oder Netz. Anfangsgewicht und Ziel werden anteilig aufgeteilt; die Familie bleibt.</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>Nettogewicht davor</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>Nettogewicht &amp;davor</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>&amp;One part more</source>
        <translation>&amp;Ein Teil mehr</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>&amp;Schneiden</translation>
    </message>
    <message>
        <source>Code of part %1</source>
        <translation>Kürzel von Teil %1</translation>
    </message>
    <message>
        <source>Net weight of part %1</source>
        <translation>Nettogewicht von Teil %1</translation>
    </message>
    <message>
        <source>Part &amp;%1: code, net weight</source>
        <translation>Teil &amp;%1: Kürzel, Nettogewicht</translation>
    </message>
    <message>
        <source>%1: %2 net</source>
        <translation>%1: %2 netto</translation>
    </message>
    <message>
        <source>, start %1</source>
        <translation>, Anfang %1</translation>
    </message>
    <message>
        <source>, target %1 net</source>
        <translation>, Ziel %1 netto</translation>
    </message>
    <message>
        <source>Not accounted for: %1</source>
        <translation>Nicht nachgewiesen: %1</translation>
    </message>
    <message>
        <source>The parts weigh %1 more than the whole.</source>
        <translation>Die Teile wiegen %1 mehr als das Ganze.</translation>
    </message>
    <message>
        <source>The parts weigh more than the whole. Check the weights, or the net weight before the cut.</source>
        <translation>Die Teile wiegen mehr als das Ganze. Prüfen Sie die Gewichte oder das Nettogewicht vor dem Schnitt.</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeDialog</name>
    <message>
        <source>Take from pack %1</source>
        <translation>Aus Packung %1 entnehmen</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>Was daraus wird</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>&amp;All that is left (%1)</source>
        <translation>&amp;Alles, was übrig ist (%1)</translation>
    </message>
    <message>
        <source>All that is left</source>
        <translation>Alles, was übrig ist</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>An wen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>&amp;What becomes of it</source>
        <translation>&amp;Was daraus wird</translation>
    </message>
    <message>
        <source>&amp;How much</source>
        <translation>Wie &amp;viel</translation>
    </message>
    <message>
        <source>&amp;To whom</source>
        <translation>An w&amp;en</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Code of the new piece</source>
        <translation>Kürzel des neuen Stücks</translation>
    </message>
    <message>
        <source>&amp;Code of the new piece</source>
        <translation>&amp;Kürzel des neuen Stücks</translation>
    </message>
    <message>
        <source>Piece %1 itself hangs again, at %2 lost. It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>Stück %1 selbst hängt wieder, mit %2 verloren. Es steht ab jetzt bei den hängenden Stücken und auf dem Tagesblatt; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>%1 of piece %2 becomes a piece of its own, which starts at the loss the whole had (%3). It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>%1 von Stück %2 wird ein eigenes Stück, das mit dem Verlust des ganzen beginnt (%3). Es steht ab jetzt bei den hängenden Stücken und auf dem Tagesblatt; Rückgängig nimmt es zurück.</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeOnBox</name>
    <message>
        <source>I have read the &amp;cautions and take them on myself</source>
        <translation>Ich habe die Warnungen gelesen und ne&amp;hme sie auf mich</translation>
    </message>
    <message>
        <source>I have read the cautions and take them on myself</source>
        <translation>Ich habe die Warnungen gelesen und nehme sie auf mich</translation>
    </message>
    <message>
        <source>Cautions taken on by</source>
        <translation>Warnungen quittiert von</translation>
    </message>
    <message>
        <source>Taken on b&amp;y</source>
        <translation>Q&amp;uittiert von</translation>
    </message>
    <message>
        <source>There are cautions above. Read them, then tick that you take them on.</source>
        <translation>Oben stehen Warnungen. Lesen Sie sie und haken Sie dann an, dass Sie sie auf sich nehmen.</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>Sagen Sie, wer die Warnungen quittiert: den Namen wählen oder eintippen.</translation>
    </message>
</context>
<context>
    <name>ui::pages::UpsetDialog</name>
    <message>
        <source>Upset in %1</source>
        <translation>Störung in %1</translation>
    </message>
    <message>
        <source>This is a record to weigh up with your own code, your adviser or a laboratory. It is of the air, not of the meat&apos;s core, and judges nothing.</source>
        <translation>Dies ist eine Aufzeichnung, um sie mit Ihrer Vorschrift, Ihrer Beratung oder einem Labor abzuwägen. Sie betrifft die Luft, nicht den Fleischkern, und urteilt nicht.</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>&amp;Keep as a note on each batch</source>
        <translation>Als &amp;Notiz bei jeder Charge ablegen</translation>
    </message>
    <message>
        <source>Where the temperatures come from</source>
        <translation>Woher die Temperaturen kommen</translation>
    </message>
    <message>
        <source>what I saw</source>
        <translation>was ich sah</translation>
    </message>
    <message>
        <source>the log of %1</source>
        <translation>das Protokoll von %1</translation>
    </message>
    <message>
        <source>Day it began</source>
        <translation>Tag des Beginns</translation>
    </message>
    <message>
        <source>Time it began</source>
        <translation>Uhrzeit des Beginns</translation>
    </message>
    <message>
        <source>How long it lasted</source>
        <translation>Wie lange es dauerte</translation>
    </message>
    <message>
        <source>Usual temperature</source>
        <translation>Übliche Temperatur</translation>
    </message>
    <message>
        <source>Temperature it reached</source>
        <translation>Erreichte Temperatur</translation>
    </message>
    <message>
        <source>&amp;Temperatures from</source>
        <translation>&amp;Temperaturen aus</translation>
    </message>
    <message>
        <source>It &amp;began</source>
        <translation>Es &amp;begann</translation>
    </message>
    <message>
        <source>It &amp;lasted</source>
        <translation>Es &amp;dauerte</translation>
    </message>
    <message>
        <source>&amp;Usual temperature</source>
        <translation>Üb&amp;liche Temperatur</translation>
    </message>
    <message>
        <source>It &amp;reached</source>
        <translation>Es &amp;erreichte</translation>
    </message>
    <message>
        <source>&amp;Show the record</source>
        <translation>Aufzeichnung &amp;zeigen</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation>%1, %2 lang</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>Aufgehängt</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verloren</translation>
    </message>
    <message>
        <source>Salt, at most</source>
        <translation>Salz, höchstens</translation>
    </message>
    <message>
        <source>Nitrite put on</source>
        <translation>Aufgetragenes Nitrit</translation>
    </message>
    <message>
        <source>Water activity, estimated</source>
        <translation>Wasseraktivität, geschätzt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Pieces, to be looked at in this order</source>
        <translation>Stücke, in dieser Reihenfolge anzusehen</translation>
    </message>
    <message>
        <source>Can grow</source>
        <translation>Kann wachsen</translation>
    </message>
    <message>
        <source>Hours of air in its range</source>
        <translation>Stunden mit Luft in seinem Bereich</translation>
    </message>
    <message>
        <source>Its temperatures</source>
        <translation>Seine Temperaturen</translation>
    </message>
    <message>
        <source>Water activity</source>
        <translation>Wasseraktivität</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Hours in growth ranges</source>
        <translation>Stunden in Wachstumsbereichen</translation>
    </message>
    <message>
        <source>To be looked at in this order</source>
        <translation>In dieser Reihenfolge anzusehen</translation>
    </message>
    <message>
        <source>Hours of air in growth ranges</source>
        <translation>Stunden mit Luft in Wachstumsbereichen</translation>
    </message>
    <message>
        <source>For %1 there is no reading.</source>
        <translation>Für %1 gibt es keinen Messwert.</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) were there. Highest air temperature: %1.</source>
        <translation>
            <numerusform>%n Stück war dort. Höchste Lufttemperatur: %1.</numerusform>
            <numerusform>%n Stücke waren dort. Höchste Lufttemperatur: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The record is kept as a note on %n batch(es).</source>
        <translation>
            <numerusform>Die Aufzeichnung liegt als Notiz bei %n Charge.</numerusform>
            <numerusform>Die Aufzeichnung liegt als Notiz bei %n Chargen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::WarmDialog</name>
    <message>
        <source>%1: finish in warm air</source>
        <translation>%1: in warmer Luft nachtrocknen</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven takes the last water out in hours. It also spends those hours where microbes grow. What stands here is reckoned from the piece&apos;s own pace and published figures; it judges nothing. Follow your own code.</source>
        <translation>Ein Dörrgerät oder ein Backofen auf kleiner Stufe nimmt das letzte Wasser in Stunden heraus. Diese Stunden verbringt es auch dort, wo Mikroben wachsen. Was hier steht, ist aus dem eigenen Tempo des Stücks und veröffentlichten Zahlen gerechnet; es urteilt nicht. Halten Sie sich an Ihre Vorschrift.</translation>
    </message>
    <message>
        <source>&amp;Record in the book</source>
        <translation>Ins &amp;Buch eintragen</translation>
    </message>
    <message>
        <source>Air of the device</source>
        <translation>Luft des Geräts</translation>
    </message>
    <message>
        <source>Its humidity</source>
        <translation>Ihre Feuchte</translation>
    </message>
    <message>
        <source>Loss wanted</source>
        <translation>Gewünschter Verlust</translation>
    </message>
    <message>
        <source>Water of the piece now</source>
        <translation>Wasser des Stücks jetzt</translation>
    </message>
    <message>
        <source>Thickness now</source>
        <translation>Dicke jetzt</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Wie weit es ist</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>begun now</source>
        <translation>jetzt begonnen</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>&amp;Air of the device</source>
        <translation>&amp;Luft des Geräts</translation>
    </message>
    <message>
        <source>Its &amp;humidity, a guess if not measured</source>
        <translation>Ihre &amp;Feuchte, geschätzt, wenn nicht gemessen</translation>
    </message>
    <message>
        <source>&amp;Loss wanted</source>
        <translation>Gewünschter &amp;Verlust</translation>
    </message>
    <message>
        <source>&amp;Water of the piece now</source>
        <translation>&amp;Wasser des Stücks jetzt</translation>
    </message>
    <message>
        <source>&amp;Thickness now</source>
        <translation>&amp;Dicke jetzt</translation>
    </message>
    <message>
        <source>How &amp;far it is</source>
        <translation>Wie weit es &amp;ist</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Wie lange</translation>
    </message>
    <message>
        <source>Hours inside growth ranges</source>
        <translation>Stunden in Wachstumsbereichen</translation>
    </message>
    <message>
        <source>Organism</source>
        <translation>Organismus</translation>
    </message>
    <message>
        <source>In its range</source>
        <translation>In seinem Bereich</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>Daneben</translation>
    </message>
    <message>
        <source>No loss is known yet: weigh the piece first, so that there is a start to count from.</source>
        <translation>Noch ist kein Verlust bekannt: Wiegen Sie das Stück erst, damit es einen Anfang zum Zählen gibt.</translation>
    </message>
    <message>
        <source>Fill in what is empty above, and the hours stand here.</source>
        <translation>Füllen Sie aus, was oben leer ist, dann stehen hier die Stunden.</translation>
    </message>
    <message>
        <source>Reckoned from the pace it dries at where it hangs.</source>
        <translation>Gerechnet nach dem Tempo, mit dem es trocknet, wo es hängt.</translation>
    </message>
    <message>
        <source>Reckoned from published figures: its own pace is not known well enough.</source>
        <translation>Gerechnet nach veröffentlichten Zahlen: Das eigene Tempo ist nicht gut genug bekannt.</translation>
    </message>
    <message>
        <source>There is no answer to record yet.</source>
        <translation>Es gibt noch keine Antwort einzutragen.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighInPage</name>
    <message>
        <source>Weigh-in round</source>
        <translation>Wiegerunde</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Kammer</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Kammer</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>&amp;Waage</translation>
    </message>
    <message>
        <source>Nothing to weigh</source>
        <translation>Nichts zu wiegen</translation>
    </message>
    <message>
        <source>The round lists every piece that is curing, resting or drying, in the order in which it hangs. Start a batch, then come back once a week: a number and Enter for each piece is all it takes.</source>
        <translation>Die Runde führt jedes Stück auf, das pökelt, ruht oder trocknet, in der Reihenfolge, in der es hängt. Beginnen Sie eine Charge und kommen Sie einmal in der Woche wieder: eine Zahl und Enter für jedes Stück, mehr braucht es nicht.</translation>
    </message>
    <message>
        <source>Pieces in hanging order</source>
        <translation>Stücke in Hängefolge</translation>
    </message>
    <message>
        <source>The piece whose turn it is</source>
        <translation>Das Stück, das an der Reihe ist</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Auf der Waage</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>&amp;Wet</source>
        <translation>&amp;Nass</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>Die Oberfläche ist nass</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>note, if any</source>
        <translation>Notiz, falls nötig</translation>
    </message>
    <message>
        <source>&amp;Keep and go on  ⏎</source>
        <translation>Überneh&amp;men und weiter  ⏎</translation>
    </message>
    <message>
        <source>Pass over  ⇟</source>
        <translation>Übergehen  ⇟</translation>
    </message>
    <message>
        <source>&amp;On the scale</source>
        <translation>&amp;Auf der Waage</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tara</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Hängt</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Letztes</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>übergangen</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>%1 of %2 weighed. Enter keeps and goes on; Page Down passes over.</source>
        <translation>%1 von %2 gewogen. Enter übernimmt und geht weiter; Bild ab übergeht.</translation>
    </message>
    <message>
        <source>Last time: %1 on the scale, %2</source>
        <translation>Letztes Mal: %1 auf der Waage, %2</translation>
    </message>
    <message>
        <source>Not weighed before.</source>
        <translation>Noch nicht gewogen.</translation>
    </message>
    <message>
        <source>Expected now: %1 to %2 (%3)</source>
        <translation>Jetzt erwartet: %1 bis %2 (%3)</translation>
    </message>
    <message>
        <source>from its forecast</source>
        <translation>aus der Prognose</translation>
    </message>
    <message>
        <source>from its last weight</source>
        <translation>aus dem letzten Gewicht</translation>
    </message>
    <message>
        <source>Expected now: %1</source>
        <translation>Jetzt erwartet: %1</translation>
    </message>
    <message>
        <source>%1
If it is right, press Enter again.</source>
        <translation>%1
Wenn es richtig ist, drücken Sie noch einmal Enter.</translation>
    </message>
    <message>
        <source>%1: %2 kept. Ctrl+Z takes it back.</source>
        <translation>%1: %2 übernommen. Strg+Z nimmt es zurück.</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>Weigh every hanging piece in hanging order</source>
        <translation>Jedes hängende Stück in Hängefolge wiegen</translation>
    </message>
    <message numerus="yes">
        <source>All %n piece(s) are weighed.</source>
        <translation>
            <numerusform>%n Stück ist gewogen.</numerusform>
            <numerusform>Alle %n Stücke sind gewogen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Nothing hangs to be weighed.</source>
        <translation>Nichts hängt, das zu wiegen wäre.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighingDialog</name>
    <message>
        <source>Scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>scale not named</source>
        <translation>Waage nicht genannt</translation>
    </message>
    <message>
        <source>%1 (step %2)</source>
        <translation>%1 (Teilung %2)</translation>
    </message>
    <message>
        <source>Weigh %1</source>
        <translation>%1 wiegen</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Auf der Waage</translation>
    </message>
    <message>
        <source>What hangs there</source>
        <translation>Was dort hängt</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>The surface is &amp;wet (just washed or wiped)</source>
        <translation>Die Oberfläche ist &amp;nass (eben gewaschen oder abgewischt)</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>Die Oberfläche ist nass</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation>Auf der &amp;Waage</translation>
    </message>
    <message>
        <source>W&amp;hat is on it</source>
        <translation>Was daran &amp;ist</translation>
    </message>
    <message>
        <source>&amp;Tare (casing, net, hook)</source>
        <translation>Ta&amp;ra (Hülle, Netz, Haken)</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>&amp;Zeit</translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation>Waa&amp;ge</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Why it is corrected</source>
        <translation>Warum sie berichtigt wird</translation>
    </message>
    <message>
        <source>e.g. misread, wrong tare</source>
        <translation>z. B. falsch abgelesen, falsche Tara</translation>
    </message>
    <message>
        <source>Wh&amp;y it is corrected</source>
        <translation>Waru&amp;m sie berichtigt wird</translation>
    </message>
    <message>
        <source>Net weight: %1</source>
        <translation>Nettogewicht: %1</translation>
    </message>
    <message>
        <source>%1 lost of the %2</source>
        <translation>%1 verloren (%2)</translation>
    </message>
    <message>
        <source>Say in a few words why the entry is corrected; the old one stays readable beside it.</source>
        <translation>Sagen Sie in wenigen Worten, warum der Eintrag berichtigt wird; der alte bleibt daneben lesbar.</translation>
    </message>
    <message>
        <source>Correct %1: weighing of %2</source>
        <extracomment>%1 a piece&apos;s code, %2 a moment</extracomment>
        <translation>%1 berichtigen: Wägung von %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::WhatIfDialog</name>
    <message>
        <source>%1: what if…</source>
        <translation>%1: was wäre, wenn…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation>Noch nichts zu vergleichen</translation>
    </message>
    <message>
        <source>A forecast needs the weight its loss is counted from, and weighings since it was hung. Weigh the piece, or choose another weight to count from under Change.</source>
        <translation>Eine Prognose braucht das Gewicht, von dem der Verlust zählt, und Wägungen seit dem Aufhängen. Wiegen Sie das Stück oder wählen Sie unter „Ändern“ ein anderes Gewicht, von dem gezählt wird.</translation>
    </message>
    <message>
        <source>The change holds from the last weighing on, and exactly as entered. Nothing of this is kept.</source>
        <translation>Die Änderung gilt ab der letzten Wägung und genau wie eingegeben. Nichts davon wird gespeichert.</translation>
    </message>
    <message>
        <source>The piece has no target; 35 % of the hung weight is taken to begin with.</source>
        <translation>Das Stück hat kein Ziel; zu Beginn werden 35 % vom Gewicht beim Aufhängen genommen.</translation>
    </message>
    <message>
        <source>Humidity ahead</source>
        <translation>Feuchte ab jetzt</translation>
    </message>
    <message>
        <source>Temperature ahead</source>
        <translation>Temperatur ab jetzt</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>&amp;Humidity of the chamber</source>
        <translation>&amp;Feuchte der Kammer</translation>
    </message>
    <message>
        <source>Te&amp;mperature of the chamber</source>
        <translation>Te&amp;mperatur der Kammer</translation>
    </message>
    <message>
        <source>&amp;Target, loss</source>
        <translation>&amp;Ziel, Verlust</translation>
    </message>
    <message>
        <source>Filled in: the last steady stretch of the chamber&apos;s log.</source>
        <translation>Eingetragen: die letzte ruhige Strecke im Protokoll der Kammer.</translation>
    </message>
    <message>
        <source>Filled in: a usual air, as no log says what it is (common practice, no source).</source>
        <translation>Eingetragen: eine übliche Luft, da kein Protokoll sie nennt (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>&amp;Use that humidity</source>
        <translation>&amp;Diese Feuchte nehmen</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <source>With the change</source>
        <translation>Mit der Änderung</translation>
    </message>
    <message>
        <source>As it is and with the change</source>
        <translation>Wie es ist und mit der Änderung</translation>
    </message>
    <message>
        <source>Fill in what is empty above.</source>
        <translation>Füllen Sie oben aus, was leer ist.</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>Wird gerechnet…</translation>
    </message>
    <message>
        <source>As it is; nothing is changed yet</source>
        <translation>Wie es ist; noch ist nichts geändert</translation>
    </message>
    <message>
        <source>As it is, and with the change</source>
        <translation>Wie es ist und mit der Änderung</translation>
    </message>
    <message>
        <source>Change the temperature to see which humidity there has the drying power of the air as it is.</source>
        <translation>Ändern Sie die Temperatur, um zu sehen, welche Feuchte dort die Trocknungskraft der jetzigen Luft hat.</translation>
    </message>
    <message>
        <source>In the cited growth ranges as it is, by temperature alone: %1. Water, salt and acid count too; the program judges none of it.</source>
        <translation>Schon jetzt in den zitierten Wachstumsbereichen, nach der Temperatur allein: %1. Wasser, Salz und Säure zählen auch; das Programm urteilt über nichts davon.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WithdrawDialog</name>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>%1
The entry no longer counts, but stays readable in the history.</source>
        <translation>%1
Der Eintrag zählt nicht mehr, bleibt aber im Verlauf lesbar.</translation>
    </message>
    <message>
        <source>Why it is taken back</source>
        <translation>Warum er zurückgenommen wird</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>Wa&amp;rum</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>Say in a few words why.</source>
        <translation>Sagen Sie in wenigen Worten, warum.</translation>
    </message>
</context>
<context>
    <name>ui::presenters::DayWork</name>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>Opens the weigh-in. The line goes when the weight is in the book.</source>
        <translation>Öffnet die Wiegerunde. Die Zeile verschwindet, wenn das Gewicht im Buch steht.</translation>
    </message>
    <message>
        <source>Opens the evidence for this piece.</source>
        <translation>Öffnet die Belege für dieses Stück.</translation>
    </message>
    <message>
        <source>Opens the stock. The line goes when the packs are gone.</source>
        <translation>Öffnet den Vorrat. Die Zeile verschwindet, wenn die Packungen fort sind.</translation>
    </message>
    <message>
        <source>Opens the instruments. The line goes when a check is entered.</source>
        <translation>Öffnet die Messgeräte. Die Zeile verschwindet, wenn eine Prüfung eingetragen ist.</translation>
    </message>
    <message>
        <source>Begins the stage now.</source>
        <translation>Beginnt die Phase jetzt.</translation>
    </message>
    <message>
        <source>Ends the stage now.</source>
        <translation>Beendet die Phase jetzt.</translation>
    </message>
    <message>
        <source>Takes the tick back.</source>
        <translation>Nimmt das Häkchen zurück.</translation>
    </message>
    <message>
        <source>Ticks it off as done.</source>
        <translation>Hakt es als erledigt ab.</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 überfällig</translation>
    </message>
    <message>
        <source>%1 for today</source>
        <translation>%1 für heute</translation>
    </message>
    <message>
        <source>%1 done</source>
        <translation>%1 erledigt</translation>
    </message>
    <message numerus="yes">
        <source>%n pack(s)</source>
        <translation>
            <numerusform>%n Packung</numerusform>
            <numerusform>%n Packungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n Stück</numerusform>
            <numerusform>%n Stücke</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation>
            <numerusform>%n Tag zu spät</numerusform>
            <numerusform>%n Tage zu spät</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n time(s) missed</source>
        <extracomment>%1 how late, %n how often it was not done</extracomment>
        <translation>
            <numerusform>%1, %n Mal versäumt</numerusform>
            <numerusform>%1, %n Mal versäumt</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::LostWeight</name>
    <message>
        <source>estimated, %1 to %2</source>
        <translation>geschätzt, %1 bis %2</translation>
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
        <translation>Bereit etwa am %1</translation>
    </message>
    <message>
        <source>Start today</source>
        <translation>Heute beginnen</translation>
    </message>
    <message>
        <source>Start by %1</source>
        <translation>Bis %1 beginnen</translation>
    </message>
    <message>
        <source>Likely ready %1; the rest until %2 is slack.</source>
        <translation>Wahrscheinlich bereit am %1; der Rest bis %2 ist Spielraum.</translation>
    </message>
    <message>
        <source>No slack: half of such plans end later than %1.</source>
        <translation>Kein Spielraum: Die Hälfte solcher Pläne endet nach dem %1.</translation>
    </message>
    <message>
        <source>Not by %1</source>
        <translation>Nicht bis %1</translation>
    </message>
    <message>
        <source>Plan it smaller</source>
        <translation>Kleiner planen</translation>
    </message>
    <message>
        <source>A piece of at most %1 and %2 would be ready by %3.</source>
        <translation>Ein Stück von höchstens %1 und %2 wäre bis %3 bereit.</translation>
    </message>
    <message>
        <source>Plan this instead</source>
        <translation>Dies stattdessen planen</translation>
    </message>
    <message>
        <source>Plan for that day</source>
        <translation>Für jenen Tag planen</translation>
    </message>
    <message>
        <source>Begun today, it would be ready by %1.</source>
        <translation>Heute begonnen, wäre es bis %1 bereit.</translation>
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
        <translation>%1 % rF</translation>
    </message>
    <message>
        <source>%1, in the end %2</source>
        <extracomment>a band that changes over the stage: from %1, in the end %2</extracomment>
        <translation>%1, am Ende %2</translation>
    </message>
    <message>
        <source>%1 for %2 in every %3</source>
        <translation>%1 %2 lang alle %3</translation>
    </message>
    <message>
        <source>%1 every day</source>
        <translation>%1 jeden Tag</translation>
    </message>
    <message>
        <source>%1 every %2</source>
        <translation>%1 alle %2</translation>
    </message>
    <message>
        <source>%1 on day %2</source>
        <translation>%1 an Tag %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>inch</source>
        <translation>Zoll</translation>
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
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>%1 days per %2</source>
        <translation>%1 Tage je %2</translation>
    </message>
    <message>
        <source>%1 plus %2: %3</source>
        <translation>%1 plus %2: %3</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>By diffusion the centre has come close to the rest after %1.</source>
        <translation>Durch Diffusion hat die Mitte den Rest nach %1 fast eingeholt.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start.</source>
        <translation>
            <numerusform>%n Tag ab Beginn.</numerusform>
            <numerusform>%n Tage ab Beginn.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start; it may be %1.</source>
        <translation>
            <numerusform>%n Tag ab Beginn; es kann %1 werden.</numerusform>
            <numerusform>%n Tage ab Beginn; es kann %1 werden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It would be %n day(s) late. A stronger dose or a shorter cure does not help: salt needs its time.</source>
        <translation>
            <numerusform>Es wäre einen Tag zu spät. Eine stärkere Dosis oder kürzeres Pökeln hilft nicht: Salz braucht seine Zeit.</numerusform>
            <numerusform>Es wäre %n Tage zu spät. Eine stärkere Dosis oder kürzeres Pökeln hilft nicht: Salz braucht seine Zeit.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 needs %n day(s) for its usual piece, %2 to spare.</source>
        <translation>
            <numerusform>%1 braucht für das übliche Stück %n Tag, %2 bleiben übrig.</numerusform>
            <numerusform>%1 braucht für das übliche Stück %n Tage, %2 bleiben übrig.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 every %n day(s)</source>
        <translation>
            <numerusform>%1 jeden Tag</numerusform>
            <numerusform>%1 alle %n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) of %1</source>
        <translation>
            <numerusform>%n Runde zu %1</numerusform>
            <numerusform>%n Runden zu %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::WatchedFolder</name>
    <message>
        <source>The watched folder %1 is not there.</source>
        <translation>Der beobachtete Ordner %1 ist nicht da.</translation>
    </message>
    <message>
        <source>%1 is in the watched folder, but part of how it reads is a guess: import it once by hand.</source>
        <translation>%1 liegt im beobachteten Ordner, doch ein Teil der Lesart ist geraten: Importieren Sie die Datei einmal von Hand.</translation>
    </message>
    <message numerus="yes">
        <source>%1 from the watched folder: %n new reading(s).</source>
        <translation>
            <numerusform>%1 aus dem beobachteten Ordner: %n neuer Messwert.</numerusform>
            <numerusform>%1 aus dem beobachteten Ordner: %n neue Messwerte.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::Workspace</name>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>Kept: %1.</source>
        <translation>Eingetragen: %1.</translation>
    </message>
    <message>
        <source>Undone: %1.</source>
        <translation>Rückgängig gemacht: %1.</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>Wiederholt: %1.</translation>
    </message>
</context>
</TS>
