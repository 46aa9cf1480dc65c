<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>ActionWords</name>
    <message>
        <source>new person %1</source>
        <translation>nouvelle personne %1</translation>
    </message>
    <message>
        <source>person %1 changed</source>
        <translation>personne %1 modifiée</translation>
    </message>
    <message>
        <source>new chamber %1</source>
        <translation>nouvelle chambre %1</translation>
    </message>
    <message>
        <source>chamber %1 changed</source>
        <translation>chambre %1 modifiée</translation>
    </message>
    <message>
        <source>new sensor %1</source>
        <translation>nouveau capteur %1</translation>
    </message>
    <message>
        <source>sensor %1 changed</source>
        <translation>capteur %1 modifié</translation>
    </message>
    <message>
        <source>new instrument %1</source>
        <translation>nouvel instrument %1</translation>
    </message>
    <message>
        <source>instrument %1 changed</source>
        <translation>instrument %1 modifié</translation>
    </message>
    <message>
        <source>calibration check of %1</source>
        <translation>contrôle de %1</translation>
    </message>
    <message>
        <source>new recipe %1</source>
        <translation>nouvelle recette %1</translation>
    </message>
    <message>
        <source>new version of recipe %1</source>
        <translation>nouvelle version de la recette %1</translation>
    </message>
    <message>
        <source>recipe renamed to %1</source>
        <translation>recette renommée en %1</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>importation de %1</translation>
    </message>
    <message>
        <source>recipe %1 put away</source>
        <translation>recette %1 rangée</translation>
    </message>
    <message>
        <source>new ingredient %1</source>
        <translation>nouvel ingrédient %1</translation>
    </message>
    <message>
        <source>ingredient %1 changed</source>
        <translation>ingrédient %1 modifié</translation>
    </message>
    <message>
        <source>new lot %1</source>
        <translation>nouveau lot d’ingrédient %1</translation>
    </message>
    <message>
        <source>lot %1 changed</source>
        <translation>lot d’ingrédient %1 modifié</translation>
    </message>
    <message>
        <source>new batch %1</source>
        <translation>nouveau lot %1</translation>
    </message>
    <message>
        <source>batch %1 changed</source>
        <translation>lot %1 modifié</translation>
    </message>
    <message>
        <source>new piece %1</source>
        <translation>nouvelle pièce %1</translation>
    </message>
    <message>
        <source>piece %1 changed</source>
        <translation>pièce %1 modifiée</translation>
    </message>
    <message>
        <source>ingredient lot noted for %1</source>
        <translation>lot d’ingrédient noté pour %1</translation>
    </message>
    <message>
        <source>ingredient lot changed for %1</source>
        <translation>lot d’ingrédient modifié pour %1</translation>
    </message>
    <message>
        <source>weighing of %1</source>
        <translation>pesée de %1</translation>
    </message>
    <message>
        <source>weighings of %1</source>
        <translation>pesées de %1</translation>
    </message>
    <message>
        <source>correction of a weighing of %1</source>
        <translation>correction d’une pesée de %1</translation>
    </message>
    <message>
        <source>a weighing of %1 taken back</source>
        <translation>une pesée de %1 retirée</translation>
    </message>
    <message>
        <source>event of %1</source>
        <translation>événement de %1</translation>
    </message>
    <message>
        <source>an event of %1 taken back</source>
        <translation>un événement de %1 retiré</translation>
    </message>
    <message>
        <source>%1 cut into pieces</source>
        <translation>%1 découpée en pièces</translation>
    </message>
    <message>
        <source>pieces weighed as one: %1</source>
        <translation>pièces pesées ensemble&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 discarded</source>
        <translation>%1 écartée</translation>
    </message>
    <message>
        <source>plan of %1</source>
        <translation>plan de %1</translation>
    </message>
    <message>
        <source>stage of %1 started</source>
        <translation>étape de %1 commencée</translation>
    </message>
    <message>
        <source>stage of %1 ended</source>
        <translation>étape de %1 terminée</translation>
    </message>
    <message>
        <source>task ticked for %1</source>
        <translation>tâche cochée pour %1</translation>
    </message>
    <message>
        <source>task unticked for %1</source>
        <translation>tâche décochée pour %1</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>note sur %1</translation>
    </message>
    <message>
        <source>caution accepted for %1</source>
        <translation>mise en garde acceptée pour %1</translation>
    </message>
    <message>
        <source>decision on %1</source>
        <translation>décision sur %1</translation>
    </message>
    <message>
        <source>outcome of %1</source>
        <translation>résultat de %1</translation>
    </message>
    <message>
        <source>new pack %1</source>
        <translation>nouveau paquet %1</translation>
    </message>
    <message>
        <source>pack %1 changed</source>
        <translation>paquet %1 modifié</translation>
    </message>
    <message>
        <source>taken from pack %1</source>
        <translation>prélevé du paquet %1</translation>
    </message>
    <message>
        <source>setting %1</source>
        <translation>réglage %1</translation>
    </message>
    <message>
        <source>a change of %1</source>
        <translation>une modification de %1</translation>
    </message>
    <message>
        <source>(no code)</source>
        <translation>(sans code)</translation>
    </message>
</context>
<context>
    <name>AirStrips</name>
    <message>
        <source>a week at %1 (%2 to %3)</source>
        <translation>une semaine à %1 (%2 à %3)</translation>
    </message>
    <message>
        <source>% RH</source>
        <translation>% HR</translation>
    </message>
</context>
<context>
    <name>CalendarPage</name>
    <message>
        <source>Calendar</source>
        <translation>Calendrier</translation>
    </message>
    <message>
        <source>&amp;Save as calendar file…</source>
        <translation>&amp;Enregistrer comme fichier calendrier…</translation>
    </message>
    <message>
        <source>No plan yet</source>
        <translation>Pas encore de plan</translation>
    </message>
    <message>
        <source>Stages and work of every open batch stand here day by day. Save them as a calendar file to see them on a phone; saving again brings moved days up to date.</source>
        <translation>Les étapes et les travaux de chaque lot ouvert figurent ici jour par jour. Enregistrez-les comme fichier calendrier pour les voir sur un téléphone&#xa0;; un nouvel enregistrement met à jour les jours déplacés.</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>Planifier un lot</translation>
    </message>
    <message>
        <source>&amp;Earlier</source>
        <translation>&amp;Précédent</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>&amp;Aujourd’hui</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>&amp;Suivant</translation>
    </message>
    <message>
        <source>Days of the month</source>
        <translation>Jours du mois</translation>
    </message>
    <message>
        <source>On this day</source>
        <translation>Ce jour-là</translation>
    </message>
    <message>
        <source>Nothing on this day.</source>
        <translation>Rien ce jour-là.</translation>
    </message>
    <message>
        <source>Stages and work by day, and as a calendar file</source>
        <translation>Étapes et travaux par jour, et comme fichier calendrier</translation>
    </message>
</context>
<context>
    <name>CalibrationText</name>
    <message>
        <source>A test weight near what is weighed; within 0.1 % of it. Monthly.</source>
        <translation>Un poids étalon proche de ce que l’on pèse&#xa0;; à 0,1&#xa0;% près. Tous les mois.</translation>
    </message>
    <message>
        <source>Crushed ice in water, stirred: %1; within %2. Monthly.</source>
        <translation>Glace pilée dans l’eau, remuée&#xa0;: %1&#xa0;; à %2 près. Tous les mois.</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag for 12 hours: 75 % RH; within 3 to 5 points. Every six months.</source>
        <translation>Bouillie de sel dans un sachet fermé pendant 12 heures&#xa0;: 75&#xa0;% HR&#xa0;; à 3 à 5 points près. Tous les six mois.</translation>
    </message>
    <message>
        <source>Two fresh buffers that bracket what is measured. Before use.</source>
        <translation>Deux tampons frais qui encadrent la mesure. Avant l’emploi.</translation>
    </message>
    <message>
        <source>A salt standard near what is measured. Before use.</source>
        <translation>Un étalon de sel proche de ce que l’on mesure. Avant l’emploi.</translation>
    </message>
    <message>
        <source>As its maker says.</source>
        <translation>Selon les indications du fabricant.</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Date et heure</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Expected, %1</source>
        <translation>Attendu, %1</translation>
    </message>
    <message>
        <source>Found, %1</source>
        <translation>Trouvé, %1</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Écart</translation>
    </message>
    <message>
        <source>Action taken</source>
        <translation>Mesure prise</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Initiales</translation>
    </message>
    <message>
        <source>Last checked before: %1.</source>
        <translation>Dernier contrôle précédent&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Never checked before.</source>
        <translation>Jamais contrôlé auparavant.</translation>
    </message>
    <message>
        <source>Calibration sheet</source>
        <translation>Feuille d’étalonnage</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>Aucun instrument n’est enregistré.</translation>
    </message>
    <message>
        <source>How to check and how far off an instrument may be is common practice without a source: what your plan says goes before.</source>
        <translation>La façon de contrôler et l’écart admis pour un instrument relèvent de la pratique courante, sans source&#xa0;: ce que dit votre plan passe avant.</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Contrôlé par</translation>
    </message>
    <message>
        <source>Responsible person</source>
        <translation>Personne responsable</translation>
    </message>
    <message numerus="yes">
        <source>Set to every %n day(s) here.</source>
        <translation>
            <numerusform>Réglé ici&#xa0;: chaque jour.</numerusform>
            <numerusform>Réglé ici&#xa0;: tous les %n jours.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CautionsPage</name>
    <message>
        <source>A number is not a verdict</source>
        <translation>Un chiffre n’est pas un verdict</translation>
    </message>
    <message>
        <source>Weight loss says how much water has gone, not whether a food may be eaten. Pieces at their target can be raw inside; pieces short of it can be finished. Look, touch, smell and cut before you decide. When in doubt, throw it out.</source>
        <translation>La perte de poids dit combien d’eau est partie, non si un aliment peut être mangé. Des pièces qui ont atteint leur cible peuvent être crues à cœur&#xa0;; d’autres, en deçà, peuvent être finies. Regardez, touchez, sentez et coupez avant de décider. Dans le doute, jetez.</translation>
    </message>
    <message>
        <source>Curing salt is weighed, never guessed</source>
        <translation>Le sel nitrité se pèse, il ne s’estime jamais</translation>
    </message>
    <message>
        <source>Nitrite and nitrate are poisons in the wrong amount, and curing salts differ tenfold in strength. Enter the strength from the label of the packet in your hand. Use a scale that can weigh the dose. Keep curing salt marked and away from kitchen salt.</source>
        <translation>Le nitrite et le nitrate sont des poisons à mauvaise dose, et la teneur des sels nitrités varie de un à dix. Saisissez la teneur lue sur l’étiquette du paquet que vous tenez. Servez-vous d’une balance capable de peser la dose. Gardez le sel nitrité étiqueté et loin du sel de cuisine.</translation>
    </message>
    <message>
        <source>Cold first, then time</source>
        <translation>Le froid d’abord, puis le temps</translation>
    </message>
    <message>
        <source>Cure in the cold, and keep the time the plan gives. A date on the calendar is no reason for a stronger dose or a shorter cure. After a failure of the fridge, what counts is how warm, how long and how far along each piece was.</source>
        <translation>Salez au froid et tenez la durée que donne le plan. Une date sur le calendrier n’est pas une raison de forcer la dose ni d’abréger le salage. Après une panne du réfrigérateur, ce qui compte, ce sont la température, la durée et l’avancement de chaque pièce.</translation>
    </message>
    <message>
        <source>Instruments are often wrong</source>
        <translation>Les instruments se trompent souvent</translation>
    </message>
    <message>
        <source>Check the scale with a known weight, the thermometer in ice water, the hygrometer over a salt slurry. A reading nobody has checked is a guess with digits.</source>
        <translation>Contrôlez la balance avec un poids connu, le thermomètre dans l’eau glacée, l’hygromètre au-dessus d’une bouillie de sel. Une mesure que personne n’a contrôlée est une supposition avec des chiffres.</translation>
    </message>
    <message>
        <source>Limits belong to your law</source>
        <translation>Les limites relèvent de votre droit</translation>
    </message>
    <message>
        <source>The limit sets here are quoted with their source and date. Those marked unverified were not read in the issuer&apos;s own words. If you sell or give food away, the code where you live, your licence and your laboratory come before anything this program shows.</source>
        <translation>Les jeux de limites sont cités ici avec leur source et leur date. Ceux marqués non vérifiés n’ont pas été lus dans le texte même de l’émetteur. Si vous vendez ou donnez des aliments, la réglementation en vigueur chez vous, votre agrément et votre laboratoire passent avant tout ce que montre ce programme.</translation>
    </message>
    <message>
        <source>Estimates carry a range</source>
        <translation>Les estimations ont une fourchette</translation>
    </message>
    <message>
        <source>Forecasts, water activity and salt in the finished piece are estimates from your entries and published formulas. The range is part of the answer. Only a laboratory measures water activity and pH in your piece.</source>
        <translation>Les prévisions, l’activité de l’eau et le sel de la pièce finie sont des estimations tirées de vos saisies et de formules publiées. La fourchette fait partie de la réponse. Seul un laboratoire mesure l’activité de l’eau et le pH de votre pièce.</translation>
    </message>
    <message>
        <source>Some people need more care</source>
        <translation>Certaines personnes demandent plus de précautions</translation>
    </message>
    <message>
        <source>Dry-cured meat that is not cooked is a risk for the pregnant, the very young, the old and the ill. Pork and game can carry parasites that curing alone may not kill; follow the official freezing or cooking times for your country.</source>
        <translation>La viande salée et séchée, non cuite, est un risque pour les femmes enceintes, les très jeunes enfants, les personnes âgées et les malades. Le porc et le gibier peuvent porter des parasites que le salage seul ne tue pas forcément&#xa0;; suivez les durées officielles de congélation ou de cuisson de votre pays.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Mises en garde</translation>
    </message>
    <message>
        <source>What to keep in mind before trusting a number</source>
        <translation>Ce qu’il faut garder à l’esprit avant de se fier à un chiffre</translation>
    </message>
</context>
<context>
    <name>ClimateChart</name>
    <message>
        <source>temperature, %1</source>
        <translation>température, %1</translation>
    </message>
    <message>
        <source>humidity, % RH</source>
        <translation>humidité, % HR</translation>
    </message>
    <message>
        <source>drying force, Pa</source>
        <translation>force de séchage, Pa</translation>
    </message>
    <message>
        <source> · dew point %1</source>
        <translation> · point de rosée %1</translation>
    </message>
    <message>
        <source> · drying force %1 Pa</source>
        <translation> · force de séchage %1&#xa0;Pa</translation>
    </message>
    <message>
        <source>%1: least to greatest</source>
        <translation>%1&#xa0;: du plus petit au plus grand</translation>
    </message>
    <message>
        <source>%1: dew point</source>
        <translation>%1&#xa0;: point de rosée</translation>
    </message>
    <message>
        <source>no readings</source>
        <translation>aucune mesure</translation>
    </message>
    <message>
        <source>lower bound</source>
        <translation>borne inférieure</translation>
    </message>
    <message>
        <source>upper bound</source>
        <translation>borne supérieure</translation>
    </message>
    <message>
        <source>%1 has no readings in this time.</source>
        <translation>%1 n’a aucune mesure sur cette période.</translation>
    </message>
    <message>
        <source>%1: %2 to %3, pauses without readings: %4.</source>
        <translation>%1&#xa0;: %2 à %3, interruptions sans mesure&#xa0;: %4.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 à %3)</translation>
    </message>
    <message>
        <source>%1 Pa</source>
        <translation>%1&#xa0;Pa</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Point de rosée</translation>
    </message>
    <message>
        <source>Drying force</source>
        <translation>Force de séchage</translation>
    </message>
</context>
<context>
    <name>ClimateWords</name>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>point-virgule</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulation</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barre verticale</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>année, mois, jour</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>jour, mois, année</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mois, jour, année</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>secondes depuis 1970</translation>
    </message>
    <message>
        <source>milliseconds since 1970</source>
        <translation>millisecondes depuis 1970</translation>
    </message>
    <message>
        <source>day numbers of a spreadsheet</source>
        <translation>numéros de jour d’un tableur</translation>
    </message>
    <message>
        <source>each time says its own</source>
        <translation>chaque heure indique son fuseau</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>heure locale de %1</translation>
    </message>
    <message>
        <source>%1%2:%3 all year</source>
        <translation>%1%2:%3 toute l’année</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>pour cent</translation>
    </message>
    <message>
        <source>a share of 1</source>
        <translation>une fraction de 1</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Jeu de caractères</translation>
    </message>
    <message>
        <source>Columns parted by</source>
        <translation>Colonnes séparées par</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Séparateur décimal</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Forme des dates</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Horloge</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>Température en</translation>
    </message>
    <message>
        <source>Humidity in</source>
        <translation>Humidité en</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>you said so</source>
        <translation>vous l’avez indiqué</translation>
    </message>
    <message>
        <source>as confirmed for this sensor before</source>
        <translation>comme confirmé auparavant pour ce capteur</translation>
    </message>
    <message>
        <source>the file&apos;s own mark</source>
        <translation>la marque propre du fichier</translation>
    </message>
    <message>
        <source>the heading names it</source>
        <translation>l’en-tête le nomme</translation>
    </message>
    <message>
        <source>nothing else fits the lines</source>
        <translation>rien d’autre ne convient aux lignes</translation>
    </message>
    <message>
        <source>otherwise time would jump</source>
        <translation>sinon le temps ferait des sauts</translation>
    </message>
    <message>
        <source>the values look like it</source>
        <translation>les valeurs en ont l’air</translation>
    </message>
    <message>
        <source>the rest of the file makes it likely</source>
        <translation>le reste du fichier le rend probable</translation>
    </message>
    <message>
        <source>nothing in the file says so</source>
        <translation>rien dans le fichier ne le dit</translation>
    </message>
    <message>
        <source>sure, %1</source>
        <translation>certain, %1</translation>
    </message>
    <message>
        <source>fairly sure, %1</source>
        <translation>assez certain, %1</translation>
    </message>
    <message>
        <source>▲ a guess, %1</source>
        <translation>▲ une supposition, %1</translation>
    </message>
    <message>
        <source>no date and time</source>
        <translation>pas de date avec heure</translation>
    </message>
    <message>
        <source>an hour the clock skipped in spring</source>
        <translation>une heure que l’horloge a sautée au printemps</translation>
    </message>
    <message>
        <source>the line is cut off</source>
        <translation>la ligne est tronquée</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>pas un nombre</translation>
    </message>
    <message>
        <source>a value no air has</source>
        <translation>une valeur impossible pour l’air</translation>
    </message>
    <message>
        <source>neither temperature nor humidity</source>
        <translation>ni température ni humidité</translation>
    </message>
    <message>
        <source>the heading again</source>
        <translation>de nouveau l’en-tête</translation>
    </message>
    <message>
        <source>an endless line</source>
        <translation>une ligne sans fin</translation>
    </message>
    <message>
        <source>a quote that never closes</source>
        <translation>un guillemet jamais fermé</translation>
    </message>
    <message>
        <source>not text</source>
        <translation>pas du texte</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>trop froid</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>trop chaud</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>trop sec</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>trop humide</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>estimate below its bound</source>
        <translation>estimation sous sa borne</translation>
    </message>
    <message>
        <source>estimate straddles its bound</source>
        <translation>estimation à cheval sur sa borne</translation>
    </message>
    <message>
        <source>estimate above its bound</source>
        <translation>estimation au-dessus de sa borne</translation>
    </message>
</context>
<context>
    <name>Data</name>
    <message>
        <source>A second salting two days after the first.</source>
        <translation>Un second salage deux jours après le premier.</translation>
    </message>
    <message>
        <source>About two minutes for each day in cure, water at most 70 °F.</source>
        <translation>Environ deux minutes par jour de salage, eau à 70&#xa0;°F au plus.</translation>
    </message>
    <message>
        <source>After salting</source>
        <translation>Après le salage</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Affinage</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aération</translation>
    </message>
    <message>
        <source>American country</source>
        <translation>Country américain</translation>
    </message>
    <message>
        <source>Another spice or herb</source>
        <translation>Autre épice ou herbe</translation>
    </message>
    <message>
        <source>Ascorbic acid (vitamin C)</source>
        <translation>Acide ascorbique (vitamine C)</translation>
    </message>
    <message>
        <source>Australia and New Zealand: cured meat</source>
        <translation>Australie et Nouvelle-Zélande&#xa0;: viande salée</translation>
    </message>
    <message>
        <source>Bacon, dry cured and smoked</source>
        <translation>Bacon, salé à sec et fumé</translation>
    </message>
    <message>
        <source>Bay leaf</source>
        <translation>Feuille de laurier</translation>
    </message>
    <message>
        <source>Biltong</source>
        <translation>Biltong</translation>
    </message>
    <message>
        <source>Black pepper, ground</source>
        <translation>Poivre noir moulu</translation>
    </message>
    <message>
        <source>Black pepper, whole</source>
        <translation>Poivre noir en grains</translation>
    </message>
    <message>
        <source>Bresaola</source>
        <translation>Bresaola</translation>
    </message>
    <message>
        <source>Brine</source>
        <translation>Saumure</translation>
    </message>
    <message>
        <source>Brown sugar, packed</source>
        <translation>Sucre roux, tassé</translation>
    </message>
    <message>
        <source>Burn through</source>
        <translation>Repos de diffusion</translation>
    </message>
    <message>
        <source>Cabinet drying</source>
        <translation>Séchage en armoire</translation>
    </message>
    <message>
        <source>Canada: cured meat</source>
        <translation>Canada&#xa0;: viande salée</translation>
    </message>
    <message>
        <source>Canada: side bacon</source>
        <translation>Canada&#xa0;: bacon de flanc</translation>
    </message>
    <message>
        <source>Case and tie</source>
        <translation>Embossage et ficelage</translation>
    </message>
    <message>
        <source>Cellar</source>
        <translation>Cave</translation>
    </message>
    <message>
        <source>Central European smoked</source>
        <translation>Fumé d’Europe centrale</translation>
    </message>
    <message>
        <source>Chilli, ground or flakes</source>
        <translation>Piment, moulu ou en flocons</translation>
    </message>
    <message>
        <source>Chinese wind-dried</source>
        <translation>Chinois séché au vent</translation>
    </message>
    <message>
        <source>Coarse sea salt</source>
        <translation>Gros sel de mer</translation>
    </message>
    <message>
        <source>Codex: heat-treated whole cuts</source>
        <translation>Codex&#xa0;: pièces entières traitées par la chaleur</translation>
    </message>
    <message>
        <source>Cold smoke</source>
        <translation>Fumage à froid</translation>
    </message>
    <message>
        <source>Cool dry</source>
        <translation>Séchage au frais</translation>
    </message>
    <message>
        <source>Cool</source>
        <translation>Refroidissement</translation>
    </message>
    <message>
        <source>Coppa</source>
        <translation>Coppa</translation>
    </message>
    <message>
        <source>Coriander seed</source>
        <translation>Graines de coriandre</translation>
    </message>
    <message>
        <source>Country and dry-cured ham: water activity</source>
        <translation>Jambons country et salés à sec&#xa0;: activité de l’eau</translation>
    </message>
    <message>
        <source>Country ham</source>
        <translation>Jambon country</translation>
    </message>
    <message>
        <source>Country ham: internal salt</source>
        <translation>Jambon country&#xa0;: sel interne</translation>
    </message>
    <message>
        <source>Country ham: loss of fresh weight</source>
        <translation>Jambon country&#xa0;: perte sur le poids frais</translation>
    </message>
    <message>
        <source>Country shoulder</source>
        <translation>Épaule country</translation>
    </message>
    <message>
        <source>Cure</source>
        <translation>Salage</translation>
    </message>
    <message>
        <source>Curing salt No. 1 (6.25 % nitrite)</source>
        <translation>Sel nitrité n°&#xa0;1 (6,25&#xa0;% de nitrite)</translation>
    </message>
    <message>
        <source>Curing salt No. 2 (6.25 % nitrite, nitrate by label)</source>
        <translation>Sel nitrité n°&#xa0;2 (6,25&#xa0;% de nitrite, nitrate selon l’étiquette)</translation>
    </message>
    <message>
        <source>Curing salt, UK (5.88 % nitrite)</source>
        <translation>Sel nitrité, Royaume-Uni (5,88&#xa0;% de nitrite)</translation>
    </message>
    <message>
        <source>Curing salt, strength from its label</source>
        <translation>Sel nitrité, teneur selon l’étiquette</translation>
    </message>
    <message>
        <source>Damp rests let the inside follow the surface.</source>
        <translation>Les repos humides laissent l’intérieur suivre la surface.</translation>
    </message>
    <message>
        <source>Dextrose (monohydrate)</source>
        <translation>Dextrose (monohydraté)</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Égouttage</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Séchage</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: Rohschinken</source>
        <translation>UE avant le 9 octobre 2025&#xa0;: Rohschinken</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured bacon</source>
        <translation>UE avant le 9 octobre 2025&#xa0;: bacon salé à sec</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured ham, jamon, lomo, cecina</source>
        <translation>UE avant le 9 octobre 2025&#xa0;: jambon salé à sec, jamon, lomo, cecina</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: jambon sec</source>
        <translation>UE avant le 9 octobre 2025&#xa0;: jambon sec</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: not heat treated</source>
        <translation>UE avant le 9 octobre 2025&#xa0;: non traité par la chaleur</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: not heat treated</source>
        <translation>UE à partir du 9 octobre 2025&#xa0;: non traité par la chaleur</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: sterilised</source>
        <translation>UE à partir du 9 octobre 2025&#xa0;: stérilisé</translation>
    </message>
    <message>
        <source>Equalise and dry the surface</source>
        <translation>Équilibrage et ressuyage de la surface</translation>
    </message>
    <message>
        <source>Equalise</source>
        <translation>Équilibrage du sel</translation>
    </message>
    <message>
        <source>Erythorbic acid</source>
        <translation>Acide érythorbique</translation>
    </message>
    <message>
        <source>Fennel seed</source>
        <translation>Graines de fenouil</translation>
    </message>
    <message>
        <source>Fenugreek, ground</source>
        <translation>Fenugrec moulu</translation>
    </message>
    <message>
        <source>Fine sea salt</source>
        <translation>Sel de mer fin</translation>
    </message>
    <message>
        <source>First drying</source>
        <translation>Premier séchage</translation>
    </message>
    <message>
        <source>First press</source>
        <translation>Premier pressage</translation>
    </message>
    <message>
        <source>First rest</source>
        <translation>Premier repos</translation>
    </message>
    <message>
        <source>First salt</source>
        <translation>Premier salage</translation>
    </message>
    <message>
        <source>Fish sauce</source>
        <translation>Sauce de poisson</translation>
    </message>
    <message>
        <source>Flake salt</source>
        <translation>Sel en flocons</translation>
    </message>
    <message>
        <source>Follows the seasons where there is no thermostat.</source>
        <translation>Suit les saisons là où il n’y a pas de thermostat.</translation>
    </message>
    <message>
        <source>French</source>
        <translation>Français</translation>
    </message>
    <message>
        <source>Fresh air</source>
        <translation>Air frais</translation>
    </message>
    <message>
        <source>Garlic powder</source>
        <translation>Ail en poudre</translation>
    </message>
    <message>
        <source>Garlic, fresh</source>
        <translation>Ail frais</translation>
    </message>
    <message>
        <source>Great Britain: not heat treated</source>
        <translation>Grande-Bretagne&#xa0;: non traité par la chaleur</translation>
    </message>
    <message>
        <source>Guanciale</source>
        <translation>Guanciale</translation>
    </message>
    <message>
        <source>Hang to even out the salt and dry the skin.</source>
        <translation>Accrocher pour égaliser le sel et ressuyer la couenne.</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>Accrochage</translation>
    </message>
    <message>
        <source>Honey</source>
        <translation>Miel</translation>
    </message>
    <message>
        <source>Italian and Spanish leg</source>
        <translation>Jambon italien et espagnol</translation>
    </message>
    <message>
        <source>Italian whole muscle</source>
        <translation>Pièces entières à l’italienne</translation>
    </message>
    <message>
        <source>Jambon sec</source>
        <translation>Jambon sec</translation>
    </message>
    <message>
        <source>Juniper berries</source>
        <translation>Baies de genièvre</translation>
    </message>
    <message>
        <source>Kosher salt, dense grain</source>
        <translation>Sel casher, grain dense</translation>
    </message>
    <message>
        <source>Kosher salt, light grain</source>
        <translation>Sel casher, grain léger</translation>
    </message>
    <message>
        <source>Lard</source>
        <translation>Pannage</translation>
    </message>
    <message>
        <source>Last drying</source>
        <translation>Dernier séchage</translation>
    </message>
    <message>
        <source>Leg, air-dried on the bone</source>
        <translation>Jambon séché à l’air, avec os</translation>
    </message>
    <message>
        <source>Leg, mountain air</source>
        <translation>Jambon, air de montagne</translation>
    </message>
    <message>
        <source>Listeria cannot grow: water activity</source>
        <translation>Listeria ne peut pas croître&#xa0;: activité de l’eau</translation>
    </message>
    <message>
        <source>Lomo, loin in adobo</source>
        <translation>Lomo, longe à l’adobo</translation>
    </message>
    <message>
        <source>Long rest</source>
        <translation>Repos long</translation>
    </message>
    <message>
        <source>Lonzino, the cured loin</source>
        <translation>Lonzino, la longe salée</translation>
    </message>
    <message>
        <source>Magret, dried duck breast</source>
        <translation>Magret de canard séché</translation>
    </message>
    <message>
        <source>Maple syrup</source>
        <translation>Sirop d’érable</translation>
    </message>
    <message>
        <source>Marinate</source>
        <translation>Marinade</translation>
    </message>
    <message>
        <source>Nitrite curing salt (0.6 %)</source>
        <translation>Sel nitrité (0,6&#xa0;%)</translation>
    </message>
    <message>
        <source>Nitrite curing salt, German (0.4 to 0.5 %)</source>
        <translation>Sel nitrité allemand (0,4 à 0,5&#xa0;%)</translation>
    </message>
    <message>
        <source>No Codex entry for cured whole cuts that are not heat treated (08.2.1) was found: do not take this one for them.</source>
        <translation>Aucune entrée du Codex n’a été trouvée pour les pièces entières salées non traitées par la chaleur (08.2.1)&#xa0;: ne prenez pas celle-ci pour elles.</translation>
    </message>
    <message>
        <source>No cold stage: a warm dry room with moving air.</source>
        <translation>Pas d’étape froide&#xa0;: un local sec et chaud avec de l’air en mouvement.</translation>
    </message>
    <message>
        <source>Only the ingoing row could be read, at second hand. Residual and nitrate rows of the new Annex are not here: read them before you rely on this set.</source>
        <translation>Seule la ligne de la quantité ajoutée a pu être lue, de seconde main. Les lignes du résiduel et du nitrate de la nouvelle annexe n’y sont pas&#xa0;: lisez-les avant de vous appuyer sur ce jeu.</translation>
    </message>
    <message>
        <source>Out by day, in by night; 4 to 15 °C and 45 to 70 % are what cooks name. Warm spring weather stops it.</source>
        <translation>Dehors le jour, dedans la nuit&#xa0;; les cuisiniers indiquent 4 à 15&#xa0;°C et 45 à 70&#xa0;%. La chaleur du printemps y met fin.</translation>
    </message>
    <message>
        <source>Pancetta, flat</source>
        <translation>Pancetta plate</translation>
    </message>
    <message>
        <source>Pancetta, rolled</source>
        <translation>Pancetta roulée</translation>
    </message>
    <message>
        <source>Paprika, ground</source>
        <translation>Paprika moulu</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Pâte d’épices</translation>
    </message>
    <message>
        <source>Pastirma</source>
        <translation>Pastirma</translation>
    </message>
    <message>
        <source>Pickle</source>
        <translation>Saumurage</translation>
    </message>
    <message>
        <source>Pickling salt</source>
        <translation>Sel à conserves</translation>
    </message>
    <message>
        <source>Poitrine séchée, dried belly</source>
        <translation>Poitrine séchée</translation>
    </message>
    <message>
        <source>Potassium nitrite, undiluted</source>
        <translation>Nitrite de potassium, non dilué</translation>
    </message>
    <message>
        <source>Pulsed dry</source>
        <translation>Séchage par impulsions</translation>
    </message>
    <message>
        <source>Raw ham, from the brine</source>
        <translation>Jambon cru, salé en saumure</translation>
    </message>
    <message>
        <source>Raw ham, smoked</source>
        <translation>Jambon cru fumé</translation>
    </message>
    <message>
        <source>Rest in a bag</source>
        <translation>Repos en sachet</translation>
    </message>
    <message>
        <source>Rest in the cold</source>
        <translation>Repos au froid</translation>
    </message>
    <message>
        <source>Restack and turn every day.</source>
        <translation>Réempiler et retourner chaque jour.</translation>
    </message>
    <message>
        <source>Rice wine, strength from its label</source>
        <translation>Vin de riz, teneur selon l’étiquette</translation>
    </message>
    <message>
        <source>Rinse and pepper</source>
        <translation>Rinçage et poivrage</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Rinçage</translation>
    </message>
    <message>
        <source>Ripen</source>
        <translation>Maturation</translation>
    </message>
    <message>
        <source>Rock salt</source>
        <translation>Sel gemme</translation>
    </message>
    <message>
        <source>Roll, case and tie</source>
        <translation>Roulage, embossage et ficelage</translation>
    </message>
    <message>
        <source>Rub</source>
        <translation>Frottage</translation>
    </message>
    <message>
        <source>Salt and adobo</source>
        <translation>Sel et adobo</translation>
    </message>
    <message>
        <source>Salt and vinegar</source>
        <translation>Sel et vinaigre</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>Sel dans la phase aqueuse</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salage</translation>
    </message>
    <message>
        <source>Salted and smoked belly</source>
        <translation>Poitrine salée et fumée</translation>
    </message>
    <message>
        <source>Salted by eye and weight class: write down what was used.</source>
        <translation>Salé à l’œil et par classe de poids&#xa0;: notez ce qui a été employé.</translation>
    </message>
    <message>
        <source>Saltpetre (potassium nitrate)</source>
        <translation>Salpêtre (nitrate de potassium)</translation>
    </message>
    <message>
        <source>Second drying</source>
        <translation>Deuxième séchage</translation>
    </message>
    <message>
        <source>Second press</source>
        <translation>Deuxième pressage</translation>
    </message>
    <message>
        <source>Second salt</source>
        <translation>Deuxième salage</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Repos de stabilisation</translation>
    </message>
    <message>
        <source>Shelf stable: water activity</source>
        <translation>Stable à température ambiante&#xa0;: activité de l’eau</translation>
    </message>
    <message>
        <source>Shoulder or ham in sweet pickle</source>
        <translation>Épaule ou jambon en saumure sucrée</translation>
    </message>
    <message>
        <source>Six hours warm, then down two degrees every twelve hours.</source>
        <translation>Six heures au chaud, puis deux degrés de moins toutes les douze heures.</translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation>Fumage</translation>
    </message>
    <message>
        <source>Soak</source>
        <translation>Dessalage</translation>
    </message>
    <message>
        <source>Sodium ascorbate</source>
        <translation>Ascorbate de sodium</translation>
    </message>
    <message>
        <source>Sodium erythorbate</source>
        <translation>Érythorbate de sodium</translation>
    </message>
    <message>
        <source>Sodium nitrate, undiluted</source>
        <translation>Nitrate de sodium, non dilué</translation>
    </message>
    <message>
        <source>Sodium nitrite, undiluted</source>
        <translation>Nitrite de sodium, non dilué</translation>
    </message>
    <message>
        <source>Sodium tripolyphosphate</source>
        <translation>Tripolyphosphate de sodium</translation>
    </message>
    <message>
        <source>South African</source>
        <translation>Sud-africain</translation>
    </message>
    <message>
        <source>Soy and spirit by volume: weigh them.</source>
        <translation>Sauce soja et alcool en volume&#xa0;: pesez-les.</translation>
    </message>
    <message>
        <source>Soy sauce</source>
        <translation>Sauce soja</translation>
    </message>
    <message>
        <source>Spanish loin</source>
        <translation>Longe espagnole</translation>
    </message>
    <message>
        <source>Speck</source>
        <translation>Speck</translation>
    </message>
    <message>
        <source>Spirit, strength from its label</source>
        <translation>Alcool fort, titre selon l’étiquette</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Empilage</translation>
    </message>
    <message>
        <source>Summer sweat is wanted. Internal temperature at most 95 °F (9 CFR 319.106).</source>
        <translation>La sueur d’été est voulue. Température à cœur de 95&#xa0;°F au plus (9 CFR 319.106).</translation>
    </message>
    <message>
        <source>Table salt</source>
        <translation>Sel de table</translation>
    </message>
    <message>
        <source>The casing day is the birthday of the piece: weigh it bare and dressed.</source>
        <translation>Le jour de l’embossage est la naissance de la pièce&#xa0;: pesez-la nue, puis sous boyau.</translation>
    </message>
    <message>
        <source>The next weighing may be wet.</source>
        <translation>La prochaine pesée peut être mouillée.</translation>
    </message>
    <message>
        <source>The rule counts the thickness before rolling: enter the flat thickness for the cure.</source>
        <translation>La règle compte l’épaisseur avant roulage&#xa0;: saisissez l’épaisseur à plat pour le salage.</translation>
    </message>
    <message>
        <source>Third drying</source>
        <translation>Troisième séchage</translation>
    </message>
    <message>
        <source>Thread and hang</source>
        <translation>Enfilage et accrochage</translation>
    </message>
    <message>
        <source>Three and a half to four days per pound, about 36 °F.</source>
        <translation>Trois jours et demi à quatre jours par livre (lb), à environ 36&#xa0;°F.</translation>
    </message>
    <message>
        <source>Three to five millimetres of paste: weigh before and after.</source>
        <translation>Trois à cinq millimètres de pâte&#xa0;: peser avant et après.</translation>
    </message>
    <message>
        <source>Turkish and Armenian pressed</source>
        <translation>Pressé turc et arménien</translation>
    </message>
    <message>
        <source>Two days per pound.</source>
        <translation>Deux jours par livre (lb).</translation>
    </message>
    <message>
        <source>US FSIS: bacon, dry cured</source>
        <translation>US FSIS&#xa0;: bacon, salé à sec</translation>
    </message>
    <message>
        <source>US FSIS: bacon, immersion cured</source>
        <translation>US FSIS&#xa0;: bacon, salé par immersion</translation>
    </message>
    <message>
        <source>US FSIS: bacon, pumped</source>
        <translation>US FSIS&#xa0;: bacon, injecté</translation>
    </message>
    <message>
        <source>US FSIS: chopped</source>
        <translation>US FSIS&#xa0;: haché</translation>
    </message>
    <message>
        <source>US FSIS: cured, labelled to keep refrigerated</source>
        <translation>US FSIS&#xa0;: salé, étiqueté «&#xa0;à conserver au froid&#xa0;»</translation>
    </message>
    <message>
        <source>US FSIS: dry cured</source>
        <translation>US FSIS&#xa0;: salé à sec</translation>
    </message>
    <message>
        <source>US FSIS: immersed, pumped or massaged</source>
        <translation>US FSIS&#xa0;: immergé, injecté ou malaxé</translation>
    </message>
    <message>
        <source>US home curing</source>
        <translation>Salaison domestique américaine</translation>
    </message>
    <message>
        <source>Vinegar (5 % acid)</source>
        <translation>Vinaigre (5&#xa0;% d’acidité)</translation>
    </message>
    <message>
        <source>Warm rest</source>
        <translation>Repos au chaud</translation>
    </message>
    <message>
        <source>Warm start</source>
        <translation>Étuvage</translation>
    </message>
    <message>
        <source>Wash and pepper</source>
        <translation>Lavage et poivrage</translation>
    </message>
    <message>
        <source>Wash and soak</source>
        <translation>Lavage et dessalage</translation>
    </message>
    <message>
        <source>Wash</source>
        <translation>Lavage</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Weigh before and after.</source>
        <translation>Peser avant et après.</translation>
    </message>
    <message>
        <source>White pepper, ground</source>
        <translation>Poivre blanc moulu</translation>
    </message>
    <message>
        <source>White sugar</source>
        <translation>Sucre blanc</translation>
    </message>
    <message>
        <source>Whole muscle in a cabinet, pulsed air</source>
        <translation>Pièce entière en armoire, air par impulsions</translation>
    </message>
    <message>
        <source>Wind dry</source>
        <translation>Séchage au vent</translation>
    </message>
    <message>
        <source>Wind-dried belly</source>
        <translation>Poitrine séchée au vent</translation>
    </message>
    <message>
        <source>Wine, strength from its label</source>
        <translation>Vin, titre selon l’étiquette</translation>
    </message>
    <message>
        <source>Wipe and dip</source>
        <translation>Essuyage et trempage</translation>
    </message>
    <message>
        <source>beef</source>
        <translation>bœuf</translation>
    </message>
    <message>
        <source>cup (US)</source>
        <translation>tasse (US)</translation>
    </message>
    <message>
        <source>cup (metric)</source>
        <translation>tasse (métrique)</translation>
    </message>
    <message>
        <source>duck</source>
        <translation>canard</translation>
    </message>
    <message>
        <source>pork</source>
        <translation>porc</translation>
    </message>
    <message>
        <source>tablespoon (Australia)</source>
        <translation>cuillère à soupe (Australie)</translation>
    </message>
    <message>
        <source>tablespoon (US food label)</source>
        <translation>cuillère à soupe (étiquetage alimentaire US)</translation>
    </message>
    <message>
        <source>tablespoon (US)</source>
        <translation>cuillère à soupe (US)</translation>
    </message>
    <message>
        <source>tablespoon (imperial)</source>
        <translation>cuillère à soupe (impériale)</translation>
    </message>
    <message>
        <source>tablespoon (metric)</source>
        <translation>cuillère à soupe (métrique)</translation>
    </message>
    <message>
        <source>tablespoon (traditional British)</source>
        <translation>cuillère à soupe (britannique traditionnelle)</translation>
    </message>
    <message>
        <source>teaspoon (US)</source>
        <translation>cuillère à café (US)</translation>
    </message>
    <message>
        <source>teaspoon (metric)</source>
        <translation>cuillère à café (métrique)</translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation>nitrite</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>nitrate</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>Dry-cured ham, cut, in the cold</source>
        <translation>Jambon sec, entamé, au froid</translation>
    </message>
    <message>
        <source>Dry-cured ham, frozen</source>
        <translation>Jambon sec, congelé</translation>
    </message>
    <message>
        <source>Dry-cured ham, whole and uncut, in a cool room</source>
        <translation>Jambon sec, entier et non entamé, dans un local frais</translation>
    </message>
    <message>
        <source>Opened, wrapped again, in the cold</source>
        <translation>Ouvert, réemballé, au froid</translation>
    </message>
    <message>
        <source>Thawed and opened, in the cold</source>
        <translation>Décongelé et ouvert, au froid</translation>
    </message>
    <message>
        <source>Whole muscle under vacuum, in the cold</source>
        <translation>Muscle entier sous vide, au froid</translation>
    </message>
    <message>
        <source>Whole muscle, frozen under vacuum</source>
        <translation>Muscle entier, congelé sous vide</translation>
    </message>
    <message>
        <source>Whole muscle, uncut, wrapped, in the cold</source>
        <translation>Muscle entier, non entamé, emballé, au froid</translation>
    </message>
    <message>
        <source>for quality</source>
        <translation>pour la qualité</translation>
    </message>
    <message>
        <source>for quality: fat turns rancid</source>
        <translation>pour la qualité&#xa0;: le gras rancit</translation>
    </message>
    <message>
        <source>for quality; of whole hams on the bone</source>
        <translation>pour la qualité&#xa0;; de jambons entiers avec os</translation>
    </message>
    <message>
        <source>it goes on drying in the fridge</source>
        <translation>au réfrigérateur, il continue de sécher</translation>
    </message>
    <message>
        <source>the chart gives three weeks after opening</source>
        <translation>le tableau donne trois semaines après ouverture</translation>
    </message>
    <message>
        <source>the chart gives two to three months</source>
        <translation>le tableau donne de deux à trois mois</translation>
    </message>
    <message>
        <source>without air some dangerous microbes grow better: only for pieces that are dry and salted through</source>
        <translation>sans air, certains microbes dangereux se développent mieux&#xa0;: seulement pour des pièces sèches et salées à cœur</translation>
    </message>
</context>
<context>
    <name>DateWords</name>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>A calendar day with its year, in Qt&apos;s date format; keep the parts, change their order.</extracomment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>A calendar day without its year, in Qt&apos;s date format.</extracomment>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>A calendar day of few letters, in Qt&apos;s date format.</extracomment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day, %2 a clock time</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>demain</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation>
            <numerusform>dans %n jour</numerusform>
            <numerusform>dans %n jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>il y a %n jour</numerusform>
            <numerusform>il y a %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>d</source>
        <extracomment>The day of the month before &quot;to 20 Mar 2026&quot;, in Qt&apos;s date format.</extracomment>
        <translation>d</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a span of days, e.g. &quot;14 to 20 Mar 2026&quot;</extracomment>
        <translation>%1 au %2</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <extracomment>A month, in Qt&apos;s date format.</extracomment>
        <translation>MMMM yyyy</translation>
    </message>
</context>
<context>
    <name>ErrorWords</name>
    <message>
        <source>Nothing is entered here yet. Type a value.</source>
        <translation>Rien n’est encore saisi ici. Tapez une valeur.</translation>
    </message>
    <message>
        <source>“%1” is not a number. Type digits, such as 740 or 2.5.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre. Tapez des chiffres, par exemple 740 ou 2,5.</translation>
    </message>
    <message>
        <source>The unit “%1” is not known. Use g, kg, oz, lb, mm, in, °C, °F, mL or fl oz.</source>
        <translation>L’unité «&#xa0;%1&#xa0;» est inconnue. Employez g, kg, oz, lb, mm, in, °C, °F, mL ou fl oz.</translation>
    </message>
    <message>
        <source>Say which unit is meant, such as g or oz.</source>
        <translation>Indiquez l’unité voulue, par exemple g ou oz.</translation>
    </message>
    <message>
        <source>“%1” is another kind of quantity than is asked for here. Enter one in the unit shown beside the field.</source>
        <translation>«&#xa0;%1&#xa0;» est d’une autre grandeur que celle demandée ici. Saisissez une valeur dans l’unité affichée à côté du champ.</translation>
    </message>
    <message>
        <source>“%1” is outside what is possible here. Check the digits and the unit.</source>
        <translation>«&#xa0;%1&#xa0;» est hors de ce qui est possible ici. Vérifiez les chiffres et l’unité.</translation>
    </message>
    <message>
        <source>“%1” is left over after the value. Take it away or write it in a note.</source>
        <translation>«&#xa0;%1&#xa0;» est en trop après la valeur. Enlevez-le ou mettez-le dans une note.</translation>
    </message>
    <message>
        <source>“%1” can be read as a thousand or as a decimal. Write it without a thousands mark.</source>
        <translation>«&#xa0;%1&#xa0;» peut se lire comme un millier ou comme un décimal. Écrivez-le sans séparateur de milliers.</translation>
    </message>
    <message>
        <source>This is not in the expected form: %1. Check that it is the file you meant.</source>
        <translation>Ceci n’a pas la forme attendue&#xa0;: %1. Vérifiez que c’est bien le fichier voulu.</translation>
    </message>
    <message>
        <source>The column “%1” is missing. Add it to the file&apos;s first line.</source>
        <translation>La colonne «&#xa0;%1&#xa0;» manque. Ajoutez-la à la première ligne du fichier.</translation>
    </message>
    <message>
        <source>A line could not be read: %1. Mend it and read the file again.</source>
        <translation>Une ligne n’a pas pu être lue&#xa0;: %1. Corrigez-la et relisez le fichier.</translation>
    </message>
    <message>
        <source>The time zone “%1” is not known on this computer. Choose another in Preferences.</source>
        <translation>Le fuseau horaire «&#xa0;%1&#xa0;» est inconnu sur cet ordinateur. Choisissez-en un autre dans les Préférences.</translation>
    </message>
    <message>
        <source>%1 was not found. Check the name and whether the disk is there.</source>
        <translation>%1 est introuvable. Vérifiez le nom et si le disque est présent.</translation>
    </message>
    <message>
        <source>%1 may not be read or written by you. Change its permissions or choose another place.</source>
        <translation>Vous n’avez pas le droit de lire ou d’écrire %1. Changez ses droits ou choisissez un autre endroit.</translation>
    </message>
    <message>
        <source>%1 is a folder. Choose a file in it.</source>
        <translation>%1 est un dossier. Choisissez un fichier qu’il contient.</translation>
    </message>
    <message>
        <source>%1 is not a Saltloft book. Choose another file, or make a new book.</source>
        <translation>%1 n’est pas un registre Saltloft. Choisissez un autre fichier ou créez un nouveau registre.</translation>
    </message>
    <message>
        <source>This book was written by a newer Saltloft (%1). Install that version to open it; nothing was changed.</source>
        <translation>Ce registre a été écrit par un Saltloft plus récent (%1). Installez cette version pour l’ouvrir&#xa0;; rien n’a été modifié.</translation>
    </message>
    <message>
        <source>The book is damaged: %1. Open a backup, or salvage what can be read into a new book.</source>
        <translation>Le registre est endommagé&#xa0;: %1. Ouvrez une sauvegarde, ou récupérez ce qui est lisible dans un nouveau registre.</translation>
    </message>
    <message>
        <source>The book is busy in another program. Close it there and try again.</source>
        <translation>Le registre est occupé par un autre programme. Fermez-le là-bas et réessayez.</translation>
    </message>
    <message>
        <source>The disk is full. Free some space and try again; nothing was lost.</source>
        <translation>Le disque est plein. Libérez de la place et réessayez&#xa0;; rien n’est perdu.</translation>
    </message>
    <message>
        <source>The disk did not answer as it should: %1. Check the disk, then try again.</source>
        <translation>Le disque n’a pas répondu comme il devait&#xa0;: %1. Vérifiez le disque, puis réessayez.</translation>
    </message>
    <message>
        <source>The book is open for reading only, so nothing was changed. Close it elsewhere or free the file, then open it again.</source>
        <translation>Le registre est ouvert en lecture seule, rien n’a donc été modifié. Fermez-le ailleurs ou libérez le fichier, puis rouvrez-le.</translation>
    </message>
    <message>
        <source>This entry is no longer in the book: %1. Go back and choose again.</source>
        <translation>Cette entrée n’est plus dans le registre&#xa0;: %1. Revenez en arrière et choisissez de nouveau.</translation>
    </message>
    <message>
        <source>This clashes with what is in the book: %1. Choose another code, or look at the entry again and repeat.</source>
        <translation>Ceci contredit ce qui est dans le registre&#xa0;: %1. Choisissez un autre code, ou revoyez l’entrée et recommencez.</translation>
    </message>
    <message>
        <source>The book does not allow this: %1. Mend what is named and try again.</source>
        <translation>Le registre ne le permet pas&#xa0;: %1. Corrigez ce qui est nommé et réessayez.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Il n’y a rien à annuler.</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <translation>Il n’y a rien à rétablir.</translation>
    </message>
    <message>
        <source>There is no answer that meets everything asked: %1. Loosen one of the wishes.</source>
        <translation>Aucune réponse ne satisfait tout ce qui est demandé&#xa0;: %1. Assouplissez l’un des souhaits.</translation>
    </message>
    <message>
        <source>The computation did not settle: %1. More weighings usually help.</source>
        <translation>Le calcul ne s’est pas stabilisé&#xa0;: %1. D’autres pesées aident en général.</translation>
    </message>
    <message>
        <source>Stopped, as you asked. Nothing was changed.</source>
        <translation>Arrêté, à votre demande. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>Something went wrong: %1. Try again.</source>
        <translation>Un problème est survenu&#xa0;: %1. Réessayez.</translation>
    </message>
    <message>
        <source>no detail</source>
        <translation>sans détail</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a place such as &quot;line 14&quot; or a file, %2 a sentence</extracomment>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>FindingWords</name>
    <message>
        <source>this entry</source>
        <translation>cette entrée</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Please look at this: %1.</source>
        <translation>Veuillez regarder ceci&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Please look at %1: %2.</source>
        <translation>Veuillez regarder %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Bloquant</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, by arithmetic from it</source>
        <translation>%1, par calcul à partir de là</translation>
    </message>
    <message>
        <source>%1 – unverified: read as quoted by others</source>
        <translation>%1 – non vérifié&#xa0;: lu dans une citation d’autrui</translation>
    </message>
    <message>
        <source>%1 – unverified: from memory</source>
        <translation>%1 – non vérifié&#xa0;: de mémoire</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>pratique courante, sans source</translation>
    </message>
    <message>
        <source>This book is open elsewhere ({by}), so it can only be read here. Close it there and open it again.</source>
        <translation>Ce registre est ouvert ailleurs ({by})&#xa0;: ici, il ne peut qu’être lu. Fermez-le là-bas et rouvrez-le.</translation>
    </message>
    <message>
        <source>This book is open for reading only. To write in it, free the file&apos;s permissions and open it again.</source>
        <translation>Ce registre est ouvert en lecture seule. Pour y écrire, libérez les droits du fichier et rouvrez-le.</translation>
    </message>
    <message>
        <source>This book is damaged ({problem}) and is open for reading only. Back it up, then salvage what can be read into a new book.</source>
        <translation>Ce registre est endommagé ({problem}) et ouvert en lecture seule. Sauvegardez-le, puis récupérez ce qui est lisible dans un nouveau registre.</translation>
    </message>
    <message>
        <source>This book lies on a network drive, where a break can lose the last entry. Keep it on this computer.</source>
        <translation>Ce registre se trouve sur un lecteur réseau, où une coupure peut faire perdre la dernière entrée. Gardez-le sur cet ordinateur.</translation>
    </message>
    <message>
        <source>This book was brought up to date from version {from} to {to}. The copy from before is {backup}.</source>
        <translation>Ce registre a été mis à jour de la version {from} à la version {to}. La copie d’avant est {backup}.</translation>
    </message>
    <message>
        <source>The program or the computer stopped without closing this book. All finished entries are here.</source>
        <translation>Le programme ou l’ordinateur s’est arrêté sans fermer ce registre. Toutes les entrées achevées sont là.</translation>
    </message>
    <message>
        <source>{place}: the {quantity} stood at {value} for {lasted}. A room is never that still: check the sensor&apos;s battery and contact.</source>
        <translation>{place}&#xa0;: {quantity} figée à {value} pendant {lasted}. Un local n’est jamais aussi calme&#xa0;: vérifiez la pile et le contact du capteur.</translation>
    </message>
    <message>
        <source>{place}: the humidity jumped by {by} on {at} and stayed there, while the temperature did not. Was a battery changed, the sensor moved, or the room set to another humidity? A salt-bag check will tell.</source>
        <translation>{place}&#xa0;: l’humidité a sauté de {by} le {at} et y est restée, mais pas la température. A-t-on changé une pile, déplacé le capteur ou réglé le local sur une autre humidité&#xa0;? Un contrôle au sachet de sel le dira.</translation>
    </message>
    <message>
        <source>{first} and {second} disagree over {hours} hours: {humidity_apart} of humidity apart. Check both over a salt slurry before you believe either.</source>
        <translation>{first} et {second} divergent sur {hours} heures&#xa0;: {humidity_apart} d’écart d’humidité. Contrôlez les deux au-dessus d’une bouillie de sel avant de croire l’un ou l’autre.</translation>
    </message>
    <message>
        <source>{place} says {stated}, but the weight losses of {pieces} pieces speak for {implied} ({implied_low} to {implied_high}). Check the sensor.</source>
        <translation>{place} indique {stated}, mais les pertes de poids de {pieces} pièces donnent plutôt {implied} ({implied_low} à {implied_high}). Contrôlez le capteur.</translation>
    </message>
    <message>
        <source>{place}: the pieces give off {water_per_day} of water a day, more than the {capacity_per_day} it can carry out. Expect damp air and slow drying.</source>
        <translation>{place}&#xa0;: les pièces rendent {water_per_day} d’eau par jour, plus que les {capacity_per_day} qu’elle peut évacuer. Attendez-vous à un air humide et à un séchage lent.</translation>
    </message>
    <message>
        <source>{place}: the pieces give off only {water_per_day} of water a day. With so little in it the air may dry their surface too fast: watch the humidity.</source>
        <translation>{place}&#xa0;: les pièces ne rendent que {water_per_day} d’eau par jour. Avec si peu de charge, l’air peut sécher leur surface trop vite&#xa0;: surveillez l’humidité.</translation>
    </message>
    <message>
        <source>{place}: {pieces} pieces for {places} places.</source>
        <translation>{place}&#xa0;: {pieces} pièces pour {places} places.</translation>
    </message>
    <message>
        <source>{joining} wet pieces would hang with {nearly_dry} nearly dry ones: the water to carry out rises from {water_now} to {water_then} a day, and the dry ones would take some of it up. Hang them elsewhere, or a week apart.</source>
        <translation>{joining} pièces humides seraient accrochées avec {nearly_dry} presque sèches&#xa0;: l’eau à évacuer passe de {water_now} à {water_then} par jour, et les sèches en reprendraient une partie. Accrochez-les ailleurs, ou à une semaine d’intervalle.</translation>
    </message>
    <message>
        <source>The day rules for this way of curing disagree: {shortest} to {longest}. Choose one and keep it with the batch.</source>
        <translation>Les règles de durée pour ce mode de salage divergent&#xa0;: {shortest} à {longest}. Choisissez-en une et gardez-la avec le lot.</translation>
    </message>
    <message>
        <source>This day rule belongs to another way of curing. Rules by weight come from burying in salt, rules by thickness mostly from weighed cures.</source>
        <translation>Cette règle de durée relève d’un autre mode de salage. Les règles au poids viennent de l’enfouissement dans le sel, celles à l’épaisseur surtout des salages pesés.</translation>
    </message>
    <message>
        <source>The day rules ({shortest} to {longest}) lie outside what salt diffusion suggests ({p10} to {p90}, half-way {p50}).</source>
        <translation>Les règles de durée ({shortest} à {longest}) sortent de ce que suggère la diffusion du sel ({p10} à {p90}, médiane {p50}).</translation>
    </message>
    <message>
        <source>{planned} is planned; diffusion suggests {p50} ({p10} to {p90}). The centre may get too little: give it longer or rest it cold afterwards.</source>
        <translation>{planned} sont prévus&#xa0;; la diffusion suggère {p50} ({p10} à {p90}). Le cœur peut recevoir trop peu&#xa0;: donnez plus de temps ou un repos au froid ensuite.</translation>
    </message>
    <message>
        <source>{planned} in more salt than it needs is longer than {p90}, when the piece passes {wanted}. Buried in salt, time is the dose.</source>
        <translation>{planned} dans plus de sel que nécessaire dépassent {p90}, où la pièce passe {wanted}. En enfouissement dans le sel, c’est le temps qui fait la dose.</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, warmer than {limit}. Move it to a colder place.</source>
        <translation>Le salage est à {temperature}, plus chaud que {limit}. Mettez-le dans un endroit plus froid.</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, colder than {limit}: salt moves slowly there, give it longer.</source>
        <translation>Le salage est à {temperature}, plus froid que {limit}&#xa0;: le sel y avance lentement, donnez plus de temps.</translation>
    </message>
    <message>
        <source>Frozen for {paused}: the cure stood still and that time is added.</source>
        <translation>Congelée pendant {paused}&#xa0;: le salage s’est arrêté et ce temps est ajouté.</translation>
    </message>
    <message>
        <source>At {temperature} the piece is frozen and the cure stands still. No end can be given until it is thawed.</source>
        <translation>À {temperature}, la pièce est gelée et le salage est à l’arrêt. Aucune fin ne peut être donnée avant la décongélation.</translation>
    </message>
    <message>
        <source>Only the thickness is known; salt coming in at the ends is not counted. Enter width and length for a better figure.</source>
        <translation>Seule l’épaisseur est connue&#xa0;; le sel entrant par les bouts n’est pas compté. Saisissez la largeur et la longueur pour un meilleur chiffre.</translation>
    </message>
    <message>
        <source>With {fat} fat most salt goes into the lean, and more slowly than the figures say.</source>
        <translation>Avec {fat} de gras, le sel va surtout dans le maigre, et plus lentement que ne disent les chiffres.</translation>
    </message>
    <message>
        <source>With skin all round no salt can get in. Take the skin off one side.</source>
        <translation>Avec la couenne tout autour, le sel ne peut pas entrer. Ôtez la couenne d’un côté.</translation>
    </message>
    <message>
        <source>{salt} is more than the water of the meat can hold ({most}). Ask for less.</source>
        <translation>{salt}, c’est plus que l’eau de la viande ne peut tenir ({most}). Demandez moins.</translation>
    </message>
    <message>
        <source>The thickness must be between 1 mm and 500 mm.</source>
        <translation>L’épaisseur doit être comprise entre 1&#xa0;mm et 500&#xa0;mm.</translation>
    </message>
    <message>
        <source>Width and length must be at least the thickness, which is the shortest side, and at most 2 m.</source>
        <translation>La largeur et la longueur doivent être au moins égales à l’épaisseur, qui est le plus petit côté, et d’au plus 2&#xa0;m.</translation>
    </message>
    <message>
        <source>The salt must be above 0 and at most 20 % of the meat.</source>
        <translation>Le sel doit être supérieur à 0 et d’au plus 20&#xa0;% de la viande.</translation>
    </message>
    <message>
        <source>The temperature of a cure must be between -40 and 45 °C.</source>
        <translation>La température d’un salage doit être comprise entre -40 et 45&#xa0;°C.</translation>
    </message>
    <message>
        <source>The liquid around the meat must be between none and 20 times the meat.</source>
        <translation>Le liquide autour de la viande doit être compris entre zéro et 20 fois la viande.</translation>
    </message>
    <message>
        <source>The fat must be between 0 and 95 %.</source>
        <translation>Le gras doit être compris entre 0 et 95&#xa0;%.</translation>
    </message>
    <message>
        <source>&quot;Even&quot; must mean between 50 and 99 % of the mean at the centre.</source>
        <translation>«&#xa0;Équilibré&#xa0;» doit signifier entre 50 et 99&#xa0;% de la moyenne au cœur.</translation>
    </message>
    <message>
        <source>The planned time must be between none and ten years.</source>
        <translation>La durée prévue doit être comprise entre zéro et dix ans.</translation>
    </message>
    <message>
        <source>The day rule &quot;{place}&quot; is not known. Choose one from the list.</source>
        <translation>La règle de durée «&#xa0;{place}&#xa0;» est inconnue. Choisissez-en une dans la liste.</translation>
    </message>
    <message>
        <source>{loss} in {took}, {per_day} a day, is fast (up to {usual_most} a day is usual). The inside may be behind the outside: cut one or rest it and weigh again.</source>
        <translation>{loss} en {took}, {per_day} par jour, c’est rapide (jusqu’à {usual_most} par jour est habituel). L’intérieur peut être en retard sur l’extérieur&#xa0;: coupez-en une, ou laissez reposer et repesez.</translation>
    </message>
    <message>
        <source>The target is reached ({loss}), but the centre feels soft. Rest it so that it evens out, and look again.</source>
        <translation>La cible est atteinte ({loss}), mais le cœur est mou au toucher. Laissez reposer pour que cela s’égalise, puis revoyez.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day). With {fat} fat there is little water left to lose: a fatty piece can be as dry as it gets below its target.</source>
        <translation>Courbe presque plate à {loss} ({per_day} par jour). Avec {fat} de gras, il reste peu d’eau à perdre&#xa0;: une pièce grasse peut être aussi sèche que possible en deçà de sa cible.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day), though the piece is lean. Ask the air first: humidity {humidity}. In wet air it stops before it is dry.</source>
        <translation>Courbe presque plate à {loss} ({per_day} par jour), bien que la pièce soit maigre. Voyez d’abord l’air&#xa0;: humidité {humidity}. Dans un air humide, elle s’arrête avant d’être sèche.</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day) with a soft centre: a dry rim may hold the water in. Rest it in a bag, then dry on in wetter air.</source>
        <translation>Courbe presque plate à {loss} ({per_day} par jour) avec un cœur mou&#xa0;: un croûtage peut retenir l’eau. Mettez-la au repos en sachet, puis séchez dans un air plus humide.</translation>
    </message>
    <message>
        <source>The loss levels off near {levels_off}; the target of {target} is not in sight in this air. Change the air or the target.</source>
        <translation>La perte se stabilise vers {levels_off}&#xa0;; la cible de {target} n’est pas en vue dans cet air. Changez l’air ou la cible.</translation>
    </message>
    <message>
        <source>It weighs {net}, more than at its start ({start}). Was it washed, coated or dressed? Enter that, or correct the weighing.</source>
        <translation>Elle pèse {net}, plus qu’au départ ({start}). A-t-elle été lavée, enrobée, mise sous boyau ou filet&#xa0;? Saisissez-le, ou corrigez la pesée.</translation>
    </message>
    <message>
        <source>{net} is less than the dry matter of {start} at the start. Look for a wrong weight, a tare or a cut that was not entered.</source>
        <translation>{net}, c’est moins que la matière sèche de {start} au départ. Cherchez un poids faux, une tare ou une coupe non saisie.</translation>
    </message>
    <message>
        <source>The raw weight is not known; {start} is reckoned from a later weight and a usual loss in the cure.</source>
        <translation>Le poids frais est inconnu&#xa0;; {start} est calculé à partir d’un poids ultérieur et d’une perte habituelle au salage.</translation>
    </message>
    <message>
        <source>Buried in salt, the amount put on says little about what went in. Salt and water activity are guesses here: have them measured.</source>
        <translation>En enfouissement dans le sel, la quantité mise en dit peu sur ce qui est entré. Le sel et l’activité de l’eau sont ici des suppositions&#xa0;: faites-les mesurer.</translation>
    </message>
    <message>
        <source>The water activity is an estimate from weights and salt. A rule that asks for it asks for a measurement.</source>
        <translation>L’activité de l’eau est une estimation à partir des poids et du sel. Une règle qui la demande exige une mesure.</translation>
    </message>
    <message>
        <source>Measured {measured}, estimated {low} to {high}. Look at the sample&apos;s place, the instrument&apos;s check, the salt and the fat entered.</source>
        <translation>Mesuré {measured}, estimé {low} à {high}. Voyez l’endroit de l’échantillon, le contrôle de l’instrument, le sel et le gras saisis.</translation>
    </message>
    <message>
        <source>The weighings were not in order of time; they were sorted.</source>
        <translation>Les pesées n’étaient pas dans l’ordre du temps&#xa0;; elles ont été triées.</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to see the evidence.</source>
        <translation>La valeur de {place} est impossible. Corrigez-la pour voir les indices.</translation>
    </message>
    <message>
        <source>At {temperature} the piece spends about {time} between {low} and {high}, where microbes grow.</source>
        <translation>À {temperature}, la pièce passe environ {time} entre {low} et {high}, où les microbes se développent.</translation>
    </message>
    <message>
        <source>About {time} in this warmth is longer than the {guide} that a guide (for fish) allows ready-to-eat food.</source>
        <translation>Environ {time} dans cette chaleur, c’est plus long que les {guide} qu’un guide (pour le poisson) admet pour un aliment prêt à manger.</translation>
    </message>
    <message>
        <source>The piece may still be wetter than a water activity of {limit}. Dry it further in the cold before warming it.</source>
        <translation>La pièce peut être encore plus humide qu’une activité de l’eau de {limit}. Séchez-la davantage au froid avant de la chauffer.</translation>
    </message>
    <message>
        <source>In warm air of {humidity} a thick piece can dry hard outside and stay wet inside.</source>
        <translation>Dans un air chaud à {humidity}, une pièce épaisse peut croûter en surface et rester humide à cœur.</translation>
    </message>
    <message>
        <source>Warming at the end does not undo a toxin that Staphylococcus aureus has left.</source>
        <translation>Chauffer à la fin ne défait pas une toxine laissée par Staphylococcus aureus.</translation>
    </message>
    <message>
        <source>At {temperature} the piece begins to cook rather than dry.</source>
        <translation>À {temperature}, la pièce commence à cuire plutôt qu’à sécher.</translation>
    </message>
    <message>
        <source>{target} is more than the water left can give; it levels off near {levels_off}.</source>
        <translation>{target}, c’est plus que ne peut donner l’eau restante&#xa0;; la perte se stabilise vers {levels_off}.</translation>
    </message>
    <message>
        <source>The loss wanted is already reached ({loss}).</source>
        <translation>La perte voulue est déjà atteinte ({loss}).</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to get an answer.</source>
        <translation>La valeur de {place} est impossible. Corrigez-la pour obtenir une réponse.</translation>
    </message>
    <message>
        <source>This is more salt than the water can dissolve ({most} of the water phase).</source>
        <translation>C’est plus de sel que l’eau ne peut en dissoudre ({most} de la phase aqueuse).</translation>
    </message>
    <message>
        <source>The wet end of the estimate is above {limit}, the lowest water activity at which {name} grows.</source>
        <translation>La borne humide de l’estimation dépasse {limit}, l’activité de l’eau la plus basse où {name} croît.</translation>
    </message>
    <message>
        <source>The weighing of {at} lies off the curve by {off_by}. Was the tare right, the hook on the scale, the scale level? Weigh again or correct the entry.</source>
        <translation>La pesée du {at} s’écarte de la courbe de {off_by}. La tare était-elle juste, le crochet sur la balance, la balance de niveau&#xa0;? Repesez ou corrigez l’entrée.</translation>
    </message>
    <message>
        <source>{pieces} pieces weighed on {at} stepped by {shift} the same way. That points to the scale or its zero, not to the meat: check it with a known weight.</source>
        <translation>{pieces} pièces pesées le {at} se sont décalées de {shift} dans le même sens. Cela désigne la balance ou son zéro, non la viande&#xa0;: contrôlez-la avec un poids connu.</translation>
    </message>
    <message>
        <source>The loss has nearly stopped ({rate_per_day} a day). A firm piece may be finished or fat; a soft one may have dried hard outside; a wet chamber slows all.</source>
        <translation>La perte s’est presque arrêtée ({rate_per_day} par jour). Une pièce ferme peut être finie ou grasse&#xa0;; une molle peut avoir croûté&#xa0;; une chambre humide ralentit tout.</translation>
    </message>
    <message>
        <source>It lost {loss} in {over}: the outside is drying faster than the inside can follow. Look for a hard rim; more humidity or a rest in a bag evens it out.</source>
        <translation>Elle a perdu {loss} en {over}&#xa0;: l’extérieur sèche plus vite que l’intérieur ne peut suivre. Cherchez un croûtage&#xa0;; plus d’humidité ou un repos en sachet l’égalise.</translation>
    </message>
    <message>
        <source>It weighs {gain} more than before ({at}). Was it washed, coated or dressed? Enter that as an event, or correct the weighing.</source>
        <translation>Elle pèse {gain} de plus qu’avant ({at}). A-t-elle été lavée, enrobée, mise sous boyau ou filet&#xa0;? Saisissez-le comme événement, ou corrigez la pesée.</translation>
    </message>
    <message>
        <source>The losses speak for about {implied} in the air, the log says {logged}. Check the hygrometer over a salt slurry.</source>
        <translation>Les pertes donnent environ {implied} dans l’air, le relevé dit {logged}. Contrôlez l’hygromètre au-dessus d’une bouillie de sel.</translation>
    </message>
    <message>
        <source>The target of {target} lies beyond where this piece levels off ({levels_off}). Drier air or a lower target would change that.</source>
        <translation>La cible de {target} est au-delà du palier de cette pièce ({levels_off}). Un air plus sec ou une cible plus basse changerait cela.</translation>
    </message>
    <message>
        <source>The weight that the target counts from ({reference}) was never taken. Enter it, or count from another weight.</source>
        <translation>Le poids à partir duquel compte la cible ({reference}) n’a jamais été pris. Saisissez-le, ou comptez à partir d’un autre poids.</translation>
    </message>
    <message>
        <source>An event ({event}, {at}) has no weights, so the start could not be shared out. Enter the net weight before and after.</source>
        <translation>Un événement ({event}, {at}) n’a pas de poids, le départ n’a donc pas pu être réparti. Saisissez le poids net avant et après.</translation>
    </message>
    <message>
        <source>The weighing of {at} has no tare; the last known one was taken. Correct it if the casing or net changed.</source>
        <translation>La pesée du {at} n’a pas de tare&#xa0;; la dernière connue a été prise. Corrigez-la si le boyau ou le filet a changé.</translation>
    </message>
    <message>
        <source>{place} has no code. Give it two or three letters or digits.</source>
        <translation>{place} n’a pas de code. Donnez deux ou trois lettres ou chiffres.</translation>
    </message>
    <message>
        <source>The code {place} is taken already. Choose another.</source>
        <translation>Le code {place} est déjà pris. Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>The code {place} stands twice. Give each its own.</source>
        <translation>Le code {place} figure deux fois. Donnez à chacun le sien.</translation>
    </message>
    <message>
        <source>{place} has no name. Enter one.</source>
        <translation>{place} n’a pas de nom. Saisissez-en un.</translation>
    </message>
    <message>
        <source>The name of {place} is taken already. Choose another.</source>
        <translation>Le nom de {place} est déjà pris. Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>Say in a few words why; the reason is kept with the change.</source>
        <translation>Dites en quelques mots pourquoi&#xa0;; la raison est gardée avec la modification.</translation>
    </message>
    <message>
        <source>Nothing is entered yet.</source>
        <translation>Rien n’est encore saisi.</translation>
    </message>
    <message>
        <source>{place} is not a number. Type digits.</source>
        <translation>{place} n’est pas un nombre. Tapez des chiffres.</translation>
    </message>
    <message>
        <source>{place} lies in the future. Check the day and time.</source>
        <translation>{place} est dans le futur. Vérifiez le jour et l’heure.</translation>
    </message>
    <message>
        <source>The weight of {place} must be more than nothing.</source>
        <translation>Le poids de {place} doit être supérieur à zéro.</translation>
    </message>
    <message>
        <source>The weight of {place} is below nothing. Check it.</source>
        <translation>Le poids de {place} est inférieur à zéro. Vérifiez-le.</translation>
    </message>
    <message>
        <source>The weight of {place} is far outside what a piece weighs. Check the unit.</source>
        <translation>Le poids de {place} est très loin de ce que pèse une pièce. Vérifiez l’unité.</translation>
    </message>
    <message>
        <source>The tare of {place} is as heavy as what is on the scale. Check both.</source>
        <translation>La tare de {place} est aussi lourde que ce qui est sur la balance. Vérifiez les deux.</translation>
    </message>
    <message>
        <source>The thickness of {place} must be more than nothing.</source>
        <translation>L’épaisseur de {place} doit être supérieure à zéro.</translation>
    </message>
    <message>
        <source>The share of {place} must lie between 0 and 100 %.</source>
        <translation>La part de {place} doit être comprise entre 0 et 100&#xa0;%.</translation>
    </message>
    <message>
        <source>The loss aimed for of {place} must lie between 0 and 100 %.</source>
        <translation>La perte visée de {place} doit être comprise entre 0 et 100&#xa0;%.</translation>
    </message>
    <message>
        <source>A score goes from 2 too little to 2 too much.</source>
        <translation>Un score va de 2 en moins à 2 en trop.</translation>
    </message>
    <message>
        <source>The count of {place} is below nothing.</source>
        <translation>Le nombre de {place} est inférieur à zéro.</translation>
    </message>
    <message>
        <source>The count of {place} must be at least one.</source>
        <translation>Le nombre de {place} doit être d’au moins un.</translation>
    </message>
    <message>
        <source>The price of {place} is below nothing.</source>
        <translation>Le prix de {place} est inférieur à zéro.</translation>
    </message>
    <message>
        <source>The lower end of {place} lies above its upper end. Swap them.</source>
        <translation>Le bas de {place} est au-dessus de son haut. Permutez-les.</translation>
    </message>
    <message>
        <source>{place} ends before it starts. Check the days.</source>
        <translation>{place} finit avant de commencer. Vérifiez les jours.</translation>
    </message>
    <message>
        <source>The text of {place} is too long. Shorten it.</source>
        <translation>Le texte de {place} est trop long. Raccourcissez-le.</translation>
    </message>
    <message>
        <source>The photo of {place} is too large. Take a smaller copy.</source>
        <translation>La photo de {place} est trop grande. Prenez une copie plus petite.</translation>
    </message>
    <message>
        <source>The recipe of {place} is empty.</source>
        <translation>La recette de {place} est vide.</translation>
    </message>
    <message>
        <source>The weight that {place} counts from cannot be known at this point.</source>
        <translation>Le poids à partir duquel {place} compte ne peut pas être connu à ce stade.</translation>
    </message>
    <message>
        <source>Name at least two pieces.</source>
        <translation>Nommez au moins deux pièces.</translation>
    </message>
    <message>
        <source>The pieces belong to different batches. Weigh only pieces of one batch as one.</source>
        <translation>Les pièces appartiennent à des lots différents. Ne pesez ensemble que des pièces d’un même lot.</translation>
    </message>
    <message>
        <source>{place} was discarded already.</source>
        <translation>{place} a déjà été écartée.</translation>
    </message>
    <message>
        <source>{place} was cut or weighed with others and carries on under another code. Open that piece.</source>
        <translation>{place} a été découpée ou pesée avec d’autres et continue sous un autre code. Ouvrez cette pièce-là.</translation>
    </message>
    <message>
        <source>Cutting and weighing as one have forms of their own.</source>
        <translation>La découpe et la pesée ensemble ont leurs propres formulaires.</translation>
    </message>
    <message>
        <source>{place} is in the book already. Correct it instead.</source>
        <translation>{place} est déjà dans le registre. Corrigez plutôt l’entrée.</translation>
    </message>
    <message>
        <source>The stage {place} has started, so it stays as it is.</source>
        <translation>L’étape {place} a commencé, elle reste donc telle quelle.</translation>
    </message>
    <message>
        <source>The stage {place} has ended already.</source>
        <translation>L’étape {place} est déjà terminée.</translation>
    </message>
    <message>
        <source>The stage {place} belongs to another batch.</source>
        <translation>L’étape {place} appartient à un autre lot.</translation>
    </message>
    <message>
        <source>That is more than is left in {place}. Check the amount, or count the pack again.</source>
        <translation>C’est plus qu’il ne reste dans {place}. Vérifiez la quantité, ou recomptez le paquet.</translation>
    </message>
    <message>
        <source>{place} refers to itself.</source>
        <translation>{place} renvoie à soi-même.</translation>
    </message>
    <message>
        <source>This is not a recipe file: it is no JSON text.</source>
        <translation>Ce n’est pas un fichier de recette&#xa0;: ce n’est pas du texte JSON.</translation>
    </message>
    <message>
        <source>The recipe says version &quot;{found}&quot;; this program reads {wanted}. Was it written by a newer Saltloft?</source>
        <translation>La recette indique la version «&#xa0;{found}&#xa0;»&#xa0;; ce programme lit {wanted}. A-t-elle été écrite par un Saltloft plus récent&#xa0;?</translation>
    </message>
    <message>
        <source>{place} is missing: {wanted}.</source>
        <translation>{place} manque&#xa0;: {wanted}.</translation>
    </message>
    <message>
        <source>{place} means nothing here. Known are: {wanted}. Mend the spelling, so that nothing is left out.</source>
        <translation>{place} ne veut rien dire ici. Sont connus&#xa0;: {wanted}. Corrigez l’orthographe, pour que rien ne soit omis.</translation>
    </message>
    <message>
        <source>{place} is {found}; needed is: {wanted}.</source>
        <translation>{place} vaut {found}&#xa0;; il faut&#xa0;: {wanted}.</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;; known are: {wanted}.</source>
        <translation>{place} indique «&#xa0;{found}&#xa0;»&#xa0;; sont connus&#xa0;: {wanted}.</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;, which cannot be read as a quantity ({reason}). Write it like this: {wanted}.</source>
        <translation>{place} indique «&#xa0;{found}&#xa0;», ce qui ne se lit pas comme une quantité ({reason}). Écrivez ainsi&#xa0;: {wanted}.</translation>
    </message>
    <message>
        <source>The recipe has no ingredients yet. Add the first.</source>
        <translation>La recette n’a pas encore d’ingrédients. Ajoutez le premier.</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is not in the catalogue. Choose another, or describe your own from its label.</source>
        <translation>«&#xa0;{found}&#xa0;» n’est pas au catalogue. Choisissez-en un autre, ou décrivez le vôtre d’après son étiquette.</translation>
    </message>
    <message>
        <source>{ingredient} stands in the recipe twice. Both count: is that meant?</source>
        <translation>{ingredient} figure deux fois dans la recette. Les deux comptent&#xa0;: est-ce voulu&#xa0;?</translation>
    </message>
    <message>
        <source>Two ingredients of your own share the id {found}. Rename one.</source>
        <translation>Deux de vos propres ingrédients partagent l’identifiant {found}. Renommez-en un.</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the nitrite and nitrate from its label. Curing salts differ tenfold.</source>
        <translation>{ingredient}&#xa0;: quelle est sa teneur&#xa0;? Saisissez le nitrite et le nitrate lus sur l’étiquette. La teneur des sels nitrités varie de un à dix.</translation>
    </message>
    <message>
        <source>{ingredient}: a strength of {found} looks like a proportion typed as percent. 0.0625 on a sheet is 6.25 %. Enter what the label says.</source>
        <translation>{ingredient}&#xa0;: une teneur de {found} ressemble à une proportion tapée en pour cent. 0,0625 sur une feuille fait 6,25&#xa0;%. Saisissez ce que dit l’étiquette.</translation>
    </message>
    <message>
        <source>{ingredient}: no curing salt is sold at {found}; labels run from {low} to {high}. Read the label again.</source>
        <translation>{ingredient}&#xa0;: aucun sel nitrité ne se vend à {found}&#xa0;; les étiquettes vont de {low} à {high}. Relisez l’étiquette.</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {strength} nitrite, from its name only. Enter the strength from the label in your hand.</source>
        <translation>{ingredient}&#xa0;: calculé à {strength} de nitrite, d’après son seul nom. Saisissez la teneur de l’étiquette que vous tenez.</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the percent by volume from the label.</source>
        <translation>{ingredient}&#xa0;: quel est son titre&#xa0;? Saisissez le pourcentage en volume lu sur l’étiquette.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is stronger than distilling goes. Is it proof?</source>
        <translation>{ingredient}&#xa0;: {found}&#xa0;% en volume dépasse ce que donne la distillation. Est-ce du «&#xa0;proof&#xa0;»&#xa0;?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is rare. If the label says proof, enter it as proof with its country.</source>
        <translation>{ingredient}&#xa0;: {found}&#xa0;% en volume est rare. Si l’étiquette indique «&#xa0;proof&#xa0;», saisissez-le comme proof avec son pays.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is a spirit&apos;s strength, not a wine&apos;s.</source>
        <translation>{ingredient}&#xa0;: {found}&#xa0;% en volume est le titre d’un alcool fort, non d’un vin.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} is more than pure salt holds. Milligrams taken for grams?</source>
        <translation>{ingredient}&#xa0;: {found}, c’est plus que n’en contient le sel pur. Des milligrammes pris pour des grammes&#xa0;?</translation>
    </message>
    <message>
        <source>{ingredient}: how salty is it? Enter salt or sodium from its label.</source>
        <translation>{ingredient}&#xa0;: quelle est sa teneur en sel&#xa0;? Saisissez le sel ou le sodium lu sur l’étiquette.</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {low} to {high} salt. Enter the sodium from the label to narrow that.</source>
        <translation>{ingredient}&#xa0;: calculé à {low} à {high} de sel. Saisissez le sodium de l’étiquette pour resserrer cela.</translation>
    </message>
    <message>
        <source>{ingredient}: the parts add up to {found}. Check the label&apos;s figures.</source>
        <translation>{ingredient}&#xa0;: les parts totalisent {found}. Vérifiez les chiffres de l’étiquette.</translation>
    </message>
    <message>
        <source>{ingredient}: nothing in a kitchen weighs {found} g to the millilitre.</source>
        <translation>{ingredient}&#xa0;: rien dans une cuisine ne pèse {found}&#xa0;g par millilitre.</translation>
    </message>
    <message>
        <source>{ingredient}: no density is known, so a volume cannot be turned into weight. Please weigh it.</source>
        <translation>{ingredient}&#xa0;: aucune densité n’est connue, un volume ne peut donc pas être converti en poids. Veuillez peser.</translation>
    </message>
    <message>
        <source>{ingredient}: its label counts by volume. Enter its density, or weigh 100 mL of it.</source>
        <translation>{ingredient}&#xa0;: son étiquette compte en volume. Saisissez sa densité, ou pesez-en 100&#xa0;mL.</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is no measure with a known size. Spoons differ by country: choose one from the list, or weigh.</source>
        <translation>«&#xa0;{found}&#xa0;» n’est pas une mesure de contenance connue. Les cuillères diffèrent selon le pays&#xa0;: choisissez-en une dans la liste, ou pesez.</translation>
    </message>
    <message>
        <source>{ingredient}: the amount is nothing. Enter it or take the line out.</source>
        <translation>{ingredient}&#xa0;: la quantité est nulle. Saisissez-la ou retirez la ligne.</translation>
    </message>
    <message>
        <source>There is no water to count from. Add the water of the brine.</source>
        <translation>Il n’y a pas d’eau à partir de laquelle compter. Ajoutez l’eau de la saumure.</translation>
    </message>
    <message>
        <source>Water cannot be a share of itself. Enter it by weight, by volume or as a share of the meat.</source>
        <translation>L’eau ne peut pas être une part d’elle-même. Saisissez-la en poids, en volume ou comme part de la viande.</translation>
    </message>
    <message>
        <source>Some amounts are fixed and stay the same for any weight of meat. Say for how much meat they were written, and they follow.</source>
        <translation>Certaines quantités sont fixes et restent les mêmes pour tout poids de viande. Dites pour combien de viande elles ont été écrites, et elles suivront.</translation>
    </message>
    <message>
        <source>How much pickle is pumped in? Enter it as a share of the meat.</source>
        <translation>Combien de saumure est injectée&#xa0;? Saisissez-la comme part de la viande.</translation>
    </message>
    <message>
        <source>How much pickle does the meat take up? Weigh a piece before and after, or use the method at equilibrium.</source>
        <translation>Combien de saumure la viande prend-elle&#xa0;? Pesez une pièce avant et après, ou prenez la méthode à l’équilibre.</translation>
    </message>
    <message>
        <source>{found} looks like a proportion typed as percent: 0.1 on a sheet is 10 %.</source>
        <translation>{found} ressemble à une proportion tapée en pour cent&#xa0;: 0,1 sur une feuille fait 10&#xa0;%.</translation>
    </message>
    <message>
        <source>Meat does not take up {found} of its weight.</source>
        <translation>Une viande ne prend pas {found} de son poids.</translation>
    </message>
    <message>
        <source>{found} of the meat&apos;s weight is a lot of pickle.</source>
        <translation>{found} du poids de la viande, c’est beaucoup de saumure.</translation>
    </message>
    <message>
        <source>Buried in salt, what goes on is known and what goes in is not: the doses here are what you put on.</source>
        <translation>En enfouissement dans le sel, on sait ce qu’on met, non ce qui entre&#xa0;: les doses sont ici ce que vous mettez.</translation>
    </message>
    <message>
        <source>The rubs add up to {found}, not to the whole.</source>
        <translation>Les frottages totalisent {found}, non le tout.</translation>
    </message>
    <message>
        <source>The rubs must follow each other in time.</source>
        <translation>Les frottages doivent se suivre dans le temps.</translation>
    </message>
    <message>
        <source>{place}: there is no such rub in the recipe.</source>
        <translation>{place}&#xa0;: ce frottage n’existe pas dans la recette.</translation>
    </message>
    <message>
        <source>Raw meat seldom holds {found} of water.</source>
        <translation>La viande crue contient rarement {found} d’eau.</translation>
    </message>
    <message>
        <source>Skin is seldom {found} of a piece.</source>
        <translation>La couenne fait rarement {found} d’une pièce.</translation>
    </message>
    <message>
        <source>No meat loses {found} of its weight by drying.</source>
        <translation>Aucune viande ne perd {found} de son poids en séchant.</translation>
    </message>
    <message>
        <source>Enter the weight of the meat.</source>
        <translation>Saisissez le poids de la viande.</translation>
    </message>
    <message>
        <source>A piece without a weight cannot be dosed.</source>
        <translation>Une pièce sans poids ne peut pas être dosée.</translation>
    </message>
    <message>
        <source>A piece of {found}: grams, or kilograms?</source>
        <translation>Une pièce de {found}&#xa0;: des grammes, ou des kilogrammes&#xa0;?</translation>
    </message>
    <message>
        <source>A piece of {found}: kilograms, or grams?</source>
        <translation>Une pièce de {found}&#xa0;: des kilogrammes, ou des grammes&#xa0;?</translation>
    </message>
    <message>
        <source>{amount} of {ingredient} on a {step} scale is wrong by up to {error}. Use a finer scale, or blend a larger batch first.</source>
        <translation>{amount} de {ingredient} sur une balance à l’échelon de {step} est faux de {error} au plus. Prenez une balance plus fine, ou mélangez d’abord une plus grande quantité.</translation>
    </message>
    <message>
        <source>On a {step} scale a piece&apos;s cure would show as nothing. Use a finer scale, or blend a larger batch first.</source>
        <translation>Sur une balance à l’échelon de {step}, la dose d’une pièce ne s’afficherait pas. Prenez une balance plus fine, ou mélangez d’abord une plus grande quantité.</translation>
    </message>
    <message>
        <source>Your wish for {what} ({asked}) cannot be met with what you hold: it comes to {found}, short by {by}.</source>
        <translation>Votre souhait pour {what} ({asked}) ne peut pas être satisfait avec les lignes fixes&#xa0;: on arrive à {found}, il manque {by}.</translation>
    </message>
    <message>
        <source>What you hold brings more {what} than the limit of {asked}: {found}.</source>
        <translation>Les lignes fixes apportent plus de {what} que la limite de {asked}&#xa0;: {found}.</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about ten times what is usual. A slipped decimal?</source>
        <translation>{ingredient}&#xa0;: {found} de la viande, c’est environ dix fois l’habitude. Une virgule déplacée&#xa0;?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about a tenth of what is usual. A slipped decimal?</source>
        <translation>{ingredient}&#xa0;: {found} de la viande, c’est environ un dixième de l’habitude. Une virgule déplacée&#xa0;?</translation>
    </message>
    <message>
        <source>{ingredient}: {found} looks like a proportion typed as percent. 0.025 on a sheet is 2.5 %.</source>
        <translation>{ingredient}&#xa0;: {found} ressemble à une proportion tapée en pour cent. 0,025 sur une feuille fait 2,5&#xa0;%.</translation>
    </message>
    <message>
        <source>{ingredient} at {found} of the meat: that is an amount for salt, not for a strong curing salt. It would be {nitrite} nitrite.</source>
        <translation>{ingredient} à {found} de la viande&#xa0;: c’est une quantité pour du sel, non pour un sel nitrité concentré. Cela ferait {nitrite} de nitrite.</translation>
    </message>
    <message>
        <source>{ingredient}: with tablespoons the dose is {found}. Teaspoons would be usual. Please weigh it.</source>
        <translation>{ingredient}&#xa0;: avec des cuillères à soupe, la dose est de {found}. Des cuillères à café seraient habituelles. Veuillez peser.</translation>
    </message>
    <message>
        <source>{ingredient} is measured by the spoon. Spoons differ by a quarter: weigh it.</source>
        <translation>{ingredient} est mesuré à la cuillère. Les cuillères diffèrent d’un quart&#xa0;: pesez.</translation>
    </message>
    <message>
        <source>{ingredient} is undiluted. A gram too much is a poisonous dose: a ready-mixed curing salt forgives more.</source>
        <translation>{ingredient} n’est pas dilué. Un gramme de trop est une dose toxique&#xa0;: un sel nitrité tout prêt pardonne davantage.</translation>
    </message>
    <message>
        <source>{ingredient} holds {strength} nitrite, so this gives {found} only. Is the amount meant for a strong curing salt?</source>
        <translation>{ingredient} contient {strength} de nitrite, ce qui ne donne que {found}. La quantité est-elle prévue pour un sel nitrité concentré&#xa0;?</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>Le nitrite arrive à {found}. Aucune limite répertoriée, pour aucun produit, n’admet plus de {limit}.</translation>
    </message>
    <message>
        <source>Nitrate comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>Le nitrate arrive à {found}. Aucune limite répertoriée, pour aucun produit, n’admet plus de {limit}.</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}; above {limit} is allowed for few products. Choose the limits that apply to you.</source>
        <translation>Le nitrite arrive à {found}&#xa0;; au-dessus de {limit}, peu de produits l’admettent. Choisissez les limites qui s’appliquent à vous.</translation>
    </message>
    <message>
        <source>There is no nitrite or nitrate in this recipe.</source>
        <translation>Il n’y a ni nitrite ni nitrate dans cette recette.</translation>
    </message>
    <message>
        <source>No limits are chosen, so the dose is checked against none. Choose the ones that apply to you.</source>
        <translation>Aucune limite n’est choisie, la dose n’est donc comparée à aucune. Choisissez celles qui s’appliquent à vous.</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; whole muscle is seldom cured with less than {limit} (common practice).</source>
        <translation>Le sel arrive à {found} de la viande&#xa0;; une pièce entière est rarement salée à moins de {limit} (pratique courante).</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; above {limit} few people eat it (common practice).</source>
        <translation>Le sel arrive à {found} de la viande&#xa0;; au-dessus de {limit}, peu de gens en mangent (pratique courante).</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat. With weighed salt that is a slip; for burying in salt choose that method.</source>
        <translation>Le sel arrive à {found} de la viande. Avec du sel pesé, c’est une erreur&#xa0;; pour l’enfouissement dans le sel, choisissez cette méthode.</translation>
    </message>
    <message>
        <source>Sugar comes to {found} of the meat; more than {limit} is unusual.</source>
        <translation>Le sucre arrive à {found} de la viande&#xa0;; plus de {limit} est inhabituel.</translation>
    </message>
    <message>
        <source>Accelerator comes to {found}; usual is about half a gram to the kilogram.</source>
        <translation>L’accélérateur arrive à {found}&#xa0;; l’habitude est d’environ un demi-gramme par kilogramme.</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, above the limit of {limit}.</source>
        <translation>{set}&#xa0;: {substance} arrive à {found}, au-dessus de la limite de {limit}.</translation>
    </message>
    <message>
        <source>{set}: {substance} is not permitted; the recipe brings {found}.</source>
        <translation>{set}&#xa0;: {substance} n’est pas autorisé&#xa0;; la recette apporte {found}.</translation>
    </message>
    <message>
        <source>{set}: {substance} keeps the limit of {limit}, but with the spread of what you measure it may come to {found}.</source>
        <translation>{set}&#xa0;: {substance} respecte la limite de {limit}, mais avec la dispersion de ce que vous mesurez, on peut arriver à {found}.</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, below the minimum of {limit}.</source>
        <translation>{set}&#xa0;: {substance} arrive à {found}, sous le minimum de {limit}.</translation>
    </message>
    <message>
        <source>{set}: the limit of {limit} for {substance} is on what a laboratory finds in the product. No sum can show it; {found} goes in.</source>
        <translation>{set}&#xa0;: la limite de {limit} pour {substance} porte sur ce qu’un laboratoire trouve dans le produit. Aucun calcul ne peut la montrer&#xa0;; {found} sont ajoutés.</translation>
    </message>
    <message>
        <source>{set}: the limit for {substance} is on the finished product. Enter the expected loss, or the dose is judged too low.</source>
        <translation>{set}&#xa0;: la limite pour {substance} porte sur le produit fini. Saisissez la perte attendue, sinon la dose est jugée trop basse.</translation>
    </message>
    <message>
        <source>{set}: unverified. The issuer&apos;s own text was not read for all of it.</source>
        <translation>{set}&#xa0;: non vérifié. Le texte même de l’émetteur n’a pas été lu pour l’ensemble.</translation>
    </message>
    <message>
        <source>{set}: not in force today.</source>
        <translation>{set}&#xa0;: pas en vigueur aujourd’hui.</translation>
    </message>
    <message>
        <source>{set}: made for another way of curing than this recipe&apos;s.</source>
        <translation>{set}&#xa0;: fait pour un autre mode de salage que celui de cette recette.</translation>
    </message>
    <message>
        <source>There are no limits called &quot;{found}&quot;. Choose from the list.</source>
        <translation>Il n’y a pas de limites appelées «&#xa0;{found}&#xa0;». Choisissez dans la liste.</translation>
    </message>
    <message>
        <source>Skin on: {share} of the weight is taken off before the sum.</source>
        <translation>Avec couenne&#xa0;: {share} du poids sont retirés avant le calcul.</translation>
    </message>
    <message>
        <source>No piece is entered: the days are for the usual one.</source>
        <translation>Aucune pièce n’est saisie&#xa0;: les jours valent pour la pièce habituelle.</translation>
    </message>
    <message>
        <source>The weight is not entered: {weight} is assumed.</source>
        <translation>Le poids n’est pas saisi&#xa0;: {weight} est supposé.</translation>
    </message>
    <message>
        <source>The thickness is not entered: {thickness_mm} mm is assumed.</source>
        <translation>L’épaisseur n’est pas saisie&#xa0;: {thickness_mm}&#xa0;mm est supposé.</translation>
    </message>
    <message>
        <source>Nothing says how long “{place}” takes: it is planned as no time at all. Enter a time for it.</source>
        <translation>Rien ne dit combien de temps prend «&#xa0;{place}&#xa0;»&#xa0;: sa durée est planifiée comme nulle. Saisissez-lui une durée.</translation>
    </message>
    <message>
        <source>“{place}” is made longer: the rule asks for {needed} in all, and the stages came to {days}.</source>
        <translation>«&#xa0;{place}&#xa0;» est allongé&#xa0;: la règle demande {needed} en tout, et les étapes donnaient {days}.</translation>
    </message>
    <message>
        <source>The day rule of “{place}” belongs to another way of salting: days per kilogram are for burying in salt or for brine, days per centimetre for a weighed cure.</source>
        <translation>La règle de durée de «&#xa0;{place}&#xa0;» relève d’un autre mode de salage&#xa0;: les jours par kilogramme valent pour l’enfouissement dans le sel ou la saumure, les jours par centimètre pour un salage pesé.</translation>
    </message>
    <message>
        <source>“{place}” has {days}, and its rule asks for {needed}. Give it the time.</source>
        <translation>«&#xa0;{place}&#xa0;» dispose de {days}, et sa règle demande {needed}. Donnez-lui ce temps.</translation>
    </message>
    <message>
        <source>The day lies in the past.</source>
        <translation>Ce jour est dans le passé.</translation>
    </message>
    <message>
        <source>It needs {days_needed} days and there are {days_available}: {shortfall} too few.</source>
        <translation>Il faut {days_needed} jours et il y en a {days_available}&#xa0;: il en manque {shortfall}.</translation>
    </message>
    <message>
        <source>“{place}” takes {days} days, and cannot take less.</source>
        <translation>«&#xa0;{place}&#xa0;» prend {days} jours et ne peut pas prendre moins.</translation>
    </message>
    <message>
        <source>Nothing says when “{place}” ends or how long it usually takes.</source>
        <translation>Rien ne dit quand «&#xa0;{place}&#xa0;» finit ni combien de temps cela prend d’habitude.</translation>
    </message>
    <message>
        <source>“{place}” repeats with more stages than follow it.</source>
        <translation>«&#xa0;{place}&#xa0;» se répète avec plus d’étapes qu’il n’en suit.</translation>
    </message>
    <message>
        <source>The number of rounds of “{place}” lies outside its own bounds.</source>
        <translation>Le nombre de tours de «&#xa0;{place}&#xa0;» sort de ses propres bornes.</translation>
    </message>
    <message>
        <source>“{place}” repeats inside another repeat, which cannot be planned.</source>
        <translation>«&#xa0;{place}&#xa0;» se répète à l’intérieur d’une autre répétition, ce qui ne peut pas être planifié.</translation>
    </message>
    <message>
        <source>“{place}” shares a room with a stage that is not in the plan.</source>
        <translation>«&#xa0;{place}&#xa0;» partage un local avec une étape qui n’est pas dans le plan.</translation>
    </message>
    <message>
        <source>A minimum names the stage “{place}”, which is not in the plan.</source>
        <translation>Un minimum nomme l’étape «&#xa0;{place}&#xa0;», qui n’est pas dans le plan.</translation>
    </message>
    <message>
        <source>Two stages are called “{place}”.</source>
        <translation>Deux étapes s’appellent «&#xa0;{place}&#xa0;».</translation>
    </message>
    <message>
        <source>The plan has no stage that salts.</source>
        <translation>Le plan n’a aucune étape de salage.</translation>
    </message>
    <message>
        <source>{on_scale} is not more than the tare of {tare}. Weigh again.</source>
        <translation>{on_scale} n’est pas plus que la tare de {tare}. Repesez.</translation>
    </message>
    <message>
        <source>Last time it was {last}: is {on_scale} a slip of the decimal sign?</source>
        <translation>La dernière fois, c’était {last}&#xa0;: {on_scale} est-il une virgule déplacée&#xa0;?</translation>
    </message>
    <message>
        <source>{on_scale} was not expected: between {low} and {high} would be. Right piece, right tare, hook on?</source>
        <translation>{on_scale} n’était pas attendu&#xa0;: on serait entre {low} et {high}. Bonne pièce, bonne tare, crochet compris&#xa0;?</translation>
    </message>
    <message>
        <source>The same number as last time. That can mean done, a coarse scale or a damp chamber.</source>
        <translation>Le même nombre que la dernière fois. Cela peut signifier une pièce finie, une balance grossière ou une chambre humide.</translation>
    </message>
    <message>
        <source>{place} is not finished, so it cannot hang again. Record what happens to it instead.</source>
        <translation>{place} n’est pas finie, elle ne peut donc pas être remise à sécher. Inscrivez plutôt ce qui lui arrive.</translation>
    </message>
    <message>
        <source>{place} is packed. Take it out of its pack in Stock: hung again.</source>
        <translation>{place} est conditionnée. Sortez-la de son paquet dans Stock&#xa0;: remise à sécher.</translation>
    </message>
    <message>
        <source>A caution is taken on by a person: say who it is.</source>
        <translation>Une mise en garde est assumée par une personne&#xa0;: dites qui.</translation>
    </message>
</context>
<context>
    <name>KeepWords</name>
    <message numerus="yes">
        <source>%1: %n day(s) from opening</source>
        <translation>
            <numerusform>%1&#xa0;: %n jour à partir de l’ouverture</numerusform>
            <numerusform>%1&#xa0;: %n jours à partir de l’ouverture</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n day(s) from packing</source>
        <translation>
            <numerusform>%1&#xa0;: %n jour à partir du conditionnement</numerusform>
            <numerusform>%1&#xa0;: %n jours à partir du conditionnement</numerusform>
        </translation>
    </message>
    <message>
        <source>%1. Note: %2</source>
        <translation>%1. Remarque&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>KeepingWords</name>
    <message>
        <source>Batches</source>
        <translation>Lots</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesées</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Événements</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>Décisions</translation>
    </message>
    <message>
        <source>Outcomes</source>
        <translation>Résultats</translation>
    </message>
    <message>
        <source>Acceptances of cautions</source>
        <translation>Acceptations de mises en garde</translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation>Recettes</translation>
    </message>
    <message>
        <source>Recipe versions</source>
        <translation>Versions de recettes</translation>
    </message>
    <message>
        <source>Ingredients</source>
        <translation>Ingrédients</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lots d’ingrédients</translation>
    </message>
    <message>
        <source>Uses of ingredients</source>
        <translation>Emplois d’ingrédients</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Paquets</translation>
    </message>
    <message>
        <source>Moves of stock</source>
        <translation>Mouvements de stock</translation>
    </message>
    <message>
        <source>Ticks of the day&apos;s work</source>
        <translation>Coches du travail du jour</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Chambers</source>
        <translation>Chambres</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Capteurs</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Calibration checks</source>
        <translation>Contrôles d’étalonnage</translation>
    </message>
    <message>
        <source>Climate readings</source>
        <translation>Mesures de climat</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day with its year, %2 a clock time</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Batches: %1, pieces: %2, weighings: %3</source>
        <translation>Lots&#xa0;: %1, pièces&#xa0;: %2, pesées&#xa0;: %3</translation>
    </message>
    <message>
        <source>This backup is damaged itself, so it is not put in the place of the book. Choose another one.</source>
        <translation>Cette sauvegarde est elle-même endommagée et n’est donc pas mise à la place du registre. Choisissez-en une autre.</translation>
    </message>
    <message>
        <source>This backup was read from end to end and is whole.</source>
        <translation>Cette sauvegarde a été lue de bout en bout et est intacte.</translation>
    </message>
    <message>
        <source>It brings back: %1. Last entry: %2.</source>
        <translation>Elle ramène&#xa0;: %1. Dernière entrée&#xa0;: %2.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>There is no book now, so nothing is replaced.</source>
        <translation>Il n’y a pas de registre à présent, rien n’est donc remplacé.</translation>
    </message>
    <message>
        <source>The book as it is now cannot be read, so what would be lost is not known.</source>
        <translation>Le registre actuel est illisible, on ne sait donc pas ce qui serait perdu.</translation>
    </message>
    <message>
        <source>The book has now: %1.</source>
        <translation>Le registre contient à présent&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No change was made since this backup.</source>
        <translation>Aucune modification n’a été faite depuis cette sauvegarde.</translation>
    </message>
    <message>
        <source>Changes made since this backup, which would be gone from the book: %1.</source>
        <translation>Modifications faites depuis cette sauvegarde, qui disparaîtraient du registre&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The book as it is now is not deleted: it stays in the same folder, with “replaced” and the moment added to its name.</source>
        <translation>Le registre actuel n’est pas supprimé&#xa0;: il reste dans le même dossier, avec «&#xa0;replaced&#xa0;», la date et l’heure ajoutés à son nom.</translation>
    </message>
    <message>
        <source>The book is sound: its pages, indexes, links and climate roll-ups agree.</source>
        <translation>Le registre est intact&#xa0;: ses pages, index, liens et cumuls climatiques concordent.</translation>
    </message>
    <message>
        <source>Your entries and readings are whole. Sums made from climate readings do not agree with them (places: %1), so charts and hours of air may be wrong. They can be made anew from the readings.</source>
        <translation>Vos entrées et vos mesures sont intactes. Des cumuls calculés à partir des mesures de climat ne concordent pas avec elles (endroits&#xa0;: %1)&#xa0;; les graphiques et les heures d’air peuvent donc être faux. Ils peuvent être recalculés à partir des mesures.</translation>
    </message>
    <message>
        <source>The book is damaged (places found: %1; they are listed below). Write nothing more into it. Restore a backup, or salvage what can be read into a new book.</source>
        <translation>Le registre est endommagé (endroits trouvés&#xa0;: %1&#xa0;; ils sont listés ci-dessous). N’y écrivez plus rien. Restaurez une sauvegarde, ou récupérez ce qui est lisible dans un nouveau registre.</translation>
    </message>
    <message>
        <source>The book&apos;s own records (log, preferences, sums)</source>
        <translation>Les données propres du registre (journal, préférences, cumuls)</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. No entry was found that could not be read; whole pages that are gone leave no trace, so look it through. The damaged book was not changed.</source>
        <translation>Le nouveau registre est créé et a passé sa vérification. Aucune entrée illisible n’a été trouvée&#xa0;; des pages entièrement perdues ne laissent pas de trace, parcourez-le donc. Le registre endommagé n’a pas été modifié.</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. Entries that are known to be lost: %1. Look it through. The damaged book was not changed.</source>
        <translation>Le nouveau registre est créé et a passé sa vérification. Entrées dont la perte est connue&#xa0;: %1. Parcourez-le. Le registre endommagé n’a pas été modifié.</translation>
    </message>
</context>
<context>
    <name>LimitWords</name>
    <message>
        <source>%1 (partly unverified)</source>
        <translation>%1 (en partie non vérifié)</translation>
    </message>
</context>
<context>
    <name>LossChart</name>
    <message>
        <source>days since hung</source>
        <translation>jours depuis l’accrochage</translation>
    </message>
    <message>
        <source>net weight, %1</source>
        <translation>poids net, %1</translation>
    </message>
    <message>
        <source>weight lost, %</source>
        <translation>poids perdu, %</translation>
    </message>
    <message>
        <source>%1 · %2 net · %3 lost</source>
        <translation>%1 · %2 net · %3 perdus</translation>
    </message>
    <message>
        <source>%1: forecast, 8 in 10 fall inside</source>
        <translation>%1&#xa0;: prévision, 8 sur 10 tombent dedans</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>cible %1</translation>
    </message>
    <message>
        <source>%1: %2 lost on %3</source>
        <translation>%1&#xa0;: %2 perdus le %3</translation>
    </message>
    <message>
        <source>, target %1</source>
        <translation>, cible %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Days since hung</source>
        <translation>Jours depuis l’accrochage</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Net</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perte</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>lost of the %1, %</source>
        <translation>perdu sur le %1, %</translation>
    </message>
    <message>
        <source>day %1 · %2 net · %3 lost</source>
        <translation>jour %1 · %2 net · %3 perdus</translation>
    </message>
    <message>
        <source>%1, done earlier</source>
        <translation>%1, finie auparavant</translation>
    </message>
    <message>
        <source>done earlier</source>
        <translation>finie auparavant</translation>
    </message>
    <message>
        <source>forecast, 8 in 10 fall inside</source>
        <translation>prévision, 8 sur 10 tombent dedans</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>étape</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier piece(s) for comparison</source>
        <translation>
            <numerusform>%n pièce antérieure pour comparaison</numerusform>
            <numerusform>%n pièces antérieures pour comparaison</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ManualText</name>
    <message>
        <source>Saltloft: the manual</source>
        <translation>Saltloft&#xa0;: le manuel</translation>
    </message>
    <message>
        <source>Plan, weigh and follow cured and air-dried meat.</source>
        <translation>Planifier, peser et suivre la viande salée et séchée à l’air.</translation>
    </message>
    <message>
        <source>The pictures show an invented demonstration book; no producer, batch or person in it exists.</source>
        <translation>Les images montrent un registre de démonstration inventé&#xa0;; aucun producteur, aucun lot ni aucune personne n’y est réel.</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Sommaire</translation>
    </message>
</context>
<context>
    <name>MixBench</name>
    <message>
        <source>nitrite 6.25 %; nitrate 4 %</source>
        <translation>nitrite 6,25&#xa0;%; nitrate 4&#xa0;%</translation>
    </message>
    <message>
        <source>40 % or 80 proof US</source>
        <translation>40&#xa0;% ou 80 proof US</translation>
    </message>
    <message>
        <source>salt 16 % or sodium 6.3 g/100 g</source>
        <translation>salt 16&#xa0;% ou sodium 6,3&#xa0;g/100&#xa0;g</translation>
    </message>
    <message>
        <source>acid 5 %</source>
        <translation>acid 5&#xa0;%</translation>
    </message>
</context>
<context>
    <name>MixSheetText</name>
    <message>
        <source>Weigh out</source>
        <translation>À peser</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Ingrédient</translation>
    </message>
    <message>
        <source>Scale error</source>
        <translation>Erreur de balance</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesé</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>N° de lot</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>   of it for rub %1</source>
        <translation>   dont frottage %1</translation>
    </message>
    <message>
        <source>Nothing to weigh.</source>
        <translation>Rien à peser.</translation>
    </message>
    <message>
        <source>Meat</source>
        <translation>Viande</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sel</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>Nitrite, en nitrite de sodium</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>Nitrate, en nitrate de sodium</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>Source et édition</translation>
    </message>
    <message>
        <source>No limit set was chosen: the dose was not compared with any.</source>
        <translation>Aucun jeu de limites n’a été choisi&#xa0;: la dose n’a été comparée à aucun.</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>Feuille de mélange</translation>
    </message>
    <message>
        <source>Piece %1: %2 of meat</source>
        <translation>Pièce %1&#xa0;: %2 de viande</translation>
    </message>
    <message>
        <source>All pieces together</source>
        <translation>Toutes les pièces ensemble</translation>
    </message>
    <message>
        <source>Weigh the curing salt on the finest scale, and read its strength off the bag in your hand. Follow local codes and licensed practice.</source>
        <translation>Pesez le sel nitrité sur la balance la plus fine, et lisez sa teneur sur le sachet que vous tenez. Suivez la réglementation locale et la pratique agréée.</translation>
    </message>
    <message>
        <source>Weighed by</source>
        <translation>Pesé par</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Contrôlé par</translation>
    </message>
    <message>
        <source>No piece of this batch has a green weight: weigh the meat first.</source>
        <translation>Aucune pièce de ce lot n’a de poids frais&#xa0;: pesez d’abord la viande.</translation>
    </message>
    <message>
        <source>This batch keeps no recipe that can be read: choose one first.</source>
        <translation>Ce lot ne garde aucune recette lisible&#xa0;: choisissez-en d’abord une.</translation>
    </message>
</context>
<context>
    <name>MixTables</name>
    <message>
        <source>nitrite</source>
        <translation>nitrite</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>nitrate</translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation>nitrite et nitrate ensemble</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>ascorbate ou érythorbate</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>acide ascorbique ou érythorbique</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>phosphate</translation>
    </message>
    <message>
        <source>going in, on the raw weight</source>
        <translation>ajouté, sur le poids frais</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>dans le produit fini</translation>
    </message>
    <message>
        <source>left over, by laboratory</source>
        <translation>résiduel, au laboratoire</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation>tel que pesé</translation>
    </message>
    <message>
        <source>as sodium salt</source>
        <translation>en sel de sodium</translation>
    </message>
    <message>
        <source>as ion</source>
        <translation>en ion</translation>
    </message>
    <message>
        <source>not permitted</source>
        <translation>non autorisé</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>within</source>
        <translation>respectée</translation>
    </message>
    <message>
        <source>above</source>
        <translation>au-dessus</translation>
    </message>
    <message>
        <source>below</source>
        <translation>en dessous</translation>
    </message>
    <message>
        <source>used</source>
        <translation>employé</translation>
    </message>
    <message>
        <source>not computable</source>
        <translation>non calculable</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 à %3)</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>Ingrédient</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Tout ensemble</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>À peser</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Jug</source>
        <translation>Verre doseur</translation>
    </message>
    <message>
        <source>Scale, ±</source>
        <translation>Balance, ±</translation>
    </message>
    <message>
        <source>Of the meat</source>
        <translation>De la viande</translation>
    </message>
    <message>
        <source>Liquids fully taken up</source>
        <translation>Liquides entièrement absorbés</translation>
    </message>
    <message>
        <source>This recipe</source>
        <translation>Cette recette</translation>
    </message>
    <message>
        <source>Half taken up</source>
        <translation>À moitié absorbés</translation>
    </message>
    <message>
        <source>Salt, all of it</source>
        <translation>Sel, au total</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>Sel dans la phase aqueuse</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Sucre</translation>
    </message>
    <message>
        <source>Nitrite, as NaNO2</source>
        <translation>Nitrite, en NaNO2</translation>
    </message>
    <message>
        <source>Nitrite, as the ion NO2</source>
        <translation>Nitrite, en ion NO2</translation>
    </message>
    <message>
        <source>Nitrate, as NaNO3</source>
        <translation>Nitrate, en NaNO3</translation>
    </message>
    <message>
        <source>Nitrate, as the ion NO3</source>
        <translation>Nitrate, en ion NO3</translation>
    </message>
    <message>
        <source>Ascorbate or erythorbate</source>
        <translation>Ascorbate ou érythorbate</translation>
    </message>
    <message>
        <source>Ascorbic or erythorbic acid</source>
        <translation>Acide ascorbique ou érythorbique</translation>
    </message>
    <message>
        <source>Added water</source>
        <translation>Eau ajoutée</translation>
    </message>
    <message>
        <source>Alcohol, of the whole</source>
        <translation>Alcool, sur le tout</translation>
    </message>
    <message>
        <source>Strength of the liquids</source>
        <translation>Titre des liquides</translation>
    </message>
    <message>
        <source>%1 vol (%2 US proof, %3 UK)</source>
        <translation>%1 vol (%2 proof US, %3 UK)</translation>
    </message>
    <message>
        <source>Limit and its source</source>
        <translation>Limite et sa source</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Ici</translation>
    </message>
    <message>
        <source>%1, %2, %3: %4</source>
        <translation>%1, %2, %3&#xa0;: %4</translation>
    </message>
    <message>
        <source>%1: a scale that shows %2 would do.</source>
        <translation>%1&#xa0;: une balance qui affiche %2 suffirait.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Or blend a larger lot first: %1. Mix it evenly, then weigh %2 of it for the smallest piece: ± %3.</source>
        <translation>Ou faites d’abord un plus grand mélange&#xa0;: %1. Mélangez-le uniformément, puis pesez-en %2 pour la plus petite pièce&#xa0;: ± %3.</translation>
    </message>
    <message>
        <source>Dry, weighed, all taken up</source>
        <translation>À sec, pesé, tout absorbé</translation>
    </message>
    <message>
        <source>Buried in salt</source>
        <translation>Enfoui dans le sel</translation>
    </message>
    <message>
        <source>Immersed, by pick-up</source>
        <translation>Immergé, selon l’absorption</translation>
    </message>
    <message>
        <source>Immersed, at equilibrium</source>
        <translation>Immergé, à l’équilibre</translation>
    </message>
    <message>
        <source>Brine of meat and water</source>
        <translation>Saumure de viande et d’eau</translation>
    </message>
    <message>
        <source>Pumped in</source>
        <translation>Injecté</translation>
    </message>
    <message>
        <source>Marinade</source>
        <translation>Marinade</translation>
    </message>
    <message>
        <source>Wash of vinegar or spirit</source>
        <translation>Lavage au vinaigre ou à l’alcool</translation>
    </message>
    <message>
        <source>of the meat</source>
        <translation>de la viande</translation>
    </message>
    <message>
        <source>of the added water</source>
        <translation>de l’eau ajoutée</translation>
    </message>
    <message>
        <source>of meat and water</source>
        <translation>de la viande et de l’eau</translation>
    </message>
    <message>
        <source>of all water</source>
        <translation>de toute l’eau</translation>
    </message>
</context>
<context>
    <name>ModelWords</name>
    <message>
        <source>slab (flat)</source>
        <translation>plaque (plate)</translation>
    </message>
    <message>
        <source>cylinder (long and round)</source>
        <translation>cylindre (long et rond)</translation>
    </message>
    <message>
        <source>round</source>
        <translation>ronde</translation>
    </message>
    <message>
        <source>block (brick)</source>
        <translation>bloc (brique)</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>fraîche</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>parée</translation>
    </message>
    <message>
        <source>cured, not rinsed</source>
        <translation>salée, non rincée</translation>
    </message>
    <message>
        <source>rinsed and wiped</source>
        <translation>rincée et essuyée</translation>
    </message>
    <message>
        <source>in casing</source>
        <translation>sous boyau</translation>
    </message>
    <message>
        <source>in net or string</source>
        <translation>sous filet ou ficelle</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>enrobée</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>poids frais</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>poids paré</translation>
    </message>
    <message>
        <source>weight after the cure</source>
        <translation>poids après salage</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>poids à l’accrochage</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>sans couenne</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>couenne d’un côté</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>couenne tout autour</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prévu(e)</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>au sel</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>au repos</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>en séchage</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminé(e)</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>écartée</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>pesée avec d’autres</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>découpée en pièces</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>given up</source>
        <translation>abandonné</translation>
    </message>
    <message>
        <source>dressed</source>
        <translation>boyau ou filet posé</translation>
    </message>
    <message>
        <source>dressed again</source>
        <translation>boyau ou filet changé</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>échantillon prélevé</translation>
    </message>
    <message>
        <source>cut in pieces</source>
        <translation>découpée en pièces</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>pesées ensemble</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>pressée</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelée</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>décongelée</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>lavée</translation>
    </message>
    <message>
        <source>hung to dry</source>
        <translation>mise à sécher</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>déplacée</translation>
    </message>
    <message>
        <source>look</source>
        <translation>aspect</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>toucher</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>odeur</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>goût</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>moisissure</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>ce qui a été fait</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>done</source>
        <translation>finie</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>écarter</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>entière</translation>
    </message>
    <message>
        <source>cut open</source>
        <translation>entamée</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>sous vide</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>consommé</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>donné</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendu</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>jeté</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>remis à sécher</translation>
    </message>
    <message>
        <source>counted again</source>
        <translation>recompté</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>salage</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>lavage</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>dessalage</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>marinade</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>pressage</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>fumage</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>affinage</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>équilibrage du sel</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>enrobage</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>congélation</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>conservation</translation>
    </message>
    <message>
        <source>too few weighings</source>
        <translation>trop peu de pesées</translation>
    </message>
    <message>
        <source>at its target</source>
        <translation>cible atteinte</translation>
    </message>
    <message>
        <source>target out of reach</source>
        <translation>cible hors d’atteinte</translation>
    </message>
    <message>
        <source>not drying</source>
        <translation>ne sèche pas</translation>
    </message>
    <message>
        <source>fridge</source>
        <translation>réfrigérateur</translation>
    </message>
    <message>
        <source>drying cabinet</source>
        <translation>armoire de séchage</translation>
    </message>
    <message>
        <source>room</source>
        <translation>local</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>en plein air</translation>
    </message>
    <message>
        <source>freezer</source>
        <translation>congélateur</translation>
    </message>
    <message>
        <source>face to face, at the thickest point</source>
        <translation>face à face, au plus épais</translation>
    </message>
    <message>
        <source>diameter, at the thickest point</source>
        <translation>diamètre, au plus épais</translation>
    </message>
    <message>
        <source>the shortest side</source>
        <translation>le plus petit côté</translation>
    </message>
</context>
<context>
    <name>PieceWords</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>%1 the loss now, %2 the loss aimed for</extracomment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 or later, perhaps never</source>
        <translation>%1 ou plus tard, peut-être jamais</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>Turn</source>
        <translation>Retourner</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Retourné</translation>
    </message>
    <message>
        <source>Rub again</source>
        <translation>Frotter de nouveau</translation>
    </message>
    <message>
        <source>Rubbed again</source>
        <translation>Frotté de nouveau</translation>
    </message>
    <message>
        <source>Massage</source>
        <translation>Masser</translation>
    </message>
    <message>
        <source>Massaged</source>
        <translation>Massé</translation>
    </message>
    <message>
        <source>Weigh</source>
        <translation>Peser</translation>
    </message>
    <message>
        <source>Weighing left out</source>
        <translation>Pesée omise</translation>
    </message>
    <message>
        <source>Weigh again, as decided</source>
        <translation>Repeser, comme décidé</translation>
    </message>
    <message>
        <source>Wipe</source>
        <translation>Essuyer</translation>
    </message>
    <message>
        <source>Wiped</source>
        <translation>Essuyé</translation>
    </message>
    <message>
        <source>Change places</source>
        <translation>Changer de place</translation>
    </message>
    <message>
        <source>Places changed</source>
        <translation>Places changées</translation>
    </message>
    <message>
        <source>Look at the chamber</source>
        <translation>Inspecter la chambre</translation>
    </message>
    <message>
        <source>Chamber looked at</source>
        <translation>Chambre inspectée</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Commencé</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Terminer</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Judge whether it is done</source>
        <translation>Juger si c’est fini</translation>
    </message>
    <message>
        <source>Judging left out</source>
        <translation>Jugement omis</translation>
    </message>
    <message>
        <source>Check the instrument</source>
        <translation>Contrôler l’instrument</translation>
    </message>
    <message>
        <source>Instrument check left out</source>
        <translation>Contrôle d’instrument omis</translation>
    </message>
    <message>
        <source>Check the sensor</source>
        <translation>Contrôler le capteur</translation>
    </message>
    <message>
        <source>Sensor checked</source>
        <translation>Capteur contrôlé</translation>
    </message>
    <message>
        <source>Eat or sell first</source>
        <translation>À manger ou vendre d’abord</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Vu</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aérer</translation>
    </message>
    <message>
        <source>Aired</source>
        <translation>Aéré</translation>
    </message>
    <message>
        <source>%1: done</source>
        <translation>%1&#xa0;: fait</translation>
    </message>
    <message>
        <source>within the time above</source>
        <translation>dans la durée ci-dessus</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fixe</translation>
    </message>
    <message>
        <source>by weight</source>
        <translation>selon le poids</translation>
    </message>
    <message>
        <source>by thickness</source>
        <translation>selon l’épaisseur</translation>
    </message>
    <message>
        <source>until the date</source>
        <translation>jusqu’à la date</translation>
    </message>
    <message>
        <source>your own pieces</source>
        <translation>vos propres pièces</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>habituel</translation>
    </message>
    <message>
        <source>drying model</source>
        <translation>modèle de séchage</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>They hung at this time of year.</source>
        <translation>Elles séchaient à cette période de l’année.</translation>
    </message>
    <message>
        <source>They lost %1 a week on the whole.</source>
        <translation>Elles ont perdu %1 par semaine en moyenne.</translation>
    </message>
    <message numerus="yes">
        <source>%n week(s)</source>
        <translation>
            <numerusform>%n semaine</numerusform>
            <numerusform>%n semaines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n week(s)</source>
        <extracomment>%1 a smaller number</extracomment>
        <translation>
            <numerusform>%1 à %n semaine</numerusform>
            <numerusform>%1 à %n semaines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n day(s)</source>
        <translation>
            <numerusform>%1 à %n jour</numerusform>
            <numerusform>%1 à %n jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done in this chamber.</source>
        <translation>
            <numerusform>Votre dernière pièce (%n) a pris %1 de l’accrochage à la fin dans cette chambre.</numerusform>
            <numerusform>Vos %n dernières pièces ont pris %1 de l’accrochage à la fin dans cette chambre.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done.</source>
        <translation>
            <numerusform>Votre dernière pièce (%n) a pris %1 de l’accrochage à la fin.</numerusform>
            <numerusform>Vos %n dernières pièces ont pris %1 de l’accrochage à la fin.</numerusform>
        </translation>
    </message>
    <message>
        <source>It was too soft: a loss of %1 is worth a try.</source>
        <translation>Elle était trop molle&#xa0;: une perte de %1 vaut un essai.</translation>
    </message>
    <message>
        <source>It was too dry: a loss of %1 is worth a try.</source>
        <translation>Elle était trop sèche&#xa0;: une perte de %1 vaut un essai.</translation>
    </message>
    <message>
        <source>It was too salty at %1 in the finished piece.</source>
        <translation>Elle était trop salée, avec %1 dans la pièce finie.</translation>
    </message>
    <message>
        <source>It lacked salt at %1 in the finished piece.</source>
        <translation>Elle manquait de sel, avec %1 dans la pièce finie.</translation>
    </message>
    <message>
        <source>%1 of the raw weight instead of %2 is worth a try.</source>
        <translation>%1 du poids frais au lieu de %2 vaut un essai.</translation>
    </message>
    <message>
        <source>You wrote about %1: “%2”.</source>
        <extracomment>%1 the code of a batch, %2 what the person wrote about it</extracomment>
        <translation>Vous avez écrit sur %1&#xa0;: «&#xa0;%2&#xa0;».</translation>
    </message>
    <message>
        <source>%1 was too salty: salt %2 to %3.</source>
        <translation>%1 était trop salé&#xa0;: sel de %2 à %3.</translation>
    </message>
    <message>
        <source>%1 lacked salt: salt %2 to %3.</source>
        <translation>%1 manquait de sel&#xa0;: sel de %2 à %3.</translation>
    </message>
    <message>
        <source>%1 was too soft: loss aimed for is now %2.</source>
        <translation>%1 était trop mou&#xa0;: la perte visée est maintenant de %2.</translation>
    </message>
    <message>
        <source>%1 was too dry: loss aimed for is now %2.</source>
        <translation>%1 était trop sec&#xa0;: la perte visée est maintenant de %2.</translation>
    </message>
    <message>
        <source>much too little salt</source>
        <translation>beaucoup trop peu de sel</translation>
    </message>
    <message>
        <source>a little short of salt</source>
        <translation>un peu trop peu de sel</translation>
    </message>
    <message>
        <source>a little too salty</source>
        <translation>un peu trop salé</translation>
    </message>
    <message>
        <source>much too salty</source>
        <translation>beaucoup trop salé</translation>
    </message>
    <message>
        <source>the salt was right</source>
        <translation>le sel était juste</translation>
    </message>
    <message>
        <source>much too soft</source>
        <translation>beaucoup trop mou</translation>
    </message>
    <message>
        <source>a little too soft</source>
        <translation>un peu trop mou</translation>
    </message>
    <message>
        <source>a little too dry</source>
        <translation>un peu trop sec</translation>
    </message>
    <message>
        <source>much too dry</source>
        <translation>beaucoup trop sec</translation>
    </message>
    <message>
        <source>the texture was right</source>
        <translation>la texture était juste</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
</context>
<context>
    <name>PrintText</name>
    <message>
        <source>Record of batch %1</source>
        <translation>Dossier du lot %1</translation>
    </message>
    <message>
        <source>Mix sheet of batch %1</source>
        <translation>Feuille de mélange du lot %1</translation>
    </message>
    <message>
        <source>Tags of batch %1</source>
        <translation>Étiquettes de pièce du lot %1</translation>
    </message>
    <message>
        <source>Small tags of batch %1</source>
        <translation>Petites étiquettes de pièce du lot %1</translation>
    </message>
    <message>
        <source>Trace of batch %1</source>
        <translation>Traçabilité du lot %1</translation>
    </message>
    <message>
        <source>Mass balance of batch %1</source>
        <translation>Bilan matière du lot %1</translation>
    </message>
    <message>
        <source>Calibration sheet, %1</source>
        <translation>Feuille d’étalonnage, %1</translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>Batch record</source>
        <translation>Dossier de lot</translation>
    </message>
    <message>
        <source>Trace: one step back, one step forward</source>
        <translation>Traçabilité&#xa0;: un pas en arrière, un pas en avant</translation>
    </message>
    <message>
        <source>Mass balance</source>
        <translation>Bilan matière</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, puis %2</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Prévu</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Commencé</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Why it ended</source>
        <translation>Pourquoi elle a pris fin</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Chambre</translation>
    </message>
    <message>
        <source>Temperature band</source>
        <translation>Plage de température</translation>
    </message>
    <message>
        <source>Humidity band</source>
        <translation>Plage d’humidité</translation>
    </message>
    <message>
        <source>No stages were planned.</source>
        <translation>Aucune étape n’a été planifiée.</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Capteur</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Moyenne</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Driest</source>
        <translation>Le plus sec</translation>
    </message>
    <message>
        <source>Mean RH</source>
        <translation>HR moyenne</translation>
    </message>
    <message>
        <source>Dampest</source>
        <translation>Le plus humide</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>Hors plage</translation>
    </message>
    <message>
        <source>no readings %1</source>
        <translation>sans mesure %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>No readings were recorded while this batch was in a chamber.</source>
        <translation>Aucune mesure n’a été enregistrée pendant que ce lot était dans une chambre.</translation>
    </message>
    <message>
        <source>Temperature and humidity</source>
        <translation>Température et humidité</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Prise</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Sur la balance</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tare</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Net</translation>
    </message>
    <message>
        <source>What is weighed</source>
        <translation>Ce qui est pesé</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>Saisie</translation>
    </message>
    <message>
        <source>Note, correction and why</source>
        <translation>Note, correction et motif</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>surface mouillée</translation>
    </message>
    <message>
        <source>corrects %1: %2</source>
        <translation>corrige %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>corrected by a later entry</source>
        <translation>corrigée par une entrée ultérieure</translation>
    </message>
    <message>
        <source>taken back by %1: %2</source>
        <translation>retirée par %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Never weighed.</source>
        <translation>Jamais pesée.</translation>
    </message>
    <message>
        <source>Weighings with corrections</source>
        <translation>Pesées avec corrections</translation>
    </message>
    <message>
        <source>Piece %1</source>
        <translation>Pièce %1</translation>
    </message>
    <message>
        <source>Struck figures were corrected or taken back and no longer count; they stay readable.</source>
        <translation>Les chiffres barrés ont été corrigés ou retirés et ne comptent plus&#xa0;; ils restent lisibles.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>Net avant</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>Net après</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>No events were recorded.</source>
        <translation>Aucun événement n’a été enregistré.</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Événements</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Au</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Écart</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Pire valeur</translation>
    </message>
    <message>
        <source>Action taken, initials</source>
        <translation>Mesure prise, initiales</translation>
    </message>
    <message>
        <source>No excursion of an hour or longer is in the readings.</source>
        <translation>Aucun écart d’une heure ou plus ne figure dans les mesures.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Mise en garde</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>Acceptée par</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>No caution was accepted.</source>
        <translation>Aucune mise en garde n’a été acceptée.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>What was seen or done</source>
        <translation>Ce qui a été vu ou fait</translation>
    </message>
    <message>
        <source> (photo: %1)</source>
        <translation> (photo&#xa0;: %1)</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>No notes were recorded.</source>
        <translation>Aucune note n’a été enregistrée.</translation>
    </message>
    <message>
        <source>Deviations and corrective action</source>
        <translation>Écarts et actions correctives</translation>
    </message>
    <message>
        <source>Air out of its band</source>
        <translation>Air hors de sa plage</translation>
    </message>
    <message>
        <source>Cautions accepted</source>
        <translation>Mises en garde acceptées</translation>
    </message>
    <message>
        <source>Notes and actions</source>
        <translation>Notes et actions</translation>
    </message>
    <message>
        <source>Further deviation · limit · action taken · date and time · initials</source>
        <translation>Autre écart · limite · mesure prise · date et heure · initiales</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Contrôlé</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Attendu</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trouvé</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Action</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>jamais contrôlé</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>Aucun instrument n’est enregistré.</translation>
    </message>
    <message>
        <source>Instruments and calibration</source>
        <translation>Instruments et étalonnage</translation>
    </message>
    <message>
        <source>Laboratory measurements</source>
        <translation>Mesures de laboratoire</translation>
    </message>
    <message>
        <source>Water activity and pH are measured, not computed. Enter what a laboratory or an instrument found, with the instrument, its calibration and the date.</source>
        <translation>L’activité de l’eau et le pH se mesurent, ils ne se calculent pas. Saisissez ce qu’un laboratoire ou un instrument a trouvé, avec l’instrument, son étalonnage et la date.</translation>
    </message>
    <message>
        <source>Sample of piece · water activity · pH · instrument · date · initials</source>
        <translation>Échantillon de la pièce · activité de l’eau · pH · instrument · date · initiales</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Signée par</translation>
    </message>
    <message>
        <source>No decision has been signed.</source>
        <translation>Aucune décision n’a été signée.</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>Décisions</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 à %3)</translation>
    </message>
    <message>
        <source>Batch %1 · %2 · started %3</source>
        <translation>Lot %1 · %2 · commencé %3</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>Code du lot</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Espèce</translation>
    </message>
    <message>
        <source>Supplier of the meat</source>
        <translation>Fournisseur de la viande</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Lot du fournisseur</translation>
    </message>
    <message>
        <source>Frozen before curing</source>
        <translation>Congelée avant salage</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>Poids acheté</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>Parures</translation>
    </message>
    <message>
        <source>Green weight of all pieces</source>
        <translation>Poids frais de toutes les pièces</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Commencé</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Identification</source>
        <translation>Identification</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Morceau</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Couenne</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>Green weight</source>
        <translation>Poids frais</translation>
    </message>
    <message>
        <source>Hung weight</source>
        <translation>Poids à l’accrochage</translation>
    </message>
    <message>
        <source>Last weight</source>
        <translation>Dernier poids</translation>
    </message>
    <message>
        <source>Loss of green</source>
        <translation>Perte sur frais</translation>
    </message>
    <message>
        <source>Loss of hung</source>
        <translation>Perte depuis l’accrochage</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source> (from %1)</source>
        <translation> (de %1)</translation>
    </message>
    <message>
        <source>No pieces.</source>
        <translation>Aucune pièce.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Weights are net. A loss is left out where something was cut off or put on in between: see the events.</source>
        <translation>Les poids sont nets. Une perte est omise là où quelque chose a été coupé ou ajouté entre-temps&#xa0;: voir les événements.</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>Ingrédient</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>N° de lot</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Acheté</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesé</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>all</source>
        <translation>toutes</translation>
    </message>
    <message>
        <source>No ingredient lots were recorded.</source>
        <translation>Aucun lot d’ingrédient n’a été enregistré.</translation>
    </message>
    <message>
        <source>Inputs with lots</source>
        <translation>Ingrédients avec leurs lots</translation>
    </message>
    <message>
        <source>Computed doses</source>
        <translation>Doses calculées</translation>
    </message>
    <message>
        <source>Not computed: no piece has a green weight.</source>
        <translation>Non calculé&#xa0;: aucune pièce n’a de poids frais.</translation>
    </message>
    <message>
        <source>Not computed: the batch keeps no recipe that can be read.</source>
        <translation>Non calculé&#xa0;: le lot ne garde aucune recette lisible.</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Recette</translation>
    </message>
    <message>
        <source>On green meat</source>
        <translation>Sur poids frais</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sel</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Sucre</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>Nitrite, en nitrite de sodium</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>Nitrate, en nitrate de sodium</translation>
    </message>
    <message>
        <source>Line of the recipe</source>
        <translation>Ligne de la recette</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Nitrite strength</source>
        <translation>Teneur en nitrite</translation>
    </message>
    <message>
        <source>Nitrate strength</source>
        <translation>Teneur en nitrate</translation>
    </message>
    <message>
        <source>Strength from</source>
        <translation>Teneur tirée de</translation>
    </message>
    <message>
        <source>the label</source>
        <translation>l’étiquette</translation>
    </message>
    <message>
        <source>the catalogue</source>
        <translation>le catalogue</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Admis</translation>
    </message>
    <message>
        <source>Computed</source>
        <translation>Calculé</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>Source et édition</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>No limit set was chosen for this recipe: the doses were not compared.</source>
        <translation>Aucun jeu de limites n’a été choisi pour cette recette&#xa0;: les doses n’ont pas été comparées.</translation>
    </message>
    <message>
        <source>Compared with the limit set: %1</source>
        <translation>Comparé au jeu de limites&#xa0;: %1</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Signatures</translation>
    </message>
    <message>
        <source>Record made by</source>
        <translation>Dossier établi par</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Contrôlé par</translation>
    </message>
    <message>
        <source>Released by</source>
        <translation>Libéré par</translation>
    </message>
    <message>
        <source>Officer, seen</source>
        <translation>Agent officiel, vu</translation>
    </message>
    <message>
        <source>Figures are records and computations. Whether a product may be sold or eaten is for local codes, licensed practice and laboratory measurement.</source>
        <translation>Les chiffres sont des enregistrements et des calculs. Dire si un produit peut être vendu ou mangé relève de la réglementation locale, de la pratique agréée et de la mesure en laboratoire.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Their lot</source>
        <translation>Leur lot</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>Viande&#xa0;: %1</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>Un pas en arrière</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Paquet</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>À qui</translation>
    </message>
    <message>
        <source>packed</source>
        <translation>conditionné</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>il ne reste rien</translation>
    </message>
    <message>
        <source>still here</source>
        <translation>encore là</translation>
    </message>
    <message>
        <source>Nothing of this batch has been packed.</source>
        <translation>Rien de ce lot n’a été conditionné.</translation>
    </message>
    <message>
        <source>One step forward</source>
        <translation>Un pas en avant</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Poste</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Of the green weight</source>
        <translation>Du poids frais</translation>
    </message>
    <message>
        <source>Green weight of the pieces</source>
        <translation>Poids frais des pièces</translation>
    </message>
    <message>
        <source>Net weight now, of pieces not discarded</source>
        <translation>Poids net actuel, des pièces non écartées</translation>
    </message>
    <message>
        <source>Green weight less net weight now: water, discarded pieces, ends and samples</source>
        <translation>Poids frais moins poids net actuel&#xa0;: eau, pièces écartées, entames et échantillons</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Conditionné</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Consommé</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Donné</translation>
    </message>
    <message>
        <source>Sold</source>
        <translation>Vendu</translation>
    </message>
    <message>
        <source>Hung again</source>
        <translation>Remis à sécher</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Déchets</translation>
    </message>
    <message>
        <source>Still in stock</source>
        <translation>Encore en stock</translation>
    </message>
    <message>
        <source>Packed, but not accounted for</source>
        <translation>Conditionné, mais non justifié</translation>
    </message>
    <message>
        <source>The packs do not balance: %1 cannot be accounted for.</source>
        <translation>Les paquets ne s’équilibrent pas&#xa0;: %1 ne peut pas être justifié.</translation>
    </message>
    <message>
        <source>Bought less trimmed off less green weight: %1.</source>
        <translation>Acheté moins parures moins poids frais&#xa0;: %1.</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prévu(e)</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminé(e)</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abandonné</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>au sel</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>au repos</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>en séchage</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>écartée</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>pesée avec d’autres</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>découpée en pièces</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>fraîche</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>parée</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>salée</translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation>rincée</translation>
    </message>
    <message>
        <source>cased</source>
        <translation>sous boyau</translation>
    </message>
    <message>
        <source>netted</source>
        <translation>sous filet</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>enrobée</translation>
    </message>
    <message>
        <source>casing or net put on</source>
        <translation>boyau ou filet posé</translation>
    </message>
    <message>
        <source>casing or net changed</source>
        <translation>boyau ou filet changé</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>échantillon prélevé</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>pesées ensemble</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>pressée</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelée</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>décongelée</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>lavée</translation>
    </message>
    <message>
        <source>hung</source>
        <translation>accrochée</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>déplacée</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>salage</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>lavage</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>dessalage</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>marinade</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>pressage</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>fumage</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>affinage</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>équilibrage du sel</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>enrobage</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>congélation</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>conservation</translation>
    </message>
    <message>
        <source>look</source>
        <translation>aspect</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>toucher</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>odeur</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>goût</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>moisissure</translation>
    </message>
    <message>
        <source>action</source>
        <translation>action</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>done</source>
        <translation>finie</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>écarter</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>entière</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>entamée</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>sous vide</translation>
    </message>
    <message>
        <source>used</source>
        <translation>consommé</translation>
    </message>
    <message>
        <source>given</source>
        <translation>donné</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendu</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation>jeté</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>remis à sécher</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>compté</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>balance</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>thermomètre</translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation>hygromètre</translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation>pH-mètre</translation>
    </message>
    <message>
        <source>water activity meter</source>
        <translation>aw-mètre</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrument</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>poids frais</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>poids paré</translation>
    </message>
    <message>
        <source>cured weight</source>
        <translation>poids après salage</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>poids à l’accrochage</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>sans couenne</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>couenne d’un côté</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>couenne tout autour</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>trop froid</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>trop chaud</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>trop sec</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>trop humide</translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation>nitrite</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>nitrate</translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation>nitrite et nitrate ensemble</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>ascorbate ou érythorbate</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>acide ascorbique ou érythorbique</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>phosphate</translation>
    </message>
    <message>
        <source>ingoing</source>
        <translation>ajouté</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>dans le produit fini</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>résiduel</translation>
    </message>
    <message>
        <source>within</source>
        <translation>respectée</translation>
    </message>
    <message>
        <source>ABOVE</source>
        <translation>AU-DESSUS</translation>
    </message>
    <message>
        <source>below the minimum</source>
        <translation>sous le minimum</translation>
    </message>
    <message>
        <source>NOT PERMITTED, used</source>
        <translation>NON AUTORISÉ, employé</translation>
    </message>
    <message>
        <source>laboratory only</source>
        <translation>au laboratoire seulement</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Caution, as it was shown</source>
        <translation>Mise en garde, telle qu’affichée</translation>
    </message>
</context>
<context>
    <name>ReviewWords</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 à %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>lies below it</source>
        <translation>est en dessous</translation>
    </message>
    <message>
        <source>lies above it</source>
        <translation>est au-dessus</translation>
    </message>
    <message>
        <source>lies on both sides of it</source>
        <translation>est de part et d’autre</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>start weight</source>
        <translation>poids de départ</translation>
    </message>
    <message>
        <source>salt put on</source>
        <translation>sel appliqué</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>épaisseur</translation>
    </message>
    <message>
        <source>fat share</source>
        <translation>part de gras</translation>
    </message>
    <message>
        <source>humidity log</source>
        <translation>relevé d’humidité</translation>
    </message>
    <message>
        <source>temperature log</source>
        <translation>relevé de température</translation>
    </message>
    <message>
        <source>weighings while drying</source>
        <translation>pesées pendant le séchage</translation>
    </message>
    <message>
        <source>measured water activity</source>
        <translation>activité de l’eau mesurée</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>lost of the %1</source>
        <translation>perdu sur le %1</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>cible %1</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 par jour</translation>
    </message>
    <message>
        <source>pace in the first week</source>
        <translation>allure de la première semaine</translation>
    </message>
    <message>
        <source>pace in the last two weeks</source>
        <translation>allure des deux dernières semaines</translation>
    </message>
    <message>
        <source>time since hung</source>
        <translation>temps depuis l’accrochage</translation>
    </message>
    <message>
        <source>Estimated, 8 in 10 fall in the range</source>
        <translation>Estimé, 8 sur 10 tombent dans la fourchette</translation>
    </message>
    <message>
        <source>water of the piece</source>
        <translation>eau de la pièce</translation>
    </message>
    <message>
        <source>salt of the piece</source>
        <translation>sel de la pièce</translation>
    </message>
    <message>
        <source>salt in its water</source>
        <translation>sel dans son eau</translation>
    </message>
    <message>
        <source>water activity</source>
        <translation>activité de l’eau</translation>
    </message>
    <message>
        <source>an estimate; only a laboratory measures it</source>
        <translation>une estimation&#xa0;; seul un laboratoire la mesure</translation>
    </message>
    <message>
        <source>Beside cited figures</source>
        <translation>En regard de chiffres cités</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Seen, felt, smelt</source>
        <translation>Vu, touché, senti</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Inconnu</translation>
    </message>
    <message>
        <source>would add to the picture</source>
        <translation>compléterait le tableau</translation>
    </message>
    <message>
        <source>mean %1, %2 to %3</source>
        <translation>moyenne %1, %2 à %3</translation>
    </message>
    <message>
        <source>no band to hold it against</source>
        <translation>pas de plage à laquelle la comparer</translation>
    </message>
    <message>
        <source>never out of its band in the log</source>
        <translation>jamais hors de sa plage dans le relevé</translation>
    </message>
    <message>
        <source>%1: air</source>
        <translation>%1&#xa0;: air</translation>
    </message>
    <message>
        <source>no log</source>
        <translation>pas de relevé</translation>
    </message>
    <message>
        <source>no climate log covers this piece&apos;s time there</source>
        <translation>aucun relevé de climat ne couvre le séjour de cette pièce</translation>
    </message>
    <message>
        <source>%1: temperature</source>
        <translation>%1&#xa0;: température</translation>
    </message>
    <message>
        <source>%1 too cold</source>
        <translation>%1 trop froid</translation>
    </message>
    <message>
        <source>%1 too warm</source>
        <translation>%1 trop chaud</translation>
    </message>
    <message>
        <source>%1: humidity</source>
        <translation>%1&#xa0;: humidité</translation>
    </message>
    <message>
        <source>%1 too dry</source>
        <translation>%1 trop sec</translation>
    </message>
    <message>
        <source>%1 too damp</source>
        <translation>%1 trop humide</translation>
    </message>
    <message>
        <source>%1: not logged</source>
        <translation>%1&#xa0;: non relevé</translation>
    </message>
    <message>
        <source>of this time nothing is known</source>
        <translation>de cette période, on ne sait rien</translation>
    </message>
    <message>
        <source>Stages and their air</source>
        <translation>Étapes et leur air</translation>
    </message>
</context>
<context>
    <name>SaveCalendar</name>
    <message>
        <source>Save the calendar</source>
        <translation>Enregistrer le calendrier</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Calendrier (*.ics)</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another place.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: %2. Choisissez un autre endroit.</translation>
    </message>
    <message>
        <source>Calendar kept in %1.</source>
        <translation>Calendrier enregistré dans %1.</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>Imprimé le %1</translation>
    </message>
    <message>
        <source>As</source>
        <translation>En qualité de</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Date et heure</translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
    </message>
    <message>
        <source>&amp;Pack a finished piece…</source>
        <translation>&amp;Conditionner une pièce finie…</translation>
    </message>
    <message>
        <source>Nothing is packed yet</source>
        <translation>Rien n’est encore conditionné</translation>
    </message>
    <message>
        <source>When a piece is signed as done, pack it here: whole, cut, under vacuum or frozen. The list then shows what to eat first, what is left, and where everything went.</source>
        <translation>Quand une pièce est signée comme finie, conditionnez-la ici&#xa0;: entière, entamée, sous vide ou congelée. La liste montre ensuite quoi manger d’abord, ce qui reste et où tout est parti.</translation>
    </message>
    <message>
        <source>Pack a finished piece</source>
        <translation>Conditionner une pièce finie</translation>
    </message>
    <message>
        <source>In eating order: open packs first, then the nearest day.</source>
        <translation>Dans l’ordre de consommation&#xa0;: paquets ouverts d’abord, puis le jour le plus proche.</translation>
    </message>
    <message>
        <source>Show packs that are &amp;gone</source>
        <translation>Montrer les paquets épui&amp;sés</translation>
    </message>
    <message>
        <source>Show packs that are gone</source>
        <translation>Montrer les paquets épuisés</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Paquets</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Modifier…</translation>
    </message>
    <message>
        <source>&amp;Take from it…</source>
        <translation>&amp;Prélever…</translation>
    </message>
    <message>
        <source>What was taken from the pack</source>
        <translation>Ce qui a été prélevé du paquet</translation>
    </message>
    <message>
        <source>Eat</source>
        <translation>À manger</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Paquet</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>%1, open since %2</source>
        <translation>%1, ouvert depuis le %2</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Reste</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>Garder jusqu’au</translation>
    </message>
    <message>
        <source>▲ %1, past</source>
        <translation>▲ %1, dépassé</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Emplacement</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Ce qu’il est devenu</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>À qui</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>From piece %1 of batch %2.</source>
        <translation>De la pièce %1 du lot %2.</translation>
    </message>
    <message>
        <source>Finished packs: what to eat first and where it went</source>
        <translation>Paquets finis&#xa0;: quoi manger d’abord et où tout est parti</translation>
    </message>
    <message>
        <source>Its yield is not known: the raw or the finished weight was not taken.</source>
        <translation>Son rendement est inconnu&#xa0;: le poids frais ou le poids fini n’a pas été pris.</translation>
    </message>
    <message>
        <source>Yield: %1 of %2 raw, %3 (lost %4); packed %5.</source>
        <translation>Rendement&#xa0;: %1 sur %2 de poids frais, %3 (perte %4)&#xa0;; conditionné %5.</translation>
    </message>
    <message>
        <source>At that loss the meat cost %1 a finished kilogram.</source>
        <translation>À cette perte, la viande a coûté %1 par kilogramme fini.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No day is set to keep it until.</source>
        <translation>Aucune date limite de conservation n’est fixée.</translation>
    </message>
    <message>
        <source>Keep until %1 by a rule: %2.</source>
        <translation>Garder jusqu’au %1 selon une règle&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day.</source>
        <translation>Garder jusqu’au %1&#xa0;: jour choisi par quelqu’un.</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day, because: %2</source>
        <translation>Garder jusqu’au %1&#xa0;: jour choisi par quelqu’un, parce que&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>TagText</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Lot %1</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>Accrochée</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tare</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Perte</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Étiquettes de pièce</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>&amp;Weigh-in round</source>
        <translation>&amp;Tournée de pesée</translation>
    </message>
    <message>
        <source>&amp;Calendar</source>
        <translation>&amp;Calendrier</translation>
    </message>
    <message>
        <source>No work yet</source>
        <translation>Pas encore de travail</translation>
    </message>
    <message>
        <source>Once a batch is planned, this page lists each day&apos;s work across all batches: turning, rubbing, weighing, looking at the chambers, judging what is ready. One key ticks a line off; what was missed stays at the top.</source>
        <translation>Dès qu’un lot est planifié, cette page liste le travail de chaque jour pour tous les lots&#xa0;: retourner, frotter, peser, inspecter les chambres, juger ce qui est prêt. Une touche coche une ligne&#xa0;; ce qui a été manqué reste en haut.</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>Planifier un lot</translation>
    </message>
    <message>
        <source>&amp;Leave out this time</source>
        <translation>&amp;Omettre cette fois</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation>&amp;Fait</translation>
    </message>
    <message>
        <source>Nothing is left for today.</source>
        <translation>Il ne reste rien pour aujourd’hui.</translation>
    </message>
    <message>
        <source>&amp;Do it now</source>
        <translation>Faire &amp;maintenant</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ou&amp;vrir</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Retirer</translation>
    </message>
    <message>
        <source>Space or Enter: %1 Delete: leave it out this time.</source>
        <extracomment>%1 what the key does</extracomment>
        <translation>Espace ou Entrée&#xa0;: %1 Suppr&#xa0;: omettre cette fois.</translation>
    </message>
    <message>
        <source>Space: %1</source>
        <translation>Espace&#xa0;: %1</translation>
    </message>
    <message>
        <source>The day&apos;s work across all batches</source>
        <translation>Le travail du jour pour tous les lots</translation>
    </message>
    <message>
        <source>Work of the day</source>
        <translation>Travail du jour</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
</context>
<context>
    <name>UnitWords</name>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation>fl oz</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>mL</translation>
    </message>
    <message>
        <source>% RH</source>
        <translation>% HR</translation>
    </message>
    <message>
        <source>% vol</source>
        <translation>% vol</translation>
    </message>
    <message>
        <source>ppm</source>
        <translation>ppm</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>d</source>
        <translation>j</translation>
    </message>
    <message>
        <source>days</source>
        <translation>jours</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semaines</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>week</source>
        <translation>semaine</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>heures</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>heure</translation>
    </message>
</context>
<context>
    <name>Upset</name>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Upset in %1: %2 to %3, highest air temperature %4.</source>
        <translation>Incident dans %1&#xa0;: %2 à %3, température d’air la plus haute %4.</translation>
    </message>
    <message>
        <source>Without a reading: %1.</source>
        <translation>Sans mesure&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 %2: stage %3, hung %4, lost %5, salt at most %6, nitrite put on %7.</source>
        <translation>%1 %2&#xa0;: étape %3, accrochée %4, perte %5, sel au plus %6, nitrite appliqué %7.</translation>
    </message>
    <message>
        <source>%1 %2 (water activity %3)</source>
        <translation>%1 %2 (activité de l’eau %3)</translation>
    </message>
    <message>
        <source>  Air in growth range: %1.</source>
        <translation>  Air dans la plage de croissance&#xa0;: %1.</translation>
    </message>
    <message>
        <source>A record of the air, not of the meat&apos;s core, and no judgement.</source>
        <translation>Un constat sur l’air, non sur le cœur de la viande, et aucun jugement.</translation>
    </message>
</context>
<context>
    <name>WarmWords</name>
    <message>
        <source>No time can be given: see below.</source>
        <translation>Aucune durée ne peut être donnée&#xa0;: voir ci-dessous.</translation>
    </message>
    <message>
        <source>It is there already.</source>
        <translation>Elle y est déjà.</translation>
    </message>
    <message>
        <source>About %1 in the warm air; 8 in 10 pieces take %2 to %3.</source>
        <translation>Environ %1 à l’air chaud&#xa0;; 8 pièces sur 10 prennent de %2 à %3.</translation>
    </message>
    <message>
        <source>at most %1 tenfold steps in a laboratory medium, without lag</source>
        <translation>au plus %1 puissances de dix dans un milieu de laboratoire, sans latence</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune heure</translation>
    </message>
    <message>
        <source>Warm finish, %1: air at %2 and %3, from %4 to %5 lost.</source>
        <translation>Finition à l’air chaud, %1&#xa0;: air à %2 et %3, de %4 à %5 de perte.</translation>
    </message>
    <message>
        <source>In the growth range of %1: %2 (%3)</source>
        <translation>Dans la plage de croissance de %1&#xa0;: %2 (%3)</translation>
    </message>
</context>
<context>
    <name>WhatIfWords</name>
    <message>
        <source>reached</source>
        <translation>atteinte</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>non atteinte</translation>
    </message>
    <message>
        <source>by today</source>
        <translation>dès aujourd’hui</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 à %3)</translation>
    </message>
    <message>
        <source>not reachable: more likely never than ever</source>
        <translation>hors d’atteinte&#xa0;: plus probablement jamais qu’un jour</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a temperature, %2 a humidity: air</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Air ahead</source>
        <translation>Air à venir</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>1 chance in 10 by</source>
        <translation>1 chance sur 10 d’ici au</translation>
    </message>
    <message>
        <source>Even odds by</source>
        <translation>Une chance sur deux d’ici au</translation>
    </message>
    <message>
        <source>9 chances in 10 by</source>
        <translation>9 chances sur 10 d’ici au</translation>
    </message>
    <message>
        <source>Levels off at</source>
        <translation>Se stabilise à</translation>
    </message>
    <message>
        <source>No humidity at %1 draws water as strongly as %2 does.</source>
        <translation>Aucune humidité à %1 ne tire l’eau aussi fort que %2.</translation>
    </message>
    <message>
        <source>Equal drying power: %1 at %2 draws water as strongly as %3 at %4. How far the piece can dry follows from humidity almost alone.</source>
        <translation>Pouvoir desséchant égal&#xa0;: %1 à %2 tire l’eau aussi fort que %3 à %4. Jusqu’où la pièce peut sécher dépend presque de la seule humidité.</translation>
    </message>
    <message>
        <source>%1 lies in the cited growth range of %2 (%3 to %4), which %5 does not. %6</source>
        <translation>%1 est dans la plage de croissance citée de %2 (%3 à %4), ce qui n’est pas le cas de %5. %6</translation>
    </message>
</context>
<context>
    <name>WorkList</name>
    <message>
        <source>Work of the day</source>
        <translation>Travail du jour</translation>
    </message>
</context>
<context>
    <name>app::window::Session</name>
    <message>
        <source>Open a book</source>
        <translation>Ouvrir un registre</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Registres Saltloft (*.saltloft);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Nouveau registre</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Registres Saltloft (*.saltloft)</translation>
    </message>
    <message>
        <source>Back up a copy</source>
        <translation>Sauvegarder une copie</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>The copy was written and read back: %1, %2, %3.</source>
        <translation>La copie a été écrite et relue&#xa0;: %1, %2, %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n lot</numerusform>
            <numerusform>%n lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n pièce</numerusform>
            <numerusform>%n pièces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weighing(s)</source>
        <translation>
            <numerusform>%n pesée</numerusform>
            <numerusform>%n pesées</numerusform>
        </translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurer une sauvegarde</translation>
    </message>
    <message>
        <source>The backup is in its place and open.</source>
        <translation>La sauvegarde est en place et ouverte.</translation>
    </message>
    <message>
        <source>The backup is in its place and open. The book as it was before is kept as %1.</source>
        <translation>La sauvegarde est en place et ouverte. Le registre d’avant est gardé sous le nom %1.</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartPainter</name>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartTable</name>
    <message>
        <source>The chart as a table</source>
        <translation>Le graphique en tableau</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, en tableau</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Courbe</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartView</name>
    <message>
        <source>Move over a point, or use Left and Right, to read it.</source>
        <translation>Passez sur un point, ou utilisez Gauche et Droite, pour le lire.</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Graphique</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Copy the table</source>
        <translation>Copier le tableau</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>En tableau</translation>
    </message>
    <message>
        <source>Copied: paste it into a spreadsheet or a text.</source>
        <translation>Copié&#xa0;: collez-le dans un tableur ou un texte.</translation>
    </message>
    <message>
        <source>Enter chooses a row that was weighed; Ctrl+C copies.</source>
        <translation>Entrée choisit une ligne pesée&#xa0;; Ctrl+C copie.</translation>
    </message>
    <message>
        <source>As a drawing</source>
        <translation>En dessin</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, en tableau</translation>
    </message>
    <message>
        <source>Copy the table: %1</source>
        <translation>Copier le tableau&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ui::edits::DayField</name>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>demain</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>day, e.g. %1</source>
        <translation>jour, p.&#xa0;ex. %1</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>Pick from a calendar (Alt+Down)</source>
        <translation>Choisir dans un calendrier (Alt+Bas)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Pick a day</source>
        <translation>Choisir un jour</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendrier</translation>
    </message>
</context>
<context>
    <name>ui::models::WorkModel</name>
    <message>
        <source>Overdue</source>
        <translation>En retard</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Coming</source>
        <translation>À venir</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation>Fait aujourd’hui</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <extracomment>a heading of the day sheet and how many lines it has</extracomment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Batch and pieces</source>
        <translation>Lot et pièces</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchDialog</name>
    <message>
        <source>Change batch %1</source>
        <translation>Modifier le lot %1</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Lot du fournisseur</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Commencé</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>Poids acheté</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>Parures</translation>
    </message>
    <message>
        <source>Price per kilogram</source>
        <translation>Prix par kilogramme</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>The meat was frozen before</source>
        <translation>La viande a été congelée avant</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>&amp;Code</source>
        <translation>&amp;Code</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Produit</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animal</translation>
    </message>
    <message>
        <source>&amp;Supplier</source>
        <translation>&amp;Fournisseur</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>&amp;Lot du fournisseur</translation>
    </message>
    <message>
        <source>S&amp;tarted</source>
        <translation>Co&amp;mmencé</translation>
    </message>
    <message>
        <source>&amp;Bought weight</source>
        <translation>Poids ac&amp;heté</translation>
    </message>
    <message>
        <source>Trimmed &amp;off</source>
        <translation>Par&amp;ures</translation>
    </message>
    <message>
        <source>P&amp;rice per kilogram</source>
        <translation>P&amp;rix par kilogramme</translation>
    </message>
    <message>
        <source>Stat&amp;e</source>
        <translation>Éta&amp;t</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchesPage</name>
    <message>
        <source>Batches and pieces</source>
        <translation>Lots et pièces</translation>
    </message>
    <message>
        <source>&amp;New batch…</source>
        <translation>&amp;Nouveau lot…</translation>
    </message>
    <message>
        <source>No batch yet</source>
        <translation>Pas encore de lot</translation>
    </message>
    <message>
        <source>A batch is meat cured together from one recipe. Weigh it, let the mix sheet compute the cure, and give each piece a code. From then on every weighing finds its place by itself.</source>
        <translation>Un lot, c’est de la viande salée ensemble d’après une même recette. Pesez-la, laissez la feuille de mélange calculer le salage, et donnez un code à chaque pièce. Dès lors, chaque pesée trouve sa place d’elle-même.</translation>
    </message>
    <message>
        <source>Start the first batch</source>
        <translation>Commencer le premier lot</translation>
    </message>
    <message>
        <source>Find a batch</source>
        <translation>Trouver un lot</translation>
    </message>
    <message>
        <source>Find by code, name, product or supplier</source>
        <translation>Chercher par code, nom, produit ou fournisseur</translation>
    </message>
    <message>
        <source>Show &amp;finished batches too</source>
        <translation>Montrer aussi les lots &amp;terminés</translation>
    </message>
    <message>
        <source>Show finished batches too</source>
        <translation>Montrer aussi les lots terminés</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Lots</translation>
    </message>
    <message>
        <source>Pieces of the batch</source>
        <translation>Pièces du lot</translation>
    </message>
    <message>
        <source>&amp;Add a piece…</source>
        <translation>&amp;Ajouter une pièce…</translation>
    </message>
    <message>
        <source>&amp;Change the batch…</source>
        <translation>&amp;Modifier le lot…</translation>
    </message>
    <message>
        <source>Batches above pieces</source>
        <translation>Lots au-dessus des pièces</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Commencé</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Séchage</translation>
    </message>
    <message>
        <source>Last weighed</source>
        <translation>Dernière pesée</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Emplacement</translation>
    </message>
    <message>
        <source>Net now</source>
        <translation>Net actuel</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perte</translation>
    </message>
    <message>
        <source>At target</source>
        <translation>À la cible</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>started %1</source>
        <translation>commencé %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lot fournisseur %1</translation>
    </message>
    <message>
        <source>bought %1</source>
        <translation>acheté %1</translation>
    </message>
    <message>
        <source>All batches and their pieces</source>
        <translation>Tous les lots et leurs pièces</translation>
    </message>
    <message>
        <source>&amp;More</source>
        <translation>&amp;Plus</translation>
    </message>
    <message>
        <source>More about the batch</source>
        <translation>Plus sur le lot</translation>
    </message>
    <message>
        <source>&amp;Curves on one chart</source>
        <translation>&amp;Courbes sur un même graphique</translation>
    </message>
    <message>
        <source>&amp;How it came out…</source>
        <translation>&amp;Résultat…</translation>
    </message>
    <message>
        <source>How it came out: %1</source>
        <translation>Résultat&#xa0;: %1</translation>
    </message>
    <message>
        <source>Salt, texture, and what to change next time</source>
        <translation>Sel, texture, et que changer la prochaine fois</translation>
    </message>
    <message>
        <source>Once a piece of it is signed as done.</source>
        <translation>Dès qu’une de ses pièces est signée comme finie.</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberDialog</name>
    <message>
        <source>Change a chamber</source>
        <translation>Modifier une chambre</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>Ajouter une chambre</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Ce que c’est</translation>
    </message>
    <message>
        <source>Lowest temperature wanted</source>
        <translation>Température minimale voulue</translation>
    </message>
    <message>
        <source>Highest temperature wanted</source>
        <translation>Température maximale voulue</translation>
    </message>
    <message>
        <source>Lowest humidity wanted</source>
        <translation>Humidité minimale voulue</translation>
    </message>
    <message>
        <source>Highest humidity wanted</source>
        <translation>Humidité maximale voulue</translation>
    </message>
    <message>
        <source>Water it can carry out a day</source>
        <translation>Eau qu’elle peut évacuer par jour</translation>
    </message>
    <message>
        <source>Places to hang</source>
        <translation>Places d’accrochage</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;What it is</source>
        <translation>&amp;Ce que c’est</translation>
    </message>
    <message>
        <source>&amp;Temperature from</source>
        <translation>&amp;Température de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>&amp;Humidity from</source>
        <translation>&amp;Humidité de</translation>
    </message>
    <message>
        <source>Water it can carry &amp;out a day</source>
        <translation>&amp;Eau évacuable par jour</translation>
    </message>
    <message>
        <source>&amp;Places to hang</source>
        <translation>&amp;Places d’accrochage</translation>
    </message>
    <message>
        <source>N&amp;otes</source>
        <translation>N&amp;otes</translation>
    </message>
    <message>
        <source>Give the chamber a name, such as &quot;Cellar&quot;.</source>
        <translation>Donnez un nom à la chambre, par exemple «&#xa0;Cave&#xa0;».</translation>
    </message>
    <message>
        <source>This is below the lowest temperature.</source>
        <translation>C’est sous la température minimale.</translation>
    </message>
    <message>
        <source>This is below the lowest humidity.</source>
        <translation>C’est sous l’humidité minimale.</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberPage</name>
    <message>
        <source>Chambers</source>
        <translation>Chambres</translation>
    </message>
    <message>
        <source>No chamber yet</source>
        <translation>Pas encore de chambre</translation>
    </message>
    <message>
        <source>A chamber is where pieces cure or hang: a fridge, a cabinet, a cellar. Add one with the air you want in it; then import your logger&apos;s file to see how the air really was.</source>
        <translation>Une chambre est l’endroit où les pièces sont au sel ou sèchent&#xa0;: réfrigérateur, armoire, cave. Ajoutez-en une avec l’air que vous y voulez&#xa0;; importez ensuite le fichier de votre enregistreur pour voir comment l’air était vraiment.</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>Ajouter une chambre</translation>
    </message>
    <message>
        <source>About the chamber</source>
        <translation>À propos de la chambre</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Air</translation>
    </message>
    <message>
        <source>&amp;Air</source>
        <translation>&amp;Air</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Capteurs</translation>
    </message>
    <message>
        <source>&amp;Sensors</source>
        <translation>&amp;Capteurs</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>C&amp;harge</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>L&amp;ogs</source>
        <translation>Re&amp;levés</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Chambre</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Nouvelle…</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Modifier…</translation>
    </message>
    <message>
        <source>Record an &amp;upset…</source>
        <translation>Noter un inci&amp;dent…</translation>
    </message>
    <message>
        <source>&amp;Import a log…</source>
        <translation>&amp;Importer un relevé…</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Ce qui est montré</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>drying force</source>
        <translation>force de séchage</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Durée</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>un jour</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>une semaine</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 jours</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 jours</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>un an</translation>
    </message>
    <message>
        <source>ten years</source>
        <translation>dix ans</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Capteur</translation>
    </message>
    <message>
        <source>Second sensor laid over it</source>
        <translation>Second capteur superposé</translation>
    </message>
    <message>
        <source>◀ &amp;Earlier</source>
        <translation>◀ &amp;Précédent</translation>
    </message>
    <message>
        <source>La&amp;ter ▶</source>
        <translation>&amp;Suivant ▶</translation>
    </message>
    <message>
        <source>Ne&amp;west</source>
        <translation>Le plus réc&amp;ent</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>Hors plage</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pendant</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Pire valeur</translation>
    </message>
    <message>
        <source>Times out of band, half an hour or longer</source>
        <translation>Périodes hors plage, d’une demi-heure ou plus</translation>
    </message>
    <message>
        <source>no second sensor</source>
        <translation>pas de second capteur</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Of %1 watched, no time out of the band.</source>
        <translation>Sur %1 observés, aucun moment hors de la plage.</translation>
    </message>
    <message>
        <source>Of %1 watched: %2.</source>
        <translation>Sur %1 observés&#xa0;: %2.</translation>
    </message>
    <message>
        <source>For %1 nothing is known.</source>
        <translation>Pour %1, rien n’est connu.</translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation>Air dans %1</translation>
    </message>
    <message>
        <source>No sensor here yet: import a log, or add a sensor on the Sensors tab.</source>
        <translation>Pas encore de capteur ici&#xa0;: importez un relevé, ou ajoutez un capteur dans l’onglet Capteurs.</translation>
    </message>
    <message>
        <source>This sensor has no readings yet: import a log.</source>
        <translation>Ce capteur n’a pas encore de mesures&#xa0;: importez un relevé.</translation>
    </message>
    <message>
        <source>Batch about to be hung here</source>
        <translation>Lot sur le point d’être accroché ici</translation>
    </message>
    <message>
        <source>&amp;What if this batch is hung here</source>
        <translation>Et si ce lo&amp;t était accroché ici</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Emplacement</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Pèse</translation>
    </message>
    <message>
        <source>Hung for</source>
        <translation>Sèche depuis</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perte</translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation>Eau par jour</translation>
    </message>
    <message>
        <source>Known from</source>
        <translation>Connu par</translation>
    </message>
    <message>
        <source>its weighings</source>
        <translation>ses pesées</translation>
    </message>
    <message>
        <source>the usual pace of its age</source>
        <translation>l’allure habituelle à son âge</translation>
    </message>
    <message>
        <source>Pieces by the water they give off</source>
        <translation>Pièces selon l’eau qu’elles rendent</translation>
    </message>
    <message>
        <source>Air, sensors and load of the rooms where pieces hang</source>
        <translation>Air, capteurs et charge des locaux où sèchent les pièces</translation>
    </message>
    <message>
        <source>▲ never checked</source>
        <translation>▲ jamais contrôlé</translation>
    </message>
    <message>
        <source>▲ due %1</source>
        <translation>▲ à faire %1</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation>Dernière mesure</translation>
    </message>
    <message>
        <source>Added to it</source>
        <translation>Correction</translation>
    </message>
    <message>
        <source>Salt-bag check</source>
        <translation>Contrôle au sachet de sel</translation>
    </message>
    <message>
        <source>Ice check</source>
        <translation>Contrôle à la glace</translation>
    </message>
    <message>
        <source>Sensors in this chamber</source>
        <translation>Capteurs de cette chambre</translation>
    </message>
    <message>
        <source>Instruments are often wrong, and believed. Check each over a salt slurry every six months and after a battery change; the dates are common practice.</source>
        <translation>Les instruments se trompent souvent, et on les croit. Contrôlez chacun au-dessus d’une bouillie de sel tous les six mois et après un changement de pile&#xa0;; ces dates sont de pratique courante.</translation>
    </message>
    <message>
        <source>Add a senso&amp;r…</source>
        <translation>Ajouter un capteu&amp;r…</translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>Modi&amp;fier…</translation>
    </message>
    <message>
        <source>Record a chec&amp;k…</source>
        <translation>Noter un con&amp;trôle…</translation>
    </message>
    <message>
        <source>%1 of water a day, %2 % of what %3 can carry out.</source>
        <translation>%1 d’eau par jour, %2&#xa0;% de ce que %3 peut évacuer.</translation>
    </message>
    <message>
        <source>%1 of water a day. What the chamber can carry out is not known: weigh the water it sheds in a day, and enter it under Change.</source>
        <translation>%1 d’eau par jour. Ce que la chambre peut évacuer est inconnu&#xa0;: pesez l’eau qu’elle rejette en un jour, et saisissez-la sous Modifier.</translation>
    </message>
    <message>
        <source>Nothing hangs here.</source>
        <translation>Rien n’est accroché ici.</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 avec %2</translation>
    </message>
    <message>
        <source>Worth swapping, the fast with the slow of the same age: %1.</source>
        <translation>Échanges utiles, les rapides avec les lentes du même âge&#xa0;: %1.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Importé</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>New readings</source>
        <translation>Nouvelles mesures</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Omises</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Au</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>complet</translation>
    </message>
    <message>
        <source>▲ stopped half-way</source>
        <translation>▲ arrêté à mi-chemin</translation>
    </message>
    <message>
        <source>Logs taken in</source>
        <translation>Relevés importés</translation>
    </message>
    <message>
        <source>A watched folder&apos;s new files are taken in by themselves, once a first file of the sensor has been imported by hand.</source>
        <translation>Les nouveaux fichiers d’un dossier surveillé sont importés d’eux-mêmes, une fois qu’un premier fichier du capteur a été importé à la main.</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>Surveiller un dossi&amp;er…</translation>
    </message>
    <message>
        <source>Take the newest log &amp;back</source>
        <translation>Reti&amp;rer le dernier relevé importé</translation>
    </message>
    <message>
        <source>Stop watching the &amp;folder</source>
        <translation>Ne plus sur&amp;veiller le dossier</translation>
    </message>
    <message>
        <source>Add a sensor first, so that the files have somewhere to go.</source>
        <translation>Ajoutez d’abord un capteur, pour que les fichiers aient où aller.</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>Dossier à surveiller</translation>
    </message>
    <message>
        <source>logger</source>
        <translation>enregistreur</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n place(s) are free.</source>
        <translation>
            <numerusform>%1 place sur %n est libre.</numerusform>
            <numerusform>%1 places sur %n sont libres.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::CheckDialog</name>
    <message>
        <source>Check the book</source>
        <translation>Vérifier le registre</translation>
    </message>
    <message>
        <source>Reads %1 from end to end: pages, indexes, links between entries and the sums of climate readings. It changes nothing.</source>
        <translation>Lit %1 de bout en bout&#xa0;: pages, index, liens entre les entrées et cumuls des mesures de climat. Rien n’est modifié.</translation>
    </message>
    <message>
        <source>The book is being read</source>
        <translation>Le registre est en cours de lecture</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été trouvé</translation>
    </message>
    <message>
        <source>Make the climate roll-ups a&amp;new</source>
        <translation>Re&amp;calculer les cumuls climatiques</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>Récu&amp;pérer dans un nouveau registre…</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>&amp;Restaurer une sauvegarde…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>The check is under way. A book with years of climate readings takes a while.</source>
        <translation>La vérification est en cours. Un registre avec des années de mesures de climat prend un moment.</translation>
    </message>
    <message>
        <source>The climate roll-ups are being made anew from the readings.</source>
        <translation>Les cumuls climatiques sont en cours de recalcul à partir des mesures.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>This book is open for reading only: open it for writing to do that.</source>
        <translation>Ce registre est ouvert en lecture seule&#xa0;: ouvrez-le en écriture pour faire cela.</translation>
    </message>
</context>
<context>
    <name>ui::pages::CompareDialog</name>
    <message>
        <source>Pieces for one chart</source>
        <translation>Pièces pour un même graphique</translation>
    </message>
    <message>
        <source>Find a piece</source>
        <translation>Trouver une pièce</translation>
    </message>
    <message>
        <source>Find by code, piece, batch or product</source>
        <translation>Chercher par code, pièce, lot ou produit</translation>
    </message>
    <message>
        <source>Pieces, ticked ones are drawn</source>
        <translation>Pièces, les cochées sont tracées</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>&amp;Draw them</source>
        <translation>&amp;Tracer</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 · %4</source>
        <extracomment>a piece: %1 its code, %2 its name, %3 its batch and product, %4 its state</extracomment>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message>
        <source>No other piece was hung yet.</source>
        <translation>Aucune autre pièce n’a encore été accrochée.</translation>
    </message>
    <message>
        <source>%1 is the most a chart can tell apart; the newest are drawn.</source>
        <translation>%1 est le maximum qu’un graphique peut distinguer&#xa0;; les plus récentes sont tracées.</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>Cochées&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::EntryDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Valider</translation>
    </message>
    <message>
        <source>%1
If this is right, press Keep again.</source>
        <translation>%1
Si c’est juste, appuyez encore une fois sur Valider.</translation>
    </message>
</context>
<context>
    <name>ui::pages::EventDialog</name>
    <message>
        <source>Drying starts. The net weight now is the hung weight that losses count from.</source>
        <translation>Le séchage commence. Le poids net d’à présent est le poids à l’accrochage, à partir duquel comptent les pertes.</translation>
    </message>
    <message>
        <source>A casing or net was put on. Its weight is tare from now on.</source>
        <translation>Un boyau ou un filet a été posé. Son poids est désormais de la tare.</translation>
    </message>
    <message>
        <source>Casing or net was changed. The net weight stays; only the tare changes.</source>
        <translation>Le boyau ou le filet a été changé. Le poids net reste&#xa0;; seule la tare change.</translation>
    </message>
    <message>
        <source>Lard, paste or pepper was put on. The added weight is not meat.</source>
        <translation>De la panne, de la pâte ou du poivre a été appliqué. Le poids ajouté n’est pas de la viande.</translation>
    </message>
    <message>
        <source>Something was cut off. Start and target shrink in proportion.</source>
        <translation>Quelque chose a été coupé. Le départ et la cible diminuent en proportion.</translation>
    </message>
    <message>
        <source>A wedge was taken to taste. Start and target shrink in proportion.</source>
        <translation>Un échantillon a été prélevé pour goûter. Le départ et la cible diminuent en proportion.</translation>
    </message>
    <message>
        <source>The piece was pressed. Water pressed out counts as loss.</source>
        <translation>La pièce a été pressée. L’eau exprimée compte comme perte.</translation>
    </message>
    <message>
        <source>The piece was washed or soaked. The next weighing may be wet.</source>
        <translation>La pièce a été lavée ou dessalée. La prochaine pesée peut être mouillée.</translation>
    </message>
    <message>
        <source>The piece hangs elsewhere now.</source>
        <translation>La pièce est maintenant accrochée ailleurs.</translation>
    </message>
    <message>
        <source>The piece was frozen. The cure clock stops.</source>
        <translation>La pièce a été congelée. L’horloge du salage s’arrête.</translation>
    </message>
    <message>
        <source>The piece is thawed. The cure clock runs again.</source>
        <translation>La pièce est décongelée. L’horloge du salage repart.</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>target net: %1</source>
        <translation>cible nette&#xa0;: %1</translation>
    </message>
    <message>
        <source>target on the scale: %1</source>
        <translation>cible sur la balance&#xa0;: %1</translation>
    </message>
    <message>
        <source>tare: %1</source>
        <translation>tare&#xa0;: %1</translation>
    </message>
    <message>
        <source>No number changes.</source>
        <translation>Aucun nombre ne change.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Jour</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>&amp;Heure</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>Poids net avant</translation>
    </message>
    <message>
        <source>Net weight after</source>
        <translation>Poids net après</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>Poids net av&amp;ant</translation>
    </message>
    <message>
        <source>Net weight &amp;after</source>
        <translation>Poids net a&amp;près</translation>
    </message>
    <message>
        <source>Net weight as hung</source>
        <translation>Poids net à l’accrochage</translation>
    </message>
    <message>
        <source>&amp;Net weight as hung</source>
        <translation>Poids &amp;net à l’accrochage</translation>
    </message>
    <message>
        <source>Tare from now on</source>
        <translation>Tare désormais</translation>
    </message>
    <message>
        <source>&amp;Tare from now on</source>
        <translation>&amp;Tare désormais</translation>
    </message>
    <message>
        <source>New start weight</source>
        <translation>Nouveau poids de départ</translation>
    </message>
    <message>
        <source>in proportion</source>
        <translation>en proportion</translation>
    </message>
    <message>
        <source>New &amp;start, if not in proportion</source>
        <translation>Nouveau &amp;départ, sinon en proportion</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Chambre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ote</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Ce qui change</translation>
    </message>
</context>
<context>
    <name>ui::pages::GuidePage</name>
    <message>
        <source>Guide</source>
        <translation>Guide</translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation>Chapitre</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>Chapitres</translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation>Texte du chapitre</translation>
    </message>
    <message>
        <source>Search the guide</source>
        <translation>Chercher dans le guide</translation>
    </message>
    <message>
        <source>Pre&amp;vious</source>
        <translation>Pré&amp;cédent</translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <translation>Sui&amp;vant</translation>
    </message>
    <message>
        <source>The guide is in English.</source>
        <translation>Le guide est en anglais.</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n endroit</numerusform>
            <numerusform>%n endroits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n chapter(s)</source>
        <translation>
            <numerusform>%1 dans %n chapitre</numerusform>
            <numerusform>%1 dans %n chapitres</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” is not in the guide.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas dans le guide.</translation>
    </message>
    <message>
        <source>How the work goes, what to do when, and the mathematics</source>
        <translation>Le déroulement du travail, que faire quand, et les mathématiques</translation>
    </message>
</context>
<context>
    <name>ui::pages::HangingPage</name>
    <message>
        <source>What hangs</source>
        <translation>Au séchoir</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Chambre</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Chambre</translation>
    </message>
    <message>
        <source>Nothing hangs yet</source>
        <translation>Rien n’est encore accroché</translation>
    </message>
    <message>
        <source>When a piece comes out of the cure, open it and choose &quot;What happened: hung to dry&quot;. From its second weighing on it stands here on a time axis with the interval in which it is expected to reach its target.</source>
        <translation>Quand une pièce sort du sel, ouvrez-la et choisissez «&#xa0;Événement&#xa0;: mise à sécher&#xa0;». Dès sa deuxième pesée, elle figure ici sur un axe de temps, avec l’intervalle où elle devrait atteindre sa cible.</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation>Prêt pour le</translation>
    </message>
    <message>
        <source>What is &amp;ready by</source>
        <translation>Ce qui est p&amp;rêt pour le</translation>
    </message>
    <message>
        <source>Drying pieces</source>
        <translation>Pièces en séchage</translation>
    </message>
    <message>
        <source>Columns and dates</source>
        <translation>Colonnes et dates</translation>
    </message>
    <message>
        <source>Bar: how far the loss has come towards the target, from hanging to now. Box: 8 chances in 10 that the target is reached inside; the line in it is even odds. An arrow: it may never be. At target is not done: look, touch and cut before you decide.</source>
        <translation>Barre&#xa0;: avancée de la perte vers la cible, de l’accrochage à maintenant. Boîte&#xa0;: 8 chances sur 10 que la cible soit atteinte dedans&#xa0;; le trait à l’intérieur est une chance sur deux. Une flèche&#xa0;: peut-être jamais. À la cible ne veut pas dire finie&#xa0;: regardez, touchez et coupez avant de décider.</translation>
    </message>
    <message>
        <source>It dries much faster or slower than the others of its batch.</source>
        <translation>Elle sèche bien plus vite ou plus lentement que les autres de son lot.</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Place</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perte</translation>
    </message>
    <message>
        <source>fast ▲ </source>
        <translation>rapide ▲ </translation>
    </message>
    <message>
        <source>slow ▼ </source>
        <translation>lente ▼ </translation>
    </message>
    <message>
        <source>At target</source>
        <translation>À la cible</translation>
    </message>
    <message>
        <source>all</source>
        <translation>toutes</translation>
    </message>
    <message>
        <source>Type a day, such as a market or a feast, to see which pieces are expected to be at their target.</source>
        <translation>Tapez un jour, tel un marché ou une fête, pour voir quelles pièces devraient être à leur cible.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>Nine chances in ten or better: %1. More likely than not: %2. Possible: %3.</source>
        <translation>Neuf chances sur dix ou mieux&#xa0;: %1. Plus probable que non&#xa0;: %2. Possible&#xa0;: %3.</translation>
    </message>
    <message>
        <source>Drying pieces on a time axis, and what is ready by a day</source>
        <translation>Pièces en séchage sur un axe de temps, et ce qui est prêt pour un jour</translation>
    </message>
    <message>
        <source>Nothing hangs.</source>
        <translation>Rien n’est accroché.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a product, %2 sentences about earlier pieces of it</extracomment>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::ImportLogDialog</name>
    <message>
        <source>as found in the file</source>
        <translation>comme trouvé dans le fichier</translation>
    </message>
    <message>
        <source>Import a climate log</source>
        <translation>Importer un relevé de climat</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation>Avancement de l’importation</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importer</translation>
    </message>
    <message>
        <source>Choose the file your logger wrote. Nothing is stored before you press Import, and one Undo takes the whole log back.</source>
        <translation>Choisissez le fichier écrit par votre enregistreur. Rien n’est stocké avant que vous n’appuyiez sur Importer, et un seul Annuler retire tout le relevé.</translation>
    </message>
    <message>
        <source>Log file</source>
        <translation>Fichier de relevé</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>&amp;Choisir…</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>Fic&amp;hier</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Capteur</translation>
    </message>
    <message>
        <source>&amp;Sensor</source>
        <translation>Ca&amp;pteur</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Forme des dates</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>année, mois, jour</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>jour, mois, année</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mois, jour, année</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>Température en</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Séparateur décimal</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Horloge</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>heure locale de %1</translation>
    </message>
    <message>
        <source>winter time all year</source>
        <translation>heure d’hiver toute l’année</translation>
    </message>
    <message>
        <source>&amp;Dates</source>
        <translation>Forme des &amp;dates</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>&amp;Température en</translation>
    </message>
    <message>
        <source>D&amp;ecimal sign</source>
        <translation>&amp;Séparateur décimal</translation>
    </message>
    <message>
        <source>Cloc&amp;k</source>
        <translation>H&amp;orloge</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Reads as</source>
        <translation>Lu comme</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Certitude</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Or else</source>
        <translation>Sinon</translation>
    </message>
    <message>
        <source>How the file reads</source>
        <translation>Lecture du fichier</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>First readings</source>
        <translation>Premières mesures</translation>
    </message>
    <message>
        <source>Logs (*.csv *.txt *.tsv *.log);;All files (*)</source>
        <translation>Relevés (*.csv *.txt *.tsv *.log);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Part of this is a guess. Say above how the file is to be read; it is remembered for this sensor.</source>
        <translation>Une partie est supposée. Indiquez ci-dessus comment lire le fichier&#xa0;; c’est retenu pour ce capteur.</translation>
    </message>
    <message>
        <source>The file reads well.</source>
        <translation>Le fichier se lit bien.</translation>
    </message>
    <message>
        <source>&amp;Cancel the import</source>
        <translation>&amp;Annuler l’importation</translation>
    </message>
    <message>
        <source>The first is line %1: %2.</source>
        <translation>La première est la ligne %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 say something else than the book, which was left as it is.</source>
        <translation>Valeurs en contradiction avec le registre, resté tel quel&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n mesure</numerusform>
            <numerusform>%n mesures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the first %1 lines %n are no readings; they will be left out.</source>
        <translation>
            <numerusform>Sur les %1 premières lignes, %n n’est pas une mesure&#xa0;; elle sera omise.</numerusform>
            <numerusform>Sur les %1 premières lignes, %n ne sont pas des mesures&#xa0;; elles seront omises.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n reading(s) are new.</source>
        <translation>
            <numerusform>%1 mesure sur %n est nouvelle.</numerusform>
            <numerusform>%1 mesures sur %n sont nouvelles.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopped. %n reading(s) were taken in before; Undo takes them back.</source>
        <translation>
            <numerusform>Arrêté. %n mesure avait déjà été importée&#xa0;; Annuler la retire.</numerusform>
            <numerusform>Arrêté. %n mesures avaient déjà été importées&#xa0;; Annuler les retire.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) are no readings.</source>
        <translation>
            <numerusform>%n ligne n’est pas une mesure.</numerusform>
            <numerusform>%n lignes ne sont pas des mesures.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::KeepByFields</name>
    <message>
        <source>Rule for keeping it</source>
        <translation>Règle de conservation</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>Garder jusqu’au</translation>
    </message>
    <message>
        <source>Why this day</source>
        <translation>Pourquoi ce jour</translation>
    </message>
    <message>
        <source>needed for a day of your own</source>
        <translation>nécessaire pour un jour de votre choix</translation>
    </message>
    <message>
        <source>none: your own day, or no day</source>
        <translation>aucune&#xa0;: jour de votre choix, ou aucun jour</translation>
    </message>
    <message>
        <source>Without a rule the day is yours. How long a pack keeps depends on the product, its dryness and the cold; follow your own code.</source>
        <translation>Sans règle, le jour est le vôtre. La durée de conservation d’un paquet dépend du produit, de son degré de séchage et du froid&#xa0;; suivez votre propre réglementation.</translation>
    </message>
</context>
<context>
    <name>ui::pages::LostWeightDialog</name>
    <message>
        <source>%1: a weight is lost</source>
        <translation>%1&#xa0;: un poids manque</translation>
    </message>
    <message>
        <source>Enter as an &amp;estimate</source>
        <translation>Saisir comme &amp;estimation</translation>
    </message>
    <message>
        <source>No start weight can be found missing</source>
        <translation>Aucun poids de départ ne manque</translation>
    </message>
    <message>
        <source>Raw and hung weight are both in the book, or the piece was never weighed. A weighing that was missed later needs nothing: the curve has no fixed rhythm.</source>
        <translation>Le poids frais et le poids à l’accrochage sont tous deux dans le registre, ou la pièce n’a jamais été pesée. Une pesée oubliée plus tard ne demande rien&#xa0;: la courbe n’a pas de rythme fixe.</translation>
    </message>
    <message>
        <source>Which weight is lost</source>
        <translation>Quel poids manque</translation>
    </message>
    <message>
        <source>Day it should have been taken</source>
        <translation>Jour où il aurait dû être pris</translation>
    </message>
    <message>
        <source>Net weight, estimated</source>
        <translation>Poids net, estimé</translation>
    </message>
    <message>
        <source>Which weight is &amp;lost</source>
        <translation>Quel &amp;poids manque</translation>
    </message>
    <message>
        <source>&amp;Day it should have been taken</source>
        <translation>&amp;Jour où il aurait dû être pris</translation>
    </message>
    <message>
        <source>&amp;Net weight, estimated</source>
        <translation>Poids &amp;net, estimé</translation>
    </message>
    <message>
        <source>What can be said of it</source>
        <translation>Ce que l’on peut en dire</translation>
    </message>
    <message>
        <source>Entered as an estimate it stands in the list with its range. Losses count from it and are as uncertain as it is; the curve does not lean on it. It can be undone.</source>
        <translation>Saisi comme estimation, il figure dans la liste avec sa fourchette. Les pertes se comptent à partir de lui et sont aussi incertaines que lui&#xa0;; la courbe ne s’appuie pas dessus. Cela peut être annulé.</translation>
    </message>
    <message>
        <source>Or leave it unknown</source>
        <translation>Ou le laisser inconnu</translation>
    </message>
    <message>
        <source>Cancel, and nothing is made up: the days since hanging, the rate from weighing to weighing and the loss from every weight that is known are still counted. The target can be bound to one of those under Change.</source>
        <translation>Annulez, et rien n’est inventé&#xa0;: les jours depuis l’accrochage, l’allure d’une pesée à l’autre et la perte à partir de chaque poids connu sont toujours comptés. La cible peut être liée à l’un d’eux sous Modifier.</translation>
    </message>
    <message>
        <source>Enter the day, and the estimate stands here.</source>
        <translation>Indiquez le jour, et l’estimation s’affiche ici.</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>Calcul en cours…</translation>
    </message>
    <message numerus="yes">
        <source>About %1; 8 in 10 such pieces lie between %2 and %3. From %n piece(s) of its batch and the air they hung in.</source>
        <translation>
            <numerusform>Environ %1&#xa0;; 8 pièces semblables sur 10 se situent entre %2 et %3. D’après %n pièce de son lot et l’air où elle était accrochée.</numerusform>
            <numerusform>Environ %1&#xa0;; 8 pièces semblables sur 10 se situent entre %2 et %3. D’après %n pièces de son lot et l’air où elles étaient accrochées.</numerusform>
        </translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a raw and a hung weight are needed.</source>
        <translation>Aucune pièce du lot ne peut le dire&#xa0;: il en faut deux avec un poids frais et un poids à l’accrochage.</translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a hung weight, five weighings and half their target lost are needed.</source>
        <translation>Aucune pièce du lot ne peut le dire&#xa0;: il en faut deux avec un poids à l’accrochage, cinq pesées et la moitié de leur cible perdue.</translation>
    </message>
    <message>
        <source>By its form and the air alone it lay between %1 and %2: too wide to count from.</source>
        <translation>D’après sa forme et l’air seuls, il se situait entre %1 et %2&#xa0;: trop large pour servir de départ.</translation>
    </message>
    <message>
        <source>There is no estimate to enter yet.</source>
        <translation>Il n’y a pas encore d’estimation à saisir.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MainWindow</name>
    <message>
        <source>Daily round</source>
        <translation>Tournée du jour</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>Le registre</translation>
    </message>
    <message>
        <source>The house</source>
        <translation>La maison</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>What was done last</source>
        <translation>Ce qui a été fait en dernier</translation>
    </message>
    <message>
        <source>The open book</source>
        <translation>Le registre ouvert</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Rubriques</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Page</translation>
    </message>
    <message>
        <source>Invented data: this book shows a producer that does not exist. Nothing you do here touches your own book.</source>
        <translation>Données inventées&#xa0;: ce registre montre un producteur qui n’existe pas. Rien de ce que vous faites ici ne touche votre propre registre.</translation>
    </message>
    <message>
        <source>This book is open for reading only.</source>
        <translation>Ce registre est ouvert en lecture seule.</translation>
    </message>
    <message>
        <source>Demonstration book</source>
        <translation>Registre de démonstration</translation>
    </message>
    <message>
        <source>%1 – Saltloft</source>
        <translation>%1 – Saltloft</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>Menus</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Registre</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Registre</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>&amp;Nouveau registre…</translation>
    </message>
    <message>
        <source>&amp;Open book…</source>
        <translation>&amp;Ouvrir un registre…</translation>
    </message>
    <message>
        <source>Open the &amp;demonstration book</source>
        <translation>Ouvrir le registre de &amp;démonstration</translation>
    </message>
    <message>
        <source>&amp;Back up a copy…</source>
        <translation>&amp;Sauvegarder une copie…</translation>
    </message>
    <message>
        <source>&amp;Print this page…</source>
        <translation>&amp;Imprimer cette page…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>Éd&amp;ition</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Édition</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>A&amp;ller</translation>
    </message>
    <message>
        <source>Go</source>
        <translation>Aller</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Retour</translation>
    </message>
    <message>
        <source>To the &amp;places</source>
        <translation>Vers les r&amp;ubriques</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Aide</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Aide</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Mises en garde</translation>
    </message>
    <message>
        <source>&amp;About Saltloft</source>
        <translation>À &amp;propos de Saltloft</translation>
    </message>
    <message>
        <source>About Saltloft</source>
        <translation>À propos de Saltloft</translation>
    </message>
    <message>
        <source>Saltloft %1

Plan, weigh and follow cured and air-dried meat.

Free software under the GNU General Public License, version 3 or later.
It keeps records and computes; it does not decide whether food may be eaten.</source>
        <translation>Saltloft %1

Planifier, peser et suivre la viande salée et séchée à l’air.

Logiciel libre sous licence publique générale GNU, version 3 ou ultérieure.
Il tient un registre et calcule&#xa0;; il ne décide pas si un aliment peut être mangé.</translation>
    </message>
    <message>
        <source>The demonstration book is made anew each time; there is nothing to restore.</source>
        <translation>Le registre de démonstration est recréé à chaque fois&#xa0;; il n’y a rien à restaurer.</translation>
    </message>
    <message>
        <source>This book is open elsewhere. Close it there and open it again to restore a backup.</source>
        <translation>Ce registre est ouvert ailleurs. Fermez-le là-bas et rouvrez-le pour restaurer une sauvegarde.</translation>
    </message>
    <message>
        <source>This book may only be read by you. Free the permissions of the file and its folder to restore a backup.</source>
        <translation>Vous ne pouvez que lire ce registre. Libérez les droits du fichier et de son dossier pour restaurer une sauvegarde.</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>Res&amp;taurer une sauvegarde…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of this book</source>
        <translation>Met une copie antérieure à la place de ce registre</translation>
    </message>
    <message>
        <source>&amp;Check the book…</source>
        <translation>&amp;Vérifier le registre…</translation>
    </message>
    <message>
        <source>Reads the book from end to end and says whether it is whole</source>
        <translation>Lit le registre de bout en bout et dit s’il est intact</translation>
    </message>
    <message>
        <source>This page has nothing to print.</source>
        <translation>Cette page n’a rien à imprimer.</translation>
    </message>
    <message>
        <source>&amp;Guide to this page</source>
        <translation>&amp;Guide de cette page</translation>
    </message>
</context>
<context>
    <name>ui::pages::MergeDialog</name>
    <message>
        <source>Weigh %1 with others as one</source>
        <translation>Peser %1 avec d’autres, ensemble</translation>
    </message>
    <message>
        <source>Weighed together with</source>
        <translation>Pesée ensemble avec</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code of the bundle</source>
        <translation>Code du groupe</translation>
    </message>
    <message>
        <source>All together on the scale</source>
        <translation>Tout ensemble sur la balance</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tare</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>&amp;Weighed together with</source>
        <translation>&amp;Pesée ensemble avec</translation>
    </message>
    <message>
        <source>&amp;Code of the bundle</source>
        <translation>&amp;Code du groupe</translation>
    </message>
    <message>
        <source>&amp;All together on the scale</source>
        <translation>T&amp;out ensemble sur la balance</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tare</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>Mark at least one other piece.</source>
        <translation>Cochez au moins une autre pièce.</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Ce qui change</translation>
    </message>
    <message>
        <source>Mark the pieces and weigh them together; the new start and target then stand here.</source>
        <translation>Cochez les pièces et pesez-les ensemble&#xa0;; le nouveau départ et la nouvelle cible s’affichent alors ici.</translation>
    </message>
    <message>
        <source>Weighed apart: %1 net; together: %2 net</source>
        <translation>Pesées séparément&#xa0;: %1 net&#xa0;; ensemble&#xa0;: %2 net</translation>
    </message>
    <message>
        <source>No other piece of this batch is at the same stage: there is none to weigh it with.</source>
        <translation>Aucune autre pièce de ce lot n’en est au même stade&#xa0;: il n’y en a pas à peser avec elle.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixLines</name>
    <message>
        <source>Ingredient</source>
        <translation>Ingrédient</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Compté</translation>
    </message>
    <message>
        <source>On the label</source>
        <translation>Étiquette</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Fixe</translation>
    </message>
    <message>
        <source>Ingredient of line %1</source>
        <translation>Ingrédient de la ligne %1</translation>
    </message>
    <message>
        <source>Amount of line %1</source>
        <translation>Quantité de la ligne %1</translation>
    </message>
    <message>
        <source>2.5 %, 40 g, 100 mL</source>
        <translation>2,5&#xa0;%, 40&#xa0;g, 100&#xa0;mL</translation>
    </message>
    <message>
        <source>What line %1 is a share of</source>
        <translation>De quoi la ligne %1 est une part</translation>
    </message>
    <message>
        <source>What the label of line %1 says</source>
        <translation>Ce que dit l’étiquette de la ligne %1</translation>
    </message>
    <message>
        <source>Hold line %1 as it is</source>
        <translation>Maintenir la ligne %1 telle quelle</translation>
    </message>
    <message>
        <source>Take line %1 out</source>
        <translation>Retirer la ligne %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixOwnDialog</name>
    <message>
        <source>An ingredient of my own</source>
        <translation>Un ingrédient personnel</translation>
    </message>
    <message>
        <source>Enter what the label says; divide the figures with semicolons. Words: nitrite, nitrate, salt, sodium, sugar, alcohol, acid, water, density (g to the mL).</source>
        <translation>Saisissez ce que dit l’étiquette&#xa0;; séparez les valeurs par des points-virgules. Mots&#xa0;: nitrite, nitrate, salt, sodium, sugar, alcohol, acid, water, density (g par mL).</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>Sauce</source>
        <translation>Sauce</translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation>Sel nitrité</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sel</translation>
    </message>
    <message>
        <source>Sugar or syrup</source>
        <translation>Sucre ou sirop</translation>
    </message>
    <message>
        <source>Spirit</source>
        <translation>Alcool fort</translation>
    </message>
    <message>
        <source>Wine</source>
        <translation>Vin</translation>
    </message>
    <message>
        <source>Vinegar</source>
        <translation>Vinaigre</translation>
    </message>
    <message>
        <source>Spice or herb</source>
        <translation>Épice ou herbe</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
    <message>
        <source>What its label says</source>
        <translation>Ce que dit son étiquette</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Genre</translation>
    </message>
    <message>
        <source>On the &amp;label</source>
        <translation>Sur l’éti&amp;quette</translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation>&amp;Ajouter</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>Donnez-lui un nom.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixPage</name>
    <message>
        <source>Mix bench</source>
        <translation>Poste de mélange</translation>
    </message>
    <message>
        <source>The meat and the recipe</source>
        <translation>La viande et la recette</translation>
    </message>
    <message>
        <source>Weight of the meat</source>
        <translation>Poids de la viande</translation>
    </message>
    <message>
        <source>1500 g; several pieces: 820 g; 1180 g</source>
        <translation>1500&#xa0;g&#xa0;; plusieurs pièces&#xa0;: 820&#xa0;g; 1180&#xa0;g</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Recette</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Version</translation>
    </message>
    <message>
        <source>Name of the recipe</source>
        <translation>Nom de la recette</translation>
    </message>
    <message>
        <source>&amp;Weight of the meat</source>
        <translation>&amp;Poids de la viande</translation>
    </message>
    <message>
        <source>&amp;Recipe</source>
        <translation>&amp;Recette</translation>
    </message>
    <message>
        <source>&amp;Version</source>
        <translation>&amp;Version</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Add a line</source>
        <translation>&amp;Ajouter une ligne</translation>
    </message>
    <message>
        <source>&amp;Ingredient of my own...</source>
        <translation>&amp;Ingrédient personnel...</translation>
    </message>
    <message>
        <source>How, and against which limits</source>
        <translation>Comment, et face à quelles limites</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>aucune choisie</translation>
    </message>
    <message>
        <source>The scale shows steps of</source>
        <translation>Échelon affiché par la balance</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1&#xa0;g</translation>
    </message>
    <message>
        <source>Pickle taken up</source>
        <translation>Saumure absorbée</translation>
    </message>
    <message>
        <source>10 % of the meat</source>
        <translation>10&#xa0;% de la viande</translation>
    </message>
    <message>
        <source>Pickle taken &amp;up</source>
        <translation>Saumure a&amp;bsorbée</translation>
    </message>
    <message>
        <source>Expected loss of weight</source>
        <translation>Perte de poids attendue</translation>
    </message>
    <message>
        <source>35 %, for limits on finished meat</source>
        <translation>35&#xa0;%, pour les limites sur viande finie</translation>
    </message>
    <message>
        <source>S&amp;kin on</source>
        <translation>Avec cou&amp;enne</translation>
    </message>
    <message>
        <source>Skin on</source>
        <translation>Avec couenne</translation>
    </message>
    <message>
        <source>&amp;Fatty cut (belly, jowl)</source>
        <translation>Morceau gras (poitrine, &amp;joue)</translation>
    </message>
    <message>
        <source>Fatty cut (belly, jowl)</source>
        <translation>Morceau gras (poitrine, joue)</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>&amp;Méthode</translation>
    </message>
    <message>
        <source>&amp;Limits</source>
        <translation>&amp;Limites</translation>
    </message>
    <message>
        <source>&amp;Scale step</source>
        <translation>Éc&amp;helon de la balance</translation>
    </message>
    <message>
        <source>Expected l&amp;oss</source>
        <translation>Perte at&amp;tendue</translation>
    </message>
    <message>
        <source>Find the amounts</source>
        <translation>Trouver les quantités</translation>
    </message>
    <message>
        <source>Tick Hold on the lines that must stay, say what you want, and the other lines are found. What cannot be met is named.</source>
        <translation>Cochez Fixe sur les lignes qui doivent rester, dites ce que vous voulez, et les autres lignes sont trouvées. Ce qui ne peut être satisfait est nommé.</translation>
    </message>
    <message>
        <source>Salt wanted, of the meat</source>
        <translation>Sel voulu, sur la viande</translation>
    </message>
    <message>
        <source>2.75 %</source>
        <translation>2,75&#xa0;%</translation>
    </message>
    <message>
        <source>Nitrite wanted, of the meat</source>
        <translation>Nitrite voulu, sur la viande</translation>
    </message>
    <message>
        <source>120 ppm</source>
        <translation>120&#xa0;ppm</translation>
    </message>
    <message>
        <source>Salt wan&amp;ted</source>
        <translation>&amp;Sel voulu</translation>
    </message>
    <message>
        <source>Nitrite wante&amp;d</source>
        <translation>Nitrite vo&amp;ulu</translation>
    </message>
    <message>
        <source>&amp;Find the rest</source>
        <translation>&amp;Déterminer le reste</translation>
    </message>
    <message>
        <source>Put on the scale</source>
        <translation>À mettre sur la balance</translation>
    </message>
    <message>
        <source>What to put on the scale</source>
        <translation>Ce qu’il faut mettre sur la balance</translation>
    </message>
    <message>
        <source>What that is</source>
        <translation>Ce que cela donne</translation>
    </message>
    <message>
        <source>Compare with another recipe</source>
        <translation>Comparer avec une autre recette</translation>
    </message>
    <message>
        <source>&amp;Compare with</source>
        <translation>&amp;Comparer avec</translation>
    </message>
    <message>
        <source>What the meat gets</source>
        <translation>Ce que reçoit la viande</translation>
    </message>
    <message>
        <source>Against the limits</source>
        <translation>Face aux limites</translation>
    </message>
    <message>
        <source>The dose against the limits</source>
        <translation>La dose face aux limites</translation>
    </message>
    <message>
        <source>Look at this first</source>
        <translation>À regarder d’abord</translation>
    </message>
    <message>
        <source>Why this version</source>
        <translation>Pourquoi cette version</translation>
    </message>
    <message>
        <source>what changed, for your later self</source>
        <translation>ce qui a changé, pour vous plus tard</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>P&amp;ourquoi</translation>
    </message>
    <message>
        <source>&amp;Keep this recipe</source>
        <translation>&amp;Garder cette recette</translation>
    </message>
    <message>
        <source>These sums are no verdict on the food. Local codes, licensed practice and laboratory measurement come first.</source>
        <translation>Ces calculs ne sont pas un verdict sur l’aliment. La réglementation locale, la pratique agréée et la mesure en laboratoire passent d’abord.</translation>
    </message>
    <message>
        <source>What to weigh for this meat, and what dose that really is</source>
        <translation>Que peser pour cette viande, et quelle dose cela fait vraiment</translation>
    </message>
    <message>
        <source>a new one</source>
        <translation>une nouvelle</translation>
    </message>
    <message>
        <source>no other</source>
        <translation>aucune autre</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1, version %2</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>version %1</translation>
    </message>
    <message>
        <source>version %1: %2</source>
        <translation>version %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Enter the weight of the meat, and here stands what to weigh for it.</source>
        <translation>Saisissez le poids de la viande, et ici s’affiche ce qu’il faut peser.</translation>
    </message>
    <message>
        <source>Read, and taken on</source>
        <translation>Lue, et assumée</translation>
    </message>
    <message>
        <source>Caution read and taken on: %1</source>
        <translation>Mise en garde lue et assumée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Stopped. To mend before this can be used: %1.</source>
        <translation>Bloqué. À corriger avant tout emploi&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Cautions to read and take on by name: %1.</source>
        <translation>Mises en garde à lire et à assumer nommément&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Nothing stands open.</source>
        <translation>Rien n’est en suspens.</translation>
    </message>
    <message>
        <source>Enter the weight of the meat first.</source>
        <translation>Saisissez d’abord le poids de la viande.</translation>
    </message>
    <message>
        <source>Say how much salt or nitrite you want.</source>
        <translation>Dites combien de sel ou de nitrite vous voulez.</translation>
    </message>
    <message>
        <source>Mend the stops first: something is not known yet.</source>
        <translation>Corrigez d’abord les points bloquants&#xa0;: quelque chose n’est pas encore connu.</translation>
    </message>
    <message>
        <source>Found: the lines not held were changed.</source>
        <translation>Trouvé&#xa0;: les lignes non fixes ont été modifiées.</translation>
    </message>
    <message>
        <source>Give the recipe a name first.</source>
        <translation>Donnez d’abord un nom à la recette.</translation>
    </message>
    <message>
        <source>Nothing has changed since the last version.</source>
        <translation>Rien n’a changé depuis la dernière version.</translation>
    </message>
    <message>
        <source>Use it for a &amp;batch…</source>
        <translation>A&amp;ffecter à un lot…</translation>
    </message>
    <message>
        <source>The salt of this recipe cannot be changed by itself: it is held, or comes with the curing salt or a pickle. Say it as a wish and find the rest.</source>
        <translation>Le sel de cette recette ne peut pas être changé seul&#xa0;: il est fixe, ou vient avec le sel nitrité ou une saumure. Indiquez-le comme souhait et déterminez le reste.</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>Feuille de mélange</translation>
    </message>
    <message>
        <source>Read the cautions and take each of them on first.</source>
        <translation>Lisez d’abord les mises en garde et assumez chacune d’elles.</translation>
    </message>
    <message>
        <source>The batch&apos;s record names this recipe and the cautions now.</source>
        <translation>Le dossier du lot nomme maintenant cette recette et les mises en garde.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixUseDialog</name>
    <message>
        <source>Use %1 for a batch</source>
        <translation>Affecter %1 à un lot</translation>
    </message>
    <message>
        <source>The batch&apos;s record then names this version as the recipe it was salted with, and prints each caution with who took it on and when.</source>
        <translation>Le dossier du lot nomme alors cette version comme la recette de son salage, et imprime chaque mise en garde avec qui l’a assumée et quand.</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Taken on by</source>
        <translation>Assumées par</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>&amp;Batch</source>
        <translation>&amp;Lot</translation>
    </message>
    <message>
        <source>&amp;Taken on by</source>
        <translation>&amp;Assumées par</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>P&amp;ourquoi</translation>
    </message>
    <message numerus="yes">
        <source>%n caution(s) taken on</source>
        <translation>
            <numerusform>%n mise en garde assumée</numerusform>
            <numerusform>%n mises en garde assumées</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Put it in the book</source>
        <translation>&amp;Inscrire au registre</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first; this recipe is kept meanwhile.</source>
        <translation>Il n’y a pas encore de lot ouvert. Commencez-en un d’abord&#xa0;; cette recette est gardée entre-temps.</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first.</source>
        <translation>Il n’y a pas encore de lot ouvert. Commencez-en un d’abord.</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>Dites qui assume les mises en garde&#xa0;: choisissez ou tapez le nom.</translation>
    </message>
</context>
<context>
    <name>ui::pages::MonthView</name>
    <message>
        <source>%1 more</source>
        <translation>%1 de plus</translation>
    </message>
</context>
<context>
    <name>ui::pages::NewBatchPage</name>
    <message>
        <source>New batch</source>
        <translation>Nouveau lot</translation>
    </message>
    <message>
        <source>The meat</source>
        <translation>La viande</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>Code du lot</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>Lot du fournisseur</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Commencé</translation>
    </message>
    <message>
        <source>Batch &amp;code</source>
        <translation>Co&amp;de du lot</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Produit</translation>
    </message>
    <message>
        <source>&amp;Started</source>
        <translation>Co&amp;mmencé</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animal</translation>
    </message>
    <message>
        <source>S&amp;upplier</source>
        <translation>&amp;Fournisseur</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>&amp;Lot du fournisseur</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>Les pièces</translation>
    </message>
    <message>
        <source>Raw weight as it goes into the cure, without wrapping. Measure the thickness at the thickest point.</source>
        <translation>Poids frais à l’entrée au sel, sans emballage. Mesurez l’épaisseur à l’endroit le plus épais.</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>Une pièce de pl&amp;us</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>Une pièce de mo&amp;ins</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Perte visée</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Comptée depuis</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>no plan</source>
        <translation>pas de plan</translation>
    </message>
    <message>
        <source>Loss aimed f&amp;or</source>
        <translation>Perte &amp;visée</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>Compté&amp;e depuis</translation>
    </message>
    <message>
        <source>Pl&amp;an</source>
        <translation>Pl&amp;an</translation>
    </message>
    <message>
        <source>The cure: dry, weighed, all of it taken up</source>
        <translation>Le salage&#xa0;: à sec, pesé, tout absorbé</translation>
    </message>
    <message>
        <source>Shares are of the raw weight. Curing salt counts by the strength on its packet, not by its name or colour.</source>
        <translation>Les parts sont sur le poids frais. Le sel nitrité compte selon la teneur de son paquet, non selon son nom ou sa couleur.</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sel</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Sucre</translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation>Sel nitrité</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>Curing salt, dose</source>
        <translation>Sel nitrité, dose</translation>
    </message>
    <message>
        <source>Nitrite on the label</source>
        <translation>Nitrite sur l’étiquette</translation>
    </message>
    <message>
        <source>as listed</source>
        <translation>comme répertorié</translation>
    </message>
    <message>
        <source>Nitrate on the label</source>
        <translation>Nitrate sur l’étiquette</translation>
    </message>
    <message>
        <source>Sal&amp;t</source>
        <translation>&amp;Sel</translation>
    </message>
    <message>
        <source>Su&amp;gar</source>
        <translation>Suc&amp;re</translation>
    </message>
    <message>
        <source>Weighed &amp;on</source>
        <translation>Pesé sur (&amp;balance)</translation>
    </message>
    <message>
        <source>&amp;Dose of it</source>
        <translation>Sa d&amp;ose</translation>
    </message>
    <message>
        <source>N&amp;itrite on the label</source>
        <translation>Nitri&amp;te sur l’étiquette</translation>
    </message>
    <message>
        <source>Nitrat&amp;e on the label</source>
        <translation>Nitrate sur l’éti&amp;quette</translation>
    </message>
    <message>
        <source>Mix sheet: what to weigh for each piece</source>
        <translation>Feuille de mélange&#xa0;: que peser pour chaque pièce</translation>
    </message>
    <message>
        <source>Start the &amp;batch</source>
        <translation>&amp;Commencer le lot</translation>
    </message>
    <message>
        <source>Code of piece %1</source>
        <translation>Code de la pièce %1</translation>
    </message>
    <message>
        <source>Cut of piece %1</source>
        <translation>Morceau de la pièce %1</translation>
    </message>
    <message>
        <source>Raw weight of piece %1</source>
        <translation>Poids frais de la pièce %1</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>Épaisseur de la pièce %1</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>Forme de la pièce %1</translation>
    </message>
    <message>
        <source>code</source>
        <translation>code</translation>
    </message>
    <message>
        <source>cut or description</source>
        <translation>morceau ou description</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>poids frais</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>épaisseur</translation>
    </message>
    <message>
        <source>Meat, pieces, cure and plan of a new batch</source>
        <translation>Viande, pièces, salage et plan d’un nouveau lot</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Without a plan there are no dated tasks; weighings and forecasts work all the same.</source>
        <translation>Sans plan, il n’y a pas de tâches datées&#xa0;; les pesées et les prévisions marchent tout de même.</translation>
    </message>
    <message>
        <source>Enter a raw weight to see what to put on the scale.</source>
        <translation>Saisissez un poids frais pour voir quoi mettre sur la balance.</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>À peser</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Tout ensemble</translation>
    </message>
    <message>
        <source>Off by the scale&apos;s step</source>
        <translation>Erreur due à l’échelon de la balance</translation>
    </message>
    <message>
        <source>up to ± %1</source>
        <translation>jusqu’à ± %1</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>Viande&#xa0;: %1</translation>
    </message>
    <message>
        <source>salt in all: %1 of the meat</source>
        <translation>sel en tout&#xa0;: %1 de la viande</translation>
    </message>
    <message>
        <source>nitrite going in: %1 (as sodium nitrite)</source>
        <translation>nitrite ajouté&#xa0;: %1 (en nitrite de sodium)</translation>
    </message>
    <message>
        <source>nitrate going in: %1 (as sodium nitrate)</source>
        <translation>nitrate ajouté&#xa0;: %1 (en nitrate de sodium)</translation>
    </message>
    <message>
        <source>Within %1, by %2.</source>
        <translation>Dans la limite de %1, selon %2.</translation>
    </message>
    <message>
        <source>Not to be computed from the recipe: %1.</source>
        <translation>Non calculable à partir de la recette&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No limits are chosen; choose those of your country in Preferences.</source>
        <translation>Aucune limite n’est choisie&#xa0;; choisissez celles de votre pays dans les Préférences.</translation>
    </message>
    <message>
        <source>A field needs mending; it says how.</source>
        <translation>Un champ est à corriger&#xa0;; il dit comment.</translation>
    </message>
    <message>
        <source>The cure has a stop above. Mend it first.</source>
        <translation>Un point bloquant est signalé ci-dessus pour le salage. Corrigez-le d’abord.</translation>
    </message>
    <message numerus="yes">
        <source>%n stage(s), from %1 to about %2.</source>
        <translation>
            <numerusform>%n étape, du %1 au %2 environ.</numerusform>
            <numerusform>%n étapes, du %1 au %2 environ.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::NoteDialog</name>
    <message>
        <source>Add a note</source>
        <translation>Ajouter une note</translation>
    </message>
    <message>
        <source>About</source>
        <translation>À propos de</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation>À &amp;propos de</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>Add a &amp;photo…</source>
        <translation>Ajouter une p&amp;hoto…</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Ajouter une photo</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Images (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>This photo cannot be read or is larger than 12 MB. Choose a smaller copy.</source>
        <translation>Cette photo est illisible ou dépasse 12&#xa0;Mo. Choisissez une copie plus petite.</translation>
    </message>
    <message>
        <source>Write a few words or add a photo.</source>
        <translation>Écrivez quelques mots ou ajoutez une photo.</translation>
    </message>
    <message>
        <source>%1 is not a picture that can be shown. Choose a JPEG or PNG file.</source>
        <translation>%1 n’est pas une image affichable. Choisissez un fichier JPEG ou PNG.</translation>
    </message>
</context>
<context>
    <name>ui::pages::OpenTroubleDialog</name>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>&amp;Restaurer une sauvegarde…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in its place; the file as it is now is kept under another name.</source>
        <translation>Met une copie antérieure à sa place&#xa0;; le fichier actuel est gardé sous un autre nom.</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>Récu&amp;pérer dans un nouveau registre…</translation>
    </message>
    <message>
        <source>Carries every entry that can still be read into a new book; this one is not changed.</source>
        <translation>Reporte chaque entrée encore lisible dans un nouveau registre&#xa0;; celui-ci n’est pas modifié.</translation>
    </message>
    <message>
        <source>&amp;Open another book…</source>
        <translation>&amp;Ouvrir un autre registre…</translation>
    </message>
    <message>
        <source>Leaves this file as it is.</source>
        <translation>Laisse ce fichier tel quel.</translation>
    </message>
    <message>
        <source>Make a &amp;new book…</source>
        <translation>Créer un &amp;nouveau registre…</translation>
    </message>
    <message>
        <source>Starts an empty book in another file.</source>
        <translation>Commence un registre vide dans un autre fichier.</translation>
    </message>
    <message>
        <source>The book did not open</source>
        <translation>Le registre ne s’est pas ouvert</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
</context>
<context>
    <name>ui::pages::OutcomeDialog</name>
    <message>
        <source>not said</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>How %1 came out</source>
        <translation>Résultat de %1</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sel</translation>
    </message>
    <message>
        <source>Texture</source>
        <translation>Texture</translation>
    </message>
    <message>
        <source>What to change next time</source>
        <translation>Que changer la prochaine fois</translation>
    </message>
    <message>
        <source>&amp;Salt</source>
        <translation>&amp;Sel</translation>
    </message>
    <message>
        <source>&amp;Texture</source>
        <translation>&amp;Texture</translation>
    </message>
    <message>
        <source>&amp;What to change next time</source>
        <translation>&amp;Que changer la prochaine fois</translation>
    </message>
    <message>
        <source>The next plan, mix and batch of this product show what this suggests. Nothing is changed unless you say so.</source>
        <translation>Le prochain plan, le prochain mélange et le prochain lot de ce produit montrent ce que cela suggère. Rien n’est modifié sans votre accord.</translation>
    </message>
    <message>
        <source>Say how it came out, or write a few words.</source>
        <translation>Dites quel est le résultat, ou écrivez quelques mots.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackChangeDialog</name>
    <message>
        <source>Change pack %1</source>
        <translation>Modifier le paquet %1</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>Code sur le paquet</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Où il se trouve</translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation>Ouvert le</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>&amp;Code sur le paquet</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>Où il se &amp;trouve</translation>
    </message>
    <message>
        <source>&amp;Opened on</source>
        <translation>&amp;Ouvert le</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>&amp;Garder jusqu’au</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>Co&amp;mment</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>&amp;Règle de conservation</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>Pourquo&amp;i ce jour</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackDialog</name>
    <message>
        <source>Pack a finished piece</source>
        <translation>Conditionner une pièce finie</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>Code sur le paquet</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>Packed on</source>
        <translation>Conditionné le</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Où il se trouve</translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation>&amp;Pièce</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>&amp;Code sur le paquet</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>Co&amp;mment</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>Poi&amp;ds</translation>
    </message>
    <message>
        <source>Packed &amp;on</source>
        <translation>Co&amp;nditionné le</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>Où il se &amp;trouve</translation>
    </message>
    <message>
        <source>No piece is finished yet. Sign a piece as done in its review first.</source>
        <translation>Aucune pièce n’est encore finie. Signez d’abord une pièce comme finie dans son examen.</translation>
    </message>
    <message>
        <source>This day is your own. Say why in a few words, or choose a rule.</source>
        <translation>Ce jour est de votre choix. Dites pourquoi en quelques mots, ou choisissez une règle.</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>&amp;Règle de conservation</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>&amp;Garder jusqu’au</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>Pourquo&amp;i ce jour</translation>
    </message>
    <message>
        <source>Such a day says when to look, not what to think of it. Look, smell and decide at each opening.</source>
        <translation>Un tel jour dit quand regarder, pas qu’en penser. Regardez, sentez et décidez à chaque ouverture.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PastBox</name>
    <message>
        <source>Take it back</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Appliquer</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Retirer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Use it: %1</source>
        <translation>Appliquer&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::PersonBox</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>choose or type a name</source>
        <translation>choisissez ou tapez un nom</translation>
    </message>
</context>
<context>
    <name>ui::pages::PersonDialog</name>
    <message>
        <source>Change a person</source>
        <translation>Modifier une personne</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Ajouter une personne</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Initiales</translation>
    </message>
    <message>
        <source>&amp;Works here now</source>
        <translation>&amp;Travaille ici actuellement</translation>
    </message>
    <message>
        <source>Works here now</source>
        <translation>Travaille ici actuellement</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Initials, as signed</source>
        <translation>&amp;Initiales, pour la signature</translation>
    </message>
    <message>
        <source>Enter a name and the initials to sign with.</source>
        <translation>Saisissez un nom et les initiales de signature.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoDialog</name>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>&amp;Previous</source>
        <translation>&amp;Précédente</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Suivante</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>&amp;Enregistrer une copie…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>%1 of %2 · %3 · %4 · %5</source>
        <translation>%1 sur %2 · %3 · %4 · %5</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Photo %1</translation>
    </message>
    <message>
        <source>Save a copy of the photo</source>
        <translation>Enregistrer une copie de la photo</translation>
    </message>
    <message>
        <source>The copy is in %1.</source>
        <translation>La copie est dans %1.</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>%1 n’a pas pu être écrit. Choisissez un autre endroit.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoStrip</name>
    <message>
        <source>The photo %1 cannot be shown: it is damaged, or of a kind that cannot be read here. Save a copy to try it elsewhere.</source>
        <translation>La photo %1 ne peut pas être affichée&#xa0;: elle est endommagée, ou d’un type illisible ici. Enregistrez une copie pour l’essayer ailleurs.</translation>
    </message>
    <message>
        <source>The photo %1 is no longer in the book. The note itself is kept.</source>
        <translation>La photo %1 n’est plus dans le registre. La note elle-même est gardée.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>%1: not readable</source>
        <translation>%1&#xa0;: illisible</translation>
    </message>
    <message>
        <source>Photo of %1, %2</source>
        <translation>Photo de %1, %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::PieceDialog</name>
    <message>
        <source>Chamber</source>
        <translation>Chambre</translation>
    </message>
    <message>
        <source>not in a chamber</source>
        <translation>dans aucune chambre</translation>
    </message>
    <message>
        <source>Add a piece</source>
        <translation>Ajouter une pièce</translation>
    </message>
    <message>
        <source>Change piece %1</source>
        <translation>Modifier la pièce %1</translation>
    </message>
    <message>
        <source>Code on the tag</source>
        <translation>Code sur l’étiquette</translation>
    </message>
    <message>
        <source>&amp;Code on the tag</source>
        <translation>&amp;Code sur l’étiquette</translation>
    </message>
    <message>
        <source>Cut or description</source>
        <translation>Morceau ou description</translation>
    </message>
    <message>
        <source>C&amp;ut or description</source>
        <translation>&amp;Morceau ou description</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>&amp;Forme</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>Épaiss&amp;eur</translation>
    </message>
    <message>
        <source>Raw weight</source>
        <translation>Poids frais</translation>
    </message>
    <message>
        <source>&amp;Raw weight</source>
        <translation>&amp;Poids frais</translation>
    </message>
    <message>
        <source>Fat, as a share of the raw piece</source>
        <translation>Gras, comme part de la pièce fraîche</translation>
    </message>
    <message>
        <source>&amp;Fat share, if known</source>
        <translation>Part de &amp;gras, si connue</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Couenne</translation>
    </message>
    <message>
        <source>S&amp;kin</source>
        <translation>Co&amp;uenne</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Perte visée</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>Perte vi&amp;sée</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Comptée depuis</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>Comptée &amp;depuis</translation>
    </message>
    <message>
        <source>Cha&amp;mber</source>
        <translation>Cham&amp;bre</translation>
    </message>
    <message>
        <source>Hook, rail or shelf</source>
        <translation>Crochet, barre ou étagère</translation>
    </message>
    <message>
        <source>&amp;Hook, rail or shelf</source>
        <translation>Croc&amp;het, barre ou étagère</translation>
    </message>
    <message>
        <source>Order in the weigh-in round</source>
        <translation>Rang dans la tournée de pesée</translation>
    </message>
    <message>
        <source>&amp;Order in the round</source>
        <translation>&amp;Rang dans la tournée</translation>
    </message>
    <message>
        <source>Give the piece a code: two or three letters or digits.</source>
        <translation>Donnez un code à la pièce&#xa0;: deux ou trois lettres ou chiffres.</translation>
    </message>
</context>
<context>
    <name>ui::pages::PiecePage</name>
    <message>
        <source>Piece</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Modifier…</translation>
    </message>
    <message>
        <source>What &amp;happened</source>
        <translation>Évé&amp;nement</translation>
    </message>
    <message>
        <source>What happened to it</source>
        <translation>Ce qui lui est arrivé</translation>
    </message>
    <message>
        <source>Is it &amp;done?</source>
        <translation>Est-elle &amp;finie&#xa0;?</translation>
    </message>
    <message>
        <source>&amp;Weigh…</source>
        <translation>&amp;Peser…</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Ce que montre le graphique</translation>
    </message>
    <message>
        <source>net weight</source>
        <translation>poids net</translation>
    </message>
    <message>
        <source>Time axis</source>
        <translation>Axe du temps</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>par date</translation>
    </message>
    <message>
        <source>by days since hung</source>
        <translation>par jours depuis l’accrochage</translation>
    </message>
    <message>
        <source>Show a&amp;ll</source>
        <translation>&amp;Tout montrer</translation>
    </message>
    <message>
        <source>Save the c&amp;hart…</source>
        <translation>En&amp;registrer le graphique…</translation>
    </message>
    <message>
        <source>Records of the piece</source>
        <translation>Enregistrements de la pièce</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesées</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Événements</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Pieces cut from one another</source>
        <translation>Pièces découpées l’une de l’autre</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Famille</translation>
    </message>
    <message>
        <source>One piece in full</source>
        <translation>Une pièce en entier</translation>
    </message>
    <message>
        <source>Enter corrects the marked weighing; the old entry stays.</source>
        <translation>Entrée corrige la pesée marquée&#xa0;; l’ancienne entrée reste.</translation>
    </message>
    <message>
        <source>C&amp;orrect…</source>
        <translation>&amp;Corriger…</translation>
    </message>
    <message>
        <source>Take &amp;back…</source>
        <translation>Ret&amp;irer…</translation>
    </message>
    <message>
        <source>Add a &amp;note…</source>
        <translation>&amp;Ajouter une note…</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Ce qu’elle porte</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Sur la balance</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tare</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Net</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perte</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>surface mouillée</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>Net avant</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>Net après</translation>
    </message>
    <message>
        <source>Tare after</source>
        <translation>Tare après</translation>
    </message>
    <message>
        <source>taken back. %1</source>
        <translation>retiré. %1</translation>
    </message>
    <message>
        <source>About</source>
        <translation>À propos de</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>batch %1, %2</source>
        <translation>lot %1, %2</translation>
    </message>
    <message>
        <source>Loss curve of %1</source>
        <translation>Courbe de perte de %1</translation>
    </message>
    <message>
        <source>lost of the %1 (%2)</source>
        <translation>perdu sur le %1 (%2)</translation>
    </message>
    <message>
        <source>No weight to count a loss from yet.</source>
        <translation>Pas encore de poids à partir duquel compter une perte.</translation>
    </message>
    <message>
        <source>Target %1: %2 net, %3 on the scale</source>
        <translation>Cible %1&#xa0;: %2 net, %3 sur la balance</translation>
    </message>
    <message>
        <source>No target set.</source>
        <translation>Aucune cible fixée.</translation>
    </message>
    <message>
        <source>At target: %1</source>
        <translation>À la cible&#xa0;: %1</translation>
    </message>
    <message>
        <source>Levels off at %1 to %2</source>
        <translation>Se stabilise entre %1 et %2</translation>
    </message>
    <message>
        <source>Signed as done.</source>
        <translation>Signée comme finie.</translation>
    </message>
    <message>
        <source>%1 of the %2</source>
        <translation>%1 sur le %2</translation>
    </message>
    <message>
        <source>Lost: %1</source>
        <translation>Perte&#xa0;: %1</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>retirée</translation>
    </message>
    <message>
        <source>corrected later</source>
        <translation>corrigée ensuite</translation>
    </message>
    <message>
        <source>a correction</source>
        <translation>une correction</translation>
    </message>
    <message>
        <source>Weighings (%1)</source>
        <translation>Pesées (%1)</translation>
    </message>
    <message>
        <source>Events (%1)</source>
        <translation>Événements (%1)</translation>
    </message>
    <message>
        <source>Notes (%1)</source>
        <translation>Notes (%1)</translation>
    </message>
    <message>
        <source>Family (%1)</source>
        <translation>Famille (%1)</translation>
    </message>
    <message>
        <source>This entry was corrected or taken back already; correct the newer one.</source>
        <translation>Cette entrée a déjà été corrigée ou retirée&#xa0;; corrigez la plus récente.</translation>
    </message>
    <message>
        <source>%1: %2 on the scale</source>
        <translation>%1&#xa0;: %2 sur la balance</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Enregistrer le graphique</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
        <translation>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</translation>
    </message>
    <message>
        <source>The chart is in %1.</source>
        <translation>Le graphique est dans %1.</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>%1 n’a pas pu être écrit. Choisissez un autre endroit.</translation>
    </message>
    <message>
        <source>What &amp;if…</source>
        <translation>&amp;Et si…</translation>
    </message>
    <message>
        <source>finish it in warm air…</source>
        <translation>la finir à l’air chaud…</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven: how long, and how long where microbes grow.</source>
        <translation>Un déshydrateur ou un four doux&#xa0;: combien de temps, et combien là où les microbes se développent.</translation>
    </message>
    <message>
        <source>a weight is lost…</source>
        <translation>un poids manque…</translation>
    </message>
    <message>
        <source>A start weight was never written down: what its siblings say it was.</source>
        <translation>Un poids de départ n’a jamais été noté&#xa0;: ce qu’en disent les autres pièces du lot.</translation>
    </message>
    <message>
        <source>the fridge or chamber failed…</source>
        <translation>panne du réfrigérateur ou de la chambre…</translation>
    </message>
    <message>
        <source>Power cut, door left open: what each piece there was like, and how warm it became.</source>
        <translation>Coupure de courant, porte restée ouverte&#xa0;: comment était chaque pièce sur place, et jusqu’où elle s’est réchauffée.</translation>
    </message>
    <message>
        <source>Pieces on the chart</source>
        <translation>Pièces sur le graphique</translation>
    </message>
    <message>
        <source>&amp;Earlier pieces</source>
        <translation>Pièces antérieure&amp;s</translation>
    </message>
    <message>
        <source>Own earlier pieces for comparison</source>
        <translation>Propres pièces antérieures pour comparaison</translation>
    </message>
    <message>
        <source>this piece alone</source>
        <translation>cette pièce seule</translation>
    </message>
    <message>
        <source>with its batch</source>
        <translation>avec son lot</translation>
    </message>
    <message>
        <source>with its chamber</source>
        <translation>avec sa chambre</translation>
    </message>
    <message>
        <source>with its product</source>
        <translation>avec son produit</translation>
    </message>
    <message>
        <source>with chosen pieces…</source>
        <translation>avec des pièces choisies…</translation>
    </message>
    <message>
        <source>Your own finished pieces of the same product and shape, as if hung on the same day</source>
        <translation>Vos propres pièces finies de même produit et de même forme, comme accrochées le même jour</translation>
    </message>
    <message>
        <source>No piece of the same product and shape was finished yet.</source>
        <translation>Aucune pièce de même produit et de même forme n’a encore été finie.</translation>
    </message>
    <message>
        <source>loss from the %1</source>
        <translation>perte sur le %1</translation>
    </message>
    <message>
        <source>Loss curves of %1 and others</source>
        <translation>Courbes de perte de %1 et d’autres</translation>
    </message>
    <message>
        <source>No other such piece was hung and weighed since.</source>
        <translation>Aucune autre pièce de ce genre n’a été accrochée et pesée depuis.</translation>
    </message>
    <message>
        <source>Not drawn, as one chart cannot tell more apart: %1 that hung before.</source>
        <translation>Non tracées, car un même graphique ne peut en distinguer davantage&#xa0;: %1 accrochées auparavant.</translation>
    </message>
    <message>
        <source>Not drawn, as this weight of theirs is not known: %1.</source>
        <translation>Non tracées, car ce poids est inconnu pour elles&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Enter on a note with a photo shows it large.</source>
        <translation>Entrée sur une note avec photo montre celle-ci en grand.</translation>
    </message>
    <message>
        <source>%1 is in no chamber of the book. Choose its chamber under Change first.</source>
        <translation>%1 n’est dans aucune chambre du registre. Choisissez d’abord sa chambre sous Modifier.</translation>
    </message>
    <message>
        <source>This note has no photo.</source>
        <translation>Cette note n’a pas de photo.</translation>
    </message>
    <message numerus="yes">
        <source>Leans on %n of your own finished piece(s) of this product.</source>
        <translation>
            <numerusform>S’appuie sur une de vos propres pièces finies de ce produit.</numerusform>
            <numerusform>S’appuie sur %n de vos propres pièces finies de ce produit.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Sa&amp;ve as calendar file…</source>
        <translation>Enr&amp;egistrer comme fichier calendrier…</translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation>U&amp;tiliser</translation>
    </message>
    <message>
        <source>The stages</source>
        <translation>Les étapes</translation>
    </message>
    <message>
        <source>Stages of the plan</source>
        <translation>Étapes du plan</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Jours</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Durée</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Fondée sur</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Air</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Into the book</source>
        <translation>Au registre</translation>
    </message>
    <message>
        <source>Name of the batch</source>
        <translation>Nom du lot</translation>
    </message>
    <message>
        <source>optional, e.g. Winter coppa</source>
        <translation>facultatif, p.&#xa0;ex. Coppa d’hiver</translation>
    </message>
    <message>
        <source>Name of the &amp;batch</source>
        <translation>Nom du &amp;lot</translation>
    </message>
    <message>
        <source>These weights are &amp;just off the scale</source>
        <translation>Ces poids viennent d’être pe&amp;sés</translation>
    </message>
    <message>
        <source>These weights are just off the scale</source>
        <translation>Ces poids viennent d’être pesés</translation>
    </message>
    <message>
        <source>&amp;Put the batch in the book</source>
        <translation>Inscrire le lot au re&amp;gistre</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>non décidé</translation>
    </message>
    <message>
        <source>Template: %1.</source>
        <translation>Modèle&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Cure rules for the thickest piece, side by side: %1</source>
        <translation>Règles de salage pour la pièce la plus épaisse, côte à côte&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>With “%1”</source>
        <translation>Avec «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>Rounds of “%1”</source>
        <translation>Tours de «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>There is no plan to save: the day cannot be met.</source>
        <translation>Il n’y a pas de plan à enregistrer&#xa0;: le jour ne peut pas être tenu.</translation>
    </message>
    <message>
        <source>When to begin, and what to do when</source>
        <translation>Quand commencer, et quoi faire quand</translation>
    </message>
    <message>
        <source>What it will be</source>
        <translation>Ce que ce sera</translation>
    </message>
    <message>
        <source>Kind of product</source>
        <translation>Genre de produit</translation>
    </message>
    <message>
        <source>Your name for the product</source>
        <translation>Votre nom pour le produit</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>Perte visée</translation>
    </message>
    <message>
        <source>Where it will hang</source>
        <translation>Où cela séchera</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>Ge&amp;nre</translation>
    </message>
    <message>
        <source>Your &amp;name for it</source>
        <translation>Votre n&amp;om</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>Perte &amp;visée</translation>
    </message>
    <message>
        <source>&amp;Hangs in</source>
        <translation>Sèc&amp;he dans</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>Les pièces</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>Une pièce de pl&amp;us</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>Une pièce de mo&amp;ins</translation>
    </message>
    <message>
        <source>Weight of piece %1</source>
        <translation>Poids de la pièce %1</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>Épaisseur de la pièce %1</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>Forme de la pièce %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>&amp;Start on</source>
        <translation>&amp;Commencer le</translation>
    </message>
    <message>
        <source>Start on</source>
        <translation>Commencer le</translation>
    </message>
    <message>
        <source>Be &amp;ready by</source>
        <translation>Êt&amp;re prêt pour le</translation>
    </message>
    <message>
        <source>Be ready by</source>
        <translation>Être prêt pour le</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Keep slac&amp;k for slow pieces</source>
        <translation>Garder une m&amp;arge pour les pièces lentes</translation>
    </message>
    <message>
        <source>Keep slack for slow pieces</source>
        <translation>Garder une marge pour les pièces lentes</translation>
    </message>
    <message>
        <source>Use the proposal: aim for %1</source>
        <translation>Appliquer la proposition&#xa0;: viser %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanStrip</name>
    <message>
        <source>The plan along time</source>
        <translation>Le plan au fil du temps</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::PreferencesPage</name>
    <message>
        <source>Preferences</source>
        <translation>Préférences</translation>
    </message>
    <message>
        <source>This desk</source>
        <translation>Ce poste</translation>
    </message>
    <message>
        <source>Kept on this computer, not in the book. Every field still accepts any unit.</source>
        <translation>Gardé sur cet ordinateur, pas dans le registre. Chaque champ accepte toujours toute unité.</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>grammes</translation>
    </message>
    <message>
        <source>grams and kilograms</source>
        <translation>grammes et kilogrammes</translation>
    </message>
    <message>
        <source>ounces</source>
        <translation>onces</translation>
    </message>
    <message>
        <source>pounds and ounces</source>
        <translation>livres et onces</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Températures</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>degrés Celsius</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation>degrés Fahrenheit</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>millimètres</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pouces</translation>
    </message>
    <message>
        <source>Liquids</source>
        <translation>Liquides</translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation>millilitres</translation>
    </message>
    <message>
        <source>US fluid ounces</source>
        <translation>onces liquides US</translation>
    </message>
    <message>
        <source>as the computer</source>
        <translation>comme l’ordinateur</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Fuseau horaire</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>aucune choisie</translation>
    </message>
    <message>
        <source>Limits to check against</source>
        <translation>Limites de comparaison</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Couleurs</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>comme le bureau</translation>
    </message>
    <message>
        <source>light</source>
        <translation>clair</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>sombre</translation>
    </message>
    <message>
        <source>&amp;Weights</source>
        <translation>&amp;Poids</translation>
    </message>
    <message>
        <source>&amp;Temperatures</source>
        <translation>&amp;Températures</translation>
    </message>
    <message>
        <source>T&amp;hickness</source>
        <translation>Épaiss&amp;eur</translation>
    </message>
    <message>
        <source>Li&amp;quids</source>
        <translation>Li&amp;quides</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Lan&amp;gue</translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation>&amp;Fuseau horaire</translation>
    </message>
    <message>
        <source>&amp;Limits to check against</source>
        <translation>&amp;Limites de comparaison</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Couleurs</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Add a &amp;person…</source>
        <translation>&amp;Ajouter une personne…</translation>
    </message>
    <message>
        <source>Who signs decisions and corrections.</source>
        <translation>Qui signe les décisions et les corrections.</translation>
    </message>
    <message>
        <source>Who works at this desk</source>
        <translation>Qui travaille à ce poste</translation>
    </message>
    <message>
        <source>Who works at this &amp;desk</source>
        <translation>Qui travaille à ce po&amp;ste</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Initiales</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Works here</source>
        <translation>Travaille ici</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Scales</source>
        <translation>Balances</translation>
    </message>
    <message>
        <source>Add a &amp;scale…</source>
        <translation>Ajouter une &amp;balance…</translation>
    </message>
    <message>
        <source>The step is the smallest change the display shows. It decides which doses the scale can weigh and how sure a curve is.</source>
        <translation>L’échelon est la plus petite variation affichée. Il décide des doses que la balance peut peser et de la précision d’une courbe.</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Balance</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Échelon</translation>
    </message>
    <message>
        <source>Check every</source>
        <translation>À contrôler tous les</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>En service</translation>
    </message>
    <message>
        <source>nobody chosen</source>
        <translation>aucune personne choisie</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>So things read: %1, %2, %3, %4.</source>
        <translation>Cela se lit ainsi&#xa0;: %1, %2, %3, %4.</translation>
    </message>
    <message>
        <source>Units, language, limits, people and scales</source>
        <translation>Unités, langue, limites, personnes et balances</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PrintDialog</name>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>Preview of the paper</source>
        <translation>Aperçu du papier</translation>
    </message>
    <message>
        <source>What to print</source>
        <translation>Ce qu’il faut imprimer</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Enregistrer en PDF…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>No printer is set up on this computer; a PDF can be printed elsewhere.</source>
        <translation>Aucune imprimante n’est installée sur cet ordinateur&#xa0;; un PDF peut être imprimé ailleurs.</translation>
    </message>
    <message>
        <source>There is nothing to print.</source>
        <translation>Il n’y a rien à imprimer.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) in %1.</source>
        <translation>
            <numerusform>%n page dans %1.</numerusform>
            <numerusform>%n pages dans %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Enregistrer en PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) sent to the printer.</source>
        <translation>
            <numerusform>%n page envoyée à l’imprimante.</numerusform>
            <numerusform>%n pages envoyées à l’imprimante.</numerusform>
        </translation>
    </message>
    <message>
        <source>The printer took nothing. Try a PDF instead.</source>
        <translation>L’imprimante n’a rien pris. Essayez plutôt un PDF.</translation>
    </message>
</context>
<context>
    <name>ui::pages::RestoreDialog</name>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurer une sauvegarde</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of the book %1. Choose a copy to see what would be lost and what would come back; nothing is changed before you confirm.</source>
        <translation>Met une copie antérieure à la place du registre %1. Choisissez une copie pour voir ce qui serait perdu et ce qui reviendrait&#xa0;; rien n’est modifié avant votre confirmation.</translation>
    </message>
    <message>
        <source>The backup is being read</source>
        <translation>La sauvegarde est en cours de lecture</translation>
    </message>
    <message>
        <source>Another &amp;file…</source>
        <translation>Autre &amp;fichier…</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>&amp;Restore this backup…</source>
        <translation>&amp;Restaurer cette sauvegarde…</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Faite</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Dernière entrée</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Lots</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesées</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>Backups of this book</source>
        <translation>Sauvegardes de ce registre</translation>
    </message>
    <message>
        <source>There is no backup in the folder “backups” beside the book. Choose a copy you keep elsewhere with Another file.</source>
        <translation>Il n’y a pas de sauvegarde dans le dossier «&#xa0;backups&#xa0;» à côté du registre. Choisissez une copie gardée ailleurs avec Autre fichier.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Registres Saltloft (*.saltloft);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Put this backup in the place of the book?</source>
        <translation>Mettre cette sauvegarde à la place du registre&#xa0;?</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurer</translation>
    </message>
</context>
<context>
    <name>ui::pages::ReviewPage</name>
    <message>
        <source>Is it done?</source>
        <translation>Est-elle finie&#xa0;?</translation>
    </message>
    <message>
        <source>To the &amp;piece</source>
        <translation>Vers la &amp;pièce</translation>
    </message>
    <message>
        <source>Evidence, not a verdict. A number says how much water has gone; your hand, nose and eye say the rest. Follow the code where you live and your laboratory.</source>
        <translation>Des indices, pas un verdict. Un chiffre dit combien d’eau est partie&#xa0;; votre main, votre nez et votre œil disent le reste. Suivez la réglementation en vigueur chez vous et votre laboratoire.</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Indices</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Ici</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>En regard</translation>
    </message>
    <message>
        <source>Look, then decide</source>
        <translation>Regarder, puis décider</translation>
    </message>
    <message>
        <source>The centre feels</source>
        <translation>Le cœur est</translation>
    </message>
    <message>
        <source>not felt yet</source>
        <translation>pas encore touché</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>mou</translation>
    </message>
    <message>
        <source>springy</source>
        <translation>souple</translation>
    </message>
    <message>
        <source>firm</source>
        <translation>ferme</translation>
    </message>
    <message>
        <source>The &amp;centre feels</source>
        <translation>Le &amp;cœur est</translation>
    </message>
    <message>
        <source>Add a &amp;note or photo…</source>
        <translation>Ajouter une &amp;note ou une photo…</translation>
    </message>
    <message>
        <source>&amp;Done: it comes down</source>
        <translation>&amp;Finie&#xa0;: elle est décrochée</translation>
    </message>
    <message>
        <source>Not &amp;yet: weigh and look again</source>
        <translation>Pas &amp;encore&#xa0;: peser et revoir</translation>
    </message>
    <message>
        <source>Disc&amp;ard: it is thrown out</source>
        <translation>Écar&amp;ter&#xa0;: elle est jetée</translation>
    </message>
    <message>
        <source>Look again on</source>
        <translation>Revoir le</translation>
    </message>
    <message>
        <source>&amp;Look again on</source>
        <translation>&amp;Revoir le</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>P&amp;ourquoi</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Signé par</translation>
    </message>
    <message>
        <source>Signed &amp;by</source>
        <translation>Signé p&amp;ar</translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation>&amp;Signer</translation>
    </message>
    <message>
        <source>Is %1 done?</source>
        <translation>%1 est-elle finie&#xa0;?</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1&#xa0;: %2. %3</translation>
    </message>
    <message>
        <source>Signed before:
%1</source>
        <translation>Signé auparavant&#xa0;:
%1</translation>
    </message>
    <message>
        <source>Evidence beside each other, and a signed decision</source>
        <translation>Indices côte à côte, et une décision signée</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Add a p&amp;hoto…</source>
        <translation>Ajouter une p&amp;hoto…</translation>
    </message>
    <message>
        <source>No photo of this piece yet. The cut face says more than a number does: take one, and the next batch can be held beside it.</source>
        <translation>Pas encore de photo de cette pièce. La coupe en dit plus qu’un chiffre&#xa0;: prenez-en une, et le prochain lot pourra lui être comparé.</translation>
    </message>
    <message>
        <source>Finish it in warm a&amp;ir…</source>
        <translation>La finir à l’a&amp;ir chaud…</translation>
    </message>
    <message>
        <source>H&amp;ung again: it was down, and dries on</source>
        <translation>Re&amp;mise à sécher après décrochage</translation>
    </message>
    <message>
        <source>Hung again: it was down, and dries on</source>
        <translation>Remise à sécher après décrochage</translation>
    </message>
    <message>
        <source>It goes back to the hanging pieces, and the day sheet asks for its weight again.</source>
        <translation>Elle rejoint les pièces accrochées, et la feuille du jour demande de nouveau son poids.</translation>
    </message>
    <message>
        <source>For a piece that is finished. This one hangs still: sign &quot;not yet&quot;.</source>
        <translation>Pour une pièce finie. Celle-ci est encore accrochée&#xa0;: signez «&#xa0;pas encore&#xa0;».</translation>
    </message>
    <message>
        <source>Choose what becomes of it first.</source>
        <translation>Choisissez d’abord ce qu’elle devient.</translation>
    </message>
    <message>
        <source>Hung again. %1</source>
        <translation>Remise à sécher. %1</translation>
    </message>
    <message>
        <source>Say who signs: choose or type the name.</source>
        <translation>Dites qui signe&#xa0;: choisissez ou tapez le nom.</translation>
    </message>
</context>
<context>
    <name>ui::pages::SalvageDialog</name>
    <message>
        <source>Salvage into a new book</source>
        <translation>Récupérer dans un nouveau registre</translation>
    </message>
    <message>
        <source>Carries every entry of %1 that can still be read into a new book. The damaged book is not changed; keep it until you have looked through the new one.</source>
        <translation>Reporte chaque entrée encore lisible de %1 dans un nouveau registre. Le registre endommagé n’est pas modifié&#xa0;; gardez-le jusqu’à ce que vous ayez parcouru le nouveau.</translation>
    </message>
    <message>
        <source>The book is being carried over</source>
        <translation>Le registre est en cours de report</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>&amp;Salvage</source>
        <translation>&amp;Récupérer</translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation>&amp;Ouvrir le nouveau registre</translation>
    </message>
    <message>
        <source>The new book</source>
        <translation>Le nouveau registre</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>&amp;Choisir…</translation>
    </message>
    <message>
        <source>&amp;New book</source>
        <translation>&amp;Nouveau registre</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Type d’entrée</translation>
    </message>
    <message>
        <source>Carried over</source>
        <translation>Reportées</translation>
    </message>
    <message>
        <source>Known to be lost</source>
        <translation>Pertes connues</translation>
    </message>
    <message>
        <source>What was carried over</source>
        <translation>Ce qui a été reporté</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Nouveau registre</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Registres Saltloft (*.saltloft)</translation>
    </message>
    <message>
        <source>Name the file of the new book.</source>
        <translation>Nommez le fichier du nouveau registre.</translation>
    </message>
    <message>
        <source>%1 is there already and is not replaced. Choose another name.</source>
        <translation>%1 existe déjà et n’est pas remplacé. Choisissez un autre nom.</translation>
    </message>
    <message>
        <source>Nothing could be carried over. %1</source>
        <translation>Rien n’a pu être reporté. %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::ScaleDialog</name>
    <message>
        <source>Change a scale</source>
        <translation>Modifier une balance</translation>
    </message>
    <message>
        <source>Add a scale</source>
        <translation>Ajouter une balance</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Smallest step it shows</source>
        <translation>Plus petit échelon affiché</translation>
    </message>
    <message>
        <source>Check it every so many days</source>
        <translation>Intervalle de contrôle</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>En &amp;service</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>En service</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>Smallest &amp;step it shows</source>
        <translation>Plus petit éc&amp;helon affiché</translation>
    </message>
    <message>
        <source>&amp;Check it every so many days</source>
        <translation>Intervalle de &amp;contrôle</translation>
    </message>
    <message>
        <source>Give the scale a name, such as &quot;bench scale&quot;.</source>
        <translation>Donnez un nom à la balance, par exemple «&#xa0;balance de table&#xa0;».</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorCheckDialog</name>
    <message>
        <source>Check %1</source>
        <translation>Contrôler %1</translation>
    </message>
    <message>
        <source>Checked against</source>
        <translation>Contrôlé avec</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag, 75 % humidity</source>
        <translation>Bouillie de sel en sachet fermé, 75&#xa0;% d’humidité</translation>
    </message>
    <message>
        <source>Day of the check</source>
        <translation>Jour du contrôle</translation>
    </message>
    <message>
        <source>What the sensor said</source>
        <translation>Ce qu’a indiqué le capteur</translation>
    </message>
    <message>
        <source>What you did about it</source>
        <translation>Ce que vous avez fait</translation>
    </message>
    <message>
        <source>Checked &amp;against</source>
        <translation>Contrôlé &amp;avec</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Jour</translation>
    </message>
    <message>
        <source>What the sensor &amp;said</source>
        <translation>Ce qu’a &amp;indiqué le capteur</translation>
    </message>
    <message>
        <source>What you did about &amp;it</source>
        <translation>Ce que vous avez &amp;fait</translation>
    </message>
    <message>
        <source>Salt slurry: table salt just wet, in a closed bag with the sensor for twelve hours or more. Common practice: every six months; ice at least once a year.</source>
        <translation>Bouillie de sel&#xa0;: sel de table à peine mouillé, en sachet fermé avec le capteur pendant douze heures ou plus. Pratique courante&#xa0;: tous les six mois&#xa0;; la glace au moins une fois par an.</translation>
    </message>
    <message>
        <source>It is right.</source>
        <translation>Il est juste.</translation>
    </message>
    <message>
        <source>It is off: add %1 K to its temperature.</source>
        <translation>Il s’écarte&#xa0;: ajouter %1&#xa0;K à sa température.</translation>
    </message>
    <message>
        <source>It is off: add %1 points to its humidity.</source>
        <translation>Il s’écarte&#xa0;: ajouter %1 points à son humidité.</translation>
    </message>
    <message>
        <source>Ice water, 0 °C</source>
        <translation>Eau glacée, 0&#xa0;°C</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorDialog</name>
    <message>
        <source>Change a sensor</source>
        <translation>Modifier un capteur</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Ajouter un capteur</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Where it hangs</source>
        <translation>Où il est accroché</translation>
    </message>
    <message>
        <source>Added to its temperature, kelvin</source>
        <translation>Ajouté à sa température, kelvins</translation>
    </message>
    <message>
        <source>Added to its humidity, points</source>
        <translation>Ajouté à son humidité, points</translation>
    </message>
    <message>
        <source>points</source>
        <translation>points</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>En &amp;service</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>En service</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Where it hangs</source>
        <translation>&amp;Où il est accroché</translation>
    </message>
    <message>
        <source>Added to its &amp;temperature</source>
        <translation>Ajouté à sa &amp;température</translation>
    </message>
    <message>
        <source>Added to its &amp;humidity</source>
        <translation>Ajouté à son &amp;humidité</translation>
    </message>
    <message>
        <source>Readings are kept as the sensor gave them; what is added here only changes what is shown and judged.</source>
        <translation>Les mesures sont gardées telles que le capteur les a données&#xa0;; ce qui est ajouté ici ne change que ce qui est montré et jugé.</translation>
    </message>
    <message>
        <source>Give the sensor a name, such as &quot;by the door&quot;.</source>
        <translation>Donnez un nom au capteur, par exemple «&#xa0;près de la porte&#xa0;».</translation>
    </message>
</context>
<context>
    <name>ui::pages::SplitDialog</name>
    <message>
        <source>Cut %1 into pieces</source>
        <translation>Découper %1 en pièces</translation>
    </message>
    <message>
        <source>Weigh each part without casing or net. Start weight and target are shared out in proportion; the family stays.</source>
        <translation>Pesez chaque part sans boyau ni filet. Le poids de départ et la cible sont répartis en proportion&#xa0;; la famille reste.</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>Poids net avant</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>Poids net av&amp;ant</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>&amp;One part more</source>
        <translation>&amp;Une part de plus</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Ce qui change</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>&amp;Découper</translation>
    </message>
    <message>
        <source>Code of part %1</source>
        <translation>Code de la part %1</translation>
    </message>
    <message>
        <source>Net weight of part %1</source>
        <translation>Poids net de la part %1</translation>
    </message>
    <message>
        <source>Part &amp;%1: code, net weight</source>
        <translation>Part &amp;%1&#xa0;: code, poids net</translation>
    </message>
    <message>
        <source>%1: %2 net</source>
        <translation>%1&#xa0;: %2 net</translation>
    </message>
    <message>
        <source>, start %1</source>
        <translation>, départ %1</translation>
    </message>
    <message>
        <source>, target %1 net</source>
        <translation>, cible %1 net</translation>
    </message>
    <message>
        <source>Not accounted for: %1</source>
        <translation>Non justifié&#xa0;: %1</translation>
    </message>
    <message>
        <source>The parts weigh %1 more than the whole.</source>
        <translation>Les parts pèsent %1 de plus que le tout.</translation>
    </message>
    <message>
        <source>The parts weigh more than the whole. Check the weights, or the net weight before the cut.</source>
        <translation>Les parts pèsent plus que le tout. Vérifiez les poids, ou le poids net avant la coupe.</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeDialog</name>
    <message>
        <source>Take from pack %1</source>
        <translation>Prélever du paquet %1</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>Ce qu’il devient</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>&amp;All that is left (%1)</source>
        <translation>&amp;Tout ce qui reste (%1)</translation>
    </message>
    <message>
        <source>All that is left</source>
        <translation>Tout ce qui reste</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>À qui</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>&amp;What becomes of it</source>
        <translation>Ce qu’il &amp;devient</translation>
    </message>
    <message>
        <source>&amp;How much</source>
        <translation>&amp;Combien</translation>
    </message>
    <message>
        <source>&amp;To whom</source>
        <translation>À &amp;qui</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>Code of the new piece</source>
        <translation>Code de la nouvelle pièce</translation>
    </message>
    <message>
        <source>&amp;Code of the new piece</source>
        <translation>Code de la nouvelle &amp;pièce</translation>
    </message>
    <message>
        <source>Piece %1 itself hangs again, at %2 lost. It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>La pièce %1 elle-même est remise à sécher, à %2 de perte. Elle est désormais sur la page «&#xa0;Au séchoir&#xa0;» et la feuille du jour&#xa0;; Annuler retire cela.</translation>
    </message>
    <message>
        <source>%1 of piece %2 becomes a piece of its own, which starts at the loss the whole had (%3). It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>%1 de la pièce %2 devient une pièce à part, qui commence à la perte qu’avait le tout (%3). Elle est désormais sur la page «&#xa0;Au séchoir&#xa0;» et la feuille du jour&#xa0;; Annuler retire cela.</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeOnBox</name>
    <message>
        <source>I have read the &amp;cautions and take them on myself</source>
        <translation>&amp;J’ai lu les mises en garde et je les assume</translation>
    </message>
    <message>
        <source>I have read the cautions and take them on myself</source>
        <translation>J’ai lu les mises en garde et je les assume</translation>
    </message>
    <message>
        <source>Cautions taken on by</source>
        <translation>Mises en garde assumées par</translation>
    </message>
    <message>
        <source>Taken on b&amp;y</source>
        <translation>Assumées pa&amp;r</translation>
    </message>
    <message>
        <source>There are cautions above. Read them, then tick that you take them on.</source>
        <translation>Il y a des mises en garde ci-dessus. Lisez-les, puis cochez que vous les assumez.</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>Dites qui assume les mises en garde&#xa0;: choisissez ou tapez le nom.</translation>
    </message>
</context>
<context>
    <name>ui::pages::UpsetDialog</name>
    <message>
        <source>Upset in %1</source>
        <translation>Incident dans %1</translation>
    </message>
    <message>
        <source>This is a record to weigh up with your own code, your adviser or a laboratory. It is of the air, not of the meat&apos;s core, and judges nothing.</source>
        <translation>Ceci est un constat à examiner avec votre réglementation, votre conseiller ou un laboratoire. Il porte sur l’air, non sur le cœur de la viande, et ne juge rien.</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>&amp;Keep as a note on each batch</source>
        <translation>&amp;Garder comme note sur chaque lot</translation>
    </message>
    <message>
        <source>Where the temperatures come from</source>
        <translation>D’où viennent les températures</translation>
    </message>
    <message>
        <source>what I saw</source>
        <translation>ce que j’ai vu</translation>
    </message>
    <message>
        <source>the log of %1</source>
        <translation>le relevé de %1</translation>
    </message>
    <message>
        <source>Day it began</source>
        <translation>Jour du début</translation>
    </message>
    <message>
        <source>Time it began</source>
        <translation>Heure du début</translation>
    </message>
    <message>
        <source>How long it lasted</source>
        <translation>Durée de l’incident</translation>
    </message>
    <message>
        <source>Usual temperature</source>
        <translation>Température habituelle</translation>
    </message>
    <message>
        <source>Temperature it reached</source>
        <translation>Température atteinte</translation>
    </message>
    <message>
        <source>&amp;Temperatures from</source>
        <translation>&amp;Températures d’après</translation>
    </message>
    <message>
        <source>It &amp;began</source>
        <translation>&amp;Début</translation>
    </message>
    <message>
        <source>It &amp;lasted</source>
        <translation>D&amp;urée</translation>
    </message>
    <message>
        <source>&amp;Usual temperature</source>
        <translation>Température &amp;habituelle</translation>
    </message>
    <message>
        <source>It &amp;reached</source>
        <translation>Température &amp;atteinte</translation>
    </message>
    <message>
        <source>&amp;Show the record</source>
        <translation>&amp;Montrer le constat</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation>%1, pendant %2</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>Accrochée</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perte</translation>
    </message>
    <message>
        <source>Salt, at most</source>
        <translation>Sel, au plus</translation>
    </message>
    <message>
        <source>Nitrite put on</source>
        <translation>Nitrite appliqué</translation>
    </message>
    <message>
        <source>Water activity, estimated</source>
        <translation>Activité de l’eau, estimée</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Pieces, to be looked at in this order</source>
        <translation>Pièces, à regarder dans cet ordre</translation>
    </message>
    <message>
        <source>Can grow</source>
        <translation>Peut croître</translation>
    </message>
    <message>
        <source>Hours of air in its range</source>
        <translation>Heures d’air dans sa plage</translation>
    </message>
    <message>
        <source>Its temperatures</source>
        <translation>Ses températures</translation>
    </message>
    <message>
        <source>Water activity</source>
        <translation>Activité de l’eau</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Hours in growth ranges</source>
        <translation>Heures en plages de croissance</translation>
    </message>
    <message>
        <source>To be looked at in this order</source>
        <translation>À regarder dans cet ordre</translation>
    </message>
    <message>
        <source>Hours of air in growth ranges</source>
        <translation>Heures d’air en plages de croissance</translation>
    </message>
    <message>
        <source>For %1 there is no reading.</source>
        <translation>Pour %1, il n’y a pas de mesure.</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) were there. Highest air temperature: %1.</source>
        <translation>
            <numerusform>%n pièce y était. Température d’air la plus haute&#xa0;: %1.</numerusform>
            <numerusform>%n pièces y étaient. Température d’air la plus haute&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The record is kept as a note on %n batch(es).</source>
        <translation>
            <numerusform>Le constat est gardé comme note sur %n lot.</numerusform>
            <numerusform>Le constat est gardé comme note sur %n lots.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::WarmDialog</name>
    <message>
        <source>%1: finish in warm air</source>
        <translation>%1&#xa0;: finir à l’air chaud</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven takes the last water out in hours. It also spends those hours where microbes grow. What stands here is reckoned from the piece&apos;s own pace and published figures; it judges nothing. Follow your own code.</source>
        <translation>Un déshydrateur ou un four doux ôte la dernière eau en quelques heures. La pièce passe aussi ces heures là où les microbes se développent. Ce qui figure ici est calculé d’après l’allure propre de la pièce et des chiffres publiés&#xa0;; cela ne juge rien. Suivez votre propre réglementation.</translation>
    </message>
    <message>
        <source>&amp;Record in the book</source>
        <translation>&amp;Inscrire au registre</translation>
    </message>
    <message>
        <source>Air of the device</source>
        <translation>Air de l’appareil</translation>
    </message>
    <message>
        <source>Its humidity</source>
        <translation>Son humidité</translation>
    </message>
    <message>
        <source>Loss wanted</source>
        <translation>Perte voulue</translation>
    </message>
    <message>
        <source>Water of the piece now</source>
        <translation>Eau de la pièce à présent</translation>
    </message>
    <message>
        <source>Thickness now</source>
        <translation>Épaisseur à présent</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Avancement</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prévue</translation>
    </message>
    <message>
        <source>begun now</source>
        <translation>commencée maintenant</translation>
    </message>
    <message>
        <source>done</source>
        <translation>faite</translation>
    </message>
    <message>
        <source>&amp;Air of the device</source>
        <translation>&amp;Air de l’appareil</translation>
    </message>
    <message>
        <source>Its &amp;humidity, a guess if not measured</source>
        <translation>Son &amp;humidité, une supposition si non mesurée</translation>
    </message>
    <message>
        <source>&amp;Loss wanted</source>
        <translation>&amp;Perte voulue</translation>
    </message>
    <message>
        <source>&amp;Water of the piece now</source>
        <translation>&amp;Eau de la pièce à présent</translation>
    </message>
    <message>
        <source>&amp;Thickness now</source>
        <translation>Épaisseu&amp;r à présent</translation>
    </message>
    <message>
        <source>How &amp;far it is</source>
        <translation>A&amp;vancement</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Durée</translation>
    </message>
    <message>
        <source>Hours inside growth ranges</source>
        <translation>Heures en plages de croissance</translation>
    </message>
    <message>
        <source>Organism</source>
        <translation>Organisme</translation>
    </message>
    <message>
        <source>In its range</source>
        <translation>Dans sa plage</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>En regard</translation>
    </message>
    <message>
        <source>No loss is known yet: weigh the piece first, so that there is a start to count from.</source>
        <translation>Aucune perte n’est encore connue&#xa0;: pesez d’abord la pièce, pour avoir un départ à partir duquel compter.</translation>
    </message>
    <message>
        <source>Fill in what is empty above, and the hours stand here.</source>
        <translation>Remplissez ce qui est vide ci-dessus, et les heures s’affichent ici.</translation>
    </message>
    <message>
        <source>Reckoned from the pace it dries at where it hangs.</source>
        <translation>Calculé d’après l’allure de séchage là où elle est accrochée.</translation>
    </message>
    <message>
        <source>Reckoned from published figures: its own pace is not known well enough.</source>
        <translation>Calculé d’après des chiffres publiés&#xa0;: son allure propre n’est pas assez connue.</translation>
    </message>
    <message>
        <source>There is no answer to record yet.</source>
        <translation>Il n’y a pas encore de réponse à inscrire.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighInPage</name>
    <message>
        <source>Weigh-in round</source>
        <translation>Tournée de pesée</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Chambre</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>&amp;Chambre</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>&amp;Balance</translation>
    </message>
    <message>
        <source>Nothing to weigh</source>
        <translation>Rien à peser</translation>
    </message>
    <message>
        <source>The round lists every piece that is curing, resting or drying, in the order in which it hangs. Start a batch, then come back once a week: a number and Enter for each piece is all it takes.</source>
        <translation>La tournée liste chaque pièce au sel, au repos ou en séchage, dans l’ordre d’accrochage. Commencez un lot, puis revenez une fois par semaine&#xa0;: un nombre et Entrée par pièce suffisent.</translation>
    </message>
    <message>
        <source>Pieces in hanging order</source>
        <translation>Pièces dans l’ordre d’accrochage</translation>
    </message>
    <message>
        <source>The piece whose turn it is</source>
        <translation>La pièce dont c’est le tour</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Sur la balance</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tare</translation>
    </message>
    <message>
        <source>&amp;Wet</source>
        <translation>&amp;Mouillée</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>La surface est mouillée</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>note, if any</source>
        <translation>note, au besoin</translation>
    </message>
    <message>
        <source>&amp;Keep and go on  ⏎</source>
        <translation>&amp;Valider et continuer  ⏎</translation>
    </message>
    <message>
        <source>Pass over  ⇟</source>
        <translation>Passer  ⇟</translation>
    </message>
    <message>
        <source>&amp;On the scale</source>
        <translation>&amp;Sur la balance</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tare</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Place</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Dernier</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>passée</translation>
    </message>
    <message>
        <source>all</source>
        <translation>toutes</translation>
    </message>
    <message>
        <source>%1 of %2 weighed. Enter keeps and goes on; Page Down passes over.</source>
        <translation>%1 sur %2 pesées. Entrée valide et continue&#xa0;; Page suivante passe.</translation>
    </message>
    <message>
        <source>Last time: %1 on the scale, %2</source>
        <translation>La dernière fois&#xa0;: %1 sur la balance, %2</translation>
    </message>
    <message>
        <source>Not weighed before.</source>
        <translation>Pas encore pesée.</translation>
    </message>
    <message>
        <source>Expected now: %1 to %2 (%3)</source>
        <translation>Attendu maintenant&#xa0;: %1 à %2 (%3)</translation>
    </message>
    <message>
        <source>from its forecast</source>
        <translation>d’après sa prévision</translation>
    </message>
    <message>
        <source>from its last weight</source>
        <translation>d’après son dernier poids</translation>
    </message>
    <message>
        <source>Expected now: %1</source>
        <translation>Attendu maintenant&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1
If it is right, press Enter again.</source>
        <translation>%1
Si c’est juste, appuyez encore une fois sur Entrée.</translation>
    </message>
    <message>
        <source>%1: %2 kept. Ctrl+Z takes it back.</source>
        <translation>%1&#xa0;: %2 enregistré. Ctrl+Z le retire.</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesée</translation>
    </message>
    <message>
        <source>Weigh every hanging piece in hanging order</source>
        <translation>Peser chaque pièce accrochée dans l’ordre d’accrochage</translation>
    </message>
    <message numerus="yes">
        <source>All %n piece(s) are weighed.</source>
        <translation>
            <numerusform>%n pièce est pesée.</numerusform>
            <numerusform>Les %n pièces sont toutes pesées.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Nothing hangs to be weighed.</source>
        <translation>Aucune pièce accrochée n’est à peser.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighingDialog</name>
    <message>
        <source>Scale</source>
        <translation>Balance</translation>
    </message>
    <message>
        <source>scale not named</source>
        <translation>balance non nommée</translation>
    </message>
    <message>
        <source>%1 (step %2)</source>
        <translation>%1 (échelon %2)</translation>
    </message>
    <message>
        <source>Weigh %1</source>
        <translation>Peser %1</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Sur la balance</translation>
    </message>
    <message>
        <source>What hangs there</source>
        <translation>Ce qui est accroché là</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tare</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>The surface is &amp;wet (just washed or wiped)</source>
        <translation>La surface est &amp;mouillée (juste lavée ou essuyée)</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>La surface est mouillée</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation>&amp;Sur la balance</translation>
    </message>
    <message>
        <source>W&amp;hat is on it</source>
        <translation>Ce qu’elle &amp;porte</translation>
    </message>
    <message>
        <source>&amp;Tare (casing, net, hook)</source>
        <translation>&amp;Tare (boyau, filet, crochet)</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Jour</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>&amp;Heure</translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation>&amp;Balance</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>Why it is corrected</source>
        <translation>Pourquoi la pesée est corrigée</translation>
    </message>
    <message>
        <source>e.g. misread, wrong tare</source>
        <translation>p.&#xa0;ex. mal lu, tare fausse</translation>
    </message>
    <message>
        <source>Wh&amp;y it is corrected</source>
        <translation>P&amp;ourquoi la pesée est corrigée</translation>
    </message>
    <message>
        <source>Net weight: %1</source>
        <translation>Poids net&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 lost of the %2</source>
        <translation>%1 perdus sur le %2</translation>
    </message>
    <message>
        <source>Say in a few words why the entry is corrected; the old one stays readable beside it.</source>
        <translation>Dites en quelques mots pourquoi l’entrée est corrigée&#xa0;; l’ancienne reste lisible à côté.</translation>
    </message>
    <message>
        <source>Correct %1: weighing of %2</source>
        <extracomment>%1 a piece&apos;s code, %2 a moment</extracomment>
        <translation>Corriger %1&#xa0;: pesée de %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::WhatIfDialog</name>
    <message>
        <source>%1: what if…</source>
        <translation>%1&#xa0;: et si…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation>Rien à comparer pour l’instant</translation>
    </message>
    <message>
        <source>A forecast needs the weight its loss is counted from, and weighings since it was hung. Weigh the piece, or choose another weight to count from under Change.</source>
        <translation>Une prévision demande le poids à partir duquel compte la perte, et des pesées depuis l’accrochage. Pesez la pièce, ou choisissez un autre poids de référence sous Modifier.</translation>
    </message>
    <message>
        <source>The change holds from the last weighing on, and exactly as entered. Nothing of this is kept.</source>
        <translation>Le changement vaut à partir de la dernière pesée, exactement comme saisi. Rien de ceci n’est gardé.</translation>
    </message>
    <message>
        <source>The piece has no target; 35 % of the hung weight is taken to begin with.</source>
        <translation>La pièce n’a pas de cible&#xa0;; 35&#xa0;% du poids à l’accrochage sont pris pour commencer.</translation>
    </message>
    <message>
        <source>Humidity ahead</source>
        <translation>Humidité à venir</translation>
    </message>
    <message>
        <source>Temperature ahead</source>
        <translation>Température à venir</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>&amp;Humidity of the chamber</source>
        <translation>&amp;Humidité de la chambre</translation>
    </message>
    <message>
        <source>Te&amp;mperature of the chamber</source>
        <translation>Te&amp;mpérature de la chambre</translation>
    </message>
    <message>
        <source>&amp;Target, loss</source>
        <translation>&amp;Cible, perte</translation>
    </message>
    <message>
        <source>Filled in: the last steady stretch of the chamber&apos;s log.</source>
        <translation>Rempli&#xa0;: la dernière période stable du relevé de la chambre.</translation>
    </message>
    <message>
        <source>Filled in: a usual air, as no log says what it is (common practice, no source).</source>
        <translation>Rempli&#xa0;: un air usuel, car aucun relevé ne dit ce qu’il est (pratique courante, sans source).</translation>
    </message>
    <message>
        <source>&amp;Use that humidity</source>
        <translation>&amp;Reprendre cette humidité</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Tel quel</translation>
    </message>
    <message>
        <source>With the change</source>
        <translation>Avec le changement</translation>
    </message>
    <message>
        <source>As it is and with the change</source>
        <translation>Tel quel et avec le changement</translation>
    </message>
    <message>
        <source>Fill in what is empty above.</source>
        <translation>Remplissez ce qui est vide ci-dessus.</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>Calcul en cours…</translation>
    </message>
    <message>
        <source>As it is; nothing is changed yet</source>
        <translation>Tel quel&#xa0;; rien n’est encore changé</translation>
    </message>
    <message>
        <source>As it is, and with the change</source>
        <translation>Tel quel, et avec le changement</translation>
    </message>
    <message>
        <source>Change the temperature to see which humidity there has the drying power of the air as it is.</source>
        <translation>Changez la température pour voir quelle humidité y donne le pouvoir desséchant de l’air tel quel.</translation>
    </message>
    <message>
        <source>In the cited growth ranges as it is, by temperature alone: %1. Water, salt and acid count too; the program judges none of it.</source>
        <translation>Dans les plages de croissance citées, tel quel, d’après la seule température&#xa0;: %1. L’eau, le sel et l’acidité comptent aussi&#xa0;; le programme n’en juge rien.</translation>
    </message>
</context>
<context>
    <name>ui::pages::WithdrawDialog</name>
    <message>
        <source>Take back</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>%1
The entry no longer counts, but stays readable in the history.</source>
        <translation>%1
L’entrée ne compte plus, mais reste lisible dans l’historique.</translation>
    </message>
    <message>
        <source>Why it is taken back</source>
        <translation>Pourquoi elle est retirée</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>P&amp;ourquoi</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Retirer</translation>
    </message>
    <message>
        <source>Say in a few words why.</source>
        <translation>Dites en quelques mots pourquoi.</translation>
    </message>
</context>
<context>
    <name>ui::presenters::DayWork</name>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>Opens the weigh-in. The line goes when the weight is in the book.</source>
        <translation>Ouvre la pesée. La ligne disparaît quand le poids est au registre.</translation>
    </message>
    <message>
        <source>Opens the evidence for this piece.</source>
        <translation>Ouvre les indices de cette pièce.</translation>
    </message>
    <message>
        <source>Opens the stock. The line goes when the packs are gone.</source>
        <translation>Ouvre le stock. La ligne disparaît quand les paquets sont épuisés.</translation>
    </message>
    <message>
        <source>Opens the instruments. The line goes when a check is entered.</source>
        <translation>Ouvre les instruments. La ligne disparaît quand un contrôle est saisi.</translation>
    </message>
    <message>
        <source>Begins the stage now.</source>
        <translation>Commence l’étape maintenant.</translation>
    </message>
    <message>
        <source>Ends the stage now.</source>
        <translation>Termine l’étape maintenant.</translation>
    </message>
    <message>
        <source>Takes the tick back.</source>
        <translation>Retire la coche.</translation>
    </message>
    <message>
        <source>Ticks it off as done.</source>
        <translation>Coche la tâche comme faite.</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 en retard</translation>
    </message>
    <message>
        <source>%1 for today</source>
        <translation>%1 pour aujourd’hui</translation>
    </message>
    <message>
        <source>%1 done</source>
        <translation>%1 fait(s)</translation>
    </message>
    <message numerus="yes">
        <source>%n pack(s)</source>
        <translation>
            <numerusform>%n paquet</numerusform>
            <numerusform>%n paquets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n pièce</numerusform>
            <numerusform>%n pièces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation>
            <numerusform>%n jour de retard</numerusform>
            <numerusform>%n jours de retard</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n time(s) missed</source>
        <extracomment>%1 how late, %n how often it was not done</extracomment>
        <translation>
            <numerusform>%1, manqué %n fois</numerusform>
            <numerusform>%1, manqué %n fois</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::LostWeight</name>
    <message>
        <source>estimated, %1 to %2</source>
        <translation>estimé, %1 à %2</translation>
    </message>
</context>
<context>
    <name>ui::presenters::PlanCalendar</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
</context>
<context>
    <name>ui::presenters::PlanDraft</name>
    <message>
        <source>Ready about %1</source>
        <translation>Prêt vers le %1</translation>
    </message>
    <message>
        <source>Start today</source>
        <translation>Commencer aujourd’hui</translation>
    </message>
    <message>
        <source>Start by %1</source>
        <translation>Commencer au plus tard le %1</translation>
    </message>
    <message>
        <source>Likely ready %1; the rest until %2 is slack.</source>
        <translation>Sans doute prêt le %1&#xa0;; le reste jusqu’au %2 est de la marge.</translation>
    </message>
    <message>
        <source>No slack: half of such plans end later than %1.</source>
        <translation>Aucune marge&#xa0;: la moitié de tels plans finissent après le %1.</translation>
    </message>
    <message>
        <source>Not by %1</source>
        <translation>Pas pour le %1</translation>
    </message>
    <message>
        <source>Plan it smaller</source>
        <translation>Planifier plus petit</translation>
    </message>
    <message>
        <source>A piece of at most %1 and %2 would be ready by %3.</source>
        <translation>Une pièce d’au plus %1 et %2 serait prête pour le %3.</translation>
    </message>
    <message>
        <source>Plan this instead</source>
        <translation>Planifier ceci à la place</translation>
    </message>
    <message>
        <source>Plan for that day</source>
        <translation>Planifier pour ce jour-là</translation>
    </message>
    <message>
        <source>Begun today, it would be ready by %1.</source>
        <translation>Commencé aujourd’hui, ce serait prêt pour le %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 % RH</source>
        <translation>%1&#xa0;% HR</translation>
    </message>
    <message>
        <source>%1, in the end %2</source>
        <extracomment>a band that changes over the stage: from %1, in the end %2</extracomment>
        <translation>%1, à la fin %2</translation>
    </message>
    <message>
        <source>%1 for %2 in every %3</source>
        <translation>%1 pendant %2 toutes les %3</translation>
    </message>
    <message>
        <source>%1 every day</source>
        <translation>%1 chaque jour</translation>
    </message>
    <message>
        <source>%1 every %2</source>
        <translation>%1 toutes les %2</translation>
    </message>
    <message>
        <source>%1 on day %2</source>
        <translation>%1 au jour %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
    <message>
        <source>inch</source>
        <translation>pouce</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>%1 days per %2</source>
        <translation>%1 jours par %2</translation>
    </message>
    <message>
        <source>%1 plus %2: %3</source>
        <translation>%1 plus %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omise</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>By diffusion the centre has come close to the rest after %1.</source>
        <translation>Par diffusion, le cœur s’est rapproché du reste après %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start.</source>
        <translation>
            <numerusform>%n jour depuis le départ.</numerusform>
            <numerusform>%n jours depuis le départ.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start; it may be %1.</source>
        <translation>
            <numerusform>%n jour depuis le départ&#xa0;; cela peut être %1.</numerusform>
            <numerusform>%n jours depuis le départ&#xa0;; cela peut être %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It would be %n day(s) late. A stronger dose or a shorter cure does not help: salt needs its time.</source>
        <translation>
            <numerusform>Le retard serait de %n jour. Une dose plus forte ou un salage plus court n’y change rien&#xa0;: le sel a besoin de son temps.</numerusform>
            <numerusform>Le retard serait de %n jours. Une dose plus forte ou un salage plus court n’y change rien&#xa0;: le sel a besoin de son temps.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 needs %n day(s) for its usual piece, %2 to spare.</source>
        <translation>
            <numerusform>%1 demande %n jour pour sa pièce habituelle, %2 de reste.</numerusform>
            <numerusform>%1 demande %n jours pour sa pièce habituelle, %2 de reste.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 every %n day(s)</source>
        <translation>
            <numerusform>%1 chaque jour</numerusform>
            <numerusform>%1 tous les %n jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) of %1</source>
        <translation>
            <numerusform>%n tour de %1</numerusform>
            <numerusform>%n tours de %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::WatchedFolder</name>
    <message>
        <source>The watched folder %1 is not there.</source>
        <translation>Le dossier surveillé %1 n’est pas là.</translation>
    </message>
    <message>
        <source>%1 is in the watched folder, but part of how it reads is a guess: import it once by hand.</source>
        <translation>%1 est dans le dossier surveillé, mais sa lecture est en partie supposée&#xa0;: importez-le une fois à la main.</translation>
    </message>
    <message numerus="yes">
        <source>%1 from the watched folder: %n new reading(s).</source>
        <translation>
            <numerusform>%1 du dossier surveillé&#xa0;: %n nouvelle mesure.</numerusform>
            <numerusform>%1 du dossier surveillé&#xa0;: %n nouvelles mesures.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::Workspace</name>
    <message>
        <source>Undo: %1</source>
        <translation>Annuler&#xa0;: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rétablir&#xa0;: %1</translation>
    </message>
    <message>
        <source>Kept: %1.</source>
        <translation>Enregistré&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Undone: %1.</source>
        <translation>Annulé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>Rétabli&#xa0;: %1.</translation>
    </message>
</context>
</TS>
