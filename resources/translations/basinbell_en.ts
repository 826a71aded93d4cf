<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_GB" sourcelanguage="en_GB">
<context>
    <name>PlanText</name>
    <message numerus="yes">
        <source>%n heads together: begin %1, done %2.</source>
        <translation>
            <numerusform>%n head: begin %1, done %2.</numerusform>
            <numerusform>%n heads together: begin %1, done %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Sentences</name>
    <message numerus="yes">
        <source>%n.</source>
        <comment>an ordinal number, such as 2nd</comment>
        <translation>
            <numerusform>%n.</numerusform>
            <numerusform>%n.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message numerus="yes">
        <source>Leaving this run loses its last %n answers: the journal could not be written.</source>
        <translation>
            <numerusform>Leaving this run loses its last answer: the journal could not be written.</numerusform>
            <numerusform>Leaving this run loses its last %n answers: the journal could not be written.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StartText</name>
    <message numerus="yes">
        <source>%n zones more develop for another time</source>
        <translation>
            <numerusform>%n zone more develops for another time</numerusform>
            <numerusform>%n zones more develop for another time</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%n limits are passed by %1 in all</source>
        <translation>
            <numerusform>%n limit is passed by %1</numerusform>
            <numerusform>%n limits are passed by %1 in all</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadPanel</name>
    <message numerus="yes">
        <source>on %n place(s)</source>
        <translation>
            <numerusform>on %n place</numerusform>
            <numerusform>on %n places</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>app::desktop::LanesGrid</name>
    <message numerus="yes">
        <source>and %n more</source>
        <comment>lanes</comment>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>app::desktop::LookChoices</name>
    <message numerus="yes">
        <source>Leave all %n on  (4)</source>
        <translation>
            <numerusform>Leave all on  (4)</numerusform>
            <numerusform>Leave all %n on  (4)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n (4)</source>
        <translation>
            <numerusform>All (4)</numerusform>
            <numerusform>All %n (4)</numerusform>
        </translation>
    </message>
</context>
</TS>
