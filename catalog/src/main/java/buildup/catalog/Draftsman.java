package buildup.catalog;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Sizes;
import buildup.catalog.family.Family;
import buildup.catalog.family.Shape;
import buildup.catalog.family.Shape.Derived;
import buildup.catalog.words.WalkReader;
import buildup.catalog.words.WordProblems;
import buildup.profiles.Profile;
import buildup.profiles.member.Sprung;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Stroke;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws one family in one size. */
record Draftsman(Shape shape, ProfileRequest order) {

    Optional<Profile> profile() {
        Notices said = new Notices();
        Optional<Profile> profile = drawn(said);
        for (Notice notice : said.sorted()) {
            if (!shape.builtIn()) {
                order.speaker().notices().add(notice);
            } else if (notice.level() == Level.REFUSAL) {
                // the words are tested, so it is the size that does not fit them
                order.refuse(notice, shape.family());
                return Optional.empty();
            }
        }
        return profile;
    }

    private Optional<Profile> drawn(Notices said) {
        WordProblems speaker = new WordProblems(shape.family().name(), said);
        Optional<LengthReader> lengths = lengths(speaker);
        if (lengths.isEmpty()) {
            return Optional.empty();
        }
        return shape.family().spring().isPresent()
                ? sprung(shape.family().spring().get(), lengths.get(), speaker)
                : shape.words()
                        .flatMap(words -> WalkReader.read(words, lengths.get(), speaker.owner(), said))
                        .map(outline -> profile(outline, new Profile.Milled()));
    }

    private Profile profile(Outline outline, Profile.Stick stick) {
        return new Profile(order.text(), shape.family().kind(), outline, stick);
    }

    /** The sizes by name, and what follows from them. */
    private Optional<LengthReader> lengths(WordProblems speaker) {
        Map<String, Length> names = new LinkedHashMap<>();
        for (int i = 0; i < order.sizes().size(); i++) {
            names.put(shape.family().sizes().get(i), order.sizes().get(i));
        }
        for (Derived derived : shape.derived()) {
            Optional<Length> length = speaker.length(
                    derived.text().text(),
                    new LengthReader(shape.unit(), names),
                    derived.text().mark());
            if (length.isEmpty()) {
                return Optional.empty();
            }
            names.put(derived.name(), length.get());
        }
        return Optional.of(new LengthReader(shape.unit(), names));
    }

    private Optional<Profile> sprung(Family.Spring spring, LengthReader lengths, WordProblems speaker) {
        return shape.words()
                .map(words -> WalkReader.face(words, lengths, speaker.owner(), speaker.notices()))
                .orElse(Optional.of(List.of()))
                .flatMap(face -> held(spring, face, speaker));
    }

    private Optional<Profile> held(Family.Spring spring, List<Stroke> face, WordProblems speaker) {
        double width = order.sizes().get(1).toInches();
        double thickness = order.sizes().get(0).toInches();
        double wallEdge = spring.wallEdge().toInches();
        double ceilingEdge = spring.ceilingEdge().toInches();
        double angle = spring.angle().toDegrees();
        Optional<Phrase> fault = Sprung.fault(angle, width, thickness, wallEdge, ceilingEdge);
        if (fault.isPresent()) {
            return refuse(CatalogNotices.NO_STICK.with("fault", fault.get()), speaker);
        }
        Sprung stick = new Sprung(angle, width, thickness, wallEdge, ceilingEdge);
        Optional<Profile> profile = stick.sound(face).map(outline -> profile(outline, new Profile.Spring(stick)));
        return profile.isPresent() ? profile : refuse(CatalogNotices.FACE_OFF_ITS_STICK.notice(), speaker);
    }

    private Optional<Profile> refuse(Notice notice, WordProblems speaker) {
        speaker.say(notice.with("size", Sizes.figures(order.sizes())), order.mark());
        return Optional.empty();
    }
}
