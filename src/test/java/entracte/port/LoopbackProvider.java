package entracte.port;

import javax.sound.midi.MidiDevice;
import javax.sound.midi.spi.MidiDeviceProvider;

/** Lets {@code MidiSystem} find the devices of {@link Loopback}. */
public final class LoopbackProvider extends MidiDeviceProvider {
  @Override
  public MidiDevice.Info[] getDeviceInfo() {
    return Loopback.plugged().stream()
        .map(MidiDevice::getDeviceInfo)
        .toArray(MidiDevice.Info[]::new);
  }

  @Override
  public MidiDevice getDevice(MidiDevice.Info info) {
    return Loopback.plugged().stream()
        .filter(device -> device.getDeviceInfo() == info)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("not plugged: " + info));
  }
}
