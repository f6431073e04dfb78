package dev.placket.pictures.svg.bridge;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.List;
import org.apache.batik.gvt.Marker;
import org.apache.batik.gvt.MarkerShapePainter;
import org.apache.batik.gvt.ProxyGraphicsNode;
import org.jspecify.annotations.Nullable;

/** Markers where SVG 2 has them, turned as it turns them. */
final class PlacedMarkers extends MarkerShapePainter {
  PlacedMarkers(MarkerShapePainter plain) {
    super(plain.getShape());
    setStartMarker(plain.getStartMarker());
    setMiddleMarker(plain.getMiddleMarker());
    setEndMarker(plain.getEndMarker());
  }

  @Override
  protected @Nullable ProxyGraphicsNode buildStartMarkerProxy() {
    List<Vertices.Vertex> all = vertices();
    return all.isEmpty() ? null : placed(getStartMarker(), all.get(0));
  }

  @Override
  protected @Nullable ProxyGraphicsNode buildEndMarkerProxy() {
    List<Vertices.Vertex> all = vertices();
    return all.isEmpty() ? null : placed(getEndMarker(), all.get(all.size() - 1));
  }

  @Override
  protected ProxyGraphicsNode[] buildMiddleMarkerProxies() {
    List<Vertices.Vertex> all = vertices();
    return all.stream()
        .limit(Math.max(0, all.size() - 1))
        .skip(1)
        .map(vertex -> placed(getMiddleMarker(), vertex))
        .toArray(ProxyGraphicsNode[]::new);
  }

  private List<Vertices.Vertex> vertices() {
    return Vertices.of(getExtShape().getExtendedPathIterator());
  }

  private static ProxyGraphicsNode placed(Marker marker, Vertices.Vertex vertex) {
    double stated = marker.getOrient();
    Point2D ref = marker.getRef();
    AffineTransform at =
        AffineTransform.getTranslateInstance(
            vertex.at().getX() - ref.getX(), vertex.at().getY() - ref.getY());
    at.rotate(
        Math.toRadians(Double.isNaN(stated) ? vertex.direction() : stated), ref.getX(), ref.getY());
    ProxyGraphicsNode node = new ProxyGraphicsNode();
    node.setSource(marker.getMarkerNode());
    node.setTransform(at);
    return node;
  }
}
