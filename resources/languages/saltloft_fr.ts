<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>ActionWords</name>
    <message>
        <source>new person %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person %1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new chamber %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chamber %1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new sensor %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sensor %1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new instrument %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>instrument %1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration check of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new recipe %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new version of recipe %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recipe renamed to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recipe %1 put away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new ingredient %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ingredient %1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new lot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batch %1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>piece %1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ingredient lot noted for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ingredient lot changed for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighing of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighings of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correction of a weighing of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a weighing of %1 taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>event of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an event of %1 taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cut into pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pieces weighed as one: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 discarded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stage of %1 started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stage of %1 ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>task ticked for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>task unticked for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caution accepted for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decision on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outcome of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new pack %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pack %1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken from pack %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>setting %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a change of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(no code)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalendarPage</name>
    <message>
        <source>Calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save as calendar file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages and work of every open batch stand here day by day. Save them as a calendar file to see them on a phone; saving again brings moved days up to date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days of the month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages and work by day, and as a calendar file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalibrationText</name>
    <message>
        <source>A test weight near what is weighed; within 0.1 % of it. Monthly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crushed ice in water, stirred: %1; within %2. Monthly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag for 12 hours: 75 % RH; within 3 to 5 points. Every six months.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two fresh buffers that bracket what is measured. Before use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A salt standard near what is measured. Before use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As its maker says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Action taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last checked before: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never checked before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How to check and how far off an instrument may be is common practice without a source: what your plan says goes before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Responsible person</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Set to every %n day(s) here.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CautionsPage</name>
    <message>
        <source>A number is not a verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight loss says how much water has gone, not whether a food may be eaten. Pieces at their target can be raw inside; pieces short of it can be finished. Look, touch, smell and cut before you decide. When in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curing salt is weighed, never guessed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite and nitrate are poisons in the wrong amount, and curing salts differ tenfold in strength. Enter the strength from the label of the packet in your hand. Use a scale that can weigh the dose. Keep curing salt marked and away from kitchen salt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold first, then time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cure in the cold, and keep the time the plan gives. A date on the calendar is no reason for a stronger dose or a shorter cure. After a failure of the fridge, what counts is how warm, how long and how far along each piece was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments are often wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the scale with a known weight, the thermometer in ice water, the hygrometer over a salt slurry. A reading nobody has checked is a guess with digits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits belong to your law</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limit sets here are quoted with their source and date. Those marked unverified were not read in the issuer&apos;s own words. If you sell or give food away, the code where you live, your licence and your laboratory come before anything this program shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimates carry a range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forecasts, water activity and salt in the finished piece are estimates from your entries and published formulas. The range is part of the answer. Only a laboratory measures water activity and pH in your piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some people need more care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry-cured meat that is not cooked is a risk for the pregnant, the very young, the old and the ill. Pork and game can carry parasites that curing alone may not kill; follow the official freezing or cooking times for your country.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to keep in mind before trusting a number</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClimateChart</name>
    <message>
        <source>temperature, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity, % RH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying force, Pa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · %1 (%2 to %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · dew point %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · drying force %1 Pa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: least to greatest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower bound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper bound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no readings in this time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 to %3, pauses without readings: %4.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClimateWords</name>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>milliseconds since 1970</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day numbers of a spreadsheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each time says its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1%2:%3 all year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a share of 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns parted by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>column %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>you said so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as confirmed for this sensor before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file&apos;s own mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the heading names it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing else fits the lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>otherwise time would jump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the values look like it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rest of the file makes it likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing in the file says so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sure, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fairly sure, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ a guess, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no date and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an hour the clock skipped in spring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line is cut off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a value no air has</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither temperature nor humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the heading again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an endless line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quote that never closes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too damp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimate below its bound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimate straddles its bound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimate above its bound</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Data</name>
    <message>
        <source>A second salting two days after the first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About two minutes for each day in cure, water at most 70 °F.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After salting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>American country</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another spice or herb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ascorbic acid (vitamin C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Australia and New Zealand: cured meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bacon, dry cured and smoked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bay leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Biltong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Black pepper, ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Black pepper, whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bresaola</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brown sugar, packed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Burn through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cabinet drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canada: cured meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canada: side bacon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case and tie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cellar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Central European smoked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chilli, ground or flakes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chinese wind-dried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coarse sea salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Codex: heat-treated whole cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold smoke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cool dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coppa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coriander seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Country and dry-cured ham: water activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Country ham</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Country ham: internal salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Country ham: loss of fresh weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Country shoulder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curing salt No. 1 (6.25 % nitrite)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curing salt No. 2 (6.25 % nitrite, nitrate by label)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curing salt, UK (5.88 % nitrite)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curing salt, strength from its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Damp rests let the inside follow the surface.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dextrose (monohydrate)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>EU before 9 October 2025: Rohschinken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured bacon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured ham, jamon, lomo, cecina</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>EU before 9 October 2025: jambon sec</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>EU before 9 October 2025: not heat treated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>EU from 9 October 2025: not heat treated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>EU from 9 October 2025: sterilised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equalise and dry the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equalise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erythorbic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fennel seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fenugreek, ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fine sea salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fish sauce</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flake salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follows the seasons where there is no thermostat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>French</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fresh air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Garlic powder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Garlic, fresh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Great Britain: not heat treated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guanciale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hang to even out the salt and dry the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Honey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Italian and Spanish leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Italian whole muscle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jambon sec</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Juniper berries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kosher salt, dense grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kosher salt, light grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg, air-dried on the bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg, mountain air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Listeria cannot grow: water activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lomo, loin in adobo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lonzino, the cured loin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Magret, dried duck breast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maple syrup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marinate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite curing salt (0.6 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite curing salt, German (0.4 to 0.5 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No Codex entry for cured whole cuts that are not heat treated (08.2.1) was found: do not take this one for them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cold stage: a warm dry room with moving air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the ingoing row could be read, at second hand. Residual and nitrate rows of the new Annex are not here: read them before you rely on this set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out by day, in by night; 4 to 15 °C and 45 to 70 % are what cooks name. Warm spring weather stops it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pancetta, flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pancetta, rolled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paprika, ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pastirma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pickle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pickling salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poitrine séchée, dried belly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Potassium nitrite, undiluted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulsed dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw ham, from the brine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw ham, smoked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest in a bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest in the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restack and turn every day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rice wine, strength from its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse and pepper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rock salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roll, case and tie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt and adobo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt and vinegar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salted and smoked belly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salted by eye and weight class: write down what was used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saltpetre (potassium nitrate)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf stable: water activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoulder or ham in sweet pickle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Six hours warm, then down two degrees every twelve hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium ascorbate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium erythorbate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium nitrate, undiluted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium nitrite, undiluted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium tripolyphosphate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>South African</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soy and spirit by volume: weigh them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soy sauce</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spanish loin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spirit, strength from its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Summer sweat is wanted. Internal temperature at most 95 °F (9 CFR 319.106).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The casing day is the birthday of the piece: weigh it bare and dressed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next weighing may be wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rule counts the thickness before rolling: enter the flat thickness for the cure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Third drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread and hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three and a half to four days per pound, about 36 °F.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three to five millimetres of paste: weigh before and after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turkish and Armenian pressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two days per pound.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US FSIS: bacon, dry cured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US FSIS: bacon, immersion cured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US FSIS: bacon, pumped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US FSIS: chopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US FSIS: cured, labelled to keep refrigerated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US FSIS: dry cured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US FSIS: immersed, pumped or massaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US home curing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vinegar (5 % acid)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wash and pepper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wash and soak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh before and after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White pepper, ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole muscle in a cabinet, pulsed air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind-dried belly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wine, strength from its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wipe and dip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beef</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cup (US)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cup (metric)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>duck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pork</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tablespoon (Australia)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tablespoon (US food label)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tablespoon (US)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tablespoon (imperial)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tablespoon (metric)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tablespoon (traditional British)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>teaspoon (US)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>teaspoon (metric)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DateWords</name>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>A calendar day with its year, in Qt&apos;s date format; keep the parts, change their order.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>A calendar day without its year, in Qt&apos;s date format.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>A calendar day of few letters, in Qt&apos;s date format.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day, %2 a clock time</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>d</source>
        <extracomment>The day of the month before &quot;to 20 Mar 2026&quot;, in Qt&apos;s date format.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a span of days, e.g. &quot;14 to 20 Mar 2026&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ErrorWords</name>
    <message>
        <source>Nothing is entered here yet. Type a value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a number. Type digits, such as 740 or 2.5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The unit “%1” is not known. Use g, kg, oz, lb, mm, in, °C, °F, mL or fl oz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say which unit is meant, such as g or oz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is another kind of quantity than is asked for here. Enter one in the unit shown beside the field.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is outside what is possible here. Check the digits and the unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is left over after the value. Take it away or write it in a note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” can be read as a thousand or as a decimal. Write it without a thousands mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not in the expected form: %1. Check that it is the file you meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The column “%1” is missing. Add it to the file&apos;s first line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line could not be read: %1. Mend it and read the file again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time zone “%1” is not known on this computer. Choose another in Preferences.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not found. Check the name and whether the disk is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 may not be read or written by you. Change its permissions or choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a folder. Choose a file in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a Saltloft book. Choose another file, or make a new book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book was written by a newer Saltloft (%1). Install that version to open it; nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is damaged: %1. Open a backup, or salvage what can be read into a new book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is busy in another program. Close it there and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk is full. Free some space and try again; nothing was lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk did not answer as it should: %1. Check the disk, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is open for reading only, so nothing was changed. Close it elsewhere or free the file, then open it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This entry is no longer in the book: %1. Go back and choose again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This clashes with what is in the book: %1. Choose another code, or look at the entry again and repeat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book does not allow this: %1. Mend what is named and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no answer that meets everything asked: %1. Loosen one of the wishes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The computation did not settle: %1. More weighings usually help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped, as you asked. Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something went wrong: %1. Try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no detail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a place such as &quot;line 14&quot; or a file, %2 a sentence</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindingWords</name>
    <message>
        <source>this entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please look at this: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please look at %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by arithmetic from it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – unverified: read as quoted by others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – unverified: from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book is open elsewhere ({by}), so it can only be read here. Close it there and open it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book is open for reading only. To write in it, free the file&apos;s permissions and open it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book is damaged ({problem}) and is open for reading only. Back it up, then salvage what can be read into a new book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book lies on a network drive, where a break can lose the last entry. Keep it on this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book was brought up to date from version {from} to {to}. The copy from before is {backup}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program or the computer stopped without closing this book. All finished entries are here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place}: the {quantity} stood at {value} for {lasted}. A room is never that still: check the sensor&apos;s battery and contact.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place}: the humidity jumped by {by} on {at} and stayed there, while the temperature did not. Was a battery changed, the sensor moved, or the room set to another humidity? A salt-bag check will tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} and {second} disagree over {hours} hours: {humidity_apart} of humidity apart. Check both over a salt slurry before you believe either.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} says {stated}, but the weight losses of {pieces} pieces speak for {implied} ({implied_low} to {implied_high}). Check the sensor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place}: the pieces give off {water_per_day} of water a day, more than the {capacity_per_day} it can carry out. Expect damp air and slow drying.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place}: the pieces give off only {water_per_day} of water a day. With so little in it the air may dry their surface too fast: watch the humidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place}: {pieces} pieces for {places} places.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{joining} wet pieces would hang with {nearly_dry} nearly dry ones: the water to carry out rises from {water_now} to {water_then} a day, and the dry ones would take some of it up. Hang them elsewhere, or a week apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day rules for this way of curing disagree: {shortest} to {longest}. Choose one and keep it with the batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day rule belongs to another way of curing. Rules by weight come from burying in salt, rules by thickness mostly from weighed cures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day rules ({shortest} to {longest}) lie outside what salt diffusion suggests ({p10} to {p90}, half-way {p50}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{planned} is planned; diffusion suggests {p50} ({p10} to {p90}). The centre may get too little: give it longer or rest it cold afterwards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{planned} in more salt than it needs is longer than {p90}, when the piece passes {wanted}. Buried in salt, time is the dose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cure is at {temperature}, warmer than {limit}. Move it to a colder place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cure is at {temperature}, colder than {limit}: salt moves slowly there, give it longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frozen for {paused}: the cure stood still and that time is added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {temperature} the piece is frozen and the cure stands still. No end can be given until it is thawed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the thickness is known; salt coming in at the ends is not counted. Enter width and length for a better figure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With {fat} fat most salt goes into the lean, and more slowly than the figures say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With skin all round no salt can get in. Take the skin off one side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{salt} is more than the water of the meat can hold ({most}). Ask for less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thickness must be between 1 mm and 500 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width and length must be at least the thickness, which is the shortest side, and at most 2 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The salt must be above 0 and at most 20 % of the meat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature of a cure must be between -40 and 45 °C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The liquid around the meat must be between none and 20 times the meat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fat must be between 0 and 95 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;Even&quot; must mean between 50 and 99 % of the mean at the centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The planned time must be between none and ten years.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day rule &quot;{place}&quot; is not known. Choose one from the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{loss} in {took}, {per_day} a day, is fast (up to {usual_most} a day is usual). The inside may be behind the outside: cut one or rest it and weigh again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target is reached ({loss}), but the centre feels soft. Rest it so that it evens out, and look again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day). With {fat} fat there is little water left to lose: a fatty piece can be as dry as it gets below its target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day), though the piece is lean. Ask the air first: humidity {humidity}. In wet air it stops before it is dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day) with a soft centre: a dry rim may hold the water in. Rest it in a bag, then dry on in wetter air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loss levels off near {levels_off}; the target of {target} is not in sight in this air. Change the air or the target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It weighs {net}, more than at its start ({start}). Was it washed, coated or dressed? Enter that, or correct the weighing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{net} is less than the dry matter of {start} at the start. Look for a wrong weight, a tare or a cut that was not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The raw weight is not known; {start} is reckoned from a later weight and a usual loss in the cure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buried in salt, the amount put on says little about what went in. Salt and water activity are guesses here: have them measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water activity is an estimate from weights and salt. A rule that asks for it asks for a measurement.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured {measured}, estimated {low} to {high}. Look at the sample&apos;s place, the instrument&apos;s check, the salt and the fat entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weighings were not in order of time; they were sorted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to see the evidence.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {temperature} the piece spends about {time} between {low} and {high}, where microbes grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {time} in this warmth is longer than the {guide} that a guide (for fish) allows ready-to-eat food.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece may still be wetter than a water activity of {limit}. Dry it further in the cold before warming it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In warm air of {humidity} a thick piece can dry hard outside and stay wet inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warming at the end does not undo a toxin that Staphylococcus aureus has left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {temperature} the piece begins to cook rather than dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{target} is more than the water left can give; it levels off near {levels_off}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loss wanted is already reached ({loss}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to get an answer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is more salt than the water can dissolve ({most} of the water phase).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet end of the estimate is above {limit}, the lowest water activity at which {name} grows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weighing of {at} lies off the curve by {off_by}. Was the tare right, the hook on the scale, the scale level? Weigh again or correct the entry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{pieces} pieces weighed on {at} stepped by {shift} the same way. That points to the scale or its zero, not to the meat: check it with a known weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loss has nearly stopped ({rate_per_day} a day). A firm piece may be finished or fat; a soft one may have dried hard outside; a wet chamber slows all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It lost {loss} in {over}: the outside is drying faster than the inside can follow. Look for a hard rim; more humidity or a rest in a bag evens it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It weighs {gain} more than before ({at}). Was it washed, coated or dressed? Enter that as an event, or correct the weighing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The losses speak for about {implied} in the air, the log says {logged}. Check the hygrometer over a salt slurry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target of {target} lies beyond where this piece levels off ({levels_off}). Drier air or a lower target would change that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weight that the target counts from ({reference}) was never taken. Enter it, or count from another weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An event ({event}, {at}) has no weights, so the start could not be shared out. Enter the net weight before and after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weighing of {at} has no tare; the last known one was taken. Correct it if the casing or net changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} has no code. Give it two or three letters or digits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code {place} is taken already. Choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code {place} stands twice. Give each its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} has no name. Enter one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name of {place} is taken already. Choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say in a few words why; the reason is kept with the change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is entered yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} is not a number. Type digits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} lies in the future. Check the day and time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weight of {place} must be more than nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weight of {place} is below nothing. Check it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weight of {place} is far outside what a piece weighs. Check the unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tare of {place} is as heavy as what is on the scale. Check both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thickness of {place} must be more than nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share of {place} must lie between 0 and 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loss aimed for of {place} must lie between 0 and 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A score goes from 2 too little to 2 too much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The count of {place} is below nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The count of {place} must be at least one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price of {place} is below nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lower end of {place} lies above its upper end. Swap them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} ends before it starts. Check the days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text of {place} is too long. Shorten it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo of {place} is too large. Take a smaller copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recipe of {place} is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weight that {place} counts from cannot be known at this point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name at least two pieces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pieces belong to different batches. Weigh only pieces of one batch as one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} was discarded already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} was cut or weighed with others and carries on under another code. Open that piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutting and weighing as one have forms of their own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} is in the book already. Correct it instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stage {place} has started, so it stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stage {place} has ended already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stage {place} belongs to another batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is more than is left in {place}. Check the amount, or count the pack again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} refers to itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not a recipe file: it is no JSON text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recipe says version &quot;{found}&quot;; this program reads {wanted}. Was it written by a newer Saltloft?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} is missing: {wanted}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} means nothing here. Known are: {wanted}. Mend the spelling, so that nothing is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} is {found}; needed is: {wanted}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;; known are: {wanted}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;, which cannot be read as a quantity ({reason}). Write it like this: {wanted}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recipe has no ingredients yet. Add the first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is not in the catalogue. Choose another, or describe your own from its label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient} stands in the recipe twice. Both count: is that meant?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two ingredients of your own share the id {found}. Rename one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the nitrite and nitrate from its label. Curing salts differ tenfold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: a strength of {found} looks like a proportion typed as percent. 0.0625 on a sheet is 6.25 %. Enter what the label says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: no curing salt is sold at {found}; labels run from {low} to {high}. Read the label again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {strength} nitrite, from its name only. Enter the strength from the label in your hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the percent by volume from the label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is stronger than distilling goes. Is it proof?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is rare. If the label says proof, enter it as proof with its country.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is a spirit&apos;s strength, not a wine&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: {found} is more than pure salt holds. Milligrams taken for grams?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: how salty is it? Enter salt or sodium from its label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {low} to {high} salt. Enter the sodium from the label to narrow that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: the parts add up to {found}. Check the label&apos;s figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: nothing in a kitchen weighs {found} g to the millilitre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: no density is known, so a volume cannot be turned into weight. Please weigh it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: its label counts by volume. Enter its density, or weigh 100 mL of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is no measure with a known size. Spoons differ by country: choose one from the list, or weigh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: the amount is nothing. Enter it or take the line out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no water to count from. Add the water of the brine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water cannot be a share of itself. Enter it by weight, by volume or as a share of the meat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some amounts are fixed and stay the same for any weight of meat. Say for how much meat they were written, and they follow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much pickle is pumped in? Enter it as a share of the meat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much pickle does the meat take up? Weigh a piece before and after, or use the method at equilibrium.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{found} looks like a proportion typed as percent: 0.1 on a sheet is 10 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meat does not take up {found} of its weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{found} of the meat&apos;s weight is a lot of pickle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buried in salt, what goes on is known and what goes in is not: the doses here are what you put on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rubs add up to {found}, not to the whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rubs must follow each other in time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place}: there is no such rub in the recipe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw meat seldom holds {found} of water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin is seldom {found} of a piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No meat loses {found} of its weight by drying.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the weight of the meat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A piece without a weight cannot be dosed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A piece of {found}: grams, or kilograms?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A piece of {found}: kilograms, or grams?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} of {ingredient} on a {step} scale is wrong by up to {error}. Use a finer scale, or blend a larger batch first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a {step} scale a piece&apos;s cure would show as nothing. Use a finer scale, or blend a larger batch first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your wish for {what} ({asked}) cannot be met with what you hold: it comes to {found}, short by {by}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you hold brings more {what} than the limit of {asked}: {found}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about ten times what is usual. A slipped decimal?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about a tenth of what is usual. A slipped decimal?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: {found} looks like a proportion typed as percent. 0.025 on a sheet is 2.5 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient} at {found} of the meat: that is an amount for salt, not for a strong curing salt. It would be {nitrite} nitrite.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient}: with tablespoons the dose is {found}. Teaspoons would be usual. Please weigh it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient} is measured by the spoon. Spoons differ by a quarter: weigh it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient} is undiluted. A gram too much is a poisonous dose: a ready-mixed curing salt forgives more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ingredient} holds {strength} nitrite, so this gives {found} only. Is the amount meant for a strong curing salt?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrate comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite comes to {found}; above {limit} is allowed for few products. Choose the limits that apply to you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no nitrite or nitrate in this recipe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No limits are chosen, so the dose is checked against none. Choose the ones that apply to you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; whole muscle is seldom cured with less than {limit} (common practice).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; above {limit} few people eat it (common practice).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat. With weighed salt that is a slip; for burying in salt choose that method.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar comes to {found} of the meat; more than {limit} is unusual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accelerator comes to {found}; usual is about half a gram to the kilogram.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, above the limit of {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{set}: {substance} is not permitted; the recipe brings {found}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{set}: {substance} keeps the limit of {limit}, but with the spread of what you measure it may come to {found}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, below the minimum of {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{set}: the limit of {limit} for {substance} is on what a laboratory finds in the product. No sum can show it; {found} goes in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{set}: the limit for {substance} is on the finished product. Enter the expected loss, or the dose is judged too low.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{set}: unverified. The issuer&apos;s own text was not read for all of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{set}: not in force today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{set}: made for another way of curing than this recipe&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no limits called &quot;{found}&quot;. Choose from the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin on: {share} of the weight is taken off before the sum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No piece is entered: the days are for the usual one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weight is not entered: {weight} is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thickness is not entered: {thickness_mm} mm is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing says how long “{place}” takes: it is planned as no time at all. Enter a time for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{place}” is made longer: the rule asks for {needed} in all, and the stages came to {days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day rule of “{place}” belongs to another way of salting: days per kilogram are for burying in salt or for brine, days per centimetre for a weighed cure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{place}” has {days}, and its rule asks for {needed}. Give it the time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day lies in the past.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs {days_needed} days and there are {days_available}: {shortfall} too few.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{place}” takes {days} days, and cannot take less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing says when “{place}” ends or how long it usually takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{place}” repeats with more stages than follow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of rounds of “{place}” lies outside its own bounds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{place}” repeats inside another repeat, which cannot be planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{place}” shares a room with a stage that is not in the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A minimum names the stage “{place}”, which is not in the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two stages are called “{place}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan has no stage that salts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{on_scale} is not more than the tare of {tare}. Weigh again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last time it was {last}: is {on_scale} a slip of the decimal sign?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{on_scale} was not expected: between {low} and {high} would be. Right piece, right tare, hook on?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same number as last time. That can mean done, a coarse scale or a damp chamber.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeepingWords</name>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Events</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outcomes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acceptances of cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recipe versions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ingredients</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uses of ingredients</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moves of stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ticks of the day&apos;s work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chambers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climate readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day with its year, %2 a clock time</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches: %1, pieces: %2, weighings: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This backup is damaged itself, so it is not put in the place of the book. Choose another one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This backup was read from end to end and is whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It brings back: %1. Last entry: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no book now, so nothing is replaced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book as it is now cannot be read, so what would be lost is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book has now: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No change was made since this backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes made since this backup, which would be gone from the book: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book as it is now is not deleted: it stays in the same folder, with “replaced” and the moment added to its name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is sound: its pages, indexes, links and climate roll-ups agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your entries and readings are whole. Sums made from climate readings do not agree with them (places: %1), so charts and hours of air may be wrong. They can be made anew from the readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is damaged (places found: %1; they are listed below). Write nothing more into it. Restore a backup, or salvage what can be read into a new book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book&apos;s own records (log, preferences, sums)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new book is made and passed its check. No entry was found that could not be read; whole pages that are gone leave no trace, so look it through. The damaged book was not changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new book is made and passed its check. Entries that are known to be lost: %1. Look it through. The damaged book was not changed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LimitWords</name>
    <message>
        <source>%1 (partly unverified)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LossChart</name>
    <message>
        <source>days since hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>net weight, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weight lost, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2 net · %3 lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: forecast, 8 in 10 fall inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 lost on %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, target %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% RH</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ManualText</name>
    <message>
        <source>Saltloft: the manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan, weigh and follow cured and air-dried meat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pictures show an invented demonstration book; no producer, batch or person in it exists.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MixBench</name>
    <message>
        <source>nitrite 6.25 %; nitrate 4 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>40 % or 80 proof US</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt 16 % or sodium 6.3 g/100 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acid 5 %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MixSheetText</name>
    <message>
        <source>Weigh out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>   of it for rub %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to weigh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No limit set was chosen: the dose was not compared with any.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece %1: %2 of meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All pieces together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh the curing salt on the finest scale, and read its strength off the bag in your hand. Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No piece of this batch has a green weight: weigh the meat first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This batch keeps no recipe that can be read: choose one first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MixTables</name>
    <message>
        <source>nitrite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>going in, on the raw weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left over, by laboratory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as sodium salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as ion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not permitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not computable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale, ±</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquids fully taken up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half taken up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt, all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite, as NaNO2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite, as the ion NO2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrate, as NaNO3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrate, as the ion NO3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ascorbate or erythorbate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ascorbic or erythorbic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol, of the whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength of the liquids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 vol (%2 US proof, %3 UK)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit and its source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, %3: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: a scale that shows %2 would do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or blend a larger lot first: %1. Mix it evenly, then weigh %2 of it for the smallest piece: ± %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry, weighed, all taken up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buried in salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Immersed, by pick-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Immersed, at equilibrium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brine of meat and water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pumped in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marinade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wash of vinegar or spirit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the added water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of meat and water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of all water</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ModelWords</name>
    <message>
        <source>slab (flat)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder (long and round)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block (brick)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cured, not rinsed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rinsed and wiped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in casing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in net or string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weight after the cure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>curing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discarded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dressed again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sampled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut in pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frozen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thawed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hung to dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mould</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hung again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soaking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marinating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smoking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ageing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equalising</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>freezing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>storing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too few weighings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at its target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target out of reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fridge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying cabinet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>freezer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>face to face, at the thickest point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diameter, at the thickest point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the shortest side</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PieceWords</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>%1 the loss now, %2 the loss aimed for</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or later, perhaps never</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>Turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rub again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rubbed again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Massage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Massaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighing left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh again, as decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chamber looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judge whether it is done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judging left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instrument check left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eat or sell first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within the time above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until the date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your own pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying model</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They hung at this time of year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They lost %1 a week on the whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n week(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n week(s)</source>
        <extracomment>%1 a smaller number</extracomment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done in this chamber.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>Batch record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trace: one step back, one step forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass balance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stages were planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Driest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean RH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dampest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no readings %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No readings were recorded while this batch was in a chamber.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature and humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note, correction and why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrects %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected by a later entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back by %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never weighed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighings with corrections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck figures were corrected or taken back and no longer count; they stay readable.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No events were recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Events</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Action taken, initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No excursion of an hour or longer is in the readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No caution was accepted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen or done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (photo: %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No notes were recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviations and corrective action</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air out of its band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes and actions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Further deviation · limit · action taken · date and time · initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Action</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments and calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laboratory measurements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water activity and pH are measured, not computed. Enter what a laboratory or an instrument found, with the instrument, its calibration and the date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample of piece · water activity · pH · instrument · date · initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No decision has been signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch %1 · %2 · started %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Species</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier of the meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frozen before curing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green weight of all pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Identification</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hung weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss of green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss of hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (from %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pieces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights are net. A loss is left out where something was cut off or put on in between: see the events.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ingredient lots were recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inputs with lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Computed doses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not computed: no piece has a green weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not computed: the batch keeps no recipe that can be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On green meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line of the recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrate strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No limit set was chosen for this recipe: the doses were not compared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compared with the limit set: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record made by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Released by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Officer, seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures are records and computations. Whether a product may be sold or eaten is for local codes, licensed practice and laboratory measurement.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Their lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>packed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing of this batch has been packed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the green weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green weight of the pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight now, of pieces not discarded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green weight less net weight now: water, discarded pieces, ends and samples</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hung again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still in stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packed, but not accounted for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The packs do not balance: %1 cannot be accounted for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought less trimmed off less green weight: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <extracomment>A month, in Qt&apos;s date format.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>curing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discarded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cased</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>netted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>casing or net put on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>casing or net changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sampled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frozen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thawed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soaking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marinating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smoking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ageing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equalising</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>freezing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>storing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mould</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>action</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hung again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water activity meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cured weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too damp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ingoing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>residual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ABOVE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below the minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT PERMITTED, used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>laboratory only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReviewWords</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lies below it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lies above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lies on both sides of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt put on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fat share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighings while drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured water activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost of the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pace in the first week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pace in the last two weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time since hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated, 8 in 10 fall in the range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water of the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt of the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt in its water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an estimate; only a laboratory measures it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside cited figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen, felt, smelt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would add to the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean %1, %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no band to hold it against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never out of its band in the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no climate log covers this piece&apos;s time there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 too cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 too warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 too dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 too damp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not logged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of this time nothing is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages and their air</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SaveCalendar</name>
    <message>
        <source>Save the calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendar kept in %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pack a finished piece…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is packed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When a piece is signed as done, pack it here: whole, cut, under vacuum or frozen. The list then shows what to eat first, what is left, and where everything went.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack a finished piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In eating order: open packs first, then the nearest day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show packs that are &amp;gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show packs that are gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take from it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was taken from the pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, open since %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1, past</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From piece %1 of batch %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yield: %1 packed of %2 raw, %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meat cost %1 a finished kilogram.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finished packs: what to eat first and where it went</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TagText</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tags</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weigh-in round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No work yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once a batch is planned, this page lists each day&apos;s work across all batches: turning, rubbing, weighing, looking at the chambers, judging what is ready. One key ticks a line off; what was missed stays at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Leave out this time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is left for today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Do it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space or Enter: %1 Delete: leave it out this time.</source>
        <extracomment>%1 what the key does</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day&apos;s work across all batches</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>UnitWords</name>
    <message>
        <source>oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% RH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% vol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ppm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Upset</name>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upset in %1: %2 to %3, highest air temperature %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a reading: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2: stage %3, hung %4, lost %5, salt at most %6, nitrite put on %7.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 (water activity %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Air in growth range: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A record of the air, not of the meat&apos;s core, and no judgement.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WarmWords</name>
    <message>
        <source>No time can be given: see below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is there already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About %1 in the warm air; 8 in 10 pieces take %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 tenfold steps in a laboratory medium, without lag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm finish, %1: air at %2 and %3, from %4 to %5 lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the growth range of %1: %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WhatIfWords</name>
    <message>
        <source>reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not reachable: more likely never than ever</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a temperature, %2 a humidity: air</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 chance in 10 by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even odds by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>9 chances in 10 by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Levels off at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No humidity at %1 draws water as strongly as %2 does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equal drying power: %1 at %2 draws water as strongly as %3 at %4. How far the piece can dry follows from humidity almost alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lies in the cited growth range of %2 (%3 to %4), which %5 does not. %6</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WorkList</name>
    <message>
        <source>Work of the day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>app::window::Session</name>
    <message>
        <source>Open a book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back up a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy was written and read back: %1, %2, %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weighing(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is in its place and open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is in its place and open. The book as it was before is kept as %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartPainter</name>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartView</name>
    <message>
        <source>Move over a point, or use Left and Right, to read it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::edits::DayField</name>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day, e.g. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pick from a calendar (Alt+Down)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pick a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::models::WorkModel</name>
    <message>
        <source>Overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coming</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <extracomment>a heading of the day sheet and how many lines it has</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch and pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchDialog</name>
    <message>
        <source>Change batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price per kilogram</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meat was frozen before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;tarted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bought weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trimmed &amp;off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;rice per kilogram</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stat&amp;e</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchesPage</name>
    <message>
        <source>Batches and pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New batch…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A batch is meat cured together from one recipe. Weigh it, let the mix sheet compute the cure, and give each piece a code. From then on every weighing finds its place by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the first batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find by code, name, product or supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show &amp;finished batches too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show finished batches too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces of the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a piece…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change the batch…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches above pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>started %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bought %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All batches and their pieces</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberDialog</name>
    <message>
        <source>Change a chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest temperature wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest temperature wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest humidity wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest humidity wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water it can carry out a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places to hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;What it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Temperature from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Humidity from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water it can carry &amp;out a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Places to hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;otes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the chamber a name, such as &quot;Cellar&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is below the lowest temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is below the lowest humidity.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberPage</name>
    <message>
        <source>Chambers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No chamber yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A chamber is where pieces cure or hang: a fridge, a cabinet, a cellar. Add one with the air you want in it; then import your logger&apos;s file to see how the air really was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About the chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sensors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L&amp;ogs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record an &amp;upset…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import a log…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>90 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ten years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second sensor laid over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>◀ &amp;Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>La&amp;ter ▶</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ne&amp;west</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times out of band, half an hour or longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no second sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 watched, no time out of the band.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 watched: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For %1 nothing is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sensor here yet: import a log, or add a sensor on the Sensors tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This sensor has no readings yet: import a log.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch about to be hung here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;What if this batch is hung here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hung for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its weighings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the usual pace of its age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces by the water they give off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air, sensors and load of the rooms where pieces hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ never checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt-bag check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensors in this chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments are often wrong, and believed. Check each over a salt slurry every six months and after a battery change; the dates are common practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a senso&amp;r…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record a chec&amp;k…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of water a day, %2 % of what %3 can carry out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of water a day. What the chamber can carry out is not known: weigh the water it sheds in a day, and enter it under Change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing hangs here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worth swapping, the fast with the slow of the same age: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ stopped half-way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logs taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A watched folder&apos;s new files are taken in by themselves, once a first file of the sensor has been imported by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the newest log &amp;back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop watching the &amp;folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a sensor first, so that the files have somewhere to go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>logger</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n place(s) are free.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::CheckDialog</name>
    <message>
        <source>Check the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads %1 from end to end: pages, indexes, links between entries and the sums of climate readings. It changes nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is being read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the climate roll-ups a&amp;new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The check is under way. A book with years of climate readings takes a while.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The climate roll-ups are being made anew from the readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book is open for reading only: open it for writing to do that.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::EntryDialog</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
If this is right, press Keep again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::EventDialog</name>
    <message>
        <source>Drying starts. The net weight now is the hung weight that losses count from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A casing or net was put on. Its weight is tare from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Casing or net was changed. The net weight stays; only the tare changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lard, paste or pepper was put on. The added weight is not meat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something was cut off. Start and target shrink in proportion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wedge was taken to taste. Start and target shrink in proportion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece was pressed. Water pressed out counts as loss.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece was washed or soaked. The next weighing may be wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece hangs elsewhere now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece was frozen. The cure clock stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece is thawed. The cure clock runs again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target net: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target on the scale: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tare: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight &amp;after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight as hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Net weight as hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tare from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tare from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New start weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in proportion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;start, if not in proportion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What changes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::GuidePage</name>
    <message>
        <source>Guide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the guide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pre&amp;vious</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The guide is in English.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not in the guide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the work goes, what to do when, and the mathematics</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n chapter(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::HangingPage</name>
    <message>
        <source>What hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing hangs yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When a piece comes out of the cure, open it and choose &quot;What happened: hung to dry&quot;. From its second weighing on it stands here on a time axis with the interval in which it is expected to reach its target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is &amp;ready by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drying pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns and dates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar: how far the loss has come towards the target, from hanging to now. Box: 8 chances in 10 that the target is reached inside; the line in it is even odds. An arrow: it may never be. At target is not done: look, touch and cut before you decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It dries much faster or slower than the others of its batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fast ▲ </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slow ▼ </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a day, such as a market or a feast, to see which pieces are expected to be at their target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nine chances in ten or better: %1. More likely than not: %2. Possible: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drying pieces on a time axis, and what is ready by a day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::ImportLogDialog</name>
    <message>
        <source>as found in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a climate log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the file your logger wrote. Nothing is stored before you press Import, and one Undo takes the whole log back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>winter time all year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;ecimal sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cloc&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the file reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logs (*.csv *.txt *.tsv *.log);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part of this is a guess. Say above how the file is to be read; it is remembered for this sensor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file reads well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cancel the import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first is line %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 say something else than the book, which was left as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the first %1 lines %n are no readings; they will be left out.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n reading(s) are new.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopped. %n reading(s) were taken in before; Undo takes them back.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) are no readings.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::LostWeightDialog</name>
    <message>
        <source>%1: a weight is lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter as an &amp;estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No start weight can be found missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw and hung weight are both in the book, or the piece was never weighed. A weighing that was missed later needs nothing: the curve has no fixed rhythm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which weight is lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day it should have been taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight, estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which weight is &amp;lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day it should have been taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Net weight, estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be said of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered as an estimate it stands in the list with its range. Losses count from it and are as uncertain as it is; the curve does not lean on it. It can be undone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or leave it unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel, and nothing is made up: the days since hanging, the rate from weighing to weighing and the loss from every weight that is known are still counted. The target can be bound to one of those under Change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the day, and the estimate stands here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>About %1; 8 in 10 such pieces lie between %2 and %3. From %n piece(s) of its batch and the air they hung in.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a raw and a hung weight are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a hung weight, five weighings and half their target lost are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By its form and the air alone it lay between %1 and %2: too wide to count from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no estimate to enter yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::MainWindow</name>
    <message>
        <source>Daily round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The open book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented data: this book shows a producer that does not exist. Nothing you do here touches your own book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book is open for reading only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Demonstration book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – Saltloft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Menus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;demonstration book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back up a copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print this page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the &amp;places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Saltloft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Saltloft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saltloft %1

Plan, weigh and follow cured and air-dried meat.

Free software under the GNU General Public License, version 3 or later.
It keeps records and computes; it does not decide whether food may be eaten.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Guide to this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demonstration book is made anew each time; there is nothing to restore.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book is open elsewhere. Close it there and open it again to restore a backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book may only be read by you. Free the permissions of the file and its folder to restore a backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of this book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Check the book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads the book from end to end and says whether it is whole</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::MergeDialog</name>
    <message>
        <source>Weigh %1 with others as one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed together with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code of the bundle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All together on the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weighed together with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Code of the bundle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;All together on the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark at least one other piece.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::MixLines</name>
    <message>
        <source>Ingredient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ingredient of line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount of line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2.5 %, 40 g, 100 mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What line %1 is a share of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the label of line %1 says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold line %1 as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take line %1 out</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::MixOwnDialog</name>
    <message>
        <source>An ingredient of my own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter what the label says; divide the figures with semicolons. Words: nitrite, nitrate, salt, sodium, sugar, alcohol, acid, water, density (g to the mL).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sauce</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar or syrup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spirit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vinegar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spice or herb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What its label says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the &amp;label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::MixPage</name>
    <message>
        <source>Mix bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meat and the recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of the meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1500 g; several pieces: 820 g; 1180 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weight of the meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ingredient of my own...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How, and against which limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scale shows steps of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pickle taken up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 % of the meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pickle taken &amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected loss of weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>35 %, for limits on finished meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;kin on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fatty cut (belly, jowl)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fatty cut (belly, jowl)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Scale step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected l&amp;oss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the amounts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick Hold on the lines that must stay, say what you want, and the other lines are found. What cannot be met is named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt wanted, of the meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2.75 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite wanted, of the meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>120 ppm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt wan&amp;ted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite wante&amp;d</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find the rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put on the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to put on the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What that is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare with another recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Compare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the meat gets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against the limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dose against the limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at this first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what changed, for your later self</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep this recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These sums are no verdict on the food. Local codes, licensed practice and laboratory measurement come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to weigh for this meat, and what dose that really is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the weight of the meat, and here stands what to weigh for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read, and taken on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution read and taken on: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. To mend before this can be used: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions to read and take on by name: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing stands open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the weight of the meat first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say how much salt or nitrite you want.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend the stops first: something is not known yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found: the lines not held were changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the recipe a name first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has changed since the last version.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::MonthView</name>
    <message>
        <source>%1 more</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::NewBatchPage</name>
    <message>
        <source>New batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch &amp;code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;upplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw weight as it goes into the cure, without wrapping. Measure the thickness at the thickest point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss aimed f&amp;or</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pl&amp;an</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cure: dry, weighed, all of it taken up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shares are of the raw weight. Curing salt counts by the strength on its packet, not by its name or colour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curing salt, dose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite on the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as listed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrate on the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sal&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Su&amp;gar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed &amp;on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dose of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;itrite on the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrat&amp;e on the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix sheet: what to weigh for each piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I have read the &amp;cautions and take them on myself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I have read the cautions and take them on myself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the &amp;batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code of piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut of piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw weight of piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut or description</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meat, pieces, cure and plan of a new batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a plan there are no dated tasks; weighings and forecasts work all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter a raw weight to see what to put on the scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off by the scale&apos;s step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to ± %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt in all: %1 of the meat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nitrite going in: %1 (as sodium nitrite)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nitrate going in: %1 (as sodium nitrate)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Within %1, by %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not to be computed from the recipe: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No limits are chosen; choose those of your country in Preferences.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A field needs mending; it says how.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cure has a stop above. Mend it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are cautions above. Read them, then tick that you take them on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n stage(s), from %1 to about %2.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::NoteDialog</name>
    <message>
        <source>Add a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;photo…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This photo cannot be read or is larger than 12 MB. Choose a smaller copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a few words or add a photo.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a picture that can be shown. Choose a JPEG or PNG file.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::OpenTroubleDialog</name>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Puts an earlier copy in its place; the file as it is now is kept under another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carries every entry that can still be read into a new book; this one is not changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open another book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaves this file as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a &amp;new book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starts an empty book in another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book did not open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PackChangeDialog</name>
    <message>
        <source>Change pack %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Opened on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PackDialog</name>
    <message>
        <source>Pack a finished piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packed on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packed &amp;on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep &amp;until, if you set a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long a pack keeps depends on the product, its dryness and the cold. Follow your own code or laboratory; without one, look, smell and decide at each opening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No piece is finished yet. Sign a piece as done in its review first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PersonDialog</name>
    <message>
        <source>Change a person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Works here now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Works here now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Initials, as signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter a name and the initials to sign with.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoDialog</name>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Previous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 · %3 · %4 · %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a copy of the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy is in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoStrip</name>
    <message>
        <source>The photo %1 cannot be shown: it is damaged, or of a kind that cannot be read here. Save a copy to try it elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo %1 is no longer in the book. The note itself is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not readable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo of %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PieceDialog</name>
    <message>
        <source>Chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in a chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code on the tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Code on the tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut or description</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;ut or description</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Raw weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fat, as a share of the raw piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fat share, if known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;kin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cha&amp;mber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hook, rail or shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Hook, rail or shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order in the weigh-in round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Order in the round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the piece a code: two or three letters or digits.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PiecePage</name>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What &amp;happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is it &amp;done?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weigh…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loss in percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>net weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by days since hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show a&amp;ll</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the c&amp;hart…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records of the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Events</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces cut from one another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One piece in full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter corrects the marked weighing; the old entry stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;orrect…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take &amp;back…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;note…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tare after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batch %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss curve of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost of the %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No weight to count a loss from yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target %1: %2 net, %3 on the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No target set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At target: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Levels off at %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed as done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighings (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Events (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This entry was corrected or taken back already; correct the newer one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 on the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chart is in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finish it in warm air…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dehydrator or a low oven: how long, and how long where microbes grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fridge or chamber failed…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power cut, door left open: what each piece there was like, and how warm it became.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter on a note with a photo shows it large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is in no chamber of the book. Choose its chamber under Change first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This note has no photo.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What &amp;if…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a weight is lost…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A start weight was never written down: what its siblings say it was.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanPage</name>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sa&amp;ve as calendar file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages of the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Into the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>optional, e.g. Winter coppa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the &amp;batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These weights are &amp;just off the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These weights are just off the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Put the batch in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Template: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cure rules for the thickest piece, side by side: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds of “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no plan to save: the day cannot be met.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When to begin, and what to do when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it will be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your name for the product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it will hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your &amp;name for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Hangs in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Start on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Be &amp;ready by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Be ready by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep slac&amp;k for slow pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep slack for slow pieces</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanStrip</name>
    <message>
        <source>The plan along time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::PreferencesPage</name>
    <message>
        <source>Preferences</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept on this computer, not in the book. Every field still accepts any unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grams and kilograms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ounces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pounds and ounces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US fluid ounces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits to check against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Temperatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;hickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Li&amp;quids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Limits to check against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;person…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who signs decisions and corrections.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who works at this desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who works at this &amp;desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Works here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scales</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;scale…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step is the smallest change the display shows. It decides which doses the scale can weigh and how sure a curve is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check every</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So things read: %1, %2, %3, %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units, language, limits, people and scales</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::RestoreDialog</name>
    <message>
        <source>Restore a backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of the book %1. Choose a copy to see what would be lost and what would come back; nothing is changed before you confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is being read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another &amp;file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Restore this backup…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups of this book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no backup in the folder “backups” beside the book. Choose a copy you keep elsewhere with Another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put this backup in the place of the book?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restore</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::ReviewPage</name>
    <message>
        <source>Is it done?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the &amp;piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evidence, not a verdict. A number says how much water has gone; your hand, nose and eye say the rest. Follow the code where you live and your laboratory.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look, then decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The centre feels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not felt yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>springy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>firm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The &amp;centre feels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;note or photo…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Done: it comes down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not &amp;yet: weigh and look again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disc&amp;ard: it is thrown out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Look again on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed &amp;by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose who signs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is %1 done?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed before:
%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one of the three first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose who signs. People are added in Preferences.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evidence beside each other, and a signed decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a p&amp;hoto…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No photo of this piece yet. The cut face says more than a number does: take one, and the next batch can be held beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish it in warm a&amp;ir…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::SalvageDialog</name>
    <message>
        <source>Salvage into a new book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carries every entry of %1 that can still be read into a new book. The damaged book is not changed; keep it until you have looked through the new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book is being carried over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Salvage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carried over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known to be lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was carried over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name the file of the new book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is there already and is not replaced. Choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing could be carried over. %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::ScaleDialog</name>
    <message>
        <source>Change a scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest step it shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check it every so many days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest &amp;step it shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Check it every so many days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the scale a name, such as &quot;bench scale&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorCheckDialog</name>
    <message>
        <source>Check %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag, 75 % humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of the check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the sensor said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you did about it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked &amp;against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the sensor &amp;said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you did about &amp;it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt slurry: table salt just wet, in a closed bag with the sensor for twelve hours or more. Common practice: every six months; ice at least once a year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is off: add %1 K to its temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is off: add %1 points to its humidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice water, 0 °C</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorDialog</name>
    <message>
        <source>Change a sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added to its temperature, kelvin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added to its humidity, points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Where it hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added to its &amp;temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added to its &amp;humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings are kept as the sensor gave them; what is added here only changes what is shown and judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the sensor a name, such as &quot;by the door&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::SplitDialog</name>
    <message>
        <source>Cut %1 into pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh each part without casing or net. Start weight and target are shared out in proportion; the family stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;One part more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code of part %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight of part %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part &amp;%1: code, net weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, start %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, target %1 net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not accounted for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The parts weigh %1 more than the whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The parts weigh more than the whole. Check the weights, or the net weight before the cut.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeDialog</name>
    <message>
        <source>Take from pack %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;All that is left (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that is left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;What becomes of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;How much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;To whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::UpsetDialog</name>
    <message>
        <source>Upset in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a record to weigh up with your own code, your adviser or a laboratory. It is of the air, not of the meat&apos;s core, and judges nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep as a note on each batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the temperatures come from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what I saw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the log of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day it began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time it began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long it lasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature it reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Temperatures from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It &amp;began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It &amp;lasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Usual temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It &amp;reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrite put on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water activity, estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces, to be looked at in this order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can grow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of air in its range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its temperatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours in growth ranges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be looked at in this order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of air in growth ranges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For %1 there is no reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) were there. Highest air temperature: %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The record is kept as a note on %n batch(es).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::WarmDialog</name>
    <message>
        <source>%1: finish in warm air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dehydrator or a low oven takes the last water out in hours. It also spends those hours where microbes grow. What stands here is reckoned from the piece&apos;s own pace and published figures; it judges nothing. Follow your own code.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Record in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air of the device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water of the piece now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begun now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Air of the device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its &amp;humidity, a guess if not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Loss wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Water of the piece now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Thickness now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How &amp;far it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours inside growth ranges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Organism</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In its range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No loss is known yet: weigh the piece first, so that there is a start to count from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill in what is empty above, and the hours stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned from the pace it dries at where it hangs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned from published figures: its own pace is not known well enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no answer to record yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighInPage</name>
    <message>
        <source>Weigh-in round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to weigh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The round lists every piece that is curing, resting or drying, in the order in which it hangs. Start a batch, then come back once a week: a number and Enter for each piece is all it takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces in hanging order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece whose turn it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note, if any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep and go on  ⏎</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass over  ⇟</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;On the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 weighed. Enter keeps and goes on; Page Down passes over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last time: %1 on the scale, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not weighed before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected now: %1 to %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from its forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from its last weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected now: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
If it is right, press Enter again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 kept. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh every hanging piece in hanging order</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>All %n piece(s) are weighed.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighingDialog</name>
    <message>
        <source>Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scale not named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (step %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the weighing of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What hangs there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface is &amp;wet (just washed or wiped)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W&amp;hat is on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tare (casing, net, hook)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>e.g. misread, wrong tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wh&amp;y it is corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net weight: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lost of the %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say in a few words why the entry is corrected; the old one stays readable beside it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::WhatIfDialog</name>
    <message>
        <source>%1: what if…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A forecast needs the weight its loss is counted from, and weighings since it was hung. Weigh the piece, or choose another weight to count from under Change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The change holds from the last weighing on, and exactly as entered. Nothing of this is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece has no target; 35 % of the hung weight is taken to begin with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Humidity of the chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Te&amp;mperature of the chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Target, loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled in: the last steady stretch of the chamber&apos;s log.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled in: a usual air, as no log says what it is (common practice, no source).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Use that humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it is and with the change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill in what is empty above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it is; nothing is changed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it is, and with the change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the temperature to see which humidity there has the drying power of the air as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the cited growth ranges as it is, by temperature alone: %1. Water, salt and acid count too; the program judges none of it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::pages::WithdrawDialog</name>
    <message>
        <source>Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
The entry no longer counts, but stays readable in the history.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say in a few words why.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::presenters::DayWork</name>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens the weigh-in. The line goes when the weight is in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens the evidence for this piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens the stock. The line goes when the packs are gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens the instruments. The line goes when a check is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begins the stage now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ends the stage now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes the tick back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ticks it off as done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 for today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 done</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n pack(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n time(s) missed</source>
        <extracomment>%1 how late, %n how often it was not done</extracomment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::LostWeight</name>
    <message>
        <source>estimated, %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::presenters::PlanCalendar</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::presenters::PlanDraft</name>
    <message>
        <source>Ready about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely ready %1; the rest until %2 is slack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No slack: half of such plans end later than %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan it smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A piece of at most %1 and %2 would be ready by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan this instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan for that day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun today, it would be ready by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You wrote last time: “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was too soft: %1 is worth a try.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was too dry: %1 is worth a try.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was too salty at %1 in the finished piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It lacked salt at %1 in the finished piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % RH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in the end %2</source>
        <extracomment>a band that changes over the stage: from %1, in the end %2</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 for %2 in every %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 every day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 every %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on day %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 days per %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 plus %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By diffusion the centre has come close to the rest after %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start; it may be %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It would be %n day(s) late. A stronger dose or a shorter cure does not help: salt needs its time.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 needs %n day(s) for its usual piece, %2 to spare.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 every %n day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) of %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::WatchedFolder</name>
    <message>
        <source>The watched folder %1 is not there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is in the watched folder, but part of how it reads is a guess: import it once by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 from the watched folder: %n new reading(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::Workspace</name>
    <message>
        <source>Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undone: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
