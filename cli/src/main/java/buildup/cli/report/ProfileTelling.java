package buildup.cli.report;

import buildup.catalog.Catalog;
import buildup.catalog.CatalogSheets;
import buildup.cli.tell.FileSchema;
import buildup.cli.tell.Json;
import buildup.cli.tell.Schema;
import buildup.cli.tell.Telling;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.MillingSheets;
import buildup.engine.mill.nearest.NearestSheets;
import buildup.engine.mill.nearest.Neighbors;
import buildup.profiles.Profile;
import buildup.profiles.ProfileSheets;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the catalog holds, one profile of it, or what comes nearest to one, ready to be written. */
public final class ProfileTelling {
    /** Of what programs are told, asked for by its name. */
    public static final Schema SCHEMA = new Schema("profile", ProfileTelling::schema);

    private ProfileTelling() {}

    /** The whole catalog. */
    public static Telling of(Catalog catalog, LengthUnit unit) {
        return new Telling(
                "Catalog",
                unit,
                List.of(),
                CatalogSheets.of(catalog),
                List.of(),
                Optional.of(CatalogSheets.profiles(catalog)));
    }

    /** One profile, and how it is milled. */
    public static Telling of(Profile profile, Milled milled, LengthUnit unit) {
        List<Sheet> sheets = one(Optional.of(profile), Optional.of(milled));
        Phrase legend = Phrase.of(new FigurePrinter(unit).legend());
        return new Telling(
                profile.name(),
                unit,
                List.of(),
                sheets,
                milled.isPlain() ? List.of(legend) : List.of(Phrase.of(Milled.CAUTION), legend),
                list(sheets, "members"));
    }

    /** What comes nearest to a profile. */
    public static Telling nearest(String name, Neighbors nearest, LengthUnit unit) {
        List<Sheet> sheets = NearestSheets.of(name, Optional.of(nearest));
        return new Telling(
                name,
                unit,
                List.of(NearestSheets.answer(nearest)),
                sheets,
                List.of(NearestSheets.LEGEND),
                list(sheets, "nearest"));
    }

    /** What was refused. */
    public static Telling refused(String name, LengthUnit unit) {
        return Telling.refused(name, unit);
    }

    private static Optional<Sheet> list(List<Sheet> sheets, String key) {
        return sheets.stream().filter(sheet -> sheet.key().equals(key)).findFirst();
    }

    private static List<Sheet> one(Optional<Profile> profile, Optional<Milled> milled) {
        return Stream.of(ProfileSheets.of(profile), MillingSheets.of(milled))
                .flatMap(List::stream)
                .toList();
    }

    private static Json schema() {
        return FileSchema.head(
                        SCHEMA.name(),
                        "The catalog, one profile, or what comes nearest to it",
                        "Decimal inches, degrees, square inches")
                .put(
                        "anyOf",
                        Stream.of(
                                        CatalogSheets.of(Catalog.builtIn()),
                                        one(Optional.empty(), Optional.empty()),
                                        NearestSheets.of("", Optional.empty()))
                                .map(sheets -> FileSchema.content(sheets, NoticeSheet.of(List.of(), Optional.empty())))
                                .toList());
    }
}
