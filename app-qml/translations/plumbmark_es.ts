<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AdviceButton</name>
    <message>
        <source>Mark by hand: %1</source>
        <translation>Marcar a mano: %1</translation>
    </message>
</context>
<context>
    <name>BackupsPanel</name>
    <message>
        <source>Last backup: %1, %2.</source>
        <translation>Última copia de seguridad: %1, %2.</translation>
    </message>
    <message>
        <source>There is no backup yet.</source>
        <translation>Aún no hay copia de seguridad.</translation>
    </message>
    <message>
        <source>One is made at the first start of a day; the last 7 days and 4 weeks stay. They lie on this device: they guard against a mistake, not against a lost device. For that, exchange through a folder or make one on a stick.</source>
        <translation>Se hace una al abrir por primera vez en el día; quedan los últimos 7 días y 4 semanas. Están en este dispositivo: protegen de un error, no de perder el dispositivo. Para eso, intercambie por una carpeta o haga una en una memoria.</translation>
    </message>
    <message>
        <source>Make a backup now</source>
        <translation>Hacer una copia ahora</translation>
    </message>
    <message>
        <source>At the next start a backup is put in the library&apos;s place.</source>
        <translation>Al abrir de nuevo, una copia sustituirá a la biblioteca.</translation>
    </message>
    <message>
        <source>Close the app now</source>
        <translation>Cerrar la app ahora</translation>
    </message>
    <message>
        <source>Rather not: keep the library</source>
        <translation>Mejor no: conservar la biblioteca</translation>
    </message>
    <message>
        <source>Rather not</source>
        <translation>Mejor no</translation>
    </message>
    <message>
        <source>Put this one back</source>
        <translation>Recuperar esta</translation>
    </message>
    <message>
        <source>Check it and put it back at the next start</source>
        <translation>Comprobarla y recuperarla al abrir de nuevo</translation>
    </message>
    <message>
        <source>Lessons made since then are not in it. What is here now is kept among the backups, and what was erased stays erased.</source>
        <translation>Las clases dadas desde entonces no están en ella. Lo que hay ahora queda entre las copias, y lo borrado sigue borrado.</translation>
    </message>
</context>
<context>
    <name>BallWords</name>
    <message>
        <source>Pull hook</source>
        <translation>Pull hook</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>Pull</translation>
    </message>
    <message>
        <source>Pull slice</source>
        <translation>Pull slice</translation>
    </message>
    <message>
        <source>Hook</source>
        <translation>Hook</translation>
    </message>
    <message>
        <source>Straight</source>
        <translation>Recta</translation>
    </message>
    <message>
        <source>Slice</source>
        <translation>Slice</translation>
    </message>
    <message>
        <source>Push hook</source>
        <translation>Push hook</translation>
    </message>
    <message>
        <source>Push</source>
        <translation>Push</translation>
    </message>
    <message>
        <source>Push slice</source>
        <translation>Push slice</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Baja</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alta</translation>
    </message>
    <message>
        <source>Solid</source>
        <translation>Limpio</translation>
    </message>
    <message>
        <source>Heavy</source>
        <translation>Pesado</translation>
    </message>
    <message>
        <source>Thin</source>
        <translation>Fino</translation>
    </message>
    <message>
        <source>Topped</source>
        <translation>Topado</translation>
    </message>
    <message>
        <source>Heel</source>
        <translation>Talón</translation>
    </message>
    <message>
        <source>Toe</source>
        <translation>Punta</translation>
    </message>
    <message>
        <source>Shank</source>
        <translation>Socket</translation>
    </message>
    <message>
        <source>Missed</source>
        <translation>Al aire</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Adelante</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>En medio</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Mat</source>
        <translation>Alfombra</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Hierba</translation>
    </message>
    <message>
        <source>Sand</source>
        <translation>Arena</translation>
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
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Body card</source>
        <translation>Ficha corporal</translation>
    </message>
    <message>
        <source>%1, asked on %2</source>
        <translation>%1, preguntado el %2</translation>
    </message>
    <message>
        <source>Today: wait with full swings</source>
        <translation>Hoy: esperar con los swings completos</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Year of birth</source>
        <translation>Año de nacimiento</translation>
    </message>
    <message>
        <source>for example 1974</source>
        <translation>por ejemplo 1974</translation>
    </message>
    <message>
        <source>Most balls a day, where a clinician set a limit</source>
        <translation>Bolas al día como máximo, si un profesional sanitario puso un límite</translation>
    </message>
    <message>
        <source>Stop at once with sharp or sudden pain, numbness, weakness, pain running down a limb, locking, swelling, chest pain or dizziness; night pain counts too. Still there tomorrow: lighter, and see a physician or licensed physiotherapist.</source>
        <translation>Pare enseguida con dolor agudo o repentino, hormigueo, debilidad, dolor que baja por un brazo o una pierna, bloqueo, hinchazón, dolor en el pecho o mareo; el dolor nocturno también cuenta. Si mañana sigue: más suave, y acuda a un médico o fisioterapeuta colegiado.</translation>
    </message>
    <message>
        <source>Look around before every swing, stand away from the ball&apos;s line, and leave the range in lightning. The card stays on this device; it does not travel with a lesson. It is never a diagnosis.</source>
        <translation>Mire alrededor antes de cada swing, aléjese de la línea de la bola y abandone el campo si hay rayos. La ficha queda en este dispositivo; no viaja con ninguna clase. Nunca es un diagnóstico.</translation>
    </message>
</context>
<context>
    <name>BodyNotesPanel</name>
    <message>
        <source>For the body</source>
        <translation>Para el cuerpo</translation>
    </message>
    <message>
        <source>Grounds: %1</source>
        <translation>Fundamento: %1</translation>
    </message>
    <message>
        <source>Film shows posture, not load. No caution here is not a clean bill of health: with pain, numbness or doubt, stop and see a physician or licensed physiotherapist.</source>
        <translation>El vídeo muestra posturas, no cargas. Que no haya aviso no significa que todo esté bien: con dolor, hormigueo o duda, pare y acuda a un médico o fisioterapeuta colegiado.</translation>
    </message>
    <message>
        <source>About this clip</source>
        <translation>Sobre este clip</translation>
    </message>
</context>
<context>
    <name>BringInPage</name>
    <message>
        <source>Bring in a clip</source>
        <translation>Traer un clip</translation>
    </message>
</context>
<context>
    <name>CauseLink</name>
    <message>
        <source>tends to cause</source>
        <translation>suele causar</translation>
    </message>
</context>
<context>
    <name>CausePanel</name>
    <message>
        <source>What the program proposed stays on record below.</source>
        <translation>Lo que propuso el programa queda anotado abajo.</translation>
    </message>
    <message>
        <source>The student thinks: “%1”</source>
        <translation>El alumno cree: «%1»</translation>
    </message>
    <message>
        <source>Answer to the student: %1</source>
        <translation>Respuesta al alumno: %1</translation>
    </message>
    <message>
        <source>Could come first instead</source>
        <translation>Podría ir primero en su lugar</translation>
    </message>
    <message>
        <source>%1 (unclear)</source>
        <translation>%1 (no está claro)</translation>
    </message>
    <message>
        <source>Could lie before it and cannot be told yet</source>
        <translation>Podría estar antes y aún no se puede saber</translation>
    </message>
    <message>
        <source>What do you say?</source>
        <translation>¿Qué dice usted?</translation>
    </message>
    <message>
        <source>Why (may stay empty)</source>
        <translation>Por qué (puede quedar vacío)</translation>
    </message>
    <message>
        <source>I agree</source>
        <translation>De acuerdo</translation>
    </message>
    <message>
        <source>First: %1</source>
        <translation>Primero: %1</translation>
    </message>
    <message>
        <source>Keep it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
    <message>
        <source>Something else comes first</source>
        <translation>Otra cosa va primero</translation>
    </message>
    <message>
        <source>Comes first: %1, %2</source>
        <translation>Va primero: %1, %2</translation>
    </message>
</context>
<context>
    <name>CheckDelegate</name>
    <message>
        <source>Good: %1 (%2)</source>
        <translation>Bien: %1 (%2)</translation>
    </message>
    <message>
        <source>Good: %1</source>
        <translation>Bien: %1</translation>
    </message>
    <message>
        <source>How sure of “%1”: %2</source>
        <translation>Seguridad de «%1»: %2</translation>
    </message>
    <message>
        <source>Measured from:</source>
        <translation>Medido a partir de:</translation>
    </message>
    <message>
        <source>Dotted green: where it would be at the near edge of the range.</source>
        <translation>Verde punteado: dónde estaría en el límite cercano del margen.</translation>
    </message>
</context>
<context>
    <name>CodeReaderPanel</name>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Hold the camera so that the code fills a third of the picture.</source>
        <translation>Sostenga la cámara de modo que el código llene un tercio de la imagen.</translation>
    </message>
    <message>
        <source>Stop the camera</source>
        <translation>Parar la cámara</translation>
    </message>
    <message>
        <source>Read the code with the camera</source>
        <translation>Leer el código con la cámara</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>%1, same position by: %2</source>
        <translation>%1, misma posición según: %2</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Lado a lado</translation>
    </message>
    <message>
        <source>Lay one over the other</source>
        <translation>Superponer</translation>
    </message>
    <message>
        <source>Hide the marks</source>
        <translation>Ocultar las marcas</translation>
    </message>
    <message>
        <source>Show the marks</source>
        <translation>Mostrar las marcas</translation>
    </message>
</context>
<context>
    <name>ComparePanel</name>
    <message>
        <source>Differences</source>
        <translation>Diferencias</translation>
    </message>
    <message>
        <source>Swings</source>
        <translation>Swings</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Emparejar</translation>
    </message>
    <message>
        <source>This swing against %1</source>
        <translation>Este swing frente a %1</translation>
    </message>
    <message>
        <source>Swings to compare with</source>
        <translation>Swings para comparar</translation>
    </message>
    <message>
        <source>Compare with %1, %2, %3</source>
        <translation>Comparar con %1, %2, %3</translation>
    </message>
    <message>
        <source>There is no other swing of this view and kind of shot yet.</source>
        <translation>Aún no hay otro swing de esta vista y este tipo de golpe.</translation>
    </message>
    <message>
        <source>Same position means the same</source>
        <translation>Misma posición significa lo mismo en</translation>
    </message>
    <message>
        <source>Address, top, impact and finish are put together. What the swings are matched by is left out of the table: there they are the same by choice.</source>
        <translation>Se hacen coincidir colocación, punto alto, impacto y final. Lo que sirve para emparejar no sale en la tabla: ahí son iguales por elección.</translation>
    </message>
    <message>
        <source>Differences beyond doubt: %1</source>
        <translation>Diferencias sin duda: %1</translation>
    </message>
</context>
<context>
    <name>CompareStage</name>
    <message>
        <source>This swing, %1</source>
        <translation>Este swing, %1</translation>
    </message>
    <message>
        <source>Other swing laid over, %1 %</source>
        <translation>Otro swing superpuesto, %1 %</translation>
    </message>
    <message>
        <source>Other swing, %1</source>
        <translation>Otro swing, %1</translation>
    </message>
    <message>
        <source>This swing</source>
        <translation>Este swing</translation>
    </message>
    <message>
        <source>Other swing: does not show this position</source>
        <translation>Otro swing: no muestra esta posición</translation>
    </message>
    <message>
        <source>Other swing</source>
        <translation>Otro swing</translation>
    </message>
    <message>
        <source>Opening the swing</source>
        <translation>Abriendo el swing</translation>
    </message>
    <message>
        <source>There is no other swing of this view and kind of shot yet. Bring one in, then compare.</source>
        <translation>Aún no hay otro swing de esta vista y este tipo de golpe. Traiga uno y compare.</translation>
    </message>
    <message>
        <source>Opening the swing, %1 per cent</source>
        <translation>Abriendo el swing, %1 por ciento</translation>
    </message>
    <message>
        <source>How much of the other swing</source>
        <translation>Cuánto del otro swing</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Lado a lado</translation>
    </message>
    <message>
        <source>Lay one over the other</source>
        <translation>Superponer</translation>
    </message>
    <message>
        <source>Show the whole pictures</source>
        <translation>Mostrar las imágenes enteras</translation>
    </message>
    <message>
        <source>Show the players larger</source>
        <translation>Mostrar a los jugadores más grandes</translation>
    </message>
    <message>
        <source>Hide the marks</source>
        <translation>Ocultar las marcas</translation>
    </message>
    <message>
        <source>Show the marks</source>
        <translation>Mostrar las marcas</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation>No se ve</translation>
    </message>
</context>
<context>
    <name>CompareTransport</name>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play both slowly</source>
        <translation>Reproducir ambos despacio</translation>
    </message>
    <message>
        <source>Place in this swing</source>
        <translation>Lugar en este swing</translation>
    </message>
    <message>
        <source>One frame back</source>
        <translation>Un fotograma atrás</translation>
    </message>
    <message>
        <source>One frame on</source>
        <translation>Un fotograma adelante</translation>
    </message>
</context>
<context>
    <name>ConsentPanel</name>
    <message>
        <source>Player</source>
        <translation>Jugador</translation>
    </message>
    <message>
        <source>There is no player yet.</source>
        <translation>Aún no hay ningún jugador.</translation>
    </message>
    <message>
        <source>Agreed to</source>
        <translation>Se ha consentido</translation>
    </message>
    <message>
        <source>A minor: a guardian agrees</source>
        <translation>Menor: consiente un tutor</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>Tutor</translation>
    </message>
    <message>
        <source>Last day (a minor&apos;s consent: one year at most)</source>
        <translation>Último día (en menores, un año como máximo)</translation>
    </message>
    <message>
        <source>Note the consent</source>
        <translation>Anotar el consentimiento</translation>
    </message>
    <message>
        <source>Consent was withdrawn</source>
        <translation>Se retiró el consentimiento</translation>
    </message>
    <message>
        <source>Kept past its time (90 days for minors, a year for others)</source>
        <translation>Guardado más allá de su plazo (90 días en menores, un año en los demás)</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Conservarlo</translation>
    </message>
    <message>
        <source>Erase the clip</source>
        <translation>Borrar el clip</translation>
    </message>
    <message>
        <source>Erase it for good</source>
        <translation>Borrarlo para siempre</translation>
    </message>
    <message>
        <source>This is a note of what was agreed, not legal advice.</source>
        <translation>Es una nota de lo acordado, no asesoramiento legal.</translation>
    </message>
</context>
<context>
    <name>CopyLines</name>
    <message>
        <source>Line of address over the whole swing</source>
        <translation>Línea de la colocación por todo el swing</translation>
    </message>
    <message>
        <source>Copy from address: %1</source>
        <translation>Copiar de la colocación: %1</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>Stance width</source>
        <translation>Anchura del stance</translation>
    </message>
    <message>
        <source>The stance suits the club; keep it.</source>
        <translation>El stance va bien con el palo; manténgalo.</translation>
    </message>
    <message>
        <source>Stand %1 wider.</source>
        <translation>Separe los pies %1 más.</translation>
    </message>
    <message>
        <source>Stand %1 narrower.</source>
        <translation>Junte los pies %1.</translation>
    </message>
    <message>
        <source>Mark both ankles and shoulders at address by hand.</source>
        <translation>Marque a mano ambos tobillos y hombros en la colocación.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>common practice, no source (between the named clubs)</source>
        <translation>práctica habitual, sin fuente (entre los palos citados)</translation>
    </message>
    <message>
        <source>Ball position</source>
        <translation>Posición de la bola</translation>
    </message>
    <message>
        <source>The ball lies where this club wants it; keep it.</source>
        <translation>La bola está donde la pide este palo; manténgala.</translation>
    </message>
    <message>
        <source>Play the ball %1 farther back, toward the trail foot.</source>
        <translation>Juegue la bola %1 más atrás, hacia el pie trasero.</translation>
    </message>
    <message>
        <source>Play the ball %1 farther forward, toward the lead foot.</source>
        <translation>Juegue la bola %1 más adelante, hacia el pie delantero.</translation>
    </message>
    <message>
        <source>Mark the ball and both ankles at address by hand.</source>
        <translation>Marque a mano la bola y ambos tobillos en la colocación.</translation>
    </message>
    <message>
        <source>Spine tilt at address</source>
        <translation>Inclinación de la columna en la colocación</translation>
    </message>
    <message>
        <source>The spine leans as this club wants it; keep it.</source>
        <translation>La columna se inclina como pide este palo; manténgalo.</translation>
    </message>
    <message>
        <source>Let the lead hip move a little toward the target until the spine leans %1 more away from it.</source>
        <translation>Lleve la cadera delantera un poco hacia el objetivo hasta que la columna se incline %1 más en sentido contrario.</translation>
    </message>
    <message>
        <source>Stand %1 more upright over the ball, seen from the front.</source>
        <translation>Visto de frente, colóquese %1 más erguido sobre la bola.</translation>
    </message>
    <message>
        <source>Mark the joints by hand in that frame, or film again from the front at hand height, 4 to 5 metres away.</source>
        <translation>Marque a mano las articulaciones en ese fotograma o grabe de nuevo de frente, a la altura de las manos y a 4 o 5 metros.</translation>
    </message>
    <message>
        <source>Spine tilt, address to top</source>
        <translation>Inclinación de la columna, de la colocación al punto alto</translation>
    </message>
    <message>
        <source>The spine keeps its lean going back; keep it.</source>
        <translation>La columna conserva su inclinación en la subida; manténgalo.</translation>
    </message>
    <message>
        <source>The trunk tips toward the target going back, %1 too much: turn around the spine you set up with.</source>
        <translation>El tronco se vence hacia el objetivo en la subida, %1 de más: gire alrededor de la columna con la que se colocó.</translation>
    </message>
    <message>
        <source>The trunk leans back %1 too much going back: keep the chest over its place.</source>
        <translation>El tronco se echa atrás %1 de más en la subida: mantenga el pecho sobre su sitio.</translation>
    </message>
    <message>
        <source>Spine at the top not toward the target</source>
        <translation>Columna en el punto alto, no hacia el objetivo</translation>
    </message>
    <message>
        <source>At the top the spine does not lean toward the target; keep it.</source>
        <translation>En el punto alto la columna no se inclina hacia el objetivo; manténgalo.</translation>
    </message>
    <message>
        <source>At the top the spine leans toward the target: let the head stay back while the trail hip turns behind you.</source>
        <translation>En el punto alto la columna se inclina hacia el objetivo: deje la cabeza atrás mientras la cadera trasera gira hacia atrás.</translation>
    </message>
    <message>
        <source>Spine tilt, address to impact</source>
        <translation>Inclinación de la columna, de la colocación al impacto</translation>
    </message>
    <message>
        <source>The spine leans back through impact as it should; keep it.</source>
        <translation>La columna se inclina atrás en el impacto como debe; manténgalo.</translation>
    </message>
    <message>
        <source>The chest runs ahead of the ball: let it stay back by %1 more through impact.</source>
        <translation>El pecho se adelanta a la bola: déjelo %1 más atrás en el impacto.</translation>
    </message>
    <message>
        <source>The trunk leans back %1 too much at impact: let the chest turn through over the lead leg.</source>
        <translation>El tronco se echa atrás %1 de más en el impacto: deje que el pecho gire sobre la pierna delantera.</translation>
    </message>
    <message>
        <source>Head travel to the top</source>
        <translation>Movimiento de la cabeza hasta el punto alto</translation>
    </message>
    <message>
        <source>The head stays put going back; keep it.</source>
        <translation>La cabeza no se mueve en la subida; manténgalo.</translation>
    </message>
    <message>
        <source>The head drifts away from the target, %1 too far: turn in place.</source>
        <translation>La cabeza se aleja del objetivo %1 de más: gire en el sitio.</translation>
    </message>
    <message>
        <source>The head moves toward the target going back, %1 too far: let it stay behind the ball.</source>
        <translation>La cabeza va hacia el objetivo en la subida %1 de más: déjela detrás de la bola.</translation>
    </message>
    <message>
        <source>Mark the head centre at address and at the top by hand.</source>
        <translation>Marque a mano el centro de la cabeza en la colocación y en el punto alto.</translation>
    </message>
    <message>
        <source>Head inside the trail ankle at the top</source>
        <translation>Cabeza por dentro del tobillo trasero en el punto alto</translation>
    </message>
    <message>
        <source>At the top the head stays inside the trail foot; keep it.</source>
        <translation>En el punto alto la cabeza queda por dentro del pie trasero; manténgalo.</translation>
    </message>
    <message>
        <source>At the top the head hangs over the trail foot: keep it %1 farther inside; a slightly wider stance often does it.</source>
        <translation>En el punto alto la cabeza cuelga sobre el pie trasero: déjela %1 más adentro; a menudo basta un stance algo más ancho.</translation>
    </message>
    <message>
        <source>Mark the head centre and the trail ankle at the top by hand.</source>
        <translation>Marque a mano el centro de la cabeza y el tobillo trasero en el punto alto.</translation>
    </message>
    <message>
        <source>Pelvis shift going back</source>
        <translation>Desplazamiento de la pelvis en la subida</translation>
    </message>
    <message>
        <source>The pelvis turns without drifting back; keep it.</source>
        <translation>La pelvis gira sin irse atrás; manténgalo.</translation>
    </message>
    <message>
        <source>The pelvis drifts away from the target, %1 too far: turn the trail hip back instead.</source>
        <translation>La pelvis se aleja del objetivo %1 de más: gire la cadera trasera hacia atrás en su lugar.</translation>
    </message>
    <message>
        <source>Lead-side line at impact</source>
        <translation>Línea del lado delantero en el impacto</translation>
    </message>
    <message>
        <source>Lead ankle, hip and shoulder stand well through impact; keep it.</source>
        <translation>Tobillo, cadera y hombro delanteros están bien en el impacto; manténgalo.</translation>
    </message>
    <message>
        <source>The lead shoulder is ahead of the lead foot: let it stay %1 farther back through impact.</source>
        <translation>El hombro delantero se adelanta al pie delantero: déjelo %1 más atrás en el impacto.</translation>
    </message>
    <message>
        <source>The upper body stays too far behind the lead foot: let it come forward by %1 while turning.</source>
        <translation>El tronco se queda muy por detrás del pie delantero: deje que avance %1 mientras gira.</translation>
    </message>
    <message>
        <source>Lead hip on the lead-side line</source>
        <translation>Cadera delantera en la línea del lado delantero</translation>
    </message>
    <message>
        <source>The lead hip turns on the line from ankle to shoulder; keep it.</source>
        <translation>La cadera delantera gira sobre la línea de tobillo a hombro; manténgalo.</translation>
    </message>
    <message>
        <source>The lead hip is pushed %1 too far toward the target: turn it back and around instead of sliding.</source>
        <translation>La cadera delantera se empuja %1 de más hacia el objetivo: gírela atrás y alrededor en vez de deslizarla.</translation>
    </message>
    <message>
        <source>Pelvis turn at the top</source>
        <translation>Giro de la pelvis en el punto alto</translation>
    </message>
    <message>
        <source>The pelvis turns enough going back; keep it.</source>
        <translation>La pelvis gira lo suficiente en la subida; manténgalo.</translation>
    </message>
    <message>
        <source>The pelvis turns %1 too far going back: feel more of the turn in the chest.</source>
        <translation>La pelvis gira %1 de más en la subida: sienta más el giro en el pecho.</translation>
    </message>
    <message>
        <source>The pelvis turns %1 too little going back: let the trail hip move behind you.</source>
        <translation>La pelvis gira %1 de menos en la subida: deje que la cadera trasera vaya hacia atrás.</translation>
    </message>
    <message>
        <source>Mark belt buckle and shirt buttons by hand, or put an alignment stick through the belt loops.</source>
        <translation>Marque a mano la hebilla y los botones de la camisa, o pase una varilla por las trabillas del cinturón.</translation>
    </message>
    <message>
        <source>Pelvis open at impact</source>
        <translation>Pelvis abierta en el impacto</translation>
    </message>
    <message>
        <source>The pelvis is open at impact; keep it.</source>
        <translation>La pelvis está abierta en el impacto; manténgalo.</translation>
    </message>
    <message>
        <source>Let the pelvis open %1 more before the ball: lead hip back and around.</source>
        <translation>Deje que la pelvis se abra %1 más antes de la bola: cadera delantera atrás y alrededor.</translation>
    </message>
    <message>
        <source>The pelvis is already %1 past the usual range at impact; watch that the arms keep up.</source>
        <translation>La pelvis ya está %1 más allá de lo habitual en el impacto; vigile que los brazos la sigan.</translation>
    </message>
    <message>
        <source>common practice; published: tour average 42, typical club players 15-25</source>
        <translation>práctica habitual; publicado: media del circuito 42, jugadores de club 15-25</translation>
    </message>
    <message>
        <source>Shoulder turn at the top</source>
        <translation>Giro de hombros en el punto alto</translation>
    </message>
    <message>
        <source>The shoulders turn fully; keep it.</source>
        <translation>Los hombros giran por completo; manténgalo.</translation>
    </message>
    <message>
        <source>The shoulders turn %1 too far: stop where the chest stops.</source>
        <translation>Los hombros giran %1 de más: pare donde pare el pecho.</translation>
    </message>
    <message>
        <source>Turn the shoulders %1 more: lead shoulder under the chin.</source>
        <translation>Gire los hombros %1 más: hombro delantero bajo la barbilla.</translation>
    </message>
    <message>
        <source>Mark both shoulders at the top by hand.</source>
        <translation>Marque a mano ambos hombros en el punto alto.</translation>
    </message>
    <message>
        <source>Chest turn at the top</source>
        <translation>Giro del pecho en el punto alto</translation>
    </message>
    <message>
        <source>The chest turns fully; keep it.</source>
        <translation>El pecho gira por completo; manténgalo.</translation>
    </message>
    <message>
        <source>The chest turns %1 too far.</source>
        <translation>El pecho gira %1 de más.</translation>
    </message>
    <message>
        <source>Turn the chest %1 more.</source>
        <translation>Gire el pecho %1 más.</translation>
    </message>
    <message>
        <source>Shaft lean at impact</source>
        <translation>Inclinación de la varilla en el impacto</translation>
    </message>
    <message>
        <source>The handle leads as this club wants it; keep it.</source>
        <translation>Las manos van por delante como pide este palo; manténgalo.</translation>
    </message>
    <message>
        <source>At impact the handle should be %1 farther forward.</source>
        <translation>En el impacto el grip debería ir %1 más adelante.</translation>
    </message>
    <message>
        <source>At impact the handle is %1 too far forward.</source>
        <translation>En el impacto el grip va %1 demasiado adelante.</translation>
    </message>
    <message>
        <source>Film at 240 frames per second with a short shutter time and the ball in the middle of the picture.</source>
        <translation>Grabe a 240 imágenes por segundo, con obturación corta y la bola en el centro de la imagen.</translation>
    </message>
    <message>
        <source>Wrist set kept to delivery</source>
        <translation>Ángulo de muñecas mantenido hasta la entrega</translation>
    </message>
    <message>
        <source>The wrists keep their set to delivery; keep it.</source>
        <translation>Las muñecas mantienen su ángulo hasta la entrega; manténgalo.</translation>
    </message>
    <message>
        <source>The club is let out early on the way down: keep the wrists set %1 longer, hands to the trail thigh first.</source>
        <translation>El palo se suelta pronto en la bajada: mantenga las muñecas cargadas %1 más, primero las manos al muslo trasero.</translation>
    </message>
    <message>
        <source>Film at 240 frames per second; mark lead elbow, lead wrist and the shaft at both moments by hand.</source>
        <translation>Grabe a 240 imágenes por segundo; marque a mano codo y muñeca delanteros y la varilla en ambos momentos.</translation>
    </message>
    <message>
        <source>Wrist set not before the arm is level</source>
        <translation>Muñecas sin cargar antes de que el brazo esté horizontal</translation>
    </message>
    <message>
        <source>The wrists set with the turn; keep it.</source>
        <translation>Las muñecas se cargan con el giro; manténgalo.</translation>
    </message>
    <message>
        <source>The wrists set early, before the lead arm is level; some teachers like that, some do not.</source>
        <translation>Las muñecas se cargan pronto, antes de que el brazo delantero esté horizontal; a unos profesores les gusta y a otros no.</translation>
    </message>
    <message>
        <source>Film at 120 frames per second or more; mark lead elbow, wrist and shaft going back by hand.</source>
        <translation>Grabe a 120 imágenes por segundo o más; marque a mano codo y muñeca delanteros y la varilla en la subida.</translation>
    </message>
    <message>
        <source>one school&apos;s view, no source</source>
        <translation>opinión de una escuela, sin fuente</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Suelta del palo</translation>
    </message>
    <message>
        <source>The club passes the forearms with the turn; keep it.</source>
        <translation>El palo adelanta a los antebrazos con el giro; manténgalo.</translation>
    </message>
    <message>
        <source>The club is held back after the ball: let it swing past the forearms.</source>
        <translation>El palo se retiene después de la bola: deje que pase los antebrazos.</translation>
    </message>
    <message>
        <source>The club passes the hands early: keep the chest turning and the handle moving.</source>
        <translation>El palo adelanta pronto a las manos: siga girando el pecho y moviendo el grip.</translation>
    </message>
    <message>
        <source>Mark elbows, wrists and the shaft just after impact by hand.</source>
        <translation>Marque a mano codos, muñecas y varilla justo después del impacto.</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Ritmo</translation>
    </message>
    <message>
        <source>Backswing and downswing are in proportion; keep it.</source>
        <translation>Subida y bajada guardan proporción; manténgalo.</translation>
    </message>
    <message>
        <source>The backswing is quick for this downswing: take %1 of a beat more going back.</source>
        <translation>La subida es rápida para esta bajada: tómese %1 de tiempo más al subir.</translation>
    </message>
    <message>
        <source>The backswing is slow for this downswing: start back a little livelier.</source>
        <translation>La subida es lenta para esta bajada: empiece un poco más vivo.</translation>
    </message>
    <message>
        <source>Film at 120 frames per second or more.</source>
        <translation>Grabe a 120 imágenes por segundo o más.</translation>
    </message>
    <message>
        <source>common practice; published: tour players near 3 to 1</source>
        <translation>práctica habitual; publicado: jugadores del circuito cerca de 3 a 1</translation>
    </message>
    <message>
        <source>Finish: head over the lead foot</source>
        <translation>Final: cabeza sobre el pie delantero</translation>
    </message>
    <message>
        <source>In the finish the head stands over the lead foot; keep it.</source>
        <translation>En el final la cabeza está sobre el pie delantero; manténgalo.</translation>
    </message>
    <message>
        <source>In the finish the head stays %1 behind the lead foot: walk through until it stands over it.</source>
        <translation>En el final la cabeza queda %1 detrás del pie delantero: siga hasta que esté encima.</translation>
    </message>
    <message>
        <source>In the finish the head runs %1 past the lead foot: finish tall on it.</source>
        <translation>En el final la cabeza pasa %1 del pie delantero: termine erguido sobre él.</translation>
    </message>
    <message>
        <source>Film until the finish stands still.</source>
        <translation>Grabe hasta que el final quede quieto.</translation>
    </message>
    <message>
        <source>Finish: trail foot on its toe</source>
        <translation>Final: pie trasero de puntillas</translation>
    </message>
    <message>
        <source>In the finish the trail foot stands on its toe; keep it.</source>
        <translation>En el final el pie trasero está de puntillas; manténgalo.</translation>
    </message>
    <message>
        <source>Let the trail heel come up until the laces face the target.</source>
        <translation>Deje subir el talón trasero hasta que los cordones miren al objetivo.</translation>
    </message>
    <message>
        <source>Film until the finish stands still, with both feet in the picture.</source>
        <translation>Grabe hasta que el final quede quieto, con ambos pies en la imagen.</translation>
    </message>
    <message>
        <source>Finish: pelvis facing the target</source>
        <translation>Final: pelvis de cara al objetivo</translation>
    </message>
    <message>
        <source>In the finish the belt faces the target; keep it.</source>
        <translation>En el final el cinturón mira al objetivo; manténgalo.</translation>
    </message>
    <message>
        <source>Let the belt buckle turn %1 more toward the target.</source>
        <translation>Deje que la hebilla gire %1 más hacia el objetivo.</translation>
    </message>
    <message>
        <source>Finish: chest facing the target</source>
        <translation>Final: pecho de cara al objetivo</translation>
    </message>
    <message>
        <source>In the finish the chest faces the target; keep it.</source>
        <translation>En el final el pecho mira al objetivo; manténgalo.</translation>
    </message>
    <message>
        <source>Let the chest turn %1 more toward the target.</source>
        <translation>Deje que el pecho gire %1 más hacia el objetivo.</translation>
    </message>
    <message>
        <source>Forward bend kept to impact</source>
        <translation>Flexión del tronco mantenida hasta el impacto</translation>
    </message>
    <message>
        <source>The forward bend is kept; keep it.</source>
        <translation>Se mantiene la flexión del tronco; siga así.</translation>
    </message>
    <message>
        <source>The trunk stands up by %1 too much before the ball: keep the seat back.</source>
        <translation>El tronco se levanta %1 de más antes de la bola: deje el trasero atrás.</translation>
    </message>
    <message>
        <source>The trunk dips %1 too far before the ball.</source>
        <translation>El tronco se hunde %1 de más antes de la bola.</translation>
    </message>
    <message>
        <source>Mark hips and shoulders at address and impact by hand.</source>
        <translation>Marque a mano caderas y hombros en la colocación y en el impacto.</translation>
    </message>
    <message>
        <source>Pelvis depth at impact</source>
        <translation>Profundidad de la pelvis en el impacto</translation>
    </message>
    <message>
        <source>The seat stays back; keep it.</source>
        <translation>El trasero queda atrás; manténgalo.</translation>
    </message>
    <message>
        <source>The pelvis moves %1 toward the ball: keep the seat against the wall behind you.</source>
        <translation>La pelvis va %1 hacia la bola: deje el trasero contra la pared de detrás.</translation>
    </message>
    <message>
        <source>Mark the rear outline of the pelvis at address and impact by hand.</source>
        <translation>Marque a mano el contorno trasero de la pelvis en la colocación y en el impacto.</translation>
    </message>
    <message>
        <source>Hands&apos; path starting down</source>
        <translation>Camino de las manos al empezar la bajada</translation>
    </message>
    <message>
        <source>The hands come down on or inside their way back; keep it.</source>
        <translation>Las manos bajan por su camino o por dentro; manténgalo.</translation>
    </message>
    <message>
        <source>The hands start down %1 outside their way back: let them drop before the chest turns.</source>
        <translation>Las manos empiezan a bajar %1 por fuera de su camino: déjelas caer antes de que gire el pecho.</translation>
    </message>
    <message>
        <source>Mark the hands going back and coming down by hand.</source>
        <translation>Marque a mano las manos en la subida y en la bajada.</translation>
    </message>
    <message>
        <source>Pitch: shaft lean</source>
        <translation>Pitch: inclinación de la varilla</translation>
    </message>
    <message>
        <source>The handle leads a little; keep it.</source>
        <translation>El grip va un poco por delante; manténgalo.</translation>
    </message>
    <message>
        <source>Let the handle be %1 farther forward at impact.</source>
        <translation>Lleve el grip %1 más adelante en el impacto.</translation>
    </message>
    <message>
        <source>The handle is %1 too far forward at impact.</source>
        <translation>El grip va %1 demasiado adelante en el impacto.</translation>
    </message>
    <message>
        <source>Film at 240 frames per second with a short shutter time.</source>
        <translation>Grabe a 240 imágenes por segundo con obturación corta.</translation>
    </message>
    <message>
        <source>Pitch: ball position</source>
        <translation>Pitch: posición de la bola</translation>
    </message>
    <message>
        <source>The ball lies near the middle; keep it.</source>
        <translation>La bola está cerca del centro; manténgala.</translation>
    </message>
    <message>
        <source>Play the ball %1 farther back.</source>
        <translation>Juegue la bola %1 más atrás.</translation>
    </message>
    <message>
        <source>Play the ball %1 farther forward.</source>
        <translation>Juegue la bola %1 más adelante.</translation>
    </message>
    <message>
        <source>Pitch: quiet wrists</source>
        <translation>Pitch: muñecas quietas</translation>
    </message>
    <message>
        <source>The wrists stay quiet; keep it.</source>
        <translation>Las muñecas están quietas; manténgalo.</translation>
    </message>
    <message>
        <source>Set the wrists %1 less for this distance.</source>
        <translation>Cargue las muñecas %1 menos para esta distancia.</translation>
    </message>
    <message>
        <source>Mark lead elbow, wrist and shaft at the top by hand.</source>
        <translation>Marque a mano codo, muñeca y varilla en el punto alto.</translation>
    </message>
    <message>
        <source>Pitch: head still</source>
        <translation>Pitch: cabeza quieta</translation>
    </message>
    <message>
        <source>The head stays put; keep it.</source>
        <translation>La cabeza no se mueve; manténgalo.</translation>
    </message>
    <message>
        <source>The head falls back by %1 too much.</source>
        <translation>La cabeza se va atrás %1 de más.</translation>
    </message>
    <message>
        <source>The head runs forward by %1 too much.</source>
        <translation>La cabeza se va adelante %1 de más.</translation>
    </message>
    <message>
        <source>Mark the head centre at address and impact by hand.</source>
        <translation>Marque a mano el centro de la cabeza en la colocación y en el impacto.</translation>
    </message>
    <message>
        <source>Chip: shaft lean</source>
        <translation>Chip: inclinación de la varilla</translation>
    </message>
    <message>
        <source>The handle leads; keep it.</source>
        <translation>El grip va por delante; manténgalo.</translation>
    </message>
    <message>
        <source>Chip: head still</source>
        <translation>Chip: cabeza quieta</translation>
    </message>
    <message>
        <source>Chip: body mass over the lead foot</source>
        <translation>Chip: cuerpo sobre el pie delantero</translation>
    </message>
    <message>
        <source>The body stays over the lead foot; keep it.</source>
        <translation>El cuerpo se queda sobre el pie delantero; manténgalo.</translation>
    </message>
    <message>
        <source>Stand %1 more over the lead foot and stay there.</source>
        <translation>Colóquese %1 más sobre el pie delantero y quédese ahí.</translation>
    </message>
    <message>
        <source>Bunker: ball position</source>
        <translation>Búnker: posición de la bola</translation>
    </message>
    <message>
        <source>The ball lies forward; keep it.</source>
        <translation>La bola está adelantada; manténgala.</translation>
    </message>
    <message>
        <source>Bunker: stance width</source>
        <translation>Búnker: anchura del stance</translation>
    </message>
    <message>
        <source>The stance is steady; keep it.</source>
        <translation>El stance es firme; manténgalo.</translation>
    </message>
    <message>
        <source>Putt: pelvis still</source>
        <translation>Putt: pelvis quieta</translation>
    </message>
    <message>
        <source>The pelvis stays still; keep it.</source>
        <translation>La pelvis está quieta; manténgalo.</translation>
    </message>
    <message>
        <source>The pelvis moves %1 away from the target.</source>
        <translation>La pelvis se aleja %1 del objetivo.</translation>
    </message>
    <message>
        <source>The pelvis moves %1 toward the target.</source>
        <translation>La pelvis va %1 hacia el objetivo.</translation>
    </message>
    <message>
        <source>Putt: head still</source>
        <translation>Putt: cabeza quieta</translation>
    </message>
    <message>
        <source>The head stays still; keep it.</source>
        <translation>La cabeza está quieta; manténgalo.</translation>
    </message>
    <message>
        <source>The head moves %1 away from the target.</source>
        <translation>La cabeza se aleja %1 del objetivo.</translation>
    </message>
    <message>
        <source>The head moves %1 toward the target.</source>
        <translation>La cabeza va %1 hacia el objetivo.</translation>
    </message>
    <message>
        <source>Putt: tempo</source>
        <translation>Putt: ritmo</translation>
    </message>
    <message>
        <source>The stroke is even; keep it.</source>
        <translation>El golpe es regular; manténgalo.</translation>
    </message>
    <message>
        <source>The stroke back is quick for the stroke through.</source>
        <translation>La ida es rápida para la vuelta del golpe.</translation>
    </message>
    <message>
        <source>The stroke back is slow for the stroke through.</source>
        <translation>La ida es lenta para la vuelta del golpe.</translation>
    </message>
    <message>
        <source>Practice swing: head travel to the top</source>
        <translation>Swing de práctica: movimiento de la cabeza hasta el punto alto</translation>
    </message>
    <message>
        <source>The head drifts away from the target, %1 too far.</source>
        <translation>La cabeza se aleja del objetivo %1 de más.</translation>
    </message>
    <message>
        <source>The head moves toward the target going back, %1 too far.</source>
        <translation>La cabeza va hacia el objetivo en la subida %1 de más.</translation>
    </message>
    <message>
        <source>Practice swing: head inside the trail ankle at the top</source>
        <translation>Swing de práctica: cabeza por dentro del tobillo trasero en el punto alto</translation>
    </message>
    <message>
        <source>At the top keep the head %1 farther inside the trail foot.</source>
        <translation>En el punto alto deje la cabeza %1 más por dentro del pie trasero.</translation>
    </message>
    <message>
        <source>Practice swing: head over the lead foot</source>
        <translation>Swing de práctica: cabeza sobre el pie delantero</translation>
    </message>
    <message>
        <source>In the finish the head stays %1 behind the lead foot.</source>
        <translation>En el final la cabeza queda %1 detrás del pie delantero.</translation>
    </message>
    <message>
        <source>In the finish the head runs %1 past the lead foot.</source>
        <translation>En el final la cabeza pasa %1 del pie delantero.</translation>
    </message>
    <message>
        <source>Chest&apos;s share of the move toward the target starting down</source>
        <translation>Parte del pecho en el movimiento hacia el objetivo al empezar la bajada</translation>
    </message>
    <message>
        <source>Pelvis and chest move together; keep it.</source>
        <translation>Pelvis y pecho se mueven juntos; manténgalo.</translation>
    </message>
    <message>
        <source>The chest leads the move toward the target starting down: let the pelvis go first.</source>
        <translation>El pecho dirige el movimiento hacia el objetivo al empezar la bajada: deje que la pelvis vaya primero.</translation>
    </message>
    <message>
        <source>Mark hips and shoulders at the top and a third of the way down by hand.</source>
        <translation>Marque a mano caderas y hombros en el punto alto y a un tercio de la bajada.</translation>
    </message>
    <message>
        <source>Lead elbow at the top</source>
        <translation>Codo delantero en el punto alto</translation>
    </message>
    <message>
        <source>The lead arm is long at the top; keep it.</source>
        <translation>El brazo delantero está largo en el punto alto; manténgalo.</translation>
    </message>
    <message>
        <source>The lead elbow is bent %1 too much at the top: turn less far and keep the arm long.</source>
        <translation>El codo delantero se dobla %1 de más en el punto alto: gire menos y mantenga el brazo largo.</translation>
    </message>
    <message>
        <source>Mark lead shoulder, elbow and wrist at the top by hand.</source>
        <translation>Marque a mano hombro, codo y muñeca delanteros en el punto alto.</translation>
    </message>
    <message>
        <source>Length of the backswing</source>
        <translation>Longitud de la subida</translation>
    </message>
    <message>
        <source>The backswing is long enough and no longer; keep it.</source>
        <translation>La subida es lo bastante larga y no más; manténgala.</translation>
    </message>
    <message>
        <source>The shaft points %1 past level at the top: stop the arms when the turn is done.</source>
        <translation>La varilla pasa %1 de la horizontal en el punto alto: pare los brazos cuando acabe el giro.</translation>
    </message>
    <message>
        <source>Mark butt and club head at the top by hand.</source>
        <translation>Marque a mano el extremo del grip y la cabeza del palo en el punto alto.</translation>
    </message>
    <message>
        <source>Head height kept to impact</source>
        <translation>Altura de la cabeza mantenida hasta el impacto</translation>
    </message>
    <message>
        <source>The head keeps its height; keep it.</source>
        <translation>La cabeza conserva su altura; manténgalo.</translation>
    </message>
    <message>
        <source>The head drops %1 too far to the ball.</source>
        <translation>La cabeza baja %1 de más hasta la bola.</translation>
    </message>
    <message>
        <source>The head rises by %1 too much before the ball: keep the seat back.</source>
        <translation>La cabeza sube %1 de más antes de la bola: deje el trasero atrás.</translation>
    </message>
    <message>
        <source>narrow stance</source>
        <translation>stance estrecho</translation>
    </message>
    <message>
        <source>wide stance</source>
        <translation>stance ancho</translation>
    </message>
    <message>
        <source>ball too far forward</source>
        <translation>bola demasiado adelantada</translation>
    </message>
    <message>
        <source>ball too far back</source>
        <translation>bola demasiado atrasada</translation>
    </message>
    <message>
        <source>trunk tilt off at address</source>
        <translation>inclinación del tronco inadecuada en la colocación</translation>
    </message>
    <message>
        <source>weak grip</source>
        <translation>grip débil</translation>
    </message>
    <message>
        <source>aim off the target line</source>
        <translation>alineación fuera de la línea al objetivo</translation>
    </message>
    <message>
        <source>club face open early</source>
        <translation>cara del palo abierta pronto</translation>
    </message>
    <message>
        <source>wrists set early</source>
        <translation>muñecas cargadas pronto</translation>
    </message>
    <message>
        <source>head and chest too far over the trail foot</source>
        <translation>cabeza y pecho demasiado sobre el pie trasero</translation>
    </message>
    <message>
        <source>pelvis turned away too far</source>
        <translation>pelvis girada de más</translation>
    </message>
    <message>
        <source>pelvis turned away too little</source>
        <translation>pelvis girada de menos</translation>
    </message>
    <message>
        <source>trunk tilted toward the target at the top</source>
        <translation>tronco inclinado hacia el objetivo en el punto alto</translation>
    </message>
    <message>
        <source>lead elbow collapsed</source>
        <translation>codo delantero hundido</translation>
    </message>
    <message>
        <source>over-long backswing</source>
        <translation>subida demasiado larga</translation>
    </message>
    <message>
        <source>chest and pelvis move toward the target together</source>
        <translation>pecho y pelvis van juntos hacia el objetivo</translation>
    </message>
    <message>
        <source>large chest move back toward the target starting down</source>
        <translation>gran movimiento del pecho hacia el objetivo al empezar la bajada</translation>
    </message>
    <message>
        <source>hands start down outside</source>
        <translation>las manos empiezan a bajar por fuera</translation>
    </message>
    <message>
        <source>lead hip pushed toward the target</source>
        <translation>cadera delantera empujada hacia el objetivo</translation>
    </message>
    <message>
        <source>standing up out of the forward bend</source>
        <translation>levantarse de la flexión del tronco</translation>
    </message>
    <message>
        <source>poor lead-side line at impact</source>
        <translation>mala línea del lado delantero en el impacto</translation>
    </message>
    <message>
        <source>pelvis still square at impact</source>
        <translation>pelvis aún cuadrada en el impacto</translation>
    </message>
    <message>
        <source>trunk staying back at impact</source>
        <translation>el tronco se queda atrás en el impacto</translation>
    </message>
    <message>
        <source>wrist set let go early</source>
        <translation>ángulo de muñecas soltado pronto</translation>
    </message>
    <message>
        <source>little forward shaft lean</source>
        <translation>poca inclinación de la varilla hacia delante</translation>
    </message>
    <message>
        <source>body staying over the trail foot at the finish</source>
        <translation>el cuerpo se queda sobre el pie trasero en el final</translation>
    </message>
    <message>
        <source>ball struck thin or heavy</source>
        <translation>bola topada o pegada antes en el suelo</translation>
    </message>
    <message>
        <source>ball starts to the trail side</source>
        <translation>la bola sale hacia el lado trasero</translation>
    </message>
    <message>
        <source>ball starts to the lead side</source>
        <translation>la bola sale hacia el lado delantero</translation>
    </message>
    <message>
        <source>ball curves to the trail side</source>
        <translation>la bola curva hacia el lado trasero</translation>
    </message>
    <message>
        <source>ball curves to the lead side</source>
        <translation>la bola curva hacia el lado delantero</translation>
    </message>
    <message>
        <source>ball flies high</source>
        <translation>la bola vuela alta</translation>
    </message>
    <message>
        <source>several schools</source>
        <translation>varias escuelas</translation>
    </message>
    <message>
        <source>one school</source>
        <translation>una escuela</translation>
    </message>
    <message>
        <source>stance gauge</source>
        <translation>plantilla de stance</translation>
    </message>
    <message>
        <source>Lay a stick down with your stance width marked on it and step onto the marks before every swing.</source>
        <translation>Ponga en el suelo una varilla con su anchura de stance marcada y pise las marcas antes de cada swing.</translation>
    </message>
    <message>
        <source>ball gauge</source>
        <translation>plantilla de bola</translation>
    </message>
    <message>
        <source>Lay a stick from the ball toward you between the feet and check where it meets the line from foot to foot.</source>
        <translation>Ponga una varilla desde la bola hacia usted entre los pies y mire dónde cruza la línea de pie a pie.</translation>
    </message>
    <message>
        <source>stick outside the trail foot</source>
        <translation>varilla por fuera del pie trasero</translation>
    </message>
    <message>
        <source>Put a stick upright a hand&apos;s breadth outside the trail hip and swing back without touching it.</source>
        <translation>Clave una varilla a un palmo por fuera de la cadera trasera y suba sin tocarla.</translation>
    </message>
    <message>
        <source>slow-motion swing</source>
        <translation>swing a cámara lenta</translation>
    </message>
    <message>
        <source>Swing at a quarter of your speed and feel the one thing; only then at half speed with a ball.</source>
        <translation>Haga el swing a un cuarto de su velocidad y sienta esa única cosa; solo después, a media velocidad con bola.</translation>
    </message>
    <message>
        <source>step drill</source>
        <translation>ejercicio del paso</translation>
    </message>
    <message>
        <source>Start with the feet together, step toward the target before the arms start down.</source>
        <translation>Empiece con los pies juntos y dé un paso hacia el objetivo antes de que los brazos empiecen a bajar.</translation>
    </message>
    <message>
        <source>pause at impact</source>
        <translation>pausa en el impacto</translation>
    </message>
    <message>
        <source>Stop at the ball for a slow count and look: belt, hands and lead side.</source>
        <translation>Pare en la bola contando despacio y mire: cinturón, manos y lado delantero.</translation>
    </message>
    <message>
        <source>wide takeaway</source>
        <translation>inicio amplio de la subida</translation>
    </message>
    <message>
        <source>Push the club back low with a long lead arm to hip height, stop, look, go on.</source>
        <translation>Lleve el palo bajo con el brazo delantero largo hasta la cadera, pare, mire y siga.</translation>
    </message>
    <message>
        <source>seat against the wall</source>
        <translation>trasero contra la pared</translation>
    </message>
    <message>
        <source>Stand with the seat touching a wall, swing slowly back and through without losing the touch.</source>
        <translation>Póngase con el trasero tocando una pared y haga el swing despacio, ida y vuelta, sin separarse.</translation>
    </message>
    <message>
        <source>finish hold</source>
        <translation>mantener el final</translation>
    </message>
    <message>
        <source>Swing through and stand still over the lead foot with the trail heel up for a slow count of three.</source>
        <translation>Complete el swing y quédese quieto sobre el pie delantero, talón trasero arriba, contando despacio hasta tres.</translation>
    </message>
    <message>
        <source>three-quarter swing</source>
        <translation>swing de tres cuartos</translation>
    </message>
    <message>
        <source>Swing back only until the lead arm is level, from there through to a full finish.</source>
        <translation>Suba solo hasta que el brazo delantero esté horizontal y, desde ahí, hasta un final completo.</translation>
    </message>
    <message>
        <source>Feel the insides of both feet under the shoulders.</source>
        <translation>Sienta los bordes internos de los pies bajo los hombros.</translation>
    </message>
    <message>
        <source>Feel taller, with the feet under the shoulder joints.</source>
        <translation>Siéntase más alto, con los pies bajo las articulaciones de los hombros.</translation>
    </message>
    <message>
        <source>Feel the chest over the ball.</source>
        <translation>Sienta el pecho sobre la bola.</translation>
    </message>
    <message>
        <source>Feel the ball a little nearer the lead foot.</source>
        <translation>Sienta la bola algo más cerca del pie delantero.</translation>
    </message>
    <message>
        <source>Feel the trail hip turn back instead of sideways.</source>
        <translation>Sienta que la cadera trasera gira hacia atrás y no hacia el lado.</translation>
    </message>
    <message>
        <source>Feel the trail knee keep its flex while the chest turns over it.</source>
        <translation>Sienta que la rodilla trasera sigue flexionada mientras el pecho gira sobre ella.</translation>
    </message>
    <message>
        <source>Feel the lead hand far from the head at the top.</source>
        <translation>Sienta la mano delantera lejos de la cabeza en el punto alto.</translation>
    </message>
    <message>
        <source>Feel the arms stop when the turn stops.</source>
        <translation>Sienta que los brazos paran cuando acaba el giro.</translation>
    </message>
    <message>
        <source>Feel the lead shoulder turn over the trail knee.</source>
        <translation>Sienta que el hombro delantero gira sobre la rodilla trasera.</translation>
    </message>
    <message>
        <source>Feel the belt go first and the chest wait.</source>
        <translation>Sienta que el cinturón va primero y el pecho espera.</translation>
    </message>
    <message>
        <source>Feel the hands drop toward the trail pocket before the chest turns.</source>
        <translation>Sienta que las manos caen hacia el bolsillo trasero antes de que gire el pecho.</translation>
    </message>
    <message>
        <source>Feel the lead hip turn back and around, not toward the target.</source>
        <translation>Sienta que la cadera delantera gira atrás y alrededor, no hacia el objetivo.</translation>
    </message>
    <message>
        <source>Feel the seat stay on the wall behind you until the ball is gone.</source>
        <translation>Sienta que el trasero sigue en la pared de detrás hasta que la bola se va.</translation>
    </message>
    <message>
        <source>Feel the belt face past the ball when you hit it.</source>
        <translation>Sienta que el cinturón mira más allá de la bola al golpear.</translation>
    </message>
    <message>
        <source>Feel the shirt buttons get to the ball.</source>
        <translation>Sienta que los botones de la camisa llegan a la bola.</translation>
    </message>
    <message>
        <source>Feel the lead hand pull the handle past the ball.</source>
        <translation>Sienta que la mano delantera tira del grip más allá de la bola.</translation>
    </message>
    <message>
        <source>Feel the lead hand in front of the ball when you hit it.</source>
        <translation>Sienta la mano delantera por delante de la bola al golpear.</translation>
    </message>
    <message>
        <source>Feel all of you arrive over the lead foot.</source>
        <translation>Sienta que todo usted llega sobre el pie delantero.</translation>
    </message>
    <message>
        <source>This is no diagnosis: a video shows posture, not load. Stop at sharp or sudden pain, numbness, weakness, pain running down a limb, locking, swelling, night pain, chest pain or dizziness; if it is still there tomorrow go lighter and see a physician or licensed physiotherapist.</source>
        <translation>Esto no es un diagnóstico: un vídeo muestra posturas, no cargas. Pare ante dolor agudo o repentino, hormigueo, debilidad, dolor que baja por un brazo o una pierna, bloqueo, hinchazón, dolor nocturno, dolor de pecho o mareo; si mañana sigue ahí, vaya más suave y acuda a un médico o fisioterapeuta colegiado.</translation>
    </message>
    <message>
        <source>Seen in %1 of %2 swings, last: %3.</source>
        <translation>Visto en %1 de %2 swings; el último: %3.</translation>
    </message>
    <message>
        <source>Seen in one swing: %1. One swing proves little; look at three to five before changing anything.</source>
        <translation>Visto en un swing: %1. Un swing prueba poco; mire de tres a cinco antes de cambiar nada.</translation>
    </message>
    <message>
        <source>Seen in two swings, last: %1. Look at three to five before changing anything.</source>
        <translation>Visto en dos swings; el último: %1. Mire de tres a cinco antes de cambiar nada.</translation>
    </message>
    <message>
        <source>at impact the lead hip stands %1 off the line from ankle to shoulder and %2 on the target side of the ankle</source>
        <translation>en el impacto la cadera delantera está a %1 de la línea de tobillo a hombro y a %2 del tobillo hacia el objetivo</translation>
    </message>
    <message>
        <source>Pain in the lead hip is logged.</source>
        <translation>Hay anotado dolor en la cadera delantera.</translation>
    </message>
    <message>
        <source>coach&apos;s experience</source>
        <translation>experiencia del profesor</translation>
    </message>
    <message>
        <source>Turn the lead hip back and around instead of pushing it toward the target; turn the lead foot out a little; fewer full swings today.</source>
        <translation>Gire la cadera delantera atrás y alrededor en vez de empujarla hacia el objetivo; abra un poco el pie delantero; hoy menos swings completos.</translation>
    </message>
    <message>
        <source>at the top the spine leans toward the target (%1)</source>
        <translation>en el punto alto la columna se inclina hacia el objetivo (%1)</translation>
    </message>
    <message>
        <source>large side bend at impact (%1) in a fast downswing (%2)</source>
        <translation>gran inclinación lateral en el impacto (%1) en una bajada rápida (%2)</translation>
    </message>
    <message>
        <source>the forward bend is lost before the ball (%1)</source>
        <translation>la flexión del tronco se pierde antes de la bola (%1)</translation>
    </message>
    <message>
        <source>Pain in the lower back is logged.</source>
        <translation>Hay anotado dolor en la zona lumbar.</translation>
    </message>
    <message>
        <source>Earlier trouble of the lower back is on the body card.</source>
        <translation>La ficha corporal recoge molestias lumbares anteriores.</translation>
    </message>
    <message>
        <source>several studies (earlier back pain); swing mechanics: weak, contested</source>
        <translation>varios estudios (dolor lumbar previo); mecánica del swing: débil, discutida</translation>
    </message>
    <message>
        <source>weak (swing mechanics are contested)</source>
        <translation>débil (la mecánica del swing es discutida)</translation>
    </message>
    <message>
        <source>Shorter backswing, let the trail heel and the pelvis turn more, warm up for ten minutes, fewer full swings today.</source>
        <translation>Subida más corta, deje girar más el talón trasero y la pelvis, caliente diez minutos y haga hoy menos swings completos.</translation>
    </message>
    <message>
        <source>Pain in the lead knee is logged.</source>
        <translation>Hay anotado dolor en la rodilla delantera.</translation>
    </message>
    <message>
        <source>Earlier trouble of the lead knee is on the body card.</source>
        <translation>La ficha corporal recoge molestias anteriores en la rodilla delantera.</translation>
    </message>
    <message>
        <source>Turn the lead foot out, let it turn with the finish, straighten the knee later and softer.</source>
        <translation>Abra el pie delantero, déjelo girar con el final y estire la rodilla más tarde y con más suavidad.</translation>
    </message>
    <message>
        <source>lead wrist</source>
        <translation>muñeca delantera</translation>
    </message>
    <message>
        <source>trail wrist</source>
        <translation>muñeca trasera</translation>
    </message>
    <message>
        <source>lead elbow</source>
        <translation>codo delantero</translation>
    </message>
    <message>
        <source>trail elbow</source>
        <translation>codo trasero</translation>
    </message>
    <message>
        <source>lead shoulder</source>
        <translation>hombro delantero</translation>
    </message>
    <message>
        <source>trail shoulder</source>
        <translation>hombro trasero</translation>
    </message>
    <message>
        <source>several studies (overuse)</source>
        <translation>varios estudios (sobrecarga)</translation>
    </message>
    <message>
        <source>Pain in the %1 is logged.</source>
        <translation>Hay anotado dolor: %1.</translation>
    </message>
    <message>
        <source>Softer ground or a tee, lighter grip, fewer balls, rest between sets.</source>
        <translation>Suelo más blando o un tee, grip más suave, menos bolas y descanso entre series.</translation>
    </message>
    <message>
        <source> and %1 are logged in seven days; more than 200 balls or 4 rounds a week is the only published marker.</source>
        <translation> y %1 anotados en siete días; más de 200 bolas o 4 vueltas por semana es la única referencia publicada.</translation>
    </message>
    <message>
        <source>Fewer full swings and more short game or slow rehearsals this week.</source>
        <translation>Esta semana menos swings completos y más juego corto o ensayos lentos.</translation>
    </message>
    <message>
        <source>No caution is not a clean bill of health. With pain or doubt see a physician or licensed physiotherapist.</source>
        <translation>Que no haya aviso no significa que todo esté bien. Con dolor o duda, acuda a un médico o fisioterapeuta colegiado.</translation>
    </message>
    <message>
        <source>Adult ranges are not used for children; compare with this player&apos;s own good swings.</source>
        <translation>Los márgenes de adultos no se usan con niños; compare con los buenos swings de este jugador.</translation>
    </message>
    <message>
        <source>The body card limits the %1, so usual ranges are not used; compare with this player&apos;s own good swings.</source>
        <translation>La ficha corporal limita (%1), así que no se usan los márgenes habituales; compare con los buenos swings de este jugador.</translation>
    </message>
    <message>
        <source>The club head is not seen at address or at the top; mark it by hand in both frames.</source>
        <translation>La cabeza del palo no se ve en la colocación o en el punto alto; márquela a mano en ambos fotogramas.</translation>
    </message>
    <message>
        <source>The club is not seen long enough at address; mark butt and head by hand.</source>
        <translation>El palo no se ve lo bastante en la colocación; marque a mano el extremo del grip y la cabeza.</translation>
    </message>
    <message>
        <source>The hands could not be followed back and down; mark the grip by hand going back and coming down.</source>
        <translation>No se pudieron seguir las manos al subir y bajar; marque a mano el grip en ambos sentidos.</translation>
    </message>
    <message>
        <source>The hands do not pass the height of &quot;%1&quot; going back in this clip; mark the grip by hand.</source>
        <translation>En este clip las manos no pasan por la altura de «%1» al subir; marque a mano el grip.</translation>
    </message>
    <message>
        <source>The line of the feet or of the stick is too short in the picture to tell its aim.</source>
        <translation>La línea de los pies o de la varilla es demasiado corta en la imagen para saber su dirección.</translation>
    </message>
    <message>
        <source>Aim needs a stick on the target line: lay one down and mark both its ends.</source>
        <translation>La alineación necesita una varilla en la línea al objetivo: ponga una y marque sus dos extremos.</translation>
    </message>
    <message>
        <source>The shaft is not seen well enough here; mark butt and club head by hand.</source>
        <translation>La varilla no se ve bien aquí; marque a mano el extremo del grip y la cabeza del palo.</translation>
    </message>
    <message>
        <source>The shaft at the top is not seen well enough; mark butt and club head by hand.</source>
        <translation>La varilla no se ve bien en el punto alto; marque a mano el extremo del grip y la cabeza del palo.</translation>
    </message>
    <message>
        <source>The toe line is too short in this picture to tell the aim; put a stick along the toes as well.</source>
        <translation>La línea de las puntas es demasiado corta en esta imagen para saber la dirección; ponga también una varilla a lo largo de las puntas.</translation>
    </message>
    <message>
        <source>The club measures %1 cm in this clip, longer than the rules allow (122 cm): the scale is wrong. Check the stature and the marks on butt and club head.</source>
        <translation>El palo mide %1 cm en este clip, más de lo que permiten las reglas (122 cm): la escala es errónea. Revise la estatura y las marcas en el extremo del grip y la cabeza.</translation>
    </message>
    <message>
        <source>The shaft leans %1 degrees at address, more than any club&apos;s design allows: check the view, the hand and the marks on the shaft.</source>
        <translation>La varilla se inclina %1 grados en la colocación, más de lo que admite cualquier palo: revise la vista, la mano y las marcas de la varilla.</translation>
    </message>
    <message>
        <source>Trail heel and toe are not seen well enough in the finish; mark them by hand.</source>
        <translation>El talón y la punta traseros no se ven bien en el final; márquelos a mano.</translation>
    </message>
    <message>
        <source>The outline of the head could not be seen at &quot;%1&quot;; mark its edge by hand.</source>
        <translation>El contorno de la cabeza no se vio en «%1»; marque a mano su borde.</translation>
    </message>
    <message>
        <source>Head and trail ankle could not be followed going back; mark them by hand at the top.</source>
        <translation>No se pudieron seguir la cabeza y el tobillo trasero al subir; márquelos a mano en el punto alto.</translation>
    </message>
    <message>
        <source>The %1 falls together with its neighbour in the picture; check the marks.</source>
        <translation>Coincide en la imagen con el punto vecino: %1; revise las marcas.</translation>
    </message>
    <message>
        <source>A knee bends toward the camera here, so its angle cannot be told from the front; film down the line.</source>
        <translation>Una rodilla se dobla hacia la cámara y de frente no se sabe su ángulo; grabe en la línea al objetivo.</translation>
    </message>
    <message>
        <source>The hands could not be seen at &quot;%1&quot;; mark the grip by hand.</source>
        <translation>Las manos no se vieron en «%1»; marque a mano el grip.</translation>
    </message>
    <message>
        <source>The joint is not seen well enough here; mark it and its neighbours by hand.</source>
        <translation>La articulación no se ve bien aquí; márquela a mano junto con sus vecinas.</translation>
    </message>
    <message>
        <source>Lead ankle and lead shoulder fall together in the picture; check the marks.</source>
        <translation>El tobillo y el hombro delanteros coinciden en la imagen; revise las marcas.</translation>
    </message>
    <message>
        <source>The moment &quot;%1&quot; was not found in this clip; mark it by hand.</source>
        <translation>El momento «%1» no se encontró en este clip; márquelo a mano.</translation>
    </message>
    <message>
        <source>The %1 could not be seen at &quot;%2&quot;; mark it by hand in that frame.</source>
        <translation>No se vio en «%2»: %1; márquelo a mano en ese fotograma.</translation>
    </message>
    <message>
        <source>The head could not be seen at &quot;%1&quot;; mark its centre by hand in that frame.</source>
        <translation>La cabeza no se vio en «%1»; marque a mano su centro en ese fotograma.</translation>
    </message>
    <message>
        <source>No ball was found at address; mark the ball by hand, or film with the ball in the picture.</source>
        <translation>No se encontró bola en la colocación; márquela a mano o grabe con la bola en la imagen.</translation>
    </message>
    <message>
        <source>The shaft could not be told at &quot;%1&quot;; mark butt and club head by hand, or film with a shorter shutter time.</source>
        <translation>No se pudo determinar la varilla en «%1»; marque a mano el extremo del grip y la cabeza, o grabe con obturación más corta.</translation>
    </message>
    <message>
        <source>The player&apos;s size in the picture is not known; mark hips, shoulders and ankles at address.</source>
        <translation>No se conoce el tamaño del jugador en la imagen; marque caderas, hombros y tobillos en la colocación.</translation>
    </message>
    <message>
        <source>The feet are too close together in the picture to serve as a measure; check the view.</source>
        <translation>Los pies están demasiado juntos en la imagen para servir de medida; revise la vista.</translation>
    </message>
    <message>
        <source>This clip does not show enough for this number.</source>
        <translation>Este clip no muestra lo suficiente para esta cifra.</translation>
    </message>
    <message>
        <source>The marks are too unsure in this clip for this number; place them by hand, or film nearer with a clear view.</source>
        <translation>Las marcas son demasiado inseguras en este clip para esta cifra; póngalas a mano o grabe más cerca y sin obstáculos.</translation>
    </message>
    <message>
        <source>The moment &quot;impact&quot; was not found in this clip; mark it by hand.</source>
        <translation>El impacto no se encontró en este clip; márquelo a mano.</translation>
    </message>
    <message>
        <source>The shaft is not seen in enough frames around impact; film at 240 frames per second with a short shutter time.</source>
        <translation>La varilla se ve en muy pocos fotogramas cerca del impacto; grabe a 240 imágenes por segundo con obturación corta.</translation>
    </message>
    <message>
        <source>The club head does not move from frame to frame at impact; check the marks.</source>
        <translation>La cabeza del palo no se mueve de un fotograma a otro en el impacto; revise las marcas.</translation>
    </message>
    <message>
        <source>The grip end of the club could not be seen at impact; mark the butt by hand.</source>
        <translation>El extremo del grip no se vio en el impacto; márquelo a mano.</translation>
    </message>
    <message>
        <source>The shaft at this moment is too blurred to tell its lean; film at 240 frames per second with a short shutter time.</source>
        <translation>La varilla está demasiado borrosa en este momento para saber su inclinación; grabe a 240 imágenes por segundo con obturación corta.</translation>
    </message>
    <message>
        <source>Hips and shoulders could not be followed at the start of the downswing; mark them by hand.</source>
        <translation>No se pudieron seguir caderas y hombros al empezar la bajada; márquelos a mano.</translation>
    </message>
    <message>
        <source>Pelvis and chest hardly move toward the target in the first third of the downswing, so a share says nothing.</source>
        <translation>Pelvis y pecho apenas van hacia el objetivo en el primer tercio de la bajada, así que una proporción no dice nada.</translation>
    </message>
    <message>
        <source>The clip&apos;s real speed is not known; tell the frame rate it was captured at.</source>
        <translation>No se conoce la velocidad real del clip; indique a cuántas imágenes por segundo se grabó.</translation>
    </message>
    <message>
        <source>Pelvis and chest move too little in the first third of the downswing to share it out with these marks; mark hips and shoulders by hand.</source>
        <translation>Pelvis y pecho se mueven muy poco en el primer tercio de la bajada para repartirlo con estas marcas; marque a mano caderas y hombros.</translation>
    </message>
    <message>
        <source>The feet&apos;s turn-out cannot be told well enough from the front here; mark heel and toe by hand.</source>
        <translation>La apertura de los pies no se distingue bien de frente aquí; marque a mano talón y punta.</translation>
    </message>
    <message>
        <source>Address, top and impact are not in order in this clip; mark them by hand.</source>
        <translation>La colocación, el punto alto y el impacto no están en orden en este clip; márquelos a mano.</translation>
    </message>
    <message>
        <source>At 30 frames per second the downswing is too few pictures for a tempo; film at 120 or more.</source>
        <translation>A 30 imágenes por segundo la bajada tiene muy pocas para un ritmo; grabe a 120 o más.</translation>
    </message>
    <message>
        <source>The downswing is too few pictures for a tempo; film at 120 frames per second or more, or tell the rate the clip was captured at.</source>
        <translation>La bajada tiene muy pocas imágenes para un ritmo; grabe a 120 por segundo o más, o indique a cuántas se grabó.</translation>
    </message>
    <message>
        <source>The moments are not in order in this clip; mark them by hand.</source>
        <translation>Los momentos no están en orden en este clip; márquelos a mano.</translation>
    </message>
    <message>
        <source>Hips and shoulders fall together in the picture; check the marks.</source>
        <translation>Caderas y hombros coinciden en la imagen; revise las marcas.</translation>
    </message>
    <message>
        <source>A turn cannot be told from this clip: mark belt buckle and shirt buttons by hand where they are seen, or put an alignment stick through the belt loops.</source>
        <translation>Este clip no permite saber el giro: marque a mano la hebilla y los botones donde se vean, o pase una varilla por las trabillas del cinturón.</translation>
    </message>
    <message>
        <source>The wrists are hardly set when the lead arm is level, so a kept share says nothing.</source>
        <translation>Las muñecas apenas están cargadas cuando el brazo delantero está horizontal, así que la parte mantenida no dice nada.</translation>
    </message>
    <message>
        <source>Takeaway and delivery were not found in this clip; mark them by hand.</source>
        <translation>El inicio de subida y la entrega no se encontraron en este clip; márquelos a mano.</translation>
    </message>
    <message>
        <source>Lead forearm and shaft are seen together in too few frames to follow the wrist set.</source>
        <translation>El antebrazo delantero y la varilla se ven juntos en muy pocos fotogramas para seguir el ángulo de muñecas.</translation>
    </message>
    <message>
        <source>A forearm points at the camera at &quot;release&quot;, so its direction cannot be told.</source>
        <translation>Un antebrazo apunta a la cámara en la suelta, así que no se sabe su dirección.</translation>
    </message>
    <message>
        <source>Lead forearm and shaft are not seen well enough here; mark lead elbow, lead wrist and the shaft by hand.</source>
        <translation>El antebrazo delantero y la varilla no se ven bien aquí; marque a mano codo y muñeca delanteros y la varilla.</translation>
    </message>
    <message>
        <source>The wrist set stays near its greatest value for long, so its peak has no sharp time.</source>
        <translation>El ángulo de muñecas pasa mucho tiempo cerca de su máximo, así que su pico no tiene un instante claro.</translation>
    </message>
    <message>
        <source>Forearms and shaft are not seen well enough after impact; mark elbows, wrists and the shaft by hand.</source>
        <translation>Los antebrazos y la varilla no se ven bien tras el impacto; marque a mano codos, muñecas y varilla.</translation>
    </message>
    <message>
        <source>This clip does not say how fast it was filmed, so no times are given. Tell the capture rate (frames a second) to get them.</source>
        <translation>Este clip no dice a qué velocidad se grabó, así que no se dan tiempos. Indique la velocidad de grabación (imágenes por segundo).</translation>
    </message>
    <message>
        <source>The pose network is not installed, so only hand marks and what follows from them are used. Run platform/linux/fetch-network.sh to install it.</source>
        <translation>La red de pose no está instalada, así que solo valen las marcas a mano y lo que se deduce de ellas. Ejecute platform/linux/fetch-network.sh para instalarla.</translation>
    </message>
    <message>
        <source>No player was found in this clip: the whole body should be in the picture, upright and not too small.</source>
        <translation>No se encontró ningún jugador en este clip: debe verse el cuerpo entero, de pie y no demasiado pequeño.</translation>
    </message>
    <message>
        <source>No full swing could be followed in this clip: film the whole swing, from before the club moves until the finish.</source>
        <translation>No se pudo seguir un swing completo en este clip: grabe todo el swing, desde antes de mover el palo hasta el final.</translation>
    </message>
    <message>
        <source>Impact cannot be told: the ball did not leave its place in this clip.</source>
        <translation>No se puede saber el impacto: la bola no dejó su sitio en este clip.</translation>
    </message>
    <message>
        <source>Impact cannot be told: no ball was seen at address. A clean view of the ball would help.</source>
        <translation>No se puede saber el impacto: no se vio bola en la colocación. Ayudaría verla sin obstáculos.</translation>
    </message>
    <message>
        <source>Impact cannot be told: the ball left its place at another time than the club came through.</source>
        <translation>No se puede saber el impacto: la bola dejó su sitio en otro instante que el paso del palo.</translation>
    </message>
    <message>
        <source>The top cannot be told: neither shaft nor hands could be followed there.</source>
        <translation>No se puede saber el punto alto: no se pudieron seguir ni la varilla ni las manos.</translation>
    </message>
    <message>
        <source>Address cannot be told: the clip starts after the club began to move, or it never rested.</source>
        <translation>No se puede saber la colocación: el clip empieza con el palo ya en marcha, o nunca estuvo quieto.</translation>
    </message>
    <message>
        <source>The finish cannot be told: the clip ends before the player comes to rest. Hold the finish for a second.</source>
        <translation>No se puede saber el final: el clip acaba antes de que el jugador se quede quieto. Mantenga el final un segundo.</translation>
    </message>
    <message>
        <source>The moment &quot;%1&quot; was found on the wrong side of &quot;%2&quot; as set by hand, so it is left out; set it by hand, too.</source>
        <translation>El momento «%1» se halló en el lado equivocado de «%2», fijado a mano, y se ha omitido; fíjelo también a mano.</translation>
    </message>
    <message>
        <source>No player was found in the clip; place the marks by hand.</source>
        <translation>No se encontró ningún jugador en el clip; ponga las marcas a mano.</translation>
    </message>
    <message>
        <source>The two shoulders could not be told apart well at address; mark them by hand.</source>
        <translation>Los dos hombros no se distinguieron bien en la colocación; márquelos a mano.</translation>
    </message>
    <message>
        <source>The player was seen in very few frames; place the marks by hand.</source>
        <translation>El jugador se vio en muy pocos fotogramas; ponga las marcas a mano.</translation>
    </message>
    <message>
        <source>Cannot tell: the playbook has no departure that goes by these words.</source>
        <translation>No se sabe: el manual no tiene ninguna desviación con ese nombre.</translation>
    </message>
    <message>
        <source>Cannot tell: part of what these words may mean was not seen.</source>
        <translation>No se sabe: parte de lo que esas palabras pueden significar no se vio.</translation>
    </message>
    <message>
        <source>Not this: %1 is not there in these swings.</source>
        <translation>Esto no: no aparece en estos swings (%1).</translation>
    </message>
    <message>
        <source>Cannot tell: %1 lies too near the edge for what this clip can show.</source>
        <translation>No se sabe: demasiado cerca del límite para lo que este clip puede mostrar (%1).</translation>
    </message>
    <message>
        <source>The body card names a condition without a clearance: no swings until a physician or licensed physiotherapist has agreed.</source>
        <translation>La ficha corporal recoge una afección sin autorización: nada de swings hasta que un médico o fisioterapeuta colegiado lo apruebe.</translation>
    </message>
    <message>
        <source>The playbook holds no drill for %1.</source>
        <translation>El manual no tiene ejercicio para: %1.</translation>
    </message>
    <message>
        <source>Pain of 4 or more of 10 is logged: slow rehearsals only, no balls today.</source>
        <translation>Hay anotado dolor de 4 o más sobre 10: hoy solo ensayos lentos, sin bolas.</translation>
    </message>
    <message>
        <source>Much was hit this week already: one set of balls at most.</source>
        <translation>Esta semana ya se ha pegado mucho: como máximo una serie de bolas.</translation>
    </message>
    <message>
        <source>The body card limits the balls to %1 a day.</source>
        <translation>La ficha corporal limita las bolas a %1 al día.</translation>
    </message>
    <message>
        <source>These two collide: working on %1 moves what guards %2; do the first one alone until it holds.</source>
        <translation>Estos dos chocan: trabajar en %1 mueve lo que protege %2; haga primero solo lo primero hasta que se mantenga.</translation>
    </message>
    <message>
        <source>Undecided: there is nothing to compare.</source>
        <translation>Sin decidir: no hay nada que comparar.</translation>
    </message>
    <message>
        <source>Undecided: %1 itself did not change beyond doubt; try it more clearly, or with three to five swings on each side.</source>
        <translation>Sin decidir: %1 no cambió de forma clara; pruébelo con más claridad o con tres a cinco swings a cada lado.</translation>
    </message>
    <message>
        <source>Strengthened: with less %1 what it tends to cause went away too.</source>
        <translation>Reforzado: con menos %1 también desapareció lo que suele causar.</translation>
    </message>
    <message>
        <source>Dropped for this player: %1 changed and what it tends to cause did not.</source>
        <translation>Descartado para este jugador: %1 cambió y lo que suele causar no.</translation>
    </message>
    <message>
        <source>Undecided: %1 changed, but nothing it tends to cause was there before.</source>
        <translation>Sin decidir: %1 cambió, pero nada de lo que suele causar estaba antes.</translation>
    </message>
    <message>
        <source>True vertical is only assumed in one of the clips: tilts and shaft lean may differ by the cameras alone. Mark a plumb edge, or film with the level shown.</source>
        <translation>La vertical verdadera solo se supone en uno de los clips: las inclinaciones pueden variar por las cámaras. Marque un borde a plomo o grabe con el nivel a la vista.</translation>
    </message>
    <message>
        <source>The cameras stood at different distances: numbers against the trail ankle and the ball suffer.</source>
        <translation>Las cámaras estaban a distancias distintas: se resienten las cifras respecto al tobillo trasero y la bola.</translation>
    </message>
    <message>
        <source>The player is much smaller in one of the clips: its numbers are less sure.</source>
        <translation>El jugador es mucho más pequeño en uno de los clips: sus cifras son menos seguras.</translation>
    </message>
    <message>
        <source>One of the clips has fewer than 100 frames a second: positions near the ball, tempo and shaft lean suffer.</source>
        <translation>Uno de los clips tiene menos de 100 imágenes por segundo: se resienten las posiciones junto a la bola, el ritmo y la inclinación de la varilla.</translation>
    </message>
    <message>
        <source>The cameras looked from different directions: tilts, turns and ball position suffer.</source>
        <translation>Las cámaras miraban desde direcciones distintas: se resienten inclinaciones, giros y posición de la bola.</translation>
    </message>
    <message>
        <source>The kinds of shot differ: only the positions can be compared, not the sizes.</source>
        <translation>Los tipos de golpe son distintos: solo se comparan las posiciones, no las magnitudes.</translation>
    </message>
    <message>
        <source>The clubs differ: set-up, tilt and shaft lean differ with the club.</source>
        <translation>Los palos son distintos: colocación, inclinación y varilla cambian con el palo.</translation>
    </message>
    <message>
        <source>One swing is filmed face-on and the other down-the-line; compare two swings of the same view.</source>
        <translation>Un swing está grabado de frente y el otro en la línea al objetivo; compare dos swings de la misma vista.</translation>
    </message>
    <message>
        <source>Matching by time needs impact and a known capture rate in both swings; match by hands instead.</source>
        <translation>Emparejar por tiempo necesita impacto y velocidad conocida en ambos swings; empareje por las manos.</translation>
    </message>
    <message>
        <source>These two swings share too few key moments to be put side by side; mark address, top or impact by hand.</source>
        <translation>Estos dos swings comparten muy pocos momentos clave para ponerlos lado a lado; marque a mano colocación, punto alto o impacto.</translation>
    </message>
    <message>
        <source>The camera was armed too late for this swing: its beginning is not in the take.</source>
        <translation>La cámara se armó tarde para este swing: falta el principio en la toma.</translation>
    </message>
    <message>
        <source>No clip was given; name at least one.</source>
        <translation>No se indicó ningún clip; indique al menos uno.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no region of the body card; take one such as lead_hip or lower_back.</source>
        <translation>«%1» no es una zona de la ficha corporal; tome una como lead_hip o lower_back.</translation>
    </message>
    <message>
        <source>Days must look like 2026-11-25; check them.</source>
        <translation>Las fechas deben ser como 2026-11-25; revíselas.</translation>
    </message>
    <message>
        <source>Pain needs a level from 0 to 10 and a day such as 2026-11-25.</source>
        <translation>El dolor necesita un nivel de 0 a 10 y un día como 2026-11-25.</translation>
    </message>
    <message>
        <source>Practice needs a number of repetitions and a day such as 2026-11-25.</source>
        <translation>La práctica necesita un número de repeticiones y un día como 2026-11-25.</translation>
    </message>
    <message>
        <source>It is not in the library (any more); choose again from the list.</source>
        <translation>(Ya) no está en la biblioteca; elija de nuevo en la lista.</translation>
    </message>
    <message>
        <source>There is no measured swing here yet; bring clips in with &quot;plumbmark lesson add&quot; first.</source>
        <translation>Aún no hay ningún swing medido; traiga antes clips con «plumbmark lesson add».</translation>
    </message>
    <message>
        <source>The playbook knows no departure &quot;%1&quot;; &quot;plumbmark explain --all&quot; lists them.</source>
        <translation>El manual no conoce la desviación «%1»; «plumbmark explain --all» las enumera.</translation>
    </message>
    <message>
        <source>Stopped on request.</source>
        <translation>Parado a petición.</translation>
    </message>
    <message>
        <source>A file in the shared folder holds something that was erased and cannot be removed; check its permissions.</source>
        <translation>Un archivo de la carpeta compartida contiene algo borrado y no se puede quitar; revise sus permisos.</translation>
    </message>
    <message>
        <source>Nobody is seen: stand at the ball, with the light on you.</source>
        <translation>No se ve a nadie: póngase ante la bola, con la luz de frente.</translation>
    </message>
    <message>
        <source>Your feet are cut off: tilt the phone down or move it back.</source>
        <translation>Los pies quedan cortados: incline el teléfono hacia abajo o aléjelo.</translation>
    </message>
    <message>
        <source>There is too little room above your head: tilt the phone up or move it back.</source>
        <translation>Falta sitio sobre la cabeza: incline el teléfono hacia arriba o aléjelo.</translation>
    </message>
    <message>
        <source>You are too small in the picture: move the phone nearer, to 4 to 5 metres.</source>
        <translation>Se le ve muy pequeño: acerque el teléfono a 4 o 5 metros.</translation>
    </message>
    <message>
        <source>You fill the picture: move the phone back, to 4 to 5 metres.</source>
        <translation>Llena usted la imagen: aleje el teléfono a 4 o 5 metros.</translation>
    </message>
    <message>
        <source>You stand at the picture&apos;s left edge: turn the phone to its left.</source>
        <translation>Está en el borde izquierdo: gire el teléfono hacia su izquierda.</translation>
    </message>
    <message>
        <source>You stand at the picture&apos;s right edge: turn the phone to its right.</source>
        <translation>Está en el borde derecho: gire el teléfono hacia su derecha.</translation>
    </message>
    <message>
        <source>The phone sees you from the side: put it where your chest faces it.</source>
        <translation>El teléfono le ve de lado: póngalo donde mire su pecho.</translation>
    </message>
    <message>
        <source>The phone sees your chest: put it behind you, on the line of your hands.</source>
        <translation>El teléfono ve su pecho: póngalo detrás, en la línea de las manos.</translation>
    </message>
    <message>
        <source>This version has changed meanwhile; look again and choose.</source>
        <translation>Esta versión ha cambiado entretanto; mire de nuevo y elija.</translation>
    </message>
    <message>
        <source>Stopped before the end; nothing was written.</source>
        <translation>Parado antes del final; no se ha escrito nada.</translation>
    </message>
    <message>
        <source>This lesson file is sealed; give the passphrase it was sealed with.</source>
        <translation>Este archivo de clase está sellado; dé la contraseña con que se selló.</translation>
    </message>
    <message>
        <source>A sender needs a signed file and a short name; try again.</source>
        <translation>Un remitente necesita un archivo firmado y un nombre corto; inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Whole, from %1.</source>
        <translation>Íntegro, de %1.</translation>
    </message>
    <message>
        <source>Whole, sender unknown (not signed).</source>
        <translation>Íntegro, remitente desconocido (sin firma).</translation>
    </message>
    <message>
        <source>Whole, sender unknown (key %1).</source>
        <translation>Íntegro, remitente desconocido (clave %1).</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no checkpoint of this view; choose one that the playbook has for it.</source>
        <translation>«%1» no es un punto de control de esta vista; elija uno que el manual tenga para ella.</translation>
    </message>
    <message>
        <source>This device could not keep up; choose a smaller picture or a lower rate.</source>
        <translation>Este dispositivo no dio abasto; elija una imagen menor o menos imágenes por segundo.</translation>
    </message>
    <message>
        <source>The picture is too coarse for a verdict; set the camera to 720 lines or more.</source>
        <translation>La imagen es demasiado basta para un veredicto; ponga la cámara a 720 líneas o más.</translation>
    </message>
    <message>
        <source>Too near the edge of the range to tell from this picture.</source>
        <translation>Demasiado cerca del límite del margen para decirlo con esta imagen.</translation>
    </message>
    <message>
        <source>This film does not show it.</source>
        <translation>Este vídeo no lo muestra.</translation>
    </message>
    <message>
        <source>The voice lasts longer than ten minutes; cut it or make two reviews.</source>
        <translation>La voz dura más de diez minutos; córtela o haga dos repasos.</translation>
    </message>
    <message>
        <source>The review names a clip that this lesson does not hold; &quot;plumbmark lesson show&quot; lists them.</source>
        <translation>El repaso nombra un clip que esta clase no contiene; «plumbmark lesson show» los enumera.</translation>
    </message>
    <message>
        <source>The lesson has no spoken review yet; &quot;plumbmark review record&quot; keeps one.</source>
        <translation>La clase aún no tiene un repaso hablado; «plumbmark review record» guarda uno.</translation>
    </message>
    <message>
        <source>The film did not travel with this lesson; import a lesson file that holds it.</source>
        <translation>El vídeo no viajó con esta clase; importe un archivo de clase que lo contenga.</translation>
    </message>
    <message>
        <source>The voice of this review is not in the library; record it again.</source>
        <translation>La voz de este repaso no está en la biblioteca; grábela de nuevo.</translation>
    </message>
    <message>
        <source>One of the clips shows no swing that could be followed; choose another clip.</source>
        <translation>Uno de los clips no muestra ningún swing que se pudiera seguir; elija otro.</translation>
    </message>
    <message>
        <source>The film of this swing did not come with the lesson; ask for the lesson with its films.</source>
        <translation>El vídeo de este swing no vino con la clase; pida la clase con sus vídeos.</translation>
    </message>
    <message>
        <source>This drawing is not finished; draw it again.</source>
        <translation>Este dibujo no está terminado; dibújelo de nuevo.</translation>
    </message>
    <message>
        <source>%1 cm (a finger&apos;s breadth)</source>
        <translation>%1 cm (un dedo)</translation>
    </message>
    <message>
        <source>%1 cm (two fingers)</source>
        <translation>%1 cm (dos dedos)</translation>
    </message>
    <message>
        <source>%1 cm (about half a shoe&apos;s width)</source>
        <translation>%1 cm (medio ancho de zapato)</translation>
    </message>
    <message>
        <source>%1 cm (about a shoe&apos;s width)</source>
        <translation>%1 cm (un ancho de zapato)</translation>
    </message>
    <message>
        <source>%1 cm (about half a shoe&apos;s length)</source>
        <translation>%1 cm (medio largo de zapato)</translation>
    </message>
    <message>
        <source>%1 cm (about a shoe&apos;s length)</source>
        <translation>%1 cm (un largo de zapato)</translation>
    </message>
    <message>
        <source>%1 degrees</source>
        <translation>%1 grados</translation>
    </message>
    <message>
        <source>%1 pixels</source>
        <translation>%1 píxeles</translation>
    </message>
    <message>
        <source>This clip cannot tell good from not good here. %1</source>
        <translation>Este clip no permite distinguir aquí entre bien y mal. %1</translation>
    </message>
    <message>
        <source>%1 The range was widened to what this clip can tell.</source>
        <translation>%1 El margen se amplió a lo que este clip puede distinguir.</translation>
    </message>
    <message>
        <source>set for this player</source>
        <translation>fijado para este jugador</translation>
    </message>
    <message>
        <source>No swing could be told apart in this clip, so there is none to choose by number; measure it without.</source>
        <translation>En este clip no se distinguió ningún swing suelto; mida sin número.</translation>
    </message>
    <message>
        <source>No swing was seen in this clip, and it is too long to be measured as one; cut it to one swing, at most a minute.</source>
        <translation>No se vio ningún swing en este clip y es demasiado largo para medirlo como uno; recórtelo a un swing, un minuto como máximo.</translation>
    </message>
    <message>
        <source>This clip holds one swing; choose 1.</source>
        <translation>Este clip contiene un swing; elija 1.</translation>
    </message>
    <message>
        <source>This clip holds %1 swings; choose one from 1 to %2.</source>
        <translation>Este clip contiene %1 swings; elija uno de 1 a %2.</translation>
    </message>
    <message>
        <source>This clip holds %1 swings, at %2 seconds; number %3 is measured%4. The others can be chosen by their number.</source>
        <translation>Este clip contiene %1 swings, en los segundos %2; se mide el número %3%4. Los demás se eligen por su número.</translation>
    </message>
    <message>
        <source>The hands go back on the target side: this clip is a mirror image, or the player swings from the other side. Tell which, and measure again; until then the numbers are not to be trusted.</source>
        <translation>Las manos suben por el lado del objetivo: este clip está en espejo o el jugador juega por el otro lado. Indique cuál y mida de nuevo; hasta entonces no se fíe de las cifras.</translation>
    </message>
    <message>
        <source>The player %1 in this clip: turn it by %2 degrees clockwise, then measure it again.</source>
        <translation>El jugador %1 en este clip: gírelo %2 grados en el sentido de las agujas y mídalo otra vez.</translation>
    </message>
    <message>
        <source>Somebody else of about the same size is in the picture; the player %1 was measured. If that is the wrong one, cut the picture to the player or film alone.</source>
        <translation>Otra persona de tamaño parecido está en la imagen; se midió al jugador %1. Si no es el correcto, recorte la imagen al jugador o fílmelo a solas.</translation>
    </message>
    <message>
        <source>The top cannot be told: the club is lost there, and the hands turn at another time; film with room for the club on all sides.</source>
        <translation>No se puede saber el top: allí se pierde el palo y las manos giran en otro momento; filme con sitio para el palo por todos los lados.</translation>
    </message>
    <message>
        <source>A dose is one to ten sets; choose a number in between.</source>
        <translation>Una dosis son de una a diez series; elija un número intermedio.</translation>
    </message>
    <message>
        <source>The playbook holds no drill for it any more; make the plan anew.</source>
        <translation>El playbook ya no tiene ejercicio para ello; haga el plan de nuevo.</translation>
    </message>
    <message>
        <source>The body card or a caution keeps this dose small; change the body card first if it is no longer true.</source>
        <translation>La ficha corporal o un aviso mantiene pequeña esta dosis; cambie antes la ficha si ya no es cierta.</translation>
    </message>
    <message>
        <source>There is no such version to choose (any more); look at the list again.</source>
        <translation>Esa versión ya no se puede elegir; mire otra vez la lista.</translation>
    </message>
    <message>
        <source>A frame came out uncovered, so nothing was kept; try again, or share without the clips.</source>
        <translation>Una imagen quedó sin cubrir, así que no se guardó nada; inténtelo otra vez o comparta sin los clips.</translation>
    </message>
    <message>
        <source>The head is not covered yet in a film of this lesson; make the cover and look it through first (&quot;plumbmark lesson cover&quot;), or leave the clips out.</source>
        <translation>En un vídeo de esta clase aún no está cubierta la cabeza; cúbrala y revíselo antes («plumbmark lesson cover»), o deje fuera los clips.</translation>
    </message>
    <message>
        <source>The player&apos;s head was not found in this film, so it cannot be covered; place the head by hand in a few frames, or share without the clips.</source>
        <translation>No se encontró la cabeza del jugador en este vídeo y no se puede cubrir; colóquela a mano en algunas imágenes o comparta sin los clips.</translation>
    </message>
    <message>
        <source>There is no covered copy to release; make it and look it through first (&quot;plumbmark lesson cover&quot;).</source>
        <translation>No hay copia cubierta que liberar; hágala y revísela antes («plumbmark lesson cover»).</translation>
    </message>
    <message>
        <source>Nothing was shared: the guardian did not agree to the face being seen. Cover the heads, or leave the clips out.</source>
        <translation>No se compartió nada: el tutor no consintió que se vea la cara. Cubra las cabezas o deje fuera los clips.</translation>
    </message>
    <message>
        <source>The key-position sheet shows the face; leave it out.</source>
        <translation>La hoja de posiciones clave muestra la cara; déjela fuera.</translation>
    </message>
    <message>
        <source>The rate must lie between 1 and 10,000 frames a second; check the number.</source>
        <translation>La frecuencia debe estar entre 1 y 10 000 imágenes por segundo; compruebe el número.</translation>
    </message>
    <message>
        <source>There is nothing before this to go back to.</source>
        <translation>Antes de esto no hay nada a lo que volver.</translation>
    </message>
    <message>
        <source>That time lies outside the film; check it.</source>
        <translation>Ese tiempo queda fuera del vídeo; compruébelo.</translation>
    </message>
    <message>
        <source>No instant of this lesson has a star yet; star what you want to show.</source>
        <translation>Ningún instante de esta clase tiene aún estrella; márquele una a lo que quiera mostrar.</translation>
    </message>
    <message>
        <source>The player&apos;s head was not found in one of the films, so it cannot be covered; place the head by hand in a few frames.</source>
        <translation>No se encontró la cabeza del jugador en uno de los vídeos y no se puede cubrir; colóquela a mano en algunas imágenes.</translation>
    </message>
    <message>
        <source>A text for the card is too long or cannot be read; keep it under 500 characters.</source>
        <translation>Un texto de la tarjeta es demasiado largo o no se puede leer; no pase de 500 caracteres.</translation>
    </message>
    <message>
        <source>This build has no painter, so it can&apos;t draw a PDF; give a name that ends in .html.</source>
        <translation>Esta versión no puede dibujar un PDF; ponga un nombre que termine en .html.</translation>
    </message>
    <message>
        <source>This backup is damaged (%1); nothing was changed. Choose another one.</source>
        <translation>Esta copia está dañada (%1); no se cambió nada. Elija otra.</translation>
    </message>
    <message>
        <source>This is no backup of a lesson library; choose another folder.</source>
        <translation>Esto no es una copia de una biblioteca de clases; elija otra carpeta.</translation>
    </message>
    <message>
        <source>This backup was made by a newer version of the program; update the program to restore it.</source>
        <translation>Esta copia la hizo una versión más nueva del programa; actualícelo para recuperarla.</translation>
    </message>
    <message>
        <source>There is no backup in &quot;%1&quot;; &quot;plumbmark restore&quot; lists those there are.</source>
        <translation>No hay copia en «%1»; «plumbmark restore» lista las que hay.</translation>
    </message>
    <message>
        <source>There is no folder &quot;%1&quot;; make it, or choose another one.</source>
        <translation>No hay carpeta «%1»; créela o elija otra.</translation>
    </message>
    <message>
        <source>This backup is in that folder already.</source>
        <translation>Esta copia ya está en esa carpeta.</translation>
    </message>
    <message>
        <source>The database is damaged: %1. Put a backup in its place (&quot;plumbmark restore&quot;).</source>
        <translation>La base de datos está dañada: %1. Ponga una copia en su lugar («plumbmark restore»).</translation>
    </message>
    <message>
        <source>The record %1 is not as it was written. Put a backup in its place (&quot;plumbmark restore&quot;).</source>
        <translation>El registro %1 no está como se escribió. Ponga una copia en su lugar («plumbmark restore»).</translation>
    </message>
    <message>
        <source>The lists do not agree with the records. No record is lost; &quot;plumbmark check --repair&quot; makes the lists anew.</source>
        <translation>Las listas no coinciden con los registros. No se perdió ningún registro; «plumbmark check --repair» rehace las listas.</translation>
    </message>
    <message>
        <source>The film %1 is damaged; bring it in again, or import a lesson file that holds it.</source>
        <translation>El vídeo %1 está dañado; tráigalo otra vez o incorpore un archivo de clase que lo contenga.</translation>
    </message>
    <message>
        <source>A film has no proper name; bring it in again.</source>
        <translation>Un vídeo no tiene un nombre válido; tráigalo otra vez.</translation>
    </message>
    <message>
        <source>A film that was erased could not be removed; close other programs that use it. It goes at the next start.</source>
        <translation>No se pudo quitar un vídeo borrado; cierre otros programas que lo usen. Desaparecerá al abrir de nuevo.</translation>
    </message>
    <message>
        <source>The library could not be made private; choose another folder.</source>
        <translation>No se pudo hacer privada la biblioteca; elija otra carpeta.</translation>
    </message>
    <message>
        <source>It is not known where your files lie; name a folder with --library.</source>
        <translation>No se sabe dónde están sus archivos; indique una carpeta con --library.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a folder; name a folder for the library.</source>
        <translation>«%1» no es una carpeta; indique una carpeta para la biblioteca.</translation>
    </message>
    <message>
        <source>The library&apos;s folder &quot;%1&quot; cannot be made; choose another one.</source>
        <translation>No se puede crear la carpeta «%1» de la biblioteca; elija otra.</translation>
    </message>
    <message>
        <source>The file library.db is missing although films are there; put a backup in its place (&quot;plumbmark restore&quot;), or choose another folder.</source>
        <translation>Falta el archivo library.db aunque hay vídeos; ponga una copia en su lugar («plumbmark restore») o elija otra carpeta.</translation>
    </message>
    <message>
        <source>The file library.db in &quot;%1&quot; is not a lesson library; choose another folder.</source>
        <translation>El archivo library.db en «%1» no es una biblioteca de clases; elija otra carpeta.</translation>
    </message>
    <message>
        <source>This library was made by a newer version of the program and can only be read here; update the program to change it.</source>
        <translation>Esta biblioteca la hizo una versión más nueva del programa y aquí solo se puede leer; actualícelo para cambiarla.</translation>
    </message>
    <message>
        <source>This library was made by a newer version of the program; update the program to open it.</source>
        <translation>Esta biblioteca la hizo una versión más nueva del programa; actualícelo para abrirla.</translation>
    </message>
    <message>
        <source>This belongs to something that was erased; nothing was saved.</source>
        <translation>Esto pertenece a algo borrado; no se guardó nada.</translation>
    </message>
    <message>
        <source>This is too much for one record; make it shorter.</source>
        <translation>Es demasiado para un registro; acórtelo.</translation>
    </message>
    <message>
        <source>The film of this clip is not in the library; bring it in again.</source>
        <translation>El vídeo de este clip no está en la biblioteca; tráigalo otra vez.</translation>
    </message>
    <message>
        <source>A record in the file differs from the one of the same name in the library; the file was changed, nothing was taken.</source>
        <translation>Un registro del archivo difiere del mismo nombre en la biblioteca; el archivo fue cambiado, no se tomó nada.</translation>
    </message>
    <message>
        <source>Something was erased; its traces are being removed.
</source>
        <translation>Algo se borró; se están quitando sus rastros.
</translation>
    </message>
    <message>
        <source>A lesson file holds up to 4 GB; leave films out.</source>
        <translation>Un archivo de clase admite hasta 4 GB; deje vídeos fuera.</translation>
    </message>
    <message>
        <source>Reading &quot;%1&quot; failed; check the disk and try again.</source>
        <translation>Falló la lectura de «%1»; revise el disco e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>The lesson file is damaged or was changed (%1); nothing was imported. Ask for it again.</source>
        <translation>El archivo de clase está dañado o fue cambiado (%1); no se importó nada. Pídalo otra vez.</translation>
    </message>
    <message>
        <source>This is not a lesson file as the program writes it: %1. Nothing was imported; ask for the file again.</source>
        <translation>Esto no es un archivo de clase como los escribe el programa: %1. No se importó nada; pida el archivo otra vez.</translation>
    </message>
    <message>
        <source>This lesson file was made by a newer version of the program; update the program to read it.</source>
        <translation>Este archivo de clase lo hizo una versión más nueva del programa; actualícelo para leerlo.</translation>
    </message>
    <message>
        <source>The lesson file is empty; ask for it again.</source>
        <translation>El archivo de clase está vacío; pídalo otra vez.</translation>
    </message>
    <message>
        <source>This is not a lesson file; choose a file that ends in %1.</source>
        <translation>Esto no es un archivo de clase; elija uno que termine en %1.</translation>
    </message>
    <message>
        <source>The lesson file is cut off: its end is missing; nothing was imported. Copy it again.</source>
        <translation>El archivo de clase está cortado: falta el final; no se importó nada. Cópielo otra vez.</translation>
    </message>
    <message>
        <source>This ZIP file is not a lesson file; choose a file that ends in %1.</source>
        <translation>Este archivo ZIP no es un archivo de clase; elija uno que termine en %1.</translation>
    </message>
    <message>
        <source>There is not enough free space on the disk for the films in this lesson file; free some and try again.</source>
        <translation>No hay bastante espacio en el disco para los vídeos de este archivo de clase; libere espacio e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>There are too many records for one lesson file; send fewer lessons at once.</source>
        <translation>Demasiados registros para un archivo de clase; envíe menos clases a la vez.</translation>
    </message>
    <message>
        <source>A film in the library is damaged, so the lesson was not exported; bring the film in again.</source>
        <translation>Un vídeo de la biblioteca está dañado, así que no se exportó la clase; traiga el vídeo otra vez.</translation>
    </message>
    <message>
        <source>The title cannot be written; type it again.</source>
        <translation>No se puede escribir el título; tecléelo otra vez.</translation>
    </message>
    <message>
        <source>There are too many films for one lesson file; send fewer lessons at once.</source>
        <translation>Demasiados vídeos para un archivo de clase; envíe menos clases a la vez.</translation>
    </message>
    <message>
        <source>A film changed while it was read; export the lesson again.</source>
        <translation>Un vídeo cambió mientras se leía; exporte la clase otra vez.</translation>
    </message>
    <message>
        <source>There is not enough memory to make the key; close other programs and try again.</source>
        <translation>No hay memoria para crear la clave; cierre otros programas e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>The sealed file is damaged or was changed; nothing was imported. Ask for it again.</source>
        <translation>El archivo sellado está dañado o fue cambiado; no se importó nada. Pídalo otra vez.</translation>
    </message>
    <message>
        <source>The passphrase is too short; take at least eight characters, better six words.</source>
        <translation>La contraseña es demasiado corta; use al menos ocho caracteres, mejor seis palabras.</translation>
    </message>
    <message>
        <source>The encryption library cannot start; restart the program.</source>
        <translation>El cifrado no arranca; reinicie el programa.</translation>
    </message>
    <message>
        <source>Reading the file failed; check the disk and try again.</source>
        <translation>Falló la lectura del archivo; revise el disco e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>This file is not sealed with a passphrase.</source>
        <translation>Este archivo no está sellado con contraseña.</translation>
    </message>
    <message>
        <source>This file was sealed by a newer version of the program, or it is damaged; update the program, or ask for the file again.</source>
        <translation>Este archivo lo selló una versión más nueva del programa o está dañado; actualice el programa o pida el archivo otra vez.</translation>
    </message>
    <message>
        <source>The sealed file is cut off: its end is missing; nothing was imported. Copy it again.</source>
        <translation>El archivo sellado está cortado: falta el final; no se importó nada. Cópielo otra vez.</translation>
    </message>
    <message>
        <source>The passphrase is not the one this file was sealed with (or the file is damaged); try again.</source>
        <translation>No es la contraseña con que se selló este archivo (o está dañado); inténtelo otra vez.</translation>
    </message>
    <message>
        <source>The device&apos;s key is damaged; remove the file &quot;%1&quot; and a new one is made (others then see a new device).</source>
        <translation>La clave del dispositivo está dañada; quite el archivo «%1» y se hará otra (los demás verán un dispositivo nuevo).</translation>
    </message>
    <message>
        <source>The network cannot be used; check that this device is on one.</source>
        <translation>No se puede usar la red; compruebe que este dispositivo esté en una.</translation>
    </message>
    <message>
        <source>What is sent is larger than a lesson file may be; it was not taken.</source>
        <translation>Lo enviado es mayor de lo que puede ser un archivo de clase; no se aceptó.</translation>
    </message>
    <message>
        <source>What comes in cannot be kept; check the disk.</source>
        <translation>Lo que llega no se puede guardar; revise el disco.</translation>
    </message>
    <message>
        <source>The disk is full, so nothing was received; free some space and try again.</source>
        <translation>El disco está lleno, así que no se recibió nada; libere espacio e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>What arrived is not what was sent; nothing was kept. Try again.</source>
        <translation>Lo que llegó no es lo que se envió; no se guardó nada. Inténtelo otra vez.</translation>
    </message>
    <message>
        <source>What came in could not be kept; check the disk.</source>
        <translation>Lo que llegó no se pudo guardar; revise el disco.</translation>
    </message>
    <message>
        <source>The file to send cannot be read; check that it is there.</source>
        <translation>No se puede leer el archivo que se envía; compruebe que está ahí.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no address as 192.168.1.7.</source>
        <translation>«%1» no es una dirección como 192.168.1.7.</translation>
    </message>
    <message>
        <source>Somebody tried a wrong key too often, so the sending was ended. Start it again; a new key is made.</source>
        <translation>Alguien probó una clave equivocada demasiadas veces y el envío se terminó. Empiécelo de nuevo; se crea otra clave.</translation>
    </message>
    <message>
        <source>Nobody came for it; start the sending again when the other device is ready.</source>
        <translation>Nadie vino a buscarlo; empiece el envío otra vez cuando el otro dispositivo esté listo.</translation>
    </message>
    <message>
        <source>The other device went away before all was sent; start again, it goes on where it stopped.</source>
        <translation>El otro dispositivo se fue antes de enviarlo todo; empiece de nuevo, sigue donde se paró.</translation>
    </message>
    <message>
        <source>This is no ticket of a sending; copy all of it.</source>
        <translation>Esto no es el tique de un envío; cópielo entero.</translation>
    </message>
    <message>
        <source>The sender does not know this ticket; take the one it shows now.</source>
        <translation>El remitente no conoce este tique; use el que muestra ahora.</translation>
    </message>
    <message>
        <source>The sender cannot be reached; check that both are on one network and that it still shows its ticket. What came already is kept.</source>
        <translation>No se alcanza al remitente; compruebe que ambos están en la misma red y que aún muestra su tique. Lo que ya llegó se conserva.</translation>
    </message>
    <message>
        <source>Say what the consent is for: film, analyse, keep, share, teach, face.</source>
        <translation>Diga para qué es el consentimiento: film, analyse, keep, share, teach, face.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing to consent to; there are film, analyse, keep, share, teach, face.</source>
        <translation>«%1» no es algo que consentir; hay film, analyse, keep, share, teach, face.</translation>
    </message>
    <message>
        <source>A consent needs the day it was given and its last day, as 2026-11-25.</source>
        <translation>Un consentimiento necesita el día en que se dio y su último día, como 2026-11-25.</translation>
    </message>
    <message>
        <source>The consent would end before it begins; check the days.</source>
        <translation>El consentimiento terminaría antes de empezar; revise los días.</translation>
    </message>
    <message>
        <source>A minor&apos;s consent holds for a year at most; then ask again.</source>
        <translation>El consentimiento de un menor vale un año como máximo; pregunte luego otra vez.</translation>
    </message>
    <message>
        <source>A consent holds for two years at most; then ask again.</source>
        <translation>Un consentimiento vale dos años como máximo; pregunte luego otra vez.</translation>
    </message>
    <message>
        <source>A minor&apos;s consent is given by a guardian; say who.</source>
        <translation>El consentimiento de un menor lo da un tutor; diga quién.</translation>
    </message>
    <message>
        <source>The guardian&apos;s name is too long or no text; type it again.</source>
        <translation>El nombre del tutor es demasiado largo o no es texto; tecléelo otra vez.</translation>
    </message>
    <message>
        <source>Nothing was shared: there is no consent on record. Ask for it and note it (&quot;plumbmark consent&quot;), or share only with a device of your own.</source>
        <translation>No se compartió nada: no hay consentimiento anotado. Pídalo y anótelo («plumbmark consent») o comparta solo con un dispositivo suyo.</translation>
    </message>
    <message>
        <source>Nothing was shared: the consent was withdrawn.</source>
        <translation>No se compartió nada: se retiró el consentimiento.</translation>
    </message>
    <message>
        <source>Nothing was shared: the consent ended on %1; ask again and note it.</source>
        <translation>No se compartió nada: el consentimiento terminó el %1; pregunte otra vez y anótelo.</translation>
    </message>
    <message>
        <source>Nothing was shared: the consent is not for this (%1); ask for it and note it.</source>
        <translation>No se compartió nada: el consentimiento no es para esto (%1); pídalo y anótelo.</translation>
    </message>
    <message>
        <source>Nothing was shared: for a minor a guardian must agree; note who did.</source>
        <translation>No se compartió nada: por un menor debe consentir un tutor; anote quién.</translation>
    </message>
    <message>
        <source>A record&apos;s field &quot;%1&quot; makes no sense; the file is damaged.</source>
        <translation>El campo «%1» de un registro no tiene sentido; el archivo está dañado.</translation>
    </message>
    <message>
        <source>A record is too long; the file is damaged.</source>
        <translation>Un registro es demasiado largo; el archivo está dañado.</translation>
    </message>
    <message>
        <source>A record is not in the form this program writes; the file was changed.</source>
        <translation>Un registro no tiene la forma que escribe este programa; el archivo fue cambiado.</translation>
    </message>
    <message>
        <source>A day must look like 2026-11-25; check it.</source>
        <translation>Un día debe ser como 2026-11-25; compruébelo.</translation>
    </message>
    <message>
        <source>The reason is too long or cannot be read; keep it under 10,000 characters.</source>
        <translation>El motivo es demasiado largo o no se puede leer; no pase de 10 000 caracteres.</translation>
    </message>
    <message>
        <source>The %1 is too long; keep it under 10,000 characters.</source>
        <translation>Demasiado largo (%1); no pase de 10 000 caracteres.</translation>
    </message>
    <message>
        <source>The %1 holds characters that cannot be read; type it again.</source>
        <translation>Contiene caracteres que no se pueden leer (%1); tecléelo otra vez.</translation>
    </message>
    <message>
        <source>This number was made by a newer version of the program.</source>
        <translation>Este número lo hizo una versión más nueva del programa.</translation>
    </message>
    <message>
        <source>The player has no name; give one.</source>
        <translation>El jugador no tiene nombre; póngale uno.</translation>
    </message>
    <message>
        <source>The stature must lie between 50 and 250 cm; check the number.</source>
        <translation>La estatura debe estar entre 50 y 250 cm; compruebe el número.</translation>
    </message>
    <message>
        <source>The day of the lesson must look like 2026-11-25; check it.</source>
        <translation>El día de la clase debe ser como 2026-11-25; compruébelo.</translation>
    </message>
    <message>
        <source>More than 50 tags on one shot; take some away.</source>
        <translation>Más de 50 etiquetas en un golpe; quite algunas.</translation>
    </message>
    <message>
        <source>The clip&apos;s own figures make no sense; bring it in again.</source>
        <translation>Los datos del propio clip no tienen sentido; tráigalo otra vez.</translation>
    </message>
    <message>
        <source>A line of the note is too long or cannot be read; keep it under 10,000 characters.</source>
        <translation>Una línea de la nota es demasiado larga o no se puede leer; no pase de 10 000 caracteres.</translation>
    </message>
    <message>
        <source>The note is empty; tell what you saw, what you said or what comes next.</source>
        <translation>La nota está vacía; diga lo que vio, lo que dijo o lo que viene.</translation>
    </message>
    <message>
        <source>A review lasts more than nothing and up to 30 minutes; check length_ms.</source>
        <translation>Una revisión dura más que nada y hasta 30 minutos; compruebe length_ms.</translation>
    </message>
    <message>
        <source>A review needs at least one act (and at most 20,000).</source>
        <translation>Una revisión necesita al menos una acción (y 20 000 como máximo).</translation>
    </message>
    <message>
        <source>A review begins with a go at 0 ms that names a clip; put it first.</source>
        <translation>Una revisión empieza con un «go» en 0 ms que nombra un clip; póngalo primero.</translation>
    </message>
    <message>
        <source>A review has one voice or up to 1,000 pieces of voices, not both.</source>
        <translation>Una revisión tiene una voz o hasta 1000 trozos de voces, no ambas cosas.</translation>
    </message>
    <message>
        <source>Pieces of the voice must follow each other and end with the review.</source>
        <translation>Los trozos de la voz deben seguirse y terminar con la revisión.</translation>
    </message>
    <message>
        <source>Captions must follow each other and end with the review; check from_ms and to_ms.</source>
        <translation>Los subtítulos deben seguirse y terminar con la revisión; compruebe from_ms y to_ms.</translation>
    </message>
    <message>
        <source>A caption is too long or cannot be read; keep it under 1,000 characters.</source>
        <translation>Un subtítulo es demasiado largo o no se puede leer; no pase de 1000 caracteres.</translation>
    </message>
    <message>
        <source>That stretch is not in the review; give one from its beginning to its end, in seconds of the review.</source>
        <translation>Ese tramo no está en la revisión; dé uno entre su principio y su final, en segundos de la revisión.</translation>
    </message>
    <message>
        <source>The lesson has no spoken review yet; record one first.</source>
        <translation>La clase aún no tiene revisión hablada; grabe antes una.</translation>
    </message>
    <message>
        <source>Nothing of the review would be left; leave something of it.</source>
        <translation>No quedaría nada de la revisión; deje algo.</translation>
    </message>
    <message>
        <source>A pause lasts more than nothing and up to 30 minutes.</source>
        <translation>Una pausa dura más que nada y hasta 30 minutos.</translation>
    </message>
    <message>
        <source>The new stretch holds no acts; record it first.</source>
        <translation>El tramo nuevo no tiene acciones; grábelo antes.</translation>
    </message>
    <message>
        <source>A number is not finite, so it was not saved; mark it again.</source>
        <translation>Un número no es finito, así que no se guardó; márquelo otra vez.</translation>
    </message>
    <message>
        <source>A text is not valid UTF-8, so it was not saved; type it again.</source>
        <translation>Un texto no es UTF-8 válido, así que no se guardó; tecléelo otra vez.</translation>
    </message>
    <message>
        <source>A record is nested too deeply, so it was not saved.</source>
        <translation>Un registro está demasiado anidado, así que no se guardó.</translation>
    </message>
    <message>
        <source>This is not a readable record; the file is damaged.</source>
        <translation>Esto no es un registro legible; el archivo está dañado.</translation>
    </message>
    <message>
        <source>The picture cuts off %1, so what needs them can&apos;t be told.</source>
        <translation>La imagen corta %1; lo que lo necesita no se puede saber.</translation>
    </message>
    <message>
        <source>Leave an arm and a club&apos;s length of room on all sides, from address to finish.</source>
        <translation>Deje un brazo y un palo de sitio por todos los lados, desde la colocación hasta el final.</translation>
    </message>
    <message>
        <source>Nothing tells how fast this was filmed, so there are no times.</source>
        <translation>Nada dice a qué velocidad se filmó, así que no hay tiempos.</translation>
    </message>
    <message>
        <source>Send the camera&apos;s own file, or say how many frames a second were filmed.</source>
        <translation>Envíe el archivo original de la cámara o diga a cuántas imágenes por segundo se filmó.</translation>
    </message>
    <message>
        <source>At %1 frames a second the shaft turns about %2 degrees between two pictures near the hit.</source>
        <translation>A %1 imágenes por segundo la varilla gira unos %2 grados entre dos imágenes cerca del golpe.</translation>
    </message>
    <message>
        <source>Film in slow motion, 120 to 240 frames a second.</source>
        <translation>Filme a cámara lenta, de 120 a 240 imágenes por segundo.</translation>
    </message>
    <message>
        <source>The light comes from behind the player, who is dark against it.</source>
        <translation>La luz viene de detrás del jugador, que queda oscuro.</translation>
    </message>
    <message>
        <source>Film with the sun or the lamps behind the camera.</source>
        <translation>Filme con el sol o las lámparas detrás de la cámara.</translation>
    </message>
    <message>
        <source>It is dark, so edges are unclear and moving parts smear.</source>
        <translation>Está oscuro: los bordes no son claros y lo que se mueve sale borroso.</translation>
    </message>
    <message>
        <source>Film in more light, with an exposure of 1/1000 s or shorter.</source>
        <translation>Filme con más luz, con una exposición de 1/1000 s o menos.</translation>
    </message>
    <message>
        <source>The camera moved; that is taken out, but positions are less sure.</source>
        <translation>La cámara se movió; se compensa, pero las posiciones son menos seguras.</translation>
    </message>
    <message>
        <source>Put the phone on a stand or against a bag.</source>
        <translation>Ponga el teléfono en un trípode o apoyado en una bolsa.</translation>
    </message>
    <message>
        <source>The player fills only %1 % of the picture&apos;s height, so a pixel is worth %2 mm.</source>
        <translation>El jugador llena solo el %1 % del alto de la imagen, así que un píxel vale %2 mm.</translation>
    </message>
    <message>
        <source>Stand 4 to 5 m away with the main lens, the phone upright.</source>
        <translation>Colóquese a 4 o 5 m con la lente principal y el teléfono en vertical.</translation>
    </message>
    <message>
        <source>From %1 m near parts of the body look larger than far ones.</source>
        <translation>Desde %1 m las partes cercanas del cuerpo parecen mayores que las lejanas.</translation>
    </message>
    <message>
        <source>Stand 4 to 5 m away with the main lens.</source>
        <translation>Colóquese a 4 o 5 m con la lente principal.</translation>
    </message>
    <message>
        <source>The %1%2%3 m off the picture&apos;s middle; the slanted look makes up to %4 degrees of false lean.</source>
        <translation>%1%2%3 m fuera del centro de la imagen; la mirada oblicua da hasta %4 grados de inclinación falsa.</translation>
    </message>
    <message>
        <source>Point the camera so that the %1%2 in the middle.</source>
        <translation>Apunte la cámara de modo que %1%2 quede en el centro.</translation>
    </message>
    <message>
        <source>Nothing tells how level the camera stood: every tilt carries %1 degrees of doubt.</source>
        <translation>Nada dice si la cámara estaba nivelada: cada inclinación lleva %1 grados de duda.</translation>
    </message>
    <message>
        <source>Use the level of the camera, or film something plumb (a post, a door frame) and mark it.</source>
        <translation>Use el nivel de la cámara o filme algo a plomo (un poste, un marco de puerta) y márquelo.</translation>
    </message>
    <message>
        <source>Nothing shows where the target line runs: the camera&apos;s turn is known to %1 degrees only.</source>
        <translation>Nada muestra por dónde va la línea al objetivo: el giro de la cámara solo se conoce a %1 grados.</translation>
    </message>
    <message>
        <source>Lay an alignment stick on the target line, in view.</source>
        <translation>Ponga una varilla de alineación en la línea al objetivo, a la vista.</translation>
    </message>
    <message>
        <source>The disk is full, so %1 was not saved; free some space and save again.</source>
        <translation>El disco está lleno, así que no se guardó %1; libere espacio y guarde otra vez.</translation>
    </message>
    <message>
        <source>The folder for %1 does not exist; choose another folder.</source>
        <translation>La carpeta para %1 no existe; elija otra.</translation>
    </message>
    <message>
        <source>Saving %1 failed; check the disk and try again.</source>
        <translation>No se pudo guardar %1; revise el disco e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a folder; give the name of a file to write.</source>
        <translation>«%1» es una carpeta; dé el nombre de un archivo para escribir.</translation>
    </message>
    <message>
        <source>The file &quot;%1&quot; cannot be read; check that it is there and may be read.</source>
        <translation>No se puede leer el archivo «%1»; compruebe que está ahí y que se puede leer.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a file; choose a file.</source>
        <translation>«%1» no es un archivo; elija un archivo.</translation>
    </message>
    <message>
        <source>There is no file &quot;%1&quot;; check the name.</source>
        <translation>No hay archivo «%1»; compruebe el nombre.</translation>
    </message>
    <message>
        <source>The file &quot;%1&quot; cannot be read; check its permissions.</source>
        <translation>No se puede leer el archivo «%1»; revise sus permisos.</translation>
    </message>
    <message>
        <source>There is no room left on the disk; make some and try again.</source>
        <translation>No queda sitio en el disco; libere e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>A film could not be copied for sharing; check the free space and the rights of the library&apos;s folder.</source>
        <translation>No se pudo copiar un vídeo para compartir; revise el espacio libre y los permisos de la carpeta de la biblioteca.</translation>
    </message>
    <message>
        <source>A film is in a container from which place and device cannot be taken out; bring it in as MP4, or share without the clips.</source>
        <translation>Un vídeo está en un contenedor del que no se pueden quitar lugar y dispositivo; tráigalo como MP4 o comparta sin los clips.</translation>
    </message>
    <message>
        <source>A film cannot be copied without changing it; bring it in as MP4, or share without the clips.</source>
        <translation>Un vídeo no se puede copiar sin cambiarlo; tráigalo como MP4 o comparta sin los clips.</translation>
    </message>
    <message>
        <source>The file %1 can&apos;t be read; check its access rights or copy it again.</source>
        <translation>No se puede leer el archivo %1; revise sus permisos o cópielo otra vez.</translation>
    </message>
    <message>
        <source>The clip can&apos;t be read; copy it again.</source>
        <translation>No se puede leer el clip; cópielo otra vez.</translation>
    </message>
    <message>
        <source>There is no file %1; check the name and the folder.</source>
        <translation>No hay archivo %1; compruebe el nombre y la carpeta.</translation>
    </message>
    <message>
        <source>The file %1 is empty; copy it again from the camera.</source>
        <translation>El archivo %1 está vacío; cópielo otra vez de la cámara.</translation>
    </message>
    <message>
        <source>The clip has %1 frames; ask for one of those.</source>
        <translation>El clip tiene %1 imágenes; pida una de ellas.</translation>
    </message>
    <message>
        <source>The clip ends before any picture of it can be read; copy it again from the camera.</source>
        <translation>El clip termina antes de poder leer una imagen; cópielo otra vez de la cámara.</translation>
    </message>
    <message>
        <source>The clip&apos;s pictures can&apos;t be read here; convert it to H.264 or HEVC.</source>
        <translation>Las imágenes del clip no se pueden leer aquí; conviértalo a H.264 o HEVC.</translation>
    </message>
    <message>
        <source>The clip asks for an odd turn; it was turned by the nearest right angle.</source>
        <translation>El clip pide un giro extraño; se giró al ángulo recto más cercano.</translation>
    </message>
    <message>
        <source>The file ends early; %1%2 could be read.</source>
        <translation>El archivo termina antes de tiempo; se pudo leer %1%2.</translation>
    </message>
    <message>
        <source>Parts of the file are damaged; some frames may look wrong.</source>
        <translation>Partes del archivo están dañadas; algunas imágenes pueden verse mal.</translation>
    </message>
    <message>
        <source>The clip is shown mirrored; check that left and right are right.</source>
        <translation>El clip se muestra en espejo; compruebe izquierda y derecha.</translation>
    </message>
    <message>
        <source>The clip was already slowed down in parts, so its times can&apos;t be used; choose the original recording.</source>
        <translation>El clip ya fue ralentizado por partes y sus tiempos no sirven; elija la grabación original.</translation>
    </message>
    <message>
        <source>Frame %1 of the clip can&apos;t be read; go to another frame or copy the clip again.</source>
        <translation>No se puede leer la imagen %1 del clip; vaya a otra o copie el clip otra vez.</translation>
    </message>
    <message>
        <source>These frames of the clip can&apos;t be read; copy the clip again.</source>
        <translation>Estas imágenes del clip no se pueden leer; copie el clip otra vez.</translation>
    </message>
    <message>
        <source>There is no such frame in this part of the clip.</source>
        <translation>No hay tal imagen en esta parte del clip.</translation>
    </message>
    <message>
        <source>There are no such frames in this part of the clip.</source>
        <translation>No hay tales imágenes en esta parte del clip.</translation>
    </message>
    <message>
        <source>The take &quot;%1&quot; could not be written; check the free space and the rights of the folder.</source>
        <translation>No se pudo escribir la toma «%1»; revise el espacio libre y los permisos de la carpeta.</translation>
    </message>
    <message>
        <source>There is not enough memory to film; close other programs.</source>
        <translation>No hay memoria para filmar; cierre otros programas.</translation>
    </message>
    <message>
        <source>This build has no working H.264 encoder, so nothing can be filmed; install an FFmpeg that has one.</source>
        <translation>Esta versión no tiene un codificador H.264 que funcione y no se puede filmar; instale un FFmpeg que lo tenga.</translation>
    </message>
    <message>
        <source>The camera&apos;s picture changed its size; start the camera again.</source>
        <translation>La imagen de la cámara cambió de tamaño; arranque la cámara otra vez.</translation>
    </message>
    <message>
        <source>A picture&apos;s time is not later than the one before.</source>
        <translation>El tiempo de una imagen no es posterior al de la anterior.</translation>
    </message>
    <message>
        <source>A picture could not be coded; try a smaller picture.</source>
        <translation>No se pudo codificar una imagen; pruebe con una más pequeña.</translation>
    </message>
    <message>
        <source>This build can&apos;t write takes; install an FFmpeg that can.</source>
        <translation>Esta versión no puede escribir tomas; instale un FFmpeg que pueda.</translation>
    </message>
    <message>
        <source>The take &quot;%1&quot; can&apos;t be created; choose a folder that exists and can be written to.</source>
        <translation>No se puede crear la toma «%1»; elija una carpeta que exista y en la que se pueda escribir.</translation>
    </message>
    <message>
        <source>This build has no working AAC encoder; install an FFmpeg that has one.</source>
        <translation>Esta versión no tiene un codificador AAC que funcione; instale un FFmpeg que lo tenga.</translation>
    </message>
    <message>
        <source>A take must begin with a key picture.</source>
        <translation>Una toma debe empezar con una imagen clave.</translation>
    </message>
    <message>
        <source>The take has no picture.</source>
        <translation>La toma no tiene imagen.</translation>
    </message>
    <message>
        <source>A picture of %1 by %2 pixels can&apos;t be filmed; use even sizes from 2 to 8192.</source>
        <translation>Una imagen de %1 por %2 píxeles no se puede filmar; use tamaños pares de 2 a 8192.</translation>
    </message>
    <message>
        <source>The picture is damaged; take or copy it again.</source>
        <translation>La imagen está dañada; tómela o cópiela otra vez.</translation>
    </message>
    <message>
        <source>The file %1 is empty; copy it again.</source>
        <translation>El archivo %1 está vacío; cópielo otra vez.</translation>
    </message>
    <message>
        <source>The picture could not be made; this build needs FFmpeg&apos;s %1 encoder.</source>
        <translation>No se pudo hacer la imagen; esta versión necesita el codificador %1 de FFmpeg.</translation>
    </message>
    <message>
        <source>The picture is empty; copy it again.</source>
        <translation>La imagen está vacía; cópiela otra vez.</translation>
    </message>
    <message>
        <source>This is not a PNG or JPEG picture; choose one of those.</source>
        <translation>Esto no es una imagen PNG o JPEG; elija una.</translation>
    </message>
    <message>
        <source>The picture is larger than %1 pixels a side; make it smaller.</source>
        <translation>La imagen pasa de %1 píxeles por lado; hágala más pequeña.</translation>
    </message>
    <message>
        <source>The picture &quot;%1&quot; can&apos;t be written; choose a folder that exists, has space and can be written to.</source>
        <translation>No se puede escribir la imagen «%1»; elija una carpeta que exista, tenga sitio y permita escribir.</translation>
    </message>
    <message>
        <source>The picture &quot;%1&quot; can&apos;t be written; choose another name or folder.</source>
        <translation>No se puede escribir la imagen «%1»; elija otro nombre o carpeta.</translation>
    </message>
    <message>
        <source>The voice could not be kept; this build needs FFmpeg&apos;s AAC encoder.</source>
        <translation>No se pudo guardar la voz; esta versión necesita el codificador AAC de FFmpeg.</translation>
    </message>
    <message>
        <source>The sound lasts longer than half an hour; cut it first.</source>
        <translation>El sonido dura más de media hora; córtelo antes.</translation>
    </message>
    <message>
        <source>No sound can be read from this file; record it again as WAV or M4A.</source>
        <translation>No se puede leer sonido de este archivo; grábelo otra vez como WAV o M4A.</translation>
    </message>
    <message>
        <source>The clip &quot;%1&quot; could not be written; check the free space and the rights of the folder.</source>
        <translation>No se pudo escribir el clip «%1»; revise el espacio libre y los permisos de la carpeta.</translation>
    </message>
    <message>
        <source>This build has no working AAC encoder for this sound, so the clip can&apos;t carry sound; write it without, or install an FFmpeg that has one.</source>
        <translation>Esta versión no tiene codificador AAC para este sonido y el clip no puede llevarlo; escríbalo sin sonido o instale un FFmpeg que lo tenga.</translation>
    </message>
    <message>
        <source>This build can&apos;t write MP4 files; install an FFmpeg that can.</source>
        <translation>Esta versión no puede escribir archivos MP4; instale un FFmpeg que pueda.</translation>
    </message>
    <message>
        <source>The clip &quot;%1&quot; can&apos;t be created; choose a folder that exists and can be written to.</source>
        <translation>No se puede crear el clip «%1»; elija una carpeta que exista y en la que se pueda escribir.</translation>
    </message>
    <message>
        <source>A picture could not be encoded; try another codec or size.</source>
        <translation>No se pudo codificar una imagen; pruebe otro códec o tamaño.</translation>
    </message>
    <message>
        <source>A picture has another size than the clip; give every picture the clip&apos;s size.</source>
        <translation>Una imagen tiene otro tamaño que el clip; dé a todas el tamaño del clip.</translation>
    </message>
    <message>
        <source>A picture&apos;s time is not later than the one before; give rising times from 0 on.</source>
        <translation>El tiempo de una imagen no es posterior al de la anterior; dé tiempos crecientes desde 0.</translation>
    </message>
    <message>
        <source>There is not enough memory to write the clip; close other programs.</source>
        <translation>No hay memoria para escribir el clip; cierre otros programas.</translation>
    </message>
    <message>
        <source>The clip was begun without sound; begin it with a sound rate.</source>
        <translation>El clip se empezó sin sonido; empiécelo con una frecuencia de sonido.</translation>
    </message>
    <message>
        <source>The clip has no picture yet; write at least one.</source>
        <translation>El clip aún no tiene imagen; escriba al menos una.</translation>
    </message>
    <message>
        <source>A clip of %1 by %2 pixels can&apos;t be written; use even sizes from 2 to 8192.</source>
        <translation>No se puede escribir un clip de %1 por %2 píxeles; use tamaños pares de 2 a 8192.</translation>
    </message>
    <message>
        <source>The clip can&apos;t be written with these settings; use codec h264 or hevc, up to 2000 frames a second and a rotation in steps of 90 degrees.</source>
        <translation>El clip no se puede escribir con estos ajustes; use h264 o hevc, hasta 2000 imágenes por segundo y un giro en pasos de 90 grados.</translation>
    </message>
    <message>
        <source>The shared folder&apos;s number cannot be read, so nothing was exchanged; check the folder and try again.</source>
        <translation>No se puede leer el número de la carpeta compartida, así que no se intercambió nada; revise la carpeta e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>By the year of birth on the body card the player is not of age yet, so a guardian must agree; say who.</source>
        <translation>Según el año de nacimiento de la ficha, el jugador aún no es mayor de edad, así que debe consentir un tutor; diga quién.</translation>
    </message>
    <message>
        <source>The names of known devices cannot be read, so nothing was changed; check the disk and try again.</source>
        <translation>No se pueden leer los nombres de los dispositivos conocidos, así que no se cambió nada; revise el disco e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>The folder &quot;%1&quot; cannot be read; check the disk and try again.</source>
        <translation>No se puede leer la carpeta «%1»; revise el disco e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>The lesson&apos;s plan has no such priority; keep a plan first, then give 1 or 2.</source>
        <translation>El plan de la clase no tiene esa prioridad; guarde antes un plan y dé luego 1 o 2.</translation>
    </message>
    <message>
        <source>The film of that clip is not here; import a lesson file that holds it.</source>
        <translation>El vídeo de ese clip no está aquí; incorpore un archivo de clase que lo contenga.</translation>
    </message>
</context>
<context>
    <name>DifferenceDelegate</name>
    <message>
        <source>%1 against %2</source>
        <translation>%1 frente a %2</translation>
    </message>
</context>
<context>
    <name>DrawTool</name>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>Plumb line</source>
        <translation>Línea de plomada</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Ángulo</translation>
    </message>
    <message>
        <source>Arrow</source>
        <translation>Flecha</translation>
    </message>
    <message>
        <source>Ellipse</source>
        <translation>Elipse</translation>
    </message>
    <message>
        <source>Freehand</source>
        <translation>A mano alzada</translation>
    </message>
    <message>
        <source>Word</source>
        <translation>Palabra</translation>
    </message>
    <message>
        <source>Tap three times: end, corner, end.</source>
        <translation>Toque tres veces: extremo, vértice, extremo.</translation>
    </message>
    <message>
        <source>Tap the place on the ground; or draw from it upward.</source>
        <translation>Toque el punto del suelo; o trace desde él hacia arriba.</translation>
    </message>
    <message>
        <source>Type the word, then tap the picture.</source>
        <translation>Escriba la palabra y toque la imagen.</translation>
    </message>
    <message>
        <source>Draw with one finger on the picture.</source>
        <translation>Dibuje con un dedo sobre la imagen.</translation>
    </message>
    <message>
        <source>Keeps to</source>
        <translation>Ligado a</translation>
    </message>
    <message>
        <source>The ground</source>
        <translation>Al suelo</translation>
    </message>
    <message>
        <source>The nearest point</source>
        <translation>Al punto más cercano</translation>
    </message>
    <message>
        <source>The picture</source>
        <translation>A la imagen</translation>
    </message>
    <message>
        <source>Wipe away %1</source>
        <translation>Borrar %1</translation>
    </message>
</context>
<context>
    <name>EmptyLessonsPanel</name>
    <message>
        <source>No lessons yet</source>
        <translation>Aún no hay clases</translation>
    </message>
    <message>
        <source>Bring in a clip of a swing: it is marked, measured and judged here, on this device.</source>
        <translation>Traiga un clip de un swing: se marca, se mide y se valora aquí, en este dispositivo.</translation>
    </message>
    <message>
        <source>Bring in a clip</source>
        <translation>Traer un clip</translation>
    </message>
    <message>
        <source>Try a demo swing</source>
        <translation>Probar un swing de demostración</translation>
    </message>
</context>
<context>
    <name>ExchangeDevicesPanel</name>
    <message>
        <source>Send to a device beside this one</source>
        <translation>Enviar a un dispositivo cercano</translation>
    </message>
    <message>
        <source>Read this code with the other device, or type the ticket there. The way is open while it is shown, for one sending.</source>
        <translation>Lea este código con el otro dispositivo o escriba allí el tique. El camino está abierto mientras se muestra, para un solo envío.</translation>
    </message>
    <message>
        <source>Code of the ticket</source>
        <translation>Código del tique</translation>
    </message>
    <message>
        <source>Ticket %1</source>
        <translation>Tique %1</translation>
    </message>
    <message>
        <source>Send this lesson</source>
        <translation>Enviar esta clase</translation>
    </message>
    <message>
        <source>Receive</source>
        <translation>Recibir</translation>
    </message>
    <message>
        <source>Ticket of the other device</source>
        <translation>Tique del otro dispositivo</translation>
    </message>
    <message>
        <source>plumbmark: and what follows</source>
        <translation>plumbmark: y lo que sigue</translation>
    </message>
    <message>
        <source>Receive the lesson</source>
        <translation>Recibir la clase</translation>
    </message>
    <message>
        <source>Shared folder</source>
        <translation>Carpeta compartida</translation>
    </message>
    <message>
        <source>A stick, a network drive, or a folder that another program carries around. Everything here goes to your own devices that reach it; what is missed is caught up with.</source>
        <translation>Una memoria, una unidad de red o una carpeta que otro programa lleva de un lado a otro. Todo lo de aquí va a sus propios dispositivos que la alcanzan; lo que falte se recupera.</translation>
    </message>
    <message>
        <source>Folder to exchange through</source>
        <translation>Carpeta de intercambio</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Or another folder</source>
        <translation>U otra carpeta</translation>
    </message>
    <message>
        <source>Use this folder</source>
        <translation>Usar esta carpeta</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Intercambiar ahora</translation>
    </message>
</context>
<context>
    <name>ExchangeFilePanel</name>
    <message>
        <source>Save a lesson to a file</source>
        <translation>Guardar una clase en un archivo</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Carpeta</translation>
    </message>
    <message>
        <source>Passphrase (seals the file; leave it empty for none)</source>
        <translation>Contraseña (sella el archivo; vacía para ninguna)</translation>
    </message>
    <message>
        <source>Save the lesson file</source>
        <translation>Guardar el archivo de clase</translation>
    </message>
    <message>
        <source>Open a lesson file</source>
        <translation>Abrir un archivo de clase</translation>
    </message>
    <message>
        <source>There is no lesson file in this folder; choose another one above.</source>
        <translation>En esta carpeta no hay archivo de clase; elija otra arriba.</translation>
    </message>
    <message>
        <source>Check lesson file %1</source>
        <translation>Comprobar el archivo de clase %1</translation>
    </message>
    <message>
        <source>Take the lesson in</source>
        <translation>Incorporar la clase</translation>
    </message>
</context>
<context>
    <name>ExchangePage</name>
    <message>
        <source>Exchange and keep</source>
        <translation>Intercambiar y conservar</translation>
    </message>
    <message>
        <source>Files</source>
        <translation>Archivos</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Dispositivos</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Consentimiento</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Copias</translation>
    </message>
    <message>
        <source>Settle (%1)</source>
        <translation>Resolver (%1)</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Resolver</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>ExchangeTravelPanel</name>
    <message>
        <source>Lesson</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>There is no lesson to send yet.</source>
        <translation>Aún no hay clase que enviar.</translation>
    </message>
    <message>
        <source>It goes to</source>
        <translation>Va a</translation>
    </message>
    <message>
        <source>somebody else</source>
        <translation>otra persona</translation>
    </message>
    <message>
        <source>a device of mine</source>
        <translation>un dispositivo mío</translation>
    </message>
    <message>
        <source>Clips go as they were filmed.</source>
        <translation>Los clips van tal como se filmaron.</translation>
    </message>
    <message>
        <source>Clips go without place, device and dates.</source>
        <translation>Los clips van sin lugar, dispositivo ni fechas.</translation>
    </message>
    <message>
        <source>What travels</source>
        <translation>Qué viaja</translation>
    </message>
    <message>
        <source>Clips</source>
        <translation>Clips</translation>
    </message>
    <message>
        <source>Health notes</source>
        <translation>Notas de salud</translation>
    </message>
    <message>
        <source>Heads covered</source>
        <translation>Cabezas cubiertas</translation>
    </message>
    <message>
        <source>Covered copies of this lesson&apos;s clips were looked through and released.</source>
        <translation>Las copias cubiertas de los clips de esta clase se revisaron y liberaron.</translation>
    </message>
    <message>
        <source>Look at every picture below. Is nobody to be recognised?</source>
        <translation>Mire cada imagen de abajo. ¿No se reconoce a nadie?</translation>
    </message>
    <message>
        <source>Covered copies are made first; you look them through before they may travel.</source>
        <translation>Primero se hacen copias cubiertas; usted las revisa antes de que puedan viajar.</translation>
    </message>
    <message>
        <source>Cover the heads</source>
        <translation>Cubrir las cabezas</translation>
    </message>
    <message>
        <source>Cover the heads again</source>
        <translation>Cubrir las cabezas otra vez</translation>
    </message>
    <message>
        <source>I have looked: release</source>
        <translation>Lo he mirado: liberar</translation>
    </message>
    <message>
        <source>Covered picture %1</source>
        <translation>Imagen cubierta %1</translation>
    </message>
    <message>
        <source>%1: look closely</source>
        <translation>%1: mire con atención</translation>
    </message>
</context>
<context>
    <name>FilmAnswersPanel</name>
    <message>
        <source>Player</source>
        <translation>Jugador</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message>
        <source>Player&apos;s hand</source>
        <translation>Mano del jugador</translation>
    </message>
    <message>
        <source>Club</source>
        <translation>Palo</translation>
    </message>
    <message>
        <source>Loft</source>
        <translation>Loft</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Shot</source>
        <translation>Golpe</translation>
    </message>
    <message>
        <source>Filmed at, frames a second</source>
        <translation>Grabado a, imágenes por segundo</translation>
    </message>
    <message>
        <source>Mirrored</source>
        <translation>En espejo</translation>
    </message>
    <message>
        <source>Height in cm, if known</source>
        <translation>Estatura en cm, si se sabe</translation>
    </message>
    <message>
        <source>for example 178</source>
        <translation>por ejemplo 178</translation>
    </message>
    <message>
        <source>Choose a film first.</source>
        <translation>Elija primero un vídeo.</translation>
    </message>
    <message>
        <source>Read the swing</source>
        <translation>Leer el swing</translation>
    </message>
    <message>
        <source>Answered as for this player&apos;s last swing; change what is different today.</source>
        <translation>Rellenado como en el último swing de este jugador; cambie lo que hoy sea distinto.</translation>
    </message>
</context>
<context>
    <name>FilmPage</name>
    <message>
        <source>Practice</source>
        <translation>Práctica</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Grabar</translation>
    </message>
    <message>
        <source>Armed</source>
        <translation>Armada</translation>
    </message>
    <message>
        <source>Armed: swings are cut out by themselves</source>
        <translation>Armada: los swings se recortan solos</translation>
    </message>
    <message>
        <source>Not armed: only the button cuts</source>
        <translation>Sin armar: solo corta el botón</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Cut now</source>
        <translation>Cortar ahora</translation>
    </message>
    <message>
        <source>Keeps the last seconds as a swing, with or without a hit</source>
        <translation>Guarda los últimos segundos como swing, con o sin golpe</translation>
    </message>
</context>
<context>
    <name>FilmPickPanel</name>
    <message>
        <source>Folder %1</source>
        <translation>Carpeta %1</translation>
    </message>
    <message>
        <source>Folder above</source>
        <translation>Carpeta superior</translation>
    </message>
    <message>
        <source>No films and no folders here. Choose another folder above, or drop a film on this window.</source>
        <translation>Aquí no hay vídeos ni carpetas. Elija otra carpeta arriba o suelte un vídeo en esta ventana.</translation>
    </message>
    <message>
        <source>Films in this folder</source>
        <translation>Vídeos de esta carpeta</translation>
    </message>
    <message>
        <source>Film %1</source>
        <translation>Vídeo %1</translation>
    </message>
</context>
<context>
    <name>FilmSetupPanel</name>
    <message>
        <source>Bring in a clip instead</source>
        <translation>Traer un clip en su lugar</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Jugador</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message>
        <source>Player&apos;s hand</source>
        <translation>Mano del jugador</translation>
    </message>
    <message>
        <source>Club</source>
        <translation>Palo</translation>
    </message>
    <message>
        <source>Behind the player on the line of the hands, lens at hand height, 4 to 5 metres away, the middle of the picture on the hands. A stick on the target line in view, the sun behind the camera. Never stand on the ball&apos;s line.</source>
        <translation>Detrás del jugador, en la línea de las manos, objetivo a la altura de las manos, a 4 o 5 metros y con las manos en el centro de la imagen. Una varilla en la línea al objetivo a la vista y el sol detrás de la cámara. No se ponga nunca en la línea de la bola.</translation>
    </message>
    <message>
        <source>Square to the player&apos;s chest, lens at hand height, 4 to 5 metres away, the middle of the picture on the ball. The main lens, not the ultra-wide one; a stick on the target line in view, the sun behind the camera.</source>
        <translation>De frente al pecho del jugador, objetivo a la altura de las manos, a 4 o 5 metros y con la bola en el centro de la imagen. La lente principal, no la ultra gran angular; una varilla en la línea al objetivo a la vista y el sol detrás de la cámara.</translation>
    </message>
    <message>
        <source>Start the camera</source>
        <translation>Encender la cámara</translation>
    </message>
    <message>
        <source>Practise at home</source>
        <translation>Practicar en casa</translation>
    </message>
    <message>
        <source>The phone on a stand says after a swing whether the checkpoint holds</source>
        <translation>El teléfono en un soporte dice tras cada swing si el punto de control se cumple</translation>
    </message>
    <message>
        <source>Body card: ask before the first full swing</source>
        <translation>Ficha corporal: pregunte antes del primer swing completo</translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <source>Checks</source>
        <translation>Control</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Útiles</translation>
    </message>
    <message>
        <source>Checkpoints</source>
        <translation>Puntos de control</translation>
    </message>
    <message>
        <source>Good: keep it</source>
        <translation>Bien: manténgalo</translation>
    </message>
    <message>
        <source>Watch</source>
        <translation>Vigilar</translation>
    </message>
    <message>
        <source>Work on it</source>
        <translation>A trabajar</translation>
    </message>
    <message>
        <source>Cannot tell yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>No checkpoint fits this view and shot.</source>
        <translation>Ningún punto de control encaja con esta vista y este golpe.</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>Times and tempo wait: at how many frames a second was it filmed?</source>
        <translation>Los tiempos y el tempo esperan: ¿a cuántas imágenes por segundo se filmó?</translation>
    </message>
</context>
<context>
    <name>FlightButton</name>
    <message>
        <source>Ball flight: %1</source>
        <translation>Vuelo de bola: %1</translation>
    </message>
</context>
<context>
    <name>GroupPage</name>
    <message>
        <source>Group lesson</source>
        <translation>Clase de grupo</translation>
    </message>
    <message>
        <source>End the group lesson</source>
        <translation>Terminar la clase de grupo</translation>
    </message>
    <message>
        <source>Film this player</source>
        <translation>Filmar a este jugador</translation>
    </message>
    <message>
        <source>Bring in a clip</source>
        <translation>Traer un clip</translation>
    </message>
    <message>
        <source>This player&apos;s page</source>
        <translation>Página de este jugador</translation>
    </message>
    <message>
        <source>Look around before every swing; everybody else stands behind the line.</source>
        <translation>Mire alrededor antes de cada swing; los demás, detrás de la línea.</translation>
    </message>
    <message>
        <source>Give the turn to %1</source>
        <translation>Dar el turno a %1</translation>
    </message>
</context>
<context>
    <name>GroupStrip</name>
    <message>
        <source>Turn of %1</source>
        <translation>Turno de %1</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Siguiente: %1</translation>
    </message>
</context>
<context>
    <name>InboxDelegate</name>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open the lesson of %1</source>
        <translation>Abrir la clase de %1</translation>
    </message>
    <message>
        <source>Please film again</source>
        <translation>Filme otra vez, por favor</translation>
    </message>
    <message>
        <source>Please film again: %1</source>
        <translation>Filme otra vez, por favor: %1</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>Respondido</translation>
    </message>
    <message>
        <source>Answered: %1</source>
        <translation>Respondido: %1</translation>
    </message>
    <message>
        <source>Because (empty: what limited the clips)</source>
        <translation>Porque (vacío: lo que limitó los clips)</translation>
    </message>
    <message>
        <source>Look at the clips and ask</source>
        <translation>Mirar los clips y pedirlo</translation>
    </message>
    <message>
        <source>Ask with this reason</source>
        <translation>Pedirlo con este motivo</translation>
    </message>
</context>
<context>
    <name>InboxPage</name>
    <message>
        <source>Sent in</source>
        <translation>Enviados</translation>
    </message>
    <message>
        <source>Nobody is waiting.</source>
        <translation>Nadie espera.</translation>
    </message>
    <message>
        <source>Looking at the clips, %1 per cent</source>
        <translation>Mirando los clips, %1 por ciento</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>For the student:
%1</source>
        <translation>Para el alumno:
%1</translation>
    </message>
    <message>
        <source>Another lesson waits (an answer within three days)</source>
        <translation>Otra clase espera (respuesta en tres días)</translation>
    </message>
    <message>
        <source>Waits for you: %1</source>
        <translation>Le espera: %1</translation>
    </message>
    <message>
        <source>A card for students: how to film and what to write</source>
        <translation>Una tarjeta para alumnos: cómo filmar y qué escribir</translation>
    </message>
    <message>
        <source>For whom (may stay empty)</source>
        <translation>Para quién (puede quedar vacío)</translation>
    </message>
    <message>
        <source>Your name (may stay empty)</source>
        <translation>Su nombre (puede quedar vacío)</translation>
    </message>
    <message>
        <source>By when (may stay empty)</source>
        <translation>Para cuándo (puede quedar vacío)</translation>
    </message>
    <message>
        <source>What you want to see (may stay empty)</source>
        <translation>Qué quiere ver (puede quedar vacío)</translation>
    </message>
    <message>
        <source>Make the card</source>
        <translation>Hacer la tarjeta</translation>
    </message>
</context>
<context>
    <name>Language</name>
    <message>
        <source>As the device</source>
        <translation>Como el dispositivo</translation>
    </message>
</context>
<context>
    <name>LessonDelegate</name>
    <message>
        <source>No swing in this lesson yet.</source>
        <translation>Aún no hay ningún swing en esta clase.</translation>
    </message>
    <message>
        <source>Cause and plan</source>
        <translation>Causa y plan</translation>
    </message>
    <message>
        <source>Cause and plan of %1, %2</source>
        <translation>Causa y plan de %1, %2</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Review of %1, %2</source>
        <translation>Revisión de %1, %2</translation>
    </message>
</context>
<context>
    <name>LessonsPage</name>
    <message>
        <source>Lessons</source>
        <translation>Clases</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Grabar</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Light colours for the sun</source>
        <translation>Colores claros para el sol</translation>
    </message>
    <message>
        <source>Dark colours for indoors</source>
        <translation>Colores oscuros para interior</translation>
    </message>
    <message>
        <source>Find a lesson</source>
        <translation>Buscar una clase</translation>
    </message>
    <message>
        <source>player, title, wish</source>
        <translation>jugador, título, deseo</translation>
    </message>
    <message>
        <source>Bring in a clip</source>
        <translation>Traer un clip</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Jugadores</translation>
    </message>
    <message>
        <source>Exchange and keep</source>
        <translation>Intercambiar y conservar</translation>
    </message>
    <message>
        <source>Sent in</source>
        <translation>Enviados</translation>
    </message>
</context>
<context>
    <name>LivePicturePanel</name>
    <message>
        <source>Live picture of the camera</source>
        <translation>Imagen en directo de la cámara</translation>
    </message>
    <message>
        <source>Keeping a swing.</source>
        <translation>Guardando un swing.</translation>
    </message>
    <message>
        <source>The picture is right.</source>
        <translation>La imagen es correcta.</translation>
    </message>
    <message>
        <source>No microphone: swings are told by their motion alone.</source>
        <translation>Sin micrófono: los swings se reconocen solo por el movimiento.</translation>
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
        <translation>Situarlo tocando la imagen</translation>
    </message>
    <message>
        <source>Not visible here</source>
        <translation>Aquí no se ve</translation>
    </message>
    <message>
        <source>Done with this mark</source>
        <translation>Marca terminada</translation>
    </message>
    <message>
        <source>Mark to the left</source>
        <translation>Marca a la izquierda</translation>
    </message>
    <message>
        <source>Mark up</source>
        <translation>Marca arriba</translation>
    </message>
    <message>
        <source>Mark down</source>
        <translation>Marca abajo</translation>
    </message>
    <message>
        <source>Mark to the right</source>
        <translation>Marca a la derecha</translation>
    </message>
    <message>
        <source>Take my mark away here</source>
        <translation>Quitar aquí mi marca</translation>
    </message>
</context>
<context>
    <name>MomentStrip</name>
    <message>
        <source>Key moments</source>
        <translation>Momentos clave</translation>
    </message>
    <message>
        <source>found by %1</source>
        <translation>hallado por %1</translation>
    </message>
    <message>
        <source>No key moment could be told in this clip.</source>
        <translation>En este clip no se reconoció ningún momento clave.</translation>
    </message>
</context>
<context>
    <name>MomentsTool</name>
    <message>
        <source>Key moments to set</source>
        <translation>Momentos clave por fijar</translation>
    </message>
    <message>
        <source>Go to the frame, then tap the moment&apos;s flag. The picture shows: %1.</source>
        <translation>Vaya al fotograma y toque la bandera del momento. Se ve: %1.</translation>
    </message>
    <message>
        <source>Give “%1” back to the software</source>
        <translation>Devolver «%1» al programa</translation>
    </message>
    <message>
        <source>Set “%1” here</source>
        <translation>Fijar «%1» aquí</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>PainQuestion</name>
    <message>
        <source>Pain now</source>
        <translation>Dolor ahora</translation>
    </message>
    <message>
        <source>Pain now: where?</source>
        <translation>Dolor ahora: ¿dónde?</translation>
    </message>
    <message>
        <source>Pain: %1</source>
        <translation>Dolor: %1</translation>
    </message>
    <message>
        <source>%1: how much, from 0 (none) to 10 (the worst there is)?</source>
        <translation>%1: ¿cuánto, de 0 (nada) a 10 (el peor posible)?</translation>
    </message>
    <message>
        <source>%1: %2 of 10</source>
        <translation>%1: %2 de 10</translation>
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
        <translation>% de la estatura</translation>
    </message>
    <message>
        <source>stance widths</source>
        <translation>anchos de stance</translation>
    </message>
    <message>
        <source>hip-joint distances</source>
        <translation>distancias entre caderas</translation>
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
        <translation>Colocación</translation>
    </message>
    <message>
        <source>Takeaway</source>
        <translation>Inicio de subida</translation>
    </message>
    <message>
        <source>Lead arm level, back</source>
        <translation>Brazo delantero horizontal, subida</translation>
    </message>
    <message>
        <source>Start down</source>
        <translation>Inicio de bajada</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Punto alto</translation>
    </message>
    <message>
        <source>Lead arm level, down</source>
        <translation>Brazo delantero horizontal, bajada</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Impact</source>
        <translation>Impacto</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Suelta del palo</translation>
    </message>
    <message>
        <source>Follow-through</source>
        <translation>Paso por la bola</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>Are words like Address written with a small letter inside a sentence? Answer yes or no.</comment>
        <translation>yes</translation>
    </message>
    <message>
        <source>Nose</source>
        <translation>Nariz</translation>
    </message>
    <message>
        <source>Head centre</source>
        <translation>Centro de la cabeza</translation>
    </message>
    <message>
        <source>Crown of the head</source>
        <translation>Coronilla</translation>
    </message>
    <message>
        <source>Head edge, target or ball side</source>
        <translation>Borde de la cabeza, lado del objetivo o de la bola</translation>
    </message>
    <message>
        <source>Head edge, other side</source>
        <translation>Borde de la cabeza, otro lado</translation>
    </message>
    <message>
        <source>Lead ear</source>
        <translation>Oreja delantera</translation>
    </message>
    <message>
        <source>Trail ear</source>
        <translation>Oreja trasera</translation>
    </message>
    <message>
        <source>Neck base</source>
        <translation>Base del cuello</translation>
    </message>
    <message>
        <source>Lead shoulder</source>
        <translation>Hombro delantero</translation>
    </message>
    <message>
        <source>Trail shoulder</source>
        <translation>Hombro trasero</translation>
    </message>
    <message>
        <source>Lead elbow</source>
        <translation>Codo delantero</translation>
    </message>
    <message>
        <source>Trail elbow</source>
        <translation>Codo trasero</translation>
    </message>
    <message>
        <source>Lead wrist</source>
        <translation>Muñeca delantera</translation>
    </message>
    <message>
        <source>Trail wrist</source>
        <translation>Muñeca trasera</translation>
    </message>
    <message>
        <source>Lead hip</source>
        <translation>Cadera delantera</translation>
    </message>
    <message>
        <source>Trail hip</source>
        <translation>Cadera trasera</translation>
    </message>
    <message>
        <source>Lead knee</source>
        <translation>Rodilla delantera</translation>
    </message>
    <message>
        <source>Trail knee</source>
        <translation>Rodilla trasera</translation>
    </message>
    <message>
        <source>Lead ankle</source>
        <translation>Tobillo delantero</translation>
    </message>
    <message>
        <source>Trail ankle</source>
        <translation>Tobillo trasero</translation>
    </message>
    <message>
        <source>Lead heel</source>
        <translation>Talón delantero</translation>
    </message>
    <message>
        <source>Trail heel</source>
        <translation>Talón trasero</translation>
    </message>
    <message>
        <source>Lead toe</source>
        <translation>Punta del pie delantero</translation>
    </message>
    <message>
        <source>Trail toe</source>
        <translation>Punta del pie trasero</translation>
    </message>
    <message>
        <source>Hands on the grip</source>
        <translation>Manos en el grip</translation>
    </message>
    <message>
        <source>Belt buckle</source>
        <translation>Hebilla del cinturón</translation>
    </message>
    <message>
        <source>Shirt buttons</source>
        <translation>Botones de la camisa</translation>
    </message>
    <message>
        <source>Rear of the pelvis</source>
        <translation>Parte trasera de la pelvis</translation>
    </message>
    <message>
        <source>Butt of the club</source>
        <translation>Extremo del grip</translation>
    </message>
    <message>
        <source>Club head</source>
        <translation>Cabeza del palo</translation>
    </message>
    <message>
        <source>Leading edge</source>
        <translation>Borde de ataque</translation>
    </message>
    <message>
        <source>Ball</source>
        <translation>Bola</translation>
    </message>
    <message>
        <source>Stick, near end</source>
        <translation>Varilla de alineación, extremo cercano</translation>
    </message>
    <message>
        <source>Stick, far end</source>
        <translation>Varilla de alineación, extremo lejano</translation>
    </message>
    <message>
        <source>Ground, lead side</source>
        <translation>Suelo, lado delantero</translation>
    </message>
    <message>
        <source>Ground, trail side</source>
        <translation>Suelo, lado trasero</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>a mano</translation>
    </message>
    <message>
        <source>pose network</source>
        <translation>red de pose</translation>
    </message>
    <message>
        <source>tracked</source>
        <translation>seguido</translation>
    </message>
    <message>
        <source>interpolated</source>
        <translation>interpolado</translation>
    </message>
    <message>
        <source>shaft</source>
        <translation>varilla</translation>
    </message>
    <message>
        <source>hands</source>
        <translation>manos</translation>
    </message>
    <message>
        <source>ball</source>
        <translation>bola</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>sonido</translation>
    </message>
    <message>
        <source>pelvis</source>
        <translation>pelvis</translation>
    </message>
    <message>
        <source>lead arm</source>
        <translation>brazo delantero</translation>
    </message>
    <message>
        <source>hand, by you</source>
        <translation>mano, por usted</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>Face-on</source>
        <translation>De frente</translation>
    </message>
    <message>
        <source>Down-the-line</source>
        <translation>En la línea al objetivo</translation>
    </message>
    <message>
        <source>right-handed</source>
        <translation>diestro</translation>
    </message>
    <message>
        <source>left-handed</source>
        <translation>zurdo</translation>
    </message>
    <message>
        <source>Full swing</source>
        <translation>Swing completo</translation>
    </message>
    <message>
        <source>Half swing</source>
        <translation>Medio swing</translation>
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
        <translation>Búnker</translation>
    </message>
    <message>
        <source>Putt</source>
        <translation>Putt</translation>
    </message>
    <message>
        <source>Practice swing</source>
        <translation>Swing de práctica</translation>
    </message>
    <message>
        <source>Driver</source>
        <translation>Driver</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Madera</translation>
    </message>
    <message>
        <source>Hybrid</source>
        <translation>Híbrido</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>Hierro</translation>
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
        <translation>Madera %1</translation>
    </message>
    <message>
        <source>%1-hybrid</source>
        <translation>Híbrido %1</translation>
    </message>
    <message>
        <source>%1-iron</source>
        <translation>Hierro %1</translation>
    </message>
    <message>
        <source>%1° wedge</source>
        <translation>Wedge de %1°</translation>
    </message>
    <message>
        <source>Videos</source>
        <translation>Vídeos</translation>
    </message>
    <message>
        <source>Downloads</source>
        <translation>Descargas</translation>
    </message>
    <message>
        <source>Desktop</source>
        <translation>Escritorio</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Carpeta personal</translation>
    </message>
    <message>
        <source>Memory card</source>
        <translation>Tarjeta de memoria</translation>
    </message>
    <message>
        <source>Stance width</source>
        <translation>Anchura del stance</translation>
    </message>
    <message>
        <source>Ball position</source>
        <translation>Posición de la bola</translation>
    </message>
    <message>
        <source>Spine tilt</source>
        <translation>Inclinación de la columna</translation>
    </message>
    <message>
        <source>Spine tilt since address</source>
        <translation>Inclinación de la columna desde la colocación</translation>
    </message>
    <message>
        <source>Head inside trail ankle</source>
        <translation>Cabeza por dentro del tobillo trasero</translation>
    </message>
    <message>
        <source>Head travel</source>
        <translation>Movimiento de la cabeza</translation>
    </message>
    <message>
        <source>Head rise</source>
        <translation>Subida de la cabeza</translation>
    </message>
    <message>
        <source>Pelvis shift</source>
        <translation>Desplazamiento de la pelvis</translation>
    </message>
    <message>
        <source>Chest shift</source>
        <translation>Desplazamiento del pecho</translation>
    </message>
    <message>
        <source>Chest&apos;s share of the shift</source>
        <translation>Parte del pecho en el desplazamiento</translation>
    </message>
    <message>
        <source>Pelvis starts before the top</source>
        <translation>La pelvis arranca antes del punto alto</translation>
    </message>
    <message>
        <source>Lead-side line</source>
        <translation>Línea del lado delantero</translation>
    </message>
    <message>
        <source>Lead hip off the line</source>
        <translation>Cadera delantera fuera de la línea</translation>
    </message>
    <message>
        <source>Pelvis turn</source>
        <translation>Giro de la pelvis</translation>
    </message>
    <message>
        <source>Shoulder turn</source>
        <translation>Giro de hombros</translation>
    </message>
    <message>
        <source>Chest turn</source>
        <translation>Giro del pecho</translation>
    </message>
    <message>
        <source>Chest against pelvis</source>
        <translation>Pecho respecto a la pelvis</translation>
    </message>
    <message>
        <source>Shaft lean</source>
        <translation>Inclinación de la varilla</translation>
    </message>
    <message>
        <source>Hands ahead of the ball</source>
        <translation>Manos por delante de la bola</translation>
    </message>
    <message>
        <source>Wrist set</source>
        <translation>Ángulo de muñecas</translation>
    </message>
    <message>
        <source>Wrist set kept</source>
        <translation>Ángulo de muñecas mantenido</translation>
    </message>
    <message>
        <source>Shaft against the forearms</source>
        <translation>Varilla respecto a los antebrazos</translation>
    </message>
    <message>
        <source>Takeaway width</source>
        <translation>Amplitud al iniciar la subida</translation>
    </message>
    <message>
        <source>Lead elbow flex</source>
        <translation>Flexión del codo delantero</translation>
    </message>
    <message>
        <source>Lead knee flex</source>
        <translation>Flexión de la rodilla delantera</translation>
    </message>
    <message>
        <source>Trail knee flex</source>
        <translation>Flexión de la rodilla trasera</translation>
    </message>
    <message>
        <source>Head over lead ankle</source>
        <translation>Cabeza sobre el tobillo delantero</translation>
    </message>
    <message>
        <source>Centre of mass over lead ankle</source>
        <translation>Centro de masa sobre el tobillo delantero</translation>
    </message>
    <message>
        <source>Trail heel up</source>
        <translation>Talón trasero arriba</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Ritmo</translation>
    </message>
    <message>
        <source>Time back</source>
        <translation>Tiempo de subida</translation>
    </message>
    <message>
        <source>Time down</source>
        <translation>Tiempo de bajada</translation>
    </message>
    <message>
        <source>Forward bend</source>
        <translation>Flexión del tronco</translation>
    </message>
    <message>
        <source>Forward bend since address</source>
        <translation>Flexión del tronco desde la colocación</translation>
    </message>
    <message>
        <source>Pelvis toward the ball</source>
        <translation>Pelvis hacia la bola</translation>
    </message>
    <message>
        <source>Shaft plane</source>
        <translation>Plano de la varilla</translation>
    </message>
    <message>
        <source>Hands&apos; path starting down</source>
        <translation>Camino de las manos al empezar la bajada</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>vigilar</translation>
    </message>
    <message>
        <source>work on it</source>
        <translation>a trabajar</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1 to %2%3</source>
        <translation>de %1 a %2%3</translation>
    </message>
    <message>
        <source>from %1%2</source>
        <translation>desde %1%2</translation>
    </message>
    <message>
        <source>up to %1%2</source>
        <translation>hasta %1%2</translation>
    </message>
    <message>
        <source>Aim of the feet</source>
        <translation>Alineación de los pies</translation>
    </message>
    <message>
        <source>Foot flare, lead foot</source>
        <translation>Apertura del pie delantero</translation>
    </message>
    <message>
        <source>Foot flare, trail foot</source>
        <translation>Apertura del pie trasero</translation>
    </message>
    <message>
        <source>Head inside trail ankle, at worst</source>
        <translation>Cabeza por dentro del tobillo trasero, en el peor momento</translation>
    </message>
    <message>
        <source>Head edge inside trail ankle</source>
        <translation>Borde de la cabeza por dentro del tobillo trasero</translation>
    </message>
    <message>
        <source>Nose inside trail ankle</source>
        <translation>Nariz por dentro del tobillo trasero</translation>
    </message>
    <message>
        <source>Lead hip over its ankle</source>
        <translation>Cadera delantera sobre su tobillo</translation>
    </message>
    <message>
        <source>Middle of the hips toward the ball</source>
        <translation>Centro de las caderas hacia la bola</translation>
    </message>
    <message>
        <source>Shaft at the top</source>
        <translation>Varilla en el punto alto</translation>
    </message>
    <message>
        <source>Shaft past level</source>
        <translation>Varilla pasada de la horizontal</translation>
    </message>
    <message>
        <source>Wrist set, without the lens</source>
        <translation>Ángulo de muñecas, sin la perspectiva</translation>
    </message>
    <message>
        <source>Wrist set kept, without the lens</source>
        <translation>Ángulo de muñecas mantenido, sin la perspectiva</translation>
    </message>
    <message>
        <source>Wrist set at its peak</source>
        <translation>Ángulo de muñecas máximo</translation>
    </message>
    <message>
        <source>Wrist set peak after the arm is level</source>
        <translation>Máximo del ángulo de muñecas tras el brazo horizontal</translation>
    </message>
    <message>
        <source>Lower back</source>
        <translation>Zona lumbar</translation>
    </message>
    <message>
        <source>Neck</source>
        <translation>Cuello</translation>
    </message>
</context>
<context>
    <name>PlanPanel</name>
    <message>
        <source>There is nothing to prescribe: say what comes first, or film more.</source>
        <translation>No hay nada que prescribir: diga qué va primero o filme más.</translation>
    </message>
    <message>
        <source>Days until the next look: %1</source>
        <translation>Días hasta la próxima mirada: %1</translation>
    </message>
    <message>
        <source>Look again sooner</source>
        <translation>Mirar antes</translation>
    </message>
    <message>
        <source>Look again later</source>
        <translation>Mirar después</translation>
    </message>
    <message>
        <source>Kept. Look again: %1</source>
        <translation>Guardado. Volver a mirar: %1</translation>
    </message>
    <message>
        <source>Keep this plan</source>
        <translation>Guardar este plan</translation>
    </message>
    <message>
        <source>The body</source>
        <translation>El cuerpo</translation>
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
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>An eighth</source>
        <translation>Un octavo</translation>
    </message>
    <message>
        <source>A quarter</source>
        <translation>Un cuarto</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>La mitad</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Completa</translation>
    </message>
    <message>
        <source>Round and round from</source>
        <translation>En bucle desde</translation>
    </message>
    <message>
        <source>No loop</source>
        <translation>Sin bucle</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
</context>
<context>
    <name>PlayerDelegate</name>
    <message>
        <source>Player %1, %2</source>
        <translation>Jugador %1, %2</translation>
    </message>
</context>
<context>
    <name>PlayerFormPanel</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Player&apos;s hand</source>
        <translation>Mano del jugador</translation>
    </message>
    <message>
        <source>Height in cm, if known</source>
        <translation>Estatura en cm, si se sabe</translation>
    </message>
    <message>
        <source>for example 178</source>
        <translation>por ejemplo 178</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>taught together with, for example Juniors</source>
        <translation>entrena junto con, por ejemplo, juveniles</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Add this player</source>
        <translation>Añadir este jugador</translation>
    </message>
    <message>
        <source>Keep the changes</source>
        <translation>Guardar los cambios</translation>
    </message>
</context>
<context>
    <name>PlayerLessonsPanel</name>
    <message>
        <source>Lessons of %1</source>
        <translation>Clases de %1</translation>
    </message>
    <message>
        <source>No lesson yet. Bring in or film a swing of this player, or start a lesson under Today.</source>
        <translation>Aún no hay clases. Traiga o grabe un swing de este jugador, o empiece una clase en «Hoy».</translation>
    </message>
</context>
<context>
    <name>PlayerPage</name>
    <message>
        <source>New player</source>
        <translation>Jugador nuevo</translation>
    </message>
    <message>
        <source>Change the player&apos;s details</source>
        <translation>Cambiar los datos del jugador</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Lessons</source>
        <translation>Clases</translation>
    </message>
    <message>
        <source>Swings</source>
        <translation>Swings</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>Evolución</translation>
    </message>
</context>
<context>
    <name>PlayerSwingsPanel</name>
    <message>
        <source>Show the swings</source>
        <translation>Ver los swings</translation>
    </message>
    <message>
        <source>Answers that the swings below fit: %1</source>
        <translation>Respuestas que cumplen los swings de abajo: %1</translation>
    </message>
    <message>
        <source>Find by club, view, day …</source>
        <translation>Buscar por palo, vista, día…</translation>
    </message>
    <message>
        <source>Reading the swings …</source>
        <translation>Leyendo los swings…</translation>
    </message>
    <message>
        <source>No swing fits all the answers; take one back.</source>
        <translation>Ningún swing cumple todas las respuestas; quite una.</translation>
    </message>
    <message>
        <source>No measured swing yet. Bring one in, or film one.</source>
        <translation>Aún no hay swings medidos. Traiga uno o grábelo.</translation>
    </message>
    <message>
        <source>Swings</source>
        <translation>Swings</translation>
    </message>
    <message>
        <source>Swing %1, %2, with a star</source>
        <translation>Swing %1, %2, con estrella</translation>
    </message>
    <message>
        <source>Swing %1, %2</source>
        <translation>Swing %1, %2</translation>
    </message>
</context>
<context>
    <name>PlayerTodayPanel</name>
    <message>
        <source>No plan was made in an earlier lesson: nothing to look back on yet.</source>
        <translation>En ninguna clase anterior se hizo un plan: aún no hay nada que repasar.</translation>
    </message>
    <message>
        <source>What does the student want?</source>
        <translation>¿Qué quiere el alumno?</translation>
    </message>
    <message>
        <source>in the student&apos;s own words</source>
        <translation>con las palabras del alumno</translation>
    </message>
    <message>
        <source>Wanted before: %1</source>
        <translation>Quería antes: %1</translation>
    </message>
    <message>
        <source>What does the student think causes it?</source>
        <translation>¿A qué cree el alumno que se debe?</translation>
    </message>
    <message>
        <source>Start today&apos;s lesson</source>
        <translation>Empezar la clase de hoy</translation>
    </message>
    <message>
        <source>Kept in today&apos;s lesson.</source>
        <translation>Guardado en la clase de hoy.</translation>
    </message>
    <message>
        <source>A word in one of the fields starts today&apos;s lesson as well.</source>
        <translation>Una palabra en uno de los campos también empieza la clase de hoy.</translation>
    </message>
    <message>
        <source>Body card: ask before the first full swing</source>
        <translation>Ficha corporal: pregunte antes del primer swing completo</translation>
    </message>
    <message>
        <source>Body card of %1</source>
        <translation>Ficha corporal de %1</translation>
    </message>
</context>
<context>
    <name>PlayersPage</name>
    <message>
        <source>Players</source>
        <translation>Jugadores</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Buscar un jugador</translation>
    </message>
    <message>
        <source>name or group</source>
        <translation>nombre o grupo</translation>
    </message>
    <message>
        <source>No players yet. Add one, or bring in a clip: its player is added by name.</source>
        <translation>Aún no hay jugadores. Añada uno o traiga un clip: su jugador se añade por el nombre.</translation>
    </message>
    <message>
        <source>Nobody of that name or group.</source>
        <translation>Nadie con ese nombre o grupo.</translation>
    </message>
    <message>
        <source>Add a player</source>
        <translation>Añadir un jugador</translation>
    </message>
    <message>
        <source>Group lesson: %1</source>
        <translation>Clase de grupo: %1</translation>
    </message>
    <message>
        <source>The players listed here are taught together, one after the other; at most 40</source>
        <translation>Los jugadores de esta lista dan clase juntos, uno tras otro; 40 como máximo</translation>
    </message>
</context>
<context>
    <name>PointsTool</name>
    <message>
        <source>Choose a point, then tap the picture where it is.</source>
        <translation>Elija un punto y toque la imagen donde está.</translation>
    </message>
    <message>
        <source>Every point is marked in this frame.</source>
        <translation>Todos los puntos están marcados en este fotograma.</translation>
    </message>
    <message>
        <source>Place: %1</source>
        <translation>Situar: %1</translation>
    </message>
</context>
<context>
    <name>PracticeSignPanel</name>
    <message>
        <source>Holds</source>
        <translation>Se cumple</translation>
    </message>
    <message>
        <source>Does not hold</source>
        <translation>No se cumple</translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>Watching</source>
        <translation>Mirando</translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation>Respuesta: %1</translation>
    </message>
    <message>
        <source>Enough for today. Rest, and come back tomorrow. Stop at once at a sharp or sudden pain; what still hurts tomorrow is for a physician or licensed physiotherapist.</source>
        <translation>Basta por hoy. Descanse y vuelva mañana. Pare enseguida ante un dolor agudo o repentino; lo que mañana siga doliendo es cosa de un médico o fisioterapeuta colegiado.</translation>
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
        <translation>Menos: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Más: %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Feel</source>
        <translation>Sensación</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>Dose</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <source>Sets of 10 slow rehearsals</source>
        <translation>Series de 10 ensayos lentos</translation>
    </message>
    <message>
        <source>Sets of 10 balls</source>
        <translation>Series de 10 bolas</translation>
    </message>
    <message>
        <source>Trains</source>
        <translation>Entrena</translation>
    </message>
    <message>
        <source>Decides</source>
        <translation>Decide</translation>
    </message>
    <message>
        <source>Must not get worse</source>
        <translation>No debe empeorar</translation>
    </message>
    <message>
        <source>What it may cost</source>
        <translation>Lo que puede costar</translation>
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
        <translation>%1: no se encontró el momento</translation>
    </message>
    <message>
        <source>%1: %2, ± %3 px</source>
        <translation>%1: %2, ± %3 px</translation>
    </message>
    <message>
        <source>%1: not marked</source>
        <translation>%1: sin marcar</translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation>fotograma %1</translation>
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
        <translation>Revisión</translation>
    </message>
</context>
<context>
    <name>ReviewPanel</name>
    <message>
        <source>Show swing %1</source>
        <translation>Mostrar el swing %1</translation>
    </message>
    <message>
        <source>What you saw</source>
        <translation>Lo que vio</translation>
    </message>
    <message>
        <source>What you said</source>
        <translation>Lo que dijo</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Lo que viene</translation>
    </message>
    <message>
        <source>Three lines kept</source>
        <translation>Tres líneas guardadas</translation>
    </message>
    <message>
        <source>Keep the three lines</source>
        <translation>Guardar las tres líneas</translation>
    </message>
    <message>
        <source>Make a film of the review</source>
        <translation>Hacer un vídeo de la revisión</translation>
    </message>
    <message>
        <source>Make the lesson sheet (PDF)</source>
        <translation>Hacer la hoja de la clase (PDF)</translation>
    </message>
    <message>
        <source>Writing, %1 per cent</source>
        <translation>Escribiendo, %1 por ciento</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>ReviewStage</name>
    <message>
        <source>Picture of the review, %1</source>
        <translation>Imagen de la revisión, %1</translation>
    </message>
    <message>
        <source>Recording %1</source>
        <translation>Grabando %1</translation>
    </message>
    <message>
        <source>Wipe the drawing away</source>
        <translation>Borrar el dibujo</translation>
    </message>
    <message>
        <source>Stop drawing</source>
        <translation>Dejar de dibujar</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Dibujar</translation>
    </message>
    <message>
        <source>Hide the marks</source>
        <translation>Ocultar las marcas</translation>
    </message>
    <message>
        <source>Show the marks</source>
        <translation>Mostrar las marcas</translation>
    </message>
    <message>
        <source>No film of this lesson is on this device.</source>
        <translation>Ningún vídeo de esta clase está en este dispositivo.</translation>
    </message>
    <message>
        <source>Opening the film</source>
        <translation>Abriendo el vídeo</translation>
    </message>
</context>
<context>
    <name>ReviewTransport</name>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Stop the film</source>
        <translation>Parar el vídeo</translation>
    </message>
    <message>
        <source>Play the film slowly</source>
        <translation>Reproducir el vídeo despacio</translation>
    </message>
    <message>
        <source>Place in the review</source>
        <translation>Punto de la revisión</translation>
    </message>
    <message>
        <source>Place in the film</source>
        <translation>Punto del vídeo</translation>
    </message>
    <message>
        <source>One frame back</source>
        <translation>Un fotograma atrás</translation>
    </message>
    <message>
        <source>One frame on</source>
        <translation>Un fotograma adelante</translation>
    </message>
    <message>
        <source>Stop and keep</source>
        <translation>Parar y guardar</translation>
    </message>
    <message>
        <source>Leave the replay</source>
        <translation>Salir de la reproducción</translation>
    </message>
    <message>
        <source>Record again</source>
        <translation>Grabar otra vez</translation>
    </message>
    <message>
        <source>Record and talk</source>
        <translation>Grabar y hablar</translation>
    </message>
    <message>
        <source>Play the review</source>
        <translation>Reproducir la revisión</translation>
    </message>
    <message>
        <source>Play the review (silent)</source>
        <translation>Reproducir la revisión (sin voz)</translation>
    </message>
</context>
<context>
    <name>SegmentRow</name>
    <message>
        <source>Panels</source>
        <translation>Paneles</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Tamaño de la letra</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>The hand that works the app</source>
        <translation>La mano que maneja la aplicación</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>Light, for the sun</source>
        <translation>Claros, para el sol</translation>
    </message>
    <message>
        <source>Dark, for indoors</source>
        <translation>Oscuros, para interior</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>The hand is yours, not the player&apos;s. Settings stay on this device.</source>
        <translation>Es su mano, no la del jugador. Los ajustes se quedan en este dispositivo.</translation>
    </message>
</context>
<context>
    <name>SettlePanel</name>
    <message>
        <source>Nothing to settle: all devices agree.</source>
        <translation>Nada que resolver: todos los dispositivos coinciden.</translation>
    </message>
    <message>
        <source>Two devices put this differently without having seen each other. Both versions are kept; tap the one that holds.</source>
        <translation>Dos dispositivos lo dicen de forma distinta sin haberse visto. Ambas versiones se guardan; toque la que vale.</translation>
    </message>
    <message>
        <source>%1 holds: %2</source>
        <translation>Vale %1: %2</translation>
    </message>
</context>
<context>
    <name>ShotTool</name>
    <message>
        <source>Columns: where it started, seen from behind the ball. Rows: which way it bent. A second tap takes an answer back.</source>
        <translation>Columnas: por dónde salió, vista desde detrás de la bola. Filas: hacia dónde curvó. Un segundo toque retira la respuesta.</translation>
    </message>
    <message>
        <source>Starred: take the star away</source>
        <translation>Con estrella: quitarla</translation>
    </message>
    <message>
        <source>Star this shot</source>
        <translation>Marcar este golpe con estrella</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>words with commas between</source>
        <translation>palabras separadas por comas</translation>
    </message>
</context>
<context>
    <name>StagePanel</name>
    <message>
        <source>Picture of the swing, %1</source>
        <translation>Imagen del swing, %1</translation>
    </message>
    <message>
        <source>Show the whole picture</source>
        <translation>Mostrar la imagen entera</translation>
    </message>
    <message>
        <source>Show the player larger</source>
        <translation>Mostrar al jugador más grande</translation>
    </message>
    <message>
        <source>Hide the marks</source>
        <translation>Ocultar las marcas</translation>
    </message>
    <message>
        <source>Show the marks</source>
        <translation>Mostrar las marcas</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play slowly</source>
        <translation>Reproducir despacio</translation>
    </message>
    <message>
        <source>Reading the swing, %1 %</source>
        <translation>Leyendo el swing, %1 %</translation>
    </message>
    <message>
        <source>Opening the swing</source>
        <translation>Abriendo el swing</translation>
    </message>
    <message>
        <source>Opening the swing, %1 per cent</source>
        <translation>Abriendo el swing, %1 por ciento</translation>
    </message>
</context>
<context>
    <name>StripPanel</name>
    <message>
        <source>Strip of moments</source>
        <translation>Tira de momentos</translation>
    </message>
    <message>
        <source>Go to %1, %2</source>
        <translation>Ir a %1, %2</translation>
    </message>
    <message>
        <source>No key moment could be told in this clip; set one by hand first.</source>
        <translation>En este clip no se reconoció ningún momento clave; fije antes uno a mano.</translation>
    </message>
    <message>
        <source>Choose the moments to stand side by side.</source>
        <translation>Elija los momentos que irán lado a lado.</translation>
    </message>
</context>
<context>
    <name>StripTool</name>
    <message>
        <source>Show one picture</source>
        <translation>Mostrar una imagen</translation>
    </message>
    <message>
        <source>Show the strip</source>
        <translation>Mostrar la tira</translation>
    </message>
    <message>
        <source>Moments in the strip</source>
        <translation>Momentos de la tira</translation>
    </message>
    <message>
        <source>In the strip: %1</source>
        <translation>En la tira: %1</translation>
    </message>
</context>
<context>
    <name>SwingPage</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Record the ball</source>
        <translation>Anotar la bola</translation>
    </message>
</context>
<context>
    <name>SwingRow</name>
    <message>
        <source>Swing %1, %2: %3 good, %4 to watch, %5 to work on, %6 cannot be told</source>
        <translation>Swing %1, %2: %3 bien, %4 por vigilar, %5 por trabajar, %6 sin saber</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>The film is not on this device.</source>
        <translation>El vídeo no está en este dispositivo.</translation>
    </message>
</context>
<context>
    <name>TakesPanel</name>
    <message>
        <source>No swing yet. The last 8 seconds are kept all the time: a swing is cut out of them by itself, or with the button.</source>
        <translation>Aún no hay swing. Se guardan siempre los últimos 8 segundos: el swing se recorta solo o con el botón.</translation>
    </message>
    <message>
        <source>Takes</source>
        <translation>Tomas</translation>
    </message>
    <message>
        <source>Impact picture of take %1</source>
        <translation>Imagen del impacto de la toma %1</translation>
    </message>
    <message>
        <source>Take %1. %2</source>
        <translation>Toma %1. %2</translation>
    </message>
    <message>
        <source>Look at take %1</source>
        <translation>Ver la toma %1</translation>
    </message>
</context>
<context>
    <name>TeachPage</name>
    <message>
        <source>Last plan</source>
        <translation>Último plan</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Prueba</translation>
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
        <translation>Fijar un momento clave</translation>
    </message>
    <message>
        <source>Place a point</source>
        <translation>Situar un punto</translation>
    </message>
    <message>
        <source>Draw on the picture</source>
        <translation>Dibujar en la imagen</translation>
    </message>
    <message>
        <source>All tools</source>
        <translation>Todos los útiles</translation>
    </message>
    <message>
        <source>Play and loop</source>
        <translation>Reproducir en bucle</translation>
    </message>
    <message>
        <source>Strip of moments</source>
        <translation>Tira de momentos</translation>
    </message>
    <message>
        <source>Compare with another swing</source>
        <translation>Comparar con otro swing</translation>
    </message>
    <message>
        <source>What the ball did</source>
        <translation>Qué hizo la bola</translation>
    </message>
</context>
<context>
    <name>TransportBar</name>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play slowly</source>
        <translation>Reproducir despacio</translation>
    </message>
    <message>
        <source>Place in the clip</source>
        <translation>Lugar en el clip</translation>
    </message>
    <message>
        <source>One frame back</source>
        <translation>Un fotograma atrás</translation>
    </message>
    <message>
        <source>One frame on</source>
        <translation>Un fotograma adelante</translation>
    </message>
</context>
<context>
    <name>TrendPanel</name>
    <message>
        <source>Reading the swings …</source>
        <translation>Leyendo los swings…</translation>
    </message>
    <message>
        <source>No measured swing yet: a trend needs numbers from two lessons.</source>
        <translation>Aún no hay swings medidos: una evolución necesita cifras de dos clases.</translation>
    </message>
    <message>
        <source>Dot: median of the lesson&apos;s swings. Bar: two sigma, swing-to-swing spread and measuring error together.</source>
        <translation>Punto: mediana de los swings de la clase. Barra: dos sigmas, dispersión entre swings y error de medida juntos.</translation>
    </message>
    <message>
        <source>Swings</source>
        <translation>Swings</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
</context>
<context>
    <name>TrialPanel</name>
    <message>
        <source>Change one thing and hit three to five. Tap each swing until it says what it was: before, try or after.</source>
        <translation>Cambie una cosa y pegue de tres a cinco bolas. Toque cada swing hasta que diga lo que fue: antes, prueba o después.</translation>
    </message>
    <message>
        <source>What is tried</source>
        <translation>Qué se prueba</translation>
    </message>
    <message>
        <source>Nothing comes first yet: name a departure under “Cause”.</source>
        <translation>Aún no hay nada primero: nombre una desviación en «Causa».</translation>
    </message>
    <message>
        <source>Did it help?</source>
        <translation>¿Ayudó?</translation>
    </message>
    <message>
        <source>No number moved beyond doubt.</source>
        <translation>Ningún número cambió sin duda.</translation>
    </message>
    <message>
        <source>Moved beyond doubt: %1</source>
        <translation>Cambió sin duda: %1</translation>
    </message>
</context>
<context>
    <name>WorkingOverlay</name>
    <message>
        <source>Reading the swing</source>
        <translation>Leyendo el swing</translation>
    </message>
    <message>
        <source>Progress, %1 per cent</source>
        <translation>Progreso, %1 por ciento</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::AppModel</name>
    <message>
        <source>The pose network is not on this device: body marks must be placed by hand.</source>
        <translation>La red de pose no está en este dispositivo: hay que marcar el cuerpo a mano.</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::BodyCardModel</name>
    <message>
        <source>Left hip</source>
        <translation>Cadera izquierda</translation>
    </message>
    <message>
        <source>Right hip</source>
        <translation>Cadera derecha</translation>
    </message>
    <message>
        <source>Left knee</source>
        <translation>Rodilla izquierda</translation>
    </message>
    <message>
        <source>Right knee</source>
        <translation>Rodilla derecha</translation>
    </message>
    <message>
        <source>Left wrist</source>
        <translation>Muñeca izquierda</translation>
    </message>
    <message>
        <source>Right wrist</source>
        <translation>Muñeca derecha</translation>
    </message>
    <message>
        <source>Left elbow</source>
        <translation>Codo izquierdo</translation>
    </message>
    <message>
        <source>Right elbow</source>
        <translation>Codo derecho</translation>
    </message>
    <message>
        <source>Left shoulder</source>
        <translation>Hombro izquierdo</translation>
    </message>
    <message>
        <source>Right shoulder</source>
        <translation>Hombro derecho</translation>
    </message>
    <message>
        <source>Left ankle</source>
        <translation>Tobillo izquierdo</translation>
    </message>
    <message>
        <source>Right ankle</source>
        <translation>Tobillo derecho</translation>
    </message>
    <message>
        <source>%1: %2 of 10</source>
        <translation>%1: %2 de 10</translation>
    </message>
    <message>
        <source>A replaced joint, an operation, a pregnancy, or a bone or heart condition, and nobody has cleared full swings: ask a physician first. No full swings until then.</source>
        <translation>Una prótesis, una operación, un embarazo o una dolencia ósea o cardíaca, y nadie ha autorizado swings completos: pregunte antes a un médico. Hasta entonces, ningún swing completo.</translation>
    </message>
    <message>
        <source>Pain of %1 of 10: no balls today. If it is still there tomorrow, see a physician or licensed physiotherapist.</source>
        <translation>Dolor %1 de 10: hoy sin bolas. Si mañana sigue, acuda a un médico o fisioterapeuta colegiado.</translation>
    </message>
    <message>
        <source>Some pain: slow and few, and stop when it grows.</source>
        <translation>Algo de dolor: despacio y poco, y pare si aumenta.</translation>
    </message>
    <message>
        <source>A child: a guardian agrees before anything is filmed.</source>
        <translation>Un menor: un tutor consiente antes de filmar.</translation>
    </message>
    <message>
        <source>A child: no adult ranges, no comparison with other children.</source>
        <translation>Un menor: sin márgenes de adultos ni comparación con otros niños.</translation>
    </message>
    <message>
        <source>A clinician&apos;s limit, balls a day: %1.</source>
        <translation>Límite sanitario, bolas al día: %1.</translation>
    </message>
    <message>
        <source>Ten minutes of warm-up before the first full swing.</source>
        <translation>Diez minutos de calentamiento antes del primer swing completo.</translation>
    </message>
    <message>
        <source>Not asked yet: ask before the first full swing.</source>
        <translation>Sin preguntar aún: pregunte antes del primer swing completo.</translation>
    </message>
    <message>
        <source>Nothing told here holds full swings back. That is no clean bill of health.</source>
        <translation>Nada de lo dicho impide los swings completos. No es un certificado de salud.</translation>
    </message>
    <message>
        <source>none told</source>
        <translation>ninguna dicha</translation>
    </message>
    <message>
        <source>Trouble before</source>
        <translation>Molestias anteriores</translation>
    </message>
    <message>
        <source>Stiff, fused, or limited by a clinician</source>
        <translation>Rígido, fusionado o limitado por un profesional sanitario</translation>
    </message>
    <message>
        <source>Replaced joint</source>
        <translation>Prótesis articular</translation>
    </message>
    <message>
        <source>Operated on</source>
        <translation>Operado</translation>
    </message>
    <message>
        <source>Pregnant</source>
        <translation>Embarazada</translation>
    </message>
    <message>
        <source>A bone or heart condition</source>
        <translation>Una dolencia ósea o cardíaca</translation>
    </message>
    <message>
        <source>Cleared for full swings by a clinician</source>
        <translation>Autorizado por un profesional sanitario para swings completos</translation>
    </message>
    <message>
        <source>Cleared for full swings by a clinician (told on %1)</source>
        <translation>Autorizado por un profesional sanitario para swings completos (dicho el %1)</translation>
    </message>
    <message>
        <source>Warmed up for ten minutes today</source>
        <translation>Hoy calentó diez minutos</translation>
    </message>
    <message>
        <source>A guardian agrees to filming</source>
        <translation>Un tutor consiente que se filme</translation>
    </message>
    <message>
        <source>The year of birth must look like 1974; or leave it empty.</source>
        <translation>El año de nacimiento debe ser como 1974; o déjelo vacío.</translation>
    </message>
    <message>
        <source>The limit must be a number of balls a day from 0 to 1000; or leave it empty.</source>
        <translation>El límite debe ser un número de bolas al día de 0 a 1000; o déjelo vacío.</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::BringInModel</name>
    <message>
        <source>Only files on this device can be brought in; save the clip here first.</source>
        <translation>Solo se pueden traer archivos de este dispositivo; guarde antes aquí el clip.</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>as the clip says</source>
        <translation>según el clip</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Yes, front camera</source>
        <translation>Sí, cámara frontal</translation>
    </message>
    <message>
        <source>Whose swing is it? Type the player&apos;s name.</source>
        <translation>¿De quién es el swing? Escriba el nombre del jugador.</translation>
    </message>
    <message>
        <source>The height must be a number of centimetres from 50 to 250, such as 178; or leave it empty.</source>
        <translation>La estatura debe ser un número de centímetros de 50 a 250, como 178; o déjela vacía.</translation>
    </message>
    <message>
        <source>Demo player</source>
        <translation>Jugador de demostración</translation>
    </message>
    <message>
        <source>Starting</source>
        <translation>Empezando</translation>
    </message>
    <message>
        <source>Stopping</source>
        <translation>Parando</translation>
    </message>
    <message>
        <source>Drawing a demo swing</source>
        <translation>Dibujando un swing de demostración</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>%1 × %2 pixels, %3 s, %4 frames a second as it plays.</source>
        <translation>%1 × %2 píxeles, %3 s, %4 imágenes por segundo al reproducirse.</translation>
    </message>
    <message>
        <source>The film does not tell at which rate it was filmed. Say it below: without it positions and angles are told, but no times and no tempo.</source>
        <translation>El vídeo no dice a qué frecuencia se filmó. Dígalo abajo: sin ella se dan posiciones y ángulos, pero ni tiempos ni tempo.</translation>
    </message>
    <message>
        <source>Slow motion: filmed at %1 frames a second.</source>
        <translation>Cámara lenta: filmado a %1 imágenes por segundo.</translation>
    </message>
    <message>
        <source>At this rate the club turns some 80 degrees from frame to frame at the ball: positions are told, tempo is not judged.</source>
        <translation>A esta frecuencia el palo gira unos 80 grados de imagen a imagen junto a la bola: se dan posiciones, no se juzga el tempo.</translation>
    </message>
    <message>
        <source>A small picture: numbers come with wider uncertainty.</source>
        <translation>Una imagen pequeña: los números traen más incertidumbre.</translation>
    </message>
    <message>
        <source>No sound: the hit is found in the picture alone.</source>
        <translation>Sin sonido: el golpe se busca solo en la imagen.</translation>
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
        <translation>varias escuelas</translation>
    </message>
    <message>
        <source>one school</source>
        <translation>una escuela</translation>
    </message>
    <message>
        <source>disputed</source>
        <translation>discutido</translation>
    </message>
    <message>
        <source>position</source>
        <translation>posición</translation>
    </message>
    <message>
        <source>range of motion</source>
        <translation>amplitud de movimiento</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>velocidad</translation>
    </message>
    <message>
        <source>swings together: %1</source>
        <translation>swings juntos: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>the ball&apos;s %1, as told</source>
        <translation>%1 de la bola, según lo dicho</translation>
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
        <translation>Va primero: %1. La desviación más temprana es una buena primera suposición, no una prueba.</translation>
    </message>
    <message>
        <source>No departure was found in what these clips show.</source>
        <translation>No se encontró desviación en lo que muestran estos clips.</translation>
    </message>
    <message>
        <source>Cannot tell from these clips what comes first.</source>
        <translation>Con estos clips no se puede saber qué va primero.</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>there: %1</source>
        <translation>presente: %1</translation>
    </message>
    <message>
        <source>tends to cause: %1</source>
        <translation>suele causar: %1</translation>
    </message>
    <message>
        <source>comes first: %1</source>
        <translation>va primero: %1</translation>
    </message>
    <message>
        <source>Swing %1</source>
        <translation>Swing %1</translation>
    </message>
    <message>
        <source>share among the explanations: %1</source>
        <translation>peso entre las explicaciones: %1</translation>
    </message>
    <message>
        <source>It needs a %1 clip.</source>
        <translation>Hace falta un clip: %1.</translation>
    </message>
    <message>
        <source>The program has no measurement for it yet; look for yourself.</source>
        <translation>El programa aún no lo mide; mírelo usted.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>yes</translation>
    </message>
    <message>
        <source>not this</source>
        <translation>esto no</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>, then </source>
        <translation>, luego </translation>
    </message>
    <message>
        <source>Your word: agreed. %1</source>
        <translation>Su palabra: de acuerdo. %1</translation>
    </message>
    <message>
        <source>Your word: in this order. %1</source>
        <translation>Su palabra: en este orden. %1</translation>
    </message>
    <message>
        <source>Your word: something else. %1</source>
        <translation>Su palabra: otra cosa. %1</translation>
    </message>
    <message>
        <source>there</source>
        <translation>presente</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>ausente</translation>
    </message>
    <message>
        <source>unclear</source>
        <translation>no está claro</translation>
    </message>
    <message>
        <source>The plan of %1</source>
        <translation>El plan de %1</translation>
    </message>
    <message>
        <source>Practised</source>
        <translation>Practicado</translation>
    </message>
    <message>
        <source>%1 rehearsals, %2 balls, %3 rounds</source>
        <translation>%1 ensayos, %2 bolas, %3 vueltas</translation>
    </message>
    <message>
        <source>Changed beyond doubt</source>
        <translation>Cambió sin duda</translation>
    </message>
    <message>
        <source>No swings of one view, kind and club in both lessons: nothing can be compared.</source>
        <translation>No hay swings de la misma vista, tipo y palo en ambas clases: no se puede comparar nada.</translation>
    </message>
    <message>
        <source>%1: needs three swings on each side</source>
        <translation>%1: necesita tres swings en cada lado</translation>
    </message>
    <message>
        <source>%1: %2%3</source>
        <translation>%1: %2%3</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Not proven, of what decides and guards</source>
        <translation>Sin probar, de lo que decide y lo que protege</translation>
    </message>
    <message>
        <source>%1: %2 of 10 on %3</source>
        <translation>%1: %2 de 10 el %3</translation>
    </message>
    <message>
        <source>Hurts</source>
        <translation>Duele</translation>
    </message>
    <message>
        <source>nothing logged</source>
        <translation>nada anotado</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>try</source>
        <translation>prueba</translation>
    </message>
    <message>
        <source>after</source>
        <translation>después</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>sin usar</translation>
    </message>
    <message>
        <source>The guard held.</source>
        <translation>La guarda aguantó: nada empeoró.</translation>
    </message>
    <message>
        <source>The guard got worse beyond doubt.</source>
        <translation>La guarda empeoró sin duda.</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::CompareModel</name>
    <message>
        <source>own best</source>
        <translation>el mejor propio</translation>
    </message>
    <message>
        <source>same lesson</source>
        <translation>misma clase</translation>
    </message>
    <message>
        <source>another lesson</source>
        <translation>otra clase</translation>
    </message>
    <message>
        <source>another club: %1</source>
        <translation>otro palo: %1</translation>
    </message>
    <message>
        <source>another club</source>
        <translation>otro palo</translation>
    </message>
    <message>
        <source>another player</source>
        <translation>otro jugador</translation>
    </message>
    <message>
        <source>%1, swing %2</source>
        <translation>%1, swing %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>no check could be told</source>
        <translation>no se pudo decir ningún control</translation>
    </message>
    <message>
        <source>%1 of %2 checks good</source>
        <translation>%1 de %2 controles bien</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Manos</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Varilla</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Cuerpo</translation>
    </message>
    <message>
        <source>Time from impact</source>
        <translation>Tiempo desde el impacto</translation>
    </message>
    <message>
        <source>beyond doubt</source>
        <translation>fuera de duda</translation>
    </message>
    <message>
        <source>not beyond doubt</source>
        <translation>sin certeza</translation>
    </message>
    <message>
        <source>%1: this swing %2, the other %3, difference %4, %5</source>
        <translation>%1: este swing %2, el otro %3, diferencia %4, %5</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::CompareSide</name>
    <message>
        <source>Frame %1 of %2</source>
        <translation>Fotograma %1 de %2</translation>
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
        <translation>hecha sola</translation>
    </message>
    <message>
        <source>made by hand</source>
        <translation>hecha a mano</translation>
    </message>
    <message>
        <source>before an update</source>
        <translation>antes de una actualización</translation>
    </message>
    <message>
        <source>after erasing</source>
        <translation>después de borrar</translation>
    </message>
    <message>
        <source>before a restore</source>
        <translation>antes de recuperar</translation>
    </message>
    <message>
        <source>Whole, from %1.</source>
        <translation>Íntegro, de %1.</translation>
    </message>
    <message>
        <source>Whole, sender unknown.</source>
        <translation>Íntegro, remitente desconocido.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n nuevo</numerusform>
            <numerusform>%n nuevos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n the same</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n igual</numerusform>
            <numerusform>%n iguales</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n erased</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n borrado</numerusform>
            <numerusform>%n borrados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not taken, erased here</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n no tomado, borrado aquí</numerusform>
            <numerusform>%n no tomados, borrados aquí</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n need you</source>
        <comment>records</comment>
        <translation>
            <numerusform>%n le necesita</numerusform>
            <numerusform>%n le necesitan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new clips.</source>
        <comment>clips</comment>
        <translation>
            <numerusform>%n clip nuevo.</numerusform>
            <numerusform>%n clips nuevos.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not looked at yet.</source>
        <translation>Aún sin mirar.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Parado.</translation>
    </message>
    <message>
        <source>May be shared; clips only with the head covered.</source>
        <translation>Se puede compartir; los clips, solo con la cabeza cubierta.</translation>
    </message>
    <message>
        <source>May be shared.</source>
        <translation>Se puede compartir.</translation>
    </message>
    <message>
        <source>Covering the head in every frame</source>
        <translation>Cubriendo la cabeza en cada imagen</translation>
    </message>
    <message numerus="yes">
        <source>Look at every picture: other people are not covered. The head was uncertain in %n frame(s).</source>
        <translation>
            <numerusform>Mire cada imagen: las demás personas no están cubiertas. La cabeza era dudosa en %n imagen.</numerusform>
            <numerusform>Mire cada imagen: las demás personas no están cubiertas. La cabeza era dudosa en %n imágenes.</numerusform>
        </translation>
    </message>
    <message>
        <source>Released: these clips may travel with the head covered.</source>
        <translation>Liberado: estos clips pueden viajar con la cabeza cubierta.</translation>
    </message>
    <message>
        <source>Writing the lesson file</source>
        <translation>Escribiendo el archivo de clase</translation>
    </message>
    <message>
        <source>Saved as %1 (%2).</source>
        <translation>Guardado como %1 (%2).</translation>
    </message>
    <message>
        <source>Checking every byte</source>
        <translation>Comprobando cada byte</translation>
    </message>
    <message>
        <source>Whole, sender unknown (not signed).</source>
        <translation>Íntegro, remitente desconocido (sin firma).</translation>
    </message>
    <message>
        <source>Whole, sender unknown (key %1).</source>
        <translation>Íntegro, remitente desconocido (clave %1).</translation>
    </message>
    <message numerus="yes">
        <source>“%1”, %n record(s)</source>
        <translation>
            <numerusform>«%1», %n registro</numerusform>
            <numerusform>«%1», %n registros</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n clip(s)</source>
        <translation>
            <numerusform>%n clip</numerusform>
            <numerusform>%n clips</numerusform>
        </translation>
    </message>
    <message>
        <source>Taking the lesson in</source>
        <translation>Incorporando la clase</translation>
    </message>
    <message>
        <source>Exchanging through the folder</source>
        <translation>Intercambiando por la carpeta</translation>
    </message>
    <message>
        <source>It did not work; nothing is lost, and it is tried again.</source>
        <translation>No funcionó; no se pierde nada y se intentará de nuevo.</translation>
    </message>
    <message>
        <source>Waiting: the folder is not there now. What it misses is caught up with.</source>
        <translation>Esperando: la carpeta no está ahora. Lo que le falte se recuperará.</translation>
    </message>
    <message>
        <source>Caught up at %1.</source>
        <translation>Al día a las %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) taken in</source>
        <translation>
            <numerusform>%n archivo incorporado</numerusform>
            <numerusform>%n archivos incorporados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sent.</source>
        <comment>files</comment>
        <translation>
            <numerusform>%n enviado.</numerusform>
            <numerusform>%n enviados.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to settle.</source>
        <translation>
            <numerusform>%n por resolver.</numerusform>
            <numerusform>%n por resolver.</numerusform>
        </translation>
    </message>
    <message>
        <source>Sending</source>
        <translation>Enviando</translation>
    </message>
    <message>
        <source>Sent, and the other device has all of it.</source>
        <translation>Enviado, y el otro dispositivo lo tiene todo.</translation>
    </message>
    <message>
        <source>This is no ticket of a sending; copy all of it, from plumbmark: to its end.</source>
        <translation>Esto no es el tique de un envío; cópielo entero, desde plumbmark: hasta el final.</translation>
    </message>
    <message>
        <source>Receiving</source>
        <translation>Recibiendo</translation>
    </message>
    <message>
        <source>Making a backup and opening it to check</source>
        <translation>Haciendo una copia y abriéndola para comprobarla</translation>
    </message>
    <message numerus="yes">
        <source>Backup made and checked: %n lesson(s)</source>
        <translation>
            <numerusform>Copia hecha y comprobada: %n clase</numerusform>
            <numerusform>Copia hecha y comprobada: %n clases</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n clip(s).</source>
        <translation>
            <numerusform>%n clip.</numerusform>
            <numerusform>%n clips.</numerusform>
        </translation>
    </message>
    <message>
        <source>Checking the backup</source>
        <translation>Comprobando la copia</translation>
    </message>
    <message numerus="yes">
        <source>The backup of %1 is whole: %n lesson(s).</source>
        <translation>
            <numerusform>La copia de %1 está íntegra: %n clase.</numerusform>
            <numerusform>La copia de %1 está íntegra: %n clases.</numerusform>
        </translation>
    </message>
    <message>
        <source>Close the app and open it again: then it is put in place, and what is here now is kept among the backups.</source>
        <translation>Cierre la app y ábrala otra vez: entonces se pone en su lugar, y lo que hay ahora queda entre las copias.</translation>
    </message>
    <message>
        <source>The library stays as it is.</source>
        <translation>La biblioteca queda como está.</translation>
    </message>
    <message>
        <source>being filmed</source>
        <translation>ser filmado</translation>
    </message>
    <message>
        <source>being measured</source>
        <translation>ser medido</translation>
    </message>
    <message>
        <source>being kept here</source>
        <translation>que se conserve aquí</translation>
    </message>
    <message>
        <source>lessons going to others</source>
        <translation>que las clases vayan a otros</translation>
    </message>
    <message>
        <source>being shown to other students</source>
        <translation>que se muestre a otros alumnos</translation>
    </message>
    <message>
        <source>the face being seen (asked of minors)</source>
        <translation>que se vea la cara (se pregunta en menores)</translation>
    </message>
    <message>
        <source>No consent on record: nothing of this player goes to others.</source>
        <translation>Sin consentimiento anotado: nada de este jugador va a otros.</translation>
    </message>
    <message>
        <source>Withdrawn on %1.</source>
        <translation>Retirado el %1.</translation>
    </message>
    <message>
        <source>Given on %1, holds until %2.</source>
        <translation>Dado el %1, vale hasta el %2.</translation>
    </message>
    <message>
        <source>Lessons may be shared.</source>
        <translation>Las clases se pueden compartir.</translation>
    </message>
    <message>
        <source>%1 (minor), lesson of %2</source>
        <translation>%1 (menor), clase del %2</translation>
    </message>
    <message>
        <source>%1, lesson of %2</source>
        <translation>%1, clase del %2</translation>
    </message>
    <message>
        <source>Erased with marks and numbers, here and at the next exchange elsewhere.</source>
        <translation>Borrado con marcas y números, aquí y en el próximo intercambio también en otros sitios.</translation>
    </message>
    <message>
        <source>Noted: nothing of this player goes to others from now on.</source>
        <translation>Anotado: desde ahora nada de este jugador va a otros.</translation>
    </message>
    <message>
        <source>Noted.</source>
        <translation>Anotado.</translation>
    </message>
    <message>
        <source>on this device, %1</source>
        <translation>en este dispositivo, %1</translation>
    </message>
    <message>
        <source>on another device, %1</source>
        <translation>en otro dispositivo, %1</translation>
    </message>
    <message>
        <source>consent</source>
        <translation>consentimiento</translation>
    </message>
    <message>
        <source>Settled; the other versions stay in the history.</source>
        <translation>Resuelto; las otras versiones quedan en el historial.</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::FilmModel</name>
    <message>
        <source>Whose swing is it? Type the player&apos;s name.</source>
        <translation>¿De quién es el swing? Escriba el nombre del jugador.</translation>
    </message>
    <message>
        <source>Kept from an interrupted recording</source>
        <translation>Salvado de una grabación interrumpida</translation>
    </message>
    <message>
        <source>%1 frames a second</source>
        <translation>%1 imágenes por segundo</translation>
    </message>
    <message>
        <source>asked %1, measured %2 frames a second</source>
        <translation>pedidas %1, medidas %2 imágenes por segundo</translation>
    </message>
    <message>
        <source>Swing %1 seen. How did it feel?</source>
        <translation>Swing %1 visto. ¿Cómo lo ha sentido?</translation>
    </message>
    <message>
        <source>Held in range: it counts.</source>
        <translation>Mantenido en el margen: cuenta.</translation>
    </message>
    <message>
        <source>Held, but not in range: it does not count.</source>
        <translation>Mantenido, pero fuera del margen: no cuenta.</translation>
    </message>
    <message>
        <source>Swings %1: %2 hold, %3 do not, %4 can&apos;t be told. Rehearsals %5.</source>
        <translation>Swings %1: %2 se cumplen, %3 no, %4 sin saber. Ensayos %5.</translation>
    </message>
    <message>
        <source>Kept. Measuring it.</source>
        <translation>Guardado. Midiéndolo.</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Stopped; the take is kept for the next start.</source>
        <translation>Parado; la toma queda para el próximo inicio.</translation>
    </message>
    <message>
        <source>In today&apos;s lesson</source>
        <translation>En la clase de hoy</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::InboxModel</name>
    <message>
        <source>overdue by %1</source>
        <translation>con retraso de %1</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>para hoy</translation>
    </message>
    <message>
        <source>due in %1</source>
        <translation>para dentro de %1</translation>
    </message>
    <message>
        <source>waits for you since %1</source>
        <translation>le espera desde hace %1</translation>
    </message>
    <message>
        <source>films again since %1</source>
        <translation>vuelve a filmar desde hace %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>These clips were filmed as they should be; type the reason first.</source>
        <translation>Estos clips se filmaron como debían; escriba antes el motivo.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
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
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>The height must be a number of centimetres from 50 to 250, such as 178; or leave it empty.</source>
        <translation>La estatura debe ser un número de centímetros de 50 a 250, como 178; o déjela vacía.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Plan of %1</source>
        <translation>Plan del %1</translation>
    </message>
    <message>
        <source>rehearsals: %1</source>
        <translation>ensayos: %1</translation>
    </message>
    <message>
        <source>balls: %1</source>
        <translation>bolas: %1</translation>
    </message>
    <message>
        <source>rounds: %1</source>
        <translation>vueltas: %1</translation>
    </message>
    <message>
        <source>Practised since</source>
        <translation>Practicado desde entonces</translation>
    </message>
    <message>
        <source>nothing logged</source>
        <translation>nada anotado</translation>
    </message>
    <message>
        <source>%1: %2%3</source>
        <translation>%1: %2%3</translation>
    </message>
    <message>
        <source>Changed beyond doubt, %1</source>
        <translation>Cambiado fuera de duda, %1</translation>
    </message>
    <message>
        <source>nothing yet: fewer than three swings on a side, or differences within spread and measuring error</source>
        <translation>aún nada: menos de tres swings en un lado, o diferencias dentro de la dispersión y el error de medida</translation>
    </message>
    <message>
        <source>%1: %2, %3 of 10</source>
        <translation>%1: %2, %3 de 10</translation>
    </message>
    <message>
        <source>Pain logged since</source>
        <translation>Dolor anotado desde entonces</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>with a star</source>
        <translation>con estrella</translation>
    </message>
    <message>
        <source>without</source>
        <translation>sin ella</translation>
    </message>
    <message>
        <source>Club</source>
        <translation>Palo</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message>
        <source>Shot</source>
        <translation>Golpe</translation>
    </message>
    <message>
        <source>Star</source>
        <translation>Estrella</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Band: good, %1 (%2)</source>
        <translation>Banda: bien, %1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2, swings: %3</source>
        <translation>%1: %2, swings: %3</translation>
    </message>
    <message>
        <source>One lesson so far: a trend needs two.</source>
        <translation>Solo hay una clase: una evolución necesita dos.</translation>
    </message>
    <message>
        <source>No change is called yet: that takes three swings in the first lesson and three in the newest.</source>
        <translation>Aún no se afirma ningún cambio: hacen falta tres swings en la primera clase y tres en la última.</translation>
    </message>
    <message>
        <source>From the first lesson to the newest: %1, beyond doubt.</source>
        <translation>De la primera clase a la última: %1, fuera de duda.</translation>
    </message>
    <message>
        <source>From the first lesson to the newest: %1, not beyond doubt.</source>
        <translation>De la primera clase a la última: %1, sin certeza.</translation>
    </message>
    <message>
        <source>Swings left out: %1, measured by another version of the method and not comparable.</source>
        <translation>Swings omitidos: %1, medidos con otra versión del método y no comparables.</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::PlayersModel</name>
    <message>
        <source>lessons: %1</source>
        <translation>clases: %1</translation>
    </message>
    <message>
        <source>two versions: open to choose</source>
        <translation>dos versiones: abra para elegir</translation>
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
        <translation>Fotograma %1 de %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>This device has no microphone: the review is kept without a voice.</source>
        <translation>Este dispositivo no tiene micrófono: la revisión se guarda sin voz.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <translation>Parado; no se escribió nada.</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::ShotRecordModel</name>
    <message>
        <source>Contact</source>
        <translation>Contacto</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Ball in the stance</source>
        <translation>Bola en el stance</translation>
    </message>
    <message>
        <source>Hit from</source>
        <translation>Jugada desde</translation>
    </message>
</context>
<context>
    <name>plumbmark::bridge::SwingModel</name>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>Plumb line</source>
        <translation>Línea de plomada</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Ángulo</translation>
    </message>
    <message>
        <source>Arrow</source>
        <translation>Flecha</translation>
    </message>
    <message>
        <source>Ellipse</source>
        <translation>Elipse</translation>
    </message>
    <message>
        <source>Freehand</source>
        <translation>A mano alzada</translation>
    </message>
    <message>
        <source>Word</source>
        <translation>Palabra</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Type the word first, then tap the picture.</source>
        <translation>Escriba primero la palabra y luego toque la imagen.</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>no encontrado</translation>
    </message>
    <message>
        <source>frame %1, by %2</source>
        <translation>fotograma %1, por %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>would sharpen: %1</source>
        <translation>precisaría: %1</translation>
    </message>
    <message>
        <source>Frame %1 of %2</source>
        <translation>Fotograma %1 de %2</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>time scale unknown</source>
        <translation>escala de tiempo desconocida</translation>
    </message>
    <message>
        <source>tap the picture where it is</source>
        <translation>toque la imagen donde está</translation>
    </message>
    <message>
        <source>not marked in this frame</source>
        <translation>sin marcar en este fotograma</translation>
    </message>
    <message>
        <source>%1 | %2 px, ± %3, %4</source>
        <translation>%1 | %2 px, ± %3, %4</translation>
    </message>
    <message>
        <source>Spine</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Shoulder line</source>
        <translation>Línea de hombros</translation>
    </message>
    <message>
        <source>Hip line</source>
        <translation>Línea de caderas</translation>
    </message>
    <message>
        <source>Lead side</source>
        <translation>Lado delantero</translation>
    </message>
    <message>
        <source>Trail side</source>
        <translation>Lado trasero</translation>
    </message>
    <message>
        <source>Ankle to ankle</source>
        <translation>De tobillo a tobillo</translation>
    </message>
</context>
</TS>
