package hullalmanac.exchange.photo;

import java.nio.ByteBuffer;
import java.util.Optional;

/**
 * What a picture that is whole says of itself before it is decoded.
 *
 * @param size as stored
 * @param exif its TIFF structure with the EXIF tags
 * @param drawable whether Java can decode it
 */
record PictureHeader(Optional<PixelSize> size, Optional<ByteBuffer> exif, boolean drawable) {}
