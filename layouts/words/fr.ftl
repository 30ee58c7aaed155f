# Français de France. Every sentence handspan prints about an exam; "vous". A draft: see `language-signed`.
# Sides are the mother's: "votre gauche" to the family, "sa gauche" to the midwife. Positions are spelled out: codes are built
# otherwise in French. Weeks are counted from the last period: SA.

# no, until a native midwife or doctor has read every message against the English; then yes, and who and when in a comment.
language-signed = no
language-name = français
draft-mark = BROUILLON
draft-note = BROUILLON : aucun soignant de langue maternelle n’a relu ce texte. C’est le texte anglais qui compte.

draft-beside = La page à côté est un brouillon en { $language } : aucun soignant ne l’a relue. C’est cette page-ci qui compte.

decimal-sign = ,

## Sides and parts

her-left = Gauche (mère)
her-right = Droite (mère)
your-left = Votre gauche
your-right = Votre droite
her-front = Ventre de la mère
her-back = Dos de la mère

## On the picture

label-of-baby = bébé { $number } : { $part }
label-baby = bébé { $number }
label-unsure = { $part }, probable
label-not-felt = { $part }, lieu non connu
label-doubt = { $part }, incertain
label-head = tête
label-back = dos
label-back-behind = dos, derrière
label-bottom = fesses
label-legs = jambes
label-back-not-felt = dos non connu
label-limbs-felt = bras ou jambes
label-heart = cœur entendu ici
label-heart-family = cœur entendu ici
label-fundus-cm = haut de l’utérus, { $cm } cm
label-fundus-expected = haut de l’utérus, attendu
label-fundus-level = haut de l’utérus
label-fifths = { $fifths } palpables au-dessus du détroit supérieur
label-brim = détroit supérieur
label-pubic-bone = pubis
below-small-fontanelle = petite fontanelle
below-large-fontanelle = grande fontanelle
below-frontal-suture = suture frontale
below-brow-ridges = arcades sourcilières
below-sagittal-suture = suture sagittale
below-occiput = occiput
below-chin = menton
below-mouth = bouche
below-nose = nez
below-baby-sacrum = sacrum du bébé
below-cleft = sillon
below-anus = anus
below-thigh = cuisse
below-coccyx = coccyx
below-cervix = col de l’utérus
below-straight = { $position }, tête ni fléchie ni rejetée en arrière
below-how = Vu d’en bas, depuis ses pieds, allongée sur le dos : le devant de la mère est en haut, sa gauche à droite du dessin. Dessin d’enseignement, d’après des mesures publiées, plus grand que les autres.
label-axis = axe du bassin
label-spine = colonne
label-sacrum = sacrum
label-wall = paroi de l’abdomen
label-navel = nombril
label-navel-level = hauteur du nombril
label-womb = utérus
label-handbooks = hauteur des manuels à { $weeks } SA
label-scar = cicatrice
label-small-scars = petites cicatrices
label-lump = boule (fibrome)

picture-title = Comment le bébé est placé
picture-caption = Palpé à la main, sans échographie. Visage, bras et jambes : idée du dessinateur. Les côtés sont ceux de la mère.
drawing-weeks-not-given = Terme non indiqué : dessiné comme à 38 SA.
drawing-womb-only = Avant 26 SA, seuls l’utérus et sa hauteur sont dessinés.
drawing-baby-not-told = Place de la tête et du siège inconnue : aucun bébé n’est dessiné.
drawing-back-not-felt = On ne sait pas où est le dos : tête et siège sont dessinés en ronds.
drawing-legs-not-felt = Place des jambes inconnue : dessinées fléchies.
drawing-foot-not-told = Un pied se présente en premier ; lequel n’est pas dit : les deux jambes sont dessinées repliées.
told-lump = anneau : boule (fibrome)
told-limbs = petit anneau : bras ou jambes
told-brim = long trait interrompu : détroit supérieur
drawing-heart-not-heard = Le cœur n’a pas été entendu.
drawing-back-side-only = Du dos, seul le côté est connu : dessiné juste sur ce côté.
drawing-unsure = Ce qui a été trouvé est incertain.
drawing-disagree = Les constatations se contredisent : le dessin suit la tête, le siège et le dos.
drawing-face-leads = La tête est défléchie à fond et la face se présente : de devant, on la voit par sa tranche.
drawing-brow-leads = La tête est à demi défléchie et le front se présente.
drawing-second-is-lower = Le bébé 2 est plus bas que le bébé 1 : numérotés comme dans le fichier.
drawing-smaller = L’utérus est moins haut que ce que demande un bébé de ce terme : dessiné plus petit, pour tenir sous le fond.
drawing-does-not-fit = L’utérus est trop bas pour un bébé de ce terme : tête et siège sont dessinés en ronds.

## Teaching plates

plate-set-occiput = Les huit variétés d’une tête fléchie
plate-set-sacrum = Les huit variétés d’un siège
plate-set-chin = Les huit variétés d’une face
plate-set-brow = Les huit variétés d’un front
plate-set-breech = Les jambes d’un bébé en siège
plate-set-transverse = En travers et de biais
plate-set-attitudes = L’attitude de la tête, et ce qui se présente
plate-set-fifths = La part de tête au-dessus du détroit supérieur
plate-set-levels = Le fond utérin, de 12 à 40 SA
plate-set-grips = Ce qu’on sent à chaque manœuvre
plate-set-listening = Où écouter
plate-set-turning = Rotation : { $from }, puis { $to }
plate-set-wall = L’abdomen à la main, pas à pas
plate-set-twins = Deux bébés
plate-set-below = Vu d’en bas : ce qui se présente, et comment
plate-set-palettes = Les palettes
plate-own = Côte à côte
plate-part = { $title } ({ $number } sur { $count })
plate-foot = Pour l’enseignement, par handspan { $version } : aucune personne réelle. Les côtés sont ceux de la mère : sa gauche est à droite de chaque image vue de devant. Visage, bras et jambes : idée du dessinateur.
plate-cut = Coupe médiane vue de sa gauche : son côté gauche est vers vous, son dos est à droite.
plate-fifths-cut = { $fifths } palpables au-dessus du détroit supérieur, coupe médiane
plate-frame = { $number }
plate-frame-end = { $number } : { $position }
plate-grip-1 = Première manœuvre : les deux mains autour du fond utérin
plate-grip-2 = Deuxième manœuvre : une main de chaque côté
plate-grip-3 = Troisième manœuvre : une main au-dessus du pubis
plate-grip-4 = Quatrième manœuvre : les doigts descendent des deux côtés de la tête
feel-head = dure et ronde : la tête
feel-head-above-brim = tête, jusqu’au détroit supérieur
feel-back = large et ferme : le dos
feel-side = le côté du tronc
feel-front = le devant du tronc
feel-bottom = large et plus mou : le siège
feel-limbs = petites parties mobiles : les membres
feel-trunk = le tronc
feel-nothing = aucune partie du bébé
shown-first = le premier
shown-second = le second
shown-listen = écouter ici
shown-listen-faint = écouter ici : plus faible
shown-cm = { $cm } cm
shown-tape = { $cm } cm, en suivant la courbe
told-diameter = Diamètre { $name } : { $cm } cm sur la peau ; les manuels donnent { $handbook } cm à terme, sur l’os
diameter-suboccipitobregmatic = du dessous de l’occiput à la grande fontanelle (sous-occipito-bregmatique)
diameter-occipitofrontal = de l’occiput à entre les sourcils (occipito-frontal)
diameter-mentovertical = du menton au vertex (mento-vertical)
diameter-submentobregmatic = du dessous du menton à la grande fontanelle (sous-mento-bregmatique)
plate-palette-neutral = neutre
plate-palette = palette { $number }
plate-week = { $weeks } SA
plate-flexed = fléchie : le menton sur la poitrine
plate-deflexed = indifférente : la tête ni fléchie ni renversée
plate-brow = front : la tête en partie défléchie
plate-face = face : la tête défléchie à fond
plate-frank = décomplété : jambes relevées le long du corps
plate-complete = complet : les deux genoux pliés
plate-footling-left = mode des pieds : le pied gauche d’abord
plate-footling-right = mode des pieds : le pied droit d’abord
plate-footling-both = mode des pieds : les deux d’abord
plate-twins-head-head = les deux, tête en bas
plate-twins-head-bottom = le premier tête en bas, le second siège en bas
plate-twins-bottom-head = le premier siège en bas, le second tête en bas
plate-twins-bottom-bottom = les deux, siège en bas
plate-twins-head-across = le premier tête en bas, le second en travers
plate-twins-bottom-across = le premier siège en bas, le second en travers

wall-before = Demandez comment elle va et comment bouge le bébé. Vessie vide, un peu inclinée vers sa gauche, vos mains chaudes. Dites ce que vous faites, arrêtez dès qu’elle le demande. Gauche et droite sont les siennes.
wall-look = 1 Regarder
wall-look-shape = La forme : longue, large ou de biais. Un utérus large : pensez à un bébé en travers.
wall-look-scars = Cicatrices : demandez l’origine de chacune. La peau ne dit pas comment l’utérus a été incisé.
wall-look-moves = Les mouvements que vous voyez.
wall-grip-1 = 2 Première manœuvre : le fond utérin
wall-grip-1-how = Les deux mains autour du fond : qu’y a-t-il là ?
wall-grip-1-head = Dure, ronde, elle ballotte seule : une tête.
wall-grip-1-bottom = Plus large, plus mou, le corps bouge avec : un siège.
wall-grip-2 = 3 Deuxième manœuvre : les côtés
wall-grip-2-how = Une main de chaque côté : l’une tient, l’autre palpe. Puis changez.
wall-grip-2-what = Large et ferme : le dos. De petites parties mobiles : les membres.
wall-grip-2-both = Membres des deux côtés : le dos est peut-être vers sa colonne.
wall-grip-3 = 4 Troisième manœuvre : sus-pubienne
wall-grip-3-how = Une main, pouce d’un côté, doigts de l’autre. En douceur : cela peut faire mal.
wall-grip-3-what = Qu’y a-t-il là ? Mobile, ou fixé ?
wall-grip-3-again = Même pôle qu’à la première manœuvre : repalpez les deux.
wall-grip-4 = 5 Quatrième manœuvre : vers le bassin
wall-grip-4-how = Face à ses pieds. Les doigts descendent des deux côtés de la tête, jusqu’au détroit supérieur.
wall-grip-4-fifths = Combien de cinquièmes au-dessus du détroit supérieur ? 2/5 ou moins : engagée. D’une tête seulement.
wall-grip-4-out = Là où les doigts butent d’abord, la tête fait saillie.
wall-listen = 6 Écouter
wall-listen-where = Là où le dos est le plus près de la peau. Un foyer appuie une variété ; il ne la prouve pas.
wall-listen-pulse = Prenez son pouls en même temps.
wall-listen-count = Comptez une minute entière. Habituel dès 20 SA : 110 à 160.
wall-listen-outside = De 100 à 109, ou de 161 à 180 : réécoutez une minute entière, la main sur son pouls. Si cela persiste, ou avec un autre signe : n’attendez pas.
wall-measure = 7 Mesurer
wall-measure-top = Trouvez le fond utérin, en descendant depuis le sternum.
wall-measure-tape = Du bord supérieur du pubis, par-dessus la courbe, jusqu’au fond utérin, chiffres en dessous.
wall-measure-weeks = Dès 24 SA : environ autant de cm que de SA, à 2 près ; comparez à ses mesures antérieures. Aucune ne compte : bébé en travers, jumeaux, fibromes, beaucoup de liquide.
wall-now = Agir maintenant, quoi qu’on palpe
wall-now-movements = Mouvements diminués, changés ou absents.
wall-now-not-heard = Dès 24 SA : le cœur n’est pas entendu.
wall-now-rate = Cœur du bébé à moins de 100 ou à plus de 180 par minute.
wall-now-pulse = Son propre pouls à 15 près de la fréquence entendue : c’est peut-être le sien.
wall-now-bleeding = Saignement.
wall-now-pain = Douleur constante ; utérus dur et douloureux ; douleur sur une cicatrice de l’utérus.
wall-now-waters = Membranes rompues, et le bébé n’a pas la tête en bas, ou la tête est mobile.
wall-now-help = N’attendez pas la fin de l’examen : appelez à l’aide, selon votre protocole local.
wall-sources = Sources : cinquièmes, pouls, hauteur : Theron, Maternal Care (Bettercare). Manœuvres, niveaux : Klein, Miller, Thomson, A Book for Midwives (Hesperian). Semaines, hauteur : OMS. Fréquences : NICHD 2008 ; OMS. Le reste est de pratique courante. À la main, sans échographie ; ne pose pas de diagnostic, ne remplace ni protocole local, ni jugement d’un soignant, ni échographie.

## What was understood
## `handspan check` says back what it read. $value is in the words of the exam language.

check-weeks = { $file }, à { $weeks } SA
check-no-weeks = { $file }, terme non indiqué
check-baby = Bébé { $baby }
check-not-examined = Non noté : { $names }.
check-nothing-left = Rien d’habituel à ce terme n’a été laissé de côté.

value-unsure = { $value }, incertain
value-scan = { $value }, à l’échographie
value-scan-at = { $value }, à l’échographie ({ $when })
value-vaginal = { $value }, au toucher vaginal

## The words of an exam

language-of-exams = no

word-not-felt = non perçu
word-not-heard = non entendu
word-none = aucun
word-not-listened = non écouté
word-not-asked = non demandé
word-could-not-tell = impossible à dire
word-yes = oui
word-no = non

word-left-flank = flanc gauche de la mère
word-left = à la gauche de la mère
word-middle = au milieu
word-right = à la droite de la mère
word-right-flank = flanc droit de la mère
word-fundus = fond utérin
word-above-navel = au-dessus de l’ombilic
word-at-navel = à l’ombilic
word-below-navel = sous l’ombilic
word-iliac-fossa = fosse iliaque
word-above-pubic-bone = au-dessus du pubis
word-left-iliac-fossa = fosse iliaque gauche de la mère
word-right-iliac-fossa = fosse iliaque droite de la mère
word-heard = entendu, lieu non noté

word-front = en avant
word-lateral = juste sur le côté
word-towards-her-spine = vers la colonne de la mère
word-towards-her-ribs = vers les côtes de la mère
word-towards-her-feet = vers les pieds de la mère
word-left-front = à la gauche de la mère, en avant
word-left-lateral = à la gauche de la mère, juste sur le côté
word-left-towards-her-spine = à la gauche de la mère, vers sa colonne
word-right-front = à la droite de la mère, en avant
word-right-lateral = à la droite de la mère, juste sur le côté
word-right-towards-her-spine = à la droite de la mère, vers sa colonne

word-free = mobile
word-at-the-brim = au détroit supérieur
word-deep = bas dans le bassin
word-engaged = engagée
word-limb-side = côté des membres
word-back-side = côté du dos
word-level = égale des deux côtés
word-flexed = fléchie
word-deflexed = indifférente
word-brow = front
word-face = face
word-frank = siège décomplété
word-complete = siège complet
word-footling-left = mode des pieds, le gauche
word-footling-right = mode des pieds, le droit
word-footling-both = mode des pieds, les deux
word-footling = mode des pieds

word-pinard-horn = stéthoscope de Pinard
word-fetoscope = stéthoscope fœtal
word-doppler = Doppler
word-regular = régulier
word-irregular = irrégulier

word-longitudinal = longitudinale
word-oblique = oblique
word-transverse = transversale
word-cephalic = céphalique
word-breech = siège
word-shoulder = épaule

word-usual = comme d’habitude
word-fewer = diminués
word-changed = changés
word-felt = perçus
word-not-felt-yet = pas encore perçus
word-bleeding = saignement
word-waters-broken = perte des eaux
word-itching = démangeaisons
word-constant-pain = douleur constante
word-tightenings = contractions
word-scar-pain = douleur à la cicatrice
word-headache = mal de tête
word-changes-in-sight = vue modifiée
word-fever = fièvre
word-swelling = gonflement
word-fits = convulsions
word-chest-pain = douleur dans la poitrine
word-trouble-breathing = difficulté à respirer
word-caesarean = césarienne
word-myomectomy = myomectomie
word-low-transverse = transversale basse
word-vertical = verticale
word-not-known = on ne sait pas
word-rear = en arrière
word-high = haut
word-low = bas

word-flat = à plat
word-left-tilt = inclinée à gauche
word-right-tilt = inclinée à droite
word-half-sitting = demi-assise
word-sitting = assise
word-long = longue
word-wide = large
word-slanting = de biais
word-midline = médiane
word-right-lower = en bas à droite de la mère
word-keyhole = cœlioscopie
word-linea-nigra = ligne brune
word-striae = vergetures
word-rash = éruption
word-soft = souple
word-tightening = en contraction
word-hard = dur
word-tender = douloureux au toucher
word-much = abondant
word-little = peu abondant
word-trace = traces
word-negative = négatif
word-positive = positif
word-found = trouvé
word-not-found = non trouvé
word-slight = mince
word-average = moyenne
word-large = forte
word-small = petite
word-comfortable = à l’aise
word-uncomfortable = inconfortable
word-in-pain = douloureux
word-given = donné
word-declined = refusé
word-empty = vide
word-full = pleine
word-keloid = chéloïde
word-healed = cicatrisée
word-navel = nombril
word-groin = aine
word-scar = cicatrice
word-mild = faible
word-moderate = modérée
word-strong = forte
word-does-not-soften = ne se relâche pas
word-clear = clair
word-pink = rosé
word-bloody = sanglant
word-green = vert
word-foul = malodorant
word-not-in-labour = pas en travail
word-early-labour = début de travail
word-in-labour = en travail
word-one = un
word-two = deux
word-equal-to-dates = conforme au terme
word-below-dates = inférieure au terme
word-above-dates = supérieure au terme
word-round = rond
word-ballottable = ballottant
word-broad = large
word-distant = lointain
word-muffled = assourdi
word-after-contractions = après les contractions
word-with-contractions = pendant les contractions
word-at-other-times = à d’autres moments
word-midwife = sage-femme
word-doctor = médecin
word-student = étudiante
word-two-people = deux personnes à la fois
word-different = différents
word-same = le même
word-cord = cordon
word-hand = main
word-foot = pied
word-vertex = sommet
word-turned = a tourné
word-did-not-turn = n’a pas tourné
word-she-declined = elle l’a refusée
word-tense = tendu
word-board-like = dur comme du bois
word-adequate = en quantité suffisante
word-a-tender-womb = utérus douloureux
word-foul-water = liquide malodorant
word-fast-pulse = pouls à 100 ou plus
word-fast-breathing = respiration à 21 ou plus
word-fast-heart-of-the-baby = cœur du bébé à plus de 160
word-protein-in-the-urine = protéines dans les urines
word-fewer-movements = mouvements inhabituels
word-t-shaped = en T
word-j-shaped = en J
word-dipping = amorcée
word-fixed = fixée
word-regular-tightenings = contractions régulières ou douloureuses
word-practice-tightenings = contractions de Braxton Hicks
word-severe-headache = mal de tête intense ou persistant
word-pain-under-ribs = douleur sous les côtes
word-vomiting = vomissements
word-burning-urine = brûlures en urinant
word-loin-pain = douleur lombaire
word-show = perte du bouchon muqueux
word-collapse = malaise grave
word-cold-and-clammy = froide et moite
word-faint = malaise
word-faint-lying-flat = malaise sur le dos
word-blow-or-fall = un coup ou une chute
word-swollen-calf = mollet gonflé ou douloureux
word-violence = violences
word-thoughts-of-self-harm = pensées de se faire du mal

word-bmi-35-or-more = IMC de 35 ou plus
word-fibroids = fibromes
word-much-water = liquide abondant
word-twins = jumeaux
word-not-longitudinal = bébé en travers ou de biais
word-not-above-pubic-bone = pas au-dessus du pubis
word-just-above-pubic-bone = juste au-dessus du pubis
word-halfway-to-navel = à mi-chemin de l’ombilic
word-halfway-to-xiphoid = à mi-chemin de la xiphoïde
word-xiphoid = à la xiphoïde
word-at-pubic-bone = au pubis

word-could-not-tell-why = impossible à dire ({ $reason })
word-cm = { $cm } cm
word-kg = { $kg } kg
word-celsius = { $celsius } °C
word-hours = { $hours } h
word-seconds = { $seconds } s
word-fingers = { $fingers ->
    [1] 1 doigt
   *[other] { $fingers } doigts
 }
word-range = { $low } à { $high }
word-left-cm = { $cm } cm à la gauche de la mère
word-right-cm = { $cm } cm à la droite de la mère
word-above-navel-cm = { $cm } cm au-dessus de l’ombilic
word-below-navel-cm = { $cm } cm sous l’ombilic
word-above-pubic-bone-cm = { $cm } cm au-dessus du pubis
word-fingers-above-navel = { $fingers } travers de doigt au-dessus de l’ombilic
word-fingers-below-navel = { $fingers } travers de doigt sous l’ombilic
word-fingers-below-xiphoid = { $fingers } travers de doigt sous la xiphoïde
word-fingers-above-pubic-bone = { $fingers } travers de doigt au-dessus du pubis
word-count = { $beats } en { $seconds } s
word-earlier-tape = { $weeks } SA { $cm } cm
word-tape-at = { $cm } cm à { $weeks } SA
word-weight-at = { $weight } ({ $weeks } SA)
word-scan-on = { $weeks } SA le { $date }

position-oa = occipito-pubienne
position-loa = occipito-iliaque gauche antérieure
position-lot = occipito-iliaque gauche transverse
position-lop = occipito-iliaque gauche postérieure
position-op = occipito-sacrée
position-rop = occipito-iliaque droite postérieure
position-rot = occipito-iliaque droite transverse
position-roa = occipito-iliaque droite antérieure
position-sa = sacro-pubienne
position-lsa = sacro-iliaque gauche antérieure
position-lst = sacro-iliaque gauche transverse
position-lsp = sacro-iliaque gauche postérieure
position-sp = sacro-sacrée
position-rsp = sacro-iliaque droite postérieure
position-rst = sacro-iliaque droite transverse
position-rsa = sacro-iliaque droite antérieure
position-ma = mento-pubienne
position-lma = mento-iliaque gauche antérieure
position-lmt = mento-iliaque gauche transverse
position-lmp = mento-iliaque gauche postérieure
position-mp = mento-sacrée
position-rmp = mento-iliaque droite postérieure
position-rmt = mento-iliaque droite transverse
position-rma = mento-iliaque droite antérieure
position-fa = naso-pubienne
position-lfa = naso-iliaque gauche antérieure
position-lft = naso-iliaque gauche transverse
position-lfp = naso-iliaque gauche postérieure
position-fp = naso-sacrée
position-rfp = naso-iliaque droite postérieure
position-rft = naso-iliaque droite transverse
position-rfa = naso-iliaque droite antérieure
position-rada = acromio-iliaque droite dorso-antérieure
position-radp = acromio-iliaque droite dorso-postérieure
position-lada = acromio-iliaque gauche dorso-antérieure
position-ladp = acromio-iliaque gauche dorso-postérieure

## Findings

group-dates = Dates
group-says = Elle dit
group-looked = Regardé
group-womb = Utérus
group-tape = HU
group-grip-1 = Palpation du fond
group-grip-2 = Palpation latérale
group-grip-3 = Pelvienne (une main)
group-grip-4 = Pelvienne (2 mains)
group-vaginal = Par voie vaginale
group-baby = Bébé
group-heart = Cœur
group-weight = Poids
group-concluded = Vos mots
group-note = Note

found-weeks = Terme : { $value } SA.
found-visit = Visite du { $value }.
found-due = Terme prévu le { $value }.
found-last-period = Dernières règles du { $value }.
found-cycle = Cycle de { $value } jours.
found-scan = Daté par échographie : { $value }.
found-note = { $value }

found-movements = Mouvements : { $value }.
found-reports = Elle signale : { $value }.
found-denies = Demandé, absent : { $value }.
found-births-before = Accouchements antérieurs : { $value }.
found-operations = Opérations de l’utérus : { $value }.
found-womb-cut = Incision de l’utérus : { $value }.
found-placenta = Placenta : { $value }.
found-posture = Sa posture : { $value }.
found-shape = Forme : { $value }.
found-scars = Cicatrices de la peau : { $value }.
found-skin = Peau : { $value }.
found-pulse = Son pouls : { $value }.
found-womb = Utérus : { $value }.
found-water = Liquide : { $value }.
found-lumps = Fibromes : { $value }.
found-fundus = Fond utérin : { $value }.
found-fundal-height = Mesurée : { $value }.
found-earlier-tapes = Antérieures : { $value }.
found-girth = Tour à l’ombilic : { $value }.
found-navel = Ombilic au-dessus du pubis : { $value }.
found-tape-unfit = Hauteur impropre à une courbe : { $value }.
found-gravida = Grossesses : { $value }.
found-rupture-before = Rupture utérine antérieure : { $value }.
found-placentas = Placentas : { $value }.
found-rhesus-d = Antigène D : { $value }.
found-group-b-strep = Streptocoque B : { $value }.
found-labour = Travail : { $value }.
found-hours-since-broken = Poche des eaux rompue depuis : { $value }.
found-water-colour = Liquide écoulé : { $value }.
found-consent = Consentement : { $value }.
found-comfort = Confort : { $value }.
found-build = Corpulence : { $value }.
found-scar-feel = La cicatrice est : { $value }.
found-muscle-gap = Écart des droits : { $value }.
found-hernia = Hernie : { $value }.
found-bladder = Vessie : { $value }.
found-temperature = Température : { $value }.
found-blood-pressure = Tension artérielle : { $value }.
found-breathing = Respirations par minute : { $value }.
found-urine-protein = Protéines dans les urines : { $value }.
found-contractions-in-ten = Contractions en dix minutes : { $value }.
found-contraction-length = Chacune dure : { $value }.
found-contraction-strength = Intensité : { $value }.
found-tone-at-rest = Entre les contractions : { $value }.
found-tender-at = Douloureux au toucher : { $value }.
found-height-for-dates = Hauteur selon le terme : { $value }.

found-breech = Siège : { $value }.
found-back = Dos : { $value }.
found-limbs = Membres : { $value }.
found-dip-at-navel = Creux à l’ombilic : { $value }.
found-head = Tête : { $value }.
found-head-above-brim = Tête au-dessus du détroit supérieur : { $value } palpables.
found-head-above-brim-state = Tête au-dessus du détroit supérieur : { $value }.
found-descent = Descente : { $value }.
found-prominence = Saillie de la tête : { $value }.
found-attitude = Attitude de la tête : { $value }.
found-legs = Jambes : { $value }.
found-moved-under-hands = A bougé sous les mains : { $value }.
found-heart = Entendu : { $value }.
found-heart-state = Cœur : { $value }.
found-heart-with = Avec : { $value }.
found-heart-counts = Compté : { $value }, en moyenne { $mean } battements par minute.
found-heart-counts-state = Compté : { $value }.
found-heart-rate = Fréquence : { $value } battements par minute.
found-heart-rate-state = Fréquence : { $value }.
found-heart-rise = Maximum au mouvement : { $value }.
found-heart-rhythm = Rythme : { $value }.
found-weight-by-hand = À la main : { $value }.
found-weight-by-scan = Par une échographie antérieure : { $value }.
found-fundus-feels = Au fond on sent : { $value }.
found-brim-feels = Au-dessus du détroit supérieur on sent : { $value }.
found-ballottable = Tête ballottante : { $value }.
found-overlaps-pubic-bone = La tête déborde le pubis : { $value }.
found-found-by-vagina = Trouvé par voie vaginale : { $value }.
found-station = Station : { $value }.
found-size = Taille pour le terme : { $value }.
found-kicks = Coups : { $value }.
found-hiccups = Hoquet : { $value }.
found-unstable-lie = Présentation instable : { $value }.
found-turning-tried = Version externe : { $value }.
found-heart-also = Entendu aussi : { $value }.
found-heart-quality = Son : { $value }.
found-heart-slows = Ralentissements : { $value }.
found-heart-by = A écouté : { $value }.
found-heart-and-pulse = Avec le pouls de la mère : { $value }.
found-lie = Situation : { $value }.
found-presentation = Présentation : { $value }.
found-position = Variété de position : { $value }.

name-movements = mouvements
name-fundal-height = hauteur utérine
name-breech = siège
name-back = dos
name-limbs = membres
name-head = tête
name-descent = descente de la tête
name-heart = cœur
name-heart-rate = fréquence cardiaque

conclude-cephalic = Tête en bas
conclude-face = Tête en bas, face en premier
conclude-brow = Tête en bas, front en premier
conclude-breech = Siège en bas
conclude-longitudinal = Situation longitudinale, on ne sait pas quel pôle est en bas
conclude-transverse = En travers
conclude-transverse-head-left = En travers, tête à la gauche de la mère
conclude-transverse-head-right = En travers, tête à la droite de la mère
conclude-shoulder = En travers, épaule en bas
conclude-shoulder-head-left = En travers, épaule en bas, tête à la gauche de la mère
conclude-shoulder-head-right = En travers, épaule en bas, tête à la droite de la mère
conclude-oblique = De biais
conclude-oblique-head-low-left = De biais, tête en bas à la gauche de la mère
conclude-oblique-head-low-right = De biais, tête en bas à la droite de la mère
conclude-oblique-head-up-left = De biais, tête en haut à la gauche de la mère, siège en bas de l’autre côté
conclude-oblique-head-up-right = De biais, tête en haut à la droite de la mère, siège en bas de l’autre côté
conclude-nothing = La place du bébé ne se déduit pas de ces constatations
conclude-nothing-head-low = La tête est en bas ; la place du bébé ne se déduit pas de ces constatations
conclude-nothing-head-up = La tête est en haut ; la place du bébé ne se déduit pas de ces constatations

back-left-front = dos à la gauche de la mère, vers l’avant
back-left-lateral = dos juste sur le côté, à la gauche de la mère
back-left-spine = dos à la gauche de la mère, vers sa colonne
back-left = dos à la gauche de la mère
back-right-front = dos à la droite de la mère, vers l’avant
back-right-lateral = dos juste sur le côté, à la droite de la mère
back-right-spine = dos à la droite de la mère, vers sa colonne
back-right = dos à la droite de la mère
back-front = dos vers l’avant
back-spine = dos vers la colonne de la mère (dos contre dos)
back-ribs = dos vers les côtes de la mère
back-feet = dos vers les pieds de la mère

# The code is not said.
conclude-position = { $lie }, { $back } : { $position }{ $code ->
   *[other] {""}
 }.
conclude-position-words = { $lie }, { $back } : { $position }.
conclude-back = { $lie }, { $back }.
conclude-nothing-at-all = { $lie }.
conclude-no-back = { $lie } ; la place du dos n’est pas connue.
conclude-no-turn = Aucune variété n’est nommée : du dos, seul le côté est connu.
conclude-unsure = Incertain : une constatation dont cela dépend porte un point d’interrogation.
conclude-engaged = Engagée : { $fifths } de la tête palpables au-dessus du détroit supérieur.
conclude-not-engaged = Non engagée : { $fifths } de la tête palpables au-dessus du détroit supérieur.
conclude-engaged-said = Dite engagée ; aucun cinquième noté.
conclude-head-free = Non engagée : la tête est mobile au-dessus du détroit supérieur.

check-reckoned = Calculé
check-version = handspan { $version }, règles du { $ledger }.
numbers-due = Terme prévu le { $due }, d’après { $by ->
    [scan] l’échographie
    [due] la date donnée
    [last-period] 280 jours depuis les dernières règles
   *[weeks] les semaines données
 }{ $cycle ->
    [none] {""}
   *[other] {" "}et un cycle de { $cycle } jours
 }.
numbers-due-period = 280 jours depuis les dernières règles{ $cycle ->
    [none] {""}
   *[other] {" "}et un cycle de { $cycle } jours
 } : { $due }, { $apart }.
numbers-due-calendar = Par la règle du calendrier (Naegele), non utilisée : { $due }, { $apart }.
numbers-apart-same = le même jour
numbers-apart-later = { $days ->
    [1] 1 jour
   *[other] { $days } jours
 } plus tard
numbers-apart-earlier = { $days ->
    [1] 1 jour
   *[other] { $days } jours
 } plus tôt
numbers-weeks-rule = { $direction ->
    [equal] égale aux semaines
    [below] { $difference } cm sous les semaines
   *[above] { $difference } cm au-dessus des semaines
 }, { $within ->
    [yes] dans la limite de
   *[no] hors de la limite de
 } { $limit }
numbers-tape-weeks = Règle des semaines : { $rule } cm.
numbers-tape-weeks-none = Règle des semaines : dès 24+0 SA seulement.
numbers-tape-standard = INTERGROWTH-21st : moyenne { $mean } cm, ET { $sd } cm ; z { $z }, centile { $centile }.
numbers-tape-standard-none = INTERGROWTH-21st : de 16+0 à 42+6 SA seulement.
numbers-tape-no-weeks = Ni règle des semaines ni centile : le terme n’est pas indiqué.
numbers-tape-unfit = Ni règle des semaines, ni z, ni centile, ni poids par la hauteur utérine : { $why }.
numbers-landmark = { $same ->
    [yes] Les manuels donnent pour ce terme : { $low }
   *[no] Les manuels donnent pour ce terme : { $low } à { $high }
 }, à 2 semaines près ; les femmes diffèrent davantage.
numbers-heart = Moyenne { $mean } battements par minute ; les comptages permettent { $low } à { $high } (par pas de { $steps }).
numbers-heart-rise = Au mouvement, jusqu’à { $rise } : noté, et cela ne tranche rien.
numbers-grams = { $grams } g ({ $pounds } lb { $ounces } oz)
numbers-hand = À la main : { $weight }.
numbers-hand-range = À la main : { $low } à { $high }.
numbers-johnson = Johnson : { $low } à { $high } g (n { $first } à { $last }).
numbers-dare = Dare, avec le tour : { $grams } g.
numbers-buchmann = Buchmann : { $grams } g, faite pour le travail à terme.{ $large ->
    [yes] {" "}En travail, une hauteur de 40 cm ou plus rend possible plus de 4000 g : prévoyez-le selon votre protocole local.
   *[no] {""}
 }
numbers-weights-apart = Ces poids diffèrent de { $grams } g : aucun ne décide du poids du bébé. Si cela compte, demandez une échographie selon votre protocole local.
numbers-rough = Parmi les poids tirés de la hauteur utérine, 4 à 7 sur 10 sont à un dixième près du poids de naissance.
numbers-curves = Courbes
numbers-curves-of = Pour repère, poids à l’échographie à { $weeks } SA, ni à la main ni par la hauteur.
numbers-curves-intergrowth = INTERGROWTH-21st : P10 { $low }, P50 { $middle }, P90 { $high } g.
numbers-curves-intergrowth-none = INTERGROWTH-21st : de 22+0 à 40+0 SA seulement.
numbers-curves-hadlock = Hadlock : P10 { $low }, P50 { $middle }, P90 { $high } g.
numbers-curves-hadlock-none = Hadlock : de 10+0 à 40+0 SA seulement.
numbers-curves-no-weeks = Pas de poids de repère : le terme n’est pas indiqué.

check-heart-early = Le cœur n’a pas été entendu. Avant 16 semaines aucune règle n’en part, parce qu’au stéthoscope de Pinard ou au Doppler il peut échapper si tôt ; cela n’exclut rien. S’il avait été entendu avant, ou si des mouvements qu’elle sentait ont cessé, cela ne peut pas attendre ; sinon suivez votre protocole local.
check-remarks-none = Rien de ce qui est noté ici ne répond à une règle « agir maintenant » ni ne se contredit. Cela n’exclut rien.
check-question-open = Une question sur la ligne reste ouverte : tant qu’elle n’a pas de réponse, rien n’est dit de ce qui n’a pas été trouvé.
check-understood = Compris : { $line }
check-fits = Ce qui a été trouvé convient à : { $positions }.
check-quieted = Laissé de côté cette fois, à la demande : { $ids }.
check-local = Calculé avec les seuils locaux du fichier de la maternité.
check-problems = Dans le fichier
grade-act-now = Agir maintenant
grade-cannot-both = Incompatibles
grade-look-again = Revérifier
grade-follow-guidance = Suivre le protocole
for-baby = Bébé { $baby } : { $text }

# The boxes that every chart has, and words of a visit file as a chart says them.
check-charted = Pour le dossier
box-lie = Situation
box-presentation = Présentation
box-position = Position
box-attitude = Attitude
box-engagement = Engagement (cinquièmes)
box-liquor = Liquide
box-fundal-height = Hauteur utérine
box-heart = Cœur fœtal
box-movements = Mouvements
box-none = non noté
box-open = non établi
box-fifths = { $fifths } palpables
box-rate = { $rate } battements par minute
box-heard = entendu : { $place }
box-sentence = { $label } : { $value }.
conclude-from = Découle de ce qui a été { $ways }.
way-felt = palpé
way-scan = vu à l’échographie
way-vaginal = trouvé au toucher vaginal
way-written = écrit
check-remarks-none-note = Rien de ce qui est noté hors du texte libre ne répond à une règle « agir tout de suite » ni ne se contredit ; dans le texte libre seuls les mots d’alarme sont cherchés. Cela n’exclut rien.
found-breech-state = Siège : { $value }.
found-head-state = Tête : { $value }.
value-placenta-front = antérieur
value-placenta-rear = postérieur
value-placenta-high = fundique
value-placenta-low = bas inséré
value-back-front = antérieur
value-back-left-front = gauche, antérieur
value-back-right-front = droite, antérieur
value-back-left-lateral = gauche, latéral
value-back-right-lateral = droite, latéral
value-back-towards-her-spine = postérieur
value-back-left-towards-her-spine = gauche, postérieur
value-back-right-towards-her-spine = droite, postérieur
value-prominence-limb-side = du côté des membres
value-prominence-back-side = du côté du dos
value-tape-unfit-not-longitudinal = situation transverse ou oblique
value-tape-unfit-much-water = beaucoup de liquide
value-shape-slanting = oblique
value-labour-not-in-labour = pas en travail
value-labour-early-labour = début de travail
value-labour-in-labour = en travail
value-reports-fits = convulsions
value-reports-tightenings = contractions
value-reports-waters-broken = rupture de la poche des eaux
value-operations-caesarean = césarienne
chart-fundal-height = Hauteur utérine : { $value }.

## Sides read back

outline-title = Abdomen de la mère
outline-description = Abdomen de la mère, vu par quelqu’un face à elle : sa gauche est à droite de l’image.

read-back-back-left = Dos du côté GAUCHE DE LA MÈRE : à votre droite, face à elle.
read-back-back-right = Dos du côté DROIT DE LA MÈRE : à votre gauche, face à elle.
read-back-head-left = Tête du côté GAUCHE DE LA MÈRE : à votre droite, face à elle.
read-back-head-right = Tête du côté DROIT DE LA MÈRE : à votre gauche, face à elle.
read-back-bottom-left = Siège du côté GAUCHE DE LA MÈRE : à votre droite, face à elle.
read-back-bottom-right = Siège du côté DROIT DE LA MÈRE : à votre gauche, face à elle.
read-back-limbs-left = Membres du côté GAUCHE DE LA MÈRE : à votre droite, face à elle.
read-back-limbs-right = Membres du côté DROIT DE LA MÈRE : à votre gauche, face à elle.
read-back-limbs-both = Membres des DEUX côtés de la mère.
read-back-heart-left = Cœur entendu du côté GAUCHE DE LA MÈRE : à votre droite, face à elle.
read-back-heart-right = Cœur entendu du côté DROIT DE LA MÈRE : à votre gauche, face à elle.

## The chart

chart-opening = Examen de l’abdomen à la main, à { $weeks } SA.
chart-opening-no-weeks = Examen de l’abdomen à la main ; terme non indiqué.
chart-cautions = À la main, sans échographie, sauf mention ; les côtés sont ceux de la mère. Un compte rendu : il ne pose pas de diagnostic et ne remplace ni le protocole local, ni le jugement d’un soignant, ni une échographie.
chart-versions = handspan { $version }, règles du { $ledger }.

chart-scan = Daté par échographie : { $value }.
chart-shape = Forme de l’abdomen : { $value }.
chart-pulse = Pouls de la mère : { $value }.
chart-earlier-tapes = Hauteurs antérieures : { $value }.
chart-heart = Cœur entendu : { $value }.
chart-heart-state = Cœur : { $value }.
chart-heart-with = Écouté avec : { $value }.
chart-heart-counts = Cœur compté : { $value }, en moyenne { $mean } battements par minute.
chart-heart-counts-state = Comptage du cœur : { $value }.
chart-heart-rate = Fréquence cardiaque : { $value } battements par minute.
chart-heart-rate-state = Fréquence cardiaque : { $value }.
chart-heart-rise = Fréquence cardiaque maximale au mouvement : { $value }.
chart-heart-rhythm = Rythme du cœur : { $value }.
chart-contraction-length = Durée des contractions : { $value }.
chart-contraction-strength = Intensité des contractions : { $value }.
chart-tone-at-rest = L’utérus entre les contractions : { $value }.
chart-tender-at = Utérus douloureux au toucher : { $value }.
chart-heart-also = Cœur entendu aussi : { $value }.
chart-heart-quality = Son du cœur : { $value }.
chart-heart-slows = Ralentissements du cœur : { $value }.
chart-heart-by = Écouté par : { $value }.
chart-heart-and-pulse = Cœur et pouls de la mère ensemble : { $value }.
chart-weight-by-hand = Poids à la main : { $value }.
chart-weight-by-scan = Poids d’une échographie antérieure : { $value }.
chart-lie = Situation écrite : { $value }.
chart-presentation = Présentation écrite : { $value }.
chart-position = Variété de position écrite : { $value }.
chart-note = Note : { $value }
chart-more = Le reste figure dans le dossier.

handover-situation = SITUATION
handover-background = ANTÉCÉDENTS
handover-assessment = ÉVALUATION
handover-recommendation = DEMANDE
handover-first = D’abord ce qui ne peut attendre, comme ci-dessus : { $ids }.
handover-guidance = Puis selon le protocole local. Ce qui n’a pas été examiné reste inconnu jusqu’à ce que quelqu’un l’examine.
handover-line = Transmis par ____________________  à ____________________  à ________
history-not-recorded = Non noté : { $names }.
history-births-before = Accouchements antérieurs
history-operations = Opérations de l’utérus
history-womb-cut = Incision de l’utérus
history-placenta = Place du placenta

slip-title = Examen de l’abdomen
slip-label = Étiquette
slip-time = Date et heure ____
slip-signature = Signature ____

## The tape over the visits

growth-title = La hauteur utérine au fil des visites
growth-span = { $visits } visites, de { $first } à { $last } SA.{ $due ->
    [none] {""}
   *[other] {" "}Terme prévu le { $due }.
 }
growth-axis-tape = Du pubis au fond utérin, cm
growth-axis-weeks = SA
growth-curve = P{ $centile }
growth-key-tape = hauteur utérine
growth-key-earlier = notée plus tard comme hauteur antérieure
growth-key-not-read = impropre à la lecture
growth-key-curves = courbes : INTERGROWTH-21st
growth-not-read = { $cm } cm : { $why }
growth-sides = Comment le bébé était placé à chaque visite. Dans chaque dessin, la gauche de la mère est à droite.
growth-no-curves = Aucune courbe n’est tracée : elle est faite de grossesses à un seul bébé.

growth-head-weeks = SA
growth-head-tape = HU
growth-head-rule = Face aux semaines
growth-head-curve = INTERGROWTH-21st
growth-head-lie = Place du bébé
growth-head-brim = Au-dessus du détroit
growth-head-heart = Cœur, batt./min
growth-dash = –
growth-heard = entendu
growth-dated = { $weeks } ({ $date })
growth-rule = { $rule } cm
growth-standard = z { $z }, centile { $centile }
growth-outside = de 16+0 à 42+6 seulement
growth-why-not = non lue : { $why }
growth-palpable = { $fifths } palpables
growth-numbered = { $baby } : { $text }
growth-earlier = Notées plus tard comme hauteurs antérieures : { $tapes }.
growth-earlier-one = { $cm } cm à { $weeks } SA ({ $answer })
growth-at = À { $weeks } SA : { $text }

growth-lie-head-down = tête en bas
growth-lie-bottom-down = siège en bas
growth-lie-lengthwise = en longueur
growth-lie-across = en travers
growth-lie-slanting = de biais
growth-lie-not-known = non connu
growth-probably = { $lie }, probable

growth-about = Hauteurs utérines sur les courbes P3, P10, P50, P90 et P97 d’INTERGROWTH-21st ; dessous, un dessin de la place du bébé à chaque visite. { $visits }
growth-about-no-curves = Hauteurs utérines selon les semaines, et un dessin de la place des bébés à chaque visite. { $visits }
growth-about-visit = À { $weeks } SA : hauteur { $tape }, { $answer } ; { $lie }.

growth-due-apart = { $days ->
    [1] Les termes prévus diffèrent de 1 jour
   *[other] Les termes prévus diffèrent de { $days } jours
 } entre les visites ; chacune est placée à son propre terme.
growth-without-due = { $which ->
    [all] Aucune visite n’a de terme prévu : qu’elles soient d’une même grossesse n’a pu être vérifié.
   *[some] Aucun terme prévu n’est connu pour les visites à { $weeks } SA : qu’elles soient de cette grossesse n’a pu être vérifié.
 }
growth-dash-means = Un tiret : non noté à cette visite.
growth-caution = Une hauteur qui suit une courbe n’exclut rien.

## Remarks
## One sentence what was found, one what to do next. Never a diagnosis, never reassurance; local guidance decides.

remark-movements-fewer = Elle dit que le bébé bouge moins que d’habitude. Faites évaluer la mère et le bébé maintenant, selon votre protocole local pour diminution des mouvements ; un cœur entendu ne règle pas la question.
remark-movements-changed = Elle dit que les mouvements ont changé. Faites évaluer la mère et le bébé maintenant, selon votre protocole local pour mouvements modifiés ; un cœur entendu ne règle pas la question.
remark-movements-none = Elle dit que le bébé ne bouge pas. Faites évaluer la mère et le bébé maintenant, selon votre protocole local ; un cœur entendu ne règle pas la question.
remark-movements-not-felt-yet = Les mouvements n’ont pas encore été perçus, et 24 SA sont passées ou le terme n’est pas connu. Faites évaluer la mère et le bébé maintenant, selon votre protocole local pour mouvements non perçus à 24 SA.
remark-bleeding = Elle signale un saignement. Faites-vous aider et suivez maintenant votre protocole local pour un saignement pendant la grossesse.{ $placenta ->
    [known] {""}
    [low] {" "}Le placenta est noté bas : ne faites pas de toucher vaginal.
   *[other] {" "}La place du placenta n’est pas notée : ne faites pas de toucher vaginal avant de la connaître.
 }
remark-constant-pain = Elle signale une douleur qui ne passe pas. Demandez de l’aide et suivez maintenant votre protocole local pour douleur constante pendant la grossesse.
remark-urgent-signs = Noté : { $signs }. Faites-vous aider et suivez maintenant votre protocole local.
remark-hard-tender-womb = L’utérus est dur ou tendu, et douloureux au toucher. Faites-vous aider et suivez maintenant votre protocole local ; n’attendez pas pour le palper de nouveau.
remark-scar-pain = Il y a une douleur, spontanée ou au toucher, de la cicatrice, et l’utérus a été opéré. Faites-vous aider et suivez maintenant votre protocole local pour une douleur de la cicatrice.
remark-scar-pain-operations-not-known = Il y a une douleur, spontanée ou au toucher, d’une cicatrice, et il n’est pas noté si l’utérus a été opéré. Demandez maintenant ; si oui, ou si personne ne le sait, faites-vous aider et suivez maintenant votre protocole local pour une douleur de la cicatrice.
remark-crosswise-in-labour = Le bébé est en situation transverse ou oblique, et elle est en travail ou a des contractions régulières. Appelez de l’aide maintenant et suivez votre protocole local pour un travail dans cette situation ; pensez d’abord à la procidence du cordon.
remark-head-overlaps-in-labour = La tête déborde le pubis, et elle est en travail ou a des contractions régulières. Appelez maintenant une aide expérimentée, écoutez le cœur et suivez votre protocole local pour une tête qui n’entre pas dans le bassin pendant le travail.
remark-unstable-lie-in-labour = La situation change sans cesse, et elle est en travail ou ses membranes sont rompues. Palpez maintenant la situation du bébé, appelez de l’aide et suivez votre protocole local pour une situation instable ; pensez d’abord à la procidence du cordon.
remark-waters-broken-not-head-down = Les membranes sont rompues et le bébé n’a pas la tête en bas. Appelez de l’aide maintenant et suivez votre protocole local pour membranes rompues sans tête en bas ; pensez d’abord à la procidence du cordon.
remark-waters-broken-lie-not-known = Les membranes sont rompues et il n’est pas noté que le bébé a la tête en bas. Cherchez la tête maintenant, et suivez votre protocole local pour membranes rompues ; pensez d’abord à la procidence du cordon.
remark-waters-broken-head-free = Les membranes sont rompues et la tête est mobile au-dessus du détroit supérieur. Appelez de l’aide maintenant et suivez votre protocole local pour membranes rompues avec tête mobile ; pensez d’abord à la procidence du cordon.
remark-heart-not-heard = Le cœur n’a pas été entendu. Demandez maintenant à une deuxième personne d’écouter, avec un autre instrument, et organisez une échographie selon votre protocole local pour cœur non entendu ; ne la renvoyez pas attendre chez elle.
remark-heart-rate-low = La fréquence cardiaque notée est de { $rate } battements par minute, sous { $low }. Prenez son pouls en écoutant de nouveau une minute entière, demandez de l’aide, et suivez votre protocole local maintenant.
remark-heart-rate-high = La fréquence cardiaque notée est de { $rate } battements par minute, au-dessus de { $high }. Prenez le pouls de la mère en écoutant de nouveau une minute entière, demandez de l’aide, et suivez votre protocole local maintenant.
remark-pulse-near-heart = Son pouls est de { $pulse } et la fréquence entendue de { $rate } : c’est peut-être son propre pouls qui a été entendu. Prenez son pouls en écoutant de nouveau maintenant ; s’ils battent ensemble, le cœur n’a pas été entendu : appelez une deuxième personne et un autre instrument, et organisez une échographie selon votre protocole local pour cœur non entendu.

remark-head-and-bottom-in-one-place = Tête et siège ne peuvent pas être au même endroit ({ $said }). Palpez de nouveau les deux pôles de l’utérus.
remark-back-against-lie = Le dos ne peut pas être ainsi avec la tête ou le siège à cet endroit ({ $said }). Palpez de nouveau le dos, puis la tête et le siège.
remark-lie-against-findings = La situation écrite n’est pas celle que donnent ces constatations ({ $said }). Palpez de nouveau la tête et le siège ; l’image suit les constatations.
remark-presentation-against-findings = La présentation écrite n’est pas celle que donnent ces constatations ({ $said }). Palpez de nouveau la tête et le siège ; l’image suit les constatations.
remark-position-against-findings = La variété de position écrite n’est pas celle que donnent ces constatations ({ $said }). Palpez de nouveau la tête, le siège et le dos, d’abord la gauche et la droite de la mère ; l’image suit les constatations.
remark-conclusions-against-one-another = Ce que vous avez conclu ne tient pas ensemble ({ $said }). Gardez ce que vous pouvez palper.
remark-attitude-against-presentation = Une seule tête ne peut pas avoir deux attitudes ({ $said }). Gardez celle que vous connaissez, et comment vous la connaissez.
remark-engaged-and-crosswise = Un bébé en situation transverse ou oblique n’a pas la tête profonde dans le bassin ({ $said }). Palpez de nouveau au-dessus du détroit supérieur.
remark-head-in-two-places = Une seule tête ne peut pas être à deux endroits ({ $said }). Palpez de nouveau le fond utérin et au-dessus du détroit supérieur.
remark-fifths-on-a-breech = Les cinquièmes se comptent sur une tête, et ces constatations mettent le siège en bas ({ $said }). Palpez de nouveau au-dessus du détroit supérieur : tête ou siège ?
remark-engaged-on-a-breech = Engagée se dit d’une tête, et ces constatations mettent le siège en bas ({ $said }). D’un siège, dites : mobile, au détroit supérieur ou bas dans le bassin.
remark-fifths-against-descent = Les cinquièmes et la descente en mots ne s’accordent pas ({ $said }). Palpez de nouveau au-dessus du détroit supérieur et gardez l’un des deux.
remark-heart-not-heard-but-counted = Un cœur non entendu n’a pas de fréquence ({ $said }). Écoutez de nouveau, une main sur son pouls ; puis écrivez où il a été entendu, ou aucune fréquence.
remark-reported-and-denied = La même chose est signalée et niée ({ $said }). Demandez de nouveau.
remark-limbs-on-the-side-of-the-back = Les membres ont été palpés du côté du dos. Palpez de nouveau les deux côtés : lequel est large et ferme, lequel a de petites parties ?
remark-heart-far-from-the-back = Le cœur a été entendu du côté opposé au dos. Palpez de nouveau le dos et écoutez à cet endroit ; le lieu où un cœur est entendu appuie une variété de position et ne la prouve jamais.
remark-heart-height-against-the-end-that-is-down = La hauteur où le cœur a été entendu n’est pas celle où les manuels le cherchent avec ce pôle en bas. Palpez de nouveau quel pôle est en bas, et écoutez au-dessus et au-dessous de l’ombilic.
remark-prominence-on-the-side-of-the-back = La saillie de la tête est du côté du dos, comme elle peut l’être quand la tête est défléchie. Palpez de nouveau à deux mains au-dessus du détroit supérieur, et suivez votre protocole local sur l’échographie.

tape-low-head = Une tête basse peut abaisser la hauteur utérine ; cela n’exclut pas un petit bébé.
remark-dates-apart = D’après les dernières règles, le terme prévu est le { $period }, à { $days } jours du { $due }, la date { $by ->
    [scan] de l’échographie
   *[other] donnée
 }. Revoyez les deux dans son dossier : l’une est peut-être mal lue ou mal écrite. { $due } est utilisé ici ; tranchez selon votre protocole local sur la datation.
remark-size-against-dates = La hauteur de l’utérus correspond à { $fits } SA, et le terme est de { $weeks } SA : plus de { $limit } semaines d’écart, sans échographie précoce notée. Demandez de nouveau les dernières règles et le cycle, cherchez une échographie dans son dossier, et suivez votre protocole local sur les dates incertaines.{ $size ->
    [tape] {" "}Quelles que soient les dates, ce qui est dit de la hauteur utérine demeure.
   *[other] {" "}Palpez de nouveau l’utérus, vessie vide.
 }
remark-tape-outside-weeks = La hauteur utérine est de { $cm } cm à { $weeks } SA : { $difference } cm { $direction ->
    [below] sous les
   *[other] au-dessus des
 } semaines, hors de { $limit } cm. Demandez-lui de vider sa vessie, cherchez le fond utérin, et mesurez de nouveau, côté vierge du ruban au-dessus. Si cela reste ainsi, comparez aux hauteurs antérieures et suivez votre protocole local sur l’échographie.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-below-p10 = La hauteur utérine est de { $cm } cm à { $weeks } SA : centile { $centile }, sous le dixième. Mesurez de nouveau, vessie vide et côté vierge du ruban au-dessus, comparez aux hauteurs antérieures, et suivez votre protocole local sur l’échographie de croissance.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-above-p90 = La hauteur utérine est de { $cm } cm à { $weeks } SA : centile { $centile }, au-dessus du quatre-vingt-dixième. Mesurez de nouveau, vessie vide et côté vierge du ruban au-dessus, cherchez de nouveau beaucoup de liquide, des masses et un deuxième bébé, comparez aux hauteurs antérieures, et suivez votre protocole local pour une hauteur élevée.
remark-tape-four-weeks-behind = La hauteur utérine est de { $cm } cm à { $weeks } SA : quatre semaines ou plus de retard sur la moyenne, au centile { $centile }{ $reaches ->
    [none] {""}
   *[other] {" "}(c’est la moyenne de { $reaches } SA)
 }. Mesurez de nouveau, vessie vide et côté vierge du ruban au-dessus, comparez aux hauteurs antérieures, et organisez une échographie de croissance selon votre protocole local sans attendre la prochaine visite.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-static = Trois hauteurs utérines de suite sont égales : { $earlier }, et { $cm } cm à { $weeks } SA. { $again ->
    [yes] Mesurez de nouveau, vessie vide et côté vierge du ruban au-dessus, et suivez
   *[other] Suivez
 } votre protocole local sur l’échographie de croissance.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-falling = La hauteur utérine est de { $cm } cm à { $weeks } SA, plus basse que deux visites avant ({ $earlier }). { $again ->
    [yes] Mesurez de nouveau, vessie vide et côté vierge du ruban au-dessus, et suivez
   *[other] Suivez
 } votre protocole local sur l’échographie de croissance.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-not-read = Ici, aucune hauteur utérine ne peut être lue face aux semaines ou à une courbe : { $why }. { $lie ->
    [across] Mesurez de nouveau quand le bébé sera en longueur, et suivez
   *[other] Suivez
 } votre protocole local sur le suivi de la croissance à l’échographie.
remark-heart-recount = { $counted ->
    [yes] Les comptages ont une moyenne de { $mean } et laissent la fréquence entre { $low } et { $high } battements par minute
   *[other] La fréquence a été entendue entre { $low } et { $high } battements par minute
 }, à cheval sur une limite de l’habituel 110 à 160. Comptez de nouveau 60 secondes entières, une main sur son pouls ; un battement sur lequel part le chronomètre compte pour zéro. Écrivez le compte, et suivez votre protocole local s’il est en dehors.
remark-heart-outside-usual = La fréquence cardiaque notée est de { $rate } battements par minute, { $direction ->
    [low] moins de 110
   *[other] plus de 160
 }. Réécoutez pendant une minute entière, une main sur le pouls de la mère ; si elle reste ainsi, ou s’il y a fièvre, saignement, poche des eaux rompue, moins de mouvements ou travail, cela ne peut pas attendre. Suivez votre protocole local.
remark-heart-irregular = Le rythme a été entendu irrégulier. Écoutez de nouveau 60 secondes entières, faites écouter une deuxième personne, et suivez votre protocole local pour un rythme cardiaque irrégulier.

remark-dip-with-a-back-in-front = Un creux à l’ombilic va avec un dos vers sa colonne, et le dos a été trouvé en avant ({ $said }). Cherchez de nouveau le dos dans les deux flancs.
remark-twins-on-one-side = Ce qui a été trouvé des deux bébés se trouve à sa { $side ->
    [left] gauche
   *[right] droite
 }. Palpez de nouveau quel bébé est de quel côté, et notez la tête, le dos et le cœur de chacun sous son numéro.
remark-heart-over-the-other-baby = Le cœur du bébé { $baby } a été entendu du côté où se trouve l’autre. Écoutez de nouveau sur chaque dos, à deux en même temps si possible, et notez chaque cœur sous son numéro.
remark-findings-fit-no-position = Aucune variété de position ne donne tout cela à la fois ({ $said }). Palpez de nouveau, l’un après l’autre : les pôles de l’utérus, le dos, les membres ; puis écoutez de nouveau.
remark-fifths-may-read-low = Les cinquièmes d’une tête ainsi placée peuvent se lire trop bas : on en palpe moins qu’il n’y en a au-dessus du détroit supérieur. Palpez de nouveau à deux mains, jusqu’au bout de la tête, avant de la dire engagée.
remark-too-early-for-hands = Avant 24 SA, les mains disent rarement comment un bébé est placé ou à quelle hauteur est sa tête. Palpez de nouveau aux visites suivantes, et gardez ceci pour aujourd’hui seulement.
remark-presentation-early = Le bébé n’est pas tête en bas aujourd’hui, et 36 semaines ne sont pas passées. Palpez de nouveau à chaque visite, sans reprendre ce qui a été trouvé aujourd’hui.
remark-presentation-not-known = On ne sait pas quel pôle est en bas. Palpez de nouveau, vessie vide, demandez une deuxième paire de mains, et organisez une échographie selon votre protocole local si cela reste ouvert : la palpation méconnaît environ 3 bébés sur 10 qui n’ont pas la tête en bas.
remark-womb-hard-or-tender = L’utérus est { $feel ->
    [hard] dur
    [tense] tendu
   *[other] douloureux au toucher
 }. Gardez une main dessus : se relâche-t-il de nouveau, et quand ? Interrogez sur la douleur et le saignement ; s’il reste ainsi, faites-vous aider et suivez votre protocole local.
remark-scar-of-unknown-operation = Il y a une cicatrice sur la peau, et il n’est pas noté si l’utérus a été opéré. Demandez de quelle opération il s’agissait : la peau ne dit pas quelle est l’incision de l’utérus.
remark-not-head-down = Le bébé n’a pas la tête en bas, et 36 SA sont passées. Faites-le confirmer par une échographie, et suivez votre protocole local pour un bébé qui n’a pas la tête en bas : présentez-lui les options. Les mains se trompent dans près de la moitié de ces cas.
remark-crosswise-at-term = Le bébé est en situation transverse ou oblique, et 37 SA sont passées. Faites-le confirmer par une échographie et suivez votre protocole local : l’hospitalisation est à discuter, et elle doit venir aussitôt si le travail commence ou si les eaux se rompent, à cause du risque de procidence du cordon.
remark-unstable-lie = La situation change sans cesse. Suivez votre protocole local pour une situation instable : l’hospitalisation est à discuter, et elle doit venir aussitôt si le travail commence ou si les eaux se rompent, à cause du risque de procidence du cordon.
remark-womb-operated-on = { $cut ->
    [known] L’utérus a été incisé verticalement, en T ou en J, ou s’est rompu auparavant. Comparez ce qui est noté au compte rendu opératoire, et suivez votre protocole local sur le lieu et la voie de naissance.
   *[other] L’utérus a déjà été opéré. Cherchez dans le compte rendu opératoire l’incision de l’utérus : la cicatrice de la peau ne la dit pas. Suivez votre protocole local pour une naissance après une telle opération.
 }
remark-head-free-at-term = La tête est mobile au-dessus du détroit supérieur, et 37 SA sont passées. Palpez de nouveau, vessie vide, cherchez où est le placenta, et suivez votre protocole local sur l’échographie pour une tête mobile à terme.
remark-placenta-low = Le placenta est noté bas. Vérifiez que l’échographie de contrôle prévue par votre protocole local est demandée ou faite, en règle générale à 32 semaines, et qu’aucun toucher vaginal n’est fait avant.
remark-signs-to-weigh = Elle signale : { $signs }. Demandez maintenant si c’est fort et depuis quand, prenez la tension, et suivez votre protocole local ; ce qui est intense ou persiste est urgent.
remark-waters-broken = La poche des eaux est rompue. Demandez depuis combien d’heures, la couleur et l’odeur, les mouvements, et si un streptocoque B a été trouvé ; écoutez le cœur, prenez la température, et suivez aujourd’hui votre protocole local. Si la tête remonte, ou si le cordon est vu ou senti, appelez aussitôt à l’aide.
remark-tightenings-before-term = Elle signale des contractions avant 37 semaines. Demandez si elles sont régulières ou douloureuses, gardez une main sur l’utérus et chronométrez-les ; si oui, cela ne peut pas attendre. Suivez aujourd’hui votre protocole local.
remark-itching = Elle signale des démangeaisons. Demandez où, et si c’est pire la nuit, cherchez une éruption, et suivez votre protocole local pour démangeaisons pendant la grossesse.
remark-note-mentions = Votre note mentionne { $quoted }, et aucune constatation ne dit si c’est le cas. Notez-le comme constatation, ou dites que ce n’est pas le cas ; tant que ce n’est pas réglé, agissez selon votre protocole local.{ $iud ->
    [yes] {" "}« IUD » peut être un bébé mort dans l’utérus ou un dispositif contraceptif : écrivez lequel.
   *[no] {""}
 }{ $cord ->
    [yes] {" "}Si c’est le cordon, appelez à l’aide maintenant, hors de l’hôpital le numéro d’urgence ; mettez-la genoux contre la poitrine, ou couchée sur le côté gauche de la mère, hanches relevées ; écartez du cordon la partie qui se présente, ne touchez pas le cordon et ne le remettez pas en place.
   *[no] {""}
 }
remark-cord-felt = Le cordon a été senti ou vu. Appelez à l’aide maintenant : hors de l’hôpital, le numéro d’urgence. Mettez-la genoux contre la poitrine, ou couchée sur le côté gauche de la mère, hanches relevées ; écartez du cordon la partie qui se présente, ne touchez pas le cordon et ne le remettez pas en place. Suivez votre protocole local pour le cordon.
remark-part-by-vagina-in-labour = Trouvé par voie vaginale : { $signs }, et elle est en travail ou la poche des eaux est rompue. Appelez un senior maintenant, et suivez votre protocole local.
remark-part-by-vagina = Trouvé par voie vaginale : { $signs }. Demandez aujourd’hui l’avis d’un senior selon votre protocole local ; si le travail commence ou si la poche des eaux se rompt, cela ne peut pas attendre.
remark-movements-fewer-early = Elle dit que le bébé bouge moins, ou autrement qu’avant, et 24 semaines ne sont pas passées. Écoutez aujourd’hui avec un Doppler, et suivez votre protocole local pour les mouvements à ce terme. Si des mouvements déjà sentis ont cessé, cela ne peut pas attendre.
remark-placenta-low-with-signs = Le placenta est noté bas, et il y a : { $signs }. Faites-vous aider maintenant et suivez votre protocole local pour un placenta bas ; ne faites pas de toucher vaginal.
remark-placenta-low-late = Le placenta est noté bas, et 36 semaines sont passées. Si aucune échographie ultérieure ne l’a tranché, demandez aujourd’hui un plan de naissance à un senior selon votre protocole local, et veillez à ce qu’aucun toucher vaginal ne soit fait avant.
remark-blow-or-fall = Elle signale un coup, une chute ou un accident. Demandez ce qui s’est passé et où elle a été touchée, interrogez sur la douleur, le saignement, les eaux et les mouvements, écoutez le cœur, et suivez aujourd’hui votre protocole local.
remark-d-not-known = Il n’est pas noté si elle est D négatif. Demandez ou cherchez-le aujourd’hui : si oui, faites envisager l’anti-D dans les 72 heures après ce qui s’est passé, selon votre protocole local.
remark-d-negative = Elle est D négatif. Faites examiner aujourd’hui la question de l’anti-D, dans les 72 heures après ce qui s’est passé, selon votre protocole local.
remark-faint = Elle a un malaise. Couchez-la sur le côté gauche de la mère, prenez le pouls et la tension, interrogez sur le saignement et la douleur, et regardez-la de nouveau avant son départ ; si cela ne passe pas, appelez de l’aide. Suivez aujourd’hui votre protocole local.
remark-signs-of-urine = Elle signale : { $signs }. Prenez température et pouls, analysez les urines, interrogez sur la fièvre, les frissons et les contractions, et suivez votre protocole local aujourd’hui ; une douleur lombaire avec fièvre ne peut pas attendre.
remark-faint-lying-flat = Elle a un malaise couchée à plat. Tournez-la maintenant sur le côté gauche de la mère et regardez-la de nouveau ; si cela ne passe pas, faites-vous aider et suivez votre protocole local.
remark-pressure-severe = Sa tension est de { $pressure } : systolique de 160 ou diastolique de 110, ou plus. Faites-vous aider maintenant et suivez votre protocole local pour une hypertension sévère pendant la grossesse ; reprenez-la, mais sans attendre pour appeler.
remark-pressure-with-signs = Sa tension est de { $pressure }, avec : { $signs }. Faites-vous aider et suivez maintenant votre protocole local pour une tension élevée avec de tels signes.
remark-pressure-raised = Sa tension est de { $pressure }. Faites-la asseoir, reprenez-la aujourd’hui, cherchez des protéines dans les urines, interrogez sur mal de tête, vue, douleur sous les côtes et vomissements, et suivez votre protocole local.
remark-severe-headache-or-rib-pain = Elle signale : { $signs }. Prenez la tension et testez les urines maintenant, faites-vous aider, et suivez votre protocole local, quels que soient les chiffres.
remark-two-signs-of-pressure = Elle signale : { $signs }. Prenez la tension et testez les urines maintenant, appelez à l’aide et suivez votre protocole local pour ces signes réunis ; ne la renvoyez pas attendre chez elle.
remark-one-sign-of-pressure = Elle signale : { $signs }. Demandez si c’est fort, depuis quand, et si cela dure ; prenez la tension, testez les urines et regardez de nouveau aujourd’hui, selon votre protocole local.
remark-fever-with-signs = { $measured ->
    [yes] Sa température est de { $celsius } °C
   *[other] Elle signale de la fièvre
 }, avec : { $signs }. Faites-vous aider maintenant et suivez votre protocole local pour une fièvre pendant la grossesse avec de tels signes.
remark-fever = { $measured ->
    [yes] Sa température est de { $celsius } °C
   *[other] Elle signale de la fièvre
 }. Reprenez aujourd’hui température, pouls, respiration et tension, interrogez sur les eaux, la douleur et les brûlures en urinant, palpez l’utérus, et suivez votre protocole local pour une fièvre pendant la grossesse.
remark-pulse-very-fast = Son pouls est à { $pulse }, plus de 130. Faites-vous aider maintenant, prenez tension, température et respiration, et suivez votre protocole local.
remark-pulse-to-feel-again = Son pouls est à { $pulse }. Laissez-la se reposer, reprenez-le pendant une minute entière, et prenez tension, température et respiration ; s’il reste ainsi, suivez aujourd’hui votre protocole local.
remark-breathing-very-fast = Elle respire { $breaths } fois par minute. Faites-vous aider maintenant, prenez pouls, tension et température, et suivez votre protocole local.
remark-breathing-to-count-again = Elle respire { $breaths } fois par minute. Laissez-la se reposer et recomptez pendant une minute entière, prenez pouls et température ; si cela reste ainsi, suivez aujourd’hui votre protocole local.
remark-thoughts-of-self-harm = Elle a parlé de pensées de se faire du mal. Restez avec elle, demandez-lui si elle compte passer à l’acte, et faites-vous aider maintenant selon votre protocole local. N’en mettez rien dans ce qu’elle emporte.
remark-violence-told = Elle a parlé de violences. Parlez-lui seule, demandez-lui si rentrer chez elle aujourd’hui la met en danger, et suivez votre protocole local. N’en mettez rien dans ce qu’elle emporte.
remark-womb-board-like = L’utérus { $feel ->
    [does-not-soften] ne se relâche pas entre les contractions
   *[other] est dur comme du bois
 }. Faites-vous aider et suivez maintenant votre protocole local ; n’attendez pas pour le palper de nouveau.
remark-contraction-too-long = Une contraction a duré { $seconds } secondes, plus de 2 minutes. Écoutez le cœur, faites-vous aider et suivez maintenant votre protocole local.
remark-contractions-too-many = { $number } contractions en dix minutes sont notées, plus de 5. Écoutez le cœur pendant les suivantes et après, faites-vous aider et suivez maintenant votre protocole local.
remark-contractions-five = Cinq contractions en dix minutes sont notées. Comptez encore pendant les dix minutes suivantes, gardez une main sur l’utérus entre elles, écoutez le cœur après chacune, et suivez votre protocole local.
remark-womb-cut-in-labour = L’utérus a été incisé verticalement, en T ou en J, ou s’est rompu auparavant, et il y a douleur, contractions ou travail. Appelez un senior maintenant, et suivez votre protocole local dans ce cas.
remark-womb-cut-not-known-in-labour = L’utérus a été opéré, l’incision n’est pas notée, et il y a des contractions ou un travail. Appelez à l’aide maintenant, cherchez le compte rendu opératoire, et d’ici là suivez votre protocole local comme pour une incision qui n’est pas basse et transversale.
remark-caesarean-without-a-birth = Une césarienne est notée, et aucune naissance avant celle-ci. Interrogez de nouveau sur les naissances antérieures, et corrigez ce qui n’est pas juste.
remark-regular-tightenings-before-term = Les contractions sont régulières ou douloureuses, ou elle est en travail, { $weeks ->
    [known] avant 37 semaines
   *[other] et le terme n’est pas connu
 }. Faites-vous aider et suivez maintenant votre protocole local pour un travail avant terme.
remark-waters-broken-before-term = La poche des eaux est rompue, { $weeks ->
    [known] avant 37 semaines
   *[other] et le terme n’est pas connu
 }. Faites-vous aider et suivez maintenant votre protocole local pour une rupture avant terme ; pas de toucher vaginal sauf s’il le demande.
remark-water-not-clear = Le liquide amniotique est : { $signs }. Écoutez le cœur, faites-vous aider et suivez maintenant votre protocole local.
remark-waters-broken-strep = La poche des eaux est rompue, et un streptocoque B a été trouvé pendant cette grossesse. Demandez aujourd’hui ce que votre protocole local propose dans ce cas, sans attendre le travail ; si la tête remonte, ou si un cordon est vu ou senti, appelez aussitôt à l’aide.
remark-waters-broken-long = La poche des eaux est rompue depuis { $hours } heures. Prenez température et pouls, écoutez le cœur, et parlez aujourd’hui avec elle de ce que votre protocole local propose après 24 heures.
remark-water-little = À la palpation il semble y avoir peu de liquide. Interrogez sur une perte de liquide et sur les mouvements, et suivez votre protocole local pour une échographie.
remark-heart-not-heard-scan-today = Le cœur n’a pas été entendu au Doppler, et 16 semaines sont passées. Demandez une échographie aujourd’hui selon votre protocole local ; ne la renvoyez pas attendre chez elle.
remark-heart-not-heard-try-doppler = Le cœur n’a pas été entendu, et à ce terme un stéthoscope obstétrical peut le manquer. Réécoutez aujourd’hui avec un Doppler ; s’il ne le trouve pas, demandez une échographie aujourd’hui selon votre protocole local.
remark-twin-heart-not-heard = Le cœur d’un bébé a été entendu, et celui-ci non. Demandez à une deuxième personne d’écouter maintenant, chaque personne un cœur et toutes deux en même temps, et demandez une échographie maintenant selon votre protocole local ; ne la renvoyez pas attendre chez elle.
remark-heart-heard-before = Le cœur a été entendu à { $first }, et ne l’a pas été à { $second }. Faites écouter maintenant par une deuxième personne et un autre appareil, et demandez une échographie maintenant selon votre protocole local.
remark-heart-is-her-pulse = Le cœur entendu et le pouls de la mère battent ensemble : considérez le cœur comme non entendu. Faites écouter maintenant par une deuxième personne et un autre appareil, une main sur le pouls de la mère, et demandez une échographie selon votre protocole local.
remark-heart-outside-usual-with-signs = La fréquence cardiaque notée est de { $rate } battements par minute, { $direction ->
    [low] moins de 110
   *[other] plus de 160
 }, avec : { $signs }. Réécoutez pendant une minute entière, une main sur le pouls de la mère, faites-vous aider, et suivez maintenant votre protocole local.
remark-heart-outside-usual-still = La fréquence cardiaque était de { $rate } battements par minute sur une minute entière, { $direction ->
    [low] moins de 110
   *[other] plus de 160
 }, le pouls de la mère étant pris. Faites-vous aider et suivez maintenant votre protocole local.
remark-heart-slows-after-contractions = Le cœur ralentit après les contractions. Tournez-la sur le côté gauche de la mère, écoutez pendant les contractions suivantes et après, faites-vous aider et suivez maintenant votre protocole local.
remark-heart-slows = On a entendu le cœur ralentir : { $signs }. Réécoutez pendant une minute entière, pendant une contraction et après s’il y en a, une main sur le pouls de la mère, et suivez aujourd’hui votre protocole local.
remark-twin-hearts-near = Les deux cœurs sont notés à { $first } et { $second } battements par minute : ce peut être un seul cœur entendu deux fois. Demandez à une deuxième personne de compter avec vous, chaque personne un cœur et toutes deux en même temps, et notez-le ; si deux cœurs ne se distinguent pas, demandez une échographie aujourd’hui selon votre protocole local.
remark-twin-first-not-head-down = Le premier bébé n’est pas tête en bas, et 32 semaines sont passées. Suivez votre protocole local pour un plan de naissance, et demandez une échographie pour confirmer comment sont les deux.
remark-twins-still-pregnant = Deux bébés avec { $placentas ->
    [one] un placenta, et 36 semaines
   *[other] deux placentas, et 37 semaines
 } passées. Vérifiez aujourd’hui qu’un plan de naissance est fait, selon votre protocole local.
remark-twins-placentas-not-known = Deux bébés, et il n’est pas noté s’ils ont un placenta ou deux. Demandez ou cherchez-le dans son échographie précoce : selon votre protocole local, cela décide du moment de la naissance.
remark-after-41-weeks = 41 semaines sont passées. Demandez si la proposition de déclencher le travail a été discutée avec elle, selon votre protocole local.
remark-after-42-weeks = 42 semaines sont passées. Revoyez aujourd’hui ce qui a été convenu avec elle, et demandez si un enregistrement du cœur deux fois par semaine et une échographie du liquide sont prévus, selon votre protocole local.
remark-after-43-weeks = 43 semaines sont passées. Demandez aujourd’hui l’avis d’un senior, comparez de nouveau les dates à l’échographie précoce, et suivez votre protocole local.
remark-tape-through-centiles = Trois mesures, chacune plus basse par rapport à la courbe que la précédente : { $earlier }, et { $cm } cm à { $weeks }, { $fall } écarts-types de moins au total. Demandez une échographie de croissance selon votre protocole local ; une mesure encore entre le dixième et le quatre-vingt-dixième ne tranche pas.
remark-tape-lower-in-z = La mesure est plus basse par rapport à la courbe qu’avant : { $earlier }, et { $cm } cm à { $weeks }, { $fall } écarts-types de moins. Mesurez de nouveau vessie vide, face blanche du ruban vers le haut, et comparez à la prochaine visite selon votre protocole local.

remark-lie-changing = Le bébé était noté { $before ->
    [across] en situation transverse
    [slanting] en situation oblique
    [bottom-down] en présentation du siège
    [head-down] en présentation céphalique
   *[lengthwise] en situation longitudinale
 } à { $first } SA et { $after ->
    [across] en situation transverse
    [slanting] en situation oblique
    [bottom-down] en présentation du siège
    [head-down] en présentation céphalique
   *[lengthwise] en situation longitudinale
 } à { $second } SA. Palpez de nouveau à chaque visite, faites confirmer par une échographie la situation du jour, et suivez votre protocole local pour une situation qui change dès 37 SA : l’hospitalisation est à discuter, et elle doit venir aussitôt si le travail commence ou si les eaux se rompent, à cause du risque de procidence du cordon.
remark-visits-differ-in-babies = Les visites parlent de nombres de bébés différents : { $one } à { $first } SA, { $two } à { $second } SA. Vérifiez si toutes sont de cette grossesse, et faites confirmer le nombre par une échographie ; d’ici là, aucune de leurs hauteurs n’est lue face aux semaines ou à une courbe.

## The guide for drawing on skin

skin-title = Dessinez le bébé sur sa peau
skin-title-baby = Dessinez le bébé { $number } sur sa peau
skin-measure = Face à elle, sa gauche est à votre droite. « En haut » : le long de la peau depuis le bord supérieur du pubis ; « vers l’extérieur » : le long de la peau depuis la ligne médiane ; entre parenthèses, en travers de doigt de 2 cm. Du point à la pointe du feutre. Traits interrompus : non trouvés ; à omettre, ou dites-lui qu’ils sont supposés. Pointillés : dans le bassin.
skin-measure-navel = Face à elle, sa gauche est à votre droite. « En haut » : le long de la peau depuis le bord supérieur du pubis, ou depuis l’ombilic s’il est plus près ; « vers l’extérieur » : le long de la peau depuis la ligne médiane ; entre parenthèses, en travers de doigt de 2 cm. Du point à la pointe du feutre. Traits interrompus : non trouvés ; à omettre, ou dites-lui qu’ils sont supposés. Pointillés : dans le bassin.

skin-place = { $level }, { $side }
skin-up = { $cm } cm ({ $fingers }) en haut
skin-at-pubic-bone = à hauteur du pubis
skin-above-navel = { $cm } cm ({ $fingers }) au-dessus de l’ombilic
skin-at-navel = à l’ombilic
skin-below-navel = { $cm } cm ({ $fingers }) sous l’ombilic
skin-her-left = { $cm } cm ({ $fingers }) à sa gauche, votre droite
skin-her-right = { $cm } cm ({ $fingers }) à sa droite, votre gauche
skin-midline = sur la ligne médiane
skin-out = { $cm } cm ({ $fingers }) vers l’extérieur

skin-head = { $number } Tête
skin-back = { $number } Dos
skin-bottom = { $number } Siège
skin-legs = { $number } Cuisse, jambe, pied
skin-arms = { $number } Bras et main
skin-belly = { $number } Cou et ventre
skin-heart = { $number } Cœur
skin-head-how = À deux mains, dessinez dans leur creux.
skin-back-how = Un long trait.
skin-bottom-how = Arrondissez-le.
skin-legs-how = Cuisse, jambe, puis le pied.
skin-arms-how = Bras, puis une main à cinq doigts.
skin-belly-how = Fermez la forme.
skin-on-her-left = À sa gauche à elle, votre droite : début { $from }, fin { $to }.
skin-on-her-right = À sa droite à elle, votre gauche : début { $from }, fin { $to }.
skin-from-to = Début { $from }, fin { $to }.
skin-round = En rond : le plus haut, { $top } ; le plus bas, { $low }.
skin-below = Le reste est dans le bassin : arrêtez à l’os.
skin-all-below = C’est dans le bassin, sous le pubis : rien à dessiner.
skin-hidden = On n’en voit rien de devant : rien à dessiner.
skin-back-behind = Il est vers sa colonne, derrière le bébé : pas de dos à dessiner.
skin-not-felt = Non palpé : à omettre, ou à repalper.
skin-guess = Non palpé, supposé : à omettre, ou à repalper.
skin-follows = Non palpé pour lui-même : à chercher, ou à omettre.
skin-unsure = Incertain : repalpez d’abord.
skin-written = Selon la variété écrite ; palpez d’abord.
skin-heart-at = Entendu : { $place }. Dessinez-le là.
skin-heart-none = Aucun lieu où il a été entendu : rien à dessiner.

skin-manners-title = Avec elle
skin-manners = Demandez avant de toucher et avant de dessiner ; certaines n’aiment pas cela. Arrêtez dès qu’elle le dit. Une photo seulement si elle la demande. Vessie vide, tête du lit un peu relevée, légère inclinaison vers sa gauche, à plat peu de temps. Mains chaudes. Un feutre lavable sans danger pour la peau, { $pen } ; un par personne. Pas sur une peau abîmée, douloureuse ou allergique. Cela part au lavage ordinaire, en un ou deux bains.
skin-foot = Pas une échographie ; les mains peuvent se tromper. Visage et doigts : idée du dessinateur. handspan { $version }

skin-lies =
    { $head ->
    [head-down] Tête en bas
    [bottom-down] Siège en bas
    [side-l] Tête à sa gauche
    [side-r] Tête à sa droite
    [across] En travers
   *[unknown] Position inconnue
 }, { $back ->
    [left] dos à sa gauche
    [right] dos à sa droite
    [front] dos en avant
    [spine] dos vers sa colonne
    [ribs] dos vers ses côtes
    [feet] dos vers ses pieds
   *[unknown] dos non palpé
 }.
skin-cm = cm
skin-step = { $number } { $do }
skin-key = Traits interrompus : non palpé. Points : dans le bassin. Repères : largeurs de main.
skin-head-name = Tête
skin-back-name = Dos
skin-bottom-name = Siège
skin-legs-name = Jambes
skin-arms-name = Bras
skin-belly-name = Devant
skin-heart-name = Cœur
skin-head-do = Entourez la tête. Dessinez autour de vos mains.
skin-head-low-do = Entourez la tête. Dessinez jusqu’à l’os.
skin-back-do = Suivez le dos. Dessinez un long trait.
skin-bottom-do = Tenez le siège. Dessinez autour de votre main.
skin-legs-do = Jambes : cuisse, genou, pied et orteils.
skin-arms-do = Bras : coude, main, cinq doigts.
skin-belly-do = Devant : fermez la forme.
skin-heart-do = Enfin, un cœur là où vous l’avez entendu.
skin-do-not-felt = { $what } : non palpé. Ne pas dessiner.
skin-do-behind = { $what } : en arrière. Ne pas dessiner.
skin-do-below = { $what } : dans le bassin. Ne pas dessiner.
skin-do-hidden = { $what } : caché. Ne pas dessiner.
skin-do-feel-first = { $what } : palpez d’abord, puis dessinez.
skin-do-unsure = { $what } : incertain. Palpez encore d’abord.
skin-do-no-heart = { $what } : lieu non noté. Ne pas dessiner.
skin-numbers = Les nombres, pour qui les veut
skin-numbers-baby = Les nombres du bébé { $number }, pour qui les veut
skin-pen-dark = d’une couleur sombre qui se voit sur la sienne, comme bleu nuit, prune ou vert foncé, et rouge pour le cœur
skin-pen-light = d’une couleur claire qui se voit sur la sienne, comme blanc, crème ou jaune pâle, et doré pour le cœur
skin-say-title = Que dire en dessinant
skin-say-ask = « Puis-je dessiner sur votre ventre où est votre bébé ? Cela se lave. Vous pouvez dire stop. »
skin-say-head = « Cette partie ronde et ferme, c’est la tête. Posez la main ici, si vous voulez. »
skin-say-back = « Ce long trait, c’est le dos. De l’autre côté, les mains et les pieds. »
skin-say-heart = « Ici, j’ai entendu le cœur aujourd’hui. »
skin-say-turn = « Je dessine ce que mes mains ont senti. Ce n’est pas une échographie, et votre bébé peut tourner. »
skin-trace-title = Si vous tracez
skin-trace = Posez la feuille face imprimée dehors, de façon à pouvoir la lire. Papier hectographique pour la peau : repassez les traits, posez la face encrée sur elle. Ou repassez-les au dos, contre une vitre, avec un feutre lavable pour la peau. Pressez avec un linge humide une demi-minute, levez. Essuyez ce qui est mal venu. Ou piquez les traits et pointez à travers.

## The tracing sheet

trace-title = Feuille à tracer, grandeur réelle
trace-about = Les traits du dessin, en grandeur réelle, déroulés selon la courbe de l’abdomen. { $lie }
trace-sheet = Feuille { $number } sur { $count } : rang { $row }, colonne { $column }.
trace-one-sheet = Une seule feuille.
trace-join = Assemblez lettre sur lettre, coupez le long du cadre.
trace-use = Découpez. Fendez et fermez chaque entaille, le trait interrompu sur la coupe. Face imprimée dehors, de façon à pouvoir la lire. La marque épaisse sur l’os, le long trait sur sa ligne médiane. Piquez les traits, pointez à travers.
trace-numbers = Numéros : bébé, puis étape.
trace-bar = 5 cm. Sinon, imprimez à 100 %.
trace-pubic = bord supérieur du pubis
trace-navel = ombilic, { $cm } cm en haut
trace-navel-expected = ombilic : non mesuré
trace-fundus = haut de l’utérus, { $cm } cm
trace-left = SA GAUCHE, votre droite
trace-right = SA DROITE, votre gauche
trace-up = ce côté vers sa tête
trace-none = Il n’y a pas de feuille à tracer : en grandeur réelle, elle serait fausse sur elle. Dessinez à la main d’après ce guide ; vos mains sur elle donnent la place et la taille.

## The family page

family-title-one = Position de votre bébé
family-title-more = Position de vos bébés
family-name = Nom ou petit nom ____
family-carer = sage-femme
family-midwife = Votre { family-carer } ____
family-words = Quelques mots pour vous ____
family-felt-on = Ventre examiné avec les mains le ____
family-felt-on-at = Ventre examiné avec les mains le ____ à { $age }
family-noted-on = Noté le ____
family-noted-on-at = Noté le ____ à { $age }
family-felt-at = Ventre examiné avec les mains à { $age }
family-noted-at = Noté à { $age }
family-side = Côté { $number } sur { $sides }
family-date = { $day } { $month } { $year }
family-month-1 = janvier
family-month-2 = février
family-month-3 = mars
family-month-4 = avril
family-month-5 = mai
family-month-6 = juin
family-month-7 = juillet
family-month-8 = août
family-month-9 = septembre
family-month-10 = octobre
family-month-11 = novembre
family-month-12 = décembre
family-weeks = { $weeks } semaines (SA)
family-weeks-day = { $weeks } semaines et 1 jour (SA)
family-weeks-days = { $weeks } semaines et { $days } jours (SA)

family-baby-one = votre bébé
family-baby-number = le bébé { $number }
family-how-hands = d’après les mains de votre { family-carer }
family-how-hands-scan = d’après les mains et une échographie
family-how-scan = d’après une échographie
family-how-written = d’après ce qui a été noté
family-depth-head-free = La tête est encore au-dessus de votre bassin (les os de vos hanches).
family-depth-head-brim = La tête est à l’entrée de votre bassin (les os de vos hanches).
family-depth-head-deep = La tête est descendue dans votre bassin (les os de vos hanches).
family-depth-bottom-free = Les fesses sont encore au-dessus de votre bassin (les os de vos hanches).
family-depth-bottom-brim = Les fesses sont à l’entrée de votre bassin (les os de vos hanches).
family-depth-bottom-deep = Les fesses sont descendues dans votre bassin (les os de vos hanches).
family-depth-unsure = On ne sait pas sûrement jusqu’où il est descendu.
family-heart-at = On a entendu le cœur battre (voyez le petit rond) { $place }.
family-heart-heard = On a entendu le cœur battre.
family-heart-unsure = Cet endroit n’est pas sûr.
family-heart-left = à votre gauche
family-heart-right = à votre droite
family-heart-far-left = tout à votre gauche
family-heart-far-right = tout à votre droite
family-heart-middle = au milieu
family-heart-top = tout en haut de l’utérus
family-heart-above = au-dessus du nombril
family-heart-level = à la hauteur du nombril
family-heart-below = sous le nombril
family-heart-little-above = un peu au-dessus du nombril
family-heart-little-below = un peu sous le nombril
family-heart-low = tout en bas
family-heart-bone = juste au-dessus de l’os du pubis
family-kind-bottom = Avant 36 semaines (SA), beaucoup de bébés ont les fesses en bas. Près de la naissance, c’est 3 ou 4 sur 100.
family-kind-bottom-late = Près de la naissance, 3 ou 4 bébés sur 100 ont les fesses en bas. Vous n’y êtes pour rien.
family-kind-changes = La position de votre bébé peut encore changer. Vous n’y êtes pour rien.
family-kind-plan = Il faut un plan. Demandez aujourd’hui qui vous verra.
family-kind-come = Tant que votre { family-carer } ne vous dit pas autre chose : si la poche des eaux se rompt (du liquide coule) ou si l’accouchement commence, appelez et venez tout de suite.
# Source: RCOG-50
family-kind-cord = Rarement, le cordon peut descendre en premier.
# Source: RCOG-BREECH
family-kind-head = Près de la naissance, la plupart des bébés ont la tête en bas.

family-lie-head-down = Aujourd’hui, { $baby } a la tête en bas, { $how }.
family-lie-head-down-probably = Aujourd’hui, { $baby } a probablement la tête en bas, { $how }.
family-lie-bottom-down = Aujourd’hui, { $baby } a les fesses en bas, { $how }.
family-lie-bottom-down-probably = Aujourd’hui, { $baby } a probablement les fesses en bas, { $how }.
family-lie-across = Aujourd’hui, { $baby } est en travers du ventre, { $how }.
family-lie-across-probably = Aujourd’hui, { $baby } est probablement en travers du ventre, { $how }.
family-lie-slanting = Aujourd’hui, { $baby } est de biais, { $how }.
family-lie-slanting-probably = Aujourd’hui, { $baby } est probablement de biais, { $how }.
family-lie-not-told = On n’a pas pu savoir avec les mains comment est placé votre bébé.
family-lie-not-told-number = On n’a pas pu savoir avec les mains comment est placé le bébé { $number }.
family-lie-not-felt = On n’a pas cherché avec les mains comment est placé votre bébé.
family-lie-not-felt-number = On n’a pas cherché avec les mains comment est placé le bébé { $number }.
family-lie-early = Il est trop tôt pour palper comment est placé votre bébé.
family-early-picture = Le dessin montre jusqu’où l’utérus est monté.

family-head-left = La tête est à votre gauche.
family-head-right = La tête est à votre droite.
family-head-low-left = La tête est en bas, à votre gauche.
family-head-low-right = La tête est en bas, à votre droite.
family-head-high-left = La tête est en haut, à votre gauche.
family-head-high-right = La tête est en haut, à votre droite.
family-head-low = La tête est en bas.
family-head-high = La tête est en haut.

family-side-left = gauche
family-side-right = droite
family-back-side = Le dos est à votre { $side }.
family-back-side-probably = Le dos est probablement à votre { $side }.
family-back-side-front = Le dos est à votre { $side }, vers l’avant.
family-back-side-front-probably = Le dos est probablement à votre { $side }, vers l’avant.
family-back-side-spine = Le dos est à votre { $side }, vers votre colonne.
family-back-side-spine-probably = Le dos est probablement à votre { $side }, vers votre colonne.
family-back-side-square = Le dos est sur le côté, à votre { $side }.
family-back-side-square-probably = Le dos est probablement sur le côté, à votre { $side }.
family-back-front = Le dos est vers l’avant.
family-back-front-probably = Le dos est probablement vers l’avant.
family-back-spine = Le dos est vers votre colonne.
family-back-spine-probably = Le dos est probablement vers votre colonne.
family-back-ribs = Le dos est vers vos côtes.
family-back-ribs-probably = Le dos est probablement vers vos côtes.
family-back-feet = Le dos est vers vos pieds.
family-back-feet-probably = Le dos est probablement vers vos pieds.
family-back-not-told = On n’a pas pu savoir avec les mains où est le dos.
family-back-not-felt = On n’a pas cherché le dos avec les mains.
family-back-not-noted = La place du dos n’a pas été notée.

family-notice-legs-right = Vous sentirez peut-être les jambes en haut, à votre droite.
family-notice-legs-left = Vous sentirez peut-être les jambes en haut, à votre gauche.
family-notice-legs-high = Vous sentirez peut-être les jambes en haut.
family-notice-limbs-front = Vous sentirez peut-être bras et jambes sur le devant.
family-notice-head-high = Vous sentirez peut-être la tête : dure et ronde, près de vos côtes.
family-notice-head-left = Vous sentirez peut-être la tête : dure et ronde, à votre gauche.
family-notice-head-right = Vous sentirez peut-être la tête : dure et ronde, à votre droite.
family-notice-head-low-left = Vous sentirez peut-être la tête : dure et ronde, en bas à votre gauche.
family-notice-head-low-right = Vous sentirez peut-être la tête : dure et ronde, en bas à votre droite.
family-notice-head-high-left = Vous sentirez peut-être la tête : dure et ronde, en haut à votre gauche.
family-notice-head-high-right = Vous sentirez peut-être la tête : dure et ronde, en haut à votre droite.
family-notice-bottom-high = Vous sentirez peut-être les fesses : molles et rondes, près de vos côtes.
family-title-next = Et maintenant

family-today = Cela ne vaut que pour aujourd’hui. La prochaine fois, ce sera peut-être différent.
family-next-later = Demandez quand on palpera à nouveau. Si votre bébé est encore placé ainsi à 36 semaines (SA), vous ferez un plan ensemble.
family-next-title = Parlez-en avec votre { family-carer }. C’est vous qui décidez.
family-next-scan = Une échographie, pour vérifier
family-next-turn = Essayer de tourner le bébé de l’extérieur (version), par une personne formée
family-next-operation = Une opération prévue (césarienne)
family-next-bottom-first = Un accouchement par le siège, prévu
family-next-stay = Un séjour à l’hôpital jusqu’à la naissance
family-next-stay-later = Un séjour à l’hôpital, dès 37 semaines (SA)
family-next-not-told = Parlez d’une échographie avec votre { family-carer }.
family-next-twins = Demandez à votre { family-carer } ce que cela change pour la naissance.
family-next-again = À la prochaine visite, on pourra palper à nouveau. Posez toutes vos questions.

family-over = Au verso : quand appeler, et qui.
# On a telephone.
family-over-phone = Plus bas : quand appeler, et qui.
family-hold = Tenez cette page sur votre ventre, dessin vers l’extérieur. Les côtés sont alors les mêmes.
family-sure-title = Est-ce sûr ?
family-sure-felt = Senti avec les mains : { $parts }.
family-sure-heard = Entendu : { $parts }.
family-sure-seen = Vu à l’échographie : { $parts }.
family-sure-felt-unsure = Senti, mais sans certitude : { $parts }.
family-sure-heard-unsure = Entendu, mais l’endroit n’est pas sûr : { $parts }.
family-sure-not-told = Les mains n’ont pas pu savoir : { $parts }.
family-sure-not-found = Cherché, mais pas trouvé : { $parts }.
family-sure-not-felt = Pas cherché avec les mains : { $parts }.
family-part-head = tête
family-part-bottom = fesses
family-part-back = dos
family-part-limbs = bras ou jambes
family-part-heart = cœur
family-hands = Les mains peuvent se tromper, et ce n’est pas une échographie.
family-hands-scan = Une partie a été examinée avec les mains, une autre vue à l’échographie. Le dessin n’est pas une échographie. Les mains peuvent se tromper.
family-scan = Ceci a été vu à l’échographie. Le dessin n’est pas une échographie, et il peut être faux.
family-written = Voici ce qui a été noté ce jour-là. Le dessin n’est pas une échographie, et il peut être faux.
family-turn = Gardez cette page si vous voulez. Elle montre un seul jour. Les bébés tournent : plus tard, ne vous y fiez pas.
family-artist = Visage, bras et jambes : l’idée du dessinateur.
family-artist-limbs-felt = Visage, mains et pieds : l’idée du dessinateur.
family-none-drawn = Aucun bébé n’est dessiné, car on ne sait pas comment il est placé.
family-drawn-smaller = Votre bébé est dessiné plus petit, faute de place. Le dessin ne mesure pas votre bébé.
family-drawn-smaller-number = Le bébé { $number } est dessiné plus petit, faute de place. Le dessin ne mesure pas le bébé.
family-drawn-rounds = La tête et les fesses sont dessinées comme deux ronds. Le dessin ne mesure pas votre bébé.
family-drawn-rounds-number = La tête et les fesses du bébé { $number } sont dessinées comme deux ronds. Le dessin ne mesure pas le bébé.

family-heart = Le petit rond montre où, sur votre ventre, on a entendu le cœur battre. C’est un point de la peau, pas le cœur. Si les mouvements changent, appelez ; n’écoutez pas d’abord.
family-listen = Quelqu’un peut poser l’oreille à cet endroit et écouter.
family-listen-limits = Entendre le cœur ne suffit pas à rassurer. Ne pas l’entendre est fréquent. Si vous êtes inquiète, appelez.
family-night-blank = La nuit ____
family-where-blank = Où ____
family-phone-other = Rien d’urgent ? { $purpose } : { $number }

family-numbers-title = Les chiffres de ce jour
family-number-tape = De l’os du bas jusqu’en haut de l’utérus : { $cm } cm.
family-number-rate = Battements du cœur en une minute : { $rate }.
family-number-rate-of = Battements du cœur du bébé { $number } en une minute : { $rate }.

family-worried = Si vous êtes inquiète, appelez, même si ce n’est pas sur cette page. Dites que vous êtes enceinte.
family-clinic-blank = Appelez ____
family-number-blank = Numéro ____
family-phone-always = Jour et nuit : { $number }
family-phone-day = Le jour : { $number }
family-phone-night = La nuit : { $number }
family-emergency = Numéro d’urgence : { $number }
family-emergency-blank = Numéro d’urgence ____

family-moves-title-one = Votre bébé bouge moins, ou autrement ?
family-moves-title-more = L’un de vos bébés bouge moins, ou autrement ?
family-moves-call = Appelez maintenant, à toute heure.
family-moves-keep-one = Restez attentive aux mouvements de votre bébé, jusqu’à la naissance.
family-moves-keep-more = Restez attentive aux mouvements de chaque bébé, jusqu’à la naissance.
family-moves-now = S’ils diminuent ou changent, appelez maintenant, jour et nuit.
family-moves-now-number = S’ils sont moins nombreux ou différents, appelez le { $number } maintenant, jour et nuit.
family-heavy-title = Si tout devient trop lourd
family-heavy = Vous êtes triste, ou vous avez peur ? Dites-le à votre { family-carer } : il y a de l’aide. Vous pensez à vous faire du mal ? Vous pouvez le dire.
family-heavy-now = Si vous risquez de le faire maintenant : appelez le numéro d’urgence.
family-heavy-now-number = Si vous risquez de le faire maintenant : appelez le { $number }.
family-heavy-else = Si vous n’êtes pas en danger maintenant, appelez le numéro de la clinique, à toute heure.
family-heavy-else-number = Si vous n’êtes pas en danger maintenant, appelez le { $number }, à toute heure.
family-moves-wait = N’attendez pas le lendemain.
family-moves-late = Les bébés ne bougent pas moins à l’approche de la naissance.
family-moves-early = Rien senti à 24 semaines (SA) ? Appelez pour un contrôle.
family-moves-monitor = N’utilisez pas d’appareil pour vérifier le cœur. Vous entendrez peut-être votre propre pouls.

family-urgent-waters = La poche des eaux se rompt (du liquide coule) ou l’accouchement commence (contractions) : venez aussitôt.
family-urgent-why = Avec un bébé placé ainsi, n’attendez pas que les contractions soient fortes.
family-urgent-soon = N’attendez pas que les contractions soient fortes.
family-cord = Le cordon, comme une corde molle, senti ou vu entre vos jambes.

family-cord-why = Le cordon, comme une corde molle, senti ou vu entre vos jambes. Il peut sortir en premier quand un bébé est en travers ou de biais.
family-cord-kneel = Avec le cordon : appelez, puis mettez-vous à genoux, la poitrine en bas et les hanches en haut.
family-cord-lie = Ou couchez-vous sur le côté gauche, les hanches sur des oreillers. Ne repoussez pas le cordon.

family-go-title = Appelez tout de suite le numéro d’urgence
family-go-title-number = Appelez tout de suite le { $number }
family-go-bleeding = Saignement abondant : il coule ou traverse le linge
family-go-breath = Douleur dans la poitrine, ou du mal à respirer
family-go-fits = Convulsions : secousses qu’on ne peut arrêter
family-go-collapse = Vous vous évanouissez ou vous effondrez
family-come-title = Appelez maintenant et venez
family-come-title-where = Appelez maintenant et venez : { $where }
family-come-title-number = Appelez maintenant le { $number } et venez
family-come-title-where-number = Appelez maintenant le { $number } et venez : { $where }
family-come-bleeding = Tout saignement du vagin
family-come-pain = Un fort mal de ventre qui ne passe pas
family-come-head = Mal de tête fort ou qui dure, ou vue trouble, taches : il faut prendre votre tension
family-come-fever = Une fièvre de 38 °C (100,4 °F) ou plus
family-come-green = Des eaux (le liquide qui coule) vertes ou avec du sang
family-come-waters = La poche des eaux se rompt : du liquide coule du vagin
family-come-labour = L’accouchement commence, contractions qui se répètent : appelez d’abord et demandez quand partir.
# Source: common practice
family-come-labour-later = À partir de 37 semaines, quand l’accouchement commence : appelez d’abord et demandez quand partir.
family-come-tightenings = Contractions répétées avant 37 semaines (SA)
family-come-swelling = Visage ou mains très gonflés
family-come-heart = Votre propre cœur qui s’emballe

family-call-title = Appelez aujourd’hui
family-call-title-number = Appelez aujourd’hui le { $number }
family-call-itching = Démangeaisons, surtout aux mains ou aux pieds : une prise de sang peut dire pourquoi
family-call-vomit = Des vomissements qui ne cessent pas
family-call-tired = Une fatigue extrême, plus forte que d’habitude
family-call-leg = Une jambe qui gonfle ou fait mal : ce peut être un caillot

family-use = Cette page dit ce qui a été trouvé. Elle ne remplace pas l’examen par la personne qui vous suit.

sign-phone = Un téléphone
sign-ambulance = Une ambulance
sign-phone-today = Un téléphone et le soleil
sign-day-night = Le soleil et la lune
sign-moves = Un bébé qui bouge
sign-hand-on-belly = Une main sur un ventre
sign-blood = Une goutte foncée
sign-heavy-blood = Des gouttes foncées au-dessus d’une flaque
sign-waters = Une goutte claire au-dessus de l’eau
sign-stained-waters = Une goutte avec des taches
sign-belly-pain = Un ventre avec un éclair de douleur
sign-chest = Une poitrine avec un éclair de douleur
sign-heart-racing = Un cœur qui bat vite
sign-faint = Quelqu’un qui est tombé
sign-fits = Quelqu’un par terre qui tremble
sign-dark-thoughts = Un visage triste avec un nuage sombre
sign-cord = Une corde entre deux jambes
sign-kneel = Quelqu’un à genoux, la poitrine en bas et les hanches en haut
sign-left-side = Quelqu’un couché sur le côté gauche, les hanches sur un oreiller
sign-itch = Une main qui démange
sign-headache = Un visage triste avec un éclair de douleur
sign-fever = Un thermomètre
sign-swelling = Un visage gonflé
sign-vomit = Quelqu’un au-dessus d’une bassine
sign-tired = Quelqu’un au lit
sign-leg = Une jambe avec un éclair de douleur
sign-tightening = Un ventre qui se durcit
sign-clock = Une horloge
sign-go-in = Une flèche vers une porte

colouring-title = Un dessin à colorier
colouring-by = Colorié par ____

## Practice cases. `handspan cases`: a sheet for the student, and its key. All are invented.
## The desk

desk-title = handspan : ce que trouve l’examen de l’abdomen
desk-subtitle = des mains à l’image
desk-use = Une aide pour noter, dessiner et enseigner, pour personnes formées : à la main, sans échographie. Elle ne pose pas de diagnostic et ne remplace ni le protocole local, ni le jugement d’un soignant, ni une échographie.
desk-nothing-leaves = Rien de ce que vous saisissez ne quitte cet appareil. Aucun nom, aucune date de naissance, aucun numéro n’est demandé.
desk-undo = Annuler
desk-open = Ouvrir
desk-teach = Enseigner
desk-new-visit = Nouvelle visite
desk-close = Fermer
desk-go-back = Revenir
desk-go-on = Continuer
desk-fossa = fosse iliaque { $value }
desk-aim = Touchez sur le dessin où : { $value }
desk-hand = Main
desk-hand-right = droite
desk-hand-left = gauche : la suite est à gauche
desk-size = Taille
desk-size-usual = habituelle
desk-size-glove = grande, pour des gants
desk-see = Voir
desk-came-beats = Environ { $value } battements par minute ({ $name })
desk-came-tape = Attendu environ { $value } cm ; ceci est le percentile { $number }
desk-came-fits = Ce qui a été trouvé s’accorde avec : { $value }
desk-hands = Prendre le bébé sur le dessin
desk-tools = Poser sur le dessin
desk-tool-head = Tête
desk-tool-breech = Siège
desk-tool-back = Dos
desk-tool-heart = Cœur
desk-tool-limbs = Membres
desk-put = { $name } : { $value }
desk-stage-hint = Faites glisser tête, siège et dos là où vos mains les ont trouvés. Sa gauche est à droite ; le bord proche de l’anneau est son devant.
desk-stage-off = Vu ainsi, ou tant que des mots attendent, les constatations se touchent dans les étapes.
desk-ways = Qu’ont trouvé vos mains ?
desk-way-down = Tête en bas
desk-way-up = Siège en bas
desk-way-back = dos { $value }
desk-recorded = Noté par vous : { $value }.
desk-in-place-of = À la place de : { $value }.
desk-usual = Visite habituelle
desk-usual-hint = Tout ceci est noté comme trouvé par vous. Retirez ce que vous n’avez pas demandé, vu ou palpé.
desk-usual-so = Je l’ai trouvé ainsi : noter
desk-show-her = Lui montrer
desk-her-dark = Sombre
desk-her-share = Page sur son téléphone
desk-her-alt = Comment se trouve le bébé { $value }, comme elle le voit en regardant vers le bas.
desk-skip-line = À la ligne
desk-skip-print = À l’impression
desk-begin = Commencer
desk-came = Ce qui en ressort
desk-bar = Où vous êtes, et la suite
desk-step-back = Une étape en arrière
desk-step-next = Étape suivante
desk-all-steps = toutes les étapes
desk-missing-count = reste { $count }
desk-missing = Non noté : { $value }
desk-none-missing = Rien ne manque ici
desk-remarks-count = Remarques { $count }
desk-to-picture = Dessin
desk-to-take = Imprimer, garder
desk-unread = Mots qui ne sont pas encore pris
desk-not-read = Pas encore lu : { $name } : « { $value } ».
desk-not-taken = Non pris : { $name } : « { $value } ».
desk-held = Le dessin est le précédent ; rien n’est imprimé ni enregistré avant que ceci soit réglé.
desk-go-there = Y aller
desk-drop-words = Laisser ces mots
desk-replaces = Cette ligne laisse de côté ce qui est noté
desk-replaces-hint = Ceci changerait, ou ne serait plus noté :
desk-replace = Seule la ligne vaut
desk-keep-both = Les garder et ajouter la ligne
desk-replaced = Changé par la ligne : { $value }.
desk-today = Aujourd’hui, { $value }
desk-sure = Sûr
desk-take-out = Ce qui est noté, à retirer
desk-clear-finding = Effacer : { $name }
desk-pressing = { $name } ({ $count }) : { $value }
desk-same-woman = La même femme ?
desk-same-woman-hint = Une feuille montre une seule femme. Regardez chaque fichier et sa date :
desk-same-woman-so = La même femme : faire la feuille
desk-this-visit = Cette visite
desk-no-date = sans date
desk-not-her-baby = Enseignement : ce n’est pas son bébé
desk-print = Imprimer
desk-print-by-button = Rien n’est imprimé d’ici. Revenez et appuyez sur « Imprimer la page de famille », ou Ctrl+P : les côtés sont d’abord relus.

desk-one-line = En une ligne
desk-one-line-hint = Comme dans un dossier, en abréviations anglaises : 37+0 LOA 2/5 palp, SFH 35. Ce qui est noté figure toujours ici en une ligne.
desk-fill = Lire la ligne

desk-step-weeks = Terme
desk-hint-weeks = Où elle en est aujourd’hui, en SA.
desk-step-says = Elle dit
desk-hint-says = Demandez avant de toucher.
desk-step-look = Regarder
desk-hint-look = Son abdomen, tel que vous le voyez.
desk-step-grip-1 = Palper du fond utérin
desk-hint-grip-1 = Les deux mains au fond utérin : qu’y a-t-il là ?
desk-step-grip-2 = Palper latéral
desk-hint-grip-2 = Une main de chaque côté : où est le dos, où sont les membres ? La gauche et la droite sont les siennes.
desk-step-grip-3 = Palper pelvien : ce qui se présente
desk-hint-grip-3 = Une main au-dessus du pubis : qu’y a-t-il là ?
desk-step-grip-4 = Palper pelvien : la descente
desk-hint-grip-4 = Face à ses pieds, les doigts descendent le long de la tête : quelle part reste au-dessus du détroit supérieur ?
desk-step-listen = Écouter
desk-hint-listen = Le foyer du cœur, et sa fréquence. Prenez son pouls en même temps.
desk-step-tape = Hauteur utérine
desk-hint-tape = Du bord supérieur du pubis au fond utérin, selon la courbe, côté vierge du ruban au-dessus.
desk-step-wrote = Position comme vous la noteriez
desk-hint-wrote = Ce que vous concluez vous-même. C’est comparé aux constatations ; seul, cela suffit pour une image.

desk-steps = Étapes de l’examen
desk-more = Autres éléments à noter
desk-from-dates = Plutôt d’après des dates
desk-not-examined = non examiné
desk-clear = Effacer
desk-unsure = Incertain
desk-reason = Pourquoi
desk-known-by = Comment on le sait
desk-by-hand = à la main
desk-by-scan = à l’échographie
desk-by-vaginal = au toucher vaginal
desk-scan-weeks = SA à l’échographie
desk-expected = Attendu : { $value }.
desk-suggested = Vouliez-vous dire { $value } ?
desk-remove = Retirer { $value }
desk-none-written = rien d’écrit
desk-baby = Bébé { $number }
desk-of-baby = Bébé { $number } : { $value }
desk-two-babies = Deux bébés
desk-one-baby = Un seul bébé
desk-one-baby-hint = Ce qui est noté du bébé 2 serait retiré :
desk-one-baby-so = Retirer le bébé 2

desk-pole-at-fundus = Au fond utérin
desk-pole-at-brim = Au-dessus du pubis
desk-pole-breech = Le siège
desk-pole-head = La tête

desk-her-left = Gauche (mère)
desk-her-right = Droite (mère)
desk-middle = Milieu
desk-side = Côté
desk-level = Hauteur
desk-in-fields = Ou en mots ou en cm
desk-another-place = Un autre endroit
desk-place = chez la mère : { $value }
desk-tap-where = { $name } : touchez l’endroit, sur son abdomen
desk-which-place = Lequel de ces endroits ?
desk-outline-hint = Touchez l’endroit. La gauche de la mère est à droite.
desk-show-palpation = Voir le geste
desk-outline-alt = Abdomen de la mère, vu par quelqu’un face à elle : sa gauche est à droite de l’image. Rien n’est encore noté.
desk-back-side-front = vers l’avant
desk-back-side-lateral = juste sur le côté
desk-back-side-towards-her-spine = vers sa colonne
desk-back-side-only = côté seul
desk-back-front = vers l’avant
desk-back-towards-her-spine = vers sa colonne
desk-back-towards-her-ribs = vers ses côtes (en travers)
desk-back-towards-her-feet = vers ses pieds (en travers)
desk-fifths = { $value } palpables au-dessus du détroit supérieur
desk-weeks = SA
desk-weeks-of = { $number } SA
desk-days = jours
desk-and-days = +{ $number } jours

desk-count-length = Durée du comptage
desk-count-seconds = { $seconds } s
desk-count-start = Commencez sur un battement
desk-count-tap = Touchez à chaque battement : { $count }
desk-count-left = encore { $seconds } s
desk-count-stop = Arrêter, ne pas garder

desk-key-weeks = Terme, en SA
desk-formal-weeks = semaines d’aménorrhée
desk-key-visit = Date de cette visite
desk-key-due = Terme prévu
desk-key-last-period = Premier jour des dernières règles
desk-key-cycle = Jours de son cycle
desk-key-scan = Échographie précoce
desk-form-scan = SA et date : 12+3 on 2025-09-20
desk-key-movements = Mouvements
desk-key-reports = Elle signale
desk-key-denies = Demandé, absent
desk-key-births-before = Parité
desk-formal-births-before = accouchements antérieurs
desk-key-operations = Opérations de l’utérus
desk-key-womb-cut = Incision de l’utérus
desk-key-placenta = Placenta
desk-key-shape = Forme
desk-key-scars = Cicatrices de la peau
desk-key-skin = Marques de la peau
desk-key-posture = Sa posture
desk-key-womb = Tonus
desk-formal-womb = l’utérus au toucher
desk-key-fundus = Niveau du fond
desk-formal-fundus = fond utérin
desk-key-water = Liquide amniotique, au toucher
desk-formal-water = liquide
desk-key-lumps = Fibromes
desk-key-breech = Siège
desk-formal-breech = où est le siège
desk-key-back = Dos
desk-key-limbs = Membres
desk-key-dip-at-navel = Creux à l’ombilic
desk-key-moved-under-hands = A bougé sous vos mains
desk-key-head = Où est la tête
desk-key-attitude = Attitude
desk-formal-attitude = comment la tête est tenue
desk-key-legs = Place des jambes
desk-key-head-above-brim = Cinquièmes palpables
desk-formal-head-above-brim = tête au-dessus du détroit supérieur
desk-key-prominence = Proéminence céphalique
desk-formal-prominence = côté où la tête fait saillie
desk-key-descent = Descente en mots
desk-key-heart = Où le cœur est entendu
desk-key-heart-counts = Compter les battements
desk-form-heart-counts = ou tapez : 36 in 15 s; 35 in 15 s
desk-key-heart-rate = Fréquence
desk-form-heart-rate = battements par minute : 142, ou 140-146
desk-key-heart-with = Écouté avec
desk-key-pulse = Son propre pouls
desk-form-pulse = battements par minute
desk-key-heart-rhythm = Rythme
desk-key-heart-rise = Fréquence maximale au mouvement
desk-form-heart-rise = battements par minute
desk-key-fundal-height = Hauteur utérine
desk-formal-fundal-height = du pubis au fond utérin
desk-form-fundal-height = par exemple 35
desk-key-earlier-tapes = Hauteurs antérieures
desk-form-earlier-tapes = SA et longueur : 32+0 30 cm; 34+0 32 cm
desk-key-girth = Tour à l’ombilic
desk-form-girth = par exemple 98
desk-key-navel = Ombilic au-dessus du pubis
desk-form-navel = par exemple 18
desk-key-tape-unfit = Mesure inutilisable car
desk-key-weight-by-hand = Poids estimé à la main
desk-form-weight-by-hand = par exemple 3.2, ou 2.9 kg to 3.2 kg
desk-key-weight-by-scan = Poids d’une échographie antérieure
desk-key-position = Variété de position
desk-key-lie = Situation
desk-key-presentation = Présentation
desk-key-gravida = Grossesses
desk-key-rupture-before = Rupture utérine antérieure
desk-key-placentas = Placentas des jumeaux
desk-key-rhesus-d = Antigène D
desk-key-group-b-strep = Streptocoque B
desk-key-labour = En travail
desk-key-hours-since-broken = Heures depuis la rupture de la poche des eaux
desk-key-water-colour = Couleur du liquide
desk-key-consent = Consentement
desk-key-comfort = Confort
desk-key-build = Corpulence
desk-key-scar-feel = Aspect de la cicatrice
desk-key-muscle-gap = Écart des droits
desk-key-hernia = Hernie
desk-key-bladder = Vessie
desk-key-temperature = Température
desk-key-blood-pressure = Tension artérielle
desk-key-breathing = Respirations par minute
desk-key-urine-protein = Protéines dans les urines
desk-key-contractions-in-ten = Contractions en dix minutes
desk-key-contraction-length = Leur durée
desk-key-contraction-strength = Leur intensité
desk-key-tone-at-rest = L’utérus entre les contractions
desk-key-tender-at = Où l’utérus est douloureux
desk-key-height-for-dates = Hauteur selon le terme
desk-key-fundus-feels = Ce que l’on sent au fond
desk-key-brim-feels = Ce que l’on sent au-dessus du détroit supérieur
desk-key-ballottable = Tête ballottante
desk-key-overlaps-pubic-bone = La tête déborde le pubis
desk-key-found-by-vagina = Trouvé par voie vaginale
desk-key-station = Station
desk-key-size = Taille pour le terme
desk-key-kicks = Où sont sentis les coups
desk-key-hiccups = Hoquet
desk-key-unstable-lie = Présentation instable
desk-key-turning-tried = Version externe
desk-key-heart-also = Entendu aussi
desk-key-heart-quality = Comment il sonne
desk-key-heart-slows = Ralentissements
desk-key-heart-by = Qui a écouté
desk-key-heart-and-pulse = Avec le pouls de la mère
desk-key-note = Note
desk-form-note = mots libres, pour le dossier seulement ; aucun nom

desk-word-right-flank = flanc droit
desk-word-right = à droite
desk-word-middle = au milieu
desk-word-left = à gauche
desk-word-left-flank = flanc gauche
desk-word-fundus = fond utérin
desk-word-above-navel = au-dessus de l’ombilic
desk-word-at-navel = à l’ombilic
desk-word-below-navel = sous l’ombilic
desk-word-above-pubic-bone = au-dessus du pubis
desk-word-heard = entendu, lieu non noté

desk-how-it-lies = Comment le bébé est placé
desk-at-weeks = à { $value } SA
desk-no-weeks = Terme non indiqué.
desk-nothing-yet = Rien n’est encore noté. Ce que vous trouvez apparaît ici.
desk-remarks = Remarques
desk-no-remarks = Rien de ce qui est noté ici ne répond à une règle « agir maintenant » ni ne se contredit. Cela n’exclut rien.
desk-in-the-file = Dans le fichier
desk-picture-alt = Image de la place du bébé. { $value } Les côtés sont ceux de la mère : sa gauche est nommée sur l’image.
desk-no-picture = Pas d’image : { $value }
desk-look = Aspect de l’image
desk-style = Style
desk-style-soft = ombre et lumière
desk-style-line = encre sur blanc
desk-style-sketch = timbre pour le dossier
desk-view = Vue
desk-view-facing = par quelqu’un face à elle
desk-view-hers = par elle, vers le bas
desk-labels = Mots dessus
desk-labels-few = peu
desk-labels-all = tous
desk-labels-numbered = numéros avec légende
desk-labels-none = les côtés seuls
desk-palette = Peau
desk-palette-neutral = lavis d’encre

desk-take = Imprimer, garder, transmettre
desk-take-print = Imprimer la page de famille
desk-take-print-hint = les côtés sont d’abord relus
desk-take-page = Page de famille
desk-take-phone = Page de famille, sur son téléphone
desk-take-guide = Guide pour dessiner sur la peau de la mère
desk-guide-minutes = Dessin
desk-guide-10 = tout, dix minutes environ
desk-guide-1 = un trait par partie, une minute environ
desk-guide-hand = La main qui dessine
desk-guide-right = droite
desk-guide-left = gauche
desk-growth = La hauteur utérine au fil des visites
desk-growth-hint = Plusieurs visites en fichiers :
desk-draft-language = { $name } (brouillon)
desk-page-language = Page de famille en
desk-page-language-same = la même langue
desk-take-slip = Volet pour le dossier
desk-take-note = Note pour le dossier
desk-take-handover = Transmission
desk-take-copy = à copier
desk-take-exam = Cette visite en fichier
desk-take-exam-hint = à rouvrir ici
desk-take-picture = Image
desk-take-record = Enregistrement
desk-take-fhir = FHIR pour le dossier
desk-take-share = FHIR à partager : ni date, ni mots libres
desk-saved = Enregistré : { $file }
desk-saved-english = Enregistré, en anglais : { $file }
desk-copy = Copier
desk-copied = Copié.

desk-read-back = Avant que cela quitte cette page : vérifiez les côtés sur elle
desk-no-sides = Aucun côté n’est noté.
desk-it-is-so = Les côtés sont justes : continuer
desk-in-hand = C’est pris en charge ; faire quand même la page.
desk-no-page = Pas de page de famille tant que des constatations se contredisent. Repalpez, et changez ce qui était faux.
desk-no-page-unheard = Aucune page pour la famille tant que le cœur n’a pas été entendu. Suivez d’abord votre protocole local pour un cœur non entendu ; quand il aura été entendu, notez où et avec quoi.
desk-new-title = Une nouvelle visite ?
desk-new-hint = Tout ce qui a été trouvé chez cette femme est effacé de la page. Ce que vous n’avez pas enregistré est perdu.
desk-new-so = Effacer et commencer
desk-blank = La page est restée seule 20 minutes
desk-blank-hint = Ce qui y était est caché. Est-ce encore la même femme ?
desk-same-visit = Même femme, continuer
desk-mend = Ce fichier ne peut pas servir tel quel
desk-mend-text = Le texte du fichier, à corriger ici
desk-mend-again = Réessayer
desk-line = Ligne { $number } :
desk-fault = Un défaut dans cette page
desk-fault-hint = Ce que vous avez saisi est gardé. Copiez-le par sûreté, puis continuez ; si cela se reproduit, laissez de côté votre dernière action.
desk-fault-text = Ce que vous avez saisi

desk-settings = Cette page et votre maternité
desk-language = Langue
desk-paper = Papier
desk-theme = Clair ou sombre
desk-theme-device = comme l’appareil
desk-theme-light = clair
desk-theme-dark = sombre
desk-clinic = Votre maternité, pour la page de famille
desk-clinic-name = Son nom
desk-clinic-labour-ward = Salle de naissance, jour et nuit
desk-clinic-day = Le jour
desk-clinic-night = La nuit
desk-clinic-emergency = Numéro d’urgence
desk-keep = Garder ces réglages sur cet appareil ; jamais une constatation
desk-forget-all = Oublier tout
desk-forgotten = Tout est oublié.
desk-cannot-keep = Ce navigateur ne garde rien.

desk-dial-turn = Tourner le bébé
desk-dial-lie = Incliner la situation
desk-dial-fifths = Tête au-dessus du détroit supérieur
desk-dial-weeks = Terme, en SA
desk-head-low = Tête en bas
desk-head-high = Tête en haut
desk-full-screen = Plein écran
desk-back-one = { $name } : un pas en arrière
desk-on-one = { $name } : un pas en avant
desk-lie-across-right = en travers, tête à la droite de la mère
desk-lie-slant-right = de biais, tête à la droite de la mère
desk-lie-lengthwise = en longueur
desk-lie-slant-left = de biais, tête à la gauche de la mère
desk-lie-across-left = en travers, tête à la gauche de la mère
desk-teach-alt = Une image d’enseignement sans mots.
