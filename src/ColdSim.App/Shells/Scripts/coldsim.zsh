#compdef coldsim
# Completions of coldsim for zsh:  source <(coldsim completions zsh), after compinit; or a file _coldsim in a folder of $fpath.

_coldsim() {
    local -a typed offered
    local line files=
    typed=("${(@Q)words[2,CURRENT]}")
    for line in "${(@f)$("${words[1]}" __complete "${typed[@]}" 2>/dev/null)}"; do
        case $line in
            (:files) files=1 ;;
            (*$'\t'*) offered+=("${${line%%$'\t'*}//:/\\:}:${line#*$'\t'}") ;;
            (?*) offered+=("${line//:/\\:}") ;;
        esac
    done
    (( $#offered )) && _describe -V 'coldsim' offered
    [[ -n $files ]] && _files
    (( $#offered )) || [[ -n $files ]]
}

if [[ "${funcstack[1]}" == "_coldsim" ]]; then
    _coldsim "$@"
else
    compdef _coldsim coldsim
fi
