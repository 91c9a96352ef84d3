package buildup.engine.judge.bound;

/** Tells what is known of one figure over any box. */
interface Bounder {
    /** What is known of the figure for the stacks of a box. */
    FigureBound of(ChoiceBox box);
}
