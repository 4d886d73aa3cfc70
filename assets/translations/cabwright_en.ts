<?xml version="1.0" encoding="utf-8"?>
<!-- SPDX-License-Identifier: GPL-3.0-or-later -->
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Report</name>
    <message numerus="yes">
        <source>%1 (%n month(s))</source>
        <translation>
            <numerusform>%1 (%n month)</numerusform>
            <numerusform>%1 (%n months)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message numerus="yes">
        <source>%n lines</source>
        <translation>
            <numerusform>%n line</numerusform>
            <numerusform>%n lines</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::desk::FaultPicker</name>
    <message numerus="yes">
        <source>%n fault(s) found</source>
        <translation>
            <numerusform>%n fault found</numerusform>
            <numerusform>%n faults found</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::desk::SpotButton</name>
    <message numerus="yes">
        <source>%n fault(s) can be put in here</source>
        <translation>
            <numerusform>%n fault can be put in here</numerusform>
            <numerusform>%n faults can be put in here</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::desk::TruthView</name>
    <message numerus="yes">
        <source>%n rows differ.</source>
        <translation>
            <numerusform>%n row differs.</numerusform>
            <numerusform>%n rows differ.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::desk::WritingView</name>
    <message numerus="yes">
        <source>%n fault(s), by line and column:</source>
        <translation>
            <numerusform>%n fault, by line and column:</numerusform>
            <numerusform>%n faults, by line and column:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s) of the file that was refused:</source>
        <translation>
            <numerusform>%n fault of the file that was refused:</numerusform>
            <numerusform>%n faults of the file that was refused:</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::desktop::ChooseView</name>
    <message numerus="yes">
        <source>passed, best %1 of 100 on %2; taken %n time(s)</source>
        <translation>
            <numerusform>passed, best %1 of 100 on %2; taken %n time</numerusform>
            <numerusform>passed, best %1 of 100 on %2; taken %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not passed yet, best %1 of 100 on %2; taken %n time(s)</source>
        <translation>
            <numerusform>not passed yet, best %1 of 100 on %2; taken %n time</numerusform>
            <numerusform>not passed yet, best %1 of 100 on %2; taken %n times</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::review_room::LockPanel</name>
    <message numerus="yes">
        <source>Too many wrong tries: wait %n second(s).</source>
        <translation>
            <numerusform>Too many wrong tries: wait %n second.</numerusform>
            <numerusform>Too many wrong tries: wait %n seconds.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::review_room::MonthsBox</name>
    <message numerus="yes">
        <source>%n month(s)</source>
        <translation>
            <numerusform>%n month</numerusform>
            <numerusform>%n months</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::review_room::ProgressPage</name>
    <message numerus="yes">
        <source>version %1 of %2, %n attempt(s)</source>
        <translation>
            <numerusform>version %1 of %2, %n attempt</numerusform>
            <numerusform>version %1 of %2, %n attempts</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::review_room::RecencyPage</name>
    <message numerus="yes">
        <source>%n day(s) over</source>
        <translation>
            <numerusform>%n day over</numerusform>
            <numerusform>%n days over</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) left</source>
        <translation>
            <numerusform>%n day left</numerusform>
            <numerusform>%n days left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pass(es) with a date</source>
        <translation>
            <numerusform>%n pass with a date</numerusform>
            <numerusform>%n passes with a date</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n over</source>
        <translation>
            <numerusform>%n over</numerusform>
            <numerusform>%n over</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::review_room::ShelfMarking</name>
    <message numerus="yes">
        <source>Marked again: %n session(s)</source>
        <translation>
            <numerusform>Marked again: %n session</numerusform>
            <numerusform>Marked again: %n sessions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n as recorded</source>
        <translation>
            <numerusform>%n as recorded</numerusform>
            <numerusform>%n as recorded</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n differ(s)</source>
        <translation>
            <numerusform>%n differs</numerusform>
            <numerusform>%n differ</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cut off, with nothing to compare</source>
        <translation>
            <numerusform>%n cut off, with nothing to compare</numerusform>
            <numerusform>%n cut off, with nothing to compare</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cannot be marked</source>
        <translation>
            <numerusform>%n cannot be marked</numerusform>
            <numerusform>%n cannot be marked</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::review_room::ShelfPage</name>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n session</numerusform>
            <numerusform>%n sessions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n session(s)</source>
        <translation>
            <numerusform>%1 of %n session</numerusform>
            <numerusform>%1 of %n sessions</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::review_room::ShelfSessions</name>
    <message numerus="yes">
        <source>%n path(s) copied</source>
        <translation>
            <numerusform>%n path copied</numerusform>
            <numerusform>%n paths copied</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n session(s) chosen</source>
        <translation>
            <numerusform>%n session chosen</numerusform>
            <numerusform>%n sessions chosen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::review_room::WeakPage</name>
    <message numerus="yes">
        <source>Lines of %n session(s) by share broken</source>
        <translation>
            <numerusform>Lines of %n session by share broken</numerusform>
            <numerusform>Lines of %n sessions by share broken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Never exercised: %n line(s)</source>
        <translation>
            <numerusform>Never exercised: %n line</numerusform>
            <numerusform>Never exercised: %n lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: broken in %n session(s)</source>
        <translation>
            <numerusform>%1: broken in %n session</numerusform>
            <numerusform>%1: broken in %n sessions</numerusform>
        </translation>
    </message>
</context>
</TS>
