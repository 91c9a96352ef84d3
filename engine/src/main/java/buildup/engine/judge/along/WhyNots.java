package buildup.engine.judge.along;

import buildup.engine.judge.choice.ChoiceSpace;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.must.MustRule;
import buildup.engine.section.free.FreeSize;
import buildup.shared.length.LengthUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Asks why a rule is not met: on which sizes it hangs, and what each can do for it. */
public final class WhyNots {
    private WhyNots() {}

    /**
     * On which sizes a rule hangs, and what each can do for it alone, all others as they are today.
     *
     * @param rule the one that is asked about
     * @param others that are to stay met
     * @param tries how many stacks may be judged in all to find where the rule turns
     */
    public static List<WhyNot> of(
            List<FreeSize> sizes, MustRule rule, List<MustRule> others, StackJudge judge, LengthUnit unit, long tries) {
        List<MustRule> all = new ArrayList<>(List.of(rule));
        all.addAll(others);
        ChoiceSpace space = new ChoiceSpace(sizes);
        Turnings turnings = new Turnings(space, all, judge, unit, tries);
        StackJudgment today = judge.judge(space.texts(space.now()));
        return IntStream.range(0, sizes.size())
                .mapToObj(size -> why(space, size, all, today, judge, turnings))
                .toList();
    }

    private static WhyNot why(
            ChoiceSpace space,
            int size,
            List<MustRule> rules,
            StackJudgment today,
            StackJudge judge,
            Turnings turnings) {
        FreeSize free = space.sizes().get(size);
        int[] choices = space.now();
        List<StackJudgment> judged = new ArrayList<>();
        for (int choice = 0; choice < free.choices().size(); choice++) {
            choices[size] = choice;
            judged.add(judge.judge(space.texts(choices)));
        }
        double[] figures = judged.stream()
                .filter(StackJudgment::built)
                .map(one -> one.musts().get(0).figure())
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        OptionalDouble least = DoubleStream.of(figures).min();
        OptionalDouble most = DoubleStream.of(figures).max();
        Optional<Integer> meets = IntStream.range(0, judged.size())
                .filter(i ->
                        judged.get(i).built() && judged.get(i).musts().get(0).met())
                .boxed()
                .min(Comparator.<Integer>comparingDouble(free::change).thenComparing(i -> Math.abs(i - free.now())));
        List<String> gives =
                meets.map(choice -> given(rules, today, judged.get(choice))).orElse(List.of());
        return new WhyNot(
                free.place(),
                free.choices().get(free.now()),
                rules.get(0),
                least,
                most,
                today.built() && today.musts().get(0).met(),
                meets.map(free.choices()::get),
                meets.isPresent() && free.scaled() ? turnings.nearest(size, 0) : List.of(),
                gives);
    }

    /** The rules that are met today and not by another stack. */
    private static List<String> given(List<MustRule> rules, StackJudgment today, StackJudgment other) {
        return IntStream.range(1, rules.size())
                .filter(i -> !today.built() || today.musts().get(i).met())
                .filter(i -> !other.musts().get(i).met())
                .mapToObj(i -> rules.get(i).text())
                .toList();
    }
}
