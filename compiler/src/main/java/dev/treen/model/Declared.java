package dev.treen.model;

/** Something that a statement declares, or a run of such. */
sealed interface Declared
        permits Sequence,
        PartEntry,
        BoardEntry,
        Sequence.ToJoin,
        Sequence.ToRequire,
        Sequence.ToAccept,
        Sequence.ToRun,
        Sequence.ToHold,
        Sequence.ToMeasure {
}
