package org.ionohaul;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The package table of DEVELOPERS.md, as it stands there, and the house rules that a compiler does not know. */
@AnalyzeClasses(packages = ArchitectureTest.ROOT, importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
    static final String ROOT = "org.ionohaul";

    private static final List<Row> TABLE = Row.table(Path.of("..", "DEVELOPERS.md"));

    @ArchTest
    static final ArchRule eachPackageUsesOnlyWhatTheTableGrantsIt = packagesAsInTheTable();

    @ArchTest
    static final ArchRule everyPackageIsInTheTable = classes()
            .should()
            .resideInAnyPackage(TABLE.stream().map(Row::fullName).toArray(String[]::new));

    @ArchTest
    static final ArchRule scenarioReadsIntoRulesAndRunsNothing = noClasses()
            .that()
            .resideInAPackage(ROOT + ".scenario")
            .should()
            .dependOnClassesThat(JavaClass.Predicates.resideInAPackage(ROOT + "..")
                    .and(not(JavaClass.Predicates.resideInAPackage(ROOT + ".scenario")))
                    .and(describe(
                            "are neither records nor enums nor interfaces nor exceptions",
                            it -> !it.isRecord()
                                    && !it.isEnum()
                                    && !it.isInterface()
                                    && !it.isAssignableTo(Throwable.class))))
            .because("a scenario says what to simulate, in the rule records of the layers it configures");

    @ArchTest
    static final ArchRule packagesFormNoCycles =
            slices().matching(ROOT + ".(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule classesOfSkyAndLinkFormNoCycles = slices().assignedFrom(new OutermostClass())
            .should()
            .beFreeOfCycles()
            .because("a class is understood after those that it uses");

    @ArchTest
    static final ArchRule ratePoliciesCanNotReachTheSky = noClasses()
            .that()
            .resideInAPackage(ROOT + ".rate")
            .should()
            .dependOnClassesThat(JavaClass.Predicates.resideInAPackage(ROOT + "..")
                    .and(describe(
                            "know links or skies",
                            it -> !Set.of(ROOT + ".rate", ROOT + ".limits").contains(it.getPackageName()))))
            .because("a station knows only what a real one would");

    @ArchTest
    static final ArchRule onlyTheYardstickHearsTheOracle = classes()
            .that()
            .haveSimpleName("Oracle")
            .or()
            .haveSimpleName("Yardstick")
            .should()
            .bePackagePrivate()
            .andShould()
            .resideInAPackage(ROOT + ".trial")
            .andShould()
            .onlyHaveDependentClassesThat(describe(
                    "judge or wire the yardstick",
                    it -> Set.of(
                                    "Oracle",
                                    "ExpectedPayload",
                                    "Yardstick",
                                    "OmniscientPolicy",
                                    "WrongRate",
                                    "ModeWiring",
                                    "Trials")
                            .contains(it.getSimpleName())))
            .because("no other policy may know what the sky will do");

    @ArchTest
    static final ArchRule renderersWorkOutNothing = noClasses()
            .that()
            .resideInAnyPackage(Stream.of("report", "whatif", "sheet", "trace", "rendering", "cli")
                    .map(it -> ROOT + "." + it)
                    .toArray(String[]::new))
            .should()
            .dependOnClassesThat(JavaClass.Predicates.resideInAPackage(ROOT + ".statistics")
                    .and(not(describe(
                            "only hold a result",
                            it -> Set.of("Estimate", "Proportion").contains(it.getSimpleName()))))
                    .or(JavaClass.Predicates.resideInAnyPackage(
                            "org.apache.commons.statistics..",
                            "org.apache.commons.numbers..",
                            "org.apache.commons.math3..")))
            .because("what a page, the terminal or a program is told is worked out once, in analysis");

    @ArchTest
    static final ArchRule onlyRandomMakesGenerators = noClasses()
            .that()
            .resideOutsideOfPackage(ROOT + ".random")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.apache.commons.rng.core..",
                    "org.apache.commons.rng.simple..",
                    "org.apache.commons.math3.random..")
            .because("a stream is found by its address alone");

    @ArchTest
    static final ArchRule noGeneratorComesFromTheJdk = noClasses()
            .should()
            .accessTargetWhere(target(memberOf(
                            "java.util.Random",
                            "java.util.SplittableRandom",
                            "java.util.concurrent.ThreadLocalRandom",
                            "java.security.SecureRandom",
                            "java.util.random.RandomGenerator",
                            "java.util.random.RandomGeneratorFactory"))
                    .or(target(member("java.lang.Math", "random")))
                    .or(target(member("java.lang.StrictMath", "random")))
                    .or(target(member("java.util.Collections", "shuffle")))
                    .or(target(member("java.util.UUID", "randomUUID"))))
            .because("the same seed must give the same bytes");

    @ArchTest
    static final ArchRule onlyCliReadsTheClock = noClasses()
            .that()
            .resideOutsideOfPackage(ROOT + ".cli")
            .should()
            .accessTargetWhere(target(member("java.lang.System", "currentTimeMillis", "nanoTime"))
                    .or(target(memberOf("java.time.Clock", "java.util.Date", "java.util.Calendar")))
                    .or(nowOfAnyTime()))
            .because("simulated time is the only time of a trial");

    @ArchTest
    static final ArchRule onlyCliPrints = noClasses()
            .that()
            .resideOutsideOfPackage(ROOT + ".cli")
            .should()
            .accessTargetWhere(target(member("java.lang.System", "out", "err", "console", "exit"))
                    .or(target(describe("printStackTrace", it -> it.getName().equals("printStackTrace")))));

    @ArchTest
    static final ArchRule namesSayWhatAClassIs = noClasses()
            .should()
            .haveNameMatching(".*[.$](Abstract\\p{Upper}.*|.*(Base|Data|Impl|Info))")
            .orShould()
            .haveNameMatching(".*(Util|Utils|Utility|Utilities|Helper|Helpers|Manager)(\\p{Upper}.*|\\$.*)?");

    private static ArchRule packagesAsInTheTable() {
        LayeredArchitecture layers =
                layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
        for (Row row : TABLE) {
            layers = layers.layer(row.name()).definedBy(row.fullName());
        }
        for (Row row : TABLE) {
            var layer = layers.whereLayer(row.name());
            layers = row.uses().isEmpty()
                    ? layer.mayNotAccessAnyLayer()
                    : layer.mayOnlyAccessLayers(row.uses().toArray(String[]::new));
        }
        return layers;
    }

    private static DescribedPredicate<AccessTarget> memberOf(String... owners) {
        Set<String> names = Set.of(owners);
        return describe(
                "any of " + String.join(", ", owners),
                it -> names.contains(it.getOwner().getFullName()));
    }

    private static DescribedPredicate<AccessTarget> member(String owner, String... members) {
        Set<String> names = Set.of(members);
        return describe(
                owner + "." + String.join("|", members),
                it -> it.getOwner().getFullName().equals(owner) && names.contains(it.getName()));
    }

    private static DescribedPredicate<JavaAccess<?>> nowOfAnyTime() {
        return target(describe(
                "now() of java.time",
                it -> it.getName().equals("now")
                        && it.getOwner().getPackageName().startsWith("java.time")));
    }

    /** A class together with those written inside it; of packages not held to the rule yet, all classes together. */
    private static final class OutermostClass implements SliceAssignment {
        private static final Set<String> HELD = Stream.of(
                        "random", "limits", "statistics", "channel", "waveform", "rate", "link", "session", "trial")
                .map(it -> ROOT + "." + it)
                .collect(Collectors.toUnmodifiableSet());

        @Override
        public SliceIdentifier getIdentifierOf(JavaClass javaClass) {
            if (!HELD.contains(javaClass.getPackageName())) {
                return SliceIdentifier.of(javaClass.getPackageName());
            }
            JavaClass outermost = javaClass;
            while (outermost.getEnclosingClass().isPresent()) {
                outermost = outermost.getEnclosingClass().get();
            }
            return SliceIdentifier.of(outermost.getFullName());
        }

        @Override
        public String getDescription() {
            return "outermost classes";
        }
    }

    /** A row of the table: a package and the packages it may use. */
    private record Row(String name, List<String> uses) {
        /** Such as {@code | `link` | Moves frames. | engine, waveform |}; a dash uses nothing. */
        private static final Pattern LINE = Pattern.compile("\\| `(\\w+)` \\| [^|]+ \\| ([^|]+) \\|");

        static List<Row> table(Path guide) {
            try (Stream<String> lines = Files.lines(guide)) {
                return lines.map(LINE::matcher)
                        .filter(Matcher::matches)
                        .map(it -> new Row(it.group(1), uses(it.group(2).strip())))
                        .toList();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static List<String> uses(String cell) {
            return cell.equals("-") ? List.of() : List.of(cell.split(", "));
        }

        String fullName() {
            return ROOT + "." + name;
        }
    }
}
