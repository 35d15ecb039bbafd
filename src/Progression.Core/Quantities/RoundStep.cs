namespace Progression.Core.Quantities;

/// <summary>Steps that are easy to read.</summary>
public static class RoundStep
{
    /// <summary>The least of 1, 2, 5, 10, 20, 50 ... and of their tenths and hundredths that is not under a value over zero.</summary>
    public static double NotUnder(double value)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        double digits = value / power * 0.999999; // so that 0.2 is 0.2, whatever its last bit
        return power * (digits <= 1 ? 1 : digits <= 2 ? 2 : digits <= 5 ? 5 : 10);
    }
}
