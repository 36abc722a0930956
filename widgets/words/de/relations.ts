/** Was die Beziehungen des Rechenwerks von sich sagen. Ihre Quellen sind Titel und bleiben, wie sie beim Rechenwerk stehen. */
const says: Readonly<Record<string, string>> = {
  advance: 'Vorschub: wie weit sich eine Schraube durch eine gehaltene Mutter bewegt, mit ihrer Richtung.',
  'best-wire':
    'Günstigster Draht für ein 60°-Gewinde: Er berührt die Flanken am Flankendurchmesser, wo ein Winkelfehler nicht zählt.',
  'core-load':
    'Last, die der Kern eines Gewindes bei einer angegebenen Spannung trägt; durch eine Hülse geht eine Bohrung.',
  'diameter-step-mean':
    'Durchmesser, der für eine ganze Stufe der ISO 965-1 steht: das geometrische Mittel ihrer beiden Enden.',
  'iso-deviation-g':
    'Oberes Abmaß der Toleranzfeldlage g vor dem Runden: wie weit die größte Schraube unter dem Nennmaß bleibt.',
  'iso-nut-pitch-tolerance':
    'Toleranz im Toleranzgrad 6 am Flankendurchmesser einer metrischen Mutter, vor dem Runden: etwa ein Drittel mehr als bei der Schraube.',
  'iso-pitch-tolerance':
    'Toleranz im Toleranzgrad 6 am Flankendurchmesser einer metrischen Schraube, vor dem Runden auf Vorzugszahlen.',
  lead: 'Steigung: wie weit eine volle Umdrehung eine Mutter bewegt, die sich nicht dreht.',
  'lead-angle': 'Steigungswinkel: der Anstieg des am Flankendurchmesser abgewickelten Gewindes.',
  'minor-diameter': 'Kerndurchmesser eines 60°-Gewindes, Nennmaß: die Bohrung vor dem Gewindeschneiden.',
  'once-round': 'Länge einmal um das Gewinde am Flankendurchmesser: die Grundlinie der abgewickelten Rampe.',
  'over-wires': 'Messung über drei Drähte, ohne die Schrägstellung der Drähte.',
  'pitch-diameter': 'Flankendurchmesser eines 60°-Gewindes, Nennmaß, wo Gang und Lücke gleich breit sind.',
  'pitch-diameter-over-wires':
    'Flankendurchmesser aus einer Messung über drei Drähte, ohne die Schrägstellung der Drähte.',
  'pitch-from-tpi': 'Teilung eines Zollgewindes aus seinen Gängen je Zoll.',
  'root-diameter': 'Kerndurchmesser eines 60°-Außengewindes mit gerundetem Grund: der Kern, der die Last trägt.',
  'share-of-thread':
    'Anteil des Gewindes, den ein gebohrtes Loch lässt; volles Gewinde sind drei Viertel des scharfen Dreiecks auf jeder Seite.',
  'strip-nut':
    'Last, bei der das Gewinde einer Mutter über seine Einschraublänge ausschert, bei angegebener Schubspannung.',
  'strip-screw':
    'Last, bei der das Gewinde einer Schraube über seine Einschraublänge abschert, bei angegebener Schubspannung.',
  'tap-drill':
    'Kernloch für einen Anteil des Gewindes; volles Gewinde sind drei Viertel des scharfen Dreiecks auf jeder Seite.',
  'thread-height': 'Höhe des scharfen Dreiecks, auf dem ein 60°-Gewinde aufgebaut ist.',
  'turns-from-angle': 'Umdrehungen in einem Winkel.',
  'unified-allowance': 'Grundabmaß der Klassen 1A und 2A: wie weit die größte Schraube unter dem Nennmaß bleibt.',
  'unified-pitch-tolerance': 'Toleranz der Klasse 2A am Flankendurchmesser einer Unified-Schraube, vor dem Runden.',
  'wire-slope':
    'Was die Schrägstellung der Drähte zur Messung beiträgt, und zum gefundenen Flankendurchmesser, wenn man sie auslässt.',
  'backward-run': 'Wie weit das Hubteil in jeder Umdrehung zurückläuft, und über welchen Anteil davon.',
  'diameter-equivalent': 'Flankendurchmesser-Äquivalent: das Flankenspiel, das eine Steigungsabweichung verbraucht.',
  'divisions-for': 'Skalenteile, die ein Drehknopf braucht, damit einer davon eine gewünschte Bewegung ist.',
  'engagement-left':
    'Einschraublänge eines Gewindes, das aus der Endlage zurückgedreht ist: nie mehr als die Mutter, nie unter null.',
  gain: 'Verstärkung eines Gewindes im Paar: wie viel Mal seine Steigung größer ist als die Nettosteigung.',
  'joint-amplitude':
    'Amplitude beider periodischer Fehler zusammen bei ihren Phasen: zwischen ihrer Differenz und ihrer Summe.',
  'joint-slope': 'Steilste Bewegung je Umdrehung, die ein periodischer Fehler dieser Amplitude dazugibt oder wegnimmt.',
  'largest-nut-root':
    'Größter Durchmesser am Grund eines Muttergewindes, mit dem zu rechnen ist: Keine Klasse begrenzt ihn, ein guter Gewindebohrer bleibt darin.',
  'least-rate':
    'Langsamste Bewegung je Umdrehung mit periodischen Fehlern, bei der schlimmsten Phase; unter null läuft sie teils rückwärts.',
  'least-root':
    'Kleinster Kerndurchmesser einer metrischen Schraube: wie tief die Lücke gehen darf, wenn ihr Radius der kleinste erlaubte ist.',
  'local-rate': 'Örtliche Bewegung je Umdrehung an einer Stelle der Umdrehung, mit den periodischen Fehlern.',
  'mid-mark': 'Umdrehungen, um ein Gewinde aus der Endlage in die Mitte seiner nutzbaren Länge zurückzudrehen.',
  'most-periodic': 'Periodischer Fehler beider Gewinde zusammen, bei dem die Bewegung zuerst stillsteht.',
  'nested-wall': 'Wand zwischen dem Gewinde außen auf einer Hülse und dem in ihr, von Grund zu Grund.',
  'net-lead':
    'Nettosteigung: Bewegung des Hubteils je Umdrehung, bei gleicher Gangrichtung eine Differenz, bei entgegengesetzter eine Summe.',
  'net-lead-error':
    'Relativer Fehler der Nettosteigung aus den relativen Steigungsfehlern beider Gewinde, mit ihren Vorzeichen.',
  'net-motion': 'Bewegung des Hubteils nach n Umdrehungen.',
  'per-angle': 'Bewegung für einen angegebenen Winkel, etwa den wiederholbaren Handwinkel.',
  'per-step':
    'Bewegung je Schritt, die Umdrehung in k gleiche geteilt: 6 Flächen, 4, 12 oder eine beliebige Zahl von Skalenteilen.',
  'periodic-error': 'Was die periodischen Fehler beider Gewinde nach n Umdrehungen zur Bewegung beitragen.',
  'periodic-slope':
    'Steilste Bewegung je Umdrehung, welche die periodischen Fehler beider Gewinde dazugeben oder wegnehmen, bei der schlimmsten Phase.',
  'position-error':
    'Wie weit das Hubteil nach einer Sollbewegung danebenliegt, wenn die Nettosteigung um diesen Anteil falsch ist.',
  'printed-lines': 'Wie viele gedruckte Bahnen nebeneinander in eine Wand passen.',
  'relative-motion': 'Bewegung des Hubteils vom Stellteil aus gesehen: Gewinde C schraubt es davon ab.',
  'rounding-error': 'Relativer Fehler einer Nettosteigung, die aus gerundeten Steigungen gerechnet ist.',
  'rss-lead-error': 'Relativer Fehler der Nettosteigung, quadratisch addiert, für unabhängige Fehler.',
  'slipped-lead':
    'Bewegung je Umdrehung, wenn die Verdrehsicherung nachgibt und das Hubteil einen Anteil f der Drehung mitmacht.',
  'steps-for': 'Schritte, die für eine gewünschte Bewegung zu drehen sind, vor dem Runden auf ganze.',
  stroke: 'Hub des Hubteils über die verfügbaren Umdrehungen.',
  'thin-side': 'Wand an ihrer dünnen Seite, wo die Achsen der beiden Gewinde nicht in einer Linie liegen.',
  'thread-eaten': 'Gewindelänge, die eine gewünschte Bewegung des Hubteils verbraucht.',
  'tip-circle':
    'Kreis, auf dem die Spitze umläuft, wenn die Achsen der beiden Gewinde versetzt und schräg zueinander liegen, im schlimmsten Fall.',
  'true-net-lead': 'Was eine Umdrehung wirklich bewegt, wenn die Nettosteigung um diesen Anteil falsch ist.',
  'turned-motion': 'Bewegung des Stellteils: Gewinde A schraubt es durch das Grundteil.',
  'turns-available': 'Verfügbare Umdrehungen, bis das erste der beiden Gewinde seine Länge verbraucht hat.',
  'usable-thread':
    'Nutzbare Länge eines Gewindes: die Länge seiner Schraube minus die zu behaltende Einschraublänge, in Durchmessern gezählt.',
  'wanted-net-lead': 'Gesuchte Bewegung je Umdrehung, aus dem gewünschten Schritt und den Schritten je Umdrehung.',
  'wave-all-round':
    'Anheben einer Schraube auf den hohen Stellen, wo ihre Schraubenlinie und die ihrer Mutter einmal je Umdrehung wellig sind und rundum anliegen.',
  'wave-lean':
    'Schiefstellung einer Schraube mit welliger Schraubenlinie in einer genauen kurzen Mutter, in der sie kippen, aber nicht zur Seite gehen kann.',
  'wave-shift':
    'Seitliche Verschiebung einer Schraube mit welliger Schraubenlinie in einer genauen Mutter, in der sie zur Seite gehen kann.',
  'wave-through':
    'Der Teil der Wellen beider Schraubenlinien, der die Bewegung erreicht, rundum im Eingriff und am Kippen gehindert: die kleinere von beiden.',
  'wind-up':
    'Bewegung des Hubteils, wenn sich seine Sicherung um einen kleinen Winkel verdreht und das Stellteil stillsteht.',
  'worst-lead-error':
    'Größter relativer Fehler der Nettosteigung, wenn jedes Gewinde um so viel nach jeder Seite falsch sein kann.',
  'axial-play': 'Axialspiel eines 60°-Gewindes, von einer Flanke zur anderen.',
  'axial-play-a': 'Axialspiel von Gewinde A, zwischen Grundteil und Stellteil.',
  'axial-play-c': 'Axialspiel von Gewinde C, zwischen Stellteil und Hubteil.',
  'flank-forces':
    'Kraft über jedes Gewinde: C trägt, was auf das Hubteil wirkt, A, was auf beide Teile wirkt; zum Grundteil hin ist plus.',
  'lift-free':
    'Seitendruck, bei dem eine Druckflanke zuerst abhebt, für eine Schraube in ihrer Mutter, wo die Schräge der Flanken allein die Seitenkraft aufnimmt.',
  'lift-free-nut':
    'Dasselbe für eine Mutter auf ihrer Schraube: Ihre Flanken drücken sie nach außen, darum hebt schon ein kleinerer Druck eine ab.',
  'lift-held':
    'Seitendruck, bei dem eine Druckflanke zuerst abhebt, wo Reibung oder eine Führung am Gewinde die Seitenkraft aufnimmt.',
  'off-centre-play': 'Axialspiel, das bleibt, wenn die Schraube neben der Mitte ihrer Mutter steht.',
  'pin-tilt': 'Schiefstellung eines glatten Stifts mit demselben Spiel, eine obere Grenze für die Schraube.',
  'pitch-clearance': 'Flankenspiel: um wie viel die Mutter größer ist als die Schraube, an den Flanken gemessen.',
  'play-after-coat':
    'Axialspiel eines 60°-Gewindes, dessen Schraube nach dem Messen beschichtet wurde: Eine Schicht gibt das Vierfache ihrer Dicke zum Flankendurchmesser.',
  'play-after-lead':
    'Axialspiel eines 60°-Gewindes, dessen Schraube und Mutter über die Einschraublänge um so viel in der Steigung abweichen.',
  'radial-float': 'Radialspiel einer unbelasteten Schraube in ihrer Mutter, von Seite zu Seite.',
  'small-angle': 'Wie viel eine Formel für kleine Winkel auslässt: um wie viel der Tangens größer ist als der Winkel.',
  'motion-after-reversal':
    'Bewegung des Hubteils nach dem Umkehren der Hand, ohne Vorspannung: Es steht, bis das Spiel durchfahren ist.',
  'steps-lost': 'Toter Gang bei Umkehr in Schritten oder Flächen.',
  'thickest-coat':
    'Dickste Schicht auf den Flanken einer Schraube, die ihr Flankenspiel noch zulässt; bei einer Klasse ist das kleinste Spiel das Grundabmaß.',
  tilt: 'Schiefstellung einer unbelasteten Schraube in ihrer Mutter, nach jeder Seite, bis ihre Flanken anliegen.',
  'tip-float': 'Seitliches Spiel der Spitze, nach jeder Seite, wenn die Schraube in ihrer Mutter kippt.',
  'tips-over':
    'Seitendruck, der eine Schraube in einem axial gedrückten Gewinde ganz umkippt, die Seitenkraft am Gewinde gehalten.',
  'turns-lost': 'Toter Gang bei Umkehr in Umdrehungen, bevor das Hubteil folgt, ohne Vorspannung.',
  'climbing-torque': 'Drehmoment eines Gewindes, das bergauf läuft.',
  'collar-mean-diameter':
    'Mittlerer Durchmesser eines flachen Bunds oder einer Spitze, die überall gleich drückt: weiter außen als die Mitte zwischen den Rändern.',
  'collar-torque': 'Drehmoment, das unter einem Bund oder einer Spitze verloren geht, die auf ihrem Sitz dreht.',
  'core-shear':
    'Größte Schubspannung im Kern einer Schraube unter einer Last längs der Achse und einem Drehmoment darum.',
  efficiency: 'Wirkungsgrad: der Anteil der Arbeit der Hand, der die Last erreicht.',
  effort: 'Drehmoment, das eine Last auf einem Paar von Gewinden hebt, beide hintereinander.',
  'force-chain':
    'Kräfte über die beiden Gewinde: Last, Gewicht und Federn auf den Teilen darüber addieren sich; zum Grundteil hin ist plus.',
  'friction-angle': 'Reibungswinkel eines Gewindes: der Anstieg, bei dem seine Flanken gerade zu gleiten beginnen.',
  'frictionless-torque': 'Drehmoment ohne Reibung: die Arbeit der Last über eine Umdrehung.',
  'guide-friction': 'Reibung der Führung unter einer Seitenlast; sie kann in jeder Richtung der Achse wirken.',
  'hand-force': 'Kraft der Hand am Rand des Drehknopfs oder am Ende des Schlüssels.',
  'joint-share':
    'Wie sich eine äußere Last aufteilt, die trennt: Ein Teil dehnt die Feder oder Schraube, ein Teil entlastet die angedrückten Flächen.',
  'key-rub': 'Reibung der Passfeder längs der Achse, aus dem Drehmoment, das sie hält; sie wirkt gegen die Bewegung.',
  'load-for-torque':
    'Last längs der Achse, die ein Drehmoment der Hand macht, aus dem Drehmoment, das eine Last braucht.',
  'lock-slop': 'Drehung, die das Spiel einer Passfeder in ihrer Nut zulässt, von einer Seite zur anderen.',
  'lock-slop-motion': 'Bewegung der Spitze, die das Spiel einer Passfeder zulässt, von einer Seite zur anderen.',
  'lock-stiffness': 'Drehsteifigkeit der Verdrehsicherung, aus ihrer Steifigkeit zur Seite, wo sie trägt.',
  'lock-wind-up': 'Verdrehung einer federnden Sicherung unter dem Drehmoment, das Gewinde C an das Hubteil weitergibt.',
  'lowering-torque':
    'Drehmoment eines Gewindes beim Senken der Last, andersherum gedreht; negativ, wo die Last es treibt.',
  'nut-factor-torque':
    'Anziehdrehmoment einer Schraube nach dem Drehmomentbeiwert (K-Faktor), zum Vergleich mit der Summe zweier Gewinde.',
  'pair-torque':
    'Drehmoment am Stellteil: die Drehmomente seiner beiden Gewinde zusammen, jedes mit seinem Vorzeichen.',
  'preload-for-life':
    'Kraft, die eine Feder am Anfang braucht, damit an der schlimmsten Stelle und am Ende ihrer Lebensdauer genug bleibt.',
  'preload-needed':
    'Kraft, die eine Feder zwischen Hubteil und Grundteil an der schlimmsten Stelle noch haben muss; null oder weniger, wo Gewicht und Last allein die Gewinde andrücken.',
  'raising-torque': 'Drehmoment eines Gewindes beim Heben der Last, ob es bergauf oder bergab läuft.',
  'retained-force':
    'Vorspannung, die nach einer Zeit unter gleichbleibender Dehnung bleibt, nach dem logarithmischen Gesetz.',
  'slope-met-a': 'Anstieg, den Gewinde A beim Heben der Last antrifft, bergauf plus.',
  'slope-met-c': 'Anstieg, den Gewinde C beim Heben der Last antrifft, bergauf plus.',
  'spring-force':
    'Kraft einer Feder, nachdem sich ihre Enden bewegt haben: die Kraft am Anfang plus die Rate mal die zusätzliche Dehnung.',
  'springs-at-most':
    'Größtes Drehmoment, dem gespannte Federn durch ihren Zug widerstehen, wie sie sich auch neigen: Mehr halten sie nicht.',
  'stick-slip': 'Haftgleiten: der größte Sprung, wenn eine federnde Hand mit Schlüssel ein haftendes Gewinde anfährt.',
  'string-stiffness':
    'Seitliche Steifigkeit gespannter Federn allein durch ihren Zug, wie Saiten: Sie stellen sich schräg, und ein Teil ihrer Kraft wirkt quer.',
  'string-torque':
    'Drehmoment, mit dem gespannte Federn längs der Achse einer Drehung beliebiger Größe bis zu einer halben widerstehen.',
  'thread-efficiency': 'Wirkungsgrad eines Gewindes, das bergauf läuft.',
  'downhill-torque': 'Drehmoment eines Gewindes, das bergab läuft; negativ, wo die Last allein es treibt.',
  'coil-rate': 'Federrate einer Schraubenfeder aus rundem Draht.',
  'coil-shear': 'Größte Schubspannung im Draht einer Schraubenfeder, innen an der Windung.',
  'coupon-modulus':
    'Elastizitätsmodul eines Drucks, aus einem einseitig gehaltenen Streifen, den ein Gewicht am anderen Ende biegt.',
  'least-strip':
    'Kleinste Länge eines Streifens, der die Arbeit einer Dehnung speichert, ohne eine Dehnung der Oberfläche zu überschreiten, wäre er überall gleich gebogen.',
  'meander-rate': 'Federrate eines Mäanders längs seiner Achse, mit frei drehbaren Enden, nach seinen Mittellinien.',
  'meander-rate-across':
    'Federrate eines Mäanders quer zu seiner Achse, in seiner Ebene, beide Enden gehalten; gerade Zahl halber Wellen.',
  'meander-rate-held':
    'Federrate eines Mäanders längs seiner Achse, beide Enden gegen Drehen und seitliches Gehen gehalten; gerade Zahl halber Wellen.',
  'meander-rate-thick': 'Federrate eines Mäanders wirklicher Dicke mit rechtwinkligen Ecken, die sich nicht biegen.',
  'meander-strain': 'Dehnung an der Oberfläche eines gespannten Mäanders, in jedem Steg gleich.',
  'oval-rate':
    'Federrate eines Ovals aus zwei Geraden und zwei Halbringen oder aus vier Viertelringen und vier Geraden.',
  'oval-row-rate-across':
    'Federrate einer Reihe von Ringen oder Ovalen quer zu ihrer Achse, in ihrer Ebene, beide Enden gehalten.',
  'oval-strain': 'Dehnung an der Oberfläche eines Ovals, wo daran gezogen wird.',
  'ring-rate': 'Federrate eines dünnen Rings, über einen Durchmesser gezogen.',
  'ring-strain': 'Dehnung an der Oberfläche eines Rings, wo daran gezogen wird.',
  'spring-lock': 'Drehsteifigkeit von Federn parallel zur Achse, durch ihre Rate quer und durch ihren Zug.',
  'strap-rate': 'Federrate eines Bands, das sich biegt, während seine Enden parallel bleiben und sich nähern können.',
  'strap-rate-edgewise':
    'Rate desselben Bands in der steifen Richtung, quer zu seiner gedruckten Höhe, wo zur Biegung Schub kommt.',
  'strap-strain': 'Dehnung an der Oberfläche eines Bands an seinen Enden, beide parallel gehalten.',
  'thickness-scatter': 'Änderung der Rate eines Biegestreifens mit falscher Dicke, als Anteil der Rate.',
  'ball-floor': 'Luft zwischen einer Kugel und dem Grund ihres Innensechskants; null oder weniger, und sie stößt auf.',
  'ball-seat': 'Höhe einer Kugelmitte über dem Rand des Innensechskants, auf dem sie liegt.',
  'ball-stands': 'Wie weit eine Kugel aus ihrem Innensechskant heraussteht, um einen gemessenen Weg eingepresst.',
  'convex-radius': 'Radius einer gewölbten Fläche, aus dem Vorstehen ihrer Mitte über den Rand.',
  'convex-rock':
    'Wie weit ein Fuß mit gewölbter Fläche unter einem Seitendruck kippelt, und wie weit seine Spitze zur Seite geht.',
  'drawn-hole': 'Zu zeichnende Breite eines Lochs, in das ein Stück mit Spiel geht.',
  'drawn-outside': 'Zu zeichnende Breite eines gedruckten Außenmaßes, das mit Spiel in eine Breite geht.',
  'foot-slides': 'Seitendruck, der einen Fuß auf seiner Ebene verschiebt.',
  'friction-read': 'Reibungszahl in einem 60°-Gewinde, aus dem Drehmoment, das eine Last langsam hebt.',
  'hole-offset':
    'Um wie viel ein Loch höchstens enger druckt als gezeichnet, aus der ersten Sprosse einer Leiter, in die ein gemessenes Stück geht.',
  'line-of-load': 'Wie weit neben der Achse die Last eines Fußes unter einem Seitendruck den Boden trifft.',
  'outside-offset': 'Um wie viel ein Außenmaß weiter druckt als gezeichnet, mit dem Messschieber.',
  'press-pressure': 'Druck einer gedruckten Nabe auf den Stahl, auf den sie gepresst ist.',
  'press-strain': 'Dehnung um die Bohrung einer gedruckten Nabe, die auf Stahl gepresst ist.',
  'press-torque': 'Drehmoment, das ein Presssitz allein durch Reibung hält.',
  'ring-full': 'Seitendruck, bis zu dem ein Ring unter einem Fuß rundum auf seine Ebene drückt.',
  'ring-tips': 'Seitendruck, der einen Fuß über den Außenrand seines Rings kippt.',
  'rung-width': 'Gezeichnete Breite einer Sprosse der Leiter.',
  'snap-arm': 'Kürzester Arm einer Klemme, der seine Dehnung im Erlaubten hält.',
  'snap-force': 'Kraft, die den Arm einer Klemme zur Seite hält, aus der Dehnung an seiner Wurzel.',
  'snap-push':
    'Druck, der eine Klemme über eine Kante schiebt, alle Arme zusammen; mit dem Winkel ihres Rückens der Zug, der sie abnimmt.',
  'snap-strain': 'Dehnung an der Wurzel des Arms einer Klemme, während seine Lippe zur Seite gedrückt ist.',
  'ball-interference':
    'Übermaß einer in einen Innensechskant gepressten Kugel, über zwei Flächen; unter null ist sie lose.',
  'ball-on-flat': 'Kugel auf einer Planfläche: Radius der Berührung, Annäherung, größter Druck und Steifigkeit.',
  'contact-modulus': 'Kontaktmodul zweier zusammengedrückter Werkstoffe.',
  'first-yield':
    'Last, bei der eine Planfläche unter einer Kugel zu fließen beginnt, unter ihrer Oberfläche; eine bleibende Delle kommt später und wächst langsam.',
  'lasting-dent':
    'Delle, die eine Kugel nach einer Last über dem ersten Fließen in einer Planfläche lässt; kleinere Lasten lassen nicht mehr.',
  'load-frequency': 'Frequenz, mit der eine Last auf dem Stellelement schwingt, das sie trägt.',
  'log-creep':
    'Kriechen eines belasteten Teils nach dem logarithmischen Gesetz: in jedem Zehnfachen der Zeit so viel wie in dem davor.',
  'shank-bends':
    'Wie weit das Ende eines runden Schafts, der am anderen Ende gehalten ist, unter einem Druck dort zur Seite geht.',
  'shank-stiffness': 'Längssteifigkeit eines Gewindeschafts, an seinem Kern genommen.',
  'thermal-growth': 'Wachsen einer Länge beim Erwärmen.',
  'thread-stiffness':
    'Längssteifigkeit eines eingeschraubten Gewindes, mit den Enden von Schraube und Mutterteil, die mit ihm nachgeben.',
  'two-in-series': 'Steifigkeit zweier Teile in einer Kette, immer unter der des weicheren.',
  'vee-force': 'Kraft über jede der beiden Berührungen einer Kugel in einem Prisma.',
  'vee-sink': 'Einsinken einer Kugel in einem Prisma, aus der Annäherung an jeder Flanke.',
  warming: 'Temperaturänderung eines Teils, das eine warme Hand oder ein neuer Raum auf seinen Endwert bringt.',
  'ball-lift':
    'Höhe einer Kugel auf drei anderen, Mitte über Mitten, und wie schnell sie sinkt, wenn diese auseinandergehen.',
  'ball-push':
    'Kräfte auf drei Kugeln zu ihrer Mitte hin, zusammen genommen, welche die obere halten, nach gleicher Arbeit.',
  'felt-at-tip': 'Steifigkeit eines Teils, wie die Spitze sie durch eine Untersetzung der Bewegung spürt.',
  'lead-for-angle': 'Gesuchte Bewegung je Umdrehung, aus dem gewünschten Schritt für den wiederholbaren Handwinkel.',
  'lever-bending':
    'Biegesteifigkeit am kurzen Arm eines Hebels: ein quadratischer Stab, an einem Ende der Drehpunkt, am anderen die Schraube.',
  'lever-motion': 'Bewegung am kurzen Arm eines Hebels, für kleine Winkel.',
  'lever-pivot':
    'Was der Drehpunkt eines Hebels trägt, solange die Last zwischen Drehpunkt und Schraube steht, und wie viel von seinem Nachgeben die Spitze spürt.',
  'lever-push': 'Kraft am langen Arm eines Hebels, welche die Last am kurzen hält.',
  'long-arm-for': 'Langer Arm des Hebels, der eine Bewegung untersetzt.',
  'push-between-balls': 'Kraft über jede der drei Berührungen unter einer Kugel, die auf drei anderen liegt.',
  'step-down': 'Untersetzung: die Bewegung der Spitze als Anteil der Bewegung ihrer Antriebsschraube.',
  'wedge-for': 'Winkel des Keils, der eine Bewegung untersetzt.',
  'wedge-push':
    'Druck, der einen Keil unter seiner Last treibt, mit Reibung auf der Schräge, unter der Grundfläche und in der Führung dessen, was er hebt.',
  'wedge-rise': 'Anstieg eines Keils, der längs seiner Grundfläche geschoben wird.',
  'edge-correction':
    'Wie weit sich das Teil an einem Fuß bewegen muss, um die Kante auszurichten, wenn der andere Fuß darunter bleibt.',
  'edge-rises': 'Wie stark eine Kante je Länge ansteigt, aus zwei Höhen auf ihr.',
  'foot-correction': 'Wie weit sich das Teil an einem Fuß bewegen muss, um eben zu sein, wenn ein anderer Fuß bleibt.',
  'one-foot-lift': 'Wie weit sich ein Ort des Teils bewegt, wenn sich der erste Fuß bewegt und die anderen bleiben.',
  'plane-height': 'Höhe einer Ebene an einem Ort.',
  'plane-rises': 'Die beiden Anstiege der Ebene durch drei Höhen.',
  'plane-tilt': 'Neigung einer Ebene: ihr steilster Anstieg je Länge, und dessen Winkel.',
  'turns-for': 'Umdrehungen für eine gewünschte Bewegung, mit ihrem Drehsinn.',
  'weight-on-feet': 'Wie sich drei Füße ein Gewicht teilen; ein Fuß mit weniger als null höbe ab.',
  'abbe-error':
    'Abbe-Fehler: um wie viel eine Messuhr neben der Achse zu viel zeigt, wenn das Teil beim Bewegen kippt.',
  'cosine-error-face':
    'Kosinusfehler eines schräg gestellten Messbolzens auf einer ebenen Fläche, die sich rechtwinklig zu sich bewegt: Er zeigt zu viel.',
  'cosine-error-point':
    'Kosinusfehler einer schräg gestellten Messuhr, die einem Punkt des Teils folgt, etwa einer Kugel unter einem flachen Einsatz: Sie zeigt zu wenig.',
  'lead-off': 'Wie weit eine Steigung von einer anderen abweicht, als Anteil davon; ihre Richtungen zählen nicht.',
  'three-reading-lead':
    'Nettosteigung nach der Geraden mit der kleinsten Summe der Abstandsquadrate von drei Ablesungen.',
  'two-reading-doubt':
    'Wie weit eine Steigung aus zwei Ablesungen danebenliegen kann, wenn jede um so viel danebenliegen kann: beide in der schlechten Richtung.',
  'two-reading-lead':
    'Nettosteigung aus zwei Ablesungen: die Bewegung der Messuhr, geteilt durch die Umdrehungen dazwischen.',
};

export const RELATION_WORDS: Readonly<Record<string, { readonly says: string }>> = Object.fromEntries(
  Object.entries(says).map(([name, text]) => [name, { says: text }]),
);
