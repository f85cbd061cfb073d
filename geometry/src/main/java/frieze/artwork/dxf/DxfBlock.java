package frieze.artwork.dxf;

import java.util.List;

/**
 * Entities that are drawn wherever they are inserted.
 *
 * @param base the point of it that comes to lie where it is inserted
 */
record DxfBlock(String name, DxfSpace.Vector base, List<DxfEntity> entities) {}
