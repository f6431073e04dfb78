package dev.placket.pictures.svg.bridge;

import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.DocumentLoader;
import org.apache.batik.bridge.UserAgent;

/** A context whose bridges follow the standard where Batik's own do not. */
public final class RightContext extends BridgeContext {
  /**
   * A context for one document.
   *
   * @param agent what Batik may ask of its surroundings
   * @param loader what loads other documents
   */
  public RightContext(UserAgent agent, DocumentLoader loader) {
    super(agent, loader);
  }

  @Override
  public void registerSVGBridges() {
    super.registerSVGBridges();
    putBridge(new LineBridge());
    putBridge(new ClipBridge());
    putBridge(new MarkerBridge());
    putBridge(new PatternBridge());
    putBridge(new MaskBridge());
  }
}
