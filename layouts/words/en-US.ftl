# English (American). What differs from en.ftl; all the rest is said as there.

# Spelling and words of the same language: signed with it.
language-signed = yes
language-name = English (US)

back-ribs = back toward her ribs
back-feet = back toward her feet

family-date = { $month } { $day }, { $year }
family-lie-across = { $how } { $baby } is lying across your belly today.
family-lie-across-probably = { $how } { $baby } is probably lying across your belly today.
family-kind-come = Until your { family-carer } tells you otherwise: if your water breaks (fluid leaks) or labor starts, call and come in at once.
family-back-side-front = The back is to your { $side }, toward your front.
family-back-side-front-probably = The back is probably to your { $side }, toward your front.
family-back-side-spine = The back is to your { $side }, toward your spine.
family-back-side-spine-probably = The back is probably to your { $side }, toward your spine.
family-back-front = The back is toward your front.
family-back-front-probably = The back is probably toward your front.
family-back-spine = The back is toward your spine.
family-back-spine-probably = The back is probably toward your spine.
family-back-ribs = The back is toward your ribs.
family-back-ribs-probably = The back is probably toward your ribs.
family-back-feet = The back is toward your feet.
family-back-feet-probably = The back is probably toward your feet.
family-heart = The small ring shows where on your belly your { family-carer } heard the heartbeat. It is a spot on your skin, not the heart itself. If movements change, call; do not listen first.
family-heavy-now = If you might act on it now: call the emergency number, or 988 in the US.
family-heavy-now-number = If you might act on it now: call { $number }, or 988 in the US.
# Source: RCOG-BREECH
family-next-operation = A planned operation (C-section)
family-hold = Hold this page on your belly with the picture facing out. Then the sides match.
# Source: RCOG-50
family-urgent-waters = Your water breaks (fluid leaks) or labor starts (contractions): come at once.
family-urgent-why = With a baby that lies like this, do not wait until contractions are strong.
family-urgent-soon = Do not wait until contractions are strong.
# Source: WHO-DS; HEAT
family-go-fits = Seizures: shaking that you cannot stop
family-come-fever = A fever of 100.4 °F (38 °C) or more
family-come-green = Green or bloody water (fluid that leaks)
family-come-waters = Your water breaks: fluid leaks from the vagina
family-come-labour = Labor starts, contractions again and again: call first, and ask when to set off.
family-come-labour-later = From 37 weeks, when labor starts: call first, and ask when to set off.
family-come-tightenings = Contractions again and again before 37 weeks
# Source: CDC-HH
family-call-vomit = Throwing up and not able to stop
colouring-title = A picture to color in
colouring-by = Colored by ____

desk-back-side-towards-her-spine = toward her spine
desk-back-towards-her-spine = toward her spine
desk-back-towards-her-ribs = toward her ribs (lying across)
desk-back-towards-her-feet = toward her feet (lying across)
desk-clinic-labour-ward = Labor ward, day and night
desk-key-water = Amniotic fluid

found-water = Amniotic fluid: { $value }.
found-head-above-brim = Engagement / station: { $value } palpable above the brim.
found-head-above-brim-state = Engagement / station: { $value }.
diameter-suboccipitobregmatic = below the occiput to the anterior fontanel (suboccipitobregmatic)
diameter-submentobregmatic = under the chin to the anterior fontanel (submentobregmatic)
numbers-tape-weeks = Centimeters as weeks: { $rule } cm.
numbers-tape-weeks-none = Centimeters as weeks: from 24+0 only.
numbers-tape-no-weeks = Not compared with weeks or percentiles: the weeks are not given.
numbers-tape-unfit = Not compared with weeks or percentiles, and no weight from it: { $why }.
numbers-tape-standard = INTERGROWTH-21st: mean { $mean } cm, SD { $sd } cm; z { $z }, percentile { $centile }.
box-liquor = Amniotic fluid
box-engagement = Engagement / station
value-tape-unfit-much-water = much amniotic fluid
value-labour-not-in-labour = not in labor
value-labour-early-labour = early labor
value-labour-in-labour = in labor
value-reports-fits = seizures
value-reports-tightenings = contractions
value-reports-waters-broken = water broke
value-operations-caesarean = cesarean section

wall-grip-2-both = Limbs on both sides: the back may lie toward her spine.
wall-now-waters = Ruptured membranes, and the baby is not head down or the head is free.
wall-sources = Sources: fifths, pulse and tape: Theron, Maternal Care (Bettercare). Grips and levels: Klein, Miller, Thomson, A Book for Midwives (Hesperian). Weeks and tape: WHO. Rates: NICHD 2008; WHO. The rest is common practice. From the hands, not a scan; it does not diagnose, and does not replace local guidance, a clinician's judgment or a scan.
found-labour = Labor: { $value }.
found-hours-since-broken = Membranes ruptured for: { $value }.
numbers-buchmann = Buchmann: { $grams } g, made for labor at term.{ $large ->
    [yes] {" "}In labor a tape of 40 cm or more makes over 4000 g possible: plan for it by your local guidance.
   *[no] {""}
 }
chart-cautions = From the hands, not a scan, except where it says so; sides are the mother's. A record: it does not diagnose and does not replace local guidance, a clinician's judgment or a scan.
fhir-labour = Whether she is in labor
fhir-hours-since-broken = Hours since the water broke
fhir-water-colour = Color and smell of the water that has come
growth-standard = z { $z }, percentile { $centile }
remark-waters-broken-not-head-down = The water has broken and the baby is not head down. Call for help now and follow your local guidance for ruptured membranes with a baby that is not head down; think first of cord prolapse.
remark-waters-broken-lie-not-known = The water has broken and it is not recorded that the baby is head down. Feel for the head now, and follow your local guidance for ruptured membranes; think first of cord prolapse.
remark-waters-broken-head-free = The water has broken and the head is free above the brim. Call for help now and follow your local guidance for ruptured membranes with a free head; think first of cord prolapse.
remark-tape-below-p10 = The tape is { $cm } cm at { $weeks }: percentile { $centile }, below the tenth. Measure again with the bladder empty and the blank side of the tape up, compare earlier tapes, and follow your local guidance on a scan for growth.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-tape-above-p90 = The tape is { $cm } cm at { $weeks }: percentile { $centile }, above the ninetieth. Measure again with the bladder empty and the blank side of the tape up, feel again for much amniotic fluid, lumps and a second baby, compare earlier tapes, and follow your local guidance on a large tape.
remark-tape-four-weeks-behind = The tape is { $cm } cm at { $weeks }: four weeks or more behind the mean, at percentile { $centile }{ $reaches ->
    [none] {""}
   *[other] {" "}(it is the mean of { $reaches })
 }. Measure again with the bladder empty and the blank side of the tape up, compare earlier tapes, and arrange a scan for growth by your local guidance without waiting for the next visit.{ $head ->
    [low] {" "}{ tape-low-head }
   *[other] {""}
 }
remark-heart-outside-usual = The rate is { $rate } beats a minute, { $direction ->
    [low] under 110
   *[other] over 160
 }. Listen again for a full minute with a hand on her pulse; if it is still so, or there is fever, bleeding, ruptured membranes, fewer movements or labor, it cannot wait. Follow your local guidance.
remark-dip-with-a-back-in-front = A dip at the navel goes with a back toward her spine, and the back was found to the front ({ $said }). Feel both flanks for the back again.
remark-crosswise-at-term = The baby is in a transverse or oblique lie, and 37 weeks have passed. Have it confirmed by a scan and follow your local guidance: admission should be talked over, and she is to come in at once if labor starts or the water breaks, because of the risk of cord prolapse.
remark-head-overlaps-in-labour = The head overlaps the pubic bone, and she is in labor or has regular tightenings. Call for senior help now, listen to the heart, and follow your local guidance for a head that does not enter the brim in labor.
remark-unstable-lie-in-labour = The lie keeps changing, and she is in labor or her water has broken. Feel now how the baby lies, call for help, and follow your local guidance for an unstable lie; think first of cord prolapse.
remark-unstable-lie = The lie keeps changing. Follow your local guidance for an unstable lie: admission should be talked over, and she is to come in at once if labor starts or the water breaks, because of the risk of cord prolapse.
remark-waters-broken = The water has broken. Ask how many hours ago, the color and smell, the movements, and whether group B strep was found; listen to the heart, take her temperature, and follow your local guidance today. If the head rises, or a cord is seen or felt, call for help at once.
remark-part-by-vagina-in-labour = Found by the vagina: { $signs }, and she is in labor or her water has broken. Call for senior help now, and follow your local guidance for it.
remark-part-by-vagina = Found by the vagina: { $signs }. Ask for a senior review today by your local guidance; if labor starts or the water breaks, it cannot wait.
remark-blow-or-fall = She reports a blow, a fall or a crash. Ask what happened and where she was hit, ask about pain, bleeding, leaking fluid and movements, listen to the heart, and follow your local guidance for it today.
remark-fever = { $measured ->
    [yes] Her temperature is { $celsius } °C
   *[other] She reports fever
 }. Take her temperature, pulse, breathing and blood pressure again today, ask about leaking fluid, pain and burning urine, feel the womb, and follow your local guidance for fever in pregnancy.
remark-womb-cut-in-labour = The uterine incision was vertical, T or J, or the uterus has torn before, and there is pain, tightening or labor. Call for senior help now, and follow your local guidance for it.
remark-womb-cut-not-known-in-labour = There has been previous uterine surgery, the uterine incision is not recorded, and there are tightenings or labor. Call for help now, find the operation note, and until it is found follow your local guidance as for an incision that is not low transverse.
remark-caesarean-without-a-birth = A cesarean is recorded, and no birth before this one. Ask again about earlier births, and correct whichever is not so.
remark-regular-tightenings-before-term = Tightenings are regular or painful, or she is in labor, { $weeks ->
    [known] before 37 weeks
   *[other] and the weeks are not known
 }. Get help and follow your local guidance for labor before term now.
remark-waters-broken-before-term = The water has broken, { $weeks ->
    [known] before 37 weeks
   *[other] and the weeks are not known
 }. Get help and follow your local guidance for ruptured membranes before term now; make no vaginal examination unless it says so.
remark-waters-broken-strep = The water has broken, and group B strep was found in this pregnancy. Ask today for what your local guidance offers in this case, without waiting for labor; if the head rises, or a cord is seen or felt, call for help at once.
remark-waters-broken-long = The water has been broken for { $hours } hours. Take her temperature and pulse, listen to the heart, and talk with her today about what your local guidance offers after 24 hours.
remark-water-not-clear = The amniotic fluid is: { $signs }. Listen to the heart, get help and follow your local guidance for it now.
remark-after-42-weeks = 42 weeks have passed. Look again today at what was agreed with her, and ask whether a heart tracing twice a week and a scan of the amniotic fluid are arranged, by your local guidance.
remark-water-little = There seems to be little amniotic fluid, by hand. Ask about leaking fluid and movements, and follow your local guidance on a scan for it.
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
 } at { $second }. Feel again at each visit, have the lie of the day confirmed by a scan, and follow your local guidance for a lie that changes from 37 weeks on: admission should be talked over, and she is to come in at once if labor starts or the water breaks, because of the risk of cord prolapse.
remark-crosswise-in-labour = The baby is in a transverse or oblique lie, and she is in labor or has regular tightenings. Call for help now and follow your local guidance for labor with such a lie; think first of cord prolapse.
skin-pen-dark = in a dark color that shows on hers, such as dark blue, plum or deep green, and red for the heart
skin-pen-light = in a light color that shows on hers, such as white, cream or pale yellow, and gold for the heart
skin-back-behind = It lies toward her spine, behind the baby: no back to draw.
case-curve = For any tape at { $weeks } weeks: the curve has a mean of { $mean } cm, a standard deviation of { $sd } cm, its 10th percentile at { $low } cm, its 90th at { $high } cm (INTERGROWTH-21st, BMJ 2016).
case-foot = Practice material for trained people and those in training. From the hands, not a scan. It does not replace local guidance, a clinician's judgment or a scan. handspan { $version }, rules of { $ledger }.
case-answer-listen = On her abdomen: { $place }. { $through ->
        [faint] The side that carries the sound is turned toward her spine, so it may be faint there, or best heard further out in the flank.
        [chest] The baby is bent back, and its chest lies nearest to the skin there.
       *[back] The baby's upper back lies nearest to the skin there.
    } A place where a heart is heard supports a position; it never proves one.
case-answer-listen-side = Begin { $side ->
        [left] on her left, where the back was felt, and go on toward the flank
        [right] on her right, where the back was felt, and go on toward the flank
       *[none] below the navel near the midline, and go on into both flanks
    } until it is clearest. Where it is heard supports a position; it never proves one.
case-her-sides-story = You stand at the foot of the couch, facing her. In the second grip your { $hand } hand meets something long and firm, { $turn ->
        [front] well forward toward the midline
       *[lateral] square in the flank
    }; your other hand meets small parts that move.
case-limbs-both-sides-answer = They do. A back that is met on neither side, small parts on both her sides and a dip at the navel say that the back most likely lies toward her spine: the baby's front, with its arms and legs, is turned to you, and the dip lies between them. Whether it lies straight behind or to one side, these findings do not say.
case-fibroid-lesson = Some tapes are not fit to be read. Write the number if you must, never a percentile, and say why.
below-small-fontanelle = small fontanel
below-large-fontanelle = large fontanel
case-face-leads-story = She is in labor. The examination from below met a chin, a mouth and a nose.
case-brow-leads-story = She is in labor. The examination from below met the large fontanel, the brow ridges and the root of the nose; no mouth, no chin.
case-one-grip-answer = They do, but they do not make it { $code }: only the side of the back is known: it may lie to her { $side } front, square to her { $side }, or to her { $side } toward her spine. Feel how far from the midline the back begins, where the limbs are, on which side the head stands out in the fourth grip, and listen.
desk-use = A record, drawing and teaching aid for trained people: from the hands, not a scan. It does not diagnose and does not replace local guidance, a clinician's judgment or a scan.
desk-came-tape = Expected about { $value } cm; this is percentile { $number }
desk-key-labour = In labor
desk-key-hours-since-broken = Hours since the water broke
desk-key-water-colour = Color of the water
