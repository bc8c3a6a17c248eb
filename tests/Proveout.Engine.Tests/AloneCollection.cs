namespace Proveout.Engine.Tests;

/// <summary>Tests that hold processor time: nothing runs beside them.</summary>
[CollectionDefinition(nameof(AloneCollection), DisableParallelization = true)]
public sealed class AloneCollection;
