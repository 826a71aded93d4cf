<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>Cautions</name>
    <message>
        <source>The product&apos;s own leaflet comes first. Where it differs from this plan, the leaflet is right: change the service and plan again.</source>
        <translation>Die Gebrauchsanweisung des Produkts geht vor. Wo sie von diesem Plan abweicht, hat sie recht: Ändern Sie den Auftrag und planen Sie neu.</translation>
    </message>
    <message>
        <source>Have the skin test that the maker, the trade and insurers ask for, as a rule 48 hours before, and read by someone trained to read it. A test without a reaction is no promise that there will be none.</source>
        <translation>Lassen Sie den Hauttest machen, den Hersteller, Handwerk und Versicherer verlangen, in der Regel 48 Stunden vorher und abgelesen von jemandem, der das gelernt hat. Ein Test ohne Reaktion ist kein Versprechen, dass keine kommt.</translation>
    </message>
    <message>
        <source>Do not colour on a rash, on sensitive or broken skin, or after an earlier reaction to colour or to a black temporary tattoo, until a doctor has said what may be done. Many products are not meant for people under 16.</source>
        <translation>Färben Sie nicht bei Ausschlag, auf empfindlicher oder verletzter Haut oder nach einer früheren Reaktion auf Haarfarbe oder ein schwarzes temporäres Tattoo, bevor ein Arzt gesagt hat, was möglich ist. Viele Produkte sind nicht für Personen unter 16 Jahren bestimmt.</translation>
    </message>
    <message>
        <source>Wear suitable gloves, and air the room, above all with lighteners and ammonia.</source>
        <translation>Tragen Sie geeignete Handschuhe und lüften Sie den Raum, vor allem bei Blondierungen und Ammoniak.</translation>
    </message>
    <message>
        <source>Keep mixtures out of eyes, and off lashes and brows unless the product is made for them. If some gets into an eye, rinse at once with plenty of water and get medical help.</source>
        <translation>Halten Sie Mischungen von den Augen fern, und von Wimpern und Brauen, außer das Produkt ist dafür gemacht. Gelangt etwas ins Auge, spülen Sie sofort mit viel Wasser und holen Sie ärztliche Hilfe.</translation>
    </message>
    <message>
        <source>If skin burns, swells or blisters, rinse at once, whatever the clock says, and get medical help.</source>
        <translation>Wenn die Haut brennt, anschwillt oder Blasen bildet, spülen Sie sofort, was auch immer die Uhr sagt, und holen Sie ärztliche Hilfe.</translation>
    </message>
    <message>
        <source>Local rules and licensed practice decide who may do this work and how. This program plans and keeps time: it knows neither the product nor the person, and whoever does the work decides.</source>
        <translation>Örtliche Vorschriften und die zugelassene Berufsausübung bestimmen, wer diese Arbeit wie tun darf. Dieses Programm plant und misst die Zeit: Es kennt weder das Produkt noch die Person, und es entscheidet, wer die Arbeit macht.</translation>
    </message>
</context>
<context>
    <name>CellAccess</name>
    <message>
        <source>%1 of %2</source>
        <comment>column, row</comment>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>Columns</name>
    <message>
        <source>Bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>What the mixture is called</source>
        <translation>Wie die Mischung heißt</translation>
    </message>
    <message>
        <source>Mixing</source>
        <translation>Mischen</translation>
    </message>
    <message>
        <source>Minutes of mixing; 0 where it needs no planning</source>
        <translation>Minuten Mischen; 0, wenn es nicht geplant werden muss</translation>
    </message>
    <message>
        <source>Pot life</source>
        <translation>Topfzeit</translation>
    </message>
    <message>
        <source>Minutes a mixture may be used after mixing, from the leaflet</source>
        <translation>Minuten, die eine Mischung nach dem Anmischen verwendbar ist, laut Gebrauchsanweisung</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Was hineinkommt</translation>
    </message>
    <message>
        <source>In your own words; shown when it is mixed</source>
        <translation>In Ihren eigenen Worten; wird beim Mischen gezeigt</translation>
    </message>
    <message>
        <source>Type a clock time, such as 14:30, or 2026-11-28 14:30 for another day.</source>
        <translation>Geben Sie eine Uhrzeit ein, etwa 14:30, oder 2026-11-28 14:30 für einen anderen Tag.</translation>
    </message>
    <message>
        <source>Rinse group</source>
        <translation>Spülgruppe</translation>
    </message>
    <message>
        <source>Zones that go under the water together</source>
        <translation>Zonen, die zusammen unter das Wasser kommen</translation>
    </message>
    <message>
        <source>Rinsing</source>
        <translation>Ausspülen</translation>
    </message>
    <message>
        <source>Minutes at the basin</source>
        <translation>Minuten am Waschbecken</translation>
    </message>
    <message>
        <source>Water from</source>
        <translation>Wasser ab</translation>
    </message>
    <message>
        <source>The earliest clock time of its water, where the basin is booked</source>
        <translation>Die früheste Uhrzeit für Wasser, wenn das Becken gebucht ist</translation>
    </message>
    <message>
        <source>Water until</source>
        <translation>Wasser bis</translation>
    </message>
    <message>
        <source>The latest clock time of its water, where the basin is booked</source>
        <translation>Die späteste Uhrzeit für Wasser, wenn das Becken gebucht ist</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>What this pass is called</source>
        <translation>Wie dieser Durchgang heißt</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Trocknen</translation>
    </message>
    <message>
        <source>Minutes of drying by hand</source>
        <translation>Minuten Trocknen von Hand</translation>
    </message>
    <message>
        <source>Drying alone</source>
        <translation>Trocknet allein</translation>
    </message>
    <message>
        <source>Minutes that it dries on by itself</source>
        <translation>Minuten, die es von selbst weitertrocknet</translation>
    </message>
    <message>
        <source>Judging</source>
        <translation>Beurteilen</translation>
    </message>
    <message>
        <source>Minutes to look at the dry result</source>
        <translation>Minuten, um das trockene Ergebnis anzusehen</translation>
    </message>
    <message>
        <source>Least gap</source>
        <translation>Pause min.</translation>
    </message>
    <message>
        <source>Fewest minutes before the next coat</source>
        <translation>Wenigste Minuten bis zum nächsten Durchgang</translation>
    </message>
    <message>
        <source>Most gap</source>
        <translation>Pause max.</translation>
    </message>
    <message>
        <source>Most minutes before the next coat</source>
        <translation>Meiste Minuten bis zum nächsten Durchgang</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Abwesend</translation>
    </message>
    <message>
        <source>When nothing can be asked of them, such as 13:00–13:30; empty for never</source>
        <translation>Wann nichts verlangt werden kann, etwa 13:00–13:30; leer für nie</translation>
    </message>
    <message>
        <source>Type from when to when, such as 13:00–13:30, with commas between several.</source>
        <translation>Geben Sie ein, von wann bis wann, etwa 13:00–13:30, mehrere mit Kommas dazwischen.</translation>
    </message>
    <message>
        <source>mixing</source>
        <translation>mischen</translation>
    </message>
    <message>
        <source>applying</source>
        <translation>auftragen</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>Kontrollen</translation>
    </message>
    <message>
        <source>late jobs</source>
        <translation>späte Arbeiten</translation>
    </message>
    <message>
        <source>rinsing</source>
        <translation>ausspülen</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>trocknen</translation>
    </message>
    <message>
        <source>judging</source>
        <translation>beurteilen</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>Macht</translation>
    </message>
    <message>
        <source>What they are asked to do; empty for everything</source>
        <translation>Was verlangt wird; leer für alles</translation>
    </message>
    <message>
        <source>Name, with commas between them: %1. Empty for everything.</source>
        <translation>Nennen Sie, mit Kommas dazwischen: %1. Leer für alles.</translation>
    </message>
    <message>
        <source>Pair of hands</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Who works</source>
        <translation>Wer arbeitet</translation>
    </message>
    <message>
        <source>Choose one of the list.</source>
        <translation>Wählen Sie etwas aus der Liste.</translation>
    </message>
    <message>
        <source>Type minutes, such as 12, 12.5 or 12:30.</source>
        <translation>Geben Sie Minuten ein, etwa 12, 12,5 oder 12:30.</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>Nicht vor</translation>
    </message>
    <message>
        <source>The clock time that applying it is not to start before, as it can be pulled and kept on the strand; empty for whenever is best</source>
        <translation>Die Uhrzeit, vor der das Auftragen nicht beginnen soll; sie lässt sich auch an der Strähne ziehen und behalten. Leer: wann immer es am besten ist</translation>
    </message>
</context>
<context>
    <name>Demos</name>
    <message>
        <source>Actor root and toners</source>
        <translation>Schauspieler: Ansatz und Tönungen</translation>
    </message>
    <message>
        <source>Wefts two basins</source>
        <translation>Tressen: zwei Becken</translation>
    </message>
    <message>
        <source>Wig room darker over a day</source>
        <translation>Maskenraum: an einem Tag dunkler</translation>
    </message>
    <message>
        <source>Wig room lightening in sections</source>
        <translation>Maskenraum: Blondierung in Partien</translation>
    </message>
    <message>
        <source>Wig room three zones</source>
        <translation>Maskenraum: drei Zonen</translation>
    </message>
</context>
<context>
    <name>Edits</name>
    <message>
        <source>Coat</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Spülen</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>New service</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>Stylist</source>
        <translation>Stylist</translation>
    </message>
    <message>
        <source>Coat 1</source>
        <translation>Durchgang 1</translation>
    </message>
    <message>
        <source>Bowl 1</source>
        <translation>Schale 1</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Alles zusammen</translation>
    </message>
</context>
<context>
    <name>ErasedRun</name>
    <message>
        <source>Apply zone %1</source>
        <translation>Zone %1 auftragen</translation>
    </message>
    <message>
        <source>Look at zone %1</source>
        <translation>Zone %1 kontrollieren</translation>
    </message>
    <message>
        <source>Late job on zone %1</source>
        <translation>Späte Arbeit an Zone %1</translation>
    </message>
    <message>
        <source>Mix bowl %1</source>
        <translation>Schale %1 mischen</translation>
    </message>
    <message>
        <source>Rinse group %1</source>
        <translation>Gruppe %1 ausspülen</translation>
    </message>
    <message>
        <source>Rinse zone %1 by itself</source>
        <translation>Zone %1 für sich ausspülen</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocknen</translation>
    </message>
    <message>
        <source>Assess</source>
        <translation>Beurteilen</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>%1, coat %2</source>
        <translation>%1, Durchgang %2</translation>
    </message>
    <message>
        <source>%1, head %2</source>
        <translation>%1, Kopf %2</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>Was übrig ist</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>How it turned out</source>
        <translation>Wie es geworden ist</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Gesagt</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>A run that was erased</source>
        <translation>Ein gelöschter Lauf</translation>
    </message>
    <message>
        <source>%1, %2 to %3, times in %4</source>
        <translation>%1, %2 bis %3, Zeiten in %4</translation>
    </message>
    <message>
        <source>Whatever could name a person was erased: the service with its names and notes, what was seen and said. What is left are kinds of tasks, numbers and times. A card cannot be made of them, and a coat cannot begin from them.</source>
        <translation>Was eine Person nennen könnte, wurde gelöscht: der Auftrag mit seinen Namen und Notizen, was gesehen und gesagt wurde. Übrig sind Arten von Arbeiten, Nummern und Zeiten. Daraus lässt sich keine Karteikarte machen, und kein Durchgang kann damit beginnen.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Hatched: the mixture is being applied.</source>
        <translation>Schraffiert: Die Mischung wird aufgetragen.</translation>
    </message>
    <message>
        <source>The rinse line: water. Zones that are rinsed together end at the same shore.</source>
        <translation>Die Spüllinie: Wasser. Zonen, die zusammen ausgespült werden, enden am selben Ufer.</translation>
    </message>
    <message>
        <source>Below each strand its limits: the bracket is the least, the wedge the target, the bar the most it may develop.</source>
        <translation>Unter jeder Strähne ihre Grenzen: Die Klammer ist die kürzeste Einwirkzeit, der Keil das Ziel, der Balken die längste.</translation>
    </message>
    <message>
        <source>Set-up: what is wanted, and the plan that comes of it</source>
        <translation>Vorbereitung: was gewünscht ist, und der Plan dazu</translation>
    </message>
    <message>
        <source>In the table: what goes on which zone, how long applying takes you, and how long each zone may develop. Take the times from the leaflet of the product.</source>
        <translation>In der Tabelle: was auf welche Zone kommt, wie lange Sie zum Auftragen brauchen, und wie lange jede Zone einwirken darf. Nehmen Sie die Zeiten aus der Gebrauchsanweisung des Produkts.</translation>
    </message>
    <message>
        <source>Below it: the plan. It says when to begin each zone, so that all of them come to the basin on time with one pair of hands. It is made again after every change.</source>
        <translation>Darunter: der Plan. Er sagt, wann jede Zone zu beginnen ist, damit alle rechtzeitig ans Waschbecken kommen und eine Person das schafft. Nach jeder Änderung wird er neu gemacht.</translation>
    </message>
    <message>
        <source>Next: when the plan looks right, start the lanes. They tell you what to do and when. Until then nothing sounds, and everything can be undone.</source>
        <translation>Danach: Wenn der Plan stimmt, starten Sie die Bahnen. Sie sagen Ihnen, was wann zu tun ist. Bis dahin ertönt nichts, und alles lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>A strand with fibres: the zone develops. It swells until the target.</source>
        <translation>Eine Strähne mit Fasern: Die Zone wirkt ein. Bis zum Ziel wird sie dicker.</translation>
    </message>
    <message>
        <source>Dashed: that limit is not kept.</source>
        <translation>Gestrichelt: Diese Grenze wird nicht eingehalten.</translation>
    </message>
    <message>
        <source>An eye: look at the hair, a strand test.</source>
        <translation>Ein Auge: das Haar ansehen, ein Strähnentest.</translation>
    </message>
    <message>
        <source>A box with a wave: a late job, such as emulsifying.</source>
        <translation>Ein Kasten mit Welle: eine späte Arbeit, etwa Emulgieren.</translation>
    </message>
    <message>
        <source>A bar with two ends: water comes between them in nine runs of ten.</source>
        <translation>Ein Strich mit zwei Enden: In neun von zehn Läufen kommt Wasser dazwischen.</translation>
    </message>
    <message>
        <source>Boxes on a name: what these hands do. Dashed is on another head.</source>
        <translation>Kästen an einem Namen: was diese Person tut. Gestrichelt heißt: an einem anderen Kopf.</translation>
    </message>
    <message>
        <source>start the lanes</source>
        <translation>Bahnen starten</translation>
    </message>
    <message>
        <source>change the cell, go to the next</source>
        <translation>Zelle ändern, zur nächsten</translation>
    </message>
    <message>
        <source>undo the last change</source>
        <translation>letzte Änderung zurücknehmen</translation>
    </message>
    <message>
        <source>before the start: what is open</source>
        <translation>vor dem Start: was offen ist</translation>
    </message>
    <message>
        <source>sound check</source>
        <translation>Tonprobe</translation>
    </message>
    <message>
        <source>print the plan</source>
        <translation>Plan drucken</translation>
    </message>
    <message>
        <source>record cards</source>
        <translation>Karteikarten</translation>
    </message>
    <message>
        <source>to Set-up, to Lanes</source>
        <translation>zur Vorbereitung, zu den Bahnen</translation>
    </message>
    <message>
        <source>the cautions</source>
        <translation>die Warnhinweise</translation>
    </message>
    <message>
        <source>it is done: answer the one thing to do</source>
        <translation>es ist getan: beantwortet, was zu tun ist</translation>
    </message>
    <message>
        <source>a look: leave it on, look again, rinse this zone</source>
        <translation>eine Kontrolle: drauf lassen, nochmals ansehen, diese Zone ausspülen</translation>
    </message>
    <message>
        <source>look again a minute sooner, later</source>
        <translation>eine Minute früher, später nochmals ansehen</translation>
    </message>
    <message>
        <source>leave all that were looked at together</source>
        <translation>alle drauf lassen, die zusammen kontrolliert wurden</translation>
    </message>
    <message>
        <source>the tone seen</source>
        <translation>der gesehene Ton</translation>
    </message>
    <message>
        <source>skip this look or late job</source>
        <translation>diese Kontrolle oder späte Arbeit auslassen</translation>
    </message>
    <message>
        <source>quiet for a while; let it sound again</source>
        <translation>eine Weile still; wieder ertönen lassen</translation>
    </message>
    <message>
        <source>the last answer was earlier</source>
        <translation>die letzte Antwort war früher</translation>
    </message>
    <message>
        <source>undo the last answer</source>
        <translation>letzte Antwort zurücknehmen</translation>
    </message>
    <message>
        <source>more: somebody goes or comes, heat, a zone more, an earlier answer</source>
        <translation>mehr: jemand geht oder kommt, Wärme, eine Zone mehr, eine frühere Antwort</translation>
    </message>
    <message>
        <source>what can be chosen, where not every limit can hold</source>
        <translation>was gewählt werden kann, wenn nicht jede Grenze halten kann</translation>
    </message>
    <message>
        <source>how it turned out</source>
        <translation>wie es geworden ist</translation>
    </message>
    <message>
        <source>to be read from afar, and back</source>
        <translation>von weitem zu lesen, und zurück</translation>
    </message>
    <message>
        <source>print the run as it stands</source>
        <translation>den Lauf drucken, wie er steht</translation>
    </message>
    <message>
        <source>Lanes: what to do now, and how long is left</source>
        <translation>Bahnen: was jetzt zu tun ist, und wie lange noch</translation>
    </message>
    <message>
        <source>At the top is the one thing to do. Do it, then press the large button or Enter. Times count from the moment you press.</source>
        <translation>Oben steht das eine, was zu tun ist. Tun Sie es, dann drücken Sie den großen Knopf oder Enter. Die Zeiten zählen ab dem Drücken.</translation>
    </message>
    <message>
        <source>Each lane is a zone. The large digits count down to what comes next for it; with a plus they count how long it is overdue.</source>
        <translation>Jede Bahn ist eine Zone. Die großen Ziffern zählen herunter bis zu dem, was für sie als Nächstes kommt; mit einem Plus zählen sie, wie lange es überfällig ist.</translation>
    </message>
    <message>
        <source>When an alarm fills the window: do what it says, then answer it. It sounds until then. Pressed late or by mistake? Say that it was earlier, or undo it; the plan is made again.</source>
        <translation>Wenn ein Alarm das Fenster füllt: Tun Sie, was er sagt, dann beantworten Sie ihn. Bis dahin ertönt er. Zu spät oder aus Versehen gedrückt? Sagen Sie, dass es früher war, oder nehmen Sie es zurück; der Plan wird neu gemacht.</translation>
    </message>
    <message>
        <source>Next: once all is rinsed and dry, say how it turned out and put the run away. Its record card is kept.</source>
        <translation>Danach: Wenn alles ausgespült und trocken ist, sagen Sie, wie es geworden ist, und legen Sie den Lauf weg. Seine Karteikarte bleibt.</translation>
    </message>
    <message>
        <source>Filled as far as it has developed. The upright line is now.</source>
        <translation>Gefüllt, so weit es eingewirkt hat. Die senkrechte Linie ist jetzt.</translation>
    </message>
    <message>
        <source>An eye: look at the hair. With a tick: done.</source>
        <translation>Ein Auge: das Haar ansehen. Mit Haken: erledigt.</translation>
    </message>
    <message>
        <source>Record cards: what was done, and how it turned out</source>
        <translation>Karteikarten: was getan wurde, und wie es geworden ist</translation>
    </message>
    <message>
        <source>Every run that was ended has a card: what each zone got, when it went on and when water came, what was seen, and how it turned out.</source>
        <translation>Jeder beendete Lauf hat eine Karte: was jede Zone bekam, wann es aufgetragen wurde und wann Wasser kam, was gesehen wurde, und wie es geworden ist.</translation>
    </message>
    <message>
        <source>Next: start the next coat from a card. What was noted for next time stays in view there.</source>
        <translation>Danach: Beginnen Sie den nächsten Durchgang mit einer Karte. Was für das nächste Mal notiert wurde, bleibt dort im Blick.</translation>
    </message>
    <message>
        <source>The strands as they really went.</source>
        <translation>Die Strähnen, wie sie wirklich verliefen.</translation>
    </message>
    <message>
        <source>Dashes: where the first plan had them.</source>
        <translation>Striche: wo der erste Plan sie hatte.</translation>
    </message>
    <message>
        <source>start the next coat from it</source>
        <translation>den nächsten Durchgang damit beginnen</translation>
    </message>
    <message>
        <source>print it, save it as a PDF</source>
        <translation>drucken, als PDF speichern</translation>
    </message>
    <message>
        <source>another card</source>
        <translation>eine andere Karte</translation>
    </message>
    <message>
        <source>read on in this help, and back</source>
        <translation>in dieser Hilfe weiterlesen, und zurück</translation>
    </message>
    <message>
        <source>this help, and away with it</source>
        <translation>diese Hilfe, und wieder weg</translation>
    </message>
    <message>
        <source>a short tour on a demo</source>
        <translation>ein kurzer Rundgang mit einem Beispiel</translation>
    </message>
    <message>
        <source>open, save</source>
        <translation>öffnen, speichern</translation>
    </message>
    <message>
        <source>Sound check: what each alarm sounds like</source>
        <translation>Tonprobe: wie jeder Alarm klingt</translation>
    </message>
    <message>
        <source>Play each alarm and listen from where you work, at the basin too, with the water running and the dryer on.</source>
        <translation>Spielen Sie jeden Alarm ab und hören Sie von dort, wo Sie arbeiten, auch vom Waschbecken aus, bei laufendem Wasser und eingeschaltetem Föhn.</translation>
    </message>
    <message>
        <source>If you heard them all, say so: then only water, a limit, or a step that is left standing fills the screen. Until somebody has said so, every step that is due fills it at once.</source>
        <translation>Wenn Sie alle gehört haben, sagen Sie es: Dann füllt nur Wasser, eine Grenze oder ein Schritt, der liegen bleibt, den Bildschirm. Bis jemand es gesagt hat, füllt ihn jeder fällige Schritt sofort.</translation>
    </message>
    <message>
        <source>If you hear nothing: look for the volume, the loudspeaker and its cable. You can go on without sound and watch the screen.</source>
        <translation>Wenn Sie nichts hören: Sehen Sie nach Lautstärke, Lautsprecher und Kabel. Sie können ohne Ton weitermachen und den Bildschirm im Blick behalten.</translation>
    </message>
    <message>
        <source>Next: start the lanes. The check can be made again at any time, from the menu.</source>
        <translation>Danach: Starten Sie die Bahnen. Die Tonprobe lässt sich jederzeit über das Menü wiederholen.</translation>
    </message>
    <message>
        <source>play an alarm, from the softest to the loudest</source>
        <translation>einen Alarm abspielen, vom leisesten bis zum lautesten</translation>
    </message>
    <message>
        <source>they were heard</source>
        <translation>sie wurden gehört</translation>
    </message>
    <message>
        <source>what to do where nothing is heard</source>
        <translation>was zu tun ist, wenn nichts zu hören ist</translation>
    </message>
    <message>
        <source>go on without sound</source>
        <translation>ohne Ton weitermachen</translation>
    </message>
</context>
<context>
    <name>Journal</name>
    <message>
        <source>There is no such run.</source>
        <translation>Diesen Lauf gibt es nicht.</translation>
    </message>
    <message>
        <source>The run is still open. End it before erasing it.</source>
        <translation>Der Lauf ist noch offen. Beenden Sie ihn, bevor Sie ihn löschen.</translation>
    </message>
    <message>
        <source>The journal %1 is damaged (%2). It has been left as it is. Bring back a copy of it, or give another folder with --data.</source>
        <translation>Das Protokoll %1 ist beschädigt (%2). Es blieb, wie es ist. Holen Sie eine Kopie zurück, oder geben Sie mit --data einen anderen Ordner an.</translation>
    </message>
    <message>
        <source>Another program has %1 open and locked. Close it, or give another folder with --data.</source>
        <translation>Ein anderes Programm hat %1 geöffnet und gesperrt. Schließen Sie es, oder geben Sie mit --data einen anderen Ordner an.</translation>
    </message>
    <message>
        <source>The journal %1 failed: %2.</source>
        <translation>Das Protokoll %1 versagte: %2.</translation>
    </message>
    <message>
        <source>There is no space left to write %1. Free some space on that disk, or give another folder with --data.</source>
        <translation>Es ist kein Platz mehr, um %1 zu schreiben. Schaffen Sie Platz auf diesem Datenträger, oder geben Sie mit --data einen anderen Ordner an.</translation>
    </message>
    <message>
        <source>%1 may not be written. Allow this user to write there, or give another folder with --data.</source>
        <translation>%1 darf nicht beschrieben werden. Erlauben Sie diesem Benutzer, dort zu schreiben, oder geben Sie mit --data einen anderen Ordner an.</translation>
    </message>
    <message>
        <source>%1 cannot be used (%2). Give another folder with --data.</source>
        <translation>%1 kann nicht verwendet werden (%2). Geben Sie mit --data einen anderen Ordner an.</translation>
    </message>
    <message>
        <source>Nothing can be kept meanwhile: if the program stops, its run is lost. Write down when each application began.</source>
        <translation>Inzwischen kann nichts aufbewahrt werden: Hält das Programm an, ist sein Lauf verloren. Schreiben Sie auf, wann jedes Auftragen begann.</translation>
    </message>
    <message>
        <source>The journal was damaged. It was set aside, untouched, as %1 and a new one begun. Runs in the old one cannot be taken up again.</source>
        <translation>Das Protokoll war beschädigt. Es wurde unberührt als %1 beiseitegelegt und ein neues begonnen. Läufe im alten können nicht wieder aufgenommen werden.</translation>
    </message>
    <message>
        <source>The journal was written by a newer Basinbell (layout %1, this one knows %2). Use the newer program, or give another folder with --data.</source>
        <translation>Das Protokoll stammt von einem neueren Basinbell (Aufbau %1, dieses kennt %2). Verwenden Sie das neuere Programm, oder geben Sie mit --data einen anderen Ordner an.</translation>
    </message>
    <message>
        <source>The journal is damaged: %1.</source>
        <translation>Das Protokoll ist beschädigt: %1.</translation>
    </message>
    <message>
        <source>The file is not a journal of Basinbell.</source>
        <translation>Die Datei ist kein Protokoll von Basinbell.</translation>
    </message>
    <message>
        <source>The journal knows no run %1.</source>
        <translation>Das Protokoll kennt keinen Lauf %1.</translation>
    </message>
    <message>
        <source>Run %1 is damaged in the journal: its record %2 is missing or was changed. It cannot be taken up again; the journal has been left as it is.</source>
        <translation>Lauf %1 ist im Protokoll beschädigt: Sein Eintrag %2 fehlt oder wurde geändert. Er kann nicht wieder aufgenommen werden; das Protokoll blieb, wie es ist.</translation>
    </message>
    <message>
        <source>The journal %1 was cut off.</source>
        <translation>Das Protokoll %1 wurde abgeschnitten.</translation>
    </message>
</context>
<context>
    <name>KeepAwake</name>
    <message>
        <source>Lanes are running</source>
        <translation>Bahnen laufen</translation>
    </message>
</context>
<context>
    <name>LastAnswer</name>
    <message>
        <source>started</source>
        <translation>begonnen</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>looked, again later</source>
        <translation>kontrolliert, später wieder</translation>
    </message>
    <message>
        <source>looked</source>
        <translation>kontrolliert</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>the run was ended</source>
        <translation>der Lauf wurde beendet</translation>
    </message>
    <message>
        <source>what is planned was changed</source>
        <translation>das Geplante wurde geändert</translation>
    </message>
    <message>
        <source>Heat on %1</source>
        <translation>Wärme an %1</translation>
    </message>
    <message>
        <source>Heat off %1</source>
        <translation>Wärme ab %1</translation>
    </message>
    <message>
        <source>For next time %1: %2</source>
        <translation>Fürs nächste Mal %1: %2</translation>
    </message>
    <message>
        <source>%1 turned out %2 %3</source>
        <translation>%1 ist geworden: %2 %3</translation>
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
        <translation>Fürs nächste Mal: %1</translation>
    </message>
    <message>
        <source>Last time, %1: %2</source>
        <comment>day, what was said</comment>
        <translation>Letztes Mal, %1: %2</translation>
    </message>
</context>
<context>
    <name>Options</name>
    <message>
        <source>Plans the staggered start of a hair colour service and times its lanes.</source>
        <translation>Plant den gestaffelten Beginn einer Haarfärbung und misst ihre Bahnen.</translation>
    </message>
    <message>
        <source>The service to open; several are planned together, a head each.</source>
        <translation>Der Auftrag, der geöffnet wird; mehrere werden zusammen geplant, je ein Kopf.</translation>
    </message>
    <message>
        <source>Keep the journal and the window&apos;s state in DIR.</source>
        <translation>Das Protokoll und den Zustand des Fensters in DIR aufbewahren.</translation>
    </message>
    <message>
        <source>Let N seconds pass in one. For demonstrations: alarms come faster too.</source>
        <translation>N Sekunden in einer vergehen lassen. Für Vorführungen: Auch Alarme kommen schneller.</translation>
    </message>
    <message>
        <source>Take up the latest unfinished run, however long ago it was begun.</source>
        <translation>Den letzten unbeendeten Lauf aufnehmen, wie lange er auch her ist.</translation>
    </message>
    <message>
        <source>Open the demo.</source>
        <translation>Das Beispiel öffnen.</translation>
    </message>
    <message>
        <source>Speak the language CODE this time: %1.</source>
        <translation>Diesmal die Sprache CODE verwenden: %1.</translation>
    </message>
    <message>
        <source>--language %1: it must be one of %2.</source>
        <translation>--language %1: Möglich sind %2.</translation>
    </message>
    <message>
        <source>--speed %1: it must be a number from 0.01 to 1000000.</source>
        <translation>--speed %1: Es muss eine Zahl von 0.01 bis 1000000 sein.</translation>
    </message>
    <message>
        <source>There is no screen to show the window on. Start it on a desktop (or set DISPLAY), or use basinbell, which plans and leads through a run in a terminal.</source>
        <translation>Es gibt keinen Bildschirm, auf dem das Fenster erscheinen kann. Starten Sie das Programm an einem Arbeitsplatz mit Bildschirm (oder setzen Sie DISPLAY), oder nehmen Sie basinbell, das im Terminal plant und durch einen Lauf führt.</translation>
    </message>
</context>
<context>
    <name>Outcomes</name>
    <message>
        <source>as wanted</source>
        <translation>wie gewünscht</translation>
    </message>
    <message>
        <source>too light</source>
        <translation>zu hell</translation>
    </message>
    <message>
        <source>too dark</source>
        <translation>zu dunkel</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>zu warm</translation>
    </message>
    <message>
        <source>too cool (greenish)</source>
        <translation>zu kühl (grünlich)</translation>
    </message>
    <message>
        <source>uneven</source>
        <translation>ungleichmäßig</translation>
    </message>
</context>
<context>
    <name>PlaceWords</name>
    <message>
        <source>Front hairline</source>
        <translation>Haaransatz vorn</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Oberkopf</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Nape</source>
        <translation>Nacken</translation>
    </message>
    <message>
        <source>Piece 1</source>
        <translation>Teil 1</translation>
    </message>
    <message>
        <source>Piece 2</source>
        <translation>Teil 2</translation>
    </message>
    <message>
        <source>Piece 3</source>
        <translation>Teil 3</translation>
    </message>
    <message>
        <source>Piece 4</source>
        <translation>Teil 4</translation>
    </message>
    <message>
        <source>roots</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>mids</source>
        <translation>Längen</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>Spitzen</translation>
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
        <translation>%1 bis zu %2 min dauert (oder nur %3)</translation>
    </message>
    <message numerus="yes">
        <source>%n heads together: begin %1, done %2.</source>
        <translation>
            <numerusform>%n Kopf: Beginn %1, fertig %2.</numerusform>
            <numerusform>%n Köpfe zusammen: Beginn %1, fertig %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Begin %1, done %2.</source>
        <translation>Beginn %1, fertig %2.</translation>
    </message>
    <message>
        <source> Every zone gets its target.</source>
        <translation> Jede Zone erreicht ihr Ziel.</translation>
    </message>
    <message>
        <source> Some zones miss their target, all keep their limits.</source>
        <translation> Einige Zonen verfehlen ihr Ziel, alle halten ihre Grenzen ein.</translation>
    </message>
    <message>
        <source> There may be a better plan: the search was stopped.</source>
        <translation> Es kann einen besseren Plan geben: Die Suche wurde abgebrochen.</translation>
    </message>
    <message>
        <source> Not every plan was tried: another may hold further.</source>
        <translation> Nicht jeder Plan wurde versucht: Ein anderer kann weiter halten.</translation>
    </message>
    <message>
        <source>Holds only for the usual times of applying: where one takes longer or shorter, a limit may be missed.</source>
        <translation>Hält nur für die üblichen Auftragszeiten: Dauert eine länger oder kürzer, kann eine Grenze verfehlt werden.</translation>
    </message>
    <message>
        <source>Holds even if %1; beyond that a limit may be missed.</source>
        <translation>Hält auch, wenn %1; darüber hinaus kann eine Grenze verfehlt werden.</translation>
    </message>
    <message>
        <source>Holds even if %1.</source>
        <translation>Hält auch, wenn %1.</translation>
    </message>
    <message>
        <source>Forecast, with applying anywhere from quickest to slowest: every zone stays inside its limits %1. A chance, not a promise.</source>
        <translation>Prognose, wenn das Auftragen irgendwo zwischen am schnellsten und am langsamsten dauert: Jede Zone bleibt in ihren Grenzen: %1. Eine Chance, kein Versprechen.</translation>
    </message>
    <message>
        <source>, from %1 to %2</source>
        <translation>, von %1 bis %2</translation>
    </message>
    <message>
        <source>; and: </source>
        <translation>; und: </translation>
    </message>
    <message>
        <source>Then every zone gets its target, from %1 to %2.</source>
        <translation>Dann erreicht jede Zone ihr Ziel, von %1 bis %2.</translation>
    </message>
    <message>
        <source>Then it fits from %1 to %2, off target by %3 zone-minutes in all.</source>
        <translation>Dann passt es von %1 bis %2, insgesamt %3 Zonenminuten neben dem Ziel.</translation>
    </message>
</context>
<context>
    <name>PreparationText</name>
    <message>
        <source>not checked</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>heard</source>
        <translation>gehört</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>none, watch the screen</source>
        <translation>keiner, auf den Bildschirm achten</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>Skin and strand tests</source>
        <translation>Haut- und Strähnentest</translation>
    </message>
    <message>
        <source>Strand test</source>
        <translation>Strähnentest</translation>
    </message>
    <message>
        <source>Gloves, apron, air</source>
        <translation>Handschuhe, Schürze, Luft</translation>
    </message>
    <message>
        <source>Bowls in order</source>
        <translation>Schalen in Reihenfolge</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>said at %1</source>
        <translation>gesagt um %1</translation>
    </message>
    <message>
        <source>%1; said at %2</source>
        <translation>%1; gesagt um %2</translation>
    </message>
    <message>
        <source>Play each alarm and listen from where you work. As long as nobody has heard them, every step that is due fills the screen at once.</source>
        <translation>Spielen Sie jeden Alarm ab und hören Sie von Ihrem Arbeitsplatz aus zu. Solange niemand sie gehört hat, füllt jeder fällige Schritt sofort den Bildschirm.</translation>
    </message>
    <message>
        <source>Which tests there are, when they are made and who reads them is said by the product&apos;s leaflet, by local rules and by licensed practice. Having them written down here makes nothing safe.</source>
        <translation>Welche Tests es gibt, wann sie gemacht werden und wer sie abliest, sagen die Gebrauchsanweisung des Produkts, örtliche Vorschriften und die zugelassene Berufspraxis. Dass sie hier stehen, macht nichts sicher.</translation>
    </message>
    <message>
        <source>Try what is mixed on a strand of this hair first, as the product&apos;s leaflet says.</source>
        <translation>Probieren Sie die Mischung zuerst an einer Strähne dieses Haars, wie es die Gebrauchsanweisung des Produkts sagt.</translation>
    </message>
    <message>
        <source>Gloves and apron on, fresh air in the room, and eyes covered while powder is mixed. The product&apos;s leaflet and local rules say what else is needed.</source>
        <translation>Handschuhe und Schürze an, frische Luft im Raum und Augenschutz, solange Pulver gemischt wird. Was sonst noch nötig ist, sagen die Gebrauchsanweisung des Produkts und örtliche Vorschriften.</translation>
    </message>
    <message>
        <source>Set bowls, brushes and what goes into them out in the order of mixing. There is no plan yet that gives the order.</source>
        <translation>Stellen Sie Schalen, Pinsel und was hineinkommt in der Reihenfolge des Mischens bereit. Noch gibt es keinen Plan, der die Reihenfolge sagt.</translation>
    </message>
    <message>
        <source>Set bowls, brushes and what goes into them out in this order: %1. A bowl ages from when it is mixed, so mix each at its time.</source>
        <translation>Stellen Sie Schalen, Pinsel und was hineinkommt in dieser Reihenfolge bereit: %1. Eine Schale altert, sobald sie gemischt ist; mischen Sie jede zu ihrer Zeit.</translation>
    </message>
    <message>
        <source>Listen …</source>
        <translation>Anhören …</translation>
    </message>
    <message>
        <source>Made and read</source>
        <translation>Gemacht und abgelesen</translation>
    </message>
    <message>
        <source>All there</source>
        <translation>Alles da</translation>
    </message>
    <message>
        <source>Set out</source>
        <translation>Bereitgestellt</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 um %2</translation>
    </message>
    <message>
        <source>%1, ready by %2</source>
        <translation>%1, fertig bis %2</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Still open (F4): %1. You can start all the same.</source>
        <translation>Noch offen (F4): %1. Beginnen geht trotzdem.</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>%1 was not written: %2. What was there before is as it was.</source>
        <translation>%1 wurde nicht geschrieben: %2. Was vorher da war, ist unverändert.</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>service, head</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, times in %2</source>
        <translation>%1, Zeiten in %2</translation>
    </message>
    <message>
        <source>. The clocks change while this lasts; +01:00 and the like is the distance from UTC</source>
        <translation>. Währenddessen werden die Uhren umgestellt; +01:00 und Ähnliches ist der Abstand zu UTC</translation>
    </message>
    <message>
        <source>%1. As it stood at %2</source>
        <translation>%1. Wie es um %2 stand</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>coat, what</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>goes on</source>
        <translation>läuft</translation>
    </message>
    <message>
        <source>by the hands that apply %1</source>
        <translation>von der Person, die %1 aufträgt</translation>
    </message>
    <message>
        <source>basin %1</source>
        <translation>Waschbecken %1</translation>
    </message>
    <message>
        <source>then %1 by itself</source>
        <translation>danach %1 von allein</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>Der Reihe nach</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Really</source>
        <translation>Tatsächlich</translation>
    </message>
    <message>
        <source>counted from the first strand</source>
        <translation>gezählt ab der ersten Strähne</translation>
    </message>
    <message>
        <source>the first strand carries it %1 of at most %2</source>
        <translation>die erste Strähne trägt es %1 von höchstens %2</translation>
    </message>
    <message>
        <source>the last strand carries it %1 of at least %2</source>
        <translation>die letzte Strähne trägt es %1 von mindestens %2</translation>
    </message>
    <message>
        <source>rinsed by itself</source>
        <translation>für sich ausgespült</translation>
    </message>
    <message>
        <source>Limits, and what is expected (in minutes)</source>
        <translation>Grenzen, und was zu erwarten ist (in Minuten)</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Goes on</source>
        <translation>Wird aufgetragen</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>Develops</source>
        <translation>Wirkt ein</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>moments</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>minutes, how far off target</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>binnen %1</translation>
    </message>
    <message>
        <source>Bowls, in the order in which they are mixed</source>
        <translation>Schalen, in der Reihenfolge des Mischens</translation>
    </message>
    <message>
        <source>Mix at</source>
        <translation>Mischen um</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Verwenden</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Was hineinkommt</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>There is no unfinished run to take up.</source>
        <translation>Es gibt keinen unbeendeten Lauf, der aufgenommen werden kann.</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>PgUp</source>
        <translation>Bild auf</translation>
    </message>
    <message>
        <source>PgDown</source>
        <translation>Bild ab</translation>
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
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>service, head</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Record card. %1, %2 to %3, times in %4</source>
        <translation>Karteikarte. %1, %2 bis %3, Zeiten in %4</translation>
    </message>
    <message>
        <source>. Not ended yet</source>
        <translation>. Noch nicht beendet</translation>
    </message>
    <message>
        <source>Nothing of this was begun.</source>
        <translation>Davon wurde nichts begonnen.</translation>
    </message>
    <message>
        <source>%1 (planned %2)</source>
        <translation>%1 (geplant %2)</translation>
    </message>
    <message>
        <source>What each zone got (in minutes; dashed in the picture: as first planned)</source>
        <translation>Was jede Zone bekam (in Minuten; im Bild gestrichelt: wie zuerst geplant)</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>First strand</source>
        <translation>Erste Strähne</translation>
    </message>
    <message>
        <source>Last strand</source>
        <translation>Letzte Strähne</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mind.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Höchst.</translation>
    </message>
    <message>
        <source>Developed</source>
        <translation>Eingewirkt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>minutes, how far off target</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>How it turned out</source>
        <translation>Wie es geworden ist</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Gesagt</translation>
    </message>
    <message>
        <source>For next time: %1</source>
        <translation>Fürs nächste Mal: %1</translation>
    </message>
    <message>
        <source>What was mixed</source>
        <translation>Was gemischt wurde</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Gemischt</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Was hineinkommt</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gelassen</translation>
    </message>
    <message>
        <source>again in %1</source>
        <translation>wieder in %1</translation>
    </message>
    <message>
        <source>rinsed now</source>
        <translation>sofort ausgespült</translation>
    </message>
    <message>
        <source>Looks, heat, and what was left out</source>
        <translation>Kontrollen, Wärme, und was ausgelassen wurde</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Um</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Came of it</source>
        <translation>Ergab</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>%1 kontrollieren</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>no end said</source>
        <translation>kein Ende gesagt</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>Changed while it went on</source>
        <translation>Währenddessen geändert</translation>
    </message>
    <message>
        <source>Said before the start</source>
        <translation>Vor dem Start gesagt</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
</context>
<context>
    <name>Results</name>
    <message>
        <source>on target</source>
        <translation>am Ziel</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 zu kurz</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>%1 zu lang</translation>
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
    <name>ServiceFiles</name>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 kann nicht gelesen werden: %2.</translation>
    </message>
    <message>
        <source>%1 was not saved: %2. What was there before is as it was.</source>
        <translation>%1 wurde nicht gespeichert: %2. Was vorher dort war, ist unverändert.</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>The clock of this machine agrees with this run again.</source>
        <translation>Die Uhr dieses Rechners stimmt wieder mit diesem Lauf überein.</translation>
    </message>
    <message>
        <source>The clock of this machine was set, or is wrong: it is %1 ahead of this run.</source>
        <translation>Die Uhr dieses Rechners wurde verstellt oder geht falsch: Sie ist diesem Lauf %1 voraus.</translation>
    </message>
    <message>
        <source>The clock of this machine was set, or is wrong: it is %1 behind this run.</source>
        <translation>Die Uhr dieses Rechners wurde verstellt oder geht falsch: Sie ist %1 hinter diesem Lauf.</translation>
    </message>
    <message>
        <source>Nothing is lost: the run goes on by the time that really passes, and by the clock as it was.</source>
        <translation>Nichts ist verloren: Der Lauf geht nach der Zeit weiter, die wirklich vergeht, und nach der Uhr, wie sie war.</translation>
    </message>
    <message>
        <source>This run is damaged in the journal: its service was changed there. It cannot be taken up again; the journal has been left as it is.</source>
        <translation>Dieser Lauf ist im Protokoll beschädigt: Sein Auftrag wurde dort geändert. Er kann nicht wieder aufgenommen werden; das Protokoll blieb, wie es ist.</translation>
    </message>
    <message>
        <source>This run goes by the time of day and cannot be played at another speed.</source>
        <translation>Dieser Lauf geht nach der Tageszeit und kann nicht in anderem Tempo abgespielt werden.</translation>
    </message>
    <message>
        <source>The clock of this machine shows an earlier time than when this run was last answered. Put the clock right and start again, or every time that is shown will be wrong.</source>
        <translation>Die Uhr dieses Rechners zeigt eine frühere Zeit als bei der letzten Antwort dieses Laufs. Stellen Sie die Uhr richtig und starten Sie neu, sonst ist jede gezeigte Zeit falsch.</translation>
    </message>
    <message>
        <source>This machine was started anew since this run was last led, so the run goes by the machine&apos;s clock again. If that clock is wrong, so is every time that is shown.</source>
        <translation>Dieser Rechner wurde seit diesem Lauf neu gestartet, daher geht der Lauf wieder nach der Uhr des Rechners. Geht sie falsch, ist auch jede gezeigte Zeit falsch.</translation>
    </message>
    <message numerus="yes">
        <source>Leaving this run loses its last %n answers: the journal could not be written.</source>
        <translation>
            <numerusform>Wer diesen Lauf verlässt, verliert seine letzte Antwort: Das Protokoll konnte nicht geschrieben werden.</numerusform>
            <numerusform>Wer diesen Lauf verlässt, verliert seine letzten %n Antworten: Das Protokoll konnte nicht geschrieben werden.</numerusform>
        </translation>
    </message>
    <message>
        <source>The journal can be written again, and everything of this run is in it.</source>
        <translation>Das Protokoll kann wieder geschrieben werden, und alles von diesem Lauf steht darin.</translation>
    </message>
    <message>
        <source>This run goes on, but what is answered now is lost if the program stops. It is written as soon as that is possible again.</source>
        <translation>Dieser Lauf geht weiter, aber was jetzt beantwortet wird, ist verloren, wenn das Programm anhält. Es wird geschrieben, sobald das wieder möglich ist.</translation>
    </message>
    <message>
        <source>The service of this run was erased, so it cannot be taken up again.</source>
        <translation>Der Auftrag dieses Laufs wurde gelöscht, daher kann er nicht wieder aufgenommen werden.</translation>
    </message>
    <message>
        <source>The service of this run cannot be read any more: %1</source>
        <translation>Der Auftrag dieses Laufs kann nicht mehr gelesen werden: %1</translation>
    </message>
    <message>
        <source>This run is damaged in the journal: its service was changed there, so it cannot be told again.</source>
        <translation>Dieser Lauf ist im Protokoll beschädigt: Sein Auftrag wurde dort geändert, deshalb lässt er sich nicht mehr wiedergeben.</translation>
    </message>
    <message>
        <source>Of a run that is over only how it turned out can be said.</source>
        <translation>Von einem Lauf, der vorbei ist, lässt sich nur sagen, wie es geworden ist.</translation>
    </message>
    <message>
        <source>This run was erased. Nothing can be said of it any more.</source>
        <translation>Dieser Lauf wurde gelöscht. Von ihm lässt sich nichts mehr sagen.</translation>
    </message>
</context>
<context>
    <name>Speech</name>
    <message>
        <source>S&amp;peak the alarms</source>
        <translation>Alarme &amp;vorlesen</translation>
    </message>
    <message>
        <source>Alarms are spoken.</source>
        <translation>Alarme werden vorgelesen.</translation>
    </message>
    <message>
        <source>%1 (no voice was found)</source>
        <translation>%1 (keine Stimme gefunden)</translation>
    </message>
</context>
<context>
    <name>StartText</name>
    <message>
        <source>water %1 instead of %2</source>
        <translation>Wasser %1 statt %2</translation>
    </message>
    <message>
        <source>water of %1 %2 instead of %3</source>
        <translation>Wasser für %1 %2 statt %3</translation>
    </message>
    <message>
        <source>%1 develops %2 min instead of %3 min</source>
        <translation>%1 wirkt %2 min statt %3 min ein</translation>
    </message>
    <message numerus="yes">
        <source>%n zones more develop for another time</source>
        <translation>
            <numerusform>%n weitere Zone wirkt anders lange ein</numerusform>
            <numerusform>%n weitere Zonen wirken anders lange ein</numerusform>
        </translation>
    </message>
    <message>
        <source>begin %1 instead of %2</source>
        <translation>Beginn %1 statt %2</translation>
    </message>
    <message>
        <source>done %1 instead of %2</source>
        <translation>fertig %1 statt %2</translation>
    </message>
    <message>
        <source>Every zone gets its target.</source>
        <translation>Jede Zone erreicht ihr Ziel.</translation>
    </message>
    <message>
        <source>Off target by %1 zone-minutes in all, as before.</source>
        <translation>Insgesamt %1 Zonenminuten neben dem Ziel, wie zuvor.</translation>
    </message>
    <message>
        <source>Off target by %1 zone-minutes in all, %2 before; every limit holds.</source>
        <translation>Insgesamt %1 Zonenminuten neben dem Ziel, zuvor %2; jede Grenze hält.</translation>
    </message>
    <message>
        <source>%1 starts %2, as planned</source>
        <translation>%1 beginnt %2, wie geplant</translation>
    </message>
    <message>
        <source>%1 starts %2 instead of %3</source>
        <translation>%1 beginnt %2 statt %3</translation>
    </message>
    <message>
        <source>%1; nothing else changes.</source>
        <translation>%1; sonst ändert sich nichts.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Applying may be less off its usual times.</source>
        <translation>Das Auftragen darf weniger von seinen üblichen Zeiten abweichen.</translation>
    </message>
    <message>
        <source>%1 cannot start later than %2.</source>
        <translation>%1 kann nicht später als %2 beginnen.</translation>
    </message>
    <message>
        <source>%1 cannot start later than %2: %3.</source>
        <translation>%1 kann nicht später als %2 beginnen: %3.</translation>
    </message>
    <message>
        <source>%1 starts %2 by itself; only a later start can be chosen.</source>
        <translation>%1 beginnt von selbst %2; wählen lässt sich nur ein späterer Beginn.</translation>
    </message>
    <message>
        <source>With %1 not before %2 nothing fits: %3.</source>
        <translation>Mit %1 nicht vor %2 passt nichts: %3.</translation>
    </message>
    <message>
        <source>%1 not before %2</source>
        <translation>%1 nicht vor %2</translation>
    </message>
    <message>
        <source>%1 whenever is best</source>
        <translation>%1 wann immer es am besten ist</translation>
    </message>
</context>
<context>
    <name>StartingPoints</name>
    <message>
        <source>Regrowth and ends</source>
        <translation>Nachwuchs und Spitzen</translation>
    </message>
    <message>
        <source>Regrowth colour</source>
        <translation>Farbe Nachwuchs</translation>
    </message>
    <message>
        <source>Ends colour</source>
        <translation>Farbe Spitzen</translation>
    </message>
    <message>
        <source>Regrowth</source>
        <translation>Nachwuchs</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Spitzen</translation>
    </message>
    <message>
        <source>Emulsify</source>
        <translation>Emulgieren</translation>
    </message>
    <message>
        <source>Root with mids and ends</source>
        <translation>Ansatz mit Längen und Spitzen</translation>
    </message>
    <message>
        <source>Root colour</source>
        <translation>Farbe Ansatz</translation>
    </message>
    <message>
        <source>Mids toner</source>
        <translation>Tönung Längen</translation>
    </message>
    <message>
        <source>Ends toner</source>
        <translation>Tönung Spitzen</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Mids</source>
        <translation>Längen</translation>
    </message>
    <message>
        <source>Lightener in sections</source>
        <translation>Blondierung in Partien</translation>
    </message>
    <message>
        <source>Lightener, first bowl</source>
        <translation>Blondierung, erste Schale</translation>
    </message>
    <message>
        <source>Lightener, second bowl</source>
        <translation>Blondierung, zweite Schale</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Back left</source>
        <translation>Hinten links</translation>
    </message>
    <message>
        <source>Back right</source>
        <translation>Hinten rechts</translation>
    </message>
    <message>
        <source>Side left</source>
        <translation>Seite links</translation>
    </message>
    <message>
        <source>Side right</source>
        <translation>Seite rechts</translation>
    </message>
    <message>
        <source>All over, with a fill first</source>
        <translation>Ganzer Kopf, vorher pigmentieren</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Vorpigment</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Vorpigmentieren</translation>
    </message>
    <message>
        <source>All over</source>
        <translation>Ganzer Kopf</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>All-over colour</source>
        <translation>Farbe ganzer Kopf</translation>
    </message>
    <message>
        <source>Times are common practice: put in those of the product&apos;s leaflet.</source>
        <translation>Die Zeiten sind gängige Praxis: Tragen Sie die der Gebrauchsanweisung ein.</translation>
    </message>
    <message>
        <source>&amp;Regrowth and ends</source>
        <translation>Nach&amp;wuchs und Spitzen</translation>
    </message>
    <message>
        <source>R&amp;oot with mids and ends</source>
        <translation>&amp;Ansatz mit Längen und Spitzen</translation>
    </message>
    <message>
        <source>&amp;Lightener in sections</source>
        <translation>&amp;Blondierung in Partien</translation>
    </message>
    <message>
        <source>&amp;All over, with a fill first</source>
        <translation>&amp;Ganzer Kopf, vorher pigmentieren</translation>
    </message>
</context>
<context>
    <name>Strands</name>
    <message>
        <source>Water %1</source>
        <translation>Wasser %1</translation>
    </message>
    <message>
        <source>Now %1</source>
        <translation>Jetzt %1</translation>
    </message>
    <message>
        <source>%1 min · %2 to %3</source>
        <translation>%1 min · %2 bis %3</translation>
    </message>
</context>
<context>
    <name>Text</name>
    <message>
        <source>process %1</source>
        <translation>Prozess %1</translation>
    </message>
    <message>
        <source>process %1 of %2</source>
        <comment>of a user</comment>
        <translation>Prozess %1 von %2</translation>
    </message>
    <message>
        <source>Another Basinbell%1 is using the folder %2. Close it first, or give this one a folder of its own with --data.</source>
        <translation>Ein anderes Basinbell%1 verwendet den Ordner %2. Schließen Sie es zuerst, oder geben Sie diesem mit --data einen eigenen Ordner.</translation>
    </message>
</context>
<context>
    <name>Tones</name>
    <message>
        <source>still orange</source>
        <translation>noch orange</translation>
    </message>
    <message>
        <source>still yellow</source>
        <translation>noch gelb</translation>
    </message>
    <message>
        <source>pale yellow</source>
        <translation>hellgelb</translation>
    </message>
    <message>
        <source>patchy</source>
        <translation>fleckig</translation>
    </message>
    <message>
        <source>even</source>
        <translation>gleichmäßig</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>zu warm</translation>
    </message>
    <message>
        <source>turning ashy</source>
        <translation>wird aschig</translation>
    </message>
    <message>
        <source>turning green</source>
        <translation>wird grünlich</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Apply %1</source>
        <translation>%1 auftragen</translation>
    </message>
    <message>
        <source>Mix %1</source>
        <translation>%1 mischen</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>%1 kontrollieren</translation>
    </message>
    <message>
        <source>Rinse %1</source>
        <translation>%1 ausspülen</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocknen</translation>
    </message>
    <message>
        <source>Judge the result</source>
        <translation>Ergebnis beurteilen</translation>
    </message>
    <message>
        <source>Heat over the head</source>
        <translation>Wärme über dem Kopf</translation>
    </message>
    <message>
        <source>Applying %1</source>
        <translation>%1 wird aufgetragen</translation>
    </message>
    <message>
        <source>Mixing %1</source>
        <translation>%1 wird gemischt</translation>
    </message>
    <message>
        <source>Rinsing %1</source>
        <translation>%1 wird ausgespült</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Trocknen</translation>
    </message>
    <message>
        <source>Judging the result</source>
        <translation>Ergebnis wird beurteilt</translation>
    </message>
    <message>
        <source>Take the heat off</source>
        <translation>Wärme wegnehmen</translation>
    </message>
    <message>
        <source>Water is on</source>
        <translation>Wasser läuft</translation>
    </message>
    <message>
        <source>First strand is covered</source>
        <translation>Erste Strähne bedeckt</translation>
    </message>
    <message>
        <source>Mixing has begun</source>
        <translation>Mischen hat begonnen</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>All of %1 is on</source>
        <translation>%1 ganz aufgetragen</translation>
    </message>
    <message>
        <source>It is mixed</source>
        <translation>Ist gemischt</translation>
    </message>
    <message>
        <source>Rinsed out</source>
        <translation>Ausgespült</translation>
    </message>
    <message>
        <source>Dryer is off my hands</source>
        <translation>Trockner braucht mich nicht mehr</translation>
    </message>
    <message>
        <source>Heat is off</source>
        <translation>Wärme ist weg</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>due %1 min ago</source>
        <translation>seit %1 min fällig</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>whose, what</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>All done</source>
        <translation>Alles fertig</translation>
    </message>
    <message>
        <source>Nothing to do just now</source>
        <translation>Gerade nichts zu tun</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Jetzt: %1</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>the latest safe start was %1, %2 ago</source>
        <translation>der späteste sichere Beginn war %1, vor %2</translation>
    </message>
    <message>
        <source>, if all takes as usual</source>
        <translation>, wenn alles wie üblich dauert</translation>
    </message>
    <message>
        <source>at the latest %1, %2</source>
        <translation>spätestens %1, %2</translation>
    </message>
    <message>
        <source>latest was %1</source>
        <translation>spätestens war %1</translation>
    </message>
    <message>
        <source>, if as usual</source>
        <translation>, wenn wie üblich</translation>
    </message>
    <message>
        <source>latest %1, %2</source>
        <translation>spätestens %1, %2</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>being applied</source>
        <translation>wird aufgetragen</translation>
    </message>
    <message>
        <source>developing</source>
        <translation>wirkt ein</translation>
    </message>
    <message>
        <source>under water</source>
        <translation>unter Wasser</translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation>ausgespült</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>late to apply</source>
        <translation>zu spät zum Auftragen</translation>
    </message>
    <message>
        <source>until you apply</source>
        <translation>bis zum Auftragen</translation>
    </message>
    <message>
        <source>longer than planned</source>
        <translation>länger als geplant</translation>
    </message>
    <message>
        <source>of applying left</source>
        <translation>Auftragen übrig</translation>
    </message>
    <message>
        <source>past planned water</source>
        <translation>nach geplantem Wasser</translation>
    </message>
    <message>
        <source>until water</source>
        <translation>bis Wasser</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bald</translation>
    </message>
    <message>
        <source>late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>%1 is past its limit</source>
        <translation>%1: Grenze überschritten</translation>
    </message>
    <message>
        <source>%1 nears its limit</source>
        <translation>%1: Grenze nahe</translation>
    </message>
    <message>
        <source>Soon: %1</source>
        <translation>Bald: %1</translation>
    </message>
    <message>
        <source>Should be done: %1</source>
        <translation>Sollte fertig sein: %1</translation>
    </message>
    <message>
        <source>Look now: %1</source>
        <translation>Jetzt kontrollieren: %1</translation>
    </message>
    <message>
        <source>Rinse now: %1</source>
        <translation>Jetzt ausspülen: %1</translation>
    </message>
    <message>
        <source>Due now.</source>
        <translation>Jetzt fällig.</translation>
    </message>
    <message>
        <source>Waiting for you: %1 min.</source>
        <translation>Wartet auf Sie: %1 min.</translation>
    </message>
    <message>
        <source>Also: %1.</source>
        <translation>Außerdem: %1.</translation>
    </message>
    <message>
        <source>Soon: %1, strand test</source>
        <translation>Bald: %1, Strähnentest</translation>
    </message>
    <message>
        <source>%1: strand test</source>
        <translation>%1: Strähnentest</translation>
    </message>
    <message>
        <source>Soon: rinse %1</source>
        <translation>Bald: %1 ausspülen</translation>
    </message>
    <message>
        <source>%1: has it ended?</source>
        <translation>%1: Ist es beendet?</translation>
    </message>
    <message>
        <source>Carry on with the least harm</source>
        <translation>Mit dem geringsten Schaden weitermachen</translation>
    </message>
    <message>
        <source>Every limit holds</source>
        <translation>Jede Grenze wird eingehalten</translation>
    </message>
    <message>
        <source>1 limit is passed by %1</source>
        <translation>1 Grenze wird um %1 überschritten</translation>
    </message>
    <message numerus="yes">
        <source>%n limits are passed by %1 in all</source>
        <translation>
            <numerusform>%n Grenze wird um %1 überschritten</numerusform>
            <numerusform>%n Grenzen werden um insgesamt %1 überschritten</numerusform>
        </translation>
    </message>
    <message>
        <source>  ·  zone-minutes: %1 short, %2 past the targets</source>
        <translation>  ·  Zonenminuten: %1 zu kurz, %2 über den Zielen</translation>
    </message>
    <message>
        <source>every time</source>
        <translation>jedes Mal</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>over 99 in 100</source>
        <translation>über 99 von 100</translation>
    </message>
    <message>
        <source>under 1 in 100</source>
        <translation>unter 1 von 100</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <source>%1 min, at least %2, at most %3</source>
        <translation>%1 min, mindestens %2, höchstens %3</translation>
    </message>
</context>
<context>
    <name>ZoneColumns</name>
    <message>
        <source>Bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>The mixture it is applied from</source>
        <translation>Die Mischung, aus der aufgetragen wird</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Spülen</translation>
    </message>
    <message>
        <source>The rinse group it goes under the water with</source>
        <translation>Die Spülgruppe, mit der sie unter das Wasser kommt</translation>
    </message>
    <message>
        <source>all applied</source>
        <translation>alles aufgetragen</translation>
    </message>
    <message>
        <source>first strand</source>
        <translation>erste Strähne</translation>
    </message>
    <message>
        <source>Counts from</source>
        <translation>Zählt ab</translation>
    </message>
    <message>
        <source>When the leaflet starts to count development</source>
        <translation>Ab wann die Gebrauchsanweisung die Einwirkzeit zählt</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>Alone</source>
        <translation>Allein</translation>
    </message>
    <message>
        <source>Can be rinsed without wetting its neighbours</source>
        <translation>Kann ausgespült werden, ohne die Nachbarn nass zu machen</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Minutes of development to aim at</source>
        <translation>Angestrebte Minuten Einwirkzeit</translation>
    </message>
    <message>
        <source>First look</source>
        <translation>1. Kontrolle</translation>
    </message>
    <message>
        <source>Minutes of development at the first strand test; empty for none</source>
        <translation>Minuten Einwirkzeit beim ersten Strähnentest; leer für keinen</translation>
    </message>
    <message>
        <source>Then every</source>
        <translation>Dann alle</translation>
    </message>
    <message>
        <source>Minutes between looks; empty for one look</source>
        <translation>Minuten zwischen den Kontrollen; leer für eine einzige</translation>
    </message>
    <message>
        <source>A look</source>
        <translation>Dauer Kontrolle</translation>
    </message>
    <message>
        <source>Minutes that one look takes</source>
        <translation>Minuten, die eine Kontrolle dauert</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>Zones that must be applied before it</source>
        <translation>Zonen, die vorher aufgetragen sein müssen</translation>
    </message>
    <message>
        <source>Name zones of this coat, with commas between them.</source>
        <translation>Nennen Sie Zonen dieses Durchgangs, mit Kommas dazwischen.</translation>
    </message>
    <message>
        <source>%1 %2, %3 before water</source>
        <comment>a job, how long it takes, when</comment>
        <translation>%1 %2, %3 vor Wasser</translation>
    </message>
    <message>
        <source>Late jobs</source>
        <translation>Späte Arbeiten</translation>
    </message>
    <message>
        <source>Hands-on jobs tied to the rinse, such as: Emulsify 2, 5 before water</source>
        <translation>Handarbeiten vor dem Ausspülen, etwa: Emulgieren 2, 5 vor Wasser</translation>
    </message>
    <message>
        <source>Type the job, its minutes, and how many minutes before water it starts: Emulsify 2, 5 before water. A semicolon stands between several.</source>
        <translation>Geben Sie die Arbeit ein, ihre Minuten und wie viele Minuten vor Wasser sie beginnt: Emulgieren 2, 5 vor Wasser. Zwischen mehreren steht ein Strichpunkt.</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>What this part of the head is called</source>
        <translation>Wie dieser Teil des Kopfes heißt</translation>
    </message>
    <message>
        <source>Quickest</source>
        <translation>Schnellst.</translation>
    </message>
    <message>
        <source>Minutes to apply at the quickest</source>
        <translation>Minuten zum Auftragen, wenn es am schnellsten geht</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>Minutes to apply as a rule</source>
        <translation>Minuten zum Auftragen in der Regel</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>Langsamst.</translation>
    </message>
    <message>
        <source>Minutes to apply at the slowest</source>
        <translation>Minuten zum Auftragen, wenn es am langsamsten geht</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mind.</translation>
    </message>
    <message>
        <source>Fewest minutes of development, from the leaflet</source>
        <translation>Wenigste Minuten Einwirkzeit, laut Gebrauchsanweisung</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Höchst.</translation>
    </message>
    <message>
        <source>Most minutes of development, from the leaflet</source>
        <translation>Meiste Minuten Einwirkzeit, laut Gebrauchsanweisung</translation>
    </message>
    <message>
        <source>First strand</source>
        <translation>Erste Strähne</translation>
    </message>
    <message>
        <source>Most minutes the first strand may carry the mixture, until water</source>
        <translation>Meiste Minuten, die die erste Strähne die Mischung tragen darf, bis Wasser</translation>
    </message>
    <message>
        <source>Last strand</source>
        <translation>Letzte Strähne</translation>
    </message>
    <message>
        <source>Fewest minutes the last strand must carry it, until water</source>
        <translation>Wenigste Minuten, die die letzte Strähne sie tragen muss, bis Wasser</translation>
    </message>
    <message>
        <source>Applying, min</source>
        <translation>Auftragen, min</translation>
    </message>
    <message>
        <source>Development, min</source>
        <translation>Einwirken, min</translation>
    </message>
    <message>
        <source>Looks, min</source>
        <translation>Kontrollen, min</translation>
    </message>
    <message>
        <source>Rinsing</source>
        <translation>Ausspülen</translation>
    </message>
    <message>
        <source>Until water, min</source>
        <translation>Bis zum Wasser, min</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Beginnt</translation>
    </message>
</context>
<context>
    <name>app::desktop::AlertPanel</name>
    <message>
        <source>%1  (Enter)</source>
        <translation>%1  (Enter)</translation>
    </message>
    <message>
        <source>Water is on %1</source>
        <translation>Wasser läuft auf %1</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Begonnen</translation>
    </message>
</context>
<context>
    <name>app::desktop::BasicsPanel</name>
    <message>
        <source>&amp;Ready by</source>
        <translation>&amp;Fertig um</translation>
    </message>
    <message>
        <source>the service&apos;s name</source>
        <translation>Name des Auftrags</translation>
    </message>
    <message>
        <source>what is coloured</source>
        <translation>was gefärbt wird</translation>
    </message>
    <message>
        <source>the time to spare</source>
        <translation>Pufferzeit</translation>
    </message>
    <message>
        <source>the basins</source>
        <translation>Waschbecken</translation>
    </message>
    <message>
        <source>a person</source>
        <translation>einer Person</translation>
    </message>
    <message>
        <source>a wig</source>
        <translation>einer Perücke</translation>
    </message>
    <message>
        <source>wefts</source>
        <translation>Tressen</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation>Fertig um</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <comment>a day, as QDate::toString writes it</comment>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>Ser&amp;vice</source>
        <translation>Auft&amp;rag</translation>
    </message>
    <message>
        <source>&amp;On</source>
        <translation>A&amp;n</translation>
    </message>
    <message>
        <source>S&amp;pare</source>
        <translation>&amp;Puffer</translation>
    </message>
    <message>
        <source>&amp;Basins</source>
        <translation>Bec&amp;ken</translation>
    </message>
    <message>
        <source>when it is ready</source>
        <translation>wann es fertig ist</translation>
    </message>
    <message>
        <source>a time to be ready by</source>
        <translation>eine Zeit, zu der es fertig ist</translation>
    </message>
    <message>
        <source>no time to be ready by</source>
        <translation>keine Zeit, zu der es fertig ist</translation>
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
        <translation>Karteikarte</translation>
    </message>
</context>
<context>
    <name>app::desktop::CautionsDialog</name>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>The leaflet of the product comes first</source>
        <translation>Die Gebrauchsanweisung des Produkts geht vor</translation>
    </message>
    <message>
        <source>I have read them, go on  (Enter)</source>
        <translation>Gelesen, weiter  (Enter)</translation>
    </message>
    <message>
        <source>Close  (Enter)</source>
        <translation>Schließen  (Enter)</translation>
    </message>
    <message>
        <source>Not yet  (Esc)</source>
        <translation>Noch nicht  (Esc)</translation>
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
        <translation>vor %1 min</translation>
    </message>
    <message>
        <source>Cautions  (F2)</source>
        <translation>Warnhinweise  (F2)</translation>
    </message>
    <message>
        <source>End this run …</source>
        <translation>Lauf beenden …</translation>
    </message>
    <message>
        <source>Last: %1</source>
        <translation>Zuletzt: %1</translation>
    </message>
    <message>
        <source>Undo it  (Ctrl+Z)</source>
        <translation>Rückgängig  (Strg+Z)</translation>
    </message>
    <message>
        <source>Undo (Ctrl+Z)</source>
        <translation>Zurück (Strg+Z)</translation>
    </message>
    <message>
        <source>It was earlier …  (E)</source>
        <translation>Es war früher …  (E)</translation>
    </message>
    <message>
        <source>Earlier (E)</source>
        <translation>Früher (E)</translation>
    </message>
    <message>
        <source>More …  (M)</source>
        <translation>Mehr …  (M)</translation>
    </message>
    <message>
        <source>More (M)</source>
        <translation>Mehr (M)</translation>
    </message>
    <message>
        <source>Quiet 2 min  (Q)</source>
        <translation>2 min still  (Q)</translation>
    </message>
    <message>
        <source>Quiet (Q)</source>
        <translation>Still (Q)</translation>
    </message>
    <message>
        <source>From afar  (F)</source>
        <translation>Von weitem  (F)</translation>
    </message>
    <message>
        <source>Afar (F)</source>
        <translation>Weit (F)</translation>
    </message>
</context>
<context>
    <name>app::desktop::DesktopNotice</name>
    <message>
        <source>Show the lanes</source>
        <translation>Bahnen zeigen</translation>
    </message>
</context>
<context>
    <name>app::desktop::FileMenu</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Zuletzt &amp;geöffnet</translation>
    </message>
    <message>
        <source>&amp;Demo</source>
        <translation>Bei&amp;spiel</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>&amp;Open …</source>
        <translation>&amp;Öffnen …</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as …</source>
        <translation>Speichern &amp;unter …</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>Before the premiere: three heads</source>
        <translation>Vor der Premiere: drei Köpfe</translation>
    </message>
    <message>
        <source>From &amp;files …</source>
        <translation>Aus &amp;Dateien …</translation>
    </message>
    <message>
        <source>A &amp;new one</source>
        <translation>Ein &amp;neuer</translation>
    </message>
    <message>
        <source>The &amp;same once more</source>
        <translation>Der&amp;selbe noch einmal</translation>
    </message>
    <message>
        <source>From a s&amp;tarting point</source>
        <translation>Aus einer &amp;Vorlage</translation>
    </message>
    <message>
        <source>A &amp;demo</source>
        <translation>Ein &amp;Beispiel</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Noch nichts</translation>
    </message>
    <message>
        <source>Service files (*.json)</source>
        <translation>Auftragsdateien (*.json)</translation>
    </message>
    <message>
        <source>Open a service, or several that share a crew</source>
        <translation>Auftrag öffnen, oder mehrere mit gemeinsamem Team</translation>
    </message>
    <message>
        <source>Add heads</source>
        <translation>Köpfe hinzufügen</translation>
    </message>
    <message>
        <source>Beside what is here?</source>
        <translation>Neben dem, was da ist?</translation>
    </message>
    <message>
        <source>Plan it together with what is here, or open it in its place?</source>
        <translation>Zusammen mit dem planen, was da ist, oder an seiner Stelle öffnen?</translation>
    </message>
    <message>
        <source>Plan together</source>
        <translation>Zusammen planen</translation>
    </message>
    <message>
        <source>Open in its place</source>
        <translation>An seiner Stelle öffnen</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation>Nicht geöffnet</translation>
    </message>
    <message>
        <source>%1 is not a service that can be opened.</source>
        <translation>%1 ist kein Auftrag, der geöffnet werden kann.</translation>
    </message>
    <message>
        <source>Save the service</source>
        <translation>Auftrag speichern</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>Something is marked as wrong. Put it right first: a file that cannot be opened again is of no use.</source>
        <translation>Etwas ist als falsch markiert. Berichtigen Sie es zuerst: Eine Datei, die sich nicht mehr öffnen lässt, nützt nichts.</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>These have changes that are not saved: %1.</source>
        <translation>Diese haben Änderungen, die nicht gespeichert sind: %1.</translation>
    </message>
    <message>
        <source>Add a &amp;head</source>
        <translation>&amp;Kopf hinzufügen</translation>
    </message>
    <message>
        <source>New, &amp;from a starting point</source>
        <translation>Neu aus einer &amp;Vorlage</translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadDrawing</name>
    <message>
        <source>Pieces of hair</source>
        <translation>Haarteile</translation>
    </message>
    <message>
        <source>The head from the side and from behind</source>
        <translation>Der Kopf von der Seite und von hinten</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: no zone</source>
        <translation>%1: keine Zone</translation>
    </message>
    <message>
        <source>Press to take it from %1</source>
        <translation>Drücken, um sie %1 zu nehmen</translation>
    </message>
    <message>
        <source>Press to give it to %1</source>
        <translation>Drücken, um sie %1 zu geben</translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadPanel</name>
    <message>
        <source>Choose a zone, then press where it is. The table of zones does not need it: nothing is planned by it.</source>
        <translation>Wählen Sie eine Zone, dann drücken Sie, wo sie ist. Die Tabelle der Zonen braucht es nicht: Danach wird nichts geplant.</translation>
    </message>
    <message numerus="yes">
        <source>on %n place(s)</source>
        <translation>
            <numerusform>an einer Stelle</numerusform>
            <numerusform>an %n Stellen</numerusform>
        </translation>
    </message>
    <message>
        <source>where %1 is</source>
        <translation>wo %1 ist</translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadsBar</name>
    <message>
        <source>Take this head out</source>
        <translation>Diesen Kopf entfernen</translation>
    </message>
    <message>
        <source>These times are common practice, not those of a product. Put in what the product&apos;s leaflet says, and say so with its bowl.</source>
        <translation>Diese Zeiten sind gängige Praxis, nicht die eines Produkts. Tragen Sie ein, was die Gebrauchsanweisung sagt, und vermerken Sie es bei der Schale.</translation>
    </message>
    <message>
        <source>Heads</source>
        <translation>Köpfe</translation>
    </message>
    <message>
        <source>Name of the head</source>
        <translation>Name des Kopfes</translation>
    </message>
    <message>
        <source>What prompts and alarms call this head. It is not kept in the record of a run.</source>
        <translation>Wie Aufforderungen und Alarme diesen Kopf nennen. Es bleibt nicht in der Aufzeichnung eines Laufs.</translation>
    </message>
    <message>
        <source>Add a head</source>
        <translation>Kopf hinzufügen</translation>
    </message>
    <message>
        <source>Ca&amp;lled</source>
        <translation>H&amp;eißt</translation>
    </message>
    <message>
        <source>the head&apos;s name</source>
        <translation>Name des Kopfes</translation>
    </message>
    <message>
        <source>%1 (something is wrong)</source>
        <translation>%1 (etwas stimmt nicht)</translation>
    </message>
</context>
<context>
    <name>app::desktop::HelpMenu</name>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>This &amp;page</source>
        <translation>Diese &amp;Seite</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Warnhinweise</translation>
    </message>
    <message>
        <source>A short &amp;tour (not while lanes run)</source>
        <translation>Ein kurzer &amp;Rundgang (nicht während Bahnen laufen)</translation>
    </message>
    <message>
        <source>A short &amp;tour</source>
        <translation>Ein kurzer &amp;Rundgang</translation>
    </message>
</context>
<context>
    <name>app::desktop::HelpSheet</name>
    <message>
        <source>Close  (Esc)</source>
        <translation>Schließen  (Esc)</translation>
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
        <translation>Kontrolle %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>, seen: %1</source>
        <translation>, gesehen: %1</translation>
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
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, next %2</source>
        <translation>%1, nächste %2</translation>
    </message>
</context>
<context>
    <name>app::desktop::LanesPage</name>
    <message>
        <source>Try the sound  (F3)</source>
        <translation>Ton prüfen  (F3)</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>Gelesen</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>Gut</translation>
    </message>
    <message>
        <source>End that run …</source>
        <translation>Diesen Lauf beenden …</translation>
    </message>
    <message>
        <source>Let it sound  (Shift+Q)</source>
        <translation>Tönen lassen  (Umschalt+Q)</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>%1  ·  coat %2 of %3: %4</source>
        <translation>%1  ·  Durchgang %2 von %3: %4</translation>
    </message>
    <message>
        <source>Planned again: %1</source>
        <translation>Neu geplant: %1</translation>
    </message>
    <message>
        <source>The plan is being worked out anew; until then the one before goes on.</source>
        <translation>Der Plan wird neu ausgearbeitet; bis dahin gilt der vorige.</translation>
    </message>
    <message>
        <source>No alarm can be heard. %1 Keep the screen in view.</source>
        <translation>Kein Alarm ist zu hören. %1 Behalten Sie den Bildschirm im Blick.</translation>
    </message>
    <message>
        <source>%1, silent until %2</source>
        <translation>%1, still bis %2</translation>
    </message>
    <message>
        <source>Applying %1 stopped; the rest is a zone of its own.</source>
        <translation>Auftragen von %1 abgebrochen; der Rest ist eine eigene Zone.</translation>
    </message>
    <message>
        <source>%1 is rinsed by itself.</source>
        <translation>%1 wird allein ausgespült.</translation>
    </message>
    <message>
        <source>%1 is away for %2 min.</source>
        <translation>%1 ist %2 min abwesend.</translation>
    </message>
    <message>
        <source>%1 has come to help.</source>
        <translation>%1 hilft jetzt mit.</translation>
    </message>
    <message>
        <source>%1 has gone.</source>
        <translation>%1 ist gegangen.</translation>
    </message>
    <message>
        <source>%1 is given up.</source>
        <translation>%1 ist aufgegeben.</translation>
    </message>
    <message>
        <source>Heat is on. What it does to the mixtures only the product&apos;s leaflet says.</source>
        <translation>Wärme ist an. Was sie mit den Mischungen macht, sagt nur die Gebrauchsanweisung.</translation>
    </message>
    <message>
        <source>Heat is off.</source>
        <translation>Wärme ist weg.</translation>
    </message>
    <message>
        <source>%1 is a zone more.</source>
        <translation>%1 ist eine weitere Zone.</translation>
    </message>
    <message>
        <source>That answer was taken back.</source>
        <translation>Diese Antwort wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>That answer was put %1 min earlier.</source>
        <translation>Diese Antwort wurde %1 min früher gesetzt.</translation>
    </message>
    <message>
        <source>That answer is about %1 now.</source>
        <translation>Diese Antwort gilt jetzt %1.</translation>
    </message>
    <message>
        <source>Heat since %1</source>
        <translation>Wärme seit %1</translation>
    </message>
    <message>
        <source>, to be taken off at %1</source>
        <translation>, wegzunehmen um %1</translation>
    </message>
    <message>
        <source>The windows and alarms stay those without heat; where the leaflet gives times with heat, go by those.</source>
        <translation>Zeitfenster und Alarme bleiben die ohne Wärme; nennt die Gebrauchsanweisung Zeiten mit Wärme, gelten diese.</translation>
    </message>
    <message>
        <source>Chosen: %1.</source>
        <translation>Gewählt: %1.</translation>
    </message>
    <message>
        <source>Say it  (O)</source>
        <translation>Sagen  (O)</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Nicht jetzt</translation>
    </message>
    <message>
        <source>It is over. How did it turn out?</source>
        <translation>Es ist geschafft. Wie ist es geworden?</translation>
    </message>
    <message>
        <source>%1: how did it turn out?</source>
        <translation>%1: Wie ist es geworden?</translation>
    </message>
</context>
<context>
    <name>app::desktop::LookChoices</name>
    <message>
        <source>A minute sooner</source>
        <translation>Eine Minute früher</translation>
    </message>
    <message>
        <source>A minute later</source>
        <translation>Eine Minute später</translation>
    </message>
    <message>
        <source>Tone seen</source>
        <translation>Gesehener Ton</translation>
    </message>
    <message>
        <source>Leave it on  (1)</source>
        <translation>Drauflassen  (1)</translation>
    </message>
    <message>
        <source>Leave %1 on  (1)</source>
        <translation>%1 drauflassen  (1)</translation>
    </message>
    <message>
        <source>Leave (1)</source>
        <translation>Lassen (1)</translation>
    </message>
    <message>
        <source>Look again in %1 min  (2)</source>
        <translation>In %1 min wieder  (2)</translation>
    </message>
    <message>
        <source>%1 min (2)</source>
        <translation>%1 min (2)</translation>
    </message>
    <message numerus="yes">
        <source>Leave all %n on  (4)</source>
        <translation>
            <numerusform>Alle drauflassen  (4)</numerusform>
            <numerusform>Alle %n drauflassen  (4)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n (4)</source>
        <translation>
            <numerusform>Alle (4)</numerusform>
            <numerusform>Alle %n (4)</numerusform>
        </translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>Tone seen  (T)</source>
        <translation>Ton gesehen  (T)</translation>
    </message>
    <message>
        <source>Rinse (3)</source>
        <translation>Spülen (3)</translation>
    </message>
    <message>
        <source>Rinse, short (3)</source>
        <translation>Spülen, kurz (3)</translation>
    </message>
    <message>
        <source>Rinse, spreads (3)</source>
        <translation>Spülen, nässt (3)</translation>
    </message>
    <message>
        <source>Rinse %1 now  (3)</source>
        <translation>%1 jetzt spülen  (3)</translation>
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
        <translation>nässt</translation>
    </message>
    <message>
        <source>wets its neighbours</source>
        <translation>macht Nachbarn nass</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 zu kurz</translation>
    </message>
    <message>
        <source>%1 short of its least</source>
        <translation>%1 unter dem Mindesten</translation>
    </message>
    <message>
        <source>Leave it on</source>
        <translation>Drauflassen</translation>
    </message>
    <message>
        <source>Look again
in %1 min</source>
        <translation>Wieder ansehen
in %1 min</translation>
    </message>
    <message>
        <source>Rinse now</source>
        <translation>Jetzt spülen</translation>
    </message>
    <message>
        <source>Leave %1 on</source>
        <translation>%1 drauflassen</translation>
    </message>
    <message>
        <source>Look again at %1 in %2 min</source>
        <translation>%1 in %2 min wieder ansehen</translation>
    </message>
    <message>
        <source>Rinse %1 now</source>
        <translation>%1 jetzt spülen</translation>
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
        <translation>Vorbereitung  (Strg+1)</translation>
    </message>
    <message>
        <source>Lanes  (Ctrl+2)</source>
        <translation>Bahnen  (Strg+2)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Lauf</translation>
    </message>
    <message>
        <source>&amp;Start the lanes</source>
        <translation>Bahnen &amp;starten</translation>
    </message>
    <message>
        <source>Sound &amp;check …</source>
        <translation>&amp;Tonprobe …</translation>
    </message>
    <message>
        <source>&amp;End this run …</source>
        <translation>Lauf &amp;beenden …</translation>
    </message>
    <message>
        <source>not saved anywhere yet</source>
        <translation>noch nirgends gespeichert</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1, geändert</translation>
    </message>
    <message>
        <source>Undo my last answer</source>
        <translation>Meine letzte Antwort rückgängig</translation>
    </message>
    <message>
        <source>Undo %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Redo %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>Taken up where it stopped. If something happened meanwhile, answer it and say how long ago it was.</source>
        <translation>Aufgenommen, wo er aufgehört hat. Ist inzwischen etwas geschehen, beantworten Sie es und sagen Sie, wie lange es her ist.</translation>
    </message>
    <message>
        <source>A run was left unfinished</source>
        <translation>Ein Lauf blieb unbeendet</translation>
    </message>
    <message>
        <source>It was begun long ago. Taken up now, everything in it is overdue and sounds at once.</source>
        <translation>Er wurde vor langer Zeit begonnen. Wird er jetzt aufgenommen, ist alles darin überfällig und tönt auf einmal.</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>End it for good</source>
        <translation>Endgültig beenden</translation>
    </message>
    <message>
        <source>Leave it for later</source>
        <translation>Für später lassen</translation>
    </message>
    <message>
        <source>End this run</source>
        <translation>Lauf beenden</translation>
    </message>
    <message>
        <source>End this run for good? Nothing sounds any more, and it cannot be taken up again.</source>
        <translation>Diesen Lauf endgültig beenden? Es tönt nichts mehr, und er kann nicht wieder aufgenommen werden.</translation>
    </message>
    <message>
        <source>End it</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Keep it running</source>
        <translation>Weiterlaufen lassen</translation>
    </message>
    <message>
        <source>Basinbell</source>
        <translation>Basinbell</translation>
    </message>
    <message>
        <source>Lanes are running</source>
        <translation>Bahnen laufen</translation>
    </message>
    <message>
        <source>Close the window while lanes run? No alarm sounds until it is opened again; the run is kept and goes on then.</source>
        <translation>Fenster schließen, während Bahnen laufen? Kein Alarm tönt, bis es wieder geöffnet wird; der Lauf bleibt erhalten und geht dann weiter.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Keep it open</source>
        <translation>Offen lassen</translation>
    </message>
    <message>
        <source>&amp;How it turned out …</source>
        <translation>&amp;Wie es geworden ist …</translation>
    </message>
    <message>
        <source>&amp;Before the start</source>
        <translation>&amp;Vor dem Start</translation>
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
        <translation>Welches Auftragen endet, bevor es fertig ist? Der Rest wird eine eigene Zone.</translation>
    </message>
    <message>
        <source>Which zone is rinsed by itself when its time comes? Its neighbours must stay dry.</source>
        <translation>Welche Zone wird zu ihrer Zeit allein ausgespült? Ihre Nachbarn müssen trocken bleiben.</translation>
    </message>
    <message>
        <source>Who is away?</source>
        <translation>Wer ist abwesend?</translation>
    </message>
    <message>
        <source>Who has gone for good?</source>
        <translation>Wer ist ganz gegangen?</translation>
    </message>
    <message>
        <source>Which zone is it like? It has the same bowl, window and looks.</source>
        <translation>Welcher Zone gleicht sie? Sie hat dieselbe Schale, dasselbe Zeitfenster und dieselben Kontrollen.</translation>
    </message>
    <message>
        <source>Applying %1 stops</source>
        <translation>Auftragen von %1 endet</translation>
    </message>
    <message>
        <source>Applying stops</source>
        <translation>Auftragen endet</translation>
    </message>
    <message>
        <source>It stops before it is done; the rest becomes a zone of its own, applied later.</source>
        <translation>Es endet, bevor es fertig ist; der Rest wird eine eigene Zone und später aufgetragen.</translation>
    </message>
    <message>
        <source>Rinse a zone by itself …</source>
        <translation>Zone allein spülen …</translation>
    </message>
    <message>
        <source>A zone more …</source>
        <translation>Eine weitere Zone …</translation>
    </message>
    <message>
        <source>Heat …</source>
        <translation>Wärme …</translation>
    </message>
    <message>
        <source>Heat is on …</source>
        <translation>Wärme ist an …</translation>
    </message>
    <message>
        <source>Heat is off</source>
        <translation>Wärme ist weg</translation>
    </message>
    <message>
        <source>An earlier answer …</source>
        <translation>Eine frühere Antwort …</translation>
    </message>
    <message>
        <source>Give up this coat …</source>
        <translation>Durchgang aufgeben …</translation>
    </message>
    <message>
        <source>Away …</source>
        <translation>Abwesend …</translation>
    </message>
    <message>
        <source>Somebody comes …</source>
        <translation>Jemand kommt …</translation>
    </message>
    <message>
        <source>Somebody has gone …</source>
        <translation>Jemand ist gegangen …</translation>
    </message>
    <message>
        <source>For how long is %1 away, from now on?</source>
        <translation>Wie lange ist %1 von jetzt an abwesend?</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Who comes to help?</source>
        <translation>Wer kommt helfen?</translation>
    </message>
    <message>
        <source>Name of who comes to help</source>
        <translation>Name der Hilfe</translation>
    </message>
    <message>
        <source>Comes to help  (Enter)</source>
        <translation>Kommt helfen  (Enter)</translation>
    </message>
    <message>
        <source>Give up %1? Nothing more of it is begun; what is on the hair is still rinsed.</source>
        <translation>%1 aufgeben? Nichts davon wird mehr begonnen; was auf dem Haar ist, wird noch ausgespült.</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Aufgeben</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Which heat?</source>
        <translation>Welche Wärme?</translation>
    </message>
    <message>
        <source>%1: off</source>
        <translation>%1: aus</translation>
    </message>
    <message>
        <source>%1: on …</source>
        <translation>%1: an …</translation>
    </message>
    <message>
        <source>For how long does the heat stay, as the leaflet says? The windows and alarms stay those without heat.</source>
        <translation>Wie lange bleibt die Wärme laut Gebrauchsanweisung? Zeitfenster und Alarme bleiben die ohne Wärme.</translation>
    </message>
    <message>
        <source>That is not known</source>
        <translation>Das ist nicht bekannt</translation>
    </message>
    <message>
        <source>What is the zone like %1 called, and how long does it take to apply?</source>
        <translation>Wie heißt die Zone, die %1 gleicht, und wie lange dauert das Auftragen?</translation>
    </message>
    <message>
        <source>Name of the zone</source>
        <translation>Name der Zone</translation>
    </message>
    <message>
        <source>Minutes to apply it</source>
        <translation>Minuten zum Auftragen</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>as long as %1</source>
        <translation>so lange wie %1</translation>
    </message>
    <message>
        <source>Add it  (Enter)</source>
        <translation>Hinzufügen  (Enter)</translation>
    </message>
    <message>
        <source>Which answer was not so?</source>
        <translation>Welche Antwort stimmte nicht?</translation>
    </message>
    <message>
        <source>%1. What was so?</source>
        <translation>%1. Was stimmt?</translation>
    </message>
    <message>
        <source>It did not happen</source>
        <translation>Es ist nicht geschehen</translation>
    </message>
    <message>
        <source>%1 min earlier</source>
        <translation>%1 min früher</translation>
    </message>
    <message>
        <source>It was %1</source>
        <translation>Es war %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::NowPanel</name>
    <message>
        <source>Skip it  (Del)</source>
        <translation>Auslassen  (Entf)</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>%1  (Enter)</source>
        <translation>%1  (Enter)</translation>
    </message>
    <message>
        <source>when the hands are free</source>
        <translation>wenn die Hände frei sind</translation>
    </message>
    <message>
        <source>%1 left, until %2</source>
        <translation>noch %1, bis %2</translation>
    </message>
    <message>
        <source>planned until %1</source>
        <translation>geplant bis %1</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <translation>%1, um %2</translation>
    </message>
    <message>
        <source>holds if it takes up to %1 min</source>
        <translation>hält, wenn es bis zu %1 min dauert</translation>
    </message>
    <message>
        <source>%1 developing</source>
        <translation>wirkt %1 ein</translation>
    </message>
    <message>
        <source>All done</source>
        <translation>Alles fertig</translation>
    </message>
    <message>
        <source>Nothing to do just now</source>
        <translation>Gerade nichts zu tun</translation>
    </message>
    <message>
        <source>Every step of this run is answered.</source>
        <translation>Jeder Schritt dieses Laufs ist beantwortet.</translation>
    </message>
    <message>
        <source>Put this run away  (Enter)</source>
        <translation>Lauf weglegen  (Enter)</translation>
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
        <translation>Wie es geworden ist</translation>
    </message>
    <message>
        <source>How did %1 turn out?</source>
        <translation>Wie ist %1 geworden?</translation>
    </message>
    <message>
        <source>  It was said: %1.</source>
        <translation>  Gesagt wurde: %1.</translation>
    </message>
    <message>
        <source>In own words too, or instead  (Enter)</source>
        <translation>Auch oder nur in eigenen Worten  (Enter)</translation>
    </message>
    <message>
        <source>Go on without</source>
        <translation>Ohne weiter</translation>
    </message>
    <message>
        <source>What is to be thought of next time?</source>
        <translation>Woran ist nächstes Mal zu denken?</translation>
    </message>
    <message>
        <source>What is to be thought of next time?  It was said: %1.</source>
        <translation>Woran ist nächstes Mal zu denken?  Gesagt wurde: %1.</translation>
    </message>
    <message>
        <source>A note for next time  (Enter)</source>
        <translation>Eine Notiz fürs nächste Mal  (Enter)</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Nothing to note</source>
        <translation>Nichts zu notieren</translation>
    </message>
</context>
<context>
    <name>app::desktop::PartPanel</name>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>adding a row</source>
        <translation>Zeile hinzufügen</translation>
    </message>
    <message>
        <source>removing %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>moving %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>Zones of coat %1</source>
        <translation>Zonen von Durchgang %1</translation>
    </message>
    <message>
        <source>Bowls of coat %1</source>
        <translation>Schalen von Durchgang %1</translation>
    </message>
    <message>
        <source>Rinse groups of coat %1</source>
        <translation>Spülgruppen von Durchgang %1</translation>
    </message>
    <message>
        <source>Coats and their drying</source>
        <translation>Durchgänge und ihr Trocknen</translation>
    </message>
    <message>
        <source>Pairs of hands</source>
        <translation>Personen im Team</translation>
    </message>
</context>
<context>
    <name>app::desktop::PartTable</name>
    <message>
        <source>%1 of %2 to %3</source>
        <translation>%1 von %2 auf %3</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; was not understood. %3</source>
        <translation>%1: „%2“ wurde nicht verstanden. %3</translation>
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
        <translation>Was falsch ist</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Plant …</translation>
    </message>
    <message>
        <source>Planning … %1 s</source>
        <translation>Plant … %1 s</translation>
    </message>
    <message>
        <source>Put this right, and it is planned at once:</source>
        <translation>Berichtigen Sie dies, dann wird sofort geplant:</translation>
    </message>
</context>
<context>
    <name>app::desktop::PreparationPanel</name>
    <message>
        <source>Before the start</source>
        <translation>Vor dem Start</translation>
    </message>
    <message>
        <source>why it is skipped</source>
        <translation>warum es ausgelassen wird</translation>
    </message>
    <message>
        <source>Why it is skipped</source>
        <translation>Warum es ausgelassen wird</translation>
    </message>
    <message>
        <source>Skip it</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Not so: open again</source>
        <translation>Doch nicht: wieder offen</translation>
    </message>
    <message>
        <source>Close  (Esc)</source>
        <translation>Schließen  (Esc)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ReasonBand</name>
    <message>
        <source>Close  (Esc)</source>
        <translation>Schließen  (Esc)</translation>
    </message>
    <message>
        <source>What can be chosen</source>
        <translation>Was gewählt werden kann</translation>
    </message>
    <message>
        <source>Not every limit can hold any more. %1</source>
        <translation>Nicht jede Grenze ist noch einzuhalten. %1</translation>
    </message>
    <message>
        <source>What can be chosen is being worked out …</source>
        <translation>Was gewählt werden kann, wird ausgearbeitet …</translation>
    </message>
    <message>
        <source>Nothing was found that could be chosen.</source>
        <translation>Es wurde nichts gefunden, das gewählt werden könnte.</translation>
    </message>
    <message>
        <source>As of %1, %2 ago: by now they may come to something else. The least harm stands first.</source>
        <translation>Stand %1, vor %2: Inzwischen kann anderes herauskommen. Der geringste Schaden steht zuerst.</translation>
    </message>
    <message>
        <source>As of %1. The least harm stands first; nothing is done until you choose.</source>
        <translation>Stand %1. Der geringste Schaden steht zuerst; nichts geschieht, bis Sie wählen.</translation>
    </message>
    <message>
        <source>Work it out again  (W)</source>
        <translation>Neu ausarbeiten  (W)</translation>
    </message>
    <message>
        <source>What can be chosen  (W)</source>
        <translation>Was gewählt werden kann  (W)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ReasonPanel</name>
    <message>
        <source>Looking for what would make it fit …</source>
        <translation>Es wird gesucht, womit es passen würde …</translation>
    </message>
    <message>
        <source>No change that is known makes it fit, nor do two together.</source>
        <translation>Keine bekannte Änderung macht es passend, auch nicht zwei zusammen.</translation>
    </message>
    <message>
        <source>Each of these makes it fit: it was planned with the change. The least change comes first; the product&apos;s leaflet comes before all of them.</source>
        <translation>Jede davon macht es passend: Es wurde mit der Änderung geplant. Die kleinste kommt zuerst; die Gebrauchsanweisung geht allen vor.</translation>
    </message>
    <message>
        <source>There was no time to find what would make it fit.</source>
        <translation>Die Zeit reichte nicht, um zu finden, womit es passen würde.</translation>
    </message>
    <message>
        <source>Each of these makes it fit; there may be more. The product&apos;s leaflet comes before all of them.</source>
        <translation>Jede davon macht es passend; es kann mehr geben. Die Gebrauchsanweisung geht allen vor.</translation>
    </message>
    <message>
        <source>Why nothing fits, and what would</source>
        <translation>Warum nichts passt und was passen würde</translation>
    </message>
    <message>
        <source>The search was stopped before it was known whether anything fits.</source>
        <translation>Die Suche wurde abgebrochen, bevor bekannt war, ob etwas passt.</translation>
    </message>
    <message>
        <source>Without any one of these the others can hold together.</source>
        <translation>Ohne irgendeine davon können die anderen zusammen bestehen.</translation>
    </message>
    <message>
        <source>Not all of these may be needed for the clash.</source>
        <translation>Vielleicht sind nicht alle davon am Widerspruch beteiligt.</translation>
    </message>
</context>
<context>
    <name>app::desktop::Records</name>
    <message>
        <source>Record &amp;cards …</source>
        <translation>Ka&amp;rteikarten …</translation>
    </message>
</context>
<context>
    <name>app::desktop::RecordsWindow</name>
    <message>
        <source>Record cards – Basinbell</source>
        <translation>Karteikarten – Basinbell</translation>
    </message>
    <message>
        <source>Runs, the latest first</source>
        <translation>Läufe, der letzte zuerst</translation>
    </message>
    <message>
        <source>No run has been ended yet.

A record card is made of what is answered while the lanes run: when each zone went on and came off, what was seen, how it turned out. When the last lane is dry, end the run, and its card is here.

The demo at high speed makes one in a minute.</source>
        <translation>Noch wurde kein Lauf beendet.

Eine Karteikarte entsteht aus dem, was geantwortet wird, während die Bahnen laufen: wann jede Zone aufgetragen und ausgespült wurde, was gesehen wurde, wie es geworden ist. Wenn die letzte Bahn trocken ist, beenden Sie den Lauf, und hier ist seine Karte.

Die Demo in hoher Geschwindigkeit macht eine in einer Minute.</translation>
    </message>
    <message>
        <source>Start the next coat from it  (Alt+N)</source>
        <translation>Nächster Durchgang  (Alt+N)</translation>
    </message>
    <message>
        <source>How it turned out …  (Alt+O)</source>
        <translation>Wie es geworden ist …  (Alt+O)</translation>
    </message>
    <message>
        <source>Print …  (Ctrl+P)</source>
        <translation>Drucken …  (Strg+P)</translation>
    </message>
    <message>
        <source>PDF …  (Ctrl+S)</source>
        <translation>PDF …  (Strg+S)</translation>
    </message>
    <message>
        <source>Close  (Esc)</source>
        <translation>Schließen  (Esc)</translation>
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
beschädigt</translation>
    </message>
    <message>
        <source>%1
erased</source>
        <translation>%1
gelöscht</translation>
    </message>
    <message>
        <source>This run, so far</source>
        <translation>Dieser Lauf, bis jetzt</translation>
    </message>
    <message>
        <source>Nothing was rinsed in this run, so there is nothing that turned out.</source>
        <translation>In diesem Lauf wurde nichts ausgespült, also ist auch nichts geworden.</translation>
    </message>
</context>
<context>
    <name>app::desktop::ServiceDocument</name>
    <message>
        <source>adding %1</source>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>removing %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Heads that are planned together share one crew: that of %1 is kept, not that of %2 (%3).</source>
        <translation>Köpfe, die zusammen geplant werden, teilen ein Team: Das von %1 bleibt, nicht das von %2 (%3).</translation>
    </message>
</context>
<context>
    <name>app::desktop::SetupPage</name>
    <message>
        <source>&amp;Zones</source>
        <translation>&amp;Zonen</translation>
    </message>
    <message>
        <source>Bo&amp;wls</source>
        <translation>S&amp;chalen</translation>
    </message>
    <message>
        <source>Rinse &amp;groups</source>
        <translation>Spül&amp;gruppen</translation>
    </message>
    <message>
        <source>&amp;Coats and drying</source>
        <translation>D&amp;urchgänge und Trocknen</translation>
    </message>
    <message>
        <source>&amp;Hands</source>
        <translation>&amp;Team</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>Start the lanes  (Ctrl+Enter)</source>
        <translation>Bahnen starten  (Strg+Enter)</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Starten</translation>
    </message>
    <message>
        <source>Lanes are running. What you change here is for the next time.</source>
        <translation>Bahnen laufen. Was Sie hier ändern, gilt für das nächste Mal.</translation>
    </message>
    <message>
        <source>Once the lanes run, every answer is saved by itself.</source>
        <translation>Sobald die Bahnen laufen, wird jede Antwort von selbst gespeichert.</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Plant …</translation>
    </message>
    <message>
        <source>Nothing fits yet, so there is nothing to start.</source>
        <translation>Noch passt nichts, also gibt es nichts zu starten.</translation>
    </message>
    <message>
        <source>Something above is marked; put it right to start.</source>
        <translation>Oben ist etwas markiert; berichtigen Sie es, um zu starten.</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>O&amp;n the head</source>
        <translation>A&amp;m Kopf</translation>
    </message>
    <message>
        <source>A short tour  (Shift+F1)</source>
        <translation>Ein kurzer Rundgang  (Umschalt+F1)</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Nicht jetzt</translation>
    </message>
    <message>
        <source>New here? A short tour shows a whole service at high speed. Nothing of it is kept.</source>
        <translation>Neu hier? Ein kurzer Rundgang zeigt einen ganzen Auftrag in schneller Folge. Nichts davon wird aufbewahrt.</translation>
    </message>
</context>
<context>
    <name>app::desktop::SoundCheck</name>
    <message>
        <source>Sound check</source>
        <translation>Tonprobe</translation>
    </message>
    <message>
        <source>Can you hear every alarm from where you work?</source>
        <translation>Hören Sie jeden Alarm dort, wo Sie arbeiten?</translation>
    </message>
    <message>
        <source>Get ready  (1)</source>
        <translation>Bereitmachen  (1)</translation>
    </message>
    <message>
        <source>soft, once, ahead of time</source>
        <translation>leise, einmal, im Voraus</translation>
    </message>
    <message>
        <source>A step is due  (2)</source>
        <translation>Ein Schritt ist fällig  (2)</translation>
    </message>
    <message>
        <source>until it is answered</source>
        <translation>bis er beantwortet ist</translation>
    </message>
    <message>
        <source>A look is due  (3)</source>
        <translation>Eine Kontrolle ist fällig  (3)</translation>
    </message>
    <message>
        <source>Water is due  (4)</source>
        <translation>Wasser ist fällig  (4)</translation>
    </message>
    <message>
        <source>A limit is passed  (5)</source>
        <translation>Eine Grenze ist überschritten  (5)</translation>
    </message>
    <message>
        <source>the loudest</source>
        <translation>am lautesten</translation>
    </message>
    <message>
        <source>Not now  (Esc)</source>
        <translation>Nicht jetzt  (Esc)</translation>
    </message>
    <message>
        <source>Without sound: I watch the screen  (W)</source>
        <translation>Ohne Ton: Ich achte auf den Bildschirm  (W)</translation>
    </message>
    <message>
        <source>I hear nothing  (N)</source>
        <translation>Ich höre nichts  (N)</translation>
    </message>
    <message>
        <source>I hear them  (Enter)</source>
        <translation>Ich höre sie  (Enter)</translation>
    </message>
    <message>
        <source>Press each one. Only your ear can tell: the volume and the cable are out of sight here.</source>
        <translation>Drücken Sie jeden. Nur Ihr Ohr weiß es: Lautstärke und Kabel sind von hier nicht zu sehen.</translation>
    </message>
    <message>
        <source>Turn up the sound of this machine, look whether a loudspeaker or its cable is out, and press again. If nothing helps, go on without sound: every alarm then fills the screen.</source>
        <translation>Stellen Sie den Ton dieses Rechners lauter, sehen Sie nach, ob ein Lautsprecher oder sein Kabel abgezogen ist, und drücken Sie noch einmal. Hilft nichts, machen Sie ohne Ton weiter: Jeder Alarm füllt dann den Bildschirm.</translation>
    </message>
</context>
<context>
    <name>app::desktop::StartBar</name>
    <message>
        <source>Keep this start</source>
        <translation>Diesen Beginn behalten</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Loslassen</translation>
    </message>
    <message>
        <source>%1: planning …</source>
        <translation>%1: plant …</translation>
    </message>
</context>
<context>
    <name>app::desktop::StepButton</name>
    <message>
        <source>%1: answer it now</source>
        <translation>%1: jetzt beantworten</translation>
    </message>
    <message>
        <source>Press when this happens sooner: %1</source>
        <translation>Drücken, wenn dies früher geschieht: %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::StrandGrip</name>
    <message>
        <source>Start of %1, minutes later than planned</source>
        <translation>Beginn von %1, Minuten später als geplant</translation>
    </message>
    <message>
        <source>Pull it to see what a later start does</source>
        <translation>Ziehen zeigt, was ein späterer Beginn ausmacht</translation>
    </message>
</context>
<context>
    <name>app::desktop::StrandWidget</name>
    <message>
        <source>Strands</source>
        <translation>Strähnen</translation>
    </message>
    <message>
        <source>%1: applied from %2 to %3, water at %4, %5 min development.</source>
        <translation>%1: aufgetragen von %2 bis %3, Wasser um %4, %5 min Einwirkzeit.</translation>
    </message>
    <message>
        <source>Inside its limits %1; water from %2 to %3 in nine runs of ten.</source>
        <translation>In seinen Grenzen: %1; Wasser von %2 bis %3 in neun von zehn Läufen.</translation>
    </message>
    <message>
        <source>Wanted not before %1.</source>
        <translation>Gewünscht nicht vor %1.</translation>
    </message>
</context>
<context>
    <name>app::desktop::TourWindow</name>
    <message>
        <source>A short tour – Basinbell</source>
        <translation>Ein kurzer Rundgang – Basinbell</translation>
    </message>
    <message>
        <source>A tour: nothing of this is real. Nothing sounds, and nothing is kept.</source>
        <translation>Ein Rundgang: Nichts davon ist echt. Nichts ertönt, und nichts wird aufbewahrt.</translation>
    </message>
    <message>
        <source>Leave the tour  (Esc)</source>
        <translation>Rundgang verlassen  (Esc)</translation>
    </message>
    <message>
        <source>This is Set-up with a demo. Each strand is a zone of the hair, and all end at the rinse line: they come to the water together. The plan says when to begin each of them.</source>
        <translation>Das ist die Vorbereitung mit einem Beispiel. Jede Strähne ist eine Zone des Haars, und alle enden an der Spüllinie: Sie kommen zusammen zum Wasser. Der Plan sagt, wann jede zu beginnen ist.</translation>
    </message>
    <message>
        <source>Now it runs. At the top is the one thing to do, with one large button: do it, and press. Here Enter does, and time goes by quickly.</source>
        <translation>Jetzt läuft es. Oben steht das eine, was zu tun ist, mit einem großen Knopf: Tun Sie es, und drücken Sie. Hier tut es Enter, und die Zeit vergeht schnell.</translation>
    </message>
    <message>
        <source>Applying took four minutes longer. The plan was made again at once, and the line at the top says what changed.</source>
        <translation>Das Auftragen hat vier Minuten länger gedauert. Der Plan wurde sofort neu gemacht, und die Zeile oben sagt, was sich geändert hat.</translation>
    </message>
    <message>
        <source>A look is due, a strand test. What you see you answer with one press: leave it on, look again, or rinse this zone. Here it is left on.</source>
        <translation>Eine Kontrolle ist fällig, ein Strähnentest. Was Sie sehen, beantworten Sie mit einem Druck: drauf lassen, nochmals ansehen oder diese Zone ausspülen. Hier bleibt es drauf.</translation>
    </message>
    <message>
        <source>Water is due. An alarm like this fills the window and sounds until it is answered; all lanes stay in view below it.</source>
        <translation>Wasser ist fällig. So ein Alarm füllt das Fenster und ertönt, bis er beantwortet ist; alle Bahnen bleiben darunter im Blick.</translation>
    </message>
    <message>
        <source>All is done. Of a real run you now say how it turned out, and its record card is kept. F1 tells about each page.</source>
        <translation>Alles ist getan. Bei einem echten Lauf sagen Sie jetzt, wie es geworden ist, und seine Karteikarte bleibt. F1 erklärt jede Seite.</translation>
    </message>
    <message>
        <source>Time goes by quickly. What is asked for is answered for you.</source>
        <translation>Die Zeit vergeht schnell. Was gefragt wird, wird für Sie beantwortet.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Skip ahead  (Enter)</source>
        <translation>Vorspringen  (Enter)</translation>
    </message>
    <message>
        <source>Close the tour  (Enter)</source>
        <translation>Rundgang schließen  (Enter)</translation>
    </message>
    <message>
        <source>Go on  (Enter)</source>
        <translation>Weiter  (Enter)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ViewMenu</name>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>Hoher &amp;Kontrast</translation>
    </message>
    <message>
        <source>High contrast, d&amp;ark</source>
        <translation>Hoher Kontrast, d&amp;unkel</translation>
    </message>
    <message>
        <source>Text as &amp;usual</source>
        <translation>Text wie &amp;üblich</translation>
    </message>
    <message>
        <source>La&amp;nguage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>Text at %1 %</source>
        <translation>Text mit %1 %</translation>
    </message>
    <message>
        <source>From a&amp;far</source>
        <translation>Von &amp;weitem</translation>
    </message>
</context>
<context>
    <name>app::desktop::print::Printing</name>
    <message>
        <source>&amp;Print …</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>Save as P&amp;DF …</source>
        <translation>Als &amp;PDF speichern …</translation>
    </message>
    <message>
        <source>There is no plan yet that could be printed.</source>
        <translation>Es gibt noch keinen Plan, der sich drucken ließe.</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer does not take it.</source>
        <translation>Es wurde nichts gedruckt: Der Drucker nimmt es nicht an.</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
</context>
<context>
    <name>app::sound::AlarmPlayer</name>
    <message>
        <source>No sound can be had: no loudspeaker was found. Plug one in or switch it on, and look at the sound settings of this computer. Until then alarms are shown on the screen only.</source>
        <translation>Kein Ton möglich: Es wurde kein Lautsprecher gefunden. Schließen Sie einen an oder schalten Sie ihn ein, und sehen Sie die Toneinstellungen dieses Rechners nach. Bis dahin erscheinen Alarme nur auf dem Bildschirm.</translation>
    </message>
    <message>
        <source>The loudspeaker takes no sound. Basinbell keeps trying; unplug it and plug it in again if this lasts. Until then alarms are shown on the screen only.</source>
        <translation>Der Lautsprecher nimmt keinen Ton an. Basinbell versucht es weiter; ziehen Sie ihn ab und stecken Sie ihn wieder ein, wenn das anhält. Bis dahin erscheinen Alarme nur auf dem Bildschirm.</translation>
    </message>
    <message>
        <source>No sound can be had: the program %1 could not be started (%2). Install Basinbell again.</source>
        <translation>Kein Ton möglich: Das Programm %1 konnte nicht gestartet werden (%2). Installieren Sie Basinbell neu.</translation>
    </message>
    <message>
        <source>The sound program stopped by itself and is started again. Until then alarms are shown on the screen only.</source>
        <translation>Das Tonprogramm hat von selbst aufgehört und wird neu gestartet. Bis dahin erscheinen Alarme nur auf dem Bildschirm.</translation>
    </message>
</context>
<context>
    <name>core::measure::Sentence</name>
    <message>
        <source>No run is under way.</source>
        <translation>Es läuft kein Lauf.</translation>
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
        <translation>%1 kommt helfen</translation>
    </message>
    <message>
        <source>%1 has gone at %2</source>
        <translation>%1 ist um %2 gegangen</translation>
    </message>
    <message>
        <source>%1 is away from %2 to %3</source>
        <translation>%1 ist von %2 bis %3 abwesend</translation>
    </message>
    <message>
        <source>ready by %1</source>
        <translation>fertig um %1</translation>
    </message>
    <message>
        <source>%1 is a zone more</source>
        <translation>%1 ist eine weitere Zone</translation>
    </message>
    <message>
        <source>%1: used for up to %2</source>
        <translation>%1: bis zu %2 verwendet</translation>
    </message>
    <message>
        <source>water of %1 from %2</source>
        <translation>Wasser für %1 ab %2</translation>
    </message>
    <message>
        <source>water of %1 until %2</source>
        <translation>Wasser für %1 bis %2</translation>
    </message>
    <message>
        <source>%1: %2 %3 instead of %4</source>
        <translation>%1: %2 %3 statt %4</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>%1 is rinsed as %2</source>
        <translation>%1 wird als %2 ausgespült</translation>
    </message>
    <message>
        <source>develops at least</source>
        <translation>wirkt mindestens</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>develops at most</source>
        <translation>wirkt höchstens</translation>
    </message>
    <message>
        <source>first strand at most</source>
        <translation>erste Strähne höchstens</translation>
    </message>
    <message>
        <source>last strand at least</source>
        <translation>letzte Strähne mindestens</translation>
    </message>
    <message>
        <source>%1: other times of looks</source>
        <translation>%1: andere Zeiten der Kontrollen</translation>
    </message>
    <message>
        <source>%1: other times of its late jobs</source>
        <translation>%1: andere Zeiten der späten Arbeiten</translation>
    </message>
    <message>
        <source>%1: another gap after the zone before</source>
        <translation>%1: anderer Abstand zur Zone davor</translation>
    </message>
    <message>
        <source>applying %1 stops before it is done</source>
        <translation>Auftragen von %1 endet, bevor es fertig ist</translation>
    </message>
    <message>
        <source>%1: something is left out</source>
        <translation>%1: etwas wird ausgelassen</translation>
    </message>
    <message>
        <source>What a run has begun with cannot be taken out of it. Leave it out instead.</source>
        <translation>Womit ein Lauf begonnen hat, kann nicht herausgenommen werden. Lassen Sie es stattdessen aus.</translation>
    </message>
    <message>
        <source>There is no such task in this service. Choose one from the list.</source>
        <translation>Diese Aufgabe gibt es in diesem Auftrag nicht. Wählen Sie eine aus der Liste.</translation>
    </message>
    <message>
        <source>%1 has begun and cannot be left out.</source>
        <translation>„%1“ hat begonnen und kann nicht ausgelassen werden.</translation>
    </message>
    <message>
        <source>Only applying that is under way can be interrupted.</source>
        <translation>Nur Auftragen, das im Gang ist, kann unterbrochen werden.</translation>
    </message>
    <message>
        <source>That is before %1 started. Give a later time.</source>
        <translation>Das ist vor dem Beginn von „%1“. Geben Sie eine spätere Zeit an.</translation>
    </message>
    <message>
        <source>Nothing of this coat is left that could be given up.</source>
        <translation>Von diesem Durchgang ist nichts übrig, das aufgegeben werden könnte.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 is no longer planned</source>
        <translation>%1: nicht mehr geplant</translation>
    </message>
    <message>
        <source>%1 is planned at %2</source>
        <translation>%1: geplant um %2</translation>
    </message>
    <message>
        <source>%1 stays at %2</source>
        <translation>%1 bleibt um %2</translation>
    </message>
    <message>
        <source>%1 moves to %2 (from %3)</source>
        <translation>%1 rückt auf %2 (von %3)</translation>
    </message>
    <message>
        <source>%1 and %2 more.</source>
        <translation>%1 und %2 weitere.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>This is no answer that a run knows.</source>
        <translation>Das ist keine Antwort, die ein Lauf kennt.</translation>
    </message>
    <message>
        <source>That time is still to come. Answer when it has happened.</source>
        <translation>Diese Zeit kommt erst noch. Antworten Sie, wenn es geschehen ist.</translation>
    </message>
    <message>
        <source>That is more than a day ago. Give a time within the last 24 hours.</source>
        <translation>Das ist mehr als einen Tag her. Geben Sie eine Zeit der letzten 24 Stunden an.</translation>
    </message>
    <message>
        <source>This run was ended. Undo that to go on with it.</source>
        <translation>Dieser Lauf wurde beendet. Machen Sie das rückgängig, um weiterzumachen.</translation>
    </message>
    <message>
        <source>at most %1 development</source>
        <translation>höchstens %1 Einwirkzeit</translation>
    </message>
    <message>
        <source>first strand at most %1</source>
        <translation>erste Strähne höchstens %1</translation>
    </message>
    <message>
        <source>What was changed later builds on that. Undo the later change first.</source>
        <translation>Was später geändert wurde, baut darauf auf. Machen Sie zuerst die spätere Änderung rückgängig.</translation>
    </message>
    <message>
        <source>What was said of &apos;%1&apos; came after that change, which brought it. Undo that first.</source>
        <translation>Was über „%1“ gesagt wurde, kam nach dieser Änderung, die es gebracht hat. Machen Sie das zuerst rückgängig.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has begun since. Undo that first.</source>
        <translation>„%1“ hat seitdem begonnen. Machen Sie das zuerst rückgängig.</translation>
    </message>
    <message>
        <source>That answer does not stand any more.</source>
        <translation>Diese Antwort gilt nicht mehr.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Es gibt nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <source>That is before the heat was put on. Give a later time.</source>
        <translation>Das ist, bevor die Wärme angelegt wurde. Geben Sie eine spätere Zeit an.</translation>
    </message>
    <message>
        <source>That is after %1 ended. Give an earlier time.</source>
        <translation>Das ist nach dem Ende von „%1“. Geben Sie eine frühere Zeit an.</translation>
    </message>
    <message>
        <source>That is before the zone was applied. Give a later time.</source>
        <translation>Das ist, bevor die Zone aufgetragen wurde. Geben Sie eine spätere Zeit an.</translation>
    </message>
    <message>
        <source>There is no answer to put right.</source>
        <translation>Es gibt keine Antwort zu berichtigen.</translation>
    </message>
    <message>
        <source>Heat is on this head already. Say first that it was taken off.</source>
        <translation>An diesem Kopf ist schon Wärme. Sagen Sie zuerst, dass sie weggenommen wurde.</translation>
    </message>
    <message>
        <source>Nothing was on the hair then that heat could be for. Say first what was applied.</source>
        <translation>Damals war nichts auf dem Haar, für das Wärme sein könnte. Sagen Sie zuerst, was aufgetragen wurde.</translation>
    </message>
    <message>
        <source>Say for how many minutes the heat stays, or nothing.</source>
        <translation>Sagen Sie, wie viele Minuten die Wärme bleibt, oder nichts.</translation>
    </message>
    <message>
        <source>No heat is on this head.</source>
        <translation>An diesem Kopf ist keine Wärme.</translation>
    </message>
    <message>
        <source>Heat is never planned, so it cannot be left out.</source>
        <translation>Wärme wird nie geplant, kann also nicht ausgelassen werden.</translation>
    </message>
    <message>
        <source>%1 has not been applied yet.</source>
        <translation>%1 ist noch nicht aufgetragen.</translation>
    </message>
    <message>
        <source>%1 has been rinsed already.</source>
        <translation>%1 ist schon ausgespült.</translation>
    </message>
    <message>
        <source>That is before %1 was applied. Give a later time.</source>
        <translation>Das ist, bevor %1 aufgetragen wurde. Geben Sie eine spätere Zeit an.</translation>
    </message>
    <message>
        <source>That is no look. Choose the look that was made.</source>
        <translation>Das ist keine Kontrolle. Wählen Sie die Kontrolle, die gemacht wurde.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was answered already. To put that right, undo it.</source>
        <translation>„%1“ wurde schon beantwortet. Um das zu berichtigen, machen Sie es rückgängig.</translation>
    </message>
    <message>
        <source>There is no such look in this service. Choose one from the list.</source>
        <translation>Diese Kontrolle gibt es in diesem Auftrag nicht. Wählen Sie eine aus der Liste.</translation>
    </message>
    <message>
        <source>Say in how many minutes to look again.</source>
        <translation>Sagen Sie, in wie vielen Minuten wieder kontrolliert wird.</translation>
    </message>
    <message>
        <source>%1 is being rinsed already.</source>
        <translation>%1 wird schon ausgespült.</translation>
    </message>
    <message>
        <source>%1 is still being applied. Say first that it has ended.</source>
        <translation>%1 wird noch aufgetragen. Sagen Sie zuerst, dass das beendet ist.</translation>
    </message>
    <message>
        <source>At that time %1 was still being applied. Give a later time.</source>
        <translation>Zu dieser Zeit wurde %1 noch aufgetragen. Geben Sie eine spätere Zeit an.</translation>
    </message>
    <message>
        <source>Choose the zone to rinse.</source>
        <translation>Wählen Sie die Zone, die ausgespült wird.</translation>
    </message>
    <message>
        <source>What was seen is kept with a look. Answer the look of this zone with it.</source>
        <translation>Was zu sehen war, gehört zu einer Kontrolle. Beantworten Sie damit die Kontrolle dieser Zone.</translation>
    </message>
    <message>
        <source>That zone has nothing like &apos;%1&apos; that could have been done.</source>
        <translation>Diese Zone hat nichts wie „%1“, das hätte getan werden können.</translation>
    </message>
    <message>
        <source>There is no such answer about a zone.</source>
        <translation>Eine solche Antwort über eine Zone gibt es nicht.</translation>
    </message>
    <message>
        <source>That answer is not about one zone. Undo it instead.</source>
        <translation>Diese Antwort betrifft nicht eine Zone. Machen Sie sie stattdessen rückgängig.</translation>
    </message>
    <message>
        <source>Choose a zone of the same coat.</source>
        <translation>Wählen Sie eine Zone desselben Durchgangs.</translation>
    </message>
    <message>
        <source>It is about that zone already.</source>
        <translation>Sie betrifft diese Zone schon.</translation>
    </message>
    <message>
        <source>No zone is left for &apos;%1&apos;: all have been rinsed alone or left out.</source>
        <translation>Für „%1“ ist keine Zone übrig: Alle wurden allein ausgespült oder ausgelassen.</translation>
    </message>
    <message>
        <source>%1 has not been applied. Leave it out first, or rinse the other zones alone.</source>
        <translation>%1 ist nicht aufgetragen. Lassen Sie es zuerst aus, oder spülen Sie die anderen Zonen allein aus.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has begun, so nothing more can be applied for it. Undo that if it was said by mistake.</source>
        <translation>„%1“ hat begonnen, es kann also nichts mehr dafür aufgetragen werden. Machen Sie das rückgängig, wenn es ein Irrtum war.</translation>
    </message>
    <message>
        <source>A look is not started: say what came of it.</source>
        <translation>Eine Kontrolle wird nicht begonnen: Sagen Sie, was herauskam.</translation>
    </message>
    <message>
        <source>%1 has been done already.</source>
        <translation>„%1“ ist schon getan.</translation>
    </message>
    <message>
        <source>%1 was started already.</source>
        <translation>„%1“ hat schon begonnen.</translation>
    </message>
    <message>
        <source>A look is not finished: say what came of it.</source>
        <translation>Eine Kontrolle wird nicht beendet: Sagen Sie, was herauskam.</translation>
    </message>
    <message>
        <source>%1 has not been started. Say first when it began.</source>
        <translation>„%1“ hat nicht begonnen. Sagen Sie zuerst, wann es begann.</translation>
    </message>
    <message>
        <source>%1 has been finished already. To put its time right, correct that answer.</source>
        <translation>„%1“ ist schon beendet. Um die Zeit zu berichtigen, korrigieren Sie diese Antwort.</translation>
    </message>
    <message>
        <source>%1 is left out already.</source>
        <translation>„%1“ ist schon ausgelassen.</translation>
    </message>
    <message>
        <source>%1 has begun and cannot be left out. Finish it, or undo its start.</source>
        <translation>„%1“ hat begonnen und kann nicht ausgelassen werden. Beenden Sie es, oder machen Sie den Beginn rückgängig.</translation>
    </message>
    <message>
        <source>%1 has mixture on it, so its rinse cannot be left out.</source>
        <translation>Auf %1 ist Mischung, das Ausspülen kann also nicht ausgelassen werden.</translation>
    </message>
    <message>
        <source>Stay %1 short of: %2</source>
        <translation>%1 unterschreiten: %2</translation>
    </message>
    <message>
        <source>Go %1 ahead of: %2</source>
        <translation>%1 vorziehen: %2</translation>
    </message>
    <message>
        <source>Go %1 off: %2</source>
        <translation>%1 abweichen von: %2</translation>
    </message>
    <message>
        <source>Go %1 past: %2</source>
        <translation>%1 überschreiten: %2</translation>
    </message>
    <message>
        <source>Carry on with what is least harm altogether</source>
        <translation>Weitermachen mit dem insgesamt geringsten Schaden</translation>
    </message>
    <message>
        <source>Skip: %1</source>
        <translation>Auslassen: %1</translation>
    </message>
    <message>
        <source>Skip every look that is left at %1</source>
        <translation>Alle übrigen Kontrollen von %1 auslassen</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Weglassen: %1</translation>
    </message>
    <message>
        <source>Use %1 up to %2 after it is mixed (now %3)</source>
        <translation>%1 bis zu %2 nach dem Mischen verwenden (jetzt %3)</translation>
    </message>
    <message>
        <source>Only if the product&apos;s leaflet allows it.</source>
        <translation>Nur wenn die Gebrauchsanweisung es erlaubt.</translation>
    </message>
    <message>
        <source>Mix another bowl of %1 for %2</source>
        <translation>Eine weitere Schale %1 für %2 mischen</translation>
    </message>
    <message>
        <source>Have the basin for %1 %2 earlier than it is booked</source>
        <translation>Das Becken für %1 %2 früher haben als gebucht</translation>
    </message>
    <message>
        <source>Have the basin for %1 %2 later than it is booked</source>
        <translation>Das Becken für %1 %2 später haben als gebucht</translation>
    </message>
    <message>
        <source>Begin to apply %1 up to %2 after the end of %3 (now %4)</source>
        <translation>%1 bis zu %2 nach dem Ende von %3 beginnen (jetzt %4)</translation>
    </message>
    <message>
        <source>Begin to apply %1 at least %2 after the end of %3 (now %4)</source>
        <translation>%1 mindestens %2 nach dem Ende von %3 beginnen (jetzt %4)</translation>
    </message>
    <message>
        <source>Keep %1 to spare before the promised time (now %2)</source>
        <translation>%1 Puffer vor der versprochenen Zeit lassen (jetzt %2)</translation>
    </message>
    <message>
        <source>Keep %1 to spare before the promised time for %2 (now %3)</source>
        <translation>%1 Puffer vor der versprochenen Zeit von %2 lassen (jetzt %3)</translation>
    </message>
    <message>
        <source>Promise it %1 later</source>
        <translation>%1 später versprechen</translation>
    </message>
    <message>
        <source>Promise it for %1 %2 later</source>
        <translation>Für %1 %2 später versprechen</translation>
    </message>
    <message>
        <source>The %1 to spare are used up as well.</source>
        <translation>Auch die %1 Puffer sind dann aufgebraucht.</translation>
    </message>
    <message>
        <source>Begin %1 earlier</source>
        <translation>%1 früher beginnen</translation>
    </message>
    <message>
        <source>Begin with %1 %2 earlier</source>
        <translation>Mit %1 %2 früher beginnen</translation>
    </message>
    <message>
        <source>Let %1 not be away at all</source>
        <translation>%1 gar nicht weggehen lassen</translation>
    </message>
    <message>
        <source>Let %1 leave %2 later</source>
        <translation>%1 %2 später gehen lassen</translation>
    </message>
    <message>
        <source>Let %1 come back %2 earlier</source>
        <translation>%1 %2 früher zurückkommen lassen</translation>
    </message>
    <message>
        <source>Call another pair of hands</source>
        <translation>Noch jemanden dazurufen</translation>
    </message>
    <message>
        <source>Use another basin (now %1)</source>
        <translation>Ein weiteres Becken verwenden (jetzt %1)</translation>
    </message>
    <message>
        <source>Let %1 develop up to %2 (now %3)</source>
        <translation>%1 bis zu %2 einwirken lassen (jetzt %3)</translation>
    </message>
    <message>
        <source>Let %1 be rinsed from %2 on (now from %3)</source>
        <translation>%1 schon ab %2 ausspülen lassen (jetzt ab %3)</translation>
    </message>
    <message>
        <source>Let the first strand of %1 carry the mixture up to %2 (now %3)</source>
        <translation>Die erste Strähne von %1 die Mischung bis zu %2 tragen lassen (jetzt %3)</translation>
    </message>
    <message>
        <source>Let the last strand of %1 carry the mixture at least %2 (now %3)</source>
        <translation>Die letzte Strähne von %1 die Mischung mindestens %2 tragen lassen (jetzt %3)</translation>
    </message>
    <message>
        <source>Look at %1 up to %2 early or late (now %3)</source>
        <translation>%1 bis zu %2 früher oder später kontrollieren (jetzt %3)</translation>
    </message>
    <message>
        <source>Let %1 be up to %2 early or late (now %3)</source>
        <translation>%1 bis zu %2 früher oder später zulassen (jetzt %3)</translation>
    </message>
    <message>
        <source>Apply %1 without waiting for %2</source>
        <translation>%1 auftragen, ohne auf %2 zu warten</translation>
    </message>
    <message>
        <source>Apply %1 up to %2 after %3 (now %4)</source>
        <translation>%1 bis zu %2 nach %3 auftragen (jetzt %4)</translation>
    </message>
    <message>
        <source>See that the blend line can wait that long.</source>
        <translation>Achten Sie darauf, dass die Übergangslinie so lange warten kann.</translation>
    </message>
    <message>
        <source>Rinse %1 on its own</source>
        <translation>%1 für sich ausspülen</translation>
    </message>
    <message>
        <source>Its neighbours have to stay dry.</source>
        <translation>Die Nachbarn müssen trocken bleiben.</translation>
    </message>
    <message>
        <source>%1, %2 before the others</source>
        <translation>%1, %2 vor den anderen</translation>
    </message>
    <message>
        <source>%1, %2 after the others</source>
        <translation>%1, %2 nach den anderen</translation>
    </message>
    <message>
        <source>%1; and: %2</source>
        <translation>%1; und: %2</translation>
    </message>
    <message>
        <source>There is no service to plan.</source>
        <translation>Es gibt keinen Auftrag zu planen.</translation>
    </message>
    <message>
        <source>The clock times lie more than two years apart: check the dates.</source>
        <translation>Die Uhrzeiten liegen mehr als zwei Jahre auseinander: Prüfen Sie die Daten.</translation>
    </message>
    <message>
        <source>This is more than can be planned at once: %1 moments, at most %2. Plan fewer coats at a time, or fewer looks.</source>
        <translation>Das ist mehr, als auf einmal geplant werden kann: %1 Zeitpunkte, höchstens %2. Planen Sie weniger Durchgänge auf einmal, oder weniger Kontrollen.</translation>
    </message>
    <message>
        <source>%1: the basin is booked from a fixed time on</source>
        <translation>%1: das Becken ist ab einer festen Zeit gebucht</translation>
    </message>
    <message>
        <source>%1: the basin is booked, water by a fixed time</source>
        <translation>%1: das Becken ist gebucht, Wasser bis zu einer festen Zeit</translation>
    </message>
    <message>
        <source>%1: used up within %2 of mixing</source>
        <translation>%1: binnen %2 nach dem Mischen aufgebraucht</translation>
    </message>
    <message>
        <source>%1: at least %2 after %3</source>
        <translation>%1: mindestens %2 nach %3</translation>
    </message>
    <message>
        <source>%1: at most %2 after %3</source>
        <translation>%1: höchstens %2 nach %3</translation>
    </message>
    <message>
        <source>one pair of hands</source>
        <translation>nur eine Person</translation>
    </message>
    <message>
        <source>%1 pairs of hands</source>
        <translation>%1 Personen</translation>
    </message>
    <message>
        <source>one basin</source>
        <translation>ein Becken</translation>
    </message>
    <message>
        <source>%1 basins</source>
        <translation>%1 Becken</translation>
    </message>
    <message>
        <source>nothing else is done to a head at the basin</source>
        <translation>am Becken geschieht nichts anderes mit einem Kopf</translation>
    </message>
    <message>
        <source>%1 is away</source>
        <translation>%1 ist abwesend</translation>
    </message>
    <message>
        <source>ready by the promised time with %1 to spare</source>
        <translation>zur versprochenen Zeit fertig mit %1 Puffer</translation>
    </message>
    <message>
        <source>ready by the promised time</source>
        <translation>zur versprochenen Zeit fertig</translation>
    </message>
    <message>
        <source>%1: looks from %2, each within %3</source>
        <translation>%1: Kontrollen ab %2, jede auf %3 genau</translation>
    </message>
    <message>
        <source>%1: looks from %2 every %3, each within %4</source>
        <translation>%1: Kontrollen ab %2 alle %3, jede auf %4 genau</translation>
    </message>
    <message>
        <source>development of at least %1</source>
        <translation>Einwirkzeit von mindestens %1</translation>
    </message>
    <message>
        <source>development of at most %1</source>
        <translation>Einwirkzeit von höchstens %1</translation>
    </message>
    <message>
        <source>first strand, from contact to water, at most %1</source>
        <translation>erste Strähne, vom Auftragen bis Wasser, höchstens %1</translation>
    </message>
    <message>
        <source>last strand, from the end of application to water, at least %1</source>
        <translation>letzte Strähne, vom Ende des Auftragens bis Wasser, mindestens %1</translation>
    </message>
    <message>
        <source>%1 %2: %3 before its water, within %4</source>
        <translation>%1 %2: %3 vor Wasser, auf %4 genau</translation>
    </message>
    <message>
        <source>%1 goes on after %2</source>
        <translation>%1 kommt nach %2</translation>
    </message>
    <message>
        <source>%1 goes on within %2 of %3</source>
        <translation>%1 kommt binnen %2 nach %3</translation>
    </message>
    <message>
        <source>No place was found for everybody. It is not known whether there is none.</source>
        <translation>Es wurde nicht für alle Platz gefunden. Ob es keinen gibt, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The search was stopped before anything was found.</source>
        <translation>Die Suche wurde abgebrochen, bevor etwas gefunden war.</translation>
    </message>
    <message>
        <source>Nothing fits, even with every limit left out: nobody here does what has to be done.</source>
        <translation>Nichts passt, auch ohne jede Grenze: Niemand hier macht, was getan werden muss.</translation>
    </message>
    <message>
        <source>This cannot be kept: %1.</source>
        <translation>Dies ist nicht einzuhalten: %1.</translation>
    </message>
    <message>
        <source>These cannot all hold together: %1.</source>
        <translation>Diese können nicht alle zusammen bestehen: %1.</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>%1 kontrollieren</translation>
    </message>
    <message>
        <source>Look at %1 (%2)</source>
        <translation>%1 kontrollieren (%2)</translation>
    </message>
    <message>
        <source>Apply %1</source>
        <translation>%1 auftragen</translation>
    </message>
    <message>
        <source>Mix %1</source>
        <translation>%1 mischen</translation>
    </message>
    <message>
        <source>Rinse %1</source>
        <translation>%1 ausspülen</translation>
    </message>
    <message>
        <source>Rinse %1 alone</source>
        <translation>%1 allein ausspülen</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocknen</translation>
    </message>
    <message>
        <source>Assess</source>
        <translation>Beurteilen</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>and %1 more problems; mend these first</source>
        <translation>und %1 weitere Fehler; beheben Sie zuerst diese</translation>
    </message>
    <message>
        <source>is empty; list a bowl, or leave the key out for one without mixing</source>
        <translation>ist leer; nennen Sie eine Schale</translation>
    </message>
    <message>
        <source>bowls</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>no zone is applied from this bowl; take it out, or name it in a zone</source>
        <translation>aus dieser Schale wird keine Zone aufgetragen; nehmen Sie sie heraus, oder nennen Sie sie bei einer Zone</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>is before earliest; swap them</source>
        <translation>liegt vor dem Frühesten; vertauschen Sie sie</translation>
    </message>
    <message>
        <source>is empty; list at least one rinse group, such as { &quot;length&quot;: 5 }</source>
        <translation>ist leer; nennen Sie mindestens eine Spülgruppe</translation>
    </message>
    <message>
        <source>rinse groups</source>
        <translation>Spülgruppen</translation>
    </message>
    <message>
        <source>no zone is rinsed in this group; take it out, or name it in a zone</source>
        <translation>in dieser Gruppe wird keine Zone ausgespült; nehmen Sie sie heraus, oder nennen Sie sie bei einer Zone</translation>
    </message>
    <message>
        <source>rinse group</source>
        <translation>Spülgruppe</translation>
    </message>
    <message>
        <source>is empty; list at least one zone</source>
        <translation>ist leer; nennen Sie mindestens eine Zone</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>%1 is less than least %2; raise most or lower least</source>
        <translation>%1 ist weniger als das Mindeste %2; erhöhen Sie das Höchste oder senken Sie das Mindeste</translation>
    </message>
    <message>
        <source>times away</source>
        <translation>Abwesenheiten</translation>
    </message>
    <message>
        <source>is not after from; a time away ends later than it starts</source>
        <translation>liegt nicht nach dem Anfang; eine Abwesenheit endet später, als sie beginnt</translation>
    </message>
    <message>
        <source>is before the end of the time away above; list them in order, without overlap</source>
        <translation>liegt vor dem Ende der Abwesenheit darüber; listen Sie sie der Reihe nach auf, ohne Überlappung</translation>
    </message>
    <message>
        <source>%1 is listed twice; take one out</source>
        <translation>%1 steht zweimal da; nehmen Sie eines heraus</translation>
    </message>
    <message>
        <source>nobody does %1, and the service needs it; add it to the does of somebody</source>
        <translation>niemand macht %1, und der Auftrag braucht es; fügen Sie es jemandem hinzu</translation>
    </message>
    <message>
        <source>0 is too few; at least one basin is needed</source>
        <translation>0 ist zu wenig; mindestens ein Becken ist nötig</translation>
    </message>
    <message>
        <source>basins</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>is empty; at least one pair of hands is needed</source>
        <translation>ist leer; mindestens eine Person ist nötig</translation>
    </message>
    <message>
        <source>pairs of hands</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>pair of hands</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>%1 is negative; lengths run from 0 to 1440 (24 h)</source>
        <translation>%1 ist negativ; Längen gehen von 0 bis 1440 (24 h)</translation>
    </message>
    <message>
        <source>%1 is more than 1440 (24 h), the longest that is accepted</source>
        <translation>%1 ist mehr als 1440 (24 h), mehr wird nicht angenommen</translation>
    </message>
    <message>
        <source>0 is too short; write at least one second, &quot;0:01&quot;</source>
        <translation>0 ist zu kurz; schreiben Sie mindestens eine Sekunde, „0:01“</translation>
    </message>
    <message>
        <source>%1 is negative; a harm runs from 0 to 1000</source>
        <translation>%1 ist negativ; ein Schaden geht von 0 bis 1000</translation>
    </message>
    <message>
        <source>%1 is more than 1000, the greatest harm</source>
        <translation>%1 ist mehr als 1000, der größte Schaden</translation>
    </message>
    <message>
        <source>is not between the years 2000 and 2099; mend the date</source>
        <translation>liegt nicht zwischen den Jahren 2000 und 2099; berichtigen Sie das Datum</translation>
    </message>
    <message>
        <source>%1 %2 are more than %3, the most that are accepted</source>
        <translation>%1 %2 sind mehr als %3, mehr wird nicht angenommen</translation>
    </message>
    <message>
        <source>is not UTF-8 text; write it again</source>
        <translation>ist kein UTF-8-Text; schreiben Sie es neu</translation>
    </message>
    <message>
        <source>holds a control character, such as a tab; take it out</source>
        <translation>enthält ein Steuerzeichen, etwa einen Tabulator; nehmen Sie es heraus</translation>
    </message>
    <message>
        <source>has %1 characters; write at most %2</source>
        <translation>hat %1 Zeichen; schreiben Sie höchstens %2</translation>
    </message>
    <message>
        <source>is empty; write a name</source>
        <translation>ist leer; schreiben Sie einen Namen</translation>
    </message>
    <message>
        <source>starts or ends with a space; take it out</source>
        <translation>beginnt oder endet mit einem Leerzeichen; nehmen Sie es heraus</translation>
    </message>
    <message>
        <source>%1 is the name of %2 too; give each %3 a name of its own</source>
        <translation>%1 ist auch der Name von %2; geben Sie jedem einen eigenen Namen (%3)</translation>
    </message>
    <message>
        <source>%1 waits for %2</source>
        <translation>%1 wartet auf %2</translation>
    </message>
    <message>
        <source>%1; take one of these out</source>
        <translation>%1; nehmen Sie eines davon heraus</translation>
    </message>
    <message>
        <source>there is no such zone; name one of the coat</source>
        <translation>diese Zone gibt es nicht; nennen Sie eine des Durchgangs</translation>
    </message>
    <message>
        <source>a zone cannot wait for itself; take it out</source>
        <translation>eine Zone kann nicht auf sich selbst warten; nehmen Sie sie heraus</translation>
    </message>
    <message>
        <source>is not after not_before by more than the buffer; make it later</source>
        <translation>liegt nicht um mehr als den Puffer nach dem frühesten Beginn; setzen Sie es später</translation>
    </message>
    <message>
        <source>is empty; list at least one coat</source>
        <translation>ist leer; nennen Sie mindestens einen Durchgang</translation>
    </message>
    <message>
        <source>coats</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>zones in all</source>
        <translation>Zonen insgesamt</translation>
    </message>
    <message>
        <source>leads to the next coat, and this is the last one; take it out</source>
        <translation>führt zum nächsten Durchgang, und dies ist der letzte; nehmen Sie es heraus</translation>
    </message>
    <message>
        <source>coat</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>is empty; use an IANA name such as &quot;Europe/London&quot;</source>
        <translation>ist leer; verwenden Sie einen IANA-Namen wie „Europe/London“</translation>
    </message>
    <message>
        <source>only wefts come apart; make it false, or the kind &quot;wefts&quot;</source>
        <translation>nur Tressen gehen auseinander; machen Sie es falsch, oder die Art zu Tressen</translation>
    </message>
    <message>
        <source>%1 is more than usual %2; make quickest at most usual</source>
        <translation>%1 ist mehr als üblich %2; machen Sie das Schnellste höchstens so groß wie üblich</translation>
    </message>
    <message>
        <source>%1 is less than usual %2; make slowest at least usual</source>
        <translation>%1 ist weniger als üblich %2; machen Sie das Langsamste mindestens so groß wie üblich</translation>
    </message>
    <message>
        <source>%1 is more than target %2; make least at most the target</source>
        <translation>%1 ist mehr als das Ziel %2; machen Sie das Mindeste höchstens so groß wie das Ziel</translation>
    </message>
    <message>
        <source>%1 is less than target %2; make most at least the target</source>
        <translation>%1 ist weniger als das Ziel %2; machen Sie das Höchste mindestens so groß wie das Ziel</translation>
    </message>
    <message>
        <source>may take %1, longer than develop.most %2 counted from first contact; split the zone</source>
        <translation>kann %1 dauern, länger als die höchste Einwirkzeit %2 ab der ersten Strähne; teilen Sie die Zone</translation>
    </message>
    <message>
        <source>%1 is more than develop.most %2, counted from the same end of application; lower it or raise most</source>
        <translation>%1 ist mehr als die höchste Einwirkzeit %2, gezählt vom selben Ende des Auftragens; senken Sie es oder erhöhen Sie das Höchste</translation>
    </message>
    <message>
        <source>%1 is not before until %2, so that no look would be due; look earlier, or leave looks out</source>
        <translation>%1 liegt nicht vor dem Ende %2, keine Kontrolle würde fällig; kontrollieren Sie früher, oder lassen Sie Kontrollen weg</translation>
    </message>
    <message>
        <source>%1 makes more than %2 looks; look less often</source>
        <translation>%1 ergibt mehr als %2 Kontrollen; kontrollieren Sie seltener</translation>
    </message>
    <message>
        <source>%1 is more than every %2, so that looks would change places; make it at most half of every</source>
        <translation>%1 ist mehr als der Abstand %2, Kontrollen würden die Plätze tauschen; machen Sie es höchstens halb so groß</translation>
    </message>
    <message>
        <source>late jobs</source>
        <translation>späte Arbeiten</translation>
    </message>
    <message>
        <source>%1 is more than before %2 and tolerance %3 leave until the water; start it earlier or make it shorter</source>
        <translation>%1 ist mehr, als „vorher“ %2 und Toleranz %3 bis zum Wasser lassen; beginnen Sie früher oder machen Sie es kürzer</translation>
    </message>
    <message>
        <source>there is no such bowl; name one of the coat</source>
        <translation>diese Schale gibt es nicht; nennen Sie eine des Durchgangs</translation>
    </message>
    <message>
        <source>there is no such rinse group; name one of the coat</source>
        <translation>diese Spülgruppe gibt es nicht; nennen Sie eine des Durchgangs</translation>
    </message>
    <message>
        <source>%1 is more than the %2 that the rinse takes; the zone must be reached before it ends</source>
        <translation>%1 ist mehr als die %2 des Ausspülens; die Zone muss vor dessen Ende erreicht sein</translation>
    </message>
    <message>
        <source>1 pair of hands here, %1 there</source>
        <translation>1 Person hier, %1 dort</translation>
    </message>
    <message>
        <source>%1 pairs of hands here, %2 there</source>
        <translation>%1 Personen hier, %2 dort</translation>
    </message>
    <message>
        <source>%1 here, %2 there</source>
        <translation>%1 hier, %2 dort</translation>
    </message>
    <message>
        <source>%1 is away at other times</source>
        <translation>%1 ist zu anderen Zeiten abwesend</translation>
    </message>
    <message>
        <source>%1 does other work</source>
        <translation>%1 macht andere Arbeit</translation>
    </message>
    <message>
        <source>1 basin here, %1 there</source>
        <translation>1 Becken hier, %1 dort</translation>
    </message>
    <message>
        <source>%1 basins here, %2 there</source>
        <translation>%1 Becken hier, %2 dort</translation>
    </message>
    <message>
        <source>Say what is to be thought of next time.</source>
        <translation>Sagen Sie, woran beim nächsten Mal zu denken ist.</translation>
    </message>
    <message>
        <source>Choose the zone that this is about.</source>
        <translation>Wählen Sie die Zone, um die es geht.</translation>
    </message>
    <message>
        <source>Say that in fewer words: at most %1 letters.</source>
        <translation>Sagen Sie das mit weniger Worten: höchstens %1 Zeichen.</translation>
    </message>
    <message>
        <source>Say that in one line.</source>
        <translation>Sagen Sie das in einer Zeile.</translation>
    </message>
    <message>
        <source>%1 has not been rinsed. Say how it turned out once it is.</source>
        <translation>%1 ist noch nicht ausgespült. Sagen Sie danach, wie es geworden ist.</translation>
    </message>
    <message>
        <source>Say how %1 turned out.</source>
        <translation>Sagen Sie, wie %1 geworden ist.</translation>
    </message>
    <message>
        <source>%1 not before %2</source>
        <translation>%1 nicht vor %2</translation>
    </message>
    <message>
        <source>%1 as soon as it is best</source>
        <translation>%1, sobald es am besten ist</translation>
    </message>
    <message>
        <source>Let %1 start %2 earlier than was set for it</source>
        <translation>%1 %2 früher beginnen lassen als festgelegt</translation>
    </message>
    <message>
        <source>%1: not applied before the time that was set</source>
        <translation>%1: nicht vor der festgelegten Zeit aufgetragen</translation>
    </message>
</context>
</TS>
