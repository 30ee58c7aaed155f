# Français. The words of the family page, for any country; "vous". A draft: see `language-signed`.

# no, until a native midwife or doctor has read every message against the English; then yes, and who and when in a comment.
language-signed = no
language-name = français
draft-mark = BROUILLON
draft-note = Brouillon : aucun soignant de langue maternelle n’a relu ce texte. C’est le texte anglais qui compte.

decimal-sign = ,

her-left = Sa gauche
her-right = Sa droite
your-left = Votre gauche
your-right = Votre droite

label-of-baby = bébé { $number } : { $part }
label-unsure = probablement { $part }
label-not-felt = { $part }, non palpé
label-doubt = { $part }, incertain
label-head = tête
label-back = dos
label-back-behind = dos, derrière
label-bottom = fesses
label-back-not-felt = dos non palpé
label-limbs-felt = bras ou jambes
label-heart = cœur entendu ici
label-heart-family = cœur entendu ici
label-fundus-cm = haut de l’utérus, { $cm } cm
label-fundus-expected = haut de l’utérus, attendu
label-fundus-level = haut de l’utérus
label-fifths = { $fifths } palpables au-dessus du détroit supérieur
label-brim = détroit supérieur
label-pubic-bone = pubis
label-navel = nombril
label-navel-level = hauteur du nombril
label-womb = utérus
label-handbooks = hauteur des manuels à { $weeks } semaines
label-scar = cicatrice
label-small-scars = petites cicatrices
label-lump = boule (fibrome)
told-lump = anneau : boule (fibrome)
told-limbs = petit anneau : bras ou jambes
told-brim = long trait interrompu : détroit supérieur

family-title-one = Comment est placé votre bébé
family-title-more = Comment sont placés vos bébés
family-name = Nom ____
family-felt-on = Palpé à la main le ____
family-felt-on-at = Palpé à la main le ____ à { $age }
family-noted-on = Noté le ____
family-noted-on-at = Noté le ____ à { $age }
family-weeks = { $weeks } semaines
family-weeks-day = { $weeks } semaines et 1 jour
family-weeks-days = { $weeks } semaines et { $days } jours

family-baby-one = Votre bébé
family-baby-number = Le bébé { $number }

family-lie-head-down = { $baby } a la tête en bas.
family-lie-head-down-probably = { $baby } a probablement la tête en bas.
family-lie-bottom-down = { $baby } a les fesses en bas.
family-lie-bottom-down-probably = { $baby } a probablement les fesses en bas.
family-lie-across = { $baby } est en travers du ventre.
family-lie-across-probably = { $baby } est probablement en travers du ventre.
family-lie-slanting = { $baby } est de biais dans le ventre.
family-lie-slanting-probably = { $baby } est probablement de biais dans le ventre.
family-lie-not-told = Les mains n’ont pas pu dire comment est placé votre bébé.
family-lie-not-told-number = Les mains n’ont pas pu dire comment est placé le bébé { $number }.
family-lie-not-felt = On n’a pas palpé comment est placé votre bébé.
family-lie-not-felt-number = On n’a pas palpé comment est placé le bébé { $number }.
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
family-back-side-square = Le dos est juste sur le côté, à votre { $side }.
family-back-side-square-probably = Le dos est probablement juste sur le côté, à votre { $side }.
family-back-front = Le dos est vers l’avant.
family-back-front-probably = Le dos est probablement vers l’avant.
family-back-spine = Le dos est vers votre colonne.
family-back-spine-probably = Le dos est probablement vers votre colonne.
family-back-ribs = Le dos est vers vos côtes.
family-back-ribs-probably = Le dos est probablement vers vos côtes.
family-back-feet = Le dos est vers vos pieds.
family-back-feet-probably = Le dos est probablement vers vos pieds.
family-back-not-told = Les mains n’ont pas pu dire où est le dos.
family-back-not-felt = Le dos n’a pas été palpé.
family-back-not-noted = La place du dos n’a pas été notée.

family-notice-legs-right = Vous sentirez peut-être les jambes en haut, à votre droite.
family-notice-legs-left = Vous sentirez peut-être les jambes en haut, à votre gauche.
family-notice-legs-high = Vous sentirez peut-être les jambes en haut.
family-notice-limbs-front = Vous sentirez peut-être bras et jambes sur le devant.
family-notice-head-high = Vous sentirez peut-être la tête : dure et ronde, près de vos côtes.
family-notice-head-left = Vous sentirez peut-être la tête : dure et ronde, à votre gauche.
family-notice-head-right = Vous sentirez peut-être la tête : dure et ronde, à votre droite.

family-today = Cela ne vaut que pour aujourd’hui. La prochaine fois, ce sera peut-être différent.
family-next-title = À voir avec votre sage-femme
family-next-scan = Une échographie, pour être plus sûr
family-next-turn = Tourner le bébé, par des mains formées
family-next-operation = Une opération prévue (césarienne)
family-next-bottom-first = Une naissance prévue, fesses en premier
family-next-stay = Un séjour à l’hôpital jusqu’à la naissance
family-next-stay-later = Un séjour à l’hôpital, dès 37 semaines
family-next-not-told = Parlez d’une échographie avec votre sage-femme.
family-next-twins = Demandez à votre sage-femme ce que cela change pour la naissance.

family-over = Suite au verso : quand venir tout de suite, et quand appeler.
family-hold = Tenez cette page sur votre ventre, dessin vers l’extérieur. Les côtés sont alors les mêmes.
family-hands = Ceci a été palpé à la main. Ce n’est pas une échographie, et les mains peuvent se tromper.
family-hands-scan = Une partie a été palpée à la main, une autre vue à l’échographie. Le dessin n’est pas une échographie. Les mains peuvent se tromper.
family-scan = Ceci a été vu à l’échographie. Le dessin n’est pas une échographie, et il peut être faux.
family-written = Voici ce qui a été noté ce jour-là. Le dessin n’est pas une échographie, et il peut être faux.
family-turn = Les bébés tournent. Cette page montre un seul jour. Quand vous en recevez une autre, n’utilisez plus celle-ci.
family-artist = Le visage, les bras et les jambes sont l’idée du dessinateur.
family-none-drawn = Aucun bébé n’est dessiné, car on ne sait pas comment il est placé.

family-heart = Le petit cœur montre où votre sage-femme a entendu le cœur ce jour-là.
family-listen = Quelqu’un peut poser l’oreille à cet endroit et écouter.
family-listen-limits = Entendre le cœur ne dit pas comment va votre bébé. Ne pas l’entendre est fréquent. Si vous êtes inquiète, appelez.

family-numbers-title = Les chiffres de ce jour
family-number-tape = De l’os du bas jusqu’en haut de l’utérus : { $cm } cm.
family-number-rate = Battements du cœur en une minute : { $rate }.
family-number-rate-of = Battements du cœur du bébé { $number } en une minute : { $rate }.

family-worried = Si vous êtes inquiète, appelez, même si ce n’est pas sur cette page. Dites que vous êtes enceinte.
family-clinic-blank = Appelez ____
family-number-blank = Numéro ____
family-phone-always = Jour et nuit : { $number }
family-phone-day = Le jour : { $number }
family-phone-night = La nuit : { $number }
family-emergency = Urgences : { $number }
family-emergency-blank = Urgences ____

family-moves-title-one = Votre bébé bouge moins, ou pas comme d’habitude ?
family-moves-title-more = Vos bébés bougent moins, ou pas comme d’habitude ?
family-moves-call = Appelez tout de suite, de jour comme de nuit.
family-moves-wait = N’attendez pas le lendemain.
family-moves-late = Les bébés ne bougent pas moins à l’approche de la naissance.
family-moves-early = Rien senti à 24 semaines ? Appelez pour un contrôle.
family-moves-monitor = N’utilisez pas d’appareil d’écoute du cœur pour vérifier. Vous entendrez peut-être votre propre pouls.

family-urgent-waters = Si vous perdez les eaux (du liquide coule) ou si le travail commence (contractions) : appelez et venez aussitôt.
family-cord = Si vous sentez le cordon, comme une corde molle, entre vos jambes : appelez le numéro d’urgence.
family-cord-number = Si vous sentez le cordon, comme une corde molle, entre vos jambes : appelez le { $number }.

family-cord-why = Pourquoi ? Le cordon, comme une corde molle, peut sortir en premier. Si vous le sentez entre vos jambes : appelez le numéro d’urgence.
family-cord-why-number = Pourquoi ? Le cordon, comme une corde molle, peut sortir en premier. Si vous le sentez entre vos jambes : appelez le { $number }.

family-go-title = Venez tout de suite, ou appelez les urgences
family-go-title-number = Venez tout de suite, ou appelez le { $number }
family-go-bleeding = Du sang par le vagin
family-go-pain = Un fort mal de ventre qui reste
family-go-breath = Douleur dans la poitrine, ou du mal à respirer
family-go-fits = Convulsions : des secousses qu’on ne peut arrêter
family-go-cord = Le cordon, comme une corde molle, entre vos jambes
family-go-faint = Évanouissement, ou cœur qui s’emballe
family-go-harm = L’idée de vous faire du mal
family-go-green = Des eaux (le liquide qui coule) vertes ou avec du sang

family-call-title = Appelez aujourd’hui, de jour comme de nuit
family-call-waters = Vous perdez les eaux : du liquide coule du vagin
family-call-labour = Le travail commence : contractions fortes et répétées
family-call-tightenings = Contractions répétées avant 37 semaines
family-call-itching = Démangeaisons, surtout aux mains ou aux pieds
family-call-head = Mal de tête fort ou qui dure, ou vue qui change. Si les deux, venez tout de suite.
family-call-fever = Une fièvre de 38 °C ou plus. Si vous êtes aussi sans force, venez tout de suite.
family-call-swelling = Visage ou mains très gonflés
family-call-vomit = Des vomissements qui ne cessent pas
family-call-tired = Une trop grande fatigue
family-call-leg = Une jambe qui gonfle ou fait mal

family-use = Un dessin de ce qui a été trouvé. Il ne remplace pas l’examen par votre sage-femme ou votre médecin. handspan { $version }

sign-phone = Un téléphone
sign-day-night = Le soleil et la lune
sign-moves = Un bébé qui bouge
sign-blood = Une goutte foncée
sign-waters = Une goutte claire au-dessus de l’eau
sign-stained-waters = Une goutte avec des taches
sign-belly-pain = Un ventre avec un éclair de douleur
sign-chest = Une poitrine avec un éclair de douleur
sign-faint = Quelqu’un qui est tombé
sign-fits = Quelqu’un par terre qui tremble
sign-dark-thoughts = Un visage triste avec un nuage sombre
sign-cord = Une corde entre deux jambes
sign-itch = Une main qui démange
sign-headache = Un visage triste avec un éclair de douleur
sign-fever = Un thermomètre
sign-swelling = Un visage gonflé
sign-vomit = Quelqu’un au-dessus d’une bassine
sign-tired = Quelqu’un au lit
sign-leg = Une jambe avec un éclair de douleur
sign-tightening = Un ventre qui se durcit
sign-go-in = Une flèche vers une porte

colouring-title = Un dessin à colorier
colouring-by = Colorié par ____
