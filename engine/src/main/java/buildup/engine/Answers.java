package buildup.engine;

import buildup.catalog.Catalog;
import buildup.engine.buy.Purchases;
import buildup.engine.buy.Shopping;
import buildup.engine.hold.backing.Backing;
import buildup.engine.hold.backing.Backings;
import buildup.engine.hold.fixing.Fixing;
import buildup.engine.hold.fixing.Places;
import buildup.engine.hold.framing.Framed;
import buildup.engine.hold.framing.Landed;
import buildup.engine.hold.framing.Landing;
import buildup.engine.hold.framing.Landings;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Proposal;
import buildup.engine.hold.order.Orders;
import buildup.engine.hold.order.PuttingUp;
import buildup.engine.hold.season.Seasons;
import buildup.engine.hold.season.Year;
import buildup.engine.hold.support.Pull;
import buildup.engine.hold.support.Pulls;
import buildup.engine.hold.support.RowCures;
import buildup.engine.hold.support.Support;
import buildup.engine.hold.support.Supports;
import buildup.engine.hold.support.Ties;
import buildup.engine.hold.tolerance.ErrorStudy;
import buildup.engine.hold.tolerance.Tolerances;
import buildup.engine.judge.along.SizeCurves;
import buildup.engine.judge.clearance.Clearance;
import buildup.engine.judge.clearance.KeepingClear;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.must.Musts;
import buildup.engine.judge.proportion.Proportion;
import buildup.engine.judge.proportion.Proportions;
import buildup.engine.judge.verdict.Facts;
import buildup.engine.judge.verdict.Verdict;
import buildup.engine.judge.verdict.Verdicts;
import buildup.engine.look.joint.JointFaults;
import buildup.engine.look.joint.JointSheet;
import buildup.engine.look.joint.Joints;
import buildup.engine.look.joint.OpenJoint;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Lights;
import buildup.engine.look.sight.Approach;
import buildup.engine.look.sight.Approaches;
import buildup.engine.look.sight.Eyes;
import buildup.engine.look.sight.Sighting;
import buildup.engine.mill.template.Templates;
import buildup.engine.room.cope.Cope;
import buildup.engine.room.cope.Copes;
import buildup.engine.room.run.Coving;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Runs;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.surface.Surfaced;
import buildup.engine.room.surface.Surveying;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.SectionSheets;
import buildup.engine.section.heading.JobSheet;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Eye;
import buildup.engine.section.stack.Light;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Every answer about one stack. A question is answered when it is first asked, and those that it stands on with it; this
 * is the one place that knows which stands on which.
 */
public final class Answers {
    private final Blocks blocks;
    private final LazyAnswer<Section> shape;
    private final LazyAnswer<List<Lighting>> lights;
    private final LazyAnswer<List<Sighting>> sights;
    private final LazyAnswer<List<Approach>> approaches;
    private final LazyAnswer<Joints> joints;
    private final LazyAnswer<List<OpenJoint>> openJoints;
    private final LazyAnswer<List<Fixed>> fixed;
    private final LazyAnswer<Section> section;
    private final LazyAnswer<List<Backing>> backings;
    private final LazyAnswer<List<Proposal>> proposals;
    private final LazyAnswer<Optional<Places>> places;
    private final LazyAnswer<Support> support;
    private final LazyAnswer<List<Pull>> pulls;
    private final LazyAnswer<PuttingUp> order;
    private final LazyAnswer<Optional<Job>> job;
    private final LazyAnswer<Surfaced> surfaces;
    private final LazyAnswer<List<Landing>> landings;
    private final LazyAnswer<Framed> framing;
    private final LazyAnswer<List<Cope>> copes;
    private final LazyAnswer<Purchases> purchases;
    private final LazyAnswer<Optional<Shopping>> shopping;
    private final LazyAnswer<Year> year;
    private final LazyAnswer<ErrorStudy> errors;
    private final LazyAnswer<List<Sheet>> ofSection;
    private final LazyAnswer<List<Sheet>> ofLooks;
    private final LazyAnswer<List<Sheet>> sheets;
    private final LazyAnswer<Clearance> clearance;
    private final LazyAnswer<Proportion> proportion;
    private final LazyAnswer<List<MustResult>> must;
    private final LazyAnswer<Verdict> verdict;
    private final LazyAnswer<SizeCurves> curves;

    private final List<Notice> read;
    private final Optional<CureTrial> trial;

    /**
     * @param lights to shine in place of those of the stack
     * @param read what was said in reading the document
     * @param trial of the cures that are told; absent when this is itself the trial of one, and nothing is proposed
     * @param curves draws what is asked of the stack against its free sizes
     */
    Answers(
            Blocks blocks,
            List<Placed> placed,
            Optional<List<Light>> lights,
            List<Notice> read,
            Optional<CureTrial> trial,
            Function<Answers, SizeCurves> curves) {
        this.blocks = blocks;
        this.curves = new LazyAnswer<>(notices -> curves.apply(this));
        this.read = List.copyOf(read);
        this.trial = trial;
        Catalog catalog = blocks.catalog();
        boolean told = trial.isPresent();
        this.shape = new LazyAnswer<>(notices -> Composer.composeFastened(blocks.stack(), placed, notices));
        this.lights = new LazyAnswer<>(notices ->
                Lights.of(shape.answer(), lights.orElse(blocks.stack().lights()), notices));
        this.sights = new LazyAnswer<>(
                notices -> Eyes.of(shape.answer(), !blocks.ways().isEmpty(), notices));
        this.joints = new LazyAnswer<>(notices -> Joints.of(shape.answer(), sights.answer()));
        this.openJoints = new LazyAnswer<>(notices ->
                JointFaults.of(shape.answer(), joints.answer(), eyes(), gapsOfRules(), trial.isPresent(), notices));
        this.fixed = new LazyAnswer<>(notices -> Fixing.of(
                shape.answer(), blocks.rows(), this.lights.answer(), sights.answer(), catalog, told, notices));
        this.section = new LazyAnswer<>(notices ->
                shape.answer().heldBy(Ties.fastened(shape.answer(), blocks.fastenings(), fixed.answer()), notices));
        this.backings = new LazyAnswer<>(notices -> Backings.of(
                section.answer(),
                Ties.nailed(section.answer(), fixed.answer()),
                RowCures.pins(section.answer(), fixed.answer(), this::places),
                piece -> places().stream()
                        .flatMap(search -> RowCures.blocked(section.answer(), fixed.answer(), search, piece).stream())
                        .toList(),
                notices));
        this.approaches =
                new LazyAnswer<>(notices -> Approaches.of(section.answer(), blocks.ways(), sights.answer(), notices));
        // a search: run for whoever has come to the nails, also with an empty list of them
        this.proposals = new LazyAnswer<>(notices -> blocks.nailing() && trial.isPresent()
                ? Fixing.propose(section.answer(), this.lights.answer(), sights.answer(), catalog)
                : List.of());
        this.order = new LazyAnswer<>(
                notices -> Orders.of(section.answer(), blocks.bench(), fixed.answer(), catalog, notices));
        this.job = new LazyAnswer<>(notices -> blocks.plan().isEmpty()
                ? Optional.empty()
                : Optional.of(Runs.of(section.answer(), blocks.plan(), notices)));
        this.places = new LazyAnswer<>(notices -> trial.map(tells -> new Places(
                section.answer(),
                this.lights.answer(),
                sights.answer(),
                catalog,
                nail -> Landings.every(section.answer(), nail, job.answer()))));
        this.surfaces = new LazyAnswer<>(notices -> Surveying.of(section.answer(), job.answer(), notices));
        this.copes = new LazyAnswer<>(notices -> Copes.of(section.answer(), job.answer(), notices));
        this.landings =
                new LazyAnswer<>(notices -> Landings.of(section.answer(), fixed.answer(), job.answer(), notices));
        this.support = new LazyAnswer<>(notices -> Supports.of(
                section.answer(),
                blocks.loads(),
                fixed.answer(),
                Landed.of(section.answer(), fixed.answer(), landings.answer()),
                blocks.friction(),
                places(),
                notices));
        this.pulls = new LazyAnswer<>(notices -> Pulls.of(section.answer(), support.answer(), fixed.answer(), notices));
        this.framing = new LazyAnswer<>(
                notices -> Framed.of(section.answer(), landings.answer(), proposals.answer(), job.answer()));
        this.purchases = new LazyAnswer<>(notices -> Purchases.of(
                section.answer(),
                blocks.supplies(),
                fixed.answer(),
                framing.answer(),
                job.answer(),
                blocks.shop(),
                notices));
        // what is wrong with the sticks is said where they are cut
        this.shopping = new LazyAnswer<>(notices -> Cuts.shopping(this));
        this.year = new LazyAnswer<>(notices -> Seasons.of(
                section.answer(),
                blocks.seasons(),
                fixed.answer(),
                joints.answer().open(),
                job.answer(),
                notices));
        this.errors = new LazyAnswer<>(notices -> Tolerances.of(
                section.answer(),
                blocks.errors(),
                Musts.wanted(
                        blocks.must(),
                        SectionSheets.measured(section.answer()),
                        blocks.stack().lengths()),
                fixed.answer(),
                catalog,
                trial.isPresent(),
                notices));
        this.ofSection = new LazyAnswer<>(notices -> Sheets.ofSection(this));
        this.ofLooks = new LazyAnswer<>(notices -> Sheets.ofLooks(this));
        this.sheets = new LazyAnswer<>(notices -> Sheets.ofQuestions(this, ofSection.answer(), ofLooks.answer()));
        this.clearance = new LazyAnswer<>(
                notices -> KeepingClear.of(section.answer(), blocks.clear(), trial.isPresent(), notices));
        this.proportion =
                new LazyAnswer<>(notices -> Proportions.of(section.answer(), blocks.proportion(), catalog, notices));
        this.must = new LazyAnswer<>(notices -> blocks.must().isEmpty()
                ? List.of()
                : Musts.of(
                        blocks.must(),
                        sheets.answer(),
                        blocks.keys(),
                        blocks.stack().lengths(),
                        notices));
        this.verdict = new LazyAnswer<>(notices -> Verdicts.of(new Facts(
                section(),
                blocks.catalog(),
                lights(),
                sights(),
                approaches(),
                joints(),
                fixed(),
                landings.answer(),
                support(),
                order(),
                year(),
                surfaces(),
                errors(),
                clearance(),
                proportion(),
                must(),
                worstFirst(Stream.concat(read().stream(), notices().stream()).toList()),
                blocks.keys())));
    }

    /**
     * Asks on a second thread for what takes longest, where every question will be asked: whoever needs an answer that is
     * under way waits for it.
     */
    void askAhead() {
        List<LazyAnswer<?>> longest = List.of(proposals, support, pulls, order, year, errors);
        Thread ahead = new Thread(() -> longest.forEach(LazyAnswer::answer), "ask ahead");
        // what fails there fails again, and is said, where it is needed
        ahead.setUncaughtExceptionHandler((thread, failure) -> {});
        ahead.setDaemon(true);
        ahead.start();
    }

    /** What its document holds for the questions. */
    Blocks blocks() {
        return blocks;
    }

    /** The stack composed, as its fastenings hold it. */
    public Section section() {
        return section.answer();
    }

    /** One for each piece of trim. */
    public List<Backing> backings() {
        return backings.answer();
    }

    /** One for each light that can shine on it. */
    public List<Lighting> lights() {
        return lights.answer();
    }

    /** One for each eye that stands in the room. */
    public List<Sighting> sights() {
        return sights.answer();
    }

    /** Slots between neighbors, and trim that no eye sees. */
    public Joints joints() {
        return joints.answer();
    }

    /** Slots that an eye sees and nobody meant. */
    public List<OpenJoint> openJoints() {
        return openJoints.answer();
    }

    /** The eyes that stand in the room. */
    private List<Eye> eyes() {
        return sights.answer().stream().map(Sighting::eye).toList();
    }

    /** The slots, by the names in their sheet, that a line under {@code must:} speaks of. */
    private Set<List<String>> gapsOfRules() {
        Sheet gaps = JointSheet.of(shape.answer(), joints.answer().open());
        return Musts.named(blocks.must(), gaps, blocks.stack().lengths());
    }

    /** One for each way of an eye. */
    public List<Approach> approaches() {
        return approaches.answer();
    }

    /** One for each fastening of the document. */
    public List<Fixed> fixed() {
        return fixed.answer();
    }

    /** Places where its pieces could be fastened; none unless the document speaks of fastenings. */
    public List<Proposal> proposals() {
        return proposals.answer();
    }

    /** What holds it. */
    public Support support() {
        return support.answer();
    }

    /** What fastenings must hold against leaning. */
    public List<Pull> pulls() {
        return pulls.answer();
    }

    /** Whether it can be put up in its order. */
    public PuttingUp order() {
        return order.answer();
    }

    /** The section along the plan; absent when the document holds none. */
    public Optional<Job> job() {
        return job.answer();
    }

    /** What the room as it was measured leaves along the plan. */
    public Surfaced surfaces() {
        return surfaces.answer();
    }

    /** The coped ends of the plan. */
    public List<Cope> copes() {
        return copes.answer();
    }

    /** What there is to nail to along the plan. */
    public Framed framing() {
        return framing.answer();
    }

    /** What is bought along the plan besides sticks. */
    public Purchases purchases() {
        return purchases.answer();
    }

    /** All that is bought along the plan, sticks included; absent without a plan or a stock. Takes as long as the cuts. */
    Optional<Shopping> shopping() {
        return shopping.answer();
    }

    /** The share of the lengths of sticks that is bought over them; absent when none is asked. */
    Optional<Double> waste() {
        return blocks.waste();
    }

    /** The stack through its seasons. */
    public Year year() {
        return year.answer();
    }

    /** What the errors of sizes do to it. */
    public ErrorStudy errors() {
        return errors.answer();
    }

    /** The sheets of all questions but the rules and the verdict. */
    List<Sheet> sheets() {
        return sheets.answer();
    }

    /**
     * Whether the lines under {@code must:} ask for figures of outlines, light and sight alone, each understood: a picture
     * of these then need not wait for the statics.
     */
    boolean rulesAreOfLooks() {
        return Musts.understood(
                blocks.must(),
                Stream.concat(ofSection.answer().stream(), ofLooks.answer().stream())
                        .toList(),
                blocks.stack().lengths());
    }

    /** What it keeps clear of. */
    public Clearance clearance() {
        return clearance.answer();
    }

    /** How it reads beside the books. */
    public Proportion proportion() {
        return proportion.answer();
    }

    /** How the stack stands to each line under {@code must:}. */
    public List<MustResult> must() {
        return must.answer();
    }

    /** What is asked of the stack against each of its free sizes, all others as they are; none without a free size. */
    public SizeCurves curves() {
        return curves.answer();
    }

    /** Will it be right? Asks every question. */
    public Verdict verdict() {
        return verdict.answer();
    }

    private static List<Notice> worstFirst(List<Notice> notices) {
        Notices all = new Notices();
        all.addAll(notices);
        return all.sorted();
    }

    /** Coves to be run over the table-saw blade. */
    public List<Coving> covings() {
        return blocks.covings();
    }

    /** The wood and the saws to cut with; absent when the document holds no stock. */
    public Optional<Shop> shop() {
        return blocks.shop();
    }

    /** What the title block of its drawings says. */
    public JobSheet heading() {
        return blocks.heading();
    }

    /** What its templates are made for. */
    public Templates templates() {
        return blocks.templates();
    }

    /** The lists from which it was read. */
    public Catalog catalog() {
        return blocks.catalog();
    }

    /** What was said in answering these questions, asked now if they were not before. */
    List<Notice> notices(Set<Question> questions) {
        return tried(untried(questions));
    }

    /** What was said in reading the document. */
    List<Notice> read() {
        return tried(read);
    }

    /** Where fastenings could go; nowhere in the trial of a cure. */
    private Optional<Places> places() {
        return places.answer();
    }

    private List<Notice> tried(List<Notice> some) {
        return trial.map(cures -> cures.tried(some, this::everything)).orElse(some);
    }

    private List<Notice> everything(Set<Question> questions) {
        return Stream.concat(read.stream(), untried(questions).stream()).toList();
    }

    private List<Notice> untried(Set<Question> questions) {
        Map<Question, List<LazyAnswer<?>>> asked = new EnumMap<>(Question.class);
        asked.put(Question.SECTION, List.of(shape, section));
        asked.put(Question.BACKING, List.of(backings));
        asked.put(Question.LIGHT, List.of(lights));
        asked.put(Question.SIGHT, List.of(sights));
        asked.put(Question.JOINT, List.of(openJoints));
        asked.put(Question.APPROACH, List.of(approaches));
        // what is proposed says nothing of what is there
        asked.put(Question.FIXING, List.of(fixed));
        asked.put(Question.SUPPORT, List.of(support, pulls));
        asked.put(Question.ORDER, List.of(order));
        asked.put(Question.RUN, List.of(job, surfaces, landings, framing, copes));
        asked.put(Question.BUYING, List.of(purchases));
        asked.put(Question.SEASON, List.of(year));
        asked.put(Question.TOLERANCE, List.of(errors));
        asked.put(Question.CLEARANCE, List.of(clearance));
        asked.put(Question.PROPORTION, List.of(proportion));
        asked.put(Question.MUST, List.of(must));
        return EnumSet.copyOf(questions).stream()
                .flatMap(question -> asked.getOrDefault(question, List.of()).stream())
                .flatMap(one -> one.notices().stream())
                .toList();
    }

    /** What was said in answering all questions. */
    List<Notice> notices() {
        return notices(EnumSet.allOf(Question.class));
    }
}
