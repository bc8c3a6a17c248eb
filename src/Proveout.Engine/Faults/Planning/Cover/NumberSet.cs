namespace Proveout.Engine.Faults;

/// <summary>Rising lists of numbers as sets.</summary>
internal static class NumberSet
{
    /// <summary>A mask that a set's mask lies in whenever the set lies in the other: most pairs are told apart by one instruction.</summary>
    public static ulong MaskOf(int[] numbers)
    {
        var mask = 0UL;
        foreach (var number in numbers)
            mask |= 1UL << (int)((uint)number * 2654435769u >> 26); // multiplicative hashing; Knuth, The Art of Computer Programming 3, section 6.4
        return mask;
    }

    /// <summary>True when all numbers of the first list are in the second.</summary>
    public static bool IsWithin(int[] small, int[] large)
    {
        if (small.Length > large.Length)
            return false;
        var place = 0;
        foreach (var number in small)
        {
            while (place < large.Length && large[place] < number)
                place++;
            if (place == large.Length || large[place] != number)
                return false;
        }

        return true;
    }
}
