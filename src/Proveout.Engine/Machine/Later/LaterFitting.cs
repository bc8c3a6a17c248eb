namespace Proveout.Engine.Machine;

/// <summary>What is left for later: the machine runs without it first.</summary>
/// <param name="Name">What it is called, such as <c>lid</c>.</param>
/// <param name="Parts">Designations of its parts; with them come the conductors that land on them.</param>
/// <param name="Affects">What it changes besides wiring.</param>
/// <param name="Note">Anything a builder should know; may be empty.</param>
public sealed record LaterFitting(string Name, ValueList<string> Parts, ValueList<LaterEffect> Affects, string Note);
