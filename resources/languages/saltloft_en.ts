<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>CalibrationText</name>
    <message numerus="yes">
        <source>Set to every %n day(s) here.</source>
        <translation>
            <numerusform>Set to every day here.</numerusform>
            <numerusform>Set to every %n days here.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DateWords</name>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation>
            <numerusform>in %n day</numerusform>
            <numerusform>in %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>%n day ago</numerusform>
            <numerusform>%n days ago</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>KeepWords</name>
    <message numerus="yes">
        <source>%1: %n day(s) from opening</source>
        <translation>
            <numerusform>%1: %n day from opening</numerusform>
            <numerusform>%1: %n days from opening</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n day(s) from packing</source>
        <translation>
            <numerusform>%1: %n day from packing</numerusform>
            <numerusform>%1: %n days from packing</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LossChart</name>
    <message numerus="yes">
        <source>%n earlier piece(s) for comparison</source>
        <translation>
            <numerusform>%n earlier piece for comparison</numerusform>
            <numerusform>%n earlier pieces for comparison</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message numerus="yes">
        <source>%n week(s)</source>
        <translation>
            <numerusform>%n week</numerusform>
            <numerusform>%n weeks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n week(s)</source>
        <extracomment>%1 a smaller number</extracomment>
        <translation>
            <numerusform>%1 to %n week</numerusform>
            <numerusform>%1 to %n weeks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n day(s)</source>
        <translation>
            <numerusform>%1 to %n day</numerusform>
            <numerusform>%1 to %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done in this chamber.</source>
        <translation>
            <numerusform>Your last one took %1 from hanging to done in this chamber.</numerusform>
            <numerusform>Your last %n took %1 from hanging to done in this chamber.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done.</source>
        <translation>
            <numerusform>Your last one took %1 from hanging to done.</numerusform>
            <numerusform>Your last %n took %1 from hanging to done.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>app::window::Session</name>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n batch</numerusform>
            <numerusform>%n batches</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n piece</numerusform>
            <numerusform>%n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weighing(s)</source>
        <translation>
            <numerusform>%n weighing</numerusform>
            <numerusform>%n weighings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberPage</name>
    <message numerus="yes">
        <source>%1 of %n place(s) are free.</source>
        <translation>
            <numerusform>%1 of %n place is free.</numerusform>
            <numerusform>%1 of %n places are free.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::GuidePage</name>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n place</numerusform>
            <numerusform>%n places</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n chapter(s)</source>
        <translation>
            <numerusform>%1 in %n chapter</numerusform>
            <numerusform>%1 in %n chapters</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::ImportLogDialog</name>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n reading</numerusform>
            <numerusform>%n readings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the first %1 lines %n are no readings; they will be left out.</source>
        <translation>
            <numerusform>Of the first %1 lines one is no reading; it will be left out.</numerusform>
            <numerusform>Of the first %1 lines %n are no readings; they will be left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n reading(s) are new.</source>
        <translation>
            <numerusform>%1 of %n reading is new.</numerusform>
            <numerusform>%1 of %n readings are new.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopped. %n reading(s) were taken in before; Undo takes them back.</source>
        <translation>
            <numerusform>Stopped. One reading was taken in before; Undo takes it back.</numerusform>
            <numerusform>Stopped. %n readings were taken in before; Undo takes them back.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) are no readings.</source>
        <translation>
            <numerusform>One line is no reading.</numerusform>
            <numerusform>%n lines are no readings.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::LostWeightDialog</name>
    <message numerus="yes">
        <source>About %1; 8 in 10 such pieces lie between %2 and %3. From %n piece(s) of its batch and the air they hung in.</source>
        <translation>
            <numerusform>About %1; 8 in 10 such pieces lie between %2 and %3. From %n piece of its batch and the air it hung in.</numerusform>
            <numerusform>About %1; 8 in 10 such pieces lie between %2 and %3. From %n pieces of its batch and the air they hung in.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::MixUseDialog</name>
    <message numerus="yes">
        <source>%n caution(s) taken on</source>
        <translation>
            <numerusform>%n caution taken on</numerusform>
            <numerusform>%n cautions taken on</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::NewBatchPage</name>
    <message numerus="yes">
        <source>%n stage(s), from %1 to about %2.</source>
        <translation>
            <numerusform>%n stage, from %1 to about %2.</numerusform>
            <numerusform>%n stages, from %1 to about %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PiecePage</name>
    <message numerus="yes">
        <source>Leans on %n of your own finished piece(s) of this product.</source>
        <translation>
            <numerusform>Leans on one of your own finished pieces of this product.</numerusform>
            <numerusform>Leans on %n of your own finished pieces of this product.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PreferencesPage</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PrintDialog</name>
    <message numerus="yes">
        <source>%n page(s) in %1.</source>
        <translation>
            <numerusform>%n page in %1.</numerusform>
            <numerusform>%n pages in %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) sent to the printer.</source>
        <translation>
            <numerusform>%n page sent to the printer.</numerusform>
            <numerusform>%n pages sent to the printer.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::UpsetDialog</name>
    <message numerus="yes">
        <source>%n piece(s) were there. Highest air temperature: %1.</source>
        <translation>
            <numerusform>One piece was there. Highest air temperature: %1.</numerusform>
            <numerusform>%n pieces were there. Highest air temperature: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The record is kept as a note on %n batch(es).</source>
        <translation>
            <numerusform>The record is kept as a note on %n batch.</numerusform>
            <numerusform>The record is kept as a note on %n batches.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighInPage</name>
    <message numerus="yes">
        <source>All %n piece(s) are weighed.</source>
        <translation>
            <numerusform>The one piece is weighed.</numerusform>
            <numerusform>All %n pieces are weighed.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::DayWork</name>
    <message numerus="yes">
        <source>%n pack(s)</source>
        <translation>
            <numerusform>%n pack</numerusform>
            <numerusform>%n packs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n piece</numerusform>
            <numerusform>%n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation>
            <numerusform>%n day late</numerusform>
            <numerusform>%n days late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n time(s) missed</source>
        <extracomment>%1 how late, %n how often it was not done</extracomment>
        <translation>
            <numerusform>%1, %n time missed</numerusform>
            <numerusform>%1, %n times missed</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::PlanDraft</name>
    <message numerus="yes">
        <source>%n day(s) from the start.</source>
        <translation>
            <numerusform>%n day from the start.</numerusform>
            <numerusform>%n days from the start.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start; it may be %1.</source>
        <translation>
            <numerusform>%n day from the start; it may be %1.</numerusform>
            <numerusform>%n days from the start; it may be %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It would be %n day(s) late. A stronger dose or a shorter cure does not help: salt needs its time.</source>
        <translation>
            <numerusform>It would be one day late. A stronger dose or a shorter cure does not help: salt needs its time.</numerusform>
            <numerusform>It would be %n days late. A stronger dose or a shorter cure does not help: salt needs its time.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 needs %n day(s) for its usual piece, %2 to spare.</source>
        <translation>
            <numerusform>%1 needs %n day for its usual piece, %2 to spare.</numerusform>
            <numerusform>%1 needs %n days for its usual piece, %2 to spare.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 every %n day(s)</source>
        <translation>
            <numerusform>%1 every day</numerusform>
            <numerusform>%1 every %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) of %1</source>
        <translation>
            <numerusform>%n round of %1</numerusform>
            <numerusform>%n rounds of %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::WatchedFolder</name>
    <message numerus="yes">
        <source>%1 from the watched folder: %n new reading(s).</source>
        <translation>
            <numerusform>%1 from the watched folder: %n new reading.</numerusform>
            <numerusform>%1 from the watched folder: %n new readings.</numerusform>
        </translation>
    </message>
</context>
</TS>
