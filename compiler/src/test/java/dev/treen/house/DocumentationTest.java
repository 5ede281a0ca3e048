package dev.treen.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every public type says what it is for, in a sentence; every package says what it owns. */
class DocumentationTest {

    /** A type within a type may lean on the words of the one around it. */
    private static final int FEWEST_WORDS_OUTSIDE = 4;

    @Test
    void everyPublicTypeSaysWhatItIsFor() throws IOException {
        List<String> silent = new ArrayList<>();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(null, files, null, null, null,
                    files.getJavaFileObjectsFromPaths(sources(".java")));
            DocTrees docs = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                new TypesWithoutWords(docs, silent).scan(unit, null);
            }
        }
        assertThat(silent).isEmpty();
    }

    @Test
    void everyPackageSaysWhatItOwns() throws IOException {
        List<Path> silent = new ArrayList<>();
        for (Path file : sources(".java")) {
            Path info = file.resolveSibling("package-info.java");
            if (!Files.exists(info) || !Files.readString(info).contains("/**")) {
                silent.add(file.getParent());
            }
        }
        assertThat(silent).isEmpty();
    }

    private static List<Path> sources(String ending) throws IOException {
        List<Path> found = new ArrayList<>();
        for (String module : List.of("compiler", "lsp")) {
            try (Stream<Path> files = Files.walk(Repository.root().resolve(module).resolve("src/main/java"))) {
                files.filter(each -> each.toString().endsWith(ending)).forEach(found::add);
            }
        }
        return found;
    }

    private static final class TypesWithoutWords extends TreePathScanner<@Nullable Void, @Nullable Void> {

        private final DocTrees docs;
        private final List<String> silent;

        TypesWithoutWords(DocTrees docs, List<String> silent) {
            this.docs = docs;
            this.silent = silent;
        }

        @Override
        public @Nullable Void visitClass(ClassTree type, @Nullable Void nothing) {
            if (!isPublic(getCurrentPath())) {
                return null;
            }
            String words = docs.getDocComment(getCurrentPath());
            boolean inside = getCurrentPath().getParentPath().getLeaf() instanceof ClassTree;
            if (words == null || words.strip().split("\\s+").length < (inside ? 1 : FEWEST_WORDS_OUTSIDE)) {
                silent.add(
                        getCurrentPath().getCompilationUnit().getSourceFile().getName() + ": " + type.getSimpleName());
            }
            for (Tree member : type.getMembers()) {
                if (member instanceof ClassTree) {
                    scan(member, null);
                }
            }
            return null;
        }

        /** Members of an interface are public without saying so. */
        private static boolean isPublic(TreePath path) {
            return ((ClassTree) path.getLeaf()).getModifiers().getFlags().contains(Modifier.PUBLIC)
                    || path.getParentPath().getLeaf().getKind() == Tree.Kind.INTERFACE;
        }
    }
}
