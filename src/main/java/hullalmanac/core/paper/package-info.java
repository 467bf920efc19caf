/**
 * What goes on paper, as values: a document a kind, made of few kinds of blocks. Start at {@link
 * hullalmanac.core.paper.Paper}.
 *
 * <p>What stands on a paper is chosen here word by word: no gate code, place of keys, absence or
 * note enters one. How it looks is no matter of this package.
 */
package hullalmanac.core.paper;
