namespace Progression.App.Figures;

/// <summary>What the keys mean on the screen of the clinic's figures.</summary>
public enum FiguresMode
{
    /// <summary>Reading them.</summary>
    Page,

    /// <summary>Reading the help.</summary>
    Help,
}
