# Português, the family page alone, in words of Portugal that are understood in Brazil. A draft: see `language-signed`.
# A side is "da mãe", never "seu lado": that could be read as the baby's. Who cares for her stands in brackets, since a clinic's own
# word may be of either gender.

# no, until a native midwife or doctor has read every message against the English; then yes, and who and when in a comment.
language-signed = no
language-name = português
language-of-exams = no
draft-mark = RASCUNHO
draft-note = RASCUNHO: nenhuma parteira nem médico de língua materna reviu este texto. O texto válido é o inglês.

decimal-sign = ,

## Sides and parts

her-left = Esquerda da mãe
her-right = Direita da mãe
your-left = Esquerda da mãe
your-right = Direita da mãe

## On the picture

label-of-baby = bebé { $number }: { $part }
label-baby = bebé { $number }
label-unsure = { $part }, provável
label-not-felt = { $part }, lugar não conhecido
label-doubt = { $part }, duvidoso
label-head = cabeça
label-back = costas
label-back-behind = costas, atrás
label-bottom = nádegas
label-legs = pernas
label-back-not-felt = costas não encontradas
label-limbs-felt = braços ou pernas
label-heart = batimento ouvido aqui
label-heart-family = batimento ouvido aqui
label-fundus-cm = topo do útero, { $cm } cm
label-fundus-expected = topo do útero, esperado
label-fundus-level = topo do útero
label-fifths = { $fifths } palpáveis acima do estreito superior
label-brim = estreito superior
label-pubic-bone = osso púbico
label-navel = umbigo
label-navel-level = altura do umbigo
label-womb = útero
label-handbooks = altura habitual nos manuais às { $weeks } semanas
label-scar = cicatriz
label-small-scars = cicatrizes pequenas
label-lump = nódulo (mioma)
told-lump = anel: nódulo (mioma)
told-limbs = anel pequeno: braços ou pernas
told-brim = linha longa interrompida: estreito superior

## The family page

family-title-one = Como está o seu bebé
family-title-more = Como estão os seus bebés
family-name = Nome ou alcunha ____
family-carer = parteira
family-midwife = Quem a acompanha ({ family-carer }) ____
family-words = Algumas palavras para si ____
family-felt-on = Palpado com as mãos em ____
family-felt-on-at = Palpado com as mãos em ____ às { $age }
family-noted-on = Anotado em ____
family-noted-on-at = Anotado em ____ às { $age }
family-felt-at = Palpado com as mãos às { $age }
family-noted-at = Anotado às { $age }
family-side = Lado { $number } de { $sides }
family-date = { $day } de { $month } de { $year }
family-month-1 = janeiro
family-month-2 = fevereiro
family-month-3 = março
family-month-4 = abril
family-month-5 = maio
family-month-6 = junho
family-month-7 = julho
family-month-8 = agosto
family-month-9 = setembro
family-month-10 = outubro
family-month-11 = novembro
family-month-12 = dezembro
family-weeks = { $weeks } semanas
family-weeks-day = { $weeks } semanas e 1 dia
family-weeks-days = { $weeks } semanas e { $days } dias

family-baby-one = o seu bebé
family-baby-number = o bebé { $number }
family-how-hands = sentiu-se com as mãos ({ family-carer })
family-how-hands-scan = pelas mãos e por uma ecografia
family-how-scan = por uma ecografia
family-how-written = pelo que foi anotado

family-depth-head-free = A cabeça ainda está acima da bacia da mãe (os ossos das ancas).
family-depth-head-brim = A cabeça está à entrada da bacia da mãe (os ossos das ancas).
family-depth-head-deep = A cabeça já está dentro da bacia da mãe (os ossos das ancas).
family-depth-bottom-free = As nádegas ainda estão acima da bacia da mãe (os ossos das ancas).
family-depth-bottom-brim = As nádegas estão à entrada da bacia da mãe (os ossos das ancas).
family-depth-bottom-deep = As nádegas já estão dentro da bacia da mãe (os ossos das ancas).
family-depth-unsure = Não é certo até onde desceu.
family-heart-at = O coração ouviu-se (veja o círculo pequeno) { $place }.
family-heart-heard = O coração ouviu-se.
family-heart-unsure = Esse lugar não é certo.
family-heart-left = à esquerda da mãe
family-heart-right = à direita da mãe
family-heart-far-left = muito à esquerda da mãe
family-heart-far-right = muito à direita da mãe
family-heart-middle = ao meio
family-heart-top = no cimo do útero
family-heart-above = acima do umbigo
family-heart-level = à altura do umbigo
family-heart-below = abaixo do umbigo
family-heart-little-above = um pouco acima do umbigo
family-heart-little-below = um pouco abaixo do umbigo
family-heart-low = muito em baixo
family-heart-bone = logo acima do osso do púbis

family-kind-bottom = Muitos bebés estão com as nádegas para baixo antes das 36 semanas. Perto do parto, são 3 ou 4 em cada 100.
family-kind-bottom-late = Perto do parto, 3 ou 4 em cada 100 bebés estão com as nádegas para baixo. Não é por nada que tenha feito.
family-kind-changes = A posição do seu bebé ainda pode mudar. Não é por nada que tenha feito.
family-kind-plan = É preciso um plano. Pergunte hoje mesmo quem a vai ver.
family-kind-come = Até que lhe digam outra coisa: se as águas rebentarem (sai líquido) ou o parto começar, ligue e venha logo.
# Source: RCOG-50
family-kind-cord = Raramente, o cordão pode descer primeiro.
# Source: RCOG-BREECH
family-kind-head = Perto do parto, a maioria dos bebés está de cabeça para baixo.

family-lie-head-down = Hoje { $baby } está de cabeça para baixo, { $how }.
family-lie-head-down-probably = Hoje { $baby } está provavelmente de cabeça para baixo, { $how }.
family-lie-bottom-down = Hoje { $baby } está com as nádegas para baixo, { $how }.
family-lie-bottom-down-probably = Hoje { $baby } está provavelmente com as nádegas para baixo, { $how }.
family-lie-across = Hoje { $baby } está atravessado na barriga, { $how }.
family-lie-across-probably = Hoje { $baby } está provavelmente atravessado na barriga, { $how }.
family-lie-slanting = Hoje { $baby } está inclinado na barriga, { $how }.
family-lie-slanting-probably = Hoje { $baby } está provavelmente inclinado na barriga, { $how }.
family-lie-not-told = Com as mãos não se soube como está o seu bebé.
family-lie-not-told-number = Com as mãos não se soube como está o bebé { $number }.
family-lie-not-felt = Não se procurou com as mãos como está o seu bebé.
family-lie-not-felt-number = Não se procurou com as mãos como está o bebé { $number }.
family-lie-early = Ainda é cedo para sentir como está o seu bebé.
family-early-picture = O desenho mostra até onde o útero já cresceu.

family-head-left = A cabeça está à esquerda da mãe.
family-head-right = A cabeça está à direita da mãe.
family-head-low-left = A cabeça está em baixo, à esquerda da mãe.
family-head-low-right = A cabeça está em baixo, à direita da mãe.
family-head-high-left = A cabeça está em cima, à esquerda da mãe.
family-head-high-right = A cabeça está em cima, à direita da mãe.
family-head-low = A cabeça está em baixo.
family-head-high = A cabeça está em cima.

family-side-left = esquerda
family-side-right = direita
family-back-side = As costas estão à { $side } da mãe.
family-back-side-probably = As costas estão provavelmente à { $side } da mãe.
family-back-side-front = As costas estão à { $side } da mãe, viradas para a frente.
family-back-side-front-probably = As costas estão provavelmente à { $side } da mãe, viradas para a frente.
family-back-side-spine = As costas estão à { $side } da mãe, viradas para a coluna da mãe.
family-back-side-spine-probably = As costas estão provavelmente à { $side } da mãe, viradas para a coluna da mãe.
family-back-side-square = As costas estão mesmo de lado, à { $side } da mãe.
family-back-side-square-probably = As costas estão provavelmente mesmo de lado, à { $side } da mãe.
family-back-front = As costas estão viradas para a frente.
family-back-front-probably = As costas estão provavelmente viradas para a frente.
family-back-spine = As costas estão viradas para a coluna da mãe.
family-back-spine-probably = As costas estão provavelmente viradas para a coluna da mãe.
family-back-ribs = As costas estão viradas para as costelas da mãe.
family-back-ribs-probably = As costas estão provavelmente viradas para as costelas da mãe.
family-back-feet = As costas estão viradas para os pés da mãe.
family-back-feet-probably = As costas estão provavelmente viradas para os pés da mãe.
family-back-not-told = Com as mãos não se soube onde estão as costas.
family-back-not-felt = Não se procuraram as costas com as mãos.
family-back-not-noted = Não foi anotado onde estão as costas.

family-notice-legs-right = Talvez sinta as pernas em cima, à direita da mãe.
family-notice-legs-left = Talvez sinta as pernas em cima, à esquerda da mãe.
family-notice-legs-high = Talvez sinta as pernas em cima.
family-notice-limbs-front = Talvez sinta braços e pernas à frente.
family-notice-head-high = Talvez sinta a cabeça: algo duro e redondo perto das costelas.
family-notice-head-left = Talvez sinta a cabeça: algo duro e redondo à esquerda da mãe.
family-notice-head-right = Talvez sinta a cabeça: algo duro e redondo à direita da mãe.
family-notice-head-low-left = Talvez sinta a cabeça: algo duro e redondo em baixo, à esquerda da mãe.
family-notice-head-low-right = Talvez sinta a cabeça: algo duro e redondo em baixo, à direita da mãe.
family-notice-head-high-left = Talvez sinta a cabeça: algo duro e redondo em cima, à esquerda da mãe.
family-notice-head-high-right = Talvez sinta a cabeça: algo duro e redondo em cima, à direita da mãe.
family-notice-bottom-high = Talvez sinta as nádegas: algo mole e redondo perto das costelas.
family-title-next = O que vem agora

family-today = Isto vale só para hoje. Na próxima vez pode ser diferente.
family-next-later = Pergunte quando volta a ser palpada. Se às 36 semanas o bebé ainda estiver assim, farão um plano em conjunto.
family-next-title = Fale sobre isto com quem a acompanha ({ family-carer }). A escolha é sua.
family-next-scan = Uma ecografia, para ter mais certeza
family-next-turn = Virar o bebé por fora, por mãos treinadas
family-next-operation = Uma operação marcada (cesariana)
family-next-bottom-first = Um parto planeado, com as nádegas primeiro
family-next-stay = Ficar no hospital até ao parto
family-next-stay-later = Ficar no hospital, a partir das 37 semanas
family-next-not-told = Pergunte a quem a acompanha ({ family-carer }) por uma ecografia.
family-next-twins = Pergunte a quem a acompanha ({ family-carer }) o que isto pode querer dizer para o parto.
family-next-again = Na próxima consulta pode-se palpar de novo. Pergunte o que quiser.

family-over = Vire a folha: quando ligar e a quem.
family-over-phone = Mais abaixo: quando ligar e a quem.
family-hold = Ponha esta folha sobre a barriga, com o desenho para fora. Assim os lados coincidem.
family-sure-title = É certo?
family-sure-felt = Sentido com as mãos: { $parts }.
family-sure-heard = Ouvido: { $parts }.
family-sure-seen = Visto numa ecografia: { $parts }.
family-sure-felt-unsure = Sentido, mas sem certeza: { $parts }.
family-sure-heard-unsure = Ouvido, mas sem certeza do lugar: { $parts }.
family-sure-not-told = Com as mãos não se soube: { $parts }.
family-sure-not-found = Procurado e não encontrado: { $parts }.
family-sure-not-felt = Não se procurou com as mãos: { $parts }.
family-part-head = cabeça
family-part-bottom = nádegas
family-part-back = costas
family-part-limbs = braços ou pernas
family-part-heart = coração
family-hands = As mãos podem enganar-se, e isto não é uma ecografia.
family-hands-scan = Uma parte foi sentida com as mãos e outra foi vista numa ecografia. O desenho não é uma ecografia. As mãos podem enganar-se.
family-scan = Isto foi visto numa ecografia. O desenho não é uma ecografia, e pode estar errado.
family-written = Isto é o que foi anotado nesse dia. O desenho não é uma ecografia, e pode estar errado.
family-turn = Guarde esta folha se quiser. Mostra um só dia. Os bebés viram-se: mais tarde não se fie nela.
family-artist = A cara, os braços e as pernas são ideia de quem desenhou.
family-artist-limbs-felt = A cara, as mãos e os pés são ideia de quem desenhou.
family-none-drawn = Não se desenha o bebé, porque não se sabe como está.
family-drawn-smaller = O seu bebé está desenhado mais pequeno, por falta de espaço. O desenho não mede o seu bebé.
family-drawn-smaller-number = O bebé { $number } está desenhado mais pequeno, por falta de espaço. O desenho não mede o bebé.
family-drawn-rounds = A cabeça e as nádegas estão desenhadas como dois círculos. O desenho não mede o seu bebé.
family-drawn-rounds-number = A cabeça e as nádegas do bebé { $number } estão desenhadas como dois círculos. O desenho não mede o bebé.

family-heart = O círculo pequeno mostra onde, na barriga, se ouviu o coração bater. É um ponto da pele, não o coração. Se os movimentos mudarem, ligue; não escute primeiro.
family-listen = Alguém pode pôr aí o ouvido e escutar.
family-listen-limits = Ouvir o coração bater não chega para ficar descansada. Não o ouvir é frequente. Se algo a preocupa, ligue.

family-night-blank = À noite ____
family-where-blank = Onde ____
family-phone-other = Não é urgente? { $purpose }: { $number }
family-numbers-title = Números desse dia
family-number-tape = Do osso em baixo, à frente, até ao topo do útero: { $cm } cm.
family-number-rate = Batimentos do coração num minuto: { $rate }.
family-number-rate-of = Batimentos do coração do bebé { $number } num minuto: { $rate }.
family-worried = Se algo a preocupa, ligue, mesmo que não esteja nesta folha. Diga que está grávida.
family-clinic-blank = Ligue para ____
family-number-blank = Número ____
family-phone-always = De dia ou de noite: { $number }
family-phone-day = De dia: { $number }
family-phone-night = À noite: { $number }
family-emergency = Emergência: { $number }
family-emergency-blank = Emergência ____

family-moves-title-one = O seu bebé mexe-se menos, ou de outra maneira?
family-moves-title-more = Algum dos seus bebés se mexe menos, ou de outra maneira?
family-moves-call = Ligue já, a qualquer hora.
family-moves-keep-one = Continue atenta aos movimentos do seu bebé, até ao parto.
family-moves-keep-more = Continue atenta aos movimentos de cada bebé, até ao parto.
family-moves-now = Se forem menos ou diferentes, ligue já, de dia ou de noite.
family-moves-now-number = Se forem menos ou diferentes, ligue já para o { $number }, de dia ou de noite.
family-heavy-title = Se a vida lhe pesa demais
family-heavy = Sente-se triste ou com medo? Diga-o a quem cuida de si ({ family-carer }): há ajuda. Pensa em fazer mal a si própria? Pode dizê-lo.
family-heavy-now = Se acha que o pode fazer agora: ligue para o número de emergência.
family-heavy-now-number = Se acha que o pode fazer agora: ligue para o { $number }.
family-heavy-else = Se agora não está em perigo, ligue para o número da clínica, a qualquer hora.
family-heavy-else-number = Se agora não está em perigo, ligue para o { $number }, a qualquer hora.
family-moves-wait = Não espere pelo dia seguinte.
family-moves-late = Os bebés não se mexem menos perto do parto.
family-moves-early = Nada sentido até às 24 semanas? Ligue para ser vista.
family-moves-monitor = Não use um aparelho de ouvir o coração para verificar. Pode estar a ouvir o pulso da mãe.

family-urgent-waters = As águas rebentam (sai líquido) ou o parto começa (contrações): venha logo.
family-urgent-why = Com um bebé assim, não espere que as contrações sejam fortes.
family-urgent-soon = Não espere que as contrações sejam fortes.
family-cord = O cordão, como uma corda mole, que se sente ou se vê entre as pernas.
family-cord-why = O cordão, como uma corda mole, que se sente ou se vê entre as pernas. Pode sair primeiro quando o bebé está atravessado ou inclinado.
family-cord-kneel = Com o cordão: ligue e ponha-se de joelhos, com o peito em baixo e as ancas em cima.
family-cord-lie = Ou deite-se sobre o lado esquerdo, com as ancas em almofadas. Não empurre o cordão para dentro.
family-go-title = Ligue já para o número de emergência
family-go-title-number = Ligue já para o { $number }
family-go-bleeding = Muito sangue: corre ou ensopa a roupa
family-go-breath = Dor no peito, ou dificuldade em respirar
family-go-fits = Convulsões: tremores que não consegue parar
family-go-collapse = Desmaia ou cai sem forças
family-come-title = Ligue já e venha
family-come-title-where = Ligue já e venha: { $where }
family-come-title-number = Ligue já para o { $number } e venha
family-come-title-where-number = Ligue já para o { $number } e venha: { $where }
family-come-bleeding = Qualquer sangue pela vagina
family-come-pain = Dor forte na barriga que não passa
family-come-head = Dor de cabeça forte ou que não passa, ou alterações na vista: é preciso medir-lhe a tensão
family-come-fever = Febre de 38 °C (100,4 °F) ou mais
family-come-green = Águas (o líquido que sai) verdes ou com sangue
family-come-waters = As águas rebentam: sai líquido pela vagina
family-come-labour = O parto começa, contrações que se repetem: ligue primeiro e pergunte quando deve sair de casa.
# Source: common practice
family-come-labour-later = A partir das 37 semanas, quando o parto começar: ligue primeiro e pergunte quando deve sair de casa.
family-come-tightenings = Contrações que se repetem antes das 37 semanas
family-come-swelling = Cara ou mãos muito inchadas
family-come-heart = O seu próprio coração muito acelerado
family-call-title = Ligue hoje
family-call-title-number = Ligue hoje para o { $number }
family-call-itching = Comichão (coceira), sobretudo nas mãos ou nos pés: uma análise ao sangue pode mostrar porquê
family-call-vomit = Vómitos que não param
family-call-tired = Cansaço extremo, muito mais do que o habitual
family-call-leg = Dor ou inchaço numa perna: pode ser um coágulo
family-use = Esta folha diz o que se encontrou. Não substitui a observação por quem a acompanha ({ family-carer }) ou por um médico.

sign-phone = Um telefone
sign-ambulance = Uma ambulância
sign-phone-today = Um telefone e o sol
sign-day-night = O sol e a lua
sign-moves = Um bebé que se mexe
sign-hand-on-belly = Uma mão sobre uma barriga de grávida
sign-blood = Uma gota escura
sign-heavy-blood = Gotas escuras sobre uma poça
sign-waters = Uma gota clara sobre água
sign-stained-waters = Uma gota com manchas
sign-belly-pain = Uma barriga de grávida com um raio de dor
sign-chest = Um peito com um raio de dor
sign-heart-racing = Um coração que bate depressa
sign-faint = Alguém que caiu
sign-fits = Alguém no chão que treme
sign-dark-thoughts = Uma cara triste com uma nuvem escura
sign-cord = Uma corda entre duas pernas
sign-kneel = Alguém de joelhos, com o peito em baixo e as ancas em cima
sign-left-side = Alguém deitado sobre o lado esquerdo, com as ancas numa almofada
sign-itch = Uma mão que faz comichão
sign-headache = Uma cara triste com um raio de dor
sign-fever = Um termómetro
sign-swelling = Uma cara inchada
sign-vomit = Alguém sobre uma taça
sign-tired = Alguém deitado na cama
sign-leg = Uma perna com um raio de dor
sign-tightening = Uma barriga de grávida que fica dura
sign-clock = Um relógio
sign-go-in = Uma seta para dentro de uma porta

colouring-title = Um desenho para colorir
colouring-by = Colorido por ____
