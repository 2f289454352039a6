<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AdviceButton</name>
    <message>
        <source>Mark by hand: %1</source>
        <translation>Von Hand markieren: %1</translation>
    </message>
</context>
<context>
    <name>BallWords</name>
    <message>
        <source>Pull hook</source>
        <translation>Pull-Hook</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>Pull</translation>
    </message>
    <message>
        <source>Pull slice</source>
        <translation>Pull-Slice</translation>
    </message>
    <message>
        <source>Hook</source>
        <translation>Hook</translation>
    </message>
    <message>
        <source>Straight</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Slice</source>
        <translation>Slice</translation>
    </message>
    <message>
        <source>Push hook</source>
        <translation>Push-Hook</translation>
    </message>
    <message>
        <source>Push</source>
        <translation>Push</translation>
    </message>
    <message>
        <source>Push slice</source>
        <translation>Push-Slice</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Flach</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>Solid</source>
        <translation>Satt</translation>
    </message>
    <message>
        <source>Heavy</source>
        <translation>Fett</translation>
    </message>
    <message>
        <source>Thin</source>
        <translation>Dünn</translation>
    </message>
    <message>
        <source>Topped</source>
        <translation>Getoppt</translation>
    </message>
    <message>
        <source>Heel</source>
        <translation>Ferse</translation>
    </message>
    <message>
        <source>Toe</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Shank</source>
        <translation>Socket</translation>
    </message>
    <message>
        <source>Missed</source>
        <translation>Luftschlag</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Mat</source>
        <translation>Matte</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Gras</translation>
    </message>
    <message>
        <source>Sand</source>
        <translation>Sand</translation>
    </message>
    <message>
        <source>Tee</source>
        <translation>Tee</translation>
    </message>
</context>
<context>
    <name>BodyNotesPanel</name>
    <message>
        <source>For the body</source>
        <translation>Für den Körper</translation>
    </message>
    <message>
        <source>Grounds: %1</source>
        <translation>Grundlage: %1</translation>
    </message>
    <message>
        <source>Film shows posture, not load. No caution here is not a clean bill of health: with pain, numbness or doubt, stop and see a physician or licensed physiotherapist.</source>
        <translation>Ein Film zeigt Haltung, keine Belastung. Kein Hinweis ist kein Freibrief: bei Schmerz, Taubheit oder Zweifel aufhören und Arzt oder Physiotherapeut aufsuchen.</translation>
    </message>
    <message>
        <source>About this clip</source>
        <translation>Zu diesem Clip</translation>
    </message>
</context>
<context>
    <name>BringInPage</name>
    <message>
        <source>Bring in a clip</source>
        <translation>Clip hereinholen</translation>
    </message>
</context>
<context>
    <name>CheckDelegate</name>
    <message>
        <source>Good: %1 (%2)</source>
        <translation>Gut: %1 (%2)</translation>
    </message>
    <message>
        <source>Good: %1</source>
        <translation>Gut: %1</translation>
    </message>
    <message>
        <source>How sure of “%1”: %2</source>
        <translation>Wie sicher „%1“ ist: %2</translation>
    </message>
    <message>
        <source>Measured from:</source>
        <translation>Gemessen aus:</translation>
    </message>
    <message>
        <source>Dotted green: where it would be at the near edge of the range.</source>
        <translation>Grün gepunktet: wo es am nahen Rand des Bereichs wäre.</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>%1, same position by: %2</source>
        <translation>%1, gleiche Position nach: %2</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Lay one over the other</source>
        <translation>Übereinanderlegen</translation>
    </message>
    <message>
        <source>Hide the marks</source>
        <translation>Marken ausblenden</translation>
    </message>
    <message>
        <source>Show the marks</source>
        <translation>Marken zeigen</translation>
    </message>
</context>
<context>
    <name>ComparePanel</name>
    <message>
        <source>Differences</source>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>Swings</source>
        <translation>Schwünge</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Zuordnung</translation>
    </message>
    <message numerus="yes">
        <source>%n difference(s) beyond doubt</source>
        <translation>
            <numerusform>%n Unterschied außer Zweifel</numerusform>
            <numerusform>%n Unterschiede außer Zweifel</numerusform>
        </translation>
    </message>
    <message>
        <source>This swing against %1</source>
        <translation>Dieser Schwung gegen %1</translation>
    </message>
    <message>
        <source>Swings to compare with</source>
        <translation>Schwünge zum Vergleichen</translation>
    </message>
    <message>
        <source>Compare with %1, %2, %3</source>
        <translation>Vergleichen mit %1, %2, %3</translation>
    </message>
    <message>
        <source>There is no other swing of this view and kind of shot yet.</source>
        <translation>Es gibt noch keinen anderen Schwung dieser Ansicht und Schlagart.</translation>
    </message>
    <message>
        <source>Same position means the same</source>
        <translation>Gleiche Position heißt gleich</translation>
    </message>
    <message>
        <source>Address, top, impact and finish are put together. What the swings are matched by is left out of the table: there they are the same by choice.</source>
        <translation>Ansprechen, höchster Punkt, Treffmoment und Finish werden zusammengelegt. Wonach zugeordnet wird, fehlt in der Tabelle: dort sind die Schwünge absichtlich gleich.</translation>
    </message>
</context>
<context>
    <name>CompareStage</name>
    <message>
        <source>This swing, %1</source>
        <translation>Dieser Schwung, %1</translation>
    </message>
    <message>
        <source>Other swing laid over, %1 %</source>
        <translation>Anderer Schwung darübergelegt, %1 %</translation>
    </message>
    <message>
        <source>Other swing, %1</source>
        <translation>Anderer Schwung, %1</translation>
    </message>
    <message>
        <source>This swing</source>
        <translation>Dieser Schwung</translation>
    </message>
    <message>
        <source>Other swing: does not show this position</source>
        <translation>Anderer Schwung: zeigt diese Position nicht</translation>
    </message>
    <message>
        <source>Other swing</source>
        <translation>Anderer Schwung</translation>
    </message>
    <message>
        <source>Opening the swing</source>
        <translation>Schwung wird geöffnet</translation>
    </message>
    <message>
        <source>There is no other swing of this view and kind of shot yet. Bring one in, then compare.</source>
        <translation>Es gibt noch keinen anderen Schwung dieser Ansicht und Schlagart. Holen Sie einen herein, dann vergleichen Sie.</translation>
    </message>
    <message>
        <source>Opening the swing, %1 per cent</source>
        <translation>Schwung wird geöffnet, %1 Prozent</translation>
    </message>
    <message>
        <source>How much of the other swing</source>
        <translation>Wie viel vom anderen Schwung</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Lay one over the other</source>
        <translation>Übereinanderlegen</translation>
    </message>
    <message>
        <source>Show the whole pictures</source>
        <translation>Ganze Bilder zeigen</translation>
    </message>
    <message>
        <source>Show the players larger</source>
        <translation>Spieler größer zeigen</translation>
    </message>
    <message>
        <source>Hide the marks</source>
        <translation>Marken ausblenden</translation>
    </message>
    <message>
        <source>Show the marks</source>
        <translation>Marken zeigen</translation>
    </message>
</context>
<context>
    <name>CompareTransport</name>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play both slowly</source>
        <translation>Beide langsam abspielen</translation>
    </message>
    <message>
        <source>Place in this swing</source>
        <translation>Stelle in diesem Schwung</translation>
    </message>
    <message>
        <source>One frame back</source>
        <translation>Ein Bild zurück</translation>
    </message>
    <message>
        <source>One frame on</source>
        <translation>Ein Bild vor</translation>
    </message>
</context>
<context>
    <name>CopyLines</name>
    <message>
        <source>Line of address over the whole swing</source>
        <translation>Linie vom Ansprechen durch den ganzen Schwung</translation>
    </message>
    <message>
        <source>Copy from address: %1</source>
        <translation>Vom Ansprechen kopieren: %1</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>Stance width</source>
        <translation>Standbreite</translation>
    </message>
    <message>
        <source>The stance suits the club; keep it.</source>
        <translation>Der Stand passt zum Schläger; so lassen.</translation>
    </message>
    <message>
        <source>Stand %1 wider.</source>
        <translation>Stellen Sie sich %1 breiter.</translation>
    </message>
    <message>
        <source>Stand %1 narrower.</source>
        <translation>Stellen Sie sich %1 schmaler.</translation>
    </message>
    <message>
        <source>Mark both ankles and shoulders at address by hand.</source>
        <translation>Markieren Sie beide Knöchel und Schultern in der Ansprechposition von Hand.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>gängige Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>common practice, no source (between the named clubs)</source>
        <translation>gängige Praxis, keine Quelle (zwischen den genannten Schlägern)</translation>
    </message>
    <message>
        <source>Ball position</source>
        <translation>Ballposition</translation>
    </message>
    <message>
        <source>The ball lies where this club wants it; keep it.</source>
        <translation>Der Ball liegt, wo dieser Schläger ihn braucht; so lassen.</translation>
    </message>
    <message>
        <source>Play the ball %1 farther back, toward the trail foot.</source>
        <translation>Spielen Sie den Ball %1 weiter hinten, zum hinteren Fuß hin.</translation>
    </message>
    <message>
        <source>Play the ball %1 farther forward, toward the lead foot.</source>
        <translation>Spielen Sie den Ball %1 weiter vorn, zum vorderen Fuß hin.</translation>
    </message>
    <message>
        <source>Mark the ball and both ankles at address by hand.</source>
        <translation>Markieren Sie Ball und beide Knöchel in der Ansprechposition von Hand.</translation>
    </message>
    <message>
        <source>Spine tilt at address</source>
        <translation>Wirbelsäulenneigung in der Ansprechposition</translation>
    </message>
    <message>
        <source>The spine leans as this club wants it; keep it.</source>
        <translation>Die Wirbelsäule neigt sich, wie dieser Schläger es braucht; so lassen.</translation>
    </message>
    <message>
        <source>Let the lead hip move a little toward the target until the spine leans %1 more away from it.</source>
        <translation>Lassen Sie die vordere Hüfte etwas zum Ziel, bis die Wirbelsäule sich %1 mehr von ihm weg neigt.</translation>
    </message>
    <message>
        <source>Stand %1 more upright over the ball, seen from the front.</source>
        <translation>Stehen Sie, von vorn gesehen, %1 aufrechter über dem Ball.</translation>
    </message>
    <message>
        <source>Mark the joints by hand in that frame, or film again from the front at hand height, 4 to 5 metres away.</source>
        <translation>Markieren Sie die Gelenke in diesem Bild von Hand, oder filmen Sie noch einmal von vorn auf Handhöhe aus 4 bis 5 Metern.</translation>
    </message>
    <message>
        <source>Spine tilt, address to top</source>
        <translation>Wirbelsäulenneigung, Ansprechen bis höchster Punkt</translation>
    </message>
    <message>
        <source>The spine keeps its lean going back; keep it.</source>
        <translation>Die Wirbelsäule behält im Rückschwung ihre Neigung; so lassen.</translation>
    </message>
    <message>
        <source>The trunk tips toward the target going back, %1 too much: turn around the spine you set up with.</source>
        <translation>Der Oberkörper kippt im Rückschwung zum Ziel, %1 zu viel: drehen Sie um die Wirbelsäule, mit der Sie ansprechen.</translation>
    </message>
    <message>
        <source>The trunk leans back %1 too much going back: keep the chest over its place.</source>
        <translation>Der Oberkörper lehnt sich im Rückschwung %1 zu weit zurück: lassen Sie die Brust über ihrem Platz.</translation>
    </message>
    <message>
        <source>Spine at the top not toward the target</source>
        <translation>Wirbelsäule am höchsten Punkt nicht zum Ziel</translation>
    </message>
    <message>
        <source>At the top the spine does not lean toward the target; keep it.</source>
        <translation>Am höchsten Punkt neigt sich die Wirbelsäule nicht zum Ziel; so lassen.</translation>
    </message>
    <message>
        <source>At the top the spine leans toward the target: let the head stay back while the trail hip turns behind you.</source>
        <translation>Am höchsten Punkt neigt sich die Wirbelsäule zum Ziel: lassen Sie den Kopf zurück, während die hintere Hüfte nach hinten dreht.</translation>
    </message>
    <message>
        <source>Spine tilt, address to impact</source>
        <translation>Wirbelsäulenneigung, Ansprechen bis Treffmoment</translation>
    </message>
    <message>
        <source>The spine leans back through impact as it should; keep it.</source>
        <translation>Die Wirbelsäule neigt sich im Treffmoment zurück, wie sie soll; so lassen.</translation>
    </message>
    <message>
        <source>The chest runs ahead of the ball: let it stay back by %1 more through impact.</source>
        <translation>Die Brust läuft dem Ball davon: lassen Sie sie im Treffmoment %1 weiter zurück.</translation>
    </message>
    <message>
        <source>The trunk leans back %1 too much at impact: let the chest turn through over the lead leg.</source>
        <translation>Der Oberkörper lehnt im Treffmoment %1 zu weit zurück: lassen Sie die Brust über dem vorderen Bein durchdrehen.</translation>
    </message>
    <message>
        <source>Head travel to the top</source>
        <translation>Kopfbewegung bis zum höchsten Punkt</translation>
    </message>
    <message>
        <source>The head stays put going back; keep it.</source>
        <translation>Der Kopf bleibt im Rückschwung an seinem Platz; so lassen.</translation>
    </message>
    <message>
        <source>The head drifts away from the target, %1 too far: turn in place.</source>
        <translation>Der Kopf wandert vom Ziel weg, %1 zu weit: drehen Sie auf der Stelle.</translation>
    </message>
    <message>
        <source>The head moves toward the target going back, %1 too far: let it stay behind the ball.</source>
        <translation>Der Kopf wandert im Rückschwung zum Ziel, %1 zu weit: lassen Sie ihn hinter dem Ball.</translation>
    </message>
    <message>
        <source>Mark the head centre at address and at the top by hand.</source>
        <translation>Markieren Sie die Kopfmitte beim Ansprechen und am höchsten Punkt von Hand.</translation>
    </message>
    <message>
        <source>Head inside the trail ankle at the top</source>
        <translation>Kopf innerhalb des hinteren Knöchels am höchsten Punkt</translation>
    </message>
    <message>
        <source>At the top the head stays inside the trail foot; keep it.</source>
        <translation>Am höchsten Punkt bleibt der Kopf innerhalb des hinteren Fußes; so lassen.</translation>
    </message>
    <message>
        <source>At the top the head hangs over the trail foot: keep it %1 farther inside; a slightly wider stance often does it.</source>
        <translation>Am höchsten Punkt hängt der Kopf über dem hinteren Fuß: lassen Sie ihn %1 weiter innen; ein etwas breiterer Stand hilft oft.</translation>
    </message>
    <message>
        <source>Mark the head centre and the trail ankle at the top by hand.</source>
        <translation>Markieren Sie Kopfmitte und hinteren Knöchel am höchsten Punkt von Hand.</translation>
    </message>
    <message>
        <source>Pelvis shift going back</source>
        <translation>Beckenverschiebung im Rückschwung</translation>
    </message>
    <message>
        <source>The pelvis turns without drifting back; keep it.</source>
        <translation>Das Becken dreht, ohne zurückzuweichen; so lassen.</translation>
    </message>
    <message>
        <source>The pelvis drifts away from the target, %1 too far: turn the trail hip back instead.</source>
        <translation>Das Becken wandert vom Ziel weg, %1 zu weit: drehen Sie stattdessen die hintere Hüfte nach hinten.</translation>
    </message>
    <message>
        <source>Lead-side line at impact</source>
        <translation>Vordere Linie im Treffmoment</translation>
    </message>
    <message>
        <source>Lead ankle, hip and shoulder stand well through impact; keep it.</source>
        <translation>Vorderer Knöchel, Hüfte und Schulter stehen im Treffmoment gut; so lassen.</translation>
    </message>
    <message>
        <source>The lead shoulder is ahead of the lead foot: let it stay %1 farther back through impact.</source>
        <translation>Die vordere Schulter ist vor dem vorderen Fuß: lassen Sie sie im Treffmoment %1 weiter zurück.</translation>
    </message>
    <message>
        <source>The upper body stays too far behind the lead foot: let it come forward by %1 while turning.</source>
        <translation>Der Oberkörper bleibt zu weit hinter dem vorderen Fuß: lassen Sie ihn beim Drehen %1 nach vorn kommen.</translation>
    </message>
    <message>
        <source>Lead hip on the lead-side line</source>
        <translation>Vordere Hüfte auf der vorderen Linie</translation>
    </message>
    <message>
        <source>The lead hip turns on the line from ankle to shoulder; keep it.</source>
        <translation>Die vordere Hüfte dreht auf der Linie vom Knöchel zur Schulter; so lassen.</translation>
    </message>
    <message>
        <source>The lead hip is pushed %1 too far toward the target: turn it back and around instead of sliding.</source>
        <translation>Die vordere Hüfte ist %1 zu weit zum Ziel geschoben: drehen Sie sie nach hinten herum, statt zu schieben.</translation>
    </message>
    <message>
        <source>Pelvis turn at the top</source>
        <translation>Beckendrehung am höchsten Punkt</translation>
    </message>
    <message>
        <source>The pelvis turns enough going back; keep it.</source>
        <translation>Das Becken dreht im Rückschwung genug; so lassen.</translation>
    </message>
    <message>
        <source>The pelvis turns %1 too far going back: feel more of the turn in the chest.</source>
        <translation>Das Becken dreht im Rückschwung %1 zu weit: spüren Sie die Drehung mehr in der Brust.</translation>
    </message>
    <message>
        <source>The pelvis turns %1 too little going back: let the trail hip move behind you.</source>
        <translation>Das Becken dreht im Rückschwung %1 zu wenig: lassen Sie die hintere Hüfte nach hinten gehen.</translation>
    </message>
    <message>
        <source>Mark belt buckle and shirt buttons by hand, or put an alignment stick through the belt loops.</source>
        <translation>Markieren Sie Gürtelschnalle und Knopfleiste von Hand, oder stecken Sie einen Stab durch die Gürtelschlaufen.</translation>
    </message>
    <message>
        <source>Pelvis open at impact</source>
        <translation>Becken im Treffmoment geöffnet</translation>
    </message>
    <message>
        <source>The pelvis is open at impact; keep it.</source>
        <translation>Das Becken ist im Treffmoment geöffnet; so lassen.</translation>
    </message>
    <message>
        <source>Let the pelvis open %1 more before the ball: lead hip back and around.</source>
        <translation>Lassen Sie das Becken vor dem Ball %1 weiter öffnen: vordere Hüfte nach hinten herum.</translation>
    </message>
    <message>
        <source>The pelvis is already %1 past the usual range at impact; watch that the arms keep up.</source>
        <translation>Das Becken ist im Treffmoment schon %1 über dem üblichen Bereich; achten Sie darauf, dass die Arme mitkommen.</translation>
    </message>
    <message>
        <source>common practice; published: tour average 42, typical club players 15-25</source>
        <translation>gängige Praxis; veröffentlicht: Tour-Durchschnitt 42, typische Clubspieler 15–25</translation>
    </message>
    <message>
        <source>Shoulder turn at the top</source>
        <translation>Schulterdrehung am höchsten Punkt</translation>
    </message>
    <message>
        <source>The shoulders turn fully; keep it.</source>
        <translation>Die Schultern drehen ganz auf; so lassen.</translation>
    </message>
    <message>
        <source>The shoulders turn %1 too far: stop where the chest stops.</source>
        <translation>Die Schultern drehen %1 zu weit: hören Sie auf, wo die Brust aufhört.</translation>
    </message>
    <message>
        <source>Turn the shoulders %1 more: lead shoulder under the chin.</source>
        <translation>Drehen Sie die Schultern %1 weiter: vordere Schulter unter das Kinn.</translation>
    </message>
    <message>
        <source>Mark both shoulders at the top by hand.</source>
        <translation>Markieren Sie beide Schultern am höchsten Punkt von Hand.</translation>
    </message>
    <message>
        <source>Chest turn at the top</source>
        <translation>Brustdrehung am höchsten Punkt</translation>
    </message>
    <message>
        <source>The chest turns fully; keep it.</source>
        <translation>Die Brust dreht ganz auf; so lassen.</translation>
    </message>
    <message>
        <source>The chest turns %1 too far.</source>
        <translation>Die Brust dreht %1 zu weit.</translation>
    </message>
    <message>
        <source>Turn the chest %1 more.</source>
        <translation>Drehen Sie die Brust %1 weiter.</translation>
    </message>
    <message>
        <source>Shaft lean at impact</source>
        <translation>Schaftneigung im Treffmoment</translation>
    </message>
    <message>
        <source>The handle leads as this club wants it; keep it.</source>
        <translation>Der Griff führt, wie dieser Schläger es braucht; so lassen.</translation>
    </message>
    <message>
        <source>At impact the handle should be %1 farther forward.</source>
        <translation>Im Treffmoment sollte der Griff %1 weiter vorn sein.</translation>
    </message>
    <message>
        <source>At impact the handle is %1 too far forward.</source>
        <translation>Im Treffmoment ist der Griff %1 zu weit vorn.</translation>
    </message>
    <message>
        <source>Film at 240 frames per second with a short shutter time and the ball in the middle of the picture.</source>
        <translation>Filmen Sie mit 240 Bildern pro Sekunde, kurzer Belichtung und dem Ball in der Bildmitte.</translation>
    </message>
    <message>
        <source>Wrist set kept to delivery</source>
        <translation>Handgelenkwinkel bis zur Delivery gehalten</translation>
    </message>
    <message>
        <source>The wrists keep their set to delivery; keep it.</source>
        <translation>Die Handgelenke behalten ihren Winkel bis zur Delivery; so lassen.</translation>
    </message>
    <message>
        <source>The club is let out early on the way down: keep the wrists set %1 longer, hands to the trail thigh first.</source>
        <translation>Der Schläger wird im Abschwung früh losgelassen: halten Sie den Handgelenkwinkel %1 länger, erst die Hände zum hinteren Oberschenkel.</translation>
    </message>
    <message>
        <source>Film at 240 frames per second; mark lead elbow, lead wrist and the shaft at both moments by hand.</source>
        <translation>Filmen Sie mit 240 Bildern pro Sekunde; markieren Sie vorderen Ellbogen, vorderes Handgelenk und Schaft in beiden Momenten von Hand.</translation>
    </message>
    <message>
        <source>Wrist set not before the arm is level</source>
        <translation>Handgelenke nicht gewinkelt, bevor der Arm waagerecht ist</translation>
    </message>
    <message>
        <source>The wrists set with the turn; keep it.</source>
        <translation>Die Handgelenke winkeln mit der Drehung; so lassen.</translation>
    </message>
    <message>
        <source>The wrists set early, before the lead arm is level; some teachers like that, some do not.</source>
        <translation>Die Handgelenke winkeln früh, bevor der vordere Arm waagerecht ist; manche Lehrer mögen das, manche nicht.</translation>
    </message>
    <message>
        <source>Film at 120 frames per second or more; mark lead elbow, wrist and shaft going back by hand.</source>
        <translation>Filmen Sie mit 120 Bildern pro Sekunde oder mehr; markieren Sie vorderen Ellbogen, Handgelenk und Schaft im Rückschwung von Hand.</translation>
    </message>
    <message>
        <source>one school&apos;s view, no source</source>
        <translation>Ansicht einer Schule, keine Quelle</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Release</translation>
    </message>
    <message>
        <source>The club passes the forearms with the turn; keep it.</source>
        <translation>Der Schläger überholt die Unterarme mit der Drehung; so lassen.</translation>
    </message>
    <message>
        <source>The club is held back after the ball: let it swing past the forearms.</source>
        <translation>Der Schläger wird nach dem Ball festgehalten: lassen Sie ihn an den Unterarmen vorbeischwingen.</translation>
    </message>
    <message>
        <source>The club passes the hands early: keep the chest turning and the handle moving.</source>
        <translation>Der Schläger überholt die Hände früh: drehen Sie die Brust weiter und halten Sie den Griff in Bewegung.</translation>
    </message>
    <message>
        <source>Mark elbows, wrists and the shaft just after impact by hand.</source>
        <translation>Markieren Sie Ellbogen, Handgelenke und Schaft kurz nach dem Treffmoment von Hand.</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Backswing and downswing are in proportion; keep it.</source>
        <translation>Rück- und Abschwung stehen im richtigen Verhältnis; so lassen.</translation>
    </message>
    <message>
        <source>The backswing is quick for this downswing: take %1 of a beat more going back.</source>
        <translation>Der Rückschwung ist schnell für diesen Abschwung: nehmen Sie sich %1 Schlag mehr Zeit.</translation>
    </message>
    <message>
        <source>The backswing is slow for this downswing: start back a little livelier.</source>
        <translation>Der Rückschwung ist langsam für diesen Abschwung: beginnen Sie etwas lebhafter.</translation>
    </message>
    <message>
        <source>Film at 120 frames per second or more.</source>
        <translation>Filmen Sie mit 120 Bildern pro Sekunde oder mehr.</translation>
    </message>
    <message>
        <source>common practice; published: tour players near 3 to 1</source>
        <translation>gängige Praxis; veröffentlicht: Tourspieler nahe 3 zu 1</translation>
    </message>
    <message>
        <source>Finish: head over the lead foot</source>
        <translation>Finish: Kopf über dem vorderen Fuß</translation>
    </message>
    <message>
        <source>In the finish the head stands over the lead foot; keep it.</source>
        <translation>Im Finish steht der Kopf über dem vorderen Fuß; so lassen.</translation>
    </message>
    <message>
        <source>In the finish the head stays %1 behind the lead foot: walk through until it stands over it.</source>
        <translation>Im Finish bleibt der Kopf %1 hinter dem vorderen Fuß: gehen Sie durch, bis er darüber steht.</translation>
    </message>
    <message>
        <source>In the finish the head runs %1 past the lead foot: finish tall on it.</source>
        <translation>Im Finish läuft der Kopf %1 über den vorderen Fuß hinaus: enden Sie aufrecht auf ihm.</translation>
    </message>
    <message>
        <source>Film until the finish stands still.</source>
        <translation>Filmen Sie, bis das Finish steht.</translation>
    </message>
    <message>
        <source>Finish: trail foot on its toe</source>
        <translation>Finish: hinterer Fuß auf der Spitze</translation>
    </message>
    <message>
        <source>In the finish the trail foot stands on its toe; keep it.</source>
        <translation>Im Finish steht der hintere Fuß auf der Spitze; so lassen.</translation>
    </message>
    <message>
        <source>Let the trail heel come up until the laces face the target.</source>
        <translation>Lassen Sie die hintere Ferse hochkommen, bis die Schnürung zum Ziel zeigt.</translation>
    </message>
    <message>
        <source>Film until the finish stands still, with both feet in the picture.</source>
        <translation>Filmen Sie, bis das Finish steht, mit beiden Füßen im Bild.</translation>
    </message>
    <message>
        <source>Finish: pelvis facing the target</source>
        <translation>Finish: Becken zum Ziel</translation>
    </message>
    <message>
        <source>In the finish the belt faces the target; keep it.</source>
        <translation>Im Finish zeigt der Gürtel zum Ziel; so lassen.</translation>
    </message>
    <message>
        <source>Let the belt buckle turn %1 more toward the target.</source>
        <translation>Lassen Sie die Gürtelschnalle %1 weiter zum Ziel drehen.</translation>
    </message>
    <message>
        <source>Finish: chest facing the target</source>
        <translation>Finish: Brust zum Ziel</translation>
    </message>
    <message>
        <source>In the finish the chest faces the target; keep it.</source>
        <translation>Im Finish zeigt die Brust zum Ziel; so lassen.</translation>
    </message>
    <message>
        <source>Let the chest turn %1 more toward the target.</source>
        <translation>Lassen Sie die Brust %1 weiter zum Ziel drehen.</translation>
    </message>
    <message>
        <source>Forward bend kept to impact</source>
        <translation>Vorbeuge bis zum Treffmoment gehalten</translation>
    </message>
    <message>
        <source>The forward bend is kept; keep it.</source>
        <translation>Die Vorbeuge bleibt erhalten; so lassen.</translation>
    </message>
    <message>
        <source>The trunk stands up by %1 too much before the ball: keep the seat back.</source>
        <translation>Der Oberkörper richtet sich vor dem Ball %1 zu weit auf: lassen Sie das Gesäß hinten.</translation>
    </message>
    <message>
        <source>The trunk dips %1 too far before the ball.</source>
        <translation>Der Oberkörper taucht vor dem Ball %1 zu weit ab.</translation>
    </message>
    <message>
        <source>Mark hips and shoulders at address and impact by hand.</source>
        <translation>Markieren Sie Hüften und Schultern beim Ansprechen und im Treffmoment von Hand.</translation>
    </message>
    <message>
        <source>Pelvis depth at impact</source>
        <translation>Beckentiefe im Treffmoment</translation>
    </message>
    <message>
        <source>The seat stays back; keep it.</source>
        <translation>Das Gesäß bleibt hinten; so lassen.</translation>
    </message>
    <message>
        <source>The pelvis moves %1 toward the ball: keep the seat against the wall behind you.</source>
        <translation>Das Becken geht %1 zum Ball: lassen Sie das Gesäß an der Wand hinter Ihnen.</translation>
    </message>
    <message>
        <source>Mark the rear outline of the pelvis at address and impact by hand.</source>
        <translation>Markieren Sie den hinteren Umriss des Beckens beim Ansprechen und im Treffmoment von Hand.</translation>
    </message>
    <message>
        <source>Hands&apos; path starting down</source>
        <translation>Weg der Hände am Beginn des Abschwungs</translation>
    </message>
    <message>
        <source>The hands come down on or inside their way back; keep it.</source>
        <translation>Die Hände kommen auf oder innerhalb ihres Wegs herunter; so lassen.</translation>
    </message>
    <message>
        <source>The hands start down %1 outside their way back: let them drop before the chest turns.</source>
        <translation>Die Hände beginnen den Abschwung %1 außerhalb ihres Wegs: lassen Sie sie fallen, bevor die Brust dreht.</translation>
    </message>
    <message>
        <source>Mark the hands going back and coming down by hand.</source>
        <translation>Markieren Sie die Hände im Rück- und Abschwung von Hand.</translation>
    </message>
    <message>
        <source>Pitch: shaft lean</source>
        <translation>Pitch: Schaftneigung</translation>
    </message>
    <message>
        <source>The handle leads a little; keep it.</source>
        <translation>Der Griff führt ein wenig; so lassen.</translation>
    </message>
    <message>
        <source>Let the handle be %1 farther forward at impact.</source>
        <translation>Lassen Sie den Griff im Treffmoment %1 weiter vorn sein.</translation>
    </message>
    <message>
        <source>The handle is %1 too far forward at impact.</source>
        <translation>Der Griff ist im Treffmoment %1 zu weit vorn.</translation>
    </message>
    <message>
        <source>Film at 240 frames per second with a short shutter time.</source>
        <translation>Filmen Sie mit 240 Bildern pro Sekunde und kurzer Belichtung.</translation>
    </message>
    <message>
        <source>Pitch: ball position</source>
        <translation>Pitch: Ballposition</translation>
    </message>
    <message>
        <source>The ball lies near the middle; keep it.</source>
        <translation>Der Ball liegt nahe der Mitte; so lassen.</translation>
    </message>
    <message>
        <source>Play the ball %1 farther back.</source>
        <translation>Spielen Sie den Ball %1 weiter hinten.</translation>
    </message>
    <message>
        <source>Play the ball %1 farther forward.</source>
        <translation>Spielen Sie den Ball %1 weiter vorn.</translation>
    </message>
    <message>
        <source>Pitch: quiet wrists</source>
        <translation>Pitch: ruhige Handgelenke</translation>
    </message>
    <message>
        <source>The wrists stay quiet; keep it.</source>
        <translation>Die Handgelenke bleiben ruhig; so lassen.</translation>
    </message>
    <message>
        <source>Set the wrists %1 less for this distance.</source>
        <translation>Winkeln Sie die Handgelenke für diese Länge %1 weniger.</translation>
    </message>
    <message>
        <source>Mark lead elbow, wrist and shaft at the top by hand.</source>
        <translation>Markieren Sie vorderen Ellbogen, Handgelenk und Schaft am höchsten Punkt von Hand.</translation>
    </message>
    <message>
        <source>Pitch: head still</source>
        <translation>Pitch: Kopf ruhig</translation>
    </message>
    <message>
        <source>The head stays put; keep it.</source>
        <translation>Der Kopf bleibt an seinem Platz; so lassen.</translation>
    </message>
    <message>
        <source>The head falls back by %1 too much.</source>
        <translation>Der Kopf fällt %1 zu weit zurück.</translation>
    </message>
    <message>
        <source>The head runs forward by %1 too much.</source>
        <translation>Der Kopf läuft %1 zu weit nach vorn.</translation>
    </message>
    <message>
        <source>Mark the head centre at address and impact by hand.</source>
        <translation>Markieren Sie die Kopfmitte beim Ansprechen und im Treffmoment von Hand.</translation>
    </message>
    <message>
        <source>Chip: shaft lean</source>
        <translation>Chip: Schaftneigung</translation>
    </message>
    <message>
        <source>The handle leads; keep it.</source>
        <translation>Der Griff führt; so lassen.</translation>
    </message>
    <message>
        <source>Chip: head still</source>
        <translation>Chip: Kopf ruhig</translation>
    </message>
    <message>
        <source>Chip: body mass over the lead foot</source>
        <translation>Chip: Körper über dem vorderen Fuß</translation>
    </message>
    <message>
        <source>The body stays over the lead foot; keep it.</source>
        <translation>Der Körper bleibt über dem vorderen Fuß; so lassen.</translation>
    </message>
    <message>
        <source>Stand %1 more over the lead foot and stay there.</source>
        <translation>Stehen Sie %1 mehr über dem vorderen Fuß und bleiben Sie dort.</translation>
    </message>
    <message>
        <source>Bunker: ball position</source>
        <translation>Bunker: Ballposition</translation>
    </message>
    <message>
        <source>The ball lies forward; keep it.</source>
        <translation>Der Ball liegt vorn; so lassen.</translation>
    </message>
    <message>
        <source>Bunker: stance width</source>
        <translation>Bunker: Standbreite</translation>
    </message>
    <message>
        <source>The stance is steady; keep it.</source>
        <translation>Der Stand ist stabil; so lassen.</translation>
    </message>
    <message>
        <source>Putt: pelvis still</source>
        <translation>Putt: Becken ruhig</translation>
    </message>
    <message>
        <source>The pelvis stays still; keep it.</source>
        <translation>Das Becken bleibt ruhig; so lassen.</translation>
    </message>
    <message>
        <source>The pelvis moves %1 away from the target.</source>
        <translation>Das Becken bewegt sich %1 vom Ziel weg.</translation>
    </message>
    <message>
        <source>The pelvis moves %1 toward the target.</source>
        <translation>Das Becken bewegt sich %1 zum Ziel.</translation>
    </message>
    <message>
        <source>Putt: head still</source>
        <translation>Putt: Kopf ruhig</translation>
    </message>
    <message>
        <source>The head stays still; keep it.</source>
        <translation>Der Kopf bleibt ruhig; so lassen.</translation>
    </message>
    <message>
        <source>The head moves %1 away from the target.</source>
        <translation>Der Kopf bewegt sich %1 vom Ziel weg.</translation>
    </message>
    <message>
        <source>The head moves %1 toward the target.</source>
        <translation>Der Kopf bewegt sich %1 zum Ziel.</translation>
    </message>
    <message>
        <source>Putt: tempo</source>
        <translation>Putt: Tempo</translation>
    </message>
    <message>
        <source>The stroke is even; keep it.</source>
        <translation>Der Putt ist gleichmäßig; so lassen.</translation>
    </message>
    <message>
        <source>The stroke back is quick for the stroke through.</source>
        <translation>Der Putt geht zurück schnell für das Durchschwingen.</translation>
    </message>
    <message>
        <source>The stroke back is slow for the stroke through.</source>
        <translation>Der Putt geht zurück langsam für das Durchschwingen.</translation>
    </message>
    <message>
        <source>Practice swing: head travel to the top</source>
        <translation>Probeschwung: Kopfbewegung bis zum höchsten Punkt</translation>
    </message>
    <message>
        <source>The head drifts away from the target, %1 too far.</source>
        <translation>Der Kopf wandert vom Ziel weg, %1 zu weit.</translation>
    </message>
    <message>
        <source>The head moves toward the target going back, %1 too far.</source>
        <translation>Der Kopf wandert im Rückschwung zum Ziel, %1 zu weit.</translation>
    </message>
    <message>
        <source>Practice swing: head inside the trail ankle at the top</source>
        <translation>Probeschwung: Kopf innerhalb des hinteren Knöchels am höchsten Punkt</translation>
    </message>
    <message>
        <source>At the top keep the head %1 farther inside the trail foot.</source>
        <translation>Lassen Sie am höchsten Punkt den Kopf %1 weiter innerhalb des hinteren Fußes.</translation>
    </message>
    <message>
        <source>Practice swing: head over the lead foot</source>
        <translation>Probeschwung: Kopf über dem vorderen Fuß</translation>
    </message>
    <message>
        <source>In the finish the head stays %1 behind the lead foot.</source>
        <translation>Im Finish bleibt der Kopf %1 hinter dem vorderen Fuß.</translation>
    </message>
    <message>
        <source>In the finish the head runs %1 past the lead foot.</source>
        <translation>Im Finish läuft der Kopf %1 über den vorderen Fuß hinaus.</translation>
    </message>
    <message>
        <source>Chest&apos;s share of the move toward the target starting down</source>
        <translation>Anteil der Brust an der Bewegung zum Ziel am Beginn des Abschwungs</translation>
    </message>
    <message>
        <source>Pelvis and chest move together; keep it.</source>
        <translation>Becken und Brust bewegen sich gemeinsam; so lassen.</translation>
    </message>
    <message>
        <source>The chest leads the move toward the target starting down: let the pelvis go first.</source>
        <translation>Die Brust führt die Bewegung zum Ziel am Beginn des Abschwungs: lassen Sie das Becken zuerst gehen.</translation>
    </message>
    <message>
        <source>Mark hips and shoulders at the top and a third of the way down by hand.</source>
        <translation>Markieren Sie Hüften und Schultern am höchsten Punkt und nach einem Drittel des Abschwungs von Hand.</translation>
    </message>
    <message>
        <source>Lead elbow at the top</source>
        <translation>Vorderer Ellbogen am höchsten Punkt</translation>
    </message>
    <message>
        <source>The lead arm is long at the top; keep it.</source>
        <translation>Der vordere Arm ist am höchsten Punkt lang; so lassen.</translation>
    </message>
    <message>
        <source>The lead elbow is bent %1 too much at the top: turn less far and keep the arm long.</source>
        <translation>Der vordere Ellbogen ist am höchsten Punkt %1 zu weit gebeugt: drehen Sie weniger weit und lassen Sie den Arm lang.</translation>
    </message>
    <message>
        <source>Mark lead shoulder, elbow and wrist at the top by hand.</source>
        <translation>Markieren Sie vordere Schulter, Ellbogen und Handgelenk am höchsten Punkt von Hand.</translation>
    </message>
    <message>
        <source>Length of the backswing</source>
        <translation>Länge des Rückschwungs</translation>
    </message>
    <message>
        <source>The backswing is long enough and no longer; keep it.</source>
        <translation>Der Rückschwung ist lang genug und nicht länger; so lassen.</translation>
    </message>
    <message>
        <source>The shaft points %1 past level at the top: stop the arms when the turn is done.</source>
        <translation>Der Schaft zeigt am höchsten Punkt %1 über die Waagerechte hinaus: halten Sie die Arme an, wenn die Drehung zu Ende ist.</translation>
    </message>
    <message>
        <source>Mark butt and club head at the top by hand.</source>
        <translation>Markieren Sie Griffende und Schlägerkopf am höchsten Punkt von Hand.</translation>
    </message>
    <message>
        <source>Head height kept to impact</source>
        <translation>Kopfhöhe bis zum Treffmoment gehalten</translation>
    </message>
    <message>
        <source>The head keeps its height; keep it.</source>
        <translation>Der Kopf behält seine Höhe; so lassen.</translation>
    </message>
    <message>
        <source>The head drops %1 too far to the ball.</source>
        <translation>Der Kopf sinkt bis zum Ball %1 zu weit.</translation>
    </message>
    <message>
        <source>The head rises by %1 too much before the ball: keep the seat back.</source>
        <translation>Der Kopf steigt vor dem Ball %1 zu weit: lassen Sie das Gesäß hinten.</translation>
    </message>
    <message>
        <source>narrow stance</source>
        <translation>schmaler Stand</translation>
    </message>
    <message>
        <source>wide stance</source>
        <translation>breiter Stand</translation>
    </message>
    <message>
        <source>ball too far forward</source>
        <translation>Ball zu weit vorn</translation>
    </message>
    <message>
        <source>ball too far back</source>
        <translation>Ball zu weit hinten</translation>
    </message>
    <message>
        <source>trunk tilt off at address</source>
        <translation>Oberkörperneigung beim Ansprechen nicht passend</translation>
    </message>
    <message>
        <source>weak grip</source>
        <translation>schwacher Griff</translation>
    </message>
    <message>
        <source>aim off the target line</source>
        <translation>Ausrichtung neben der Ziellinie</translation>
    </message>
    <message>
        <source>club face open early</source>
        <translation>Schlagfläche früh offen</translation>
    </message>
    <message>
        <source>wrists set early</source>
        <translation>Handgelenke früh gewinkelt</translation>
    </message>
    <message>
        <source>head and chest too far over the trail foot</source>
        <translation>Kopf und Brust zu weit über dem hinteren Fuß</translation>
    </message>
    <message>
        <source>pelvis turned away too far</source>
        <translation>Becken zu weit weggedreht</translation>
    </message>
    <message>
        <source>pelvis turned away too little</source>
        <translation>Becken zu wenig weggedreht</translation>
    </message>
    <message>
        <source>trunk tilted toward the target at the top</source>
        <translation>Oberkörper am höchsten Punkt zum Ziel geneigt</translation>
    </message>
    <message>
        <source>lead elbow collapsed</source>
        <translation>vorderer Ellbogen eingeknickt</translation>
    </message>
    <message>
        <source>over-long backswing</source>
        <translation>zu langer Rückschwung</translation>
    </message>
    <message>
        <source>chest and pelvis move toward the target together</source>
        <translation>Brust und Becken bewegen sich gemeinsam zum Ziel</translation>
    </message>
    <message>
        <source>large chest move back toward the target starting down</source>
        <translation>große Brustbewegung zurück zum Ziel am Beginn des Abschwungs</translation>
    </message>
    <message>
        <source>hands start down outside</source>
        <translation>Hände beginnen den Abschwung außen</translation>
    </message>
    <message>
        <source>lead hip pushed toward the target</source>
        <translation>vordere Hüfte zum Ziel geschoben</translation>
    </message>
    <message>
        <source>standing up out of the forward bend</source>
        <translation>Aufrichten aus der Vorbeuge</translation>
    </message>
    <message>
        <source>poor lead-side line at impact</source>
        <translation>schlechte vordere Linie im Treffmoment</translation>
    </message>
    <message>
        <source>pelvis still square at impact</source>
        <translation>Becken im Treffmoment noch parallel</translation>
    </message>
    <message>
        <source>trunk staying back at impact</source>
        <translation>Oberkörper bleibt im Treffmoment zurück</translation>
    </message>
    <message>
        <source>wrist set let go early</source>
        <translation>Handgelenkwinkel früh losgelassen</translation>
    </message>
    <message>
        <source>little forward shaft lean</source>
        <translation>wenig Schaftneigung nach vorn</translation>
    </message>
    <message>
        <source>body staying over the trail foot at the finish</source>
        <translation>Körper bleibt im Finish über dem hinteren Fuß</translation>
    </message>
    <message>
        <source>ball struck thin or heavy</source>
        <translation>Ball dünn oder fett getroffen</translation>
    </message>
    <message>
        <source>ball starts to the trail side</source>
        <translation>Ball startet zur hinteren Seite</translation>
    </message>
    <message>
        <source>ball starts to the lead side</source>
        <translation>Ball startet zur vorderen Seite</translation>
    </message>
    <message>
        <source>ball curves to the trail side</source>
        <translation>Ball kurvt zur hinteren Seite</translation>
    </message>
    <message>
        <source>ball curves to the lead side</source>
        <translation>Ball kurvt zur vorderen Seite</translation>
    </message>
    <message>
        <source>ball flies high</source>
        <translation>Ball fliegt hoch</translation>
    </message>
    <message>
        <source>several schools</source>
        <translation>mehrere Schulen</translation>
    </message>
    <message>
        <source>one school</source>
        <translation>eine Schule</translation>
    </message>
    <message>
        <source>stance gauge</source>
        <translation>Standlehre</translation>
    </message>
    <message>
        <source>Lay a stick down with your stance width marked on it and step onto the marks before every swing.</source>
        <translation>Legen Sie einen Stab hin, auf dem Ihre Standbreite markiert ist, und treten Sie vor jedem Schwung auf die Marken.</translation>
    </message>
    <message>
        <source>ball gauge</source>
        <translation>Balllehre</translation>
    </message>
    <message>
        <source>Lay a stick from the ball toward you between the feet and check where it meets the line from foot to foot.</source>
        <translation>Legen Sie einen Stab vom Ball zu sich zwischen die Füße und prüfen Sie, wo er die Linie von Fuß zu Fuß trifft.</translation>
    </message>
    <message>
        <source>stick outside the trail foot</source>
        <translation>Stab außen am hinteren Fuß</translation>
    </message>
    <message>
        <source>Put a stick upright a hand&apos;s breadth outside the trail hip and swing back without touching it.</source>
        <translation>Stellen Sie einen Stab eine Handbreit außerhalb der hinteren Hüfte auf und schwingen Sie zurück, ohne ihn zu berühren.</translation>
    </message>
    <message>
        <source>slow-motion swing</source>
        <translation>Zeitlupenschwung</translation>
    </message>
    <message>
        <source>Swing at a quarter of your speed and feel the one thing; only then at half speed with a ball.</source>
        <translation>Schwingen Sie mit einem Viertel Ihres Tempos und spüren Sie die eine Sache; erst dann mit halbem Tempo und Ball.</translation>
    </message>
    <message>
        <source>step drill</source>
        <translation>Schrittübung</translation>
    </message>
    <message>
        <source>Start with the feet together, step toward the target before the arms start down.</source>
        <translation>Beginnen Sie mit geschlossenen Füßen, machen Sie einen Schritt zum Ziel, bevor die Arme den Abschwung beginnen.</translation>
    </message>
    <message>
        <source>pause at impact</source>
        <translation>Halt im Treffmoment</translation>
    </message>
    <message>
        <source>Stop at the ball for a slow count and look: belt, hands and lead side.</source>
        <translation>Halten Sie am Ball für langsames Zählen an und schauen Sie: Gürtel, Hände und vordere Seite.</translation>
    </message>
    <message>
        <source>wide takeaway</source>
        <translation>weiter Takeaway</translation>
    </message>
    <message>
        <source>Push the club back low with a long lead arm to hip height, stop, look, go on.</source>
        <translation>Schieben Sie den Schläger flach mit langem vorderen Arm bis Hüfthöhe zurück, anhalten, schauen, weiter.</translation>
    </message>
    <message>
        <source>seat against the wall</source>
        <translation>Gesäß an der Wand</translation>
    </message>
    <message>
        <source>Stand with the seat touching a wall, swing slowly back and through without losing the touch.</source>
        <translation>Stehen Sie mit dem Gesäß an einer Wand, schwingen Sie langsam zurück und durch, ohne sie zu verlassen.</translation>
    </message>
    <message>
        <source>finish hold</source>
        <translation>Finish halten</translation>
    </message>
    <message>
        <source>Swing through and stand still over the lead foot with the trail heel up for a slow count of three.</source>
        <translation>Schwingen Sie durch und stehen Sie still über dem vorderen Fuß, die hintere Ferse oben, während Sie langsam bis drei zählen.</translation>
    </message>
    <message>
        <source>three-quarter swing</source>
        <translation>Dreiviertelschwung</translation>
    </message>
    <message>
        <source>Swing back only until the lead arm is level, from there through to a full finish.</source>
        <translation>Schwingen Sie nur zurück, bis der vordere Arm waagerecht ist, von dort durch in ein volles Finish.</translation>
    </message>
    <message>
        <source>Feel the insides of both feet under the shoulders.</source>
        <translation>Spüren Sie die Innenseiten beider Füße unter den Schultern.</translation>
    </message>
    <message>
        <source>Feel taller, with the feet under the shoulder joints.</source>
        <translation>Fühlen Sie sich größer, die Füße unter den Schultergelenken.</translation>
    </message>
    <message>
        <source>Feel the chest over the ball.</source>
        <translation>Spüren Sie die Brust über dem Ball.</translation>
    </message>
    <message>
        <source>Feel the ball a little nearer the lead foot.</source>
        <translation>Spüren Sie den Ball etwas näher am vorderen Fuß.</translation>
    </message>
    <message>
        <source>Feel the trail hip turn back instead of sideways.</source>
        <translation>Spüren Sie, wie die hintere Hüfte nach hinten statt zur Seite dreht.</translation>
    </message>
    <message>
        <source>Feel the trail knee keep its flex while the chest turns over it.</source>
        <translation>Spüren Sie, wie das hintere Knie gebeugt bleibt, während die Brust darüber dreht.</translation>
    </message>
    <message>
        <source>Feel the lead hand far from the head at the top.</source>
        <translation>Spüren Sie die vordere Hand am höchsten Punkt weit weg vom Kopf.</translation>
    </message>
    <message>
        <source>Feel the arms stop when the turn stops.</source>
        <translation>Spüren Sie, wie die Arme anhalten, wenn die Drehung endet.</translation>
    </message>
    <message>
        <source>Feel the lead shoulder turn over the trail knee.</source>
        <translation>Spüren Sie, wie die vordere Schulter über das hintere Knie dreht.</translation>
    </message>
    <message>
        <source>Feel the belt go first and the chest wait.</source>
        <translation>Spüren Sie, wie der Gürtel zuerst geht und die Brust wartet.</translation>
    </message>
    <message>
        <source>Feel the hands drop toward the trail pocket before the chest turns.</source>
        <translation>Spüren Sie, wie die Hände zur hinteren Hosentasche fallen, bevor die Brust dreht.</translation>
    </message>
    <message>
        <source>Feel the lead hip turn back and around, not toward the target.</source>
        <translation>Spüren Sie, wie die vordere Hüfte nach hinten herum dreht, nicht zum Ziel.</translation>
    </message>
    <message>
        <source>Feel the seat stay on the wall behind you until the ball is gone.</source>
        <translation>Spüren Sie, wie das Gesäß an der Wand hinter Ihnen bleibt, bis der Ball weg ist.</translation>
    </message>
    <message>
        <source>Feel the belt face past the ball when you hit it.</source>
        <translation>Spüren Sie, wie der Gürtel am Ball vorbei zeigt, wenn Sie treffen.</translation>
    </message>
    <message>
        <source>Feel the shirt buttons get to the ball.</source>
        <translation>Spüren Sie, wie die Knopfleiste beim Ball ankommt.</translation>
    </message>
    <message>
        <source>Feel the lead hand pull the handle past the ball.</source>
        <translation>Spüren Sie, wie die vordere Hand den Griff am Ball vorbeizieht.</translation>
    </message>
    <message>
        <source>Feel the lead hand in front of the ball when you hit it.</source>
        <translation>Spüren Sie die vordere Hand vor dem Ball, wenn Sie treffen.</translation>
    </message>
    <message>
        <source>Feel all of you arrive over the lead foot.</source>
        <translation>Spüren Sie, wie alles an Ihnen über dem vorderen Fuß ankommt.</translation>
    </message>
    <message>
        <source>This is no diagnosis: a video shows posture, not load. Stop at sharp or sudden pain, numbness, weakness, pain running down a limb, locking, swelling, night pain, chest pain or dizziness; if it is still there tomorrow go lighter and see a physician or licensed physiotherapist.</source>
        <translation>Das ist keine Diagnose: ein Video zeigt Haltung, keine Belastung. Hören Sie auf bei scharfem oder plötzlichem Schmerz, Taubheit, Schwäche, in Arm oder Bein ausstrahlendem Schmerz, Blockieren, Schwellung, Nachtschmerz, Brustschmerz oder Schwindel; ist es morgen noch da, machen Sie leichter weiter und gehen Sie zu Arzt oder Physiotherapeut.</translation>
    </message>
    <message>
        <source>Seen in %1 of %2 swings, last: %3.</source>
        <translation>Gesehen in %1 von %2 Schwüngen, zuletzt: %3.</translation>
    </message>
    <message>
        <source>Seen in one swing: %1. One swing proves little; look at three to five before changing anything.</source>
        <translation>In einem Schwung gesehen: %1. Ein Schwung beweist wenig; sehen Sie drei bis fünf an, bevor Sie etwas ändern.</translation>
    </message>
    <message>
        <source>Seen in two swings, last: %1. Look at three to five before changing anything.</source>
        <translation>In zwei Schwüngen gesehen, zuletzt: %1. Sehen Sie drei bis fünf an, bevor Sie etwas ändern.</translation>
    </message>
    <message>
        <source>at impact the lead hip stands %1 off the line from ankle to shoulder and %2 on the target side of the ankle</source>
        <translation>im Treffmoment steht die vordere Hüfte %1 neben der Linie vom Knöchel zur Schulter und %2 auf der Zielseite des Knöchels</translation>
    </message>
    <message>
        <source>Pain in the lead hip is logged.</source>
        <translation>Schmerz in der vorderen Hüfte ist vermerkt.</translation>
    </message>
    <message>
        <source>coach&apos;s experience</source>
        <translation>Erfahrung des Lehrers</translation>
    </message>
    <message>
        <source>Turn the lead hip back and around instead of pushing it toward the target; turn the lead foot out a little; fewer full swings today.</source>
        <translation>Drehen Sie die vordere Hüfte nach hinten herum, statt sie zum Ziel zu schieben; drehen Sie den vorderen Fuß etwas aus; heute weniger volle Schwünge.</translation>
    </message>
    <message>
        <source>at the top the spine leans toward the target (%1)</source>
        <translation>am höchsten Punkt neigt sich die Wirbelsäule zum Ziel (%1)</translation>
    </message>
    <message>
        <source>large side bend at impact (%1) in a fast downswing (%2)</source>
        <translation>große Seitneigung im Treffmoment (%1) in einem schnellen Abschwung (%2)</translation>
    </message>
    <message>
        <source>the forward bend is lost before the ball (%1)</source>
        <translation>die Vorbeuge geht vor dem Ball verloren (%1)</translation>
    </message>
    <message>
        <source>Pain in the lower back is logged.</source>
        <translation>Schmerz im unteren Rücken ist vermerkt.</translation>
    </message>
    <message>
        <source>Earlier trouble of the lower back is on the body card.</source>
        <translation>Frühere Beschwerden im unteren Rücken stehen auf der Körperkarte.</translation>
    </message>
    <message>
        <source>several studies (earlier back pain); swing mechanics: weak, contested</source>
        <translation>mehrere Studien (frühere Rückenschmerzen); Schwungmechanik: schwach, umstritten</translation>
    </message>
    <message>
        <source>weak (swing mechanics are contested)</source>
        <translation>schwach (die Schwungmechanik ist umstritten)</translation>
    </message>
    <message>
        <source>Shorter backswing, let the trail heel and the pelvis turn more, warm up for ten minutes, fewer full swings today.</source>
        <translation>Kürzerer Rückschwung, hintere Ferse und Becken mehr mitdrehen lassen, zehn Minuten aufwärmen, heute weniger volle Schwünge.</translation>
    </message>
    <message>
        <source>Pain in the lead knee is logged.</source>
        <translation>Schmerz im vorderen Knie ist vermerkt.</translation>
    </message>
    <message>
        <source>Earlier trouble of the lead knee is on the body card.</source>
        <translation>Frühere Beschwerden im vorderen Knie stehen auf der Körperkarte.</translation>
    </message>
    <message>
        <source>Turn the lead foot out, let it turn with the finish, straighten the knee later and softer.</source>
        <translation>Drehen Sie den vorderen Fuß aus, lassen Sie ihn im Finish mitdrehen, strecken Sie das Knie später und weicher.</translation>
    </message>
    <message>
        <source>lead wrist</source>
        <translation>vorderen Handgelenk</translation>
    </message>
    <message>
        <source>trail wrist</source>
        <translation>hinteren Handgelenk</translation>
    </message>
    <message>
        <source>lead elbow</source>
        <translation>vorderen Ellbogen</translation>
    </message>
    <message>
        <source>trail elbow</source>
        <translation>hinteren Ellbogen</translation>
    </message>
    <message>
        <source>lead shoulder</source>
        <translation>vorderen Schultergelenk</translation>
    </message>
    <message>
        <source>trail shoulder</source>
        <translation>hinteren Schultergelenk</translation>
    </message>
    <message>
        <source>several studies (overuse)</source>
        <translation>mehrere Studien (Überlastung)</translation>
    </message>
    <message>
        <source>Pain in the %1 is logged.</source>
        <translation>Schmerz im %1 ist vermerkt.</translation>
    </message>
    <message>
        <source>Softer ground or a tee, lighter grip, fewer balls, rest between sets.</source>
        <translation>Weicherer Boden oder ein Tee, leichterer Griff, weniger Bälle, Pausen zwischen den Sätzen.</translation>
    </message>
    <message>
        <source> and %1 are logged in seven days; more than 200 balls or 4 rounds a week is the only published marker.</source>
        <translation> und %1 sind in sieben Tagen vermerkt; mehr als 200 Bälle oder 4 Runden in der Woche ist die einzige veröffentlichte Marke.</translation>
    </message>
    <message>
        <source>Fewer full swings and more short game or slow rehearsals this week.</source>
        <translation>Diese Woche weniger volle Schwünge und mehr kurzes Spiel oder langsame Proben.</translation>
    </message>
    <message>
        <source>No caution is not a clean bill of health. With pain or doubt see a physician or licensed physiotherapist.</source>
        <translation>Kein Hinweis ist kein Freibrief. Bei Schmerz oder Zweifel zu Arzt oder Physiotherapeut.</translation>
    </message>
    <message>
        <source>Adult ranges are not used for children; compare with this player&apos;s own good swings.</source>
        <translation>Bereiche für Erwachsene gelten nicht für Kinder; vergleichen Sie mit den eigenen guten Schwüngen dieses Spielers.</translation>
    </message>
    <message>
        <source>The body card limits the %1, so usual ranges are not used; compare with this player&apos;s own good swings.</source>
        <translation>Die Körperkarte schränkt ein (%1), also gelten die üblichen Bereiche nicht; vergleichen Sie mit den eigenen guten Schwüngen dieses Spielers.</translation>
    </message>
    <message>
        <source>The club head is not seen at address or at the top; mark it by hand in both frames.</source>
        <translation>Der Schlägerkopf ist beim Ansprechen oder am höchsten Punkt nicht zu sehen; markieren Sie ihn in beiden Bildern von Hand.</translation>
    </message>
    <message>
        <source>The club is not seen long enough at address; mark butt and head by hand.</source>
        <translation>Der Schläger ist beim Ansprechen nicht lang genug zu sehen; markieren Sie Griffende und Kopf von Hand.</translation>
    </message>
    <message>
        <source>The hands could not be followed back and down; mark the grip by hand going back and coming down.</source>
        <translation>Die Hände ließen sich zurück und herunter nicht verfolgen; markieren Sie den Griff in beiden Richtungen von Hand.</translation>
    </message>
    <message>
        <source>The hands do not pass the height of &quot;%1&quot; going back in this clip; mark the grip by hand.</source>
        <translation>Die Hände erreichen in diesem Clip im Rückschwung die Höhe „%1“ nicht; markieren Sie den Griff von Hand.</translation>
    </message>
    <message>
        <source>The line of the feet or of the stick is too short in the picture to tell its aim.</source>
        <translation>Die Linie der Füße oder des Stabs ist im Bild zu kurz, um ihre Ausrichtung zu bestimmen.</translation>
    </message>
    <message>
        <source>Aim needs a stick on the target line: lay one down and mark both its ends.</source>
        <translation>Die Ausrichtung braucht einen Stab auf der Ziellinie: legen Sie einen hin und markieren Sie beide Enden.</translation>
    </message>
    <message>
        <source>The shaft is not seen well enough here; mark butt and club head by hand.</source>
        <translation>Der Schaft ist hier nicht gut genug zu sehen; markieren Sie Griffende und Schlägerkopf von Hand.</translation>
    </message>
    <message>
        <source>The shaft at the top is not seen well enough; mark butt and club head by hand.</source>
        <translation>Der Schaft ist am höchsten Punkt nicht gut genug zu sehen; markieren Sie Griffende und Schlägerkopf von Hand.</translation>
    </message>
    <message>
        <source>The toe line is too short in this picture to tell the aim; put a stick along the toes as well.</source>
        <translation>Die Linie der Fußspitzen ist in diesem Bild zu kurz für die Ausrichtung; legen Sie auch einen Stab an die Fußspitzen.</translation>
    </message>
    <message>
        <source>The club measures %1 cm in this clip, longer than the rules allow (122 cm): the scale is wrong. Check the stature and the marks on butt and club head.</source>
        <translation>Der Schläger misst in diesem Clip %1 cm, länger als die Regeln erlauben (122 cm): der Maßstab stimmt nicht. Prüfen Sie die Größe und die Marken an Griffende und Schlägerkopf.</translation>
    </message>
    <message>
        <source>The shaft leans %1 degrees at address, more than any club&apos;s design allows: check the view, the hand and the marks on the shaft.</source>
        <translation>Der Schaft neigt sich beim Ansprechen %1 Grad, mehr als die Bauart irgendeines Schlägers zulässt: prüfen Sie Ansicht, Hand und Marken am Schaft.</translation>
    </message>
    <message>
        <source>Trail heel and toe are not seen well enough in the finish; mark them by hand.</source>
        <translation>Hintere Ferse und Fußspitze sind im Finish nicht gut genug zu sehen; markieren Sie sie von Hand.</translation>
    </message>
    <message>
        <source>The outline of the head could not be seen at &quot;%1&quot;; mark its edge by hand.</source>
        <translation>Der Umriss des Kopfes war bei „%1“ nicht zu sehen; markieren Sie seinen Rand von Hand.</translation>
    </message>
    <message>
        <source>Head and trail ankle could not be followed going back; mark them by hand at the top.</source>
        <translation>Kopf und hinterer Knöchel ließen sich im Rückschwung nicht verfolgen; markieren Sie sie am höchsten Punkt von Hand.</translation>
    </message>
    <message>
        <source>The %1 falls together with its neighbour in the picture; check the marks.</source>
        <translation>Zusammenfall im Bild mit dem Nachbarpunkt: %1; prüfen Sie die Marken.</translation>
    </message>
    <message>
        <source>A knee bends toward the camera here, so its angle cannot be told from the front; film down the line.</source>
        <translation>Ein Knie beugt sich hier zur Kamera, sein Winkel ist von vorn nicht zu bestimmen; filmen Sie auf der Ziellinie.</translation>
    </message>
    <message>
        <source>The hands could not be seen at &quot;%1&quot;; mark the grip by hand.</source>
        <translation>Die Hände waren bei „%1“ nicht zu sehen; markieren Sie den Griff von Hand.</translation>
    </message>
    <message>
        <source>The joint is not seen well enough here; mark it and its neighbours by hand.</source>
        <translation>Das Gelenk ist hier nicht gut genug zu sehen; markieren Sie es und seine Nachbarn von Hand.</translation>
    </message>
    <message>
        <source>Lead ankle and lead shoulder fall together in the picture; check the marks.</source>
        <translation>Vorderer Knöchel und vordere Schulter fallen im Bild zusammen; prüfen Sie die Marken.</translation>
    </message>
    <message>
        <source>The moment &quot;%1&quot; was not found in this clip; mark it by hand.</source>
        <translation>Der Moment „%1“ wurde in diesem Clip nicht gefunden; markieren Sie ihn von Hand.</translation>
    </message>
    <message>
        <source>The %1 could not be seen at &quot;%2&quot;; mark it by hand in that frame.</source>
        <translation>Nicht zu sehen bei „%2“: %1; markieren Sie es in diesem Bild von Hand.</translation>
    </message>
    <message>
        <source>The head could not be seen at &quot;%1&quot;; mark its centre by hand in that frame.</source>
        <translation>Der Kopf war bei „%1“ nicht zu sehen; markieren Sie seine Mitte in diesem Bild von Hand.</translation>
    </message>
    <message>
        <source>No ball was found at address; mark the ball by hand, or film with the ball in the picture.</source>
        <translation>Beim Ansprechen wurde kein Ball gefunden; markieren Sie ihn von Hand, oder filmen Sie mit dem Ball im Bild.</translation>
    </message>
    <message>
        <source>The shaft could not be told at &quot;%1&quot;; mark butt and club head by hand, or film with a shorter shutter time.</source>
        <translation>Der Schaft war bei „%1“ nicht zu bestimmen; markieren Sie Griffende und Schlägerkopf von Hand, oder filmen Sie mit kürzerer Belichtung.</translation>
    </message>
    <message>
        <source>The player&apos;s size in the picture is not known; mark hips, shoulders and ankles at address.</source>
        <translation>Die Größe des Spielers im Bild ist nicht bekannt; markieren Sie Hüften, Schultern und Knöchel beim Ansprechen.</translation>
    </message>
    <message>
        <source>The feet are too close together in the picture to serve as a measure; check the view.</source>
        <translation>Die Füße stehen im Bild zu eng, um als Maß zu dienen; prüfen Sie die Ansicht.</translation>
    </message>
    <message>
        <source>This clip does not show enough for this number.</source>
        <translation>Dieser Clip zeigt für diese Zahl nicht genug.</translation>
    </message>
    <message>
        <source>The marks are too unsure in this clip for this number; place them by hand, or film nearer with a clear view.</source>
        <translation>Die Marken sind in diesem Clip für diese Zahl zu unsicher; setzen Sie sie von Hand, oder filmen Sie näher mit freier Sicht.</translation>
    </message>
    <message>
        <source>The moment &quot;impact&quot; was not found in this clip; mark it by hand.</source>
        <translation>Der Treffmoment wurde in diesem Clip nicht gefunden; markieren Sie ihn von Hand.</translation>
    </message>
    <message>
        <source>The shaft is not seen in enough frames around impact; film at 240 frames per second with a short shutter time.</source>
        <translation>Der Schaft ist um den Treffmoment in zu wenigen Bildern zu sehen; filmen Sie mit 240 Bildern pro Sekunde und kurzer Belichtung.</translation>
    </message>
    <message>
        <source>The club head does not move from frame to frame at impact; check the marks.</source>
        <translation>Der Schlägerkopf bewegt sich im Treffmoment von Bild zu Bild nicht; prüfen Sie die Marken.</translation>
    </message>
    <message>
        <source>The grip end of the club could not be seen at impact; mark the butt by hand.</source>
        <translation>Das Griffende des Schlägers war im Treffmoment nicht zu sehen; markieren Sie es von Hand.</translation>
    </message>
    <message>
        <source>The shaft at this moment is too blurred to tell its lean; film at 240 frames per second with a short shutter time.</source>
        <translation>Der Schaft ist in diesem Moment zu unscharf für seine Neigung; filmen Sie mit 240 Bildern pro Sekunde und kurzer Belichtung.</translation>
    </message>
    <message>
        <source>Hips and shoulders could not be followed at the start of the downswing; mark them by hand.</source>
        <translation>Hüften und Schultern ließen sich am Beginn des Abschwungs nicht verfolgen; markieren Sie sie von Hand.</translation>
    </message>
    <message>
        <source>Pelvis and chest hardly move toward the target in the first third of the downswing, so a share says nothing.</source>
        <translation>Becken und Brust bewegen sich im ersten Drittel des Abschwungs kaum zum Ziel, ein Anteil sagt also nichts.</translation>
    </message>
    <message>
        <source>The clip&apos;s real speed is not known; tell the frame rate it was captured at.</source>
        <translation>Die wirkliche Geschwindigkeit des Clips ist nicht bekannt; geben Sie an, mit welcher Bildrate er aufgenommen wurde.</translation>
    </message>
    <message>
        <source>Pelvis and chest move too little in the first third of the downswing to share it out with these marks; mark hips and shoulders by hand.</source>
        <translation>Becken und Brust bewegen sich im ersten Drittel des Abschwungs zu wenig, um sie mit diesen Marken aufzuteilen; markieren Sie Hüften und Schultern von Hand.</translation>
    </message>
    <message>
        <source>The feet&apos;s turn-out cannot be told well enough from the front here; mark heel and toe by hand.</source>
        <translation>Die Öffnung der Füße ist von vorn hier nicht gut genug zu bestimmen; markieren Sie Ferse und Fußspitze von Hand.</translation>
    </message>
    <message>
        <source>Address, top and impact are not in order in this clip; mark them by hand.</source>
        <translation>Ansprechen, höchster Punkt und Treffmoment sind in diesem Clip nicht in der richtigen Reihenfolge; markieren Sie sie von Hand.</translation>
    </message>
    <message>
        <source>At 30 frames per second the downswing is too few pictures for a tempo; film at 120 or more.</source>
        <translation>Bei 30 Bildern pro Sekunde hat der Abschwung zu wenige Bilder für ein Tempo; filmen Sie mit 120 oder mehr.</translation>
    </message>
    <message>
        <source>The downswing is too few pictures for a tempo; film at 120 frames per second or more, or tell the rate the clip was captured at.</source>
        <translation>Der Abschwung hat zu wenige Bilder für ein Tempo; filmen Sie mit 120 Bildern pro Sekunde oder mehr, oder geben Sie die Aufnahmerate an.</translation>
    </message>
    <message>
        <source>The moments are not in order in this clip; mark them by hand.</source>
        <translation>Die Momente sind in diesem Clip nicht in der richtigen Reihenfolge; markieren Sie sie von Hand.</translation>
    </message>
    <message>
        <source>Hips and shoulders fall together in the picture; check the marks.</source>
        <translation>Hüften und Schultern fallen im Bild zusammen; prüfen Sie die Marken.</translation>
    </message>
    <message>
        <source>A turn cannot be told from this clip: mark belt buckle and shirt buttons by hand where they are seen, or put an alignment stick through the belt loops.</source>
        <translation>Eine Drehung ist aus diesem Clip nicht zu bestimmen: markieren Sie Gürtelschnalle und Knopfleiste von Hand, wo sie zu sehen sind, oder stecken Sie einen Stab durch die Gürtelschlaufen.</translation>
    </message>
    <message>
        <source>The wrists are hardly set when the lead arm is level, so a kept share says nothing.</source>
        <translation>Die Handgelenke sind kaum gewinkelt, wenn der vordere Arm waagerecht ist; ein gehaltener Anteil sagt also nichts.</translation>
    </message>
    <message>
        <source>Takeaway and delivery were not found in this clip; mark them by hand.</source>
        <translation>Takeaway und Delivery wurden in diesem Clip nicht gefunden; markieren Sie sie von Hand.</translation>
    </message>
    <message>
        <source>Lead forearm and shaft are seen together in too few frames to follow the wrist set.</source>
        <translation>Vorderer Unterarm und Schaft sind in zu wenigen Bildern gemeinsam zu sehen, um dem Handgelenkwinkel zu folgen.</translation>
    </message>
    <message>
        <source>A forearm points at the camera at &quot;release&quot;, so its direction cannot be told.</source>
        <translation>Ein Unterarm zeigt beim Release zur Kamera, seine Richtung ist also nicht zu bestimmen.</translation>
    </message>
    <message>
        <source>Lead forearm and shaft are not seen well enough here; mark lead elbow, lead wrist and the shaft by hand.</source>
        <translation>Vorderer Unterarm und Schaft sind hier nicht gut genug zu sehen; markieren Sie vorderen Ellbogen, vorderes Handgelenk und Schaft von Hand.</translation>
    </message>
    <message>
        <source>The wrist set stays near its greatest value for long, so its peak has no sharp time.</source>
        <translation>Der Handgelenkwinkel bleibt lange nahe seinem größten Wert, sein Höhepunkt hat also keine scharfe Zeit.</translation>
    </message>
    <message>
        <source>Forearms and shaft are not seen well enough after impact; mark elbows, wrists and the shaft by hand.</source>
        <translation>Unterarme und Schaft sind nach dem Treffmoment nicht gut genug zu sehen; markieren Sie Ellbogen, Handgelenke und Schaft von Hand.</translation>
    </message>
    <message>
        <source>This clip does not say how fast it was filmed, so no times are given. Tell the capture rate (frames a second) to get them.</source>
        <translation>Dieser Clip sagt nicht, wie schnell er aufgenommen wurde, darum gibt es keine Zeiten. Geben Sie die Aufnahmerate an (Bilder pro Sekunde).</translation>
    </message>
    <message>
        <source>The pose network is not installed, so only hand marks and what follows from them are used. Run platform/linux/fetch-network.sh to install it.</source>
        <translation>Das Posennetz ist nicht installiert, darum zählen nur Handmarken und was aus ihnen folgt. Führen Sie platform/linux/fetch-network.sh aus, um es zu installieren.</translation>
    </message>
    <message>
        <source>No player was found in this clip: the whole body should be in the picture, upright and not too small.</source>
        <translation>In diesem Clip wurde kein Spieler gefunden: der ganze Körper sollte im Bild sein, aufrecht und nicht zu klein.</translation>
    </message>
    <message>
        <source>No full swing could be followed in this clip: film the whole swing, from before the club moves until the finish.</source>
        <translation>In diesem Clip ließ sich kein voller Schwung verfolgen: filmen Sie den ganzen Schwung, bevor der Schläger sich bewegt bis zum Finish.</translation>
    </message>
    <message>
        <source>Impact cannot be told: the ball did not leave its place in this clip.</source>
        <translation>Der Treffmoment ist nicht zu bestimmen: der Ball hat in diesem Clip seinen Platz nicht verlassen.</translation>
    </message>
    <message>
        <source>Impact cannot be told: no ball was seen at address. A clean view of the ball would help.</source>
        <translation>Der Treffmoment ist nicht zu bestimmen: beim Ansprechen war kein Ball zu sehen. Freie Sicht auf den Ball würde helfen.</translation>
    </message>
    <message>
        <source>Impact cannot be told: the ball left its place at another time than the club came through.</source>
        <translation>Der Treffmoment ist nicht zu bestimmen: der Ball verließ seinen Platz zu einer anderen Zeit, als der Schläger durchkam.</translation>
    </message>
    <message>
        <source>The top cannot be told: neither shaft nor hands could be followed there.</source>
        <translation>Der höchste Punkt ist nicht zu bestimmen: weder Schaft noch Hände ließen sich dort verfolgen.</translation>
    </message>
    <message>
        <source>Address cannot be told: the clip starts after the club began to move, or it never rested.</source>
        <translation>Die Ansprechposition ist nicht zu bestimmen: der Clip beginnt nach der ersten Bewegung des Schlägers, oder er ruhte nie.</translation>
    </message>
    <message>
        <source>The finish cannot be told: the clip ends before the player comes to rest. Hold the finish for a second.</source>
        <translation>Das Finish ist nicht zu bestimmen: der Clip endet, bevor der Spieler ruht. Halten Sie das Finish eine Sekunde.</translation>
    </message>
    <message>
        <source>The moment &quot;%1&quot; was found on the wrong side of &quot;%2&quot; as set by hand, so it is left out; set it by hand, too.</source>
        <translation>Der Moment „%1“ wurde auf der falschen Seite von „%2“ (von Hand gesetzt) gefunden und darum weggelassen; setzen Sie auch ihn von Hand.</translation>
    </message>
    <message>
        <source>No player was found in the clip; place the marks by hand.</source>
        <translation>Im Clip wurde kein Spieler gefunden; setzen Sie die Marken von Hand.</translation>
    </message>
    <message>
        <source>The two shoulders could not be told apart well at address; mark them by hand.</source>
        <translation>Die beiden Schultern waren beim Ansprechen nicht gut zu unterscheiden; markieren Sie sie von Hand.</translation>
    </message>
    <message>
        <source>The player was seen in very few frames; place the marks by hand.</source>
        <translation>Der Spieler war in sehr wenigen Bildern zu sehen; setzen Sie die Marken von Hand.</translation>
    </message>
    <message>
        <source>Cannot tell: the playbook has no departure that goes by these words.</source>
        <translation>Nicht zu sagen: das Playbook kennt keine Abweichung, die so heißt.</translation>
    </message>
    <message>
        <source>Cannot tell: part of what these words may mean was not seen.</source>
        <translation>Nicht zu sagen: ein Teil dessen, was damit gemeint sein kann, war nicht zu sehen.</translation>
    </message>
    <message>
        <source>Not this: %1 is not there in these swings.</source>
        <translation>Das nicht: in diesen Schwüngen nicht vorhanden (%1).</translation>
    </message>
    <message>
        <source>Cannot tell: %1 lies too near the edge for what this clip can show.</source>
        <translation>Nicht zu sagen: zu nahe an der Grenze für das, was dieser Clip zeigen kann (%1).</translation>
    </message>
    <message>
        <source>The body card names a condition without a clearance: no swings until a physician or licensed physiotherapist has agreed.</source>
        <translation>Die Körperkarte nennt eine Einschränkung ohne Freigabe: keine Schwünge, bis Arzt oder Physiotherapeut zugestimmt hat.</translation>
    </message>
    <message>
        <source>The playbook holds no drill for %1.</source>
        <translation>Das Playbook hat keine Übung dafür: %1.</translation>
    </message>
    <message>
        <source>Pain of 4 or more of 10 is logged: slow rehearsals only, no balls today.</source>
        <translation>Schmerz von 4 oder mehr von 10 ist vermerkt: heute nur langsame Proben, keine Bälle.</translation>
    </message>
    <message>
        <source>Much was hit this week already: one set of balls at most.</source>
        <translation>Diese Woche wurde schon viel geschlagen: höchstens ein Satz Bälle.</translation>
    </message>
    <message>
        <source>The body card limits the balls to %1 a day.</source>
        <translation>Die Körperkarte begrenzt die Bälle auf %1 am Tag.</translation>
    </message>
    <message>
        <source>These two collide: working on %1 moves what guards %2; do the first one alone until it holds.</source>
        <translation>Diese beiden stoßen sich: Arbeit daran (%1) verändert, was hier bewahrt wird (%2); machen Sie zuerst das Erste allein, bis es sitzt.</translation>
    </message>
    <message>
        <source>Undecided: there is nothing to compare.</source>
        <translation>Unentschieden: es gibt nichts zu vergleichen.</translation>
    </message>
    <message>
        <source>Undecided: %1 itself did not change beyond doubt; try it more clearly, or with three to five swings on each side.</source>
        <translation>Unentschieden: keine zweifelsfreie Änderung (%1); versuchen Sie es deutlicher, oder mit drei bis fünf Schwüngen auf jeder Seite.</translation>
    </message>
    <message>
        <source>Strengthened: with less %1 what it tends to cause went away too.</source>
        <translation>Bestärkt: mit weniger davon (%1) verschwand auch, was daraus zu folgen pflegt.</translation>
    </message>
    <message>
        <source>Dropped for this player: %1 changed and what it tends to cause did not.</source>
        <translation>Für diesen Spieler verworfen: %1 änderte sich, die übliche Folge nicht.</translation>
    </message>
    <message>
        <source>Undecided: %1 changed, but nothing it tends to cause was there before.</source>
        <translation>Unentschieden: %1 änderte sich, aber die übliche Folge war vorher nicht da.</translation>
    </message>
    <message>
        <source>True vertical is only assumed in one of the clips: tilts and shaft lean may differ by the cameras alone. Mark a plumb edge, or film with the level shown.</source>
        <translation>Die wahre Senkrechte ist in einem der Clips nur angenommen: Neigungen können schon durch die Kameras verschieden sein. Markieren Sie eine lotrechte Kante, oder filmen Sie mit angezeigter Waage.</translation>
    </message>
    <message>
        <source>The cameras stood at different distances: numbers against the trail ankle and the ball suffer.</source>
        <translation>Die Kameras standen verschieden weit entfernt: Zahlen gegen hinteren Knöchel und Ball leiden.</translation>
    </message>
    <message>
        <source>The player is much smaller in one of the clips: its numbers are less sure.</source>
        <translation>Der Spieler ist in einem der Clips viel kleiner: dessen Zahlen sind weniger sicher.</translation>
    </message>
    <message>
        <source>One of the clips has fewer than 100 frames a second: positions near the ball, tempo and shaft lean suffer.</source>
        <translation>Einer der Clips hat weniger als 100 Bilder pro Sekunde: Positionen nahe am Ball, Tempo und Schaftneigung leiden.</translation>
    </message>
    <message>
        <source>The cameras looked from different directions: tilts, turns and ball position suffer.</source>
        <translation>Die Kameras schauten aus verschiedenen Richtungen: Neigungen, Drehungen und Ballposition leiden.</translation>
    </message>
    <message>
        <source>The kinds of shot differ: only the positions can be compared, not the sizes.</source>
        <translation>Die Schlagarten sind verschieden: nur die Positionen sind vergleichbar, nicht die Größen.</translation>
    </message>
    <message>
        <source>The clubs differ: set-up, tilt and shaft lean differ with the club.</source>
        <translation>Die Schläger sind verschieden: Ansprechen, Neigung und Schaftneigung hängen vom Schläger ab.</translation>
    </message>
    <message>
        <source>One swing is filmed face-on and the other down-the-line; compare two swings of the same view.</source>
        <translation>Ein Schwung ist von vorn gefilmt, der andere auf der Ziellinie; vergleichen Sie zwei Schwünge derselben Ansicht.</translation>
    </message>
    <message>
        <source>Matching by time needs impact and a known capture rate in both swings; match by hands instead.</source>
        <translation>Zuordnen nach Zeit braucht in beiden Schwüngen Treffmoment und bekannte Aufnahmerate; ordnen Sie nach den Händen zu.</translation>
    </message>
    <message>
        <source>These two swings share too few key moments to be put side by side; mark address, top or impact by hand.</source>
        <translation>Diese beiden Schwünge haben zu wenige gemeinsame Schlüsselmomente; markieren Sie Ansprechen, höchsten Punkt oder Treffmoment von Hand.</translation>
    </message>
    <message>
        <source>The camera was armed too late for this swing: its beginning is not in the take.</source>
        <translation>Die Kamera wurde für diesen Schwung zu spät scharf: sein Anfang fehlt in der Aufnahme.</translation>
    </message>
    <message>
        <source>No clip was given; name at least one.</source>
        <translation>Es wurde kein Clip genannt; nennen Sie mindestens einen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no region of the body card; take one such as lead_hip or lower_back.</source>
        <translation>„%1“ ist keine Region der Körperkarte; nehmen Sie eine wie lead_hip oder lower_back.</translation>
    </message>
    <message>
        <source>Days must look like 2026-11-25; check them.</source>
        <translation>Tage müssen aussehen wie 2026-11-25; prüfen Sie sie.</translation>
    </message>
    <message>
        <source>Pain needs a level from 0 to 10 and a day such as 2026-11-25.</source>
        <translation>Schmerz braucht eine Stufe von 0 bis 10 und einen Tag wie 2026-11-25.</translation>
    </message>
    <message>
        <source>Practice needs a number of repetitions and a day such as 2026-11-25.</source>
        <translation>Üben braucht eine Zahl von Wiederholungen und einen Tag wie 2026-11-25.</translation>
    </message>
    <message>
        <source>It is not in the library (any more); choose again from the list.</source>
        <translation>Es ist nicht (mehr) in der Bibliothek; wählen Sie noch einmal aus der Liste.</translation>
    </message>
    <message>
        <source>There is no measured swing here yet; bring clips in with &quot;plumbmark lesson add&quot; first.</source>
        <translation>Hier gibt es noch keinen gemessenen Schwung; holen Sie zuerst Clips mit „plumbmark lesson add“ herein.</translation>
    </message>
    <message>
        <source>The playbook knows no departure &quot;%1&quot;; &quot;plumbmark explain --all&quot; lists them.</source>
        <translation>Das Playbook kennt keine Abweichung „%1“; „plumbmark explain --all“ listet sie auf.</translation>
    </message>
    <message>
        <source>Stopped on request.</source>
        <translation>Auf Wunsch angehalten.</translation>
    </message>
    <message>
        <source>A file in the shared folder holds something that was erased and cannot be removed; check its permissions.</source>
        <translation>Eine Datei im gemeinsamen Ordner enthält etwas Gelöschtes und lässt sich nicht entfernen; prüfen Sie ihre Rechte.</translation>
    </message>
    <message>
        <source>Nobody is seen: stand at the ball, with the light on you.</source>
        <translation>Niemand zu sehen: stellen Sie sich an den Ball, mit Licht von vorn.</translation>
    </message>
    <message>
        <source>Your feet are cut off: tilt the phone down or move it back.</source>
        <translation>Die Füße sind abgeschnitten: neigen Sie das Telefon nach unten oder rücken Sie es zurück.</translation>
    </message>
    <message>
        <source>There is too little room above your head: tilt the phone up or move it back.</source>
        <translation>Über dem Kopf ist zu wenig Platz: neigen Sie das Telefon nach oben oder rücken Sie es zurück.</translation>
    </message>
    <message>
        <source>You are too small in the picture: move the phone nearer, to 4 to 5 metres.</source>
        <translation>Sie sind im Bild zu klein: rücken Sie das Telefon näher, auf 4 bis 5 Meter.</translation>
    </message>
    <message>
        <source>You fill the picture: move the phone back, to 4 to 5 metres.</source>
        <translation>Sie füllen das Bild: rücken Sie das Telefon zurück, auf 4 bis 5 Meter.</translation>
    </message>
    <message>
        <source>You stand at the picture&apos;s left edge: turn the phone to its left.</source>
        <translation>Sie stehen am linken Bildrand: drehen Sie das Telefon nach links.</translation>
    </message>
    <message>
        <source>You stand at the picture&apos;s right edge: turn the phone to its right.</source>
        <translation>Sie stehen am rechten Bildrand: drehen Sie das Telefon nach rechts.</translation>
    </message>
    <message>
        <source>The phone sees you from the side: put it where your chest faces it.</source>
        <translation>Das Telefon sieht Sie von der Seite: stellen Sie es vor Ihre Brust.</translation>
    </message>
    <message>
        <source>The phone sees your chest: put it behind you, on the line of your hands.</source>
        <translation>Das Telefon sieht Ihre Brust: stellen Sie es hinter sich, auf die Linie der Hände.</translation>
    </message>
    <message>
        <source>This version has changed meanwhile; look again and choose.</source>
        <translation>Diese Fassung hat sich inzwischen geändert; sehen Sie noch einmal hin und wählen Sie.</translation>
    </message>
    <message>
        <source>Stopped before the end; nothing was written.</source>
        <translation>Vor dem Ende angehalten; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>This lesson file is sealed; give the passphrase it was sealed with.</source>
        <translation>Diese Stundendatei ist versiegelt; geben Sie die Passphrase an, mit der sie versiegelt wurde.</translation>
    </message>
    <message>
        <source>A sender needs a signed file and a short name; try again.</source>
        <translation>Ein Absender braucht eine unterschriebene Datei und einen kurzen Namen; versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Whole, from %1.</source>
        <translation>Unversehrt, von %1.</translation>
    </message>
    <message>
        <source>Whole, sender unknown (not signed).</source>
        <translation>Unversehrt, Absender unbekannt (nicht unterschrieben).</translation>
    </message>
    <message>
        <source>Whole, sender unknown (key %1).</source>
        <translation>Unversehrt, Absender unbekannt (Schlüssel %1).</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no checkpoint of this view; choose one that the playbook has for it.</source>
        <translation>„%1“ ist kein Prüfpunkt dieser Ansicht; wählen Sie einen, den das Playbook dafür hat.</translation>
    </message>
    <message>
        <source>This device could not keep up; choose a smaller picture or a lower rate.</source>
        <translation>Dieses Gerät kam nicht mit; wählen Sie ein kleineres Bild oder eine niedrigere Rate.</translation>
    </message>
    <message>
        <source>The picture is too coarse for a verdict; set the camera to 720 lines or more.</source>
        <translation>Das Bild ist zu grob für ein Urteil; stellen Sie die Kamera auf 720 Zeilen oder mehr.</translation>
    </message>
    <message>
        <source>Too near the edge of the range to tell from this picture.</source>
        <translation>Zu nahe an der Grenze des Bereichs, um es aus diesem Bild zu sagen.</translation>
    </message>
    <message>
        <source>This film does not show it.</source>
        <translation>Dieser Film zeigt es nicht.</translation>
    </message>
    <message>
        <source>The voice lasts longer than ten minutes; cut it or make two reviews.</source>
        <translation>Die Stimme dauert länger als zehn Minuten; kürzen Sie sie oder machen Sie zwei Besprechungen.</translation>
    </message>
    <message>
        <source>The review names a clip that this lesson does not hold; &quot;plumbmark lesson show&quot; lists them.</source>
        <translation>Die Besprechung nennt einen Clip, den diese Stunde nicht enthält; „plumbmark lesson show“ listet sie auf.</translation>
    </message>
    <message>
        <source>The lesson has no spoken review yet; &quot;plumbmark review record&quot; keeps one.</source>
        <translation>Die Stunde hat noch keine gesprochene Besprechung; „plumbmark review record“ behält eine.</translation>
    </message>
    <message>
        <source>The film did not travel with this lesson; import a lesson file that holds it.</source>
        <translation>Der Film kam mit dieser Stunde nicht mit; importieren Sie eine Stundendatei, die ihn enthält.</translation>
    </message>
    <message>
        <source>The voice of this review is not in the library; record it again.</source>
        <translation>Die Stimme dieser Besprechung ist nicht in der Bibliothek; nehmen Sie sie noch einmal auf.</translation>
    </message>
    <message>
        <source>One of the clips shows no swing that could be followed; choose another clip.</source>
        <translation>Einer der Clips zeigt keinen Schwung, der sich verfolgen ließ; wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>The film of this swing did not come with the lesson; ask for the lesson with its films.</source>
        <translation>Der Film dieses Schwungs kam mit der Stunde nicht mit; bitten Sie um die Stunde mit ihren Filmen.</translation>
    </message>
    <message>
        <source>This drawing is not finished; draw it again.</source>
        <translation>Diese Zeichnung ist nicht fertig; zeichnen Sie sie noch einmal.</translation>
    </message>
    <message>
        <source>%1 cm (a finger&apos;s breadth)</source>
        <translation>%1 cm (eine Fingerbreite)</translation>
    </message>
    <message>
        <source>%1 cm (two fingers)</source>
        <translation>%1 cm (zwei Finger)</translation>
    </message>
    <message>
        <source>%1 cm (about half a shoe&apos;s width)</source>
        <translation>%1 cm (etwa eine halbe Schuhbreite)</translation>
    </message>
    <message>
        <source>%1 cm (about a shoe&apos;s width)</source>
        <translation>%1 cm (etwa eine Schuhbreite)</translation>
    </message>
    <message>
        <source>%1 cm (about half a shoe&apos;s length)</source>
        <translation>%1 cm (etwa eine halbe Schuhlänge)</translation>
    </message>
    <message>
        <source>%1 cm (about a shoe&apos;s length)</source>
        <translation>%1 cm (etwa eine Schuhlänge)</translation>
    </message>
    <message>
        <source>%1 degrees</source>
        <translation>%1 Grad</translation>
    </message>
    <message>
        <source>%1 pixels</source>
        <translation>%1 Pixel</translation>
    </message>
    <message>
        <source>This clip cannot tell good from not good here. %1</source>
        <translation>Dieser Clip kann hier gut und nicht gut nicht unterscheiden. %1</translation>
    </message>
    <message>
        <source>%1 The range was widened to what this clip can tell.</source>
        <translation>%1 Der Bereich wurde auf das erweitert, was dieser Clip zeigen kann.</translation>
    </message>
    <message>
        <source>set for this player</source>
        <translation>für diesen Spieler gesetzt</translation>
    </message>
    <message>
        <source>No swing could be told apart in this clip, so there is none to choose by number; measure it without.</source>
        <translation>In diesem Clip ließ sich kein einzelner Schwung unterscheiden; messen Sie ohne Nummer.</translation>
    </message>
    <message>
        <source>No swing was seen in this clip, and it is too long to be measured as one; cut it to one swing, at most a minute.</source>
        <translation>In diesem Clip war kein Schwung zu sehen, und er ist zu lang, um als einer gemessen zu werden; schneiden Sie ihn auf einen Schwung, höchstens eine Minute.</translation>
    </message>
    <message>
        <source>This clip holds one swing; choose 1.</source>
        <translation>Dieser Clip enthält einen Schwung; wählen Sie 1.</translation>
    </message>
    <message>
        <source>This clip holds %1 swings; choose one from 1 to %2.</source>
        <translation>Dieser Clip enthält %1 Schwünge; wählen Sie einen von 1 bis %2.</translation>
    </message>
    <message>
        <source>This clip holds %1 swings, at %2 seconds; number %3 is measured%4. The others can be chosen by their number.</source>
        <translation>Dieser Clip enthält %1 Schwünge, bei %2 Sekunden; Nummer %3 wird gemessen%4. Die anderen sind über ihre Nummer wählbar.</translation>
    </message>
    <message>
        <source>The hands go back on the target side: this clip is a mirror image, or the player swings from the other side. Tell which, and measure again; until then the numbers are not to be trusted.</source>
        <translation>Die Hände gehen auf der Zielseite zurück: dieser Clip ist ein Spiegelbild, oder der Spieler schwingt von der anderen Seite. Sagen Sie, was zutrifft, und messen Sie noch einmal; bis dahin ist den Zahlen nicht zu trauen.</translation>
    </message>
</context>
<context>
    <name>DifferenceDelegate</name>
    <message>
        <source>%1 against %2</source>
        <translation>%1 gegen %2</translation>
    </message>
</context>
<context>
    <name>DrawTool</name>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Plumb line</source>
        <translation>Lotlinie</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Arrow</source>
        <translation>Pfeil</translation>
    </message>
    <message>
        <source>Ellipse</source>
        <translation>Ellipse</translation>
    </message>
    <message>
        <source>Freehand</source>
        <translation>Freihand</translation>
    </message>
    <message>
        <source>Word</source>
        <translation>Wort</translation>
    </message>
    <message>
        <source>Tap three times: end, corner, end.</source>
        <translation>Dreimal tippen: Ende, Scheitel, Ende.</translation>
    </message>
    <message>
        <source>Tap the place on the ground; or draw from it upward.</source>
        <translation>Tippen Sie auf die Stelle am Boden; oder ziehen Sie von dort nach oben.</translation>
    </message>
    <message>
        <source>Type the word, then tap the picture.</source>
        <translation>Tippen Sie das Wort ein, dann auf das Bild.</translation>
    </message>
    <message>
        <source>Draw with one finger on the picture.</source>
        <translation>Zeichnen Sie mit einem Finger auf das Bild.</translation>
    </message>
    <message>
        <source>Keeps to</source>
        <translation>Haftet an</translation>
    </message>
    <message>
        <source>The ground</source>
        <translation>Am Boden</translation>
    </message>
    <message>
        <source>The nearest point</source>
        <translation>Am nächsten Punkt</translation>
    </message>
    <message>
        <source>The picture</source>
        <translation>Am Bild</translation>
    </message>
    <message>
        <source>Wipe away %1</source>
        <translation>%1 wegwischen</translation>
    </message>
</context>
<context>
    <name>EmptyLessonsPanel</name>
    <message>
        <source>No lessons yet</source>
        <translation>Noch keine Stunden</translation>
    </message>
    <message>
        <source>Bring in a clip of a swing: it is marked, measured and judged here, on this device.</source>
        <translation>Holen Sie einen Clip von einem Schwung herein: er wird hier auf diesem Gerät markiert, gemessen und beurteilt.</translation>
    </message>
    <message>
        <source>Bring in a clip</source>
        <translation>Clip hereinholen</translation>
    </message>
    <message>
        <source>Try a demo swing</source>
        <translation>Demo-Schwung ausprobieren</translation>
    </message>
</context>
<context>
    <name>FilmAnswersPanel</name>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Player&apos;s hand</source>
        <translation>Hand des Spielers</translation>
    </message>
    <message>
        <source>Club</source>
        <translation>Schläger</translation>
    </message>
    <message>
        <source>Loft</source>
        <translation>Loft</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Shot</source>
        <translation>Schlag</translation>
    </message>
    <message>
        <source>Filmed at, frames a second</source>
        <translation>Aufgenommen mit, Bilder pro Sekunde</translation>
    </message>
    <message>
        <source>Mirrored</source>
        <translation>Gespiegelt</translation>
    </message>
    <message>
        <source>Height in cm, if known</source>
        <translation>Größe in cm, falls bekannt</translation>
    </message>
    <message>
        <source>for example 178</source>
        <translation>zum Beispiel 178</translation>
    </message>
    <message>
        <source>Choose a film first.</source>
        <translation>Wählen Sie zuerst einen Film.</translation>
    </message>
    <message>
        <source>Read the swing</source>
        <translation>Schwung lesen</translation>
    </message>
</context>
<context>
    <name>FilmPage</name>
    <message>
        <source>Practice</source>
        <translation>Üben</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Filmen</translation>
    </message>
    <message>
        <source>Armed</source>
        <translation>Scharf</translation>
    </message>
    <message>
        <source>Armed: swings are cut out by themselves</source>
        <translation>Scharf: Schwünge werden von selbst herausgeschnitten</translation>
    </message>
    <message>
        <source>Not armed: only the button cuts</source>
        <translation>Nicht scharf: nur die Taste schneidet</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Cut now</source>
        <translation>Jetzt schneiden</translation>
    </message>
    <message>
        <source>Keeps the last seconds as a swing, with or without a hit</source>
        <translation>Behält die letzten Sekunden als Schwung, mit oder ohne Treffer</translation>
    </message>
</context>
<context>
    <name>FilmPickPanel</name>
    <message>
        <source>Folder %1</source>
        <translation>Ordner %1</translation>
    </message>
    <message>
        <source>Folder above</source>
        <translation>Ordner darüber</translation>
    </message>
    <message>
        <source>No films and no folders here. Choose another folder above, or drop a film on this window.</source>
        <translation>Hier sind keine Filme und keine Ordner. Wählen Sie oben einen anderen Ordner, oder ziehen Sie einen Film auf dieses Fenster.</translation>
    </message>
    <message>
        <source>Films in this folder</source>
        <translation>Filme in diesem Ordner</translation>
    </message>
    <message>
        <source>Film %1</source>
        <translation>Film %1</translation>
    </message>
</context>
<context>
    <name>FilmSetupPanel</name>
    <message>
        <source>Bring in a clip instead</source>
        <translation>Stattdessen einen Clip hereinholen</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Player&apos;s hand</source>
        <translation>Hand des Spielers</translation>
    </message>
    <message>
        <source>Club</source>
        <translation>Schläger</translation>
    </message>
    <message>
        <source>Behind the player on the line of the hands, lens at hand height, 4 to 5 metres away, the middle of the picture on the hands. A stick on the target line in view, the sun behind the camera. Never stand on the ball&apos;s line.</source>
        <translation>Hinter dem Spieler auf der Linie der Hände, Objektiv auf Handhöhe, 4 bis 5 Meter entfernt, Bildmitte auf den Händen. Ein Stab auf der Ziellinie im Bild, die Sonne hinter der Kamera. Nie auf der Linie des Balls stehen.</translation>
    </message>
    <message>
        <source>Square to the player&apos;s chest, lens at hand height, 4 to 5 metres away, the middle of the picture on the ball. The main lens, not the ultra-wide one; a stick on the target line in view, the sun behind the camera.</source>
        <translation>Frontal zur Brust des Spielers, Objektiv auf Handhöhe, 4 bis 5 Meter entfernt, Bildmitte auf dem Ball. Das Hauptobjektiv, nicht das Ultraweitwinkel; ein Stab auf der Ziellinie im Bild, die Sonne hinter der Kamera.</translation>
    </message>
    <message>
        <source>Start the camera</source>
        <translation>Kamera starten</translation>
    </message>
    <message>
        <source>Practise at home</source>
        <translation>Zu Hause üben</translation>
    </message>
    <message>
        <source>The phone on a stand says after a swing whether the checkpoint holds</source>
        <translation>Das Telefon auf dem Stativ sagt nach einem Schwung, ob der Prüfpunkt stimmt</translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <source>Checks</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>Checkpoints</source>
        <translation>Prüfpunkte</translation>
    </message>
    <message>
        <source>Good: keep it</source>
        <translation>Gut: so lassen</translation>
    </message>
    <message>
        <source>Watch</source>
        <translation>Beobachten</translation>
    </message>
    <message>
        <source>Work on it</source>
        <translation>Daran arbeiten</translation>
    </message>
    <message>
        <source>Cannot tell yet</source>
        <translation>Noch nicht zu sagen</translation>
    </message>
    <message>
        <source>No checkpoint fits this view and shot.</source>
        <translation>Kein Prüfpunkt passt zu dieser Ansicht und diesem Schlag.</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Gespeichert</translation>
    </message>
</context>
<context>
    <name>FlightButton</name>
    <message>
        <source>Ball flight: %1</source>
        <translation>Ballflug: %1</translation>
    </message>
</context>
<context>
    <name>Language</name>
    <message>
        <source>As the device</source>
        <translation>Wie das Gerät</translation>
    </message>
</context>
<context>
    <name>LessonDelegate</name>
    <message>
        <source>No swing in this lesson yet.</source>
        <translation>Noch kein Schwung in dieser Stunde.</translation>
    </message>
</context>
<context>
    <name>LessonsPage</name>
    <message>
        <source>Lessons</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Filmen</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Light colours for the sun</source>
        <translation>Helle Farben für die Sonne</translation>
    </message>
    <message>
        <source>Dark colours for indoors</source>
        <translation>Dunkle Farben für drinnen</translation>
    </message>
    <message>
        <source>Find a lesson</source>
        <translation>Stunde finden</translation>
    </message>
    <message>
        <source>player, title, wish</source>
        <translation>Spieler, Titel, Wunsch</translation>
    </message>
    <message>
        <source>Bring in a clip</source>
        <translation>Clip hereinholen</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Spieler</translation>
    </message>
</context>
<context>
    <name>LivePicturePanel</name>
    <message>
        <source>Live picture of the camera</source>
        <translation>Livebild der Kamera</translation>
    </message>
    <message>
        <source>Keeping a swing.</source>
        <translation>Schwung wird behalten.</translation>
    </message>
    <message>
        <source>The picture is right.</source>
        <translation>Das Bild stimmt.</translation>
    </message>
    <message>
        <source>No microphone: swings are told by their motion alone.</source>
        <translation>Kein Mikrofon: Schwünge werden nur an der Bewegung erkannt.</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Plumbmark</source>
        <translation>Plumbmark</translation>
    </message>
</context>
<context>
    <name>MarkBar</name>
    <message>
        <source>Place it by a tap on the picture</source>
        <translation>Durch Tippen auf das Bild setzen</translation>
    </message>
    <message>
        <source>Not visible here</source>
        <translation>Hier nicht sichtbar</translation>
    </message>
    <message>
        <source>Done with this mark</source>
        <translation>Fertig mit dieser Marke</translation>
    </message>
    <message>
        <source>Mark to the left</source>
        <translation>Marke nach links</translation>
    </message>
    <message>
        <source>Mark up</source>
        <translation>Marke nach oben</translation>
    </message>
    <message>
        <source>Mark down</source>
        <translation>Marke nach unten</translation>
    </message>
    <message>
        <source>Mark to the right</source>
        <translation>Marke nach rechts</translation>
    </message>
    <message>
        <source>Take my mark away here</source>
        <translation>Meine Marke hier wegnehmen</translation>
    </message>
</context>
<context>
    <name>MomentStrip</name>
    <message>
        <source>Key moments</source>
        <translation>Schlüsselmomente</translation>
    </message>
    <message>
        <source>found by %1</source>
        <translation>gefunden durch %1</translation>
    </message>
    <message>
        <source>No key moment could be told in this clip.</source>
        <translation>In diesem Clip war kein Schlüsselmoment zu erkennen.</translation>
    </message>
</context>
<context>
    <name>MomentsTool</name>
    <message>
        <source>Key moments to set</source>
        <translation>Schlüsselmomente zum Setzen</translation>
    </message>
    <message>
        <source>Go to the frame, then tap the moment&apos;s flag. The picture shows: %1.</source>
        <translation>Gehen Sie zum Bild und tippen Sie auf die Fahne des Moments. Zu sehen ist: %1.</translation>
    </message>
    <message>
        <source>Give “%1” back to the software</source>
        <translation>„%1“ der Software zurückgeben</translation>
    </message>
    <message>
        <source>Set “%1” here</source>
        <translation>„%1“ hier setzen</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>Phrases</name>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>% of height</source>
        <translation>% der Größe</translation>
    </message>
    <message>
        <source>stance widths</source>
        <translation>Standbreiten</translation>
    </message>
    <message>
        <source>hip-joint distances</source>
        <translation>Hüftgelenkabstände</translation>
    </message>
    <message>
        <source>px</source>
        <translation>px</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Ansprechen</translation>
    </message>
    <message>
        <source>Takeaway</source>
        <translation>Takeaway</translation>
    </message>
    <message>
        <source>Lead arm level, back</source>
        <translation>Vorderer Arm waagerecht, zurück</translation>
    </message>
    <message>
        <source>Start down</source>
        <translation>Beginn Abschwung</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Höchster Punkt</translation>
    </message>
    <message>
        <source>Lead arm level, down</source>
        <translation>Vorderer Arm waagerecht, abwärts</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Delivery</translation>
    </message>
    <message>
        <source>Impact</source>
        <translation>Treffmoment</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Release</translation>
    </message>
    <message>
        <source>Follow-through</source>
        <translation>Durchschwung</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Finish</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>Are words like Address written with a small letter inside a sentence? Answer yes or no.</comment>
        <translation>no</translation>
    </message>
    <message>
        <source>Nose</source>
        <translation>Nase</translation>
    </message>
    <message>
        <source>Head centre</source>
        <translation>Kopfmitte</translation>
    </message>
    <message>
        <source>Crown of the head</source>
        <translation>Scheitel</translation>
    </message>
    <message>
        <source>Head edge, target or ball side</source>
        <translation>Kopfrand, Ziel- oder Ballseite</translation>
    </message>
    <message>
        <source>Head edge, other side</source>
        <translation>Kopfrand, andere Seite</translation>
    </message>
    <message>
        <source>Lead ear</source>
        <translation>Vorderes Ohr</translation>
    </message>
    <message>
        <source>Trail ear</source>
        <translation>Hinteres Ohr</translation>
    </message>
    <message>
        <source>Neck base</source>
        <translation>Halsansatz</translation>
    </message>
    <message>
        <source>Lead shoulder</source>
        <translation>Vordere Schulter</translation>
    </message>
    <message>
        <source>Trail shoulder</source>
        <translation>Hintere Schulter</translation>
    </message>
    <message>
        <source>Lead elbow</source>
        <translation>Vorderer Ellbogen</translation>
    </message>
    <message>
        <source>Trail elbow</source>
        <translation>Hinterer Ellbogen</translation>
    </message>
    <message>
        <source>Lead wrist</source>
        <translation>Vorderes Handgelenk</translation>
    </message>
    <message>
        <source>Trail wrist</source>
        <translation>Hinteres Handgelenk</translation>
    </message>
    <message>
        <source>Lead hip</source>
        <translation>Vordere Hüfte</translation>
    </message>
    <message>
        <source>Trail hip</source>
        <translation>Hintere Hüfte</translation>
    </message>
    <message>
        <source>Lead knee</source>
        <translation>Vorderes Knie</translation>
    </message>
    <message>
        <source>Trail knee</source>
        <translation>Hinteres Knie</translation>
    </message>
    <message>
        <source>Lead ankle</source>
        <translation>Vorderer Knöchel</translation>
    </message>
    <message>
        <source>Trail ankle</source>
        <translation>Hinterer Knöchel</translation>
    </message>
    <message>
        <source>Lead heel</source>
        <translation>Vordere Ferse</translation>
    </message>
    <message>
        <source>Trail heel</source>
        <translation>Hintere Ferse</translation>
    </message>
    <message>
        <source>Lead toe</source>
        <translation>Vordere Fußspitze</translation>
    </message>
    <message>
        <source>Trail toe</source>
        <translation>Hintere Fußspitze</translation>
    </message>
    <message>
        <source>Hands on the grip</source>
        <translation>Hände am Griff</translation>
    </message>
    <message>
        <source>Belt buckle</source>
        <translation>Gürtelschnalle</translation>
    </message>
    <message>
        <source>Shirt buttons</source>
        <translation>Knopfleiste</translation>
    </message>
    <message>
        <source>Rear of the pelvis</source>
        <translation>Rückseite des Beckens</translation>
    </message>
    <message>
        <source>Butt of the club</source>
        <translation>Griffende</translation>
    </message>
    <message>
        <source>Club head</source>
        <translation>Schlägerkopf</translation>
    </message>
    <message>
        <source>Leading edge</source>
        <translation>Vorderkante</translation>
    </message>
    <message>
        <source>Ball</source>
        <translation>Ball</translation>
    </message>
    <message>
        <source>Stick, near end</source>
        <translation>Stab, nahes Ende</translation>
    </message>
    <message>
        <source>Stick, far end</source>
        <translation>Stab, fernes Ende</translation>
    </message>
    <message>
        <source>Ground, lead side</source>
        <translation>Boden, vordere Seite</translation>
    </message>
    <message>
        <source>Ground, trail side</source>
        <translation>Boden, hintere Seite</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>pose network</source>
        <translation>Posennetz</translation>
    </message>
    <message>
        <source>tracked</source>
        <translation>verfolgt</translation>
    </message>
    <message>
        <source>interpolated</source>
        <translation>dazwischen berechnet</translation>
    </message>
    <message>
        <source>shaft</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>ball</source>
        <translation>Ball</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>pelvis</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>lead arm</source>
        <translation>vorderer Arm</translation>
    </message>
    <message>
        <source>hand, by you</source>
        <translation>Hand, durch Sie</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>Face-on</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>Down-the-line</source>
        <translation>Auf der Ziellinie</translation>
    </message>
    <message>
        <source>right-handed</source>
        <translation>Rechtshänder</translation>
    </message>
    <message>
        <source>left-handed</source>
        <translation>Linkshänder</translation>
    </message>
    <message>
        <source>Full swing</source>
        <translation>Voller Schwung</translation>
    </message>
    <message>
        <source>Half swing</source>
        <translation>Halber Schwung</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Pitch</translation>
    </message>
    <message>
        <source>Chip</source>
        <translation>Chip</translation>
    </message>
    <message>
        <source>Bunker</source>
        <translation>Bunker</translation>
    </message>
    <message>
        <source>Putt</source>
        <translation>Putt</translation>
    </message>
    <message>
        <source>Practice swing</source>
        <translation>Probeschwung</translation>
    </message>
    <message>
        <source>Driver</source>
        <translation>Driver</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Hybrid</source>
        <translation>Hybrid</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>Eisen</translation>
    </message>
    <message>
        <source>Wedge</source>
        <translation>Wedge</translation>
    </message>
    <message>
        <source>Putter</source>
        <translation>Putter</translation>
    </message>
    <message>
        <source>%1-wood</source>
        <translation>Holz %1</translation>
    </message>
    <message>
        <source>%1-hybrid</source>
        <translation>Hybrid %1</translation>
    </message>
    <message>
        <source>%1-iron</source>
        <translation>Eisen %1</translation>
    </message>
    <message>
        <source>%1° wedge</source>
        <translation>%1°-Wedge</translation>
    </message>
    <message>
        <source>Videos</source>
        <translation>Videos</translation>
    </message>
    <message>
        <source>Downloads</source>
        <translation>Downloads</translation>
    </message>
    <message>
        <source>Desktop</source>
        <translation>Schreibtisch</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Persönlicher Ordner</translation>
    </message>
    <message>
        <source>Memory card</source>
        <translation>Speicherkarte</translation>
    </message>
    <message>
        <source>Stance width</source>
        <translation>Standbreite</translation>
    </message>
    <message>
        <source>Ball position</source>
        <translation>Ballposition</translation>
    </message>
    <message>
        <source>Spine tilt</source>
        <translation>Wirbelsäulenneigung</translation>
    </message>
    <message>
        <source>Spine tilt since address</source>
        <translation>Wirbelsäulenneigung seit dem Ansprechen</translation>
    </message>
    <message>
        <source>Head inside trail ankle</source>
        <translation>Kopf innerhalb des hinteren Knöchels</translation>
    </message>
    <message>
        <source>Head travel</source>
        <translation>Kopfbewegung</translation>
    </message>
    <message>
        <source>Head rise</source>
        <translation>Kopfhebung</translation>
    </message>
    <message>
        <source>Pelvis shift</source>
        <translation>Beckenverschiebung</translation>
    </message>
    <message>
        <source>Chest shift</source>
        <translation>Brustverschiebung</translation>
    </message>
    <message>
        <source>Chest&apos;s share of the shift</source>
        <translation>Anteil der Brust an der Verschiebung</translation>
    </message>
    <message>
        <source>Pelvis starts before the top</source>
        <translation>Becken startet vor dem höchsten Punkt</translation>
    </message>
    <message>
        <source>Lead-side line</source>
        <translation>Vordere Linie</translation>
    </message>
    <message>
        <source>Lead hip off the line</source>
        <translation>Vordere Hüfte neben der Linie</translation>
    </message>
    <message>
        <source>Pelvis turn</source>
        <translation>Beckendrehung</translation>
    </message>
    <message>
        <source>Shoulder turn</source>
        <translation>Schulterdrehung</translation>
    </message>
    <message>
        <source>Chest turn</source>
        <translation>Brustdrehung</translation>
    </message>
    <message>
        <source>Chest against pelvis</source>
        <translation>Brust gegen Becken</translation>
    </message>
    <message>
        <source>Shaft lean</source>
        <translation>Schaftneigung</translation>
    </message>
    <message>
        <source>Hands ahead of the ball</source>
        <translation>Hände vor dem Ball</translation>
    </message>
    <message>
        <source>Wrist set</source>
        <translation>Handgelenkwinkel</translation>
    </message>
    <message>
        <source>Wrist set kept</source>
        <translation>Handgelenkwinkel gehalten</translation>
    </message>
    <message>
        <source>Shaft against the forearms</source>
        <translation>Schaft gegen Unterarme</translation>
    </message>
    <message>
        <source>Takeaway width</source>
        <translation>Weite im Takeaway</translation>
    </message>
    <message>
        <source>Lead elbow flex</source>
        <translation>Beugung vorderer Ellbogen</translation>
    </message>
    <message>
        <source>Lead knee flex</source>
        <translation>Beugung vorderes Knie</translation>
    </message>
    <message>
        <source>Trail knee flex</source>
        <translation>Beugung hinteres Knie</translation>
    </message>
    <message>
        <source>Head over lead ankle</source>
        <translation>Kopf über dem vorderen Knöchel</translation>
    </message>
    <message>
        <source>Centre of mass over lead ankle</source>
        <translation>Körperschwerpunkt über dem vorderen Knöchel</translation>
    </message>
    <message>
        <source>Trail heel up</source>
        <translation>Hintere Ferse oben</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Time back</source>
        <translation>Zeit zurück</translation>
    </message>
    <message>
        <source>Time down</source>
        <translation>Zeit abwärts</translation>
    </message>
    <message>
        <source>Forward bend</source>
        <translation>Vorbeuge</translation>
    </message>
    <message>
        <source>Forward bend since address</source>
        <translation>Vorbeuge seit dem Ansprechen</translation>
    </message>
    <message>
        <source>Pelvis toward the ball</source>
        <translation>Becken zum Ball</translation>
    </message>
    <message>
        <source>Shaft plane</source>
        <translation>Schaftebene</translation>
    </message>
    <message>
        <source>Hands&apos; path starting down</source>
        <translation>Weg der Hände am Beginn des Abschwungs</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>beobachten</translation>
    </message>
    <message>
        <source>work on it</source>
        <translation>daran arbeiten</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message>
        <source>%1 to %2%3</source>
        <translation>%1 bis %2%3</translation>
    </message>
    <message>
        <source>from %1%2</source>
        <translation>ab %1%2</translation>
    </message>
    <message>
        <source>up to %1%2</source>
        <translation>bis %1%2</translation>
    </message>
    <message>
        <source>Aim of the feet</source>
        <translation>Ausrichtung der Füße</translation>
    </message>
    <message>
        <source>Foot flare, lead foot</source>
        <translation>Fußöffnung, vorderer Fuß</translation>
    </message>
    <message>
        <source>Foot flare, trail foot</source>
        <translation>Fußöffnung, hinterer Fuß</translation>
    </message>
    <message>
        <source>Head inside trail ankle, at worst</source>
        <translation>Kopf innerhalb des hinteren Knöchels, am weitesten</translation>
    </message>
    <message>
        <source>Head edge inside trail ankle</source>
        <translation>Kopfrand innerhalb des hinteren Knöchels</translation>
    </message>
    <message>
        <source>Nose inside trail ankle</source>
        <translation>Nase innerhalb des hinteren Knöchels</translation>
    </message>
    <message>
        <source>Lead hip over its ankle</source>
        <translation>Vordere Hüfte über ihrem Knöchel</translation>
    </message>
    <message>
        <source>Middle of the hips toward the ball</source>
        <translation>Hüftmitte zum Ball</translation>
    </message>
    <message>
        <source>Shaft at the top</source>
        <translation>Schaft am höchsten Punkt</translation>
    </message>
    <message>
        <source>Shaft past level</source>
        <translation>Schaft über der Waagerechten</translation>
    </message>
    <message>
        <source>Wrist set, without the lens</source>
        <translation>Handgelenkwinkel, perspektivisch bereinigt</translation>
    </message>
    <message>
        <source>Wrist set kept, without the lens</source>
        <translation>Handgelenkwinkel gehalten, perspektivisch bereinigt</translation>
    </message>
    <message>
        <source>Wrist set at its peak</source>
        <translation>Handgelenkwinkel am größten</translation>
    </message>
    <message>
        <source>Wrist set peak after the arm is level</source>
        <translation>Größter Handgelenkwinkel, nachdem der Arm waagerecht ist</translation>
    </message>
    <message>
        <source>Lower back</source>
        <translation>Unterer Rücken</translation>
    </message>
    <message>
        <source>Neck</source>
        <translation>Nacken</translation>
    </message>
</context>
<context>
    <name>PlayTool</name>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Tempo der Wiedergabe</translation>
    </message>
    <message>
        <source>An eighth</source>
        <translation>Ein Achtel</translation>
    </message>
    <message>
        <source>A quarter</source>
        <translation>Ein Viertel</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Halb</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Voll</translation>
    </message>
    <message>
        <source>Round and round from</source>
        <translation>Im Kreis von</translation>
    </message>
    <message>
        <source>No loop</source>
        <translation>Keine Schleife</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
</context>
<context>
    <name>PlayerDelegate</name>
    <message>
        <source>Player %1, %2</source>
        <translation>Spieler %1, %2</translation>
    </message>
</context>
<context>
    <name>PlayerFormPanel</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Player&apos;s hand</source>
        <translation>Hand des Spielers</translation>
    </message>
    <message>
        <source>Height in cm, if known</source>
        <translation>Größe in cm, falls bekannt</translation>
    </message>
    <message>
        <source>for example 178</source>
        <translation>zum Beispiel 178</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>taught together with, for example Juniors</source>
        <translation>gemeinsam unterrichtet mit, zum Beispiel Junioren</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Add this player</source>
        <translation>Diesen Spieler aufnehmen</translation>
    </message>
    <message>
        <source>Keep the changes</source>
        <translation>Änderungen behalten</translation>
    </message>
</context>
<context>
    <name>PlayerLessonsPanel</name>
    <message>
        <source>Lessons of %1</source>
        <translation>Stunden von %1</translation>
    </message>
    <message>
        <source>No lesson yet. Bring in or film a swing of this player, or start a lesson under Today.</source>
        <translation>Noch keine Stunde. Holen Sie einen Schwung dieses Spielers herein, filmen Sie einen, oder beginnen Sie unter „Heute“ eine Stunde.</translation>
    </message>
</context>
<context>
    <name>PlayerPage</name>
    <message>
        <source>New player</source>
        <translation>Neuer Spieler</translation>
    </message>
    <message>
        <source>Change the player&apos;s details</source>
        <translation>Angaben zum Spieler ändern</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Lessons</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Swings</source>
        <translation>Schwünge</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>Verlauf</translation>
    </message>
</context>
<context>
    <name>PlayerSwingsPanel</name>
    <message>
        <source>Show the swings</source>
        <translation>Schwünge zeigen</translation>
    </message>
    <message>
        <source>Answers that the swings below fit: %1</source>
        <translation>Antworten, zu denen die Schwünge unten passen: %1</translation>
    </message>
    <message>
        <source>Find by club, view, day …</source>
        <translation>Finden nach Schläger, Ansicht, Tag …</translation>
    </message>
    <message>
        <source>Reading the swings …</source>
        <translation>Schwünge werden gelesen …</translation>
    </message>
    <message>
        <source>No swing fits all the answers; take one back.</source>
        <translation>Kein Schwung passt zu allen Antworten; nehmen Sie eine zurück.</translation>
    </message>
    <message>
        <source>No measured swing yet. Bring one in, or film one.</source>
        <translation>Noch kein gemessener Schwung. Holen Sie einen herein, oder filmen Sie einen.</translation>
    </message>
    <message>
        <source>Swings</source>
        <translation>Schwünge</translation>
    </message>
    <message>
        <source>Swing %1, %2, with a star</source>
        <translation>Schwung %1, %2, mit Stern</translation>
    </message>
    <message>
        <source>Swing %1, %2</source>
        <translation>Schwung %1, %2</translation>
    </message>
</context>
<context>
    <name>PlayerTodayPanel</name>
    <message>
        <source>No plan was made in an earlier lesson: nothing to look back on yet.</source>
        <translation>In keiner früheren Stunde wurde ein Plan gemacht: noch nichts zum Zurückblicken.</translation>
    </message>
    <message>
        <source>What does the student want?</source>
        <translation>Was wünscht sich der Schüler?</translation>
    </message>
    <message>
        <source>in the student&apos;s own words</source>
        <translation>in den Worten des Schülers</translation>
    </message>
    <message>
        <source>Wanted before: %1</source>
        <translation>Früher gewünscht: %1</translation>
    </message>
    <message>
        <source>What does the student think causes it?</source>
        <translation>Woran liegt es nach Meinung des Schülers?</translation>
    </message>
    <message>
        <source>Start today&apos;s lesson</source>
        <translation>Heutige Stunde beginnen</translation>
    </message>
    <message>
        <source>Kept in today&apos;s lesson.</source>
        <translation>In der heutigen Stunde behalten.</translation>
    </message>
    <message>
        <source>A word in one of the fields starts today&apos;s lesson as well.</source>
        <translation>Ein Wort in einem der Felder beginnt die heutige Stunde ebenso.</translation>
    </message>
</context>
<context>
    <name>PlayersPage</name>
    <message>
        <source>Players</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Spieler finden</translation>
    </message>
    <message>
        <source>name or group</source>
        <translation>Name oder Gruppe</translation>
    </message>
    <message>
        <source>No players yet. Add one, or bring in a clip: its player is added by name.</source>
        <translation>Noch keine Spieler. Nehmen Sie einen auf, oder holen Sie einen Clip herein: sein Spieler kommt mit dem Namen dazu.</translation>
    </message>
    <message>
        <source>Nobody of that name or group.</source>
        <translation>Niemand mit diesem Namen oder dieser Gruppe.</translation>
    </message>
    <message>
        <source>Add a player</source>
        <translation>Spieler aufnehmen</translation>
    </message>
</context>
<context>
    <name>PointsTool</name>
    <message>
        <source>Choose a point, then tap the picture where it is.</source>
        <translation>Wählen Sie einen Punkt, dann tippen Sie auf das Bild, wo er ist.</translation>
    </message>
    <message>
        <source>Every point is marked in this frame.</source>
        <translation>In diesem Bild ist jeder Punkt markiert.</translation>
    </message>
    <message>
        <source>Place: %1</source>
        <translation>Setzen: %1</translation>
    </message>
</context>
<context>
    <name>PracticeSignPanel</name>
    <message>
        <source>Holds</source>
        <translation>Stimmt</translation>
    </message>
    <message>
        <source>Does not hold</source>
        <translation>Stimmt nicht</translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>Nicht zu sagen</translation>
    </message>
    <message>
        <source>Watching</source>
        <translation>Sieht zu</translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation>Antwort: %1</translation>
    </message>
    <message>
        <source>Enough for today. Rest, and come back tomorrow. Stop at once at a sharp or sudden pain; what still hurts tomorrow is for a physician or licensed physiotherapist.</source>
        <translation>Genug für heute. Ruhen Sie aus und machen Sie morgen weiter. Hören Sie bei scharfem oder plötzlichem Schmerz sofort auf; was morgen noch weh tut, gehört zum Arzt oder Physiotherapeuten.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: the moment was not found</source>
        <translation>%1: der Moment wurde nicht gefunden</translation>
    </message>
    <message>
        <source>%1: %2, ± %3 px</source>
        <translation>%1: %2, ± %3 px</translation>
    </message>
    <message>
        <source>%1: not marked</source>
        <translation>%1: nicht markiert</translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation>Bild %1</translation>
    </message>
    <message>
        <source>0 s</source>
        <translation>0 s</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
</context>
<context>
    <name>SegmentRow</name>
    <message>
        <source>Panels</source>
        <translation>Bereiche</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Größe der Buchstaben</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>The hand that works the app</source>
        <translation>Die Hand, die die App bedient</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Light, for the sun</source>
        <translation>Hell, für die Sonne</translation>
    </message>
    <message>
        <source>Dark, for indoors</source>
        <translation>Dunkel, für drinnen</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>The hand is yours, not the player&apos;s. Settings stay on this device.</source>
        <translation>Gemeint ist Ihre Hand, nicht die des Spielers. Einstellungen bleiben auf diesem Gerät.</translation>
    </message>
</context>
<context>
    <name>ShotTool</name>
    <message>
        <source>Columns: where it started, seen from behind the ball. Rows: which way it bent. A second tap takes an answer back.</source>
        <translation>Spalten: wo der Ball gestartet ist, von hinten gesehen. Zeilen: wohin er gekurvt ist. Ein zweites Tippen nimmt die Antwort zurück.</translation>
    </message>
    <message>
        <source>Starred: take the star away</source>
        <translation>Mit Stern: Stern wegnehmen</translation>
    </message>
    <message>
        <source>Star this shot</source>
        <translation>Diesem Schlag einen Stern geben</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Stichwörter</translation>
    </message>
    <message>
        <source>words with commas between</source>
        <translation>Wörter mit Komma dazwischen</translation>
    </message>
</context>
<context>
    <name>StagePanel</name>
    <message>
        <source>Picture of the swing, %1</source>
        <translation>Bild des Schwungs, %1</translation>
    </message>
    <message>
        <source>Show the whole picture</source>
        <translation>Ganzes Bild zeigen</translation>
    </message>
    <message>
        <source>Show the player larger</source>
        <translation>Spieler größer zeigen</translation>
    </message>
    <message>
        <source>Hide the marks</source>
        <translation>Marken ausblenden</translation>
    </message>
    <message>
        <source>Show the marks</source>
        <translation>Marken zeigen</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play slowly</source>
        <translation>Langsam abspielen</translation>
    </message>
    <message>
        <source>Reading the swing, %1 %</source>
        <translation>Schwung wird gelesen, %1 %</translation>
    </message>
    <message>
        <source>Opening the swing</source>
        <translation>Schwung wird geöffnet</translation>
    </message>
    <message>
        <source>Opening the swing, %1 per cent</source>
        <translation>Schwung wird geöffnet, %1 Prozent</translation>
    </message>
</context>
<context>
    <name>StripPanel</name>
    <message>
        <source>Strip of moments</source>
        <translation>Streifen der Momente</translation>
    </message>
    <message>
        <source>Go to %1, %2</source>
        <translation>Gehe zu %1, %2</translation>
    </message>
    <message>
        <source>No key moment could be told in this clip; set one by hand first.</source>
        <translation>In diesem Clip war kein Schlüsselmoment zu erkennen; setzen Sie zuerst einen von Hand.</translation>
    </message>
    <message>
        <source>Choose the moments to stand side by side.</source>
        <translation>Wählen Sie die Momente, die nebeneinander stehen sollen.</translation>
    </message>
</context>
<context>
    <name>StripTool</name>
    <message>
        <source>Show one picture</source>
        <translation>Ein Bild zeigen</translation>
    </message>
    <message>
        <source>Show the strip</source>
        <translation>Streifen zeigen</translation>
    </message>
    <message>
        <source>Moments in the strip</source>
        <translation>Momente im Streifen</translation>
    </message>
    <message>
        <source>In the strip: %1</source>
        <translation>Im Streifen: %1</translation>
    </message>
</context>
<context>
    <name>SwingPage</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Record the ball</source>
        <translation>Ball festhalten</translation>
    </message>
</context>
<context>
    <name>SwingRow</name>
    <message>
        <source>Swing %1, %2: %3 good, %4 to watch, %5 to work on, %6 cannot be told</source>
        <translation>Schwung %1, %2: %3 gut, %4 zu beobachten, %5 zu bearbeiten, %6 nicht zu sagen</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>The film is not on this device.</source>
        <translation>Der Film ist nicht auf diesem Gerät.</translation>
    </message>
</context>
<context>
    <name>TakesPanel</name>
    <message>
        <source>No swing yet. The last 8 seconds are kept all the time: a swing is cut out of them by itself, or with the button.</source>
        <translation>Noch kein Schwung. Die letzten 8 Sekunden werden immer behalten: ein Schwung wird daraus von selbst oder mit der Taste herausgeschnitten.</translation>
    </message>
    <message>
        <source>Takes</source>
        <translation>Aufnahmen</translation>
    </message>
    <message>
        <source>Impact picture of take %1</source>
        <translation>Bild vom Treffmoment, Aufnahme %1</translation>
    </message>
    <message>
        <source>Take %1. %2</source>
        <translation>Aufnahme %1. %2</translation>
    </message>
    <message>
        <source>Look at take %1</source>
        <translation>Aufnahme %1 ansehen</translation>
    </message>
</context>
<context>
    <name>ToolsPanel</name>
    <message>
        <source>Set a key moment</source>
        <translation>Schlüsselmoment setzen</translation>
    </message>
    <message>
        <source>Place a point</source>
        <translation>Punkt setzen</translation>
    </message>
    <message>
        <source>Draw on the picture</source>
        <translation>Auf das Bild zeichnen</translation>
    </message>
    <message>
        <source>All tools</source>
        <translation>Alle Werkzeuge</translation>
    </message>
    <message>
        <source>Play and loop</source>
        <translation>Abspielen und Schleife</translation>
    </message>
    <message>
        <source>Strip of moments</source>
        <translation>Streifen der Momente</translation>
    </message>
    <message>
        <source>Compare with another swing</source>
        <translation>Mit anderem Schwung vergleichen</translation>
    </message>
    <message>
        <source>What the ball did</source>
        <translation>Was der Ball tat</translation>
    </message>
</context>
<context>
    <name>TransportBar</name>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play slowly</source>
        <translation>Langsam abspielen</translation>
    </message>
    <message>
        <source>Place in the clip</source>
        <translation>Stelle im Clip</translation>
    </message>
    <message>
        <source>One frame back</source>
        <translation>Ein Bild zurück</translation>
    </message>
    <message>
        <source>One frame on</source>
        <translation>Ein Bild vor</translation>
    </message>
</context>
<context>
    <name>TrendPanel</name>
    <message>
        <source>Reading the swings …</source>
        <translation>Schwünge werden gelesen …</translation>
    </message>
    <message>
        <source>No measured swing yet: a trend needs numbers from two lessons.</source>
        <translation>Noch kein gemessener Schwung: ein Verlauf braucht Zahlen aus zwei Stunden.</translation>
    </message>
    <message>
        <source>Dot: median of the lesson&apos;s swings. Bar: two sigma, swing-to-swing spread and measuring error together.</source>
        <translation>Punkt: Median der Schwünge einer Stunde. Balken: zwei Sigma, Streuung der Schwünge und Messfehler zusammen.</translation>
    </message>
    <message>
        <source>Swings</source>
        <translation>Schwünge</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
</context>
<context>
    <name>WorkingOverlay</name>
    <message>
        <source>Reading the swing</source>
        <translation>Schwung wird gelesen</translation>
    </message>
    <message>
        <source>Progress, %1 per cent</source>
        <translation>Fortschritt, %1 Prozent</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::AppModel</name>
    <message>
        <source>The pose network is not on this device: body marks must be placed by hand.</source>
        <translation>Das Posennetz ist nicht auf diesem Gerät: Körpermarken müssen von Hand gesetzt werden.</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::BringInModel</name>
    <message>
        <source>Only files on this device can be brought in; save the clip here first.</source>
        <translation>Nur Dateien auf diesem Gerät können hereingeholt werden; speichern Sie den Clip zuerst hier.</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>as the clip says</source>
        <translation>wie der Clip sagt</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Yes, front camera</source>
        <translation>Ja, Frontkamera</translation>
    </message>
    <message>
        <source>Whose swing is it? Type the player&apos;s name.</source>
        <translation>Wessen Schwung ist das? Geben Sie den Namen des Spielers ein.</translation>
    </message>
    <message>
        <source>The height must be a number of centimetres from 50 to 250, such as 178; or leave it empty.</source>
        <translation>Die Größe muss eine Zahl in Zentimetern von 50 bis 250 sein, etwa 178; oder lassen Sie sie leer.</translation>
    </message>
    <message>
        <source>Demo player</source>
        <translation>Demo-Spieler</translation>
    </message>
    <message>
        <source>Starting</source>
        <translation>Beginnt</translation>
    </message>
    <message>
        <source>Stopping</source>
        <translation>Hält an</translation>
    </message>
    <message>
        <source>Drawing a demo swing</source>
        <translation>Demo-Schwung wird gezeichnet</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Stunde</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::CompareModel</name>
    <message>
        <source>own best</source>
        <translation>eigener bester</translation>
    </message>
    <message>
        <source>same lesson</source>
        <translation>gleiche Stunde</translation>
    </message>
    <message>
        <source>another lesson</source>
        <translation>andere Stunde</translation>
    </message>
    <message>
        <source>another club: %1</source>
        <translation>anderer Schläger: %1</translation>
    </message>
    <message>
        <source>another club</source>
        <translation>anderer Schläger</translation>
    </message>
    <message>
        <source>another player</source>
        <translation>anderer Spieler</translation>
    </message>
    <message>
        <source>%1, swing %2</source>
        <translation>%1, Schwung %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>no check could be told</source>
        <translation>kein Prüfpunkt war zu sagen</translation>
    </message>
    <message>
        <source>%1 of %2 checks good</source>
        <translation>%1 von %2 Prüfpunkten gut</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Körper</translation>
    </message>
    <message>
        <source>Time from impact</source>
        <translation>Zeit ab Treffmoment</translation>
    </message>
    <message>
        <source>beyond doubt</source>
        <translation>außer Zweifel</translation>
    </message>
    <message>
        <source>not beyond doubt</source>
        <translation>nicht außer Zweifel</translation>
    </message>
    <message>
        <source>%1: this swing %2, the other %3, difference %4, %5</source>
        <translation>%1: dieser Schwung %2, der andere %3, Unterschied %4, %5</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::CompareSide</name>
    <message>
        <source>Frame %1 of %2</source>
        <translation>Bild %1 von %2</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::FilmModel</name>
    <message>
        <source>Whose swing is it? Type the player&apos;s name.</source>
        <translation>Wessen Schwung ist das? Geben Sie den Namen des Spielers ein.</translation>
    </message>
    <message>
        <source>Kept from an interrupted recording</source>
        <translation>Aus einer unterbrochenen Aufnahme gerettet</translation>
    </message>
    <message>
        <source>%1 frames a second</source>
        <translation>%1 Bilder pro Sekunde</translation>
    </message>
    <message>
        <source>asked %1, measured %2 frames a second</source>
        <translation>gewünscht %1, gemessen %2 Bilder pro Sekunde</translation>
    </message>
    <message>
        <source>Swing %1 seen. How did it feel?</source>
        <translation>Schwung %1 gesehen. Wie hat er sich angefühlt?</translation>
    </message>
    <message>
        <source>Held in range: it counts.</source>
        <translation>Im Bereich gehalten: es zählt.</translation>
    </message>
    <message>
        <source>Held, but not in range: it does not count.</source>
        <translation>Gehalten, aber nicht im Bereich: es zählt nicht.</translation>
    </message>
    <message>
        <source>Swings %1: %2 hold, %3 do not, %4 can&apos;t be told. Rehearsals %5.</source>
        <translation>Schwünge %1: %2 stimmen, %3 nicht, %4 nicht zu sagen. Proben %5.</translation>
    </message>
    <message>
        <source>Kept. Measuring it.</source>
        <translation>Behalten. Wird gemessen.</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>Stopped; the take is kept for the next start.</source>
        <translation>Angehalten; die Aufnahme bleibt für den nächsten Start erhalten.</translation>
    </message>
    <message>
        <source>In today&apos;s lesson</source>
        <translation>In der heutigen Stunde</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::PlayerModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>The height must be a number of centimetres from 50 to 250, such as 178; or leave it empty.</source>
        <translation>Die Größe muss eine Zahl in Zentimetern von 50 bis 250 sein, etwa 178; oder lassen Sie sie leer.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Plan of %1</source>
        <translation>Plan vom %1</translation>
    </message>
    <message>
        <source>rehearsals: %1</source>
        <translation>Proben: %1</translation>
    </message>
    <message>
        <source>balls: %1</source>
        <translation>Bälle: %1</translation>
    </message>
    <message>
        <source>rounds: %1</source>
        <translation>Runden: %1</translation>
    </message>
    <message>
        <source>Practised since</source>
        <translation>Seitdem geübt</translation>
    </message>
    <message>
        <source>nothing logged</source>
        <translation>nichts vermerkt</translation>
    </message>
    <message>
        <source>%1: %2%3</source>
        <translation>%1: %2%3</translation>
    </message>
    <message>
        <source>Changed beyond doubt, %1</source>
        <translation>Außer Zweifel verändert, %1</translation>
    </message>
    <message>
        <source>nothing yet: fewer than three swings on a side, or differences within spread and measuring error</source>
        <translation>noch nichts: weniger als drei Schwünge auf einer Seite, oder Unterschiede innerhalb von Streuung und Messfehler</translation>
    </message>
    <message>
        <source>%1: %2, %3 of 10</source>
        <translation>%1: %2, %3 von 10</translation>
    </message>
    <message>
        <source>Pain logged since</source>
        <translation>Seitdem vermerkter Schmerz</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>with a star</source>
        <translation>mit Stern</translation>
    </message>
    <message>
        <source>without</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>Club</source>
        <translation>Schläger</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Shot</source>
        <translation>Schlag</translation>
    </message>
    <message>
        <source>Star</source>
        <translation>Stern</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Stichwort</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Band: good, %1 (%2)</source>
        <translation>Band: gut, %1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2, swings: %3</source>
        <translation>%1: %2, Schwünge: %3</translation>
    </message>
    <message>
        <source>One lesson so far: a trend needs two.</source>
        <translation>Bisher eine Stunde: ein Verlauf braucht zwei.</translation>
    </message>
    <message>
        <source>No change is called yet: that takes three swings in the first lesson and three in the newest.</source>
        <translation>Noch wird keine Änderung behauptet: das braucht drei Schwünge in der ersten und drei in der neuesten Stunde.</translation>
    </message>
    <message>
        <source>From the first lesson to the newest: %1, beyond doubt.</source>
        <translation>Von der ersten zur neuesten Stunde: %1, außer Zweifel.</translation>
    </message>
    <message>
        <source>From the first lesson to the newest: %1, not beyond doubt.</source>
        <translation>Von der ersten zur neuesten Stunde: %1, nicht außer Zweifel.</translation>
    </message>
    <message>
        <source>Swings left out: %1, measured by another version of the method and not comparable.</source>
        <translation>Ausgelassene Schwünge: %1, mit einer anderen Fassung des Verfahrens gemessen und nicht vergleichbar.</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::PlayersModel</name>
    <message>
        <source>lessons: %1</source>
        <translation>Stunden: %1</translation>
    </message>
    <message>
        <source>two versions: open to choose</source>
        <translation>zwei Fassungen: zum Wählen öffnen</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::ShotRecordModel</name>
    <message>
        <source>Contact</source>
        <translation>Treffpunkt</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Ball in the stance</source>
        <translation>Ball im Stand</translation>
    </message>
    <message>
        <source>Hit from</source>
        <translation>Gespielt von</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::SwingModel</name>
    <message>
        <source>Saved</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>Plumb line</source>
        <translation>Lotlinie</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Arrow</source>
        <translation>Pfeil</translation>
    </message>
    <message>
        <source>Ellipse</source>
        <translation>Ellipse</translation>
    </message>
    <message>
        <source>Freehand</source>
        <translation>Freihand</translation>
    </message>
    <message>
        <source>Word</source>
        <translation>Wort</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Type the word first, then tap the picture.</source>
        <translation>Geben Sie zuerst das Wort ein, dann tippen Sie auf das Bild.</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>nicht gefunden</translation>
    </message>
    <message>
        <source>frame %1, by %2</source>
        <translation>Bild %1, durch %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>would sharpen: %1</source>
        <translation>würde schärfen: %1</translation>
    </message>
    <message>
        <source>Frame %1 of %2</source>
        <translation>Bild %1 von %2</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>time scale unknown</source>
        <translation>Zeitmaßstab unbekannt</translation>
    </message>
    <message>
        <source>tap the picture where it is</source>
        <translation>tippen Sie auf das Bild, wo er ist</translation>
    </message>
    <message>
        <source>not marked in this frame</source>
        <translation>in diesem Bild nicht markiert</translation>
    </message>
    <message>
        <source>%1 | %2 px, ± %3, %4</source>
        <translation>%1 | %2 px, ± %3, %4</translation>
    </message>
    <message>
        <source>Spine</source>
        <translation>Wirbelsäule</translation>
    </message>
    <message>
        <source>Shoulder line</source>
        <translation>Schulterlinie</translation>
    </message>
    <message>
        <source>Hip line</source>
        <translation>Hüftlinie</translation>
    </message>
    <message>
        <source>Lead side</source>
        <translation>Vordere Seite</translation>
    </message>
    <message>
        <source>Trail side</source>
        <translation>Hintere Seite</translation>
    </message>
    <message>
        <source>Ankle to ankle</source>
        <translation>Knöchel zu Knöchel</translation>
    </message>
</context>
</TS>
