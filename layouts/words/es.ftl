# Español, for any country; "usted". A draft: see `language-signed`. Practice cases and FHIR records are English.
# "La izquierda de usted", never "su izquierda": that could be read as the baby's.

# no, until a native midwife or doctor has read every message against the English; then yes, and who and when in a comment.
language-signed = no
language-name = español
language-of-exams = no
draft-mark = BORRADOR
draft-note = BORRADOR: ninguna matrona ni médico de lengua materna ha revisado este texto. El texto válido es el inglés.

decimal-sign = ,

## Sides and parts

her-left = Izquierda de ella
her-right = Derecha de ella
your-left = Izquierda de usted
your-right = Derecha de usted
her-front = Delante de ella
her-back = Detrás de ella

## On the picture

label-of-baby = bebé { $number }: { $part }
label-baby = bebé { $number }
label-unsure = { $part }, probable
label-not-felt = { $part }, lugar no conocido
label-doubt = { $part }, dudoso
label-head = cabeza
label-back = espalda
label-back-behind = espalda, detrás
label-bottom = nalgas
label-legs = piernas
label-back-not-felt = espalda no conocida
label-limbs-felt = brazos o piernas
label-heart = latido oído aquí
label-heart-family = latido oído aquí
label-fundus-cm = fondo uterino, { $cm } cm
label-fundus-expected = fondo uterino, esperado
label-fundus-level = fondo uterino
label-fifths = { $fifths } palpables sobre el estrecho superior
label-brim = estrecho superior
label-pubic-bone = pubis
below-small-fontanelle = fontanela menor
below-large-fontanelle = fontanela mayor
below-frontal-suture = sutura frontal
below-brow-ridges = arcos de las cejas
below-sagittal-suture = sutura sagital
below-occiput = occipucio
below-chin = mentón
below-mouth = boca
below-nose = nariz
below-baby-sacrum = sacro del bebé
below-cleft = pliegue
below-anus = ano
below-thigh = muslo
below-coccyx = cóccix
below-cervix = cuello del útero
below-straight = { $position }, cabeza recta
below-how = Visto desde abajo, desde los pies de ella, acostada boca arriba: el frente de ella está arriba, su izquierda a la derecha del dibujo. Dibujo para enseñar, con medidas publicadas, más grande que los otros.
label-axis = eje de la pelvis
label-spine = columna
label-sacrum = sacro
label-wall = pared del abdomen
label-navel = ombligo
label-navel-level = altura del ombligo
label-womb = útero
label-handbooks = altura habitual en los manuales a las { $weeks } semanas
label-scar = cicatriz
label-small-scars = cicatrices pequeñas
label-lump = bulto (mioma)

picture-title = Cómo está colocado el bebé
picture-caption = Palpado con las manos, no es una ecografía. Cara, brazos y piernas son idea del dibujante. Los lados son los de la madre.
drawing-weeks-not-given = Semanas no indicadas: dibujado como a las 38 semanas.
drawing-womb-only = Antes de las 26 semanas solo se dibujan el útero y su altura.
drawing-baby-not-told = No se sabe dónde están la cabeza y las nalgas: no se dibuja al bebé.
drawing-back-not-felt = No se sabe dónde está la espalda: cabeza y nalgas se dibujan como círculos.
drawing-legs-not-felt = No se sabe cómo están las piernas: dibujadas dobladas.
drawing-foot-not-told = Va primero un pie; no se dice cuál: las dos piernas se dibujan flexionadas.
told-lump = anillo: bulto (mioma)
told-limbs = anillo pequeño: brazos o piernas
told-brim = línea larga discontinua: estrecho superior
drawing-heart-not-heard = No se oyó el latido.
drawing-back-side-only = De la espalda solo se sabe el lado: dibujada justo hacia ese lado.
drawing-unsure = Los hallazgos son dudosos.
drawing-disagree = Los hallazgos no concuerdan: el dibujo sigue la cabeza, las nalgas y la espalda.
drawing-face-leads = La cabeza está echada hacia atrás y la cara va por delante: de frente se ve de canto.
drawing-brow-leads = La cabeza está a medias echada hacia atrás y la frente va por delante.
drawing-second-is-lower = El bebé 2 está más abajo que el bebé 1: numerados como en el archivo.
drawing-smaller = El útero es más bajo de lo que ocupa un bebé de estas semanas: dibujado más pequeño, para que quede bajo el fondo.
drawing-does-not-fit = El útero es demasiado bajo para un bebé de estas semanas: cabeza y nalgas se dibujan como círculos.

## Teaching plates

plate-set-occiput = Las ocho posiciones de una cabeza flexionada
plate-set-sacrum = Las ocho posiciones de un bebé de nalgas
plate-set-chin = Las ocho posiciones de una cara
plate-set-brow = Las ocho posiciones de una frente
plate-set-breech = Cómo están las piernas de un bebé de nalgas
plate-set-transverse = Atravesado e inclinado
plate-set-attitudes = Cómo está flexionada la cabeza y qué se presenta
plate-set-fifths = Cuánto de la cabeza queda sobre el estrecho superior
plate-set-levels = El fondo uterino, de las 12 a las 40 semanas
plate-set-grips = Qué palpa cada maniobra de Leopold
plate-set-listening = Dónde escuchar
plate-set-turning = De { $from } a { $to }
plate-set-wall = El abdomen con las manos, paso a paso
plate-set-twins = Dos bebés
plate-set-below = Desde abajo: qué se presenta y cómo está girado
plate-set-palettes = Las paletas
plate-own = Lado a lado
plate-part = { $title } ({ $number } de { $count })
plate-foot = Para la enseñanza, por handspan { $version }: no es ninguna persona real. Los lados son los de la madre: la izquierda de ella está a la derecha de cada dibujo de frente. Cara, brazos y piernas son idea del dibujante.
plate-cut = Cortado por la línea media y visto desde la izquierda de ella: el lado izquierdo de ella mira hacia quien lo ve, la espalda de ella está a la derecha del dibujo.
plate-fifths-cut = { $fifths } palpables sobre el estrecho superior, cortado por la línea media
plate-frame = { $number }
plate-frame-end = { $number }: { $position }
plate-grip-1 = Primera maniobra: las dos manos alrededor del fondo uterino
plate-grip-2 = Segunda maniobra: una mano a cada lado
plate-grip-3 = Tercera maniobra: una mano sobre el pubis
plate-grip-4 = Cuarta maniobra: las puntas de los dedos bajan por los dos lados de la cabeza
feel-head = dura y redonda: la cabeza
feel-head-above-brim = la cabeza, hasta el estrecho superior
feel-back = ancha y firme: la espalda
feel-side = el costado del tronco
feel-front = la parte delantera del tronco
feel-bottom = anchas y más blandas: las nalgas
feel-limbs = partes pequeñas que se mueven: brazos o piernas
feel-trunk = el tronco
feel-nothing = ninguna parte del bebé
shown-first = el primero
shown-second = el segundo
shown-listen = escuche aquí
shown-listen-faint = escuche aquí: más débil
shown-cm = { $cm } cm
shown-tape = { $cm } cm, siguiendo la curva
told-diameter = Desde { $name }: { $cm } cm sobre la piel; los manuales dan { $handbook } cm a término, de hueso
diameter-suboccipitobregmatic = debajo del occipucio hasta la fontanela grande (suboccipitobregmático)
diameter-occipitofrontal = el occipucio hasta el entrecejo (occipitofrontal)
diameter-mentovertical = el mentón hasta el vértice (mentovertical)
diameter-submentobregmatic = debajo del mentón hasta la fontanela grande (submentobregmático)
plate-palette-neutral = neutra
plate-palette = paleta { $number }
plate-week = { $weeks } semanas
plate-flexed = flexionada: el mentón sobre el pecho
plate-deflexed = deflexionada: la cabeza recta
plate-brow = frente: la cabeza en parte echada hacia atrás
plate-face = cara: la cabeza echada del todo hacia atrás
plate-frank = nalgas puras: las dos piernas hacia arriba junto al cuerpo
plate-complete = nalgas completas: las dos rodillas dobladas
plate-footling-left = presentación de pies: el pie izquierdo va primero
plate-footling-right = presentación de pies: el pie derecho va primero
plate-footling-both = presentación de pies: los dos pies van primero
plate-twins-head-head = los dos con la cabeza abajo
plate-twins-head-bottom = el primero con la cabeza abajo, el segundo con las nalgas abajo
plate-twins-bottom-head = el primero con las nalgas abajo, el segundo con la cabeza abajo
plate-twins-bottom-bottom = los dos con las nalgas abajo
plate-twins-head-across = el primero con la cabeza abajo, el segundo atravesado
plate-twins-bottom-across = el primero con las nalgas abajo, el segundo atravesado

wall-before = Pregunte cómo está ella y cómo se mueve el bebé. Vejiga vacía, ella un poco inclinada hacia la izquierda de ella, las manos de usted calientes. Diga lo que hace y pare cuando ella lo pida. Izquierda y derecha son las de ella.
wall-look = 1 Mirar
wall-look-shape = La forma: alargada, ancha o inclinada. Un útero ancho: piense en un bebé atravesado.
wall-look-scars = Cicatrices: pregunte de qué es cada una. Una cicatriz en la piel no dice cómo se cortó el útero.
wall-look-moves = Movimientos que se ven.
wall-grip-1 = 2 Primera maniobra: el fondo uterino
wall-grip-1-how = Las dos manos alrededor de la parte alta: ¿qué hay ahí?
wall-grip-1-head = Dura, redonda y se mueve sola: una cabeza.
wall-grip-1-bottom = Más anchas, más blandas, y el cuerpo se mueve con ellas: unas nalgas.
wall-grip-2 = 3 Segunda maniobra: los lados
wall-grip-2-how = Una mano a cada lado: una sujeta, la otra palpa. Luego al revés.
wall-grip-2-what = Ancha y firme: la espalda. Partes pequeñas que se mueven: brazos y piernas.
wall-grip-2-both = Brazos y piernas a los dos lados: la espalda puede estar hacia la columna de ella.
wall-grip-3 = 4 Tercera maniobra: sobre el pubis
wall-grip-3-how = Una mano, el pulgar a un lado, los dedos al otro. Con suavidad: esta maniobra puede doler.
wall-grip-3-what = ¿Qué hay ahí? ¿Se mueve libre o está sujeto?
wall-grip-3-again = El mismo polo que en la primera maniobra: vuelva a palpar los dos.
wall-grip-4 = 5 Cuarta maniobra: hacia la pelvis
wall-grip-4-how = Mire hacia los pies de ella. Las puntas de los dedos bajan por los dos lados de la cabeza, hasta el estrecho superior.
wall-grip-4-fifths = ¿Cuántos quintos se palpan sobre el estrecho superior? 2/5 o menos: encajada. Se dice solo de una cabeza.
wall-grip-4-out = Donde los dedos se detienen primero, la cabeza sobresale.
wall-listen = 6 Escuchar
wall-listen-where = Donde la espalda queda más cerca de la piel. Un lugar apoya una posición; no la demuestra.
wall-listen-pulse = Tome el pulso de ella al mismo tiempo.
wall-listen-count = Cuente un minuto entero. Habitual desde las 20 semanas: de 110 a 160.
wall-listen-outside = De 100 a 109, o de 161 a 180: escuche otro minuto entero, con la mano en el pulso de ella. Si sigue así, o con otro signo: no puede esperar.
wall-measure = 7 Medir
wall-measure-top = Busque el fondo uterino bajando desde el esternón.
wall-measure-tape = Desde el borde superior del pubis, siguiendo la curva, hasta la parte alta, con los números por debajo.
wall-measure-weeks = Desde las 24 semanas: más o menos tantos cm como semanas, 2 más o menos; y compárelo con las medidas anteriores de ella. Ninguna medida vale si el bebé está atravesado, con gemelos, miomas o mucho líquido.
wall-now = Actuar ya, encuentren lo que encuentren las manos
wall-now-movements = Movimientos menos, cambiados o ninguno.
wall-now-not-heard = Desde las 24 semanas: no se oye el latido.
wall-now-rate = Latido fetal de menos de 100 o de más de 180 por minuto.
wall-now-pulse = Pulso materno a 15 o menos de la frecuencia oída: puede ser el de la madre.
wall-now-bleeding = Sangrado.
wall-now-pain = Dolor constante; un útero duro y doloroso al tacto; dolor sobre una cicatriz del útero.
wall-now-waters = Bolsa rota, y el bebé no está con la cabeza abajo o la cabeza está libre.
wall-now-help = Interrumpa la exploración y pida ayuda, como dice su protocolo local.
wall-sources = Fuentes: quintos, pulso y cinta: Theron, Maternal Care (Bettercare). Maniobras y alturas: Klein, Miller, Thomson, A Book for Midwives (Hesperian). Semanas y cinta: OMS. Frecuencias: NICHD 2008; OMS. Lo demás es práctica habitual. Con las manos, no es una ecografía; no diagnostica, y no sustituye el protocolo local, el juicio clínico ni una ecografía.

## `handspan check` says back what it read. $value is in the words of the exam language.

check-weeks = { $file }, a las { $weeks } semanas
check-no-weeks = { $file }, semanas no indicadas
check-baby = Bebé { $baby }
check-not-examined = Sin registrar: { $names }.
check-nothing-left = No falta nada de lo que es habitual explorar a estas semanas.

value-unsure = { $value }, dudoso
value-scan = { $value }, por ecografía
value-scan-at = { $value }, por ecografía { $when }
value-vaginal = { $value }, por tacto vaginal

## The words of an exam

word-not-felt = no se palpa
word-not-heard = no se oye
word-none = no hay
word-not-listened = no se escuchó
word-not-asked = no se preguntó
word-could-not-tell = no se pudo saber
word-yes = sí
word-no = no

word-left-flank = flanco izquierdo de ella
word-left = a la izquierda de ella
word-middle = en el centro
word-right = a la derecha de ella
word-right-flank = flanco derecho de ella
word-fundus = en el fondo uterino
word-above-navel = por encima del ombligo
word-at-navel = a la altura del ombligo
word-below-navel = por debajo del ombligo
word-iliac-fossa = fosa ilíaca
word-above-pubic-bone = sobre el pubis
word-left-iliac-fossa = fosa ilíaca izquierda de ella
word-right-iliac-fossa = fosa ilíaca derecha de ella
word-heard = oído, sin anotar dónde

word-front = por delante
word-lateral = justo hacia el lado
word-towards-her-spine = hacia la columna de ella
word-towards-her-ribs = hacia las costillas de ella
word-towards-her-feet = hacia los pies de ella
word-left-front = a la izquierda de ella, hacia delante
word-left-lateral = justo hacia la izquierda de ella
word-left-towards-her-spine = a la izquierda de ella, hacia la columna de ella
word-right-front = a la derecha de ella, hacia delante
word-right-lateral = justo hacia la derecha de ella
word-right-towards-her-spine = a la derecha de ella, hacia la columna de ella

word-free = libre
word-at-the-brim = en el estrecho superior
word-deep = profunda en la pelvis
word-engaged = encajada
word-limb-side = el lado de brazos y piernas
word-back-side = el lado de la espalda
word-level = por igual
word-flexed = flexionada
word-deflexed = deflexionada
word-brow = de frente (región frontal)
word-face = de cara
word-frank = nalgas puras
word-complete = nalgas completas
word-footling-left = de pies, el izquierdo
word-footling-right = de pies, el derecho
word-footling-both = de pies, los dos
word-footling = de pies

word-pinard-horn = trompeta de Pinard
word-fetoscope = estetoscopio fetal
word-doppler = Doppler
word-regular = regular
word-irregular = irregular

word-longitudinal = longitudinal
word-oblique = oblicua
word-transverse = transversa
word-cephalic = cefálica
word-breech = de nalgas
word-shoulder = de hombro

word-usual = como siempre
word-fewer = menos de lo habitual
word-changed = cambiados
word-felt = se notan
word-not-felt-yet = aún no se notan
word-bleeding = sangrado
word-waters-broken = bolsa rota
word-itching = picazón
word-constant-pain = dolor constante
word-tightenings = contracciones
word-scar-pain = dolor en la cicatriz
word-headache = dolor de cabeza
word-changes-in-sight = cambios en la vista
word-fever = fiebre
word-swelling = hinchazón
word-fits = convulsiones
word-chest-pain = dolor de pecho
word-trouble-breathing = dificultad para respirar
word-caesarean = cesárea
word-myomectomy = miomectomía
word-low-transverse = transversal baja
word-vertical = vertical
word-not-known = no se sabe
word-rear = por detrás
word-high = alta
word-low = baja

word-flat = acostada boca arriba
word-left-tilt = inclinada hacia la izquierda de ella
word-right-tilt = inclinada hacia la derecha de ella
word-half-sitting = medio sentada
word-sitting = sentada
word-long = alargada
word-wide = ancha
word-slanting = inclinada
word-midline = en la línea media
word-right-lower = abajo a la derecha de ella
word-keyhole = de laparoscopia
word-linea-nigra = línea negra
word-striae = estrías
word-rash = erupción
word-soft = blando
word-tightening = con contracciones
word-hard = duro
word-tender = doloroso al tacto
word-much = mucho
word-little = poco
word-trace = trazas
word-negative = negativo
word-positive = positivo
word-found = encontrado
word-not-found = no encontrado
word-slight = delgada
word-average = media
word-large = grande
word-small = pequeña
word-comfortable = cómoda
word-uncomfortable = incómoda
word-in-pain = con dolor
word-given = dado
word-declined = negado
word-empty = vacía
word-full = llena
word-keloid = queloide
word-healed = curada
word-navel = ombligo
word-groin = ingle
word-scar = cicatriz
word-mild = leves
word-moderate = moderadas
word-strong = fuertes
word-does-not-soften = no se ablanda
word-clear = claro
word-pink = rosado
word-bloody = con sangre
word-green = verde
word-foul = maloliente
word-not-in-labour = no está de parto
word-early-labour = fase inicial del parto
word-in-labour = de parto
word-one = una
word-two = dos
word-equal-to-dates = igual a las fechas
word-below-dates = por debajo de las fechas
word-above-dates = por encima de las fechas
word-round = redondo
word-ballottable = que pelotea
word-broad = ancho
word-distant = lejano
word-muffled = apagado
word-after-contractions = después de las contracciones
word-with-contractions = durante las contracciones
word-at-other-times = en otros momentos
word-midwife = matrona
word-doctor = médico
word-student = estudiante
word-two-people = dos personas a la vez
word-different = distintos
word-same = el mismo
word-cord = cordón
word-hand = mano
word-foot = pie
word-vertex = vértice
word-turned = giró
word-did-not-turn = no giró
word-she-declined = ella la rechazó
word-tense = tenso
word-board-like = como una tabla
word-adequate = adecuado
word-a-tender-womb = útero doloroso
word-foul-water = líquido maloliente
word-fast-pulse = pulso de 100 o más
word-fast-breathing = respiración de 21 o más
word-fast-heart-of-the-baby = latido del bebé de más de 160
word-protein-in-the-urine = proteínas en la orina
word-fewer-movements = movimientos que no son los habituales
word-t-shaped = en forma de T
word-j-shaped = en forma de J
word-dipping = insinuándose
word-fixed = fija
word-regular-tightenings = contracciones regulares o dolorosas
word-practice-tightenings = contracciones de Braxton Hicks
word-severe-headache = dolor de cabeza fuerte o persistente
word-pain-under-ribs = dolor bajo las costillas
word-vomiting = vómitos
word-burning-urine = ardor al orinar
word-loin-pain = dolor lumbar
word-show = tapón mucoso
word-collapse = desvanecimiento con colapso
word-cold-and-clammy = fría y sudorosa
word-faint = mareo o desmayo
word-faint-lying-flat = mareo al estar boca arriba
word-blow-or-fall = un golpe o una caída
word-swollen-calf = pantorrilla hinchada o dolorosa
word-violence = violencia
word-thoughts-of-self-harm = pensamientos de hacerse daño

word-bmi-35-or-more = IMC de 35 o más
word-fibroids = miomas
word-much-water = mucho líquido
word-twins = gemelos
word-not-longitudinal = bebé atravesado o inclinado
word-not-above-pubic-bone = no pasa del pubis
word-just-above-pubic-bone = justo por encima del pubis
word-halfway-to-navel = a medio camino del ombligo
word-halfway-to-xiphoid = a medio camino del apéndice xifoides
word-xiphoid = en el apéndice xifoides
word-at-pubic-bone = a la altura del pubis

word-could-not-tell-why = no se pudo saber ({ $reason })
word-cm = { $cm } cm
word-kg = { $kg } kg
word-celsius = { $celsius } °C
word-hours = { $hours } h
word-seconds = { $seconds } s
word-fingers = { $fingers ->
    [1] 1 dedo
   *[other] { $fingers } dedos
 }
word-range = { $low } a { $high }
word-left-cm = { $cm } cm a la izquierda de ella
word-right-cm = { $cm } cm a la derecha de ella
word-above-navel-cm = { $cm } cm por encima del ombligo
word-below-navel-cm = { $cm } cm por debajo del ombligo
word-above-pubic-bone-cm = { $cm } cm sobre el pubis
word-fingers-above-navel = { $fingers ->
    [1] 1 dedo
   *[other] { $fingers } dedos
 } por encima del ombligo
word-fingers-below-navel = { $fingers ->
    [1] 1 dedo
   *[other] { $fingers } dedos
 } por debajo del ombligo
word-fingers-below-xiphoid = { $fingers ->
    [1] 1 dedo
   *[other] { $fingers } dedos
 } por debajo del apéndice xifoides
word-fingers-above-pubic-bone = { $fingers ->
    [1] 1 dedo
   *[other] { $fingers } dedos
 } sobre el pubis
word-count = { $beats } en { $seconds } s
word-earlier-tape = { $weeks }: { $cm } cm
word-tape-at = { $cm } cm a las { $weeks }
word-weight-at = { $weight } ({ $weeks })
word-scan-on = { $weeks } el { $date }

position-oa = occipitopúbica
position-loa = occipitoilíaca izquierda anterior
position-lot = occipitoilíaca izquierda transversa
position-lop = occipitoilíaca izquierda posterior
position-op = occipitosacra
position-rop = occipitoilíaca derecha posterior
position-rot = occipitoilíaca derecha transversa
position-roa = occipitoilíaca derecha anterior
position-sa = sacroanterior directa
position-lsa = sacroilíaca izquierda anterior
position-lst = sacroilíaca izquierda transversa
position-lsp = sacroilíaca izquierda posterior
position-sp = sacroposterior directa
position-rsp = sacroilíaca derecha posterior
position-rst = sacroilíaca derecha transversa
position-rsa = sacroilíaca derecha anterior
position-ma = mentoanterior directa
position-lma = mentoilíaca izquierda anterior
position-lmt = mentoilíaca izquierda transversa
position-lmp = mentoilíaca izquierda posterior
position-mp = mentoposterior directa
position-rmp = mentoilíaca derecha posterior
position-rmt = mentoilíaca derecha transversa
position-rma = mentoilíaca derecha anterior
position-fa = frontoanterior directa
position-lfa = frontoilíaca izquierda anterior
position-lft = frontoilíaca izquierda transversa
position-lfp = frontoilíaca izquierda posterior
position-fp = frontoposterior directa
position-rfp = frontoilíaca derecha posterior
position-rft = frontoilíaca derecha transversa
position-rfa = frontoilíaca derecha anterior
position-rada = acromioilíaca derecha, dorso anterior
position-radp = acromioilíaca derecha, dorso posterior
position-lada = acromioilíaca izquierda, dorso anterior
position-ladp = acromioilíaca izquierda, dorso posterior

## Findings

group-dates = Fechas
group-says = Ella dice
group-looked = A la vista
group-womb = Útero
group-tape = Cinta
group-grip-1 = Palpación del fondo
group-grip-2 = Palpación lateral
group-grip-3 = Pélvica (una mano)
group-grip-4 = Pélvica (dos manos)
group-vaginal = Por la vagina
group-baby = Bebé
group-heart = Latido
group-weight = Peso
group-concluded = Usted anotó
group-note = Nota

found-weeks = Semanas: { $value }.
found-visit = Visita del { $value }.
found-due = Fecha probable de parto: { $value }.
found-last-period = Última regla desde: { $value }.
found-cycle = Ciclo de { $value } días.
found-scan = Datado por ecografía: { $value }.
found-note = { $value }

found-movements = Movimientos: { $value }.
found-reports = Síntomas que refiere: { $value }.
found-denies = Preguntado, y no: { $value }.
found-births-before = Partos anteriores: { $value }.
found-operations = Operaciones del útero: { $value }.
found-womb-cut = Corte en el útero: { $value }.
found-placenta = Placenta: { $value }.
found-posture = Ella estaba: { $value }.
found-shape = Forma: { $value }.
found-scars = Cicatrices en la piel: { $value }.
found-skin = Piel: { $value }.
found-pulse = Pulso de ella: { $value }.
found-womb = Útero: { $value }.
found-water = Líquido: { $value }.
found-lumps = Miomas: { $value }.
found-fundus = Fondo uterino: { $value }.
found-fundal-height = Medida: { $value }.
found-earlier-tapes = Antes: { $value }.
found-girth = Contorno a la altura del ombligo: { $value }.
found-navel = Ombligo sobre el pubis: { $value }.
found-tape-unfit = La cinta no sirve para una curva: { $value }.
found-gravida = Embarazos: { $value }.
found-rupture-before = Rotura uterina anterior: { $value }.
found-placentas = Placentas: { $value }.
found-rhesus-d = Antígeno D: { $value }.
found-group-b-strep = Estreptococo B: { $value }.
found-labour = Parto: { $value }.
found-hours-since-broken = Aguas rotas desde hace: { $value }.
found-water-colour = Líquido que ha salido: { $value }.
found-consent = Consentimiento: { $value }.
found-comfort = Comodidad: { $value }.
found-build = Complexión: { $value }.
found-scar-feel = La cicatriz está: { $value }.
found-muscle-gap = Separación de los rectos: { $value }.
found-hernia = Hernia: { $value }.
found-bladder = Vejiga: { $value }.
found-temperature = Temperatura: { $value }.
found-blood-pressure = Tensión arterial: { $value }.
found-breathing = Respiraciones por minuto: { $value }.
found-urine-protein = Proteínas en la orina: { $value }.
found-contractions-in-ten = Contracciones en diez minutos: { $value }.
found-contraction-length = Cada una dura: { $value }.
found-contraction-strength = Intensidad: { $value }.
found-tone-at-rest = Entre contracciones: { $value }.
found-tender-at = Dolor al tacto en: { $value }.
found-height-for-dates = Altura según las fechas: { $value }.

found-breech = Nalgas: { $value }.
found-back = Espalda: { $value }.
found-limbs = Brazos o piernas: { $value }.
found-dip-at-navel = Hundimiento en el ombligo: { $value }.
found-head = Cabeza: { $value }.
found-head-above-brim = Cabeza sobre el estrecho superior: { $value } palpables.
found-head-above-brim-state = Cabeza sobre el estrecho superior: { $value }.
found-descent = Descenso: { $value }.
found-prominence = La cabeza sobresale en: { $value }.
found-attitude = Cabeza: { $value }.
found-legs = Piernas: { $value }.
found-moved-under-hands = Se movió bajo las manos: { $value }.
found-heart = Oído: { $value }.
found-heart-state = Latido: { $value }.
found-heart-with = Con: { $value }.
found-heart-counts = Contado: { $value }, una media de { $mean } latidos por minuto.
found-heart-counts-state = Contado: { $value }.
found-heart-rate = Frecuencia: { $value } latidos por minuto.
found-heart-rate-state = Frecuencia: { $value }.
found-heart-rise = La más alta al moverse: { $value }.
found-heart-rhythm = Ritmo: { $value }.
found-weight-by-hand = Con las manos: { $value }.
found-weight-by-scan = Por una ecografía anterior: { $value }.
found-fundus-feels = En el fondo se siente: { $value }.
found-brim-feels = Sobre el estrecho superior se siente: { $value }.
found-ballottable = Cabeza que pelotea: { $value }.
found-overlaps-pubic-bone = La cabeza cabalga sobre el pubis: { $value }.
found-found-by-vagina = Encontrado por la vagina: { $value }.
found-station = Altura de la presentación: { $value }.
found-size = Tamaño para las fechas: { $value }.
found-kicks = Patadas: { $value }.
found-hiccups = Hipo: { $value }.
found-unstable-lie = Situación inestable: { $value }.
found-turning-tried = Versión externa: { $value }.
found-heart-also = También se oye: { $value }.
found-heart-quality = Sonido: { $value }.
found-heart-slows = Se enlentece: { $value }.
found-heart-by = Escuchó: { $value }.
found-heart-and-pulse = Junto con el pulso de ella: { $value }.
found-lie = Situación: { $value }.
found-presentation = Presentación: { $value }.
found-position = Posición: { $value }.

name-movements = movimientos
name-fundal-height = altura uterina
name-breech = nalgas
name-back = espalda
name-limbs = brazos y piernas
name-head = cabeza
name-descent = cabeza sobre el estrecho superior
name-heart = latido
name-heart-rate = frecuencia del latido

conclude-cephalic = Cabeza abajo
conclude-face = Cabeza abajo, presentación de cara
conclude-brow = Cabeza abajo, presentación de frente
conclude-breech = Nalgas abajo
conclude-longitudinal = A lo largo, no se sabe qué polo está abajo
conclude-transverse = Atravesado
conclude-transverse-head-left = Atravesado, cabeza hacia la izquierda de ella
conclude-transverse-head-right = Atravesado, cabeza hacia la derecha de ella
conclude-shoulder = Atravesado, hombro abajo
conclude-shoulder-head-left = Atravesado, hombro abajo, cabeza hacia la izquierda de ella
conclude-shoulder-head-right = Atravesado, hombro abajo, cabeza hacia la derecha de ella
conclude-oblique = Inclinado
conclude-oblique-head-low-left = Inclinado, cabeza abajo a la izquierda de ella
conclude-oblique-head-low-right = Inclinado, cabeza abajo a la derecha de ella
conclude-oblique-head-up-left = Inclinado, cabeza arriba a la izquierda de ella, nalgas abajo al otro lado
conclude-oblique-head-up-right = Inclinado, cabeza arriba a la derecha de ella, nalgas abajo al otro lado
conclude-nothing = De estos hallazgos no se deduce cómo está el bebé
conclude-nothing-head-low = La cabeza está abajo; de estos hallazgos no se deduce cómo está el bebé
conclude-nothing-head-up = La cabeza está arriba; de estos hallazgos no se deduce cómo está el bebé

back-left-front = espalda hacia delante, a la izquierda de ella
back-left-lateral = espalda justo hacia la izquierda de ella
back-left-spine = espalda a la izquierda de ella, vuelta hacia la columna de ella
back-left = espalda a la izquierda de ella
back-right-front = espalda hacia delante, a la derecha de ella
back-right-lateral = espalda justo hacia la derecha de ella
back-right-spine = espalda a la derecha de ella, vuelta hacia la columna de ella
back-right = espalda a la derecha de ella
back-front = espalda hacia delante
back-spine = espalda hacia la columna de ella (espalda con espalda)
back-ribs = espalda hacia las costillas de ella
back-feet = espalda hacia los pies de ella

conclude-position = { $lie }, { $back }: { $position } ({ $code }).
conclude-position-words = { $lie }, { $back }: { $position }.
conclude-back = { $lie }, { $back }.
conclude-nothing-at-all = { $lie }.
conclude-no-back = { $lie }; no se sabe dónde está la espalda.
conclude-no-turn = No se nombra ninguna posición: de la espalda solo se sabe el lado.
conclude-unsure = Dudoso: un hallazgo en que se basa lleva un signo de interrogación.
conclude-engaged = Encajada: { $fifths } de la cabeza palpables sobre el estrecho superior.
conclude-not-engaged = No encajada: { $fifths } de la cabeza palpables sobre el estrecho superior.
conclude-engaged-said = Anotada como encajada; sin quintos anotados.
conclude-head-free = No encajada: la cabeza está libre sobre el estrecho superior.

check-reckoned = Calculado
check-version = handspan { $version }, reglas del { $ledger }.
numbers-due = Fecha probable de parto: { $due }, por { $by ->
    [scan] la ecografía
    [due] la fecha dada
    [last-period] 280 días desde la última regla
   *[weeks] las semanas dadas
 }{ $cycle ->
    [none] {""}
   *[other] {" "}y un ciclo de { $cycle } días
 }.
numbers-due-period = 280 días desde la última regla{ $cycle ->
    [none] {""}
   *[other] {" "}y un ciclo de { $cycle } días
 }: { $due }, { $apart }.
numbers-due-calendar = Por la regla del calendario (Naegele), que no se usa: { $due }, { $apart }.
numbers-apart-same = el mismo día
numbers-apart-later = { $days ->
    [1] 1 día
   *[other] { $days } días
 } después
numbers-apart-earlier = { $days ->
    [1] 1 día
   *[other] { $days } días
 } antes
numbers-weeks-rule = { $direction ->
    [equal] igual que las semanas
    [below] { $difference } cm por debajo de las semanas
   *[above] { $difference } cm por encima de las semanas
 }, { $within ->
    [yes] dentro de
   *[no] fuera de
 } { $limit }
numbers-tape-weeks = Regla de las semanas: { $rule } cm.
numbers-tape-weeks-none = Regla de las semanas: solo desde 24+0.
numbers-tape-standard = INTERGROWTH-21st: media { $mean } cm, DE { $sd } cm; z { $z }, percentil { $centile }.
numbers-tape-standard-none = INTERGROWTH-21st: solo de 16+0 a 42+6.
numbers-tape-no-weeks = Sin regla de las semanas y sin percentil: no se dieron las semanas.
numbers-tape-unfit = Sin regla de las semanas, sin z, sin percentil y sin peso por la cinta: { $why }.
numbers-landmark = { $same ->
    [yes] Los manuales dan para estas semanas: { $low }
   *[no] Los manuales dan para estas semanas: { $low }, hasta { $high }
 }, con 2 semanas de margen; entre mujeres hay más diferencia.
numbers-heart = Media { $mean } latidos por minuto; lo contado admite de { $low } a { $high } (pasos de { $steps }).
numbers-heart-rise = Al moverse, hasta { $rise }: anotado, y no aclara nada.
numbers-grams = { $grams } g ({ $pounds } lb { $ounces } oz)
numbers-hand = Con las manos: { $weight }.
numbers-hand-range = Con las manos: de { $low } a { $high }.
numbers-johnson = Johnson: de { $low } a { $high } g (n de { $first } a { $last }).
numbers-dare = Dare, con el contorno: { $grams } g.
numbers-buchmann = Buchmann: { $grams } g, hecha para el parto a término.{ $large ->
    [yes] {" "}En el parto, una cinta de 40 cm o más hace posible un peso de más de 4000 g: prevéalo según su protocolo local.
   *[no] {""}
 }
numbers-weights-apart = Estos pesos distan { $grams } g entre sí: ninguno decide cuánto pesa el bebé. Si importa, pida una ecografía según su protocolo local.
numbers-rough = De los pesos por la cinta, de 4 a 7 de cada 10 quedan a menos de una décima parte del peso al nacer.
numbers-curves = Curvas
numbers-curves-of = Como referencia, pesos por ecografía a las { $weeks }, no por manos ni cinta.
numbers-curves-intergrowth = INTERGROWTH-21st: P10 { $low }, P50 { $middle }, P90 { $high } g.
numbers-curves-intergrowth-none = INTERGROWTH-21st: solo de 22+0 a 40+0.
numbers-curves-hadlock = Hadlock: P10 { $low }, P50 { $middle }, P90 { $high } g.
numbers-curves-hadlock-none = Hadlock: solo de 10+0 a 40+0.
numbers-curves-no-weeks = Sin pesos de referencia: no se dieron las semanas.

check-heart-early = No se oyó el corazón. Antes de las 16 semanas ninguna regla parte de eso, porque con estetoscopio de Pinard o Doppler puede no oírse tan pronto; no descarta nada. Si antes se había oído, o han cesado movimientos que ella sentía, no puede esperar; si no, siga su protocolo local.
check-remarks-none = Nada de lo anotado aquí cumple una regla de actuar ya ni se contradice. Eso no descarta nada.
check-question-open = Queda una pregunta abierta sobre la línea: hasta que se responda, no se dice nada de lo que no se ha encontrado.
check-understood = Entendido: { $line }
check-fits = Lo encontrado encaja con: { $positions }.
check-quieted = Omitido en esta pasada, como se pidió: { $ids }.
check-local = Calculado con umbrales locales, del archivo del centro.
check-problems = En el archivo
grade-act-now = Actuar ya
grade-cannot-both = No pueden ser ciertos los dos
grade-look-again = Mirar otra vez
grade-follow-guidance = Seguir el protocolo
for-baby = Bebé { $baby }: { $text }

# The boxes that every chart has, and words of a visit file as a chart says them.
check-charted = Para la historia
box-lie = Situación
box-presentation = Presentación
box-position = Posición
box-attitude = Actitud
box-engagement = Encajamiento (quintos)
box-liquor = Líquido
box-fundal-height = Altura uterina
box-heart = Corazón fetal
box-movements = Movimientos
box-none = sin registrar
box-open = sin decidir
box-fifths = { $fifths } palpables
box-rate = { $rate } latidos por minuto
box-heard = oído en { $place }
box-sentence = { $label }: { $value }.
conclude-from = Se deduce de lo que fue { $ways }.
way-felt = palpado
way-scan = visto por ecografía
way-vaginal = hallado por tacto vaginal
way-written = escrito
check-remarks-none-note = Nada de lo registrado fuera de la nota cumple una regla de actuar ahora ni se contradice; en la nota solo se buscan palabras de alarma. Eso no descarta nada.
found-breech-state = Nalgas: { $value }.
found-head-state = Cabeza: { $value }.
value-placenta-front = anterior
value-placenta-rear = posterior
value-placenta-high = fúndica
value-placenta-low = baja
value-back-front = anterior
value-back-left-front = izquierda, anterior
value-back-right-front = derecha, anterior
value-back-left-lateral = izquierda, lateral
value-back-right-lateral = derecha, lateral
value-back-towards-her-spine = posterior
value-back-left-towards-her-spine = izquierda, posterior
value-back-right-towards-her-spine = derecha, posterior
value-prominence-limb-side = en el lado de las extremidades
value-prominence-back-side = en el lado de la espalda
value-tape-unfit-not-longitudinal = situación transversa u oblicua
value-tape-unfit-much-water = mucho líquido
value-shape-slanting = oblicua
value-labour-not-in-labour = no está de parto
value-labour-early-labour = fase inicial del parto
value-labour-in-labour = de parto
value-reports-fits = convulsiones
value-reports-tightenings = contracciones
value-reports-waters-broken = bolsa rota
value-operations-caesarean = cesárea
chart-fundal-height = Altura uterina: { $value }.

## Sides read back

outline-title = El abdomen de ella
outline-description = El abdomen de ella, visto por alguien que está frente a ella: la izquierda de ella está a la derecha del dibujo.

read-back-back-left = Espalda a la IZQUIERDA DE ELLA: a la derecha de usted, frente a ella.
read-back-back-right = Espalda a la DERECHA DE ELLA: a la izquierda de usted, frente a ella.
read-back-head-left = Cabeza a la IZQUIERDA DE ELLA: a la derecha de usted, frente a ella.
read-back-head-right = Cabeza a la DERECHA DE ELLA: a la izquierda de usted, frente a ella.
read-back-bottom-left = Nalgas a la IZQUIERDA DE ELLA: a la derecha de usted, frente a ella.
read-back-bottom-right = Nalgas a la DERECHA DE ELLA: a la izquierda de usted, frente a ella.
read-back-limbs-left = Brazos o piernas a la IZQUIERDA DE ELLA: a la derecha de usted, frente a ella.
read-back-limbs-right = Brazos o piernas a la DERECHA DE ELLA: a la izquierda de usted, frente a ella.
read-back-limbs-both = Brazos o piernas a LOS DOS lados de ella.
read-back-heart-left = Latido oído a la IZQUIERDA DE ELLA: a la derecha de usted, frente a ella.
read-back-heart-right = Latido oído a la DERECHA DE ELLA: a la izquierda de usted, frente a ella.

## The chart

chart-opening = Exploración del abdomen con las manos a las { $weeks } semanas.
chart-opening-no-weeks = Exploración del abdomen con las manos; semanas no indicadas.
chart-cautions = Con las manos, no por ecografía, salvo donde se dice; los lados son los de la madre. Un registro: no diagnostica y no sustituye el protocolo local, el juicio clínico ni una ecografía.
chart-versions = handspan { $version }, reglas del { $ledger }.

chart-scan = Datado por ecografía: { $value }.
chart-shape = Forma del abdomen: { $value }.
chart-pulse = Pulso de la madre: { $value }.
chart-earlier-tapes = Cintas anteriores: { $value }.
chart-heart = Latido oído: { $value }.
chart-heart-state = Latido del bebé: { $value }.
chart-heart-with = Escuchado con: { $value }.
chart-heart-counts = Latido contado: { $value }, una media de { $mean } latidos por minuto.
chart-heart-counts-state = Cuenta del latido: { $value }.
chart-heart-rate = Frecuencia del latido: { $value } latidos por minuto.
chart-heart-rate-state = Frecuencia del latido: { $value }.
chart-heart-rise = Frecuencia más alta al moverse: { $value }.
chart-heart-rhythm = Ritmo del latido: { $value }.
chart-contraction-length = Duración de las contracciones: { $value }.
chart-contraction-strength = Intensidad de las contracciones: { $value }.
chart-tone-at-rest = El útero entre contracciones: { $value }.
chart-tender-at = El útero duele al tacto en: { $value }.
chart-heart-also = El latido se oye también: { $value }.
chart-heart-quality = Sonido del latido: { $value }.
chart-heart-slows = El latido se enlentece: { $value }.
chart-heart-by = Escuchado por: { $value }.
chart-heart-and-pulse = Latido y pulso de ella a la vez: { $value }.
chart-weight-by-hand = Peso con las manos: { $value }.
chart-weight-by-scan = Peso por una ecografía anterior: { $value }.
chart-lie = Situación como se anotó: { $value }.
chart-presentation = Presentación como se anotó: { $value }.
chart-position = Posición como se anotó: { $value }.
chart-note = Nota: { $value }
chart-more = El resto está en la historia clínica.

handover-situation = SITUACIÓN
handover-background = ANTECEDENTES
handover-assessment = VALORACIÓN
handover-recommendation = RECOMENDACIÓN
handover-first = Primero lo que no puede esperar, como está arriba: { $ids }.
handover-guidance = Después, según el protocolo local. Lo que no se exploró sigue sin saberse hasta que alguien lo explore.
handover-line = Entregado por ____________________  a ____________________  a las ________
history-not-recorded = Sin anotar: { $names }.
history-births-before = Partos anteriores
history-operations = Operaciones del útero
history-womb-cut = Corte en el útero
history-placenta = Dónde está la placenta

slip-title = Exploración del abdomen
slip-label = Etiqueta
slip-time = Fecha y hora ____
slip-signature = Firma ____

## The tape over the visits

growth-title = La cinta a lo largo de las visitas
growth-span = { $visits } visitas, de las { $first } a las { $last } semanas.{ $due ->
    [none] {""}
   *[other] {" "}Fecha probable de parto: { $due }.
 }
growth-axis-tape = Del pubis al fondo uterino, cm
growth-axis-weeks = semanas
growth-curve = P{ $centile }
growth-key-tape = cinta
growth-key-earlier = anotada después como cinta anterior
growth-key-not-read = no sirve para leerla
growth-key-curves = curvas: INTERGROWTH-21st
growth-not-read = { $cm } cm: { $why }
growth-sides = Cómo estaba el bebé en cada visita. En cada dibujo la izquierda de ella está a la derecha.
growth-no-curves = No se dibuja ninguna curva: están hechas con embarazos de un solo bebé.

growth-head-weeks = Semanas
growth-head-tape = Cinta
growth-head-rule = Frente a las semanas
growth-head-curve = INTERGROWTH-21st
growth-head-lie = Cómo estaba el bebé
growth-head-brim = Sobre el estrecho
growth-head-heart = Latidos por minuto
growth-dash = –
growth-heard = oído
growth-dated = { $weeks } ({ $date })
growth-rule = { $rule } cm
growth-standard = z { $z }, percentil { $centile }
growth-outside = solo de 16+0 a 42+6
growth-why-not = sin leer: { $why }
growth-palpable = { $fifths } palpables
growth-numbered = { $baby }: { $text }
growth-earlier = Anotadas después como cintas anteriores: { $tapes }.
growth-earlier-one = { $cm } cm a las { $weeks } ({ $answer })
growth-at = A las { $weeks }: { $text }

growth-lie-head-down = cabeza abajo
growth-lie-bottom-down = nalgas abajo
growth-lie-lengthwise = a lo largo
growth-lie-across = atravesado
growth-lie-slanting = inclinado
growth-lie-not-known = no se sabe
growth-probably = probablemente { $lie }

growth-about = Cintas sobre las curvas P3, P10, P50, P90 y P97 de INTERGROWTH-21st; debajo, un dibujo de cómo estaba el bebé en cada visita. { $visits }
growth-about-no-curves = Cintas a lo largo de las semanas, y un dibujo de cómo estaban los bebés en cada visita. { $visits }
growth-about-visit = A las { $weeks }: cinta { $tape }, { $answer }; { $lie }.

growth-due-apart = Las fechas probables de parto difieren en { $days ->
    [1] 1 día
   *[other] { $days } días
 } entre las visitas; cada una está en sus propias semanas.
growth-without-due = { $which ->
    [all] Ninguna visita tiene fecha probable de parto: no se pudo comprobar con ella que sean de un mismo embarazo.
   *[some] No se sabe la fecha probable de parto de las visitas a las { $weeks }: no se pudo comprobar con ella que sean de este embarazo.
 }
growth-dash-means = Una raya: no se anotó en esa visita.
growth-caution = Una cinta que sigue una curva no descarta nada.

## One sentence what was found, one what to do next. Never a diagnosis, never reassurance; local guidance decides.

remark-movements-fewer = Ella dice que el bebé se mueve menos de lo habitual. Haga que los valoren ya, a ella y al bebé, según su protocolo local para menos movimientos; que se oiga el latido no lo aclara.
remark-movements-changed = Ella dice que los movimientos han cambiado. Haga que los valoren ya, a ella y al bebé, según su protocolo local para movimientos cambiados; que se oiga el latido no lo aclara.
remark-movements-none = Ella dice que el bebé no se mueve. Haga que los valoren ya, a ella y al bebé, según su protocolo local; que se oiga el latido no lo aclara.
remark-movements-not-felt-yet = Aún no se han notado movimientos, y han pasado las 24 semanas o no se saben las semanas. Haga que los valoren ya, a ella y al bebé, según su protocolo local para movimientos no notados a las 24 semanas.
remark-bleeding = Refiere sangrado. Pida ayuda y siga ahora su protocolo local para el sangrado en el embarazo.{ $placenta ->
    [known] {""}
    [low] {" "}La placenta está registrada como baja: no haga examen vaginal.
   *[other] {" "}No está registrado dónde está la placenta: no haga examen vaginal hasta que se sepa.
 }
remark-constant-pain = Ella refiere un dolor que no se va. Busque ayuda y siga ya su protocolo local para el dolor constante en el embarazo.
remark-urgent-signs = Registrado: { $signs }. Pida ayuda y siga ahora su protocolo local para ello.
remark-hard-tender-womb = El útero está duro o tenso, y doloroso al tacto. Pida ayuda y siga ahora su protocolo local; no espere para volver a palpar.
remark-scar-pain = Hay dolor, espontáneo o al tacto, en la cicatriz, y el útero ha sido operado. Pida ayuda y siga ahora su protocolo local para el dolor de la cicatriz.
remark-scar-pain-operations-not-known = Hay dolor, espontáneo o al tacto, en una cicatriz, y no está anotado si el útero ha sido operado. Pregunte ahora; si lo ha sido, o si nadie lo sabe, pida ayuda y siga ahora su protocolo local para el dolor de la cicatriz.
remark-crosswise-in-labour = El bebé está en situación transversa u oblicua, y ella está de parto o tiene contracciones regulares. Pida ayuda ya y siga su protocolo local para un parto en esa situación; piense primero en el prolapso de cordón.
remark-head-overlaps-in-labour = La cabeza cabalga sobre el pubis, y ella está de parto o tiene contracciones regulares. Pida ya ayuda de mayor experiencia, escuche el corazón y siga su protocolo local para una cabeza que no entra en la pelvis durante el parto.
remark-unstable-lie-in-labour = La situación cambia una y otra vez, y ella está de parto o ha roto aguas. Palpe ya cómo está el bebé, pida ayuda y siga su protocolo local para una situación inestable; piense primero en el prolapso de cordón.
remark-waters-broken-not-head-down = Se ha roto la bolsa y el bebé no está con la cabeza abajo. Pida ayuda ya y siga su protocolo local para bolsa rota con un bebé que no está con la cabeza abajo; piense primero en el prolapso de cordón.
remark-waters-broken-lie-not-known = Se ha roto la bolsa y no está anotado que el bebé esté con la cabeza abajo. Busque ya la cabeza con las manos y siga su protocolo local para bolsa rota; piense primero en el prolapso de cordón.
remark-waters-broken-head-free = Se ha roto la bolsa y la cabeza está libre sobre el estrecho superior. Pida ayuda ya y siga su protocolo local para bolsa rota con la cabeza libre; piense primero en el prolapso de cordón.
remark-heart-not-heard = No se oyó el latido. Pida ya que escuchen otra persona y con otro aparato, y organice una ecografía según su protocolo local para un latido que no se oye; no la mande a casa a esperar.
remark-heart-rate-low = La frecuencia del latido está anotada como { $rate } por minuto, por debajo de { $low }. Tome el pulso de ella mientras vuelve a escuchar un minuto entero, busque ayuda y siga ya su protocolo local.
remark-heart-rate-high = La frecuencia del latido está anotada como { $rate } por minuto, por encima de { $high }. Tómele el pulso a ella mientras vuelve a escuchar un minuto entero, busque ayuda y siga ya su protocolo local.
remark-pulse-near-heart = El pulso de ella es { $pulse } y la frecuencia oída es { $rate }: puede que se oyera el pulso de ella. Tome el pulso de ella mientras vuelve a escuchar ya; si van juntos, no se ha oído el latido del bebé: pida que escuchen otra persona y con otro aparato, y organice una ecografía según su protocolo local para un latido que no se oye.

remark-head-and-bottom-in-one-place = La cabeza y las nalgas no pueden estar en un mismo lugar ({ $said }). Vuelva a palpar los dos polos del útero.
remark-back-against-lie = La espalda no puede estar así con la cabeza o las nalgas ahí ({ $said }). Vuelva a palpar la espalda, luego la cabeza y las nalgas.
remark-lie-against-findings = La situación que usted anotó no es la que dan estos hallazgos ({ $said }). Vuelva a palpar la cabeza y las nalgas; el dibujo sigue los hallazgos.
remark-presentation-against-findings = La presentación que usted anotó no es la que dan estos hallazgos ({ $said }). Vuelva a palpar la cabeza y las nalgas; el dibujo sigue los hallazgos.
remark-position-against-findings = La posición que usted anotó no es la que dan estos hallazgos ({ $said }). Vuelva a palpar la cabeza, las nalgas y la espalda, primero la izquierda y la derecha de ella; el dibujo sigue los hallazgos.
remark-conclusions-against-one-another = Lo que usted concluyó no concuerda entre sí ({ $said }). Quédese con lo que puede palpar.
remark-attitude-against-presentation = Una sola cabeza no puede tener dos actitudes ({ $said }). Quédese con la que conoce, y cómo la conoce.
remark-engaged-and-crosswise = Un bebé en situación transversa u oblicua no tiene la cabeza profunda en la pelvis ({ $said }). Vuelva a palpar sobre el estrecho superior.
remark-head-in-two-places = Una cabeza no puede estar en dos lugares ({ $said }). Vuelva a palpar el fondo uterino y sobre el estrecho superior.
remark-fifths-on-a-breech = Los quintos se cuentan en una cabeza, y estos hallazgos ponen las nalgas abajo ({ $said }). Vuelva a palpar sobre el estrecho superior: ¿cabeza o nalgas?
remark-engaged-on-a-breech = Encajada se dice de una cabeza, y estos hallazgos ponen las nalgas abajo ({ $said }). De unas nalgas diga: libres, en el estrecho superior o profundas.
remark-fifths-against-descent = Los quintos y el descenso en palabras no concuerdan ({ $said }). Vuelva a palpar sobre el estrecho superior y quédese con uno de ellos.
remark-heart-not-heard-but-counted = Un latido que no se oyó no tiene frecuencia ({ $said }). Vuelva a escuchar con una mano en el pulso de ella; después anote dónde se oyó, o ninguna frecuencia.
remark-reported-and-denied = Lo mismo está referido y negado ({ $said }). Vuelva a preguntar.
remark-limbs-on-the-side-of-the-back = Brazos y piernas se palparon en el lado de la espalda. Vuelva a palpar los dos lados: ¿cuál es ancho y firme, cuál tiene partes pequeñas?
remark-heart-far-from-the-back = El latido se oyó en el lado opuesto a la espalda. Vuelva a palpar la espalda y escuche sobre ella; el lugar donde se oye el latido apoya una posición y nunca la demuestra.
remark-heart-height-against-the-end-that-is-down = La altura a la que se oyó el latido no es donde los manuales lo buscan con este polo abajo. Vuelva a palpar qué polo está abajo, y escuche por encima y por debajo del ombligo.
remark-prominence-on-the-side-of-the-back = La prominencia cefálica está en el lado de la espalda, como puede ocurrir cuando la cabeza está extendida. Vuelva a palpar con las dos manos sobre el estrecho superior y siga su protocolo local sobre la ecografía.

tape-low-head = Una cabeza baja puede bajar la cinta; eso no descarta un bebé pequeño.
remark-dates-apart = Por la última regla, la fecha probable de parto es { $period }, a { $days } días de { $due }, la fecha { $by ->
    [scan] de la ecografía
   *[other] que se dio
 }. Búsquelas de nuevo en su historia: una puede estar mal leída o mal escrita. Aquí se usa { $due }; aclárelo según su protocolo local sobre las fechas.
remark-size-against-dates = La altura del útero encaja con { $fits }, y las semanas son { $weeks }: más de { $limit } semanas de diferencia, y no hay anotada ninguna ecografía temprana. Vuelva a preguntar por la última regla y el ciclo, busque una ecografía en su historia y siga su protocolo local sobre fechas que no son seguras.{ $size ->
    [tape] {" "}Sean cuales sean las fechas, lo dicho de la cinta se mantiene.
   *[other] {" "}Vuelva a palpar el útero con la vejiga vacía.
 }
remark-tape-outside-weeks = La cinta es de { $cm } cm a las { $weeks }: { $difference } cm { $direction ->
    [below] por debajo de
   *[other] por encima de
 } las semanas, fuera de { $limit } cm. Pídale que vacíe la vejiga, busque el fondo uterino y vuelva a medir con la cara sin números hacia arriba. Si sigue así, compare con las cintas anteriores y siga su protocolo local sobre la ecografía.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-below-p10 = La cinta es de { $cm } cm a las { $weeks }: percentil { $centile }, por debajo del décimo. Vuelva a medir con la vejiga vacía y la cara sin números hacia arriba, compare con las cintas anteriores y siga su protocolo local sobre una ecografía de crecimiento.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-above-p90 = La cinta es de { $cm } cm a las { $weeks }: percentil { $centile }, por encima del nonagésimo. Vuelva a medir con la vejiga vacía y la cara sin números hacia arriba, vuelva a palpar por si hay mucho líquido, bultos o un segundo bebé, compare con las cintas anteriores y siga su protocolo local sobre una cinta grande.
remark-tape-four-weeks-behind = La cinta es de { $cm } cm a las { $weeks }: cuatro semanas o más por detrás de la media, en el percentil { $centile }{ $reaches ->
    [none] {""}
   *[other] {" "}(es la media de { $reaches })
 }. Vuelva a medir con la vejiga vacía y la cara sin números hacia arriba, compare con las cintas anteriores y organice una ecografía de crecimiento según su protocolo local, sin esperar a la próxima visita.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-static = Tres cintas seguidas son iguales: { $earlier }, y { $cm } cm a las { $weeks }. { $again ->
    [yes] Vuelva a medir con la vejiga vacía y la cara sin números hacia arriba, y siga
   *[other] Siga
 } su protocolo local sobre una ecografía de crecimiento.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-falling = La cinta es de { $cm } cm a las { $weeks }, más baja que dos visitas antes ({ $earlier }). { $again ->
    [yes] Vuelva a medir con la vejiga vacía y la cara sin números hacia arriba, y siga
   *[other] Siga
 } su protocolo local sobre una ecografía de crecimiento.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-not-read = Aquí no se puede leer ninguna cinta frente a las semanas o a una curva: { $why }. { $lie ->
    [across] Vuelva a medir cuando el bebé esté a lo largo, y siga
   *[other] Siga
 } su protocolo local sobre vigilar el crecimiento por ecografía.
remark-heart-recount = { $counted ->
    [yes] Las cuentas tienen una media de { $mean } y dejan la frecuencia en cualquier punto entre { $low } y { $high } latidos por minuto
   *[other] La frecuencia se oyó entre { $low } y { $high } latidos por minuto
 }, a los dos lados de un límite de lo habitual, de 110 a 160. Vuelva a contar 60 segundos enteros con una mano en el pulso de ella; un latido en el que arranca el reloj cuenta como cero. Anote la cuenta, y siga su protocolo local si queda fuera.
remark-heart-outside-usual = La frecuencia cardíaca registrada es de { $rate } latidos por minuto, { $direction ->
    [low] menos de 110
   *[other] más de 160
 }. Escuche de nuevo durante un minuto entero con una mano en el pulso de ella; si sigue así, o hay fiebre, sangrado, aguas rotas, menos movimientos o parto, no puede esperar. Siga su protocolo local.
remark-heart-irregular = El ritmo se oyó irregular. Vuelva a escuchar 60 segundos enteros, pida que escuche otra persona y siga su protocolo local sobre un latido irregular.

remark-dip-with-a-back-in-front = Un hundimiento en el ombligo va con una espalda hacia la columna de ella, y la espalda se encontró hacia delante ({ $said }). Vuelva a buscar la espalda en los dos flancos.
remark-twins-on-one-side = Lo encontrado de los dos bebés está en la { $side ->
    [left] izquierda
   *[right] derecha
 } de ella. Vuelva a palpar qué bebé está en qué lado y anote la cabeza, la espalda y el latido de cada uno con su número.
remark-heart-over-the-other-baby = El latido del bebé { $baby } se oyó en el lado donde está el otro. Vuelva a escuchar sobre cada espalda, dos personas a la vez si es posible, y anote cada latido con su número.
remark-findings-fit-no-position = Ninguna posición da todo esto a la vez ({ $said }). Vuelva a palpar, uno tras otro: los polos del útero, la espalda, brazos y piernas; después vuelva a escuchar.
remark-fifths-may-read-low = Los quintos de una cabeza colocada así pueden leerse de menos: se palpa menos de lo que queda sobre el estrecho superior. Vuelva a palpar con las dos manos, hasta el final de la cabeza, antes de llamarla encajada.
remark-too-early-for-hands = Antes de las 24 semanas las manos rara vez saben cómo está un bebé o cuánto ha bajado su cabeza. Vuelva a palpar en visitas posteriores, y tome esto solo para hoy.
remark-presentation-early = Hoy el bebé no está de cabeza, y no se han cumplido 36 semanas. Palpe de nuevo en cada visita, y no dé por válido en la siguiente lo de hoy.
remark-presentation-not-known = No está claro qué polo está abajo. Vuelva a palpar con la vejiga vacía, pida otro par de manos y organice una ecografía según su protocolo local si sigue sin aclararse: a las manos se les escapan unos 3 de cada 10 bebés que no están con la cabeza abajo.
remark-womb-hard-or-tender = El útero está { $feel ->
    [hard] duro
    [tense] tenso
   *[other] doloroso al tacto
 }. Deje una mano encima: ¿se ablanda de nuevo, y cuándo? Pregunte por dolor y sangrado; si sigue así, pida ayuda y siga su protocolo local.
remark-scar-of-unknown-operation = Hay una cicatriz en la piel, y no está anotado si el útero ha sido operado. Pregunte qué operación fue: la piel no dice cuál es la incisión uterina.
remark-not-head-down = El bebé no está con la cabeza abajo, y han pasado las 36 semanas. Haga que se confirme por ecografía y siga su protocolo local para un bebé que no está con la cabeza abajo: ella debe conocer sus opciones. En casi la mitad de estos casos las manos se equivocan.
remark-crosswise-at-term = El bebé está en situación transversa u oblicua, y han pasado las 37 semanas. Haga que se confirme por ecografía y siga su protocolo local: hay que hablar de la hospitalización, y ella debe venir enseguida si empieza el parto o se rompe la bolsa, por el riesgo de prolapso de cordón.
remark-unstable-lie = La situación cambia una y otra vez. Siga su protocolo local para una situación inestable: hay que hablar de la hospitalización, y ella debe venir enseguida si empieza el parto o se rompe la bolsa, por el riesgo de prolapso de cordón.
remark-womb-operated-on = { $cut ->
    [known] La incisión uterina fue vertical, en T o en J, o el útero se ha roto antes. Compare lo registrado con el informe de la operación, y siga su protocolo local sobre dónde y cómo dar a luz.
   *[other] El útero ha sido operado antes. Busque en el informe de la operación la incisión uterina: la cicatriz de la piel no la dice. Siga su protocolo local para el parto después de una operación así.
 }
remark-head-free-at-term = La cabeza está libre sobre el estrecho superior, y han pasado las 37 semanas. Vuelva a palpar con la vejiga vacía, busque dónde está la placenta y siga su protocolo local sobre una ecografía para una cabeza libre a término.
remark-placenta-low = La placenta está registrada como baja. Compruebe que la ecografía de control según su protocolo local está pedida o hecha, por lo general a las 32 semanas, y que no se haga antes un examen vaginal.
remark-signs-to-weigh = Refiere: { $signs }. Pregunte ahora cómo de fuerte es y cuánto dura, tome la tensión, y siga su protocolo local; lo que es fuerte o persiste es urgente.
remark-waters-broken = Se le ha roto la bolsa. Pregunte hace cuántas horas, el color y el olor, los movimientos, y si se encontró estreptococo B; escuche el latido, tome la temperatura, y siga hoy su protocolo local. Si la cabeza sube, o se ve o se palpa el cordón, pida ayuda enseguida.
remark-tightenings-before-term = Refiere contracciones antes de las 37 semanas. Pregunte si son regulares o dolorosas, deje una mano sobre el útero y cronométrelas; si lo son, no puede esperar. Siga hoy su protocolo local.
remark-itching = Ella refiere picazón. Pregunte dónde, y si empeora por la noche, mire si hay erupción y siga su protocolo local para la picazón en el embarazo.
remark-note-mentions = Su nota menciona { $quoted }, y ningún hallazgo dice si es así. Regístrelo como hallazgo, o indique que no es así; mientras no esté aclarado, actúe según su protocolo local.{ $iud ->
    [yes] {" "}«IUD» puede ser un bebé que ha muerto en el útero o un dispositivo anticonceptivo: escriba cuál.
   *[no] {""}
 }{ $cord ->
    [yes] {" "}Si es el cordón, pida ayuda ahora, fuera de un hospital el número de emergencias; póngala de rodillas con el pecho abajo, o acostada sobre el lado izquierdo de ella con la cadera elevada; mantenga la parte que se presenta apartada del cordón, y no toque ni reponga el cordón.
   *[no] {""}
 }
remark-cord-felt = Se palpó o se vio el cordón. Pida ayuda ahora: fuera de un hospital, el número de emergencias. Póngala de rodillas con el pecho abajo, o acostada sobre el lado izquierdo de ella con la cadera elevada; mantenga la parte que se presenta apartada del cordón, y no toque ni reponga el cordón. Siga su protocolo local para el cordón.
remark-part-by-vagina-in-labour = Encontrado por la vagina: { $signs }, y está de parto o ha roto aguas. Pida ayuda de mayor experiencia ahora, y siga su protocolo local para ello.
remark-part-by-vagina = Encontrado por la vagina: { $signs }. Pida hoy una revisión por alguien de mayor experiencia según su protocolo local; si empieza el parto o rompe aguas, no puede esperar.
remark-movements-fewer-early = Dice que el bebé se mueve menos, o no como antes, y no se han cumplido 24 semanas. Escuche hoy con un Doppler, y siga su protocolo local para los movimientos en estas semanas. Si los movimientos que sentía han cesado, no puede esperar.
remark-placenta-low-with-signs = La placenta está registrada como baja, y hay: { $signs }. Pida ayuda ahora y siga su protocolo local para la placenta baja; no haga examen vaginal.
remark-placenta-low-late = La placenta está registrada como baja, y se han cumplido 36 semanas. Si ninguna ecografía posterior lo ha aclarado, pida hoy un plan de parto a alguien de mayor experiencia según su protocolo local, y cuide de que no se haga antes un examen vaginal.
remark-blow-or-fall = Refiere un golpe, una caída o un accidente. Pregunte qué pasó y dónde recibió el golpe, pregunte por dolor, sangrado, aguas y movimientos, escuche el latido, y siga hoy su protocolo local para ello.
remark-d-not-known = No está registrado si es D negativo. Pregúntelo o búsquelo hoy: si lo es, que se valore la anti-D dentro de las 72 horas de lo ocurrido, según su protocolo local.
remark-d-negative = Es D negativo. Haga que se valore hoy la anti-D, dentro de las 72 horas de lo ocurrido, según su protocolo local.
remark-faint = Está mareada, a punto de desmayarse. Acuéstela sobre el lado izquierdo de ella, tome pulso y tensión, pregunte por sangrado y dolor, y vuelva a mirarla antes de que se vaya; si no se le pasa, pida ayuda. Siga hoy su protocolo local.
remark-signs-of-urine = Refiere: { $signs }. Tome temperatura y pulso, analice la orina, pregunte por fiebre, escalofríos y contracciones, y siga hoy su protocolo local; un dolor lumbar con fiebre no puede esperar.
remark-faint-lying-flat = Se marea al estar boca arriba. Gírela ahora sobre el lado izquierdo de ella y vuelva a mirarla; si no se le pasa, pida ayuda y siga su protocolo local.
remark-pressure-severe = Su tensión es { $pressure }: sistólica de 160 o diastólica de 110, o más. Pida ayuda ahora y siga su protocolo local para la hipertensión grave en el embarazo; vuelva a tomarla, pero no espere a ello.
remark-pressure-with-signs = Su tensión es { $pressure }, con: { $signs }. Pida ayuda y siga ahora su protocolo local para la tensión elevada con estos signos.
remark-pressure-raised = Su tensión es { $pressure }. Siéntela, vuelva a tomarla hoy, busque proteínas en la orina, pregunte por dolor de cabeza, vista, dolor bajo las costillas y vómitos, y siga su protocolo local.
remark-severe-headache-or-rib-pain = Refiere: { $signs }. Tome la tensión y analice la orina ahora, pida ayuda, y siga su protocolo local para ello, sean cuales sean las cifras.
remark-two-signs-of-pressure = Refiere: { $signs }. Tome la tensión y analice la orina ahora, pida ayuda y siga su protocolo local para estos signos juntos; no la mande a casa a esperar.
remark-one-sign-of-pressure = Refiere: { $signs }. Pregunte cómo de fuerte es, desde cuándo y si persiste; tome la tensión, analice la orina y vuelva a mirar hoy, según su protocolo local.
remark-fever-with-signs = { $measured ->
    [yes] Su temperatura es de { $celsius } °C
   *[other] Refiere fiebre
 }, con: { $signs }. Pida ayuda ahora y siga su protocolo local para la fiebre en el embarazo con estos signos.
remark-fever = { $measured ->
    [yes] Su temperatura es de { $celsius } °C
   *[other] Refiere fiebre
 }. Vuelva a tomar hoy temperatura, pulso, respiración y tensión, pregunte por aguas, dolor y ardor al orinar, palpe el útero, y siga su protocolo local para la fiebre en el embarazo.
remark-pulse-very-fast = Su pulso es { $pulse }, más de 130. Pida ayuda ahora, tome tensión, temperatura y respiración, y siga su protocolo local.
remark-pulse-to-feel-again = Su pulso es { $pulse }. Déjela descansar, vuelva a tomarlo durante un minuto entero, y tome tensión, temperatura y respiración; si sigue así, siga hoy su protocolo local.
remark-breathing-very-fast = Respira { $breaths } veces por minuto. Pida ayuda ahora, tome pulso, tensión y temperatura, y siga su protocolo local.
remark-breathing-to-count-again = Respira { $breaths } veces por minuto. Déjela descansar y vuelva a contar durante un minuto entero, tome pulso y temperatura; si sigue así, siga hoy su protocolo local.
remark-thoughts-of-self-harm = Ha contado que piensa en hacerse daño. Quédese con ella, pregúntele si piensa llevarlo a cabo, y pida ayuda ahora según su protocolo local. Manténgalo fuera de todo lo que se lleve a casa.
remark-violence-told = Ha contado que sufre violencia. Hable con ella a solas, pregúntele si volver hoy a casa la pone en peligro, y siga su protocolo local. Manténgalo fuera de todo lo que se lleve a casa.
remark-womb-board-like = El útero { $feel ->
    [does-not-soften] no se ablanda entre contracciones
   *[other] está duro como una tabla
 }. Pida ayuda y siga ahora su protocolo local; no espere a palparlo de nuevo.
remark-contraction-too-long = Una contracción duró { $seconds } segundos, más de 2 minutos. Escuche el latido, pida ayuda y siga ahora su protocolo local.
remark-contractions-too-many = Hay registradas { $number } contracciones en diez minutos, más de 5. Escuche el latido durante las siguientes y después, pida ayuda y siga ahora su protocolo local.
remark-contractions-five = Están registradas cinco contracciones en diez minutos. Cuente otra vez en los diez minutos siguientes, deje una mano sobre el útero entre ellas, escuche el latido después de cada una, y siga su protocolo local.
remark-womb-cut-in-labour = La incisión uterina fue vertical, en T o en J, o el útero se ha roto antes, y hay dolor, contracciones o parto. Pida ayuda de mayor experiencia ahora, y siga su protocolo local para ello.
remark-womb-cut-not-known-in-labour = El útero ha sido operado antes, la incisión uterina no está registrada, y hay contracciones o parto. Pida ayuda ahora, busque el informe de la operación, y hasta encontrarlo siga su protocolo local como para una incisión que no es transversal baja.
remark-caesarean-without-a-birth = Hay registrada una cesárea, y ningún parto anterior. Vuelva a preguntar por partos anteriores, y corrija lo que no sea así.
remark-regular-tightenings-before-term = Las contracciones son regulares o dolorosas, o está de parto, { $weeks ->
    [known] antes de las 37 semanas
   *[other] y no se conocen las semanas
 }. Pida ayuda y siga ahora su protocolo local para el parto antes de término.
remark-waters-broken-before-term = Ha roto aguas, { $weeks ->
    [known] antes de las 37 semanas
   *[other] y no se conocen las semanas
 }. Pida ayuda y siga ahora su protocolo local para la rotura antes de término; no haga examen vaginal salvo que él lo indique.
remark-water-not-clear = El líquido amniótico es: { $signs }. Escuche el latido, pida ayuda y siga ahora su protocolo local para ello.
remark-waters-broken-strep = Ha roto aguas, y en este embarazo se encontró estreptococo B. Pida hoy lo que su protocolo local ofrece en este caso, sin esperar al parto; si la cabeza sube, o se ve o se palpa un cordón, pida ayuda enseguida.
remark-waters-broken-long = Rompió aguas hace { $hours } horas. Tome temperatura y pulso, escuche el latido, y hable hoy con ella de lo que su protocolo local ofrece después de 24 horas.
remark-water-little = A la palpación parece haber poco líquido. Pregunte por pérdida de líquido y por movimientos, y siga su protocolo local sobre una ecografía para ello.
remark-heart-not-heard-scan-today = No se oyó el latido con Doppler, y se han cumplido 16 semanas. Pida una ecografía hoy según su protocolo local; no la mande a casa a esperar.
remark-heart-not-heard-try-doppler = No se oyó el latido, y en estas semanas una trompetilla o un fetoscopio puede no encontrarlo. Escuche hoy de nuevo con un Doppler; si no lo encuentra, pida hoy una ecografía según su protocolo local.
remark-twin-heart-not-heard = Se oyó el corazón de un bebé, y el de este no. Pida a otra persona que escuche ahora, cada persona un corazón y las dos al mismo tiempo, y pida una ecografía ahora según su protocolo local; no la mande a casa a esperar.
remark-heart-heard-before = El latido se oyó a las { $first }, y no se oyó a las { $second }. Pida a otra persona y otro instrumento que escuchen ahora, y pida una ecografía ahora según su protocolo local.
remark-heart-is-her-pulse = El latido oído y el pulso de ella van a la vez: considere el latido como no oído. Pida ahora a otra persona y otro instrumento que escuchen, con una mano en el pulso de ella, y pida una ecografía según su protocolo local.
remark-heart-outside-usual-with-signs = La frecuencia cardíaca registrada es de { $rate } latidos por minuto, { $direction ->
    [low] menos de 110
   *[other] más de 160
 }, con: { $signs }. Escuche de nuevo durante un minuto entero con una mano en el pulso de ella, pida ayuda, y siga ahora su protocolo local.
remark-heart-outside-usual-still = La frecuencia cardíaca fue de { $rate } latidos por minuto durante un minuto entero, { $direction ->
    [low] menos de 110
   *[other] más de 160
 }, con el pulso de ella tomado. Pida ayuda y siga ahora su protocolo local.
remark-heart-slows-after-contractions = El latido se enlentece después de las contracciones. Gírela sobre el lado izquierdo de ella, escuche durante las siguientes contracciones y después, pida ayuda y siga ahora su protocolo local.
remark-heart-slows = Se oyó enlentecerse el latido: { $signs }. Escuche de nuevo durante un minuto entero, durante una contracción y después si las hay, con una mano en el pulso de ella, y siga hoy su protocolo local.
remark-twin-hearts-near = Los dos corazones están registrados a { $first } y { $second } latidos por minuto: puede ser un solo corazón oído dos veces. Pida a otra persona que cuente con usted, cada persona un corazón y las dos al mismo tiempo, y regístrelo; si no se distinguen dos corazones, pida hoy una ecografía según su protocolo local.
remark-twin-first-not-head-down = El primer bebé no está de cabeza, y se han cumplido 32 semanas. Siga su protocolo local sobre el plan del parto, y pida una ecografía que confirme cómo están los dos.
remark-twins-still-pregnant = Dos bebés con { $placentas ->
    [one] una placenta, y 36 semanas
   *[other] dos placentas, y 37 semanas
 } cumplidas. Compruebe hoy que hay un plan para el parto, según su protocolo local.
remark-twins-placentas-not-known = Dos bebés, y no está registrado si tienen una placenta o dos. Pregúntelo o búsquelo en su ecografía temprana: según su protocolo local decide cuándo deben nacer.
remark-after-41-weeks = Se han cumplido 41 semanas. Pregunte si se ha hablado con ella de la oferta de iniciar el parto, según su protocolo local.
remark-after-42-weeks = Se han cumplido 42 semanas. Vuelva a mirar hoy lo acordado con ella, y pregunte si un registro del corazón dos veces por semana y una ecografía del líquido están previstos, según su protocolo local.
remark-after-43-weeks = Se han cumplido 43 semanas. Pida hoy una revisión por alguien de mayor experiencia, compare de nuevo las fechas con la ecografía temprana, y siga su protocolo local.
remark-tape-through-centiles = Tres medidas, cada una más baja respecto a la curva que la anterior: { $earlier }, y { $cm } cm a las { $weeks }, { $fall } desviaciones estándar menos en total. Pida una ecografía de crecimiento según su protocolo local; que la medida siga entre el décimo y el nonagésimo no lo resuelve.
remark-tape-lower-in-z = La medida es más baja respecto a la curva que antes: { $earlier }, y { $cm } cm a las { $weeks }, { $fall } desviaciones estándar menos. Mida de nuevo con la vejiga vacía y la cara en blanco de la cinta hacia arriba, y compare en la próxima visita según su protocolo local.

remark-lie-changing = El bebé constaba { $before ->
    [across] en situación transversa
    [slanting] en situación oblicua
    [bottom-down] en presentación de nalgas
    [head-down] en presentación cefálica
   *[lengthwise] en situación longitudinal
 } a las { $first } y { $after ->
    [across] en situación transversa
    [slanting] en situación oblicua
    [bottom-down] en presentación de nalgas
    [head-down] en presentación cefálica
   *[lengthwise] en situación longitudinal
 } a las { $second }. Vuelva a palpar en cada visita, haga que la situación del día se confirme por ecografía y siga su protocolo local para una situación que cambia desde las 37 semanas: hay que hablar de la hospitalización, y ella debe venir enseguida si empieza el parto o se rompe la bolsa, por el riesgo de prolapso de cordón.
remark-visits-differ-in-babies = Las visitas hablan de distinto número de bebés: { $one } a las { $first }, { $two } a las { $second }. Mire si todas son de este embarazo, y haga que se confirme el número por ecografía; hasta entonces ninguna de sus cintas se lee frente a las semanas ni a una curva.

## The guide for drawing on skin

skin-title = Dibuje al bebé sobre su piel
skin-title-baby = Dibuje al bebé { $number } sobre su piel
skin-measure = Usted está frente a ella: la izquierda de ella está a la derecha de usted. «Arriba» es a lo largo de la piel desde el borde superior del pubis; «hacia fuera», a lo largo de la piel desde la línea media; entre paréntesis, anchos de dedo de 2 cm. Del punto a la punta del rotulador. Las líneas discontinuas no se palparon: no las dibuje, o dígale que son una suposición. Los puntos quedan dentro de la pelvis.
skin-measure-navel = Usted está frente a ella: la izquierda de ella está a la derecha de usted. «Arriba» es a lo largo de la piel desde el borde superior del pubis, o desde el ombligo si queda más cerca; «hacia fuera», a lo largo de la piel desde la línea media; entre paréntesis, anchos de dedo de 2 cm. Del punto a la punta del rotulador. Las líneas discontinuas no se palparon: no las dibuje, o dígale que son una suposición. Los puntos quedan dentro de la pelvis.

skin-place = { $level }, { $side }
skin-up = { $cm } cm ({ $fingers }) arriba
skin-at-pubic-bone = a la altura del pubis
skin-above-navel = { $cm } cm ({ $fingers }) por encima del ombligo
skin-at-navel = a la altura del ombligo
skin-below-navel = { $cm } cm ({ $fingers }) por debajo del ombligo
skin-her-left = { $cm } cm ({ $fingers }) a la izquierda de ella, derecha de usted
skin-her-right = { $cm } cm ({ $fingers }) a la derecha de ella, izquierda de usted
skin-midline = en la línea media
skin-out = { $cm } cm ({ $fingers }) hacia fuera

skin-head = { $number } Cabeza
skin-back = { $number } Espalda
skin-bottom = { $number } Nalgas
skin-legs = { $number } Muslo, pierna, pie
skin-arms = { $number } Brazo y mano
skin-belly = { $number } Cuello y vientre
skin-heart = { $number } Corazón
skin-head-how = Sujétela con las dos manos y dibuje por el borde de ellas.
skin-back-how = Una línea larga.
skin-bottom-how = Redondéelas.
skin-legs-how = Muslo, pierna y después el pie.
skin-arms-how = Brazo, y después una mano con cinco dedos.
skin-belly-how = Cierre la figura.
skin-on-her-left = A la izquierda de ella, la derecha de usted: desde { $from }, hasta { $to }.
skin-on-her-right = A la derecha de ella, la izquierda de usted: desde { $from }, hasta { $to }.
skin-from-to = Desde { $from }, hasta { $to }.
skin-round = Todo alrededor: su parte alta { $top }; su punto más bajo { $low }.
skin-below = El resto queda dentro de la pelvis: pare en el hueso.
skin-all-below = Queda dentro de la pelvis, por debajo del pubis: nada que dibujar.
skin-hidden = De frente no se ve nada de esto: nada que dibujar.
skin-back-behind = Está hacia la columna de ella, detrás del bebé: no hay espalda que dibujar.
skin-not-felt = Sin palpar: no lo dibuje, o vuelva a palpar.
skin-guess = Sin palpar, una suposición: no lo dibuje, o vuelva a palpar.
skin-follows = No se palpó por sí mismo: búsquelo con las manos, o no lo dibuje.
skin-unsure = Dudoso: vuelva a palpar antes.
skin-written = Según la posición anotada; palpe antes.
skin-heart-at = Oído { $place }. Dibújelo ahí.
skin-heart-none = No hay lugar donde se oyó: nada que dibujar.

skin-manners-title = Con ella
skin-manners = Pregunte antes de tocar y antes de dibujar; a algunas no les gusta. Pare en cuanto ella lo diga. Una fotografía, solo si ella la pide. Vejiga vacía, cabecera algo elevada, ligera inclinación a la izquierda de ella, tumbada boca arriba solo un rato. Manos calientes. Un rotulador lavable y seguro para la piel, { $pen }; uno por persona. No sobre piel rota, dolorida o alérgica. Se quita con el lavado corriente, en uno o dos baños.
skin-foot = No es una ecografía; las manos se pueden equivocar. Cara y dedos son idea del dibujante. handspan { $version }

skin-lies =
    { $head ->
    [head-down] Cabeza abajo
    [bottom-down] Nalgas abajo
    [side-l] Cabeza a la izquierda de ella
    [side-r] Cabeza a la derecha de ella
    [across] Atravesado
   *[unknown] Situación desconocida
 }, { $back ->
    [left] espalda a la izquierda de ella
    [right] espalda a la derecha de ella
    [front] espalda delante
    [spine] espalda hacia la columna de ella
    [ribs] espalda hacia las costillas de ella
    [feet] espalda hacia los pies de ella
   *[unknown] espalda sin palpar
 }.
skin-cm = cm
skin-step = { $number } { $do }
skin-key = Líneas rotas: sin palpar. Puntos: en la pelvis. Marcas: anchos de mano.
skin-head-name = Cabeza
skin-back-name = Espalda
skin-bottom-name = Nalgas
skin-legs-name = Piernas
skin-arms-name = Brazos
skin-belly-name = Delante
skin-heart-name = Corazón
skin-head-do = Abarque la cabeza. Dibuje alrededor de sus manos.
skin-head-low-do = Abarque la cabeza. Dibuje hasta el hueso.
skin-back-do = Recorra la espalda. Dibuje una línea larga.
skin-bottom-do = Sostenga las nalgas. Dibuje alrededor de su mano.
skin-legs-do = Piernas: muslo, rodilla, pie y dedos.
skin-arms-do = Brazos: codo, mano, cinco dedos.
skin-belly-do = Delante: cierre la forma.
skin-heart-do = Al final, un corazón donde lo oyó.
skin-do-not-felt = { $what }: sin palpar. No dibujar.
skin-do-behind = { $what }: está detrás. No dibujar.
skin-do-below = { $what }: en la pelvis. No dibujar.
skin-do-hidden = { $what }: queda oculto. No dibujar.
skin-do-feel-first = { $what }: palpe primero, luego dibuje.
skin-do-unsure = { $what }: dudoso. Palpe antes otra vez.
skin-do-no-heart = { $what }: sin lugar anotado. No dibujar.
skin-numbers = Los números, para quien los quiera
skin-numbers-baby = Los números del bebé { $number }, para quien los quiera
skin-pen-dark = de un color oscuro que se vea en la suya, como azul oscuro, ciruela o verde oscuro, y rojo para el corazón
skin-pen-light = de un color claro que se vea en la suya, como blanco, crema o amarillo pálido, y dorado para el corazón
skin-say-title = Qué decir mientras dibuja
skin-say-ask = «¿Puedo dibujar en su vientre dónde está su bebé? Se lava. Puede decir basta.»
skin-say-head = «Esta parte redonda y firme es la cabeza. Ponga aquí la mano, si quiere.»
skin-say-back = «Esta línea larga es la espalda. Al otro lado están las manos y los pies.»
skin-say-heart = «Aquí he oído hoy el corazón.»
skin-say-turn = «Dibujo lo que palparon mis manos. No es una ecografía, y su bebé puede girar.»
skin-trace-title = Si calca
skin-trace = Ponga la hoja con lo impreso hacia fuera, de modo que usted pueda leerla. Papel hectográfico para piel: repase las líneas y ponga el lado con tinta sobre ella. O repáselas por detrás con un rotulador lavable para piel, contra una ventana. Presione con un paño húmedo medio minuto y levante. Limpie lo que salió mal. O perfore las líneas y marque los puntos.

## The tracing sheet

trace-title = Hoja para calcar, a tamaño real
trace-about = Las líneas del dibujo, a tamaño real, desplegadas a lo largo de la curva del abdomen. { $lie }
trace-sheet = Hoja { $number } de { $count }: fila { $row }, columna { $column }.
trace-one-sheet = Una hoja.
trace-join = Una letra con letra, corte por el marco discontinuo.
trace-use = Recórtela. Corte las ranuras y ciérrelas, la línea discontinua sobre el corte. Lo impreso hacia fuera, de modo que usted pueda leerla. La marca gruesa en el hueso, la línea larga en la línea media de ella. Perfore las líneas y marque los puntos.
trace-numbers = Números: bebé, luego paso.
trace-bar = 5 cm. Si no lo son, imprima al 100 %.
trace-pubic = borde superior del pubis
trace-navel = ombligo, { $cm } cm arriba
trace-navel-expected = ombligo: sin medir
trace-fundus = fondo uterino, { $cm } cm
trace-left = IZQUIERDA DE ELLA, derecha de usted
trace-right = DERECHA DE ELLA, izquierda de usted
trace-up = hacia la cabeza de ella
trace-none = No hay hoja para calcar: una a tamaño real sería falsa sobre ella. Dibuje a mano con esta guía; las manos de usted sobre ella dan el sitio y el tamaño.

## The family page

family-title-one = Cómo está colocado su bebé
family-title-more = Cómo están sus bebés
family-name = Nombre o apodo ____
family-carer = matrona
family-midwife = Su { family-carer } ____
family-words = Unas palabras para usted ____
family-felt-on = Explorado con las manos el ____
family-felt-on-at = Explorado con las manos el ____ a las { $age }
family-noted-on = Anotado el ____
family-noted-on-at = Anotado el ____ a las { $age }
family-felt-at = Explorado con las manos a las { $age }
family-noted-at = Anotado a las { $age }
family-side = Cara { $number } de { $sides }
family-date = { $day } de { $month } de { $year }
family-month-1 = enero
family-month-2 = febrero
family-month-3 = marzo
family-month-4 = abril
family-month-5 = mayo
family-month-6 = junio
family-month-7 = julio
family-month-8 = agosto
family-month-9 = septiembre
family-month-10 = octubre
family-month-11 = noviembre
family-month-12 = diciembre
family-weeks = { $weeks } semanas
family-weeks-day = { $weeks } semanas y 1 día
family-weeks-days = { $weeks } semanas y { $days } días

family-baby-one = su bebé
family-baby-number = el bebé { $number }
family-how-hands = según notó con las manos su { family-carer }
family-how-hands-scan = según las manos y una ecografía
family-how-scan = según una ecografía
family-how-written = según lo anotado
family-depth-head-free = La cabeza está todavía por encima de la pelvis de usted (los huesos de la cadera).
family-depth-head-brim = La cabeza está a la entrada de la pelvis de usted (los huesos de la cadera).
family-depth-head-deep = La cabeza ya está dentro de la pelvis de usted (los huesos de la cadera).
family-depth-bottom-free = Las nalgas están todavía por encima de la pelvis de usted (los huesos de la cadera).
family-depth-bottom-brim = Las nalgas están a la entrada de la pelvis de usted (los huesos de la cadera).
family-depth-bottom-deep = Las nalgas ya están dentro de la pelvis de usted (los huesos de la cadera).
family-depth-unsure = No se sabe con seguridad cuánto ha bajado.
family-heart-at = El latido se oyó (vea el círculo pequeño) { $place }.
family-heart-heard = El latido se oyó.
family-heart-unsure = Ese lugar no es seguro.
family-heart-left = a la izquierda de usted
family-heart-right = a la derecha de usted
family-heart-far-left = muy a la izquierda de usted
family-heart-far-right = muy a la derecha de usted
family-heart-middle = en el centro
family-heart-top = en lo alto de la matriz
family-heart-above = por encima del ombligo
family-heart-level = a la altura del ombligo
family-heart-below = por debajo del ombligo
family-heart-little-above = un poco por encima del ombligo
family-heart-little-below = un poco por debajo del ombligo
family-heart-low = muy abajo
family-heart-bone = justo por encima del hueso del pubis
family-kind-bottom = Muchos bebés están con las nalgas abajo antes de las 36 semanas. Cerca del parto lo están 3 o 4 de cada 100.
family-kind-bottom-late = Cerca del parto, 3 o 4 de cada 100 bebés están con las nalgas abajo. No es por nada que usted haya hecho.
family-kind-changes = La postura de su bebé todavía puede cambiar. No es por nada que usted haya hecho.
family-kind-plan = Hay que hacer un plan. Pregunte hoy mismo quién la va a ver.
family-kind-come = Mientras su { family-carer } no le diga otra cosa: si se le rompe la bolsa o fuente (sale líquido) o empieza el parto, llame y venga enseguida.
# Source: RCOG-50
family-kind-cord = Rara vez, el cordón puede bajar primero.
# Source: RCOG-BREECH
family-kind-head = Cerca del parto, la mayoría de los bebés están cabeza abajo.

family-lie-head-down = Hoy { $baby } está con la cabeza abajo, { $how }.
family-lie-head-down-probably = Hoy { $baby } está probablemente con la cabeza abajo, { $how }.
family-lie-bottom-down = Hoy { $baby } está con las nalgas abajo, { $how }.
family-lie-bottom-down-probably = Hoy { $baby } está probablemente con las nalgas abajo, { $how }.
family-lie-across = Hoy { $baby } está atravesado en el vientre, { $how }.
family-lie-across-probably = Hoy { $baby } está probablemente atravesado en el vientre, { $how }.
family-lie-slanting = Hoy { $baby } está inclinado en el vientre, { $how }.
family-lie-slanting-probably = Hoy { $baby } está probablemente inclinado en el vientre, { $how }.
family-lie-not-told = Con las manos no se supo cómo está su bebé.
family-lie-not-told-number = Con las manos no se supo cómo está el bebé { $number }.
family-lie-not-felt = No se exploró con las manos cómo está su bebé.
family-lie-not-felt-number = No se exploró con las manos cómo está el bebé { $number }.
family-lie-early = Es pronto para palpar cómo está su bebé.
family-early-picture = El dibujo muestra hasta dónde ha crecido el útero.

family-head-left = La cabeza está a la izquierda de usted.
family-head-right = La cabeza está a la derecha de usted.
family-head-low-left = La cabeza está abajo, a la izquierda de usted.
family-head-low-right = La cabeza está abajo, a la derecha de usted.
family-head-high-left = La cabeza está arriba, a la izquierda de usted.
family-head-high-right = La cabeza está arriba, a la derecha de usted.
family-head-low = La cabeza está abajo.
family-head-high = La cabeza está arriba.

family-side-left = izquierda
family-side-right = derecha
family-back-side = La espalda está a la { $side } de usted.
family-back-side-probably = La espalda está probablemente a la { $side } de usted.
family-back-side-front = La espalda está a la { $side } de usted, hacia delante.
family-back-side-front-probably = La espalda está probablemente a la { $side } de usted, hacia delante.
family-back-side-spine = La espalda está a la { $side } de usted, hacia la columna de usted.
family-back-side-spine-probably = La espalda está probablemente a la { $side } de usted, hacia la columna de usted.
family-back-side-square = La espalda está en el costado, a la { $side } de usted.
family-back-side-square-probably = La espalda está probablemente en el costado, a la { $side } de usted.
family-back-front = La espalda está hacia delante.
family-back-front-probably = La espalda está probablemente hacia delante.
family-back-spine = La espalda está hacia la columna de usted.
family-back-spine-probably = La espalda está probablemente hacia la columna de usted.
family-back-ribs = La espalda está hacia las costillas de usted.
family-back-ribs-probably = La espalda está probablemente hacia las costillas de usted.
family-back-feet = La espalda está hacia los pies de usted.
family-back-feet-probably = La espalda está probablemente hacia los pies de usted.
family-back-not-told = Con las manos no se supo dónde está la espalda.
family-back-not-felt = No se buscó la espalda con las manos.
family-back-not-noted = No se anotó dónde está la espalda.

family-notice-legs-right = Quizá sienta las piernas arriba, a la derecha de usted.
family-notice-legs-left = Quizá sienta las piernas arriba, a la izquierda de usted.
family-notice-legs-high = Quizá sienta las piernas arriba.
family-notice-limbs-front = Quizá sienta brazos y piernas por delante.
family-notice-head-high = Quizá sienta la cabeza: algo duro y redondo cerca de las costillas.
family-notice-head-left = Quizá sienta la cabeza: algo duro y redondo a la izquierda de usted.
family-notice-head-right = Quizá sienta la cabeza: algo duro y redondo a la derecha de usted.
family-notice-head-low-left = Quizá sienta la cabeza: algo duro y redondo abajo, a la izquierda de usted.
family-notice-head-low-right = Quizá sienta la cabeza: algo duro y redondo abajo, a la derecha de usted.
family-notice-head-high-left = Quizá sienta la cabeza: algo duro y redondo arriba, a la izquierda de usted.
family-notice-head-high-right = Quizá sienta la cabeza: algo duro y redondo arriba, a la derecha de usted.
family-notice-bottom-high = Quizá sienta las nalgas: algo blando y redondo cerca de las costillas.
family-title-next = Qué viene ahora

family-today = Esto vale solo para hoy. La próxima vez puede ser distinto.
family-next-later = Pregunte cuándo la volverán a palpar. Si a las 36 semanas su bebé sigue así, harán un plan juntos.
family-next-title = Háblelo con su { family-carer }. Usted decide.
family-next-scan = Una ecografía, para comprobarlo
family-next-turn = Intentar girar al bebé desde fuera (versión), por personal formado
family-next-operation = Una operación programada (cesárea)
family-next-bottom-first = Un parto de nalgas, programado
family-next-stay = Una estancia en el hospital hasta el parto
family-next-stay-later = Una estancia en el hospital desde las 37 semanas
family-next-not-told = Pregunte a su { family-carer } por una ecografía.
family-next-twins = Pregunte a su { family-carer } qué supone esto para el parto.
family-next-again = En la próxima visita se puede volver a palpar. Pregunte lo que quiera.

family-over = Al dorso: cuándo llamar y a quién.
# On a telephone.
family-over-phone = Más abajo: cuándo llamar y a quién.
family-hold = Ponga esta hoja sobre el vientre, con el dibujo hacia fuera. Así coinciden los lados.
family-sure-title = ¿Es seguro?
family-sure-felt = Notado con las manos: { $parts }.
family-sure-heard = Oído: { $parts }.
family-sure-seen = Visto en una ecografía: { $parts }.
family-sure-felt-unsure = Notado, pero sin seguridad: { $parts }.
family-sure-heard-unsure = Oído, pero sin seguridad del lugar: { $parts }.
family-sure-not-told = Con las manos no se supo: { $parts }.
family-sure-not-found = Buscado y no encontrado: { $parts }.
family-sure-not-felt = No se buscó con las manos: { $parts }.
family-part-head = cabeza
family-part-bottom = nalgas
family-part-back = espalda
family-part-limbs = brazos o piernas
family-part-heart = latido
family-hands = Las manos se pueden equivocar, y esto no es una ecografía.
family-hands-scan = Una parte se exploró con las manos y otra se vio en una ecografía. El dibujo no es una ecografía. Las manos se pueden equivocar.
family-scan = Esto se vio en una ecografía. El dibujo no es una ecografía, y puede estar equivocado.
family-written = Esto es lo que se anotó ese día. El dibujo no es una ecografía, y puede estar equivocado.
family-turn = Guarde esta hoja si quiere. Muestra un solo día. Los bebés giran: más adelante no se fíe de ella.
family-artist = La cara, los brazos y las piernas son idea del dibujante.
family-artist-limbs-felt = La cara, las manos y los pies son idea del dibujante.
family-none-drawn = No se dibuja al bebé, porque no se sabe cómo está.
family-drawn-smaller = Su bebé está dibujado más pequeño, por falta de sitio. El dibujo no mide a su bebé.
family-drawn-smaller-number = El bebé { $number } está dibujado más pequeño, por falta de sitio. El dibujo no mide al bebé.
family-drawn-rounds = La cabeza y las nalgas están dibujadas como dos círculos. El dibujo no mide a su bebé.
family-drawn-rounds-number = La cabeza y las nalgas del bebé { $number } están dibujadas como dos círculos. El dibujo no mide al bebé.

family-heart = El círculo pequeño muestra dónde, en su vientre, se oyó el latido. Es un punto de la piel, no el corazón. Si cambian los movimientos, llame; no escuche antes.
family-listen = Alguien puede poner ahí la oreja y escuchar.
family-listen-limits = Oír un latido no basta para estar tranquila. No oírlo es frecuente. Si algo le preocupa, llame.
family-night-blank = De noche ____
family-where-blank = Dónde ____
family-phone-other = ¿No es urgente? { $purpose }: { $number }

family-numbers-title = Números de ese día
family-number-tape = Desde el hueso de abajo hasta lo alto del útero: { $cm } cm.
family-number-rate = Latidos en un minuto: { $rate }.
family-number-rate-of = Latidos del bebé { $number } en un minuto: { $rate }.

family-worried = Si algo le preocupa, llame, aunque no esté en esta hoja. Diga que está embarazada.
family-clinic-blank = Llame a ____
family-number-blank = Número ____
family-phone-always = De día o de noche: { $number }
family-phone-day = De día: { $number }
family-phone-night = De noche: { $number }
family-emergency = Emergencias: { $number }
family-emergency-blank = Emergencias ____

family-moves-title-one = ¿Su bebé se mueve menos, o de otra manera?
family-moves-title-more = ¿Alguno de sus bebés se mueve menos, o de otra manera?
family-moves-call = Llame ahora, a cualquier hora.
family-moves-keep-one = Siga atenta a los movimientos de su bebé, hasta el parto.
family-moves-keep-more = Siga atenta a los movimientos de cada bebé, hasta el parto.
family-moves-now = Si son menos o distintos, llame ahora, de día o de noche.
family-moves-now-number = Si son menos o distintos, llame ahora al { $number }, de día o de noche.
family-heavy-title = Si todo se le hace demasiado duro
family-heavy = ¿Está triste o tiene miedo? Dígaselo a su { family-carer }: hay ayuda. ¿Piensa en hacerse daño? Puede decirlo.
family-heavy-now = Si cree que podría hacerlo ahora: llame al número de emergencias.
family-heavy-now-number = Si cree que podría hacerlo ahora: llame al { $number }.
family-heavy-else = Si ahora no está en peligro, llame al número de la clínica, a cualquier hora.
family-heavy-else-number = Si ahora no está en peligro, llame al { $number }, a cualquier hora.
family-moves-wait = No espere al día siguiente.
family-moves-late = Los bebés no se mueven menos al acercarse el parto.
family-moves-early = ¿No ha notado nada a las 24 semanas? Llame para una revisión.
family-moves-monitor = No use un aparato de latidos para comprobarlo. Puede que oiga el pulso de usted.

family-urgent-waters = Se le rompe la bolsa o fuente (sale líquido) o empieza el parto (contracciones): venga enseguida.
family-urgent-why = Con un bebé colocado así, no espere a que las contracciones sean fuertes.
family-urgent-soon = No espere a que las contracciones sean fuertes.
family-cord = El cordón, como una cuerda blanda, que se siente o se ve entre las piernas.

family-cord-why = El cordón, como una cuerda blanda, que se siente o se ve entre las piernas. Puede salir primero cuando el bebé está cruzado o de lado.
family-cord-kneel = Con el cordón: llame y póngase de rodillas, con el pecho abajo y las caderas en alto.
family-cord-lie = O túmbese sobre el lado izquierdo, con las caderas sobre almohadas. No empuje el cordón hacia dentro.

family-go-title = Llame ya al número de emergencias
family-go-title-number = Llame ya al { $number }
family-go-bleeding = Mucha sangre: corre o empapa la ropa
family-go-breath = Dolor de pecho, o dificultad para respirar
family-go-fits = Convulsiones: sacudidas que no puede parar
family-go-collapse = Se desmaya o se desploma
family-come-title = Llame ahora y venga
family-come-title-where = Llame ahora y venga: { $where }
family-come-title-number = Llame ahora al { $number } y venga
family-come-title-where-number = Llame ahora al { $number } y venga: { $where }
family-come-bleeding = Cualquier sangrado por la vagina
family-come-pain = Dolor fuerte de vientre que no se va
family-come-head = Dolor de cabeza fuerte o que dura, o cambios en la vista: hay que tomarle la tensión
family-come-fever = Fiebre de 38 °C (100,4 °F) o más
family-come-green = Aguas (el líquido que sale) verdes o con sangre
family-come-waters = Se le rompe la bolsa o fuente: sale líquido por la vagina
family-come-labour = Empieza el parto, contracciones que se repiten: llame primero y pregunte cuándo salir de casa.
# Source: common practice
family-come-labour-later = Desde las 37 semanas, si empieza el parto: llame primero y pregunte cuándo salir de casa.
family-come-tightenings = Contracciones repetidas antes de las 37 semanas
family-come-swelling = Cara o manos muy hinchadas
family-come-heart = Su propio corazón, muy acelerado

family-call-title = Llame hoy
family-call-title-number = Llame hoy al { $number }
family-call-itching = Picazón o comezón, sobre todo en manos o pies: un análisis de sangre puede mostrar por qué
family-call-vomit = Vómitos que no paran
family-call-tired = Cansancio extremo, mucho más que de costumbre
family-call-leg = Dolor o hinchazón en una pierna: puede ser un coágulo

family-use = Esta hoja dice lo que se encontró. No sustituye la revisión de quien la atiende.

sign-phone = Un teléfono
sign-ambulance = Una ambulancia
sign-phone-today = Un teléfono y el sol
sign-day-night = El sol y la luna
sign-moves = Un bebé que se mueve
sign-hand-on-belly = Una mano sobre un vientre
sign-blood = Una gota oscura
sign-heavy-blood = Gotas oscuras sobre un charco
sign-waters = Una gota clara sobre agua
sign-stained-waters = Una gota con manchas
sign-belly-pain = Un vientre con un rayo de dolor
sign-chest = Un pecho con un rayo de dolor
sign-heart-racing = Un corazón que late deprisa
sign-faint = Alguien que se ha caído
sign-fits = Alguien en el suelo que tiembla
sign-dark-thoughts = Una cara triste con una nube oscura
sign-cord = Una cuerda entre dos piernas
sign-kneel = Alguien de rodillas, con el pecho abajo y las caderas en alto
sign-left-side = Alguien tumbada sobre el lado izquierdo, con las caderas sobre una almohada
sign-itch = Una mano que pica
sign-headache = Una cara triste con un rayo de dolor
sign-fever = Un termómetro
sign-swelling = Una cara hinchada
sign-vomit = Alguien sobre un cuenco
sign-tired = Alguien en la cama
sign-leg = Una pierna con un rayo de dolor
sign-tightening = Un vientre que se pone duro
sign-clock = Un reloj
sign-go-in = Una flecha hacia una puerta

colouring-title = Un dibujo para colorear
colouring-by = Coloreado por ____

## The desk

desk-title = handspan: hallazgos de una exploración del abdomen
desk-subtitle = de las manos al dibujo
desk-use = Un registro y una ayuda para dibujar y enseñar, para personas formadas: con las manos, no es una ecografía. No diagnostica y no sustituye el protocolo local, el juicio clínico ni una ecografía.
desk-nothing-leaves = Nada de lo que usted anota sale de este aparato. No se pide ningún nombre, ninguna fecha de nacimiento y ningún número.
desk-undo = Deshacer
desk-open = Abrir
desk-teach = Enseñar
desk-new-visit = Nueva visita
desk-close = Cerrar
desk-go-back = Volver
desk-go-on = Seguir
desk-fossa = fosa ilíaca { $value }
desk-aim = Toque en el dibujo dónde: { $value }
desk-hand = Mano
desk-hand-right = derecha
desk-hand-left = izquierda: seguir está a la izquierda
desk-size = Tamaño
desk-size-usual = habitual
desk-size-glove = grande, para guantes
desk-see = Ver
desk-came-beats = Unos { $value } latidos por minuto ({ $name })
desk-came-tape = Se esperan unos { $value } cm; esto es el percentil { $number }
desk-came-fits = Lo encontrado concuerda con: { $value }
desk-hands = Tomar al bebé en el dibujo
desk-tools = Poner en el dibujo
desk-tool-head = Cabeza
desk-tool-breech = Nalgas
desk-tool-back = Espalda
desk-tool-heart = Latido
desk-tool-limbs = Miembros
desk-put = { $name }: { $value }
desk-stage-hint = Arrastre la cabeza, las nalgas y la espalda a donde las encontraron sus manos. La izquierda de ella está a la derecha; el borde cercano del aro es su frente.
desk-stage-off = Visto así, o mientras hay palabras pendientes, los hallazgos se tocan en los pasos.
desk-ways = ¿Qué encontraron sus manos?
desk-way-down = Cabeza abajo
desk-way-up = Nalgas abajo
desk-way-back = espalda { $value }
desk-recorded = Anotado por usted: { $value }.
desk-in-place-of = En lugar de: { $value }.
desk-usual = Visita habitual
desk-usual-hint = Todo esto se anota como hallado por usted. Quite lo que no preguntó, vio o palpó.
desk-usual-so = Lo encontré así: anotarlo
desk-show-her = Mostrárselo a ella
desk-her-dark = Oscuro
desk-her-share = Hoja a su teléfono
desk-her-alt = Cómo está el bebé { $value }, como lo ve ella al mirar hacia abajo.
desk-skip-line = A la línea
desk-skip-print = A imprimir
desk-begin = Empezar
desk-came = Lo que resulta
desk-bar = Dónde está y cómo seguir
desk-step-back = Un paso atrás
desk-step-next = Paso siguiente
desk-all-steps = todos los pasos
desk-missing-count = faltan { $count }
desk-missing = Sin anotar: { $value }
desk-none-missing = Aquí no falta nada
desk-remarks-count = Avisos { $count }
desk-to-picture = Dibujo
desk-to-take = Imprimir, guardar
desk-unread = Palabras que aún no se han tomado
desk-not-read = Aún no leído: { $name }: «{ $value }».
desk-not-taken = No tomado: { $name }: «{ $value }».
desk-held = El dibujo es el anterior; no se imprime ni se guarda nada hasta que esto se resuelva.
desk-go-there = Ir allí
desk-drop-words = Dejar fuera estas palabras
desk-replaces = Esta línea deja fuera lo anotado
desk-replaces-hint = Esto cambiaría o dejaría de estar anotado:
desk-replace = Vale solo la línea
desk-keep-both = Conservarlo y añadir la línea
desk-replaced = Cambiado por la línea: { $value }.
desk-today = Hoy, { $value }
desk-sure = Seguro
desk-take-out = Lo anotado, para quitarlo
desk-clear-finding = Borrar: { $name }
desk-pressing = { $name } ({ $count }): { $value }
desk-same-woman = ¿La misma mujer?
desk-same-woman-hint = Una hoja muestra a una sola mujer. Mire cada archivo y su fecha:
desk-same-woman-so = La misma mujer: hacer la hoja
desk-this-visit = Esta visita
desk-no-date = sin fecha
desk-not-her-baby = Enseñanza: no es su bebé
desk-print = Imprimir
desk-print-by-button = Desde aquí no se imprime nada. Vuelva y pulse «Imprimir la hoja para la familia», o Ctrl+P: primero se repasan los lados.

desk-one-line = En una línea
desk-one-line-hint = Anótelo como en una historia inglesa, por ejemplo 37+0 LOA 2/5 palp, SFH 35. Lo anotado está siempre aquí como una línea.
desk-fill = Leer la línea

desk-step-weeks = Semanas
desk-hint-weeks = De cuánto está ella hoy.
desk-step-says = Ella dice
desk-hint-says = Pregunte antes de tocar.
desk-step-look = Mirar
desk-hint-look = El abdomen de ella como usted lo ve.
desk-step-grip-1 = Palpación del fondo
desk-hint-grip-1 = Las dos manos en el fondo uterino: ¿qué hay ahí?
desk-step-grip-2 = Palpación lateral
desk-hint-grip-2 = Una mano a cada lado: ¿dónde está la espalda, dónde brazos y piernas? Izquierda y derecha son las de ella.
desk-step-grip-3 = Palpación pélvica: qué se presenta
desk-hint-grip-3 = Una mano sobre el pubis: ¿qué hay ahí?
desk-step-grip-4 = Palpación pélvica: cuánto ha descendido
desk-hint-grip-4 = Mirando hacia los pies de ella, los dedos bajan junto a la cabeza: ¿cuánto queda sobre el estrecho superior?
desk-step-listen = Escuchar
desk-hint-listen = Dónde se oye mejor el latido, y a qué ritmo va. Tome el pulso de ella mientras tanto.
desk-step-tape = Cinta
desk-hint-tape = Desde el borde superior del pubis hasta el fondo uterino, siguiendo la curva, la cara sin números hacia arriba.
desk-step-wrote = Posición como la anotaría
desk-hint-wrote = Lo que usted concluye. Se compara con los hallazgos; por sí solo basta para un dibujo.

desk-steps = Pasos de la exploración
desk-more = Más que anotar
desk-from-dates = Mejor por fechas
desk-not-examined = sin explorar
desk-clear = Borrar
desk-unsure = Dudoso
desk-reason = Por qué
desk-known-by = Cómo se sabe
desk-by-hand = con las manos
desk-by-scan = por ecografía
desk-by-vaginal = por tacto vaginal
desk-scan-weeks = Semanas en la ecografía
desk-expected = Se espera: { $value }.
desk-suggested = ¿Quería decir { $value }?
desk-remove = Quitar { $value }
desk-none-written = nada anotado
desk-baby = Bebé { $number }
desk-of-baby = Bebé { $number }: { $value }
desk-two-babies = Dos bebés
desk-one-baby = Hay un solo bebé
desk-one-baby-hint = Se quitaría lo registrado del bebé 2:
desk-one-baby-so = Quitar el bebé 2

desk-pole-at-fundus = En el fondo uterino
desk-pole-at-brim = Sobre el pubis
desk-pole-breech = Las nalgas
desk-pole-head = La cabeza

desk-her-left = Izquierda de ella
desk-her-right = Derecha de ella
desk-middle = Centro
desk-side = Lado
desk-level = Altura
desk-in-fields = O en palabras o en cm
desk-another-place = Otro lugar
desk-place = de ella: { $value }
desk-tap-where = { $name }: toque dónde, en el abdomen de ella
desk-which-place = ¿Cuál de estos lugares?
desk-outline-hint = Toque dónde. La izquierda de ella está a la derecha.
desk-show-palpation = Ver cómo se hace
desk-outline-alt = El abdomen de ella, visto por alguien que está frente a ella: la izquierda de ella está a la derecha del dibujo. Aún no hay nada anotado.
desk-back-side-front = hacia delante
desk-back-side-lateral = justo hacia el lado
desk-back-side-towards-her-spine = hacia la columna de ella
desk-back-side-only = solo el lado
desk-back-front = hacia delante
desk-back-towards-her-spine = hacia la columna de ella
desk-back-towards-her-ribs = hacia las costillas de ella (atravesado)
desk-back-towards-her-feet = hacia los pies de ella (atravesado)
desk-fifths = { $value } palpables sobre el estrecho superior
desk-weeks = semanas
desk-weeks-of = { $number } semanas
desk-days = días
desk-and-days = +{ $number } días

desk-count-length = Cuánto tiempo contar
desk-count-seconds = { $seconds } s
desk-count-start = Empezar en un latido
desk-count-tap = Toque en cada latido: { $count } hasta ahora
desk-count-left = quedan { $seconds } s
desk-count-stop = Parar, no guardar

desk-key-weeks = Semanas
desk-formal-weeks = edad gestacional
desk-key-visit = Fecha de esta visita
desk-key-due = Fecha probable de parto
desk-key-last-period = Primer día de la última regla
desk-key-cycle = Días de su ciclo
desk-key-scan = Ecografía temprana
desk-form-scan = semanas y fecha: 12+3 on 2025-09-20
desk-key-movements = Movimientos
desk-key-reports = Ella refiere
desk-key-denies = Preguntado, y no
desk-key-births-before = Paridad
desk-formal-births-before = partos anteriores
desk-key-operations = Operaciones del útero
desk-key-womb-cut = Cómo se cortó el útero
desk-key-placenta = Placenta
desk-key-shape = Forma
desk-key-scars = Cicatrices en la piel
desk-key-skin = Marcas de la piel
desk-key-posture = Cómo está acostada
desk-key-womb = Tono
desk-formal-womb = cómo se nota el útero
desk-key-fundus = Altura del fondo uterino
desk-formal-fundus = fondo uterino
desk-key-water = Líquido amniótico, a la palpación
desk-formal-water = líquido
desk-key-lumps = Miomas
desk-key-breech = Polo podálico
desk-formal-breech = dónde están las nalgas
desk-key-back = Espalda
desk-key-limbs = Brazos o piernas
desk-key-dip-at-navel = Un hundimiento en el ombligo
desk-key-moved-under-hands = Se movió bajo sus manos
desk-key-head = Dónde está la cabeza
desk-key-attitude = Actitud
desk-formal-attitude = cómo está flexionada la cabeza
desk-key-legs = Cómo están las piernas
desk-key-head-above-brim = Quintos palpables
desk-formal-head-above-brim = cabeza sobre el estrecho superior
desk-key-prominence = Prominencia cefálica
desk-formal-prominence = lado en que sobresale la cabeza
desk-key-descent = Descenso en palabras
desk-key-heart = Dónde se oye el latido
desk-key-heart-counts = Contar los latidos
desk-form-heart-counts = o escriba: 36 in 15 s; 35 in 15 s
desk-key-heart-rate = Frecuencia
desk-form-heart-rate = latidos por minuto: 142, o 140-146
desk-key-heart-with = Escuchado con
desk-key-pulse = Pulso de ella
desk-form-pulse = latidos por minuto
desk-key-heart-rhythm = Ritmo
desk-key-heart-rise = Frecuencia más alta al moverse
desk-form-heart-rise = latidos por minuto
desk-key-fundal-height = Altura uterina
desk-formal-fundal-height = del pubis al fondo uterino
desk-form-fundal-height = por ejemplo 35
desk-key-earlier-tapes = Cintas anteriores
desk-form-earlier-tapes = semanas y longitud: 32+0 30 cm; 34+0 32 cm
desk-key-girth = Contorno a la altura del ombligo
desk-form-girth = por ejemplo 98
desk-key-navel = Ombligo sobre el pubis
desk-form-navel = por ejemplo 18
desk-key-tape-unfit = Por qué la cinta no sirve
desk-key-weight-by-hand = Peso calculado con las manos
desk-form-weight-by-hand = por ejemplo 3.2, o 2.9 kg to 3.2 kg
desk-key-weight-by-scan = Peso por una ecografía anterior
desk-key-position = Posición
desk-key-lie = Situación
desk-key-presentation = Presentación
desk-key-gravida = Embarazos
desk-key-rupture-before = Rotura uterina anterior
desk-key-placentas = Placentas de los gemelos
desk-key-rhesus-d = Antígeno D
desk-key-group-b-strep = Estreptococo B
desk-key-labour = De parto
desk-key-hours-since-broken = Horas desde que rompió aguas
desk-key-water-colour = Color del líquido
desk-key-consent = Consentimiento
desk-key-comfort = Comodidad
desk-key-build = Complexión
desk-key-scar-feel = Cómo se siente la cicatriz
desk-key-muscle-gap = Separación de los rectos
desk-key-hernia = Hernia
desk-key-bladder = Vejiga
desk-key-temperature = Temperatura
desk-key-blood-pressure = Tensión arterial
desk-key-breathing = Respiraciones por minuto
desk-key-urine-protein = Proteínas en la orina
desk-key-contractions-in-ten = Contracciones en diez minutos
desk-key-contraction-length = Cuánto duran
desk-key-contraction-strength = Su intensidad
desk-key-tone-at-rest = El útero entre contracciones
desk-key-tender-at = Dónde duele el útero
desk-key-height-for-dates = Altura según las fechas
desk-key-fundus-feels = Cómo se siente en el fondo
desk-key-brim-feels = Cómo se siente sobre el estrecho superior
desk-key-ballottable = Cabeza que pelotea
desk-key-overlaps-pubic-bone = La cabeza cabalga sobre el pubis
desk-key-found-by-vagina = Encontrado por la vagina
desk-key-station = Altura de la presentación
desk-key-size = Tamaño para las fechas
desk-key-kicks = Dónde se sienten las patadas
desk-key-hiccups = Hipo
desk-key-unstable-lie = Situación inestable
desk-key-turning-tried = Versión externa
desk-key-heart-also = También se oye
desk-key-heart-quality = Cómo suena
desk-key-heart-slows = Se enlentece
desk-key-heart-by = Quién escuchó
desk-key-heart-and-pulse = Junto con el pulso de ella
desk-key-note = Nota
desk-form-note = palabras libres solo para la historia; sin nombres

desk-word-right-flank = flanco derecho
desk-word-right = derecha
desk-word-middle = centro
desk-word-left = izquierda
desk-word-left-flank = flanco izquierdo
desk-word-fundus = fondo uterino
desk-word-above-navel = por encima del ombligo
desk-word-at-navel = a la altura del ombligo
desk-word-below-navel = por debajo del ombligo
desk-word-above-pubic-bone = sobre el pubis
desk-word-heard = oído, sin anotar dónde

desk-how-it-lies = Cómo está colocado el bebé
desk-at-weeks = a las { $value } semanas
desk-no-weeks = Semanas no indicadas.
desk-nothing-yet = Aún no hay nada anotado. Lo que usted encuentre aparece aquí.
desk-remarks = Avisos
desk-no-remarks = Nada de lo anotado aquí cumple una regla de actuar ya ni se contradice. Eso no descarta nada.
desk-in-the-file = En el archivo
desk-picture-alt = Dibujo de cómo está colocado el bebé. { $value } Los lados son los de ella: la izquierda de ella está escrita en el dibujo.
desk-no-picture = Sin dibujo: { $value }
desk-look = Cómo se ve el dibujo
desk-style = Estilo
desk-style-soft = luz y sombra
desk-style-line = tinta sobre blanco
desk-style-sketch = sello para la historia
desk-view = Visto
desk-view-facing = por alguien frente a ella
desk-view-hers = por ella, mirando hacia abajo
desk-labels = Palabras en el dibujo
desk-labels-few = pocas
desk-labels-all = todas
desk-labels-numbered = números con una clave
desk-labels-none = solo los lados
desk-palette = Piel
desk-palette-neutral = aguada de tinta

desk-take = Imprimir, guardar, transmitir
desk-take-print = Imprimir la hoja para la familia
desk-take-print-hint = antes se leen los lados en voz alta
desk-take-page = Hoja para la familia
desk-take-phone = Hoja para la familia, en su teléfono
desk-take-guide = Guía para dibujar sobre la piel de ella
desk-guide-minutes = Dibujo
desk-guide-10 = todo, unos diez minutos
desk-guide-1 = una línea para cada parte, un minuto
desk-guide-hand = La mano que dibuja
desk-guide-right = derecha
desk-guide-left = izquierda
desk-growth = La cinta a lo largo de las visitas
desk-growth-hint = Varias visitas guardadas como archivos:
desk-draft-language = { $name } (borrador)
desk-page-language = Hoja para la familia en
desk-page-language-same = el mismo idioma
desk-take-slip = Hojita para la historia
desk-take-note = Nota para la historia
desk-take-handover = Traspaso
desk-take-copy = para copiar
desk-take-exam = Esta visita como archivo
desk-take-exam-hint = para volver a abrirla aquí
desk-take-picture = Dibujo
desk-take-record = Registro
desk-take-fhir = FHIR para la historia
desk-take-share = FHIR para compartir: sin fecha, sin palabras libres
desk-saved = Guardado: { $file }
desk-saved-english = Guardado, en inglés: { $file }
desk-copy = Copiar
desk-copied = Copiado.

desk-read-back = Antes de que salga de esta página: compruebe los lados en ella
desk-no-sides = No hay ningún lado anotado.
desk-it-is-so = Los lados son correctos: seguir
desk-in-hand = Esto ya se está atendiendo; haga la hoja de todos modos.
desk-no-page = No se hace ninguna hoja para la familia mientras los hallazgos no puedan ser ciertos a la vez. Vuelva a palpar y cambie lo que estaba mal.
desk-no-page-unheard = No se hace ninguna hoja para la familia mientras no se haya oído el corazón. Siga antes su protocolo local para un corazón que no se oye; cuando se haya oído, anote dónde y con qué.
desk-new-title = ¿Una nueva visita?
desk-new-hint = Todo lo encontrado en esta mujer se borra de la página. Lo que no haya guardado se pierde.
desk-new-so = Borrar y empezar
desk-blank = La página se dejó 20 minutos
desk-blank-hint = Lo que había en ella está tapado. ¿Sigue siendo la misma mujer?
desk-same-visit = La misma mujer, seguir
desk-mend = Este archivo no se puede usar como está
desk-mend-text = El texto del archivo, para corregirlo aquí
desk-mend-again = Probar otra vez
desk-line = Línea { $number }:
desk-fault = Un fallo en esta página
desk-fault-hint = Lo que usted anotó se conserva. Cópielo por seguridad y siga; si vuelve a ocurrir, no repita lo último que hizo.
desk-fault-text = Lo que usted anotó

desk-settings = Esta página y su centro
desk-language = Idioma
desk-paper = Papel
desk-theme = Claro u oscuro
desk-theme-device = como el aparato
desk-theme-light = claro
desk-theme-dark = oscuro
desk-clinic = Su centro, para la hoja de la familia
desk-clinic-name = Su nombre
desk-clinic-labour-ward = Sala de partos, de día y de noche
desk-clinic-day = De día
desk-clinic-night = De noche
desk-clinic-emergency = Número de emergencias
desk-keep = Guardar estos ajustes en este aparato; nunca un hallazgo
desk-forget-all = Olvidar todo
desk-forgotten = Todo está olvidado.
desk-cannot-keep = Este navegador no guarda nada.

desk-dial-turn = Girar al bebé
desk-dial-lie = Inclinar al bebé
desk-dial-fifths = Cabeza sobre el estrecho superior
desk-dial-weeks = Semanas
desk-head-low = Cabeza abajo
desk-head-high = Cabeza arriba
desk-full-screen = Pantalla completa
desk-back-one = { $name }: un paso atrás
desk-on-one = { $name }: un paso adelante
desk-lie-across-right = atravesado, cabeza a la derecha de ella
desk-lie-slant-right = inclinado, cabeza a la derecha de ella
desk-lie-lengthwise = a lo largo
desk-lie-slant-left = inclinado, cabeza a la izquierda de ella
desk-lie-across-left = atravesado, cabeza a la izquierda de ella
desk-teach-alt = Un dibujo para enseñar, sin palabras.
