package dev.placket.pictures.base;

/**
 * A picture as the JPEG that its file holds, to be stored elsewhere without being encoded again.
 *
 * <p>The bytes are shared, not copied: they are only handed on.
 *
 * @param bytes a JPEG in grey or in sRGB, upright, of square pixels; it states nothing about
 *     places, authors or programs
 * @param width in pixels
 * @param height in pixels
 * @param grey whether it has one channel instead of three
 */
@SuppressWarnings("ArrayRecordComponent")
public record StoredJpeg(byte[] bytes, int width, int height, boolean grey) {}
