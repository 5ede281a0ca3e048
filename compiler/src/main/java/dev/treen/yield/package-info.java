/**
 * Boards and parts to a layout, with a proven bound: {@link dev.treen.yield.YieldSolver} takes a
 * {@link dev.treen.yield.YieldProblem} and gives a {@link dev.treen.yield.Layout} that the independent
 * {@link dev.treen.yield.LayoutChecker} has passed. All sizes are whole units of the caller's choice.
 */
@NullMarked
package dev.treen.yield;

import org.jspecify.annotations.NullMarked;
