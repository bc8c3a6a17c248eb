namespace Proveout.Engine.Electrical;

/// <summary>One range of a meter.</summary>
/// <param name="FullScale">Largest value it shows, in the mode's unit.</param>
/// <param name="Resolution">Value of its last digit.</param>
/// <param name="RelativeError">Error as a fraction of the reading.</param>
/// <param name="Digits">Further error, in last digits.</param>
public readonly record struct MeterRange(double FullScale, double Resolution, double RelativeError, double Digits);
