namespace Proveout.Engine.Electrical;

/// <summary>A resistance that a supply heats: its current is voltage over resistance.</summary>
/// <param name="Element">The resistance.</param>
/// <param name="Reach">The supply that feeds it.</param>
/// <param name="Fed">Its node on the supply's positive or line side.</param>
/// <param name="Returned">Its node on the other side.</param>
public sealed record Load(NetworkElement Element, SupplyReach Reach, int Fed, int Returned)
{
    /// <summary>Current in amperes at its nominal resistance.</summary>
    public double NominalAmperes => Reach.Supply.Volts / Element.NominalOhms;
}
