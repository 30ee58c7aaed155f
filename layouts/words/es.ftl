# Español. The words of the family page, for any country; "usted". A draft: see `language-signed`.
# "La izquierda de usted", never "su izquierda": that could be read as the baby's.

# no, until a native midwife or doctor has read every message against the English; then yes, and who and when in a comment.
language-signed = no
language-name = español
draft-mark = BORRADOR
draft-note = Borrador: ninguna matrona ni médico de lengua materna ha revisado este texto. El texto válido es el inglés.

decimal-sign = ,

her-left = Izquierda de ella
her-right = Derecha de ella
your-left = Izquierda de usted
your-right = Derecha de usted

label-of-baby = bebé { $number }: { $part }
label-unsure = probablemente { $part }
label-not-felt = { $part }, sin palpar
label-doubt = { $part }, dudoso
label-head = cabeza
label-back = espalda
label-back-behind = espalda, detrás
label-bottom = nalgas
label-back-not-felt = espalda sin palpar
label-limbs-felt = brazos o piernas
label-heart = latido oído aquí
label-heart-family = latido oído aquí
label-fundus-cm = parte alta del útero, { $cm } cm
label-fundus-expected = parte alta del útero, esperada
label-fundus-level = parte alta del útero
label-fifths = { $fifths } palpables sobre el estrecho superior
label-brim = estrecho superior
label-pubic-bone = pubis
label-navel = ombligo
label-navel-level = altura del ombligo
label-womb = útero
label-handbooks = altura habitual en los manuales a las { $weeks } semanas
label-scar = cicatriz
label-small-scars = cicatrices pequeñas
label-lump = bulto (mioma)
told-lump = anillo: bulto (mioma)
told-limbs = anillo pequeño: brazos o piernas
told-brim = línea larga discontinua: estrecho superior

family-title-one = Cómo está colocado su bebé
family-title-more = Cómo están sus bebés
family-name = Nombre ____
family-felt-on = Palpado con las manos el ____
family-felt-on-at = Palpado el ____ a las { $age }
family-noted-on = Anotado el ____
family-noted-on-at = Anotado el ____ a las { $age }
family-weeks = { $weeks } semanas
family-weeks-day = { $weeks } semanas y 1 día
family-weeks-days = { $weeks } semanas y { $days } días

family-baby-one = Su bebé
family-baby-number = El bebé { $number }

family-lie-head-down = { $baby } está con la cabeza abajo.
family-lie-head-down-probably = { $baby } está probablemente con la cabeza abajo.
family-lie-bottom-down = { $baby } está con las nalgas abajo.
family-lie-bottom-down-probably = { $baby } está probablemente con las nalgas abajo.
family-lie-across = { $baby } está atravesado en el vientre.
family-lie-across-probably = { $baby } está probablemente atravesado en el vientre.
family-lie-slanting = { $baby } está inclinado en el vientre.
family-lie-slanting-probably = { $baby } está probablemente inclinado en el vientre.
family-lie-not-told = Con las manos no se supo cómo está su bebé.
family-lie-not-told-number = Con las manos no se supo cómo está el bebé { $number }.
family-lie-not-felt = No se palpó cómo está su bebé.
family-lie-not-felt-number = No se palpó cómo está el bebé { $number }.
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
family-back-side-square = La espalda está justo al lado, a la { $side } de usted.
family-back-side-square-probably = La espalda está probablemente justo al lado, a la { $side } de usted.
family-back-front = La espalda está hacia delante.
family-back-front-probably = La espalda está probablemente hacia delante.
family-back-spine = La espalda está hacia la columna de usted.
family-back-spine-probably = La espalda está probablemente hacia la columna de usted.
family-back-ribs = La espalda está hacia las costillas de usted.
family-back-ribs-probably = La espalda está probablemente hacia las costillas de usted.
family-back-feet = La espalda está hacia los pies de usted.
family-back-feet-probably = La espalda está probablemente hacia los pies de usted.
family-back-not-told = Con las manos no se supo dónde está la espalda.
family-back-not-felt = No se palpó la espalda.
family-back-not-noted = No se anotó dónde está la espalda.

family-notice-legs-right = Puede notar las piernas arriba, a la derecha de usted.
family-notice-legs-left = Puede notar las piernas arriba, a la izquierda de usted.
family-notice-legs-high = Puede notar las piernas arriba.
family-notice-limbs-front = Puede notar brazos y piernas por delante.
family-notice-head-high = Puede notar la cabeza: algo duro y redondo cerca de las costillas.
family-notice-head-left = Puede notar la cabeza: algo duro y redondo a la izquierda de usted.
family-notice-head-right = Puede notar la cabeza: algo duro y redondo a la derecha de usted.

family-today = Esto vale solo para hoy. La próxima vez puede ser distinto.
family-next-title = Para hablar con su matrona
family-next-scan = Una ecografía, para estar más seguros
family-next-turn = Girar al bebé, con manos expertas
family-next-operation = Una operación programada (cesárea)
family-next-bottom-first = Un parto planeado, de nalgas
family-next-stay = Una estancia en el hospital hasta el parto
family-next-stay-later = Una estancia en el hospital desde las 37 semanas
family-next-not-told = Pregunte a su matrona por una ecografía.
family-next-twins = Pregunte a su matrona qué supone esto para el parto.

family-over = Sigue al dorso: cuándo ir enseguida y cuándo llamar.
family-hold = Ponga esta hoja sobre el vientre, con el dibujo hacia fuera. Así coinciden los lados.
family-hands = Esto se palpó con las manos. No es una ecografía, y las manos se pueden equivocar.
family-hands-scan = Una parte se palpó con las manos y otra se vio en una ecografía. El dibujo no es una ecografía. Las manos se pueden equivocar.
family-scan = Esto se vio en una ecografía. El dibujo no es una ecografía, y puede estar equivocado.
family-written = Esto es lo que se anotó ese día. El dibujo no es una ecografía, y puede estar equivocado.
family-turn = Los bebés se mueven y giran. Esta hoja muestra un solo día. Cuando reciba una nueva, no use más esta.
family-artist = La cara, los brazos y las piernas son idea del dibujante.
family-none-drawn = No se dibuja al bebé, porque no se sabe cómo está.

family-heart = El corazón pequeño muestra dónde su matrona oyó el latido ese día.
family-listen = Alguien puede poner ahí la oreja y escuchar.
family-listen-limits = Oír un latido no dice cómo está su bebé. No oírlo es frecuente. Si algo le preocupa, llame.

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

family-moves-title-one = ¿Su bebé se mueve menos, o no como siempre?
family-moves-title-more = ¿Sus bebés se mueven menos, o no como siempre?
family-moves-call = Llame ahora, de día o de noche.
family-moves-wait = No espere al día siguiente.
family-moves-late = Los bebés no se mueven menos al acercarse el parto.
family-moves-early = ¿No ha notado nada a las 24 semanas? Llame para una revisión.
family-moves-monitor = No use un aparato de latidos para comprobarlo. Puede que oiga el pulso de usted.

family-urgent-waters = Si rompe aguas (sale líquido) o empieza el parto (contracciones): llame y venga enseguida.
family-cord = Si nota el cordón, como una cuerda blanda, entre las piernas: llame al número de emergencias.
family-cord-number = Si nota el cordón, como una cuerda blanda, entre las piernas: llame al { $number }.

family-cord-why = ¿Por qué? El cordón, como una cuerda blanda, puede salir primero. Si lo nota entre las piernas: llame al número de emergencias.
family-cord-why-number = ¿Por qué? El cordón, como una cuerda blanda, puede salir primero. Si lo nota entre las piernas: llame al { $number }.

family-go-title = Venga ahora, o llame a emergencias
family-go-title-number = Venga ahora, o llame al { $number }
family-go-bleeding = Sangre por la vagina
family-go-pain = Dolor fuerte de vientre que no se va
family-go-breath = Dolor de pecho, o dificultad para respirar
family-go-fits = Convulsiones: sacudidas que no puede parar
family-go-cord = El cordón, como una cuerda blanda, entre las piernas
family-go-faint = Desmayo, o el corazón acelerado
family-go-harm = Ideas de hacerse daño
family-go-green = Aguas (el líquido que sale) verdes o con sangre

family-call-title = Llame hoy, de día o de noche
family-call-waters = Rompe aguas: sale líquido por la vagina
family-call-labour = Empieza el parto: contracciones fuertes y seguidas
family-call-tightenings = Contracciones repetidas antes de las 37 semanas
family-call-itching = Picor, sobre todo en manos o pies
family-call-head = Dolor de cabeza fuerte o que dura, o cambios en la vista. Si son las dos cosas, venga ahora.
family-call-fever = Fiebre de 38 °C o más. Si además está sin fuerzas, venga ahora.
family-call-swelling = Cara o manos muy hinchadas
family-call-vomit = Vómitos que no paran
family-call-tired = Demasiado cansancio
family-call-leg = Dolor o hinchazón en una pierna

family-use = Un dibujo de lo que se encontró. No sustituye la revisión de su matrona o médico. handspan { $version }

sign-phone = Un teléfono
sign-day-night = El sol y la luna
sign-moves = Un bebé que se mueve
sign-blood = Una gota oscura
sign-waters = Una gota clara sobre agua
sign-stained-waters = Una gota con manchas
sign-belly-pain = Un vientre con un rayo de dolor
sign-chest = Un pecho con un rayo de dolor
sign-faint = Alguien que se ha caído
sign-fits = Alguien en el suelo que tiembla
sign-dark-thoughts = Una cara triste con una nube oscura
sign-cord = Una cuerda entre dos piernas
sign-itch = Una mano que pica
sign-headache = Una cara triste con un rayo de dolor
sign-fever = Un termómetro
sign-swelling = Una cara hinchada
sign-vomit = Alguien sobre un cuenco
sign-tired = Alguien en la cama
sign-leg = Una pierna con un rayo de dolor
sign-tightening = Un vientre que se pone duro
sign-go-in = Una flecha hacia una puerta

colouring-title = Un dibujo para colorear
colouring-by = Coloreado por ____
