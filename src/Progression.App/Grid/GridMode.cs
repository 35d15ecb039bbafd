namespace Progression.App.Grid;

/// <summary>What the keys of the grid screen mean at the moment.</summary>
public enum GridMode
{
    /// <summary>Moving over the grid.</summary>
    Grid,

    /// <summary>Typing a cell's content.</summary>
    Edit,

    /// <summary>Typing why a cell goes against a safety rule.</summary>
    Reason,

    /// <summary>Typing for how many weeks a cell is filled on.</summary>
    Fill,

    /// <summary>Looking at the seven days of a week.</summary>
    Days,

    /// <summary>Going through the findings.</summary>
    Findings,

    /// <summary>Reading the whole answer to "why".</summary>
    Why,

    /// <summary>Reading the help page.</summary>
    Help,

    /// <summary>Choosing what becomes of a draft that was kept.</summary>
    Draft,

    /// <summary>Comparing a kept draft with what is saved.</summary>
    Compare,

    /// <summary>Reading where the review stands.</summary>
    Review,

    /// <summary>Typing a comment on a cell.</summary>
    Comment,

    /// <summary>Typing a comment on the plan.</summary>
    Remark,

    /// <summary>Typing with what the plan is returned.</summary>
    Return,

    /// <summary>Typing a word to who will review the plan.</summary>
    Ask,

    /// <summary>Filling in a signature.</summary>
    Sign,

    /// <summary>Being asked for the last time before a signature.</summary>
    Confirm,

    /// <summary>Putting together what two people changed.</summary>
    Conflict,
}
