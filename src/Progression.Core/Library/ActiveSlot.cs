namespace Progression.Core.Library;

/// <summary>The purpose an active lane serves; the draft keeps one lane for each, in this order.</summary>
public enum ActiveSlot
{
    /// <summary>The voluntary contraction made along with stim.</summary>
    QuadsWithStim,

    /// <summary>Quadriceps strength, open chain.</summary>
    QuadsStrength,

    /// <summary>Quadriceps in standing and stepping.</summary>
    QuadsFunction,

    /// <summary>Range towards straight.</summary>
    Straighten,

    /// <summary>Range towards bent.</summary>
    Bend,

    /// <summary>Hip and hamstring strength.</summary>
    HipAndHamstrings,

    /// <summary>Calf and ankle.</summary>
    Calf,

    /// <summary>Walking and stairs.</summary>
    Walking,
}
