# English (British spelling). Every sentence handspan prints about an exam.
# Sides are the mother's. Write "your left" to the family, "her left" to the midwife.

# The language that the others are held against: it is never a draft.
language-signed = yes
language-name = English
# Said on the page that stands beside a draft. $language is that language's own name.
draft-beside = The page beside this is a draft in { $language }: nobody trained has checked it. This page counts.
# The same of a text that stands above.
draft-above = The text above is a draft in { $language }: nobody trained has checked it. This text counts.

# Between whole and broken part of a number on the family page.
decimal-sign = .

## Sides and parts

her-left = Her left
her-right = Her right
your-left = Your left
your-right = Your right
# On a cut in the midline, seen from her left.
her-front = Her front
her-back = Her back

## On the picture

# $part is one of the labels, $number the baby's number in the file.
label-of-baby = baby { $number }: { $part }
label-baby = baby { $number }
# $part is head, back or bottom of a baby that the hands were not sure of.
label-unsure = probably { $part }
label-not-felt = { $part }, place not known
label-doubt = { $part }, unsure
label-head = head
label-back = back
# The back lies behind the baby, towards her spine.
label-back-behind = back, behind
label-bottom = bottom
# Where she is told that she may notice them.
label-legs = legs
label-back-not-felt = back not known
label-limbs-felt = limbs felt
# The mark shows where it was heard, not the organ.
label-heart = heart heard here
label-heart-family = heartbeat heard here
label-fundus-cm = top of the womb { $cm } cm
label-fundus-expected = top of the womb, expected
label-fundus-level = top of the womb
label-fifths = { $fifths } palpable above the brim
label-brim = brim
label-pubic-bone = pubic bone
below-small-fontanelle = small fontanelle
below-large-fontanelle = large fontanelle
below-frontal-suture = frontal suture
below-brow-ridges = brow ridges
below-sagittal-suture = sagittal suture
below-occiput = occiput
below-chin = chin
below-mouth = mouth
below-nose = nose
below-baby-sacrum = sacrum of the baby
below-cleft = cleft
below-anus = anus
below-thigh = thigh
below-coccyx = coccyx
below-cervix = cervix
below-straight = { $position }, head held straight
below-how = Seen from below, from her feet, as she lies on her back: her front is at the top, her left at the right of the picture. A picture for teaching from published measures, drawn larger than the others.
label-axis = axis of the pelvis
label-spine = spine
label-sacrum = sacrum
label-wall = wall of the abdomen
label-navel = navel
label-navel-level = level of the navel
label-womb = womb
# $weeks are the weeks that the handbooks give this level for.
label-handbooks = handbooks put its top here at { $weeks } weeks
label-scar = scar
# Those of keyhole operations: one name for all.
label-small-scars = small scars
label-lump = lump (fibroid)

picture-title = How the baby lies
picture-caption = Felt by hand, not a scan. Face, arms and legs are the artist's. Sides are the mother's.
drawing-weeks-not-given = Weeks not given: drawn as at 38 weeks.
drawing-womb-only = Before 26 weeks only the womb and its level are drawn.
drawing-baby-not-told = Head and breech are not known: no baby is drawn.
drawing-back-not-felt = Where the back lies is not known: head and bottom are drawn as rounds.
drawing-legs-not-felt = How the legs lie is not known: drawn folded.
drawing-foot-not-told = A foot leads; which one is not told: both legs are drawn folded.
told-lump = ring: lump (fibroid)
told-limbs = small ring: limbs felt
told-brim = long broken line: brim
drawing-heart-not-heard = The heart was not heard.
drawing-back-side-only = Of the back only the side is known: drawn square to it.
drawing-unsure = The findings are unsure.
drawing-disagree = The findings disagree: the drawing follows head, bottom and back.
drawing-face-leads = The head is bent back and the face leads: from the front it is seen from its edge.
drawing-brow-leads = The head is half bent back and the brow leads.
drawing-second-is-lower = Baby 2 lies lower than baby 1: numbered as in the file.
drawing-smaller = The womb is lower than a baby of these weeks takes: drawn smaller, to lie under its top.
drawing-does-not-fit = The womb is too low for a baby of these weeks: head and bottom are drawn as rounds.

## Teaching plates

# Titles of the sheets.
plate-set-occiput = The eight positions of a flexed head
plate-set-sacrum = The eight positions of a breech
plate-set-chin = The eight face positions
plate-set-brow = The eight brow positions
plate-set-breech = How the legs of a breech lie
plate-set-transverse = Transverse and oblique lie
plate-set-attitudes = Attitude, and the presenting part
plate-set-fifths = Engagement in fifths
plate-set-levels = The fundus, from 12 to 40 weeks
plate-set-grips = What each palpation feels
plate-set-listening = Where to listen
plate-set-turning = From { $from } to { $to }
plate-set-wall = The abdomen by hand, step by step
plate-set-twins = Two babies
plate-set-below = From below: what leads, and how it is turned
plate-set-palettes = The palettes
plate-own = Side by side
# One of several sheets.
plate-part = { $title } ({ $number } of { $count })
plate-foot = For teaching, by handspan { $version }: no real person. Sides are the mother's: her left is at the right of each picture from the front. Face, arms and legs are the artist's.
plate-cut = Sagittal section, seen from her left: her left side faces you, her back is at the right.
plate-fifths-cut = { $fifths } palpable above the brim, sagittal section
plate-frame = { $number }
plate-frame-end = { $number }: { $position }
plate-grip-1 = Fundal palpation: both hands round the fundus
plate-grip-2 = Lateral palpation: a hand on each side
plate-grip-3 = Pelvic palpation, one hand: above the pubic bone
plate-grip-4 = Pelvic palpation, two hands: fingertips down both sides of the head
# What a hand feels under a ring, on the sheet of the grips.
feel-head = hard and round: the head
feel-head-above-brim = the head, down to the brim
feel-back = broad and firm: the back
feel-side = the side of the trunk
feel-front = the front of the trunk
feel-bottom = wide and softer: the breech
feel-limbs = small parts that move: the limbs
feel-trunk = the trunk
feel-nothing = no part of the baby
shown-first = the first
shown-second = the second
shown-listen = listen here
shown-listen-faint = listen here: fainter
shown-cm = { $cm } cm
shown-tape = { $cm } cm, laid over the curve
# A diameter, measured over the skin of the drawn baby. $handbook is bone, at term.
told-diameter = From { $name }: { $cm } cm over the skin; handbooks print { $handbook } cm at term, of bone
diameter-suboccipitobregmatic = below the occiput to the anterior fontanelle (suboccipitobregmatic)
diameter-occipitofrontal = the occiput to between the brows (occipitofrontal)
diameter-mentovertical = the chin to the vertex (mentovertical)
diameter-submentobregmatic = under the chin to the anterior fontanelle (submentobregmatic)
plate-palette-neutral = neutral
plate-palette = skin tone { $number }
plate-week = { $weeks } weeks
plate-flexed = flexed: the chin on the chest
plate-deflexed = deflexed: the head held straight
plate-brow = brow: the head partly bent back
plate-face = face: the head bent right back
plate-frank = frank: both legs up along the body
plate-complete = complete: both knees bent
plate-footling-left = footling: the left foot comes first
plate-footling-right = footling: the right foot comes first
plate-footling-both = footling: both feet come first
plate-twins-head-head = both cephalic
plate-twins-head-bottom = first cephalic, second breech
plate-twins-bottom-head = first breech, second cephalic
plate-twins-bottom-bottom = both breech
plate-twins-head-across = first cephalic, second transverse
plate-twins-bottom-across = first breech, second transverse

# The wall sheet. Points without a source at its foot are common practice.
wall-before = Ask how she is and how the baby moves. Her bladder is empty, she lies tilted a little to her left, your hands are warm. Say what you do, and stop when she asks. Left and right are hers.
wall-look = 1 Look
wall-look-shape = The shape: long, wide or slanting. A wide womb: think of a baby that lies across.
wall-look-scars = Scars: ask what each is from. A scar on the skin does not tell how the womb was cut.
wall-look-moves = Movements that you can see.
wall-grip-1 = 2 Fundal palpation
wall-grip-1-how = Both hands round the top: what lies there?
wall-grip-1-head = Hard, round, and it nods by itself: a head.
wall-grip-1-bottom = Wider, softer, and the body moves with it: a breech.
wall-grip-2 = 3 Lateral palpation
wall-grip-2-how = A hand on each side: one holds still, the other feels. Then change.
wall-grip-2-what = Broad and firm: the back. Small parts that move: the limbs.
wall-grip-2-both = Limbs on both sides: the back may lie towards her spine.
wall-grip-3 = 4 Pelvic palpation, one hand
wall-grip-3-how = One hand, thumb on one side, fingers on the other. Gently: this grip can hurt.
wall-grip-3-what = What lies there? Does it move freely, or is it held?
wall-grip-3-again = The same end as at the fundus: feel both again.
wall-grip-4 = 5 Pelvic palpation, two hands
wall-grip-4-how = Face her feet. Fingertips slide down both sides of the head, as far as the brim.
wall-grip-4-fifths = How many fifths are palpable above the brim? 2/5 or less: engaged. Said of a head only.
wall-grip-4-out = Where the fingers stop first: the cephalic prominence.
wall-listen = 6 Listen
wall-listen-where = Where the back comes nearest to the skin. A place supports a position; it does not prove one.
wall-listen-pulse = Feel her pulse at the same time.
wall-listen-count = Count for a whole minute. Usual from 20 weeks: 110 to 160.
wall-listen-outside = 100 to 109, or 161 to 180: listen again for a full minute, a hand on her pulse. Still so, or with another sign: it cannot wait.
wall-measure = 7 Measure
wall-measure-top = Find the top of the womb, working down from the breastbone.
wall-measure-tape = From the upper border of the pubic bone over the curve to the top, numbers underneath.
wall-measure-weeks = From 24 weeks: about as many cm as weeks, 2 more or less; and set it beside her earlier tapes. No tape counts when the baby lies across, with twins, fibroids or much water.
wall-now = Act now, whatever the hands find
wall-now-movements = Movements fewer, changed or none.
wall-now-not-heard = From 24 weeks: the heart is not heard.
wall-now-rate = A rate under 100 or over 180.
wall-now-pulse = Her own pulse within 15 of the rate heard: it may be hers.
wall-now-bleeding = Bleeding.
wall-now-pain = Constant pain; a womb hard and tender; pain over a womb's scar.
wall-now-waters = Waters broken, and the baby is not head down or the head is free.
wall-now-help = Do not finish the examination first: get help, as your local guidance says.
wall-sources = Sources: fifths, pulse and tape: Theron, Maternal Care (Bettercare). Grips and levels: Klein, Miller, Thomson, A Book for Midwives (Hesperian). Weeks and tape: WHO. Rates: NICHD 2008; WHO. The rest is common practice. From the hands, not a scan; it does not diagnose, and does not replace local guidance, a clinician's judgement or a scan.

## What was understood
## `handspan check` says back what it read. $value is in the words of the exam language.

check-weeks = { $file }, at { $weeks } weeks
check-no-weeks = { $file }, weeks not given
check-baby = Baby { $baby }
check-not-examined = Not recorded: { $names }.
check-nothing-left = Nothing that is usual at these weeks was left out.

value-unsure = { $value }, unsure
value-scan = { $value }, by scan
value-scan-at = { $value }, by scan { $when }
value-vaginal = { $value }, by vaginal examination

## The words of an exam
# How findings are said after a colon or in a list: `word-` and the word of the exam language. In English they are those words
# themselves. Whoever reads a language other than English sees these; visit files are written in English words in every language.

# Whether visit files are written in the words of this language: then keys and codes are said as they are written there.
language-of-exams = yes

# States.
word-not-felt = not felt
word-not-heard = not heard
word-none = none
word-not-listened = not listened
word-not-asked = not asked
word-could-not-tell = could not tell
word-yes = yes
word-no = no

# Places: the sides are hers.
word-left-flank = left flank
word-left = left
word-middle = middle
word-right = right
word-right-flank = right flank
word-fundus = fundus
word-above-navel = above navel
word-at-navel = at navel
word-below-navel = below navel
word-iliac-fossa = iliac fossa
word-above-pubic-bone = above pubic bone
word-left-iliac-fossa = left iliac fossa
word-right-iliac-fossa = right iliac fossa
word-heard = heard

# The back.
word-front = front
word-lateral = lateral
word-towards-her-spine = towards her spine
word-towards-her-ribs = towards her ribs
word-towards-her-feet = towards her feet
word-left-front = left front
word-left-lateral = left lateral
word-left-towards-her-spine = left, towards her spine
word-right-front = right front
word-right-lateral = right lateral
word-right-towards-her-spine = right, towards her spine

# Head, legs, descent.
word-free = free
word-at-the-brim = at the brim
word-deep = deep
word-engaged = engaged
word-limb-side = limb side
word-back-side = back side
word-level = level
word-flexed = flexed
word-deflexed = deflexed
word-brow = brow
word-face = face
word-frank = frank
word-complete = complete
word-footling-left = footling left
word-footling-right = footling right
word-footling-both = footling both
word-footling = footling

# Heart.
word-pinard-horn = Pinard horn
word-fetoscope = fetoscope
word-doppler = Doppler
word-regular = regular
word-irregular = irregular

# Lie and what leads.
word-longitudinal = longitudinal
word-oblique = oblique
word-transverse = transverse
word-cephalic = cephalic
word-breech = breech
word-shoulder = shoulder

# What she says, and her history.
word-usual = usual
word-fewer = fewer
word-changed = changed
word-felt = felt
word-not-felt-yet = not felt yet
word-bleeding = bleeding
word-waters-broken = waters broken
word-itching = itching
word-constant-pain = constant pain
word-tightenings = tightenings
word-scar-pain = scar pain
word-headache = headache
word-changes-in-sight = changes in sight
word-fever = fever
word-swelling = swelling
word-fits = fits
word-chest-pain = chest pain
word-trouble-breathing = trouble breathing
word-caesarean = caesarean
word-myomectomy = myomectomy
word-low-transverse = low transverse
word-vertical = vertical
word-not-known = not known
word-rear = rear
word-high = high
word-low = low

# Looking and feeling.
word-flat = flat
word-left-tilt = left tilt
word-right-tilt = right tilt
word-half-sitting = half sitting
word-sitting = sitting
word-long = long
word-wide = wide
word-slanting = slanting
word-midline = midline
word-right-lower = right lower
word-keyhole = keyhole
word-linea-nigra = linea nigra
word-striae = striae
word-rash = rash
word-soft = soft
word-tightening = tightening
word-hard = hard
word-tender = tender
word-much = much
word-little = little
word-trace = trace
word-negative = negative
word-positive = positive
word-found = found
word-not-found = not found
word-slight = slight
word-average = average
word-large = large
word-small = small
word-comfortable = comfortable
word-uncomfortable = uncomfortable
word-in-pain = in pain
word-given = given
word-declined = declined
word-empty = empty
word-full = full
word-keloid = keloid
word-healed = healed
word-navel = navel
word-groin = groin
word-scar = scar
word-mild = mild
word-moderate = moderate
word-strong = strong
word-does-not-soften = does not soften
word-clear = clear
word-pink = pink
word-bloody = bloody
word-green = green
word-foul = foul
word-not-in-labour = not in labour
word-early-labour = early labour
word-in-labour = in labour
word-one = one
word-two = two
word-equal-to-dates = equal to dates
word-below-dates = below dates
word-above-dates = above dates
word-round = round
word-ballottable = ballottable
word-broad = broad
word-distant = distant
word-muffled = muffled
word-after-contractions = after contractions
word-with-contractions = with contractions
word-at-other-times = at other times
word-midwife = midwife
word-doctor = doctor
word-student = student
word-two-people = two people
word-different = different
word-same = same
word-cord = cord
word-hand = hand
word-foot = foot
word-vertex = vertex
word-turned = turned
word-did-not-turn = did not turn
word-she-declined = she declined
word-tense = tense
word-board-like = board-like
word-adequate = adequate
word-a-tender-womb = a tender womb
word-foul-water = foul water
word-fast-pulse = a pulse of 100 or more
word-fast-breathing = breathing of 21 or more
word-fast-heart-of-the-baby = a heart of the baby over 160
word-protein-in-the-urine = protein in the urine
word-fewer-movements = movements that are not as usual
word-t-shaped = T-shaped
word-j-shaped = J-shaped
word-dipping = dipping
word-fixed = fixed
word-regular-tightenings = regular tightenings
word-practice-tightenings = practice tightenings
word-severe-headache = severe headache
word-pain-under-ribs = pain under ribs
word-vomiting = vomiting
word-burning-urine = burning urine
word-loin-pain = loin pain
word-show = show
word-collapse = collapse
word-cold-and-clammy = cold and clammy
word-faint = faint
word-faint-lying-flat = faint lying flat
word-blow-or-fall = blow or fall
word-swollen-calf = swollen calf
word-violence = violence
word-thoughts-of-self-harm = thoughts of self-harm

# The tape, the top of the womb.
word-bmi-35-or-more = BMI 35 or more
word-fibroids = fibroids
word-much-water = much water
word-twins = twins
word-not-longitudinal = not longitudinal
word-not-above-pubic-bone = not above pubic bone
word-just-above-pubic-bone = just above pubic bone
word-halfway-to-navel = halfway to navel
word-halfway-to-xiphoid = halfway to xiphoid
word-xiphoid = xiphoid
word-at-pubic-bone = at pubic bone

# With numbers.
word-could-not-tell-why = could not tell ({ $reason })
word-cm = { $cm } cm
word-kg = { $kg } kg
word-celsius = { $celsius } °C
word-hours = { $hours } h
word-seconds = { $seconds } s
word-fingers = { $fingers ->
    [1] 1 finger
   *[other] { $fingers } fingers
 }
word-range = { $low } to { $high }
word-left-cm = left { $cm } cm
word-right-cm = right { $cm } cm
word-above-navel-cm = { $cm } cm above navel
word-below-navel-cm = { $cm } cm below navel
word-above-pubic-bone-cm = { $cm } cm above pubic bone
word-fingers-above-navel = { $fingers ->
    [1] 1 finger
   *[other] { $fingers } fingers
 } above navel
word-fingers-below-navel = { $fingers ->
    [1] 1 finger
   *[other] { $fingers } fingers
 } below navel
word-fingers-below-xiphoid = { $fingers ->
    [1] 1 finger
   *[other] { $fingers } fingers
 } below xiphoid
word-fingers-above-pubic-bone = { $fingers ->
    [1] 1 finger
   *[other] { $fingers } fingers
 } above pubic bone
word-count = { $beats } in { $seconds } s
# A tape at earlier weeks; in a list of findings, and in a sentence.
word-earlier-tape = { $weeks } { $cm } cm
word-tape-at = { $cm } cm at { $weeks }
word-weight-at = { $weight } ({ $weeks })
word-scan-on = { $weeks } on { $date }

# Positions, spelled out.
position-oa = direct occipito-anterior
position-loa = left occipito-anterior
position-lot = left occipito-transverse
position-lop = left occipito-posterior
position-op = direct occipito-posterior
position-rop = right occipito-posterior
position-rot = right occipito-transverse
position-roa = right occipito-anterior
position-sa = direct sacro-anterior
position-lsa = left sacro-anterior
position-lst = left sacro-transverse
position-lsp = left sacro-posterior
position-sp = direct sacro-posterior
position-rsp = right sacro-posterior
position-rst = right sacro-transverse
position-rsa = right sacro-anterior
position-ma = direct mento-anterior
position-lma = left mento-anterior
position-lmt = left mento-transverse
position-lmp = left mento-posterior
position-mp = direct mento-posterior
position-rmp = right mento-posterior
position-rmt = right mento-transverse
position-rma = right mento-anterior
position-fa = direct fronto-anterior
position-lfa = left fronto-anterior
position-lft = left fronto-transverse
position-lfp = left fronto-posterior
position-fp = direct fronto-posterior
position-rfp = right fronto-posterior
position-rft = right fronto-transverse
position-rfa = right fronto-anterior
position-rada = right acromion dorso-anterior
position-radp = right acromion dorso-posterior
position-lada = left acromion dorso-anterior
position-ladp = left acromion dorso-posterior

## Findings

group-dates = Dates
group-says = Reported
group-looked = Inspection
group-womb = Uterus
group-tape = Fundal height
group-grip-1 = Fundal palpation
group-grip-2 = Lateral palpation
group-grip-3 = Pelvic (one hand)
group-grip-4 = Pelvic (two hands)
group-vaginal = By the vagina
group-baby = Baby
group-heart = Fetal heart
group-weight = Weight
group-concluded = Written
group-note = Note

found-weeks = Weeks: { $value }.
found-visit = Visit on { $value }.
found-due = Due on { $value }.
found-last-period = Last period from { $value }.
found-cycle = Cycle of { $value } days.
found-scan = Dated by scan: { $value }.
found-note = { $value }

found-movements = Movements: { $value }.
found-reports = Reports: { $value }.
found-denies = Asked, none reported: { $value }.
found-births-before = Previous births: { $value }.
found-operations = Previous uterine surgery: { $value }.
found-womb-cut = Uterine incision: { $value }.
found-placenta = Placenta: { $value }.
found-posture = Posture: { $value }.
found-shape = Shape: { $value }.
found-scars = Scars on the skin: { $value }.
found-skin = Skin: { $value }.
found-pulse = Mother's pulse: { $value }.
found-womb = Uterus: { $value }.
found-water = Liquor: { $value }.
found-lumps = Fibroids: { $value }.
found-fundus = Fundus: { $value }.
found-fundal-height = Measured: { $value }.
found-earlier-tapes = Earlier: { $value }.
found-girth = Girth at the navel: { $value }.
found-navel = Navel above the pubic bone: { $value }.
found-tape-unfit = Not to be plotted: { $value }.
found-gravida = Pregnancies: { $value }.
found-rupture-before = Earlier rupture of the womb: { $value }.
found-placentas = Placentas: { $value }.
found-rhesus-d = D antigen: { $value }.
found-group-b-strep = Group B strep: { $value }.
found-labour = Labour: { $value }.
found-hours-since-broken = Waters broken for: { $value }.
found-water-colour = Water that has come: { $value }.
found-consent = Consent: { $value }.
found-comfort = Comfort: { $value }.
found-build = Build: { $value }.
found-scar-feel = The scar is: { $value }.
found-muscle-gap = Gap of the midline muscles: { $value }.
found-hernia = Hernia: { $value }.
found-bladder = Bladder: { $value }.
found-temperature = Temperature: { $value }.
found-blood-pressure = Blood pressure: { $value }.
found-breathing = Breaths a minute: { $value }.
found-urine-protein = Protein in the urine: { $value }.
found-contractions-in-ten = Contractions in ten minutes: { $value }.
found-contraction-length = Each lasts: { $value }.
found-contraction-strength = Strength: { $value }.
found-tone-at-rest = Between contractions: { $value }.
found-tender-at = Tender at: { $value }.
found-height-for-dates = Height for dates: { $value }.

found-breech = Breech at: { $value }.
found-back = Back: { $value }.
found-limbs = Limbs: { $value }.
found-dip-at-navel = Dip at the navel: { $value }.
found-head = Head at: { $value }.
found-head-above-brim = Engagement: { $value } palpable above the brim.
# A state, such as "could not tell (thick wall)".
found-head-above-brim-state = Engagement: { $value }.
found-descent = Presenting part: { $value }.
found-prominence = Cephalic prominence: { $value }.
found-attitude = Attitude: { $value }.
found-legs = Legs: { $value }.
found-moved-under-hands = Moved under the hands: { $value }.
found-heart = Heard: { $value }.
found-heart-state = Heart { $value }.
found-heart-with = With: { $value }.
found-heart-counts = Counted: { $value }, a mean of { $mean } beats a minute.
found-heart-counts-state = Counted: { $value }.
found-heart-rate = Rate: { $value } beats a minute.
found-heart-rate-state = Rate: { $value }.
found-heart-rise = Highest on movement: { $value }.
found-heart-rhythm = Rhythm: { $value }.
found-weight-by-hand = By hand: { $value }.
found-weight-by-scan = By an earlier scan: { $value }.
found-fundus-feels = In the fundus it feels: { $value }.
found-brim-feels = Above the brim it feels: { $value }.
found-ballottable = Head ballottable: { $value }.
found-overlaps-pubic-bone = Head overlaps the pubic bone: { $value }.
found-found-by-vagina = Found by the vagina: { $value }.
found-station = Station: { $value }.
found-size = Size for dates: { $value }.
found-kicks = Kicks felt: { $value }.
found-hiccups = Hiccups: { $value }.
found-unstable-lie = Unstable lie: { $value }.
found-turning-tried = Turning by hand: { $value }.
found-heart-also = Heard also: { $value }.
found-heart-quality = Sound: { $value }.
found-heart-slows = Slowing: { $value }.
found-heart-by = Listened: { $value }.
found-heart-and-pulse = Together with her pulse: { $value }.
found-lie = Lie: { $value }.
found-presentation = Presentation: { $value }.
found-position = Position: { $value }.

name-movements = movements
name-fundal-height = fundal height
name-breech = breech
name-back = back
name-limbs = limbs
name-head = head
name-descent = engagement
name-heart = fetal heart
name-heart-rate = fetal heart rate

conclude-cephalic = Cephalic presentation
conclude-face = Face presentation
conclude-brow = Brow presentation
conclude-breech = Breech presentation
conclude-longitudinal = Longitudinal lie, presentation not known
conclude-transverse = Transverse lie
conclude-transverse-head-left = Transverse lie, head to her left
conclude-transverse-head-right = Transverse lie, head to her right
conclude-shoulder = Transverse lie, shoulder presentation
conclude-shoulder-head-left = Transverse lie, shoulder presentation, head to her left
conclude-shoulder-head-right = Transverse lie, shoulder presentation, head to her right
conclude-oblique = Oblique lie
conclude-oblique-head-low-left = Oblique lie, head low on her left
conclude-oblique-head-low-right = Oblique lie, head low on her right
conclude-oblique-head-up-left = Oblique lie, head high on her left, breech low on the other side
conclude-oblique-head-up-right = Oblique lie, head high on her right, breech low on the other side
conclude-nothing = Lie and presentation do not follow from what is recorded
conclude-nothing-head-low = The head is low; lie and presentation do not follow from what is recorded
conclude-nothing-head-up = The head is high; lie and presentation do not follow from what is recorded

back-left-front = back to her left, anterior
back-left-lateral = back to her left, lateral
back-left-spine = back to her left, posterior
back-left = back to her left
back-right-front = back to her right, anterior
back-right-lateral = back to her right, lateral
back-right-spine = back to her right, posterior
back-right = back to her right
back-front = back anterior
back-spine = back posterior (to her spine)
back-ribs = back towards her ribs
back-feet = back towards her feet

# The parts above, put together: with a position, without, and without a back.
conclude-position = { $lie }, { $back }: { $position } ({ $code }).
conclude-position-words = { $lie }, { $back }: { $position }.
conclude-back = { $lie }, { $back }.
conclude-nothing-at-all = { $lie }.
conclude-no-back = { $lie }; where the back lies is not known.
conclude-no-turn = No position is named: only the side of the back is known.
conclude-unsure = Unsure: a finding this rests on is marked with a question mark.
conclude-engaged = Engaged: { $fifths } palpable above the brim.
conclude-not-engaged = Not engaged: { $fifths } palpable above the brim.
conclude-engaged-said = Written as engaged; no fifths recorded.
conclude-head-free = Not engaged: the head is free.

# What is reckoned. $by: what a due date rests on. $apart: one of numbers-apart.
check-reckoned = Calculated
check-version = handspan { $version }, rules of { $ledger }.
numbers-due = Due { $due }, by { $by ->
    [scan] the scan
    [due] the date given
    [last-period] 280 days from the last period
   *[weeks] the weeks given
 }{ $cycle ->
    [none] {""}
   *[other] {" "}and a cycle of { $cycle } days
 }.
numbers-due-period = 280 days from the last period{ $cycle ->
    [none] {""}
   *[other] {" "}and a cycle of { $cycle } days
 }: { $due }, { $apart }.
numbers-due-calendar = By the calendar rule (Naegele), which is not used: { $due }, { $apart }.
numbers-apart-same = the same day
numbers-apart-later = { $days ->
    [1] 1 day
   *[other] { $days } days
 } later
numbers-apart-earlier = { $days ->
    [1] 1 day
   *[other] { $days } days
 } earlier
# Also in --json. $direction: below, above or equal.
numbers-weeks-rule = { $direction ->
    [equal] equal to weeks
    [below] { $difference } cm below weeks
   *[above] { $difference } cm above weeks
 }, { $within ->
    [yes] inside
   *[no] outside
 } the limit of { $limit }
numbers-tape-weeks = Centimetres as weeks: { $rule } cm.
numbers-tape-weeks-none = Centimetres as weeks: from 24+0 only.
numbers-tape-standard = INTERGROWTH-21st: mean { $mean } cm, SD { $sd } cm; z { $z }, centile { $centile }.
numbers-tape-standard-none = INTERGROWTH-21st: from 16+0 to 42+6 only.
numbers-tape-no-weeks = Not compared with weeks or centiles: the weeks are not given.
numbers-tape-unfit = Not compared with weeks or centiles, and no weight from it: { $why }.
numbers-landmark = { $same ->
    [yes] Handbooks print for these weeks: { $low }
   *[no] Handbooks print for these weeks: { $low } to { $high }
 }, give or take 2 weeks; women differ more.
numbers-heart = Mean { $mean } beats a minute; the counts allow { $low } to { $high } (steps of { $steps }).
numbers-heart-rise = On movement up to { $rise }: noted, and it settles nothing.
numbers-grams = { $grams } g ({ $pounds } lb { $ounces } oz)
numbers-hand = By hand: { $weight }.
numbers-hand-range = By hand: { $low } to { $high }.
numbers-johnson = Johnson: { $low } to { $high } g (n { $first } to { $last }).
numbers-dare = Dare, with the girth: { $grams } g.
numbers-buchmann = Buchmann: { $grams } g, made for labour at term.{ $large ->
    [yes] {" "}In labour a tape of 40 cm or more makes over 4000 g possible: plan for it by your local guidance.
   *[no] {""}
 }
numbers-weights-apart = These weights lie { $grams } g apart: none of them settles how heavy the baby is. Where it matters, have a scan by your local guidance.
numbers-rough = Of weights worked out from the fundal height, 4 to 7 in 10 come within a tenth of the birth weight.
numbers-curves = Curves
numbers-curves-of = For reference, weights by scan at { $weeks }, not by hand or tape.
numbers-curves-intergrowth = INTERGROWTH-21st: P10 { $low }, P50 { $middle }, P90 { $high } g.
numbers-curves-intergrowth-none = INTERGROWTH-21st: from 22+0 to 40+0 only.
numbers-curves-hadlock = Hadlock: P10 { $low }, P50 { $middle }, P90 { $high } g.
numbers-curves-hadlock-none = Hadlock: from 10+0 to 40+0 only.
numbers-curves-no-weeks = No reference weights: the weeks are not given.

check-heart-early = The heart was not heard. Before 16 weeks no rule here is made of that, because horn and Doppler may miss it so early; it rules nothing out. If it was heard before, or movements that she felt are gone, it cannot wait; else follow your local guidance.
check-remarks-none = Nothing recorded here meets an act-now rule or contradicts itself. That rules nothing out.
check-question-open = A question about the line is still open: until it is answered, nothing is said of what was not found.
check-understood = Understood: { $line }
# $positions are the spelled out names of positions.
check-fits = What was found fits: { $positions }.
check-quieted = Left out for this run, as asked: { $ids }.
check-local = Local thresholds were used, from the clinic's file.
check-problems = In the file
grade-act-now = Act now
grade-cannot-both = Cannot both be right
grade-look-again = Look again
grade-follow-guidance = Follow guidance
# Before a remark or a conclusion about one of twins.
for-baby = Baby { $baby }: { $text }

# The boxes that every chart has, and words of a visit file as a chart says them.
check-charted = For the chart
box-lie = Lie
box-presentation = Presentation
box-position = Position
box-attitude = Attitude
box-engagement = Engagement (fifths)
box-liquor = Liquor
box-fundal-height = Fundal height
box-heart = Fetal heart
box-movements = Movements
box-none = not recorded
box-open = not settled
box-fifths = { $fifths } palpable
box-rate = { $rate } beats a minute
box-heard = heard { $place }
box-sentence = { $label }: { $value }.
conclude-from = Follows from what was { $ways }.
way-felt = felt
way-scan = seen by scan
way-vaginal = found by vaginal examination
way-written = written
check-remarks-none-note = Nothing recorded outside the note meets an act-now rule or contradicts itself; of the note only words of alarm are looked for. That rules nothing out.
found-breech-state = Breech: { $value }.
found-head-state = Head: { $value }.
value-placenta-front = anterior
value-placenta-rear = posterior
value-placenta-high = fundal
value-placenta-low = low-lying
value-back-front = anterior
value-back-left-front = left, anterior
value-back-right-front = right, anterior
value-back-left-lateral = left, lateral
value-back-right-lateral = right, lateral
value-back-towards-her-spine = posterior
value-back-left-towards-her-spine = left, posterior
value-back-right-towards-her-spine = right, posterior
value-prominence-limb-side = on the side of the limbs
value-prominence-back-side = on the side of the back
value-tape-unfit-not-longitudinal = transverse or oblique lie
value-tape-unfit-much-water = much liquor
value-shape-slanting = oblique
value-labour-not-in-labour = not in labour
value-labour-early-labour = early labour
value-labour-in-labour = in labour
value-reports-fits = fits
value-reports-tightenings = tightenings
value-reports-waters-broken = waters broken
value-operations-caesarean = caesarean section
chart-fundal-height = Fundal height: { $value }.

## Sides read back
# Before anything is printed. Said from her, and from someone who faces her.

outline-title = Her abdomen
outline-description = Her abdomen, seen by someone facing her: her left is at the right of the picture.

read-back-back-left = Back to HER LEFT: on your right as you face her.
read-back-back-right = Back to HER RIGHT: on your left as you face her.
read-back-head-left = Head on HER LEFT: on your right as you face her.
read-back-head-right = Head on HER RIGHT: on your left as you face her.
read-back-bottom-left = Bottom on HER LEFT: on your right as you face her.
read-back-bottom-right = Bottom on HER RIGHT: on your left as you face her.
read-back-limbs-left = Limbs on HER LEFT: on your right as you face her.
read-back-limbs-right = Limbs on HER RIGHT: on your left as you face her.
read-back-limbs-both = Limbs on BOTH her sides.
read-back-heart-left = Heart heard on HER LEFT: on your right as you face her.
read-back-heart-right = Heart heard on HER RIGHT: on your left as you face her.

## The chart
# The paragraph, the handover and the slip. Abdominal findings only; never a diagnosis, never comfort.

chart-opening = Abdominal examination by hand at { $weeks } weeks.
chart-opening-no-weeks = Abdominal examination by hand; weeks not given.
chart-cautions = From the hands, not a scan, except where it says so; sides are the mother's. A record: it does not diagnose and does not replace local guidance, a clinician's judgement or a scan.
chart-versions = handspan { $version }, rules of { $ledger }.

# Findings in running text, where no heading says what they are about; the others are as in `found-`.
chart-scan = Dated by scan: { $value }.
chart-shape = Shape of the abdomen: { $value }.
chart-pulse = The mother's pulse: { $value }.
chart-earlier-tapes = Earlier fundal heights: { $value }.
chart-heart = Fetal heart heard: { $value }.
chart-heart-state = Fetal heart { $value }.
chart-heart-with = Listened with: { $value }.
chart-heart-counts = Fetal heart counted: { $value }, a mean of { $mean } beats a minute.
chart-heart-counts-state = Fetal heart count: { $value }.
chart-heart-rate = Fetal heart rate: { $value } beats a minute.
chart-heart-rate-state = Fetal heart rate: { $value }.
chart-heart-rise = Highest fetal heart rate on movement: { $value }.
chart-heart-rhythm = Fetal heart rhythm: { $value }.
chart-contraction-length = Length of contractions: { $value }.
chart-contraction-strength = Strength of contractions: { $value }.
chart-tone-at-rest = The womb between contractions: { $value }.
chart-tender-at = The womb is tender at: { $value }.
chart-heart-also = Heart heard also: { $value }.
chart-heart-quality = Sound of the heart: { $value }.
chart-heart-slows = Slowing of the heart: { $value }.
chart-heart-by = Listened to by: { $value }.
chart-heart-and-pulse = Heart and her pulse together: { $value }.
chart-weight-by-hand = Weight by hand: { $value }.
chart-weight-by-scan = Weight by an earlier scan: { $value }.
chart-lie = Lie as written: { $value }.
chart-presentation = Presentation as written: { $value }.
chart-position = Position as written: { $value }.
chart-note = Note: { $value }
chart-more = The chart holds the rest.

handover-situation = SITUATION
handover-background = BACKGROUND
handover-assessment = ASSESSMENT
handover-recommendation = RECOMMENDATION
# $ids are the ids of the remarks under SITUATION.
handover-first = First what cannot wait, as it stands above: { $ids }.
handover-guidance = Then by local guidance. What was not examined stays unknown until someone examines it.
handover-line = Handed over by ____________________  to ____________________  at ________
# $names are some of the history messages.
history-not-recorded = Not recorded: { $names }.
history-births-before = Previous births
history-operations = Previous uterine surgery
history-womb-cut = Uterine incision
history-placenta = Site of the placenta

slip-title = Abdominal examination
slip-label = Label
slip-time = Date and time ____
slip-signature = Signature ____

# In a FHIR bundle: the name of each finding, and how it was found.
fhir-weeks = Weeks of pregnancy at the visit
fhir-due = Due date
fhir-last-period = First day of the last period
fhir-dated-by-scan = Weeks that a scan measured
fhir-movements = Movements, as she says
fhir-reports = She reports
fhir-denies = Asked, and not so
fhir-births-before = Births before this one
fhir-operations = Operations on the womb
fhir-womb-cut = Cut in the womb
fhir-placenta = Where the placenta lies
fhir-posture = How she lay
fhir-shape = Shape of the abdomen
fhir-scars = Scars on the skin of the abdomen
fhir-skin = Marks of the skin
fhir-pulse = The mother's pulse
fhir-womb = How the womb feels
fhir-water = Amount of water, as felt
fhir-lumps = Where fibroids were felt
fhir-fundus = Level of the top of the womb
fhir-fundal-height = Symphysis-fundal height by tape
fhir-earlier-tapes = Earlier tapes
fhir-girth = Girth at the navel
fhir-navel = Height of the navel above the pubic bone
fhir-tape-unfit = Why the tape cannot be read against a chart
fhir-gravida = Pregnancies, this one included
fhir-rupture-before = Earlier rupture of the womb
fhir-placentas = How many placentas two babies have
fhir-rhesus-d = D antigen of the mother
fhir-group-b-strep = Group B strep in this pregnancy
fhir-labour = Whether she is in labour
fhir-hours-since-broken = Hours since the waters broke
fhir-water-colour = Colour and smell of the water that has come
fhir-consent = Consent to the examination
fhir-comfort = How the examination was for her
fhir-build = Build of the mother, as looked at
fhir-scar-feel = How the scar on the skin looks and feels
fhir-muscle-gap = Gap between the straight muscles of the abdomen
fhir-hernia = Where a hernia was found
fhir-bladder = Bladder
fhir-temperature = The mother's temperature
fhir-blood-pressure = The mother's blood pressure
fhir-breathing = The mother's breaths a minute
fhir-urine-protein = Protein in the urine, by a strip
fhir-contractions-in-ten = Contractions in ten minutes
fhir-contraction-length = How long contractions last
fhir-contraction-strength = How strong contractions feel to the hand
fhir-tone-at-rest = The womb between contractions
fhir-tender-at = Where the womb is tender; sides are the mother's
fhir-height-for-dates = Height of the womb against the dates, in words
fhir-breech = Where the baby's bottom was felt
fhir-back = Where the baby's back was felt; sides are the mother's
fhir-limbs = Where limbs were felt; sides are the mother's
fhir-dip-at-navel = Dip at the navel
fhir-head = Where the baby's head was felt
fhir-head-above-brim = Fifths of the head palpable above the brim
fhir-descent = Descent in words
fhir-prominence = Side on which the head stands out
fhir-attitude = How the head is held
fhir-legs = How the baby's legs lie
fhir-moved-under-hands = Moved under the hands
fhir-heart = Where the baby's heart was heard; sides are the mother's
fhir-heart-with = What the heart was listened to with
fhir-heart-counts = Fetal heart rate, mean of counts
fhir-heart-rate = Fetal heart rate
fhir-heart-rise = Highest heart rate on movement
fhir-heart-rhythm = Rhythm of the baby's heart
fhir-fundus-feels = How what lies in the fundus feels
fhir-brim-feels = How what lies above the brim feels
fhir-ballottable = Whether the head can be ballotted
fhir-overlaps-pubic-bone = Whether the head overlaps the pubic bone
fhir-found-by-vagina = What was found in the vagina, or seen at it
fhir-station = Station of the lowest part, by vaginal examination
fhir-size = Size for dates as judged by hand
fhir-kicks = Where kicks are felt; sides are the mother's
fhir-hiccups = Hiccups
fhir-unstable-lie = Whether the lie keeps changing
fhir-turning-tried = What came of turning the baby by hand
fhir-heart-also = Other places where the heart was heard; sides are the mother's
fhir-heart-quality = How the baby's heart sounds
fhir-heart-slows = When the baby's heart was heard to slow
fhir-heart-by = Who listened
fhir-heart-and-pulse = The baby's heart and the mother's pulse, felt and heard together
fhir-weight-by-hand = Estimated fetal weight by palpation
fhir-weight-by-scan = Estimated fetal weight by an earlier scan
fhir-lie = Fetal lie
fhir-presentation = Fetal presentation
fhir-position = Fetal position
fhir-lie-as-written = Fetal lie as written, against the findings
fhir-presentation-as-written = Fetal presentation as written, against the findings
fhir-position-as-written = Fetal position as written, against the findings
fhir-unsure = Unsure: written with a question mark by the examiner.
fhir-follows = Not found by itself: it follows from the findings that it is derived from.
fhir-no-identity = No identity in this file. Attach it to the right record by hand.
fhir-by-palpation = Palpation
fhir-by-listening = Auscultation
fhir-by-tape = Tape measure
fhir-by-looking = Inspection
fhir-by-asking = Asked, or from her notes
fhir-by-scan = Scan
fhir-by-vaginal = Vaginal examination

## The tape over the visits
# A sheet of curves, small drawings and a table. What was not recorded is a dash.

growth-title = The tape over the visits
growth-span = { $visits } visits, from { $first } to { $last } weeks.{ $due ->
    [none] {""}
   *[other] {" "}Due { $due }.
 }
growth-axis-tape = Pubic bone to the top of the womb, cm
growth-axis-weeks = weeks
growth-curve = P{ $centile }
growth-key-tape = tape
growth-key-earlier = noted later as an earlier tape
growth-key-not-read = not fit to be read
growth-key-curves = curves: INTERGROWTH-21st
growth-not-read = { $cm } cm: { $why }
growth-sides = How the baby lay at each visit. In each drawing her left is at the right.
growth-no-curves = No curve is drawn: it is made of pregnancies with one baby.

growth-head-weeks = Weeks
growth-head-tape = Tape
growth-head-rule = Against weeks
growth-head-curve = INTERGROWTH-21st
growth-head-lie = How the baby lay
growth-head-brim = Above the brim
growth-head-heart = Heart, beats a minute
growth-dash = –
growth-heard = heard
growth-dated = { $weeks } ({ $date })
growth-rule = { $rule } cm
growth-standard = z { $z }, centile { $centile }
growth-outside = 16+0 to 42+6 only
growth-why-not = not read: { $why }
growth-palpable = { $fifths } palpable
growth-numbered = { $baby }: { $text }
growth-earlier = Noted later as earlier tapes: { $tapes }.
growth-earlier-one = { $cm } cm at { $weeks } ({ $answer })
growth-at = At { $weeks }: { $text }

# Under a drawing.
growth-lie-head-down = head down
growth-lie-bottom-down = bottom down
growth-lie-lengthwise = lengthwise
growth-lie-across = across
growth-lie-slanting = slantwise
growth-lie-not-known = not known
growth-probably = probably { $lie }

# The figure, for someone who cannot see it.
growth-about = Tapes on the curves P3, P10, P50, P90 and P97 of INTERGROWTH-21st; under them a drawing of how the baby lay at each visit. { $visits }
growth-about-no-curves = Tapes over the weeks, and a drawing of how the babies lay at each visit. { $visits }
growth-about-visit = At { $weeks }: tape { $tape }, { $answer }; { $lie }.

growth-due-apart = { $days ->
    [1] Due dates differ by 1 day
   *[other] Due dates differ by { $days } days
 } between the visits; each stands at its own weeks.
growth-without-due = { $which ->
    [all] No visit has a due date: that they are of one pregnancy could not be held against one.
   *[some] No due date is known for the visits at { $weeks }: that they are of this pregnancy could not be held against one.
 }
growth-dash-means = A dash: not recorded at that visit.
growth-caution = A tape that follows a curve rules nothing out.

## Remarks
## One sentence what was found, one what to do next. Never a diagnosis, never reassurance; local guidance decides.

remark-movements-fewer = She says the baby moves less than usual. Have her and the baby assessed now, by your local guidance for fewer movements; a heart that is heard does not settle it.
remark-movements-changed = She says the movements have changed. Have her and the baby assessed now, by your local guidance for changed movements; a heart that is heard does not settle it.
remark-movements-none = She says the baby does not move. Have her and the baby assessed now, by your local guidance; a heart that is heard does not settle it.
remark-movements-not-felt-yet = Movements have not been felt yet, and 24 weeks have passed or the weeks are not known. Have her and the baby assessed now, by your local guidance for movements not felt by 24 weeks.
remark-bleeding = She reports bleeding. Get help and follow your local guidance for bleeding in pregnancy now.{ $placenta ->
    [known] {""}
    [low] {" "}The placenta is recorded as low: make no vaginal examination.
   *[other] {" "}Where the placenta lies is not recorded: make no vaginal examination until it is known.
 }
remark-constant-pain = She reports pain that stays. Get help and follow your local guidance for constant pain in pregnancy now.
remark-urgent-signs = Recorded: { $signs }. Get help and follow your local guidance for it now.
remark-hard-tender-womb = The womb is hard or tense, and tender. Get help and follow your local guidance now; do not wait to feel it again.
remark-scar-pain = There is pain or tenderness at the scar, and there has been previous uterine surgery. Get help and follow your local guidance for scar pain now.
remark-scar-pain-operations-not-known = There is pain or tenderness at a scar, and whether there was uterine surgery is not recorded. Ask now; if there was, or if nobody knows, get help and follow your local guidance for scar pain now.
remark-crosswise-in-labour = The baby is in a transverse or oblique lie, and she is in labour or has regular tightenings. Call for help now and follow your local guidance for labour with such a lie; think first of cord prolapse.
remark-head-overlaps-in-labour = The head overlaps the pubic bone, and she is in labour or has regular tightenings. Call for senior help now, listen to the heart, and follow your local guidance for a head that does not enter the brim in labour.
remark-unstable-lie-in-labour = The lie keeps changing, and she is in labour or her waters have broken. Feel now how the baby lies, call for help, and follow your local guidance for an unstable lie; think first of cord prolapse.
remark-waters-broken-not-head-down = The waters have broken and the baby is not head down. Call for help now and follow your local guidance for waters broken with a baby that is not head down; think first of cord prolapse.
remark-waters-broken-lie-not-known = The waters have broken and it is not recorded that the baby is head down. Feel for the head now, and follow your local guidance for broken waters; think first of cord prolapse.
remark-waters-broken-head-free = The waters have broken and the head is free above the brim. Call for help now and follow your local guidance for broken waters with a free head; think first of cord prolapse.
remark-heart-not-heard = The heart was not heard. Ask a second person and another instrument to listen now, and arrange a scan by your local guidance for a heart not heard; do not send her home to wait.
remark-heart-rate-low = The heart rate is recorded as { $rate } beats a minute, under { $low }. Feel her pulse while you listen again for a full minute, get help, and follow your local guidance now.
remark-heart-rate-high = The heart rate is recorded as { $rate } beats a minute, over { $high }. Feel her pulse while you listen again for a full minute, get help, and follow your local guidance now.
remark-pulse-near-heart = Her pulse is { $pulse } and the rate heard is { $rate }: it may be her own pulse that was heard. Feel her pulse while you listen again now; if they run together, the heart has not been heard: ask a second person and another instrument, and arrange a scan by your local guidance for a heart not heard.

remark-head-and-bottom-in-one-place = Head and breech cannot be in one place ({ $said }). Feel both ends of the womb again.
remark-back-against-lie = The back cannot lie so with head or breech there ({ $said }). Feel the back again, then head and breech.
remark-lie-against-findings = The lie you wrote is not what these findings give ({ $said }). Feel head and breech again; the picture follows the findings.
remark-presentation-against-findings = The presentation you wrote is not what these findings give ({ $said }). Feel head and breech again; the picture follows the findings.
remark-position-against-findings = The position you wrote is not what these findings give ({ $said }). Feel head, breech and back again, her left and right first; the picture follows the findings.
remark-conclusions-against-one-another = What you concluded does not hold together ({ $said }). Keep the one you can feel.
remark-attitude-against-presentation = One head cannot have two attitudes ({ $said }). Keep the one you know, and how you know it.
remark-engaged-and-crosswise = A baby in a transverse or oblique lie has no head deep in the pelvis ({ $said }). Feel above the brim again.
remark-head-in-two-places = One head cannot be in two places ({ $said }). Feel the top of the womb and above the brim again.
remark-fifths-on-a-breech = Fifths are counted on a head, and these findings put the breech down ({ $said }). Feel above the brim again: is it head or breech?
remark-engaged-on-a-breech = Engaged is said of a head, and these findings put the breech down ({ $said }). Say of a breech: free, at the brim or deep.
remark-fifths-against-descent = The fifths and the descent in words do not agree ({ $said }). Feel above the brim again and keep one of them.
remark-heart-not-heard-but-counted = A heart that was not heard has no rate ({ $said }). Listen again with a hand on her pulse; then write where it was heard, or no rate.
remark-reported-and-denied = The same thing is reported and denied ({ $said }). Ask again.
remark-limbs-on-the-side-of-the-back = The limbs were felt on the side of the back. Feel both sides again: which is broad and firm, which has small parts?
remark-heart-far-from-the-back = The heart was heard on the other side than the back. Feel the back again and listen over it; where a heart is heard supports a position and never proves it.
remark-heart-height-against-the-end-that-is-down = The height at which the heart was heard is not where handbooks look for it with this end down. Feel again which end is down, and listen above and below the navel.
remark-prominence-on-the-side-of-the-back = The cephalic prominence is on the side of the back, as it may be when the head is extended. Feel again with two hands above the brim, and follow your local guidance on a scan.

# A low head, after what a tape calls for. Values $head: `low`, or empty.
tape-low-head = A low head can lower the tape; that does not rule out a small baby.
remark-dates-apart = By the last period she is due on { $period }, { $days } days from { $due }, the date { $by ->
    [scan] of the scan
   *[other] that was given
 }. Look both up in her notes again: one may be misread or miswritten. { $due } is used here; settle it by your local guidance on dates.
remark-size-against-dates = The height of the womb fits { $fits }, and the weeks are { $weeks }: more than { $limit } weeks apart, and no early scan is recorded. Ask again about the last period and the cycle, look for a scan in her notes, and follow your local guidance on dates that are not sure.{ $size ->
    [tape] {" "}Whatever the dates, what is said of the tape stands.
   *[other] {" "}Feel the womb again with the bladder empty.
 }
remark-tape-outside-weeks = The tape is { $cm } cm at { $weeks }: { $difference } cm { $direction ->
    [below] below
   *[other] above
 } weeks, outside { $limit } cm. Ask her to empty her bladder, feel for the top of the womb, and measure again with the blank side of the tape up. If it stays so, compare earlier tapes and follow your local guidance on scanning.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-below-p10 = The tape is { $cm } cm at { $weeks }: centile { $centile }, below the tenth. Measure again with the bladder empty and the blank side of the tape up, compare earlier tapes, and follow your local guidance on a scan for growth.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-above-p90 = The tape is { $cm } cm at { $weeks }: centile { $centile }, above the ninetieth. Measure again with the bladder empty and the blank side of the tape up, feel again for much liquor, lumps and a second baby, compare earlier tapes, and follow your local guidance on a large tape.
remark-tape-four-weeks-behind = The tape is { $cm } cm at { $weeks }: four weeks or more behind the mean, at centile { $centile }{ $reaches ->
    [none] {""}
   *[other] {" "}(it is the mean of { $reaches })
 }. Measure again with the bladder empty and the blank side of the tape up, compare earlier tapes, and arrange a scan for growth by your local guidance without waiting for the next visit.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-static = Three tapes one after another are the same: { $earlier }, and { $cm } cm at { $weeks }. { $again ->
    [yes] Measure again with the bladder empty and the blank side of the tape up, and follow
   *[other] Follow
 } your local guidance on a scan for growth.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-falling = The tape is { $cm } cm at { $weeks }, lower than two visits before ({ $earlier }). { $again ->
    [yes] Measure again with the bladder empty and the blank side of the tape up, and follow
   *[other] Follow
 } your local guidance on a scan for growth.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-not-read = No tape can be read against weeks or a chart here: { $why }. { $lie ->
    [across] Measure again once the baby lies lengthwise, and follow
   *[other] Follow
 } your local guidance on watching growth by scan.
remark-heart-recount = { $counted ->
    [yes] The counts have a mean of { $mean } and leave the rate anywhere between { $low } and { $high } beats a minute
   *[other] The rate was heard between { $low } and { $high } beats a minute
 }, across a limit of the usual 110 to 160. Count again for a full 60 seconds with a hand on her pulse; a beat on which the clock starts counts as zero. Write the count down, and follow your local guidance if it is outside.
remark-heart-outside-usual = The rate is { $rate } beats a minute, { $direction ->
    [low] under 110
   *[other] over 160
 }. Listen again for a full minute with a hand on her pulse; if it is still so, or there is fever, bleeding, waters broken, fewer movements or labour, it cannot wait. Follow your local guidance.
remark-heart-irregular = The rhythm was heard as irregular. Listen again for a full 60 seconds, ask a second person to listen, and follow your local guidance on an irregular heart rhythm.

remark-dip-with-a-back-in-front = A dip at the navel goes with a back towards her spine, and the back was found to the front ({ $said }). Feel both flanks for the back again.
remark-twins-on-one-side = What was found of both babies lies on her { $side ->
    [left] left
   *[right] right
 }. Feel again which baby lies on which side, and record each one's head, back and heart under its own number.
remark-heart-over-the-other-baby = The heart of baby { $baby } was heard on the side where the other baby lies. Listen again over each back, two of you at once where you can, and record each heart under its own number.
remark-findings-fit-no-position = No position gives all of this at once ({ $said }). Feel again, one after the other: the ends of the womb, the back, the limbs; then listen again.
remark-fifths-may-read-low = Fifths of a head that lies like this can read low: less is felt than stands above the brim. Feel again with two hands, down to the end of the head, before it is called engaged.
remark-too-early-for-hands = Before 24 weeks hands seldom tell how a baby lies or how deep its head is. Feel again at later visits, and keep this for today only.
remark-presentation-early = The baby is not head down today, and 36 weeks have not passed. Feel again at each visit, and do not carry today’s finding forward.
remark-presentation-not-known = Which end lies down is not settled. Feel again with the bladder empty, ask a second pair of hands, and arrange a scan by your local guidance if it stays open: hands miss about 3 in 10 babies that are not head down.
remark-womb-hard-or-tender = The womb is { $feel ->
    [hard] hard
    [tense] tense
   *[other] tender
 }. Keep a hand on it: does it soften again, and how soon? Ask about pain and bleeding; if it stays so, get help and follow your local guidance.
remark-scar-of-unknown-operation = There is a scar on the skin, and whether there was uterine surgery is not recorded. Ask which operation it was: the skin does not tell the uterine incision.
remark-not-head-down = The baby is not head down, and 36 weeks have passed. Have it confirmed by a scan, and follow your local guidance for a baby that is not head down: she is to be told of her choices. Hands are wrong about this in nearly half of such cases.
remark-crosswise-at-term = The baby is in a transverse or oblique lie, and 37 weeks have passed. Have it confirmed by a scan and follow your local guidance: admission should be talked over, and she is to come in at once if labour starts or the waters break, because of the risk of cord prolapse.
remark-unstable-lie = The lie keeps changing. Follow your local guidance for an unstable lie: admission should be talked over, and she is to come in at once if labour starts or the waters break, because of the risk of cord prolapse.
remark-womb-operated-on = { $cut ->
    [known] The uterine incision was vertical, T or J, or the uterus has torn before. Check what is recorded against the operation note, and follow your local guidance for where and how she gives birth.
   *[other] There has been previous uterine surgery. Find the operation note for the uterine incision: the scar on the skin does not tell it. Follow your local guidance for a birth after it.
 }
remark-head-free-at-term = The head is free above the brim, and 37 weeks have passed. Feel again with the bladder empty, look up where the placenta lies, and follow your local guidance on a scan for a head that is free at term.
remark-placenta-low = The placenta is recorded as low. See that the repeat scan by your local guidance is arranged or done, as a rule at 32 weeks, and that no vaginal examination is made before.
remark-signs-to-weigh = She reports: { $signs }. Ask now how bad it is and how long it has lasted, take her blood pressure, and follow your local guidance; what is severe or stays is urgent.
remark-waters-broken = The waters have broken. Ask how many hours ago, the colour and smell, the movements, and whether group B strep was found; listen to the heart, take her temperature, and follow your local guidance today. If the head rises, or a cord is seen or felt, call for help at once.
remark-tightenings-before-term = She reports tightenings before 37 weeks. Ask whether they are regular or painful, keep a hand on the womb and time them; if they are, it cannot wait. Follow your local guidance today.
remark-itching = She reports itching. Ask where, and whether it is worse at night, look for a rash, and follow your local guidance for itching in pregnancy.
remark-note-mentions = Your note mentions { $quoted }, and no finding says whether it is so. Record it as a finding, or say that it is not so; until that is settled, act on it by your local guidance.{ $iud ->
    [yes] {" "}‘IUD’ may be a baby that has died in the womb, or a contraceptive device: write which.
   *[no] {""}
 }{ $cord ->
    [yes] {" "}If it is the cord, call for help now, outside a hospital the emergency number; bring her knees to her chest, or lay her on her left side with her hips raised; keep the part that leads off the cord, and do not handle the cord or put it back.
   *[no] {""}
 }
remark-cord-felt = The cord was felt or seen. Call for help now: outside a hospital, the emergency number. Bring her knees to her chest, or lay her on her left side with her hips raised; keep the part that leads off the cord, and do not handle the cord or put it back. Follow your local guidance for the cord.
remark-part-by-vagina-in-labour = Found by the vagina: { $signs }, and she is in labour or her waters have broken. Call for senior help now, and follow your local guidance for it.
remark-part-by-vagina = Found by the vagina: { $signs }. Ask for a senior review today by your local guidance; if labour starts or the waters break, it cannot wait.
remark-movements-fewer-early = She says the baby moves less, or not as before, and 24 weeks have not passed. Listen with a Doppler today, and follow your local guidance for movements at these weeks. If movements that were felt have stopped, it cannot wait.
remark-placenta-low-with-signs = The placenta is recorded as low, and there is: { $signs }. Get help now and follow your local guidance for a low placenta; make no vaginal examination.
remark-placenta-low-late = The placenta is recorded as low, and 36 weeks have passed. If no later scan has settled it, ask today for a senior plan for the birth by your local guidance, and see that no vaginal examination is made before.
remark-blow-or-fall = She reports a blow, a fall or a crash. Ask what happened and where she was hit, ask about pain, bleeding, waters and movements, listen to the heart, and follow your local guidance for it today.
remark-d-not-known = Whether she is D-negative is not recorded. Ask or look it up today: if she is, have anti-D considered within 72 hours of what happened, by your local guidance.
remark-d-negative = She is D-negative. Have anti-D considered today, within 72 hours of what happened, by your local guidance.
remark-faint = She is faint. Lay her on her left side, take her pulse and blood pressure, ask about bleeding and pain, and look again before she leaves; if it does not pass, get help. Follow your local guidance today.
remark-signs-of-urine = She reports: { $signs }. Take her temperature and pulse, test her urine, ask about fever, shivering and tightenings, and follow your local guidance today; pain in the loin with fever cannot wait.
remark-faint-lying-flat = She is faint when she lies flat. Turn her on her left side now and look again; if it does not pass, get help and follow your local guidance.
remark-pressure-severe = Her blood pressure is { $pressure }: systolic 160 or diastolic 110, or more. Get help now and follow your local guidance for severe high blood pressure in pregnancy; take it again, but do not wait for that.
remark-pressure-with-signs = Her blood pressure is { $pressure }, with: { $signs }. Get help and follow your local guidance for raised blood pressure with such signs now.
remark-pressure-raised = Her blood pressure is { $pressure }. Let her sit, take it again today, test her urine for protein, ask about headache, sight, pain under the ribs and vomiting, and follow your local guidance.
remark-severe-headache-or-rib-pain = She reports: { $signs }. Take her blood pressure and test her urine now, get help, and follow your local guidance for it, whatever the numbers are.
remark-two-signs-of-pressure = She reports: { $signs }. Take her blood pressure and test her urine now, get help, and follow your local guidance for these signs together; do not send her home to wait.
remark-one-sign-of-pressure = She reports: { $signs }. Ask how bad it is, since when, and whether it stays; take her blood pressure, test her urine and look again today, by your local guidance.
remark-fever-with-signs = { $measured ->
    [yes] Her temperature is { $celsius } °C
   *[other] She reports fever
 }, with: { $signs }. Get help now and follow your local guidance for fever in pregnancy with such signs.
remark-fever = { $measured ->
    [yes] Her temperature is { $celsius } °C
   *[other] She reports fever
 }. Take her temperature, pulse, breathing and blood pressure again today, ask about waters, pain and burning urine, feel the womb, and follow your local guidance for fever in pregnancy.
remark-pulse-very-fast = Her pulse is { $pulse }, over 130. Get help now, take her blood pressure, temperature and breathing, and follow your local guidance.
remark-pulse-to-feel-again = Her pulse is { $pulse }. Let her rest, feel it again for a full minute, and take her blood pressure, temperature and breathing; if it stays so, follow your local guidance today.
remark-breathing-very-fast = She breathes { $breaths } times a minute. Get help now, take her pulse, blood pressure and temperature, and follow your local guidance.
remark-breathing-to-count-again = She breathes { $breaths } times a minute. Let her rest and count again for a full minute, take her pulse and temperature; if it stays so, follow your local guidance today.
remark-thoughts-of-self-harm = She has told of thoughts of harming herself. Stay with her, ask whether she means to act on them, and get help now by your local guidance. Keep it out of anything she takes home.
remark-violence-told = She has told of violence. Speak with her alone, ask whether going home today puts her in danger, and follow your local guidance. Keep it out of anything she takes home.
remark-womb-board-like = The womb { $feel ->
    [does-not-soften] does not soften between contractions
   *[other] is hard as a board
 }. Get help and follow your local guidance now; do not wait to feel it again.
remark-contraction-too-long = A contraction lasted { $seconds } seconds, more than 2 minutes. Listen to the heart, get help and follow your local guidance now.
remark-contractions-too-many = { $number } contractions in ten minutes are recorded, more than 5. Listen to the heart through the next ones and after them, get help and follow your local guidance now.
remark-contractions-five = Five contractions in ten minutes are recorded. Count again over the next ten minutes, keep a hand on the womb between them, listen to the heart after each, and follow your local guidance.
remark-womb-cut-in-labour = The uterine incision was vertical, T or J, or the uterus has torn before, and there is pain, tightening or labour. Call for senior help now, and follow your local guidance for it.
remark-womb-cut-not-known-in-labour = There has been previous uterine surgery, the uterine incision is not recorded, and there are tightenings or labour. Call for help now, find the operation note, and until it is found follow your local guidance as for an incision that is not low transverse.
remark-caesarean-without-a-birth = A caesarean is recorded, and no birth before this one. Ask again about earlier births, and correct whichever is not so.
remark-regular-tightenings-before-term = Tightenings are regular or painful, or she is in labour, { $weeks ->
    [known] before 37 weeks
   *[other] and the weeks are not known
 }. Get help and follow your local guidance for labour before term now.
remark-waters-broken-before-term = The waters have broken, { $weeks ->
    [known] before 37 weeks
   *[other] and the weeks are not known
 }. Get help and follow your local guidance for waters broken before term now; make no vaginal examination unless it says so.
remark-water-not-clear = The liquor is: { $signs }. Listen to the heart, get help and follow your local guidance for it now.
remark-waters-broken-strep = The waters have broken, and group B strep was found in this pregnancy. Ask today for what your local guidance offers in this case, without waiting for labour; if the head rises, or a cord is seen or felt, call for help at once.
remark-waters-broken-long = The waters have been broken for { $hours } hours. Take her temperature and pulse, listen to the heart, and talk with her today about what your local guidance offers after 24 hours.
remark-water-little = There seems to be little liquor, by hand. Ask about waters leaking and movements, and follow your local guidance on a scan for it.
remark-heart-not-heard-scan-today = The heart was not heard by Doppler, and 16 weeks have passed. Arrange a scan today by your local guidance; do not send her home to wait.
remark-heart-not-heard-try-doppler = The heart was not heard, and at these weeks a horn or fetoscope may miss it. Listen again with a Doppler today; if that does not find it, arrange a scan today by your local guidance.
remark-twin-heart-not-heard = One baby's heart was heard, and this one was not. Ask a second person to listen now, each to one heart at the same time, and arrange a scan now by your local guidance; do not send her home to wait.
remark-heart-heard-before = The heart was heard at { $first }, and was not heard at { $second }. Ask a second person and another instrument to listen now, and arrange a scan now by your local guidance.
remark-heart-is-her-pulse = The heart heard and her pulse run together: treat the heart as not heard. Ask a second person and another instrument to listen now, a hand on her pulse, and arrange a scan by your local guidance.
remark-heart-outside-usual-with-signs = The heart rate is recorded as { $rate } beats a minute, { $direction ->
    [low] under 110
   *[other] over 160
 }, with: { $signs }. Listen again for a full minute with a hand on her pulse, get help, and follow your local guidance now.
remark-heart-outside-usual-still = The heart rate was { $rate } beats a minute over a full minute, { $direction ->
    [low] under 110
   *[other] over 160
 }, with her pulse felt. Get help and follow your local guidance now.
remark-heart-slows-after-contractions = The heart slows after contractions. Turn her on her left side, listen through the next contractions and after them, get help and follow your local guidance now.
remark-heart-slows = The heart was heard to slow: { $signs }. Listen again for a full minute, through a contraction and after it if there are any, with a hand on her pulse, and follow your local guidance today.
remark-twin-hearts-near = The two hearts are recorded at { $first } and { $second } beats a minute: it may be one heart heard twice. Ask a second person to count with you, each one heart at the same time, and say so; if two hearts are not told apart, arrange a scan today by your local guidance.
remark-twin-first-not-head-down = The first baby is not head down, and 32 weeks have passed. Follow your local guidance on a plan for the birth, and ask for a scan to confirm how both lie.
remark-twins-still-pregnant = Two babies with { $placentas ->
    [one] one placenta, and 36 weeks
   *[other] two placentas, and 37 weeks
 } have passed. See today that a plan for the birth is made, by your local guidance.
remark-twins-placentas-not-known = Two babies, and whether they have one placenta or two is not recorded. Ask or look it up in her early scan: by your local guidance it decides when they are to be born.
remark-after-41-weeks = 41 weeks have passed. Ask whether the offer of induction has been talked over with her, by your local guidance.
remark-after-42-weeks = 42 weeks have passed. Look again today at what was agreed with her, and ask whether a heart tracing twice a week and a scan of the liquor are arranged, by your local guidance.
remark-after-43-weeks = 43 weeks have passed. Ask for a senior review today, check the dates against her early scan again, and follow your local guidance.
remark-tape-through-centiles = Three tapes, each lower against the curve than the last: { $earlier }, and { $cm } cm at { $weeks }, { $fall } standard deviations lower in all. Have a scan for growth arranged by your local guidance; a tape that is still between the tenth and the ninetieth does not settle it.
remark-tape-lower-in-z = The tape is lower against the curve than before: { $earlier }, and { $cm } cm at { $weeks }, { $fall } standard deviations lower. Measure again with the bladder empty and the blank side of the tape up, and compare at the next visit by your local guidance.

# Over several visits. $before and $after: how the baby lay, at $first and at $second.
remark-lie-changing = The baby was recorded as { $before ->
    [across] transverse
    [slanting] oblique
    [bottom-down] breech
    [head-down] cephalic
   *[lengthwise] longitudinal
 } at { $first } and as { $after ->
    [across] transverse
    [slanting] oblique
    [bottom-down] breech
    [head-down] cephalic
   *[lengthwise] longitudinal
 } at { $second }. Feel again at each visit, have the lie of the day confirmed by a scan, and follow your local guidance for a lie that changes from 37 weeks on: admission should be talked over, and she is to come in at once if labour starts or the waters break, because of the risk of cord prolapse.
remark-visits-differ-in-babies = The visits tell of different numbers of babies: { $one } at { $first }, { $two } at { $second }. Look whether all of them are of this pregnancy, and have the number confirmed by a scan; until then none of their tapes is read against weeks or a curve.

## The guide for drawing on skin
# For the midwife who draws. Where a stroke starts and ends is measured along the skin; what was not found is said to be so.

skin-title = Draw the baby on her skin
skin-title-baby = Draw baby { $number } on her skin
skin-measure = You face her: her left is at your right. “Up” is along the skin from the upper edge of the pubic bone, “out” along the skin from the midline; in brackets, finger-breadths of 2 cm. From the dot to the tip of the pen. Broken lines were not found: leave them out, or tell her they are a guess. Dots lie in the pelvis.
skin-measure-navel = You face her: her left is at your right. “Up” is along the skin from the upper edge of the pubic bone, or from the navel where that is nearer; “out” along the skin from the midline; in brackets, finger-breadths of 2 cm. From the dot to the tip of the pen. Broken lines were not found: leave them out, or tell her they are a guess. Dots lie in the pelvis.

# A place: $level is one of the next five, $side one of the three after them. $cm in whole cm, $fingers in finger-breadths.
skin-place = { $level }, { $side }
skin-up = { $cm } cm ({ $fingers }) up
skin-at-pubic-bone = level with the pubic bone
skin-above-navel = { $cm } cm ({ $fingers }) above the navel
skin-at-navel = at the navel
skin-below-navel = { $cm } cm ({ $fingers }) below the navel
skin-her-left = { $cm } cm ({ $fingers }) to her left, your right
skin-her-right = { $cm } cm ({ $fingers }) to her right, your left
skin-midline = in the midline
# To the side that was said.
skin-out = { $cm } cm ({ $fingers }) out

# $number is the number of the step.
skin-head = { $number } Head
skin-back = { $number } Back
skin-bottom = { $number } Bottom
skin-legs = { $number } Thigh, leg, foot
skin-arms = { $number } Arm and hand
skin-belly = { $number } Neck and belly
skin-heart = { $number } Heart
skin-head-how = Hold it in both hands and draw in their crook.
skin-back-how = One long line.
skin-bottom-how = Round it off.
skin-legs-how = Thigh, leg, then the foot.
skin-arms-how = Arm, then a hand with five fingers.
skin-belly-how = Close the shape.
# From where a line starts to where it ends: on one side of her, and from one to the other.
skin-on-her-left = On her left, your right: from { $from }, to { $to }.
skin-on-her-right = On her right, your left: from { $from }, to { $to }.
skin-from-to = From { $from }, to { $to }.
# A line that goes all the way round.
skin-round = Round: its top { $top }; its lowest point { $low }.
skin-below = The rest lies in the pelvis: stop at the bone.
skin-all-below = It lies in the pelvis, below the pubic bone: nothing to draw.
skin-hidden = Nothing of it is seen from the front: nothing to draw.
skin-back-behind = It lies towards her spine, behind the baby: no back to draw.
skin-not-felt = Not felt: leave it out, or feel again.
skin-guess = Not felt, a guess: leave it out, or feel again.
skin-follows = Not felt by itself: feel for it, or leave it out.
skin-unsure = Unsure: feel again first.
skin-written = By the position written; feel first.
skin-heart-at = Heard { $place }. Draw it there.
skin-heart-none = No place where it was heard: none to draw.

# All common practice.
skin-manners-title = With her
skin-manners = Ask before you touch and before you draw; some do not like it. Stop as soon as she says so. A photograph only if she asks for one. Bladder empty, head of the bed a little raised, a slight tilt to her left, flat only for a short time. Warm hands. A washable pen that is safe for skin, { $pen }; one for each person. Not on broken, sore or allergic skin. It washes off with ordinary washing, in a bath or two.
skin-foot = Not a scan; hands can be wrong. Face, fingers and toes are the artist's. handspan { $version }

# The first side, which is propped beside the bed: at most 12 words a step, 120 in all. { $what } is the name of a part.
skin-lies =
    { $head ->
    [head-down] Head down
    [bottom-down] Bottom down
    [side-l] Head to her left
    [side-r] Head to her right
    [across] Across
   *[unknown] Lie not known
 }, { $back ->
    [left] back to her left
    [right] back to her right
    [front] back to the front
    [spine] back to her spine
    [ribs] back to her ribs
    [feet] back to her feet
   *[unknown] back not felt
 }.
skin-cm = cm
skin-step = { $number } { $do }
skin-key = Broken lines: not felt. Dots: in the pelvis. Ticks: hand-breadths up.
skin-head-name = Head
skin-back-name = Back
skin-bottom-name = Bottom
skin-legs-name = Legs
skin-arms-name = Arms
skin-belly-name = Front
skin-heart-name = Heart
skin-head-do = Cup the head. Draw round your hands.
skin-head-low-do = Cup the head. Draw down to the bone.
skin-back-do = Feel along the back. Draw one long line.
skin-bottom-do = Hold the bottom. Draw round your hand.
skin-legs-do = Legs: thigh, knee, then foot and toes.
skin-arms-do = Arms: elbow, hand, five fingers.
skin-belly-do = Front: close the shape.
skin-heart-do = Last, a heart where you heard it.
skin-do-not-felt = { $what }: not felt. Draw none.
skin-do-behind = { $what }: it lies behind. Draw none.
skin-do-below = { $what }: in the pelvis. Draw none.
skin-do-hidden = { $what }: hidden. Nothing to draw.
skin-do-feel-first = { $what }: feel first, then draw.
skin-do-unsure = { $what }: unsure. Feel again first.
skin-do-no-heart = { $what }: no place noted. Draw none.
skin-numbers = The numbers, for who wants them
skin-numbers-baby = The numbers of baby { $number }, for who wants them
skin-pen-dark = in a dark colour that shows on hers, such as dark blue, plum or deep green, and red for the heart
skin-pen-light = in a light colour that shows on hers, such as white, cream or pale yellow, and gold for the heart
skin-say-title = What to say while you draw
skin-say-ask = “May I draw on your belly where your baby lies? It washes off. You can say stop.”
skin-say-head = “This round, firm part is the head. Put your hand here, if you like.”
skin-say-back = “This long line is the back. On the other side are the hands and feet.”
skin-say-heart = “Here I heard the heart today.”
skin-say-turn = “I draw what my hands felt. It is not a scan, and your baby may turn.”
skin-trace-title = If you trace
skin-trace = Lay the tracing sheet print outward, so that you can read it. Stencil paper for skin: go over the lines, lay its inked side on her. Or go over them on the back with a washable skin pen, held to a window. Press with a damp cloth, half a minute, lift. Wipe off what went wrong. Or prick the lines and dot the pen through.

## The tracing sheet
# At true size: unrolled along the curve of the abdomen.

trace-title = Tracing sheet, at true size
trace-about = The lines of the drawing, at true size, unrolled along the curve of the abdomen. { $lie }
trace-sheet = Sheet { $number } of { $count }: row { $row }, column { $column }.
trace-one-sheet = One sheet.
trace-join = Join letter on letter, cut along the broken frame.
trace-use = Cut round it. Cut each slit and close it, the broken line on the cut. Print outward: so that you can read it. Thick mark on the bone, long line on her midline. Prick the lines and dot the pen through.
# With several babies.
trace-numbers = Numbers: baby, then step.
trace-bar = 5 cm. If it is not, print at 100 %.
trace-pubic = upper edge of the pubic bone
trace-navel = navel, { $cm } cm up
trace-navel-expected = navel: not measured
trace-fundus = top of the womb, { $cm } cm
trace-left = HER LEFT, your right
trace-right = HER RIGHT, your left
trace-up = this way up, to her head
trace-none = There is no tracing sheet: one at true size would be wrong on her. Draw by hand after this guide; your hands on her give place and size.

## The family page
# Plain words, short sentences (20 words at most), Flesch-Kincaid grade 6 or below. "Your left" is the mother's left.
# A message about safety names its source ids (the table is in tests/published/family-safety.csv); facts that were not seen
# in a source say `common practice`. Nothing here says that all is well, or that anything is not.
# `____` is a line to write on.

family-title-one = How your baby is lying
family-title-more = How your babies are lying
family-name = Name or nickname ____
family-carer = midwife
family-midwife = Your { family-carer } ____
family-words = A few words for you ____
family-felt-on = Felt by hand on ____
# $age is one of the family-weeks messages.
family-felt-on-at = Felt by hand on ____ at { $age }
# Where it was not, or not only, felt by hand.
family-noted-on = Noted on ____
family-noted-on-at = Noted on ____ at { $age }
# On a telephone, where there is no line to write the date on.
family-felt-at = Felt by hand at { $age }
family-noted-at = Noted at { $age }
# At the foot of each of several sides.
family-side = Side { $number } of { $sides }
# The day of the visit, where it is recorded. $month is one of the family-month messages.
family-date = { $day } { $month } { $year }
family-month-1 = January
family-month-2 = February
family-month-3 = March
family-month-4 = April
family-month-5 = May
family-month-6 = June
family-month-7 = July
family-month-8 = August
family-month-9 = September
family-month-10 = October
family-month-11 = November
family-month-12 = December
family-weeks = { $weeks } weeks
family-weeks-day = { $weeks } weeks and 1 day
family-weeks-days = { $weeks } weeks and { $days } days

# $baby is one of these.
family-baby-one = your baby
family-baby-number = baby { $number }
family-how-hands = Your { family-carer } felt that
family-how-hands-scan = Hands and a scan found that
family-how-scan = A scan showed that
family-how-written = It was noted that
family-depth-head-free = The head is still above your pelvis (the ring of your hip bones).
family-depth-head-brim = The head is at the top of your pelvis (the ring of your hip bones).
family-depth-head-deep = The head is down in your pelvis (the ring of your hip bones).
family-depth-bottom-free = The bottom is still above your pelvis (the ring of your hip bones).
family-depth-bottom-brim = The bottom is at the top of your pelvis (the ring of your hip bones).
family-depth-bottom-deep = The bottom is down in your pelvis (the ring of your hip bones).
family-depth-unsure = How far down it lies is not sure.
# Where it was heard. $place is one or two of the messages that follow.
family-heart-at = The heartbeat was heard (see the small ring) { $place }.
family-heart-heard = The heartbeat was heard.
family-heart-unsure = That place is not sure.
family-heart-left = on your left
family-heart-right = on your right
family-heart-far-left = far out on your left
family-heart-far-right = far out on your right
family-heart-middle = in the middle
family-heart-top = at the top of your womb
family-heart-above = above your navel
family-heart-level = level with your navel
family-heart-below = below your navel
family-heart-little-above = a little above your navel
family-heart-little-below = a little below your navel
family-heart-low = low down
family-heart-bone = just above the bone low in your front
# Source: RCOG-BREECH
family-kind-bottom = Many babies lie bottom down before 36 weeks. Near the birth, 3 or 4 in 100 do.
# Source: RCOG-BREECH
family-kind-bottom-late = Near the birth, 3 or 4 in 100 babies lie bottom down. It is nothing that you did.
# Source: common practice
family-kind-changes = How your baby lies may still change. It is nothing that you did.
# Source: RCOG-50
family-kind-plan = This needs a plan. Ask today whom you will see.
# Source: RCOG-50
family-kind-come = Until your { family-carer } tells you otherwise: if your waters break (fluid leaks) or labour starts, call and come in at once.
# Of one baby: why.
# Source: RCOG-50
family-kind-cord = The cord can, rarely, slip down first.
# From 36 weeks, of one baby that lies head down: the other 3 or 4 in 100 lie bottom down.
# Source: RCOG-BREECH
family-kind-head = Near the birth most babies lie head down.

family-lie-head-down = { $how } { $baby } is lying head down today.
family-lie-head-down-probably = { $how } { $baby } is probably lying head down today.
family-lie-bottom-down = { $how } { $baby } is lying bottom down today.
family-lie-bottom-down-probably = { $how } { $baby } is probably lying bottom down today.
family-lie-across = { $how } { $baby } is lying across your bump today.
family-lie-across-probably = { $how } { $baby } is probably lying across your bump today.
family-lie-slanting = { $how } { $baby } is lying on a slant today.
family-lie-slanting-probably = { $how } { $baby } is probably lying on a slant today.
family-lie-not-told = Hands could not tell how your baby lies.
family-lie-not-told-number = Hands could not tell how baby { $number } lies.
# Nobody felt for it, and nothing was written down.
family-lie-not-felt = How your baby lies was not felt for.
family-lie-not-felt-number = How baby { $number } lies was not felt for.
family-lie-early = It is too soon to feel how your baby lies.
family-early-picture = The picture shows how high your womb has grown.

family-head-left = The head is on your left.
family-head-right = The head is on your right.
family-head-low-left = The head is low, on your left.
family-head-low-right = The head is low, on your right.
family-head-high-left = The head is high, on your left.
family-head-high-right = The head is high, on your right.
family-head-low = The head is low.
family-head-high = The head is high.

# $side is one of the family-side messages.
family-side-left = left
family-side-right = right
family-back-side = The back is to your { $side }.
family-back-side-probably = The back is probably to your { $side }.
family-back-side-front = The back is to your { $side }, towards your front.
family-back-side-front-probably = The back is probably to your { $side }, towards your front.
family-back-side-spine = The back is to your { $side }, towards your spine.
family-back-side-spine-probably = The back is probably to your { $side }, towards your spine.
family-back-side-square = The back is to your { $side } side.
family-back-side-square-probably = The back is probably to your { $side } side.
family-back-front = The back is towards your front.
family-back-front-probably = The back is probably towards your front.
family-back-spine = The back is towards your spine.
family-back-spine-probably = The back is probably towards your spine.
family-back-ribs = The back is towards your ribs.
family-back-ribs-probably = The back is probably towards your ribs.
family-back-feet = The back is towards your feet.
family-back-feet-probably = The back is probably towards your feet.
family-back-not-told = Hands could not tell where the back is.
family-back-not-felt = The back was not felt for.
family-back-not-noted = Where the back is was not noted.

# What she may notice: common practice. Never an invitation to feel for it.
family-notice-legs-right = You may notice the legs high up, on your right.
family-notice-legs-left = You may notice the legs high up, on your left.
family-notice-legs-high = You may notice the legs high up.
family-notice-limbs-front = You may notice arms and legs at your front.
family-notice-head-high = You may notice the head: a hard, round shape near your ribs.
family-notice-head-left = You may notice the head: a hard, round shape on your left.
family-notice-head-right = You may notice the head: a hard, round shape on your right.
family-notice-head-low-left = You may notice the head: a hard, round shape low on your left.
family-notice-head-low-right = You may notice the head: a hard, round shape low on your right.
family-notice-head-high-left = You may notice the head: a hard, round shape high on your left.
family-notice-head-high-right = You may notice the head: a hard, round shape high on your right.
family-notice-bottom-high = You may notice the bottom: a soft, round shape near your ribs.
# Over what comes next.
family-title-next = What comes next

# Before 36 weeks, or where the weeks are not known.
family-today = This is for today only. It may be different next time.
# Before 36 weeks, of a baby that lies across or on a slant.
# Source: RCOG-50
family-next-later = Ask when your { family-carer } will feel again. If your baby still lies like this at 36 weeks, you make a plan together.
# From 36 weeks.
family-next-title = Talk this over with your { family-carer }. You choose.
# Source: RCOG-BREECH; NASSAR
family-next-scan = A scan, to be more sure
# Source: RCOG-BREECH
family-next-turn = Turning your baby, by trained hands
# Source: RCOG-BREECH
family-next-operation = A planned operation (caesarean)
# Source: RCOG-BREECH
family-next-bottom-first = A planned birth, bottom first
# Source: RCOG-50
family-next-stay = A stay in hospital until the birth
# Source: RCOG-50
family-next-stay-later = A stay in hospital, from 37 weeks on
# Source: NASSAR
family-next-not-told = Ask your { family-carer } about a scan.
# Source: common practice
family-next-twins = Ask your { family-carer } what this may mean for the birth.
# Source: common practice
family-next-again = At your next visit your { family-carer } can feel again. Bring any question.

# At the foot of the first of several sides.
family-over = Turn over: when to call, and whom.
# On a telephone.
family-over-phone = Further down: when to call, and whom.
family-hold = Hold this page on your bump with the picture facing out. Then the sides match.
# How sure the page is: what was felt, heard and seen. $parts is one or more of the family-part messages.
family-sure-title = How sure is this?
family-sure-felt = Felt by hand: { $parts }.
family-sure-heard = Heard: { $parts }.
family-sure-seen = Seen on a scan: { $parts }.
family-sure-felt-unsure = Felt, but not sure: { $parts }.
family-sure-heard-unsure = Heard, but the place is not sure: { $parts }.
family-sure-not-told = Hands could not tell: { $parts }.
family-sure-not-found = Felt for, but not found: { $parts }.
family-sure-not-felt = Not checked: { $parts }.
family-part-head = head
family-part-bottom = bottom
family-part-back = back
family-part-limbs = arms or legs
family-part-heart = heartbeat
family-hands = Hands can be mistaken, and this is not a scan.
family-hands-scan = Some of this was felt by hand and some seen on a scan. The picture is not a scan, and hands can be mistaken.
family-scan = This was seen on a scan. The picture is a drawing, not a scan, and it can be wrong.
# How it was found is not recorded.
family-written = This is what was written down that day. The picture is not a scan, and it can be wrong.
family-turn = Keep this page if you like. It shows one day. Babies turn: do not rely on it later.
family-artist = Face, arms and legs are the artist’s guess.
# Where arms and legs were felt.
family-artist-limbs-felt = Face, hands and feet are the artist’s guess.
# Where it is not known how the baby lies.
family-none-drawn = No baby is drawn, as it is not known how your baby lies.
# Where the womb is lower than a baby of the weeks would take.
family-drawn-smaller = Your baby is drawn smaller, to make room. The picture does not measure your baby.
family-drawn-smaller-number = Baby { $number } is drawn smaller, to make room. The picture does not measure the baby.
family-drawn-rounds = Head and bottom are drawn as two rounds. The picture does not measure your baby.
family-drawn-rounds-number = Head and bottom of baby { $number } are drawn as two rounds. The picture does not measure the baby.

# The mark on the picture.
# Source: RCM-DOP
family-heart = The small ring shows where on your bump your { family-carer } heard the heartbeat. It is a spot on your skin, not the heart itself. If movements change, call; do not listen first.
# Only where it is asked for, and in one paragraph with the limits that follow: common practice.
family-listen = Someone may lay an ear there and listen.
# Source: RCM-DOP
family-listen-limits = Hearing a heartbeat does not mean all is well. Not hearing it is common. If you are worried, call.
family-night-blank = At night ____
family-where-blank = Where ____
family-phone-other = Not urgent? { $purpose }: { $number }

# Only where they are asked for.
family-numbers-title = Numbers from that day
family-number-tape = From the bone low in your front to the top of your womb: { $cm } cm.
family-number-rate = Heartbeats in one minute: { $rate }.
family-number-rate-of = Heartbeats of baby { $number } in one minute: { $rate }.

# Source: CDC-HH
family-worried = If you are worried, call, even if it is not on this page. Say that you are pregnant.
family-clinic-blank = Call ____
family-number-blank = Number ____
# Telephone numbers of the clinic's file. $number is printed as it was written, or is empty: then it stands below, large.
family-phone-always = Day or night: { $number }
family-phone-day = By day: { $number }
family-phone-night = At night: { $number }
family-emergency = Emergency: { $number }
family-emergency-blank = Emergency ____

# Source: NHS-MOVE; HEY-NHS
family-moves-title-one = Is your baby moving less, or differently?
# Source: NHS-MOVE; HEY-NHS
family-moves-title-more = Is either baby moving less, or differently?
# Source: NHS-MOVE; HEY-NHS
family-moves-call = Call now, any hour.
# Source: NHS-MOVE; RCOG-57
family-moves-keep-one = Keep feeling for your baby’s movements, right up to the birth.
# Source: NHS-MOVE; RCOG-57
family-moves-keep-more = Keep feeling for the movements of each baby, right up to the birth.
# Source: NHS-MOVE; HEY-NHS
family-moves-now = If they are fewer or different, call now, day or night.
# $number is the one number of the clinic’s file.
# Source: NHS-MOVE; HEY-NHS
family-moves-now-number = If they are fewer or different, call { $number } now, day or night.
family-heavy-title = If life feels too heavy
# Source: CDC-HH
family-heavy = Feeling low, or afraid? Tell your { family-carer }: there is help. Do you think of hurting yourself? You can say so.
# Source: CDC-HH
family-heavy-now = If you might act on it now: call the emergency number.
# Source: CDC-HH
family-heavy-now-number = If you might act on it now: call { $number }.
# Source: CDC-HH
family-heavy-else = If you are not in danger now, call the clinic’s number, at any hour.
# Source: CDC-HH
family-heavy-else-number = If you are not in danger now, call { $number }, at any hour.
# Source: NHS-MOVE; HEY-NHS
family-moves-wait = Do not wait for the next day.
# Source: NHS-MOVE; RCOG-57
family-moves-late = Babies do not move less near the birth.
# Source: NTH NHS
family-moves-early = None felt by 24 weeks? Call for a check.
# Source: RCM-DOP
family-moves-monitor = Do not use a heart monitor to check. You may hear your own pulse.

# For a baby that is not head down, or whose head is high.
# Source: RCOG-50
family-urgent-waters = Your waters break (fluid leaks) or labour starts (tightenings): come at once.
# Source: RCOG-50
family-urgent-why = With a baby that lies like this, do not wait until tightenings are strong.
# Where the head is high, or how the baby lies is not known.
# Source: RCOG-50
family-urgent-soon = Do not wait until tightenings are strong.
# Source: RCOG-50
family-cord = The cord, like a soft rope, felt or seen between your legs.
# $number is the emergency number of the clinic's file.

# For a baby that lies across or on a slant.
# Source: RCOG-50
family-cord-why = The cord, like a soft rope, felt or seen between your legs. It can slip out first when a baby lies across or on a slant.
# What to do until help comes; each stands beside a small picture of it.
# Source: RCOG-50
family-cord-kneel = With the cord: call, then kneel with your chest down and your hips up.
# Source: RCOG-50
family-cord-lie = Or lie on your left side, hips on pillows. Do not push the cord back.
# $number is the emergency number of the clinic's file.

family-go-title = Call the emergency number now
# $number is the emergency number of the clinic's file.
family-go-title-number = Call { $number } now
# Source: common practice
family-go-bleeding = Heavy bleeding: it runs or soaks through
# Source: CDC-HH; WHO-DS
family-go-breath = Chest pain, or trouble breathing
# Source: WHO-DS; HEAT
family-go-fits = Fits: shaking that you cannot stop
# Source: CDC-HH
family-go-collapse = You faint or collapse
family-come-title = Call now and come in
family-come-title-where = Call now and come in: { $where }
# $number is the one number of the clinic’s file.
family-come-title-number = Call { $number } now and come in
family-come-title-where-number = Call { $number } now and come in: { $where }
# Source: CDC-HH; WHO-DS; HEAT
family-come-bleeding = Any bleeding from the vagina
# Source: CDC-HH; WHO-DS
family-come-pain = Strong belly pain that stays
# Source: CDC-HH; WHO-DS
family-come-head = A bad or lasting headache, or changes in sight: your blood pressure must be checked
# Source: CDC-HH; WHO-DS
family-come-fever = A fever of 38 °C (100.4 °F) or more
# Source: common practice
family-come-green = Green or bloody waters (fluid that leaks)
# Source: CDC-HH; HEAT
family-come-waters = Your waters break: fluid leaks from the vagina
# Source: common practice
family-come-labour = Labour starts, tightenings again and again: call first, and ask when to set off.
# Before 37 weeks, when tightenings again and again are a reason to come in.
# Source: common practice
family-come-labour-later = From 37 weeks, when labour starts: call first, and ask when to set off.
# Source: common practice
family-come-tightenings = Tightenings again and again before 37 weeks
# Source: CDC-HH
family-come-swelling = A very swollen face or hands
# Source: CDC-HH; WHO-DS
family-come-heart = Your own heart racing

family-call-title = Call today
# $number is the one number of the clinic’s file.
family-call-title-number = Call { $number } today
# Source: common practice
family-call-itching = Itching, most of all of hands or feet: a blood test can show why
# Each is named once: two lists with the same word would leave her to choose between them.
# Source: CDC-HH
family-call-vomit = Being sick and not able to stop
# Source: CDC-HH
family-call-tired = Feeling extremely tired, far beyond usual
# Source: CDC-HH
family-call-leg = Pain or swelling in a leg: it can be a blood clot

# $version is the program's.
family-use = This page tells what was found. It does not take the place of a check by your { family-carer } or doctor.

# What the small pictures beside the words show, for who hears the page.
sign-phone = A telephone
sign-ambulance = An ambulance
sign-phone-today = A telephone and the sun
sign-day-night = Sun and moon
sign-moves = A baby that moves
sign-hand-on-belly = A hand on a pregnant belly
sign-blood = A dark drop
sign-heavy-blood = Dark drops over a pool
sign-waters = A clear drop over water
sign-stained-waters = A drop with spots in it
sign-belly-pain = A pregnant belly with a flash of pain
sign-chest = A chest with a flash of pain
sign-heart-racing = A heart that beats fast
sign-faint = Someone who has fallen down
sign-fits = Someone on the ground who shakes
sign-dark-thoughts = A sad face with a dark cloud
sign-cord = A rope between two legs
sign-kneel = Someone who kneels, chest down and hips up
sign-left-side = Someone who lies on the left side, hips on a pillow
sign-itch = A hand that itches
sign-headache = A sad face with a flash of pain
sign-fever = A thermometer
sign-swelling = A swollen face
sign-vomit = Someone over a bowl
sign-tired = Someone lying in bed
sign-leg = A leg with a flash of pain
sign-tightening = A pregnant belly that tightens
sign-clock = A clock
sign-go-in = An arrow into a door

# A page to colour in, for sisters and brothers.
colouring-title = A picture to colour in
colouring-by = Coloured by ____

## Practice cases. `handspan cases`: a sheet for the student, and its key. All are invented.

# $seed: the number that the cases are made from.
case-title = Case { $number }, { $level }, set number { $seed }
case-key-title = Answers to case { $number }, { $level }, set number { $seed }
case-number = Case { $number }
case-key-number = Key to case { $number }
case-which = { $level }, set number { $seed }
case-level-easy = easy
case-level-fair = medium
case-level-hard = hard
case-description = A practice case, number { $number }, { $level }, set number { $seed }: her abdomen, empty, to draw on; what was found; questions with lines for the answers.
case-about = An invented case. No real woman, no real baby. Sides are always HER left and right.
case-key-about = An invented case. Sides are always HER left and right. The picture follows the findings of the visit file.
case-name = Worked by
case-found = What was found at { $weeks } weeks
case-charted = As the chart has it:
case-counted = Counted: { $value }.
# For the tape, so that no curve has to be looked up.
case-curve = For any tape at { $weeks } weeks: the curve has a mean of { $mean } cm, a standard deviation of { $sd } cm, its 10th centile at { $low } cm, its 90th at { $high } cm (INTERGROWTH-21st, BMJ 2016).
# Of a package for learning systems: its name, the empty picture, and choices beside positions.
case-package = Practice cases: the abdomen by hand
case-blank = Her abdomen from the front, empty: her left is at the right of the picture.
case-choice-several = Several positions fit what was found.
case-choice-none = No position fits: at least one finding has to be felt or heard again.
case-choice-cannot-tell = The hands cannot tell.
case-draw = Draw the baby as you think it lies. You stand facing her: her left is at your right.
case-questions = Questions
case-question = { $number }. { $question } ({ $marks ->
        [1] 1 mark
       *[other] { $marks } marks
    })
case-heard = What was then heard
case-marks = Marks, { $marks } in all. Half a mark for what is nearly right; none for a side that is not hers.
case-marks-lie = { $number }: { $marks }: the lie, what leads, and the position, or that several or none fit.
case-marks-listen = { $number }: { $marks }: the place, and why there.
case-marks-lesson = { $number }: { $marks }: the answer, the finding it rests on, and what to do about it.
case-marks-engaged = { $number }: { $marks }: the answer, and what tells it.
case-marks-tape = { $number }: { $marks }: one for each rule.
case-marks-sure = { $number }: { $marks }: the positions that fit, and how far hands can be trusted.
case-marks-tell = { $number }: { $marks }: in her own words and sides, and that hands can be wrong.
case-marks-next = { $number }: { $marks }: what cannot wait first, then the rest, then what is charted.
case-answers = Answers
case-reasoning = Finding by finding
case-sums = Working
case-sources = Calculations and remarks are those of handspan check for the visit file of this case; handspan rules prints their sources.
case-lesson = What this case teaches
case-foot = Practice material for trained people and those in training. From the hands, not a scan. It does not replace local guidance, a clinician's judgement or a scan. handspan { $version }, rules of { $ledger }.

case-ask-lie = How does the baby lie? Give the lie, what leads, and the position.
case-ask-engaged = Is the head engaged? What tells you?
case-ask-listen = Where would you listen first, and why there?
case-ask-tape = What does the tape say at these weeks, by centimetres as weeks and by the curve?
case-ask-sure = Which positions fit everything that was found? How sure can you be?
case-ask-tell = What do you tell her about how her baby lies?
case-ask-next = What do you do next?
case-ask-together = Do all findings go together? What would you feel or hear again, or what is missing?

# $told: lie and position in words. $held: a finding speaks against the others.
case-answer-lie =
    { $lie ->
        [longitudinal] The lie is longitudinal.
        [transverse] The lie is transverse.
        [oblique] The lie is oblique.
       *[none] { "" }
    } { $told } { $held ->
        [yes] So say the findings that led to it. It is not charted until what speaks against it has been felt or heard again.
       *[no] { "" }
    }
case-answer-engaged-heads-only = Engaged is said of a head only. Here no head lies over the brim.
case-answer-engaged-unknown = It cannot be told: fifths of the head above the brim were not felt.
case-answer-engaged-conflict = Not to be charted as engaged: the fifths speak against where the head was felt.
# $place: in the words of a visit file. $through: what the sound passes.
case-answer-listen = On her abdomen: { $place }. { $through ->
        [faint] The side that carries the sound is turned towards her spine, so it may be faint there, or best heard further out in the flank.
        [chest] The baby is bent back, and its chest lies nearest to the skin there.
       *[back] The baby's upper back lies nearest to the skin there.
    } A place where a heart is heard supports a position; it never proves one.
case-answer-listen-side = Begin { $side ->
        [left] on her left, where the back was felt, and go on towards the flank
        [right] on her right, where the back was felt, and go on towards the flank
       *[none] below the navel near the midline, and go on into both flanks
    } until it is clearest. Where it is heard supports a position; it never proves one.
case-answer-listen-unknown = The hands do not say where to begin: listen on both sides, above and below the navel, and chart where it is clearest.
case-answer-sure-one = One position fits everything that was found: { $positions }. That is what hands say, and hands are often wrong: at 35 to 37 weeks they missed 3 in 10 babies that were not head down (Nassar, BMJ 2006), and how a back is turned is harder still. Say “probably”; only a scan shows how the baby lies.
case-answer-sure-several = { $count } positions fit: { $positions }. The findings do not decide between them; say so, and feel on.
case-answer-sure-none = No position fits everything that was found. At least one finding has to be felt or heard again before a position is charted.
case-answer-sure-cannot-tell = The hands cannot tell how this baby lies. That is an answer: chart it as it is, and ask for a scan.
case-answer-tell =
    { $lie ->
        [head-down] “Your baby lies head down today{ $back ->
            [left] , its back on your left side
            [right] , its back on your right side
           *[none] { "" }
        }.
        [bottom-down] “Your baby lies bottom down today{ $back ->
            [left] , its back on your left side
            [right] , its back on your right side
           *[none] { "" }
        }.
        [across] “Your baby lies across today{ $head ->
            [left] , its head on your left side
            [right] , its head on your right side
           *[none] { "" }
        }.
       *[not-told] “My hands cannot tell for certain how your baby lies today.
    } This is what hands found, not a scan: hands can be wrong, and babies turn.”
case-answer-next-none = Beside what is said above no remark stands on these findings, and that rules nothing out. Chart what was found and what was not, and go on by local guidance.

# After a finding: what is left of the positions, with the findings before it.
case-leaves = Leaves: { $positions }.
case-leaves-many = Leaves { $count } positions.
case-leaves-same = Leaves the same.
case-leaves-still-none = Still none.
case-leaves-none = No position is left.
case-leaves-untold = By itself it names no position.

# Each lesson: a story (optional), a question, its answer, and what the case teaches.
case-her-sides-story = You stand at the foot of the couch, facing her. In the second grip your { $hand } hand meets something long and firm, { $turn ->
        [front] well forward towards the midline
       *[lateral] square in the flank
    }; your other hand meets small parts that move.
case-her-sides-ask = On which of HER sides does the back lie? Which position is that?
case-her-sides-answer = On her { $side }: { $position }. You face one another: your { $hand } hand lies on her { $side }.
case-her-sides-lesson = Left and right are always hers. Facing her, your right hand is on her left. Say "her left" aloud before you write it.
case-head-or-bottom-story =
    { $down ->
        [head] First grip: at the top of the womb lies something broad and softer, and it moves only together with the trunk. Third grip: above the pubic bone lies something hard and round that can be moved by itself.
       *[bottom] First grip: at the top of the womb lies something hard and round that can be moved by itself. Third grip: above the pubic bone lies something broad and softer, and it moves only together with the trunk.
    }
case-head-or-bottom-ask = Which end is up, and which is down? What tells them apart?
case-head-or-bottom-answer =
    { $down ->
        [head] The head is down, the bottom up.
       *[bottom] The bottom is down, the head up.
    } A head is hard, round, and moves by itself on the neck; a bottom is broader and softer, and moves only with the trunk.
case-head-or-bottom-lesson = Feel both ends before you name either. When the two feel alike, say so and ask for a scan.
case-fifths-story =
    A student charts: { $right ->
        [yes] "{ $above }/5 palpable: { $below }/5 have gone below the brim."
       *[no] "{ $above }/5, so that much of it has gone down."
    }
case-fifths-ask = Is that right? How much of the head is still above the brim, and is it engaged?
case-fifths-answer =
    { $right ->
        [yes] Yes.
       *[no] No.
    } { $above }/5 palpable: { $above }/5 are still felt above the brim, and { $below }/5 lie below it. { $engaged ->
        [yes] With 2/5 or less still felt above, the head is engaged.
       *[no] With more than 2/5 still felt above, the head is not engaged.
    }
case-fifths-lesson = Fifths count what is still felt above the brim. Always write "palpable" beside them.
case-lie-or-position-story = A colleague says: "This one is transverse."
case-lie-or-position-ask = What is transverse here: the lie, or the position?
case-lie-or-position-answer =
    { $lie ->
        [across] The lie: the baby lies across, and neither end is over the brim.
       *[lengthwise] The position: the baby lies lengthwise, head down, with its back square to one side. The lie is longitudinal.
    }
case-lie-or-position-lesson = "Transverse" alone can be read two ways. Say "transverse lie", or name the position in full.
case-short-count-story = In a hurry the heart was counted once: { $beats } beats in 6 seconds.
case-short-count-ask = Which steady rates can give that count? What would you do?
case-short-count-answer = { $beats } × 10 = { $rate }, but one beat more or less is ten a minute: the count leaves everything between { $low } and { $high } open. Count again for 60 seconds.
case-short-count-lesson = The shorter the count, the coarser the rate: 6 seconds step by 10, 15 seconds by 4, 60 seconds by 1.

case-limbs-both-sides-story = Second grip: nothing broad and firm is met on either side.
case-limbs-both-sides-ask = { case-ask-together }
case-limbs-both-sides-answer = They do. A back that is met on neither side, small parts on both her sides and a dip at the navel say that the back most likely lies towards her spine: the baby's front, with its arms and legs, is turned to you, and the dip lies between them. Whether it lies straight behind or to one side, these findings do not say.
case-limbs-both-sides-lesson = A back that is not found is a finding. Feel far out in both flanks, and think of a baby that lies back to back with her.
case-deep-head-story = Third grip: above the pubic bone hardly anything is felt.
case-deep-head-ask = Which end is down? Which grips settle it?
case-deep-head-answer = The head. The first grip found the bottom at the top of the womb, and the fourth grip finds the last fifth of a head above the brim: the head is deep. In the third grip it was looked for too high.
case-deep-head-lesson = A deep head is easily missed. Before you call a breech, find the head, at the top or with the fourth grip; when you find neither, ask for a scan.
case-low-tape-story = A colleague who felt the head says: "It has gone well down."
case-low-tape-ask = What follows from the tape here?
case-low-tape-answer = It is low for the weeks. A low head can lower the tape, but it cannot rule out a small baby. { $cm } cm stays a low tape: measure again, compare earlier tapes, and follow local guidance on scanning.
case-low-tape-lesson = An explanation is not an answer. A low head never silences a low tape.
case-full-bladder-story = She has come a long way by bus and then waited: { $hours } hours since she left home. She has not been to the toilet yet. The tape says { $cm } cm.
case-full-bladder-ask = What do you make of the { $cm } cm?
case-full-bladder-answer = Nothing yet. Ask her to empty her bladder, feel for the top of the womb again, and measure again with the blank side of the tape up. A full bladder lifts the womb and the tape.
case-full-bladder-lesson = Bladder empty, then tape. A tape over a full bladder is not worth charting.
case-fibroid-ask = What do you make of the tape?
case-fibroid-answer = Set against the weeks or a curve, nothing: a womb with a fibroid, felt on her { $side }, is not read against weeks or a curve. Growth is followed by local guidance on scanning.
case-fibroid-lesson = Some tapes are not fit to be read. Write the number if you must, never a centile, and say why.
case-head-straight-story = Fourth grip: the fingers of both hands stop at the head together, on neither side before the other.
case-head-straight-ask = How is the head held? What tells you?
case-head-straight-answer = Straight, or not well bent: it stands out on both sides alike. With the chin on the chest it stands out on the side of the limbs, and bent right back on the side of the back. It is common when the back lies to a side or behind, and may bend later: feel again at each visit.
case-head-straight-lesson = Where the fingers stop first says how the head is held. It is common practice, and no finding for itself: set it beside the back and the limbs.
case-tape-edge-story = The bladder was empty. The tape was laid over the curve, from the lower border of the pubic bone to the top of the womb, and read { $cm } cm.
case-tape-edge-ask = What do you make of the { $cm } cm?
case-tape-edge-answer = It began at the wrong edge: the tape begins at the upper border of the pubic bone. No arithmetic mends the number: measure again, blank side of the tape up, from the top of the womb down to the upper border.
case-tape-edge-lesson = A tape is worth as much as its two ends. Say both when you chart it: top of the womb, upper border of the pubic bone.
case-whose-heart-story = At the start of the visit her pulse was felt at the wrist: { $pulse } a minute. Later the Doppler gave a clear, regular beat, which was counted twice, as charted.
case-whose-heart-ask = What can be charted about the baby's heart, and why?
case-whose-heart-answer = Not yet that it was heard: whose heart was counted cannot be told, since the two rates lie too close together. Feel her pulse while you listen, find a rate that differs from it, and treat the baby's heart as not yet heard until you have. A pulse of { $pulse } at rest is fast for itself: feel it again, with her temperature, ask how she is, and go by local guidance.
case-whose-heart-lesson = Always feel her pulse while you listen. A Doppler plays back any vessel it meets.
case-fewer-movements-story = While you listen she says: "It has been quieter in there since yesterday."
case-fewer-movements-ask = What do you make of the heart, and of what she says?
case-fewer-movements-answer = What she says decides, not the rate. Fewer movements are assessed now, by local guidance, whatever the rate: a heart that is heard does not settle it.
case-fewer-movements-lesson = A Doppler does not answer fewer movements. What she feels comes first.

case-one-grip-story = A student charts: { $code }.
case-one-grip-ask = { case-ask-together }
case-bottom-down-ask = What follows from how this baby lies at these weeks?
case-bottom-down-answer = It lies bottom down at { $weeks }. Few turn by themselves from here on, and hands can be wrong: ask for a scan, and by local guidance talk with her in good time about turning the baby from outside and about the ways of birth. Engaged and fifths are words for a head.
case-bottom-down-lesson = Bottom down near term is told while there is time to act on it. Which end is up decides: feel the top of the womb first.
case-early-weeks-ask = What do you make of how this baby lies at these weeks?
case-early-weeks-answer = { $lie ->
        [across] Across
       *[bottom-down] Bottom down
    } at { $weeks } is how it lies today and no more: there is room, and most babies turn head down by 36 weeks. Chart it as of today, and feel again at each visit.
case-early-weeks-lesson = Before 36 weeks a lie is a note of the day, not a finding to act on by itself.
case-face-leads-story = She is in labour. The examination from below met a chin, a mouth and a nose.
case-face-leads-ask = What names the position here, and on which of her sides is it? What does the fourth grip tell?
case-face-leads-answer = The chin, which lies opposite to the back: the back was felt on her { $side }, so it is { $position }. The head stands out on the side of the back, for it is bent right back; the heart is heard through the chest, on the side of the limbs. A chin that turns to the front can be born; one that stays behind cannot: call for help early, by local guidance.
case-face-leads-lesson = A face is named by its chin. Back and chin lie on opposite sides, and so does the heart.
case-brow-leads-story = She is in labour. The examination from below met the large fontanelle, the brow ridges and the root of the nose; no mouth, no chin.
case-brow-leads-ask = What leads here, and what names the position? What does the fourth grip tell?
case-brow-leads-answer = The brow, which lies opposite to the back: the back was felt on her { $side }, so it is { $position }. The head stands out on the side of the back. It presents with its longest diameter and cannot be born so unless it bends or stretches further: call for help now, by local guidance.
case-brow-leads-lesson = A head that stays high and stands out on the side of the back asks for an examination from below.
case-heart-too-low-ask = { case-ask-together }
case-heart-too-low-answer = The height of the heart: of a baby that lies bottom down it is heard at the navel or above, as a rule; here it was heard below. Feel both ends again, and listen again above the navel on her { $side }.
case-heart-too-low-lesson = A heart below the navel asks for a second look at which end is down. A bottom deep in the pelvis can bring it down, too.
case-one-grip-answer = They do, but they do not make it { $code }: only the side of the back is known: it may lie to her { $side } front, square to her { $side }, or to her { $side } towards her spine. Feel how far from the midline the back begins, where the limbs are, on which side the head stands out in the fourth grip, and listen.
case-one-grip-lesson = One grip names a side, not a position. Write what you felt, and no more.
case-limbs-against-ask = { case-ask-together }
case-limbs-against-answer = The limbs: they were felt on her { $side }, where the back lies as well, and nowhere else. Feel back and limbs again with one hand steady on the other side.
case-limbs-against-lesson = Back and limbs lie on opposite sides. When both are on one side, one of the two was something else.
case-heart-against-ask = { case-ask-together }
case-heart-against-answer = The place of the heart: the back lies on her { $side }, and the horn heard it best on the other side. Feel the back again, and listen again on her { $side }.
case-heart-against-lesson = The heart is heard best over the back. When ear and hands differ, both are asked again; neither proves the other wrong.
case-heart-too-high-ask = { case-ask-together }
case-heart-too-high-answer = The height of the heart: of a baby that lies head down it is heard below the navel, as a rule; here it was heard above. Feel both ends again, and listen again below the navel on her { $side }.
case-heart-too-high-lesson = A heart above the navel asks for a second look at which end is down.
case-dip-against-ask = { case-ask-together }
case-dip-against-answer = The dip at the navel: under it lies the space between arms and legs of a baby that faces you, but here the back was felt to her { $side } front. Look at the abdomen from the side again, and feel the back again.
case-dip-against-lesson = Looking comes before feeling, and what you see has to go with what you feel.
case-engaged-across-ask = { case-ask-together }
case-engaged-across-answer = The 2/5 palpable: the head was felt in her { $side } flank, so no head can be deep in the pelvis. Feel head, bottom and the brim again; ask for a scan when it stays unclear.
case-engaged-across-lesson = Fifths belong to a head over the brim. One head cannot lie in two places.
case-cannot-tell-ask = { case-ask-together }
case-cannot-tell-answer = Nothing speaks against anything, for both ends and the back are missing. Chart that it could not be told by hand, and why. No position, no lie; the place of the heart names none. Ask for a scan to tell which end is down, by local guidance.
case-cannot-tell-lesson = "Could not tell" is a finding, and a good one. A guess in a chart is worse than a gap.
case-file = An invented case for practice, { $name }: no real woman, no real baby. Made by handspan cases.

## The desk
# The words of the page in the browser. `desk-key-` names a finding in plain words, `desk-formal-` in the words of a chart, where
# they differ; `desk-word-` says a word of the exam language where it needs more than the word itself.

desk-title = handspan: findings of an abdominal examination
desk-subtitle = from the hands to the picture
desk-use = A record, drawing and teaching aid for trained people: from the hands, not a scan. It does not diagnose and does not replace local guidance, a clinician's judgement or a scan.
desk-nothing-leaves = Nothing you enter leaves this device. No name, no date of birth and no number is asked for.
desk-undo = Undo
desk-open = Open
desk-teach = Teaching
desk-new-visit = New visit
desk-close = Close
desk-go-back = Go back
desk-go-on = Go on
desk-fossa = { $value } iliac fossa
desk-aim = Tap on the picture where: { $value }
desk-hand = Hand
desk-hand-right = right
desk-hand-left = left: the way on stands at the left
desk-size = Size
desk-size-usual = usual
desk-size-glove = large, for gloves
desk-see = See
desk-came-beats = About { $value } beats a minute ({ $name })
desk-came-tape = Expected about { $value } cm; this is centile { $number }
desk-came-fits = What was found agrees with: { $value }
desk-hands = Take hold of the baby on the picture
desk-tools = Put on the picture
desk-tool-head = Head
desk-tool-breech = Breech
desk-tool-back = Back
desk-tool-heart = Heart
desk-tool-limbs = Limbs
desk-put = { $name }: { $value }
desk-stage-hint = Drag head, bottom and back to where your hands found them. Her left is at the right; the near edge of the ring is her front.
desk-stage-off = Seen this way, or while words wait, findings are tapped in the steps.
desk-ways = What did your hands find?
desk-way-down = Head down
desk-way-up = Breech down
desk-way-back = back { $value }
desk-recorded = Recorded by you: { $value }.
desk-in-place-of = In place of: { $value }.
desk-usual = Usual visit
desk-usual-hint = Each of these is written as found by you. Take out what you did not ask, see or feel.
desk-usual-so = I found these: write them
desk-show-her = Show her
desk-her-dark = Dark
desk-her-share = Page to her phone
desk-her-alt = How the baby lies { $value }, as she sees it looking down.
desk-skip-line = To the line
desk-skip-print = To printing
desk-begin = Begin
desk-came = What it comes to
desk-bar = Where you are, and on
desk-step-back = One step back
desk-step-next = Next step
desk-all-steps = all steps
desk-missing-count = { $count } missing
desk-missing = Not recorded: { $value }
desk-none-missing = Nothing missing here
desk-remarks-count = Remarks { $count }
desk-to-picture = Picture
desk-to-take = Print, save
desk-unread = Words that are not taken yet
desk-not-read = Not read yet: { $name }: “{ $value }”.
desk-not-taken = Not taken: { $name }: “{ $value }”.
desk-held = The picture is the one before; nothing is printed or saved until this is settled.
desk-go-there = Go to it
desk-drop-words = Leave these words out
desk-replaces = This line leaves out what is recorded
desk-replaces-hint = These would change, or no longer be recorded:
desk-replace = The line alone holds
desk-keep-both = Keep them, and add the line
desk-replaced = Changed by the line: { $value }.
desk-today = Today, { $value }
desk-sure = Sure
desk-take-out = What is recorded, to take out again
desk-clear-finding = Clear: { $name }
desk-pressing = { $name } ({ $count }): { $value }
desk-same-woman = The same woman?
desk-same-woman-hint = One sheet shows one woman. Look at each file and its date:
desk-same-woman-so = The same woman: make the sheet
desk-this-visit = This visit
desk-no-date = no date
desk-not-her-baby = Teaching: not her baby
desk-print = Print
desk-print-by-button = Nothing is printed from here. Go back and press “Print the family page”, or Ctrl+P: her sides are read back first.

desk-one-line = In one line
desk-one-line-hint = Jot it as you would on a chart, such as 37+0 LOA 2/5 palp, SFH 35. What is recorded always stands here as a line.
desk-fill = Read the line

desk-step-weeks = Weeks
desk-hint-weeks = How far along she is today.
desk-step-says = She says
desk-hint-says = Ask before you touch.
desk-step-look = Look
desk-hint-look = Her abdomen as you see it.
desk-step-grip-1 = Fundal palpation
desk-hint-grip-1 = Both hands at the top of the womb: what lies there?
desk-step-grip-2 = Lateral palpation
desk-hint-grip-2 = A hand on each side: where is the back, where are the limbs? Left and right are hers.
desk-step-grip-3 = Pelvic palpation: what presents
desk-hint-grip-3 = One hand above the pubic bone: what lies there?
desk-step-grip-4 = Pelvic palpation: how deep
desk-hint-grip-4 = Facing her feet, fingers down beside the head: how much of it is still above the brim?
desk-step-listen = Listen
desk-hint-listen = Where the heart is heard best, and how fast it beats. Feel her pulse meanwhile.
desk-step-tape = Tape
desk-hint-tape = From the upper border of the pubic bone to the top of the womb, along the curve, blank side up.
desk-step-wrote = Position as you would chart it
desk-hint-wrote = What you conclude yourself. It is held against the findings; alone, it is enough for a picture.

desk-steps = Steps of the examination
desk-more = More to record
desk-from-dates = From dates instead
desk-not-examined = not examined
desk-clear = Clear
desk-unsure = Unsure
desk-reason = Why
desk-known-by = How it is known
desk-by-hand = by hand
desk-by-scan = by scan
desk-by-vaginal = by vaginal examination
desk-scan-weeks = Weeks at the scan
desk-expected = Expected: { $value }.
desk-suggested = Did you mean { $value }?
desk-remove = Take out { $value }
desk-none-written = none written
desk-baby = Baby { $number }
desk-of-baby = Baby { $number }: { $value }
desk-two-babies = Two babies
desk-one-baby = Only one baby
desk-one-baby-hint = What is recorded of baby 2 would be taken out:
desk-one-baby-so = Take baby 2 out

desk-pole-at-fundus = At the fundus
desk-pole-at-brim = Above the pubic bone
desk-pole-breech = Breech
desk-pole-head = Head

desk-her-left = Her left
desk-her-right = Her right
desk-middle = Middle
desk-side = Side
desk-level = Level
desk-in-fields = Or in words or cm
desk-another-place = Another place
# $value is a place in the words of the exam language.
desk-place = hers: { $value }
desk-tap-where = { $name }: tap where, on her abdomen
desk-which-place = Which of these?
desk-outline-hint = Tap where. Her left is at the right.
desk-show-palpation = Show me how
desk-outline-alt = Her abdomen, seen by someone facing her: her left is at the right of the picture. Nothing is recorded yet.
desk-back-side-front = to the front
desk-back-side-lateral = square to the side
desk-back-side-towards-her-spine = towards her spine
desk-back-side-only = side only
desk-back-front = front
desk-back-towards-her-spine = towards her spine
desk-back-towards-her-ribs = towards her ribs (lying across)
desk-back-towards-her-feet = towards her feet (lying across)
desk-fifths = { $value } palpable above the brim
desk-weeks = weeks
desk-weeks-of = { $number } weeks
desk-days = days
desk-and-days = +{ $number } days

desk-count-length = How long to count
desk-count-seconds = { $seconds } s
desk-count-start = Start at a beat
desk-count-tap = Tap at each beat: { $count } so far
desk-count-left = { $seconds } s left
desk-count-stop = Stop, do not keep

desk-key-weeks = Weeks
desk-formal-weeks = gestation
desk-key-visit = Date of this visit
desk-key-due = Due date
desk-key-last-period = First day of the last period
desk-key-cycle = Days of her cycle
desk-key-scan = Early scan
desk-form-scan = weeks and date: 12+3 on 2025-09-20
desk-key-movements = Movements
desk-key-reports = She reports
desk-key-denies = Asked, and not so
desk-key-births-before = Parity
desk-formal-births-before = births before
desk-key-operations = Operations on the womb
desk-key-womb-cut = How the womb was cut
desk-key-placenta = Placenta
desk-key-shape = Shape
desk-key-scars = Scars on the skin
desk-key-skin = Marks of the skin
desk-key-posture = How she lies
desk-key-womb = Tone of the uterus
desk-formal-womb = how the womb feels
desk-key-fundus = Level of the fundus
desk-formal-fundus = top of the womb
desk-key-water = Liquor
desk-formal-water = water, as felt
desk-key-lumps = Fibroids
desk-key-breech = Breech
desk-formal-breech = where the bottom is
desk-key-back = Back
desk-key-limbs = Limbs
desk-key-dip-at-navel = A dip at the navel
desk-key-moved-under-hands = Moved under your hands
desk-key-head = Head
desk-key-attitude = Attitude
desk-formal-attitude = how the head is held
desk-key-legs = Legs
desk-key-head-above-brim = Fifths palpable
desk-formal-head-above-brim = head above the brim
desk-key-prominence = Cephalic prominence
desk-formal-prominence = side on which the head stands out
desk-key-descent = Descent in words
desk-key-heart = Where the heart is heard
desk-key-heart-counts = Count the beats
desk-form-heart-counts = or type: 36 in 15 s; 35 in 15 s
desk-key-heart-rate = Rate
desk-form-heart-rate = beats a minute: 142, or 140-146
desk-key-heart-with = Listened with
desk-key-pulse = Her own pulse
desk-form-pulse = beats a minute
desk-key-heart-rhythm = Rhythm
desk-key-heart-rise = Highest rate on movement
desk-form-heart-rise = beats a minute
desk-key-fundal-height = Fundal height
desk-formal-fundal-height = upper border of the pubic bone to the fundus
desk-form-fundal-height = such as 35
desk-key-earlier-tapes = Earlier tapes
desk-form-earlier-tapes = weeks and length: 32+0 30 cm; 34+0 32 cm
desk-key-girth = Girth at the navel
desk-form-girth = such as 98
desk-key-navel = Navel above the pubic bone
desk-form-navel = such as 18
desk-key-tape-unfit = Why the tape is unfit
desk-key-weight-by-hand = Weight judged by hand
desk-form-weight-by-hand = such as 3.2, or 2.9 kg to 3.2 kg
desk-key-weight-by-scan = Weight by an earlier scan
desk-key-position = Position
desk-key-lie = Lie
desk-key-presentation = Presentation
desk-key-gravida = Pregnancies
desk-key-rupture-before = Earlier rupture of the womb
desk-key-placentas = Placentas of twins
desk-key-rhesus-d = D antigen
desk-key-group-b-strep = Group B strep
desk-key-labour = In labour
desk-key-hours-since-broken = Hours since the waters broke
desk-key-water-colour = Colour of the water
desk-key-consent = Consent
desk-key-comfort = Comfort
desk-key-build = Build
desk-key-scar-feel = How the scar feels
desk-key-muscle-gap = Gap of the midline muscles
desk-key-hernia = Hernia
desk-key-bladder = Bladder
desk-key-temperature = Temperature
desk-key-blood-pressure = Blood pressure
desk-key-breathing = Breaths a minute
desk-key-urine-protein = Protein in the urine
desk-key-contractions-in-ten = Contractions in ten minutes
desk-key-contraction-length = How long they last
desk-key-contraction-strength = How strong they feel
desk-key-tone-at-rest = The womb between contractions
desk-key-tender-at = Where the womb is tender
desk-key-height-for-dates = Height for dates
desk-key-fundus-feels = How it feels at the fundus
desk-key-brim-feels = How it feels above the brim
desk-key-ballottable = Head ballottable
desk-key-overlaps-pubic-bone = Head overlaps the pubic bone
desk-key-found-by-vagina = Found by the vagina
desk-key-station = Station
desk-key-size = Size for dates
desk-key-kicks = Where kicks are felt
desk-key-hiccups = Hiccups
desk-key-unstable-lie = Unstable lie
desk-key-turning-tried = Turning by hand
desk-key-heart-also = Heard also
desk-key-heart-quality = How it sounds
desk-key-heart-slows = Slowing
desk-key-heart-by = Who listened
desk-key-heart-and-pulse = Together with her pulse
desk-key-note = Note
desk-form-note = free words for the chart only; no names

desk-word-right-flank = right flank
desk-word-right = right
desk-word-middle = middle
desk-word-left = left
desk-word-left-flank = left flank
desk-word-fundus = fundus
desk-word-above-navel = above navel
desk-word-at-navel = at navel
desk-word-below-navel = below navel
desk-word-above-pubic-bone = above pubic bone
desk-word-heard = heard, place not noted

desk-how-it-lies = How the baby lies
desk-at-weeks = at { $value } weeks
desk-no-weeks = Weeks not given.
desk-nothing-yet = Nothing recorded yet. What you find appears here.
desk-remarks = Remarks
desk-no-remarks = Nothing recorded here meets an act-now rule or contradicts itself. That rules nothing out.
desk-in-the-file = In the file
desk-picture-alt = Picture of how the baby lies. { $value } Sides are hers: her left is named on the picture.
desk-no-picture = No picture: { $value }
desk-look = How the picture looks
desk-style = Style
desk-style-soft = light and shade
desk-style-line = ink on white
desk-style-sketch = stamp for the chart
desk-view = Seen
desk-view-facing = by someone facing her
desk-view-hers = by her, looking down
desk-labels = Words on it
desk-labels-few = few
desk-labels-all = all
desk-labels-numbered = numbers with a key
desk-labels-none = only the sides
desk-palette = Skin
desk-palette-neutral = ink wash

desk-take = Print, save, hand over
desk-take-print = Print the family page
desk-take-print-hint = the sides are read back first
desk-take-page = Family page
desk-take-phone = Family page for her telephone
desk-take-guide = Guide for drawing on her skin
desk-guide-minutes = Drawing
desk-guide-10 = everything, about ten minutes
desk-guide-1 = a line each, about a minute
desk-guide-hand = The hand that draws
desk-guide-right = right
desk-guide-left = left
desk-growth = The tape over the visits
desk-growth-hint = Several visits saved as files:
# Of a language that no native clinician has signed.
desk-draft-language = { $name } (draft)
desk-page-language = Family page in
desk-page-language-same = the same language
desk-take-slip = Slip for the chart
desk-take-note = Chart note
desk-take-handover = Handover
desk-take-copy = to copy
desk-take-exam = This visit as a file
desk-take-exam-hint = to open here again
desk-take-picture = Picture
desk-take-record = Record
desk-take-fhir = FHIR for the chart
desk-take-share = FHIR to share: no date, no free words
desk-saved = Saved: { $file }
desk-saved-english = Saved, in English: { $file }
desk-copy = Copy
desk-copied = Copied.

desk-read-back = Before it leaves this page: check the sides on her
desk-no-sides = No side is recorded.
desk-it-is-so = The sides are correct: go on
desk-in-hand = This is in hand; make the page all the same.
desk-no-page = No family page is made while findings cannot both be right. Feel again, and change what was wrong.
desk-no-page-unheard = No page for the family is made while the heart has not been heard. Follow your local guidance for a heart not heard first; when it has been heard, record where and with what.
desk-new-title = A new visit?
desk-new-hint = Everything found on this woman is cleared from the page. What you have not saved is gone.
desk-new-so = Clear and begin
desk-blank = The page was left for 20 minutes
desk-blank-hint = What was on it is covered. Is this still the same woman?
desk-same-visit = Same woman, go on
desk-mend = This file cannot be used as it is
desk-mend-text = The text of the file, to correct here
desk-mend-again = Try again
desk-line = Line { $number }:
desk-fault = A fault in this page
desk-fault-hint = What you entered is kept. Copy it to be safe, then go on; if it happens again, leave out what you did last.
desk-fault-text = What you entered

desk-settings = This page and your clinic
desk-language = Language
desk-paper = Paper
desk-theme = Light or dark
desk-theme-device = as the device
desk-theme-light = light
desk-theme-dark = dark
desk-clinic = Your clinic, for the family page
desk-clinic-name = Its name
desk-clinic-labour-ward = Labour ward, day and night
desk-clinic-day = By day
desk-clinic-night = At night
desk-clinic-emergency = Emergency number
desk-keep = Keep these settings on this device; never a finding
desk-forget-all = Forget everything
desk-forgotten = Everything is forgotten.
desk-cannot-keep = This browser keeps nothing.

desk-dial-turn = Turn the baby
desk-dial-lie = Tilt the lie
desk-dial-fifths = Head above the brim
desk-dial-weeks = Weeks
desk-head-low = Head low
desk-head-high = Head high
desk-full-screen = Full screen
desk-back-one = { $name }: one step back
desk-on-one = { $name }: one step on
desk-lie-across-right = across, head on her right
desk-lie-slant-right = slantwise, head on her right
desk-lie-lengthwise = lengthwise
desk-lie-slant-left = slantwise, head on her left
desk-lie-across-left = across, head on her left
desk-teach-alt = A teaching picture without labels.
