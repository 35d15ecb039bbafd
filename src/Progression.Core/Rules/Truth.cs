namespace Progression.Core.Rules;

/// <summary>A three-valued answer. Missing is never taken for yes or no.</summary>
public enum Truth
{
    /// <summary>It is not so.</summary>
    DoesNotHold,

    /// <summary>Not measured, not asked or not known.</summary>
    NotKnown,

    /// <summary>It is so.</summary>
    Holds,
}

/// <summary>Joining three-valued answers.</summary>
public static class Truths
{
    /// <summary>The answer of a comparison that may lack an input: null is not known.</summary>
    public static Truth From(bool? value) => value is null ? Truth.NotKnown : value.Value ? Truth.Holds : Truth.DoesNotHold;

    /// <summary>Holds when all hold, does not when one does not, else not known. Of nothing: holds.</summary>
    public static Truth All(IEnumerable<Truth> truths) => truths.Aggregate(Truth.Holds, (all, one) => one < all ? one : all);

    /// <summary>Holds when one holds, does not when none does, else not known. Of nothing: does not hold.</summary>
    public static Truth Any(IEnumerable<Truth> truths) => truths.Aggregate(Truth.DoesNotHold, (any, one) => one > any ? one : any);
}
