package buildup.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.core.domain.JavaModifier.SYNTHETIC;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.NoticeWords;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.Source;
import com.tngtech.archunit.lang.conditions.ArchConditions;
import com.tngtech.archunit.lang.syntax.elements.ClassesShould;
import java.util.AbstractCollection;
import java.util.AbstractMap;
import java.util.BitSet;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What each room of the house may hold, and whom it may know. */
class ArchitectureTest {
    private static final JavaClasses HOUSE = House.CLASSES;

    /** Fewer, and the rules would be looking past the house. */
    private static final int FEWEST_CLASSES = 40;

    private static final int FEWEST_PACKAGES = 20;

    /** A folder with more tells nobody what it is about. */
    private static final int MOST_FILES = 25;

    /** The types that turn a number into a length or an angle, and back. */
    private static final Set<String> MEASURES =
            Set.of("buildup.shared.length.Length", "buildup.shared.length.LengthUnit", "buildup.shared.length.Angle");

    /** {@code Type.method} of shared and catalog whose bare number is a density, a ratio, a speed or another plain number. */
    private static final Set<String> PLAIN_NUMBERS =
            Set.of("Wood.densityPerCubicFoot", "Wood.specificGravity", "Wood.radialChange", "Wood.tangentialChange");

    private static final Set<Class<?>> CHANGEABLE = Set.of(
            AbstractCollection.class,
            AbstractMap.class,
            StringBuilder.class,
            AtomicInteger.class,
            AtomicLong.class,
            AtomicReference.class,
            Random.class,
            BitSet.class);

    @Test
    void the_rules_look_at_every_module() {
        assertThat(HOUSE.size()).isGreaterThan(FEWEST_CLASSES);
        assertThat(Stream.of("shared", "profiles", "catalog", "engine", "cli"))
                .allSatisfy(module -> assertThat(HOUSE)
                        .as(module)
                        .anyMatch(type -> type.getPackageName().startsWith("buildup." + module)));
    }

    @Test
    void a_module_stands_only_on_those_above_it() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("shared")
                .definedBy("buildup.shared..")
                .layer("profiles")
                .definedBy("buildup.profiles..")
                .layer("catalog")
                .definedBy("buildup.catalog..")
                .layer("engine")
                .definedBy("buildup.engine..")
                .layer("cli")
                .definedBy("buildup.cli..")
                .whereLayer("profiles")
                .mayOnlyBeAccessedByLayers("catalog", "engine", "cli")
                .whereLayer("catalog")
                .mayOnlyBeAccessedByLayers("engine", "cli")
                .whereLayer("engine")
                .mayOnlyBeAccessedByLayers("cli")
                .whereLayer("cli")
                .mayNotBeAccessedByAnyLayer()
                .because("data flows one way, so that a module can be read without those below it")
                .check(HOUSE);
    }

    @Test
    void a_simple_name_stands_for_one_type() {
        Map<String, Set<String>> named = new TreeMap<>();
        HOUSE.stream()
                .filter(type -> type.getEnclosingClass().isEmpty())
                .filter(type -> !type.getSimpleName().equals("package-info"))
                .forEach(type -> named.computeIfAbsent(type.getSimpleName(), name -> new TreeSet<>())
                        .add(type.getName()));
        named.values().removeIf(types -> types.size() == 1);
        assertThat(named)
                .as("a reader who meets a name in another package has to know what it is")
                .isEmpty();
    }

    @Test
    void no_two_packages_need_each_other() {
        slices().matching("buildup.(**)")
                .should()
                .beFreeOfCycles()
                .because("a package that can be understood alone can be mended alone")
                .check(HOUSE);
    }

    @Test
    void only_the_region_package_knows_the_overlay_library() {
        outside("buildup.profiles.region..")
                .dependOnClassesThat()
                .resideInAPackage("org.locationtech.jts..")
                .because("the library's defaults leave slits, and one place asks it in the way that does not")
                .check(HOUSE);
    }

    @Test
    void only_the_document_package_knows_yaml() {
        outside("buildup.shared.document..")
                .dependOnClassesThat()
                .resideInAPackage("org.snakeyaml..")
                .because("everyone else reads a Document, whose words know their line and column")
                .check(HOUSE);
    }

    @Test
    void only_the_writers_know_the_picture_and_page_libraries() {
        outside("buildup.cli.write..")
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.batik..", "org.apache.xmlgraphics..", "org.apache.pdfbox..")
                .because("the rest of the program knows a Scene or a Table, not a file format")
                .check(HOUSE);
    }

    @Test
    void only_the_commands_know_the_command_line() {
        noClasses()
                .that(resideOutsideOfPackage("buildup.cli.command..").and(not(Main.class)))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli..")
                .because("an answer does not depend on how it was asked for")
                .check(HOUSE);
    }

    @Test
    void nobody_who_computes_touches_a_file_or_a_console() {
        noClasses()
                .that(resideInAnyPackage("buildup.shared..", "buildup.profiles..", "buildup.engine.."))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio.file..", "java.nio.channels..", "java.net..")
                .because("a computation that reaches nothing outside gives the same answer everywhere")
                .check(HOUSE);
    }

    @Test
    void only_the_commands_and_the_watch_know_files_by_their_names() {
        noClasses()
                .that(resideOutsideOfPackage("buildup.cli.command.."))
                // it waits for files to change, and so must name them to the file system
                .and(resideOutsideOfPackage("buildup.cli.watch.."))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.nio.file..")
                .because("what is answered does not depend on where a document lies")
                .check(HOUSE);
    }

    @Test
    void only_the_edge_words_a_figure() {
        noClasses()
                .that(resideInAnyPackage("buildup.profiles..", "buildup.catalog..", "buildup.engine.."))
                // their notices are still to be moved
                .and(resideOutsideOfPackage("buildup.engine.hold.fixing.."))
                .and(resideOutsideOfPackage("buildup.engine.hold.support.."))
                .should()
                .dependOnClassesThat(describe(
                        "words figures",
                        type -> Stream.of(LengthPrinter.class, FigurePrinter.class, NoticeWords.class)
                                .anyMatch(type::isEquivalentTo)))
                .because("who computes does not know the unit of the document, in which figures are told")
                .check(HOUSE);
    }

    @Test
    void only_the_watch_speaks_to_the_network() {
        outside("buildup.cli.watch..")
                .dependOnClassesThat(resideInAnyPackage("com.sun.net.httpserver..", "java.net..")
                        // a port that is taken is told by the command that was given it
                        .and(not(java.net.BindException.class)))
                .because("who is let in is decided in one place")
                .check(HOUSE);
    }

    @Test
    void only_the_front_door_holds_the_consoles() {
        noClasses()
                .that(not(Main.class))
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .because("a command is given its streams, so that a test can hold the other end")
                .check(HOUSE);
    }

    @Test
    void the_clock_the_locale_and_the_machine_leave_no_mark_on_the_output() {
        noClasses()
                .should()
                .callMethodWhere(describe("asks the clock or the machine", ArchitectureTest::asksTheMachine))
                .because("the same input gives the same bytes, also tomorrow and on another machine")
                .check(HOUSE);
    }

    @Test
    void nothing_static_can_change() {
        fields().that()
                .areStatic()
                .and()
                .doNotHaveModifier(SYNTHETIC)
                .should()
                .beFinal()
                .because("a second run in the same process gives what the first gave")
                .check(HOUSE);
        noFields()
                .that()
                .areStatic()
                .and()
                .doNotHaveModifier(SYNTHETIC)
                .should()
                .haveRawType(describe("is an array or a collection that can change", ArchitectureTest::canChange))
                .because("a final field still lends out what it holds")
                .check(HOUSE);
    }

    @Test
    void where_documents_are_read_a_length_is_never_a_bare_number() {
        noMethods()
                .that()
                .arePublic()
                .and()
                .areDeclaredInClassesThat(resideInAnyPackage(
                        "buildup.shared.document..",
                        "buildup.shared.length..",
                        "buildup.shared.notice..",
                        "buildup.catalog.."))
                .and(describe("neither measure nor are named as plain numbers", method -> !isPlain(method)))
                .should(ArchConditions.be(describe("given or giving a bare number", ArchitectureTest::hasBareNumber)))
                .because("inches and millimeters meet here, and a bare number does not say which it is")
                .check(HOUSE);
    }

    @Test
    void every_plain_number_on_the_list_is_still_there() {
        assertThat(HOUSE.stream()
                        .flatMap(type -> type.getMethods().stream())
                        .filter(ArchitectureTest::hasBareNumber)
                        .map(ArchitectureTest::nameOf))
                .containsAll(PLAIN_NUMBERS);
    }

    @Test
    void the_rooms_of_the_engine_stand_on_each_other_one_way() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("section")
                .definedBy("buildup.engine.section..")
                .layer("solve")
                .definedBy("buildup.engine.solve..")
                .layer("look")
                .definedBy("buildup.engine.look..")
                .layer("room")
                .definedBy("buildup.engine.room..")
                .layer("buy")
                .definedBy("buildup.engine.buy..")
                .layer("hold")
                .definedBy("buildup.engine.hold..")
                .layer("mill")
                .definedBy("buildup.engine.mill..")
                .layer("judge")
                .definedBy("buildup.engine.judge..")
                .layer("front door")
                .definedBy("buildup.engine")
                .whereLayer("section")
                .mayOnlyBeAccessedByLayers("look", "room", "hold", "buy", "judge", "front door")
                .whereLayer("solve")
                .mayOnlyBeAccessedByLayers("room", "hold", "mill", "judge", "front door")
                .whereLayer("look")
                .mayOnlyBeAccessedByLayers("hold", "judge", "front door")
                .whereLayer("room")
                .mayOnlyBeAccessedByLayers("hold", "buy", "judge", "front door")
                .whereLayer("hold")
                .mayOnlyBeAccessedByLayers("buy", "judge", "front door")
                .whereLayer("buy")
                .mayOnlyBeAccessedByLayers("judge", "front door")
                .whereLayer("mill")
                .mayOnlyBeAccessedByLayers("judge", "front door")
                .whereLayer("judge")
                .mayOnlyBeAccessedByLayers("front door")
                .whereLayer("front door")
                .mayNotBeAccessedByAnyLayer()
                .because("a room that knows only those below it can be understood from the ground up")
                .check(HOUSE);
    }

    @Test
    void no_folder_holds_more_than_can_be_taken_in_at_a_glance() {
        Map<String, Set<String>> folders = new TreeMap<>();
        HOUSE.stream()
                .filter(type -> type.getSource().isPresent())
                .forEach(type -> folders.computeIfAbsent(
                                type.getPackageName(), unseen -> new TreeSet<>(Set.of("package-info.java")))
                        .add(type.getSource().flatMap(Source::getFileName).orElseThrow()));
        assertThat(folders).hasSizeGreaterThan(FEWEST_PACKAGES);
        assertThat(folders).allSatisfy((folder, files) -> {
            assertThat(files).as(folder).hasSizeLessThanOrEqualTo(MOST_FILES);
        });
    }

    private static ClassesShould outside(String room) {
        return noClasses().that(resideOutsideOfPackage(room)).should();
    }

    private static DescribedPredicate<JavaClass> not(Class<?> type) {
        return describe("not " + type.getSimpleName(), other -> !other.isEquivalentTo(type));
    }

    private static boolean asksTheMachine(JavaMethodCall call) {
        JavaClass owner = call.getTargetOwner();
        String name = call.getName();
        boolean withoutLocale =
                call.getTarget().getRawParameterTypes().stream().noneMatch(type -> type.isEquivalentTo(Locale.class));
        return (owner.isEquivalentTo(String.class)
                        && Set.of("format", "formatted", "toLowerCase", "toUpperCase")
                                .contains(name)
                        && withoutLocale)
                || name.equals("println")
                || owner.isEquivalentTo(System.class)
                        && Set.of("currentTimeMillis", "lineSeparator").contains(name)
                || owner.getPackageName().equals("java.time") && name.equals("now");
    }

    private static boolean canChange(JavaClass type) {
        return type.isArray() || CHANGEABLE.stream().anyMatch(type::isAssignableTo);
    }

    private static boolean isPlain(JavaMethod method) {
        return MEASURES.contains(method.getOwner().getName()) || PLAIN_NUMBERS.contains(nameOf(method));
    }

    private static boolean hasBareNumber(JavaMethod method) {
        return Stream.concat(Stream.of(method.getRawReturnType()), method.getRawParameterTypes().stream())
                .anyMatch(type -> Stream.of(double.class, Double.class, float.class, OptionalDouble.class)
                        .anyMatch(type::isEquivalentTo));
    }

    private static String nameOf(JavaMethod method) {
        return method.getOwner().getSimpleName() + "." + method.getName();
    }
}
