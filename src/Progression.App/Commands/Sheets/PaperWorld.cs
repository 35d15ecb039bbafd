using Progression.App.Commands.Plans;

namespace Progression.App.Commands.Sheets;

/// <summary>What the commands that make papers need of the program.</summary>
internal sealed record PaperWorld(CommandOutput Output, PlanInput Input, StorePlace Stores, LibraryPlace Libraries);
