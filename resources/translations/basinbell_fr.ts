<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en_GB">
<context>
    <name>Cautions</name>
    <message>
        <source>The product&apos;s own leaflet comes first. Where it differs from this plan, the leaflet is right: change the service and plan again.</source>
        <translation>La notice du produit passe avant tout. Là où elle diffère de ce plan, c’est elle qui a raison : modifiez la prestation et planifiez à nouveau.</translation>
    </message>
    <message>
        <source>Have the skin test that the maker, the trade and insurers ask for, as a rule 48 hours before, and read by someone trained to read it. A test without a reaction is no promise that there will be none.</source>
        <translation>Faites faire le test cutané que demandent le fabricant, la profession et les assureurs, en règle générale 48 heures avant, et lu par une personne formée à le lire. Un test sans réaction ne promet pas qu’il n’y en aura aucune.</translation>
    </message>
    <message>
        <source>Do not colour on a rash, on sensitive or broken skin, or after an earlier reaction to colour or to a black temporary tattoo, until a doctor has said what may be done. Many products are not meant for people under 16.</source>
        <translation>Ne colorez pas en cas d’éruption, sur une peau sensible ou abîmée, ou après une réaction antérieure à une coloration ou à un tatouage temporaire noir, avant qu’un médecin ait dit ce qui est possible. Beaucoup de produits ne sont pas destinés aux moins de 16 ans.</translation>
    </message>
    <message>
        <source>Wear suitable gloves, and air the room, above all with lighteners and ammonia.</source>
        <translation>Portez des gants adaptés et aérez la pièce, surtout avec les décolorants et l’ammoniaque.</translation>
    </message>
    <message>
        <source>Keep mixtures out of eyes, and off lashes and brows unless the product is made for them. If some gets into an eye, rinse at once with plenty of water and get medical help.</source>
        <translation>Évitez tout contact des mélanges avec les yeux, et avec les cils et les sourcils sauf si le produit est fait pour eux. En cas de contact avec un œil, rincez aussitôt à grande eau et demandez une aide médicale.</translation>
    </message>
    <message>
        <source>If skin burns, swells or blisters, rinse at once, whatever the clock says, and get medical help.</source>
        <translation>Si la peau brûle, gonfle ou se couvre de cloques, rincez aussitôt, quoi que dise l’horloge, et demandez une aide médicale.</translation>
    </message>
    <message>
        <source>Local rules and licensed practice decide who may do this work and how. This program plans and keeps time: it knows neither the product nor the person, and whoever does the work decides.</source>
        <translation>Les règles locales et l’exercice agréé du métier décident qui peut faire ce travail et comment. Ce programme planifie et mesure le temps : il ne connaît ni le produit ni la personne, et c’est celui ou celle qui travaille qui décide.</translation>
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
        <translation>Comment s’appelle le mélange</translation>
    </message>
    <message>
        <source>Mixing</source>
        <translation>Mélange</translation>
    </message>
    <message>
        <source>Minutes of mixing; 0 where it needs no planning</source>
        <translation>Minutes de mélange ; 0 s’il n’y a rien à planifier</translation>
    </message>
    <message>
        <source>Pot life</source>
        <translation>Durée d’emploi</translation>
    </message>
    <message>
        <source>Minutes a mixture may be used after mixing, from the leaflet</source>
        <translation>Minutes pendant lesquelles un mélange s’emploie après préparation, selon la notice</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Contenu</translation>
    </message>
    <message>
        <source>In your own words; shown when it is mixed</source>
        <translation>Avec vos mots ; affiché au moment du mélange</translation>
    </message>
    <message>
        <source>Type a clock time, such as 14:30, or 2026-11-28 14:30 for another day.</source>
        <translation>Saisissez une heure, par exemple 14:30, ou 2026-11-28 14:30 pour un autre jour.</translation>
    </message>
    <message>
        <source>Rinse group</source>
        <translation>Groupe de rinçage</translation>
    </message>
    <message>
        <source>Zones that go under the water together</source>
        <translation>Zones qui passent ensemble sous l’eau</translation>
    </message>
    <message>
        <source>Rinsing</source>
        <translation>Rinçage</translation>
    </message>
    <message>
        <source>Minutes at the basin</source>
        <translation>Minutes au bac</translation>
    </message>
    <message>
        <source>Water from</source>
        <translation>Eau dès</translation>
    </message>
    <message>
        <source>The earliest clock time of its water, where the basin is booked</source>
        <translation>L’heure d’eau la plus tôt, si le bac est réservé</translation>
    </message>
    <message>
        <source>Water until</source>
        <translation>Eau jusqu’à</translation>
    </message>
    <message>
        <source>The latest clock time of its water, where the basin is booked</source>
        <translation>L’heure d’eau la plus tard, si le bac est réservé</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>What this pass is called</source>
        <translation>Comment s’appelle ce passage</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Séchage</translation>
    </message>
    <message>
        <source>Minutes of drying by hand</source>
        <translation>Minutes de séchage à la main</translation>
    </message>
    <message>
        <source>Drying alone</source>
        <translation>Sèche seul</translation>
    </message>
    <message>
        <source>Minutes that it dries on by itself</source>
        <translation>Minutes pendant lesquelles le séchage continue seul</translation>
    </message>
    <message>
        <source>Judging</source>
        <translation>Évaluation</translation>
    </message>
    <message>
        <source>Minutes to look at the dry result</source>
        <translation>Minutes pour regarder le résultat sec</translation>
    </message>
    <message>
        <source>Least gap</source>
        <translation>Pause min.</translation>
    </message>
    <message>
        <source>Fewest minutes before the next coat</source>
        <translation>Minutes au moins avant le passage suivant</translation>
    </message>
    <message>
        <source>Most gap</source>
        <translation>Pause max.</translation>
    </message>
    <message>
        <source>Most minutes before the next coat</source>
        <translation>Minutes au plus avant le passage suivant</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Absence</translation>
    </message>
    <message>
        <source>When nothing can be asked of them, such as 13:00–13:30; empty for never</source>
        <translation>Quand on ne peut rien leur demander, par exemple 13:00–13:30 ; vide pour jamais</translation>
    </message>
    <message>
        <source>Type from when to when, such as 13:00–13:30, with commas between several.</source>
        <translation>Saisissez de quand à quand, par exemple 13:00–13:30, plusieurs séparés par des virgules.</translation>
    </message>
    <message>
        <source>mixing</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>applying</source>
        <translation>application</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>contrôles</translation>
    </message>
    <message>
        <source>late jobs</source>
        <translation>derniers gestes</translation>
    </message>
    <message>
        <source>rinsing</source>
        <translation>rinçage</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>séchage</translation>
    </message>
    <message>
        <source>judging</source>
        <translation>évaluation</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>tout</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>What they are asked to do; empty for everything</source>
        <translation>Ce qu’on leur demande ; vide pour tout</translation>
    </message>
    <message>
        <source>Name, with commas between them: %1. Empty for everything.</source>
        <translation>Indiquez, séparés par des virgules : %1. Vide pour tout.</translation>
    </message>
    <message>
        <source>Pair of hands</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Who works</source>
        <translation>Qui travaille</translation>
    </message>
    <message>
        <source>Choose one of the list.</source>
        <translation>Choisissez dans la liste.</translation>
    </message>
    <message>
        <source>Type minutes, such as 12, 12.5 or 12:30.</source>
        <translation>Saisissez des minutes, par exemple 12, 12,5 ou 12:30.</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>Pas avant</translation>
    </message>
    <message>
        <source>The clock time that applying it is not to start before, as it can be pulled and kept on the strand; empty for whenever is best</source>
        <translation>L’heure avant laquelle son application ne doit pas commencer ; elle se tire et se garde aussi sur la mèche. Vide : au meilleur moment</translation>
    </message>
</context>
<context>
    <name>Demos</name>
    <message>
        <source>Actor root and toners</source>
        <translation>Acteur : racines et patines</translation>
    </message>
    <message>
        <source>Wefts two basins</source>
        <translation>Tissages : deux bacs</translation>
    </message>
    <message>
        <source>Wig room darker over a day</source>
        <translation>Atelier de perruques : plus foncé en un jour</translation>
    </message>
    <message>
        <source>Wig room lightening in sections</source>
        <translation>Atelier de perruques : décoloration par sections</translation>
    </message>
    <message>
        <source>Wig room three zones</source>
        <translation>Atelier de perruques : trois zones</translation>
    </message>
</context>
<context>
    <name>Edits</name>
    <message>
        <source>Coat</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Bol</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Rinçage</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>New service</source>
        <translation>Nouvelle prestation</translation>
    </message>
    <message>
        <source>Stylist</source>
        <translation>Coiffeur</translation>
    </message>
    <message>
        <source>Coat 1</source>
        <translation>Passage 1</translation>
    </message>
    <message>
        <source>Bowl 1</source>
        <translation>Bol 1</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Racines</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Tout ensemble</translation>
    </message>
</context>
<context>
    <name>ErasedRun</name>
    <message>
        <source>Apply zone %1</source>
        <translation>Appliquer la zone %1</translation>
    </message>
    <message>
        <source>Look at zone %1</source>
        <translation>Contrôler la zone %1</translation>
    </message>
    <message>
        <source>Late job on zone %1</source>
        <translation>Dernier geste sur la zone %1</translation>
    </message>
    <message>
        <source>Mix bowl %1</source>
        <translation>Mélanger le bol %1</translation>
    </message>
    <message>
        <source>Rinse group %1</source>
        <translation>Rincer le groupe %1</translation>
    </message>
    <message>
        <source>Rinse zone %1 by itself</source>
        <translation>Rincer la zone %1 seule</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Sécher</translation>
    </message>
    <message>
        <source>Assess</source>
        <translation>Évaluer</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Chaleur</translation>
    </message>
    <message>
        <source>%1, coat %2</source>
        <translation>%1, passage %2</translation>
    </message>
    <message>
        <source>%1, head %2</source>
        <translation>%1, tête %2</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>Ce qui reste</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>How it turned out</source>
        <translation>Le résultat</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dit</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>A run that was erased</source>
        <translation>Une séance effacée</translation>
    </message>
    <message>
        <source>%1, %2 to %3, times in %4</source>
        <translation>%1, %2 à %3, heures de %4</translation>
    </message>
    <message>
        <source>Whatever could name a person was erased: the service with its names and notes, what was seen and said. What is left are kinds of tasks, numbers and times. A card cannot be made of them, and a coat cannot begin from them.</source>
        <translation>Tout ce qui pouvait nommer une personne a été effacé : la prestation avec ses noms et ses notes, ce qui a été vu et dit. Il reste des genres de tâches, des numéros et des heures. On ne peut pas en faire une fiche, ni en commencer un passage.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Hatched: the mixture is being applied.</source>
        <translation>Hachures : le mélange est en cours d’application.</translation>
    </message>
    <message>
        <source>The rinse line: water. Zones that are rinsed together end at the same shore.</source>
        <translation>La ligne de rinçage : l’eau. Les zones rincées ensemble finissent sur la même rive.</translation>
    </message>
    <message>
        <source>Below each strand its limits: the bracket is the least, the wedge the target, the bar the most it may develop.</source>
        <translation>Sous chaque mèche, ses limites : le crochet est la pose au moins, le coin la cible, la barre la pose au plus.</translation>
    </message>
    <message>
        <source>Set-up: what is wanted, and the plan that comes of it</source>
        <translation>Préparation : ce qui est voulu, et le plan qui en résulte</translation>
    </message>
    <message>
        <source>In the table: what goes on which zone, how long applying takes you, and how long each zone may develop. Take the times from the leaflet of the product.</source>
        <translation>Dans le tableau : ce qui va sur quelle zone, le temps qu’il vous faut pour appliquer, et la pose permise à chaque zone. Prenez les temps dans la notice du produit.</translation>
    </message>
    <message>
        <source>Below it: the plan. It says when to begin each zone, so that all of them come to the basin on time with one pair of hands. It is made again after every change.</source>
        <translation>En dessous : le plan. Il dit quand commencer chaque zone, pour que toutes arrivent au bac à temps avec une seule personne. Il est refait après chaque changement.</translation>
    </message>
    <message>
        <source>Next: when the plan looks right, start the lanes. They tell you what to do and when. Until then nothing sounds, and everything can be undone.</source>
        <translation>Ensuite : quand le plan convient, lancez les couloirs. Ils vous disent quoi faire et quand. Jusque-là rien ne sonne, et tout peut être annulé.</translation>
    </message>
    <message>
        <source>A strand with fibres: the zone develops. It swells until the target.</source>
        <translation>Une mèche avec des fibres : la zone est en pose. Elle s’épaissit jusqu’à la cible.</translation>
    </message>
    <message>
        <source>Dashed: that limit is not kept.</source>
        <translation>Tirets : cette limite n’est pas tenue.</translation>
    </message>
    <message>
        <source>An eye: look at the hair, a strand test.</source>
        <translation>Un œil : regarder les cheveux, un test de mèche.</translation>
    </message>
    <message>
        <source>A box with a wave: a late job, such as emulsifying.</source>
        <translation>Une case avec une vague : un dernier geste, comme émulsionner.</translation>
    </message>
    <message>
        <source>A bar with two ends: water comes between them in nine runs of ten.</source>
        <translation>Un trait à deux bouts : l’eau vient entre eux neuf fois sur dix.</translation>
    </message>
    <message>
        <source>Boxes on a name: what these hands do. Dashed is on another head.</source>
        <translation>Des cases sur un nom : ce que fait cette personne. En tirets : sur une autre tête.</translation>
    </message>
    <message>
        <source>start the lanes</source>
        <translation>lancer les couloirs</translation>
    </message>
    <message>
        <source>change the cell, go to the next</source>
        <translation>changer la case, aller à la suivante</translation>
    </message>
    <message>
        <source>undo the last change</source>
        <translation>annuler le dernier changement</translation>
    </message>
    <message>
        <source>before the start: what is open</source>
        <translation>avant le départ : ce qui reste ouvert</translation>
    </message>
    <message>
        <source>sound check</source>
        <translation>essai du son</translation>
    </message>
    <message>
        <source>print the plan</source>
        <translation>imprimer le plan</translation>
    </message>
    <message>
        <source>record cards</source>
        <translation>fiches</translation>
    </message>
    <message>
        <source>to Set-up, to Lanes</source>
        <translation>à la préparation, aux couloirs</translation>
    </message>
    <message>
        <source>the cautions</source>
        <translation>les précautions</translation>
    </message>
    <message>
        <source>it is done: answer the one thing to do</source>
        <translation>c’est fait : répond à la chose à faire</translation>
    </message>
    <message>
        <source>a look: leave it on, look again, rinse this zone</source>
        <translation>un contrôle : laisser poser, revoir, rincer cette zone</translation>
    </message>
    <message>
        <source>look again a minute sooner, later</source>
        <translation>revoir une minute plus tôt, plus tard</translation>
    </message>
    <message>
        <source>leave all that were looked at together</source>
        <translation>laisser poser tout ce qui a été contrôlé ensemble</translation>
    </message>
    <message>
        <source>the tone seen</source>
        <translation>le ton vu</translation>
    </message>
    <message>
        <source>skip this look or late job</source>
        <translation>passer ce contrôle ou ce dernier geste</translation>
    </message>
    <message>
        <source>quiet for a while; let it sound again</source>
        <translation>silence un moment ; laisser sonner de nouveau</translation>
    </message>
    <message>
        <source>the last answer was earlier</source>
        <translation>la dernière réponse était plus tôt</translation>
    </message>
    <message>
        <source>undo the last answer</source>
        <translation>annuler la dernière réponse</translation>
    </message>
    <message>
        <source>more: somebody goes or comes, heat, a zone more, an earlier answer</source>
        <translation>plus : quelqu’un part ou vient, chaleur, une zone de plus, une réponse antérieure</translation>
    </message>
    <message>
        <source>what can be chosen, where not every limit can hold</source>
        <translation>ce qui peut être choisi, quand toutes les limites ne peuvent tenir</translation>
    </message>
    <message>
        <source>how it turned out</source>
        <translation>le résultat</translation>
    </message>
    <message>
        <source>to be read from afar, and back</source>
        <translation>pour lire de loin, et retour</translation>
    </message>
    <message>
        <source>print the run as it stands</source>
        <translation>imprimer la séance telle qu’elle est</translation>
    </message>
    <message>
        <source>Lanes: what to do now, and how long is left</source>
        <translation>Couloirs : quoi faire maintenant, et le temps qui reste</translation>
    </message>
    <message>
        <source>At the top is the one thing to do. Do it, then press the large button or Enter. Times count from the moment you press.</source>
        <translation>En haut, la seule chose à faire. Faites-la, puis appuyez sur le grand bouton ou sur Entrée. Les temps comptent à partir de là.</translation>
    </message>
    <message>
        <source>Each lane is a zone. The large digits count down to what comes next for it; with a plus they count how long it is overdue.</source>
        <translation>Chaque couloir est une zone. Les grands chiffres comptent le temps jusqu’à ce qui vient ensuite pour elle ; avec un plus, ils comptent le retard.</translation>
    </message>
    <message>
        <source>When an alarm fills the window: do what it says, then answer it. It sounds until then. Pressed late or by mistake? Say that it was earlier, or undo it; the plan is made again.</source>
        <translation>Quand une alarme remplit la fenêtre : faites ce qu’elle dit, puis répondez. Elle sonne jusque-là. Appuyé trop tard ou par erreur ? Dites que c’était plus tôt, ou annulez ; le plan est refait.</translation>
    </message>
    <message>
        <source>Next: once all is rinsed and dry, say how it turned out and put the run away. Its record card is kept.</source>
        <translation>Ensuite : quand tout est rincé et sec, dites le résultat et rangez la séance. Sa fiche est gardée.</translation>
    </message>
    <message>
        <source>Filled as far as it has developed. The upright line is now.</source>
        <translation>Rempli aussi loin que la pose est faite. La ligne verticale est maintenant.</translation>
    </message>
    <message>
        <source>An eye: look at the hair. With a tick: done.</source>
        <translation>Un œil : regarder les cheveux. Avec une coche : fait.</translation>
    </message>
    <message>
        <source>Record cards: what was done, and how it turned out</source>
        <translation>Fiches : ce qui a été fait, et le résultat</translation>
    </message>
    <message>
        <source>Every run that was ended has a card: what each zone got, when it went on and when water came, what was seen, and how it turned out.</source>
        <translation>Chaque séance terminée a une fiche : ce que chaque zone a reçu, quand on l’a appliqué et quand l’eau est venue, ce qui a été vu, et le résultat.</translation>
    </message>
    <message>
        <source>Next: start the next coat from a card. What was noted for next time stays in view there.</source>
        <translation>Ensuite : commencez le passage suivant à partir d’une fiche. Ce qui a été noté pour la prochaine fois y reste en vue.</translation>
    </message>
    <message>
        <source>The strands as they really went.</source>
        <translation>Les mèches telles qu’elles se sont passées.</translation>
    </message>
    <message>
        <source>Dashes: where the first plan had them.</source>
        <translation>Tirets : là où le premier plan les avait.</translation>
    </message>
    <message>
        <source>start the next coat from it</source>
        <translation>commencer le passage suivant à partir d’elle</translation>
    </message>
    <message>
        <source>print it, save it as a PDF</source>
        <translation>imprimer, enregistrer en PDF</translation>
    </message>
    <message>
        <source>another card</source>
        <translation>une autre fiche</translation>
    </message>
    <message>
        <source>read on in this help, and back</source>
        <translation>lire la suite de cette aide, et revenir</translation>
    </message>
    <message>
        <source>this help, and away with it</source>
        <translation>cette aide, et la refermer</translation>
    </message>
    <message>
        <source>a short tour on a demo</source>
        <translation>une courte visite sur un exemple</translation>
    </message>
    <message>
        <source>open, save</source>
        <translation>ouvrir, enregistrer</translation>
    </message>
    <message>
        <source>Sound check: what each alarm sounds like</source>
        <translation>Essai du son : comment sonne chaque alarme</translation>
    </message>
    <message>
        <source>Play each alarm and listen from where you work, at the basin too, with the water running and the dryer on.</source>
        <translation>Jouez chaque alarme et écoutez de là où vous travaillez, du bac aussi, l’eau ouverte et le séchoir en marche.</translation>
    </message>
    <message>
        <source>If you heard them all, say so: then only water, a limit, or a step that is left standing fills the screen. Until somebody has said so, every step that is due fills it at once.</source>
        <translation>Si vous les avez toutes entendues, dites-le : alors seuls l’eau, une limite ou une étape laissée en attente remplissent l’écran. Tant que personne ne l’a dit, chaque étape due le remplit aussitôt.</translation>
    </message>
    <message>
        <source>If you hear nothing: look for the volume, the loudspeaker and its cable. You can go on without sound and watch the screen.</source>
        <translation>Si vous n’entendez rien : vérifiez le volume, le haut-parleur et son câble. Vous pouvez continuer sans son et surveiller l’écran.</translation>
    </message>
    <message>
        <source>Next: start the lanes. The check can be made again at any time, from the menu.</source>
        <translation>Ensuite : lancez les couloirs. L’essai peut être refait à tout moment, depuis le menu.</translation>
    </message>
    <message>
        <source>play an alarm, from the softest to the loudest</source>
        <translation>jouer une alarme, de la plus douce à la plus forte</translation>
    </message>
    <message>
        <source>they were heard</source>
        <translation>elles ont été entendues</translation>
    </message>
    <message>
        <source>what to do where nothing is heard</source>
        <translation>que faire si l’on n’entend rien</translation>
    </message>
    <message>
        <source>go on without sound</source>
        <translation>continuer sans son</translation>
    </message>
</context>
<context>
    <name>Journal</name>
    <message>
        <source>There is no such run.</source>
        <translation>Cette séance n’existe pas.</translation>
    </message>
    <message>
        <source>The run is still open. End it before erasing it.</source>
        <translation>La séance est encore ouverte. Terminez-la avant de l’effacer.</translation>
    </message>
    <message>
        <source>The journal %1 is damaged (%2). It has been left as it is. Bring back a copy of it, or give another folder with --data.</source>
        <translation>Le journal %1 est abîmé (%2). Il est resté tel quel. Remettez-en une copie, ou indiquez un autre dossier avec --data.</translation>
    </message>
    <message>
        <source>Another program has %1 open and locked. Close it, or give another folder with --data.</source>
        <translation>Un autre programme tient %1 ouvert et verrouillé. Fermez-le, ou indiquez un autre dossier avec --data.</translation>
    </message>
    <message>
        <source>The journal %1 failed: %2.</source>
        <translation>Le journal %1 a échoué : %2.</translation>
    </message>
    <message>
        <source>There is no space left to write %1. Free some space on that disk, or give another folder with --data.</source>
        <translation>Il n’y a plus de place pour écrire %1. Libérez de la place sur ce disque, ou indiquez un autre dossier avec --data.</translation>
    </message>
    <message>
        <source>%1 may not be written. Allow this user to write there, or give another folder with --data.</source>
        <translation>%1 est interdit en écriture. Autorisez cet utilisateur à y écrire, ou indiquez un autre dossier avec --data.</translation>
    </message>
    <message>
        <source>%1 cannot be used (%2). Give another folder with --data.</source>
        <translation>%1 ne peut pas servir (%2). Indiquez un autre dossier avec --data.</translation>
    </message>
    <message>
        <source>Nothing can be kept meanwhile: if the program stops, its run is lost. Write down when each application began.</source>
        <translation>Rien ne peut être gardé entre-temps : si le programme s’arrête, sa séance est perdue. Notez quand chaque application a commencé.</translation>
    </message>
    <message>
        <source>The journal was damaged. It was set aside, untouched, as %1 and a new one begun. Runs in the old one cannot be taken up again.</source>
        <translation>Le journal était abîmé. Il a été mis de côté, intact, sous %1 et un nouveau a été commencé. Les séances de l’ancien ne peuvent plus être reprises.</translation>
    </message>
    <message>
        <source>The journal was written by a newer Basinbell (layout %1, this one knows %2). Use the newer program, or give another folder with --data.</source>
        <translation>Le journal vient d’un Basinbell plus récent (format %1, celui-ci connaît %2). Employez le programme plus récent, ou indiquez un autre dossier avec --data.</translation>
    </message>
    <message>
        <source>The journal is damaged: %1.</source>
        <translation>Le journal est abîmé : %1.</translation>
    </message>
    <message>
        <source>The file is not a journal of Basinbell.</source>
        <translation>Le fichier n’est pas un journal de Basinbell.</translation>
    </message>
    <message>
        <source>The journal knows no run %1.</source>
        <translation>Le journal ne connaît pas de séance %1.</translation>
    </message>
    <message>
        <source>Run %1 is damaged in the journal: its record %2 is missing or was changed. It cannot be taken up again; the journal has been left as it is.</source>
        <translation>La séance %1 est abîmée dans le journal : son enregistrement %2 manque ou a été changé. Elle ne peut plus être reprise ; le journal est resté tel quel.</translation>
    </message>
    <message>
        <source>The journal %1 was cut off.</source>
        <translation>Le journal %1 a été tronqué.</translation>
    </message>
</context>
<context>
    <name>KeepAwake</name>
    <message>
        <source>Lanes are running</source>
        <translation>Des couloirs tournent</translation>
    </message>
</context>
<context>
    <name>LastAnswer</name>
    <message>
        <source>started</source>
        <translation>commencé</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>looked, again later</source>
        <translation>contrôlé, à revoir plus tard</translation>
    </message>
    <message>
        <source>looked</source>
        <translation>contrôlé</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>laissé de côté</translation>
    </message>
    <message>
        <source>the run was ended</source>
        <translation>la séance a été terminée</translation>
    </message>
    <message>
        <source>what is planned was changed</source>
        <translation>ce qui est prévu a changé</translation>
    </message>
    <message>
        <source>Heat on %1</source>
        <translation>Chaleur mise %1</translation>
    </message>
    <message>
        <source>Heat off %1</source>
        <translation>Chaleur ôtée %1</translation>
    </message>
    <message>
        <source>For next time %1: %2</source>
        <translation>Pour la prochaine fois %1 : %2</translation>
    </message>
    <message>
        <source>%1 turned out %2 %3</source>
        <translation>%1, résultat : %2 %3</translation>
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
        <translation>Pour la prochaine fois : %1</translation>
    </message>
    <message>
        <source>Last time, %1: %2</source>
        <comment>day, what was said</comment>
        <translation>La dernière fois, %1 : %2</translation>
    </message>
</context>
<context>
    <name>Options</name>
    <message>
        <source>Plans the staggered start of a hair colour service and times its lanes.</source>
        <translation>Planifie le départ échelonné d’une coloration et chronomètre ses couloirs.</translation>
    </message>
    <message>
        <source>The service to open; several are planned together, a head each.</source>
        <translation>La prestation à ouvrir ; plusieurs sont planifiées ensemble, une tête chacune.</translation>
    </message>
    <message>
        <source>Keep the journal and the window&apos;s state in DIR.</source>
        <translation>Garder le journal et l’état de la fenêtre dans DIR.</translation>
    </message>
    <message>
        <source>Let N seconds pass in one. For demonstrations: alarms come faster too.</source>
        <translation>Laisser passer N secondes en une. Pour les démonstrations : les alarmes viennent plus vite aussi.</translation>
    </message>
    <message>
        <source>Take up the latest unfinished run, however long ago it was begun.</source>
        <translation>Reprendre la dernière séance inachevée, même commencée il y a longtemps.</translation>
    </message>
    <message>
        <source>Open the demo.</source>
        <translation>Ouvrir l’exemple.</translation>
    </message>
    <message>
        <source>Speak the language CODE this time: %1.</source>
        <translation>Employer cette fois la langue CODE : %1.</translation>
    </message>
    <message>
        <source>--language %1: it must be one of %2.</source>
        <translation>--language %1 : choix possibles : %2.</translation>
    </message>
    <message>
        <source>--speed %1: it must be a number from 0.01 to 1000000.</source>
        <translation>--speed %1 : il faut un nombre de 0.01 à 1000000.</translation>
    </message>
    <message>
        <source>There is no screen to show the window on. Start it on a desktop (or set DISPLAY), or use basinbell, which plans and leads through a run in a terminal.</source>
        <translation>Il n’y a pas d’écran pour afficher la fenêtre. Lancez le programme sur un bureau (ou définissez DISPLAY), ou utilisez basinbell, qui planifie et guide une séance dans un terminal.</translation>
    </message>
</context>
<context>
    <name>Outcomes</name>
    <message>
        <source>as wanted</source>
        <translation>comme voulu</translation>
    </message>
    <message>
        <source>too light</source>
        <translation>trop clair</translation>
    </message>
    <message>
        <source>too dark</source>
        <translation>trop foncé</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>trop chaud</translation>
    </message>
    <message>
        <source>too cool (greenish)</source>
        <translation>trop froid (verdâtre)</translation>
    </message>
    <message>
        <source>uneven</source>
        <translation>irrégulier</translation>
    </message>
</context>
<context>
    <name>PlaceWords</name>
    <message>
        <source>Front hairline</source>
        <translation>Contour du visage</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Sommet</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Côtés</translation>
    </message>
    <message>
        <source>Nape</source>
        <translation>Nuque</translation>
    </message>
    <message>
        <source>Piece 1</source>
        <translation>Pièce 1</translation>
    </message>
    <message>
        <source>Piece 2</source>
        <translation>Pièce 2</translation>
    </message>
    <message>
        <source>Piece 3</source>
        <translation>Pièce 3</translation>
    </message>
    <message>
        <source>Piece 4</source>
        <translation>Pièce 4</translation>
    </message>
    <message>
        <source>roots</source>
        <translation>racines</translation>
    </message>
    <message>
        <source>mids</source>
        <translation>longueurs</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>pointes</translation>
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
        <translation>%1 prend jusqu’à %2 min (ou seulement %3)</translation>
    </message>
    <message numerus="yes">
        <source>%n heads together: begin %1, done %2.</source>
        <translation>
            <numerusform>%n tête : début %1, fini %2.</numerusform>
            <numerusform>%n têtes ensemble : début %1, fini %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Begin %1, done %2.</source>
        <translation>Début %1, fini %2.</translation>
    </message>
    <message>
        <source> Every zone gets its target.</source>
        <translation> Chaque zone atteint sa cible.</translation>
    </message>
    <message>
        <source> Some zones miss their target, all keep their limits.</source>
        <translation> Certaines zones manquent leur cible, toutes respectent leurs limites.</translation>
    </message>
    <message>
        <source> There may be a better plan: the search was stopped.</source>
        <translation> Il existe peut-être un meilleur plan : la recherche a été arrêtée.</translation>
    </message>
    <message>
        <source> Not every plan was tried: another may hold further.</source>
        <translation> Tous les plans n’ont pas été essayés : un autre peut tenir plus loin.</translation>
    </message>
    <message>
        <source>Holds only for the usual times of applying: where one takes longer or shorter, a limit may be missed.</source>
        <translation>Ne tient que pour les durées d’application habituelles : si l’une est plus longue ou plus courte, une limite peut être manquée.</translation>
    </message>
    <message>
        <source>Holds even if %1; beyond that a limit may be missed.</source>
        <translation>Tient même si %1 ; au-delà, une limite peut être manquée.</translation>
    </message>
    <message>
        <source>Holds even if %1.</source>
        <translation>Tient même si %1.</translation>
    </message>
    <message>
        <source>Forecast, with applying anywhere from quickest to slowest: every zone stays inside its limits %1. A chance, not a promise.</source>
        <translation>Prévision, avec une application du plus vite au plus lent : chaque zone reste dans ses limites %1. Une chance, pas une promesse.</translation>
    </message>
    <message>
        <source>, from %1 to %2</source>
        <translation>, de %1 à %2</translation>
    </message>
    <message>
        <source>; and: </source>
        <translation>; et : </translation>
    </message>
    <message>
        <source>Then every zone gets its target, from %1 to %2.</source>
        <translation>Alors chaque zone atteint sa cible, de %1 à %2.</translation>
    </message>
    <message>
        <source>Then it fits from %1 to %2, off target by %3 zone-minutes in all.</source>
        <translation>Alors tout tient de %1 à %2, à %3 minutes-zone de la cible en tout.</translation>
    </message>
</context>
<context>
    <name>PreparationText</name>
    <message>
        <source>not checked</source>
        <translation>pas vérifié</translation>
    </message>
    <message>
        <source>open</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>heard</source>
        <translation>entendu</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>none, watch the screen</source>
        <translation>aucun, surveillez l’écran</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>passé</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Son</translation>
    </message>
    <message>
        <source>Skin and strand tests</source>
        <translation>Tests de peau et de mèche</translation>
    </message>
    <message>
        <source>Strand test</source>
        <translation>Test de mèche</translation>
    </message>
    <message>
        <source>Gloves, apron, air</source>
        <translation>Gants, tablier, air</translation>
    </message>
    <message>
        <source>Bowls in order</source>
        <translation>Bols dans l’ordre</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>said at %1</source>
        <translation>dit à %1</translation>
    </message>
    <message>
        <source>%1; said at %2</source>
        <translation>%1 ; dit à %2</translation>
    </message>
    <message>
        <source>Play each alarm and listen from where you work. As long as nobody has heard them, every step that is due fills the screen at once.</source>
        <translation>Faites sonner chaque alarme et écoutez depuis l’endroit où vous travaillez. Tant que personne ne les a entendues, chaque étape due remplit aussitôt l’écran.</translation>
    </message>
    <message>
        <source>Which tests there are, when they are made and who reads them is said by the product&apos;s leaflet, by local rules and by licensed practice. Having them written down here makes nothing safe.</source>
        <translation>Quels tests il y a, quand ils se font et qui les lit, c’est la notice du produit, les règles locales et la pratique agréée qui le disent. Les noter ici ne rend rien sûr.</translation>
    </message>
    <message>
        <source>Try what is mixed on a strand of this hair first, as the product&apos;s leaflet says.</source>
        <translation>Essayez d’abord le mélange sur une mèche de ces cheveux, comme le dit la notice du produit.</translation>
    </message>
    <message>
        <source>Gloves and apron on, fresh air in the room, and eyes covered while powder is mixed. The product&apos;s leaflet and local rules say what else is needed.</source>
        <translation>Gants et tablier mis, air frais dans la pièce, et yeux protégés pendant qu’on mélange de la poudre. La notice du produit et les règles locales disent ce qu’il faut encore.</translation>
    </message>
    <message>
        <source>Set bowls, brushes and what goes into them out in the order of mixing. There is no plan yet that gives the order.</source>
        <translation>Préparez bols, pinceaux et ce qui y va dans l’ordre des mélanges. Il n’y a pas encore de plan qui donne l’ordre.</translation>
    </message>
    <message>
        <source>Set bowls, brushes and what goes into them out in this order: %1. A bowl ages from when it is mixed, so mix each at its time.</source>
        <translation>Préparez bols, pinceaux et ce qui y va dans cet ordre : %1. Un bol vieillit dès qu’il est mélangé ; mélangez chacun à son heure.</translation>
    </message>
    <message>
        <source>Listen …</source>
        <translation>Écouter …</translation>
    </message>
    <message>
        <source>Made and read</source>
        <translation>Faits et lus</translation>
    </message>
    <message>
        <source>All there</source>
        <translation>Tout est là</translation>
    </message>
    <message>
        <source>Set out</source>
        <translation>Préparés</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1, ready by %2</source>
        <translation>%1, prêt à %2</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Still open (F4): %1. You can start all the same.</source>
        <translation>Encore à faire (F4) : %1. Vous pouvez commencer quand même.</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>%1 was not written: %2. What was there before is as it was.</source>
        <translation>%1 n’a pas été écrit : %2. Ce qui y était avant est resté tel quel.</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Prestation</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>service, head</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1, times in %2</source>
        <translation>%1, heures de %2</translation>
    </message>
    <message>
        <source>. The clocks change while this lasts; +01:00 and the like is the distance from UTC</source>
        <translation>. L’heure change entre-temps ; +01:00 et autres indiquent l’écart avec UTC</translation>
    </message>
    <message>
        <source>%1. As it stood at %2</source>
        <translation>%1. État à %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>coat, what</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>goes on</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>by the hands that apply %1</source>
        <translation>par la personne qui applique %1</translation>
    </message>
    <message>
        <source>basin %1</source>
        <translation>bac %1</translation>
    </message>
    <message>
        <source>then %1 by itself</source>
        <translation>puis %1 sans personne</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>Dans l’ordre</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Really</source>
        <translation>En réalité</translation>
    </message>
    <message>
        <source>counted from the first strand</source>
        <translation>compté à partir de la première mèche</translation>
    </message>
    <message>
        <source>the first strand carries it %1 of at most %2</source>
        <translation>la première mèche le porte %1 sur %2 au plus</translation>
    </message>
    <message>
        <source>the last strand carries it %1 of at least %2</source>
        <translation>la dernière mèche le porte %1 sur %2 au moins</translation>
    </message>
    <message>
        <source>rinsed by itself</source>
        <translation>rincée seule</translation>
    </message>
    <message>
        <source>Limits, and what is expected (in minutes)</source>
        <translation>Limites, et ce qui est attendu (en minutes)</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Goes on</source>
        <translation>Application</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Au moins</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Au plus</translation>
    </message>
    <message>
        <source>Develops</source>
        <translation>Pose</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>moments</comment>
        <translation>%1 à %2</translation>
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
        <translation>Bols, dans l’ordre du mélange</translation>
    </message>
    <message>
        <source>Mix at</source>
        <translation>Mélanger à</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Bol</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Utiliser</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Ce qu’on y met</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>There is no unfinished run to take up.</source>
        <translation>Il n’y a pas de séance inachevée à reprendre.</translation>
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
        <translation>Maj</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Suppr</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>PgUp</source>
        <translation>Pg préc</translation>
    </message>
    <message>
        <source>PgDown</source>
        <translation>Pg suiv</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
</context>
<context>
    <name>RecordCard</name>
    <message>
        <source>Service</source>
        <translation>Prestation</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>service, head</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Record card. %1, %2 to %3, times in %4</source>
        <translation>Fiche. %1, %2 à %3, heures de %4</translation>
    </message>
    <message>
        <source>. Not ended yet</source>
        <translation>. Pas encore terminée</translation>
    </message>
    <message>
        <source>Nothing of this was begun.</source>
        <translation>Rien de cela n’a été commencé.</translation>
    </message>
    <message>
        <source>%1 (planned %2)</source>
        <translation>%1 (prévu %2)</translation>
    </message>
    <message>
        <source>What each zone got (in minutes; dashed in the picture: as first planned)</source>
        <translation>Ce que chaque zone a eu (en minutes ; en tirets dans l’image : comme prévu d’abord)</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>First strand</source>
        <translation>Première mèche</translation>
    </message>
    <message>
        <source>Last strand</source>
        <translation>Dernière mèche</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Min.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Max.</translation>
    </message>
    <message>
        <source>Developed</source>
        <translation>Pose</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>minutes, how far off target</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>How it turned out</source>
        <translation>Le résultat</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dit</translation>
    </message>
    <message>
        <source>For next time: %1</source>
        <translation>Pour la prochaine fois : %1</translation>
    </message>
    <message>
        <source>What was mixed</source>
        <translation>Ce qui a été mélangé</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Mélangé</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Bol</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Ce qu’on y met</translation>
    </message>
    <message>
        <source>left</source>
        <translation>laissée</translation>
    </message>
    <message>
        <source>again in %1</source>
        <translation>de nouveau dans %1</translation>
    </message>
    <message>
        <source>rinsed now</source>
        <translation>rincée aussitôt</translation>
    </message>
    <message>
        <source>Looks, heat, and what was left out</source>
        <translation>Contrôles, chaleur, et ce qui a été omis</translation>
    </message>
    <message>
        <source>At</source>
        <translation>À</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Came of it</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Vu</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>Contrôler %1</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Chaleur</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>jusqu’à %1</translation>
    </message>
    <message>
        <source>no end said</source>
        <translation>fin non indiquée</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omis</translation>
    </message>
    <message>
        <source>Changed while it went on</source>
        <translation>Changé en cours de route</translation>
    </message>
    <message>
        <source>Said before the start</source>
        <translation>Dit avant le départ</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
</context>
<context>
    <name>Results</name>
    <message>
        <source>on target</source>
        <translation>à la cible</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 de moins</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>%1 de plus</translation>
    </message>
</context>
<context>
    <name>Sentences</name>
    <message numerus="yes">
        <source>%n.</source>
        <comment>an ordinal number, such as 2nd</comment>
        <translation>
            <numerusform>%ner</numerusform>
            <numerusform>%ne</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ServiceFiles</name>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 ne peut pas être lu : %2.</translation>
    </message>
    <message>
        <source>%1 was not saved: %2. What was there before is as it was.</source>
        <translation>%1 n’a pas été enregistré : %2. Ce qui y était est resté tel quel.</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>The clock of this machine agrees with this run again.</source>
        <translation>L’horloge de cette machine s’accorde de nouveau avec cette séance.</translation>
    </message>
    <message>
        <source>The clock of this machine was set, or is wrong: it is %1 ahead of this run.</source>
        <translation>L’horloge de cette machine a été réglée, ou est fausse : elle avance de %1 sur cette séance.</translation>
    </message>
    <message>
        <source>The clock of this machine was set, or is wrong: it is %1 behind this run.</source>
        <translation>L’horloge de cette machine a été réglée, ou est fausse : elle retarde de %1 sur cette séance.</translation>
    </message>
    <message>
        <source>Nothing is lost: the run goes on by the time that really passes, and by the clock as it was.</source>
        <translation>Rien n’est perdu : la séance continue selon le temps qui passe vraiment, et selon l’horloge telle qu’elle était.</translation>
    </message>
    <message>
        <source>This run is damaged in the journal: its service was changed there. It cannot be taken up again; the journal has been left as it is.</source>
        <translation>Cette séance est abîmée dans le journal : sa prestation y a été changée. Elle ne peut plus être reprise ; le journal est resté tel quel.</translation>
    </message>
    <message>
        <source>This run goes by the time of day and cannot be played at another speed.</source>
        <translation>Cette séance suit l’heure du jour et ne peut pas se jouer à une autre vitesse.</translation>
    </message>
    <message>
        <source>The clock of this machine shows an earlier time than when this run was last answered. Put the clock right and start again, or every time that is shown will be wrong.</source>
        <translation>L’horloge de cette machine montre une heure antérieure à la dernière réponse de cette séance. Réglez l’horloge et redémarrez, sinon toute heure affichée sera fausse.</translation>
    </message>
    <message>
        <source>This machine was started anew since this run was last led, so the run goes by the machine&apos;s clock again. If that clock is wrong, so is every time that is shown.</source>
        <translation>Cette machine a redémarré depuis cette séance, qui suit donc de nouveau l’horloge de la machine. Si cette horloge est fausse, toute heure affichée l’est aussi.</translation>
    </message>
    <message numerus="yes">
        <source>Leaving this run loses its last %n answers: the journal could not be written.</source>
        <translation>
            <numerusform>Quitter cette séance perd sa dernière réponse : le journal n’a pas pu être écrit.</numerusform>
            <numerusform>Quitter cette séance perd ses %n dernières réponses : le journal n’a pas pu être écrit.</numerusform>
        </translation>
    </message>
    <message>
        <source>The journal can be written again, and everything of this run is in it.</source>
        <translation>Le journal peut de nouveau s’écrire, et tout de cette séance s’y trouve.</translation>
    </message>
    <message>
        <source>This run goes on, but what is answered now is lost if the program stops. It is written as soon as that is possible again.</source>
        <translation>Cette séance continue, mais ce qui est répondu maintenant est perdu si le programme s’arrête. C’est écrit dès que c’est de nouveau possible.</translation>
    </message>
    <message>
        <source>The service of this run was erased, so it cannot be taken up again.</source>
        <translation>La prestation de cette séance a été effacée, elle ne peut donc plus être reprise.</translation>
    </message>
    <message>
        <source>The service of this run cannot be read any more: %1</source>
        <translation>La prestation de cette séance ne peut plus être lue : %1</translation>
    </message>
    <message>
        <source>This run is damaged in the journal: its service was changed there, so it cannot be told again.</source>
        <translation>Cette séance est endommagée dans le journal : sa prestation y a été modifiée, elle ne peut donc plus être racontée.</translation>
    </message>
    <message>
        <source>Of a run that is over only how it turned out can be said.</source>
        <translation>D’une séance terminée, on ne peut dire que le résultat.</translation>
    </message>
    <message>
        <source>This run was erased. Nothing can be said of it any more.</source>
        <translation>Cette séance a été effacée. On ne peut plus rien en dire.</translation>
    </message>
</context>
<context>
    <name>Speech</name>
    <message>
        <source>S&amp;peak the alarms</source>
        <translation>É&amp;noncer les alarmes</translation>
    </message>
    <message>
        <source>Alarms are spoken.</source>
        <translation>Les alarmes sont énoncées.</translation>
    </message>
    <message>
        <source>%1 (no voice was found)</source>
        <translation>%1 (aucune voix trouvée)</translation>
    </message>
</context>
<context>
    <name>StartText</name>
    <message>
        <source>water %1 instead of %2</source>
        <translation>eau à %1 au lieu de %2</translation>
    </message>
    <message>
        <source>water of %1 %2 instead of %3</source>
        <translation>eau de %1 à %2 au lieu de %3</translation>
    </message>
    <message>
        <source>%1 develops %2 min instead of %3 min</source>
        <translation>%1 pose %2 min au lieu de %3 min</translation>
    </message>
    <message numerus="yes">
        <source>%n zones more develop for another time</source>
        <translation>
            <numerusform>%n autre zone pose un autre temps</numerusform>
            <numerusform>%n autres zones posent un autre temps</numerusform>
        </translation>
    </message>
    <message>
        <source>begin %1 instead of %2</source>
        <translation>début à %1 au lieu de %2</translation>
    </message>
    <message>
        <source>done %1 instead of %2</source>
        <translation>fini à %1 au lieu de %2</translation>
    </message>
    <message>
        <source>Every zone gets its target.</source>
        <translation>Chaque zone atteint sa cible.</translation>
    </message>
    <message>
        <source>Off target by %1 zone-minutes in all, as before.</source>
        <translation>À %1 minutes-zone de la cible en tout, comme avant.</translation>
    </message>
    <message>
        <source>Off target by %1 zone-minutes in all, %2 before; every limit holds.</source>
        <translation>À %1 minutes-zone de la cible en tout, %2 avant ; chaque limite tient.</translation>
    </message>
    <message>
        <source>%1 starts %2, as planned</source>
        <translation>%1 commence à %2, comme prévu</translation>
    </message>
    <message>
        <source>%1 starts %2 instead of %3</source>
        <translation>%1 commence à %2 au lieu de %3</translation>
    </message>
    <message>
        <source>%1; nothing else changes.</source>
        <translation>%1 ; rien d’autre ne change.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>Applying may be less off its usual times.</source>
        <translation>L’application peut moins s’écarter de ses durées habituelles.</translation>
    </message>
    <message>
        <source>%1 cannot start later than %2.</source>
        <translation>%1 ne peut pas commencer après %2.</translation>
    </message>
    <message>
        <source>%1 cannot start later than %2: %3.</source>
        <translation>%1 ne peut pas commencer après %2 : %3.</translation>
    </message>
    <message>
        <source>%1 starts %2 by itself; only a later start can be chosen.</source>
        <translation>%1 commence de soi-même à %2 ; seul un début plus tardif peut être choisi.</translation>
    </message>
    <message>
        <source>With %1 not before %2 nothing fits: %3.</source>
        <translation>Avec %1 pas avant %2, rien ne tient : %3.</translation>
    </message>
    <message>
        <source>%1 not before %2</source>
        <translation>%1 pas avant %2</translation>
    </message>
    <message>
        <source>%1 whenever is best</source>
        <translation>%1 au meilleur moment</translation>
    </message>
</context>
<context>
    <name>StartingPoints</name>
    <message>
        <source>Regrowth and ends</source>
        <translation>Repousse et pointes</translation>
    </message>
    <message>
        <source>Regrowth colour</source>
        <translation>Couleur repousse</translation>
    </message>
    <message>
        <source>Ends colour</source>
        <translation>Couleur pointes</translation>
    </message>
    <message>
        <source>Regrowth</source>
        <translation>Repousse</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Pointes</translation>
    </message>
    <message>
        <source>Emulsify</source>
        <translation>Émulsionner</translation>
    </message>
    <message>
        <source>Root with mids and ends</source>
        <translation>Racines, longueurs et pointes</translation>
    </message>
    <message>
        <source>Root colour</source>
        <translation>Couleur racines</translation>
    </message>
    <message>
        <source>Mids toner</source>
        <translation>Patine longueurs</translation>
    </message>
    <message>
        <source>Ends toner</source>
        <translation>Patine pointes</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Racines</translation>
    </message>
    <message>
        <source>Mids</source>
        <translation>Longueurs</translation>
    </message>
    <message>
        <source>Lightener in sections</source>
        <translation>Décoloration par sections</translation>
    </message>
    <message>
        <source>Lightener, first bowl</source>
        <translation>Décolorant, premier bol</translation>
    </message>
    <message>
        <source>Lightener, second bowl</source>
        <translation>Décolorant, second bol</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Arrière</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Côtés</translation>
    </message>
    <message>
        <source>Back left</source>
        <translation>Arrière gauche</translation>
    </message>
    <message>
        <source>Back right</source>
        <translation>Arrière droit</translation>
    </message>
    <message>
        <source>Side left</source>
        <translation>Côté gauche</translation>
    </message>
    <message>
        <source>Side right</source>
        <translation>Côté droit</translation>
    </message>
    <message>
        <source>All over, with a fill first</source>
        <translation>Toute la tête, après prépigmentation</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Prépigment</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Prépigmentation</translation>
    </message>
    <message>
        <source>All over</source>
        <translation>Toute la tête</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Couleur</translation>
    </message>
    <message>
        <source>All-over colour</source>
        <translation>Couleur toute la tête</translation>
    </message>
    <message>
        <source>Times are common practice: put in those of the product&apos;s leaflet.</source>
        <translation>Les temps sont d’usage courant : mettez ceux de la notice du produit.</translation>
    </message>
    <message>
        <source>&amp;Regrowth and ends</source>
        <translation>&amp;Repousse et pointes</translation>
    </message>
    <message>
        <source>R&amp;oot with mids and ends</source>
        <translation>R&amp;acines, longueurs et pointes</translation>
    </message>
    <message>
        <source>&amp;Lightener in sections</source>
        <translation>&amp;Décoloration par sections</translation>
    </message>
    <message>
        <source>&amp;All over, with a fill first</source>
        <translation>&amp;Toute la tête, après prépigmentation</translation>
    </message>
</context>
<context>
    <name>Strands</name>
    <message>
        <source>Water %1</source>
        <translation>Eau %1</translation>
    </message>
    <message>
        <source>Now %1</source>
        <translation>Maintenant %1</translation>
    </message>
    <message>
        <source>%1 min · %2 to %3</source>
        <translation>%1 min · %2 à %3</translation>
    </message>
</context>
<context>
    <name>Text</name>
    <message>
        <source>process %1</source>
        <translation>processus %1</translation>
    </message>
    <message>
        <source>process %1 of %2</source>
        <comment>of a user</comment>
        <translation>processus %1 de %2</translation>
    </message>
    <message>
        <source>Another Basinbell%1 is using the folder %2. Close it first, or give this one a folder of its own with --data.</source>
        <translation>Un autre Basinbell%1 emploie le dossier %2. Fermez-le d’abord, ou donnez à celui-ci son propre dossier avec --data.</translation>
    </message>
</context>
<context>
    <name>Tones</name>
    <message>
        <source>still orange</source>
        <translation>encore orange</translation>
    </message>
    <message>
        <source>still yellow</source>
        <translation>encore jaune</translation>
    </message>
    <message>
        <source>pale yellow</source>
        <translation>jaune pâle</translation>
    </message>
    <message>
        <source>patchy</source>
        <translation>irrégulier</translation>
    </message>
    <message>
        <source>even</source>
        <translation>uniforme</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>trop chaud</translation>
    </message>
    <message>
        <source>turning ashy</source>
        <translation>vire au cendré</translation>
    </message>
    <message>
        <source>turning green</source>
        <translation>vire au vert</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Apply %1</source>
        <translation>Appliquer %1</translation>
    </message>
    <message>
        <source>Mix %1</source>
        <translation>Mélanger %1</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>Contrôler %1</translation>
    </message>
    <message>
        <source>Rinse %1</source>
        <translation>Rincer %1</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Sécher</translation>
    </message>
    <message>
        <source>Judge the result</source>
        <translation>Évaluer le résultat</translation>
    </message>
    <message>
        <source>Heat over the head</source>
        <translation>Chaleur sur la tête</translation>
    </message>
    <message>
        <source>Applying %1</source>
        <translation>Application de %1</translation>
    </message>
    <message>
        <source>Mixing %1</source>
        <translation>Mélange de %1</translation>
    </message>
    <message>
        <source>Rinsing %1</source>
        <translation>Rinçage de %1</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Séchage</translation>
    </message>
    <message>
        <source>Judging the result</source>
        <translation>Évaluation du résultat</translation>
    </message>
    <message>
        <source>Take the heat off</source>
        <translation>Ôter la chaleur</translation>
    </message>
    <message>
        <source>Water is on</source>
        <translation>L’eau coule</translation>
    </message>
    <message>
        <source>First strand is covered</source>
        <translation>1re mèche couverte</translation>
    </message>
    <message>
        <source>Mixing has begun</source>
        <translation>Mélange commencé</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Commencé</translation>
    </message>
    <message>
        <source>All of %1 is on</source>
        <translation>Tout est appliqué : %1</translation>
    </message>
    <message>
        <source>It is mixed</source>
        <translation>C’est mélangé</translation>
    </message>
    <message>
        <source>Rinsed out</source>
        <translation>Rincé</translation>
    </message>
    <message>
        <source>Dryer is off my hands</source>
        <translation>Le séchoir n’a plus besoin de moi</translation>
    </message>
    <message>
        <source>Heat is off</source>
        <translation>Chaleur ôtée</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>dans %1</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>due %1 min ago</source>
        <translation>attendu depuis %1 min</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>whose, what</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>All done</source>
        <translation>Tout est fait</translation>
    </message>
    <message>
        <source>Nothing to do just now</source>
        <translation>Rien à faire pour l’instant</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Maintenant : %1</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Ensuite : %1</translation>
    </message>
    <message>
        <source>the latest safe start was %1, %2 ago</source>
        <translation>le dernier départ sûr était %1, il y a %2</translation>
    </message>
    <message>
        <source>, if all takes as usual</source>
        <translation>, si tout dure comme d’habitude</translation>
    </message>
    <message>
        <source>at the latest %1, %2</source>
        <translation>au plus tard %1, %2</translation>
    </message>
    <message>
        <source>latest was %1</source>
        <translation>au plus tard : %1, passé</translation>
    </message>
    <message>
        <source>, if as usual</source>
        <translation>, si habituel</translation>
    </message>
    <message>
        <source>latest %1, %2</source>
        <translation>au plus tard %1, %2</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>en attente</translation>
    </message>
    <message>
        <source>being applied</source>
        <translation>en application</translation>
    </message>
    <message>
        <source>developing</source>
        <translation>en pose</translation>
    </message>
    <message>
        <source>under water</source>
        <translation>sous l’eau</translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation>rincé</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>laissé de côté</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>late to apply</source>
        <translation>en retard d’application</translation>
    </message>
    <message>
        <source>until you apply</source>
        <translation>avant l’application</translation>
    </message>
    <message>
        <source>longer than planned</source>
        <translation>plus long que prévu</translation>
    </message>
    <message>
        <source>of applying left</source>
        <translation>d’application restants</translation>
    </message>
    <message>
        <source>past planned water</source>
        <translation>après l’eau prévue</translation>
    </message>
    <message>
        <source>until water</source>
        <translation>avant l’eau</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bientôt</translation>
    </message>
    <message>
        <source>late</source>
        <translation>en retard</translation>
    </message>
    <message>
        <source>%1 is past its limit</source>
        <translation>%1 : limite dépassée</translation>
    </message>
    <message>
        <source>%1 nears its limit</source>
        <translation>%1 : limite proche</translation>
    </message>
    <message>
        <source>Soon: %1</source>
        <translation>Bientôt : %1</translation>
    </message>
    <message>
        <source>Should be done: %1</source>
        <translation>Devrait être fait : %1</translation>
    </message>
    <message>
        <source>Look now: %1</source>
        <translation>Contrôler maintenant : %1</translation>
    </message>
    <message>
        <source>Rinse now: %1</source>
        <translation>Rincer maintenant : %1</translation>
    </message>
    <message>
        <source>Due now.</source>
        <translation>À faire maintenant.</translation>
    </message>
    <message>
        <source>Waiting for you: %1 min.</source>
        <translation>Vous attend depuis %1 min.</translation>
    </message>
    <message>
        <source>Also: %1.</source>
        <translation>Aussi : %1.</translation>
    </message>
    <message>
        <source>Soon: %1, strand test</source>
        <translation>Bientôt : %1, test de mèche</translation>
    </message>
    <message>
        <source>%1: strand test</source>
        <translation>%1 : test de mèche</translation>
    </message>
    <message>
        <source>Soon: rinse %1</source>
        <translation>Bientôt : rincer %1</translation>
    </message>
    <message>
        <source>%1: has it ended?</source>
        <translation>%1 : est-ce terminé ?</translation>
    </message>
    <message>
        <source>Carry on with the least harm</source>
        <translation>Continuer avec le moindre mal</translation>
    </message>
    <message>
        <source>Every limit holds</source>
        <translation>Toutes les limites tiennent</translation>
    </message>
    <message>
        <source>1 limit is passed by %1</source>
        <translation>1 limite est dépassée de %1</translation>
    </message>
    <message numerus="yes">
        <source>%n limits are passed by %1 in all</source>
        <translation>
            <numerusform>%n limite est dépassée de %1</numerusform>
            <numerusform>%n limites sont dépassées de %1 en tout</numerusform>
        </translation>
    </message>
    <message>
        <source>  ·  zone-minutes: %1 short, %2 past the targets</source>
        <translation>  ·  minutes-zone : %1 en deçà, %2 au-delà des cibles</translation>
    </message>
    <message>
        <source>every time</source>
        <translation>à chaque fois</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>over 99 in 100</source>
        <translation>plus de 99 sur 100</translation>
    </message>
    <message>
        <source>under 1 in 100</source>
        <translation>moins de 1 sur 100</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 sur 100</translation>
    </message>
    <message>
        <source>%1 min, at least %2, at most %3</source>
        <translation>%1 min, au moins %2, au plus %3</translation>
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
        <translation>Le mélange d’où on l’applique</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Rinçage</translation>
    </message>
    <message>
        <source>The rinse group it goes under the water with</source>
        <translation>Le groupe de rinçage avec lequel elle passe sous l’eau</translation>
    </message>
    <message>
        <source>all applied</source>
        <translation>tout appliqué</translation>
    </message>
    <message>
        <source>first strand</source>
        <translation>première mèche</translation>
    </message>
    <message>
        <source>Counts from</source>
        <translation>Compte dès</translation>
    </message>
    <message>
        <source>When the leaflet starts to count development</source>
        <translation>Quand la notice commence à compter la pose</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>Alone</source>
        <translation>Seule</translation>
    </message>
    <message>
        <source>Can be rinsed without wetting its neighbours</source>
        <translation>Peut se rincer sans mouiller ses voisines</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>Minutes of development to aim at</source>
        <translation>Minutes de pose visées</translation>
    </message>
    <message>
        <source>First look</source>
        <translation>1er contrôle</translation>
    </message>
    <message>
        <source>Minutes of development at the first strand test; empty for none</source>
        <translation>Minutes de pose au premier test de mèche ; vide pour aucun</translation>
    </message>
    <message>
        <source>Then every</source>
        <translation>Puis toutes les</translation>
    </message>
    <message>
        <source>Minutes between looks; empty for one look</source>
        <translation>Minutes entre les contrôles ; vide pour un seul</translation>
    </message>
    <message>
        <source>A look</source>
        <translation>Un contrôle</translation>
    </message>
    <message>
        <source>Minutes that one look takes</source>
        <translation>Minutes que dure un contrôle</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Après</translation>
    </message>
    <message>
        <source>Zones that must be applied before it</source>
        <translation>Zones à appliquer avant elle</translation>
    </message>
    <message>
        <source>Name zones of this coat, with commas between them.</source>
        <translation>Nommez des zones de ce passage, séparées par des virgules.</translation>
    </message>
    <message>
        <source>%1 %2, %3 before water</source>
        <comment>a job, how long it takes, when</comment>
        <translation>%1 %2, %3 avant l’eau</translation>
    </message>
    <message>
        <source>Late jobs</source>
        <translation>Derniers gestes</translation>
    </message>
    <message>
        <source>Hands-on jobs tied to the rinse, such as: Emulsify 2, 5 before water</source>
        <translation>Gestes liés au rinçage, par exemple : Émulsionner 2, 5 avant l’eau</translation>
    </message>
    <message>
        <source>Type the job, its minutes, and how many minutes before water it starts: Emulsify 2, 5 before water. A semicolon stands between several.</source>
        <translation>Saisissez le geste, ses minutes, et combien de minutes avant l’eau il commence : Émulsionner 2, 5 avant l’eau. Un point-virgule sépare plusieurs gestes.</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>What this part of the head is called</source>
        <translation>Comment s’appelle cette partie de la tête</translation>
    </message>
    <message>
        <source>Quickest</source>
        <translation>Plus vite</translation>
    </message>
    <message>
        <source>Minutes to apply at the quickest</source>
        <translation>Minutes d’application au plus vite</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Habituel</translation>
    </message>
    <message>
        <source>Minutes to apply as a rule</source>
        <translation>Minutes d’application en général</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>Plus lent</translation>
    </message>
    <message>
        <source>Minutes to apply at the slowest</source>
        <translation>Minutes d’application au plus lent</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Au moins</translation>
    </message>
    <message>
        <source>Fewest minutes of development, from the leaflet</source>
        <translation>Minutes de pose au moins, selon la notice</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Au plus</translation>
    </message>
    <message>
        <source>Most minutes of development, from the leaflet</source>
        <translation>Minutes de pose au plus, selon la notice</translation>
    </message>
    <message>
        <source>First strand</source>
        <translation>1re mèche</translation>
    </message>
    <message>
        <source>Most minutes the first strand may carry the mixture, until water</source>
        <translation>Minutes au plus que la première mèche peut porter le mélange, jusqu’à l’eau</translation>
    </message>
    <message>
        <source>Last strand</source>
        <translation>Dern. mèche</translation>
    </message>
    <message>
        <source>Fewest minutes the last strand must carry it, until water</source>
        <translation>Minutes au moins que la dernière mèche doit le porter, jusqu’à l’eau</translation>
    </message>
    <message>
        <source>Applying, min</source>
        <translation>Application, min</translation>
    </message>
    <message>
        <source>Development, min</source>
        <translation>Pose, min</translation>
    </message>
    <message>
        <source>Looks, min</source>
        <translation>Contrôles, min</translation>
    </message>
    <message>
        <source>Rinsing</source>
        <translation>Rinçage</translation>
    </message>
    <message>
        <source>Until water, min</source>
        <translation>Jusqu’à l’eau, min</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Commence</translation>
    </message>
</context>
<context>
    <name>app::desktop::AlertPanel</name>
    <message>
        <source>%1  (Enter)</source>
        <translation>%1  (Entrée)</translation>
    </message>
    <message>
        <source>Water is on %1</source>
        <translation>L’eau coule sur %1</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Commencé</translation>
    </message>
</context>
<context>
    <name>app::desktop::BasicsPanel</name>
    <message>
        <source>&amp;Ready by</source>
        <translation>Prêt p&amp;our</translation>
    </message>
    <message>
        <source>the service&apos;s name</source>
        <translation>le nom de la prestation</translation>
    </message>
    <message>
        <source>what is coloured</source>
        <translation>ce qui est coloré</translation>
    </message>
    <message>
        <source>the time to spare</source>
        <translation>la marge de temps</translation>
    </message>
    <message>
        <source>the basins</source>
        <translation>les bacs</translation>
    </message>
    <message>
        <source>a person</source>
        <translation>une personne</translation>
    </message>
    <message>
        <source>a wig</source>
        <translation>une perruque</translation>
    </message>
    <message>
        <source>wefts</source>
        <translation>tissages</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation>Prêt pour</translation>
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
        <translation>Presta&amp;tion</translation>
    </message>
    <message>
        <source>&amp;On</source>
        <translation>Su&amp;r</translation>
    </message>
    <message>
        <source>S&amp;pare</source>
        <translation>&amp;Marge</translation>
    </message>
    <message>
        <source>&amp;Basins</source>
        <translation>Ba&amp;cs</translation>
    </message>
    <message>
        <source>when it is ready</source>
        <translation>l’heure où c’est prêt</translation>
    </message>
    <message>
        <source>a time to be ready by</source>
        <translation>une heure à tenir</translation>
    </message>
    <message>
        <source>no time to be ready by</source>
        <translation>aucune heure à tenir</translation>
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
        <translation>Fiche</translation>
    </message>
</context>
<context>
    <name>app::desktop::CautionsDialog</name>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>The leaflet of the product comes first</source>
        <translation>La notice du produit passe avant tout</translation>
    </message>
    <message>
        <source>I have read them, go on  (Enter)</source>
        <translation>J’ai lu, continuer  (Entrée)</translation>
    </message>
    <message>
        <source>Close  (Enter)</source>
        <translation>Fermer  (Entrée)</translation>
    </message>
    <message>
        <source>Not yet  (Esc)</source>
        <translation>Pas encore  (Échap)</translation>
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
        <translation>il y a %1 min</translation>
    </message>
    <message>
        <source>Cautions  (F2)</source>
        <translation>Précautions  (F2)</translation>
    </message>
    <message>
        <source>End this run …</source>
        <translation>Terminer la séance …</translation>
    </message>
    <message>
        <source>Last: %1</source>
        <translation>Dernière : %1</translation>
    </message>
    <message>
        <source>Undo it  (Ctrl+Z)</source>
        <translation>Annuler  (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Undo (Ctrl+Z)</source>
        <translation>Annuler (Ctrl+Z)</translation>
    </message>
    <message>
        <source>It was earlier …  (E)</source>
        <translation>C’était plus tôt …  (E)</translation>
    </message>
    <message>
        <source>Earlier (E)</source>
        <translation>Plus tôt (E)</translation>
    </message>
    <message>
        <source>More …  (M)</source>
        <translation>Plus …  (M)</translation>
    </message>
    <message>
        <source>More (M)</source>
        <translation>Plus (M)</translation>
    </message>
    <message>
        <source>Quiet 2 min  (Q)</source>
        <translation>Silence 2 min  (Q)</translation>
    </message>
    <message>
        <source>Quiet (Q)</source>
        <translation>Silence (Q)</translation>
    </message>
    <message>
        <source>From afar  (F)</source>
        <translation>Vue de loin  (F)</translation>
    </message>
    <message>
        <source>Afar (F)</source>
        <translation>De loin (F)</translation>
    </message>
</context>
<context>
    <name>app::desktop::DesktopNotice</name>
    <message>
        <source>Show the lanes</source>
        <translation>Montrer les couloirs</translation>
    </message>
</context>
<context>
    <name>app::desktop::FileMenu</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Récents</translation>
    </message>
    <message>
        <source>&amp;Demo</source>
        <translation>&amp;Exemple</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Nouveau</translation>
    </message>
    <message>
        <source>&amp;Open …</source>
        <translation>&amp;Ouvrir …</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Enregistrer</translation>
    </message>
    <message>
        <source>Save &amp;as …</source>
        <translation>Enregistrer &amp;sous …</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>Before the premiere: three heads</source>
        <translation>Avant la première : trois têtes</translation>
    </message>
    <message>
        <source>From &amp;files …</source>
        <translation>Depuis des &amp;fichiers …</translation>
    </message>
    <message>
        <source>A &amp;new one</source>
        <translation>Une &amp;nouvelle</translation>
    </message>
    <message>
        <source>The &amp;same once more</source>
        <translation>La &amp;même encore une fois</translation>
    </message>
    <message>
        <source>From a s&amp;tarting point</source>
        <translation>Depuis un m&amp;odèle</translation>
    </message>
    <message>
        <source>A &amp;demo</source>
        <translation>Un &amp;exemple</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Rien encore</translation>
    </message>
    <message>
        <source>Service files (*.json)</source>
        <translation>Fichiers de prestation (*.json)</translation>
    </message>
    <message>
        <source>Open a service, or several that share a crew</source>
        <translation>Ouvrir une prestation, ou plusieurs d’une même équipe</translation>
    </message>
    <message>
        <source>Add heads</source>
        <translation>Ajouter des têtes</translation>
    </message>
    <message>
        <source>Beside what is here?</source>
        <translation>À côté de ce qui est là ?</translation>
    </message>
    <message>
        <source>Plan it together with what is here, or open it in its place?</source>
        <translation>Planifier avec ce qui est là, ou ouvrir à sa place ?</translation>
    </message>
    <message>
        <source>Plan together</source>
        <translation>Planifier ensemble</translation>
    </message>
    <message>
        <source>Open in its place</source>
        <translation>Ouvrir à sa place</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation>Non ouvert</translation>
    </message>
    <message>
        <source>%1 is not a service that can be opened.</source>
        <translation>%1 n’est pas une prestation qui puisse être ouverte.</translation>
    </message>
    <message>
        <source>Save the service</source>
        <translation>Enregistrer la prestation</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Non enregistré</translation>
    </message>
    <message>
        <source>Something is marked as wrong. Put it right first: a file that cannot be opened again is of no use.</source>
        <translation>Quelque chose est signalé comme faux. Corrigez d’abord : un fichier qui ne peut plus s’ouvrir ne sert à rien.</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Modifications non enregistrées</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 a des modifications non enregistrées.</translation>
    </message>
    <message>
        <source>These have changes that are not saved: %1.</source>
        <translation>Celles-ci ont des modifications non enregistrées : %1.</translation>
    </message>
    <message>
        <source>Add a &amp;head</source>
        <translation>&amp;Ajouter une tête</translation>
    </message>
    <message>
        <source>New, &amp;from a starting point</source>
        <translation>Nouveau depuis un &amp;modèle</translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadDrawing</name>
    <message>
        <source>Pieces of hair</source>
        <translation>Pièces de cheveux</translation>
    </message>
    <message>
        <source>The head from the side and from behind</source>
        <translation>La tête de profil et de dos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1: no zone</source>
        <translation>%1 : aucune zone</translation>
    </message>
    <message>
        <source>Press to take it from %1</source>
        <translation>Appuyez pour l’ôter à %1</translation>
    </message>
    <message>
        <source>Press to give it to %1</source>
        <translation>Appuyez pour la donner à %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadPanel</name>
    <message>
        <source>Choose a zone, then press where it is. The table of zones does not need it: nothing is planned by it.</source>
        <translation>Choisissez une zone, puis appuyez là où elle est. Le tableau des zones n’en a pas besoin : rien n’est planifié d’après cela.</translation>
    </message>
    <message numerus="yes">
        <source>on %n place(s)</source>
        <translation>
            <numerusform>à %n endroit</numerusform>
            <numerusform>à %n endroits</numerusform>
        </translation>
    </message>
    <message>
        <source>where %1 is</source>
        <translation>où est %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::HeadsBar</name>
    <message>
        <source>Take this head out</source>
        <translation>Retirer cette tête</translation>
    </message>
    <message>
        <source>These times are common practice, not those of a product. Put in what the product&apos;s leaflet says, and say so with its bowl.</source>
        <translation>Ces temps sont d’usage courant, non ceux d’un produit. Mettez ce que dit la notice, et notez-le auprès du bol.</translation>
    </message>
    <message>
        <source>Heads</source>
        <translation>Têtes</translation>
    </message>
    <message>
        <source>Name of the head</source>
        <translation>Nom de la tête</translation>
    </message>
    <message>
        <source>What prompts and alarms call this head. It is not kept in the record of a run.</source>
        <translation>Comment les invites et les alarmes nomment cette tête. Cela n’est pas gardé dans la trace d’une séance.</translation>
    </message>
    <message>
        <source>Add a head</source>
        <translation>Ajouter une tête</translation>
    </message>
    <message>
        <source>Ca&amp;lled</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>the head&apos;s name</source>
        <translation>le nom de la tête</translation>
    </message>
    <message>
        <source>%1 (something is wrong)</source>
        <translation>%1 (quelque chose ne va pas)</translation>
    </message>
</context>
<context>
    <name>app::desktop::HelpMenu</name>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;ide</translation>
    </message>
    <message>
        <source>This &amp;page</source>
        <translation>Cette pa&amp;ge</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Précautions</translation>
    </message>
    <message>
        <source>A short &amp;tour (not while lanes run)</source>
        <translation>Une courte &amp;visite (pas pendant que des couloirs sont en marche)</translation>
    </message>
    <message>
        <source>A short &amp;tour</source>
        <translation>Une courte &amp;visite</translation>
    </message>
</context>
<context>
    <name>app::desktop::HelpSheet</name>
    <message>
        <source>Close  (Esc)</source>
        <translation>Fermer  (Échap)</translation>
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
        <translation>Contrôle %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>, seen: %1</source>
        <translation>, vu : %1</translation>
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
            <numerusform>et %n de plus</numerusform>
            <numerusform>et %n de plus</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, next %2</source>
        <translation>%1, prochaine %2</translation>
    </message>
</context>
<context>
    <name>app::desktop::LanesPage</name>
    <message>
        <source>Try the sound  (F3)</source>
        <translation>Essayer le son  (F3)</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>J’ai lu</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>End that run …</source>
        <translation>Terminer cette séance …</translation>
    </message>
    <message>
        <source>Let it sound  (Shift+Q)</source>
        <translation>Laisser sonner  (Maj+Q)</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>%1  ·  coat %2 of %3: %4</source>
        <translation>%1  ·  passage %2 sur %3 : %4</translation>
    </message>
    <message>
        <source>Planned again: %1</source>
        <translation>Replanifié : %1</translation>
    </message>
    <message>
        <source>The plan is being worked out anew; until then the one before goes on.</source>
        <translation>Le plan est recalculé ; d’ici là, le précédent continue.</translation>
    </message>
    <message>
        <source>No alarm can be heard. %1 Keep the screen in view.</source>
        <translation>Aucune alarme ne s’entend. %1 Gardez l’écran en vue.</translation>
    </message>
    <message>
        <source>%1, silent until %2</source>
        <translation>%1, en silence jusqu’à %2</translation>
    </message>
    <message>
        <source>Applying %1 stopped; the rest is a zone of its own.</source>
        <translation>L’application de %1 s’est arrêtée ; le reste est une zone à part.</translation>
    </message>
    <message>
        <source>%1 is rinsed by itself.</source>
        <translation>%1 est rincé à part.</translation>
    </message>
    <message>
        <source>%1 is away for %2 min.</source>
        <translation>%1 s’absente %2 min.</translation>
    </message>
    <message>
        <source>%1 has come to help.</source>
        <translation>%1 est venu aider.</translation>
    </message>
    <message>
        <source>%1 has gone.</source>
        <translation>%1 est parti.</translation>
    </message>
    <message>
        <source>%1 is given up.</source>
        <translation>%1 est abandonné.</translation>
    </message>
    <message>
        <source>Heat is on. What it does to the mixtures only the product&apos;s leaflet says.</source>
        <translation>La chaleur est mise. Ce qu’elle fait aux mélanges, seule la notice le dit.</translation>
    </message>
    <message>
        <source>Heat is off.</source>
        <translation>La chaleur est ôtée.</translation>
    </message>
    <message>
        <source>%1 is a zone more.</source>
        <translation>%1 est une zone de plus.</translation>
    </message>
    <message>
        <source>That answer was taken back.</source>
        <translation>Cette réponse a été retirée.</translation>
    </message>
    <message>
        <source>That answer was put %1 min earlier.</source>
        <translation>Cette réponse a été avancée de %1 min.</translation>
    </message>
    <message>
        <source>That answer is about %1 now.</source>
        <translation>Cette réponse concerne maintenant %1.</translation>
    </message>
    <message>
        <source>Heat since %1</source>
        <translation>Chaleur depuis %1</translation>
    </message>
    <message>
        <source>, to be taken off at %1</source>
        <translation>, à ôter à %1</translation>
    </message>
    <message>
        <source>The windows and alarms stay those without heat; where the leaflet gives times with heat, go by those.</source>
        <translation>Fenêtres et alarmes restent celles sans chaleur ; si la notice donne des temps avec chaleur, suivez-les.</translation>
    </message>
    <message>
        <source>Chosen: %1.</source>
        <translation>Choisi : %1.</translation>
    </message>
    <message>
        <source>Say it  (O)</source>
        <translation>Le dire  (O)</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>It is over. How did it turn out?</source>
        <translation>C’est terminé. Quel est le résultat ?</translation>
    </message>
    <message>
        <source>%1: how did it turn out?</source>
        <translation>%1 : quel est le résultat ?</translation>
    </message>
</context>
<context>
    <name>app::desktop::LookChoices</name>
    <message>
        <source>A minute sooner</source>
        <translation>Une minute plus tôt</translation>
    </message>
    <message>
        <source>A minute later</source>
        <translation>Une minute plus tard</translation>
    </message>
    <message>
        <source>Tone seen</source>
        <translation>Ton observé</translation>
    </message>
    <message>
        <source>Leave it on  (1)</source>
        <translation>Laisser  (1)</translation>
    </message>
    <message>
        <source>Leave %1 on  (1)</source>
        <translation>Laisser %1  (1)</translation>
    </message>
    <message>
        <source>Leave (1)</source>
        <translation>Laisser (1)</translation>
    </message>
    <message>
        <source>Look again in %1 min  (2)</source>
        <translation>Revoir dans %1 min  (2)</translation>
    </message>
    <message>
        <source>%1 min (2)</source>
        <translation>%1 min (2)</translation>
    </message>
    <message numerus="yes">
        <source>Leave all %n on  (4)</source>
        <translation>
            <numerusform>Tout laisser  (4)</numerusform>
            <numerusform>Laisser les %n  (4)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n (4)</source>
        <translation>
            <numerusform>Tout (4)</numerusform>
            <numerusform>Les %n (4)</numerusform>
        </translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>Tone seen  (T)</source>
        <translation>Ton vu  (T)</translation>
    </message>
    <message>
        <source>Rinse (3)</source>
        <translation>Rincer (3)</translation>
    </message>
    <message>
        <source>Rinse, short (3)</source>
        <translation>Rincer, court (3)</translation>
    </message>
    <message>
        <source>Rinse, spreads (3)</source>
        <translation>Rincer, s’étend (3)</translation>
    </message>
    <message>
        <source>Rinse %1 now  (3)</source>
        <translation>Rincer %1  (3)</translation>
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
        <translation>s’étend</translation>
    </message>
    <message>
        <source>wets its neighbours</source>
        <translation>mouille ses voisines</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>court de %1</translation>
    </message>
    <message>
        <source>%1 short of its least</source>
        <translation>%1 sous le minimum</translation>
    </message>
    <message>
        <source>Leave it on</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>Look again
in %1 min</source>
        <translation>Revoir
dans %1 min</translation>
    </message>
    <message>
        <source>Rinse now</source>
        <translation>Rincer</translation>
    </message>
    <message>
        <source>Leave %1 on</source>
        <translation>Laisser %1</translation>
    </message>
    <message>
        <source>Look again at %1 in %2 min</source>
        <translation>Revoir %1 dans %2 min</translation>
    </message>
    <message>
        <source>Rinse %1 now</source>
        <translation>Rincer %1</translation>
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
        <translation>Préparation  (Ctrl+1)</translation>
    </message>
    <message>
        <source>Lanes  (Ctrl+2)</source>
        <translation>Couloirs  (Ctrl+2)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>É&amp;dition</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Séance</translation>
    </message>
    <message>
        <source>&amp;Start the lanes</source>
        <translation>&amp;Lancer les couloirs</translation>
    </message>
    <message>
        <source>Sound &amp;check …</source>
        <translation>&amp;Essai du son …</translation>
    </message>
    <message>
        <source>&amp;End this run …</source>
        <translation>&amp;Terminer la séance …</translation>
    </message>
    <message>
        <source>not saved anywhere yet</source>
        <translation>pas encore enregistré</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1, modifié</translation>
    </message>
    <message>
        <source>Undo my last answer</source>
        <translation>Annuler ma dernière réponse</translation>
    </message>
    <message>
        <source>Undo %1</source>
        <translation>Annuler : %1</translation>
    </message>
    <message>
        <source>Redo %1</source>
        <translation>Rétablir : %1</translation>
    </message>
    <message>
        <source>Taken up where it stopped. If something happened meanwhile, answer it and say how long ago it was.</source>
        <translation>Reprise là où elle s’était arrêtée. Si quelque chose s’est passé entre-temps, répondez-y et dites il y a combien de temps.</translation>
    </message>
    <message>
        <source>A run was left unfinished</source>
        <translation>Une séance est restée inachevée</translation>
    </message>
    <message>
        <source>It was begun long ago. Taken up now, everything in it is overdue and sounds at once.</source>
        <translation>Elle a commencé il y a longtemps. Reprise maintenant, tout y est en retard et sonne à la fois.</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>End it for good</source>
        <translation>Terminer pour de bon</translation>
    </message>
    <message>
        <source>Leave it for later</source>
        <translation>Laisser pour plus tard</translation>
    </message>
    <message>
        <source>End this run</source>
        <translation>Terminer la séance</translation>
    </message>
    <message>
        <source>End this run for good? Nothing sounds any more, and it cannot be taken up again.</source>
        <translation>Terminer cette séance pour de bon ? Plus rien ne sonne, et elle ne peut plus être reprise.</translation>
    </message>
    <message>
        <source>End it</source>
        <translation>Terminer</translation>
    </message>
    <message>
        <source>Keep it running</source>
        <translation>Laisser continuer</translation>
    </message>
    <message>
        <source>Basinbell</source>
        <translation>Basinbell</translation>
    </message>
    <message>
        <source>Lanes are running</source>
        <translation>Des couloirs tournent</translation>
    </message>
    <message>
        <source>Close the window while lanes run? No alarm sounds until it is opened again; the run is kept and goes on then.</source>
        <translation>Fermer la fenêtre alors que des couloirs tournent ? Aucune alarme ne sonne tant qu’elle n’est pas rouverte ; la séance est gardée et continue alors.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Keep it open</source>
        <translation>Laisser ouverte</translation>
    </message>
    <message>
        <source>&amp;How it turned out …</source>
        <translation>Le &amp;résultat …</translation>
    </message>
    <message>
        <source>&amp;Before the start</source>
        <translation>&amp;Avant le départ</translation>
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
        <translation>Quelle application s’arrête avant d’être finie ? Le reste devient une zone à part.</translation>
    </message>
    <message>
        <source>Which zone is rinsed by itself when its time comes? Its neighbours must stay dry.</source>
        <translation>Quelle zone est rincée à part quand son heure vient ? Ses voisines doivent rester sèches.</translation>
    </message>
    <message>
        <source>Who is away?</source>
        <translation>Qui s’absente ?</translation>
    </message>
    <message>
        <source>Who has gone for good?</source>
        <translation>Qui est parti pour de bon ?</translation>
    </message>
    <message>
        <source>Which zone is it like? It has the same bowl, window and looks.</source>
        <translation>À quelle zone ressemble-t-elle ? Elle a les mêmes bol, fenêtre et contrôles.</translation>
    </message>
    <message>
        <source>Applying %1 stops</source>
        <translation>L’application de %1 s’arrête</translation>
    </message>
    <message>
        <source>Applying stops</source>
        <translation>L’application s’arrête</translation>
    </message>
    <message>
        <source>It stops before it is done; the rest becomes a zone of its own, applied later.</source>
        <translation>Elle s’arrête avant d’être finie ; le reste devient une zone à part, appliquée plus tard.</translation>
    </message>
    <message>
        <source>Rinse a zone by itself …</source>
        <translation>Rincer une zone à part …</translation>
    </message>
    <message>
        <source>A zone more …</source>
        <translation>Une zone de plus …</translation>
    </message>
    <message>
        <source>Heat …</source>
        <translation>Chaleur …</translation>
    </message>
    <message>
        <source>Heat is on …</source>
        <translation>Chaleur mise …</translation>
    </message>
    <message>
        <source>Heat is off</source>
        <translation>Chaleur ôtée</translation>
    </message>
    <message>
        <source>An earlier answer …</source>
        <translation>Une réponse antérieure …</translation>
    </message>
    <message>
        <source>Give up this coat …</source>
        <translation>Abandonner ce passage …</translation>
    </message>
    <message>
        <source>Away …</source>
        <translation>Absence …</translation>
    </message>
    <message>
        <source>Somebody comes …</source>
        <translation>Quelqu’un arrive …</translation>
    </message>
    <message>
        <source>Somebody has gone …</source>
        <translation>Quelqu’un est parti …</translation>
    </message>
    <message>
        <source>For how long is %1 away, from now on?</source>
        <translation>Combien de temps %1 s’absente, à partir de maintenant ?</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Who comes to help?</source>
        <translation>Qui vient aider ?</translation>
    </message>
    <message>
        <source>Name of who comes to help</source>
        <translation>Nom de la personne qui vient aider</translation>
    </message>
    <message>
        <source>Comes to help  (Enter)</source>
        <translation>Vient aider  (Entrée)</translation>
    </message>
    <message>
        <source>Give up %1? Nothing more of it is begun; what is on the hair is still rinsed.</source>
        <translation>Abandonner %1 ? Plus rien n’en est commencé ; ce qui est sur les cheveux est encore rincé.</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Abandonner</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Which heat?</source>
        <translation>Quelle chaleur ?</translation>
    </message>
    <message>
        <source>%1: off</source>
        <translation>%1 : ôtée</translation>
    </message>
    <message>
        <source>%1: on …</source>
        <translation>%1 : mise …</translation>
    </message>
    <message>
        <source>For how long does the heat stay, as the leaflet says? The windows and alarms stay those without heat.</source>
        <translation>Combien de temps la chaleur reste-t-elle, selon la notice ? Fenêtres et alarmes restent celles sans chaleur.</translation>
    </message>
    <message>
        <source>That is not known</source>
        <translation>Ce n’est pas connu</translation>
    </message>
    <message>
        <source>What is the zone like %1 called, and how long does it take to apply?</source>
        <translation>Comment s’appelle la zone semblable à %1, et combien dure son application ?</translation>
    </message>
    <message>
        <source>Name of the zone</source>
        <translation>Nom de la zone</translation>
    </message>
    <message>
        <source>Minutes to apply it</source>
        <translation>Minutes d’application</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>as long as %1</source>
        <translation>autant que %1</translation>
    </message>
    <message>
        <source>Add it  (Enter)</source>
        <translation>Ajouter  (Entrée)</translation>
    </message>
    <message>
        <source>Which answer was not so?</source>
        <translation>Quelle réponse était fausse ?</translation>
    </message>
    <message>
        <source>%1. What was so?</source>
        <translation>%1. Qu’en était-il ?</translation>
    </message>
    <message>
        <source>It did not happen</source>
        <translation>Cela n’a pas eu lieu</translation>
    </message>
    <message>
        <source>%1 min earlier</source>
        <translation>%1 min plus tôt</translation>
    </message>
    <message>
        <source>It was %1</source>
        <translation>C’était %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::NowPanel</name>
    <message>
        <source>Skip it  (Del)</source>
        <translation>Passer  (Suppr)</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Ensuite : %1</translation>
    </message>
    <message>
        <source>%1  (Enter)</source>
        <translation>%1  (Entrée)</translation>
    </message>
    <message>
        <source>when the hands are free</source>
        <translation>quand les mains sont libres</translation>
    </message>
    <message>
        <source>%1 left, until %2</source>
        <translation>encore %1, jusqu’à %2</translation>
    </message>
    <message>
        <source>planned until %1</source>
        <translation>prévu jusqu’à %1</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <translation>%1, à %2</translation>
    </message>
    <message>
        <source>holds if it takes up to %1 min</source>
        <translation>tient si cela prend jusqu’à %1 min</translation>
    </message>
    <message>
        <source>%1 developing</source>
        <translation>%1 de pose</translation>
    </message>
    <message>
        <source>All done</source>
        <translation>Tout est fait</translation>
    </message>
    <message>
        <source>Nothing to do just now</source>
        <translation>Rien à faire pour l’instant</translation>
    </message>
    <message>
        <source>Every step of this run is answered.</source>
        <translation>Chaque étape de cette séance a sa réponse.</translation>
    </message>
    <message>
        <source>Put this run away  (Enter)</source>
        <translation>Ranger cette séance  (Entrée)</translation>
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
        <translation>Le résultat</translation>
    </message>
    <message>
        <source>How did %1 turn out?</source>
        <translation>Quel est le résultat de %1 ?</translation>
    </message>
    <message>
        <source>  It was said: %1.</source>
        <translation>  Il a été dit : %1.</translation>
    </message>
    <message>
        <source>In own words too, or instead  (Enter)</source>
        <translation>Aussi, ou seulement, en mots à soi  (Entrée)</translation>
    </message>
    <message>
        <source>Go on without</source>
        <translation>Continuer sans</translation>
    </message>
    <message>
        <source>What is to be thought of next time?</source>
        <translation>À quoi faut-il penser la prochaine fois ?</translation>
    </message>
    <message>
        <source>What is to be thought of next time?  It was said: %1.</source>
        <translation>À quoi faut-il penser la prochaine fois ?  Il a été dit : %1.</translation>
    </message>
    <message>
        <source>A note for next time  (Enter)</source>
        <translation>Une note pour la prochaine fois  (Entrée)</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Nothing to note</source>
        <translation>Rien à noter</translation>
    </message>
</context>
<context>
    <name>app::desktop::PartPanel</name>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Monter</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Descendre</translation>
    </message>
    <message>
        <source>adding a row</source>
        <translation>ajout d’une ligne</translation>
    </message>
    <message>
        <source>removing %1</source>
        <translation>retrait de %1</translation>
    </message>
    <message>
        <source>moving %1</source>
        <translation>déplacement de %1</translation>
    </message>
    <message>
        <source>Zones of coat %1</source>
        <translation>Zones du passage %1</translation>
    </message>
    <message>
        <source>Bowls of coat %1</source>
        <translation>Bols du passage %1</translation>
    </message>
    <message>
        <source>Rinse groups of coat %1</source>
        <translation>Groupes de rinçage du passage %1</translation>
    </message>
    <message>
        <source>Coats and their drying</source>
        <translation>Passages et leur séchage</translation>
    </message>
    <message>
        <source>Pairs of hands</source>
        <translation>Personnes de l’équipe</translation>
    </message>
</context>
<context>
    <name>app::desktop::PartTable</name>
    <message>
        <source>%1 of %2 to %3</source>
        <translation>%1 de %2 à %3</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; was not understood. %3</source>
        <translation>%1 : « %2 » n’a pas été compris. %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>group, column</comment>
        <translation>%1 : %2</translation>
    </message>
</context>
<context>
    <name>app::desktop::PlanPanel</name>
    <message>
        <source>What is wrong</source>
        <translation>Ce qui ne va pas</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Planification …</translation>
    </message>
    <message>
        <source>Planning … %1 s</source>
        <translation>Planification … %1 s</translation>
    </message>
    <message>
        <source>Put this right, and it is planned at once:</source>
        <translation>Corrigez ceci, et tout est planifié aussitôt :</translation>
    </message>
</context>
<context>
    <name>app::desktop::PreparationPanel</name>
    <message>
        <source>Before the start</source>
        <translation>Avant le départ</translation>
    </message>
    <message>
        <source>why it is skipped</source>
        <translation>pourquoi on le passe</translation>
    </message>
    <message>
        <source>Why it is skipped</source>
        <translation>Pourquoi on le passe</translation>
    </message>
    <message>
        <source>Skip it</source>
        <translation>Passer</translation>
    </message>
    <message>
        <source>Not so: open again</source>
        <translation>Non : à refaire</translation>
    </message>
    <message>
        <source>Close  (Esc)</source>
        <translation>Fermer  (Échap)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ReasonBand</name>
    <message>
        <source>Close  (Esc)</source>
        <translation>Fermer  (Échap)</translation>
    </message>
    <message>
        <source>What can be chosen</source>
        <translation>Ce qui peut être choisi</translation>
    </message>
    <message>
        <source>Not every limit can hold any more. %1</source>
        <translation>Toutes les limites ne peuvent plus tenir. %1</translation>
    </message>
    <message>
        <source>What can be chosen is being worked out …</source>
        <translation>Les choix possibles sont en calcul …</translation>
    </message>
    <message>
        <source>Nothing was found that could be chosen.</source>
        <translation>Aucun choix possible n’a été trouvé.</translation>
    </message>
    <message>
        <source>As of %1, %2 ago: by now they may come to something else. The least harm stands first.</source>
        <translation>État à %1, il y a %2 : depuis, cela peut donner autre chose. Le moindre mal vient en premier.</translation>
    </message>
    <message>
        <source>As of %1. The least harm stands first; nothing is done until you choose.</source>
        <translation>État à %1. Le moindre mal vient en premier ; rien ne se fait avant votre choix.</translation>
    </message>
    <message>
        <source>Work it out again  (W)</source>
        <translation>Recalculer  (W)</translation>
    </message>
    <message>
        <source>What can be chosen  (W)</source>
        <translation>Ce qui peut être choisi  (W)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ReasonPanel</name>
    <message>
        <source>Looking for what would make it fit …</source>
        <translation>Recherche de ce qui ferait tenir le tout …</translation>
    </message>
    <message>
        <source>No change that is known makes it fit, nor do two together.</source>
        <translation>Aucun changement connu ne suffit, ni deux ensemble.</translation>
    </message>
    <message>
        <source>Each of these makes it fit: it was planned with the change. The least change comes first; the product&apos;s leaflet comes before all of them.</source>
        <translation>Chacun de ceux-ci suffit : le plan a été fait avec ce changement. Le moindre vient en premier ; la notice passe avant tous.</translation>
    </message>
    <message>
        <source>There was no time to find what would make it fit.</source>
        <translation>Le temps a manqué pour trouver ce qui ferait tenir le tout.</translation>
    </message>
    <message>
        <source>Each of these makes it fit; there may be more. The product&apos;s leaflet comes before all of them.</source>
        <translation>Chacun de ceux-ci suffit ; il peut y en avoir d’autres. La notice passe avant tous.</translation>
    </message>
    <message>
        <source>Why nothing fits, and what would</source>
        <translation>Pourquoi rien ne tient, et ce qui tiendrait</translation>
    </message>
    <message>
        <source>The search was stopped before it was known whether anything fits.</source>
        <translation>La recherche a été arrêtée avant de savoir si quelque chose tient.</translation>
    </message>
    <message>
        <source>Without any one of these the others can hold together.</source>
        <translation>Sans l’une d’elles, les autres peuvent tenir ensemble.</translation>
    </message>
    <message>
        <source>Not all of these may be needed for the clash.</source>
        <translation>Toutes ne sont peut-être pas en cause dans le conflit.</translation>
    </message>
</context>
<context>
    <name>app::desktop::Records</name>
    <message>
        <source>Record &amp;cards …</source>
        <translation>Fi&amp;ches …</translation>
    </message>
</context>
<context>
    <name>app::desktop::RecordsWindow</name>
    <message>
        <source>Record cards – Basinbell</source>
        <translation>Fiches – Basinbell</translation>
    </message>
    <message>
        <source>Runs, the latest first</source>
        <translation>Séances, la dernière d’abord</translation>
    </message>
    <message>
        <source>No run has been ended yet.

A record card is made of what is answered while the lanes run: when each zone went on and came off, what was seen, how it turned out. When the last lane is dry, end the run, and its card is here.

The demo at high speed makes one in a minute.</source>
        <translation>Aucune séance n’est encore terminée.

Une fiche se fait de ce qu’on répond pendant que les couloirs tournent : quand chaque zone a été appliquée et rincée, ce qui a été vu, le résultat. Quand le dernier couloir est sec, terminez la séance, et sa fiche est ici.

La démo à grande vitesse en fait une en une minute.</translation>
    </message>
    <message>
        <source>Start the next coat from it  (Alt+N)</source>
        <translation>Prochain passage avec elle  (Alt+N)</translation>
    </message>
    <message>
        <source>How it turned out …  (Alt+O)</source>
        <translation>Le résultat …  (Alt+O)</translation>
    </message>
    <message>
        <source>Print …  (Ctrl+P)</source>
        <translation>Imprimer …  (Ctrl+P)</translation>
    </message>
    <message>
        <source>PDF …  (Ctrl+S)</source>
        <translation>PDF …  (Ctrl+S)</translation>
    </message>
    <message>
        <source>Close  (Esc)</source>
        <translation>Fermer  (Échap)</translation>
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
endommagée</translation>
    </message>
    <message>
        <source>%1
erased</source>
        <translation>%1
effacée</translation>
    </message>
    <message>
        <source>This run, so far</source>
        <translation>Cette séance, jusqu’ici</translation>
    </message>
    <message>
        <source>Nothing was rinsed in this run, so there is nothing that turned out.</source>
        <translation>Rien n’a été rincé dans cette séance, il n’y a donc pas de résultat.</translation>
    </message>
</context>
<context>
    <name>app::desktop::ServiceDocument</name>
    <message>
        <source>adding %1</source>
        <translation>ajout de %1</translation>
    </message>
    <message>
        <source>removing %1</source>
        <translation>retrait de %1</translation>
    </message>
    <message>
        <source>Heads that are planned together share one crew: that of %1 is kept, not that of %2 (%3).</source>
        <translation>Les têtes planifiées ensemble partagent une équipe : celle de %1 est gardée, non celle de %2 (%3).</translation>
    </message>
</context>
<context>
    <name>app::desktop::SetupPage</name>
    <message>
        <source>&amp;Zones</source>
        <translation>&amp;Zones</translation>
    </message>
    <message>
        <source>Bo&amp;wls</source>
        <translation>&amp;Bols</translation>
    </message>
    <message>
        <source>Rinse &amp;groups</source>
        <translation>&amp;Groupes de rinçage</translation>
    </message>
    <message>
        <source>&amp;Coats and drying</source>
        <translation>&amp;Passages et séchage</translation>
    </message>
    <message>
        <source>&amp;Hands</source>
        <translation>É&amp;quipe</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>Passages</translation>
    </message>
    <message>
        <source>Start the lanes  (Ctrl+Enter)</source>
        <translation>Lancer les couloirs  (Ctrl+Entrée)</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Lancer</translation>
    </message>
    <message>
        <source>Lanes are running. What you change here is for the next time.</source>
        <translation>Des couloirs tournent. Ce que vous changez ici est pour la prochaine fois.</translation>
    </message>
    <message>
        <source>Once the lanes run, every answer is saved by itself.</source>
        <translation>Dès que les couloirs tournent, chaque réponse est enregistrée d’elle-même.</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Planification …</translation>
    </message>
    <message>
        <source>Nothing fits yet, so there is nothing to start.</source>
        <translation>Rien ne tient encore, il n’y a donc rien à lancer.</translation>
    </message>
    <message>
        <source>Something above is marked; put it right to start.</source>
        <translation>Quelque chose est signalé ci-dessus ; corrigez-le pour lancer.</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Ranger</translation>
    </message>
    <message>
        <source>O&amp;n the head</source>
        <translation>S&amp;ur la tête</translation>
    </message>
    <message>
        <source>A short tour  (Shift+F1)</source>
        <translation>Une courte visite  (Maj+F1)</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>New here? A short tour shows a whole service at high speed. Nothing of it is kept.</source>
        <translation>Nouveau ici ? Une courte visite montre toute une prestation en accéléré. Rien n’en est gardé.</translation>
    </message>
</context>
<context>
    <name>app::desktop::SoundCheck</name>
    <message>
        <source>Sound check</source>
        <translation>Essai du son</translation>
    </message>
    <message>
        <source>Can you hear every alarm from where you work?</source>
        <translation>Entendez-vous chaque alarme de là où vous travaillez ?</translation>
    </message>
    <message>
        <source>Get ready  (1)</source>
        <translation>Se préparer  (1)</translation>
    </message>
    <message>
        <source>soft, once, ahead of time</source>
        <translation>doux, une fois, à l’avance</translation>
    </message>
    <message>
        <source>A step is due  (2)</source>
        <translation>Une étape est à faire  (2)</translation>
    </message>
    <message>
        <source>until it is answered</source>
        <translation>jusqu’à la réponse</translation>
    </message>
    <message>
        <source>A look is due  (3)</source>
        <translation>Un contrôle est à faire  (3)</translation>
    </message>
    <message>
        <source>Water is due  (4)</source>
        <translation>L’eau est à mettre  (4)</translation>
    </message>
    <message>
        <source>A limit is passed  (5)</source>
        <translation>Une limite est dépassée  (5)</translation>
    </message>
    <message>
        <source>the loudest</source>
        <translation>la plus forte</translation>
    </message>
    <message>
        <source>Not now  (Esc)</source>
        <translation>Pas maintenant  (Échap)</translation>
    </message>
    <message>
        <source>Without sound: I watch the screen  (W)</source>
        <translation>Sans son : je regarde l’écran  (W)</translation>
    </message>
    <message>
        <source>I hear nothing  (N)</source>
        <translation>Je n’entends rien  (N)</translation>
    </message>
    <message>
        <source>I hear them  (Enter)</source>
        <translation>Je les entends  (Entrée)</translation>
    </message>
    <message>
        <source>Press each one. Only your ear can tell: the volume and the cable are out of sight here.</source>
        <translation>Appuyez sur chacune. Seule votre oreille le sait : le volume et le câble ne se voient pas d’ici.</translation>
    </message>
    <message>
        <source>Turn up the sound of this machine, look whether a loudspeaker or its cable is out, and press again. If nothing helps, go on without sound: every alarm then fills the screen.</source>
        <translation>Montez le son de cette machine, vérifiez qu’un haut-parleur ou son câble n’est pas débranché, et appuyez encore. Si rien n’y fait, continuez sans son : chaque alarme remplit alors l’écran.</translation>
    </message>
</context>
<context>
    <name>app::desktop::StartBar</name>
    <message>
        <source>Keep this start</source>
        <translation>Garder ce début</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Relâcher</translation>
    </message>
    <message>
        <source>%1: planning …</source>
        <translation>%1 : planification …</translation>
    </message>
</context>
<context>
    <name>app::desktop::StepButton</name>
    <message>
        <source>%1: answer it now</source>
        <translation>%1 : répondre maintenant</translation>
    </message>
    <message>
        <source>Press when this happens sooner: %1</source>
        <translation>Appuyez si ceci arrive plus tôt : %1</translation>
    </message>
</context>
<context>
    <name>app::desktop::StrandGrip</name>
    <message>
        <source>Start of %1, minutes later than planned</source>
        <translation>Début de %1, minutes après le prévu</translation>
    </message>
    <message>
        <source>Pull it to see what a later start does</source>
        <translation>Tirez pour voir l’effet d’un début plus tardif</translation>
    </message>
</context>
<context>
    <name>app::desktop::StrandWidget</name>
    <message>
        <source>Strands</source>
        <translation>Mèches</translation>
    </message>
    <message>
        <source>%1: applied from %2 to %3, water at %4, %5 min development.</source>
        <translation>%1 : appliqué de %2 à %3, eau à %4, %5 min de pose.</translation>
    </message>
    <message>
        <source>Inside its limits %1; water from %2 to %3 in nine runs of ten.</source>
        <translation>Dans ses limites %1 ; eau de %2 à %3 neuf fois sur dix.</translation>
    </message>
    <message>
        <source>Wanted not before %1.</source>
        <translation>Souhaité pas avant %1.</translation>
    </message>
</context>
<context>
    <name>app::desktop::TourWindow</name>
    <message>
        <source>A short tour – Basinbell</source>
        <translation>Une courte visite – Basinbell</translation>
    </message>
    <message>
        <source>A tour: nothing of this is real. Nothing sounds, and nothing is kept.</source>
        <translation>Une visite : rien de ceci n’est réel. Rien ne sonne, et rien n’est gardé.</translation>
    </message>
    <message>
        <source>Leave the tour  (Esc)</source>
        <translation>Quitter la visite  (Échap)</translation>
    </message>
    <message>
        <source>This is Set-up with a demo. Each strand is a zone of the hair, and all end at the rinse line: they come to the water together. The plan says when to begin each of them.</source>
        <translation>Voici la préparation avec un exemple. Chaque mèche est une zone des cheveux, et toutes finissent à la ligne de rinçage : elles arrivent à l’eau ensemble. Le plan dit quand commencer chacune.</translation>
    </message>
    <message>
        <source>Now it runs. At the top is the one thing to do, with one large button: do it, and press. Here Enter does, and time goes by quickly.</source>
        <translation>Maintenant, c’est en marche. En haut, la seule chose à faire, avec un grand bouton : faites-la, puis appuyez. Ici Entrée suffit, et le temps passe vite.</translation>
    </message>
    <message>
        <source>Applying took four minutes longer. The plan was made again at once, and the line at the top says what changed.</source>
        <translation>L’application a duré quatre minutes de plus. Le plan a été refait aussitôt, et la ligne du haut dit ce qui a changé.</translation>
    </message>
    <message>
        <source>A look is due, a strand test. What you see you answer with one press: leave it on, look again, or rinse this zone. Here it is left on.</source>
        <translation>Un contrôle est à faire, un test de mèche. À ce que vous voyez, vous répondez d’une pression : laisser poser, revoir, ou rincer cette zone. Ici on laisse poser.</translation>
    </message>
    <message>
        <source>Water is due. An alarm like this fills the window and sounds until it is answered; all lanes stay in view below it.</source>
        <translation>L’eau est à mettre. Une telle alarme remplit la fenêtre et sonne jusqu’à la réponse ; tous les couloirs restent en vue en dessous.</translation>
    </message>
    <message>
        <source>All is done. Of a real run you now say how it turned out, and its record card is kept. F1 tells about each page.</source>
        <translation>Tout est fait. Pour une vraie séance, vous dites maintenant le résultat, et sa fiche est gardée. F1 explique chaque page.</translation>
    </message>
    <message>
        <source>Time goes by quickly. What is asked for is answered for you.</source>
        <translation>Le temps passe vite. On répond à votre place à ce qui est demandé.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Skip ahead  (Enter)</source>
        <translation>Sauter plus loin  (Entrée)</translation>
    </message>
    <message>
        <source>Close the tour  (Enter)</source>
        <translation>Fermer la visite  (Entrée)</translation>
    </message>
    <message>
        <source>Go on  (Enter)</source>
        <translation>Continuer  (Entrée)</translation>
    </message>
</context>
<context>
    <name>app::desktop::ViewMenu</name>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Comme le &amp;système</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Clair</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>So&amp;mbre</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>Contraste &amp;élevé</translation>
    </message>
    <message>
        <source>High contrast, d&amp;ark</source>
        <translation>Contraste élevé, som&amp;bre</translation>
    </message>
    <message>
        <source>Text as &amp;usual</source>
        <translation>Texte &amp;habituel</translation>
    </message>
    <message>
        <source>La&amp;nguage</source>
        <translation>Lan&amp;gue</translation>
    </message>
    <message>
        <source>Text at %1 %</source>
        <translation>Texte à %1 %</translation>
    </message>
    <message>
        <source>From a&amp;far</source>
        <translation>Vue de &amp;loin</translation>
    </message>
</context>
<context>
    <name>app::desktop::print::Printing</name>
    <message>
        <source>&amp;Print …</source>
        <translation>&amp;Imprimer …</translation>
    </message>
    <message>
        <source>Save as P&amp;DF …</source>
        <translation>Enregistrer en P&amp;DF …</translation>
    </message>
    <message>
        <source>There is no plan yet that could be printed.</source>
        <translation>Il n’y a pas encore de plan à imprimer.</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer does not take it.</source>
        <translation>Rien n’a été imprimé : l’imprimante ne le prend pas.</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Enregistrer en PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
</context>
<context>
    <name>app::sound::AlarmPlayer</name>
    <message>
        <source>No sound can be had: no loudspeaker was found. Plug one in or switch it on, and look at the sound settings of this computer. Until then alarms are shown on the screen only.</source>
        <translation>Aucun son possible : aucun haut-parleur trouvé. Branchez-en un ou allumez-le, et voyez les réglages du son de cet ordinateur. D’ici là, les alarmes ne paraissent qu’à l’écran.</translation>
    </message>
    <message>
        <source>The loudspeaker takes no sound. Basinbell keeps trying; unplug it and plug it in again if this lasts. Until then alarms are shown on the screen only.</source>
        <translation>Le haut-parleur ne prend aucun son. Basinbell continue d’essayer ; débranchez-le et rebranchez-le si cela dure. D’ici là, les alarmes ne paraissent qu’à l’écran.</translation>
    </message>
    <message>
        <source>No sound can be had: the program %1 could not be started (%2). Install Basinbell again.</source>
        <translation>Aucun son possible : le programme %1 n’a pas pu démarrer (%2). Réinstallez Basinbell.</translation>
    </message>
    <message>
        <source>The sound program stopped by itself and is started again. Until then alarms are shown on the screen only.</source>
        <translation>Le programme du son s’est arrêté de lui-même et redémarre. D’ici là, les alarmes ne paraissent qu’à l’écran.</translation>
    </message>
</context>
<context>
    <name>core::measure::Sentence</name>
    <message>
        <source>No run is under way.</source>
        <translation>Aucune séance n’est en cours.</translation>
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
        <translation>%1 vient aider</translation>
    </message>
    <message>
        <source>%1 has gone at %2</source>
        <translation>%1 est parti à %2</translation>
    </message>
    <message>
        <source>%1 is away from %2 to %3</source>
        <translation>%1 s’absente de %2 à %3</translation>
    </message>
    <message>
        <source>ready by %1</source>
        <translation>prêt pour %1</translation>
    </message>
    <message>
        <source>%1 is a zone more</source>
        <translation>%1 est une zone de plus</translation>
    </message>
    <message>
        <source>%1: used for up to %2</source>
        <translation>%1 : employé jusqu’à %2</translation>
    </message>
    <message>
        <source>water of %1 from %2</source>
        <translation>eau de %1 dès %2</translation>
    </message>
    <message>
        <source>water of %1 until %2</source>
        <translation>eau de %1 jusqu’à %2</translation>
    </message>
    <message>
        <source>%1: %2 %3 instead of %4</source>
        <translation>%1 : %2 %3 au lieu de %4</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1 : %2 %3</translation>
    </message>
    <message>
        <source>%1 is rinsed as %2</source>
        <translation>%1 est rincé comme %2</translation>
    </message>
    <message>
        <source>develops at least</source>
        <translation>pose au moins</translation>
    </message>
    <message>
        <source>target</source>
        <translation>cible</translation>
    </message>
    <message>
        <source>develops at most</source>
        <translation>pose au plus</translation>
    </message>
    <message>
        <source>first strand at most</source>
        <translation>première mèche au plus</translation>
    </message>
    <message>
        <source>last strand at least</source>
        <translation>dernière mèche au moins</translation>
    </message>
    <message>
        <source>%1: other times of looks</source>
        <translation>%1 : autres heures de contrôle</translation>
    </message>
    <message>
        <source>%1: other times of its late jobs</source>
        <translation>%1 : autres heures des derniers gestes</translation>
    </message>
    <message>
        <source>%1: another gap after the zone before</source>
        <translation>%1 : autre écart après la zone d’avant</translation>
    </message>
    <message>
        <source>applying %1 stops before it is done</source>
        <translation>l’application de %1 s’arrête avant d’être finie</translation>
    </message>
    <message>
        <source>%1: something is left out</source>
        <translation>%1 : quelque chose est laissé de côté</translation>
    </message>
    <message>
        <source>What a run has begun with cannot be taken out of it. Leave it out instead.</source>
        <translation>Ce avec quoi une séance a commencé ne peut pas en être retiré. Laissez-le plutôt de côté.</translation>
    </message>
    <message>
        <source>There is no such task in this service. Choose one from the list.</source>
        <translation>Cette tâche n’existe pas dans cette prestation. Choisissez-en une dans la liste.</translation>
    </message>
    <message>
        <source>%1 has begun and cannot be left out.</source>
        <translation>« %1 » a commencé et ne peut pas être laissé de côté.</translation>
    </message>
    <message>
        <source>Only applying that is under way can be interrupted.</source>
        <translation>Seule une application en cours peut être interrompue.</translation>
    </message>
    <message>
        <source>That is before %1 started. Give a later time.</source>
        <translation>C’est avant le début de « %1 ». Donnez une heure plus tardive.</translation>
    </message>
    <message>
        <source>Nothing of this coat is left that could be given up.</source>
        <translation>Il ne reste rien de ce passage qui puisse être abandonné.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1 is no longer planned</source>
        <translation>%1 : plus prévu</translation>
    </message>
    <message>
        <source>%1 is planned at %2</source>
        <translation>%1 : prévu à %2</translation>
    </message>
    <message>
        <source>%1 stays at %2</source>
        <translation>%1 reste à %2</translation>
    </message>
    <message>
        <source>%1 moves to %2 (from %3)</source>
        <translation>%1 passe à %2 (au lieu de %3)</translation>
    </message>
    <message>
        <source>%1 and %2 more.</source>
        <translation>%1 et %2 de plus.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>This is no answer that a run knows.</source>
        <translation>Ce n’est pas une réponse qu’une séance connaît.</translation>
    </message>
    <message>
        <source>That time is still to come. Answer when it has happened.</source>
        <translation>Cette heure est encore à venir. Répondez quand c’est arrivé.</translation>
    </message>
    <message>
        <source>That is more than a day ago. Give a time within the last 24 hours.</source>
        <translation>Cela fait plus d’un jour. Donnez une heure des dernières 24 heures.</translation>
    </message>
    <message>
        <source>This run was ended. Undo that to go on with it.</source>
        <translation>Cette séance a été terminée. Annulez cela pour la continuer.</translation>
    </message>
    <message>
        <source>at most %1 development</source>
        <translation>au plus %1 de pose</translation>
    </message>
    <message>
        <source>first strand at most %1</source>
        <translation>première mèche au plus %1</translation>
    </message>
    <message>
        <source>What was changed later builds on that. Undo the later change first.</source>
        <translation>Ce qui a été changé plus tard s’appuie là-dessus. Annulez d’abord le changement plus récent.</translation>
    </message>
    <message>
        <source>What was said of &apos;%1&apos; came after that change, which brought it. Undo that first.</source>
        <translation>Ce qui a été dit de « %1 » est venu après ce changement, qui l’a apporté. Annulez-le d’abord.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has begun since. Undo that first.</source>
        <translation>« %1 » a commencé depuis. Annulez cela d’abord.</translation>
    </message>
    <message>
        <source>That answer does not stand any more.</source>
        <translation>Cette réponse ne vaut plus.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Il n’y a rien à annuler.</translation>
    </message>
    <message>
        <source>That is before the heat was put on. Give a later time.</source>
        <translation>C’est avant que la chaleur soit mise. Donnez une heure plus tardive.</translation>
    </message>
    <message>
        <source>That is after %1 ended. Give an earlier time.</source>
        <translation>C’est après la fin de « %1 ». Donnez une heure plus tôt.</translation>
    </message>
    <message>
        <source>That is before the zone was applied. Give a later time.</source>
        <translation>C’est avant l’application de la zone. Donnez une heure plus tardive.</translation>
    </message>
    <message>
        <source>There is no answer to put right.</source>
        <translation>Il n’y a pas de réponse à corriger.</translation>
    </message>
    <message>
        <source>Heat is on this head already. Say first that it was taken off.</source>
        <translation>La chaleur est déjà sur cette tête. Dites d’abord qu’elle a été ôtée.</translation>
    </message>
    <message>
        <source>Nothing was on the hair then that heat could be for. Say first what was applied.</source>
        <translation>Rien n’était alors sur les cheveux pour quoi chauffer. Dites d’abord ce qui a été appliqué.</translation>
    </message>
    <message>
        <source>Say for how many minutes the heat stays, or nothing.</source>
        <translation>Dites combien de minutes la chaleur reste, ou rien.</translation>
    </message>
    <message>
        <source>No heat is on this head.</source>
        <translation>Aucune chaleur n’est sur cette tête.</translation>
    </message>
    <message>
        <source>Heat is never planned, so it cannot be left out.</source>
        <translation>La chaleur n’est jamais prévue, elle ne peut donc pas être laissée de côté.</translation>
    </message>
    <message>
        <source>%1 has not been applied yet.</source>
        <translation>%1 n’est pas encore appliqué.</translation>
    </message>
    <message>
        <source>%1 has been rinsed already.</source>
        <translation>%1 est déjà rincé.</translation>
    </message>
    <message>
        <source>That is before %1 was applied. Give a later time.</source>
        <translation>C’est avant l’application de %1. Donnez une heure plus tardive.</translation>
    </message>
    <message>
        <source>That is no look. Choose the look that was made.</source>
        <translation>Ce n’est pas un contrôle. Choisissez le contrôle qui a été fait.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was answered already. To put that right, undo it.</source>
        <translation>« %1 » a déjà sa réponse. Pour la corriger, annulez-la.</translation>
    </message>
    <message>
        <source>There is no such look in this service. Choose one from the list.</source>
        <translation>Ce contrôle n’existe pas dans cette prestation. Choisissez-en un dans la liste.</translation>
    </message>
    <message>
        <source>Say in how many minutes to look again.</source>
        <translation>Dites dans combien de minutes contrôler de nouveau.</translation>
    </message>
    <message>
        <source>%1 is being rinsed already.</source>
        <translation>%1 est déjà en train d’être rincé.</translation>
    </message>
    <message>
        <source>%1 is still being applied. Say first that it has ended.</source>
        <translation>%1 est encore en application. Dites d’abord qu’elle est finie.</translation>
    </message>
    <message>
        <source>At that time %1 was still being applied. Give a later time.</source>
        <translation>À cette heure, %1 était encore en application. Donnez une heure plus tardive.</translation>
    </message>
    <message>
        <source>Choose the zone to rinse.</source>
        <translation>Choisissez la zone à rincer.</translation>
    </message>
    <message>
        <source>What was seen is kept with a look. Answer the look of this zone with it.</source>
        <translation>Ce qui a été vu va avec un contrôle. Répondez-le au contrôle de cette zone.</translation>
    </message>
    <message>
        <source>That zone has nothing like &apos;%1&apos; that could have been done.</source>
        <translation>Cette zone n’a rien comme « %1 » qui ait pu être fait.</translation>
    </message>
    <message>
        <source>There is no such answer about a zone.</source>
        <translation>Il n’y a pas de telle réponse sur une zone.</translation>
    </message>
    <message>
        <source>That answer is not about one zone. Undo it instead.</source>
        <translation>Cette réponse ne porte pas sur une zone. Annulez-la plutôt.</translation>
    </message>
    <message>
        <source>Choose a zone of the same coat.</source>
        <translation>Choisissez une zone du même passage.</translation>
    </message>
    <message>
        <source>It is about that zone already.</source>
        <translation>Elle porte déjà sur cette zone.</translation>
    </message>
    <message>
        <source>No zone is left for &apos;%1&apos;: all have been rinsed alone or left out.</source>
        <translation>Il ne reste aucune zone pour « %1 » : toutes ont été rincées à part ou laissées de côté.</translation>
    </message>
    <message>
        <source>%1 has not been applied. Leave it out first, or rinse the other zones alone.</source>
        <translation>%1 n’est pas appliqué. Laissez-le d’abord de côté, ou rincez les autres zones à part.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has begun, so nothing more can be applied for it. Undo that if it was said by mistake.</source>
        <translation>« %1 » a commencé, rien ne peut donc plus être appliqué pour cela. Annulez-le si c’était une erreur.</translation>
    </message>
    <message>
        <source>A look is not started: say what came of it.</source>
        <translation>Un contrôle ne se commence pas : dites ce qu’il a donné.</translation>
    </message>
    <message>
        <source>%1 has been done already.</source>
        <translation>« %1 » est déjà fait.</translation>
    </message>
    <message>
        <source>%1 was started already.</source>
        <translation>« %1 » a déjà commencé.</translation>
    </message>
    <message>
        <source>A look is not finished: say what came of it.</source>
        <translation>Un contrôle ne se termine pas : dites ce qu’il a donné.</translation>
    </message>
    <message>
        <source>%1 has not been started. Say first when it began.</source>
        <translation>« %1 » n’a pas commencé. Dites d’abord quand.</translation>
    </message>
    <message>
        <source>%1 has been finished already. To put its time right, correct that answer.</source>
        <translation>« %1 » est déjà fini. Pour corriger l’heure, corrigez cette réponse.</translation>
    </message>
    <message>
        <source>%1 is left out already.</source>
        <translation>« %1 » est déjà laissé de côté.</translation>
    </message>
    <message>
        <source>%1 has begun and cannot be left out. Finish it, or undo its start.</source>
        <translation>« %1 » a commencé et ne peut pas être laissé de côté. Finissez-le, ou annulez son début.</translation>
    </message>
    <message>
        <source>%1 has mixture on it, so its rinse cannot be left out.</source>
        <translation>%1 porte du mélange, son rinçage ne peut donc pas être laissé de côté.</translation>
    </message>
    <message>
        <source>Stay %1 short of: %2</source>
        <translation>Rester %1 en deçà de : %2</translation>
    </message>
    <message>
        <source>Go %1 ahead of: %2</source>
        <translation>Devancer de %1 : %2</translation>
    </message>
    <message>
        <source>Go %1 off: %2</source>
        <translation>S’écarter de %1 de : %2</translation>
    </message>
    <message>
        <source>Go %1 past: %2</source>
        <translation>Dépasser de %1 : %2</translation>
    </message>
    <message>
        <source>Carry on with what is least harm altogether</source>
        <translation>Continuer avec le moindre mal en tout</translation>
    </message>
    <message>
        <source>Skip: %1</source>
        <translation>Passer : %1</translation>
    </message>
    <message>
        <source>Skip every look that is left at %1</source>
        <translation>Passer tous les contrôles restants de %1</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 pendant %2</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Laisser de côté : %1</translation>
    </message>
    <message>
        <source>Use %1 up to %2 after it is mixed (now %3)</source>
        <translation>Employer %1 jusqu’à %2 après le mélange (maintenant %3)</translation>
    </message>
    <message>
        <source>Only if the product&apos;s leaflet allows it.</source>
        <translation>Seulement si la notice du produit le permet.</translation>
    </message>
    <message>
        <source>Mix another bowl of %1 for %2</source>
        <translation>Mélanger un autre bol de %1 pour %2</translation>
    </message>
    <message>
        <source>Have the basin for %1 %2 earlier than it is booked</source>
        <translation>Avoir le bac pour %1 %2 plus tôt que réservé</translation>
    </message>
    <message>
        <source>Have the basin for %1 %2 later than it is booked</source>
        <translation>Avoir le bac pour %1 %2 plus tard que réservé</translation>
    </message>
    <message>
        <source>Begin to apply %1 up to %2 after the end of %3 (now %4)</source>
        <translation>Commencer %1 jusqu’à %2 après la fin de %3 (maintenant %4)</translation>
    </message>
    <message>
        <source>Begin to apply %1 at least %2 after the end of %3 (now %4)</source>
        <translation>Commencer %1 au moins %2 après la fin de %3 (maintenant %4)</translation>
    </message>
    <message>
        <source>Keep %1 to spare before the promised time (now %2)</source>
        <translation>Garder %1 de marge avant l’heure promise (maintenant %2)</translation>
    </message>
    <message>
        <source>Keep %1 to spare before the promised time for %2 (now %3)</source>
        <translation>Garder %1 de marge avant l’heure promise à %2 (maintenant %3)</translation>
    </message>
    <message>
        <source>Promise it %1 later</source>
        <translation>Promettre %1 plus tard</translation>
    </message>
    <message>
        <source>Promise it for %1 %2 later</source>
        <translation>Promettre pour %1 %2 plus tard</translation>
    </message>
    <message>
        <source>The %1 to spare are used up as well.</source>
        <translation>Les %1 de marge sont utilisées aussi.</translation>
    </message>
    <message>
        <source>Begin %1 earlier</source>
        <translation>Commencer %1 plus tôt</translation>
    </message>
    <message>
        <source>Begin with %1 %2 earlier</source>
        <translation>Commencer %1 %2 plus tôt</translation>
    </message>
    <message>
        <source>Let %1 not be away at all</source>
        <translation>Que %1 ne s’absente pas du tout</translation>
    </message>
    <message>
        <source>Let %1 leave %2 later</source>
        <translation>Que %1 parte %2 plus tard</translation>
    </message>
    <message>
        <source>Let %1 come back %2 earlier</source>
        <translation>Que %1 revienne %2 plus tôt</translation>
    </message>
    <message>
        <source>Call another pair of hands</source>
        <translation>Appeler une personne de plus</translation>
    </message>
    <message>
        <source>Use another basin (now %1)</source>
        <translation>Employer un bac de plus (maintenant %1)</translation>
    </message>
    <message>
        <source>Let %1 develop up to %2 (now %3)</source>
        <translation>Laisser poser %1 jusqu’à %2 (maintenant %3)</translation>
    </message>
    <message>
        <source>Let %1 be rinsed from %2 on (now from %3)</source>
        <translation>Laisser rincer %1 dès %2 (maintenant dès %3)</translation>
    </message>
    <message>
        <source>Let the first strand of %1 carry the mixture up to %2 (now %3)</source>
        <translation>Laisser la première mèche de %1 porter le mélange jusqu’à %2 (maintenant %3)</translation>
    </message>
    <message>
        <source>Let the last strand of %1 carry the mixture at least %2 (now %3)</source>
        <translation>Laisser la dernière mèche de %1 porter le mélange au moins %2 (maintenant %3)</translation>
    </message>
    <message>
        <source>Look at %1 up to %2 early or late (now %3)</source>
        <translation>Contrôler %1 jusqu’à %2 plus tôt ou plus tard (maintenant %3)</translation>
    </message>
    <message>
        <source>Let %1 be up to %2 early or late (now %3)</source>
        <translation>Laisser %1 venir jusqu’à %2 plus tôt ou plus tard (maintenant %3)</translation>
    </message>
    <message>
        <source>Apply %1 without waiting for %2</source>
        <translation>Appliquer %1 sans attendre %2</translation>
    </message>
    <message>
        <source>Apply %1 up to %2 after %3 (now %4)</source>
        <translation>Appliquer %1 jusqu’à %2 après %3 (maintenant %4)</translation>
    </message>
    <message>
        <source>See that the blend line can wait that long.</source>
        <translation>Veillez à ce que la ligne de fondu puisse attendre aussi longtemps.</translation>
    </message>
    <message>
        <source>Rinse %1 on its own</source>
        <translation>Rincer %1 à part</translation>
    </message>
    <message>
        <source>Its neighbours have to stay dry.</source>
        <translation>Ses voisines doivent rester sèches.</translation>
    </message>
    <message>
        <source>%1, %2 before the others</source>
        <translation>%1, %2 avant les autres</translation>
    </message>
    <message>
        <source>%1, %2 after the others</source>
        <translation>%1, %2 après les autres</translation>
    </message>
    <message>
        <source>%1; and: %2</source>
        <translation>%1 ; et : %2</translation>
    </message>
    <message>
        <source>There is no service to plan.</source>
        <translation>Il n’y a pas de prestation à planifier.</translation>
    </message>
    <message>
        <source>The clock times lie more than two years apart: check the dates.</source>
        <translation>Les heures sont distantes de plus de deux ans : vérifiez les dates.</translation>
    </message>
    <message>
        <source>This is more than can be planned at once: %1 moments, at most %2. Plan fewer coats at a time, or fewer looks.</source>
        <translation>C’est plus qu’il n’est possible de planifier à la fois : %1 moments, au plus %2. Planifiez moins de passages à la fois, ou moins de contrôles.</translation>
    </message>
    <message>
        <source>%1: the basin is booked from a fixed time on</source>
        <translation>%1 : le bac est réservé à partir d’une heure fixe</translation>
    </message>
    <message>
        <source>%1: the basin is booked, water by a fixed time</source>
        <translation>%1 : le bac est réservé, l’eau avant une heure fixe</translation>
    </message>
    <message>
        <source>%1: used up within %2 of mixing</source>
        <translation>%1 : employé dans les %2 après le mélange</translation>
    </message>
    <message>
        <source>%1: at least %2 after %3</source>
        <translation>%1 : au moins %2 après %3</translation>
    </message>
    <message>
        <source>%1: at most %2 after %3</source>
        <translation>%1 : au plus %2 après %3</translation>
    </message>
    <message>
        <source>one pair of hands</source>
        <translation>une seule personne</translation>
    </message>
    <message>
        <source>%1 pairs of hands</source>
        <translation>%1 personnes</translation>
    </message>
    <message>
        <source>one basin</source>
        <translation>un bac</translation>
    </message>
    <message>
        <source>%1 basins</source>
        <translation>%1 bacs</translation>
    </message>
    <message>
        <source>nothing else is done to a head at the basin</source>
        <translation>rien d’autre ne se fait à une tête au bac</translation>
    </message>
    <message>
        <source>%1 is away</source>
        <translation>%1 est absent</translation>
    </message>
    <message>
        <source>ready by the promised time with %1 to spare</source>
        <translation>prêt à l’heure promise avec %1 de marge</translation>
    </message>
    <message>
        <source>ready by the promised time</source>
        <translation>prêt à l’heure promise</translation>
    </message>
    <message>
        <source>%1: looks from %2, each within %3</source>
        <translation>%1 : contrôles dès %2, chacun à %3 près</translation>
    </message>
    <message>
        <source>%1: looks from %2 every %3, each within %4</source>
        <translation>%1 : contrôles dès %2 toutes les %3, chacun à %4 près</translation>
    </message>
    <message>
        <source>development of at least %1</source>
        <translation>pose d’au moins %1</translation>
    </message>
    <message>
        <source>development of at most %1</source>
        <translation>pose d’au plus %1</translation>
    </message>
    <message>
        <source>first strand, from contact to water, at most %1</source>
        <translation>première mèche, du contact à l’eau, au plus %1</translation>
    </message>
    <message>
        <source>last strand, from the end of application to water, at least %1</source>
        <translation>dernière mèche, de la fin d’application à l’eau, au moins %1</translation>
    </message>
    <message>
        <source>%1 %2: %3 before its water, within %4</source>
        <translation>%1 %2 : %3 avant son eau, à %4 près</translation>
    </message>
    <message>
        <source>%1 goes on after %2</source>
        <translation>%1 vient après %2</translation>
    </message>
    <message>
        <source>%1 goes on within %2 of %3</source>
        <translation>%1 vient dans les %2 après %3</translation>
    </message>
    <message>
        <source>No place was found for everybody. It is not known whether there is none.</source>
        <translation>Aucune place n’a été trouvée pour tout le monde. On ne sait pas s’il n’y en a pas.</translation>
    </message>
    <message>
        <source>The search was stopped before anything was found.</source>
        <translation>La recherche a été arrêtée avant d’avoir rien trouvé.</translation>
    </message>
    <message>
        <source>Nothing fits, even with every limit left out: nobody here does what has to be done.</source>
        <translation>Rien ne tient, même sans aucune limite : personne ici ne fait ce qui doit être fait.</translation>
    </message>
    <message>
        <source>This cannot be kept: %1.</source>
        <translation>Ceci ne peut pas tenir : %1.</translation>
    </message>
    <message>
        <source>These cannot all hold together: %1.</source>
        <translation>Tout ceci ne peut pas tenir ensemble : %1.</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>Contrôler %1</translation>
    </message>
    <message>
        <source>Look at %1 (%2)</source>
        <translation>Contrôler %1 (%2)</translation>
    </message>
    <message>
        <source>Apply %1</source>
        <translation>Appliquer %1</translation>
    </message>
    <message>
        <source>Mix %1</source>
        <translation>Mélanger %1</translation>
    </message>
    <message>
        <source>Rinse %1</source>
        <translation>Rincer %1</translation>
    </message>
    <message>
        <source>Rinse %1 alone</source>
        <translation>Rincer %1 à part</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Sécher</translation>
    </message>
    <message>
        <source>Assess</source>
        <translation>Évaluer</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Chaleur</translation>
    </message>
    <message>
        <source>and %1 more problems; mend these first</source>
        <translation>et %1 autres problèmes ; corrigez d’abord ceux-ci</translation>
    </message>
    <message>
        <source>is empty; list a bowl, or leave the key out for one without mixing</source>
        <translation>est vide ; indiquez un bol</translation>
    </message>
    <message>
        <source>bowls</source>
        <translation>bols</translation>
    </message>
    <message>
        <source>no zone is applied from this bowl; take it out, or name it in a zone</source>
        <translation>aucune zone n’est appliquée depuis ce bol ; retirez-le, ou nommez-le dans une zone</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>bol</translation>
    </message>
    <message>
        <source>is before earliest; swap them</source>
        <translation>est avant le plus tôt ; échangez-les</translation>
    </message>
    <message>
        <source>is empty; list at least one rinse group, such as { &quot;length&quot;: 5 }</source>
        <translation>est vide ; indiquez au moins un groupe de rinçage</translation>
    </message>
    <message>
        <source>rinse groups</source>
        <translation>groupes de rinçage</translation>
    </message>
    <message>
        <source>no zone is rinsed in this group; take it out, or name it in a zone</source>
        <translation>aucune zone n’est rincée dans ce groupe ; retirez-le, ou nommez-le dans une zone</translation>
    </message>
    <message>
        <source>rinse group</source>
        <translation>groupe de rinçage</translation>
    </message>
    <message>
        <source>is empty; list at least one zone</source>
        <translation>est vide ; indiquez au moins une zone</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zone</translation>
    </message>
    <message>
        <source>%1 is less than least %2; raise most or lower least</source>
        <translation>%1 est inférieur au minimum %2 ; augmentez le maximum ou baissez le minimum</translation>
    </message>
    <message>
        <source>times away</source>
        <translation>absences</translation>
    </message>
    <message>
        <source>is not after from; a time away ends later than it starts</source>
        <translation>n’est pas après le début ; une absence finit après avoir commencé</translation>
    </message>
    <message>
        <source>is before the end of the time away above; list them in order, without overlap</source>
        <translation>est avant la fin de l’absence précédente ; listez-les dans l’ordre, sans chevauchement</translation>
    </message>
    <message>
        <source>%1 is listed twice; take one out</source>
        <translation>%1 figure deux fois ; retirez-en un</translation>
    </message>
    <message>
        <source>nobody does %1, and the service needs it; add it to the does of somebody</source>
        <translation>personne ne fait %1, et la prestation en a besoin ; ajoutez-le à quelqu’un</translation>
    </message>
    <message>
        <source>0 is too few; at least one basin is needed</source>
        <translation>0 ne suffit pas ; il faut au moins un bac</translation>
    </message>
    <message>
        <source>basins</source>
        <translation>bacs</translation>
    </message>
    <message>
        <source>is empty; at least one pair of hands is needed</source>
        <translation>est vide ; il faut au moins une personne</translation>
    </message>
    <message>
        <source>pairs of hands</source>
        <translation>personnes</translation>
    </message>
    <message>
        <source>pair of hands</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>%1 is negative; lengths run from 0 to 1440 (24 h)</source>
        <translation>%1 est négatif ; les durées vont de 0 à 1440 (24 h)</translation>
    </message>
    <message>
        <source>%1 is more than 1440 (24 h), the longest that is accepted</source>
        <translation>%1 dépasse 1440 (24 h), le plus long accepté</translation>
    </message>
    <message>
        <source>0 is too short; write at least one second, &quot;0:01&quot;</source>
        <translation>0 est trop court ; mettez au moins une seconde, « 0:01 »</translation>
    </message>
    <message>
        <source>%1 is negative; a harm runs from 0 to 1000</source>
        <translation>%1 est négatif ; un mal va de 0 à 1000</translation>
    </message>
    <message>
        <source>%1 is more than 1000, the greatest harm</source>
        <translation>%1 dépasse 1000, le plus grand mal</translation>
    </message>
    <message>
        <source>is not between the years 2000 and 2099; mend the date</source>
        <translation>n’est pas entre les années 2000 et 2099 ; corrigez la date</translation>
    </message>
    <message>
        <source>%1 %2 are more than %3, the most that are accepted</source>
        <translation>%1 %2 dépassent %3, le plus qui soit accepté</translation>
    </message>
    <message>
        <source>is not UTF-8 text; write it again</source>
        <translation>n’est pas un texte UTF-8 ; réécrivez-le</translation>
    </message>
    <message>
        <source>holds a control character, such as a tab; take it out</source>
        <translation>contient un caractère de commande, comme une tabulation ; retirez-le</translation>
    </message>
    <message>
        <source>has %1 characters; write at most %2</source>
        <translation>a %1 caractères ; écrivez-en au plus %2</translation>
    </message>
    <message>
        <source>is empty; write a name</source>
        <translation>est vide ; écrivez un nom</translation>
    </message>
    <message>
        <source>starts or ends with a space; take it out</source>
        <translation>commence ou finit par une espace ; retirez-la</translation>
    </message>
    <message>
        <source>%1 is the name of %2 too; give each %3 a name of its own</source>
        <translation>%1 est aussi le nom de %2 ; donnez à chacun son propre nom (%3)</translation>
    </message>
    <message>
        <source>%1 waits for %2</source>
        <translation>%1 attend %2</translation>
    </message>
    <message>
        <source>%1; take one of these out</source>
        <translation>%1 ; retirez l’un d’eux</translation>
    </message>
    <message>
        <source>there is no such zone; name one of the coat</source>
        <translation>cette zone n’existe pas ; nommez-en une du passage</translation>
    </message>
    <message>
        <source>a zone cannot wait for itself; take it out</source>
        <translation>une zone ne peut pas s’attendre elle-même ; retirez-la</translation>
    </message>
    <message>
        <source>is not after not_before by more than the buffer; make it later</source>
        <translation>n’est pas après le début permis de plus que la marge ; mettez plus tard</translation>
    </message>
    <message>
        <source>is empty; list at least one coat</source>
        <translation>est vide ; indiquez au moins un passage</translation>
    </message>
    <message>
        <source>coats</source>
        <translation>passages</translation>
    </message>
    <message>
        <source>zones in all</source>
        <translation>zones en tout</translation>
    </message>
    <message>
        <source>leads to the next coat, and this is the last one; take it out</source>
        <translation>mène au passage suivant, et celui-ci est le dernier ; retirez-le</translation>
    </message>
    <message>
        <source>coat</source>
        <translation>passage</translation>
    </message>
    <message>
        <source>is empty; use an IANA name such as &quot;Europe/London&quot;</source>
        <translation>est vide ; employez un nom IANA tel que « Europe/London »</translation>
    </message>
    <message>
        <source>only wefts come apart; make it false, or the kind &quot;wefts&quot;</source>
        <translation>seuls des tissages se séparent ; mettez faux, ou la sorte tissages</translation>
    </message>
    <message>
        <source>%1 is more than usual %2; make quickest at most usual</source>
        <translation>%1 dépasse l’habituel %2 ; mettez le plus vite au plus à l’habituel</translation>
    </message>
    <message>
        <source>%1 is less than usual %2; make slowest at least usual</source>
        <translation>%1 est inférieur à l’habituel %2 ; mettez le plus lent au moins à l’habituel</translation>
    </message>
    <message>
        <source>%1 is more than target %2; make least at most the target</source>
        <translation>%1 dépasse la cible %2 ; mettez au moins au plus la cible</translation>
    </message>
    <message>
        <source>%1 is less than target %2; make most at least the target</source>
        <translation>%1 est inférieur à la cible %2 ; mettez au plus au moins la cible</translation>
    </message>
    <message>
        <source>may take %1, longer than develop.most %2 counted from first contact; split the zone</source>
        <translation>peut prendre %1, plus que la pose maximale %2 comptée dès la première mèche ; divisez la zone</translation>
    </message>
    <message>
        <source>%1 is more than develop.most %2, counted from the same end of application; lower it or raise most</source>
        <translation>%1 dépasse la pose maximale %2, comptée depuis la même fin d’application ; baissez-le ou augmentez le maximum</translation>
    </message>
    <message>
        <source>%1 is not before until %2, so that no look would be due; look earlier, or leave looks out</source>
        <translation>%1 n’est pas avant la fin %2, aucun contrôle n’aurait lieu ; contrôlez plus tôt, ou laissez les contrôles</translation>
    </message>
    <message>
        <source>%1 makes more than %2 looks; look less often</source>
        <translation>%1 fait plus de %2 contrôles ; contrôlez moins souvent</translation>
    </message>
    <message>
        <source>%1 is more than every %2, so that looks would change places; make it at most half of every</source>
        <translation>%1 dépasse l’intervalle %2, des contrôles s’échangeraient ; mettez au plus la moitié</translation>
    </message>
    <message>
        <source>late jobs</source>
        <translation>derniers gestes</translation>
    </message>
    <message>
        <source>%1 is more than before %2 and tolerance %3 leave until the water; start it earlier or make it shorter</source>
        <translation>%1 dépasse ce que %2 avant et la tolérance %3 laissent jusqu’à l’eau ; commencez plus tôt ou raccourcissez</translation>
    </message>
    <message>
        <source>there is no such bowl; name one of the coat</source>
        <translation>ce bol n’existe pas ; nommez-en un du passage</translation>
    </message>
    <message>
        <source>there is no such rinse group; name one of the coat</source>
        <translation>ce groupe de rinçage n’existe pas ; nommez-en un du passage</translation>
    </message>
    <message>
        <source>%1 is more than the %2 that the rinse takes; the zone must be reached before it ends</source>
        <translation>%1 dépasse les %2 du rinçage ; la zone doit être atteinte avant sa fin</translation>
    </message>
    <message>
        <source>1 pair of hands here, %1 there</source>
        <translation>1 personne ici, %1 là</translation>
    </message>
    <message>
        <source>%1 pairs of hands here, %2 there</source>
        <translation>%1 personnes ici, %2 là</translation>
    </message>
    <message>
        <source>%1 here, %2 there</source>
        <translation>%1 ici, %2 là</translation>
    </message>
    <message>
        <source>%1 is away at other times</source>
        <translation>%1 s’absente à d’autres heures</translation>
    </message>
    <message>
        <source>%1 does other work</source>
        <translation>%1 fait un autre travail</translation>
    </message>
    <message>
        <source>1 basin here, %1 there</source>
        <translation>1 bac ici, %1 là</translation>
    </message>
    <message>
        <source>%1 basins here, %2 there</source>
        <translation>%1 bacs ici, %2 là</translation>
    </message>
    <message>
        <source>Say what is to be thought of next time.</source>
        <translation>Dites à quoi il faudra penser la prochaine fois.</translation>
    </message>
    <message>
        <source>Choose the zone that this is about.</source>
        <translation>Choisissez la zone dont il s’agit.</translation>
    </message>
    <message>
        <source>Say that in fewer words: at most %1 letters.</source>
        <translation>Dites-le en moins de mots : %1 lettres au plus.</translation>
    </message>
    <message>
        <source>Say that in one line.</source>
        <translation>Dites-le en une ligne.</translation>
    </message>
    <message>
        <source>%1 has not been rinsed. Say how it turned out once it is.</source>
        <translation>%1 n’est pas rincé. Dites quel est le résultat une fois que ce sera fait.</translation>
    </message>
    <message>
        <source>Say how %1 turned out.</source>
        <translation>Dites quel est le résultat pour %1.</translation>
    </message>
    <message>
        <source>%1 not before %2</source>
        <translation>%1 pas avant %2</translation>
    </message>
    <message>
        <source>%1 as soon as it is best</source>
        <translation>%1 dès que c’est le mieux</translation>
    </message>
    <message>
        <source>Let %1 start %2 earlier than was set for it</source>
        <translation>Que %1 commence %2 plus tôt que fixé</translation>
    </message>
    <message>
        <source>%1: not applied before the time that was set</source>
        <translation>%1 : pas appliqué avant l’heure fixée</translation>
    </message>
</context>
</TS>
