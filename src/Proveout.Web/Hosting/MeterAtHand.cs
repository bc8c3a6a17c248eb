using System.Net;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Web.Hosting;

/// <summary>The meter that the bench was started with, if any.</summary>
internal sealed class MeterAtHand : IDisposable
{
    private readonly ScpiMeter? _meter;

    private MeterAtHand(ScpiMeter? meter) => _meter = meter;

    public static MeterAtHand At(DnsEndPoint? address) => new(address is null ? null : new ScpiMeter(new TcpInstrumentLink(address)));

    public bool CanRead(string checkKind) => _meter?.CanRead(checkKind) == true;

    public Task<Outcome<MeterReading>> ReadAsync(string checkKind, CancellationToken cancellation) => _meter is null
        ? Task.FromResult(Outcome.Refused<MeterReading>(
            [new("meter", new SourcePlace("meter", 0, 0), "The bench was started without a meter.", "Start it with --meter HOST:PORT, or read the meter and type the reading.")]))
        : _meter.ReadAsync(checkKind, cancellation);

    public void Dispose() => _meter?.Dispose();
}
