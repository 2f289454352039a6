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
    <name>BackupsPanel</name>
    <message>
        <source>Last backup: %1, %2.</source>
        <translation>Letzte Sicherung: %1, %2.</translation>
    </message>
    <message>
        <source>There is no backup yet.</source>
        <translation>Es gibt noch keine Sicherung.</translation>
    </message>
    <message>
        <source>One is made at the first start of a day; the last 7 days and 4 weeks stay. They lie on this device: they guard against a mistake, not against a lost device. For that, exchange through a folder or make one on a stick.</source>
        <translation>Beim ersten Start eines Tages wird eine gemacht; die letzten 7 Tage und 4 Wochen bleiben. Sie liegen auf diesem Gerät: sie schützen vor einem Versehen, nicht vor einem verlorenen Gerät. Dafür über einen Ordner austauschen oder eine auf einem Stick machen.</translation>
    </message>
    <message>
        <source>Make a backup now</source>
        <translation>Jetzt eine Sicherung machen</translation>
    </message>
    <message>
        <source>At the next start a backup is put in the library&apos;s place.</source>
        <translation>Beim nächsten Start tritt eine Sicherung an die Stelle der Bibliothek.</translation>
    </message>
    <message>
        <source>Close the app now</source>
        <translation>Die App jetzt schließen</translation>
    </message>
    <message>
        <source>Rather not: keep the library</source>
        <translation>Lieber nicht: die Bibliothek behalten</translation>
    </message>
    <message>
        <source>Rather not</source>
        <translation>Lieber nicht</translation>
    </message>
    <message>
        <source>Put this one back</source>
        <translation>Diese zurückholen</translation>
    </message>
    <message>
        <source>Check it and put it back at the next start</source>
        <translation>Prüfen und beim nächsten Start zurückholen</translation>
    </message>
    <message>
        <source>Lessons made since then are not in it. What is here now is kept among the backups, and what was erased stays erased.</source>
        <translation>Stunden, die seitdem gehalten wurden, sind nicht darin. Was jetzt hier ist, bleibt bei den Sicherungen, und Gelöschtes bleibt gelöscht.</translation>
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
    <name>BodyCardPage</name>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Body card</source>
        <translation>Körperkarte</translation>
    </message>
    <message>
        <source>%1, asked on %2</source>
        <translation>%1, gefragt am %2</translation>
    </message>
    <message>
        <source>Today: wait with full swings</source>
        <translation>Heute: mit vollen Schwüngen warten</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Year of birth</source>
        <translation>Geburtsjahr</translation>
    </message>
    <message>
        <source>for example 1974</source>
        <translation>zum Beispiel 1974</translation>
    </message>
    <message>
        <source>Most balls a day, where a clinician set a limit</source>
        <translation>Höchstens so viele Bälle am Tag, wo Arzt oder Physiotherapeut eine Grenze gesetzt hat</translation>
    </message>
    <message>
        <source>Stop at once with sharp or sudden pain, numbness, weakness, pain running down a limb, locking, swelling, chest pain or dizziness; night pain counts too. Still there tomorrow: lighter, and see a physician or licensed physiotherapist.</source>
        <translation>Sofort aufhören bei scharfem oder plötzlichem Schmerz, Taubheit, Schwäche, Schmerz, der ins Bein oder in den Arm zieht, Blockade, Schwellung, Brustschmerz oder Schwindel; auch Nachtschmerz zählt. Morgen noch da: weniger belasten und zum Arzt oder Physiotherapeuten.</translation>
    </message>
    <message>
        <source>Look around before every swing, stand away from the ball&apos;s line, and leave the range in lightning. The card stays on this device; it does not travel with a lesson. It is never a diagnosis.</source>
        <translation>Vor jedem Schwung umsehen, neben der Linie des Balls stehen und bei Gewitter den Platz verlassen. Die Karte bleibt auf diesem Gerät; sie reist mit keiner Stunde mit. Sie ist nie eine Diagnose.</translation>
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
    <name>CauseLink</name>
    <message>
        <source>tends to cause</source>
        <translation>führt oft zu</translation>
    </message>
</context>
<context>
    <name>CausePanel</name>
    <message>
        <source>What the program proposed stays on record below.</source>
        <translation>Was das Programm vorgeschlagen hat, bleibt unten stehen.</translation>
    </message>
    <message>
        <source>The student thinks: “%1”</source>
        <translation>Der Schüler meint: „%1“</translation>
    </message>
    <message>
        <source>Answer to the student: %1</source>
        <translation>Antwort an den Schüler: %1</translation>
    </message>
    <message>
        <source>Could come first instead</source>
        <translation>Könnte stattdessen zuerst kommen</translation>
    </message>
    <message>
        <source>%1 (unclear)</source>
        <translation>%1 (unklar)</translation>
    </message>
    <message>
        <source>Could lie before it and cannot be told yet</source>
        <translation>Könnte davor liegen und ist noch nicht zu sagen</translation>
    </message>
    <message>
        <source>What do you say?</source>
        <translation>Was sagen Sie?</translation>
    </message>
    <message>
        <source>Why (may stay empty)</source>
        <translation>Warum (darf leer bleiben)</translation>
    </message>
    <message>
        <source>I agree</source>
        <translation>Einverstanden</translation>
    </message>
    <message>
        <source>First: %1</source>
        <translation>Zuerst: %1</translation>
    </message>
    <message>
        <source>Keep it as it is</source>
        <translation>So lassen, wie es ist</translation>
    </message>
    <message>
        <source>Something else comes first</source>
        <translation>Etwas anderes kommt zuerst</translation>
    </message>
    <message>
        <source>Comes first: %1, %2</source>
        <translation>Kommt zuerst: %1, %2</translation>
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
    <name>CodeReaderPanel</name>
    <message>
        <source>What the camera sees</source>
        <translation>Was die Kamera sieht</translation>
    </message>
    <message>
        <source>Hold the camera so that the code fills a third of the picture.</source>
        <translation>Halten Sie die Kamera so, dass der Code ein Drittel des Bildes füllt.</translation>
    </message>
    <message>
        <source>Stop the camera</source>
        <translation>Die Kamera anhalten</translation>
    </message>
    <message>
        <source>Read the code with the camera</source>
        <translation>Den Code mit der Kamera lesen</translation>
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
    <message>
        <source>Differences beyond doubt: %1</source>
        <translation>Zweifelsfreie Unterschiede: %1</translation>
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
    <message>
        <source>Not shown</source>
        <translation>Nicht zu sehen</translation>
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
    <name>ConsentPanel</name>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>There is no player yet.</source>
        <translation>Es gibt noch keinen Spieler.</translation>
    </message>
    <message>
        <source>Agreed to</source>
        <translation>Zugestimmt zu</translation>
    </message>
    <message>
        <source>A minor: a guardian agrees</source>
        <translation>Minderjährig: ein Erziehungsberechtigter stimmt zu</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>Erziehungsberechtigter</translation>
    </message>
    <message>
        <source>Last day (a minor&apos;s consent: one year at most)</source>
        <translation>Letzter Tag (bei Minderjährigen höchstens ein Jahr)</translation>
    </message>
    <message>
        <source>Note the consent</source>
        <translation>Die Zustimmung vermerken</translation>
    </message>
    <message>
        <source>Consent was withdrawn</source>
        <translation>Die Zustimmung wurde zurückgenommen</translation>
    </message>
    <message>
        <source>Kept past its time (90 days for minors, a year for others)</source>
        <translation>Länger behalten als vorgesehen (90 Tage bei Minderjährigen, sonst ein Jahr)</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Erase the clip</source>
        <translation>Den Clip löschen</translation>
    </message>
    <message>
        <source>Erase it for good</source>
        <translation>Endgültig löschen</translation>
    </message>
    <message>
        <source>This is a note of what was agreed, not legal advice.</source>
        <translation>Das ist ein Vermerk der Absprache, keine Rechtsberatung.</translation>
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
    <message>
        <source>The player %1 in this clip: turn it by %2 degrees clockwise, then measure it again.</source>
        <translation>Der Spieler %1 in diesem Clip: drehen Sie ihn um %2 Grad im Uhrzeigersinn und messen Sie ihn dann noch einmal.</translation>
    </message>
    <message>
        <source>Somebody else of about the same size is in the picture; the player %1 was measured. If that is the wrong one, cut the picture to the player or film alone.</source>
        <translation>Noch jemand von etwa gleicher Größe ist im Bild; gemessen wurde der Spieler %1. Ist das der falsche, schneiden Sie das Bild auf den Spieler zu oder filmen Sie ihn allein.</translation>
    </message>
    <message>
        <source>The top cannot be told: the club is lost there, and the hands turn at another time; film with room for the club on all sides.</source>
        <translation>Der höchste Punkt ist nicht zu sagen: der Schläger geht dort verloren, und die Hände kehren zu einer anderen Zeit um; filmen Sie mit Platz für den Schläger nach allen Seiten.</translation>
    </message>
    <message>
        <source>A dose is one to ten sets; choose a number in between.</source>
        <translation>Eine Dosis sind ein bis zehn Sätze; wählen Sie eine Zahl dazwischen.</translation>
    </message>
    <message>
        <source>The playbook holds no drill for it any more; make the plan anew.</source>
        <translation>Das Playbook enthält dafür keine Übung mehr; machen Sie den Plan neu.</translation>
    </message>
    <message>
        <source>The body card or a caution keeps this dose small; change the body card first if it is no longer true.</source>
        <translation>Die Körperkarte oder ein Hinweis hält diese Dosis klein; ändern Sie zuerst die Körperkarte, wenn sie nicht mehr stimmt.</translation>
    </message>
    <message>
        <source>There is no such version to choose (any more); look at the list again.</source>
        <translation>Diese Fassung gibt es nicht (mehr) zur Wahl; sehen Sie noch einmal in die Liste.</translation>
    </message>
    <message>
        <source>A frame came out uncovered, so nothing was kept; try again, or share without the clips.</source>
        <translation>Ein Bild blieb unverdeckt, also wurde nichts behalten; versuchen Sie es noch einmal, oder geben Sie ohne die Clips weiter.</translation>
    </message>
    <message>
        <source>The head is not covered yet in a film of this lesson; make the cover and look it through first (&quot;plumbmark lesson cover&quot;), or leave the clips out.</source>
        <translation>In einem Film dieser Stunde ist der Kopf noch nicht verdeckt; verdecken Sie ihn und sehen Sie ihn erst durch („plumbmark lesson cover“), oder lassen Sie die Clips weg.</translation>
    </message>
    <message>
        <source>The player&apos;s head was not found in this film, so it cannot be covered; place the head by hand in a few frames, or share without the clips.</source>
        <translation>Der Kopf des Spielers wurde in diesem Film nicht gefunden und ist deshalb nicht zu verdecken; setzen Sie ihn in einigen Bildern von Hand, oder geben Sie ohne die Clips weiter.</translation>
    </message>
    <message>
        <source>There is no covered copy to release; make it and look it through first (&quot;plumbmark lesson cover&quot;).</source>
        <translation>Es gibt keine verdeckte Kopie zum Freigeben; machen Sie sie und sehen Sie sie erst durch („plumbmark lesson cover“).</translation>
    </message>
    <message>
        <source>Nothing was shared: the guardian did not agree to the face being seen. Cover the heads, or leave the clips out.</source>
        <translation>Nichts wurde weitergegeben: der Erziehungsberechtigte hat nicht zugestimmt, dass das Gesicht zu sehen ist. Verdecken Sie die Köpfe, oder lassen Sie die Clips weg.</translation>
    </message>
    <message>
        <source>The key-position sheet shows the face; leave it out.</source>
        <translation>Das Blatt der Schlüsselpositionen zeigt das Gesicht; lassen Sie es weg.</translation>
    </message>
    <message>
        <source>The rate must lie between 1 and 10,000 frames a second; check the number.</source>
        <translation>Die Rate muss zwischen 1 und 10.000 Bildern in der Sekunde liegen; prüfen Sie die Zahl.</translation>
    </message>
    <message>
        <source>There is nothing before this to go back to.</source>
        <translation>Davor gibt es nichts, wohin es zurückginge.</translation>
    </message>
    <message>
        <source>That time lies outside the film; check it.</source>
        <translation>Diese Zeit liegt außerhalb des Films; prüfen Sie sie.</translation>
    </message>
    <message>
        <source>No instant of this lesson has a star yet; star what you want to show.</source>
        <translation>Noch kein Augenblick dieser Stunde hat einen Stern; geben Sie denen einen, die Sie zeigen wollen.</translation>
    </message>
    <message>
        <source>The player&apos;s head was not found in one of the films, so it cannot be covered; place the head by hand in a few frames.</source>
        <translation>Der Kopf des Spielers wurde in einem der Filme nicht gefunden und ist deshalb nicht zu verdecken; setzen Sie ihn in einigen Bildern von Hand.</translation>
    </message>
    <message>
        <source>A text for the card is too long or cannot be read; keep it under 500 characters.</source>
        <translation>Ein Text der Karte ist zu lang oder nicht lesbar; bleiben Sie unter 500 Zeichen.</translation>
    </message>
    <message>
        <source>This build has no painter, so it can&apos;t draw a PDF; give a name that ends in .html.</source>
        <translation>Dieser Bau hat keinen Zeichner und kann kein PDF schreiben; geben Sie einen Namen an, der auf .html endet.</translation>
    </message>
    <message>
        <source>This backup is damaged (%1); nothing was changed. Choose another one.</source>
        <translation>Diese Sicherung ist beschädigt (%1); nichts wurde verändert. Wählen Sie eine andere.</translation>
    </message>
    <message>
        <source>This is no backup of a lesson library; choose another folder.</source>
        <translation>Das ist keine Sicherung einer Stundenbibliothek; wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>This backup was made by a newer version of the program; update the program to restore it.</source>
        <translation>Diese Sicherung stammt von einer neueren Fassung des Programms; aktualisieren Sie es, um sie zurückzuholen.</translation>
    </message>
    <message>
        <source>There is no backup in &quot;%1&quot;; &quot;plumbmark restore&quot; lists those there are.</source>
        <translation>In „%1“ liegt keine Sicherung; „plumbmark restore“ nennt die vorhandenen.</translation>
    </message>
    <message>
        <source>There is no folder &quot;%1&quot;; make it, or choose another one.</source>
        <translation>Es gibt keinen Ordner „%1“; legen Sie ihn an, oder wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>This backup is in that folder already.</source>
        <translation>Diese Sicherung liegt schon in dem Ordner.</translation>
    </message>
    <message>
        <source>The database is damaged: %1. Put a backup in its place (&quot;plumbmark restore&quot;).</source>
        <translation>Die Datenbank ist beschädigt: %1. Setzen Sie eine Sicherung an ihre Stelle („plumbmark restore“).</translation>
    </message>
    <message>
        <source>The record %1 is not as it was written. Put a backup in its place (&quot;plumbmark restore&quot;).</source>
        <translation>Der Eintrag %1 ist nicht so, wie er geschrieben wurde. Setzen Sie eine Sicherung an die Stelle („plumbmark restore“).</translation>
    </message>
    <message>
        <source>The lists do not agree with the records. No record is lost; &quot;plumbmark check --repair&quot; makes the lists anew.</source>
        <translation>Die Listen stimmen nicht mit den Einträgen überein. Kein Eintrag ist verloren; „plumbmark check --repair“ macht die Listen neu.</translation>
    </message>
    <message>
        <source>The film %1 is damaged; bring it in again, or import a lesson file that holds it.</source>
        <translation>Der Film %1 ist beschädigt; holen Sie ihn noch einmal herein, oder nehmen Sie eine Stundendatei auf, die ihn enthält.</translation>
    </message>
    <message>
        <source>A film has no proper name; bring it in again.</source>
        <translation>Ein Film hat keinen brauchbaren Namen; holen Sie ihn noch einmal herein.</translation>
    </message>
    <message>
        <source>A film that was erased could not be removed; close other programs that use it. It goes at the next start.</source>
        <translation>Ein gelöschter Film ließ sich nicht entfernen; schließen Sie andere Programme, die ihn benutzen. Beim nächsten Start verschwindet er.</translation>
    </message>
    <message>
        <source>The library could not be made private; choose another folder.</source>
        <translation>Die Bibliothek ließ sich nicht vor anderen verschließen; wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>It is not known where your files lie; name a folder with --library.</source>
        <translation>Es ist nicht bekannt, wo Ihre Dateien liegen; nennen Sie mit --library einen Ordner.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a folder; name a folder for the library.</source>
        <translation>„%1“ ist kein Ordner; nennen Sie einen Ordner für die Bibliothek.</translation>
    </message>
    <message>
        <source>The library&apos;s folder &quot;%1&quot; cannot be made; choose another one.</source>
        <translation>Der Ordner „%1“ der Bibliothek lässt sich nicht anlegen; wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>The file library.db is missing although films are there; put a backup in its place (&quot;plumbmark restore&quot;), or choose another folder.</source>
        <translation>Die Datei library.db fehlt, obwohl Filme da sind; setzen Sie eine Sicherung an ihre Stelle („plumbmark restore“), oder wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>The file library.db in &quot;%1&quot; is not a lesson library; choose another folder.</source>
        <translation>Die Datei library.db in „%1“ ist keine Stundenbibliothek; wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>This library was made by a newer version of the program and can only be read here; update the program to change it.</source>
        <translation>Diese Bibliothek stammt von einer neueren Fassung des Programms und kann hier nur gelesen werden; aktualisieren Sie das Programm, um sie zu ändern.</translation>
    </message>
    <message>
        <source>This library was made by a newer version of the program; update the program to open it.</source>
        <translation>Diese Bibliothek stammt von einer neueren Fassung des Programms; aktualisieren Sie es, um sie zu öffnen.</translation>
    </message>
    <message>
        <source>This belongs to something that was erased; nothing was saved.</source>
        <translation>Das gehört zu etwas, das gelöscht wurde; nichts wurde gespeichert.</translation>
    </message>
    <message>
        <source>This is too much for one record; make it shorter.</source>
        <translation>Das ist zu viel für einen Eintrag; machen Sie es kürzer.</translation>
    </message>
    <message>
        <source>The film of this clip is not in the library; bring it in again.</source>
        <translation>Der Film dieses Clips ist nicht in der Bibliothek; holen Sie ihn noch einmal herein.</translation>
    </message>
    <message>
        <source>A record in the file differs from the one of the same name in the library; the file was changed, nothing was taken.</source>
        <translation>Ein Eintrag der Datei unterscheidet sich von dem gleichnamigen der Bibliothek; die Datei wurde verändert, nichts wurde übernommen.</translation>
    </message>
    <message>
        <source>Something was erased; its traces are being removed.
</source>
        <translation>Etwas wurde gelöscht; seine Spuren werden entfernt.
</translation>
    </message>
    <message>
        <source>A lesson file holds up to 4 GB; leave films out.</source>
        <translation>Eine Stundendatei fasst höchstens 4 GB; lassen Sie Filme weg.</translation>
    </message>
    <message>
        <source>Reading &quot;%1&quot; failed; check the disk and try again.</source>
        <translation>„%1“ ließ sich nicht lesen; prüfen Sie das Laufwerk und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The lesson file is damaged or was changed (%1); nothing was imported. Ask for it again.</source>
        <translation>Die Stundendatei ist beschädigt oder wurde verändert (%1); nichts wurde übernommen. Bitten Sie noch einmal darum.</translation>
    </message>
    <message>
        <source>This is not a lesson file as the program writes it: %1. Nothing was imported; ask for the file again.</source>
        <translation>Das ist keine Stundendatei, wie das Programm sie schreibt: %1. Nichts wurde übernommen; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <source>This lesson file was made by a newer version of the program; update the program to read it.</source>
        <translation>Diese Stundendatei stammt von einer neueren Fassung des Programms; aktualisieren Sie es, um sie zu lesen.</translation>
    </message>
    <message>
        <source>The lesson file is empty; ask for it again.</source>
        <translation>Die Stundendatei ist leer; bitten Sie noch einmal darum.</translation>
    </message>
    <message>
        <source>This is not a lesson file; choose a file that ends in %1.</source>
        <translation>Das ist keine Stundendatei; wählen Sie eine Datei, die auf %1 endet.</translation>
    </message>
    <message>
        <source>The lesson file is cut off: its end is missing; nothing was imported. Copy it again.</source>
        <translation>Die Stundendatei ist abgeschnitten: ihr Ende fehlt; nichts wurde übernommen. Kopieren Sie sie noch einmal.</translation>
    </message>
    <message>
        <source>This ZIP file is not a lesson file; choose a file that ends in %1.</source>
        <translation>Diese ZIP-Datei ist keine Stundendatei; wählen Sie eine Datei, die auf %1 endet.</translation>
    </message>
    <message>
        <source>There is not enough free space on the disk for the films in this lesson file; free some and try again.</source>
        <translation>Auf dem Laufwerk ist nicht genug Platz für die Filme dieser Stundendatei; schaffen Sie Platz und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>There are too many records for one lesson file; send fewer lessons at once.</source>
        <translation>Zu viele Einträge für eine Stundendatei; senden Sie weniger Stunden auf einmal.</translation>
    </message>
    <message>
        <source>A film in the library is damaged, so the lesson was not exported; bring the film in again.</source>
        <translation>Ein Film der Bibliothek ist beschädigt, deshalb wurde die Stunde nicht geschrieben; holen Sie den Film noch einmal herein.</translation>
    </message>
    <message>
        <source>The title cannot be written; type it again.</source>
        <translation>Der Titel lässt sich nicht schreiben; tippen Sie ihn noch einmal.</translation>
    </message>
    <message>
        <source>There are too many films for one lesson file; send fewer lessons at once.</source>
        <translation>Zu viele Filme für eine Stundendatei; senden Sie weniger Stunden auf einmal.</translation>
    </message>
    <message>
        <source>A film changed while it was read; export the lesson again.</source>
        <translation>Ein Film hat sich beim Lesen verändert; schreiben Sie die Stunde noch einmal.</translation>
    </message>
    <message>
        <source>There is not enough memory to make the key; close other programs and try again.</source>
        <translation>Der Speicher reicht nicht für den Schlüssel; schließen Sie andere Programme und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The sealed file is damaged or was changed; nothing was imported. Ask for it again.</source>
        <translation>Die versiegelte Datei ist beschädigt oder wurde verändert; nichts wurde übernommen. Bitten Sie noch einmal darum.</translation>
    </message>
    <message>
        <source>The passphrase is too short; take at least eight characters, better six words.</source>
        <translation>Das Passwort ist zu kurz; nehmen Sie mindestens acht Zeichen, besser sechs Wörter.</translation>
    </message>
    <message>
        <source>The encryption library cannot start; restart the program.</source>
        <translation>Die Verschlüsselung startet nicht; starten Sie das Programm neu.</translation>
    </message>
    <message>
        <source>Reading the file failed; check the disk and try again.</source>
        <translation>Die Datei ließ sich nicht lesen; prüfen Sie das Laufwerk und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>This file is not sealed with a passphrase.</source>
        <translation>Diese Datei ist nicht mit einem Passwort versiegelt.</translation>
    </message>
    <message>
        <source>This file was sealed by a newer version of the program, or it is damaged; update the program, or ask for the file again.</source>
        <translation>Diese Datei wurde von einer neueren Fassung des Programms versiegelt, oder sie ist beschädigt; aktualisieren Sie das Programm, oder bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <source>The sealed file is cut off: its end is missing; nothing was imported. Copy it again.</source>
        <translation>Die versiegelte Datei ist abgeschnitten: ihr Ende fehlt; nichts wurde übernommen. Kopieren Sie sie noch einmal.</translation>
    </message>
    <message>
        <source>The passphrase is not the one this file was sealed with (or the file is damaged); try again.</source>
        <translation>Mit diesem Passwort wurde die Datei nicht versiegelt (oder sie ist beschädigt); versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The device&apos;s key is damaged; remove the file &quot;%1&quot; and a new one is made (others then see a new device).</source>
        <translation>Der Schlüssel des Geräts ist beschädigt; entfernen Sie die Datei „%1“, dann entsteht ein neuer (andere sehen dann ein neues Gerät).</translation>
    </message>
    <message>
        <source>The network cannot be used; check that this device is on one.</source>
        <translation>Das Netz ist nicht zu benutzen; prüfen Sie, ob dieses Gerät in einem ist.</translation>
    </message>
    <message>
        <source>What is sent is larger than a lesson file may be; it was not taken.</source>
        <translation>Was gesendet wird, ist größer, als eine Stundendatei sein darf; es wurde nicht angenommen.</translation>
    </message>
    <message>
        <source>What comes in cannot be kept; check the disk.</source>
        <translation>Was ankommt, lässt sich nicht behalten; prüfen Sie das Laufwerk.</translation>
    </message>
    <message>
        <source>The disk is full, so nothing was received; free some space and try again.</source>
        <translation>Das Laufwerk ist voll, deshalb wurde nichts empfangen; schaffen Sie Platz und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>What arrived is not what was sent; nothing was kept. Try again.</source>
        <translation>Was ankam, ist nicht, was gesendet wurde; nichts wurde behalten. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>What came in could not be kept; check the disk.</source>
        <translation>Was ankam, ließ sich nicht behalten; prüfen Sie das Laufwerk.</translation>
    </message>
    <message>
        <source>The file to send cannot be read; check that it is there.</source>
        <translation>Die Datei zum Senden lässt sich nicht lesen; prüfen Sie, ob sie da ist.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no address as 192.168.1.7.</source>
        <translation>„%1“ ist keine Adresse wie 192.168.1.7.</translation>
    </message>
    <message>
        <source>Somebody tried a wrong key too often, so the sending was ended. Start it again; a new key is made.</source>
        <translation>Jemand hat zu oft einen falschen Schlüssel versucht, deshalb wurde die Sendung beendet. Beginnen Sie sie neu; es entsteht ein neuer Schlüssel.</translation>
    </message>
    <message>
        <source>Nobody came for it; start the sending again when the other device is ready.</source>
        <translation>Niemand hat es abgeholt; beginnen Sie die Sendung neu, wenn das andere Gerät bereit ist.</translation>
    </message>
    <message>
        <source>The other device went away before all was sent; start again, it goes on where it stopped.</source>
        <translation>Das andere Gerät war weg, bevor alles gesendet war; beginnen Sie noch einmal, es geht weiter, wo es aufhörte.</translation>
    </message>
    <message>
        <source>This is no ticket of a sending; copy all of it.</source>
        <translation>Das ist kein Schein einer Sendung; kopieren Sie ihn ganz.</translation>
    </message>
    <message>
        <source>The sender does not know this ticket; take the one it shows now.</source>
        <translation>Der Absender kennt diesen Schein nicht; nehmen Sie den, den er jetzt zeigt.</translation>
    </message>
    <message>
        <source>The sender cannot be reached; check that both are on one network and that it still shows its ticket. What came already is kept.</source>
        <translation>Der Absender ist nicht zu erreichen; prüfen Sie, ob beide im selben Netz sind und ob er seinen Schein noch zeigt. Was schon da ist, bleibt.</translation>
    </message>
    <message>
        <source>Say what the consent is for: film, analyse, keep, share, teach, face.</source>
        <translation>Sagen Sie, wofür die Zustimmung gilt: film, analyse, keep, share, teach, face.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing to consent to; there are film, analyse, keep, share, teach, face.</source>
        <translation>„%1“ ist nichts, dem man zustimmt; es gibt film, analyse, keep, share, teach, face.</translation>
    </message>
    <message>
        <source>A consent needs the day it was given and its last day, as 2026-11-25.</source>
        <translation>Eine Zustimmung braucht den Tag, an dem sie gegeben wurde, und ihren letzten Tag, wie 2026-11-25.</translation>
    </message>
    <message>
        <source>The consent would end before it begins; check the days.</source>
        <translation>Die Zustimmung würde enden, bevor sie beginnt; prüfen Sie die Tage.</translation>
    </message>
    <message>
        <source>A minor&apos;s consent holds for a year at most; then ask again.</source>
        <translation>Die Zustimmung für Minderjährige gilt höchstens ein Jahr; fragen Sie dann noch einmal.</translation>
    </message>
    <message>
        <source>A consent holds for two years at most; then ask again.</source>
        <translation>Eine Zustimmung gilt höchstens zwei Jahre; fragen Sie dann noch einmal.</translation>
    </message>
    <message>
        <source>A minor&apos;s consent is given by a guardian; say who.</source>
        <translation>Für Minderjährige stimmt ein Erziehungsberechtigter zu; sagen Sie, wer.</translation>
    </message>
    <message>
        <source>The guardian&apos;s name is too long or no text; type it again.</source>
        <translation>Der Name des Erziehungsberechtigten ist zu lang oder kein Text; tippen Sie ihn noch einmal.</translation>
    </message>
    <message>
        <source>Nothing was shared: there is no consent on record. Ask for it and note it (&quot;plumbmark consent&quot;), or share only with a device of your own.</source>
        <translation>Nichts wurde weitergegeben: es ist keine Zustimmung vermerkt. Fragen Sie danach und vermerken Sie sie („plumbmark consent“), oder geben Sie nur an ein eigenes Gerät weiter.</translation>
    </message>
    <message>
        <source>Nothing was shared: the consent was withdrawn.</source>
        <translation>Nichts wurde weitergegeben: die Zustimmung wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>Nothing was shared: the consent ended on %1; ask again and note it.</source>
        <translation>Nichts wurde weitergegeben: die Zustimmung endete am %1; fragen Sie noch einmal und vermerken Sie sie.</translation>
    </message>
    <message>
        <source>Nothing was shared: the consent is not for this (%1); ask for it and note it.</source>
        <translation>Nichts wurde weitergegeben: die Zustimmung gilt nicht dafür (%1); fragen Sie danach und vermerken Sie sie.</translation>
    </message>
    <message>
        <source>Nothing was shared: for a minor a guardian must agree; note who did.</source>
        <translation>Nichts wurde weitergegeben: für Minderjährige muss ein Erziehungsberechtigter zustimmen; vermerken Sie, wer.</translation>
    </message>
    <message>
        <source>A record&apos;s field &quot;%1&quot; makes no sense; the file is damaged.</source>
        <translation>Das Feld „%1“ eines Eintrags ergibt keinen Sinn; die Datei ist beschädigt.</translation>
    </message>
    <message>
        <source>A record is too long; the file is damaged.</source>
        <translation>Ein Eintrag ist zu lang; die Datei ist beschädigt.</translation>
    </message>
    <message>
        <source>A record is not in the form this program writes; the file was changed.</source>
        <translation>Ein Eintrag hat nicht die Form, in der dieses Programm schreibt; die Datei wurde verändert.</translation>
    </message>
    <message>
        <source>A day must look like 2026-11-25; check it.</source>
        <translation>Ein Tag muss aussehen wie 2026-11-25; prüfen Sie ihn.</translation>
    </message>
    <message>
        <source>The reason is too long or cannot be read; keep it under 10,000 characters.</source>
        <translation>Der Grund ist zu lang oder nicht lesbar; bleiben Sie unter 10.000 Zeichen.</translation>
    </message>
    <message>
        <source>The %1 is too long; keep it under 10,000 characters.</source>
        <translation>Zu lang (%1); bleiben Sie unter 10.000 Zeichen.</translation>
    </message>
    <message>
        <source>The %1 holds characters that cannot be read; type it again.</source>
        <translation>Darin sind Zeichen, die sich nicht lesen lassen (%1); tippen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>This number was made by a newer version of the program.</source>
        <translation>Diese Zahl stammt von einer neueren Fassung des Programms.</translation>
    </message>
    <message>
        <source>The player has no name; give one.</source>
        <translation>Der Spieler hat keinen Namen; geben Sie ihm einen.</translation>
    </message>
    <message>
        <source>The stature must lie between 50 and 250 cm; check the number.</source>
        <translation>Die Körpergröße muss zwischen 50 und 250 cm liegen; prüfen Sie die Zahl.</translation>
    </message>
    <message>
        <source>The day of the lesson must look like 2026-11-25; check it.</source>
        <translation>Der Tag der Stunde muss aussehen wie 2026-11-25; prüfen Sie ihn.</translation>
    </message>
    <message>
        <source>More than 50 tags on one shot; take some away.</source>
        <translation>Mehr als 50 Merkwörter an einem Schlag; nehmen Sie einige weg.</translation>
    </message>
    <message>
        <source>The clip&apos;s own figures make no sense; bring it in again.</source>
        <translation>Die eigenen Angaben des Clips ergeben keinen Sinn; holen Sie ihn noch einmal herein.</translation>
    </message>
    <message>
        <source>A line of the note is too long or cannot be read; keep it under 10,000 characters.</source>
        <translation>Eine Zeile der Notiz ist zu lang oder nicht lesbar; bleiben Sie unter 10.000 Zeichen.</translation>
    </message>
    <message>
        <source>The note is empty; tell what you saw, what you said or what comes next.</source>
        <translation>Die Notiz ist leer; sagen Sie, was Sie gesehen haben, was Sie gesagt haben oder was als Nächstes kommt.</translation>
    </message>
    <message>
        <source>A review lasts more than nothing and up to 30 minutes; check length_ms.</source>
        <translation>Eine Besprechung dauert mehr als nichts und höchstens 30 Minuten; prüfen Sie length_ms.</translation>
    </message>
    <message>
        <source>A review needs at least one act (and at most 20,000).</source>
        <translation>Eine Besprechung braucht mindestens eine Handlung (und höchstens 20.000).</translation>
    </message>
    <message>
        <source>A review begins with a go at 0 ms that names a clip; put it first.</source>
        <translation>Eine Besprechung beginnt bei 0 ms mit einem „go“, das einen Clip nennt; stellen Sie es an den Anfang.</translation>
    </message>
    <message>
        <source>A review has one voice or up to 1,000 pieces of voices, not both.</source>
        <translation>Eine Besprechung hat eine Stimme oder bis zu 1.000 Stücke von Stimmen, nicht beides.</translation>
    </message>
    <message>
        <source>Pieces of the voice must follow each other and end with the review.</source>
        <translation>Stücke der Stimme müssen aufeinander folgen und mit der Besprechung enden.</translation>
    </message>
    <message>
        <source>Captions must follow each other and end with the review; check from_ms and to_ms.</source>
        <translation>Untertitel müssen aufeinander folgen und mit der Besprechung enden; prüfen Sie from_ms und to_ms.</translation>
    </message>
    <message>
        <source>A caption is too long or cannot be read; keep it under 1,000 characters.</source>
        <translation>Ein Untertitel ist zu lang oder nicht lesbar; bleiben Sie unter 1.000 Zeichen.</translation>
    </message>
    <message>
        <source>That stretch is not in the review; give one from its beginning to its end, in seconds of the review.</source>
        <translation>Dieses Stück liegt nicht in der Besprechung; nennen Sie eines zwischen ihrem Anfang und Ende, in Sekunden der Besprechung.</translation>
    </message>
    <message>
        <source>The lesson has no spoken review yet; record one first.</source>
        <translation>Die Stunde hat noch keine gesprochene Besprechung; nehmen Sie zuerst eine auf.</translation>
    </message>
    <message>
        <source>Nothing of the review would be left; leave something of it.</source>
        <translation>Von der Besprechung bliebe nichts übrig; lassen Sie etwas davon stehen.</translation>
    </message>
    <message>
        <source>A pause lasts more than nothing and up to 30 minutes.</source>
        <translation>Eine Pause dauert mehr als nichts und höchstens 30 Minuten.</translation>
    </message>
    <message>
        <source>The new stretch holds no acts; record it first.</source>
        <translation>Das neue Stück enthält keine Handlungen; nehmen Sie es zuerst auf.</translation>
    </message>
    <message>
        <source>A number is not finite, so it was not saved; mark it again.</source>
        <translation>Eine Zahl ist nicht endlich und wurde deshalb nicht gespeichert; markieren Sie noch einmal.</translation>
    </message>
    <message>
        <source>A text is not valid UTF-8, so it was not saved; type it again.</source>
        <translation>Ein Text ist kein gültiges UTF-8 und wurde deshalb nicht gespeichert; tippen Sie ihn noch einmal.</translation>
    </message>
    <message>
        <source>A record is nested too deeply, so it was not saved.</source>
        <translation>Ein Eintrag ist zu tief verschachtelt und wurde deshalb nicht gespeichert.</translation>
    </message>
    <message>
        <source>This is not a readable record; the file is damaged.</source>
        <translation>Das ist kein lesbarer Eintrag; die Datei ist beschädigt.</translation>
    </message>
    <message>
        <source>The picture cuts off %1, so what needs them can&apos;t be told.</source>
        <translation>Das Bild schneidet ab: %1; was das braucht, ist nicht zu sagen.</translation>
    </message>
    <message>
        <source>Leave an arm and a club&apos;s length of room on all sides, from address to finish.</source>
        <translation>Lassen Sie von der Ansprechposition bis zum Finish auf allen Seiten eine Arm- und eine Schlägerlänge Platz.</translation>
    </message>
    <message>
        <source>Nothing tells how fast this was filmed, so there are no times.</source>
        <translation>Nichts sagt, wie schnell das gefilmt wurde, deshalb gibt es keine Zeiten.</translation>
    </message>
    <message>
        <source>Send the camera&apos;s own file, or say how many frames a second were filmed.</source>
        <translation>Schicken Sie die Originaldatei der Kamera, oder sagen Sie, mit wie vielen Bildern in der Sekunde gefilmt wurde.</translation>
    </message>
    <message>
        <source>At %1 frames a second the shaft turns about %2 degrees between two pictures near the hit.</source>
        <translation>Bei %1 Bildern in der Sekunde dreht sich der Schaft nahe am Treffer zwischen zwei Bildern um etwa %2 Grad.</translation>
    </message>
    <message>
        <source>Film in slow motion, 120 to 240 frames a second.</source>
        <translation>Filmen Sie in Zeitlupe, mit 120 bis 240 Bildern in der Sekunde.</translation>
    </message>
    <message>
        <source>The light comes from behind the player, who is dark against it.</source>
        <translation>Das Licht kommt von hinter dem Spieler, der davor dunkel ist.</translation>
    </message>
    <message>
        <source>Film with the sun or the lamps behind the camera.</source>
        <translation>Filmen Sie mit der Sonne oder den Lampen hinter der Kamera.</translation>
    </message>
    <message>
        <source>It is dark, so edges are unclear and moving parts smear.</source>
        <translation>Es ist dunkel: Ränder sind unklar, und was sich bewegt, verwischt.</translation>
    </message>
    <message>
        <source>Film in more light, with an exposure of 1/1000 s or shorter.</source>
        <translation>Filmen Sie bei mehr Licht, mit einer Belichtung von 1/1000 s oder kürzer.</translation>
    </message>
    <message>
        <source>The camera moved; that is taken out, but positions are less sure.</source>
        <translation>Die Kamera hat sich bewegt; das wird herausgerechnet, aber Positionen sind weniger sicher.</translation>
    </message>
    <message>
        <source>Put the phone on a stand or against a bag.</source>
        <translation>Stellen Sie das Telefon auf ein Stativ oder an eine Tasche.</translation>
    </message>
    <message>
        <source>The player fills only %1 % of the picture&apos;s height, so a pixel is worth %2 mm.</source>
        <translation>Der Spieler füllt nur %1 % der Bildhöhe, ein Pixel ist also %2 mm groß.</translation>
    </message>
    <message>
        <source>Stand 4 to 5 m away with the main lens, the phone upright.</source>
        <translation>Stellen Sie sich 4 bis 5 m weg, mit der Hauptlinse, das Telefon hochkant.</translation>
    </message>
    <message>
        <source>From %1 m near parts of the body look larger than far ones.</source>
        <translation>Aus %1 m erscheinen nahe Körperteile größer als ferne.</translation>
    </message>
    <message>
        <source>Stand 4 to 5 m away with the main lens.</source>
        <translation>Stellen Sie sich 4 bis 5 m weg, mit der Hauptlinse.</translation>
    </message>
    <message>
        <source>The %1%2%3 m off the picture&apos;s middle; the slanted look makes up to %4 degrees of false lean.</source>
        <translation>%1%2%3 m neben der Bildmitte; der schräge Blick macht bis zu %4 Grad falsche Neigung.</translation>
    </message>
    <message>
        <source>Point the camera so that the %1%2 in the middle.</source>
        <translation>Richten Sie die Kamera so aus, dass %1%2 in der Mitte ist.</translation>
    </message>
    <message>
        <source>Nothing tells how level the camera stood: every tilt carries %1 degrees of doubt.</source>
        <translation>Nichts sagt, wie gerade die Kamera stand: jede Neigung ist um %1 Grad unsicher.</translation>
    </message>
    <message>
        <source>Use the level of the camera, or film something plumb (a post, a door frame) and mark it.</source>
        <translation>Benutzen Sie die Wasserwaage der Kamera, oder filmen Sie etwas Lotrechtes (einen Pfosten, einen Türrahmen) und markieren Sie es.</translation>
    </message>
    <message>
        <source>Nothing shows where the target line runs: the camera&apos;s turn is known to %1 degrees only.</source>
        <translation>Nichts zeigt, wo die Ziellinie verläuft: die Drehung der Kamera ist nur auf %1 Grad bekannt.</translation>
    </message>
    <message>
        <source>Lay an alignment stick on the target line, in view.</source>
        <translation>Legen Sie einen Ausrichtungsstab sichtbar auf die Ziellinie.</translation>
    </message>
    <message>
        <source>The disk is full, so %1 was not saved; free some space and save again.</source>
        <translation>Das Laufwerk ist voll, deshalb wurde %1 nicht gespeichert; schaffen Sie Platz und speichern Sie noch einmal.</translation>
    </message>
    <message>
        <source>The folder for %1 does not exist; choose another folder.</source>
        <translation>Den Ordner für %1 gibt es nicht; wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>Saving %1 failed; check the disk and try again.</source>
        <translation>%1 ließ sich nicht speichern; prüfen Sie das Laufwerk und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a folder; give the name of a file to write.</source>
        <translation>„%1“ ist ein Ordner; nennen Sie eine Datei zum Schreiben.</translation>
    </message>
    <message>
        <source>The file &quot;%1&quot; cannot be read; check that it is there and may be read.</source>
        <translation>Die Datei „%1“ lässt sich nicht lesen; prüfen Sie, ob sie da ist und gelesen werden darf.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a file; choose a file.</source>
        <translation>„%1“ ist keine Datei; wählen Sie eine Datei.</translation>
    </message>
    <message>
        <source>There is no file &quot;%1&quot;; check the name.</source>
        <translation>Es gibt keine Datei „%1“; prüfen Sie den Namen.</translation>
    </message>
    <message>
        <source>The file &quot;%1&quot; cannot be read; check its permissions.</source>
        <translation>Die Datei „%1“ lässt sich nicht lesen; prüfen Sie ihre Rechte.</translation>
    </message>
    <message>
        <source>There is no room left on the disk; make some and try again.</source>
        <translation>Auf dem Laufwerk ist kein Platz mehr; schaffen Sie welchen und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>A film could not be copied for sharing; check the free space and the rights of the library&apos;s folder.</source>
        <translation>Ein Film ließ sich nicht zum Weitergeben kopieren; prüfen Sie den freien Platz und die Rechte des Bibliotheksordners.</translation>
    </message>
    <message>
        <source>A film is in a container from which place and device cannot be taken out; bring it in as MP4, or share without the clips.</source>
        <translation>Ein Film steckt in einem Behälter, aus dem sich Ort und Gerät nicht entfernen lassen; holen Sie ihn als MP4 herein, oder geben Sie ohne die Clips weiter.</translation>
    </message>
    <message>
        <source>A film cannot be copied without changing it; bring it in as MP4, or share without the clips.</source>
        <translation>Ein Film lässt sich nicht unverändert kopieren; holen Sie ihn als MP4 herein, oder geben Sie ohne die Clips weiter.</translation>
    </message>
    <message>
        <source>The file %1 can&apos;t be read; check its access rights or copy it again.</source>
        <translation>Die Datei %1 lässt sich nicht lesen; prüfen Sie ihre Rechte, oder kopieren Sie sie noch einmal.</translation>
    </message>
    <message>
        <source>The clip can&apos;t be read; copy it again.</source>
        <translation>Der Clip lässt sich nicht lesen; kopieren Sie ihn noch einmal.</translation>
    </message>
    <message>
        <source>There is no file %1; check the name and the folder.</source>
        <translation>Es gibt keine Datei %1; prüfen Sie den Namen und den Ordner.</translation>
    </message>
    <message>
        <source>The file %1 is empty; copy it again from the camera.</source>
        <translation>Die Datei %1 ist leer; kopieren Sie sie noch einmal von der Kamera.</translation>
    </message>
    <message>
        <source>The clip has %1 frames; ask for one of those.</source>
        <translation>Der Clip hat %1 Bilder; verlangen Sie eines davon.</translation>
    </message>
    <message>
        <source>The clip ends before any picture of it can be read; copy it again from the camera.</source>
        <translation>Der Clip endet, bevor ein Bild davon zu lesen ist; kopieren Sie ihn noch einmal von der Kamera.</translation>
    </message>
    <message>
        <source>The clip&apos;s pictures can&apos;t be read here; convert it to H.264 or HEVC.</source>
        <translation>Die Bilder des Clips lassen sich hier nicht lesen; wandeln Sie ihn in H.264 oder HEVC um.</translation>
    </message>
    <message>
        <source>The clip asks for an odd turn; it was turned by the nearest right angle.</source>
        <translation>Der Clip verlangt eine krumme Drehung; er wurde um den nächsten rechten Winkel gedreht.</translation>
    </message>
    <message>
        <source>The file ends early; %1%2 could be read.</source>
        <translation>Die Datei endet vorzeitig; %1%2 war zu lesen.</translation>
    </message>
    <message>
        <source>Parts of the file are damaged; some frames may look wrong.</source>
        <translation>Teile der Datei sind beschädigt; einige Bilder können falsch aussehen.</translation>
    </message>
    <message>
        <source>The clip is shown mirrored; check that left and right are right.</source>
        <translation>Der Clip ist gespiegelt gezeigt; prüfen Sie, ob links und rechts stimmen.</translation>
    </message>
    <message>
        <source>The clip was already slowed down in parts, so its times can&apos;t be used; choose the original recording.</source>
        <translation>Der Clip wurde stellenweise schon verlangsamt, seine Zeiten sind nicht zu gebrauchen; wählen Sie die ursprüngliche Aufnahme.</translation>
    </message>
    <message>
        <source>Frame %1 of the clip can&apos;t be read; go to another frame or copy the clip again.</source>
        <translation>Bild %1 des Clips lässt sich nicht lesen; gehen Sie zu einem anderen, oder kopieren Sie den Clip noch einmal.</translation>
    </message>
    <message>
        <source>These frames of the clip can&apos;t be read; copy the clip again.</source>
        <translation>Diese Bilder des Clips lassen sich nicht lesen; kopieren Sie den Clip noch einmal.</translation>
    </message>
    <message>
        <source>There is no such frame in this part of the clip.</source>
        <translation>In diesem Teil des Clips gibt es kein solches Bild.</translation>
    </message>
    <message>
        <source>There are no such frames in this part of the clip.</source>
        <translation>In diesem Teil des Clips gibt es keine solchen Bilder.</translation>
    </message>
    <message>
        <source>The take &quot;%1&quot; could not be written; check the free space and the rights of the folder.</source>
        <translation>Die Aufnahme „%1“ ließ sich nicht schreiben; prüfen Sie den freien Platz und die Rechte des Ordners.</translation>
    </message>
    <message>
        <source>There is not enough memory to film; close other programs.</source>
        <translation>Der Speicher reicht nicht zum Filmen; schließen Sie andere Programme.</translation>
    </message>
    <message>
        <source>This build has no working H.264 encoder, so nothing can be filmed; install an FFmpeg that has one.</source>
        <translation>Dieser Bau hat keinen brauchbaren H.264-Kodierer, deshalb kann nicht gefilmt werden; installieren Sie ein FFmpeg mit einem.</translation>
    </message>
    <message>
        <source>The camera&apos;s picture changed its size; start the camera again.</source>
        <translation>Das Bild der Kamera hat seine Größe geändert; starten Sie die Kamera noch einmal.</translation>
    </message>
    <message>
        <source>A picture&apos;s time is not later than the one before.</source>
        <translation>Die Zeit eines Bildes liegt nicht nach der des vorigen.</translation>
    </message>
    <message>
        <source>A picture could not be coded; try a smaller picture.</source>
        <translation>Ein Bild ließ sich nicht kodieren; versuchen Sie ein kleineres.</translation>
    </message>
    <message>
        <source>This build can&apos;t write takes; install an FFmpeg that can.</source>
        <translation>Dieser Bau kann keine Aufnahmen schreiben; installieren Sie ein FFmpeg, das es kann.</translation>
    </message>
    <message>
        <source>The take &quot;%1&quot; can&apos;t be created; choose a folder that exists and can be written to.</source>
        <translation>Die Aufnahme „%1“ lässt sich nicht anlegen; wählen Sie einen Ordner, den es gibt und der beschrieben werden darf.</translation>
    </message>
    <message>
        <source>This build has no working AAC encoder; install an FFmpeg that has one.</source>
        <translation>Dieser Bau hat keinen brauchbaren AAC-Kodierer; installieren Sie ein FFmpeg mit einem.</translation>
    </message>
    <message>
        <source>A take must begin with a key picture.</source>
        <translation>Eine Aufnahme muss mit einem Schlüsselbild beginnen.</translation>
    </message>
    <message>
        <source>The take has no picture.</source>
        <translation>Die Aufnahme hat kein Bild.</translation>
    </message>
    <message>
        <source>A picture of %1 by %2 pixels can&apos;t be filmed; use even sizes from 2 to 8192.</source>
        <translation>Ein Bild von %1 mal %2 Pixeln lässt sich nicht filmen; nehmen Sie gerade Größen von 2 bis 8192.</translation>
    </message>
    <message>
        <source>The picture is damaged; take or copy it again.</source>
        <translation>Das Bild ist beschädigt; machen oder kopieren Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The file %1 is empty; copy it again.</source>
        <translation>Die Datei %1 ist leer; kopieren Sie sie noch einmal.</translation>
    </message>
    <message>
        <source>The picture could not be made; this build needs FFmpeg&apos;s %1 encoder.</source>
        <translation>Das Bild ließ sich nicht machen; dieser Bau braucht dafür den %1-Kodierer von FFmpeg.</translation>
    </message>
    <message>
        <source>The picture is empty; copy it again.</source>
        <translation>Das Bild ist leer; kopieren Sie es noch einmal.</translation>
    </message>
    <message>
        <source>This is not a PNG or JPEG picture; choose one of those.</source>
        <translation>Das ist kein PNG- oder JPEG-Bild; wählen Sie eines.</translation>
    </message>
    <message>
        <source>The picture is larger than %1 pixels a side; make it smaller.</source>
        <translation>Das Bild hat mehr als %1 Pixel an einer Seite; machen Sie es kleiner.</translation>
    </message>
    <message>
        <source>The picture &quot;%1&quot; can&apos;t be written; choose a folder that exists, has space and can be written to.</source>
        <translation>Das Bild „%1“ lässt sich nicht schreiben; wählen Sie einen Ordner, den es gibt, der Platz hat und beschrieben werden darf.</translation>
    </message>
    <message>
        <source>The picture &quot;%1&quot; can&apos;t be written; choose another name or folder.</source>
        <translation>Das Bild „%1“ lässt sich nicht schreiben; wählen Sie einen anderen Namen oder Ordner.</translation>
    </message>
    <message>
        <source>The voice could not be kept; this build needs FFmpeg&apos;s AAC encoder.</source>
        <translation>Die Stimme ließ sich nicht behalten; dieser Bau braucht dafür den AAC-Kodierer von FFmpeg.</translation>
    </message>
    <message>
        <source>The sound lasts longer than half an hour; cut it first.</source>
        <translation>Der Ton dauert länger als eine halbe Stunde; schneiden Sie ihn zuerst.</translation>
    </message>
    <message>
        <source>No sound can be read from this file; record it again as WAV or M4A.</source>
        <translation>Aus dieser Datei lässt sich kein Ton lesen; nehmen Sie ihn noch einmal als WAV oder M4A auf.</translation>
    </message>
    <message>
        <source>The clip &quot;%1&quot; could not be written; check the free space and the rights of the folder.</source>
        <translation>Der Clip „%1“ ließ sich nicht schreiben; prüfen Sie den freien Platz und die Rechte des Ordners.</translation>
    </message>
    <message>
        <source>This build has no working AAC encoder for this sound, so the clip can&apos;t carry sound; write it without, or install an FFmpeg that has one.</source>
        <translation>Dieser Bau hat für diesen Ton keinen brauchbaren AAC-Kodierer, der Clip kann also keinen Ton tragen; schreiben Sie ihn ohne, oder installieren Sie ein FFmpeg mit einem.</translation>
    </message>
    <message>
        <source>This build can&apos;t write MP4 files; install an FFmpeg that can.</source>
        <translation>Dieser Bau kann keine MP4-Dateien schreiben; installieren Sie ein FFmpeg, das es kann.</translation>
    </message>
    <message>
        <source>The clip &quot;%1&quot; can&apos;t be created; choose a folder that exists and can be written to.</source>
        <translation>Der Clip „%1“ lässt sich nicht anlegen; wählen Sie einen Ordner, den es gibt und der beschrieben werden darf.</translation>
    </message>
    <message>
        <source>A picture could not be encoded; try another codec or size.</source>
        <translation>Ein Bild ließ sich nicht kodieren; versuchen Sie einen anderen Kodierer oder eine andere Größe.</translation>
    </message>
    <message>
        <source>A picture has another size than the clip; give every picture the clip&apos;s size.</source>
        <translation>Ein Bild hat eine andere Größe als der Clip; geben Sie jedem die Größe des Clips.</translation>
    </message>
    <message>
        <source>A picture&apos;s time is not later than the one before; give rising times from 0 on.</source>
        <translation>Die Zeit eines Bildes liegt nicht nach der des vorigen; geben Sie steigende Zeiten von 0 an.</translation>
    </message>
    <message>
        <source>There is not enough memory to write the clip; close other programs.</source>
        <translation>Der Speicher reicht nicht, um den Clip zu schreiben; schließen Sie andere Programme.</translation>
    </message>
    <message>
        <source>The clip was begun without sound; begin it with a sound rate.</source>
        <translation>Der Clip wurde ohne Ton begonnen; beginnen Sie ihn mit einer Tonrate.</translation>
    </message>
    <message>
        <source>The clip has no picture yet; write at least one.</source>
        <translation>Der Clip hat noch kein Bild; schreiben Sie mindestens eines.</translation>
    </message>
    <message>
        <source>A clip of %1 by %2 pixels can&apos;t be written; use even sizes from 2 to 8192.</source>
        <translation>Ein Clip von %1 mal %2 Pixeln lässt sich nicht schreiben; nehmen Sie gerade Größen von 2 bis 8192.</translation>
    </message>
    <message>
        <source>The clip can&apos;t be written with these settings; use codec h264 or hevc, up to 2000 frames a second and a rotation in steps of 90 degrees.</source>
        <translation>Mit diesen Einstellungen lässt sich der Clip nicht schreiben; nehmen Sie h264 oder hevc, bis zu 2000 Bilder in der Sekunde und eine Drehung in Schritten von 90 Grad.</translation>
    </message>
    <message>
        <source>The shared folder&apos;s number cannot be read, so nothing was exchanged; check the folder and try again.</source>
        <translation>Die Nummer des gemeinsamen Ordners lässt sich nicht lesen, deshalb wurde nichts ausgetauscht; prüfen Sie den Ordner und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>By the year of birth on the body card the player is not of age yet, so a guardian must agree; say who.</source>
        <translation>Nach dem Geburtsjahr auf der Körperkarte ist der Spieler noch nicht volljährig, ein Erziehungsberechtigter muss also zustimmen; sagen Sie, wer.</translation>
    </message>
    <message>
        <source>The names of known devices cannot be read, so nothing was changed; check the disk and try again.</source>
        <translation>Die Namen der bekannten Geräte lassen sich nicht lesen, deshalb wurde nichts verändert; prüfen Sie das Laufwerk und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The folder &quot;%1&quot; cannot be read; check the disk and try again.</source>
        <translation>Der Ordner „%1“ lässt sich nicht lesen; prüfen Sie das Laufwerk und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The lesson&apos;s plan has no such priority; keep a plan first, then give 1 or 2.</source>
        <translation>Der Plan der Stunde hat keinen solchen Schwerpunkt; behalten Sie zuerst einen Plan und nennen Sie dann 1 oder 2.</translation>
    </message>
    <message>
        <source>The film of that clip is not here; import a lesson file that holds it.</source>
        <translation>Der Film dieses Clips ist nicht hier; nehmen Sie eine Stundendatei auf, die ihn enthält.</translation>
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
    <name>ExchangeDevicesPanel</name>
    <message>
        <source>Send to a device beside this one</source>
        <translation>An ein Gerät daneben senden</translation>
    </message>
    <message>
        <source>Read this code with the other device, or type the ticket there. The way is open while it is shown, for one sending.</source>
        <translation>Lesen Sie diesen Code mit dem anderen Gerät, oder tippen Sie dort den Schein ein. Der Weg ist offen, solange er gezeigt wird, für eine Sendung.</translation>
    </message>
    <message>
        <source>Code of the ticket</source>
        <translation>Code des Scheins</translation>
    </message>
    <message>
        <source>Ticket %1</source>
        <translation>Schein %1</translation>
    </message>
    <message>
        <source>Send this lesson</source>
        <translation>Diese Stunde senden</translation>
    </message>
    <message>
        <source>Receive</source>
        <translation>Empfangen</translation>
    </message>
    <message>
        <source>Ticket of the other device</source>
        <translation>Schein des anderen Geräts</translation>
    </message>
    <message>
        <source>plumbmark: and what follows</source>
        <translation>plumbmark: und was folgt</translation>
    </message>
    <message>
        <source>Receive the lesson</source>
        <translation>Die Stunde empfangen</translation>
    </message>
    <message>
        <source>Shared folder</source>
        <translation>Gemeinsamer Ordner</translation>
    </message>
    <message>
        <source>A stick, a network drive, or a folder that another program carries around. Everything here goes to your own devices that reach it; what is missed is caught up with.</source>
        <translation>Ein Stick, ein Netzlaufwerk oder ein Ordner, den ein anderes Programm herumträgt. Alles hier geht an Ihre eigenen Geräte, die ihn erreichen; Versäumtes wird nachgeholt.</translation>
    </message>
    <message>
        <source>Folder to exchange through</source>
        <translation>Ordner zum Austauschen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>Or another folder</source>
        <translation>Oder ein anderer Ordner</translation>
    </message>
    <message>
        <source>Use this folder</source>
        <translation>Diesen Ordner nehmen</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Jetzt austauschen</translation>
    </message>
</context>
<context>
    <name>ExchangeFilePanel</name>
    <message>
        <source>Save a lesson to a file</source>
        <translation>Eine Stunde als Datei speichern</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Passphrase (seals the file; leave it empty for none)</source>
        <translation>Passwort (versiegelt die Datei; leer lassen für keines)</translation>
    </message>
    <message>
        <source>Save the lesson file</source>
        <translation>Die Stundendatei speichern</translation>
    </message>
    <message>
        <source>Open a lesson file</source>
        <translation>Eine Stundendatei öffnen</translation>
    </message>
    <message>
        <source>There is no lesson file in this folder; choose another one above.</source>
        <translation>In diesem Ordner ist keine Stundendatei; wählen Sie oben einen anderen.</translation>
    </message>
    <message>
        <source>Check lesson file %1</source>
        <translation>Stundendatei %1 prüfen</translation>
    </message>
    <message>
        <source>Take the lesson in</source>
        <translation>Die Stunde aufnehmen</translation>
    </message>
</context>
<context>
    <name>ExchangePage</name>
    <message>
        <source>Exchange and keep</source>
        <translation>Austauschen und bewahren</translation>
    </message>
    <message>
        <source>Files</source>
        <translation>Dateien</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Zustimmung</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <source>Settle (%1)</source>
        <translation>Klären (%1)</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Klären</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
</context>
<context>
    <name>ExchangeTravelPanel</name>
    <message>
        <source>Lesson</source>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>There is no lesson to send yet.</source>
        <translation>Es gibt noch keine Stunde zu senden.</translation>
    </message>
    <message>
        <source>It goes to</source>
        <translation>Sie geht an</translation>
    </message>
    <message>
        <source>somebody else</source>
        <translation>jemand anderen</translation>
    </message>
    <message>
        <source>a device of mine</source>
        <translation>ein Gerät von mir</translation>
    </message>
    <message>
        <source>Clips go as they were filmed.</source>
        <translation>Clips gehen so mit, wie sie gefilmt wurden.</translation>
    </message>
    <message>
        <source>Clips go without place, device and dates.</source>
        <translation>Clips gehen ohne Ort, Gerät und Datum mit.</translation>
    </message>
    <message>
        <source>What travels</source>
        <translation>Was mitgeht</translation>
    </message>
    <message>
        <source>Clips</source>
        <translation>Clips</translation>
    </message>
    <message>
        <source>Health notes</source>
        <translation>Notizen zur Gesundheit</translation>
    </message>
    <message>
        <source>Heads covered</source>
        <translation>Köpfe verdeckt</translation>
    </message>
    <message>
        <source>Covered copies of this lesson&apos;s clips were looked through and released.</source>
        <translation>Verdeckte Kopien der Clips dieser Stunde wurden durchgesehen und freigegeben.</translation>
    </message>
    <message>
        <source>Look at every picture below. Is nobody to be recognised?</source>
        <translation>Sehen Sie jedes Bild unten an. Ist niemand zu erkennen?</translation>
    </message>
    <message>
        <source>Covered copies are made first; you look them through before they may travel.</source>
        <translation>Zuerst werden verdeckte Kopien gemacht; Sie sehen sie durch, bevor sie mitgehen dürfen.</translation>
    </message>
    <message>
        <source>Cover the heads</source>
        <translation>Die Köpfe verdecken</translation>
    </message>
    <message>
        <source>Cover the heads again</source>
        <translation>Die Köpfe noch einmal verdecken</translation>
    </message>
    <message>
        <source>I have looked: release</source>
        <translation>Ich habe nachgesehen: freigeben</translation>
    </message>
    <message>
        <source>Covered picture %1</source>
        <translation>Verdecktes Bild %1</translation>
    </message>
    <message>
        <source>%1: look closely</source>
        <translation>%1: genau hinsehen</translation>
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
    <message>
        <source>Answered as for this player&apos;s last swing; change what is different today.</source>
        <translation>Ausgefüllt wie beim letzten Schwung dieses Spielers; ändern Sie, was heute anders ist.</translation>
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
    <message>
        <source>Body card: ask before the first full swing</source>
        <translation>Körperkarte: vor dem ersten vollen Schwung fragen</translation>
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
    <message>
        <source>Times and tempo wait: at how many frames a second was it filmed?</source>
        <translation>Zeiten und Tempo warten: mit wie vielen Bildern in der Sekunde wurde gefilmt?</translation>
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
    <name>GroupPage</name>
    <message>
        <source>Group lesson</source>
        <translation>Gruppenstunde</translation>
    </message>
    <message>
        <source>End the group lesson</source>
        <translation>Die Gruppenstunde beenden</translation>
    </message>
    <message>
        <source>Film this player</source>
        <translation>Diesen Spieler filmen</translation>
    </message>
    <message>
        <source>Bring in a clip</source>
        <translation>Clip hereinholen</translation>
    </message>
    <message>
        <source>This player&apos;s page</source>
        <translation>Seite dieses Spielers</translation>
    </message>
    <message>
        <source>Look around before every swing; everybody else stands behind the line.</source>
        <translation>Vor jedem Schwung umsehen; alle anderen stehen hinter der Linie.</translation>
    </message>
    <message>
        <source>Give the turn to %1</source>
        <translation>%1 ist an der Reihe</translation>
    </message>
</context>
<context>
    <name>GroupStrip</name>
    <message>
        <source>Turn of %1</source>
        <translation>An der Reihe: %1</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
</context>
<context>
    <name>InboxDelegate</name>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open the lesson of %1</source>
        <translation>Die Stunde von %1 öffnen</translation>
    </message>
    <message>
        <source>Please film again</source>
        <translation>Bitte noch einmal filmen</translation>
    </message>
    <message>
        <source>Please film again: %1</source>
        <translation>Bitte noch einmal filmen: %1</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>Beantwortet</translation>
    </message>
    <message>
        <source>Answered: %1</source>
        <translation>Beantwortet: %1</translation>
    </message>
    <message>
        <source>Because (empty: what limited the clips)</source>
        <translation>Weil (leer: was die Clips einschränkte)</translation>
    </message>
    <message>
        <source>Look at the clips and ask</source>
        <translation>Die Clips ansehen und bitten</translation>
    </message>
    <message>
        <source>Ask with this reason</source>
        <translation>Mit diesem Grund bitten</translation>
    </message>
</context>
<context>
    <name>InboxPage</name>
    <message>
        <source>Sent in</source>
        <translation>Eingesandt</translation>
    </message>
    <message>
        <source>Nobody is waiting.</source>
        <translation>Niemand wartet.</translation>
    </message>
    <message>
        <source>Looking at the clips, %1 per cent</source>
        <translation>Die Clips werden angesehen, %1 Prozent</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>For the student:
%1</source>
        <translation>Für den Schüler:
%1</translation>
    </message>
    <message>
        <source>Another lesson waits (an answer within three days)</source>
        <translation>Noch eine Stunde wartet (Antwort binnen drei Tagen)</translation>
    </message>
    <message>
        <source>Waits for you: %1</source>
        <translation>Wartet auf Sie: %1</translation>
    </message>
    <message>
        <source>A card for students: how to film and what to write</source>
        <translation>Eine Karte für Schüler: wie man filmt und was man schreibt</translation>
    </message>
    <message>
        <source>For whom (may stay empty)</source>
        <translation>Für wen (darf leer bleiben)</translation>
    </message>
    <message>
        <source>Your name (may stay empty)</source>
        <translation>Ihr Name (darf leer bleiben)</translation>
    </message>
    <message>
        <source>By when (may stay empty)</source>
        <translation>Bis wann (darf leer bleiben)</translation>
    </message>
    <message>
        <source>What you want to see (may stay empty)</source>
        <translation>Was Sie sehen wollen (darf leer bleiben)</translation>
    </message>
    <message>
        <source>Make the card</source>
        <translation>Die Karte machen</translation>
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
    <message>
        <source>Cause and plan</source>
        <translation>Ursache und Plan</translation>
    </message>
    <message>
        <source>Cause and plan of %1, %2</source>
        <translation>Ursache und Plan von %1, %2</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Besprechung</translation>
    </message>
    <message>
        <source>Review of %1, %2</source>
        <translation>Besprechung von %1, %2</translation>
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
    <message>
        <source>Exchange and keep</source>
        <translation>Austauschen und bewahren</translation>
    </message>
    <message>
        <source>Sent in</source>
        <translation>Eingesandt</translation>
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
    <name>PainQuestion</name>
    <message>
        <source>Pain now</source>
        <translation>Schmerz jetzt</translation>
    </message>
    <message>
        <source>Pain now: where?</source>
        <translation>Schmerz jetzt: wo?</translation>
    </message>
    <message>
        <source>Pain: %1</source>
        <translation>Schmerz: %1</translation>
    </message>
    <message>
        <source>%1: how much, from 0 (none) to 10 (the worst there is)?</source>
        <translation>%1: wie stark, von 0 (gar nicht) bis 10 (stärker geht es nicht)?</translation>
    </message>
    <message>
        <source>%1: %2 of 10</source>
        <translation>%1: %2 von 10</translation>
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
    <name>PlanPanel</name>
    <message>
        <source>There is nothing to prescribe: say what comes first, or film more.</source>
        <translation>Es gibt nichts zu verordnen: sagen Sie, was zuerst kommt, oder filmen Sie mehr.</translation>
    </message>
    <message>
        <source>Days until the next look: %1</source>
        <translation>Tage bis zum nächsten Hinsehen: %1</translation>
    </message>
    <message>
        <source>Look again sooner</source>
        <translation>Früher wieder hinsehen</translation>
    </message>
    <message>
        <source>Look again later</source>
        <translation>Später wieder hinsehen</translation>
    </message>
    <message>
        <source>Kept. Look again: %1</source>
        <translation>Behalten. Wieder hinsehen: %1</translation>
    </message>
    <message>
        <source>Keep this plan</source>
        <translation>Diesen Plan behalten</translation>
    </message>
    <message>
        <source>The body</source>
        <translation>Der Körper</translation>
    </message>
    <message>
        <source>%1 %2 (%3)
%4</source>
        <translation>%1 %2 (%3)
%4</translation>
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
    <message>
        <source>Body card: ask before the first full swing</source>
        <translation>Körperkarte: vor dem ersten vollen Schwung fragen</translation>
    </message>
    <message>
        <source>Body card of %1</source>
        <translation>Körperkarte von %1</translation>
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
    <message>
        <source>Group lesson: %1</source>
        <translation>Gruppenstunde: %1</translation>
    </message>
    <message>
        <source>The players listed here are taught together, one after the other; at most 40</source>
        <translation>Die hier genannten Spieler werden zusammen unterrichtet, einer nach dem anderen; höchstens 40</translation>
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
    <name>PriorityCard</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Fewer: %1</source>
        <translation>Weniger: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Mehr: %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Feel</source>
        <translation>Gefühl</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Dose</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <source>Sets of 10 slow rehearsals</source>
        <translation>Sätze zu 10 langsamen Trockenschwüngen</translation>
    </message>
    <message>
        <source>Sets of 10 balls</source>
        <translation>Sätze zu 10 Bällen</translation>
    </message>
    <message>
        <source>Trains</source>
        <translation>Übt</translation>
    </message>
    <message>
        <source>Decides</source>
        <translation>Entscheidet</translation>
    </message>
    <message>
        <source>Must not get worse</source>
        <translation>Darf nicht schlechter werden</translation>
    </message>
    <message>
        <source>What it may cost</source>
        <translation>Was es kosten kann</translation>
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
    <name>RegionQuestion</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ReviewPage</name>
    <message>
        <source>Review</source>
        <translation>Besprechung</translation>
    </message>
</context>
<context>
    <name>ReviewPanel</name>
    <message>
        <source>Show swing %1</source>
        <translation>Schwung %1 zeigen</translation>
    </message>
    <message>
        <source>What you saw</source>
        <translation>Was Sie gesehen haben</translation>
    </message>
    <message>
        <source>What you said</source>
        <translation>Was Sie gesagt haben</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Was als Nächstes kommt</translation>
    </message>
    <message>
        <source>Three lines kept</source>
        <translation>Drei Zeilen behalten</translation>
    </message>
    <message>
        <source>Keep the three lines</source>
        <translation>Die drei Zeilen behalten</translation>
    </message>
    <message>
        <source>Make a film of the review</source>
        <translation>Aus der Besprechung einen Film machen</translation>
    </message>
    <message>
        <source>Make the lesson sheet (PDF)</source>
        <translation>Das Stundenblatt machen (PDF)</translation>
    </message>
    <message>
        <source>Writing, %1 per cent</source>
        <translation>Wird geschrieben, %1 Prozent</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>ReviewStage</name>
    <message>
        <source>Picture of the review, %1</source>
        <translation>Bild der Besprechung, %1</translation>
    </message>
    <message>
        <source>Recording %1</source>
        <translation>Aufnahme %1</translation>
    </message>
    <message>
        <source>Wipe the drawing away</source>
        <translation>Die Zeichnung wegwischen</translation>
    </message>
    <message>
        <source>Stop drawing</source>
        <translation>Nicht mehr zeichnen</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Zeichnen</translation>
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
        <source>No film of this lesson is on this device.</source>
        <translation>Kein Film dieser Stunde ist auf diesem Gerät.</translation>
    </message>
    <message>
        <source>Opening the film</source>
        <translation>Der Film wird geöffnet</translation>
    </message>
</context>
<context>
    <name>ReviewTransport</name>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Stop the film</source>
        <translation>Den Film anhalten</translation>
    </message>
    <message>
        <source>Play the film slowly</source>
        <translation>Den Film langsam abspielen</translation>
    </message>
    <message>
        <source>Place in the review</source>
        <translation>Stelle in der Besprechung</translation>
    </message>
    <message>
        <source>Place in the film</source>
        <translation>Stelle im Film</translation>
    </message>
    <message>
        <source>One frame back</source>
        <translation>Ein Bild zurück</translation>
    </message>
    <message>
        <source>One frame on</source>
        <translation>Ein Bild vor</translation>
    </message>
    <message>
        <source>Stop and keep</source>
        <translation>Beenden und behalten</translation>
    </message>
    <message>
        <source>Leave the replay</source>
        <translation>Die Wiedergabe verlassen</translation>
    </message>
    <message>
        <source>Record again</source>
        <translation>Noch einmal aufnehmen</translation>
    </message>
    <message>
        <source>Record and talk</source>
        <translation>Aufnehmen und sprechen</translation>
    </message>
    <message>
        <source>Play the review</source>
        <translation>Die Besprechung abspielen</translation>
    </message>
    <message>
        <source>Play the review (silent)</source>
        <translation>Die Besprechung abspielen (stumm)</translation>
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
    <name>SettlePanel</name>
    <message>
        <source>Nothing to settle: all devices agree.</source>
        <translation>Nichts zu klären: alle Geräte sind sich einig.</translation>
    </message>
    <message>
        <source>Two devices put this differently without having seen each other. Both versions are kept; tap the one that holds.</source>
        <translation>Zwei Geräte sagen das verschieden, ohne voneinander gewusst zu haben. Beide Fassungen sind da; tippen Sie auf die, die gilt.</translation>
    </message>
    <message>
        <source>%1 holds: %2</source>
        <translation>%1 gilt: %2</translation>
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
    <name>TeachPage</name>
    <message>
        <source>Last plan</source>
        <translation>Letzter Plan</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
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
    <name>TrialPanel</name>
    <message>
        <source>Change one thing and hit three to five. Tap each swing until it says what it was: before, try or after.</source>
        <translation>Ändern Sie eines und schlagen Sie drei bis fünf Bälle. Tippen Sie jeden Schwung an, bis dasteht, was er war: vorher, Versuch oder nachher.</translation>
    </message>
    <message>
        <source>What is tried</source>
        <translation>Was versucht wird</translation>
    </message>
    <message>
        <source>Nothing comes first yet: name a departure under “Cause”.</source>
        <translation>Noch kommt nichts zuerst: nennen Sie unter „Ursache“ eine Abweichung.</translation>
    </message>
    <message>
        <source>Did it help?</source>
        <translation>Hat es geholfen?</translation>
    </message>
    <message>
        <source>No number moved beyond doubt.</source>
        <translation>Keine Zahl hat sich zweifelsfrei bewegt.</translation>
    </message>
    <message>
        <source>Moved beyond doubt: %1</source>
        <translation>Zweifelsfrei bewegt: %1</translation>
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
    <name>plumbmark::bridge::BodyCardModel</name>
    <message>
        <source>Left hip</source>
        <translation>Linke Hüfte</translation>
    </message>
    <message>
        <source>Right hip</source>
        <translation>Rechte Hüfte</translation>
    </message>
    <message>
        <source>Left knee</source>
        <translation>Linkes Knie</translation>
    </message>
    <message>
        <source>Right knee</source>
        <translation>Rechtes Knie</translation>
    </message>
    <message>
        <source>Left wrist</source>
        <translation>Linkes Handgelenk</translation>
    </message>
    <message>
        <source>Right wrist</source>
        <translation>Rechtes Handgelenk</translation>
    </message>
    <message>
        <source>Left elbow</source>
        <translation>Linker Ellbogen</translation>
    </message>
    <message>
        <source>Right elbow</source>
        <translation>Rechter Ellbogen</translation>
    </message>
    <message>
        <source>Left shoulder</source>
        <translation>Linke Schulter</translation>
    </message>
    <message>
        <source>Right shoulder</source>
        <translation>Rechte Schulter</translation>
    </message>
    <message>
        <source>Left ankle</source>
        <translation>Linker Knöchel</translation>
    </message>
    <message>
        <source>Right ankle</source>
        <translation>Rechter Knöchel</translation>
    </message>
    <message>
        <source>%1: %2 of 10</source>
        <translation>%1: %2 von 10</translation>
    </message>
    <message>
        <source>A replaced joint, an operation, a pregnancy, or a bone or heart condition, and nobody has cleared full swings: ask a physician first. No full swings until then.</source>
        <translation>Ein künstliches Gelenk, eine Operation, eine Schwangerschaft oder ein Knochen- oder Herzleiden, und niemand hat volle Schwünge freigegeben: fragen Sie zuerst einen Arzt. Bis dahin keine vollen Schwünge.</translation>
    </message>
    <message>
        <source>Pain of %1 of 10: no balls today. If it is still there tomorrow, see a physician or licensed physiotherapist.</source>
        <translation>Schmerz %1 von 10: heute keine Bälle. Ist er morgen noch da, zum Arzt oder Physiotherapeuten.</translation>
    </message>
    <message>
        <source>Some pain: slow and few, and stop when it grows.</source>
        <translation>Etwas Schmerz: langsam und wenig, und aufhören, wenn er zunimmt.</translation>
    </message>
    <message>
        <source>A child: a guardian agrees before anything is filmed.</source>
        <translation>Ein Kind: ein Erziehungsberechtigter stimmt zu, bevor gefilmt wird.</translation>
    </message>
    <message>
        <source>A child: no adult ranges, no comparison with other children.</source>
        <translation>Ein Kind: keine Bereiche für Erwachsene, kein Vergleich mit anderen Kindern.</translation>
    </message>
    <message>
        <source>A clinician&apos;s limit, balls a day: %1.</source>
        <translation>Ärztliche Grenze, Bälle am Tag: %1.</translation>
    </message>
    <message>
        <source>Ten minutes of warm-up before the first full swing.</source>
        <translation>Zehn Minuten aufwärmen vor dem ersten vollen Schwung.</translation>
    </message>
    <message>
        <source>Not asked yet: ask before the first full swing.</source>
        <translation>Noch nicht gefragt: fragen Sie vor dem ersten vollen Schwung.</translation>
    </message>
    <message>
        <source>Nothing told here holds full swings back. That is no clean bill of health.</source>
        <translation>Nichts von dem Genannten spricht gegen volle Schwünge. Das ist kein Gesundheitszeugnis.</translation>
    </message>
    <message>
        <source>none told</source>
        <translation>keine genannt</translation>
    </message>
    <message>
        <source>Trouble before</source>
        <translation>Frühere Beschwerden</translation>
    </message>
    <message>
        <source>Stiff, fused, or limited by a clinician</source>
        <translation>Steif, versteift oder ärztlich eingeschränkt</translation>
    </message>
    <message>
        <source>Replaced joint</source>
        <translation>Künstliches Gelenk</translation>
    </message>
    <message>
        <source>Operated on</source>
        <translation>Operiert</translation>
    </message>
    <message>
        <source>Pregnant</source>
        <translation>Schwanger</translation>
    </message>
    <message>
        <source>A bone or heart condition</source>
        <translation>Ein Knochen- oder Herzleiden</translation>
    </message>
    <message>
        <source>Cleared for full swings by a clinician</source>
        <translation>Volle Schwünge ärztlich freigegeben</translation>
    </message>
    <message>
        <source>Cleared for full swings by a clinician (told on %1)</source>
        <translation>Volle Schwünge ärztlich freigegeben (gesagt am %1)</translation>
    </message>
    <message>
        <source>Warmed up for ten minutes today</source>
        <translation>Heute zehn Minuten aufgewärmt</translation>
    </message>
    <message>
        <source>A guardian agrees to filming</source>
        <translation>Ein Erziehungsberechtigter stimmt dem Filmen zu</translation>
    </message>
    <message>
        <source>The year of birth must look like 1974; or leave it empty.</source>
        <translation>Das Geburtsjahr muss aussehen wie 1974; oder lassen Sie es leer.</translation>
    </message>
    <message>
        <source>The limit must be a number of balls a day from 0 to 1000; or leave it empty.</source>
        <translation>Die Grenze muss eine Zahl von Bällen am Tag von 0 bis 1000 sein; oder lassen Sie sie leer.</translation>
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
    <message>
        <source>%1 × %2 pixels, %3 s, %4 frames a second as it plays.</source>
        <translation>%1 × %2 Pixel, %3 s, %4 Bilder in der Sekunde, wie er abläuft.</translation>
    </message>
    <message>
        <source>The film does not tell at which rate it was filmed. Say it below: without it positions and angles are told, but no times and no tempo.</source>
        <translation>Der Film sagt nicht, mit welcher Rate gefilmt wurde. Sagen Sie sie unten: ohne sie gibt es Positionen und Winkel, aber keine Zeiten und kein Tempo.</translation>
    </message>
    <message>
        <source>Slow motion: filmed at %1 frames a second.</source>
        <translation>Zeitlupe: gefilmt mit %1 Bildern in der Sekunde.</translation>
    </message>
    <message>
        <source>At this rate the club turns some 80 degrees from frame to frame at the ball: positions are told, tempo is not judged.</source>
        <translation>Bei dieser Rate dreht sich der Schläger am Ball von Bild zu Bild um etwa 80 Grad: Positionen werden gesagt, das Tempo wird nicht beurteilt.</translation>
    </message>
    <message>
        <source>A small picture: numbers come with wider uncertainty.</source>
        <translation>Ein kleines Bild: die Zahlen sind unsicherer.</translation>
    </message>
    <message>
        <source>No sound: the hit is found in the picture alone.</source>
        <translation>Kein Ton: der Treffer wird allein im Bild gesucht.</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::CoachModel</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
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
        <source>disputed</source>
        <translation>umstritten</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>range of motion</source>
        <translation>Beweglichkeit</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>swings together: %1</source>
        <translation>Schwünge zusammen: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>the ball&apos;s %1, as told</source>
        <translation>%1 des Balls, wie angegeben</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Comes first: %1. The earliest departure is a good first guess, not proof.</source>
        <translation>Kommt zuerst: %1. Die früheste Abweichung ist eine gute erste Vermutung, kein Beweis.</translation>
    </message>
    <message>
        <source>No departure was found in what these clips show.</source>
        <translation>In dem, was diese Clips zeigen, wurde keine Abweichung gefunden.</translation>
    </message>
    <message>
        <source>Cannot tell from these clips what comes first.</source>
        <translation>Aus diesen Clips ist nicht zu sagen, was zuerst kommt.</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>there: %1</source>
        <translation>da: %1</translation>
    </message>
    <message>
        <source>tends to cause: %1</source>
        <translation>führt oft zu: %1</translation>
    </message>
    <message>
        <source>comes first: %1</source>
        <translation>kommt zuerst: %1</translation>
    </message>
    <message>
        <source>Swing %1</source>
        <translation>Schwung %1</translation>
    </message>
    <message>
        <source>share among the explanations: %1</source>
        <translation>Anteil unter den Erklärungen: %1</translation>
    </message>
    <message>
        <source>It needs a %1 clip.</source>
        <translation>Es braucht einen Clip: %1.</translation>
    </message>
    <message>
        <source>The program has no measurement for it yet; look for yourself.</source>
        <translation>Das Programm hat dafür noch keine Messung; sehen Sie selbst hin.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>no</translation>
    </message>
    <message>
        <source>not this</source>
        <translation>dies nicht</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message>
        <source>, then </source>
        <translation>, dann </translation>
    </message>
    <message>
        <source>Your word: agreed. %1</source>
        <translation>Ihr Wort: einverstanden. %1</translation>
    </message>
    <message>
        <source>Your word: in this order. %1</source>
        <translation>Ihr Wort: in dieser Reihenfolge. %1</translation>
    </message>
    <message>
        <source>Your word: something else. %1</source>
        <translation>Ihr Wort: etwas anderes. %1</translation>
    </message>
    <message>
        <source>there</source>
        <translation>da</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht da</translation>
    </message>
    <message>
        <source>unclear</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>The plan of %1</source>
        <translation>Der Plan von %1</translation>
    </message>
    <message>
        <source>Practised</source>
        <translation>Geübt</translation>
    </message>
    <message>
        <source>%1 rehearsals, %2 balls, %3 rounds</source>
        <translation>%1 Trockenschwünge, %2 Bälle, %3 Runden</translation>
    </message>
    <message>
        <source>Changed beyond doubt</source>
        <translation>Zweifelsfrei verändert</translation>
    </message>
    <message>
        <source>No swings of one view, kind and club in both lessons: nothing can be compared.</source>
        <translation>Keine Schwünge gleicher Ansicht, Art und gleichen Schlägers in beiden Stunden: nichts ist zu vergleichen.</translation>
    </message>
    <message>
        <source>%1: needs three swings on each side</source>
        <translation>%1: braucht drei Schwünge auf jeder Seite</translation>
    </message>
    <message>
        <source>%1: %2%3</source>
        <translation>%1: %2%3</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Not proven, of what decides and guards</source>
        <translation>Nicht bewiesen, von dem, was entscheidet und bewacht</translation>
    </message>
    <message>
        <source>%1: %2 of 10 on %3</source>
        <translation>%1: %2 von 10 am %3</translation>
    </message>
    <message>
        <source>Hurts</source>
        <translation>Schmerzt</translation>
    </message>
    <message>
        <source>nothing logged</source>
        <translation>nichts vermerkt</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>try</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht benutzt</translation>
    </message>
    <message>
        <source>The guard held.</source>
        <translation>Die Wache hielt: nichts wurde schlechter.</translation>
    </message>
    <message>
        <source>The guard got worse beyond doubt.</source>
        <translation>Die Wache ist zweifelsfrei schlechter geworden.</translation>
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
    <name>plumbmark::bridge::ExchangeModel</name>
    <message>
        <source>made by itself</source>
        <translation>von selbst gemacht</translation>
    </message>
    <message>
        <source>made by hand</source>
        <translation>von Hand gemacht</translation>
    </message>
    <message>
        <source>before an update</source>
        <translation>vor einer Aktualisierung</translation>
    </message>
    <message>
        <source>after erasing</source>
        <translation>nach dem Löschen</translation>
    </message>
    <message>
        <source>before a restore</source>
        <translation>vor dem Zurückholen</translation>
    </message>
    <message>
        <source>Whole, from %1.</source>
        <translation>Unversehrt, von %1.</translation>
    </message>
    <message>
        <source>Whole, sender unknown.</source>
        <translation>Unversehrt, Absender unbekannt.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n neu</numerusform>
            <numerusform>%n neu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n the same</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n gleich</numerusform>
            <numerusform>%n gleich</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n erased</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n gelöscht</numerusform>
            <numerusform>%n gelöscht</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not taken, erased here</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n nicht übernommen, hier gelöscht</numerusform>
            <numerusform>%n nicht übernommen, hier gelöscht</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n need you</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n braucht Sie</numerusform>
            <numerusform>%n brauchen Sie</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new clips.</source>
        <comment>clips</comment>
        <translation>
            <numerusform>%n neuer Clip.</numerusform>
            <numerusform>%n neue Clips.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not looked at yet.</source>
        <translation>Noch nicht angesehen.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Abgebrochen.</translation>
    </message>
    <message>
        <source>May be shared; clips only with the head covered.</source>
        <translation>Darf weitergegeben werden; Clips nur mit verdecktem Kopf.</translation>
    </message>
    <message>
        <source>May be shared.</source>
        <translation>Darf weitergegeben werden.</translation>
    </message>
    <message>
        <source>Covering the head in every frame</source>
        <translation>Der Kopf wird in jedem Bild verdeckt</translation>
    </message>
    <message numerus="yes">
        <source>Look at every picture: other people are not covered. The head was uncertain in %n frame(s).</source>
        <translation>
            <numerusform>Sehen Sie jedes Bild an: andere Personen sind nicht verdeckt. In %n Bild war der Kopf unsicher.</numerusform>
            <numerusform>Sehen Sie jedes Bild an: andere Personen sind nicht verdeckt. In %n Bildern war der Kopf unsicher.</numerusform>
        </translation>
    </message>
    <message>
        <source>Released: these clips may travel with the head covered.</source>
        <translation>Freigegeben: diese Clips dürfen mit verdecktem Kopf mitgehen.</translation>
    </message>
    <message>
        <source>Writing the lesson file</source>
        <translation>Die Stundendatei wird geschrieben</translation>
    </message>
    <message>
        <source>Saved as %1 (%2).</source>
        <translation>Gespeichert als %1 (%2).</translation>
    </message>
    <message>
        <source>Checking every byte</source>
        <translation>Jedes Byte wird geprüft</translation>
    </message>
    <message>
        <source>Whole, sender unknown (not signed).</source>
        <translation>Unversehrt, Absender unbekannt (nicht unterschrieben).</translation>
    </message>
    <message>
        <source>Whole, sender unknown (key %1).</source>
        <translation>Unversehrt, Absender unbekannt (Schlüssel %1).</translation>
    </message>
    <message numerus="yes">
        <source>“%1”, %n record(s)</source>
        <translation>
            <numerusform>„%1“, %n Eintrag</numerusform>
            <numerusform>„%1“, %n Einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n clip(s)</source>
        <translation>
            <numerusform>%n Clip</numerusform>
            <numerusform>%n Clips</numerusform>
        </translation>
    </message>
    <message>
        <source>Taking the lesson in</source>
        <translation>Die Stunde wird aufgenommen</translation>
    </message>
    <message>
        <source>Exchanging through the folder</source>
        <translation>Austausch über den Ordner</translation>
    </message>
    <message>
        <source>It did not work; nothing is lost, and it is tried again.</source>
        <translation>Es ging nicht; nichts ist verloren, und es wird noch einmal versucht.</translation>
    </message>
    <message>
        <source>Waiting: the folder is not there now. What it misses is caught up with.</source>
        <translation>Wartet: der Ordner ist jetzt nicht da. Was ihm fehlt, wird nachgeholt.</translation>
    </message>
    <message>
        <source>Caught up at %1.</source>
        <translation>Auf dem Stand von %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) taken in</source>
        <translation>
            <numerusform>%n Datei aufgenommen</numerusform>
            <numerusform>%n Dateien aufgenommen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sent.</source>
        <comment>files</comment>
        <translation>
            <numerusform>%n gesendet.</numerusform>
            <numerusform>%n gesendet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to settle.</source>
        <translation>
            <numerusform>%n zu klären.</numerusform>
            <numerusform>%n zu klären.</numerusform>
        </translation>
    </message>
    <message>
        <source>Sending</source>
        <translation>Wird gesendet</translation>
    </message>
    <message>
        <source>Sent, and the other device has all of it.</source>
        <translation>Gesendet, und das andere Gerät hat alles.</translation>
    </message>
    <message>
        <source>This is no ticket of a sending; copy all of it, from plumbmark: to its end.</source>
        <translation>Das ist kein Schein einer Sendung; kopieren Sie ihn ganz, von plumbmark: bis zum Ende.</translation>
    </message>
    <message>
        <source>Receiving</source>
        <translation>Wird empfangen</translation>
    </message>
    <message>
        <source>Making a backup and opening it to check</source>
        <translation>Eine Sicherung wird gemacht und zur Probe geöffnet</translation>
    </message>
    <message numerus="yes">
        <source>Backup made and checked: %n lesson(s)</source>
        <translation>
            <numerusform>Sicherung gemacht und geprüft: %n Stunde</numerusform>
            <numerusform>Sicherung gemacht und geprüft: %n Stunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n clip(s).</source>
        <translation>
            <numerusform>%n Clip.</numerusform>
            <numerusform>%n Clips.</numerusform>
        </translation>
    </message>
    <message>
        <source>Checking the backup</source>
        <translation>Die Sicherung wird geprüft</translation>
    </message>
    <message numerus="yes">
        <source>The backup of %1 is whole: %n lesson(s).</source>
        <translation>
            <numerusform>Die Sicherung vom %1 ist unversehrt: %n Stunde.</numerusform>
            <numerusform>Die Sicherung vom %1 ist unversehrt: %n Stunden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Close the app and open it again: then it is put in place, and what is here now is kept among the backups.</source>
        <translation>Schließen Sie die App und öffnen Sie sie wieder: dann tritt sie an ihre Stelle, und was jetzt hier ist, bleibt bei den Sicherungen.</translation>
    </message>
    <message>
        <source>The library stays as it is.</source>
        <translation>Die Bibliothek bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>being filmed</source>
        <translation>gefilmt zu werden</translation>
    </message>
    <message>
        <source>being measured</source>
        <translation>gemessen zu werden</translation>
    </message>
    <message>
        <source>being kept here</source>
        <translation>hier aufbewahrt zu werden</translation>
    </message>
    <message>
        <source>lessons going to others</source>
        <translation>dass Stunden an andere gehen</translation>
    </message>
    <message>
        <source>being shown to other students</source>
        <translation>anderen Schülern gezeigt zu werden</translation>
    </message>
    <message>
        <source>the face being seen (asked of minors)</source>
        <translation>dass das Gesicht zu sehen ist (bei Minderjährigen gefragt)</translation>
    </message>
    <message>
        <source>No consent on record: nothing of this player goes to others.</source>
        <translation>Keine Zustimmung vermerkt: nichts von diesem Spieler geht an andere.</translation>
    </message>
    <message>
        <source>Withdrawn on %1.</source>
        <translation>Zurückgenommen am %1.</translation>
    </message>
    <message>
        <source>Given on %1, holds until %2.</source>
        <translation>Gegeben am %1, gilt bis %2.</translation>
    </message>
    <message>
        <source>Lessons may be shared.</source>
        <translation>Stunden dürfen weitergegeben werden.</translation>
    </message>
    <message>
        <source>%1 (minor), lesson of %2</source>
        <translation>%1 (minderjährig), Stunde vom %2</translation>
    </message>
    <message>
        <source>%1, lesson of %2</source>
        <translation>%1, Stunde vom %2</translation>
    </message>
    <message>
        <source>Erased with marks and numbers, here and at the next exchange elsewhere.</source>
        <translation>Mit Marken und Zahlen gelöscht, hier und beim nächsten Austausch auch anderswo.</translation>
    </message>
    <message>
        <source>Noted: nothing of this player goes to others from now on.</source>
        <translation>Vermerkt: von jetzt an geht nichts von diesem Spieler an andere.</translation>
    </message>
    <message>
        <source>Noted.</source>
        <translation>Vermerkt.</translation>
    </message>
    <message>
        <source>on this device, %1</source>
        <translation>auf diesem Gerät, %1</translation>
    </message>
    <message>
        <source>on another device, %1</source>
        <translation>auf einem anderen Gerät, %1</translation>
    </message>
    <message>
        <source>consent</source>
        <translation>Zustimmung</translation>
    </message>
    <message>
        <source>Settled; the other versions stay in the history.</source>
        <translation>Geklärt; die anderen Fassungen bleiben im Verlauf.</translation>
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
    <name>plumbmark::bridge::InboxModel</name>
    <message>
        <source>overdue by %1</source>
        <translation>überfällig seit %1</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>heute fällig</translation>
    </message>
    <message>
        <source>due in %1</source>
        <translation>fällig in %1</translation>
    </message>
    <message>
        <source>waits for you since %1</source>
        <translation>wartet auf Sie seit %1</translation>
    </message>
    <message>
        <source>films again since %1</source>
        <translation>filmt noch einmal seit %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>These clips were filmed as they should be; type the reason first.</source>
        <translation>Diese Clips sind so gefilmt, wie sie sollen; schreiben Sie zuerst den Grund.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tagen</numerusform>
        </translation>
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
    <name>plumbmark::bridge::ReviewModel</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Frame %1 of %2</source>
        <translation>Bild %1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>This device has no microphone: the review is kept without a voice.</source>
        <translation>Dieses Gerät hat kein Mikrofon: die Besprechung wird ohne Stimme behalten.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <translation>Abgebrochen; nichts wurde geschrieben.</translation>
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
