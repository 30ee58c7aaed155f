# English (American). What differs from en.ftl; all the rest is said as there.

# Spelling and words of the same language: signed with it.
language-signed = yes
language-name = English (US)

back-ribs = back toward her ribs
back-feet = back toward her feet

family-lie-across = { $baby } is lying across your belly.
family-lie-across-probably = { $baby } is probably lying across your belly.
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
family-heart = The small ring shows where on your belly your midwife heard the heartbeat that day.
# Source: RCOG-BREECH
family-next-operation = A planned operation (C-section)
family-hold = Hold this page on your belly with the picture facing out. Then the sides match.
# Source: RCOG-50
family-urgent-waters = If your water breaks (fluid leaks) or labor starts (contractions): call and come in at once.
# Source: CDC-HH; HEAT
family-call-waters = Your water breaks: fluid leaks from the vagina
# Source: common practice
family-call-labour = Labor starts: contractions again and again
# Source: common practice
family-call-tightenings = Contractions again and again before 37 weeks
# Source: common practice
family-go-green = Green or bloody water (fluid that leaks)
# Source: WHO-DS; HEAT
family-go-fits = Seizures: shaking that you cannot stop
# Source: CDC-HH
family-call-vomit = Throwing up and not able to stop
# Source: CDC-HH; WHO-DS
family-call-fever = A fever of 100.4 °F (38 °C) or more. If you are weak too, go in now.
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
value-reports-fits = seizures
value-reports-tightenings = contractions
value-reports-waters-broken = water broke
value-operations-caesarean = cesarean section
