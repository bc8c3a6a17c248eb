namespace Proveout.Publish.Drawings;

/// <summary>What a conductor serves; a schematic has its sheets in this order.</summary>
internal enum WireFunction
{
    Mains,
    ProtectiveEarth,
    Supply,
    Outputs,
    Motors,
    Sensors,
    Data,
}
