namespace Proveout.Engine.Motion;

/// <summary>A screw that stretches a belt.</summary>
/// <param name="BeltStiffnessNewtons">Force for each unit of strain, E A, in N.</param>
/// <param name="BeltMetres">Length of belt that shares the stretch: the whole loop or all runs from anchor to anchor.</param>
/// <param name="Runs">Runs that a millimetre of screw lengthens: 2 where it moves a pulley that the belt turns back around, 1 where it pulls one end.</param>
/// <param name="PitchMetres">Travel for each turn, in m.</param>
public sealed record Tensioner(double BeltStiffnessNewtons, double BeltMetres, int Runs, double PitchMetres)
{
    /// <summary>Force that one turn adds: T' = E A runs pitch / length (Hooke). What else gives way - frame, shafts, brackets - makes it less, so this is the most.</summary>
    public double NewtonsByTurn => BeltStiffnessNewtons * Runs * PitchMetres / BeltMetres;

    /// <summary>Turns from one force to another; tighter is positive. Because all else gives way as well, more may be needed, never less.</summary>
    public double Turns(double fromNewtons, double toNewtons) => (toNewtons - fromNewtons) / NewtonsByTurn;
}
