<?xml version="1.0" encoding="utf-8"?>
<!-- SPDX-License-Identifier: GPL-3.0-or-later -->
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
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
</TS>
