package frieze.design;

import frieze.artwork.Artwork;

/** A drawing at the size at which it is used, with a name. */
public record Motif(String name, Artwork artwork) {}
