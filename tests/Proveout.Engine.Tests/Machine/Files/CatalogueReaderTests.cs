using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Engine.Tests.Machine;

public sealed class CatalogueReaderTests
{
    private static readonly PartType Inlet = Sample.Catalogue.FindType("inlet")!;
    private static readonly PartType Board = Sample.Catalogue.FindType("board")!;

    [Fact]
    public void Terminals_keep_their_order_role_ratings_and_reach()
    {
        Assert.Equal(
            [
                new Terminal("L", TerminalRole.Line, ElectricPotential.FromVolts(240), ElectricCurrent.FromAmperes(10), true),
                new Terminal("N", TerminalRole.Neutral, ElectricPotential.FromVolts(240), null, true),
                new Terminal("PE", TerminalRole.ProtectiveEarth, null, null, true),
                new Terminal("L-OUT", TerminalRole.Line, null, null, false),
            ],
            Inlet.Terminals);
    }

    [Fact]
    public void Connectors_controls_and_jumpers_are_read()
    {
        Assert.True(Inlet.ExposedConductivePart);
        Assert.Equal([new Connector("REAR", ["L", "N"], "blade-6.3", true)], Inlet.Connectors);
        Assert.Equal([new Control("main", ["off", "on"], "on")], Inlet.Controls);
        Assert.Equal([new Jumper("FAN-BANK", "bank", [new("24 V", "V+"), new("12 V", "mid")])], Board.Jumpers);
    }

    [Fact]
    public void Every_kind_of_element_is_read()
    {
        Assert.Equal(
            [
                new Contact("switch", "L", "L-OUT", "main", ["on"], ResistanceBand.FromOhms(0.005, 0.1)),
                new Fuse("protection", "N", "inner", ResistanceBand.FromOhms(0.01, 0.05), ElectricCurrent.FromAmperes(6.3)),
                new Resistor("track", "inner", "PE", ResistanceBand.Around(ElectricResistance.FromOhms(1e6), 0.05)),
            ],
            Inlet.Circuit);
        Assert.Equal(
            [
                new Diode("body", "0V", "FAN", ElectricPotential.FromVolts(0.4), ElectricPotential.FromVolts(0.8)),
                new Resistor("link", "bank", "FAN", ResistanceBand.Around(ElectricResistance.FromOhms(0.01), 0.5)),
                new Capacitor("buffer", "V+", "0V", ElectricCapacitance.FromFarads(100e-6)),
                new Source("rail", "mid", "0V", ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(0.5)),
                new Unpredictable("port", "V+", "FAN", ResistanceBand.FromOhms(1000, 1000, double.PositiveInfinity)),
                new Insulation("barrier", "V+", "FAN", ElectricResistance.FromOhms(1e6)),
            ],
            Board.Circuit);
    }
}
