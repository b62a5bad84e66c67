/**
 * The probabilistic decoder: it knows how sure it is. What belongs here is the model of flashes, the sums over it and
 * the search for lists; how readings look belongs to {@code reading}, samples to {@code capture}.
 *
 * <p><b>Front end.</b> Lit pulses far shorter than any flash of a format are left out (a fast list, bounce), then dark
 * gaps far shorter than any gap are closed ({@code Flashes}).
 *
 * <p><b>Channel.</b> A length L sent is seen as a length x, normal with mean {@code s L + b} for a flash and {@code s L
 * - b} for a gap, and variance {@code (j s L)^2 + t^2}: clock scale s, bias b, relative jitter j, blur t ({@code
 * Channel}). One length in a hundred has thrice the deviation ({@code Noise}), and with a weight of 0.001 a length is
 * anything within a third of its mean (a pulse that ran into it). A flash is not seen with probability m: gaps and flash
 * become one dark gap whose squares add up. A gap holds a ghost, a flash shorter than 0.65 of the shortest, with
 * probability g. All are fitted to each recording: the clock from all lengths on a row of scales ({@code Lengths}, {@code CoarseClock}),
 * then scale and bias by weighted least squares along the best path, j and t on a grid with a weak prior, m and g as
 * {@code (0.15 + seen) / (60 + flashes)} ({@code ChannelFit}).
 *
 * <p><b>Free paths.</b> An automaton of all flashes that a format may send ({@code FreeGrammar}); its edges are one to
 * three steps over flashes not seen ({@code Automaton}, {@code EdgeComposer}). Its run over a recording is a semi-Markov model, summed by
 * <pre>
 *   forward(v) = sum over arcs (u, v) of forward(u) w(u, v)
 *   share of an arc = forward(u) w(u, v) backward(v) / total
 * </pre>
 * in scaled doubles ({@code Lattice}, {@code Pass}, {@code FreePass}; L. R. Rabiner, Proc. IEEE 77(2), 1989, 257-286; S.-Z. Yu, Artificial
 * Intelligence 174, 2010, 215-243). The best path gives groups, all paths together what each sign may have been
 * ({@code GroupFinder}, {@code Guess}). A recording may begin at any instant of a list and end at any, at a price.
 *
 * <p><b>Repeats are one piece of evidence.</b> For sendings r of one code, the probability of a sign c is proportional
 * to the product over r of P(c | sending r); how long the list is and where in it the recording begins is weighed by
 * the same products ({@code BlockCutter}, {@code Layout}, {@code ListStructure}). Where anything is open, whole lists are weighed by
 * <pre>
 *   P(list | flashes) = P(list) p(flashes | list) / sum over lists of the same
 * </pre>
 * where {@code p(flashes | list)} is one exact sum over every way of seeing the row of flashes ({@code SentList}, {@code
 * RowPass}, {@code ListWeigher}); the probability of a code is that of all lists weighed that hold it.
 *
 * <p><b>Formats.</b> The posterior over candidate formats multiplies the sum over free paths, what the repeats add, and
 * a prior of the clock; candidates far behind after the first forty flashes are given up. A recording fits none in which
 * more than three tenths of the flashes are explained by no rule, or whose best format explains it hardly better than
 * lengths evenly likely on a logarithmic scale would ({@code FormatTrial}).
 */
@NullMarked
package telltally.decoder.lattice;

import org.jspecify.annotations.NullMarked;
