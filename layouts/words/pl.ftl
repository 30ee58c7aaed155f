# Polski, the family page alone, said to "Pani", whose sides "Pani lewa, Pani prawa" are hers alone. A draft: see `language-signed`.
# Who cares for her stands in brackets, since a clinic's own word may be of either gender and is not declined.

# no, until a native midwife or doctor has read every message against the English; then yes, and who and when in a comment.
language-signed = no
language-name = polski
language-of-exams = no
draft-mark = PROJEKT
draft-note = PROJEKT: żadna położna ani lekarz z tym językiem ojczystym nie sprawdzili tego tekstu. Ważny jest tekst angielski.

decimal-sign = ,

## Sides and parts

her-left = Lewa strona matki
her-right = Prawa strona matki
your-left = Pani lewa strona
your-right = Pani prawa strona

## On the picture

label-of-baby = dziecko { $number }: { $part }
label-baby = dziecko { $number }
label-unsure = prawdopodobnie { $part }
label-not-felt = { $part }, miejsce nieznane
label-doubt = { $part }, niepewne
label-head = głowa
label-back = plecy
label-back-behind = plecy, z tyłu
label-bottom = pośladki
label-back-not-felt = plecy: nie wiadomo gdzie
label-limbs-felt = ręce lub nogi
label-heart = tętno słyszane tu
label-heart-family = tętno słyszane tu
label-fundus-cm = górny brzeg macicy, { $cm } cm
label-fundus-expected = górny brzeg macicy, oczekiwany
label-fundus-level = górny brzeg macicy
label-fifths = { $fifths } wyczuwalne nad wchodem miednicy
label-brim = wchód miednicy
label-pubic-bone = kość łonowa
label-navel = pępek
label-navel-level = wysokość pępka
label-womb = macica
label-handbooks = tu podręczniki podają górny brzeg w { $weeks } tyg.
label-scar = blizna
label-small-scars = małe blizny
label-lump = guzek (mięśniak)
told-lump = pierścień: guzek (mięśniak)
told-limbs = mały pierścień: ręce lub nogi
told-brim = długa linia przerywana: wchód miednicy

## The family page

family-title-one = Jak leży Pani dziecko
family-title-more = Jak leżą Pani dzieci
family-name = Imię lub przydomek ____
family-carer = położna
family-midwife = Opiekuje się Panią ({ family-carer }) ____
family-words = Kilka słów dla Pani ____
family-felt-on = Zbadano rękami dnia ____
family-felt-on-at = Zbadano rękami dnia ____ ciąża: { $age }
family-noted-on = Zapisano dnia ____
family-noted-on-at = Zapisano dnia ____ ciąża: { $age }
family-weeks = { $weeks } tyg.
family-weeks-day = { $weeks } tyg. i 1 dzień
family-weeks-days = { $weeks } tyg. i { $days } dni

family-baby-one = Pani dziecko
family-baby-number = Dziecko { $number }
family-how-hands = jak wyczuto rękami ({ family-carer })
family-how-hands-scan = jak wyczuto rękami i widziano na usg
family-how-scan = jak widziano na usg
family-how-written = jak zapisano

family-depth-head-free = Głowa jest jeszcze nad Pani miednicą.
family-depth-head-brim = Głowa jest u wejścia do Pani miednicy.
family-depth-head-deep = Głowa jest już w Pani miednicy.
family-depth-bottom-free = Pośladki są jeszcze nad Pani miednicą.
family-depth-bottom-brim = Pośladki są u wejścia do Pani miednicy.
family-depth-bottom-deep = Pośladki są już w Pani miednicy.
family-depth-unsure = Nie jest pewne, jak nisko się znajduje.

family-kind-bottom = Wiele dzieci leży pośladkami w dół przed 36. tygodniem. Blisko porodu tak leży 3 lub 4 na 100.
family-kind-bottom-late = Blisko porodu 3 lub 4 na 100 dzieci leżą pośladkami w dół. To nie przez nic, co Pani zrobiła.
family-kind-changes = Przed 36. tygodniem dzieci jeszcze zmieniają ułożenie.
family-kind-plan = Potrzebny jest plan. Proszę dziś zapytać, kto Panią zobaczy.
family-kind-come = Jeśli odejdą wody (wycieka płyn) lub zacznie się poród, proszę dzwonić i od razu przyjechać.

family-lie-head-down = { $baby } leży dziś głową w dół, { $how }.
family-lie-head-down-probably = { $baby } leży dziś prawdopodobnie głową w dół, { $how }.
family-lie-bottom-down = { $baby } leży dziś pośladkami w dół, { $how }.
family-lie-bottom-down-probably = { $baby } leży dziś prawdopodobnie pośladkami w dół, { $how }.
family-lie-across = { $baby } leży dziś w poprzek brzucha, { $how }.
family-lie-across-probably = { $baby } leży dziś prawdopodobnie w poprzek brzucha, { $how }.
family-lie-slanting = { $baby } leży dziś na skos, { $how }.
family-lie-slanting-probably = { $baby } leży dziś prawdopodobnie na skos, { $how }.
family-lie-not-told = Rękami nie udało się wyczuć, jak leży Pani dziecko.
family-lie-not-told-number = Rękami nie udało się wyczuć, jak leży dziecko { $number }.
family-lie-not-felt = Nie badano rękami, jak leży Pani dziecko.
family-lie-not-felt-number = Nie badano rękami, jak leży dziecko { $number }.
family-lie-early = Jest za wcześnie, by wyczuć, jak leży Pani dziecko.
family-early-picture = Rysunek pokazuje, jak wysoko urosła macica.

family-head-left = Głowa jest po Pani lewej stronie.
family-head-right = Głowa jest po Pani prawej stronie.
family-head-low-left = Głowa jest nisko, po Pani lewej stronie.
family-head-low-right = Głowa jest nisko, po Pani prawej stronie.
family-head-high-left = Głowa jest wysoko, po Pani lewej stronie.
family-head-high-right = Głowa jest wysoko, po Pani prawej stronie.
family-head-low = Głowa jest nisko.
family-head-high = Głowa jest wysoko.

family-side-left = lewej
family-side-right = prawej
family-back-side = Plecy są po Pani { $side } stronie.
family-back-side-probably = Plecy są prawdopodobnie po Pani { $side } stronie.
family-back-side-front = Plecy są po Pani { $side } stronie, ku przodowi.
family-back-side-front-probably = Plecy są prawdopodobnie po Pani { $side } stronie, ku przodowi.
family-back-side-spine = Plecy są po Pani { $side } stronie, ku Pani kręgosłupowi.
family-back-side-spine-probably = Plecy są prawdopodobnie po Pani { $side } stronie, ku Pani kręgosłupowi.
family-back-side-square = Plecy są dokładnie z boku, po Pani { $side } stronie.
family-back-side-square-probably = Plecy są prawdopodobnie dokładnie z boku, po Pani { $side } stronie.
family-back-front = Plecy są ku przodowi.
family-back-front-probably = Plecy są prawdopodobnie ku przodowi.
family-back-spine = Plecy są ku Pani kręgosłupowi.
family-back-spine-probably = Plecy są prawdopodobnie ku Pani kręgosłupowi.
family-back-ribs = Plecy są ku Pani żebrom.
family-back-ribs-probably = Plecy są prawdopodobnie ku Pani żebrom.
family-back-feet = Plecy są ku Pani stopom.
family-back-feet-probably = Plecy są prawdopodobnie ku Pani stopom.
family-back-not-told = Rękami nie udało się wyczuć, gdzie są plecy.
family-back-not-felt = Nie szukano pleców rękami.
family-back-not-noted = Nie zapisano, gdzie są plecy.

family-notice-legs-right = Może Pani czuć nogi wysoko, po Pani prawej stronie.
family-notice-legs-left = Może Pani czuć nogi wysoko, po Pani lewej stronie.
family-notice-legs-high = Może Pani czuć nogi wysoko.
family-notice-limbs-front = Może Pani czuć ręce i nogi z przodu.
family-notice-head-high = Może Pani czuć głowę: coś twardego i okrągłego blisko żeber.
family-notice-head-left = Może Pani czuć głowę: coś twardego i okrągłego po Pani lewej stronie.
family-notice-head-right = Może Pani czuć głowę: coś twardego i okrągłego po Pani prawej stronie.

family-today = To jest tylko na dziś. Następnym razem może być inaczej.
family-next-title = Proszę o tym porozmawiać ({ family-carer }). Pani wybiera.
family-next-scan = Badanie usg, dla większej pewności
family-next-turn = Obrócenie dziecka od zewnątrz, przez wyszkolone ręce
family-next-operation = Zaplanowana operacja (cesarskie cięcie)
family-next-bottom-first = Zaplanowany poród, pośladkami naprzód
family-next-stay = Pobyt w szpitalu do porodu
family-next-stay-later = Pobyt w szpitalu, od 37. tygodnia
family-next-not-told = Proszę zapytać o usg ({ family-carer }).
family-next-twins = Proszę zapytać, co to może znaczyć dla porodu ({ family-carer }).
family-next-again = Na następnej wizycie można zbadać znowu. Proszę pytać o wszystko.

family-over = Na odwrocie: kiedy dzwonić i do kogo.
family-over-phone = Niżej: kiedy dzwonić i do kogo.
family-hold = Proszę przyłożyć tę kartkę do brzucha, rysunkiem na zewnątrz. Wtedy strony się zgadzają.
family-hands = Ręce mogą się mylić, a to nie jest usg.
family-hands-scan = Część wyczuto rękami, a część widziano na usg. Rysunek nie jest obrazem usg, a ręce mogą się mylić.
family-scan = To widziano na usg. Rysunek nie jest obrazem usg i może być błędny.
family-written = To zapisano tego dnia. Rysunek nie jest obrazem usg i może być błędny.
family-turn = Proszę zachować tę kartkę, ale na niej nie polegać: dzieci się obracają. Pokazuje jeden dzień.
family-artist = Twarz, ręce i nogi to pomysł rysownika.
family-artist-limbs-felt = Twarz, dłonie i stopy to pomysł rysownika.
family-none-drawn = Dziecka nie narysowano, bo nie wiadomo, jak leży.
family-drawn-smaller = Pani dziecko narysowano mniejsze, z braku miejsca. Rysunek nie mierzy Pani dziecka.
family-drawn-smaller-number = Dziecko { $number } narysowano mniejsze, z braku miejsca. Rysunek nie mierzy dziecka.
family-drawn-rounds = Głowę i pośladki narysowano jako dwa koła. Rysunek nie mierzy Pani dziecka.
family-drawn-rounds-number = Głowę i pośladki dziecka { $number } narysowano jako dwa koła. Rysunek nie mierzy dziecka.

family-heart = Małe kółko pokazuje, gdzie na brzuchu słyszano tętno ({ family-carer }). To nie jest serce. Jeśli ruchy się zmienią, proszę dzwonić; nie słuchać najpierw.
family-listen = Ktoś może przyłożyć tam ucho i słuchać.
family-listen-limits = Słyszane tętno nie wystarczy, by być spokojną. Często go nie słychać. Jeśli coś Panią niepokoi, proszę dzwonić.

family-night-blank = W nocy ____
family-where-blank = Gdzie ____
family-phone-other = { $purpose }: { $number }
family-numbers-title = Liczby z tego dnia
family-number-tape = Od kości nisko z przodu do górnego brzegu macicy: { $cm } cm.
family-number-rate = Uderzenia serca na minutę: { $rate }.
family-number-rate-of = Uderzenia serca dziecka { $number } na minutę: { $rate }.
family-worried = Jeśli coś Panią niepokoi, proszę dzwonić, nawet jeśli nie ma tego na tej kartce. Proszę powiedzieć, że jest Pani w ciąży.
family-clinic-blank = Proszę dzwonić: ____
family-number-blank = Numer ____
family-phone-always = W dzień i w nocy: { $number }
family-phone-day = W dzień: { $number }
family-phone-night = W nocy: { $number }
family-emergency = Numer alarmowy: { $number }
family-emergency-blank = Numer alarmowy ____

family-moves-title-one = Czy Pani dziecko rusza się mniej lub inaczej?
family-moves-title-more = Czy Pani dzieci ruszają się mniej lub inaczej?
family-moves-call = Proszę dzwonić teraz, o każdej porze.
family-moves-keep-one = Proszę zwracać uwagę na ruchy dziecka, aż do porodu.
family-moves-keep-more = Proszę zwracać uwagę na ruchy każdego dziecka, aż do porodu.
family-moves-now = Jeśli jest ich mniej lub są inne, proszę dzwonić teraz, w dzień lub w nocy.
family-heavy-title = Jeśli życie zbyt ciąży
family-heavy = Czy myśli Pani, by zrobić sobie krzywdę? Można to powiedzieć.
family-heavy-now = Jeśli może Pani to zrobić teraz: proszę dzwonić na numer alarmowy.
family-heavy-now-number = Jeśli może Pani to zrobić teraz: proszę dzwonić pod { $number }.
family-heavy-else = Jeśli nie, proszę dzwonić pod numer przychodni, o każdej porze.
family-heavy-else-number = Jeśli nie, proszę dzwonić pod { $number }, o każdej porze.
family-moves-wait = Proszę nie czekać do następnego dnia.
family-moves-late = Blisko porodu dzieci nie ruszają się mniej.
family-moves-early = Nic nie czuć do 24. tygodnia? Proszę dzwonić w sprawie badania.
family-moves-monitor = Proszę nie sprawdzać aparatem do tętna. Można usłyszeć własny puls.

family-urgent-waters = Odchodzą wody (wycieka płyn) lub zaczyna się poród (skurcze): proszę od razu przyjechać.
family-cord = Pępowina, jak miękki sznur, wyczuwalna lub widoczna między nogami
family-cord-why = Pępowina, jak miękki sznur, wyczuwalna lub widoczna między nogami. Może wypaść pierwsza, gdy dziecko tak leży.
family-go-title = Proszę teraz dzwonić na numer alarmowy
family-go-title-number = Proszę teraz dzwonić pod { $number }
family-go-bleeding = Mocne krwawienie: krew płynie lub przesiąka
family-go-breath = Ból w klatce piersiowej lub trudności z oddychaniem
family-go-fits = Drgawki: drżenie, którego nie da się zatrzymać
family-go-collapse = Omdlenie lub upadek
family-come-title = Proszę teraz dzwonić i przyjechać
family-come-title-where = Proszę teraz dzwonić i przyjechać: { $where }
family-come-bleeding = Każde inne krwawienie z pochwy
family-come-pain = Silny ból brzucha, który nie mija
family-come-head = Silny lub długi ból głowy albo zmiany widzenia: trzeba zmierzyć ciśnienie
family-come-fever = Gorączka 38 °C (100,4 °F) lub więcej
family-come-green = Zielone lub krwawe wody (płyn, który wycieka)
family-come-waters = Odchodzą wody: płyn wycieka z pochwy
family-come-labour = Zaczyna się poród, skurcze raz po raz: proszę dzwonić i zapytać, kiedy przyjechać
family-come-tightenings = Skurcze raz po raz przed 37. tygodniem
family-come-swelling = Bardzo spuchnięta twarz lub ręce
family-come-heart = Bardzo szybkie bicie serca
family-call-title = Proszę dzwonić dziś
family-call-itching = Swędzenie, zwłaszcza rąk lub stóp: badanie krwi może pokazać dlaczego
family-call-vomit = Wymioty, które nie ustają
family-call-tired = Zbyt silne zmęczenie
family-call-leg = Ból lub obrzęk nogi: to może być zakrzep
family-use = Rysunek tego, co znaleziono. Nie zastępuje badania ({ family-carer } lub lekarz).

sign-phone = Telefon
sign-day-night = Słońce i księżyc
sign-moves = Dziecko, które się rusza
sign-blood = Ciemna kropla
sign-waters = Przejrzysta kropla nad wodą
sign-stained-waters = Kropla z plamkami
sign-belly-pain = Ciążowy brzuch z błyskiem bólu
sign-chest = Klatka piersiowa z błyskiem bólu
sign-faint = Ktoś, kto upadł
sign-fits = Ktoś na ziemi, kto się trzęsie
sign-dark-thoughts = Smutna twarz z ciemną chmurą
sign-cord = Sznur między dwiema nogami
sign-itch = Ręka, która swędzi
sign-headache = Smutna twarz z błyskiem bólu
sign-fever = Termometr
sign-swelling = Spuchnięta twarz
sign-vomit = Ktoś nad miską
sign-tired = Ktoś leżący w łóżku
sign-leg = Noga z błyskiem bólu
sign-tightening = Ciążowy brzuch, który twardnieje
sign-go-in = Strzałka w drzwi

colouring-title = Rysunek do kolorowania
colouring-by = Pokolorowane przez: ____
