namespace Proveout.Engine.Machine;

/// <summary>A unit that a quantity may be written in.</summary>
/// <param name="Text">Its spelling in files.</param>
/// <param name="Symbol">Its symbol on screens and paper (ISO 80000).</param>
/// <param name="Power">Power of ten that makes the base unit of it.</param>
/// <param name="Preferred">True when Proveout itself writes it.</param>
internal readonly record struct MeasureUnit(string Text, string Symbol, int Power, bool Preferred = true);
