using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A relay or contactor: pulls in from one voltage of its coil, surely lets go below another (IEC 61810-1, IEC 60947-4-1; values of the part type).</summary>
/// <param name="part">Its part.</param>
/// <param name="drive">Its coil.</param>
internal sealed class CoilLoad(Part part, LiveDrive drive) : ILoad
{
    private const double HumVolts = 5;

    public Part Part => part;

    public string Name => "";

    public string AtWork => "pulls in";

    public string AtRest => "stays released";

    public ReadingInterval Works(LiveView view) =>
        view.AlternatingVolts(drive.A, drive.B) > HumVolts ? Seen.CannotTell : Seen.High(Volts(view), drive.PullsInVolts, drive.DropsOutVolts);

    public ReadingInterval Rests(LiveView view) =>
        view.AlternatingVolts(drive.A, drive.B) > HumVolts ? Seen.CannotTell : Seen.Low(Volts(view), drive.DropsOutVolts, drive.PullsInVolts);

    private double Volts(LiveView view) => Math.Abs(view.DirectVolts(drive.A, drive.B));
}
