/** What each method is from, what its tests hold it against, and its formula. Titles of works, norms and signs stay as they are. */
import type { Chapter } from "../pattern.ts";

export const methodSources = {
  text: [
    // Where a method is from.
    {
      en: "45 and 50 °C: common practice, the battery's maker has the last word. Freezing points as in the figure freezing-point.",
      pl: "45 i 50 °C: powszechna praktyka, ostatnie słowo ma producent akumulatora. Temperatury zamarzania jak przy temperaturze zamarzania elektrolitu.",
      de: "45 und 50 °C: übliche Praxis, das letzte Wort hat der Batteriehersteller. Gefrierpunkte wie beim Gefrierpunkt der Säure.",
    },
    {
      en: "Bode 1977 (coefficients from memory, checked against two other routes); acid after Myhre 1998.",
      pl: "Bode 1977 (współczynniki z pamięci, sprawdzone dwiema innymi drogami); kwas według Myhre 1998.",
      de: "Bode 1977 (Koeffizienten aus dem Gedächtnis, auf zwei anderen Wegen geprüft); Säure nach Myhre 1998.",
    },
    {
      en: "CRC Handbook, freezing-point depression of sulphuric acid, to 34 %; trade tables above it.",
      pl: "CRC Handbook, obniżenie temperatury krzepnięcia kwasu siarkowego, do 34 %; powyżej tablice branżowe.",
      de: "CRC Handbook, Gefrierpunktserniedrigung von Schwefelsäure, bis 34 %; darüber Tabellen des Handwerks.",
    },
    { en: "DIN 41772 (letters I, U, W, o, a).", pl: "DIN 41772 (litery I, U, W, o, a).", de: "DIN 41772 (Buchstaben I, U, W, o, a)." },
    { en: "Definition.", pl: "Z definicji.", de: "Nach Definition." },
    {
      en: "Definition: 1 Ah = 3600 C. Uncertainty: JCGM 100:2008, 5.2.2 (from memory): a meter's error is common to all its samples.",
      pl: "Z definicji: 1 Ah = 3600 C. Niepewność: JCGM 100:2008, 5.2.2 (z pamięci): błąd miernika jest wspólny dla wszystkich jego próbek.",
      de: "Nach Definition: 1 Ah = 3600 C. Unsicherheit: JCGM 100:2008, 5.2.2 (aus dem Gedächtnis): Der Fehler eines Messgeräts ist allen seinen Messpunkten gemeinsam.",
    },
    {
      en: "Definition: 1 Wh = 3600 J. Uncertainty: JCGM 100:2008, 5.1.2 (from memory).",
      pl: "Z definicji: 1 Wh = 3600 J. Niepewność: JCGM 100:2008, 5.1.2 (z pamięci).",
      de: "Nach Definition: 1 Wh = 3600 J. Unsicherheit: JCGM 100:2008, 5.1.2 (aus dem Gedächtnis).",
    },
    {
      en: "Definition; the efficiency is a stated rule with bounds.",
      pl: "Z definicji; sprawność jest podaną regułą z granicami.",
      de: "Nach Definition; der Wirkungsgrad ist eine angegebene Regel mit Grenzen.",
    },
    {
      en: "Definition; weighing is what IEC 60095-1 and EN 50342-1 prescribe for water consumption (from memory).",
      pl: "Z definicji; ważenie przepisują dla zużycia wody IEC 60095-1 i EN 50342-1 (z pamięci).",
      de: "Nach Definition; Wiegen schreiben IEC 60095-1 und EN 50342-1 für den Wasserverbrauch vor (aus dem Gedächtnis).",
    },
    {
      en: "EN 50342-1, SAE J537 and others test differently; see docs/electrochemistry.md.",
      pl: "EN 50342-1, SAE J537 i inne badają różnie; zob. docs/electrochemistry.md.",
      de: "EN 50342-1, SAE J537 und andere prüfen verschieden; siehe docs/electrochemistry.md.",
    },
    { en: "Faraday's law against the log.", pl: "Prawo Faradaya wobec zapisu.", de: "Faradaysches Gesetz gegen die Aufzeichnung." },
    {
      en: "Faraday's law and the ideal gas; 0.42 l/Ah in IEC 62485-2 is the same at 0 °C.",
      pl: "Prawo Faradaya i gaz doskonały; 0,42 l/Ah w IEC 62485-2 to to samo w 0 °C.",
      de: "Faradaysches Gesetz und ideales Gas; 0,42 l/Ah in IEC 62485-2 ist dasselbe bei 0 °C.",
    },
    {
      en: "Faraday's law, CODATA constants; acid density after Myhre 1998.",
      pl: "Prawo Faradaya, stałe CODATA; gęstość kwasu według Myhre 1998.",
      de: "Faradaysches Gesetz, CODATA-Konstanten; Säuredichte nach Myhre 1998.",
    },
    {
      en: "Faraday's law; 1 mA per Ah on float: IEC 62485-2 as given on public pages. A look at the levels once a month: common practice.",
      pl: "Prawo Faradaya; 1 mA na Ah przy ładowaniu konserwującym: IEC 62485-2 według stron publicznych. Sprawdzanie poziomu raz w miesiącu: powszechna praktyka.",
      de: "Faradaysches Gesetz; 1 mA je Ah bei Erhaltungsladung: IEC 62485-2 nach öffentlichen Seiten. Ein Blick auf die Füllstände einmal im Monat: übliche Praxis.",
    },
    {
      en: "Faraday's law; growth of gassing with voltage and warmth after Schiffer et al. 2007.",
      pl: "Prawo Faradaya; wzrost gazowania z napięciem i ciepłem według Schiffer i in. 2007.",
      de: "Faradaysches Gesetz; Zunahme der Gasung mit Spannung und Wärme nach Schiffer u. a. 2007.",
    },
    {
      en: "Faraday's law; says nothing for sealed batteries, which recombine the gas.",
      pl: "Prawo Faradaya; nic nie mówi o szczelnych akumulatorach, które rekombinują gaz.",
      de: "Faradaysches Gesetz; sagt nichts über verschlossene Batterien, die das Gas rekombinieren.",
    },
    {
      en: "Freezing points of sulphuric acid, as in service manuals and the CRC Handbook; ±3 K between tables.",
      pl: "Temperatury zamarzania kwasu siarkowego, jak w instrukcjach serwisowych i CRC Handbook; ±3 K między tablicami.",
      de: "Gefrierpunkte von Schwefelsäure wie in Werkstatthandbüchern und im CRC Handbook; ±3 K zwischen den Tabellen.",
    },
    {
      en: "Gassing voltage by temperature, 2.385 V a cell at 25 °C (German handbook practice, from memory; 2.40 V at 20 °C is common practice); a day is our definition.",
      pl: "Napięcie gazowania według temperatury, 2,385 V na celę w 25 °C (praktyka niemieckich podręczników, z pamięci; 2,40 V w 20 °C to powszechna praktyka); doba to nasza definicja.",
      de: "Gasungsspannung nach Temperatur, 2,385 V je Zelle bei 25 °C (Praxis deutscher Handbücher, aus dem Gedächtnis; 2,40 V bei 20 °C ist übliche Praxis); ein Tag ist unsere Festlegung.",
    },
    {
      en: "German handbook practice (from memory); 2.40 V at 20 °C is common practice.",
      pl: "Praktyka niemieckich podręczników (z pamięci); 2,40 V w 20 °C to powszechna praktyka.",
      de: "Praxis deutscher Handbücher (aus dem Gedächtnis); 2,40 V bei 20 °C ist übliche Praxis.",
    },
    {
      en: "IEC 60335-2-29, 7.1; JCGM 106:2012; ILAC-G8:09/2019.",
      pl: "IEC 60335-2-29, 7.1; JCGM 106:2012; ILAC-G8:09/2019.",
      de: "IEC 60335-2-29, 7.1; JCGM 106:2012; ILAC-G8:09/2019.",
    },
    {
      en: "IEC 62485-2 as given on public pages; where float ends is our rule.",
      pl: "IEC 62485-2 według stron publicznych; gdzie kończy się ładowanie konserwujące, to nasza reguła.",
      de: "IEC 62485-2 nach öffentlichen Seiten; wo die Erhaltungsladung endet, ist unsere Regel.",
    },
    { en: "ISO 5725-2:1994 (from memory).", pl: "ISO 5725-2:1994 (z pamięci).", de: "ISO 5725-2:1994 (aus dem Gedächtnis)." },
    {
      en: "ISO 5725-2:1994, repeatability standard deviation (from memory).",
      pl: "ISO 5725-2:1994, odchylenie standardowe powtarzalności (z pamięci).",
      de: "ISO 5725-2:1994, Wiederholstandardabweichung (aus dem Gedächtnis).",
    },
    {
      en: "JCGM 106:2012; ILAC-G8:09/2019; compensation as the site's rules have it.",
      pl: "JCGM 106:2012; ILAC-G8:09/2019; kompensacja według reguł witryny.",
      de: "JCGM 106:2012; ILAC-G8:09/2019; Kompensation nach den Regeln der Website.",
    },
    {
      en: "Makers' figures and common practice (13.5 to 13.8 V for 12 V; antimony 13.2 to 13.5 V, from memory); -3 to -5 mV/K a cell unless the site sets its own.",
      pl: "Dane producentów i powszechna praktyka (od 13,5 do 13,8 V dla 12 V; antymonowe od 13,2 do 13,5 V, z pamięci); od −3 do −5 mV/K na celę, chyba że witryna ustala własne.",
      de: "Herstellerangaben und übliche Praxis (13,5 bis 13,8 V für 12 V; Antimon 13,2 bis 13,5 V, aus dem Gedächtnis); −3 bis −5 mV/K je Zelle, wenn die Website nichts Eigenes festlegt.",
    },
    {
      en: "Makers' figures and common practice, as the float-window finding lists them.",
      pl: "Dane producentów i powszechna praktyka, jak przy ustaleniu o pozostawieniu podłączonego.",
      de: "Herstellerangaben und übliche Praxis, wie beim Befund zum Angeschlossenbleiben aufgeführt.",
    },
    {
      en: "Myhre, Nielsen and Saastad, J. Chem. Eng. Data 43 (1998) 617.",
      pl: "Myhre, Nielsen i Saastad, J. Chem. Eng. Data 43 (1998) 617.",
      de: "Myhre, Nielsen und Saastad, J. Chem. Eng. Data 43 (1998) 617.",
    },
    {
      en: "Myhre, Nielsen and Saastad, J. Chem. Eng. Data 43 (1998) 617; conventions of the scale kept apart.",
      pl: "Myhre, Nielsen i Saastad, J. Chem. Eng. Data 43 (1998) 617; konwencje skali rozdzielone.",
      de: "Myhre, Nielsen und Saastad, J. Chem. Eng. Data 43 (1998) 617; Festlegungen der Skala getrennt gehalten.",
    },
    { en: "Our definition.", pl: "Nasza definicja.", de: "Unsere Festlegung." },
    {
      en: "Our definition. Stop rules: three equal corrected readings 15 min apart (IEC 60095-1:2006, 8.2.1, from memory), one hour apart in vehicle service manuals (common practice), or the test's own.",
      pl: "Nasza definicja. Reguły zakończenia: trzy równe odczyty po korekcji co 15 min (IEC 60095-1:2006, 8.2.1, z pamięci), co godzinę w instrukcjach serwisowych pojazdów (powszechna praktyka) albo własna reguła testu.",
      de: "Unsere Festlegung. Abschlussregeln: drei gleiche korrigierte Ablesungen im Abstand von 15 min (IEC 60095-1:2006, 8.2.1, aus dem Gedächtnis), von einer Stunde in Fahrzeug-Werkstatthandbüchern (übliche Praxis) oder die eigene des Tests.",
    },
    {
      en: "Our definition: disorder is up to three usual intervals.",
      pl: "Nasza definicja: nieporządek to do trzech zwykłych odstępów.",
      de: "Unsere Festlegung: Unordnung reicht bis zu drei üblichen Abständen.",
    },
    {
      en: "Our definition: no standard defines it. Interval: that of the energy, open above where its is (docs/projection.md).",
      pl: "Nasza definicja: nie określa tego żadna norma. Przedział: taki jak energii, u góry otwarty tak jak ona (docs/projection.md).",
      de: "Unsere Festlegung: Keine Norm legt es fest. Intervall: das der Energie, wie dieses nach oben offen (docs/projection.md).",
    },
    {
      en: "Our definition: no standard defines it. Intervals: each input moved alone, root of the sum of squares on either side (JCGM 100, 5.1.2).",
      pl: "Nasza definicja: nie określa tego żadna norma. Przedziały: każda wielkość wejściowa przesunięta osobno, pierwiastek z sumy kwadratów po każdej stronie (JCGM 100, 5.1.2).",
      de: "Unsere Festlegung: Keine Norm legt es fest. Intervalle: jede Eingangsgröße für sich verschoben, Wurzel aus der Summe der Quadrate auf jeder Seite (JCGM 100, 5.1.2).",
    },
    {
      en: "Our definition: no standard defines it. Stop rule: three equal readings 15 min apart after IEC 60095-1 (from memory), one hour in other practice, or the test's own.",
      pl: "Nasza definicja: nie określa tego żadna norma. Reguła zakończenia: trzy równe odczyty co 15 min według IEC 60095-1 (z pamięci), w innej praktyce co godzinę, albo własna reguła testu.",
      de: "Unsere Festlegung: Keine Norm legt es fest. Abschlussregel: drei gleiche Ablesungen im Abstand von 15 min nach IEC 60095-1 (aus dem Gedächtnis), in anderer Praxis einer Stunde, oder die eigene des Tests.",
    },
    {
      en: "Our definition; current at a held voltage falls (any battery handbook).",
      pl: "Nasza definicja; prąd przy utrzymywanym napięciu spada (każdy podręcznik o akumulatorach).",
      de: "Unsere Festlegung; Strom bei gehaltener Spannung fällt (jedes Batteriehandbuch).",
    },
    {
      en: "Our definition; docs/projection.md. The curve is the saturating form of NIST StRD Misra1a and BoxBOD.",
      pl: "Nasza definicja; docs/projection.md. Krzywa ma nasycającą się postać NIST StRD Misra1a i BoxBOD.",
      de: "Unsere Festlegung; docs/projection.md. Die Kurve hat die sättigende Form von NIST StRD Misra1a und BoxBOD.",
    },
    {
      en: "Our definition; one minute is common practice.",
      pl: "Nasza definicja; jedna minuta to powszechna praktyka.",
      de: "Unsere Festlegung; eine Minute ist übliche Praxis.",
    },
    {
      en: "Our definition; the factor lets one missed row in a regular log pass.",
      pl: "Nasza definicja; współczynnik przepuszcza jeden brakujący wiersz w regularnym zapisie.",
      de: "Unsere Festlegung; der Faktor lässt eine fehlende Zeile in einer regelmäßigen Aufzeichnung durch.",
    },
    { en: "Our rule; see docs/method.md.", pl: "Nasza reguła; zob. docs/method.md.", de: "Unsere Regel; siehe docs/method.md." },
    { en: "The charger's record.", pl: "Opis prostownika.", de: "Die Angaben zum Ladegerät." },
    { en: "The reading itself.", pl: "Sam odczyt.", de: "Die Ablesung selbst." },
    {
      en: "Vehicle service manuals reject at 0.040 to 0.050 kg/l, a military manual at 0.025 (common practice); what the visits must show is our rule.",
      pl: "Instrukcje serwisowe pojazdów odrzucają przy 0,040 do 0,050 kg/l, instrukcja wojskowa przy 0,025 (powszechna praktyka); co muszą pokazać wizyty, to nasza reguła.",
      de: "Fahrzeug-Werkstatthandbücher verwerfen bei 0,040 bis 0,050 kg/l, ein Militärhandbuch bei 0,025 (übliche Praxis); was die Besuche zeigen müssen, ist unsere Regel.",
    },
    {
      en: "Vehicle service manuals reject at 0.040 to 0.050; a military manual at 0.025 (common practice).",
      pl: "Instrukcje serwisowe pojazdów odrzucają przy 0,040 do 0,050; instrukcja wojskowa przy 0,025 (powszechna praktyka).",
      de: "Fahrzeug-Werkstatthandbücher verwerfen bei 0,040 bis 0,050; ein Militärhandbuch bei 0,025 (übliche Praxis).",
    },
    { en: "docs/projection.md.", pl: "docs/projection.md.", de: "docs/projection.md." },
    {
      en: "docs/projection.md: charge resistance after Copetti, Lorenzo and Chenlo 1993 (from memory), gassing after Schiffer 2007.",
      pl: "docs/projection.md: rezystancja ładowania według Copetti, Lorenzo i Chenlo 1993 (z pamięci), gazowanie według Schiffer 2007.",
      de: "docs/projection.md: Ladewiderstand nach Copetti, Lorenzo und Chenlo 1993 (aus dem Gedächtnis), Gasung nach Schiffer 2007.",
    },
    {
      en: "docs/projection.md: least squares with normal priors over several logs.",
      pl: "docs/projection.md: najmniejsze kwadraty z normalnymi rozkładami a priori na kilku zapisach.",
      de: "docs/projection.md: kleinste Quadrate mit normalen A-priori-Verteilungen über mehrere Aufzeichnungen.",
    },
    {
      en: "docs/reconciliation.md, with every prior; acid balance after Faraday's law, rest voltage after Bode.",
      pl: "docs/reconciliation.md, z każdym rozkładem a priori; bilans kwasu według prawa Faradaya, napięcie spoczynkowe według Bodego.",
      de: "docs/reconciliation.md, mit jeder A-priori-Verteilung; Säurebilanz nach dem Faradayschen Gesetz, Ruhespannung nach Bode.",
    },
    { en: "docs/reconciliation.md.", pl: "docs/reconciliation.md.", de: "docs/reconciliation.md." },
    {
      en: "docs/reconciliation.md; Faraday's law against the log.",
      pl: "docs/reconciliation.md; prawo Faradaya wobec zapisu.",
      de: "docs/reconciliation.md; Faradaysches Gesetz gegen die Aufzeichnung.",
    },
    // What its tests hold it against.
    {
      en: "A held voltage with a wave of known height",
      pl: "Utrzymywane napięcie z falą o znanej wysokości",
      de: "Eine gehaltene Spannung mit einer Welle bekannter Höhe",
    },
    {
      en: "A log with rows cut out: reference W066",
      pl: "Zapis z wyciętymi wierszami: odniesienie W066",
      de: "Eine Aufzeichnung mit herausgeschnittenen Zeilen: Referenz W066",
    },
    {
      en: "A printed compensation: 13.50 V at 25 °C is 13.77 V at 10 °C and 13.32 V at 35 °C",
      pl: "Wydrukowana kompensacja: 13,50 V w 25 °C to 13,77 V w 10 °C i 13,32 V w 35 °C",
      de: "Eine gedruckte Kompensation: 13,50 V bei 25 °C sind 13,77 V bei 10 °C und 13,32 V bei 35 °C",
    },
    { en: "A ramp of known slope", pl: "Rampa o znanym nachyleniu", de: "Eine Rampe bekannter Steigung" },
    { en: "A step of known height and length", pl: "Stopień o znanej wysokości i długości", de: "Eine Stufe bekannter Höhe und Länge" },
    {
      en: "Ampere-hours of the three charges of an open field log (17 Ah battery), within 0.1 %",
      pl: "Amperogodziny trzech ładowań z otwartego zapisu terenowego (akumulator 17 Ah), do 0,1 %",
      de: "Amperestunden der drei Ladungen einer offenen Feldaufzeichnung (17-Ah-Batterie), auf 0,1 %",
    },
    { en: "Analytic integrals W062 to W069", pl: "Całki analityczne od W062 do W069", de: "Analytische Integrale W062 bis W069" },
    { en: "Analytic integrals W067 and W068", pl: "Całki analityczne W067 i W068", de: "Analytische Integrale W067 und W068" },
    {
      en: "Bode's curve for the rest voltage that the cells' acid gives (W051 to W054)",
      pl: "Krzywa Bodego dla napięcia spoczynkowego wynikającego z elektrolitu cel (od W051 do W054)",
      de: "Kurve von Bode für die Ruhespannung, die die Säure der Zellen ergibt (W051 bis W054)",
    },
    {
      en: "Chi-square quantiles of a handbook table",
      pl: "Kwantyle chi-kwadrat z tablicy podręcznikowej",
      de: "Chi-Quadrat-Quantile einer Handbuchtabelle",
    },
    {
      en: "Closed forms: constant current, exponential taper",
      pl: "Postacie zamknięte: stały prąd, zanik wykładniczy",
      de: "Geschlossene Formen: Konstantstrom, exponentielles Abklingen",
    },
    {
      en: "Demo logs against the generator's truth",
      pl: "Zapisy demonstracyjne wobec prawdy generatora",
      de: "Demo-Aufzeichnungen gegen die Wahrheit des Generators",
    },
    {
      en: "Demo visits against the generator's truth",
      pl: "Wizyty demonstracyjne wobec prawdy generatora",
      de: "Demo-Besuche gegen die Wahrheit des Generators",
    },
    { en: "Density tables of five sources", pl: "Tablice gęstości z pięciu źródeł", de: "Dichtetabellen aus fünf Quellen" },
    {
      en: "EN = 0.92 SAE, a trade rule (read), for the words beside an absence",
      pl: "EN = 0,92 SAE, reguła branżowa (przeczytana), dla słów przy braku wartości",
      de: "EN = 0,92 SAE, eine Faustregel (gelesen), für die Worte neben einem fehlenden Wert",
    },
    { en: "Energy balance of the simulator", pl: "Bilans energii symulatora", de: "Energiebilanz des Simulators" },
    {
      en: "Float voltages of an open field log (17 Ah battery)",
      pl: "Napięcia konserwujące z otwartego zapisu terenowego (akumulator 17 Ah)",
      de: "Erhaltungsspannungen einer offenen Feldaufzeichnung (17-Ah-Batterie)",
    },
    {
      en: "Freezing points in service manuals: 1.100, 1.150, 1.200 and 1.250",
      pl: "Temperatury zamarzania z instrukcji serwisowych: 1,100, 1,150, 1,200 i 1,250",
      de: "Gefrierpunkte aus Werkstatthandbüchern: 1,100, 1,150, 1,200 und 1,250",
    },
    {
      en: "Freezing-point table of the reference pack",
      pl: "Tablica temperatur zamarzania ze zbioru odniesień",
      de: "Gefrierpunkttabelle der Referenzsammlung",
    },
    {
      en: "Generated campaigns with a known truth",
      pl: "Wygenerowane kampanie o znanej prawdzie",
      de: "Erzeugte Messreihen mit bekannter Wahrheit",
    },
    {
      en: "Generated campaigns with one test left out",
      pl: "Wygenerowane kampanie z jednym pominiętym testem",
      de: "Erzeugte Messreihen mit einem ausgelassenen Test",
    },
    {
      en: "IEC 60095-1's stop rule, worked by hand on invented visits",
      pl: "Reguła zakończenia z IEC 60095-1, przeliczona ręcznie na zmyślonych wizytach",
      de: "Die Abschlussregel aus IEC 60095-1, an erfundenen Besuchen von Hand gerechnet",
    },
    { en: "JCGM 100:2008, 4.4.3", pl: "JCGM 100:2008, 4.4.3", de: "JCGM 100:2008, 4.4.3" },
    {
      en: "NIST certified fits of the same form",
      pl: "Certyfikowane dopasowania NIST tej samej postaci",
      de: "Zertifizierte NIST-Anpassungen derselben Form",
    },
    {
      en: "Published float windows",
      pl: "Opublikowane zakresy napięcia konserwującego",
      de: "Veröffentlichte Fenster der Erhaltungsladung",
    },
    {
      en: "Rows counted by hand in small logs",
      pl: "Wiersze policzone ręcznie w małych zapisach",
      de: "Zeilen, in kleinen Aufzeichnungen von Hand gezählt",
    },
    {
      en: "Rows read by hand in small logs",
      pl: "Wiersze odczytane ręcznie w małych zapisach",
      de: "Zeilen, in kleinen Aufzeichnungen von Hand abgelesen",
    },
    {
      en: "Simulation-based calibration (Talts et al. 2018)",
      pl: "Kalibracja symulacyjna (Talts i in. 2018)",
      de: "Simulationsbasierte Kalibrierung (Talts u. a. 2018)",
    },
    { en: "Small invented test records", pl: "Małe zmyślone opisy testów", de: "Kleine erfundene Testangaben" },
    { en: "Small invented test records, by hand", pl: "Małe zmyślone opisy testów, ręcznie", de: "Kleine erfundene Testangaben, von Hand" },
    {
      en: "Small invented test records, counted by hand",
      pl: "Małe zmyślone opisy testów, policzone ręcznie",
      de: "Kleine erfundene Testangaben, von Hand gezählt",
    },
    {
      en: "Stages of an open field log (17 Ah battery)",
      pl: "Etapy otwartego zapisu terenowego (akumulator 17 Ah)",
      de: "Phasen einer offenen Feldaufzeichnung (17-Ah-Batterie)",
    },
    {
      en: "The field log of a 17 Ah battery, whose rows step back by fractions of a second",
      pl: "Zapis terenowy akumulatora 17 Ah, którego wiersze cofają się o ułamki sekundy",
      de: "Die Feldaufzeichnung einer 17-Ah-Batterie, deren Zeilen um Sekundenbruchteile zurückspringen",
    },
    {
      en: "Voltages of an open field log (17 Ah battery)",
      pl: "Napięcia z otwartego zapisu terenowego (akumulator 17 Ah)",
      de: "Spannungen einer offenen Feldaufzeichnung (17-Ah-Batterie)",
    },
    { en: "W{from} to W{to} and W{also}", pl: "od W{from} do W{to} i W{also}", de: "W{from} bis W{to} und W{also}" },
    { en: "W{from} to W{to}", pl: "od W{from} do W{to}", de: "W{from} bis W{to}" },
    {
      en: "W005 to W008: water an ampere-hour, and the mean current that a weighed loss stands for",
      pl: "od W005 do W008: woda na amperogodzinę i średni prąd, któremu odpowiada zważony ubytek",
      de: "W005 bis W008: Wasser je Amperestunde und der mittlere Strom, für den ein gewogener Verlust steht",
    },
    {
      en: "W005: 0.336087 g an ampere-hour and cell",
      pl: "W005: 0,336087 g na amperogodzinę i celę",
      de: "W005: 0,336087 g je Amperestunde und Zelle",
    },
    {
      en: "W007: 50 g from six cells stand for 24.795 Ah",
      pl: "W007: 50 g z sześciu cel odpowiada 24,795 Ah",
      de: "W007: 50 g aus sechs Zellen stehen für 24,795 Ah",
    },
    { en: "W009 at 0 °C", pl: "W009 w 0 °C", de: "W009 bei 0 °C" },
    {
      en: "W010: 0.45642 l an ampere-hour and cell",
      pl: "W010: 0,45642 l na amperogodzinę i celę",
      de: "W010: 0,45642 l je Amperestunde und Zelle",
    },
    {
      en: "W011: 0.36 m³/h for 6 cells, 20 mA/Ah and 60 Ah",
      pl: "W011: 0,36 m³/h dla 6 cel, 20 mA/Ah i 60 Ah",
      de: "W011: 0,36 m³/h für 6 Zellen, 20 mA/Ah und 60 Ah",
    },
    { en: "W012: openings of 10.08 cm² for it", pl: "W012: otwory po 10,08 cm² do tego", de: "W012: Öffnungen von 10,08 cm² dafür" },
    { en: "W032, W033 and W040 to W043", pl: "W032, W033 i od W040 do W043", de: "W032, W033 und W040 bis W043" },
    {
      en: "W055 to W058: 12.70, 12.40, 12.20 and 12.00 V",
      pl: "od W055 do W058: 12,70, 12,40, 12,20 i 12,00 V",
      de: "W055 bis W058: 12,70, 12,40, 12,20 und 12,00 V",
    },
    {
      en: "W059: the error of the rule density + 0.84",
      pl: "W059: błąd reguły „gęstość + 0,84”",
      de: "W059: der Fehler der Regel „Dichte + 0,84“",
    },
    { en: "W060", pl: "W060", de: "W060" },
    { en: "W087, W088 and W093 to W098", pl: "W087, W088 i od W093 do W098", de: "W087, W088 und W093 bis W098" },
    {
      en: "Watt-hours of the three charges of an open field log (17 Ah battery), within 0.1 %",
      pl: "Watogodziny trzech ładowań z otwartego zapisu terenowego (akumulator 17 Ah), do 0,1 %",
      de: "Wattstunden der drei Ladungen einer offenen Feldaufzeichnung (17-Ah-Batterie), auf 0,1 %",
    },
    {
      en: "Worked by hand in a small test record",
      pl: "Przeliczone ręcznie w małym opisie testu",
      de: "In kleinen Testangaben von Hand gerechnet",
    },
    // Formulas that have words in them; signs alone are the same in every language.
    {
      en: "DC energy over the efficiency, with standby where it is stated",
      pl: "energia prądu stałego przez sprawność, z poborem w spoczynku, gdzie go podano",
      de: "Gleichstromenergie durch Wirkungsgrad, mit Bereitschaft, wo sie angegeben ist",
    },
    { en: "E_mains · price per kWh + one visit", pl: "E_mains · cena za kWh + jedna wizyta", de: "E_mains · Preis je kWh + ein Besuch" },
    {
      en: "E_last − E_first, or (W_recorded + U · Q_unrecorded) / η",
      pl: "E_last − E_first albo (W_recorded + U · Q_unrecorded) / η",
      de: "E_last − E_first oder (W_recorded + U · Q_unrecorded) / η",
    },
    { en: "Q = 0.05 · cells · I_gas · C / 1000", pl: "Q = 0,05 · cele · I_gas · C / 1000", de: "Q = 0,05 · Zellen · I_gas · C / 1000" },
    {
      en: "Q = ∫ I dt by the trapezoidal rule / 3600",
      pl: "Q = ∫ I dt metodą trapezów / 3600",
      de: "Q = ∫ I dt nach der Trapezregel / 3600",
    },
    { en: "Q_density − Q_recorded, not below 0", pl: "Q_density − Q_recorded, nie poniżej 0", de: "Q_density − Q_recorded, nicht unter 0" },
    {
      en: "U/cells = E(m(ρ₂₅), ϑ), solved for ρ₂₅; u(ρ) = u(U)/(dU/dρ); below 24 h of rest the lower end allows for 0.05 V (12 V) of surface charge",
      pl: "U/cele = E(m(ρ₂₅), ϑ), rozwiązane względem ρ₂₅; u(ρ) = u(U)/(dU/dρ); poniżej 24 h spoczynku dolny koniec uwzględnia 0,05 V (12 V) ładunku powierzchniowego",
      de: "U/Zellen = E(m(ρ₂₅), ϑ), aufgelöst nach ρ₂₅; u(ρ) = u(U)/(dU/dρ); unter 24 h Ruhe berücksichtigt das untere Ende 0,05 V (12 V) Oberflächenladung",
    },
    {
      en: "V = 0.456 l/Ah · cells · (Q_recorded − Q_density)",
      pl: "V = 0,456 l/Ah · cele · (Q_recorded − Q_density)",
      de: "V = 0,456 l/Ah · Zellen · (Q_recorded − Q_density)",
    },
    {
      en: "W = ∫ U·I dt by the trapezoidal rule / 3600",
      pl: "W = ∫ U·I dt metodą trapezów / 3600",
      de: "W = ∫ U·I dt nach der Trapezregel / 3600",
    },
    {
      en: "cost per result / (d_last − d_first) · 0.01 kg/l",
      pl: "koszt wyniku / (d_last − d_first) · 0,01 kg/l",
      de: "Kosten je Ergebnis / (d_last − d_first) · 0,01 kg/l",
    },
    { en: "cost per result / Q_density", pl: "koszt wyniku / Q_density", de: "Kosten je Ergebnis / Q_density" },
    {
      en: "d(h) = d₀ + a (1 − exp(−h/τ)), and straight growth with a knee, by marginal likelihood",
      pl: "d(h) = d₀ + a (1 − exp(−h/τ)) oraz wzrost prostoliniowy z załamaniem, według wiarygodności brzegowej",
      de: "d(h) = d₀ + a (1 − exp(−h/τ)) und gerader Anstieg mit Knick, nach marginaler Likelihood",
    },
    {
      en: "m = 0.336 g/Ah · cells · (Q_recorded − Q_density)",
      pl: "m = 0,336 g/Ah · cele · (Q_recorded − Q_density)",
      de: "m = 0,336 g/Ah · Zellen · (Q_recorded − Q_density)",
    },
    {
      en: "m = m_first − m_last + Σ topped up between; u² = u²(m_first) + u²(m_last)",
      pl: "m = m_first − m_last + Σ dolane pomiędzy; u² = u²(m_first) + u²(m_last)",
      de: "m = m_first − m_last + Σ dazwischen nachgefüllt; u² = u²(m_first) + u²(m_last)",
    },
    {
      en: "max over t of (1/Δt) ∫ from t to t + Δt",
      pl: "maksimum po t z (1/Δt) ∫ od t do t + Δt",
      de: "Maximum über t von (1/Δt) ∫ von t bis t + Δt",
    },
    {
      en: "max over t of (1/Δt) ∫ from t to t + Δt, within such a stage and without a gap",
      pl: "maksimum po t z (1/Δt) ∫ od t do t + Δt, w takim etapie i bez luki",
      de: "Maximum über t von (1/Δt) ∫ von t bis t + Δt, innerhalb einer solchen Phase und ohne Lücke",
    },
    {
      en: "median and 95 % interval of the cross-examination's posterior",
      pl: "mediana i przedział 95 % rozkładu a posteriori konfrontacji",
      de: "Median und 95-%-Intervall der A-posteriori-Verteilung der Gegenüberstellung",
    },
    {
      en: "median and middle 95 % of 64 fixed draws",
      pl: "mediana i środkowe 95 % z 64 ustalonych losowań",
      de: "Median und mittlere 95 % von 64 festen Ziehungen",
    },
    {
      en: "median of the stage's last samples; u² = u(recorder)² + (R·I)²/3",
      pl: "mediana ostatnich próbek etapu; u² = u(rejestrator)² + (R·I)²/3",
      de: "Median der letzten Messpunkte der Phase; u² = u(Rekorder)² + (R·I)²/3",
    },
    { en: "median(tᵢ₊₁ − tᵢ)", pl: "mediana(tᵢ₊₁ − tᵢ)", de: "Median(tᵢ₊₁ − tᵢ)" },
    {
      en: "price + (E_mains + E_standby) · price per kWh + visits",
      pl: "cena + (E_mains + E_standby) · cena za kWh + wizyty",
      de: "Preis + (E_mains + E_standby) · Preis je kWh + Besuche",
    },
    {
      en: "price / uses + (E_mains + E_standby) · price per kWh + visits",
      pl: "cena / użycia + (E_mains + E_standby) · cena za kWh + wizyty",
      de: "Preis / Nutzungen + (E_mains + E_standby) · Preis je kWh + Besuche",
    },
    { en: "price / uses + running cost", pl: "cena / użycia + koszt bieżący", de: "Preis / Nutzungen + laufende Kosten" },
    {
      en: "s² = Σ (mean of a test − mean of all)² / (tests − 1); interval from chi-square",
      pl: "s² = Σ (średnia testu − średnia wszystkich)² / (testy − 1); przedział z chi-kwadrat",
      de: "s² = Σ (Mittel eines Tests − Mittel aller)² / (Tests − 1); Intervall aus Chi-Quadrat",
    },
    {
      en: "s² = Σ Σ (x − mean of the test)² / Σ (n − 1); interval from chi-square",
      pl: "s² = Σ Σ (x − średnia testu)² / Σ (n − 1); przedział z chi-kwadrat",
      de: "s² = Σ Σ (x − Mittel des Tests)² / Σ (n − 1); Intervall aus Chi-Quadrat",
    },
    {
      en: "t = reserve / (0.336 g/Ah · I_held · 24 h/d)",
      pl: "t = zapas / (0,336 g/Ah · I_held · 24 h/d)",
      de: "t = Reserve / (0,336 g/Ah · I_held · 24 h/d)",
    },
    { en: "time connected − time recorded", pl: "czas podłączenia − czas zapisany", de: "Zeit am Ladegerät − aufgezeichnete Zeit" },
    { en: "time recorded / time connected", pl: "czas zapisany / czas podłączenia", de: "aufgezeichnete Zeit / Zeit am Ladegerät" },
    {
      en: "w(ρ₂₅) → freezing point, by table",
      pl: "w(ρ₂₅) → temperatura zamarzania, z tablicy",
      de: "w(ρ₂₅) → Gefrierpunkt, nach Tabelle",
    },
    {
      en: "w₁ = (w₀ m₀ + 3.6595 g/Ah · Q)/(m₀ + 2.9873 g/Ah · Q), solved for Q",
      pl: "w₁ = (w₀ m₀ + 3,6595 g/Ah · Q)/(m₀ + 2,9873 g/Ah · Q), rozwiązane względem Q",
      de: "w₁ = (w₀ m₀ + 3,6595 g/Ah · Q)/(m₀ + 2,9873 g/Ah · Q), aufgelöst nach Q",
    },
    {
      en: "Σ (I_before + I_after)/2 · Δt; bounds 0 and I_max · Σ Δt",
      pl: "Σ (I_before + I_after)/2 · Δt; granice 0 i I_max · Σ Δt",
      de: "Σ (I_before + I_after)/2 · Δt; Grenzen 0 und I_max · Σ Δt",
    },
    { en: "Σ (span − gaps)", pl: "Σ (rozpiętość − luki)", de: "Σ (Spanne − Lücken)" },
    { en: "Σ (tᵢ₊₁ − tᵢ) over gaps", pl: "Σ (tᵢ₊₁ − tᵢ) po lukach", de: "Σ (tᵢ₊₁ − tᵢ) über Lücken" },
    {
      en: "Σ Δt with U > U_gas(T) · cells; the interval moves U by its error and T over its interval",
      pl: "Σ Δt przy U > U_gas(T) · cele; przedział przesuwa U o jego błąd, a T po jego przedziale",
      de: "Σ Δt mit U > U_gas(T) · Zellen; das Intervall verschiebt U um seinen Fehler und T über sein Intervall",
    },
    {
      en: "ρ_max − ρ_min; u = step/√6, two roundings of step/√12 each",
      pl: "ρ_max − ρ_min; u = działka/√6, dwa zaokrąglenia po działka/√12",
      de: "ρ_max − ρ_min; u = Schritt/√6, zwei Rundungen von je Schritt/√12",
    },
    {
      en: "ρ₂₅ through the acid's own strength: w(ρ, ϑ) → ρ(w, 25 °C)",
      pl: "ρ₂₅ przez moc samego kwasu: w(ρ, ϑ) → ρ(w, 25 °C)",
      de: "ρ₂₅ über die Stärke der Säure selbst: w(ρ, ϑ) → ρ(w, 25 °C)",
    },
  ],
} as const satisfies Chapter;
