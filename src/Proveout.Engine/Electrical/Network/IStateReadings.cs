namespace Proveout.Engine.Electrical;

/// <summary>What lies between any two nodes in one state of the machine as designed.</summary>
internal interface IStateReadings
{
    /// <summary>True when the element carries current in this state.</summary>
    bool Conducts(NetworkElement element);

    /// <summary>Resistance in ohms with every resistance at its low limit, junctions and insulation open; infinite when over range.</summary>
    double LowOhms(int a, int b);

    /// <summary>Resistance in ohms with every resistance at its high limit, junctions and insulation open; infinite when over range.</summary>
    double HighOhms(int a, int b);

    /// <summary>The piece of the low network that a node is on.</summary>
    int PieceOf(int node);

    /// <summary>What of junctions and insulation touches each piece.</summary>
    StrayPieces Strays { get; }

    /// <summary>Junctions and insulation.</summary>
    StrayPaths StrayPaths { get; }
}
