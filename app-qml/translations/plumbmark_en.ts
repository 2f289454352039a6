<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>ComparePanel</name>
    <message numerus="yes">
        <source>%n difference(s) beyond doubt</source>
        <translation>
            <numerusform>%n difference beyond doubt</numerusform>
            <numerusform>%n differences beyond doubt</numerusform>
        </translation>
    </message>
</context>
</TS>
