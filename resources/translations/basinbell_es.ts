<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES" sourcelanguage="en_GB">
<context>
    <name>Cautions</name>
    <message>
        <source>The product&apos;s own leaflet comes first. Where it differs from this plan, the leaflet is right: change the service and plan again.</source>
        <translation>El prospecto del producto es lo primero. Donde difiera de este plan, tiene razón el prospecto: cambie el servicio y planifique de nuevo.</translation>
    </message>
    <message>
        <source>Have the skin test that the maker, the trade and insurers ask for, as a rule 48 hours before, and read by someone trained to read it. A test without a reaction is no promise that there will be none.</source>
        <translation>Haga la prueba cutánea que piden el fabricante, el oficio y las aseguradoras, por lo general 48 horas antes, y que la lea alguien formado para ello. Una prueba sin reacción no promete que no la habrá.</translation>
    </message>
    <message>
        <source>Do not colour on a rash, on sensitive or broken skin, or after an earlier reaction to colour or to a black temporary tattoo, until a doctor has said what may be done. Many products are not meant for people under 16.</source>
        <translation>No coloree si hay erupción, sobre piel sensible o dañada, ni después de una reacción anterior a un tinte o a un tatuaje temporal negro, hasta que un médico diga qué puede hacerse. Muchos productos no están pensados para menores de 16 años.</translation>
    </message>
    <message>
        <source>Wear suitable gloves, and air the room, above all with lighteners and ammonia.</source>
        <translation>Use guantes adecuados y ventile la sala, sobre todo con decolorantes y amoníaco.</translation>
    </message>
    <message>
        <source>Keep mixtures out of eyes, and off lashes and brows unless the product is made for them. If some gets into an eye, rinse at once with plenty of water and get medical help.</source>
        <translation>Mantenga las mezclas lejos de los ojos, y de pestañas y cejas salvo que el producto sea para ellas. Si algo entra en un ojo, enjuague enseguida con abundante agua y busque ayuda médica.</translation>
    </message>
    <message>
        <source>If skin burns, swells or blisters, rinse at once, whatever the clock says, and get medical help.</source>
        <translation>Si la piel arde, se hincha o salen ampollas, enjuague enseguida, diga lo que diga el reloj, y busque ayuda médica.</translation>
    </message>
    <message>
        <source>Local rules and licensed practice decide who may do this work and how. This program plans and keeps time: it knows neither the product nor the person, and whoever does the work decides.</source>
        <translation>Las normas locales y el ejercicio autorizado del oficio deciden quién puede hacer este trabajo y cómo. Este programa planifica y mide el tiempo: no conoce ni el producto ni a la persona, y decide quien hace el trabajo.</translation>
    </message>
</context>
<context>
    <name>CellAccess</name>
    <message>
        <source>%1 of %2</source>
        <comment>column, row</comment>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>Columns</name>
    <message>
        <source>Bowl</source>
        <translation>Bol</translation>
    </message>
    <message>
        <source>What the mixture is called</source>
        <translation>Cómo se llama la mezcla</translation>
    </message>
    <message>
        <source>Mixing</source>
        <translation>Mezcla</translation>
    </message>
    <message>
        <source>Minutes of mixing; 0 where it needs no planning</source>
        <translation>Minutos de mezcla; 0 si no hace falta planificarla</translation>
    </message>
    <message>
        <source>Pot life</source>
        <translation>Vida útil</translation>
    </message>
    <message>
        <source>Minutes a mixture may be used after mixing, from the leaflet</source>
        <translation>Minutos que una mezcla puede usarse después de mezclarla, según el prospecto</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Qué lleva</translation>
    </message>
    <message>
        <source>In your own words; shown when it is mixed</source>
        <translation>Con sus palabras; se muestra al mezclar</translation>
    </message>
    <message>
        <source>Type a clock time, such as 14:30, or 2026-11-28 14:30 for another day.</source>
        <translation>Escriba una hora, por ejemplo 14:30, o 2026-11-28 14:30 para otro día.</translation>
    </message>
    <message>
        <source>Rinse group</source>
        <translation>Grupo de enjuague</translation>
    </message>
    <message>
        <source>Zones that go under the water together</source>
        <translation>Zonas que van juntas al agua</translation>
    </message>
    <message>
        <source>Rinsing</source>
        <translation>Enjuague</translation>
    </message>
    <message>
        <source>Minutes at the basin</source>
        <translation>Minutos en el lavacabezas</translation>
    </message>
    <message>
        <source>Water from</source>
        <translation>Agua desde</translation>
    </message>
    <message>
        <source>The earliest clock time of its water, where the basin is booked</source>
        <translation>La hora más temprana de agua, si el lavacabezas está reservado</translation>
    </message>
    <message>
        <source>Water until</source>
        <translation>Agua hasta</translation>
    </message>
    <message>
        <source>The latest clock time of its water, where the basin is booked</source>
        <translation>La hora más tardía de agua, si el lavacabezas está reservado</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>Pasada</translation>
    </message>
    <message>
        <source>What this pass is called</source>
        <translation>Cómo se llama esta pasada</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Secado</translation>
    </message>
    <message>
        <source>Minutes of drying by hand</source>
        <translation>Minutos de secado a mano</translation>
    </message>
    <message>
        <source>Drying alone</source>
        <translation>Se seca solo</translation>
    </message>
    <message>
        <source>Minutes that it dries on by itself</source>
        <translation>Minutos que sigue secándose por sí solo</translation>
    </message>
    <message>
        <source>Judging</source>
        <translation>Valoración</translation>
    </message>
    <message>
        <source>Minutes to look at the dry result</source>
        <translation>Minutos para mirar el resultado seco</translation>
    </message>
    <message>
        <source>Least gap</source>
        <translation>Pausa mín.</translation>
    </message>
    <message>
        <source>Fewest minutes before the next coat</source>
        <translation>Minutos como mínimo antes de la pasada siguiente</translation>
    </message>
    <message>
        <source>Most gap</source>
        <translation>Pausa máx.</translation>
    </message>
    <message>
        <source>Most minutes before the next coat</source>
        <translation>Minutos como máximo antes de la pasada siguiente</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Ausencia</translation>
    </message>
    <message>
        <source>When nothing can be asked of them, such as 13:00–13:30; empty for never</source>
        <translation>Cuándo no se les puede pedir nada, por ejemplo 13:00–13:30; vacío para nunca</translation>
    </message>
    <message>
        <source>Type from when to when, such as 13:00–13:30, with commas between several.</source>
        <translation>Escriba desde cuándo hasta cuándo, por ejemplo 13:00–13:30; varios, separados por comas.</translation>
    </message>
    <message>
        <source>mixing</source>
        <translation>mezclar</translation>
    </message>
    <message>
        <source>applying</source>
        <translation>aplicar</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>revisiones</translation>
    </message>
    <message>
        <source>late jobs</source>
        <translation>tareas finales</translation>
    </message>
    <message>
        <source>rinsing</source>
        <translation>enjuagar</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>secar</translation>
    </message>
    <message>
        <source>judging</source>
        <translation>valorar</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>Hace</translation>
    </message>
    <message>
        <source>What they are asked to do; empty for everything</source>
        <translation>Qué se les pide; vacío para todo</translation>
    </message>
    <message>
        <source>Name, with commas between them: %1. Empty for everything.</source>
        <translation>Indique, separado por comas: %1. Vacío para todo.</translation>
    </message>
    <message>
        <source>Pair of hands</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Who works</source>
        <translation>Quién trabaja</translation>
    </message>
    <message>
        <source>Choose one of the list.</source>
        <translation>Elija uno de la lista.</translation>
    </message>
    <message>
        <source>Type minutes, such as 12, 12.5 or 12:30.</source>
        <translation>Escriba minutos, por ejemplo 12, 12,5 o 12:30.</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>No antes de</translation>
    </message>
    <message>
        <source>The clock time that applying it is not to start before, as it can be pulled and kept on the strand; empty for whenever is best</source>
        <translation>La hora antes de la cual no debe empezar su aplicación; también se arrastra y se guarda en el mechón. Vacío: cuando sea mejor</translation>
    </message>
</context>
<context>
    <name>Demos</name>
    <message>
        <source>Actor root and toners</source>
        <translation>Actor: raíz y matices</translation>
    </message>
    <message>
        <source>Wefts two basins</source>
        <translation>Tramas: dos lavacabezas</translation>
    </message>
    <message>
        <source>Wig room darker over a day</source>
        <translation>Taller de pelucas: más oscuro en un día</translation>
    </message>
    <message>
        <source>Wig room lightening in sections</source>
        <translation>Taller de pelucas: decoloración por secciones</translation>
    </message>
    <message>
        <source>Wig room three zones</source>
        <translation>Taller de pelucas: tres zonas</translation>
    </message>
</context>
<context>
    <name>Edits</name>
    <message>
        <source>Coat</source>
        <translation>Pasada</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Bol</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Enjuague</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>New service</source>
        <translation>Servicio nuevo</translation>
    </message>
    <message>
        <source>Stylist</source>
        <translation>Estilista</translation>
    </message>
    <message>
        <source>Coat 1</source>
        <translation>Pasada 1</translation>
    </message>
    <message>
        <source>Bowl 1</source>
        <translation>Bol 1</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Raíz</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Todo junto</translation>
    </message>
</context>
<context>
    <name>ErasedRun</name>
    <message>
        <source>Apply zone %1</source>
        <translation>Aplicar la zona %1</translation>
    </message>
    <message>
        <source>Look at zone %1</source>
        <translation>Revisar la zona %1</translation>
    </message>
    <message>
        <source>Late job on zone %1</source>
        <translation>Tarea final en la zona %1</translation>
    </message>
    <message>
        <source>Mix bowl %1</source>
        <translation>Mezclar el bol %1</translation>
    </message>
    <message>
        <source>Rinse group %1</source>
        <translation>Enjuagar el grupo %1</translation>
    </message>
    <message>
        <source>Rinse zone %1 by itself</source>
        <translation>Enjuagar la zona %1 por separado</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Secar</translation>
    </message>
    <message>
        <source>Assess</source>
        <translation>Valorar</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>%1, coat %2</source>
        <translation>%1, pasada %2</translation>
    </message>
    <message>
        <source>%1, head %2</source>
        <translation>%1, cabeza %2</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>Lo que queda</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>How it turned out</source>
        <translation>Cómo ha quedado</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dicho</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zona %1</translation>
    </message>
    <message>
        <source>A run that was erased</source>
        <translation>Una sesión borrada</translation>
    </message>
    <message>
        <source>%1, %2 to %3, times in %4</source>
        <translation>%1, %2 a %3, horas de %4</translation>
    </message>
    <message>
        <source>Whatever could name a person was erased: the service with its names and notes, what was seen and said. What is left are kinds of tasks, numbers and times. A card cannot be made of them, and a coat cannot begin from them.</source>
        <translation>Se borró todo lo que podía nombrar a una persona: el servicio con sus nombres y notas, lo que se vio y se dijo. Quedan tipos de tareas, números y horas. Con eso no se puede hacer una ficha ni empezar una pasada.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Hatched: the mixture is being applied.</source>
        <translation>Rayado: se está aplicando la mezcla.</translation>
    </message>
    <message>
        <source>The rinse line: water. Zones that are rinsed together end at the same shore.</source>
        <translation>La línea de enjuague: el agua. Las zonas que se enjuagan juntas acaban en la misma orilla.</translation>
    </message>
    <message>
        <source>Below each strand its limits: the bracket is the least, the wedge the target, the bar the most it may develop.</source>
        <translation>Debajo de cada mechón, sus límites: el corchete es la exposición mínima, la cuña el objetivo, la barra la máxima.</translation>
    </message>
    <message>
        <source>Set-up: what is wanted, and the plan that comes of it</source>
        <translation>Preparación: lo que se quiere, y el plan que resulta</translation>
    </message>
    <message>
        <source>In the table: what goes on which zone, how long applying takes you, and how long each zone may develop. Take the times from the leaflet of the product.</source>
        <translation>En la tabla: qué va en cada zona, cuánto tarda usted en aplicar, y cuánto puede estar expuesta cada zona. Tome los tiempos del prospecto del producto.</translation>
    </message>
    <message>
        <source>Below it: the plan. It says when to begin each zone, so that all of them come to the basin on time with one pair of hands. It is made again after every change.</source>
        <translation>Debajo: el plan. Dice cuándo empezar cada zona para que todas lleguen a tiempo al lavacabezas con una sola persona. Se rehace tras cada cambio.</translation>
    </message>
    <message>
        <source>Next: when the plan looks right, start the lanes. They tell you what to do and when. Until then nothing sounds, and everything can be undone.</source>
        <translation>Después: cuando el plan esté bien, inicie los carriles. Le dicen qué hacer y cuándo. Hasta entonces no suena nada y todo se puede deshacer.</translation>
    </message>
    <message>
        <source>A strand with fibres: the zone develops. It swells until the target.</source>
        <translation>Un mechón con fibras: la zona está en exposición. Engorda hasta el objetivo.</translation>
    </message>
    <message>
        <source>Dashed: that limit is not kept.</source>
        <translation>Discontinuo: ese límite no se cumple.</translation>
    </message>
    <message>
        <source>An eye: look at the hair, a strand test.</source>
        <translation>Un ojo: mirar el pelo, una prueba de mechón.</translation>
    </message>
    <message>
        <source>A box with a wave: a late job, such as emulsifying.</source>
        <translation>Una caja con una onda: una tarea final, como emulsionar.</translation>
    </message>
    <message>
        <source>A bar with two ends: water comes between them in nine runs of ten.</source>
        <translation>Una raya con dos extremos: el agua llega entre ellos nueve de cada diez veces.</translation>
    </message>
    <message>
        <source>Boxes on a name: what these hands do. Dashed is on another head.</source>
        <translation>Cajas en un nombre: lo que hace esa persona. Discontinuo: en otra cabeza.</translation>
    </message>
    <message>
        <source>start the lanes</source>
        <translation>iniciar los carriles</translation>
    </message>
    <message>
        <source>change the cell, go to the next</source>
        <translation>cambiar la celda, ir a la siguiente</translation>
    </message>
    <message>
        <source>undo the last change</source>
        <translation>deshacer el último cambio</translation>
    </message>
    <message>
        <source>before the start: what is open</source>
        <translation>antes de empezar: lo que está abierto</translation>
    </message>
    <message>
        <source>sound check</source>
        <translation>prueba de sonido</translation>
    </message>
    <message>
        <source>print the plan</source>
        <translation>imprimir el plan</translation>
    </message>
    <message>
        <source>record cards</source>
        <translation>fichas</translation>
    </message>
    <message>
        <source>to Set-up, to Lanes</source>
        <translation>a la preparación, a los carriles</translation>
    </message>
    <message>
        <source>the cautions</source>
        <translation>las advertencias</translation>
    </message>
    <message>
        <source>it is done: answer the one thing to do</source>
        <translation>está hecho: contesta a lo que hay que hacer</translation>
    </message>
    <message>
        <source>a look: leave it on, look again, rinse this zone</source>
        <translation>una revisión: dejarlo, volver a mirar, enjuagar esta zona</translation>
    </message>
    <message>
        <source>look again a minute sooner, later</source>
        <translation>volver a mirar un minuto antes, después</translation>
    </message>
    <message>
        <source>leave all that were looked at together</source>
        <translation>dejar todo lo que se revisó a la vez</translation>
    </message>
    <message>
        <source>the tone seen</source>
        <translation>el tono visto</translation>
    </message>
    <message>
        <source>skip this look or late job</source>
        <translation>omitir esta revisión o tarea final</translation>
    </message>
    <message>
        <source>quiet for a while; let it sound again</source>
        <translation>silencio un rato; dejar que vuelva a sonar</translation>
    </message>
    <message>
        <source>the last answer was earlier</source>
        <translation>la última respuesta fue antes</translation>
    </message>
    <message>
        <source>undo the last answer</source>
        <translation>deshacer la última respuesta</translation>
    </message>
    <message>
        <source>more: somebody goes or comes, heat, a zone more, an earlier answer</source>
        <translation>más: alguien se va o viene, calor, una zona más, una respuesta anterior</translation>
    </message>
    <message>
        <source>what can be chosen, where not every limit can hold</source>
        <translation>qué se puede elegir, si no se pueden cumplir todos los límites</translation>
    </message>
    <message>
        <source>how it turned out</source>
        <translation>cómo ha quedado</translation>
    </message>
    <message>
        <source>to be read from afar, and back</source>
        <translation>para leer desde lejos, y volver</translation>
    </message>
    <message>
        <source>print the run as it stands</source>
        <translation>imprimir la sesión tal como está</translation>
    </message>
    <message>
        <source>Lanes: what to do now, and how long is left</source>
        <translation>Carriles: qué hacer ahora, y cuánto queda</translation>
    </message>
    <message>
        <source>At the top is the one thing to do. Do it, then press the large button or Enter. Times count from the moment you press.</source>
        <translation>Arriba está lo único que hay que hacer. Hágalo y pulse el botón grande o Intro. Los tiempos cuentan desde que pulsa.</translation>
    </message>
    <message>
        <source>Each lane is a zone. The large digits count down to what comes next for it; with a plus they count how long it is overdue.</source>
        <translation>Cada carril es una zona. Las cifras grandes cuentan hacia atrás hasta lo siguiente que le toca; con un más cuentan el retraso.</translation>
    </message>
    <message>
        <source>When an alarm fills the window: do what it says, then answer it. It sounds until then. Pressed late or by mistake? Say that it was earlier, or undo it; the plan is made again.</source>
        <translation>Cuando una alarma llena la ventana: haga lo que dice y contéstela. Suena hasta entonces. ¿Pulsó tarde o por error? Diga que fue antes, o deshágalo; el plan se rehace.</translation>
    </message>
    <message>
        <source>Next: once all is rinsed and dry, say how it turned out and put the run away. Its record card is kept.</source>
        <translation>Después: cuando todo esté enjuagado y seco, diga cómo ha quedado y guarde la sesión. Su ficha se conserva.</translation>
    </message>
    <message>
        <source>Filled as far as it has developed. The upright line is now.</source>
        <translation>Relleno hasta donde ha llegado la exposición. La línea vertical es ahora.</translation>
    </message>
    <message>
        <source>An eye: look at the hair. With a tick: done.</source>
        <translation>Un ojo: mirar el pelo. Con una marca: hecho.</translation>
    </message>
    <message>
        <source>Record cards: what was done, and how it turned out</source>
        <translation>Fichas: lo que se hizo, y cómo ha quedado</translation>
    </message>
    <message>
        <source>Every run that was ended has a card: what each zone got, when it went on and when water came, what was seen, and how it turned out.</source>
        <translation>Cada sesión terminada tiene una ficha: lo que recibió cada zona, cuándo se aplicó y cuándo llegó el agua, lo que se vio, y cómo ha quedado.</translation>
    </message>
    <message>
        <source>Next: start the next coat from a card. What was noted for next time stays in view there.</source>
        <translation>Después: empiece la pasada siguiente desde una ficha. Lo que se anotó para la próxima vez queda allí a la vista.</translation>
    </message>
    <message>
        <source>The strands as they really went.</source>
        <translation>Los mechones tal como fueron de verdad.</translation>
    </message>
    <message>
        <source>Dashes: where the first plan had them.</source>
        <translation>Discontinuo: donde los tenía el primer plan.</translation>
    </message>
    <message>
        <source>start the next coat from it</source>
        <translation>empezar la pasada siguiente desde ella</translation>
    </message>
    <message>
        <source>print it, save it as a PDF</source>
        <translation>imprimir, guardar como PDF</translation>
    </message>
    <message>
        <source>another card</source>
        <translation>otra ficha</translation>
    </message>
    <message>
        <source>read on in this help, and back</source>
        <translation>seguir leyendo esta ayuda, y volver</translation>
    </message>
    <message>
        <source>this help, and away with it</source>
        <translation>esta ayuda, y quitarla</translation>
    </message>
    <message>
        <source>a short tour on a demo</source>
        <translation>un breve recorrido con un ejemplo</translation>
    </message>
    <message>
        <source>open, save</source>
        <translation>abrir, guardar</translation>
    </message>
    <message>
        <source>Sound check: what each alarm sounds like</source>
        <translation>Prueba de sonido: cómo suena cada alarma</translation>
    </message>
    <message>
        <source>Play each alarm and listen from where you work, at the basin too, with the water running and the dryer on.</source>
        <translation>Haga sonar cada alarma y escuche desde donde trabaja, también desde el lavacabezas, con el agua abierta y el secador en marcha.</translation>
    </message>
    <message>
        <source>If you heard them all, say so: then only water, a limit, or a step that is left standing fills the screen. Until somebody has said so, every step that is due fills it at once.</source>
        <translation>Si las ha oído todas, dígalo: entonces solo el agua, un límite o un paso que queda sin atender llenan la pantalla. Mientras nadie lo haya dicho, cada paso que toca la llena enseguida.</translation>
    </message>
    <message>
        <source>If you hear nothing: look for the volume, the loudspeaker and its cable. You can go on without sound and watch the screen.</source>
        <translation>Si no oye nada: mire el volumen, el altavoz y su cable. Puede seguir sin sonido y vigilar la pantalla.</translation>
    </message>
    <message>
        <source>Next: start the lanes. The check can be made again at any time, from the menu.</source>
        <translation>Después: inicie los carriles. La prueba se puede repetir en cualquier momento, desde el menú.</translation>
    </message>
    <message>
        <source>play an alarm, from the softest to the loudest</source>
        <translation>hacer sonar una alarma, de la más suave a la más fuerte</translation>
    </message>
    <message>
        <source>they were heard</source>
        <translation>se han oído</translation>
    </message>
    <message>
        <source>what to do where nothing is heard</source>
        <translation>qué hacer si no se oye nada</translation>
    </message>
    <message>
        <source>go on without sound</source>
        <translation>seguir sin sonido</translation>
    </message>
</context>
<context>
    <name>Journal</name>
    <message>
        <source>There is no such run.</source>
        <translation>No existe esa sesión.</translation>
    </message>
    <message>
        <source>The run is still open. End it before erasing it.</source>
        <translation>La sesión sigue abierta. Termínela antes de borrarla.</translation>
    </message>
    <message>
        <source>The journal %1 is damaged (%2). It has been left as it is. Bring back a copy of it, or give another folder with --data.</source>
        <translation>El diario %1 está dañado (%2). Se ha dejado como está. Recupere una copia, o indique otra carpeta con --data.</translation>
    </message>
    <message>
        <source>Another program has %1 open and locked. Close it, or give another folder with --data.</source>
        <translation>Otro programa tiene %1 abierto y bloqueado. Ciérrelo, o indique otra carpeta con --data.</translation>
    </message>
    <message>
        <source>The journal %1 failed: %2.</source>
        <translation>El diario %1 falló: %2.</translation>
    </message>
    <message>
        <source>There is no space left to write %1. Free some space on that disk, or give another folder with --data.</source>
        <translation>No queda espacio para escribir %1. Libere espacio en ese disco, o indique otra carpeta con --data.</translation>
    </message>
    <message>
        <source>%1 may not be written. Allow this user to write there, or give another folder with --data.</source>
        <translation>No se permite escribir en %1. Permita que este usuario escriba ahí, o indique otra carpeta con --data.</translation>
    </message>
    <message>
        <source>%1 cannot be used (%2). Give another folder with --data.</source>
        <translation>%1 no se puede usar (%2). Indique otra carpeta con --data.</translation>
    </message>
    <message>
        <source>Nothing can be kept meanwhile: if the program stops, its run is lost. Write down when each application began.</source>
        <translation>Mientras tanto no se puede guardar nada: si el programa se detiene, su sesión se pierde. Anote cuándo empezó cada aplicación.</translation>
    </message>
    <message>
        <source>The journal was damaged. It was set aside, untouched, as %1 and a new one begun. Runs in the old one cannot be taken up again.</source>
        <translation>El diario estaba dañado. Se apartó, intacto, como %1 y se empezó uno nuevo. Las sesiones del antiguo no se pueden retomar.</translation>
    </message>
    <message>
        <source>The journal was written by a newer Basinbell (layout %1, this one knows %2). Use the newer program, or give another folder with --data.</source>
        <translation>El diario lo escribió un Basinbell más nuevo (formato %1, este conoce %2). Use el programa más nuevo, o indique otra carpeta con --data.</translation>
    </message>
    <message>
        <source>The journal is damaged: %1.</source>
        <translation>El diario está dañado: %1.</translation>
    </message>
    <message>
        <source>The file is not a journal of Basinbell.</source>
        <translation>El archivo no es un diario de Basinbell.</translation>
    </message>
    <message>
        <source>The journal knows no run %1.</source>
        <translation>El diario no conoce ninguna sesión %1.</translation>
    </message>
    <message>
        <source>Run %1 is damaged in the journal: its record %2 is missing or was changed. It cannot be taken up again; the journal has been left as it is.</source>
        <translation>La sesión %1 está dañada en el diario: su registro %2 falta o fue cambiado. No se puede retomar; el diario se ha dejado como está.</translation>
    </message>
    <message>
        <source>The journal %1 was cut off.</source>
        <translation>El diario %1 quedó cortado.</translation>
    </message>
</context>
<context>
    <name>KeepAwake</name>
    <message>
        <source>Lanes are running</source>
        <translation>Hay carriles en marcha</translation>
    </message>
</context>
<context>
    <name>LastAnswer</name>
    <message>
        <source>started</source>
        <translation>empezado</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>looked, again later</source>
        <translation>revisado, otra vez más tarde</translation>
    </message>
    <message>
        <source>looked</source>
        <translation>revisado</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>the run was ended</source>
        <translation>la sesión se terminó</translation>
    </message>
    <message>
        <source>what is planned was changed</source>
        <translation>lo planificado cambió</translation>
    </message>
    <message>
        <source>Heat on %1</source>
        <translation>Calor puesto %1</translation>
    </message>
    <message>
        <source>Heat off %1</source>
        <translation>Calor quitado %1</translation>
    </message>
    <message>
        <source>For next time %1: %2</source>
        <translation>Para la próxima vez %1: %2</translation>
    </message>
    <message>
        <source>%1 turned out %2 %3</source>
        <translation>%1 ha quedado: %2 %3</translation>
    </message>
</context>
<context>
    <name>LastTime</name>
    <message>
        <source>%1 %2</source>
        <comment>zone, length</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>zone with its length, how it turned out</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>For next time: %1</source>
        <translation>Para la próxima vez: %1</translation>
    </message>
    <message>
        <source>Last time, %1: %2</source>
        <comment>day, what was said</comment>
        <translation>La última vez, %1: %2</translation>
    </message>
</context>
<context>
    <name>Options</name>
    <message>
        <source>Plans the staggered start of a hair colour service and times its lanes.</source>
        <translation>Planifica el inicio escalonado de una coloración y cronometra sus carriles.</translation>
    </message>
    <message>
        <source>The service to open; several are planned together, a head each.</source>
        <translation>El servicio que se abre; varios se planifican juntos, una cabeza cada uno.</translation>
    </message>
    <message>
        <source>Keep the journal and the window&apos;s state in DIR.</source>
        <translation>Guardar el diario y el estado de la ventana en DIR.</translation>
    </message>
    <message>
        <source>Let N seconds pass in one. For demonstrations: alarms come faster too.</source>
        <translation>Dejar pasar N segundos en uno. Para demostraciones: las alarmas también llegan más rápido.</translation>
    </message>
    <message>
        <source>Take up the latest unfinished run, however long ago it was begun.</source>
        <translation>Retomar la última sesión sin terminar, por mucho que haga que empezó.</translation>
    </message>
    <message>
        <source>Open the demo.</source>
        <translation>Abrir el ejemplo.</translation>
    </message>
    <message>
        <source>Speak the language CODE this time: %1.</source>
        <translation>Usar esta vez el idioma CODE: %1.</translation>
    </message>
    <message>
        <source>--language %1: it must be one of %2.</source>
        <translation>--language %1: debe ser uno de %2.</translation>
    </message>
    <message>
        <source>--speed %1: it must be a number from 0.01 to 1000000.</source>
        <translation>--speed %1: debe ser un número de 0.01 a 1000000.</translation>
    </message>
    <message>
        <source>There is no screen to show the window on. Start it on a desktop (or set DISPLAY), or use basinbell, which plans and leads through a run in a terminal.</source>
        <translation>No hay ninguna pantalla en la que mostrar la ventana. Inicie el programa en un escritorio (o defina DISPLAY), o use basinbell, que planifica y guía una sesión en un terminal.</translation>
    </message>
</context>
<context>
    <name>Outcomes</name>
    <message>
        <source>as wanted</source>
        <translation>como se quería</translation>
    </message>
    <message>
        <source>too light</source>
        <translation>demasiado claro</translation>
    </message>
    <message>
        <source>too dark</source>
        <translation>demasiado oscuro</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>demasiado cálido</translation>
    </message>
    <message>
        <source>too cool (greenish)</source>
        <translation>demasiado frío (verdoso)</translation>
    </message>
    <message>
        <source>uneven</source>
        <translation>desigual</translation>
    </message>
</context>
<context>
    <name>PlaceWords</name>
    <message>
        <source>Front hairline</source>
        <translation>Contorno del rostro</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Coronilla</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Lados</translation>
    </message>
    <message>
        <source>Nape</source>
        <translation>Nuca</translation>
    </message>
    <message>
        <source>Piece 1</source>
        <translation>Pieza 1</translation>
    </message>
    <message>
        <source>Piece 2</source>
        <translation>Pieza 2</translation>
    </message>
    <message>
        <source>Piece 3</source>
        <translation>Pieza 3</translation>
    </message>
    <message>
        <source>Piece 4</source>
        <translation>Pieza 4</translation>
    </message>
    <message>
        <source>roots</source>
        <translation>raíz</translation>
    </message>
    <message>
        <source>mids</source>
        <translation>medios</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>puntas</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a section of the head, a stretch of its hair</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>PlanText</name>
    <message>
        <source>%1 takes up to %2 min (or only %3)</source>
        <translation>%1 tarda hasta %2 min (o solo %3)</translation>
    </message>
    <message numerus="yes">
        <source>%n heads together: begin %1, done %2.</source>
        <translation>
            <numerusform>%n cabeza: inicio %1, fin %2.</numerusform>
            <numerusform>%n cabezas juntas: inicio %1, fin %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Begin %1, done %2.</source>
        <translation>Inicio %1, fin %2.</translation>
    </message>
    <message>
        <source> Every zone gets its target.</source>
        <translation> Cada zona alcanza su objetivo.</translation>
    </message>
    <message>
        <source> Some zones miss their target, all keep their limits.</source>
        <translation> Algunas zonas no alcanzan su objetivo; todas respetan sus límites.</translation>
    </message>
    <message>
        <source> There may be a better plan: the search was stopped.</source>
        <translation> Puede haber un plan mejor: la búsqueda se detuvo.</translation>
    </message>
    <message>
        <source> Not every plan was tried: another may hold further.</source>
        <translation> No se probaron todos los planes: otro puede aguantar más.</translation>
    </message>
    <message>
        <source>Holds only for the usual times of applying: where one takes longer or shorter, a limit may be missed.</source>
        <translation>Solo vale para los tiempos de aplicación habituales: si alguno es más largo o más corto, puede incumplirse un límite.</translation>
    </message>
    <message>
        <source>Holds even if %1; beyond that a limit may be missed.</source>
        <translation>Aguanta aunque %1; más allá puede incumplirse un límite.</translation>
    </message>
    <message>
        <source>Holds even if %1.</source>
        <translation>Aguanta aunque %1.</translation>
    </message>
    <message>
        <source>Forecast, with applying anywhere from quickest to slowest: every zone stays inside its limits %1. A chance, not a promise.</source>
        <translation>Previsión, con la aplicación entre el mínimo y el máximo: cada zona queda dentro de sus límites %1. Una posibilidad, no una promesa.</translation>
    </message>
    <message>
        <source>, from %1 to %2</source>
        <translation>, de %1 a %2</translation>
    </message>
    <message>
        <source>; and: </source>
        <translation>; y: </translation>
    </message>
    <message>
        <source>Then every zone gets its target, from %1 to %2.</source>
        <translation>Entonces cada zona alcanza su objetivo, de %1 a %2.</translation>
    </message>
    <message>
        <source>Then it fits from %1 to %2, off target by %3 zone-minutes in all.</source>
        <translation>Entonces cabe de %1 a %2, a %3 minutos-zona del objetivo en total.</translation>
    </message>
</context>
<context>
    <name>PreparationText</name>
    <message>
        <source>not checked</source>
        <translation>sin comprobar</translation>
    </message>
    <message>
        <source>open</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>heard</source>
        <translation>se oye</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>none, watch the screen</source>
        <translation>ninguno, mire la pantalla</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Sonido</translation>
    </message>
    <message>
        <source>Skin and strand tests</source>
        <translation>Pruebas de piel y de mechón</translation>
    </message>
    <message>
        <source>Strand test</source>
        <translation>Prueba de mechón</translation>
    </message>
    <message>
        <source>Gloves, apron, air</source>
        <translation>Guantes, delantal, aire</translation>
    </message>
    <message>
        <source>Bowls in order</source>
        <translation>Boles en orden</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>said at %1</source>
        <translation>dicho a las %1</translation>
    </message>
    <message>
        <source>%1; said at %2</source>
        <translation>%1; dicho a las %2</translation>
    </message>
    <message>
        <source>Play each alarm and listen from where you work. As long as nobody has heard them, every step that is due fills the screen at once.</source>
        <translation>Haga sonar cada alarma y escuche desde donde trabaja. Mientras nadie las haya oído, cada paso que toca llena la pantalla enseguida.</translation>
    </message>
    <message>
        <source>Which tests there are, when they are made and who reads them is said by the product&apos;s leaflet, by local rules and by licensed practice. Having them written down here makes nothing safe.</source>
        <translation>Qué pruebas hay, cuándo se hacen y quién las lee lo dicen el prospecto del producto, las normas locales y la práctica autorizada. Anotarlas aquí no hace nada seguro.</translation>
    </message>
    <message>
        <source>Try what is mixed on a strand of this hair first, as the product&apos;s leaflet says.</source>
        <translation>Pruebe antes la mezcla en un mechón de este pelo, como dice el prospecto del producto.</translation>
    </message>
    <message>
        <source>Gloves and apron on, fresh air in the room, and eyes covered while powder is mixed. The product&apos;s leaflet and local rules say what else is needed.</source>
        <translation>Guantes y delantal puestos, aire fresco en la sala y ojos protegidos mientras se mezcla polvo. El prospecto del producto y las normas locales dicen qué más hace falta.</translation>
    </message>
    <message>
        <source>Set bowls, brushes and what goes into them out in the order of mixing. There is no plan yet that gives the order.</source>
        <translation>Prepare boles, brochas y lo que va en ellos en el orden de mezcla. Todavía no hay un plan que dé el orden.</translation>
    </message>
    <message>
        <source>Set bowls, brushes and what goes into them out in this order: %1. A bowl ages from when it is mixed, so mix each at its time.</source>
        <translation>Prepare boles, brochas y lo que va en ellos en este orden: %1. Un bol envejece desde que se mezcla; mezcle cada uno a su hora.</translation>
    </message>
    <message>
        <source>Listen …</source>
        <translation>Escuchar …</translation>
    </message>
    <message>
        <source>Made and read</source>
        <translation>Hechas y leídas</translation>
    </message>
    <message>
        <source>All there</source>
        <translation>Todo está</translation>
    </message>
    <message>
        <source>Set out</source>
        <translation>Preparados</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 a las %2</translation>
    </message>
    <message>
        <source>%1, ready by %2</source>
        <translation>%1, listo a las %2</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Still open (F4): %1. You can start all the same.</source>
        <translation>Aún pendiente (F4): %1. Puede empezar de todos modos.</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>%1 was not written: %2. What was there before is as it was.</source>
        <translation>%1 no se ha escrito: %2. Lo que había antes sigue igual.</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Servicio</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>service, head</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, times in %2</source>
        <translation>%1, horas de %2</translation>
    </message>
    <message>
        <source>. The clocks change while this lasts; +01:00 and the like is the distance from UTC</source>
        <translation>. Entretanto cambia la hora; +01:00 y similares es la distancia a UTC</translation>
    </message>
    <message>
        <source>%1. As it stood at %2</source>
        <translation>%1. Como estaba a las %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>coat, what</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>goes on</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>by the hands that apply %1</source>
        <translation>por la persona que aplica %1</translation>
    </message>
    <message>
        <source>basin %1</source>
        <translation>lavacabezas %1</translation>
    </message>
    <message>
        <source>then %1 by itself</source>
        <translation>después %1 sin nadie</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>En orden</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Really</source>
        <translation>En realidad</translation>
    </message>
    <message>
        <source>counted from the first strand</source>
        <translation>contado desde el primer mechón</translation>
    </message>
    <message>
        <source>the first strand carries it %1 of at most %2</source>
        <translation>el primer mechón lo lleva %1 de %2 como máximo</translation>
    </message>
    <message>
        <source>the last strand carries it %1 of at least %2</source>
        <translation>el último mechón lo lleva %1 de %2 como mínimo</translation>
    </message>
    <message>
        <source>rinsed by itself</source>
        <translation>enjuagada por separado</translation>
    </message>
    <message>
        <source>Limits, and what is expected (in minutes)</source>
        <translation>Límites, y lo que se espera (en minutos)</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Goes on</source>
        <translation>Se aplica</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Al menos</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>A lo sumo</translation>
    </message>
    <message>
        <source>Develops</source>
        <translation>Exposición</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>moments</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>minutes, how far off target</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>Bowls, in the order in which they are mixed</source>
        <translation>Boles, en el orden en que se mezclan</translation>
    </message>
    <message>
        <source>Mix at</source>
        <translation>Mezclar a las</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Bol</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Usar</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Lo que lleva</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>There is no unfinished run to take up.</source>
        <translation>No hay ninguna sesión sin terminar que retomar.</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Ctrl</source>
        <translation>Ctrl</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Mayús</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>PgUp</source>
        <translation>RePág</translation>
    </message>
    <message>
        <source>PgDown</source>
        <translation>AvPág</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>RecordCard</name>
    <message>
        <source>Service</source>
        <translation>Servicio</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>service, head</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Record card. %1, %2 to %3, times in %4</source>
        <translation>Ficha. %1, %2 a %3, horas de %4</translation>
    </message>
    <message>
        <source>. Not ended yet</source>
        <translation>. Sin terminar</translation>
    </message>
    <message>
        <source>Nothing of this was begun.</source>
        <translation>De esto no se empezó nada.</translation>
    </message>
    <message>
        <source>%1 (planned %2)</source>
        <translation>%1 (previsto %2)</translation>
    </message>
    <message>
        <source>What each zone got (in minutes; dashed in the picture: as first planned)</source>
        <translation>Lo que tuvo cada zona (en minutos; a trazos en el dibujo: como se planificó al principio)</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>First strand</source>
        <translation>Primer mechón</translation>
    </message>
    <message>
        <source>Last strand</source>
        <translation>Último mechón</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mín.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Máx.</translation>
    </message>
    <message>
        <source>Developed</source>
        <translation>Exposición</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>minutes, how far off target</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>How it turned out</source>
        <translation>Cómo ha quedado</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dicho</translation>
    </message>
    <message>
        <source>For next time: %1</source>
        <translation>Para la próxima vez: %1</translation>
    </message>
    <message>
        <source>What was mixed</source>
        <translation>Lo que se mezcló</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Mezclado</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Bol</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Lo que lleva</translation>
    </message>
    <message>
        <source>left</source>
        <translation>se dejó</translation>
    </message>
    <message>
        <source>again in %1</source>
        <translation>otra vez en %1</translation>
    </message>
    <message>
        <source>rinsed now</source>
        <translation>se enjuagó ya</translation>
    </message>
    <message>
        <source>Looks, heat, and what was left out</source>
        <translation>Revisiones, calor, y lo que se omitió</translation>
    </message>
    <message>
        <source>At</source>
        <translation>A las</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Came of it</source>
        <translation>Decisión</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>Revisar %1</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta las %1</translation>
    </message>
    <message>
        <source>no end said</source>
        <translation>sin final indicado</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>Changed while it went on</source>
        <translation>Cambiado sobre la marcha</translation>
    </message>
    <message>
        <source>Said before the start</source>
        <translation>Dicho antes de empezar</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
</context>
<context>
    <name>Results</name>
    <message>
        <source>on target</source>
        <translation>en el objetivo</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 de menos</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>%1 de más</translation>
    </message>
</context>
<context>
    <name>Sentences</name>
    <message numerus="yes">
        <source>%n.</source>
        <comment>an ordinal number, such as 2nd</comment>
        <translation>
            <numerusform>%n.ª</numerusform>
            <numerusform>%n.ª</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ServiceFiles</name>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 no se puede leer: %2.</translation>
    </message>
    <message>
        <source>%1 was not saved: %2. What was there before is as it was.</source>
        <translation>%1 no se guardó: %2. Lo que había antes sigue igual.</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>The clock of this machine agrees with this run again.</source>
        <translation>El reloj de este equipo vuelve a coincidir con esta sesión.</translation>
    </message>
    <message>
        <source>The clock of this machine was set, or is wrong: it is %1 ahead of this run.</source>
        <translation>El reloj de este equipo se cambió o va mal: está %1 por delante de esta sesión.</translation>
    </message>
    <message>
        <source>The clock of this machine was set, or is wrong: it is %1 behind this run.</source>
        <translation>El reloj de este equipo se cambió o va mal: está %1 por detrás de esta sesión.</translation>
    </message>
    <message>
        <source>Nothing is lost: the run goes on by the time that really passes, and by the clock as it was.</source>
        <translation>No se pierde nada: la sesión sigue según el tiempo que de verdad pasa y según el reloj como estaba.</translation>
    </message>
    <message>
        <source>This run is damaged in the journal: its service was changed there. It cannot be taken up again; the journal has been left as it is.</source>
        <translation>Esta sesión está dañada en el diario: su servicio fue cambiado ahí. No se puede retomar; el diario se ha dejado como está.</translation>
    </message>
    <message>
        <source>This run goes by the time of day and cannot be played at another speed.</source>
        <translation>Esta sesión sigue la hora del día y no se puede reproducir a otra velocidad.</translation>
    </message>
    <message>
        <source>The clock of this machine shows an earlier time than when this run was last answered. Put the clock right and start again, or every time that is shown will be wrong.</source>
        <translation>El reloj de este equipo marca una hora anterior a la última respuesta de esta sesión. Ponga el reloj bien y empiece de nuevo, o toda hora que se muestre estará mal.</translation>
    </message>
    <message>
        <source>This machine was started anew since this run was last led, so the run goes by the machine&apos;s clock again. If that clock is wrong, so is every time that is shown.</source>
        <translation>Este equipo se reinició desde esta sesión, así que la sesión vuelve a guiarse por el reloj del equipo. Si ese reloj va mal, también toda hora que se muestre.</translation>
    </message>
    <message numerus="yes">
        <source>Leaving this run loses its last %n answers: the journal could not be written.</source>
        <translation>
            <numerusform>Al dejar esta sesión se pierde su última respuesta: no se pudo escribir el diario.</numerusform>
            <numerusform>Al dejar esta sesión se pierden sus últimas %n respuestas: no se pudo escribir el diario.</numerusform>
        </translation>
    </message>
    <message>
        <source>The journal can be written again, and everything of this run is in it.</source>
        <translation>El diario se puede escribir de nuevo y todo lo de esta sesión está en él.</translation>
    </message>
    <message>
        <source>This run goes on, but what is answered now is lost if the program stops. It is written as soon as that is possible again.</source>
        <translation>Esta sesión sigue, pero lo que se responda ahora se pierde si el programa se detiene. Se escribe en cuanto vuelva a ser posible.</translation>
    </message>
    <message>
        <source>The service of this run was erased, so it cannot be taken up again.</source>
        <translation>El servicio de esta sesión se borró, así que no se puede retomar.</translation>
    </message>
    <message>
        <source>The service of this run cannot be read any more: %1</source>
        <translation>El servicio de esta sesión ya no se puede leer: %1</translation>
    </message>
    <message>
        <source>This run is damaged in the journal: its service was changed there, so it cannot be told again.</source>
        <translation>Esta sesión está dañada en el diario: su servicio se cambió allí, así que ya no se puede volver a contar.</translation>
    </message>
    <message>
        <source>Of a run that is over only how it turned out can be said.</source>
        <translation>De una sesión terminada solo se puede decir cómo ha quedado.</translation>
    </message>
    <message>
        <source>This run was erased. Nothing can be said of it any more.</source>
        <translation>Esta sesión se borró. Ya no se puede decir nada de ella.</translation>
    </message>
</context>
<context>
    <name>Speech</name>
    <message>
        <source>S&amp;peak the alarms</source>
        <translation>&amp;Decir las alarmas</translation>
    </message>
    <message>
        <source>Alarms are spoken.</source>
        <translation>Las alarmas se dicen en voz alta.</translation>
    </message>
    <message>
        <source>%1 (no voice was found)</source>
        <translation>%1 (no se encontró ninguna voz)</translation>
    </message>
</context>
<context>
    <name>StartText</name>
    <message>
        <source>water %1 instead of %2</source>
        <translation>agua a las %1 en vez de las %2</translation>
    </message>
    <message>
        <source>water of %1 %2 instead of %3</source>
        <translation>agua de %1 a las %2 en vez de las %3</translation>
    </message>
    <message>
        <source>%1 develops %2 min instead of %3 min</source>
        <translation>%1 se expone %2 min en vez de %3 min</translation>
    </message>
    <message numerus="yes">
        <source>%n zones more develop for another time</source>
        <translation>
            <numerusform>%n zona más se expone otro tiempo</numerusform>
            <numerusform>%n zonas más se exponen otro tiempo</numerusform>
        </translation>
    </message>
    <message>
        <source>begin %1 instead of %2</source>
        <translation>inicio a las %1 en vez de las %2</translation>
    </message>
    <message>
        <source>done %1 instead of %2</source>
        <translation>fin a las %1 en vez de las %2</translation>
    </message>
    <message>
        <source>Every zone gets its target.</source>
        <translation>Cada zona alcanza su objetivo.</translation>
    </message>
    <message>
        <source>Off target by %1 zone-minutes in all, as before.</source>
        <translation>A %1 minutos-zona del objetivo en total, como antes.</translation>
    </message>
    <message>
        <source>Off target by %1 zone-minutes in all, %2 before; every limit holds.</source>
        <translation>A %1 minutos-zona del objetivo en total, antes %2; se cumple cada límite.</translation>
    </message>
    <message>
        <source>%1 starts %2, as planned</source>
        <translation>%1 empieza a las %2, como estaba planeado</translation>
    </message>
    <message>
        <source>%1 starts %2 instead of %3</source>
        <translation>%1 empieza a las %2 en vez de las %3</translation>
    </message>
    <message>
        <source>%1; nothing else changes.</source>
        <translation>%1; no cambia nada más.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Applying may be less off its usual times.</source>
        <translation>La aplicación puede desviarse menos de sus tiempos habituales.</translation>
    </message>
    <message>
        <source>%1 cannot start later than %2.</source>
        <translation>%1 no puede empezar después de las %2.</translation>
    </message>
    <message>
        <source>%1 cannot start later than %2: %3.</source>
        <translation>%1 no puede empezar después de las %2: %3.</translation>
    </message>
    <message>
        <source>%1 starts %2 by itself; only a later start can be chosen.</source>
        <translation>%1 empieza por sí mismo a las %2; solo se puede elegir un inicio más tardío.</translation>
    </message>
    <message>
        <source>With %1 not before %2 nothing fits: %3.</source>
        <translation>Con %1 no antes de las %2 no cabe nada: %3.</translation>
    </message>
    <message>
        <source>%1 not before %2</source>
        <translation>%1 no antes de las %2</translation>
    </message>
    <message>
        <source>%1 whenever is best</source>
        <translation>%1 cuando sea mejor</translation>
    </message>
</context>
<context>
    <name>StartingPoints</name>
    <message>
        <source>Regrowth and ends</source>
        <translation>Crecimiento y puntas</translation>
    </message>
    <message>
        <source>Regrowth colour</source>
        <translation>Color crecimiento</translation>
    </message>
    <message>
        <source>Ends colour</source>
        <translation>Color puntas</translation>
    </message>
    <message>
        <source>Regrowth</source>
        <translation>Crecimiento</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Puntas</translation>
    </message>
    <message>
        <source>Emulsify</source>
        <translation>Emulsionar</translation>
    </message>
    <message>
        <source>Root with mids and ends</source>
        <translation>Raíz con medios y puntas</translation>
    </message>
    <message>
        <source>Root colour</source>
        <translation>Color raíz</translation>
    </message>
    <message>
        <source>Mids toner</source>
        <translation>Matiz medios</translation>
    </message>
    <message>
        <source>Ends toner</source>
        <translation>Matiz puntas</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Raíz</translation>
    </message>
    <message>
        <source>Mids</source>
        <translation>Medios</translation>
    </message>
    <message>
        <source>Lightener in sections</source>
        <translation>Decoloración por secciones</translation>
    </message>
    <message>
        <source>Lightener, first bowl</source>
        <translation>Decolorante, primer bol</translation>
    </message>
    <message>
        <source>Lightener, second bowl</source>
        <translation>Decolorante, segundo bol</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Nuca</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Lados</translation>
    </message>
    <message>
        <source>Back left</source>
        <translation>Nuca izquierda</translation>
    </message>
    <message>
        <source>Back right</source>
        <translation>Nuca derecha</translation>
    </message>
    <message>
        <source>Side left</source>
        <translation>Lado izquierdo</translation>
    </message>
    <message>
        <source>Side right</source>
        <translation>Lado derecho</translation>
    </message>
    <message>
        <source>All over, with a fill first</source>
        <translation>Toda la cabeza, con prepigmentación</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Prepigmento</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Prepigmentación</translation>
    </message>
    <message>
        <source>All over</source>
        <translation>Toda la cabeza</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>All-over colour</source>
        <translation>Color toda la cabeza</translation>
    </message>
    <message>
        <source>Times are common practice: put in those of the product&apos;s leaflet.</source>
        <translation>Los tiempos son práctica común: ponga los del prospecto del producto.</translation>
    </message>
    <message>
        <source>&amp;Regrowth and ends</source>
        <translation>&amp;Crecimiento y puntas</translation>
    </message>
    <message>
        <source>R&amp;oot with mids and ends</source>
        <translation>&amp;Raíz con medios y puntas</translation>
    </message>
    <message>
        <source>&amp;Lightener in sections</source>
        <translation>&amp;Decoloración por secciones</translation>
    </message>
    <message>
        <source>&amp;All over, with a fill first</source>
        <translation>&amp;Toda la cabeza, con prepigmentación</translation>
    </message>
</context>
<context>
    <name>Strands</name>
    <message>
        <source>Water %1</source>
        <translation>Agua %1</translation>
    </message>
    <message>
        <source>Now %1</source>
        <translation>Ahora %1</translation>
    </message>
    <message>
        <source>%1 min · %2 to %3</source>
        <translation>%1 min · %2 a %3</translation>
    </message>
</context>
<context>
    <name>Text</name>
    <message>
        <source>process %1</source>
        <translation>proceso %1</translation>
    </message>
    <message>
        <source>process %1 of %2</source>
        <comment>of a user</comment>
        <translation>proceso %1 de %2</translation>
    </message>
    <message>
        <source>Another Basinbell%1 is using the folder %2. Close it first, or give this one a folder of its own with --data.</source>
        <translation>Otro Basinbell%1 está usando la carpeta %2. Ciérrelo primero, o dé a este una carpeta propia con --data.</translation>
    </message>
</context>
<context>
    <name>Tones</name>
    <message>
        <source>still orange</source>
        <translation>aún naranja</translation>
    </message>
    <message>
        <source>still yellow</source>
        <translation>aún amarillo</translation>
    </message>
    <message>
        <source>pale yellow</source>
        <translation>amarillo pálido</translation>
    </message>
    <message>
        <source>patchy</source>
        <translation>desigual</translation>
    </message>
    <message>
        <source>even</source>
        <translation>uniforme</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>demasiado cálido</translation>
    </message>
    <message>
        <source>turning ashy</source>
        <translation>se vuelve ceniza</translation>
    </message>
    <message>
        <source>turning green</source>
        <translation>se vuelve verdoso</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Apply %1</source>
        <translation>Aplicar %1</translation>
    </message>
    <message>
        <source>Mix %1</source>
        <translation>Mezclar %1</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>Revisar %1</translation>
    </message>
    <message>
        <source>Rinse %1</source>
        <translation>Enjuagar %1</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Secar</translation>
    </message>
    <message>
        <source>Judge the result</source>
        <translation>Valorar el resultado</translation>
    </message>
    <message>
        <source>Heat over the head</source>
        <translation>Calor sobre la cabeza</translation>
    </message>
    <message>
        <source>Applying %1</source>
        <translation>Aplicando %1</translation>
    </message>
    <message>
        <source>Mixing %1</source>
        <translation>Mezclando %1</translation>
    </message>
    <message>
        <source>Rinsing %1</source>
        <translation>Enjuagando %1</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Secado</translation>
    </message>
    <message>
        <source>Judging the result</source>
        <translation>Valorando el resultado</translation>
    </message>
    <message>
        <source>Take the heat off</source>
        <translation>Quitar el calor</translation>
    </message>
    <message>
        <source>Water is on</source>
        <translation>El agua corre</translation>
    </message>
    <message>
        <source>First strand is covered</source>
        <translation>Primer mechón cubierto</translation>
    </message>
    <message>
        <source>Mixing has begun</source>
        <translation>La mezcla ha empezado</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Empezado</translation>
    </message>
    <message>
        <source>All of %1 is on</source>
        <translation>Todo aplicado: %1</translation>
    </message>
    <message>
        <source>It is mixed</source>
        <translation>Está mezclado</translation>
    </message>
    <message>
        <source>Rinsed out</source>
        <translation>Enjuagado</translation>
    </message>
    <message>
        <source>Dryer is off my hands</source>
        <translation>El secador ya no me necesita</translation>
    </message>
    <message>
        <source>Heat is off</source>
        <translation>Calor quitado</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>due %1 min ago</source>
        <translation>pendiente desde hace %1 min</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>whose, what</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>All done</source>
        <translation>Todo hecho</translation>
    </message>
    <message>
        <source>Nothing to do just now</source>
        <translation>Nada que hacer ahora</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Ahora: %1</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Después: %1</translation>
    </message>
    <message>
        <source>the latest safe start was %1, %2 ago</source>
        <translation>el último inicio seguro era a las %1, hace %2</translation>
    </message>
    <message>
        <source>, if all takes as usual</source>
        <translation>, si todo tarda lo habitual</translation>
    </message>
    <message>
        <source>at the latest %1, %2</source>
        <translation>como muy tarde %1, %2</translation>
    </message>
    <message>
        <source>latest was %1</source>
        <translation>lo más tarde era %1</translation>
    </message>
    <message>
        <source>, if as usual</source>
        <translation>, si es habitual</translation>
    </message>
    <message>
        <source>latest %1, %2</source>
        <translation>máx. %1, %2</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>en espera</translation>
    </message>
    <message>
        <source>being applied</source>
        <translation>aplicándose</translation>
    </message>
    <message>
        <source>developing</source>
        <translation>en exposición</translation>
    </message>
    <message>
        <source>under water</source>
        <translation>bajo el agua</translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation>enjuagado</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>late to apply</source>
        <translation>tarde para aplicar</translation>
    </message>
    <message>
        <source>until you apply</source>
        <translation>hasta aplicar</translation>
    </message>
    <message>
        <source>longer than planned</source>
        <translation>más de lo previsto</translation>
    </message>
    <message>
        <source>of applying left</source>
        <translation>de aplicación restantes</translation>
    </message>
    <message>
        <source>past planned water</source>
        <translation>tras el agua prevista</translation>
    </message>
    <message>
        <source>until water</source>
        <translation>hasta el agua</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>pronto</translation>
    </message>
    <message>
        <source>late</source>
        <translation>tarde</translation>
    </message>
    <message>
        <source>%1 is past its limit</source>
        <translation>%1: límite superado</translation>
    </message>
    <message>
        <source>%1 nears its limit</source>
        <translation>%1: límite cercano</translation>
    </message>
    <message>
        <source>Soon: %1</source>
        <translation>Pronto: %1</translation>
    </message>
    <message>
        <source>Should be done: %1</source>
        <translation>Debería estar hecho: %1</translation>
    </message>
    <message>
        <source>Look now: %1</source>
        <translation>Revisar ahora: %1</translation>
    </message>
    <message>
        <source>Rinse now: %1</source>
        <translation>Enjuagar ahora: %1</translation>
    </message>
    <message>
        <source>Due now.</source>
        <translation>Toca ahora.</translation>
    </message>
    <message>
        <source>Waiting for you: %1 min.</source>
        <translation>Le espera desde hace %1 min.</translation>
    </message>
    <message>
        <source>Also: %1.</source>
        <translation>También: %1.</translation>
    </message>
    <message>
        <source>Soon: %1, strand test</source>
        <translation>Pronto: %1, prueba de mechón</translation>
    </message>
    <message>
        <source>%1: strand test</source>
        <translation>%1: prueba de mechón</translation>
    </message>
    <message>
        <source>Soon: rinse %1</source>
        <translation>Pronto: enjuagar %1</translation>
    </message>
    <message>
        <source>%1: has it ended?</source>
        <translation>%1: ¿ha terminado?</translation>
    </message>
    <message>
        <source>Carry on with the least harm</source>
        <translation>Seguir con el menor daño</translation>
    </message>
    <message>
        <source>Every limit holds</source>
        <translation>Se respetan todos los límites</translation>
    </message>
    <message>
        <source>1 limit is passed by %1</source>
        <translation>Se supera 1 límite por %1</translation>
    </message>
    <message numerus="yes">
        <source>%n limits are passed by %1 in all</source>
        <translation>
            <numerusform>Se supera %n límite por %1</numerusform>
            <numerusform>Se superan %n límites por %1 en total</numerusform>
        </translation>
    </message>
    <message>
        <source>  ·  zone-minutes: %1 short, %2 past the targets</source>
        <translation>  ·  minutos-zona: %1 por debajo, %2 por encima de los objetivos</translation>
    </message>
    <message>
        <source>every time</source>
        <translation>siempre</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>over 99 in 100</source>
        <translation>más de 99 de 100</translation>
    </message>
    <message>
        <source>under 1 in 100</source>
        <translation>menos de 1 de 100</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 de 100</translation>
    </message>
    <message>
        <source>%1 min, at least %2, at most %3</source>
        <translation>%1 min, como mínimo %2, como máximo %3</translation>
    </message>
</context>
<context>
    <name>ZoneColumns</name>
    <message>
        <source>Bowl</source>
        <translation>Bol</translation>
    </message>
    <message>
        <source>The mixture it is applied from</source>
        <translation>La mezcla de la que se aplica</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Enjuague</translation>
    </message>
    <message>
        <source>The rinse group it goes under the water with</source>
        <translation>El grupo de enjuague con el que va al agua</translation>
    </message>
    <message>
        <source>all applied</source>
        <translation>todo aplicado</translation>
    </message>
    <message>
        <source>first strand</source>
        <translation>primer mechón</translation>
    </message>
    <message>
        <source>Counts from</source>
        <translation>Cuenta desde</translation>
    </message>
    <message>
        <source>When the leaflet starts to count development</source>
        <translation>Cuándo el prospecto empieza a contar la exposición</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>Alone</source>
        <translation>Sola</translation>
    </message>
    <message>
        <source>Can be rinsed without wetting its neighbours</source>
        <translation>Puede enjuagarse sin mojar a sus vecinas</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Minutes of development to aim at</source>
        <translation>Minutos de exposición buscados</translation>
    </message>
    <message>
        <source>First look</source>
        <translation>1.ª revisión</translation>
    </message>
    <message>
        <source>Minutes of development at the first strand test; empty for none</source>
        <translation>Minutos de exposición en la primera prueba de mechón; vacío para ninguna</translation>
    </message>
    <message>
        <source>Then every</source>
        <translation>Luego cada</translation>
    </message>
    <message>
        <source>Minutes between looks; empty for one look</source>
        <translation>Minutos entre revisiones; vacío para una sola</translation>
    </message>
    <message>
        <source>A look</source>
        <translation>Una revisión</translation>
    </message>
    <message>
        <source>Minutes that one look takes</source>
        <translation>Minutos que dura una revisión</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Después de</translation>
    </message>
    <message>
        <source>Zones that must be applied before it</source>
        <translation>Zonas que deben aplicarse antes</translation>
    </message>
    <message>
        <source>Name zones of this coat, with commas between them.</source>
        <translation>Nombre zonas de esta pasada, separadas por comas.</translation>
    </message>
    <message>
        <source>%1 %2, %3 before water</source>
        <comment>a job, how long it takes, when</comment>
        <translation>%1 %2, %3 antes del agua</translation>
    </message>
    <message>
        <source>Late jobs</source>
        <translation>Tareas finales</translation>
    </message>
    <message>
        <source>Hands-on jobs tied to the rinse, such as: Emulsify 2, 5 before water</source>
        <translation>Tareas manuales ligadas al enjuague, por ejemplo: Emulsionar 2, 5 antes del agua</translation>
    </message>
    <message>
        <source>Type the job, its minutes, and how many minutes before water it starts: Emulsify 2, 5 before water. A semicolon stands between several.</source>
        <translation>Escriba la tarea, sus minutos y cuántos minutos antes del agua empieza: Emulsionar 2, 5 antes del agua. Entre varias va un punto y coma.</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>What this part of the head is called</source>
        <translation>Cómo se llama esta parte de la cabeza</translation>
    </message>
    <message>
        <source>Quickest</source>
        <translation>Mín.</translation>
    </message>
    <message>
        <source>Minutes to apply at the quickest</source>
        <translation>Minutos de aplicación, lo más rápido</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Habitual</translation>
    </message>
    <message>
        <source>Minutes to apply as a rule</source>
        <translation>Minutos de aplicación por lo general</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>Máx.</translation>
    </message>
    <message>
        <source>Minutes to apply at the slowest</source>
        <translation>Minutos de aplicación, lo más lento</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>Fewest minutes of development, from the leaflet</source>
        <translation>Minutos de exposición como mínimo, según el prospecto</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Most minutes of development, from the leaflet</source>
        <translation>Minutos de exposición como máximo, según el prospecto</translation>
    </message>
    <message>
        <source>First strand</source>
        <translation>1.er mechón</translation>
    </message>
    <message>
        <source>Most minutes the first strand may carry the mixture, until water</source>
        <translation>Minutos como máximo que el primer mechón puede llevar la mezcla, hasta el agua</translation>
    </message>
    <message>
        <source>Last strand</source>
        <translation>Últ. mechón</translation>
    </message>
    <message>
        <source>Fewest minutes the last strand must carry it, until water</source>
        <translation>Minutos como mínimo que el último mechón debe llevarla, hasta el agua</translation>
    </message>
    <message>
        <source>Applying, min</source>
        <translation>Aplicar, min</translation>
    </message>
    <message>
        <source>Development, min</source>
        <translation>Exposición, min</translation>
    </message>
    <message>
        <source>Looks, min</source>
        <translation>Revisiones, min</translation>
    </message>
    <message>
        <source>Rinsing</source>
        <translation>Enjuague</translation>
    </message>
    <message>
        <source>Until water, min</source>
        <translation>Hasta el agua, min</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Empieza</translation>
    </message>
</context>
<context>
    <name>app::desktop::AlertPanel</name>
    <message>
        <source>%1  (Enter)</source>
        <translation>%1  (Intro)</translation>
    </message>
    <message>
        <source>Water is on %1</source>
        <translation>El agua corre en %1</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Empezado</translation>
    </message>
</context>
<context>
    <name>app::desktop::BasicsPanel</name>
    <message>
        <source>&amp;Ready by</source>
        <translation>&amp;Listo a las</translation>
    </message>
    <message>
        <source>the service&apos;s name</source>
        <translation>el nombre del servicio</translation>
    </message>
    <message>
        <source>what is coloured</source>
        <translation>qué se colorea</translation>
    </message>
    <message>
        <source>the time to spare</source>
        <translation>el margen de tiempo</translation>
    </message>
    <message>
        <source>the basins</source>
        <translation>los lavacabezas</translation>
    </message>
    <message>
        <source>a person</source>
        <translation>una persona</translation>
    </message>
    <message>
        <source>a wig</source>
        <translation>una peluca</translation>
    </message>
    <message>
        <source>wefts</source>
        <translation>tramas</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation>Listo a las</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <comment>a day, as QDate::toString writes it</comment>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>Ser&amp;vice</source>
        <translation>Serv&amp;icio</translation>
    </message>
    <message>
        <source>&amp;On</source>
        <translation>E&amp;n</translation>
    </message>
    <message>
        <source>S&amp;pare</source>
        <translation>&amp;Margen</translation>
    </message>
    <message>
        <source>&amp;Basins</source>
        <translation>Lava&amp;cabezas</translation>
    </message>
    <message>
        <source>when it is ready</source>
        <translation>cuándo está listo</translation>
    </message>
    <message>
        <source>a time to be ready by</source>
        <translation>una hora para estar listo</translation>
    </message>
    <message>
        <source>no time to be ready by</source>
        <translation>ninguna hora para estar listo</translation>
    </message>
</context>
<context>
    <name>app::desktop::Beckon</name>
    <message>
        <source>Basinbell</source>
        <translation>Basinbell</translation>
    </message>
</context>
<context>
    <name>app::desktop::CardView</name>
    <message>
        <source>Record card</source>
        <translation>Ficha</translation>
    </message>
</context>
<context>
    <name>app::desktop::CautionsDialog</name>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>The leaflet of the product comes first</source>
        <translation>El prospecto del producto es lo primero</translation>
    </message>
    <message>
        <source>I have read them, go on  (Enter)</source>
        <translation>Leído, seguir  (Intro)</translation>
    </message>
    <message>
        <source>Close  (Enter)</source>
        <translation>Cerrar  (Intro)</translation>
    </message>
    <message>
        <source>Not yet  (Esc)</source>
        <translation>Todavía no  (Esc)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ChoiceButton</name>
    <message>
        <source>  (Alt+%1)</source>
        <translation>  (Alt+%1)</translation>
    </message>
</context>
<context>
    <name>app::desktop::Corrections</name>
    <message>
        <source>%1 min ago</source>
        <translation>hace %1 min</translation>
    </message>
    <message>
        <source>Cautions  (F2)</source>
        <translation>Advertencias  (F2)</translation>
    </message>
    <message>
        <source>End this run …</source>
        <translation>Terminar la sesión …</translation>
    </message>
    <message>
        <source>Last: %1</source>
        <translation>Última: %1</translation>
    </message>
    <message>
        <source>Undo it  (Ctrl+Z)</source>
        <translation>Deshacer  (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Undo (Ctrl+Z)</source>
        <translation>Deshacer (Ctrl+Z)</translation>
    </message>
    <message>
        <source>It was earlier …  (E)</source>
        <translation>Fue antes …  (E)</translation>
    </message>
    <message>
        <source>Earlier (E)</source>
        <translation>Antes (E)</translation>
    </message>
    <message>
        <source>More …  (M)</source>
        <translation>Más …  (M)</translation>
    </message>
    <message>
        <source>More (M)</source>
        <translation>Más (M)</translation>
    </message>
    <message>
        <source>Quiet 2 min  (Q)</source>
        <translation>Silencio 2 min  (Q)</translation>
    </message>
    <message>
        <source>Quiet (Q)</source>
        <translation>Silencio (Q)</translation>
    </message>
    <message>
        <source>From afar  (F)</source>
        <translation>Desde lejos  (F)</translation>
    </message>
    <message>
        <source>Afar (F)</source>
        <translation>Lejos (F)</translation>
    </message>
</context>
<context>
    <name>app::desktop::DesktopNotice</name>
    <message>
        <source>Show the lanes</source>
        <translation>Mostrar los carriles</translation>
    </message>
</context>
<context>
    <name>app::desktop::FileMenu</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Recientes</translation>
    </message>
    <message>
        <source>&amp;Demo</source>
        <translation>E&amp;jemplo</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Nuevo</translation>
    </message>
    <message>
        <source>&amp;Open …</source>
        <translation>&amp;Abrir …</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Save &amp;as …</source>
        <translation>Guardar &amp;como …</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>Before the premiere: three heads</source>
        <translation>Antes del estreno: tres cabezas</translation>
    </message>
    <message>
        <source>From &amp;files …</source>
        <translation>Desde &amp;archivos …</translation>
    </message>
    <message>
        <source>A &amp;new one</source>
        <translation>Una &amp;nueva</translation>
    </message>
    <message>
        <source>The &amp;same once more</source>
        <translation>La &amp;misma otra vez</translation>
    </message>
    <message>
        <source>From a s&amp;tarting point</source>
        <translation>Desde una &amp;plantilla</translation>
    </message>
    <message>
        <source>A &amp;demo</source>
        <translation>Un &amp;ejemplo</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Nada aún</translation>
    </message>
    <message>
        <source>Service files (*.json)</source>
        <translation>Archivos de servicio (*.json)</translation>
    </message>
    <message>
        <source>Open a service, or several that share a crew</source>
        <translation>Abrir un servicio, o varios con el mismo equipo</translation>
    </message>
    <message>
        <source>Add heads</source>
        <translation>Añadir cabezas</translation>
    </message>
    <message>
        <source>Beside what is here?</source>
        <translation>¿Junto a lo que hay?</translation>
    </message>
    <message>
        <source>Plan it together with what is here, or open it in its place?</source>
        <translation>¿Planificarlo junto con lo que hay, o abrirlo en su lugar?</translation>
    </message>
    <message>
        <source>Plan together</source>
        <translation>Planificar juntos</translation>
    </message>
    <message>
        <source>Open in its place</source>
        <translation>Abrir en su lugar</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation>No abierto</translation>
    </message>
    <message>
        <source>%1 is not a service that can be opened.</source>
        <translation>%1 no es un servicio que se pueda abrir.</translation>
    </message>
    <message>
        <source>Save the service</source>
        <translation>Guardar el servicio</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>No guardado</translation>
    </message>
    <message>
        <source>Something is marked as wrong. Put it right first: a file that cannot be opened again is of no use.</source>
        <translation>Algo está marcado como erróneo. Corríjalo primero: un archivo que no puede abrirse de nuevo no sirve.</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>These have changes that are not saved: %1.</source>
        <translation>Estos tienen cambios sin guardar: %1.</translation>
    </message>
    <message>
        <source>Add a &amp;head</source>
        <translation>Aña&amp;dir una cabeza</translation>
    </message>
    <message>
        <source>New, &amp;from a starting point</source>
        <translation>Nuevo desde una &amp;plantilla</translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadDrawing</name>
    <message>
        <source>Pieces of hair</source>
        <translation>Piezas de pelo</translation>
    </message>
    <message>
        <source>The head from the side and from behind</source>
        <translation>La cabeza de lado y por detrás</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: no zone</source>
        <translation>%1: ninguna zona</translation>
    </message>
    <message>
        <source>Press to take it from %1</source>
        <translation>Pulse para quitársela a %1</translation>
    </message>
    <message>
        <source>Press to give it to %1</source>
        <translation>Pulse para dársela a %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadPanel</name>
    <message>
        <source>Choose a zone, then press where it is. The table of zones does not need it: nothing is planned by it.</source>
        <translation>Elija una zona y pulse dónde está. La tabla de zonas no lo necesita: nada se planifica según eso.</translation>
    </message>
    <message numerus="yes">
        <source>on %n place(s)</source>
        <translation>
            <numerusform>en %n lugar</numerusform>
            <numerusform>en %n lugares</numerusform>
        </translation>
    </message>
    <message>
        <source>where %1 is</source>
        <translation>dónde está %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadsBar</name>
    <message>
        <source>Take this head out</source>
        <translation>Quitar esta cabeza</translation>
    </message>
    <message>
        <source>These times are common practice, not those of a product. Put in what the product&apos;s leaflet says, and say so with its bowl.</source>
        <translation>Estos tiempos son práctica común, no los de un producto. Ponga lo que dice el prospecto y anótelo en su bol.</translation>
    </message>
    <message>
        <source>Heads</source>
        <translation>Cabezas</translation>
    </message>
    <message>
        <source>Name of the head</source>
        <translation>Nombre de la cabeza</translation>
    </message>
    <message>
        <source>What prompts and alarms call this head. It is not kept in the record of a run.</source>
        <translation>Cómo llaman a esta cabeza los avisos y las alarmas. No se guarda en el registro de una sesión.</translation>
    </message>
    <message>
        <source>Add a head</source>
        <translation>Añadir una cabeza</translation>
    </message>
    <message>
        <source>Ca&amp;lled</source>
        <translation>N&amp;ombre</translation>
    </message>
    <message>
        <source>the head&apos;s name</source>
        <translation>el nombre de la cabeza</translation>
    </message>
    <message>
        <source>%1 (something is wrong)</source>
        <translation>%1 (algo está mal)</translation>
    </message>
</context>
<context>
    <name>app::desktop::HelpMenu</name>
    <message>
        <source>&amp;Help</source>
        <translation>Ay&amp;uda</translation>
    </message>
    <message>
        <source>This &amp;page</source>
        <translation>Esta &amp;página</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Advertencias</translation>
    </message>
    <message>
        <source>A short &amp;tour (not while lanes run)</source>
        <translation>Un breve &amp;recorrido (no mientras los carriles están en marcha)</translation>
    </message>
    <message>
        <source>A short &amp;tour</source>
        <translation>Un breve &amp;recorrido</translation>
    </message>
</context>
<context>
    <name>app::desktop::HelpSheet</name>
    <message>
        <source>Close  (Esc)</source>
        <translation>Cerrar  (Esc)</translation>
    </message>
    <message>
        <source>%1</source>
        <comment>keys</comment>
        <translation>%1</translation>
    </message>
</context>
<context>
    <name>app::desktop::LaneCard</name>
    <message>
        <source>Look %1</source>
        <translation>Revisión %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>, seen: %1</source>
        <translation>, visto: %1</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
</context>
<context>
    <name>app::desktop::LanesGrid</name>
    <message numerus="yes">
        <source>and %n more</source>
        <comment>lanes</comment>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, next %2</source>
        <translation>%1, la próxima %2</translation>
    </message>
</context>
<context>
    <name>app::desktop::LanesPage</name>
    <message>
        <source>Try the sound  (F3)</source>
        <translation>Probar el sonido  (F3)</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>Leído</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>End that run …</source>
        <translation>Terminar esa sesión …</translation>
    </message>
    <message>
        <source>Let it sound  (Shift+Q)</source>
        <translation>Dejar sonar  (Mayús+Q)</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>%1  ·  coat %2 of %3: %4</source>
        <translation>%1  ·  pasada %2 de %3: %4</translation>
    </message>
    <message>
        <source>Planned again: %1</source>
        <translation>Replanificado: %1</translation>
    </message>
    <message>
        <source>The plan is being worked out anew; until then the one before goes on.</source>
        <translation>Se está rehaciendo el plan; hasta entonces sigue el anterior.</translation>
    </message>
    <message>
        <source>No alarm can be heard. %1 Keep the screen in view.</source>
        <translation>No se oye ninguna alarma. %1 No pierda de vista la pantalla.</translation>
    </message>
    <message>
        <source>%1, silent until %2</source>
        <translation>%1, en silencio hasta las %2</translation>
    </message>
    <message>
        <source>Applying %1 stopped; the rest is a zone of its own.</source>
        <translation>La aplicación de %1 se detuvo; el resto es una zona aparte.</translation>
    </message>
    <message>
        <source>%1 is rinsed by itself.</source>
        <translation>%1 se enjuaga por separado.</translation>
    </message>
    <message>
        <source>%1 is away for %2 min.</source>
        <translation>%1 se ausenta %2 min.</translation>
    </message>
    <message>
        <source>%1 has come to help.</source>
        <translation>%1 ha venido a ayudar.</translation>
    </message>
    <message>
        <source>%1 has gone.</source>
        <translation>%1 se ha ido.</translation>
    </message>
    <message>
        <source>%1 is given up.</source>
        <translation>%1 se abandona.</translation>
    </message>
    <message>
        <source>Heat is on. What it does to the mixtures only the product&apos;s leaflet says.</source>
        <translation>El calor está puesto. Qué les hace a las mezclas solo lo dice el prospecto.</translation>
    </message>
    <message>
        <source>Heat is off.</source>
        <translation>El calor está quitado.</translation>
    </message>
    <message>
        <source>%1 is a zone more.</source>
        <translation>%1 es una zona más.</translation>
    </message>
    <message>
        <source>That answer was taken back.</source>
        <translation>Esa respuesta se retiró.</translation>
    </message>
    <message>
        <source>That answer was put %1 min earlier.</source>
        <translation>Esa respuesta se adelantó %1 min.</translation>
    </message>
    <message>
        <source>That answer is about %1 now.</source>
        <translation>Esa respuesta trata ahora de %1.</translation>
    </message>
    <message>
        <source>Heat since %1</source>
        <translation>Calor desde las %1</translation>
    </message>
    <message>
        <source>, to be taken off at %1</source>
        <translation>, se quita a las %1</translation>
    </message>
    <message>
        <source>The windows and alarms stay those without heat; where the leaflet gives times with heat, go by those.</source>
        <translation>Las ventanas y alarmas siguen siendo las de sin calor; si el prospecto da tiempos con calor, guíese por ellos.</translation>
    </message>
    <message>
        <source>Chosen: %1.</source>
        <translation>Elegido: %1.</translation>
    </message>
    <message>
        <source>Say it  (O)</source>
        <translation>Decirlo  (O)</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>It is over. How did it turn out?</source>
        <translation>Ha terminado. ¿Cómo ha quedado?</translation>
    </message>
    <message>
        <source>%1: how did it turn out?</source>
        <translation>%1: ¿cómo ha quedado?</translation>
    </message>
</context>
<context>
    <name>app::desktop::LookChoices</name>
    <message>
        <source>A minute sooner</source>
        <translation>Un minuto antes</translation>
    </message>
    <message>
        <source>A minute later</source>
        <translation>Un minuto después</translation>
    </message>
    <message>
        <source>Tone seen</source>
        <translation>Tono visto</translation>
    </message>
    <message>
        <source>Leave it on  (1)</source>
        <translation>Dejar  (1)</translation>
    </message>
    <message>
        <source>Leave %1 on  (1)</source>
        <translation>Dejar %1  (1)</translation>
    </message>
    <message>
        <source>Leave (1)</source>
        <translation>Dejar (1)</translation>
    </message>
    <message>
        <source>Look again in %1 min  (2)</source>
        <translation>Revisar en %1 min  (2)</translation>
    </message>
    <message>
        <source>%1 min (2)</source>
        <translation>%1 min (2)</translation>
    </message>
    <message numerus="yes">
        <source>Leave all %n on  (4)</source>
        <translation>
            <numerusform>Dejar todo  (4)</numerusform>
            <numerusform>Dejar los %n  (4)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n (4)</source>
        <translation>
            <numerusform>Todo (4)</numerusform>
            <numerusform>Los %n (4)</numerusform>
        </translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Tono</translation>
    </message>
    <message>
        <source>Tone seen  (T)</source>
        <translation>Tono visto  (T)</translation>
    </message>
    <message>
        <source>Rinse (3)</source>
        <translation>Enjuagar (3)</translation>
    </message>
    <message>
        <source>Rinse, short (3)</source>
        <translation>Enjuagar, corto (3)</translation>
    </message>
    <message>
        <source>Rinse, spreads (3)</source>
        <translation>Enjuagar, moja (3)</translation>
    </message>
    <message>
        <source>Rinse %1 now  (3)</source>
        <translation>Enjuagar %1  (3)</translation>
    </message>
</context>
<context>
    <name>app::desktop::LookRow</name>
    <message>
        <source>%1  (%2)</source>
        <comment>answer, key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>spreads</source>
        <translation>moja</translation>
    </message>
    <message>
        <source>wets its neighbours</source>
        <translation>moja a sus vecinas</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>le falta %1</translation>
    </message>
    <message>
        <source>%1 short of its least</source>
        <translation>a %1 de su mínimo</translation>
    </message>
    <message>
        <source>Leave it on</source>
        <translation>Dejar</translation>
    </message>
    <message>
        <source>Look again
in %1 min</source>
        <translation>Revisar
en %1 min</translation>
    </message>
    <message>
        <source>Rinse now</source>
        <translation>Enjuagar</translation>
    </message>
    <message>
        <source>Leave %1 on</source>
        <translation>Dejar %1</translation>
    </message>
    <message>
        <source>Look again at %1 in %2 min</source>
        <translation>Revisar %1 en %2 min</translation>
    </message>
    <message>
        <source>Rinse %1 now</source>
        <translation>Enjuagar %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::MainWindow</name>
    <message>
        <source>%1 – Basinbell</source>
        <translation>%1 – Basinbell</translation>
    </message>
    <message>
        <source>Set-up  (Ctrl+1)</source>
        <translation>Preparación  (Ctrl+1)</translation>
    </message>
    <message>
        <source>Lanes  (Ctrl+2)</source>
        <translation>Carriles  (Ctrl+2)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Sesión</translation>
    </message>
    <message>
        <source>&amp;Start the lanes</source>
        <translation>&amp;Iniciar los carriles</translation>
    </message>
    <message>
        <source>Sound &amp;check …</source>
        <translation>&amp;Prueba de sonido …</translation>
    </message>
    <message>
        <source>&amp;End this run …</source>
        <translation>&amp;Terminar la sesión …</translation>
    </message>
    <message>
        <source>not saved anywhere yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1, cambiado</translation>
    </message>
    <message>
        <source>Undo my last answer</source>
        <translation>Deshacer mi última respuesta</translation>
    </message>
    <message>
        <source>Undo %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Redo %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>Taken up where it stopped. If something happened meanwhile, answer it and say how long ago it was.</source>
        <translation>Retomada donde se detuvo. Si pasó algo entretanto, respóndalo y diga hace cuánto fue.</translation>
    </message>
    <message>
        <source>A run was left unfinished</source>
        <translation>Una sesión quedó sin terminar</translation>
    </message>
    <message>
        <source>It was begun long ago. Taken up now, everything in it is overdue and sounds at once.</source>
        <translation>Empezó hace mucho. Si se retoma ahora, todo está atrasado y suena a la vez.</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>Retomarla</translation>
    </message>
    <message>
        <source>End it for good</source>
        <translation>Terminarla del todo</translation>
    </message>
    <message>
        <source>Leave it for later</source>
        <translation>Dejarla para después</translation>
    </message>
    <message>
        <source>End this run</source>
        <translation>Terminar la sesión</translation>
    </message>
    <message>
        <source>End this run for good? Nothing sounds any more, and it cannot be taken up again.</source>
        <translation>¿Terminar esta sesión del todo? Ya no suena nada y no se puede retomar.</translation>
    </message>
    <message>
        <source>End it</source>
        <translation>Terminar</translation>
    </message>
    <message>
        <source>Keep it running</source>
        <translation>Dejarla en marcha</translation>
    </message>
    <message>
        <source>Basinbell</source>
        <translation>Basinbell</translation>
    </message>
    <message>
        <source>Lanes are running</source>
        <translation>Hay carriles en marcha</translation>
    </message>
    <message>
        <source>Close the window while lanes run? No alarm sounds until it is opened again; the run is kept and goes on then.</source>
        <translation>¿Cerrar la ventana con carriles en marcha? No suena ninguna alarma hasta que se abra de nuevo; la sesión se conserva y sigue entonces.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Keep it open</source>
        <translation>Dejarla abierta</translation>
    </message>
    <message>
        <source>&amp;How it turned out …</source>
        <translation>&amp;Cómo ha quedado …</translation>
    </message>
    <message>
        <source>&amp;Before the start</source>
        <translation>&amp;Antes de empezar</translation>
    </message>
</context>
<context>
    <name>app::desktop::MorePanel</name>
    <message>
        <source>%1  (%2)</source>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>Which application stops before it is done? The rest becomes a zone of its own.</source>
        <translation>¿Qué aplicación se detiene antes de acabar? El resto pasa a ser una zona aparte.</translation>
    </message>
    <message>
        <source>Which zone is rinsed by itself when its time comes? Its neighbours must stay dry.</source>
        <translation>¿Qué zona se enjuaga por separado cuando llegue su hora? Sus vecinas deben quedar secas.</translation>
    </message>
    <message>
        <source>Who is away?</source>
        <translation>¿Quién se ausenta?</translation>
    </message>
    <message>
        <source>Who has gone for good?</source>
        <translation>¿Quién se ha ido del todo?</translation>
    </message>
    <message>
        <source>Which zone is it like? It has the same bowl, window and looks.</source>
        <translation>¿A qué zona se parece? Tiene el mismo bol, la misma ventana y las mismas revisiones.</translation>
    </message>
    <message>
        <source>Applying %1 stops</source>
        <translation>Se detiene la aplicación de %1</translation>
    </message>
    <message>
        <source>Applying stops</source>
        <translation>Se detiene la aplicación</translation>
    </message>
    <message>
        <source>It stops before it is done; the rest becomes a zone of its own, applied later.</source>
        <translation>Se detiene antes de acabar; el resto pasa a ser una zona aparte que se aplica después.</translation>
    </message>
    <message>
        <source>Rinse a zone by itself …</source>
        <translation>Enjuagar una zona por separado …</translation>
    </message>
    <message>
        <source>A zone more …</source>
        <translation>Una zona más …</translation>
    </message>
    <message>
        <source>Heat …</source>
        <translation>Calor …</translation>
    </message>
    <message>
        <source>Heat is on …</source>
        <translation>Calor puesto …</translation>
    </message>
    <message>
        <source>Heat is off</source>
        <translation>Calor quitado</translation>
    </message>
    <message>
        <source>An earlier answer …</source>
        <translation>Una respuesta anterior …</translation>
    </message>
    <message>
        <source>Give up this coat …</source>
        <translation>Abandonar esta pasada …</translation>
    </message>
    <message>
        <source>Away …</source>
        <translation>Ausencia …</translation>
    </message>
    <message>
        <source>Somebody comes …</source>
        <translation>Llega alguien …</translation>
    </message>
    <message>
        <source>Somebody has gone …</source>
        <translation>Alguien se ha ido …</translation>
    </message>
    <message>
        <source>For how long is %1 away, from now on?</source>
        <translation>¿Cuánto tiempo se ausenta %1, desde ahora?</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Who comes to help?</source>
        <translation>¿Quién viene a ayudar?</translation>
    </message>
    <message>
        <source>Name of who comes to help</source>
        <translation>Nombre de quien viene a ayudar</translation>
    </message>
    <message>
        <source>Comes to help  (Enter)</source>
        <translation>Viene a ayudar  (Intro)</translation>
    </message>
    <message>
        <source>Give up %1? Nothing more of it is begun; what is on the hair is still rinsed.</source>
        <translation>¿Abandonar %1? No se empieza nada más; lo que está en el pelo aún se enjuaga.</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Abandonar</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>Which heat?</source>
        <translation>¿Qué calor?</translation>
    </message>
    <message>
        <source>%1: off</source>
        <translation>%1: quitado</translation>
    </message>
    <message>
        <source>%1: on …</source>
        <translation>%1: puesto …</translation>
    </message>
    <message>
        <source>For how long does the heat stay, as the leaflet says? The windows and alarms stay those without heat.</source>
        <translation>¿Cuánto tiempo sigue el calor, según el prospecto? Las ventanas y alarmas siguen siendo las de sin calor.</translation>
    </message>
    <message>
        <source>That is not known</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>What is the zone like %1 called, and how long does it take to apply?</source>
        <translation>¿Cómo se llama la zona parecida a %1 y cuánto tarda en aplicarse?</translation>
    </message>
    <message>
        <source>Name of the zone</source>
        <translation>Nombre de la zona</translation>
    </message>
    <message>
        <source>Minutes to apply it</source>
        <translation>Minutos de aplicación</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>as long as %1</source>
        <translation>lo mismo que %1</translation>
    </message>
    <message>
        <source>Add it  (Enter)</source>
        <translation>Añadir  (Intro)</translation>
    </message>
    <message>
        <source>Which answer was not so?</source>
        <translation>¿Qué respuesta no era así?</translation>
    </message>
    <message>
        <source>%1. What was so?</source>
        <translation>%1. ¿Cómo fue?</translation>
    </message>
    <message>
        <source>It did not happen</source>
        <translation>No ocurrió</translation>
    </message>
    <message>
        <source>%1 min earlier</source>
        <translation>%1 min antes</translation>
    </message>
    <message>
        <source>It was %1</source>
        <translation>Era %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::NowPanel</name>
    <message>
        <source>Skip it  (Del)</source>
        <translation>Omitir  (Supr)</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Luego</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Después: %1</translation>
    </message>
    <message>
        <source>%1  (Enter)</source>
        <translation>%1  (Intro)</translation>
    </message>
    <message>
        <source>when the hands are free</source>
        <translation>cuando las manos estén libres</translation>
    </message>
    <message>
        <source>%1 left, until %2</source>
        <translation>quedan %1, hasta las %2</translation>
    </message>
    <message>
        <source>planned until %1</source>
        <translation>previsto hasta las %1</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <translation>%1, a las %2</translation>
    </message>
    <message>
        <source>holds if it takes up to %1 min</source>
        <translation>aguanta si tarda hasta %1 min</translation>
    </message>
    <message>
        <source>%1 developing</source>
        <translation>%1 de exposición</translation>
    </message>
    <message>
        <source>All done</source>
        <translation>Todo hecho</translation>
    </message>
    <message>
        <source>Nothing to do just now</source>
        <translation>Nada que hacer ahora</translation>
    </message>
    <message>
        <source>Every step of this run is answered.</source>
        <translation>Cada paso de esta sesión está respondido.</translation>
    </message>
    <message>
        <source>Put this run away  (Enter)</source>
        <translation>Guardar esta sesión  (Intro)</translation>
    </message>
</context>
<context>
    <name>app::desktop::OutcomeButton</name>
    <message>
        <source>%1  (%2)</source>
        <translation>%1  (%2)</translation>
    </message>
</context>
<context>
    <name>app::desktop::OutcomePanel</name>
    <message>
        <source>How it turned out</source>
        <translation>Cómo ha quedado</translation>
    </message>
    <message>
        <source>How did %1 turn out?</source>
        <translation>¿Cómo ha quedado %1?</translation>
    </message>
    <message>
        <source>  It was said: %1.</source>
        <translation>  Se dijo: %1.</translation>
    </message>
    <message>
        <source>In own words too, or instead  (Enter)</source>
        <translation>También, o solo, con otras palabras  (Intro)</translation>
    </message>
    <message>
        <source>Go on without</source>
        <translation>Seguir sin decirlo</translation>
    </message>
    <message>
        <source>What is to be thought of next time?</source>
        <translation>¿Qué hay que recordar la próxima vez?</translation>
    </message>
    <message>
        <source>What is to be thought of next time?  It was said: %1.</source>
        <translation>¿Qué hay que recordar la próxima vez?  Se dijo: %1.</translation>
    </message>
    <message>
        <source>A note for next time  (Enter)</source>
        <translation>Una nota para la próxima vez  (Intro)</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Guardarla</translation>
    </message>
    <message>
        <source>Nothing to note</source>
        <translation>Nada que anotar</translation>
    </message>
</context>
<context>
    <name>app::desktop::PartPanel</name>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Subir</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Bajar</translation>
    </message>
    <message>
        <source>adding a row</source>
        <translation>añadir una fila</translation>
    </message>
    <message>
        <source>removing %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>moving %1</source>
        <translation>mover %1</translation>
    </message>
    <message>
        <source>Zones of coat %1</source>
        <translation>Zonas de la pasada %1</translation>
    </message>
    <message>
        <source>Bowls of coat %1</source>
        <translation>Boles de la pasada %1</translation>
    </message>
    <message>
        <source>Rinse groups of coat %1</source>
        <translation>Grupos de enjuague de la pasada %1</translation>
    </message>
    <message>
        <source>Coats and their drying</source>
        <translation>Pasadas y su secado</translation>
    </message>
    <message>
        <source>Pairs of hands</source>
        <translation>Personas del equipo</translation>
    </message>
</context>
<context>
    <name>app::desktop::PartTable</name>
    <message>
        <source>%1 of %2 to %3</source>
        <translation>%1 de %2 a %3</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; was not understood. %3</source>
        <translation>%1: «%2» no se entendió. %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>group, column</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>app::desktop::PlanPanel</name>
    <message>
        <source>What is wrong</source>
        <translation>Qué está mal</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Planificando …</translation>
    </message>
    <message>
        <source>Planning … %1 s</source>
        <translation>Planificando … %1 s</translation>
    </message>
    <message>
        <source>Put this right, and it is planned at once:</source>
        <translation>Corrija esto y se planifica enseguida:</translation>
    </message>
</context>
<context>
    <name>app::desktop::PreparationPanel</name>
    <message>
        <source>Before the start</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>why it is skipped</source>
        <translation>por qué se omite</translation>
    </message>
    <message>
        <source>Why it is skipped</source>
        <translation>Por qué se omite</translation>
    </message>
    <message>
        <source>Skip it</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>Not so: open again</source>
        <translation>No: pendiente otra vez</translation>
    </message>
    <message>
        <source>Close  (Esc)</source>
        <translation>Cerrar  (Esc)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ReasonBand</name>
    <message>
        <source>Close  (Esc)</source>
        <translation>Cerrar  (Esc)</translation>
    </message>
    <message>
        <source>What can be chosen</source>
        <translation>Qué se puede elegir</translation>
    </message>
    <message>
        <source>Not every limit can hold any more. %1</source>
        <translation>Ya no se pueden respetar todos los límites. %1</translation>
    </message>
    <message>
        <source>What can be chosen is being worked out …</source>
        <translation>Se está calculando qué se puede elegir …</translation>
    </message>
    <message>
        <source>Nothing was found that could be chosen.</source>
        <translation>No se encontró nada que elegir.</translation>
    </message>
    <message>
        <source>As of %1, %2 ago: by now they may come to something else. The least harm stands first.</source>
        <translation>Según las %1, hace %2: ahora pueden dar otra cosa. El menor daño va primero.</translation>
    </message>
    <message>
        <source>As of %1. The least harm stands first; nothing is done until you choose.</source>
        <translation>Según las %1. El menor daño va primero; no se hace nada hasta que elija.</translation>
    </message>
    <message>
        <source>Work it out again  (W)</source>
        <translation>Calcular de nuevo  (W)</translation>
    </message>
    <message>
        <source>What can be chosen  (W)</source>
        <translation>Qué se puede elegir  (W)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ReasonPanel</name>
    <message>
        <source>Looking for what would make it fit …</source>
        <translation>Buscando qué haría que cupiera …</translation>
    </message>
    <message>
        <source>No change that is known makes it fit, nor do two together.</source>
        <translation>Ningún cambio conocido hace que quepa, ni dos juntos.</translation>
    </message>
    <message>
        <source>Each of these makes it fit: it was planned with the change. The least change comes first; the product&apos;s leaflet comes before all of them.</source>
        <translation>Cada uno de estos hace que quepa: se planificó con el cambio. El menor va primero; el prospecto está por encima de todos.</translation>
    </message>
    <message>
        <source>There was no time to find what would make it fit.</source>
        <translation>No hubo tiempo de encontrar qué haría que cupiera.</translation>
    </message>
    <message>
        <source>Each of these makes it fit; there may be more. The product&apos;s leaflet comes before all of them.</source>
        <translation>Cada uno de estos hace que quepa; puede haber más. El prospecto está por encima de todos.</translation>
    </message>
    <message>
        <source>Why nothing fits, and what would</source>
        <translation>Por qué no cabe nada y qué cabría</translation>
    </message>
    <message>
        <source>The search was stopped before it was known whether anything fits.</source>
        <translation>La búsqueda se detuvo antes de saber si algo cabe.</translation>
    </message>
    <message>
        <source>Without any one of these the others can hold together.</source>
        <translation>Sin cualquiera de estas, las demás pueden cumplirse juntas.</translation>
    </message>
    <message>
        <source>Not all of these may be needed for the clash.</source>
        <translation>Puede que no todas causen el conflicto.</translation>
    </message>
</context>
<context>
    <name>app::desktop::Records</name>
    <message>
        <source>Record &amp;cards …</source>
        <translation>&amp;Fichas …</translation>
    </message>
</context>
<context>
    <name>app::desktop::RecordsWindow</name>
    <message>
        <source>Record cards – Basinbell</source>
        <translation>Fichas – Basinbell</translation>
    </message>
    <message>
        <source>Runs, the latest first</source>
        <translation>Sesiones, la última primero</translation>
    </message>
    <message>
        <source>No run has been ended yet.

A record card is made of what is answered while the lanes run: when each zone went on and came off, what was seen, how it turned out. When the last lane is dry, end the run, and its card is here.

The demo at high speed makes one in a minute.</source>
        <translation>Todavía no se ha terminado ninguna sesión.

Una ficha se hace con lo que se responde mientras corren los carriles: cuándo se aplicó y se enjuagó cada zona, qué se vio, cómo ha quedado. Cuando el último carril esté seco, termine la sesión, y su ficha estará aquí.

La demo a gran velocidad hace una en un minuto.</translation>
    </message>
    <message>
        <source>Start the next coat from it  (Alt+N)</source>
        <translation>Próxima pasada con ella  (Alt+N)</translation>
    </message>
    <message>
        <source>How it turned out …  (Alt+O)</source>
        <translation>Cómo ha quedado …  (Alt+O)</translation>
    </message>
    <message>
        <source>Print …  (Ctrl+P)</source>
        <translation>Imprimir …  (Ctrl+P)</translation>
    </message>
    <message>
        <source>PDF …  (Ctrl+S)</source>
        <translation>PDF …  (Ctrl+S)</translation>
    </message>
    <message>
        <source>Close  (Esc)</source>
        <translation>Cerrar  (Esc)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1
damaged</source>
        <translation>%1
dañada</translation>
    </message>
    <message>
        <source>%1
erased</source>
        <translation>%1
borrada</translation>
    </message>
    <message>
        <source>This run, so far</source>
        <translation>Esta sesión, hasta ahora</translation>
    </message>
    <message>
        <source>Nothing was rinsed in this run, so there is nothing that turned out.</source>
        <translation>En esta sesión no se enjuagó nada, así que no hay resultado.</translation>
    </message>
</context>
<context>
    <name>app::desktop::ServiceDocument</name>
    <message>
        <source>adding %1</source>
        <translation>añadir %1</translation>
    </message>
    <message>
        <source>removing %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>Heads that are planned together share one crew: that of %1 is kept, not that of %2 (%3).</source>
        <translation>Las cabezas que se planifican juntas comparten un equipo: se conserva el de %1, no el de %2 (%3).</translation>
    </message>
</context>
<context>
    <name>app::desktop::SetupPage</name>
    <message>
        <source>&amp;Zones</source>
        <translation>&amp;Zonas</translation>
    </message>
    <message>
        <source>Bo&amp;wls</source>
        <translation>&amp;Boles</translation>
    </message>
    <message>
        <source>Rinse &amp;groups</source>
        <translation>&amp;Grupos de enjuague</translation>
    </message>
    <message>
        <source>&amp;Coats and drying</source>
        <translation>&amp;Pasadas y secado</translation>
    </message>
    <message>
        <source>&amp;Hands</source>
        <translation>E&amp;quipo</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Start the lanes  (Ctrl+Enter)</source>
        <translation>Iniciar los carriles  (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Iniciar</translation>
    </message>
    <message>
        <source>Lanes are running. What you change here is for the next time.</source>
        <translation>Hay carriles en marcha. Lo que cambie aquí es para la próxima vez.</translation>
    </message>
    <message>
        <source>Once the lanes run, every answer is saved by itself.</source>
        <translation>Cuando los carriles están en marcha, cada respuesta se guarda sola.</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Planificando …</translation>
    </message>
    <message>
        <source>Nothing fits yet, so there is nothing to start.</source>
        <translation>Aún no cabe nada, así que no hay nada que iniciar.</translation>
    </message>
    <message>
        <source>Something above is marked; put it right to start.</source>
        <translation>Arriba hay algo marcado; corríjalo para iniciar.</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>O&amp;n the head</source>
        <translation>E&amp;n la cabeza</translation>
    </message>
    <message>
        <source>A short tour  (Shift+F1)</source>
        <translation>Un breve recorrido  (Mayús+F1)</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>New here? A short tour shows a whole service at high speed. Nothing of it is kept.</source>
        <translation>¿Es nuevo aquí? Un breve recorrido muestra un servicio entero a gran velocidad. Nada de ello se guarda.</translation>
    </message>
</context>
<context>
    <name>app::desktop::SoundCheck</name>
    <message>
        <source>Sound check</source>
        <translation>Prueba de sonido</translation>
    </message>
    <message>
        <source>Can you hear every alarm from where you work?</source>
        <translation>¿Oye cada alarma desde donde trabaja?</translation>
    </message>
    <message>
        <source>Get ready  (1)</source>
        <translation>Prepararse  (1)</translation>
    </message>
    <message>
        <source>soft, once, ahead of time</source>
        <translation>suave, una vez, con antelación</translation>
    </message>
    <message>
        <source>A step is due  (2)</source>
        <translation>Toca un paso  (2)</translation>
    </message>
    <message>
        <source>until it is answered</source>
        <translation>hasta que se responde</translation>
    </message>
    <message>
        <source>A look is due  (3)</source>
        <translation>Toca una revisión  (3)</translation>
    </message>
    <message>
        <source>Water is due  (4)</source>
        <translation>Toca el agua  (4)</translation>
    </message>
    <message>
        <source>A limit is passed  (5)</source>
        <translation>Se superó un límite  (5)</translation>
    </message>
    <message>
        <source>the loudest</source>
        <translation>la más fuerte</translation>
    </message>
    <message>
        <source>Not now  (Esc)</source>
        <translation>Ahora no  (Esc)</translation>
    </message>
    <message>
        <source>Without sound: I watch the screen  (W)</source>
        <translation>Sin sonido: miro la pantalla  (W)</translation>
    </message>
    <message>
        <source>I hear nothing  (N)</source>
        <translation>No oigo nada  (N)</translation>
    </message>
    <message>
        <source>I hear them  (Enter)</source>
        <translation>Las oigo  (Intro)</translation>
    </message>
    <message>
        <source>Press each one. Only your ear can tell: the volume and the cable are out of sight here.</source>
        <translation>Pulse cada una. Solo su oído lo sabe: el volumen y el cable no se ven desde aquí.</translation>
    </message>
    <message>
        <source>Turn up the sound of this machine, look whether a loudspeaker or its cable is out, and press again. If nothing helps, go on without sound: every alarm then fills the screen.</source>
        <translation>Suba el sonido de este equipo, mire si un altavoz o su cable está suelto y pulse otra vez. Si nada ayuda, siga sin sonido: cada alarma llena entonces la pantalla.</translation>
    </message>
</context>
<context>
    <name>app::desktop::StartBar</name>
    <message>
        <source>Keep this start</source>
        <translation>Guardar este inicio</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Soltar</translation>
    </message>
    <message>
        <source>%1: planning …</source>
        <translation>%1: planificando …</translation>
    </message>
</context>
<context>
    <name>app::desktop::StepButton</name>
    <message>
        <source>%1: answer it now</source>
        <translation>%1: responder ahora</translation>
    </message>
    <message>
        <source>Press when this happens sooner: %1</source>
        <translation>Pulse si esto ocurre antes: %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::StrandGrip</name>
    <message>
        <source>Start of %1, minutes later than planned</source>
        <translation>Inicio de %1, minutos después de lo planeado</translation>
    </message>
    <message>
        <source>Pull it to see what a later start does</source>
        <translation>Arrastre para ver qué hace un inicio más tardío</translation>
    </message>
</context>
<context>
    <name>app::desktop::StrandWidget</name>
    <message>
        <source>Strands</source>
        <translation>Mechones</translation>
    </message>
    <message>
        <source>%1: applied from %2 to %3, water at %4, %5 min development.</source>
        <translation>%1: aplicado de %2 a %3, agua a las %4, %5 min de exposición.</translation>
    </message>
    <message>
        <source>Inside its limits %1; water from %2 to %3 in nine runs of ten.</source>
        <translation>Dentro de sus límites %1; agua de %2 a %3 nueve de cada diez veces.</translation>
    </message>
    <message>
        <source>Wanted not before %1.</source>
        <translation>Deseado no antes de las %1.</translation>
    </message>
</context>
<context>
    <name>app::desktop::TourWindow</name>
    <message>
        <source>A short tour – Basinbell</source>
        <translation>Un breve recorrido – Basinbell</translation>
    </message>
    <message>
        <source>A tour: nothing of this is real. Nothing sounds, and nothing is kept.</source>
        <translation>Un recorrido: nada de esto es real. Nada suena y nada se guarda.</translation>
    </message>
    <message>
        <source>Leave the tour  (Esc)</source>
        <translation>Dejar el recorrido  (Esc)</translation>
    </message>
    <message>
        <source>This is Set-up with a demo. Each strand is a zone of the hair, and all end at the rinse line: they come to the water together. The plan says when to begin each of them.</source>
        <translation>Esta es la preparación con un ejemplo. Cada mechón es una zona del pelo, y todos acaban en la línea de enjuague: llegan juntos al agua. El plan dice cuándo empezar cada uno.</translation>
    </message>
    <message>
        <source>Now it runs. At the top is the one thing to do, with one large button: do it, and press. Here Enter does, and time goes by quickly.</source>
        <translation>Ahora está en marcha. Arriba está lo único que hay que hacer, con un botón grande: hágalo y pulse. Aquí basta Intro, y el tiempo pasa deprisa.</translation>
    </message>
    <message>
        <source>Applying took four minutes longer. The plan was made again at once, and the line at the top says what changed.</source>
        <translation>La aplicación duró cuatro minutos más. El plan se rehízo enseguida, y la línea de arriba dice qué ha cambiado.</translation>
    </message>
    <message>
        <source>A look is due, a strand test. What you see you answer with one press: leave it on, look again, or rinse this zone. Here it is left on.</source>
        <translation>Toca una revisión, una prueba de mechón. A lo que ve contesta con una pulsación: dejarlo, volver a mirar o enjuagar esta zona. Aquí se deja.</translation>
    </message>
    <message>
        <source>Water is due. An alarm like this fills the window and sounds until it is answered; all lanes stay in view below it.</source>
        <translation>Toca el agua. Una alarma así llena la ventana y suena hasta que se contesta; todos los carriles quedan a la vista debajo.</translation>
    </message>
    <message>
        <source>All is done. Of a real run you now say how it turned out, and its record card is kept. F1 tells about each page.</source>
        <translation>Todo está hecho. En una sesión real ahora se dice cómo ha quedado, y su ficha se conserva. F1 explica cada página.</translation>
    </message>
    <message>
        <source>Time goes by quickly. What is asked for is answered for you.</source>
        <translation>El tiempo pasa deprisa. Se contesta por usted a lo que se pide.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Skip ahead  (Enter)</source>
        <translation>Saltar adelante  (Intro)</translation>
    </message>
    <message>
        <source>Close the tour  (Enter)</source>
        <translation>Cerrar el recorrido  (Intro)</translation>
    </message>
    <message>
        <source>Go on  (Enter)</source>
        <translation>Seguir  (Intro)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ViewMenu</name>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Como el &amp;sistema</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>Alto contras&amp;te</translation>
    </message>
    <message>
        <source>High contrast, d&amp;ark</source>
        <translation>Alto contraste, osc&amp;uro</translation>
    </message>
    <message>
        <source>Text as &amp;usual</source>
        <translation>Texto &amp;habitual</translation>
    </message>
    <message>
        <source>La&amp;nguage</source>
        <translation>Idio&amp;ma</translation>
    </message>
    <message>
        <source>Text at %1 %</source>
        <translation>Texto al %1 %</translation>
    </message>
    <message>
        <source>From a&amp;far</source>
        <translation>Desde &amp;lejos</translation>
    </message>
</context>
<context>
    <name>app::desktop::print::Printing</name>
    <message>
        <source>&amp;Print …</source>
        <translation>&amp;Imprimir …</translation>
    </message>
    <message>
        <source>Save as P&amp;DF …</source>
        <translation>G&amp;uardar como PDF …</translation>
    </message>
    <message>
        <source>There is no plan yet that could be printed.</source>
        <translation>Todavía no hay ningún plan que imprimir.</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer does not take it.</source>
        <translation>No se ha impreso nada: la impresora no lo acepta.</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
</context>
<context>
    <name>app::sound::AlarmPlayer</name>
    <message>
        <source>No sound can be had: no loudspeaker was found. Plug one in or switch it on, and look at the sound settings of this computer. Until then alarms are shown on the screen only.</source>
        <translation>No hay sonido: no se encontró ningún altavoz. Conecte uno o enciéndalo, y mire los ajustes de sonido de este equipo. Hasta entonces las alarmas solo salen en pantalla.</translation>
    </message>
    <message>
        <source>The loudspeaker takes no sound. Basinbell keeps trying; unplug it and plug it in again if this lasts. Until then alarms are shown on the screen only.</source>
        <translation>El altavoz no acepta sonido. Basinbell sigue intentándolo; desconéctelo y vuelva a conectarlo si esto dura. Hasta entonces las alarmas solo salen en pantalla.</translation>
    </message>
    <message>
        <source>No sound can be had: the program %1 could not be started (%2). Install Basinbell again.</source>
        <translation>No hay sonido: no se pudo iniciar el programa %1 (%2). Instale Basinbell de nuevo.</translation>
    </message>
    <message>
        <source>The sound program stopped by itself and is started again. Until then alarms are shown on the screen only.</source>
        <translation>El programa de sonido se paró solo y se reinicia. Hasta entonces las alarmas solo salen en pantalla.</translation>
    </message>
</context>
<context>
    <name>core::measure::Sentence</name>
    <message>
        <source>No run is under way.</source>
        <translation>No hay ninguna sesión en marcha.</translation>
    </message>
    <message>
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 comes to help</source>
        <translation>%1 viene a ayudar</translation>
    </message>
    <message>
        <source>%1 has gone at %2</source>
        <translation>%1 se ha ido a las %2</translation>
    </message>
    <message>
        <source>%1 is away from %2 to %3</source>
        <translation>%1 se ausenta de %2 a %3</translation>
    </message>
    <message>
        <source>ready by %1</source>
        <translation>listo a las %1</translation>
    </message>
    <message>
        <source>%1 is a zone more</source>
        <translation>%1 es una zona más</translation>
    </message>
    <message>
        <source>%1: used for up to %2</source>
        <translation>%1: se usa hasta %2</translation>
    </message>
    <message>
        <source>water of %1 from %2</source>
        <translation>agua de %1 desde las %2</translation>
    </message>
    <message>
        <source>water of %1 until %2</source>
        <translation>agua de %1 hasta las %2</translation>
    </message>
    <message>
        <source>%1: %2 %3 instead of %4</source>
        <translation>%1: %2 %3 en vez de %4</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>%1 is rinsed as %2</source>
        <translation>%1 se enjuaga como %2</translation>
    </message>
    <message>
        <source>develops at least</source>
        <translation>exposición de al menos</translation>
    </message>
    <message>
        <source>target</source>
        <translation>objetivo</translation>
    </message>
    <message>
        <source>develops at most</source>
        <translation>exposición de como máximo</translation>
    </message>
    <message>
        <source>first strand at most</source>
        <translation>primer mechón como máximo</translation>
    </message>
    <message>
        <source>last strand at least</source>
        <translation>último mechón al menos</translation>
    </message>
    <message>
        <source>%1: other times of looks</source>
        <translation>%1: otras horas de revisión</translation>
    </message>
    <message>
        <source>%1: other times of its late jobs</source>
        <translation>%1: otras horas de sus tareas finales</translation>
    </message>
    <message>
        <source>%1: another gap after the zone before</source>
        <translation>%1: otro intervalo tras la zona anterior</translation>
    </message>
    <message>
        <source>applying %1 stops before it is done</source>
        <translation>la aplicación de %1 se detiene antes de acabar</translation>
    </message>
    <message>
        <source>%1: something is left out</source>
        <translation>%1: se omite algo</translation>
    </message>
    <message>
        <source>What a run has begun with cannot be taken out of it. Leave it out instead.</source>
        <translation>Aquello con lo que empezó una sesión no se puede quitar. Omítalo en su lugar.</translation>
    </message>
    <message>
        <source>There is no such task in this service. Choose one from the list.</source>
        <translation>No hay tal tarea en este servicio. Elija una de la lista.</translation>
    </message>
    <message>
        <source>%1 has begun and cannot be left out.</source>
        <translation>«%1» ha empezado y no se puede omitir.</translation>
    </message>
    <message>
        <source>Only applying that is under way can be interrupted.</source>
        <translation>Solo se puede interrumpir una aplicación en curso.</translation>
    </message>
    <message>
        <source>That is before %1 started. Give a later time.</source>
        <translation>Eso es antes de que empezara «%1». Dé una hora posterior.</translation>
    </message>
    <message>
        <source>Nothing of this coat is left that could be given up.</source>
        <translation>No queda nada de esta pasada que se pueda abandonar.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 is no longer planned</source>
        <translation>%1: ya no está previsto</translation>
    </message>
    <message>
        <source>%1 is planned at %2</source>
        <translation>%1: previsto a las %2</translation>
    </message>
    <message>
        <source>%1 stays at %2</source>
        <translation>%1 sigue a las %2</translation>
    </message>
    <message>
        <source>%1 moves to %2 (from %3)</source>
        <translation>%1 pasa a las %2 (antes %3)</translation>
    </message>
    <message>
        <source>%1 and %2 more.</source>
        <translation>%1 y %2 más.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>This is no answer that a run knows.</source>
        <translation>Esa no es una respuesta que conozca una sesión.</translation>
    </message>
    <message>
        <source>That time is still to come. Answer when it has happened.</source>
        <translation>Esa hora aún está por venir. Responda cuando haya ocurrido.</translation>
    </message>
    <message>
        <source>That is more than a day ago. Give a time within the last 24 hours.</source>
        <translation>Eso fue hace más de un día. Dé una hora de las últimas 24 horas.</translation>
    </message>
    <message>
        <source>This run was ended. Undo that to go on with it.</source>
        <translation>Esta sesión se terminó. Deshágalo para continuarla.</translation>
    </message>
    <message>
        <source>at most %1 development</source>
        <translation>como máximo %1 de exposición</translation>
    </message>
    <message>
        <source>first strand at most %1</source>
        <translation>primer mechón como máximo %1</translation>
    </message>
    <message>
        <source>What was changed later builds on that. Undo the later change first.</source>
        <translation>Lo que se cambió después se apoya en eso. Deshaga primero el cambio posterior.</translation>
    </message>
    <message>
        <source>What was said of &apos;%1&apos; came after that change, which brought it. Undo that first.</source>
        <translation>Lo que se dijo de «%1» vino después de ese cambio, que lo trajo. Deshaga eso primero.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has begun since. Undo that first.</source>
        <translation>«%1» ha empezado desde entonces. Deshaga eso primero.</translation>
    </message>
    <message>
        <source>That answer does not stand any more.</source>
        <translation>Esa respuesta ya no vale.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>No hay nada que deshacer.</translation>
    </message>
    <message>
        <source>That is before the heat was put on. Give a later time.</source>
        <translation>Eso es antes de poner el calor. Dé una hora posterior.</translation>
    </message>
    <message>
        <source>That is after %1 ended. Give an earlier time.</source>
        <translation>Eso es después de que terminara «%1». Dé una hora anterior.</translation>
    </message>
    <message>
        <source>That is before the zone was applied. Give a later time.</source>
        <translation>Eso es antes de aplicar la zona. Dé una hora posterior.</translation>
    </message>
    <message>
        <source>There is no answer to put right.</source>
        <translation>No hay ninguna respuesta que corregir.</translation>
    </message>
    <message>
        <source>Heat is on this head already. Say first that it was taken off.</source>
        <translation>Ya hay calor en esta cabeza. Diga primero que se quitó.</translation>
    </message>
    <message>
        <source>Nothing was on the hair then that heat could be for. Say first what was applied.</source>
        <translation>Entonces no había nada en el pelo para lo que dar calor. Diga primero qué se aplicó.</translation>
    </message>
    <message>
        <source>Say for how many minutes the heat stays, or nothing.</source>
        <translation>Diga cuántos minutos sigue el calor, o nada.</translation>
    </message>
    <message>
        <source>No heat is on this head.</source>
        <translation>No hay calor en esta cabeza.</translation>
    </message>
    <message>
        <source>Heat is never planned, so it cannot be left out.</source>
        <translation>El calor nunca se planifica, así que no se puede omitir.</translation>
    </message>
    <message>
        <source>%1 has not been applied yet.</source>
        <translation>%1 aún no se ha aplicado.</translation>
    </message>
    <message>
        <source>%1 has been rinsed already.</source>
        <translation>%1 ya se ha enjuagado.</translation>
    </message>
    <message>
        <source>That is before %1 was applied. Give a later time.</source>
        <translation>Eso es antes de aplicar %1. Dé una hora posterior.</translation>
    </message>
    <message>
        <source>That is no look. Choose the look that was made.</source>
        <translation>Eso no es una revisión. Elija la revisión que se hizo.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was answered already. To put that right, undo it.</source>
        <translation>«%1» ya se respondió. Para corregirlo, deshágalo.</translation>
    </message>
    <message>
        <source>There is no such look in this service. Choose one from the list.</source>
        <translation>No hay tal revisión en este servicio. Elija una de la lista.</translation>
    </message>
    <message>
        <source>Say in how many minutes to look again.</source>
        <translation>Diga en cuántos minutos revisar de nuevo.</translation>
    </message>
    <message>
        <source>%1 is being rinsed already.</source>
        <translation>%1 ya se está enjuagando.</translation>
    </message>
    <message>
        <source>%1 is still being applied. Say first that it has ended.</source>
        <translation>%1 aún se está aplicando. Diga primero que ha terminado.</translation>
    </message>
    <message>
        <source>At that time %1 was still being applied. Give a later time.</source>
        <translation>A esa hora %1 aún se estaba aplicando. Dé una hora posterior.</translation>
    </message>
    <message>
        <source>Choose the zone to rinse.</source>
        <translation>Elija la zona que se enjuaga.</translation>
    </message>
    <message>
        <source>What was seen is kept with a look. Answer the look of this zone with it.</source>
        <translation>Lo que se vio va con una revisión. Responda con ello la revisión de esta zona.</translation>
    </message>
    <message>
        <source>That zone has nothing like &apos;%1&apos; that could have been done.</source>
        <translation>Esa zona no tiene nada como «%1» que se pudiera haber hecho.</translation>
    </message>
    <message>
        <source>There is no such answer about a zone.</source>
        <translation>No hay tal respuesta sobre una zona.</translation>
    </message>
    <message>
        <source>That answer is not about one zone. Undo it instead.</source>
        <translation>Esa respuesta no trata de una zona. Deshágala en su lugar.</translation>
    </message>
    <message>
        <source>Choose a zone of the same coat.</source>
        <translation>Elija una zona de la misma pasada.</translation>
    </message>
    <message>
        <source>It is about that zone already.</source>
        <translation>Ya trata de esa zona.</translation>
    </message>
    <message>
        <source>No zone is left for &apos;%1&apos;: all have been rinsed alone or left out.</source>
        <translation>No queda ninguna zona para «%1»: todas se enjuagaron por separado o se omitieron.</translation>
    </message>
    <message>
        <source>%1 has not been applied. Leave it out first, or rinse the other zones alone.</source>
        <translation>%1 no se ha aplicado. Omítalo primero, o enjuague las otras zonas por separado.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has begun, so nothing more can be applied for it. Undo that if it was said by mistake.</source>
        <translation>«%1» ha empezado, así que ya no se puede aplicar nada para ello. Deshágalo si fue un error.</translation>
    </message>
    <message>
        <source>A look is not started: say what came of it.</source>
        <translation>Una revisión no se empieza: diga qué resultó.</translation>
    </message>
    <message>
        <source>%1 has been done already.</source>
        <translation>«%1» ya está hecho.</translation>
    </message>
    <message>
        <source>%1 was started already.</source>
        <translation>«%1» ya había empezado.</translation>
    </message>
    <message>
        <source>A look is not finished: say what came of it.</source>
        <translation>Una revisión no se termina: diga qué resultó.</translation>
    </message>
    <message>
        <source>%1 has not been started. Say first when it began.</source>
        <translation>«%1» no ha empezado. Diga primero cuándo empezó.</translation>
    </message>
    <message>
        <source>%1 has been finished already. To put its time right, correct that answer.</source>
        <translation>«%1» ya terminó. Para corregir su hora, corrija esa respuesta.</translation>
    </message>
    <message>
        <source>%1 is left out already.</source>
        <translation>«%1» ya está omitido.</translation>
    </message>
    <message>
        <source>%1 has begun and cannot be left out. Finish it, or undo its start.</source>
        <translation>«%1» ha empezado y no se puede omitir. Termínelo, o deshaga su inicio.</translation>
    </message>
    <message>
        <source>%1 has mixture on it, so its rinse cannot be left out.</source>
        <translation>%1 lleva mezcla, así que su enjuague no se puede omitir.</translation>
    </message>
    <message>
        <source>Stay %1 short of: %2</source>
        <translation>Quedarse %1 por debajo de: %2</translation>
    </message>
    <message>
        <source>Go %1 ahead of: %2</source>
        <translation>Adelantarse %1 a: %2</translation>
    </message>
    <message>
        <source>Go %1 off: %2</source>
        <translation>Desviarse %1 de: %2</translation>
    </message>
    <message>
        <source>Go %1 past: %2</source>
        <translation>Pasarse %1 de: %2</translation>
    </message>
    <message>
        <source>Carry on with what is least harm altogether</source>
        <translation>Seguir con lo que hace menos daño en conjunto</translation>
    </message>
    <message>
        <source>Skip: %1</source>
        <translation>Saltar: %1</translation>
    </message>
    <message>
        <source>Skip every look that is left at %1</source>
        <translation>Saltar todas las revisiones restantes de %1</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 durante %2</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Omitir: %1</translation>
    </message>
    <message>
        <source>Use %1 up to %2 after it is mixed (now %3)</source>
        <translation>Usar %1 hasta %2 después de mezclarlo (ahora %3)</translation>
    </message>
    <message>
        <source>Only if the product&apos;s leaflet allows it.</source>
        <translation>Solo si el prospecto del producto lo permite.</translation>
    </message>
    <message>
        <source>Mix another bowl of %1 for %2</source>
        <translation>Mezclar otro bol de %1 para %2</translation>
    </message>
    <message>
        <source>Have the basin for %1 %2 earlier than it is booked</source>
        <translation>Tener el lavacabezas para %1 %2 antes de lo reservado</translation>
    </message>
    <message>
        <source>Have the basin for %1 %2 later than it is booked</source>
        <translation>Tener el lavacabezas para %1 %2 después de lo reservado</translation>
    </message>
    <message>
        <source>Begin to apply %1 up to %2 after the end of %3 (now %4)</source>
        <translation>Empezar %1 hasta %2 después del final de %3 (ahora %4)</translation>
    </message>
    <message>
        <source>Begin to apply %1 at least %2 after the end of %3 (now %4)</source>
        <translation>Empezar %1 al menos %2 después del final de %3 (ahora %4)</translation>
    </message>
    <message>
        <source>Keep %1 to spare before the promised time (now %2)</source>
        <translation>Dejar %1 de margen antes de la hora prometida (ahora %2)</translation>
    </message>
    <message>
        <source>Keep %1 to spare before the promised time for %2 (now %3)</source>
        <translation>Dejar %1 de margen antes de la hora prometida a %2 (ahora %3)</translation>
    </message>
    <message>
        <source>Promise it %1 later</source>
        <translation>Prometerlo %1 más tarde</translation>
    </message>
    <message>
        <source>Promise it for %1 %2 later</source>
        <translation>Prometerlo para %1 %2 más tarde</translation>
    </message>
    <message>
        <source>The %1 to spare are used up as well.</source>
        <translation>También se gastan los %1 de margen.</translation>
    </message>
    <message>
        <source>Begin %1 earlier</source>
        <translation>Empezar %1 antes</translation>
    </message>
    <message>
        <source>Begin with %1 %2 earlier</source>
        <translation>Empezar con %1 %2 antes</translation>
    </message>
    <message>
        <source>Let %1 not be away at all</source>
        <translation>Que %1 no se ausente</translation>
    </message>
    <message>
        <source>Let %1 leave %2 later</source>
        <translation>Que %1 se vaya %2 más tarde</translation>
    </message>
    <message>
        <source>Let %1 come back %2 earlier</source>
        <translation>Que %1 vuelva %2 antes</translation>
    </message>
    <message>
        <source>Call another pair of hands</source>
        <translation>Llamar a otra persona</translation>
    </message>
    <message>
        <source>Use another basin (now %1)</source>
        <translation>Usar otro lavacabezas (ahora %1)</translation>
    </message>
    <message>
        <source>Let %1 develop up to %2 (now %3)</source>
        <translation>Dejar %1 en exposición hasta %2 (ahora %3)</translation>
    </message>
    <message>
        <source>Let %1 be rinsed from %2 on (now from %3)</source>
        <translation>Dejar enjuagar %1 desde %2 (ahora desde %3)</translation>
    </message>
    <message>
        <source>Let the first strand of %1 carry the mixture up to %2 (now %3)</source>
        <translation>Dejar que el primer mechón de %1 lleve la mezcla hasta %2 (ahora %3)</translation>
    </message>
    <message>
        <source>Let the last strand of %1 carry the mixture at least %2 (now %3)</source>
        <translation>Dejar que el último mechón de %1 lleve la mezcla al menos %2 (ahora %3)</translation>
    </message>
    <message>
        <source>Look at %1 up to %2 early or late (now %3)</source>
        <translation>Revisar %1 hasta %2 antes o después (ahora %3)</translation>
    </message>
    <message>
        <source>Let %1 be up to %2 early or late (now %3)</source>
        <translation>Dejar que %1 sea hasta %2 antes o después (ahora %3)</translation>
    </message>
    <message>
        <source>Apply %1 without waiting for %2</source>
        <translation>Aplicar %1 sin esperar a %2</translation>
    </message>
    <message>
        <source>Apply %1 up to %2 after %3 (now %4)</source>
        <translation>Aplicar %1 hasta %2 después de %3 (ahora %4)</translation>
    </message>
    <message>
        <source>See that the blend line can wait that long.</source>
        <translation>Vea que la línea de transición pueda esperar tanto.</translation>
    </message>
    <message>
        <source>Rinse %1 on its own</source>
        <translation>Enjuagar %1 por separado</translation>
    </message>
    <message>
        <source>Its neighbours have to stay dry.</source>
        <translation>Sus vecinas deben quedar secas.</translation>
    </message>
    <message>
        <source>%1, %2 before the others</source>
        <translation>%1, %2 antes que las demás</translation>
    </message>
    <message>
        <source>%1, %2 after the others</source>
        <translation>%1, %2 después de las demás</translation>
    </message>
    <message>
        <source>%1; and: %2</source>
        <translation>%1; y: %2</translation>
    </message>
    <message>
        <source>There is no service to plan.</source>
        <translation>No hay ningún servicio que planificar.</translation>
    </message>
    <message>
        <source>The clock times lie more than two years apart: check the dates.</source>
        <translation>Las horas distan más de dos años: revise las fechas.</translation>
    </message>
    <message>
        <source>This is more than can be planned at once: %1 moments, at most %2. Plan fewer coats at a time, or fewer looks.</source>
        <translation>Esto es más de lo que se puede planificar a la vez: %1 momentos, como máximo %2. Planifique menos pasadas a la vez, o menos revisiones.</translation>
    </message>
    <message>
        <source>%1: the basin is booked from a fixed time on</source>
        <translation>%1: el lavacabezas está reservado desde una hora fija</translation>
    </message>
    <message>
        <source>%1: the basin is booked, water by a fixed time</source>
        <translation>%1: el lavacabezas está reservado, agua antes de una hora fija</translation>
    </message>
    <message>
        <source>%1: used up within %2 of mixing</source>
        <translation>%1: se gasta en %2 desde la mezcla</translation>
    </message>
    <message>
        <source>%1: at least %2 after %3</source>
        <translation>%1: al menos %2 después de %3</translation>
    </message>
    <message>
        <source>%1: at most %2 after %3</source>
        <translation>%1: como máximo %2 después de %3</translation>
    </message>
    <message>
        <source>one pair of hands</source>
        <translation>una sola persona</translation>
    </message>
    <message>
        <source>%1 pairs of hands</source>
        <translation>%1 personas</translation>
    </message>
    <message>
        <source>one basin</source>
        <translation>un lavacabezas</translation>
    </message>
    <message>
        <source>%1 basins</source>
        <translation>%1 lavacabezas</translation>
    </message>
    <message>
        <source>nothing else is done to a head at the basin</source>
        <translation>en el lavacabezas no se hace nada más a una cabeza</translation>
    </message>
    <message>
        <source>%1 is away</source>
        <translation>%1 está ausente</translation>
    </message>
    <message>
        <source>ready by the promised time with %1 to spare</source>
        <translation>listo a la hora prometida con %1 de margen</translation>
    </message>
    <message>
        <source>ready by the promised time</source>
        <translation>listo a la hora prometida</translation>
    </message>
    <message>
        <source>%1: looks from %2, each within %3</source>
        <translation>%1: revisiones desde %2, cada una con %3 de tolerancia</translation>
    </message>
    <message>
        <source>%1: looks from %2 every %3, each within %4</source>
        <translation>%1: revisiones desde %2 cada %3, cada una con %4 de tolerancia</translation>
    </message>
    <message>
        <source>development of at least %1</source>
        <translation>exposición de al menos %1</translation>
    </message>
    <message>
        <source>development of at most %1</source>
        <translation>exposición de como máximo %1</translation>
    </message>
    <message>
        <source>first strand, from contact to water, at most %1</source>
        <translation>primer mechón, del contacto al agua, como máximo %1</translation>
    </message>
    <message>
        <source>last strand, from the end of application to water, at least %1</source>
        <translation>último mechón, del final de la aplicación al agua, al menos %1</translation>
    </message>
    <message>
        <source>%1 %2: %3 before its water, within %4</source>
        <translation>%1 %2: %3 antes de su agua, con %4 de tolerancia</translation>
    </message>
    <message>
        <source>%1 goes on after %2</source>
        <translation>%1 va después de %2</translation>
    </message>
    <message>
        <source>%1 goes on within %2 of %3</source>
        <translation>%1 va dentro de %2 tras %3</translation>
    </message>
    <message>
        <source>No place was found for everybody. It is not known whether there is none.</source>
        <translation>No se encontró sitio para todos. No se sabe si no lo hay.</translation>
    </message>
    <message>
        <source>The search was stopped before anything was found.</source>
        <translation>La búsqueda se detuvo antes de encontrar nada.</translation>
    </message>
    <message>
        <source>Nothing fits, even with every limit left out: nobody here does what has to be done.</source>
        <translation>No cabe nada, ni sin ningún límite: nadie aquí hace lo que hay que hacer.</translation>
    </message>
    <message>
        <source>This cannot be kept: %1.</source>
        <translation>Esto no se puede cumplir: %1.</translation>
    </message>
    <message>
        <source>These cannot all hold together: %1.</source>
        <translation>Estas no pueden cumplirse todas a la vez: %1.</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>Revisar %1</translation>
    </message>
    <message>
        <source>Look at %1 (%2)</source>
        <translation>Revisar %1 (%2)</translation>
    </message>
    <message>
        <source>Apply %1</source>
        <translation>Aplicar %1</translation>
    </message>
    <message>
        <source>Mix %1</source>
        <translation>Mezclar %1</translation>
    </message>
    <message>
        <source>Rinse %1</source>
        <translation>Enjuagar %1</translation>
    </message>
    <message>
        <source>Rinse %1 alone</source>
        <translation>Enjuagar %1 por separado</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Secar</translation>
    </message>
    <message>
        <source>Assess</source>
        <translation>Valorar</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>and %1 more problems; mend these first</source>
        <translation>y %1 problemas más; corrija primero estos</translation>
    </message>
    <message>
        <source>is empty; list a bowl, or leave the key out for one without mixing</source>
        <translation>está vacío; indique un bol</translation>
    </message>
    <message>
        <source>bowls</source>
        <translation>boles</translation>
    </message>
    <message>
        <source>no zone is applied from this bowl; take it out, or name it in a zone</source>
        <translation>ninguna zona se aplica de este bol; quítelo, o nómbrelo en una zona</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>bol</translation>
    </message>
    <message>
        <source>is before earliest; swap them</source>
        <translation>es antes de lo más temprano; intercámbielos</translation>
    </message>
    <message>
        <source>is empty; list at least one rinse group, such as { &quot;length&quot;: 5 }</source>
        <translation>está vacío; indique al menos un grupo de enjuague</translation>
    </message>
    <message>
        <source>rinse groups</source>
        <translation>grupos de enjuague</translation>
    </message>
    <message>
        <source>no zone is rinsed in this group; take it out, or name it in a zone</source>
        <translation>ninguna zona se enjuaga en este grupo; quítelo, o nómbrelo en una zona</translation>
    </message>
    <message>
        <source>rinse group</source>
        <translation>grupo de enjuague</translation>
    </message>
    <message>
        <source>is empty; list at least one zone</source>
        <translation>está vacío; indique al menos una zona</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zona</translation>
    </message>
    <message>
        <source>%1 is less than least %2; raise most or lower least</source>
        <translation>%1 es menos que el mínimo %2; suba el máximo o baje el mínimo</translation>
    </message>
    <message>
        <source>times away</source>
        <translation>ausencias</translation>
    </message>
    <message>
        <source>is not after from; a time away ends later than it starts</source>
        <translation>no es después del inicio; una ausencia acaba después de empezar</translation>
    </message>
    <message>
        <source>is before the end of the time away above; list them in order, without overlap</source>
        <translation>es antes del final de la ausencia anterior; póngalas en orden, sin solaparse</translation>
    </message>
    <message>
        <source>%1 is listed twice; take one out</source>
        <translation>%1 aparece dos veces; quite uno</translation>
    </message>
    <message>
        <source>nobody does %1, and the service needs it; add it to the does of somebody</source>
        <translation>nadie hace %1, y el servicio lo necesita; añádalo a alguien</translation>
    </message>
    <message>
        <source>0 is too few; at least one basin is needed</source>
        <translation>0 es muy poco; hace falta al menos un lavacabezas</translation>
    </message>
    <message>
        <source>basins</source>
        <translation>lavacabezas</translation>
    </message>
    <message>
        <source>is empty; at least one pair of hands is needed</source>
        <translation>está vacío; hace falta al menos una persona</translation>
    </message>
    <message>
        <source>pairs of hands</source>
        <translation>personas</translation>
    </message>
    <message>
        <source>pair of hands</source>
        <translation>persona</translation>
    </message>
    <message>
        <source>%1 is negative; lengths run from 0 to 1440 (24 h)</source>
        <translation>%1 es negativo; las duraciones van de 0 a 1440 (24 h)</translation>
    </message>
    <message>
        <source>%1 is more than 1440 (24 h), the longest that is accepted</source>
        <translation>%1 es más de 1440 (24 h), lo más largo que se acepta</translation>
    </message>
    <message>
        <source>0 is too short; write at least one second, &quot;0:01&quot;</source>
        <translation>0 es muy corto; ponga al menos un segundo, «0:01»</translation>
    </message>
    <message>
        <source>%1 is negative; a harm runs from 0 to 1000</source>
        <translation>%1 es negativo; un daño va de 0 a 1000</translation>
    </message>
    <message>
        <source>%1 is more than 1000, the greatest harm</source>
        <translation>%1 es más de 1000, el mayor daño</translation>
    </message>
    <message>
        <source>is not between the years 2000 and 2099; mend the date</source>
        <translation>no está entre los años 2000 y 2099; corrija la fecha</translation>
    </message>
    <message>
        <source>%1 %2 are more than %3, the most that are accepted</source>
        <translation>%1 %2 son más de %3, lo máximo que se acepta</translation>
    </message>
    <message>
        <source>is not UTF-8 text; write it again</source>
        <translation>no es texto UTF-8; escríbalo de nuevo</translation>
    </message>
    <message>
        <source>holds a control character, such as a tab; take it out</source>
        <translation>contiene un carácter de control, como un tabulador; quítelo</translation>
    </message>
    <message>
        <source>has %1 characters; write at most %2</source>
        <translation>tiene %1 caracteres; escriba como máximo %2</translation>
    </message>
    <message>
        <source>is empty; write a name</source>
        <translation>está vacío; escriba un nombre</translation>
    </message>
    <message>
        <source>starts or ends with a space; take it out</source>
        <translation>empieza o acaba con un espacio; quítelo</translation>
    </message>
    <message>
        <source>%1 is the name of %2 too; give each %3 a name of its own</source>
        <translation>%1 es también el nombre de %2; dé a cada uno un nombre propio (%3)</translation>
    </message>
    <message>
        <source>%1 waits for %2</source>
        <translation>%1 espera a %2</translation>
    </message>
    <message>
        <source>%1; take one of these out</source>
        <translation>%1; quite una de estas</translation>
    </message>
    <message>
        <source>there is no such zone; name one of the coat</source>
        <translation>no hay tal zona; nombre una de la pasada</translation>
    </message>
    <message>
        <source>a zone cannot wait for itself; take it out</source>
        <translation>una zona no puede esperarse a sí misma; quítela</translation>
    </message>
    <message>
        <source>is not after not_before by more than the buffer; make it later</source>
        <translation>no es posterior al inicio permitido en más del margen; póngalo más tarde</translation>
    </message>
    <message>
        <source>is empty; list at least one coat</source>
        <translation>está vacío; indique al menos una pasada</translation>
    </message>
    <message>
        <source>coats</source>
        <translation>pasadas</translation>
    </message>
    <message>
        <source>zones in all</source>
        <translation>zonas en total</translation>
    </message>
    <message>
        <source>leads to the next coat, and this is the last one; take it out</source>
        <translation>lleva a la pasada siguiente, y esta es la última; quítelo</translation>
    </message>
    <message>
        <source>coat</source>
        <translation>pasada</translation>
    </message>
    <message>
        <source>is empty; use an IANA name such as &quot;Europe/London&quot;</source>
        <translation>está vacío; use un nombre IANA como «Europe/London»</translation>
    </message>
    <message>
        <source>only wefts come apart; make it false, or the kind &quot;wefts&quot;</source>
        <translation>solo las tramas se separan; póngalo en falso, o el tipo en tramas</translation>
    </message>
    <message>
        <source>%1 is more than usual %2; make quickest at most usual</source>
        <translation>%1 es más que lo habitual %2; ponga el mínimo como máximo en lo habitual</translation>
    </message>
    <message>
        <source>%1 is less than usual %2; make slowest at least usual</source>
        <translation>%1 es menos que lo habitual %2; ponga el máximo al menos en lo habitual</translation>
    </message>
    <message>
        <source>%1 is more than target %2; make least at most the target</source>
        <translation>%1 es más que el objetivo %2; ponga el mínimo como máximo en el objetivo</translation>
    </message>
    <message>
        <source>%1 is less than target %2; make most at least the target</source>
        <translation>%1 es menos que el objetivo %2; ponga el máximo al menos en el objetivo</translation>
    </message>
    <message>
        <source>may take %1, longer than develop.most %2 counted from first contact; split the zone</source>
        <translation>puede tardar %1, más que la exposición máxima %2 contada desde el primer mechón; divida la zona</translation>
    </message>
    <message>
        <source>%1 is more than develop.most %2, counted from the same end of application; lower it or raise most</source>
        <translation>%1 es más que la exposición máxima %2, contada desde el mismo final de aplicación; bájelo o suba el máximo</translation>
    </message>
    <message>
        <source>%1 is not before until %2, so that no look would be due; look earlier, or leave looks out</source>
        <translation>%1 no es antes del final %2, no tocaría ninguna revisión; revise antes, o quite las revisiones</translation>
    </message>
    <message>
        <source>%1 makes more than %2 looks; look less often</source>
        <translation>%1 da más de %2 revisiones; revise menos a menudo</translation>
    </message>
    <message>
        <source>%1 is more than every %2, so that looks would change places; make it at most half of every</source>
        <translation>%1 es más que el intervalo %2, las revisiones se cruzarían; póngalo como máximo en la mitad</translation>
    </message>
    <message>
        <source>late jobs</source>
        <translation>tareas finales</translation>
    </message>
    <message>
        <source>%1 is more than before %2 and tolerance %3 leave until the water; start it earlier or make it shorter</source>
        <translation>%1 es más de lo que %2 antes y la tolerancia %3 dejan hasta el agua; empiécela antes o hágala más corta</translation>
    </message>
    <message>
        <source>there is no such bowl; name one of the coat</source>
        <translation>no hay tal bol; nombre uno de la pasada</translation>
    </message>
    <message>
        <source>there is no such rinse group; name one of the coat</source>
        <translation>no hay tal grupo de enjuague; nombre uno de la pasada</translation>
    </message>
    <message>
        <source>%1 is more than the %2 that the rinse takes; the zone must be reached before it ends</source>
        <translation>%1 es más que los %2 del enjuague; debe llegarse a la zona antes de que acabe</translation>
    </message>
    <message>
        <source>1 pair of hands here, %1 there</source>
        <translation>1 persona aquí, %1 allí</translation>
    </message>
    <message>
        <source>%1 pairs of hands here, %2 there</source>
        <translation>%1 personas aquí, %2 allí</translation>
    </message>
    <message>
        <source>%1 here, %2 there</source>
        <translation>%1 aquí, %2 allí</translation>
    </message>
    <message>
        <source>%1 is away at other times</source>
        <translation>%1 se ausenta a otras horas</translation>
    </message>
    <message>
        <source>%1 does other work</source>
        <translation>%1 hace otro trabajo</translation>
    </message>
    <message>
        <source>1 basin here, %1 there</source>
        <translation>1 lavacabezas aquí, %1 allí</translation>
    </message>
    <message>
        <source>%1 basins here, %2 there</source>
        <translation>%1 lavacabezas aquí, %2 allí</translation>
    </message>
    <message>
        <source>Say what is to be thought of next time.</source>
        <translation>Diga en qué hay que pensar la próxima vez.</translation>
    </message>
    <message>
        <source>Choose the zone that this is about.</source>
        <translation>Elija la zona de que se trata.</translation>
    </message>
    <message>
        <source>Say that in fewer words: at most %1 letters.</source>
        <translation>Dígalo con menos palabras: %1 letras como máximo.</translation>
    </message>
    <message>
        <source>Say that in one line.</source>
        <translation>Dígalo en una línea.</translation>
    </message>
    <message>
        <source>%1 has not been rinsed. Say how it turned out once it is.</source>
        <translation>%1 no está enjuagado. Diga cómo ha quedado cuando lo esté.</translation>
    </message>
    <message>
        <source>Say how %1 turned out.</source>
        <translation>Diga cómo ha quedado %1.</translation>
    </message>
    <message>
        <source>%1 not before %2</source>
        <translation>%1 no antes de las %2</translation>
    </message>
    <message>
        <source>%1 as soon as it is best</source>
        <translation>%1 en cuanto sea mejor</translation>
    </message>
    <message>
        <source>Let %1 start %2 earlier than was set for it</source>
        <translation>Que %1 empiece %2 antes de lo fijado</translation>
    </message>
    <message>
        <source>%1: not applied before the time that was set</source>
        <translation>%1: no aplicado antes de la hora fijada</translation>
    </message>
</context>
</TS>
