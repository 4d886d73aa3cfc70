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
