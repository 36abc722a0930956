/** Wörter der Zeilen, Prüfungen und Beiträge, nach denen das Entwurfsblatt rechnet. */
import type * as En from '../../en/figures/design-sheet-lines.ts';
import type { Same } from '../../same.ts';
import { chosen } from '../choices.ts';
import { capital, manySteps, oneStep } from '../steps.ts';

const FIRST = {
  screw: 'Schraube, abgeschert',
  nut: 'Mutter, ausgeschert',
  core: 'Kern, gerissen',
  body: 'Wand um die Mutter, gerissen',
};

export const LINES: Same<typeof En.LINES> = {
  motion: {
    perTurn: 'je Umdrehung, im Uhrzeigersinn',
    perStep: (step, inATurn) => `je ${step} (${inATurn} auf eine Umdrehung)`,
    hand: 'Bewegung des wiederholbaren Handwinkels',
    stepCheck: (v) => `${capital(oneStep(v.step))} bewegt ${v.found}; gewünscht war ${v.wanted} oder weniger.`,
  },
  travel: {
    usable: (thread) => `nutzbare Länge von Gewinde ${thread}`,
    turns: 'Umdrehungen zwischen den Anschlägen',
    stroke: 'Hub',
    wanted: 'gewünschter Hub',
    strokeCheck: (v) => `Die Gewinde geben einen Hub von ${v.found}; gewünscht war ${v.wanted}.`,
    stopsClockwise: 'hält es im Uhrzeigersinn auf',
    stopsAnticlockwise: 'hält es gegen den Uhrzeigersinn auf',
    mark: (thread) => `Marke: ${thread} aus der Endlage zurückdrehen`,
    eaten: 'Gewinde je Hub verbraucht',
  },
  height: {
    name: 'Höhe',
    noParts: 'die Höhen der Teile sind nicht angegeben: schreibe die Teile, eines je Zeile',
    closed: 'Bauhöhe, ganz eingefahren',
    middle: 'Bauhöhe in der Mitte des Hubs',
    open: 'Bauhöhe, ganz ausgefahren',
    ground: 'worauf das Grundteil steht',
    hangs: (by) =>
      `im Hub tritt das Stellteil unten aus dem Grundteil und reicht ${by} darunter. Stelle das Grundteil über ein Loch oder schreibe „auf dem Boden“ in seine Zeile: Dann ist der Boden ein Anschlag`,
    check: (v) => `In der Mitte seines Hubs ist es ${v.found} hoch; gewünscht war ${v.wanted} oder weniger.`,
  },
  fit: {
    wall: 'Wand der Hülse',
    wallRange: 'Wand der Hülse, kleinste bis größte',
    wallCheck: (v) => `Die Wand der Hülse ist an der dünnsten Stelle ${v.found}; gewünscht war mindestens ${v.wanted}.`,
    refusedBefore: 'das Paar ist vorher abgelehnt',
    play: 'Spiel',
    playTerm: 'Spiel, bei Umkehr',
    playOf: (thread, classes) => `Spiel von Gewinde ${thread}, ${classes}`,
    binds: 'Am engen Ende der Grenzmaße klemmen die Gewinde.',
    lost: 'toter Gang bei Umkehr ohne Vorspannung, höchstens',
    lostText: (v) => `${v.turns}, ${v.steps} ${manySteps(v.step)}`,
  },
  preload: {
    preload: 'Vorspannung',
    atStart: 'Kraft der Feder am Anfang des Hubs',
    rate: 'Federrate',
    springForce: 'Kraft der Feder über den Hub',
    spring: 'Feder',
    none: 'keine',
    thread: (thread) => `Gewinde ${thread}`,
    touching: {
      seated: (flank) => `die ${flank} liegt an`,
      'short of margin': (flank) => `die ${flank} liegt an, unter der verlangten Reserve`,
      'lets go': 'öffnet sich',
    },
  },
  afterYear: {
    name: 'Vorspannung nach einem Jahr',
    why: 'nach dem Anteil, den die Feder verliert, wird nicht gefragt; nenne die Teile, mit ihm in der Zeile der Federn',
    notInRow:
      'die Zeile der Federn sagt nicht, was sie verlieren: schreibe es dazu, wie in „loses 8 %“ für jede zehnfache Zeit',
    check: (verdict) => `Nach einem Jahr: ${verdict}`,
    force: (loss) => `Kraft der Feder nach einem Jahr, bei ${loss} Verlust für jede zehnfache Zeit`,
  },
  effort: {
    effort: 'Kraftaufwand',
    forcesUnknown: 'nicht gerechnet, weil die Kräfte auf die Gewinde nicht bekannt sind',
    bySelf: 'ob die Last das Teil von selbst dreht',
    selfLocking: 'Die Last kann das Teil nicht von selbst drehen.',
    notSelfLocking: 'Die Last dreht das Teil von selbst: Es braucht eine Bremse oder mehr Reibung.',
    against: 'Drehmoment gegen die Last',
    along: 'Drehmoment mit der Last',
    rim: 'Kraft der Hand am Rand',
    rimUnlimited: (force) => `${force}, und keine Grenze dafür ist verlangt`,
    lock: 'Drehmoment, das die Verdrehsicherung halten muss',
    kappa: 'Steifigkeit der Verdrehsicherung, Drehmoment je Radiant',
    stiffnessUnknown: {
      post: 'nicht bekannt: schreibe Stift und Werkstoff in die Zeile der Verdrehsicherung, wie „Stahlstift 8 mm, E-Modul 2000 MPa“ (des gedruckten Arms), oder eine gemessene Steifigkeit',
      springs: 'nicht bekannt: sie folgt aus Zeichnung, Kraft und Radius der Federn zwischen Grundteil und Hubteil',
      none: 'nicht bekannt: keine Zeile nennt eine Verdrehsicherung',
    },
    windUp: 'Verdrehung der Sicherung',
    windUpTurning: 'Verdrehung der Sicherung, beim Umkehren',
    windUpTerm: 'Verdrehung der Sicherung, bei Umkehr unter der größten Last',
  },
  tip: {
    contact: 'Berührung an der Spitze',
    tip: 'die Spitze',
    sinks: 'die Spitze sinkt ein um',
    sinkTerm: 'Einsinken der Spitze, von der kleinsten zur größten Last',
    pressure: 'größter Druck',
    yields: 'beginnt zu fließen bei',
    yieldCheck: (v) =>
      `Eine Kugel dieser Größe auf ${chosen('seat', v.seat)} beginnt bei ${v.yields} zu fließen; sie trägt ${v.carries}.`,
    pastYield: 'über dem ersten Fließen gelten die elastischen Zahlen nicht',
    warmth: 'Wärme',
    growthUnknown: 'Wachsen durch Wärme',
    grows: 'wächst mit dieser Wärme',
    thatIs: 'das sind',
    creeps: (material) =>
      `Teile im Kraftfluss sind aus ${chosen('path', material)}, das unter Last kriecht. Lass Metall tragen; benutze gedruckte Teile nur zum Führen und Sichern.`,
    noCreep: (materials) =>
      `Kein gedruckter Kunststoff liegt im Kraftfluss: Angegeben ist ${materials.map((m) => chosen('path', m)).join(', ')}.`,
  },
  errors: {
    lead: 'Steigungsfehler über den gewünschten Hub, schlimmster Fall',
    leadIndependent: 'derselbe, quadratisch addiert',
    leadWhole: 'Steigungsfehler über den ganzen Hub, schlimmster Fall',
    beyond: 'der Hub über den gewünschten hinaus',
    beyondText: (v) =>
      `beurteilt sind die Fehler über den gewünschten Hub von ${v.stroke}; am Ende des ganzen Hubs von ${v.whole} ist die Summe ${v.found}, gewünscht war ${v.wanted} oder weniger`,
    hand: 'Einstellen von Hand',
    periodic: 'periodischer Fehler, beide Gewinde, von Berg zu Tal',
    notMeasured: 'nicht gemessen',
    stalls: 'ob die Bewegung stockt',
    periodicUnknown: 'die periodischen Fehler sind nicht gemessen',
    neverStalls: (slowest) =>
      `Die Bewegung stockt nie: An der langsamsten Stelle macht sie noch ${slowest} je Umdrehung.`,
    doesStall:
      'Die periodischen Fehler sind steiler als die Nettosteigung: In einem Teil jeder Umdrehung stockt die Bewegung oder läuft zurück.',
    together: 'Summe am fernen Ende des gewünschten Hubs, schlimmster Fall',
    togetherKnown: 'Summe am fernen Ende des gewünschten Hubs, schlimmster Fall, der Beiträge mit einer Zahl',
    termCheck: (v) => `${capital(v.term)}: ${v.found}; gewünscht war ${v.wanted} oder weniger.`,
    sumUnjudged: (v) =>
      `${v.found} von gewünschten ${v.wanted}, ohne ${v.missing === 1 ? 'den Beitrag, der keine Zahl hat' : `die ${v.missing} Beiträge, die keine Zahl haben`}`,
  },
  strength: {
    name: 'Festigkeit von Kernen und Gewinden',
    carries: (thread, first) => `Gewinde ${thread} trägt, begrenzt durch: ${FIRST[first]}`,
    check: (v) =>
      `Über Gewinde ${v.thread} gehen höchstens ${v.found}; an der schwächsten Stelle (${FIRST[v.first]}) trägt es ${v.wanted}.`,
  },
  press: {
    name: 'Presssitz der Kugel',
    carries: 'die Kugel bleibt, wohin sie gepresst wurde, bis',
    check: (v) =>
      `Die Kugel trägt höchstens ${v.found}; sie wurde mit ${v.wanted} eingepresst und geht unter weniger nicht weiter.`,
    notRead:
      'die Kraft, mit der sie eingepresst wurde, ist nicht angegeben: schreibe sie in die Zeile der Spitze, wie „gepresst mit 2000 N“',
    loose: 'die Kugel ist in ihrem Innensechskant lose, darum muss Kleber oder eine Hülse sie halten',
  },
  key: {
    name: 'Spiel der Passfeder in ihrer Nut',
    term: 'Spiel der Passfeder, bei Umkehr',
    notStated:
      'es ist nicht angegeben: in die Zeile der Verdrehsicherung damit, wie in „Passfeder bei 12 mm, Spiel 0,1 mm“',
    notCrossed: 'nicht durchlaufen, das Drehmoment drückt die Passfeder in beiden Richtungen auf dieselbe Seite',
  },

  notLookedAt: {
    sideLoad: { name: 'Seitenlast und Reibung der Führung', why: 'danach wird nicht gefragt' },
    float: { name: 'seitliches Spiel der Spitze', why: 'nach der Höhe der Spitze wird nicht gefragt' },
    jerks: {
      name: 'Rucken beim Anfahren (Haftgleiten)',
      why: 'nach Haftreibung und Verdrehung der Hand wird nicht gefragt',
    },
    collar: { name: 'Reibung eines Bunds oder der Spitze', why: 'nur die Gewinde gelten als reibend' },
    stiffness: {
      name: 'Steifigkeit von Gewinden, Schrauben und Grundteil',
      why: 'nach Kernen und Elastizitätsmoduln im Kraftfluss wird nicht gefragt',
    },
    otherSeats: { name: 'Kugel im Prisma, im Kegel oder auf Rollen', why: 'der Sitz gilt als Planfläche' },
    axes: { name: 'Achsen der beiden Gewinde nicht in einer Linie', why: 'nach Versatz und Winkel wird nicht gefragt' },
    plating: {
      name: 'Beschichtung',
      why: 'Toleranzklassen gelten vor dem Beschichten, und nach einer Schicht wird nicht gefragt',
    },
    drills: { name: 'Kernlochbohrer', why: 'nach dem Anteil des vollen Gewindes wird nicht gefragt' },
  },
};
