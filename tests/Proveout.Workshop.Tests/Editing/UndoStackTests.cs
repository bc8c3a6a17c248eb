namespace Proveout.Workshop.Tests;

public sealed class UndoStackTests
{
    [Fact]
    public void Any_row_of_saves_undos_and_redos_gives_what_two_stacks_of_texts_give()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var random = new Random(seed);
            List<SavedRevision> revisions = [Revision(1, RevisionKind.Found, 0)];
            // What a revision leaves, by its number; the model keeps whole texts.
            Dictionary<int, int> texts = new() { [1] = 0 };
            var (now, back, forth) = (0, new Stack<int>(), new Stack<int>());
            for (var step = 2; step < 40; step++)
            {
                var stack = UndoStack.Of(revisions);
                Assert.Equal((back.Count > 0, forth.Count > 0), (stack.Undo > 0, stack.Redo > 0));
                var kind = random.Next(3);
                if (kind == 0 && stack.Undo > 0)
                {
                    forth.Push(now);
                    now = back.Pop();
                    revisions.Add(Revision(step, RevisionKind.Undone, stack.Undo));
                    texts[step] = texts[stack.Undo - 1];
                }
                else if (kind == 1 && stack.Redo > 0)
                {
                    back.Push(now);
                    now = forth.Pop();
                    revisions.Add(Revision(step, RevisionKind.Redone, stack.Redo));
                    texts[step] = texts[stack.Redo];
                }
                else
                {
                    back.Push(now);
                    forth.Clear();
                    now = step;
                    revisions.Add(Revision(step, random.Next(2) == 0 ? RevisionKind.Edited : RevisionKind.Outside, 0));
                    texts[step] = step;
                }

                Assert.Equal(now, texts[step]);
            }
        }
    }

    private static SavedRevision Revision(int number, RevisionKind kind, int of) => new(number, kind, of, DateTimeOffset.UnixEpoch, "", "", [], []);
}
