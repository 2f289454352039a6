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
    <message numerus="yes">
        <source>%n difference(s) beyond doubt</source>
        <translation>
            <numerusform>%n diferencia fuera de duda</numerusform>
            <numerusform>%n diferencias fuera de duda</numerusform>
        </translation>
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
</context>
<context>
    <name>FlightButton</name>
    <message>
        <source>Ball flight: %1</source>
        <translation>Vuelo de bola: %1</translation>
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
