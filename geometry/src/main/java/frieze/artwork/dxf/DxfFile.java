package frieze.artwork.dxf;

import java.util.List;
import java.util.Map;

/**
 * What a file holds.
 *
 * @param unitCode of the header; 0 if it has none
 * @param layers by name in small letters
 * @param blocks by name in small letters
 */
record DxfFile(
    int unitCode,
    Map<String, DxfLayer> layers,
    Map<String, DxfBlock> blocks,
    List<DxfEntity> entities) {}
