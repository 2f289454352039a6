<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>plumbmark::bridge::ExchangeModel</name>
    <message numerus="yes">
        <source>%n new</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n new</numerusform>
            <numerusform>%n new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n the same</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n the same</numerusform>
            <numerusform>%n the same</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n erased</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n erased</numerusform>
            <numerusform>%n erased</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not taken, erased here</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n not taken, erased here</numerusform>
            <numerusform>%n not taken, erased here</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n need you</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n needs you</numerusform>
            <numerusform>%n need you</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new clips.</source>
        <comment>clips</comment>
        <translation>
            <numerusform>%n new clip.</numerusform>
            <numerusform>%n new clips.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Look at every picture: other people are not covered. The head was uncertain in %n frame(s).</source>
        <translation>
            <numerusform>Look at every picture: other people are not covered. The head was uncertain in %n frame.</numerusform>
            <numerusform>Look at every picture: other people are not covered. The head was uncertain in %n frames.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>“%1”, %n record(s)</source>
        <translation>
            <numerusform>“%1”, %n record</numerusform>
            <numerusform>“%1”, %n records</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n clip(s)</source>
        <translation>
            <numerusform>%n clip</numerusform>
            <numerusform>%n clips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) taken in</source>
        <translation>
            <numerusform>%n file taken in</numerusform>
            <numerusform>%n files taken in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sent.</source>
        <comment>files</comment>
        <translation>
            <numerusform>%n sent.</numerusform>
            <numerusform>%n sent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to settle.</source>
        <translation>
            <numerusform>%n to settle.</numerusform>
            <numerusform>%n to settle.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Backup made and checked: %n lesson(s)</source>
        <translation>
            <numerusform>Backup made and checked: %n lesson</numerusform>
            <numerusform>Backup made and checked: %n lessons</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n clip(s).</source>
        <translation>
            <numerusform>%n clip.</numerusform>
            <numerusform>%n clips.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The backup of %1 is whole: %n lesson(s).</source>
        <translation>
            <numerusform>The backup of %1 is whole: %n lesson.</numerusform>
            <numerusform>The backup of %1 is whole: %n lessons.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::InboxModel</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
</TS>
