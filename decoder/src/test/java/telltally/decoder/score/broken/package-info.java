/** The plain decoder with one small mistake each, and the test that the seed sets catch every one of them. */
@org.jspecify.annotations.NullMarked
package telltally.decoder.score.broken;
